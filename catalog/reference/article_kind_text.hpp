// catalog/tables/article_kinds.csv: the kinds of article, and what their names alone tell.
#pragma once

#include <string>

#include "engine/project/article_kind.hpp"

namespace gristwright::catalog {

// Throws BadText with the line for a kind without a name, or one that stands there twice.
ArticleKinds read_article_kinds(const std::string& text, const std::string& file);

}  // namespace gristwright::catalog
