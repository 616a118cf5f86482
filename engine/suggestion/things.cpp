#include <algorithm>
#include <cmath>

#include "engine/suggestion/beside.hpp"
#include "engine/suggestion/link.hpp"
#include "engine/suggestion/reading.hpp"

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

NamedFabric fabric_sense(const std::string& means) {
    // A weave's own name may hold a stroke ("2/2 twill"): the first one parts the crafts.
    const auto stroke = means.find('/');
    return {means.substr(0, stroke), means.substr(stroke + 1)};
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

    void take() {
        auto places = heads(article);
        verbs_too_ = places.empty();  // "swatch it first": nothing else can be meant
        if (places.empty()) places = heads(article);
        if (places.empty()) places = heads(part);
        for (const auto place : places) add(place);
        take_forms();
        take_fabrics();
        take_crafts();
        take_counts();
        out_.alternatives = are_alternatives();
    }

  private:
    // The articles that count: of two without a word between the last is the head.
    std::vector<std::size_t> heads(WordClass of) {
        std::vector<std::size_t> out;
        for (std::size_t i = 0; i < items_.size(); ++i) {
            const bool stranger = of == article && is_stranger(items_[i]);
            if ((!stranger && !items_[i].live(of)) || (!verbs_too_ && is_verb(i)) ||
                (of == part && !can_be_a_part(i)))
                continue;
            if (!out.empty()) {
                if (of == article && is_only_a_form(out.back(), i)) continue;
                const auto how = link(items_, out.back(), i);
                const bool same_clause = items_[out.back()].sentence == items_[i].sentence;
                if (how == Link::of && same_clause) continue;
                if ((how == Link::modifies || how == Link::as) && same_clause) {
                    dropped_.push_back(out.back());
                    out.pop_back();
                }
            }
            out.push_back(i);
        }
        return out;
    }

    // "A kerchief, triangle, garter": a word of form behind a comma, and nothing joined.
    bool is_only_a_form(std::size_t last, std::size_t i) const {
        if (!items_[i].is(form)) return false;
        const bool listed = i == last + 2 && items_[last + 1].text == ",";
        return listed || link(items_, last, i) == Link::with;
    }

    // "wrap it up", "throw me that": a verb, unless an article stands before it.
    bool is_verb(std::size_t i) const {
        if (i + 1 >= items_.size() || items_[i].text.find(' ') != std::string::npos) return false;
        if (!is_pronoun(items_[i + 1].text) || items_[i + 1].clause != items_[i].clause)
            return false;
        return i == 0 || !is_determiner(items_[i - 1].text);
    }

    bool can_be_a_part(std::size_t i) const {
        if (i == 0) return items_.size() < 3;  // "Cosy?"
        return items_[i - 1].clause == items_[i].clause &&
               (items_[i - 1].text == "a" || items_[i - 1].text == "an" ||
                items_[i - 1].is(craft) || items_[i - 1].is(number) || items_[i - 1].is(fabric) ||
                items_[i - 1].is(material) || items_[i - 1].is(filler) || items_[i - 1].is(body) ||
                items_[i - 1].is(person) || items_[i - 1].is(everyday));
    }

    void add(std::size_t place) {
        const auto& item = items_[place];
        const auto sense =
            item.stranger ? ArticleSense{item.text, {}, {}, {}}
                          : article_sense(item.as(item.is(article) ? article : part), item.text);
        if (!sense.person.empty() && out_.wearer == Wearer::unsaid) {
            out_.wearer = *wearer_named(sense.person);
            out_.wearer_said = item.said;
        }
        for (auto& other : out_.wanted)
            if (other.kind == sense.kind) {
                if (other.form.empty()) other.form = sense.form;
                return;
            }
        Wanted wanted;
        wanted.kind = sense.kind;
        wanted.said = item.text;
        wanted.form = sense.form;
        wanted.nearest = sense.nearest;
        wanted.known = kind_named(kinds_, sense.nearest.empty() ? sense.kind : sense.nearest);
        wanted.plural = !item.text.empty() && item.text.back() == 's' && sense.kind.back() != 's';
        if (item.text != sense.kind && item.text != sense.kind + "s")
            out_.taken_as.push_back(item.text + " as " + sense.kind);
        out_.wanted.push_back(std::move(wanted));
        places_.push_back(place);
    }

    // "triangle", "in strips"; alone it means the article that has such a form.
    void take_forms() {
        for (std::size_t i = 0; i < items_.size(); ++i) {
            if (!items_[i].live(form) || is_head(i)) continue;
            // "18 inches square" is a size.
            if (i > 0 && items_[i - 1].amount && items_[i].is(tool)) continue;
            // "Would a stole bias?" asks.
            if (items_[i].asks && items_[i].is(topic) &&
                (i + 1 == items_.size() || !items_[i + 1].is(article)))
                continue;
            const auto& means = items_[i].as(form);
            if (auto* to = nearest_thing(i); to && to->form.empty())
                to->form = means == "?" ? items_[i].text : means;
        }
        for (const auto i : dropped_) {
            if (!items_[i].is(article)) continue;
            const auto sense = article_sense(items_[i].as(article), items_[i].text);
            if (auto* to = nearest_thing(i); to && to->form.empty()) to->form = sense.form;
        }
    }

    bool is_head(std::size_t i) const {
        return std::find(places_.begin(), places_.end(), i) != places_.end();
    }

    // The next article before a sign or a joiner; else the last one before.
    Wanted* nearest_thing(std::size_t at) {
        for (std::size_t n = 0; n < places_.size(); ++n) {
            if (places_[n] < at) continue;
            bool clear = true;
            for (auto i = at + 1; i < places_[n]; ++i)
                clear = clear && !items_[i].sign && !items_[i].is(joiner);
            if (clear) return &out_.wanted[n];
            break;
        }
        for (auto n = places_.size(); n-- > 0;)
            if (places_[n] < at) return &out_.wanted[n];
        return places_.empty() ? nullptr : &out_.wanted.front();
    }

    void take_fabrics() {
        for (std::size_t i = 0; i < items_.size(); ++i) {
            if (!items_[i].live(fabric) || is_dropped_article(i)) continue;
            const auto sense = fabric_sense(items_[i].as(fabric));
            if (auto* to = nearest_thing(i); to && !to->fabric.named()) {
                to->fabric = sense;
                to->fabric_said = items_[i].text;
            }
            if (out_.fabric.named()) continue;
            out_.fabric = sense;
            out_.fabric_said = items_[i].text;
            const auto& as = sense.knitted.empty() ? sense.woven : sense.knitted;
            if (items_[i].text != as) out_.taken_as.push_back(items_[i].text + " as " + as);
        }
    }

    // "A woven stole or a knitted shawl": each its own.
    void take_crafts() {
        for (std::size_t i = 0; places_.size() > 1 && i < items_.size(); ++i) {
            if (!items_[i].live(craft)) continue;
            if (auto* to = nearest_thing(i); to && !to->craft)
                to->craft = items_[i].as(craft) == "woven" ? Craft::woven : Craft::knitted;
        }
    }

    bool is_dropped_article(std::size_t i) const { return items_[i].is(article); }

    // "hats for the twins": one each.
    void take_twins() {
        for (std::size_t i = 0; i < items_.size(); ++i)
            if (items_[i].is(person) && items_[i].text.find("twin") != std::string::npos)
                if (auto* to = last_before(i); to && to->plural && to->count == 1) to->count = 2;
    }

    // "mother and daughter hats": one each.
    void take_two_people() {
        for (std::size_t i = 0; i + 3 < items_.size(); ++i) {
            if (!items_[i].is(person) || !items_[i + 2].is(person)) continue;
            if (!items_[i + 1].is(joiner) || items_[i + 1].as(joiner) != "and") continue;
            for (std::size_t n = 0; n < places_.size(); ++n)
                if (places_[n] == i + 3 && out_.wanted[n].plural && out_.wanted[n].count == 1)
                    out_.wanted[n].count = 2;
        }
    }

    // "six beanies", "nine of them", "cowls for two sisters".
    void take_counts() {
        take_twins();
        take_two_people();
        for (std::size_t i = 0; i < items_.size(); ++i) {
            auto& item = items_[i];
            if (!item.amount || item.amount->of != Amount::Of::number || item.idle) continue;
            if (stands_after_age(items_, i) || describes(items_, i)) continue;
            const double n = item.amount->number;
            if (n < 2 || n > 999 || n != std::floor(n)) continue;
            if (auto* to = counted(i)) {
                to->count = static_cast<int>(n);
                item.idle = true;
            }
        }
    }

    // "towels, set of 4".
    bool is_set_of(std::size_t at) const {
        if (at < 1) return false;
        const auto& before = items_[at - 1].text;
        const bool set = at > 1 && before == "of" && items_[at - 2].text.starts_with("set");
        return (set || before == "set of" || before == "sets of") && ends_here(at);
    }

    Wanted* counted(std::size_t at) {
        if (is_set_of(at)) return last_before(at);
        if (is_for_so_many(at) || is_times(at)) {
            auto* to = last_before(at);
            return to && (to->plural || is_times(at)) ? to : nullptr;
        }
        for (auto i = at + 1; i < items_.size() && i <= at + 5; ++i) {
            const auto& item = items_[i];
            if (item.text.substr(0, 2) == "of" && item.text != "of" && last_before(at))
                return last_before(at);
            if (item.is(person) && at > 0 && items_[at - 1].text.substr(0, 3) == "for") {
                auto* to = last_before(at);
                return to && (to->plural || each_has_one(items_, at, *to)) ? to : nullptr;
            }
            for (std::size_t n = 0; n < places_.size(); ++n)
                if (places_[n] == i) return &out_.wanted[n];
            // "two 70 inch long scarves".
            const bool length = item.amount && item.amount->length;
            const bool of_length = items_[i - 1].amount && items_[i - 1].amount->length;
            const bool measure = (item.is(unit) || item.is(tool)) && !item.is(form) && !of_length;
            if (item.sign || (item.amount && !length) || item.is(joiner) || measure) return nullptr;
            if (item.text == "of" && i + 1 < items_.size() && items_[i + 1].text == "them")
                return last_before(at);
        }
        return nullptr;
    }

    // "place mats for six": nothing else is counted before the clause ends.
    bool is_for_so_many(std::size_t at) const {
        if (at == 0) return false;
        const auto& before = items_[at - 1].text;
        if (before != "for" && before.substr(before.find_last_of(' ') + 1) != "for") return false;
        return ends_here(at);
    }

    bool ends_here(std::size_t at) const {
        return at + 1 == items_.size() || items_[at + 1].sign || items_[at + 1].is(joiner) ||
               items_[at + 1].clause != items_[at].clause;
    }

    // "mug mats x 8", "hats (4)".
    bool is_times(std::size_t at) const {
        if (at == 0 || items_[at].amount->times_next) return false;
        const auto& before = items_[at - 1].text;
        const bool closed = at + 1 < items_.size() && items_[at + 1].text == ")";
        return (before == "x" && at > 1 && items_[at - 2].is(article)) ||
               (before == "(" && closed && at > 1 && items_[at - 2].is(article));
    }

    Wanted* last_before(std::size_t at) {
        for (auto n = places_.size(); n-- > 0;)
            if (places_[n] < at) return &out_.wanted[n];
        return nullptr;
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

void take_things(std::vector<Item>& items, const ArticleKinds& kinds, Taken& out) {
    Things(items, kinds, out).take();
}

bool is_for_the_foot(const Taken& taken) {
    return std::any_of(taken.wanted.begin(), taken.wanted.end(),
                       [](const Wanted& wanted) { return wanted.known.on_feet; });
}

std::string kind_of(const Item& item) {
    return article_sense(item.as(WordClass::article), item.text).kind;
}

}  // namespace gristwright
