#include "catalog/text/spelt_out.hpp"

#include "engine/units/failure.hpp"
#include "engine/units/plain.hpp"

namespace gristwright::catalog {

std::vector<std::string> spelt_out(std::string_view alike) {
    const auto open = alike.find_first_of("{}");
    if (open == std::string_view::npos) return {std::string(alike)};
    const auto close = alike.find_first_of("{}", open + 1);
    if (alike[open] == '}' || close == std::string_view::npos || alike[close] == '{')
        throw Refused("a brace without its other half");
    const auto before = std::string(alike.substr(0, open));
    const auto behind = spelt_out(alike.substr(close + 1));
    auto choices = alike.substr(open + 1, close - open - 1);
    std::vector<std::string> out;
    for (bool more = true; more;) {
        const auto end = choices.find('|');
        more = end != std::string_view::npos;
        for (const auto& rest : behind)
            out.push_back(plain(before + std::string(choices.substr(0, end)) + ' ' + rest));
        if (more) choices.remove_prefix(end + 1);
    }
    return out;
}

}  // namespace gristwright::catalog
