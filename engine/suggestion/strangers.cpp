// Things that are named and that no template makes: "a unicorn", "a scarf ring", "the fringe of a
// shawl", "a jumper for the teddy". They are told, never answered with the article beside them.
#include <algorithm>

#include "engine/suggestion/in_full.hpp"
#include "engine/suggestion/link.hpp"
#include "engine/suggestion/reading.hpp"
#include "engine/units/ascii.hpp"

namespace gristwright {
namespace {

using enum WordClass;

constexpr std::string_view before_a_thing[] = {"a",     "an",   "some",  "few",  "make", "about",
                                               "maybe", "knit", "weave", "into", "for",  "or"};
constexpr std::string_view before_owned[] = {"a",    "an",  "the", "my",   "our",
                                             "your", "his", "her", "their"};
constexpr std::string_view prepositions[] = {"of", "for", "on", "in", "to", "from"};
constexpr std::string_view tells[] = {"is",    "was",  "are",  "were", "has",    "had", "have",
                                      "got",   "it's", "it",   "that", "that's", "we",  "they",
                                      "there", "he",   "she",  "see",  "looks",  "saw", "while",
                                      "when",  "what", "your", "like", "my",     "in",  "me"};

// The table marks the words of every day that name a thing one could hold or draw.
bool is_a_thing(const Item& item) {
    return item.phrase && !item.idle && !item.out && item.is(everyday) &&
           item.as(everyday) == "thing" && !item.is(article) && !item.is(material) &&
           !item.is(colour) && !(item.is(person) && !item.as(person).ends_with(" for"));
}

// "ironing board cover": what such a thing is for.
bool describes(const Item& item) {
    return (item.is(everyday) || item.unknown || item.is(material) || item.is(body)) &&
           !item.is(filler) && !item.is(joiner) && !item.is(remark) && !item.is(craft) &&
           !item.sign && !has(before_owned, item.text);
}

bool is_a_part(const Item& item) { return item.live(part) && !item.is(article); }

class Strangers {
  public:
    Strangers(std::vector<Item>& items, const ArticleKinds& kinds, Taken& out)
        : items_(items), kinds_(kinds), out_(out) {}

    void find() {
        for (std::size_t i = 0; i < items_.size(); ++i) {
            if (items_[i].live(article)) beside_article(i);
            const bool trimming = items_[i].live(material) && items_[i].as(material) == "notions";
            if ((is_a_part(items_[i]) || trimming) && is_of_an_article(i)) part_alone(i);
        }
        for (std::size_t i = 0; i < items_.size(); ++i)
            if (items_[i].live(article)) for_a_thing(i);
        const bool named = std::any_of(items_.begin(), items_.end(),
                                       [](const Item& i) { return i.live(article) || i.stranger; });
        for (std::size_t i = 0; i < items_.size(); ++i) {
            const bool compound =
                is_a_part(items_[i]) && i > 0 && same_clause(i - 1, i) && describes(items_[i - 1]);
            const bool of_a_thing =
                is_a_part(items_[i]) && i > 0 && same_clause(i - 1, i) && is_a_thing(items_[i - 1]);
            if ((compound && !named) || of_a_thing)
                alone(i);
            else if (is_a_thing(items_[i]) && (named ? is_listed(i) : may_be_made(i)))
                alone(i);
        }
    }

  private:
    bool same_clause(std::size_t a, std::size_t b) const {
        return gristwright::same_clause(items_, a, b);
    }

    // Nothing more is said of it: the clause ends, or goes on with "for", "and", "with".
    bool ends_phrase(std::size_t at) const {
        if (!same_clause(at, at + 1)) return true;
        const auto& next = items_[at + 1];
        return next.is(joiner) || has(prepositions, next.first_word()) ||
               next.first_word() == "please" || next.first_word() == "with" || next.is(remark);
    }

    // "scarf ring" is no scarf; "tree jumper" is one that nobody has figures for.
    void beside_article(std::size_t at) {
        const auto next = at + 1;
        if (same_clause(at, next) && ends_phrase(next) &&
            (is_a_thing(items_[next]) || (is_a_part(items_[next]) && items_[next].text != "top"))) {
            become(next, items_[at].said + " " + items_[next].said);
            items_[at].idle = true;
            return;
        }
        if (at == 0 || !same_clause(at - 1, at) || !is_a_thing(items_[at - 1])) return;
        // What is worn fits somebody: of other things a word before tells only what they are for.
        if (!is_worn(items_[at])) return;
        out_.not_known.push_back({items_[at - 1].said + " " + items_[at].said, {}, false, {}});
    }

    // "a bonnet", as a hat is.
    bool is_worn(const Item& item) const {
        const auto& means = item.as(article);
        const auto near = means.find('~');
        if (near == std::string::npos) return kind_named(kinds_, kind_of(item)).worn;
        return kind_named(kinds_, means.substr(near + 1, means.find('@') - near - 1)).worn;
    }

    void become(std::size_t at, const std::string& said) {
        auto& item = items_[at];
        item.stranger = true;
        item.said = said;
        item.text = ascii::lowered(said);
    }

    // "the fringe of a shawl", "hem for a curtain".
    bool is_of_an_article(std::size_t at) const {
        if (at > 0 && same_clause(at - 1, at) &&
            (items_[at - 1].is(joiner) || items_[at - 1].last_word() == "with" ||
             items_[at - 1].is(article)))
            return false;
        if (!same_clause(at, at + 1) || !has(prepositions, items_[at + 1].first_word()))
            return false;
        for (auto i = at + 2; i < items_.size() && i <= at + 5 && same_clause(at, i); ++i)
            if (items_[i].live(article)) return true;
        return false;
    }

    void part_alone(std::size_t at) {
        items_[at].idle = true;
        out_.not_known.push_back({items_[at].said + " alone", {}, false, {}});
    }

    // The "for" of an article, behind what else it has: "a sweater with a hood for a teddy".
    std::size_t for_behind(std::size_t at) const {
        for (auto i = at + 1; i < items_.size() && i <= at + 4 && same_clause(at, i); ++i) {
            if (items_[i].last_word() == "for") return i;
            if (i == at + 1 && items_[i].last_word() != "with" &&
                !(items_[i].is(joiner) && items_[i].as(joiner) == "with") && !items_[i].is(form))
                return at;
        }
        return at;
    }

    // "hats for smoothie bottles": of whose size nobody knows.
    void for_a_thing(std::size_t at) {
        const auto leads = for_behind(at);
        if (leads == at) return;
        for (auto i = leads + 1; i < items_.size() && i <= leads + 4 && same_clause(at, i); ++i) {
            // "a waistcoat for a teddy": for a thing that no template makes.
            const bool unmade =
                items_[i].live(article) && items_[i].as(article) == "?" && is_worn(items_[at]);
            if (items_[i].amount || (!unmade && (items_[i].is(article) || items_[i].is(person))))
                return;
            const bool measured = i + 1 < items_.size() && items_[i + 1].amount;
            if ((unmade || is_a_thing(items_[i])) && (measured || ends_phrase(i))) {
                out_.worn_by = items_[i].said;
                return;
            }
        }
    }

    // A word before it makes it a wish and no tale: "a unicorn", "knit a fox"; or it is all that
    // is said.
    bool may_be_made(std::size_t at) const {
        if (!ends_phrase(at) || (same_clause(at, at + 1) && items_[at + 1].first_word() == "of"))
            return false;
        std::size_t before = 0;
        for (auto i = at; i-- > 0 && items_[i].clause == items_[at].clause; ++before) {
            if (items_[i].is(remark) && items_[i].as(remark) != "greeting") return false;
            if (has(tells, items_[i].first_word()) || has(tells, items_[i].last_word()))
                return false;
        }
        if (before == 0) return items_.size() <= 3;
        const auto& last = items_[at - 1];
        const auto& earlier = items_[at > 1 ? at - 2 : 0];
        return has(before_a_thing, last.last_word()) || last.is(craft) || last.amount ||
               has(before_a_thing, earlier.last_word()) || earlier.is(craft);
    }

    // "a hat and a unicorn".
    bool is_listed(std::size_t at) const {
        if (at < 2 || !ends_phrase(at) || !same_clause(at - 1, at)) return false;
        const auto& before = items_[at - 2];
        const bool one =
            items_[at - 1].text == "a" || items_[at - 1].text == "an" || items_[at - 1].amount;
        return one && joins_alike(before);
    }

    void alone(std::size_t at) {
        auto said = items_[at].said;
        for (auto i = at; i-- > 0 && same_clause(i, at) && describes(items_[i]);) {
            said = items_[i].said + " " + said;
            items_[i].unknown = false;
            items_[i].idle = true;
        }
        become(at, said);
    }

    std::vector<Item>& items_;
    const ArticleKinds& kinds_;
    Taken& out_;
};

}  // namespace

void find_strangers(std::vector<Item>& items, const ArticleKinds& kinds, Taken& out) {
    Strangers(items, kinds, out).find();
}

}  // namespace gristwright
