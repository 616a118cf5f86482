#include "engine/suggestion/link.hpp"

namespace gristwright {

using enum WordClass;

bool is_determiner(const std::string& text) {
    for (const char* word :
         {"a", "an", "the", "my", "this", "that", "some", "your", "big", "his", "her", "another"})
        if (text == word) return true;
    return false;
}

bool joins_alike(const Item& item) {
    return item.is(WordClass::joiner) &&
           (item.as(WordClass::joiner) == "and" || item.as(WordClass::joiner) == "or");
}

static bool is_picture(const Item& item) {
    return static_cast<unsigned char>(item.text[0]) >= 0x80;
}

// "socks for him mitts for me": nothing of his.
static bool is_whole_person(const Item& item) {
    constexpr std::string_view people[] = {"me", "him", "them", "us", "you", "myself"};
    return has(people, item.text) ||
           (item.text.starts_with("for ") && has(people, item.last_word()));
}

Link link(const std::vector<Item>& items, std::size_t a, std::size_t b) {
    auto found = Link::modifies;
    int loose = 0;  // words between that describe nothing
    if (b == a + 1 && is_picture(items[a]) && is_picture(items[b])) return Link::listed;
    for (auto i = a + 1; i < b; ++i) {
        const auto& item = items[i];
        const auto first = item.first_word();
        if (found == Link::of && i + 1 == b && is_whole_person(item)) return Link::listed;
        if (item.sign || (item.is(joiner) && item.as(joiner) != "with")) return Link::listed;
        if (item.is(joiner) || first == "with")
            found = Link::with;
        else if (first == "of" || first == "for" || first == "to" || first == "on" ||
                 first == "in" || first == "under" || first == "inside" || first == "from")
            found = Link::of;
        else if (first == "as" || first == "into")
            found = Link::as;
        else if (!item.is(fabric) && !item.is(form) && !item.is(craft) && !item.is(technique) &&
                 !item.is(colour) && !item.is(material) && !item.is(number) && !item.amount &&
                 found == Link::modifies && item.text != "s" &&
                 (++loose > 2 || (i + 1 == b && is_determiner(item.text))))
            found = Link::apart;
    }
    return found;
}

}  // namespace gristwright
