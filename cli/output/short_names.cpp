#include "cli/output/short_names.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <map>

#include "cli/output/layout.hpp"

namespace gristwright::cli {
namespace {

using Characters = std::vector<std::string>;

Characters characters_of(std::string_view text) {
    Characters out;
    for (const char c : text) {
        if ((static_cast<unsigned char>(c) & 0xC0) != 0x80 || out.empty()) out.emplace_back();
        out.back() += c;
    }
    return out;
}

std::string part(const Characters& text, std::size_t from, std::size_t to) {
    std::string out;
    for (auto i = from; i < std::min(to, text.size()); ++i) out += text[i];
    return out;
}

// How many characters all begin with.
std::size_t alike(const std::vector<Characters>& names) {
    std::size_t out = names.front().size();
    for (const auto& name : names) {
        const auto end =
            std::mismatch(name.begin(), name.end(), names.front().begin(), names.front().end());
        out = std::min(out, std::size_t(end.first - name.begin()));
    }
    return out;
}

std::string middle_left_out(const Characters& name, std::size_t most) {
    if (name.size() <= most) return part(name, 0, name.size());
    const auto last = most / 2, first = most - 1 - last;
    return part(name, 0, first) + "…" + part(name, name.size() - last, name.size());
}

}  // namespace

std::vector<std::string> short_names(const std::vector<std::string>& names, std::size_t most) {
    std::vector<Characters> all;
    for (const auto& name : names) all.push_back(characters_of(inert(name)));
    std::size_t longest = 0;
    for (const auto& name : all) longest = std::max(longest, name.size());
    const auto left_out = longest > most && all.size() > 1 ? alike(all) : 0;
    std::vector<std::string> out;
    std::map<std::string, int> seen;
    for (const auto& name : all) {
        const Characters rest(name.begin() + std::ptrdiff_t(left_out), name.end());
        out.push_back(left_out > 1 ? "…" + middle_left_out(rest, most - 1)
                                   : middle_left_out(name, most));
        ++seen[out.back()];
    }
    for (std::size_t i = 0; i < out.size(); ++i)
        if (seen[out[i]] > 1 && longest > most)
            out[i] = middle_left_out(characters_of(out[i]), most - 4) + fmt::format(" {}", i + 1);
    return out;
}

}  // namespace gristwright::cli
