// A plan: a template realised with one batch at the largest size that its metres cover with the
// certainty asked for.
//
// Every piece's metres are a quadratic in the size, so the largest size is a root, not a search:
// what a piece needs is a + b s + c s^2, with s = size / ideal size.
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/cloth/equipment.hpp"
#include "engine/project/template.hpp"
#include "engine/yarn/colour.hpp"

namespace gristwright {

struct Need {
    double fixed = 0, linear = 0, square = 0;  // metres at s = 1, by how they grow

    double at(double s) const { return fixed + s * (linear + s * square); }
    // The largest s in [0, most] with at(s) <= metres; 0 when even s = 0 needs more.
    double largest(double metres, double most) const;
    Need& operator+=(const Need& other);
};

struct PlanPiece {
    std::shared_ptr<const PieceTemplate> piece;  // of the plan's article
    std::optional<KnitCloth> knit;
    std::optional<WovenCloth> woven;
    Outline outline;             // finished, of one
    int stitches = 0, rows = 0;  // knitted, of one
    int edge_stitches = 0;       // of those, plain ones that fill what no whole repeat does
    int few_stitches = 0;        // at a taper's narrow end, or in the first row; 0: as `stitches`
    PanelMetres panel;           // woven, of one
    Estimate<Length> metres;     // of all alike
    Length warp, weft;           // woven, of all alike; the loom's waste is in the warp
    Length ours;                 // of the metres, from this batch
    Mass mass;                   // of ours; where none is, of the other yarn
};

enum class Reach { enough, enough_if_smaller, short_of };
std::string_view words(Reach reach);

// What stands in the way besides the yarn.
enum class Obstacle {
    needs_shafts,
    loom_too_narrow,
    no_heddle_fits,
    no_needle_fits,
    finer_than_needles,
    too_thick,
};
std::string_view words(Obstacle obstacle);
// A needle or a heddle can be borrowed; shafts and a wider loom cannot.
bool stops(Obstacle obstacle);

// The yarn beside this batch. Its grist 0: an ordinary plied yarn of the same grist.
struct OtherYarn {
    std::string name{};  // "8/2 cotton", "Heron"; empty: not said
    LinearDensity grist{};
    Length packed_diameter{};
    std::optional<Length> length{};  // what there is of it
    std::optional<double> hair{};    // share of it; not said: as this batch
    std::vector<Colour> colours{};   // as Fibres has them; empty: not said
};

struct [[nodiscard]] Plan {
    std::shared_ptr<const Template> article;
    Reach reach{};
    Length size;           // of the template's measure
    Length covered;        // the largest size that the metres cover; at least `size`
    double certainty = 0;  // chance that the metres suffice at this size
    double asked = 0;
    Estimate<Length> need;  // of this batch
    Estimate<Length> have;
    Length
        second_yarn;  // of another yarn, when the template or the batch's part in it asks for one
    Length second_to_have;  // of it, for the certainty asked
    OtherYarn other;        // what is known of it
    Length short_by;        // to the batch, for the certainty asked at this size; else 0
    Mass mass;
    std::vector<PlanPiece> pieces;
    std::vector<Obstacle> obstacles;

    Need by_size;  // of this batch, before whole repeats

    // Nothing where no piece has that name.
    const PlanPiece* piece_named(std::string_view name) const;
    PlanPiece* piece_named(std::string_view name);

    Length left() const;  // median to spare, never below 0
    // Chance that the batch reaches for another size: the curve behind "how big?".
    double certainty_at(Length size) const;
};

struct Request {
    double certainty = 0.90;     // 0.5 to 0.999
    std::optional<Length> size;  // fixed instead of the largest
    Length keep;                 // metres not to be used: a sample, a mending reserve
    OtherYarn other{};           // where the article takes two
};

// Throws std::out_of_range when the template names a fabric that the tables do not hold,
// Refused for a certainty outside its range.
Plan plan(std::shared_ptr<const Template> article, const YarnProfile& yarn, const Fabrics& fabrics,
          const Equipment& owned, const Request& request);
// With a copy of its own: the caller's may go.
Plan plan(const Template& article, const YarnProfile& yarn, const Fabrics& fabrics,
          const Equipment& owned, const Request& request);

}  // namespace gristwright
