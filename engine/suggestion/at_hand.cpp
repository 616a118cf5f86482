#include "engine/suggestion/at_hand.hpp"

#include "engine/suggestion/in_full.hpp"
#include "engine/suggestion/link.hpp"
#include "engine/suggestion/reading.hpp"

namespace gristwright {
namespace {

using enum WordClass;

constexpr std::string_view near_it[] = {"under",  "underneath", "beneath", "inside",
                                        "beside", "next to",    "below",   "behind"};
constexpr std::string_view over_it[] = {"over", "on top of", "alongside"};
constexpr std::string_view owned[] = {"my", "his", "her", "your", "their", "our", "the"};
constexpr std::string_view goes_with[] = {"go",   "goes",   "going",  "wear", "worn",
                                          "team", "teamed", "paired", "pair", "wearing"};
constexpr std::string_view matches[] = {"match", "matches",    "matching",  "to match", "suit",
                                        "suits", "complement", "colour of", "color of"};
constexpr std::string_view washes[] = {"wash",   "washed", "washer", "washing", "machine",
                                       "throw",  "thrown", "chuck",  "chucked", "boil",
                                       "boiled", "boiler", "tumble", "dryer",   "laundry"};
constexpr std::string_view has_it[] = {"i have", "i've got",    "i own",        "she has",
                                       "he has", "we have",     "we've got",    "they have",
                                       "i've",   "already got", "already have", "i've already got"};
constexpr std::string_view underneath[] = {"underneath", "beneath", "below", "inside"};
constexpr std::string_view because[] = {"because", "cos", "since"};

class AtHand {
  public:
    explicit AtHand(std::vector<Item>& items) : items_(items) {}

    std::vector<std::size_t> set_aside() {
        std::vector<std::size_t> had;
        for (std::size_t i = 0; i < items_.size(); ++i) {
            if (!items_[i].live(article) || !another_is_wanted(i)) continue;
            const bool owned = is_had(i);
            if (!owned && !is_at_hand(i)) continue;
            items_[i].idle = true;
            if (owned) had.push_back(i);
        }
        return had;
    }

  private:
    bool another_is_wanted(std::size_t at) const {
        for (std::size_t i = 0; i < items_.size(); ++i)
            if (i != at && items_[i].live(article)) return true;
        return false;
    }
    bool wanted_before(std::size_t at) const {
        for (std::size_t i = 0; i < at; ++i)
            if (items_[i].live(article) && items_[i].clause != items_[at].clause) return true;
        return false;
    }

    // "got a jumper this colour already", "already has three hats".
    bool is_there_already(std::size_t at) const {
        constexpr std::string_view has_got[] = {"got", "have", "has", "own", "owns", "had"};
        bool got = false;
        for (auto i = at; i-- > 0 && i + 5 > at && same_clause(items_, i, at);) {
            if (items_[i].live(article)) return false;
            got = got || has(has_got, items_[i].last_word()) || items_[i].text.ends_with("'ve");
        }
        if (!got) return false;
        for (auto i = at; i-- > 0 && i + 5 > at && same_clause(items_, i, at);)
            if (items_[i].last_word() == "already") return true;
        for (auto i = at + 1; i < at + 4 && same_clause(items_, at, i); ++i) {
            if (items_[i].live(article)) return false;
            if (items_[i].first_word() == "already") return true;
        }
        return false;
    }

    bool is_at_hand(std::size_t at) const {
        auto from = at;  // where its own words begin
        while (from > 0 && from + 3 > at && same_clause(items_, from - 1, at) &&
               !has(owned, items_[from - 1].text) &&
               (describes_too(items_[from - 1]) || items_[from - 1].amount ||
                items_[from - 1].is(article)))
            --from;
        const bool det =
            from > 0 && (is_determiner(items_[from - 1].text) || has(owned, items_[from - 1].text));
        const bool own = det && has(owned, items_[from - 1].text);
        if (det) --from;
        if (from < 1 || !same_clause(items_, from - 1, at)) return is_below(at);
        const auto& before = items_[from - 1];
        if (has(near_it, before.last_word())) return true;
        // "a hat over a scarf" is another matter.
        if (has(over_it, before.last_word()) && det && from > 1 && !items_[from - 2].is(article))
            return true;
        if (own && (before.text == "into" || is_matched(from))) return true;
        if (is_washed_with(from)) return true;
        return is_below(at) || is_a_reason(at, own);
    }

    // "a hat, she has the scarf", "got a jumper already", "I know scarf and I know hat".
    bool is_had(std::size_t at) const {
        if (is_only_planned(items_, at)) return false;
        if (is_there_already(at) || is_only_known(at)) return true;
        if (at < 2 || !wanted_before(at) || !same_clause(items_, at - 2, at)) return false;
        const auto& one = items_[at - 1].text;
        if (!is_determiner(one) && !has(owned, one)) return false;
        constexpr std::string_view somebody[] = {"i", "she", "he", "we", "they"};
        constexpr std::string_view has_one[] = {"have", "has", "own", "owns"};
        const auto& verb = items_[at - 2];
        return has(has_it, verb.text) ||
               (at > 2 && has(has_one, verb.text) && has(somebody, items_[at - 3].last_word()));
    }

    // "I know scarf": nothing more is said of it.
    bool is_only_known(std::size_t at) const {
        const bool ends = at + 1 == items_.size() || !same_clause(items_, at, at + 1) ||
                          items_[at + 1].is(joiner);
        return ends && at > 0 && items_[at - 1].last_word() == "know";
    }

    // "goes with my coat", "matches her mittens", "as warm as my coat"; "to match the scarf" that
    // somebody has made.
    bool is_matched(std::size_t det) const {
        const auto& before = items_[det - 1];
        const bool joined = items_[det].text == "the";
        if (joined) {
            constexpr std::string_view who[] = {"you", "i", "she", "he", "we", "they", "that"};
            bool made = false;
            for (auto i = det + 1; i < det + 4 && same_clause(items_, det, i); ++i)
                made = made || has(who, items_[i].text);
            if (!made) return false;
        }
        if (before.last_word() == "with")
            return has(goes_with, before.first_word()) ||
                   (det > 1 && has(goes_with, items_[det - 2].last_word()));
        return has(matches, before.text) || has(matches, before.last_word()) ||
               (before.text == "as" && !joined);
    }

    // "full it along with the dishcloths", "thrown in with the towels".
    bool is_washed_with(std::size_t det) const {
        if (items_[det - 1].last_word() != "with" &&
            !(items_[det - 1].is(joiner) && items_[det - 1].as(joiner) == "with"))
            return false;
        for (auto i = det - 1; i-- > 0 && same_clause(items_, i, det);) {
            if (items_[i].live(article)) return items_[i].clause != items_[det].clause;
            if (has(washes, items_[i].text) || has(washes, items_[i].last_word())) return true;
            if (items_[i].is(role) && items_[i].as(role) == "fulled") return true;
        }
        return false;
    }

    // "room for a shirt underneath".
    bool is_below(std::size_t at) const {
        return same_clause(items_, at, at + 1) && has(underneath, items_[at + 1].text) &&
               (at + 2 == items_.size() || !same_clause(items_, at, at + 2));
    }

    // "a cowl because scarves come undone", "a headband so my hat doesn't mess my hair".
    bool is_a_reason(std::size_t at, bool own) const {
        if (!wanted_before(at)) return false;
        for (auto i = at; i-- > 0 && items_[i].clause == items_[at].clause;) {
            if (items_[i].sounds("wish")) return false;
            if (has(because, items_[i].text)) return true;
            if (items_[i].text == "so" && own) return true;
        }
        return false;
    }

    std::vector<Item>& items_;
};

}  // namespace

bool is_only_planned(const std::vector<Item>& items, std::size_t at) {
    constexpr std::size_t before = 5, behind = 3;
    constexpr std::string_view plans[] = {"to",   "order", "plan",  "planned", "list",
                                          "want", "need",  "ready", "needs",   "wants"};
    for (auto i = at > before ? at - before : 0; i < items.size() && i <= at + behind; ++i) {
        const auto& item = items[i];
        if (item.clause != items[at].clause) continue;
        const bool wish = item.sounds("wish") && item.last_word() != "this";
        if (wish || item.text.ends_with("'d") || has(plans, item.first_word()) ||
            has(plans, item.last_word()))
            return true;
    }
    return false;
}

std::vector<std::size_t> set_things_at_hand_aside(std::vector<Item>& items) {
    return AtHand(items).set_aside();
}

}  // namespace gristwright
