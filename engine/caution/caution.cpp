#include "engine/caution/caution.hpp"

#include <algorithm>

#include "engine/project/words.hpp"
#include "engine/units/ascii.hpp"

namespace gristwright {
namespace {

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

}  // namespace

void take_facts(const Batch& batch, const TakeFact& take) {
    if (batch.fibre.empty()) take("felts");
    for (const auto& part : batch.fibre) {
        if (felts(part)) take("felts");
        if (part.kind == "plant") take("plant");
        if (part.category == "synthetic") take("melts");
    }
    if (batch.plies == 1) take("singles");
    if (batch.variegated) take("variegated");
}

void take_facts(const Template& article, const Fabrics& fabrics, const TakeFact& take) {
    take(hyphened(article.article));
    take(words(article.craft));
    if (article.touches == Touches::skin) take("skin");
    if (article.touches == Touches::clothes) take("clothes");
    if (article.for_baby) take("baby");
    if (article.craft == Craft::woven) take(word_of(article.finish));
    for (const auto& piece : article.pieces) {
        if (loose(piece, fabrics) || loose(piece, article.own)) take("loops");
        if (piece.yarn > 1) take("two-yarns");
    }
}

void take_words(std::string_view text, const TakeFact& take) {
    for (std::size_t at = 0; at < text.size();) {
        std::size_t end = at;
        while (end < text.size() && ascii::is_letter(text[end])) ++end;
        if (end > at) {
            auto word = ascii::lowered(text.substr(at, end - at));
            if (word.size() > 3 && word.back() == 's') word.pop_back();
            take(word);
        }
        at = end + 1;
    }
}

Facts facts_of(const Template& article, const Fabrics& fabrics) {
    Facts out;
    take_facts(article, fabrics, [&](std::string_view fact) { out.emplace(fact); });
    for (const auto step : steps_said(article))
        take_words(step,
                   [&](std::string_view word) { out.insert(std::string(says).append(word)); });
    return out;
}

}  // namespace gristwright
