// What the notebook's tests share: a scratch folder, the demo batch, and one of each change.
#pragma once

#include <cstdint>
#include <filesystem>
#include <fstream>
#include <functional>
#include <iterator>
#include <string>
#include <vector>

#include "catalog/notebook/notebook.hpp"

namespace notebook_tests {

using namespace gristwright::catalog;
namespace fs = std::filesystem;

struct Scratch {
    fs::path folder;
    Scratch() {
        std::string name = (fs::temp_directory_path() / "gristwright-notebook-XXXXXX").string();
        folder = ::mkdtemp(name.data());
    }
    ~Scratch() { fs::remove_all(folder); }
    fs::path file() const { return folder / "notebook.sqlite"; }
};

inline std::string bytes_of(const fs::path& path) {
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

inline Notebook changing(const fs::path& path) {
    return Notebook::open(path, Notebook::Mode::change);
}
inline Notebook looking(const fs::path& path) {
    return Notebook::open(path, Notebook::Mode::read_only);
}

inline BatchText heron() {
    BatchText out;
    out.skeins = {{{"one", "heron.toml:9: name"},
                   {"171m", "heron.toml:10"},
                   {"38.5g", ""},
                   {},
                   {{"wraps", {{"14wpi", "heron.toml:11"}}},
                    {"fibre", {{"Corriedale 80%", ""}, {"silk 20%", "--skein"}}}}},
                  {{}, {"140 m", ""}, {"31.2g", ""}, {"washed", "--measured"}}};
    out.fields["wraps"] = {{"16wpi", "heron.toml:3: wraps"}};
    out.fields["fibre"] = {{"Corriedale 70%", ""}, {"its mother's \"silk\"; 30%", ""}};
    return out;
}

inline SwatchText knitted_swatch() {
    return {SwatchText::Kind::knitted,
            {{"stitches", "28/10.3cm"}, {"rows", "39/10.1cm"}, {"washed", "yes"}},
            "2026-03-01"};
}
inline SwatchText woven_swatch() {
    return {SwatchText::Kind::woven, {{"epi", "10"}, {"look", "4/5"}}, ""};
}

// One of every kind of change, in an order in which each is possible.
struct Step {
    std::string said;
    std::function<void(Notebook&)> make;
};

inline std::string small_export() {
    return R"({"notebook": 1, "batches": [{"name": "wren", "skeins": [], "fields": {},
        "swatches": [{"kind": "woven", "date": "", "measured": {"epi": "12"}}]}]})";
}

inline std::vector<Step> every_change() {
    return {
        {"add batch heron", [](Notebook& n) { n.add_batch("heron", heron()); }},
        {"change batch heron",
         [](Notebook& n) {
             BatchText overlay;
             overlay.fields["wraps"] = {{"15wpi", "--wraps"}};
             overlay.skeins = {{{}, {"90m", ""}, {"20g", ""}, {}, {{"colour", {{"teal", ""}}}}}};
             n.change_batch("heron", overlay);
         }},
        {"swatch of heron", [](Notebook& n) { n.add_swatch("heron", knitted_swatch()); }},
        {"swatch of heron", [](Notebook& n) { n.add_swatch("heron", woven_swatch()); }},
        {"start cowl with heron",
         [](Notebook& n) {
             n.start_project("heron", {"cowl", "60cm", "90", "2026-03-02"});
         }},
        {"weighing of heron",
         [](Notebook& n) {
             n.add_weighing("heron", {"96", "", "31.5g", "2026-03-03"});
         }},
        {"start scarf with heron",
         [](Notebook& n) {
             n.start_project("heron", {"scarf", "", "", "", "weft", "8/2 cotton", "2"});
         }},
        {"weighing of heron",
         [](Notebook& n) {
             n.add_weighing("heron", {"", "41cm", "12g", ""});
         }},
        {"2 suggestions to heron",
         [](Notebook& n) {
             n.add_suggestions("heron", {{{"idea", "cabled hat"}, {"needs", "220yd"}},
                                         {{"idea", "\"lace\" {shawl}"}, {"from", "visitor 2"}}});
         }},
        {"forget the hands", [](Notebook& n) { n.forget_hands(); }},
        {"import 1 batch", [](Notebook& n) { n.import_json(small_export()); }},
        {"forget the suggestions to heron", [](Notebook& n) { n.remove_suggestions("heron"); }},
        {"remove batch heron", [](Notebook& n) { n.remove_batch("heron"); }},
    };
}

}  // namespace notebook_tests
