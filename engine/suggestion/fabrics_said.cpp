#include "engine/suggestion/fabrics_said.hpp"

#include <algorithm>

#include "engine/suggestion/beside.hpp"
#include "engine/suggestion/reading.hpp"

namespace gristwright {
namespace {

using enum WordClass;

constexpr std::string_view edges[] = {
    "edge", "edges", "edging", "border", "borders", "brim",  "cuff", "cuffs",  "collar",  "hem",
    "yoke", "welt",  "band",   "bands",  "toes",    "heels", "hood", "pocket", "pockets", "trim"};

// Fabrics and crafts, each to the thing that it is said of.
class FabricsSaid {
  public:
    FabricsSaid(std::vector<Item>& items, const std::vector<std::size_t>& places, Taken& out)
        : items_(items), places_(places), out_(out) {}

    void take() {
        take_fabrics();
        take_crafts();
    }

  private:
    void take_fabrics() {
        for (std::size_t i = 0; i < items_.size(); ++i) {
            if (!items_[i].live(fabric) || items_[i].is(article)) continue;
            if (items_[i].is(weight) && is_meant_as_weight(items_, i)) continue;
            if (is_of_an_edge(i)) continue;
            // "plain garter stitch": nothing fancy.
            if (items_[i].last_word() == "plain" && i + 1 < items_.size() &&
                items_[i + 1].live(fabric)) {
                items_[i].idle = true;
                continue;
            }
            const auto sense = fabric_of(items_[i]);
            if (auto* to = nearest(i); to && !to->fabric.named()) {
                to->fabric = sense;
                to->fabric_said = items_[i].text;
            }
            if (is_of_all(i)) give_to_all(i, sense);
            if (out_.fabric.named()) continue;
            out_.fabric = sense;
            out_.fabric_said = items_[i].text;
            const auto& as = sense.knitted.empty() ? sense.woven : sense.knitted;
            if (items_[i].text != as) out_.taken_as.push_back(items_[i].text + " as " + as);
        }
    }

    // "socks and a scarf in 2x2 rib": behind all that are listed.
    bool is_of_all(std::size_t at) const {
        constexpr std::string_view in[] = {"in", "of", "all", "both", "each", "everything"};
        constexpr std::string_view either_way[] = {"either", "either way", "whichever", "both"};
        if (places_.size() < 2 || places_.back() > at) return false;
        if (at + 1 < items_.size() && has(either_way, items_[at + 1].text)) return true;
        if (!has(in, items_[at - 1].last_word())) return false;
        const auto& last = items_[places_.back()];
        return last.sentence == items_[at].sentence &&
               items_[places_.front()].sentence == last.sentence &&
               std::none_of(items_.begin(), items_.end(), [](const Item& item) {
                   return item.is(joiner) && item.as(joiner) == "or";
               });
    }

    void give_to_all(std::size_t at, const NamedFabric& sense) {
        for (auto& wanted : out_.wanted)
            if (!wanted.fabric.named()) wanted.fabric = sense, wanted.fabric_said = items_[at].text;
    }

    // "a hat with a garter brim": of that part alone.
    bool is_of_an_edge(std::size_t at) const {
        return at + 1 < items_.size() && is_an_edge(items_[at + 1]) && is_had(items_, at);
    }

    // "A woven stole or a knitted shawl": each its own.
    void take_crafts() {
        for (std::size_t i = 0; places_.size() > 1 && i < items_.size(); ++i) {
            if (!items_[i].live(craft)) continue;
            if (auto* to = nearest(i); to && !to->craft)
                to->craft = items_[i].as(craft) == "woven" ? Craft::woven : Craft::knitted;
        }
    }

    Wanted* nearest(std::size_t at) { return nearest_thing(items_, places_, at, out_); }

    std::vector<Item>& items_;
    const std::vector<std::size_t>& places_;
    Taken& out_;
};

}  // namespace

bool is_an_edge(const Item& item) { return has(edges, item.text); }

bool is_had(const std::vector<Item>& items, std::size_t at) {
    constexpr std::size_t reach = 6;
    for (auto i = at; i-- > 0 && i + reach > at && !items[i].sign && !items[i].live(article);)
        if ((items[i].is(joiner) && items[i].as(joiner) == "with") ||
            items[i].last_word() == "with")
            return true;
    return false;
}

Wanted* nearest_thing(const std::vector<Item>& items, const std::vector<std::size_t>& places,
                      std::size_t at, Taken& out) {
    for (std::size_t n = 0; n < places.size(); ++n) {
        if (places[n] < at) continue;
        bool clear = true;
        for (auto i = at + 1; i < places[n]; ++i)
            clear = clear && !items[i].sign && !items[i].is(joiner);
        if (clear) return &out.wanted[n];
        break;
    }
    for (auto n = places.size(); n-- > 0;)
        if (places[n] < at) return &out.wanted[n];
    return places.empty() ? nullptr : &out.wanted.front();
}

void take_fabrics(std::vector<Item>& items, const std::vector<std::size_t>& places, Taken& out) {
    FabricsSaid(items, places, out).take();
}

NamedFabric fabric_of(const Item& item) {
    const auto& means = item.as(WordClass::fabric);
    // A weave's own name may hold a stroke ("2/2 twill"): the first one parts the crafts.
    const auto stroke = means.find('/');
    return {means.substr(0, stroke), means.substr(stroke + 1)};
}

}  // namespace gristwright
