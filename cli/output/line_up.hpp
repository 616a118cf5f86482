// Everything that a batch makes, at its largest size, at one scale beside a standing figure: what
// is sure in a solid outline, what an even chance would let it become dotted round it.
#pragma once

#include <memory>
#include <optional>
#include <vector>

#include "cli/output/assembled.hpp"
#include "cli/output/describe.hpp"
#include "cli/output/svg.hpp"

namespace gristwright::cli {

struct LinedUp {
    const JudgedPlan* judged = nullptr;
    Assembled sure;
    std::shared_ptr<const Plan> hoped;  // nothing: not noticeably larger
    Assembled hopeful;                  // of `hoped`

    // In cm, with both outlines; they stand on the lower edge, in its middle.
    Bounds bounds() const;
};

// The size that the metres cover with an even chance, where an article may be larger at all.
std::optional<Length> hopeful_size(const Plan& plan);

// The tallest first.
std::vector<LinedUp> line_up(const std::vector<const JudgedPlan*>& made, const Question& q);

// "139 x 70 cm, perhaps 150 x 75 cm"
std::string size_in_words(const LinedUp& one, const Units& units);

// One of them, or the figure, `scale` units to the cm.
Svg drawn(const LinedUp& one, double scale);
Svg drawn_figure(double scale);

// All of them on a sheet of A3, lying.
Svg line_up_poster(const Ranked& ranked, const Question& q);

}  // namespace gristwright::cli
