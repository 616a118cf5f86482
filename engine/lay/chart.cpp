#include "engine/lay/chart.hpp"

#include <algorithm>
#include <stdexcept>

#include "engine/units/failure.hpp"

namespace gristwright::lay {
namespace {

std::size_t wrapped(int place, std::size_t length) {
    const int n = static_cast<int>(length);
    return static_cast<std::size_t>(((place % n) + n) % n);
}

}  // namespace

char Chart::at(int place, int row) const {
    const auto& line = rows[wrapped(row, rows.size())];
    return line[wrapped(place, line.size())];
}

Chart read_chart(std::string_view text, std::string_view letters) {
    Chart out;
    for (std::size_t from = 0; from <= text.size();) {
        const auto end = std::min(text.find('/', from), text.size());
        out.rows.emplace_back(text.substr(from, end - from));
        from = end + 1;
    }
    for (const auto& row : out.rows)
        if (row.empty() || row.size() != out.rows.front().size() ||
            row.find_first_not_of(letters) != std::string::npos)
            throw Refused("a chart's rows are as long as each other, of the letters " +
                          std::string(letters) + ", not '" + row + "'");
    std::reverse(out.rows.begin(), out.rows.end());
    return out;
}

}  // namespace gristwright::lay
