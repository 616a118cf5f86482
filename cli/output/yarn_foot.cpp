#include "cli/output/yarn_foot.hpp"

#include <algorithm>

#include "cli/output/layout.hpp"
#include "cli/output/yarn_words.hpp"

namespace gristwright::cli {
namespace {

using Texts = std::vector<std::string>;

bool says(const Texts& list, const std::string& text) {
    return std::find(list.begin(), list.end(), text) != list.end();
}

// What stands in that list of every one, in the order of the first, and no longer in theirs.
Texts common(Texts YarnFoot::*list, std::vector<YarnFoot>& each) {
    Texts out;
    if (each.empty()) return out;
    for (const auto& text : each.front().*list)
        if (std::all_of(each.begin(), each.end(),
                        [&](const YarnFoot& foot) { return says(foot.*list, text); }))
            out.push_back(text);
    for (auto& foot : each)
        std::erase_if(foot.*list, [&](const std::string& text) { return says(out, text); });
    return out;
}

std::string line(const char* label, const Texts& said, std::size_t indent) {
    return said.empty() ? "" : labelled(label, joined(said, "; "), indent) + "\n";
}

std::string as_a_list(const char* title, const Texts& said) {
    if (said.empty()) return "";
    auto out = "\n" + heading(title) + "\n";
    for (const auto& one : said) out += labelled("-", one, 2) + "\n";
    return out;
}

}  // namespace

YarnFoot foot_of(const Question& q) {
    return {yarn_cautions(q.yarn, q.units), standings(q.yarn.evidence),
            assumptions(q.yarn, q.units), hints(q.yarn)};
}

YarnFoot taken_in_common(const Question& whole, std::vector<YarnFoot>& each) {
    YarnFoot out{{},
                 common(&YarnFoot::stands_on, each),
                 common(&YarnFoot::assumed, each),
                 common(&YarnFoot::sharper, each)};
    for (const auto& one : whole.yarn.cautions)
        if (of_the_whole_batch(one)) out.mind.push_back(words(one, whole.yarn, whole.units));
    for (auto& one : common(&YarnFoot::mind, each))
        if (!says(out.mind, one)) out.mind.push_back(std::move(one));
    return out;
}

std::string foot_text(const YarnFoot& foot, Of what) {
    const bool all = what == Of::all_of_them;
    const std::size_t indent = what == Of::one_of_several ? 2 : 0;
    auto out = line("Mind:", foot.mind, indent) + line("Stands on:", foot.stands_on, indent) +
               line(all ? "Assumed of each:" : "Assumed:", foot.assumed, indent);
    if (what == Of::one_of_several) return out + line("Sharper:", foot.sharper, indent);
    return out + as_a_list(all ? "What would sharpen each" : "What would sharpen it", foot.sharper);
}

}  // namespace gristwright::cli
