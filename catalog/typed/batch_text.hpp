// A batch as a person writes it down: TOML with everything, CSV with the skeins, or options typed.
// All three become the same texts, each remembering where it was written, and are read in one
// place. Formats: docs/batches.md.
#pragma once

#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "catalog/reference/catalogue.hpp"
#include "engine/cloth/equipment.hpp"
#include "engine/yarn/batch.hpp"
#include "engine/yarn/colour.hpp"

namespace gristwright::catalog {

struct Written {
    std::string text;
    std::string where;  // "heron.toml:7: wraps", "--wraps"

    bool operator==(const Written&) const = default;
};

using Texts = std::map<std::string, std::vector<Written>, std::less<>>;  // by key

struct SkeinText {
    Written name, length, mass, state;  // empty texts: not given
    Texts own{};                        // of the skein alone: wraps, fibre, colour

    bool operator==(const SkeinText&) const = default;
};

struct BatchText {
    std::vector<SkeinText> skeins;
    Texts fields;                    // by key of the TOML format
    std::vector<std::string> notes;  // what was in the file and is not used

    // Everything `other` gives takes the place of what is here; skeins take the place of skeins.
    void overlay(const BatchText& other);

    bool operator==(const BatchText&) const = default;
};

// Throw BadText for what is not TOML or CSV, an unknown key, a column that is missing.
BatchText read_batch_toml(std::string_view text, const std::string& file);
BatchText read_batch_csv(std::string_view text, const std::string& file);
// The TOML that reads as the same texts, but for their places: every text in double quotes. Notes
// are not written.
std::string toml_of(const BatchText& text);
// By the file's ending, .toml or .csv. Throws MissingFile.
BatchText read_batch_file(const std::string& path);

// The keys of the format, for options of the same names: "wraps", "draw", ...
const std::vector<std::string>& batch_keys();
// Those of a skein's own: wraps, fibre, colour.
const std::vector<std::string>& own_keys();

struct MeasuredBatch {
    Batch batch;
    Equipment owned;
    std::vector<Colour> colours;  // that follow each other along the yarn; empty: not said
    std::vector<std::vector<Colour>> skein_colours{};  // skein by skein; empty: all as `colours`
    bool yards = false;  // lengths were typed in yards, feet or inches
    std::vector<std::string> notes;
};

// Reads every text. Throws Refused that says where, what, and what would be right.
MeasuredBatch interpret(const BatchText& text, const Catalogue& catalogue);

}  // namespace gristwright::catalog
