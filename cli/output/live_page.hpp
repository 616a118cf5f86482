// The whole tool in one page, as cli/web/build made it, with a batch and one's own articles inside.
#pragma once

#include <string>
#include <vector>

#include "catalog/typed/batch_text.hpp"

namespace gristwright::cli {

// A template of the person's own, as its file has it.
struct OwnArticle {
    std::string name, toml;
};

// Beside the program: in ../share/gristwright once installed, in build/web else.
// Throws catalog::StorageFailed that says how to make it where there is none.
std::string live_page(const catalog::BatchText& batch, const std::vector<OwnArticle>& own);

}  // namespace gristwright::cli
