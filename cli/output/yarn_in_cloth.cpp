#include "cli/output/yarn_in_cloth.hpp"

#include <cmath>
#include <cstdint>
#include <numbers>

#include "engine/lay/constants.hpp"
#include "engine/yarn/count.hpp"

namespace gristwright::cli {
namespace {

constexpr double hairs_per_mm = 2.2;         // of yarn, at full bloom (judgement)
constexpr double most_hairs = 3500;          // in one picture: more are not told apart
constexpr double closest_marks = 1;          // thicknesses apart: nearer ones are not told apart
constexpr double body = 0.84, light = 0.34;  // shares of the thickness

// A small generator of our own: the same numbers on every machine.
class Seeded {
  public:
    double next() {  // 0..1; Lehmer 1951 with the multiplier of Park and Miller (from memory)
        state_ = state_ * 48271 % 2147483647;
        return double(state_) / 2147483647.0;
    }
    double around() { return next() - 0.5; }

  private:
    std::uint64_t state_ = 20011;
};

// What lies behind is in the others' shade.
const char* body_look(const lay::Run& run) {
    if (run.second) return "yarn-body yarn-second";
    return run.shaded ? "yarn-body yarn-shade" : "yarn-body";
}

class ClothDrawer {
  public:
    ClothDrawer(const lay::Cloth& cloth, const YarnLook& look, double scale)
        : cloth_(cloth),
          look_(look),
          scale_(scale),
          out_(cloth.width * scale, cloth.height * scale, "", "") {}

    Svg draw() {
        double yarn = 0;
        for (const auto& run : cloth_.runs) {
            strand(run);
            yarn += lay::length(run);
        }
        const double wanted = hairs_per_mm * look_.bloom * yarn;
        const double density = wanted > 0 ? std::min(wanted, most_hairs) / yarn : 0;
        Path hairs;
        for (const auto& run : cloth_.runs) grow(run, density, hairs);
        return out_.path(hairs, "hair"), std::move(out_);
    }

  private:
    Point placed(lay::Place p) const { return {scale_ * p.x, scale_ * (cloth_.height - p.y)}; }

    void strand(const lay::Run& run) {
        Path path;
        for (const auto& p : run.line)
            &p == &run.line.front() ? path.move(placed(p)) : path.line(placed(p));
        const double thick = scale_ * cloth_.thickness;
        out_.stroke(path, "yarn-edge", thick).stroke(path, body_look(run), body * thick);
        if (!run.shaded)
            out_.stroke(path, run.second ? "yarn-light yarn-second" : "yarn-light", light * thick);
        if (look_.turn > 0) out_.path(ply_marks(run), "yarn-ply");
    }

    // Where one ply gives way to the next.
    Path ply_marks(const lay::Run& run) {
        Path out;
        const double long_ = lay::length(run),
                     step = std::max(look_.turn / look_.plies, closest_marks * cloth_.thickness);
        double at = step * (0.3 + 0.4 * chance_.next());
        while (at < long_) {
            ply_mark(run, at, long_, out);
            at += step;
        }
        return out;
    }

    // Across the yarn within half a turn.
    void ply_mark(const lay::Run& run, double at, double long_, Path& out) {
        bool first = true;
        for (int quarter = -2; quarter <= 2; ++quarter) {
            const double u = 0.25 * quarter, along = at + u * look_.turn / 2;
            if (along < 0 || along > long_) continue;
            const auto p = placed(beside(run, along, body * std::sin(std::numbers::pi * u) / 2));
            first ? out.move(p) : out.line(p);
            first = false;
        }
    }

    // A place `aside` thicknesses to the side of the middle line.
    lay::Place beside(const lay::Run& run, double along, double aside) const {
        const double step = 0.05 * cloth_.thickness;
        const auto a = lay::at(run, std::max(0.0, along - step)), b = lay::at(run, along + step);
        const double long_ = std::hypot(b.x - a.x, b.y - a.y);
        const double way = long_ > 0 ? aside * cloth_.thickness / long_ : 0;
        const auto p = lay::at(run, along);
        return {p.x - way * (b.y - a.y), p.y + way * (b.x - a.x)};
    }

    void grow(const lay::Run& run, double per_mm, Path& hairs) {
        const double long_ = lay::length(run);
        const int count = static_cast<int>(per_mm * long_ + chance_.next());
        for (int i = 0; i < count; ++i)
            hair(placed(beside(run, long_ * chance_.next(), 0.9 * chance_.around())), hairs);
    }

    // Curving away by up to the bloom's reach, which is in mm: a coarser picture is no hairier.
    void hair(Point from, Path& hairs) {
        const double angle = 2 * std::numbers::pi * chance_.next();
        const double reach = scale_ * look_.bloom * (0.5 + 1.6 * chance_.next());
        const double bend = angle + 1.2 * chance_.around();
        const auto to = [&](double way, double share) {
            return Point{from.x + share * reach * std::cos(way),
                         from.y + share * reach * std::sin(way)};
        };
        const auto knee = to(angle, 0.6);
        hairs.move(from).curve(knee, knee, to(bend, 1));
    }

    const lay::Cloth& cloth_;
    const YarnLook& look_;
    double scale_;
    Svg out_;
    Seeded chance_;
};

double ply_turn(const YarnProfile& yarn) {
    const double factor = yarn.twist_factor.value_or(constants::usual_ply_twist);
    const double per_inch =
        factor * std::sqrt(count_of(yarn.linear_density.mid, count_system("worsted count")));
    return 1000 / in_turns_per_metre(turns_per_inch(per_inch));
}

}  // namespace

YarnLook look_of(const YarnProfile& yarn, int plies) {
    const double squared = yarn.packed_diameter.si() * yarn.laid_diameter.si();
    return {Length::from_si(std::sqrt(squared)), yarn.plied ? ply_turn(yarn) : 0,
            std::max(1, plies), yarn.trait(TraitName::bloom).value};
}

YarnProfile combed_alike(const Question& q) {
    auto batch = q.measured.batch;
    batch.preparation = Preparation::combed;
    batch.draw = Draw::short_draw;
    const auto band = usual_packing(batch.preparation, batch.draw);
    const double usual = (band.low + band.high) / 2;
    const auto one = wraps_per_inch(1);
    const double at_one = packing_from_wraps(q.yarn.linear_density.mid, one, FibrePart{}.density);
    batch.wraps = WrapsReading{one * std::sqrt(usual / at_one), inches(1), WrapsHow::laid};
    return profile(batch, q.catalogue.yarn, true);
}

Svg drawn_cloth(const lay::Cloth& cloth, const YarnLook& look, double scale) {
    return ClothDrawer(cloth, look, scale).draw();
}

}  // namespace gristwright::cli
