#include "engine/suggestion/suggestion.hpp"
#include "engine/units/ascii.hpp"

namespace gristwright {
namespace {

constexpr std::size_t most_words = 40;  // of an idea; the rest is not read

std::vector<std::string> split(const std::string& idea) {
    std::vector<std::string> out(1);
    for (const char c : idea) {
        if (ascii::is_letter(c))
            out.back() += ascii::lower(c);
        else if (!out.back().empty() && out.size() < most_words)
            out.emplace_back();
        else if (!out.back().empty())
            break;
    }
    if (out.back().empty()) out.pop_back();
    return out;
}

const WordMeaning* find(const Words& words, std::string word) {
    if (const auto found = words.find(word); found != words.end()) return &found->second;
    if (word.size() < 3 || word.back() != 's') return nullptr;
    word.pop_back();
    const auto found = words.find(word);
    return found == words.end() ? nullptr : &found->second;
}

void take(const std::string& said, const WordMeaning& meaning, Understood& out) {
    using Kind = WordMeaning::Kind;
    if (meaning.kind == Kind::filler) return;
    if (meaning.kind == Kind::article) out.article = meaning.means;
    if (meaning.kind == Kind::fabric) out.fabric = {meaning.means, meaning.on_loom};
    if (meaning.kind == Kind::craft)
        out.craft = meaning.means == "woven" ? Craft::woven : Craft::knitted;
    const auto as = meaning.means.empty() ? meaning.on_loom : meaning.means;
    const bool either = !meaning.on_loom.empty() && as != meaning.on_loom;
    if (said != as)
        out.taken_as.push_back(said + " as " + as +
                               (either ? " (woven: " + meaning.on_loom + ")" : ""));
}

}  // namespace

Understood understand(const std::string& idea, const Words& words) {
    Understood out;
    const auto said = split(idea);
    for (std::size_t i = 0; i < said.size(); ++i) {
        if (i + 1 < said.size()) {
            const auto pair = said[i] + " " + said[i + 1];
            if (const auto* meaning = find(words, pair)) {
                take(pair, *meaning, out);
                ++i;
                continue;
            }
        }
        if (const auto* meaning = find(words, said[i]))
            take(said[i], *meaning, out);
        else
            out.unknown.push_back(said[i].substr(0, 30));
    }
    return out;
}

}  // namespace gristwright
