#include "engine/suggestion/for_whom.hpp"

#include "engine/suggestion/beside.hpp"
#include "engine/suggestion/in_full.hpp"
#include "engine/suggestion/reading.hpp"

namespace gristwright {
namespace {

using enum WordClass;

// Which speaks when several are named: the one that calls for the most care.
int care(Wearer wearer) {
    switch (wearer) {
        case Wearer::baby:
            return 5;
        case Wearer::child:
            return 4;
        case Wearer::animal:
            return 3;
        case Wearer::adult:
            return 2;
        case Wearer::home:
            return 1;
        case Wearer::unsaid:
            break;
    }
    return 0;
}

class Persons {
  public:
    Persons(std::vector<Item>& items, Taken& out) : items_(items), out_(out) {}

    void take() {
        for (std::size_t i = 0; i < items_.size(); ++i)
            if (items_[i].live(person)) take_person(i);
        // "a hat for my niece, newborn".
        const bool one = out_.wanted.size() < 2;
        if (one && out_.wearer != Wearer::unsaid && out_.wearer != Wearer::adult) out_.kin.clear();
    }

  private:
    void take_person(std::size_t at) {
        const auto& item = items_[at];
        auto means = item.as(person);
        if (const auto space = means.find(' '); space != std::string::npos) {
            if (!stands_after_for(items_, at)) return;
            means.resize(space);
        }
        const auto colon = means.find(':');
        const auto body = colon == std::string::npos ? std::string() : means.substr(colon + 1);
        // "my niece": of what age is told by what stands beside her, or not at all.
        if (means == "kin" && !item.grown && !item.small) {
            if (is_for_kin(at)) out_.kin = without_possessive(item.text);
            return;
        }
        const auto wearer = item.grown   ? Wearer::adult
                            : item.small ? Wearer::child
                                         : wearer_named(means.substr(0, colon));
        if (!wearer || care(*wearer) < care(out_.wearer)) return;
        if (*wearer == Wearer::animal && is_only_there(at)) return;
        if (out_.wearer == *wearer) return take_body(body);
        out_.wearer = *wearer;
        out_.wearer_said = item.text;
        out_.body = body;
    }

    // "for my niece", "my niece needs one", "my niece's hat"; not "my daughter's dog", "from my
    // son".
    bool is_for_kin(std::size_t at) const {
        constexpr std::string_view wants[] = {"needs",   "need",  "wants", "want", "would",
                                              "could",   "likes", "loves", "will", "won't",
                                              "doesn't", "is",    "are",   "feet", "head"};
        const auto next = at + 1;
        const bool goes_on = same_clause(items_, at, next);
        if (items_[at].text.ends_with("'s") || items_[at].text.ends_with("s'"))
            return goes_on && !items_[next].is(person) && !items_[next].live(part);
        if (goes_on && (items_[next].live(article) || has(wants, items_[next].first_word())))
            return true;
        if (stands_after_for(items_, at)) return true;
        return at > 1 && items_[at - 1].is(joiner) && items_[at - 2].is(person);
    }

    // "out with the dog", "I've got a cat": an animal that wears nothing.
    bool is_only_there(std::size_t at) const {
        constexpr std::string_view wears[] = {"who", "that", "needs", "need", "wants", "which"};
        constexpr std::string_view it[] = {"he", "she", "it", "his", "her", "they"};
        for (auto i = at + 1; i < items_.size() && i < at + 4; ++i) {
            if (has(wears, items_[i].first_word())) return false;
            if (items_[i].sentence != items_[at].sentence && has(it, items_[i].first_word()))
                return false;
        }
        constexpr std::string_view beside[] = {"with", "walk", "walks", "walking", "walked",
                                               "got",  "have", "has",   "own"};
        constexpr std::string_view walks[] = {"walk", "walks", "walking", "walker", "walkers"};
        if (same_clause(items_, at, at + 1) && has(walks, items_[at + 1].first_word())) return true;
        for (auto i = at; i-- > 0 && i + 3 > at && same_clause(items_, i, at);)
            if (has(beside, items_[i].last_word()) || items_[i].text.ends_with("'ve")) return true;
        return false;
    }

    // "for my mum or my dad": of neither's size.
    void take_body(const std::string& body) {
        if (body.empty() || out_.body == body) return;
        const bool first = out_.body.empty() && !two_bodies_;
        two_bodies_ = two_bodies_ || !first;
        out_.body = first ? body : "";
    }

    std::vector<Item>& items_;
    Taken& out_;
    bool two_bodies_ = false;
};

}  // namespace

void take_persons(std::vector<Item>& items, Taken& out) { Persons(items, out).take(); }

}  // namespace gristwright
