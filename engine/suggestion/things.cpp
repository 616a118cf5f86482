#include <algorithm>
#include <cmath>

#include "engine/suggestion/beside.hpp"
#include "engine/suggestion/by_place.hpp"
#include "engine/suggestion/counts.hpp"
#include "engine/suggestion/fabrics_said.hpp"
#include "engine/suggestion/link.hpp"
#include "engine/suggestion/reading.hpp"
#include "engine/suggestion/tails.hpp"

namespace gristwright {
namespace {

using enum WordClass;

// "kind:form~nearest@for whom" of the table.
struct ArticleSense {
    std::string kind, form, nearest, person;
};

ArticleSense article_sense(const std::string& means, const std::string& text) {
    ArticleSense out;
    std::string* to = &out.kind;
    for (const char c : means) {
        if (c == ':')
            to = &out.form;
        else if (c == '~')
            to = &out.nearest;
        else if (c == '@')
            to = &out.person;
        else
            *to += c;
    }
    if (out.kind.empty() || out.kind == "?") out.kind = text;
    return out;
}

bool is_pronoun(const std::string& text) {
    for (const char* word : {"it", "me", "them", "him", "us", "yourself", "up", "down"})
        if (text.substr(0, text.find(' ')) == word) return true;
    return false;
}

bool is_stranger(const Item& item) { return item.stranger && !item.idle && !item.out; }

class Things {
  public:
    Things(std::vector<Item>& items, const ArticleKinds& kinds, Taken& out)
        : items_(items), kinds_(kinds), out_(out) {}

    std::vector<std::size_t> take() {
        auto places = heads(article);
        verbs_too_ = places.empty();  // "swatch it first": nothing else can be meant
        if (places.empty()) places = heads(article);
        if (places.empty()) places = heads(part);
        for (const auto place : places) add(place);
        if (places_.empty()) add_by_place();
        set_verbs_aside();
        take_forms();
        take_fabrics(items_, places_, out_);
        take_counts(items_, places_, out_);
        const bool by_place = places_.size() > 1 && places_.front() == places_.back();
        out_.alternatives = by_place || are_alternatives();
        return places_;
    }

  private:
    void add_by_place() {
        const auto at = place_of_a_thing(items_);
        if (at >= items_.size()) return;
        for (auto& wanted : things_for(items_[at], kinds_)) {
            out_.taken_as.push_back("for the " + items_[at].said + " as " + wanted.kind);
            out_.wanted.push_back(std::move(wanted));
            places_.push_back(at);
        }
    }

    // The articles that count: of two without a word between the last is the head.
    std::vector<std::size_t> heads(WordClass of) {
        std::vector<std::size_t> out;
        for (std::size_t i = 0; i < items_.size(); ++i) {
            const bool stranger = of == article && is_stranger(items_[i]);
            if ((!stranger && !items_[i].live(of)) || (!verbs_too_ && is_verb(i)) ||
                (of == part && !can_be_a_part(i)))
                continue;
            if (!out.empty()) {
                if (are_joined_to(out.back(), i)) {
                    dropped_.push_back(out.back());
                    out.back() = i;
                    continue;
                }
                if (of == article && is_only_a_form(out.back(), i)) continue;
                if (is_beside_the_point(i) || stands_in_a_tail(items_, out.back(), i)) continue;
                const auto how = link(items_, out.back(), i);
                const bool same_clause = items_[out.back()].sentence == items_[i].sentence;
                if (how == Link::of && same_clause) continue;
                if ((items_[i].is(part) || items_[i].is(form)) && same_clause && is_had(items_, i))
                    continue;
                if (how == Link::with && same_clause && is_an_edge(items_[i])) {
                    out_.left_out.push_back(items_[i].said);
                    continue;
                }
                if (how == Link::with && same_clause && items_[i].is(article) &&
                    items_[i].as(article) == "?" && !is_own(items_[i - 1])) {
                    out_.left_out.push_back(items_[i].said);
                    continue;
                }
                if ((how == Link::modifies || how == Link::as) && same_clause) {
                    dropped_.push_back(out.back());
                    out.pop_back();
                }
            }
            out.push_back(i);
        }
        return out;
    }

    // "so he stops stealing my scarves", "worn like a bandana", "a vest that zips up": another
    // thing was wanted before, and this one is spoken of.
    bool is_beside_the_point(std::size_t at) const {
        constexpr std::string_view own[] = {"my", "his", "her", "their", "our", "your"};
        constexpr std::string_view likens[] = {"like", "resembling", "than"};
        if (items_[at - 1].clause != items_[at].clause) return false;
        const auto& before = items_[at - 1].text;
        if (before == "each" && (items_[at].is(form) || kind_of(items_[at]) == "panel"))
            return true;
        if (items_[at].is(form) && (before == "that" || before == "which")) return true;
        const bool one = at > 1 && is_determiner(before);
        if (has(likens, items_[one ? at - 2 : at - 1].last_word())) return true;
        if (!has(own, before) || at < 2) return false;
        const auto& verb = items_[at - 2];
        const bool joins = verb.is(joiner) && verb.last_word() != "match";
        return !joins && !verb.sign && !verb.is(negation) && verb.last_word() != "or";
    }

    // "How many panels would I sew together to get a throw?"
    bool are_joined_to(std::size_t last, std::size_t i) const {
        constexpr std::string_view joins[] = {"get", "make", "into", "for"};
        if (!items_[last].is(article) || kind_of(items_[last]) != "panel") return false;
        if (items_[last].sentence != items_[i].sentence || kind_of(items_[i]) == "panel")
            return false;
        for (auto n = last + 1; n < i; ++n)
            if (has(joins, items_[n].last_word()) || has(joins, items_[n].first_word()))
                return true;
        return false;
    }

    // "A kerchief, triangle, garter": a word of form behind a comma, and nothing joined.
    bool is_only_a_form(std::size_t last, std::size_t i) const {
        if (!items_[i].is(form)) return false;
        const bool listed = i > last + 1 && items_[i - 1].text == ",";
        return listed || link(items_, last, i) == Link::with;
    }

    // "wrap it up", "throw me that": a verb, unless an article stands before it.
    bool is_verb(std::size_t i) const {
        if (is_done_with_it(i)) return true;
        if (i + 1 >= items_.size() || items_[i].text.find(' ') != std::string::npos) return false;
        if (!is_pronoun(items_[i + 1].text) || items_[i + 1].clause != items_[i].clause)
            return false;
        return i == 0 || !is_determiner(items_[i - 1].text);
    }

    // "a scarf I can wrap three times round", "a shawl that wraps right over".
    bool is_done_with_it(std::size_t i) const {
        constexpr std::string_view verbs[] = {"wrap", "wraps", "throw", "throws", "cover"};
        constexpr std::string_view does[] = {"can", "could", "to",   "i",  "you",
                                             "she", "he",    "that", "we", "they"};
        if (i == 0 || items_[i - 1].clause != items_[i].clause) return false;
        const auto before = items_[i - 1].last_word();
        return has(verbs, items_[i].text) && has(does, before) &&
               (before != "that" || items_[i].text.ends_with('s'));
    }

    void set_verbs_aside() {
        for (std::size_t i = 0; i < items_.size(); ++i)
            if (is_done_with_it(i) && !is_head(i)) items_[i].idle = true;
    }

    bool can_be_a_part(std::size_t i) const {
        if (i == 0) return items_.size() < 3;  // "Cosy?"
        constexpr std::string_view unnamed[] = {"something", "anything", "summat"};
        if (has(unnamed, items_[i - 1].last_word())) return false;  // "something cosy"
        return items_[i - 1].clause == items_[i].clause &&
               (items_[i - 1].text == "a" || items_[i - 1].text == "an" ||
                items_[i - 1].is(craft) || items_[i - 1].is(number) || items_[i - 1].is(fabric) ||
                items_[i - 1].is(material) || items_[i - 1].is(filler) || items_[i - 1].is(body) ||
                items_[i - 1].is(person) || items_[i - 1].is(everyday));
    }

    void add(std::size_t place) {
        const auto& item = items_[place];
        auto sense = item.stranger
                         ? ArticleSense{item.text, {}, {}, {}}
                         : article_sense(item.as(item.is(article) ? article : part), item.text);
        if (sense.kind == "rug" && is_for_the_lap(place))
            sense.kind = "blanket", sense.form = "lap";
        if (!sense.person.empty() && out_.wearer == Wearer::unsaid) {
            out_.wearer = *wearer_named(sense.person);
            out_.wearer_said = item.said;
        }
        const auto whose = own_person(place, sense.person);
        for (auto& other : out_.wanted)
            if (other.kind == sense.kind && !is_anothers(place, whose)) {
                if (other.form.empty()) other.form = sense.form;
                return;
            }
        Wanted wanted;
        wanted.kind = sense.kind;
        wanted.said = item.text;
        wanted.form = sense.form;
        wanted.nearest = sense.nearest;
        wanted.known = kind_named(kinds_, sense.nearest.empty() ? sense.kind : sense.nearest);
        wanted.plural =
            item.text.ends_with('s') && !item.text.ends_with("'s") && !sense.kind.ends_with('s');
        if (item.text != sense.kind && item.text != sense.kind + "s")
            out_.taken_as.push_back(item.text + " as " + sense.kind);
        out_.wanted.push_back(std::move(wanted));
        places_.push_back(place);
    }

    // "a rug for the knees": nothing that is walked on.
    bool is_for_the_lap(std::size_t place) const {
        constexpr std::string_view where[] = {"knees", "knee", "lap", "legs", "wheelchair"};
        for (auto i = place + 1; i < items_.size() && i <= place + 4; ++i) {
            if (items_[i].sentence != items_[place].sentence || items_[i].sign) return false;
            if (has(where, items_[i].last_word())) return true;
        }
        return false;
    }

    // Whose it is by the word before it or by its own: "baby blanket", "men's socks".
    std::string own_person(std::size_t place, const std::string& by_kind) const {
        if (!by_kind.empty() || place == 0 || !items_[place - 1].live(person)) return by_kind;
        return items_[place - 1].as(person);
    }

    // "a throw or a baby blanket": two, though of one kind.
    bool is_anothers(std::size_t place, const std::string& whose) const {
        if (places_.empty() || link(items_, places_.back(), place) != Link::listed) return false;
        const auto& before = items_[places_.back()];
        const auto sense = before.is(article)
                               ? article_sense(before.as(article), before.text).person
                               : std::string();
        return own_person(places_.back(), sense) != whose;
    }

    // "triangle", "in strips"; alone it means the article that has such a form.
    void take_forms() {
        for (std::size_t i = 0; i < items_.size(); ++i) {
            if (!items_[i].live(form) || is_head(i)) continue;
            // "Would a stole bias?" asks.
            if (items_[i].asks && items_[i].is(topic) &&
                (i + 1 == items_.size() || !items_[i + 1].is(article)))
                continue;
            const auto& means = items_[i].as(form);
            if (means.find('>') != std::string::npos) {
                make_another(i, means);
                continue;
            }
            if (auto* to = nearest_thing(items_, places_, i, out_); to && to->form.empty())
                to->form = means == "?" ? items_[i].text : means;
        }
        for (const auto i : dropped_) {
            if (!items_[i].is(article)) continue;
            const auto sense = article_sense(items_[i].as(article), items_[i].text);
            if (auto* to = nearest_thing(items_, places_, i, out_); to && to->form.empty())
                to->form = sense.form;
        }
    }

    // "gloves, the fingers cut off": mitts, as the table says.
    void make_another(std::size_t i, const std::string& means) {
        const auto sign = means.find('>');
        auto* to = nearest_thing(items_, places_, i, out_);
        if (!to || to->kind != means.substr(0, sign)) return;
        out_.taken_as.push_back(to->said + ", " + items_[i].said + " as " + means.substr(sign + 1));
        to->kind = means.substr(sign + 1);
        to->nearest.clear();
        to->known = kind_named(kinds_, to->kind);
    }

    bool is_head(std::size_t i) const {
        return std::find(places_.begin(), places_.end(), i) != places_.end();
    }

    bool are_alternatives() const {
        if (places_.size() < 2) return false;
        for (std::size_t n = 1; n < places_.size(); ++n)
            for (auto i = places_[n - 1] + 1; i < places_[n]; ++i) {
                if (items_[i].text == "?") return true;
                if (items_[i].is(joiner) && items_[i].as(joiner) == "or") return true;
            }
        for (const auto& item : items_)
            if (item.text == "if not" || item.text == "any of those" || item.text == "any of" ||
                item.text == "whichever")
                return true;
        return false;
    }

    std::vector<Item>& items_;
    const ArticleKinds& kinds_;
    Taken& out_;
    std::vector<std::size_t> places_;  // of out_.wanted
    bool verbs_too_ = false;
    std::vector<std::size_t> dropped_;  // articles that only modify another
};

}  // namespace

bool is_thing(const Item& item) { return item.live(WordClass::article) || is_stranger(item); }

std::vector<std::size_t> take_things(std::vector<Item>& items, const ArticleKinds& kinds,
                                     Taken& out) {
    return Things(items, kinds, out).take();
}

bool is_for_the_foot(const Taken& taken) {
    return std::any_of(taken.wanted.begin(), taken.wanted.end(),
                       [](const Wanted& wanted) { return wanted.known.on_feet; });
}

std::string kind_of(const Item& item) {
    return article_sense(item.as(WordClass::article), item.text).kind;
}

}  // namespace gristwright
