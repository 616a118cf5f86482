#include "engine/suggestion/wearers.hpp"

#include <algorithm>

#include "engine/suggestion/in_full.hpp"
#include "engine/suggestion/limits.hpp"
#include "engine/suggestion/reading.hpp"

namespace gristwright {
namespace {

using enum WordClass;
using Of = Amount::Of;

constexpr std::string_view leads_to_a_person[] = {"of",   "a",    "an",  "the",  "my",  "your",
                                                  "this", "that", "our", "it's", "her", "his"};
constexpr std::string_view yarn_words[] = {"yarn", "it",   "batch",  "skein", "skeins",
                                           "wool", "what", "fleece", "total", "lot"};

bool is_share(const Item& item) {
    return item.amount && !item.idle && item.amount->of == Of::number && item.amount->number > 0 &&
           item.amount->number < 1;
}

// Nothing between but "and", a comma and words of small weight; and one of the first two.
bool are_listed(const std::vector<Item>& items, std::size_t a, std::size_t b) {
    if (items[a].sentence != items[b].sentence || b > a + 7) return false;
    return std::any_of(items.begin() + static_cast<std::ptrdiff_t>(a) + 1,
                       items.begin() + static_cast<std::ptrdiff_t>(b), [](const Item& i) {
                           return i.text == "," || i.text == "&" || i.text == "to" ||
                                  (i.is(joiner) && i.as(joiner) == "and");
                       });
}

struct Person {
    std::size_t at = 0;
    Wearer wearer = Wearer::unsaid;
    std::string body;
    std::optional<double> years;
};

std::optional<Person> person_at(const std::vector<Item>& items, std::size_t at) {
    if (!items[at].live(person)) return {};
    // Some words mean a wearer only behind "for": "a sailor's cap" is anybody's.
    if (items[at].as(person).ends_with(" for") && !stands_after_for(items, at)) return {};
    const auto means = items[at].as(person).substr(0, items[at].as(person).find(' '));
    const auto colon = means.find(':');
    if (items[at].grown) return Person{at, Wearer::adult, {}, {}};
    if (means == "kin") return Person{at, items[at].small ? Wearer::child : Wearer::adult, {}, {}};
    const auto wearer = wearer_named(means.substr(0, colon));
    if (!wearer ||
        (*wearer != Wearer::baby && *wearer != Wearer::child && *wearer != Wearer::adult))
        return {};
    return Person{at, *wearer, colon == std::string::npos ? "" : means.substr(colon + 1), {}};
}

// Of a word that is a thing and somebody's: "bootees", "bib".
std::optional<Person> person_at_kind(const Item& item) {
    if (!item.is(article)) return {};
    const auto& means = item.as(article);
    const auto at = means.find('@');
    const auto wearer = at == std::string::npos ? std::nullopt : wearer_named(means.substr(at + 1));
    if (!wearer) return {};
    return Person{0, *wearer, "", {}};
}

// "a man and a toddler": people of different sizes, told in one row.
std::vector<Person> people_of(const std::vector<Item>& items) {
    std::vector<Person> out;
    for (std::size_t i = 0; i < items.size(); ++i) {
        if (items[i].is(article)) continue;
        const auto one = person_at(items, i);
        if (!one) continue;
        if (!out.empty() && !are_listed(items, out.back().at, i)) return {};
        out.push_back(*one);
    }
    return out;
}

Wearer of_age(double years) { return years < 2 ? Wearer::baby : Wearer::child; }

// "aged 4 and 8", "a 4 year old and a 7 year old".
std::vector<Person> ages_of(const std::vector<Item>& items) {
    std::vector<Person> out;
    for (std::size_t i = 0; i < items.size(); ++i) {
        const auto& amount = items[i].amount;
        if (!amount || amount->times_next) continue;
        const bool in_brackets = amount->of == Of::number && i > 1 && items[i - 1].text == "(" &&
                                 items[i - 2].is(person);  // "the grandchildren (5, 7 and 10)"
        const bool first = amount->of == Of::age || in_brackets || stands_after_age(items, i);
        const bool next = !out.empty() && amount->of == Of::number && i <= out.back().at + 2 &&
                          are_listed(items, out.back().at, i);
        if (next && items[i - 1].text == "to") return {};  // "ages 2 to 11"
        if (!first && !next) continue;
        if (amount->number >= 17) return {};  // grown up
        out.push_back({i, of_age(amount->number), "", amount->number});
    }
    return out;
}

bool differ(const std::vector<Person>& people) {
    return std::any_of(people.begin(), people.end(), [&](const Person& p) {
        return p.wearer != people.front().wearer || p.body != people.front().body ||
               p.years != people.front().years;
    });
}

}  // namespace

void take_shares(const std::vector<Item>& items, Taken& out) {
    for (std::size_t i = 0; i < items.size(); ++i) {
        if (!is_share(items[i])) continue;
        auto j = i + 1;
        while (j < items.size() && j < i + 3 && has(leads_to_a_person, items[j].first_word()) &&
               !items[j].is(article))
            ++j;
        if (j >= items.size() || items[j].sentence != items[i].sentence) continue;
        const bool led = j > i + 1 || items[i].text.ends_with(" of");
        if (items[j].live(article) && (led || !items[j].text.ends_with('s')))
            out.share_of_thing = items[i].amount->number;
        else if (led && (has(yarn_words, items[j].first_word()) || items[j - 1].text == "of it")) {
            if (limit_of(items, i) == Limit::least)
                out.left_out.push_back(limited(items, i) + " of the yarn");
            else
                out.share_of_yarn = items[i].amount->number;
        }
    }
}

void part_by_wearer(const std::vector<Item>& items, Taken& out) {
    if (out.wanted.size() != 1) return;
    auto people = ages_of(items);
    if (people.size() < 2) people = people_of(items);
    auto& first = out.wanted.front();
    const auto many = static_cast<int>(people.size());
    const bool of_several = first.plural || first.kind.back() == 's' || first.count == many;
    if (many < 2 || many > 6 || !differ(people) || !of_several) return;
    if (first.count > 1 && first.count != many) {
        out.left_out.push_back(items[people.front().at].said + " and " +
                               items[people.back().at].said);
        return;
    }
    first.count = 1;
    first.plural = false;
    const auto pattern = first;
    out.wanted.assign(people.size(), pattern);
    for (std::size_t i = 0; i < people.size(); ++i) {
        out.wanted[i].wearer = people[i].wearer;
        out.wanted[i].body = people[i].body;
        out.wanted[i].years = people[i].years;
    }
}

namespace {

// Whose a thing is: told before it ("baby hat") or behind it ("a hat for grandpa").
struct Owned {
    std::optional<Person> person;
    bool before = false;
};

// Where a thing stands in the items, and which of those wanted it is.
struct Mention {
    std::size_t at = 0, of = 0;
};

// A thing may be named again: "a hat and mitt set, hat for me and mitts for my daughter".
std::vector<Mention> mentions_of(const std::vector<Item>& items,
                                 const std::vector<std::size_t>& places, const Taken& out) {
    std::vector<Mention> all;
    for (std::size_t i = 0; i < items.size(); ++i) {
        const auto here = std::find(places.begin(), places.end(), i);
        if (here != places.end()) {
            all.push_back({i, static_cast<std::size_t>(here - places.begin())});
            continue;
        }
        if (!items[i].live(article)) continue;
        for (std::size_t n = 0; n < out.wanted.size(); ++n)
            if (i > places[n] && kind_of(items[i]) == out.wanted[n].kind) {
                all.push_back({i, n});
                break;
            }
    }
    return all;
}

// The thing that a person's word belongs to: the next that it describes, else the last before.
const Mention* thing_of(const std::vector<Item>& items, const std::vector<Mention>& all,
                        std::size_t at) {
    const Mention* before = nullptr;
    for (const auto& mention : all) {
        if (mention.at <= at) {
            before = &mention;
            continue;
        }
        for (auto i = at + 1; i < mention.at; ++i)
            if (!describes_too(items[i]) || items[i].clause != items[at].clause) return before;
        return &mention;
    }
    return before;
}

// Whoever writes is grown up.
bool is_the_writer(const std::vector<Item>& items, std::size_t at) {
    const auto& text = items[at].text;
    return text == "for me" || text == "for myself" ||
           (text == "me" && at > 0 && items[at - 1].last_word() == "for");
}

std::vector<Owned> owners_of(const std::vector<Item>& items, const std::vector<Mention>& all) {
    std::size_t many = 0;
    for (const auto& mention : all) many = std::max(many, mention.of + 1);
    std::vector<Owned> out(many);
    std::optional<Person> of_all;
    for (const auto& mention : all)
        if (const auto person = person_at_kind(items[mention.at])) out[mention.of] = {person, true};
    for (std::size_t i = 0; i < items.size(); ++i) {
        auto person = items[i].is(article) ? std::nullopt : person_at(items, i);
        if (!person && is_the_writer(items, i)) person = Person{i, Wearer::adult, "", {}};
        if (!person) continue;
        if (i > 0 && items[i - 1].amount && items[i - 1].amount->of == Of::age)
            person->years = items[i - 1].amount->number;
        const auto* thing = thing_of(items, all, i);
        if (thing && !out[thing->of].person) out[thing->of] = {person, thing->at > i};
        if (!thing && !all.empty() && i < all.front().at) of_all = person;
    }
    // "Baby set: bonnet, bootees and a coat".
    for (auto& owned : out)
        if (!owned.person) owned.person = of_all;
    return out;
}

// A thing without a word of its own is the next one's where that is told behind both ("hat and
// mitts for mum"), else the one's before it.
void share_owners(std::vector<Owned>& owned) {
    for (auto n = owned.size(); n-- > 1;)
        if (!owned[n - 1].person && owned[n].person && !owned[n].before) owned[n - 1] = owned[n];
    for (std::size_t n = 1; n < owned.size(); ++n)
        if (!owned[n].person) owned[n].person = owned[n - 1].person;
}

bool are_alike(const std::vector<Owned>& owned) {
    return std::all_of(owned.begin(), owned.end(), [&](const Owned& o) {
        const auto& first = owned.front().person;
        if (!o.person || !first) return !o.person && !first;
        return o.person->wearer == first->wearer && o.person->body == first->body &&
               o.person->years == first->years;
    });
}

}  // namespace

void part_by_thing(const std::vector<Item>& items, const std::vector<std::size_t>& places,
                   Taken& out) {
    if (out.wanted.size() < 2 || places.size() != out.wanted.size()) return;
    auto owned = owners_of(items, mentions_of(items, places, out));
    share_owners(owned);
    if (are_alike(owned)) return;
    for (std::size_t n = 0; n < owned.size(); ++n) {
        auto& wanted = out.wanted[n];
        const auto& person = owned[n].person;
        wanted.wearer = person ? person->wearer : wanted.known.worn ? Wearer::adult : Wearer::home;
        if (person) wanted.body = person->body, wanted.years = person->years;
    }
    const auto small = [](const Wanted& w) {
        return w.wearer == Wearer::baby || w.wearer == Wearer::child;
    };
    // An age that was told is of the one small person there is.
    if (std::count_if(out.wanted.begin(), out.wanted.end(), small) == 1)
        for (auto& wanted : out.wanted)
            if (small(wanted) && !wanted.years) wanted.years = out.years;
}

}  // namespace gristwright
