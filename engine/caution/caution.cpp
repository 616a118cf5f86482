#include "engine/caution/caution.hpp"

#include <algorithm>
#include <utility>

#include "engine/units/ascii.hpp"

namespace gristwright {
namespace {

constexpr std::string_view says = "says:";

// The text up to `at`, taken off it with the mark.
std::string_view take_up_to(char at, std::string_view& text) {
    const auto end = std::min(text.find(at), text.size());
    const auto out = text.substr(0, end);
    text.remove_prefix(std::min(end + 1, text.size()));
    return out;
}

bool is_fact(std::string_view word, const Facts& facts) {
    const bool without = word.substr(0, 1) == "!";
    return (facts.find(word.substr(without ? 1 : 0)) != facts.end()) != without;
}

bool one_holds(std::string_view words, const Facts& facts) {
    while (!words.empty())
        if (is_fact(take_up_to('|', words), facts)) return true;
    return false;
}

std::string hyphened(std::string text) {
    std::replace(text.begin(), text.end(), ' ', '-');
    return text;
}

std::string_view word_of(Finish finish) {
    switch (finish) {
        case Finish::light:
            return "light";
        case Finish::open_or_fulled:
            return "fulled";
        case Finish::hard_fulled:
            break;
    }
    return "hard-fulled";
}

// Wool and hair felt; silk, plant and synthetic fibres do not, and superwash is made not to.
bool felts(const FibrePart& part) {
    if (ascii::lowered(part.name).find("superwash") != std::string::npos) return false;
    return part.kind != "plant" && part.kind != "silk" && part.kind != "man-made" &&
           part.category != "silk";
}

bool loose(const PieceTemplate& piece, const Fabrics& fabrics) {
    if (const auto* knitted = fabrics.knitted_named(piece.fabric)) return knitted->loose_loops;
    const auto* weave = fabrics.weave_named(piece.fabric);
    return weave && weave->loose_loops;
}

// All but what its steps say.
void add_make(const Template& article, const Fabrics& fabrics, Facts& out) {
    out.insert(hyphened(article.article));
    out.insert(std::string(words(article.craft)));
    if (article.touches == Touches::skin) out.insert("skin");
    if (article.touches == Touches::clothes) out.insert("clothes");
    if (article.for_baby) out.insert("baby");
    if (article.craft == Craft::woven) out.insert(std::string(word_of(article.finish)));
    for (const auto& piece : article.pieces) {
        if (loose(piece, fabrics) || loose(piece, article.own)) out.insert("loops");
        if (piece.yarn > 1) out.insert("two-yarns");
    }
}

template <class Take>
void for_each_word(std::string_view text, Take take) {
    for (std::size_t at = 0; at < text.size();) {
        std::size_t end = at;
        while (end < text.size() && ascii::is_letter(text[end])) ++end;
        if (end > at) take(text.substr(at, end - at));
        at = end + 1;
    }
}

// The fact that it is said: "says:pin" of "Pins".
std::string fact_of(std::string_view word) {
    std::string out(says);
    for (const char c : word) out += ascii::lower(c);
    if (word.size() > 3 && out.back() == 's') out.pop_back();
    return out;
}

// One bit for each length, the last for all that are longer.
std::uint32_t bit_of(std::size_t length) { return 1U << std::min<std::size_t>(length, 31); }

}  // namespace

bool holds(std::string_view when, const Facts& facts) {
    while (!when.empty())
        if (const auto words = take_up_to(' ', when); !words.empty() && !one_holds(words, facts))
            return false;
    return true;
}

std::vector<Caution> holding(const std::vector<Caution>& table, const Facts& facts) {
    std::vector<Caution> out;
    for (const auto& caution : table) {
        const auto again = [&](const Caution& other) { return other.text == caution.text; };
        if (holds(caution.when, facts) && std::none_of(out.begin(), out.end(), again))
            out.push_back(caution);
    }
    return out;
}

void add_facts(const Batch& batch, Facts& out) {
    if (batch.fibre.empty()) out.insert("felts");
    for (const auto& part : batch.fibre) {
        if (felts(part)) out.insert("felts");
        if (part.kind == "plant") out.insert("plant");
        if (part.category == "synthetic") out.insert("melts");
    }
    if (batch.plies == 1) out.insert("singles");
    if (batch.variegated) out.insert("variegated");
}

void add_facts(const Template& article, const Fabrics& fabrics, Facts& out) {
    add_make(article, fabrics, out);
    for (const auto& step : article.steps) add_words(step, out);
}

void add_words(std::string_view text, Facts& out) {
    for_each_word(text, [&](std::string_view word) { out.insert(fact_of(word)); });
}

WordsAsked::WordsAsked(const std::vector<Caution>& table) {
    for (const auto& caution : table)
        for (std::string_view when = caution.when; !when.empty();)
            for (auto words = take_up_to(' ', when); !words.empty();) {
                auto word = take_up_to('|', words);
                if (word.starts_with('!')) word.remove_prefix(1);
                if (word.starts_with(says)) ask(word);
            }
}

void WordsAsked::ask(std::string_view fact) {
    asked_.emplace(fact);
    fact.remove_prefix(says.size());
    if (!fact.empty()) lengths_at(fact) |= bit_of(fact.size()) | bit_of(fact.size() + 1);
}

std::uint32_t& WordsAsked::lengths_at(std::string_view word) {
    return lengths_[static_cast<unsigned char>(ascii::lower(word.front()))];
}

void WordsAsked::add_facts(const Template& article, const Fabrics& fabrics, Facts& out) {
    add_make(article, fabrics, out);
    for (const auto& step : article.steps) {
        auto known = of_step_.find(step);
        if (known == of_step_.end()) {
            known = of_step_.emplace(step, Facts{}).first;
            add_words(step, known->second);
        }
        out.insert(known->second.begin(), known->second.end());
    }
}

void WordsAsked::add_words(std::string_view text, Facts& out) {
    for_each_word(text, [&](std::string_view word) {
        if (!(lengths_at(word) & bit_of(word.size()))) return;
        auto fact = fact_of(word);
        if (asked_.contains(fact)) out.insert(std::move(fact));
    });
}

}  // namespace gristwright
