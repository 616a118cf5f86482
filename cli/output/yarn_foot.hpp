// What stands below an answer about a yarn: what to beware of, what it stands on and assumes, what
// would sharpen it. Of several yarns each has its own, and what holds of them all is said once.
#pragma once

#include <string>
#include <vector>

#include "cli/question.hpp"

namespace gristwright::cli {

struct YarnFoot {
    std::vector<std::string> mind, stands_on, assumed, sharper;
};

YarnFoot foot_of(const Question& q);

// What every one of them says, taken out of each. What the batch is as a whole comes first.
YarnFoot taken_in_common(const Question& whole, std::vector<YarnFoot>& each);

// "Mind: ... Assumed: ..."; of one yarn among several, or of them all, it says so.
enum class Of { the_yarn, one_of_several, all_of_them };
std::string foot_text(const YarnFoot& foot, Of what);

}  // namespace gristwright::cli
