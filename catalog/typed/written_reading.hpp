// How one text of a batch is read; a complaint says where it stands and what would be right.
//
// An implementation header of the readers in this folder.
#pragma once

#include <initializer_list>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "catalog/text/named_reading.hpp"
#include "catalog/text/nearest.hpp"
#include "catalog/typed/batch_text.hpp"
#include "engine/estimate/constant.hpp"
#include "engine/units/failure.hpp"

namespace gristwright::catalog {

Refused wrong(const Written& at, const std::string& why);
Refused out_of_range(const Written& at, std::string_view what, const Constant& least,
                     const Constant& most);

// Without any of `besides` at either end.
std::string trimmed(std::string_view text, std::string_view besides = " \t");

void note_once(const std::string& said, MeasuredBatch& out);

// Wraps without a unit are taken by the inch, which is noted; how they were laid is not said.
WrapsReading read_wraps_said(const Written& at, MeasuredBatch& out);

// The last text of that key; nullptr: none, or an empty one.
const Written* one_text(const BatchText& text, std::string_view key);

template <class Read>
auto measured(const Written& at, Read read) {
    return read_named(at.where, at.text, read);
}

template <class Enum>
Enum one_of(const Written& at, std::initializer_list<std::pair<const char*, Enum>> list) {
    std::vector<std::string> words;
    for (const auto& [word, value] : list) {
        if (at.text == word) return value;
        words.emplace_back(word);
    }
    throw wrong(at, not_one_of(at.text, words));
}

int whole_number(const Written& at, int low, int high);

}  // namespace gristwright::catalog
