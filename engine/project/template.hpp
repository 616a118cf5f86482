// A template: an article that can be made in a range of sizes. Data, not code: one TOML file each
// in catalog/templates/; docs/templates.md describes the format.
#pragma once

#include <array>
#include <memory>
#include <string>
#include <vector>

#include "engine/cloth/knitting.hpp"
#include "engine/cloth/weaving.hpp"
#include "engine/project/article_kind.hpp"
#include "engine/project/constants.hpp"
#include "engine/project/counting.hpp"
#include "engine/project/demand.hpp"
#include "engine/project/shape.hpp"

namespace gristwright {

enum class Craft { knitted, woven };
constexpr std::string_view words(Craft c) { return c == Craft::knitted ? "knitted" : "woven"; }

// Which of a piece's two sizes grow with the article's size.
enum class Grows { neither, width, length, both };

// What part the batch plays: engine/project/role.hpp.
enum class Role { whole, weft, warp, border, colour, doubled, plied_again };

struct PieceTemplate {
    std::string name;    // "body", "border"
    std::string fabric;  // a knitted fabric or a weave by its name in the tables
    Outline outline;     // at the ideal size
    Grows grows = Grows::both;
    int count = 1;  // how many alike
    int yarn = 1;   // 1: this batch; 2: a second yarn, which is not taken from it
    // Where yarn is 1, this batch's shares of the warp and of the weft, or of the knitting.
    double of_warp = 1, of_weft = 1;
    bool unbroken = false;      // wants one unbroken length
    bool narrow_first = false;  // a taper worked from its narrow end
    bool on_smaller = false;    // its steps take needles one or two sizes smaller
    Following follows{};        // where a size grows less than the article does
    Counting counting{};        // knitted

    double warp_ours() const { return yarn == 1 ? of_warp : 0; }
    double weft_ours() const { return yarn == 1 ? of_weft : 0; }
};

// What a template asks of the yarn: at least this much (0..1), and how much it matters (0..1).
struct Wish {
    double at_least = 0, weight = 0;
};
enum class Asked {
    definition,
    drape,
    softness,
    wear,
    warmth,
    elasticity,
    warp_fitness,
    consistency,
};
inline constexpr std::size_t asked_count = 8;

enum class Skill { first_project, some_practice, experienced };
enum class Touches { skin, clothes, nothing };

struct Fabrics {
    std::vector<KnitFabric> knitted;
    std::vector<Weave> weaves;
    // The row of that name or nullptr.
    const KnitFabric* knitted_named(std::string_view name) const;
    const Weave* weave_named(std::string_view name) const;
};

// How far the pieces of one kind lie apart that people make, at one gauge and in one fabric: as one
// standard deviation, relative. Lengths, ease, depth, edges, what a maker adds.
// Data: catalog/tables/piece_ranges.csv.
struct PieceRange {
    std::string article;
    double spread = constants::pieces_apart;
    Mark mark = constants::pieces_apart.mark;
    std::string source = std::string(constants::pieces_apart.source);
};

struct Template {
    std::string name;     // its file without .toml: "half-circle-shawl"
    std::string title;    // "Half-circle shawl"
    std::string article;  // the kind that knitted and woven share: "shawl"
    std::string about;    // one line
    Craft craft = Craft::knitted;
    Skill skill = Skill::some_practice;
    Touches touches = Touches::clothes;
    bool for_baby = false;
    bool sample = false;  // made to learn from

    std::string measure;  // what a person measures: "span", "length", "round the head"
    Length smallest, ideal, largest;
    bool fitted = false;  // a body decides the size: larger than ideal is not better

    int finest = 0, thickest = 7;  // weight classes it is usually made in, by number

    Firmness firmness = Firmness::ordinary;  // knitted
    Spacing spacing = Spacing::general;      // woven
    Finish finish = Finish::light;           // woven
    Loom loom = Loom::warped;                // woven: what its warp is stretched on
    Length fringe;                           // woven: bare warp kept at each end of each panel
    Length hem;                              // woven: turned in or sewn in, at each end of each
    Length loom_waste;                       // woven: what cannot be woven, once a warp; of it the
                                             // first fringe and the last are cut

    Role role = Role::whole;            // of the batch in it
    Fabrics own;                        // stitches or weaves that it brings with it
    std::vector<PieceTemplate> pieces;  // at least one; the first is what a plan is about
    std::vector<std::string> worked;    // their names as they are worked: order.hpp
    std::array<Wish, asked_count> wishes{};
    ArticleKind kind;  // these three from the tables, by its article
    PieceRange apart;
    std::shared_ptr<const Calling> calling;  // nothing: no needs, not compared
    std::vector<std::string> steps;          // words with {piece.stitches} and the like
    std::vector<std::string> cautions;
    std::string origin;  // "built in", or the file it came from

    const Wish& wish(Asked what) const { return wishes[static_cast<std::size_t>(what)]; }
};

// Which cannot be undone: by its finish, or in the fabric that it is knitted in first.
bool is_hard_fulled(const Template& article, const Fabrics& fabrics);

}  // namespace gristwright
