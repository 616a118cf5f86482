#include "engine/project/article_kind.hpp"

#include <algorithm>

namespace gristwright {

const ArticleKind& kind_named(const ArticleKinds& kinds, std::string_view name) {
    static const ArticleKind nothing_known;
    const auto row = std::find_if(kinds.begin(), kinds.end(),
                                  [&](const ArticleKind& kind) { return kind.name == name; });
    return row == kinds.end() ? nothing_known : *row;
}

}  // namespace gristwright
