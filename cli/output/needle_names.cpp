#include "cli/output/needle_names.hpp"

#include <cmath>

#include "engine/units/reading.hpp"

namespace gristwright::cli {
namespace {

long micrometres(Length needle) { return std::lround(1000 * in_millimetres(needle)); }

}  // namespace

NeedleNames us_needles(const catalog::SpokenWords& spoken) {
    auto out = std::make_shared<std::map<long, std::string>>();
    for (const auto& name : spoken.words("needle us")) {
        const auto said = spoken.find("needle us", name);
        if (!said || said->means.empty()) continue;
        auto& known = (*out)[micrometres(read_length(said->means + "mm").value)];
        if (known.empty() || name.size() < known.size()) known = name;
    }
    return out;
}

std::string us_size(const NeedleNames& names, Length needle) {
    if (!names) return "";
    const auto found = names->find(micrometres(needle));
    return found == names->end() ? "" : "US " + found->second;
}

}  // namespace gristwright::cli
