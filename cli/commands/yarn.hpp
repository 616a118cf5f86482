// gristwright yarn: what yarn a batch is, from its measurements given as options.
#pragma once

#include <string>
#include <vector>

namespace gristwright::cli {

// The options as typed; empty means not given.
struct YarnRequest {
    std::vector<std::string> skeins;  // "171m/38.5g"
    std::string wraps, micron, scale, preparation, draw;
};

// The answer as text for an 80-column terminal. Throws Unreadable or std::invalid_argument with a
// message for the person when an option cannot be read or the yarn cannot be.
std::string yarn_answer(const YarnRequest& request);

}  // namespace gristwright::cli
