#include "catalog/reference/source.hpp"

#include <algorithm>
#include <utility>

#include "catalog/reference/article_kind_text.hpp"
#include "catalog/reference/caution_table.hpp"
#include "catalog/reference/heading_words.hpp"
#include "catalog/reference/need_text.hpp"
#include "catalog/reference/ordinary.hpp"
#include "catalog/reference/piece_range_text.hpp"
#include "catalog/reference/tables.hpp"
#include "catalog/reference/template_text.hpp"
#include "catalog/reference/weight_names.hpp"
#include "catalog/text/bad_text.hpp"

namespace gristwright::catalog {
namespace {

namespace fs = std::filesystem;

// Letters, digits and hyphens: a template's name is typed and stands in other files' names.
void check_name(const std::string& name, const std::string& file) {
    const auto fits = [](unsigned char c) {
        return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-';
    };
    if (name.empty() || !std::all_of(name.begin(), name.end(), fits))
        throw BadText(file, 0,
                      "a template's file is named in small letters, digits and hyphens: "
                      "half-circle-shawl.toml");
}

// What everybody has names fabrics that everybody can name.
Template built_in_template(const fs::path& path, const Fabrics& fabrics) {
    auto out = read_template_file(path, fabrics);
    if (!out.own.knitted.empty() || !out.own.weaves.empty())
        throw BadText(path.string(), 0, "a stitch of a built-in template is a row of the tables");
    return out;
}

}  // namespace

Template read_template_file(const fs::path& path, const Fabrics& fabrics) {
    const auto name = path.stem().string();
    check_name(name, path.string());
    return read_template(read_file(path), name, path.string(), fabrics);
}

Catalogue read_source(const fs::path& folder) {
    const auto table = [&](const char* name, auto read) {
        const auto path = folder / "tables" / name;
        return read(read_file(path), path.filename().string());
    };
    Catalogue out;
    out.yarn.classes = table("weight_classes.csv", read_weight_classes);
    out.yarn.grades = table("wool_grades.csv", read_wool_grades);
    out.yarn.traits = table("traits.csv", read_traits);
    out.fabrics.knitted = table("knitted_fabrics.csv", read_knitted_fabrics);
    out.fabrics.weaves = table("weaves.csv", read_weaves);
    auto words = table("words.csv", [&](const std::string& text, const std::string& file) {
        return read_words(text, file, out.fabrics, out.spoken);
    });
    out.kinds = table("article_kinds.csv", read_article_kinds);
    out.fibres = table("fibres.csv", read_fibres);
    out.needs = table("needs.csv", read_needs);
    out.piece_ranges = table("piece_ranges.csv", read_piece_ranges);
    out.spun_for = table("spun_for.csv", read_spun_for);
    out.ordinary = table("ordinary_yarns.csv", read_ordinary_yarns);
    const auto spoken = [&](const char* name, auto read) {
        const auto path = folder / "tables" / name;
        read(read_file(path), path.filename().string(), out.spoken);
    };
    spoken("batch_words.csv", read_batch_words);
    spoken("needle_sizes.csv", read_needle_sizes);
    spoken("suggestion_headings.csv", read_suggestion_headings);
    spoken("fibre_names.csv",
           [&](const std::string& text, const std::string& file, SpokenWords& words) {
               read_fibre_names(text, file, out.fibre_names(), words);
           });
    spoken("weight_names.csv",
           [&](const std::string& text, const std::string& file, SpokenWords& names) {
               read_weight_names(text, file, out.yarn.classes, names, words);
           });
    out.words = std::move(words);
    out.cautions = table("cautions.csv", read_cautions);
    out.bodies = table("body_sizes.csv", read_body_sizes);
    std::vector<Template> templates;
    for (const auto& entry : fs::directory_iterator(folder / "templates"))
        if (entry.path().extension() == ".toml")
            templates.push_back(built_in_template(entry.path(), out.fabrics));
    std::sort(templates.begin(), templates.end(),
              [](const Template& a, const Template& b) { return a.name < b.name; });
    const auto ordinary = ordinary_yarns(out);
    for (auto& article : templates) make_ready(article, out, ordinary);
    out.templates = std::move(templates);
    return out;
}

}  // namespace gristwright::catalog
