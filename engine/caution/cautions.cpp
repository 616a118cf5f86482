#include "engine/caution/cautions.hpp"

#include <algorithm>

#include "engine/project/words.hpp"
#include "engine/units/failure.hpp"

namespace gristwright {
namespace {

// The text up to `at`, taken off it with the mark.
std::string_view take_up_to(char at, std::string_view& text) {
    const auto end = std::min(text.find(at), text.size());
    const auto out = text.substr(0, end);
    text.remove_prefix(std::min(end + 1, text.size()));
    return out;
}

std::size_t first_of(std::string_view word) {
    return word.empty() ? 0 : static_cast<unsigned char>(word.front());
}

// One bit for each length, the last for all that are longer.
std::uint32_t length_bit(std::string_view word) {
    return 1U << std::min<std::size_t>(word.size(), 31);
}

}  // namespace

Cautions::Cautions(std::shared_ptr<const std::vector<Caution>> rows) : rows_(std::move(rows)) {
    for (const auto& row : *rows_) {
        auto& condition = conditions_.emplace_back();
        for (std::string_view when = row.when; !when.empty();)
            if (const auto words = take_up_to(' ', when); !words.empty())
                condition.push_back(clause_of(words));
    }
}

Cautions::Clause Cautions::clause_of(std::string_view words) {
    Clause out;
    while (!words.empty()) {
        auto word = take_up_to('|', words);
        const bool without = word.starts_with('!');
        if (without) word.remove_prefix(1);
        (without ? out.without : out.any).set(bit_of(word));
    }
    return out;
}

std::size_t Cautions::bit_of(std::string_view fact) {
    const auto next = bits_.size() + bits_of_words_.size();
    if (next >= most_facts) throw OurMistake("the cautions ask for too many facts");
    const bool said = fact.starts_with(says);
    if (said) {
        fact.remove_prefix(says.size());
        lengths_[first_of(fact)] |= length_bit(fact);
    }
    return (said ? bits_of_words_ : bits_).try_emplace(std::string(fact), next).first->second;
}

void Cautions::add_fact(std::string_view fact, Known& out) const {
    if (const auto found = bits_.find(fact); found != bits_.end()) out.set(found->second);
}

void Cautions::add_facts(const Batch& batch, Known& out) const {
    take_facts(batch, [&](std::string_view fact) { add_fact(fact, out); });
}

void Cautions::add_words(std::string_view text, Known& out) const {
    take_words(text, [&](std::string_view word) {
        if (!(lengths_[first_of(word)] & length_bit(word))) return;
        if (const auto found = bits_of_words_.find(word); found != bits_of_words_.end())
            out.set(found->second);
    });
}

void Cautions::add_facts(const Template& article, const Fabrics& fabrics, Known& out) {
    take_facts(article, fabrics, [&](std::string_view fact) { add_fact(fact, out); });
    for (const auto step : steps_said(article)) {
        auto known = of_step_.find(step);
        if (known == of_step_.end()) {
            known = of_step_.emplace(std::string(step), Known{}).first;
            add_words(step, known->second);
        }
        out |= known->second;
    }
}

bool Cautions::holds(const std::vector<Clause>& condition, const Known& known) {
    return std::all_of(condition.begin(), condition.end(), [&](const Clause& clause) {
        return (clause.any & known).any() || (clause.without & ~known).any();
    });
}

std::vector<Caution> Cautions::holding(const std::vector<Known>& any) const {
    std::vector<Caution> out;
    for (std::size_t row = 0; row < rows_->size(); ++row)
        if (std::any_of(any.begin(), any.end(),
                        [&](const Known& known) { return holds(conditions_[row], known); }))
            out.push_back((*rows_)[row]);
    return out;
}

}  // namespace gristwright
