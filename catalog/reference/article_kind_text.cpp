#include "catalog/reference/article_kind_text.hpp"

#include "catalog/text/table_row.hpp"

namespace gristwright::catalog {
namespace {

ArticleKind article_kind(const Row& row) {
    ArticleKind out;
    out.name = row.text("article");
    if (out.name.empty()) throw row.wrong("article: which?");
    out.worn = row.yes("worn");
    out.draped = row.yes("draped");
    out.long_round = row.yes("long");
    out.on_feet = row.yes("on_feet");
    out.in_pairs = row.yes("in_pairs");
    if (!out.worn && (out.draped || out.long_round || out.on_feet))
        throw row.wrong("what is draped, long round the neck or on feet is worn");
    return out;
}

}  // namespace

ArticleKinds read_article_kinds(const std::string& text, const std::string& file) {
    return read_rows(text, file, article_kind, {"article"});
}

}  // namespace gristwright::catalog
