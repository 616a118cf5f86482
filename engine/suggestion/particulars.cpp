#include "engine/suggestion/particulars.hpp"

#include <algorithm>

#include "engine/suggestion/reading.hpp"

namespace gristwright {
namespace {

using enum WordClass;

// Of the class of colours, but none itself.
constexpr std::string_view no_colours[] = {
    "colour",   "colours",    "color",   "colors", "colorway",     "colourway",
    "dye",      "dyed",       "bright",  "dark",   "light",        "pale",
    "gradient", "variegated", "natural", "undyed", "gradient dyed"};
constexpr std::string_view counts_colours[] = {"colour", "colours", "color",
                                               "colors", "shade",   "shades"};
constexpr std::string_view singly[] = {"one", "1", "single", "a single", "just one", "only one"};

bool is_joined(const std::vector<Item>& items, std::size_t a, std::size_t b) {
    for (auto i = a + 1; i < b; ++i) {
        const auto& item = items[i];
        const bool joins = item.text == "," || item.text == "/" || item.text == "&" ||
                           (item.is(joiner) && item.as(joiner) != "or");
        if (!joins && !item.is(colour)) return false;
    }
    return b > a + 1;
}

// How many colours stand side by side.
int colours_in_a_row(const std::vector<Item>& items) {
    std::vector<std::string> row, best;
    std::size_t last = 0;
    for (std::size_t i = 0; i < items.size(); ++i) {
        if (!is_a_colour(items[i])) continue;
        if (!row.empty() && !is_joined(items, last, i)) row.clear();
        if (std::find(row.begin(), row.end(), items[i].text) == row.end())
            row.push_back(items[i].text);
        last = i;
        if (row.size() > best.size()) best = row;
    }
    return static_cast<int>(best.size());
}

// "some of that cream you've got", "your grey", "the brown": a yarn by its colour alone, and not
// "a red brim".
bool stands_for_a_yarn(const std::vector<Item>& items, std::size_t at) {
    constexpr std::string_view goes_on[] = {"you",   "you've", "that", "from", "we",    "i",
                                            "for",   "one",    "yarn", "wool", "stuff", "handspun",
                                            "skein", "ball",   "at",   "in",   "left",  "she"};
    if (!items[at].live(colour)) return false;
    const auto next = at + 1;
    return next == items.size() || items[next].sign || items[next].clause != items[at].clause ||
           has(goes_on, items[next].first_word());
}

// "with" or "and" before it, and only "some of that" between.
bool is_joined_to_ours(const std::vector<Item>& items, std::size_t at) {
    constexpr std::string_view between[] = {"some", "of",   "that",   "the",   "your", "a",
                                            "bit",  "this", "little", "those", "my",   "bits"};
    constexpr std::string_view ours[] = {"this", "it", "yours", "yarn"};
    bool any = false;
    for (auto i = at; i-- > 0 && i + 7 > at && items[i].clause == items[at].clause;) {
        if (items[i].last_word() == "with") return any;
        if (items[i].is(joiner) && items[i].as(joiner) == "and")
            return any && i > 0 && has(ours, items[i - 1].last_word());
        if (!has(between, items[i].first_word()) || !has(between, items[i].last_word()))
            return items[i].first_word() == "with" && has(between, items[i].last_word());
        any = true;
    }
    return false;
}

// "in your yarn and black", "this with cream".
bool has_a_colour_beside_ours(const std::vector<Item>& items) {
    constexpr std::string_view ours[] = {"yarn", "yours", "this", "it", "that"};
    for (std::size_t i = 1; i < items.size(); ++i)
        if (stands_for_a_yarn(items, i) && is_joined_to_ours(items, i)) return true;
    for (std::size_t i = 2; i < items.size(); ++i)
        if (is_a_colour(items[i]) && items[i - 1].is(joiner) && items[i - 1].as(joiner) == "and" &&
            has(ours, items[i - 2].last_word()))
            return true;
    return false;
}

}  // namespace

bool is_a_colour(const Item& i) { return i.live(colour) && !has(no_colours, i.text); }

void take_colours(std::vector<Item>& items, Taken& out) {
    for (std::size_t i = 0; i + 1 < items.size(); ++i) {
        auto& amount = items[i].amount;
        if (!amount || items[i].idle || amount->of != Amount::Of::number) continue;
        if (!has(counts_colours, items[i + 1].text)) continue;
        out.colours = static_cast<int>(amount->number);
        amount->read = true;
    }
    if (out.colours == 0) out.colours = colours_in_a_row(items);
    if (out.colours < 2 && has_a_colour_beside_ours(items)) out.colours = 2;
    if (out.colours > 1 && out.role == YarnRole::unsaid) out.role = YarnRole::with_another;
}

void take_one_alone(const std::vector<Item>& items, Taken& out) {
    if (out.wanted.size() != 1 || out.wanted.front().count > 1) return;
    const auto& wanted = out.wanted.front();
    if (!wanted.known.in_pairs || wanted.said.ends_with('s')) return;
    for (std::size_t i = 1; i < items.size(); ++i)
        if (items[i].text == wanted.said && has(singly, items[i - 1].text))
            out.one_alone = true, out.share_of_thing = 0.5;
}

// What "one" and "the other" of two are made as: each by its own word of that class.
static std::vector<const Item*> each_of_two(const std::vector<Item>& items, WordClass of) {
    std::vector<const Item*> out;
    for (std::size_t i = 1; i < items.size(); ++i) {
        const bool one = has(singly, items[i - 1].text) || items[i - 1].text == "the other";
        if (one && items[i].live(of)) out.push_back(&items[i]);
    }
    if (out.size() != 2 || out[0]->as(of) == out[1]->as(of)) out.clear();
    return out;
}

static void make_two(Taken& out) {
    out.wanted.front().count = 1;
    out.wanted.front().plural = false;
    out.wanted.push_back(out.wanted.front());
}

void part_by_craft(const std::vector<Item>& items, Taken& out) {
    if (out.wanted.size() != 1 || out.wanted.front().count != 2) return;
    const auto crafts = each_of_two(items, craft);
    const auto fabrics = each_of_two(items, fabric);
    if (crafts.empty() && fabrics.empty()) return;
    make_two(out);
    for (std::size_t i = 0; i < fabrics.size(); ++i) {
        out.wanted[i].fabric = fabric_of(*fabrics[i]);
        out.wanted[i].fabric_said = fabrics[i]->text;
    }
    if (crafts.empty()) return;
    for (std::size_t i = 0; i < 2; ++i)
        out.wanted[i].craft = crafts[i]->as(craft) == "woven" ? Craft::woven : Craft::knitted;
    out.craft.reset();
    out.both_crafts = false;
}

}  // namespace gristwright
