#include "engine/suggestion/refusing.hpp"

#include "engine/suggestion/link.hpp"
#include "engine/suggestion/reading.hpp"

namespace gristwright {
namespace {

using enum WordClass;

constexpr std::size_t most_between = 8;  // items between a thing and its "no"
constexpr std::string_view parts_from[] = {",", ":", "-", "?", "=", "...", "!", "(", ";"};
constexpr std::string_view breaths[] = {"oh", "er", "um", "well", "ha", "god", "hmm", "erm", "eh"};

bool can_be_refused(const Item& item) {
    return item.is(article) || item.is(fabric) || item.is(weight) || item.is(technique) ||
           item.is(role);
}

// Past what is named with it: "socks or a scarf? No."
std::size_t behind_the_things(const std::vector<Item>& items, std::size_t at) {
    auto i = at + 1;
    while (i < items.size() && i < at + most_between &&
           (can_be_refused(items[i]) || joins_alike(items[i]) || is_determiner(items[i].text)))
        ++i;
    return i;
}

bool ends(const std::vector<Item>& items, std::size_t at) {
    return at + 1 >= items.size() || items[at + 1].sign || items[at + 1].clause != items[at].clause;
}

// A picture that says no.
bool is_crossed(const Item& item) {
    return static_cast<unsigned char>(item.text[0]) >= 0x80 && item.sounds("no");
}

// "a hat over a scarf any day".
bool gives_way(const std::vector<Item>& items, std::size_t at) {
    const bool one = at > 0 && is_determiner(items[at - 1].text);
    const auto over = one ? 2U : 1U;
    if (at < over + 1 || at + 1 >= items.size() || !items[at + 1].sounds("always")) return false;
    const auto& between = items[at - over].text;
    return (between == "over" || between == "before") && items[at - over - 1].is(article);
}

// "less scarf, more hat", "enough scarves!"
bool is_too_much(const std::vector<Item>& items, std::size_t at) {
    if (at == 0 || items[at].asks) return false;
    const auto& before = items[at - 1];
    if (before.text == "less" || before.text == "fewer") return true;
    const bool begins = at == 1 || items[at - 2].sentence != before.sentence;
    return before.text == "enough" && begins && at + 1 < items.size() && items[at + 1].sign;
}

// "We've done scarves to death in this group", not "I love hats to death".
bool is_done_to_death(const std::vector<Item>& items, std::size_t at, std::size_t behind) {
    constexpr std::string_view did[] = {"done", "did", "doing", "knitted", "made"};
    if (behind + 1 >= items.size() || items[behind].text != "to" ||
        items[behind + 1].text != "death")
        return false;
    for (auto i = at; i-- > 0 && items[i].clause == items[at].clause;)
        if (has(did, items[i].last_word())) return true;
    return false;
}

}  // namespace

bool is_refused(const std::vector<Item>& items, std::size_t at) {
    if (!can_be_refused(items[at])) return false;
    if (gives_way(items, at) || is_too_much(items, at)) return true;
    auto i = behind_the_things(items, at);
    // "socks ❌ mittens ✅", and "❌ socks ✅ mittens".
    if (i < items.size() && is_crossed(items[i])) return true;
    if (at > 0 && is_crossed(items[at - 1]) && (at == 1 || !can_be_refused(items[at - 2])))
        return true;
    if (i >= items.size()) return false;
    // "scarves are boring": said of it, and not asked.
    const auto& before = items[i - 1];  // "a pair of socks or no"
    if (before.is(joiner) && before.as(joiner) == "or") return false;
    if (is_done_to_death(items, at, i)) return true;
    if (!items[i].sign) return items[i].sounds("no") && !items[i].asks && ends(items, i);
    if (!has(parts_from, items[i].text)) return false;
    while (i < items.size() && (items[i].sign || has(breaths, items[i].text))) ++i;
    return i < items.size() && items[i].sounds("no") && !items[i].asks && ends(items, i);
}

}  // namespace gristwright
