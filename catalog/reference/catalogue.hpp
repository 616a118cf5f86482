// What gristwright knows before a person says anything: reference tables and templates. Reviewed
// text in catalog/, checked and packed into one image by the build, carried in the program.
#pragma once

#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "catalog/reference/spoken.hpp"
#include "engine/caution/caution.hpp"
#include "engine/project/body.hpp"
#include "engine/project/demand_for.hpp"
#include "engine/project/templates.hpp"
#include "engine/yarn/profile.hpp"

namespace gristwright::catalog {

// An ordinary handspun yarn, to compare with: "Merino 70% + Silk, Bombyx 30%", combed, ...
struct OrdinaryYarn {
    std::string fibre;
    Preparation preparation = Preparation::unknown;
    Draw draw = Draw::unknown;
    int plies = 2;
    double metres_per_gram = 0;
};

// A template of the person's own that could not be taken, and why.
struct LeftOut {
    std::string name;  // its file's; empty: the whole folder
    std::string why;
};

// A long text that few commands read: its own, or a part of the program's image.
class PackedText {
  public:
    PackedText() = default;
    PackedText(std::string own)
        : own_(std::make_shared<const std::string>(std::move(own))), text_(*own_) {}
    // `image` outlives it.
    static PackedText part_of(std::string_view image) {
        PackedText out;
        out.text_ = image;
        return out;
    }
    std::string_view text() const { return text_; }

  private:
    std::shared_ptr<const std::string> own_;
    std::string_view text_;
};

struct Catalogue {
    YarnTables yarn;
    Fabrics fabrics;
    ArticleKinds kinds;
    std::vector<FibrePart> fibres;
    PackedText words;  // the table of words: engine/suggestion/lexicon.hpp
    std::vector<DemandFor> needs;
    std::vector<PieceRange> piece_ranges;
    std::vector<SpunFor> spun_for;
    std::vector<OrdinaryYarn> ordinary;
    SpokenWords spoken;
    std::vector<Caution> cautions;
    std::vector<BodySize> bodies;
    Templates templates;  // by name
    std::vector<LeftOut> left_out;

    const Template* template_named(std::string_view name) const;
    // The templates that words may mean: one of that name or title; else all of that article; else
    // those whose name or title begins with them, or holds each of them. Empty: none.
    std::vector<const Template*> templates_meant(std::string_view words) const;
    // By its whole name, however its letters and hyphens are written.
    const FibrePart* fibre_called(std::string_view name) const;
    // Small letters count as capitals do; the whole name, or a name of which the rest is a bracket
    // that no other row shares.
    const FibrePart* fibre_named(std::string_view name) const;
    std::vector<std::string> template_names() const;
    std::vector<std::string> fibre_names() const;
};

// The catalogue carried in this program. Throws std::runtime_error when its image is damaged.
Catalogue built_in();

}  // namespace gristwright::catalog
