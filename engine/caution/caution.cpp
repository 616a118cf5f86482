#include "engine/caution/caution.hpp"

#include <algorithm>

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

// Each as the fact that it is said: "says:pin".
template <class Take>
void for_each_word(std::string_view text, Take take) {
    std::string said(says);
    for (auto at = text.begin(); at != text.end();) {
        at = std::find_if(at, text.end(), ascii::is_letter);
        const auto end = std::find_if_not(at, text.end(), ascii::is_letter);
        said.resize(says.size() + static_cast<std::size_t>(end - at));
        std::transform(at, end, said.begin() + says.size(), ascii::lower);
        if (end - at > 3 && said.back() == 's') said.pop_back();
        if (end != at) take(said);
        at = end;
    }
}

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
    for_each_word(text, [&](const std::string& said) {
        if (!out.contains(said)) out.insert(said);
    });
}

WordsAsked::WordsAsked(const std::vector<Caution>& table) {
    for (const auto& caution : table)
        for (std::string_view when = caution.when; !when.empty();)
            for (auto words = take_up_to(' ', when); !words.empty();) {
                auto word = take_up_to('|', words);
                if (word.starts_with('!')) word.remove_prefix(1);
                if (word.starts_with(says)) asked_.emplace(word);
            }
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

void WordsAsked::add_words(std::string_view text, Facts& out) const {
    for_each_word(text, [&](const std::string& said) {
        if (asked_.contains(said)) out.insert(said);
    });
}

}  // namespace gristwright
