#include <fmt/core.h>

#include <algorithm>

#include "engine/suggestion/beside.hpp"
#include "engine/suggestion/for_whom.hpp"
#include "engine/suggestion/in_full.hpp"
#include "engine/suggestion/reading.hpp"
#include "engine/suggestion/role_said.hpp"
#include "engine/suggestion/unanswered.hpp"

namespace gristwright {
namespace {

using enum WordClass;

constexpr std::string_view stitches[] = {"stitch", "stitches"};
constexpr std::string_view marks_a_way[] = {"stitch",   "stitches", "style",   "technique",
                                            "method",   "weave",    "weaving", "knit",
                                            "knitting", "knitted",  "woven",   "inlay"};

// What is bought by a size in numbers.
constexpr std::string_view clothes[] = {"pullover", "cardigan", "vest", "top"};

class Words {
  public:
    Words(std::vector<Item>& items, Taken& out) : items_(items), out_(out) {}

    void take() {
        take_persons(items_, out_);
        for (std::size_t i = 0; i < items_.size(); ++i) {
            const auto& item = items_[i];
            out_.asks = out_.asks || (item.asks && !item.idle);
            if (item.text == "my own" || item.text == "my own yarn") out_.other_yarn = true;
            if (item.live(needle)) take_needle(i);
            if (item.live(craft) && !is_only_a_look(i) && !gives_way(item)) take_craft(item);
            if (item.live(role)) take_role(i);
            if (item.live(technique)) take_technique(i);
            if (item.live(material)) take_material(i);
            if (item.live(tool) && item.as(tool) == "letters") out_.letters = item.text;
            if (item.live(weight) && is_meant_as_weight(items_, i) && out_.weight.empty() &&
                !is_of_another_strand(i))
                out_.weight = item.as(weight);
            if (item.is(topic) && !item.idle) take_topic(i);
        }
        take_grown_up_letters();
        take_craft_left();
        take_ways();
        take_unknown();
    }

  private:
    // "with a strand of laceweight mohair": the weight of that one.
    bool is_of_another_strand(std::size_t at) const {
        constexpr std::string_view with[] = {"strand", "strands", "alongside"};
        if (!same_clause(items_, at, at + 1) || !items_[at + 1].is(material)) return false;
        for (auto i = at; i-- > 0 && i + 5 > at && same_clause(items_, i, at);)
            if (has(with, items_[i].last_word()) ||
                (items_[i].is(role) && items_[i].as(role) == "with another yarn"))
                return true;
        return false;
    }

    // "woven-look": no craft, and not reckoned.
    bool is_only_a_look(std::size_t at) {
        constexpr std::string_view looks[] = {"look", "looking", "effect"};
        const auto next = at + 1;
        if (next >= items_.size() || !has(looks, items_[next].text)) return false;
        out_.left_out.push_back(items_[at].said + " " + items_[next].said);
        return true;
    }

    // "XXL, for my son": grown up, whosever son he is.
    void take_grown_up_letters() {
        const bool child = out_.wearer == Wearer::child || !out_.kin.empty();
        if (!child || out_.letters.find("xl") == std::string::npos) return;
        out_.wearer = Wearer::adult;
        out_.kin.clear();
    }

    // Of two crafts, the one that is not ruled out: "a scarf, not woven".
    void take_craft_left() {
        for (const auto& item : items_)
            if (!out_.craft && item.is(craft) && item.out && !item.idle)
                out_.craft = item.as(craft) == "woven" ? Craft::knitted : Craft::woven;
    }

    // A way of making that no table has, by the word that marks it: "bubble stitch", "saori style",
    // "Estonian lace".
    void take_ways() {
        for (std::size_t i = 1; i < items_.size(); ++i) {
            auto& before = items_[i - 1];
            const auto& item = items_[i];
            if (item.idle || before.idle || before.clause != item.clause) continue;
            const bool marks = has(marks_a_way, item.text);
            const bool named = before.is(everyday) && !before.is(filler) && !before.is(colour) &&
                               !before.is(material) && !before.is(remark) &&
                               has(stitches, item.text);
            const bool strange = before.unknown && (marks || item.live(fabric));
            if (!strange && !named) continue;
            out_.not_known.push_back({before.said + " " + item.said, {}, false, {}});
            before.unknown = false;
        }
    }

    // A bare "size 9" is a US size, unless the old UK ones are spoken of.
    void take_needle(std::size_t at) {
        const auto& item = items_[at];
        if (out_.needle) return;
        if (is_of_a_shoe(at)) {
            const auto& said = item.said;
            out_.shoe = said.substr(said.starts_with("size ") ? 5 : 0);
            return;
        }
        if (item.text.starts_with("size ") && !are_many(item) && is_of_a_person()) {
            out_.letters = item.said;
            return;
        }
        const auto& means = item.as(WordClass::needle);
        const auto stroke = means.find('/');
        const bool uk = std::any_of(items_.begin(), items_.end(), [](const Item& i) {
            return i.text.find("uk") != std::string::npos || i.text.find("old") == 0 ||
                   i.text == "imperial";
        });
        const auto size =
            stroke != std::string::npos && uk ? means.substr(stroke + 1) : means.substr(0, stroke);
        const auto mm = figure_of(size);
        if (!mm) return;
        out_.needle = millimetres(*mm);
        out_.taken_as.push_back(fmt::format("{} as {} mm", item.text, size));
    }

    // "on size 8s", "number eights": needles, and never of somebody.
    static bool are_many(const Item& item) {
        constexpr std::string_view leads[] = {"on", "with", "using"};
        const auto last = item.last_word();
        return (last.ends_with('s') && last != "us") || has(leads, item.first_word());
    }

    // "socks, size UK 7": worn on the foot, and no needle is spoken of.
    bool is_of_a_shoe(std::size_t at) const {
        if (!is_for_the_foot(out_) || are_many(items_[at])) return false;
        for (std::size_t n = 1; n <= 2; ++n) {
            if (at + n < items_.size() && items_[at + n].is(tool))
                return items_[at + n].as(tool) != "needle";
            if (at >= n && (items_[at - n].text == "on" || items_[at - n].text == "with"))
                return false;
        }
        return true;
    }

    // "A boy's vest, size 8": of clothes, where no needle is spoken of.
    bool is_of_a_person() const {
        const auto any = [&](auto is) { return std::any_of(items_.begin(), items_.end(), is); };
        const bool of_clothes = std::any_of(out_.wanted.begin(), out_.wanted.end(), [](auto& w) {
            return has(clothes, w.nearest.empty() ? w.kind : w.nearest);
        });
        return (of_clothes || any([](const Item& i) { return i.is(person); })) &&
               !any([](const Item& i) { return i.is(tool) && i.as(tool) == "needle"; });
    }

    // A loom that is only spoken of beside what says more of the craft.
    bool gives_way(const Item& item) const {
        return item.last_word() == "loom" && (offers_both_crafts() || names_what_is_knitted());
    }

    // "Wasted on the loom. Stocking stitch": the fabric says more of the craft than a tool.
    bool names_what_is_knitted() const {
        for (std::size_t i = 0; i < items_.size(); ++i) {
            const bool of_a_part =
                same_clause(items_, i, i + 1) && (items_[i + 1].is(part) || items_[i + 1].is(role));
            if (items_[i].live(fabric) && fabric_of(items_[i]).woven.empty() && !of_a_part)
                return true;
        }
        return false;
    }

    // "Knitted or woven? I've got a loom": of the two that are offered neither is asked for.
    bool offers_both_crafts() const {
        return std::any_of(items_.begin(), items_.end(), [](const Item& i) {
            return i.is(topic) && i.text.find("kni") != std::string::npos &&
                   (i.text.find("wov") != std::string::npos ||
                    i.text.find("wea") != std::string::npos);
        });
    }

    void take_craft(const Item& item) {
        const auto craft = item.as(WordClass::craft) == "woven" ? Craft::woven : Craft::knitted;
        if (out_.craft && *out_.craft != craft) out_.both_crafts = true;
        if (!out_.craft) out_.craft = craft;
    }

    void take_role(std::size_t at) {
        const auto& item = items_[at];
        if (is_of_the_piece(items_, at)) return;
        if (item.as(WordClass::role) == "doubled" && is_done_to_a_part(items_, at)) {
            out_.left_out.push_back(items_[at - 2].said + " " + items_[at - 1].said + " " +
                                    item.said);
            return;
        }
        auto role = yarn_role_named(item.as(WordClass::role));
        if (role == YarnRole::border && is_in_another(items_, at)) role = YarnRole::with_another;
        if (!role) return;
        // "a stronger yarn for warp and beat this in as weft": what this one is to be.
        const bool on_the_loom = *role == YarnRole::weft_only || *role == YarnRole::warp_only;
        const bool of_this = on_the_loom && out_.role != YarnRole::unsaid && speaks_of_this(item);
        const bool free =
            out_.role == YarnRole::unsaid || out_.role == YarnRole::with_another || of_this;
        if (!free) return;
        if (role == YarnRole::with_another && asks_how_it_stripes(items_, at)) {
            if (!out_.about(Topic::pooling)) out_.topics.push_back(Topic::pooling);
            return;
        }
        // A question whether it would felt asks; "fulled" orders.
        if (*role == YarnRole::fulled && item.asks && item.is(topic)) return;
        out_.role = *role;
        out_.role_said = item.text;
    }

    void take_technique(std::size_t at) {
        const auto& item = items_[at];
        if (item.is(fabric)) return;
        const auto& means = item.as(technique);
        const auto tilde = means.find('~');
        const auto word = means.substr(0, tilde);
        Unmade unmade;
        unmade.said = item.text;
        for (auto i = at; i-- > 0 && items_[i].unknown && items_[i].clause == item.clause;) {
            unmade.said = items_[i].said + " " + unmade.said;
            items_[i].unknown = false;
        }
        unmade.other_craft = word == "other";
        if (word == "knitted") unmade.craft = Craft::knitted;
        if (word == "woven") unmade.craft = Craft::woven;
        if (tilde != std::string::npos) {
            const auto near = means.substr(tilde + 1);
            (word == "woven" ? unmade.nearest.woven : unmade.nearest.knitted) = near;
        }
        out_.not_known.push_back(std::move(unmade));
    }

    // "Would it make a warm vest?"
    bool is_asked_outright(std::size_t at) const {
        constexpr std::string_view asks[] = {"would", "will", "could", "does", "is", "might"};
        auto first = at;
        while (first > 0 && items_[first - 1].sentence == items_[at].sentence) --first;
        return has(asks, items_[first].first_word());
    }

    void take_topic(std::size_t at) {
        const auto& item = items_[at];
        auto means = item.as(topic);
        // Words of every talk ask about the yarn only beside what is to be made.
        const bool beside = !means.empty() && means.back() == '?';
        if (beside) means.pop_back();
        const bool always = !means.empty() && means.back() == '!';
        if (always) means.pop_back();
        if (beside && out_.wanted.empty() && !out_.fabric.named() && !(always && item.asks)) return;
        // "a warm hat" asks nothing about warmth.
        const bool adjective = item.text.find(' ') == std::string::npos && at + 1 < items_.size() &&
                               items_[at + 1].live(article) && !is_asked_outright(at);
        if (!always && (!item.asks || adjective)) return;
        const auto topic = topic_named(means);
        if (topic == Topic::count && counts_something_else(items_, at)) return;
        if (topic && !out_.about(*topic)) out_.topics.push_back(*topic);
    }

    // A capital letter inside a sentence; at its beginning and in SHOUTING it tells nothing.
    bool is_a_name(std::size_t at) const {
        const auto& item = items_[at];
        const bool shouts = item.said.size() > 1 && item.said[1] >= 'A' && item.said[1] <= 'Z';
        const bool begins =
            at == 0 || items_[at - 1].sign || items_[at - 1].sentence != item.sentence;
        return item.capital && !shouts && !begins;
    }

    // "A balaclava or buff", "a hat and a swoncho".
    bool is_listed(std::size_t at) const {
        const bool ends = at + 1 == items_.size() || items_[at + 1].clause != items_[at].clause ||
                          items_[at + 1].sign || items_[at + 1].text == "for";
        if (at < 2 || !ends || is_a_name(at)) return false;
        const bool one = items_[at - 1].text == "a" || items_[at - 1].text == "an";
        const auto joined = at - (one ? 2 : 1);
        const auto& joins = items_[joined];
        return joined > 0 && joins.is(joiner) && items_[joined - 1].is(article) &&
               (joins.as(joiner) == "and" || joins.as(joiner) == "or");
    }

    // A word in no table counts when it stands right before an article, or when none was named.
    void take_unknown() {
        for (std::size_t i = 0; i < items_.size(); ++i) {
            const auto& item = items_[i];
            if (!item.unknown || item.idle) continue;
            const bool beside =
                i + 1 < items_.size() && items_[i + 1].live(article) && !is_a_name(i);
            if (beside || is_listed(i) || (out_.wanted.empty() && !is_a_name(i)))
                out_.not_known.push_back({item.said, {}, false, {}});
        }
    }

    // "knitted in cotton", "a linen towel": of another fibre than the yarn may be.
    void take_material(std::size_t at) {
        const auto& item = items_[at];
        const auto& means = item.as(material);
        if (!out_.material.empty() || (means != "plant" && means != "silk" && means != "man made"))
            return;
        const bool in = at > 0 && (items_[at - 1].text == "in" || items_[at - 1].text == "of" ||
                                   items_[at - 1].text == "from");
        const bool of_article = at + 1 < items_.size() && items_[at + 1].live(article);
        if (!in && !of_article) return;
        out_.material = means;
        out_.material_said = item.text;
    }

    std::vector<Item>& items_;
    Taken& out_;
};

}  // namespace

void take_words(std::vector<Item>& items, Taken& out) { Words(items, out).take(); }

}  // namespace gristwright
