#include "engine/lay/colour_order.hpp"

#include "engine/units/failure.hpp"

namespace gristwright::lay {
namespace {

int at(const std::string& order, int place) {
    if (order.empty()) return 0;
    const int n = static_cast<int>(order.size());
    return order[static_cast<std::size_t>(((place % n) + n) % n)] - '1';
}

std::string checked(std::string_view part) {
    if (part.empty() || part.find_first_not_of("12") != std::string_view::npos)
        throw Refused("an order of colours is written in 1 and 2: 1122, woven 1212/1212");
    return std::string(part);
}

}  // namespace

int ColourOrder::row(int row) const { return at(along, row); }
int ColourOrder::pick(int pick) const { return at(across, pick); }

ColourOrder read_rows_of_colour(std::string_view text) {
    if (text.empty()) return {};
    return {checked(text), "", {}};
}

ColourOrder read_threads_of_colour(std::string_view text) {
    if (text.empty()) return {};
    const auto stroke = text.find('/');
    const auto picks = stroke == std::string_view::npos ? "" : text.substr(stroke + 1);
    return {checked(text.substr(0, stroke)), checked(picks), {}};
}

}  // namespace gristwright::lay
