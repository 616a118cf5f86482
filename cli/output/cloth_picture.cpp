#include "cli/output/cloth_picture.hpp"

#include <fmt/core.h>

#include <cmath>
#include <cstdint>
#include <numbers>

#include "cli/output/layout.hpp"

namespace gristwright::cli {
namespace {

constexpr double frame_left = 16, frame_top = 68, frame_width = 328, frame_height = 250;
constexpr double shown_mm = 30;  // across the picture
constexpr double scale = frame_width / shown_mm;
constexpr double leg_from = 0.22, leg_to = 0.80;  // the part of a half loop that lies in front
constexpr double hairs_per_mm = 2.2;              // of yarn, at full bloom (judgement)

// A small generator of our own: the same numbers on every machine.
class Seeded {
  public:
    double next() {  // 0..1; Lehmer 1951 with the multiplier of Park and Miller (from memory)
        state_ = state_ * 48271 % 2147483647;
        return double(state_) / 2147483647.0;
    }

  private:
    std::uint64_t state_ = 20011;
};

Path& add(Path& path, Point p, bool first) { return first ? path.move(p) : path.line(p); }

// A stretch of yarn as a line of short pieces.
template <class Curve>
Path stretch(const Curve& curve, double from, double to) {
    Path out;
    for (int i = 0; i <= 10; ++i) add(out, curve(from + (to - from) * i / 10), i == 0);
    return out;
}

struct Strand {
    double thick, turn;  // units of the picture

    void draw(Svg& svg, const Path& path) const {
        svg.stroke(path, "yarn-edge", thick).stroke(path, "yarn-body", 0.84 * thick);
        if (turn > 0) svg.stroke(path, "yarn-ply", 0.84 * thick, 0.14 * thick, turn);
    }
};

struct Halo {
    double bloom = 0;  // 0..1
    Path hairs;
    Seeded chance;

    // Hairs along `length` mm of yarn at `where`, each curving away by up to a bloom's reach.
    void grow(Point where, double length) {
        const int count = static_cast<int>(hairs_per_mm * bloom * length + chance.next());
        for (int i = 0; i < count; ++i) {
            const double angle = 2 * std::numbers::pi * chance.next();
            const double reach = scale * bloom * (0.5 + 1.6 * chance.next());
            const double bend = angle + 1.2 * (chance.next() - 0.5);
            const Point from{where.x + 3 * (chance.next() - 0.5),
                             where.y + 3 * (chance.next() - 0.5)};
            const Point knee{from.x + 0.6 * reach * std::cos(angle),
                             from.y + 0.6 * reach * std::sin(angle)};
            const Point tip{from.x + reach * std::cos(bend), from.y + reach * std::sin(bend)};
            hairs.move(from).curve(knee, knee, tip);
        }
    }
};

// The four halves that a loop shows twice over: left and right, at a stitch's place.
template <class Draw>
void each_half(const HalfLoop& loop, double row_height, Draw draw) {
    const int across = static_cast<int>(shown_mm / loop.w) + 3;
    const int rows = static_cast<int>(frame_height / scale / row_height) + 4;
    for (int row = -2; row < rows; ++row)
        for (int stitch = -1; stitch < across; ++stitch)
            for (const double side : {-1.0, 1.0})
                draw([=](double t) {
                    const auto p = loop.at(t);
                    return Point{scale * (loop.w * (stitch + 0.5) - side * p.x),
                                 frame_height - scale * (row_height * row + p.y)};
                });
}

void draw_knitted(Svg& svg, const HalfLoop& loop, double row_height, const Strand& yarn,
                  Halo& halo) {
    each_half(loop, row_height, [&](const auto& curve) {
        yarn.draw(svg, stretch(curve, 0, leg_from));
        yarn.draw(svg, stretch(curve, leg_to, 1));
    });
    each_half(loop, row_height, [&](const auto& curve) {
        yarn.draw(svg, stretch(curve, leg_from, leg_to));
        for (const double t : {0.1, 0.35, 0.5, 0.65, 0.9}) halo.grow(curve(t), loop.length() / 5);
    });
}

struct Grid {
    double end, pick;  // spacings, mm
    int ends() const { return static_cast<int>(shown_mm / end) + 2; }
    int picks() const { return static_cast<int>(frame_height / scale / pick) + 2; }
    double x(double i) const { return scale * end * i; }
    double y(double j) const { return scale * pick * j; }
};

Path upright(const Grid& g, int i, double from, double to) {
    return Path().move({g.x(i), g.y(from)}).line({g.x(i), g.y(to)});
}

Path level(const Grid& g, int j, double from, double to) {
    return Path().move({g.x(from), g.y(j)}).line({g.x(to), g.y(j)});
}

// Ends below, then picks, then each end again where it passes over a pick.
void draw_woven(Svg& svg, const Grid& g, const Strand& yarn, Halo& halo) {
    for (int i = -1; i < g.ends(); ++i) yarn.draw(svg, upright(g, i, -1, g.picks()));
    for (int j = -1; j < g.picks(); ++j) yarn.draw(svg, level(g, j, -1, g.ends()));
    for (int i = -1; i < g.ends(); ++i)
        for (int j = -1; j < g.picks(); ++j) {
            if ((i + j) % 2 == 0) yarn.draw(svg, upright(g, i, j - 0.5, j + 0.5));
            halo.grow({g.x(i), g.y(j)}, g.end + g.pick);
        }
}

// In washed cloth a yarn is thicker than squeezed and thinner than laid: halfway, as a ratio
// (judgement). In mm.
double thickness(const YarnProfile& yarn) {
    return std::sqrt(in_millimetres(yarn.packed_diameter) * in_millimetres(yarn.laid_diameter));
}

// With one turn of its plies (0: singles, no marks).
Strand strand_of(const YarnProfile& yarn) {
    const double d = thickness(yarn) * scale;
    return {d, yarn.plied ? 1.6 * d : 0};
}

Svg knitted_field(const KnitCloth& cloth, const YarnProfile& yarn) {
    Svg field(frame_width, frame_height, "", "");
    const double w = 1000 / cloth.gauge.mid.si();
    const double rows = 1000 / rows_from_loop(cloth.loop, Relaxation::full).si();
    const double overlap = 1.6 * thickness(yarn);
    const auto loop = half_loop(w, rows + overlap, in_millimetres(cloth.loop) / 2);
    Halo halo{yarn.trait(TraitName::bloom).value, {}, {}};
    draw_knitted(field, loop, rows, strand_of(yarn), halo);
    field.path(halo.hairs, "hair");
    return field;
}

Svg woven_field(const WovenCloth& cloth, const YarnProfile& yarn) {
    Svg field(frame_width, frame_height, "", "");
    const Grid grid{1000 * (1 - cloth.width.mid) / cloth.ends.si(),
                    1000 * (1 - cloth.length.mid) / cloth.picks.si()};
    Halo halo{yarn.trait(TraitName::bloom).value, {}, {}};
    draw_woven(field, grid, strand_of(yarn), halo);
    field.path(halo.hairs, "hair");
    return field;
}

std::string cloth_words(const PlanPiece& piece, const YarnProfile& yarn) {
    const auto drawn = fmt::format(
        "yarn drawn {:.1f} mm thick, between {:.1f} laid and {:.1f} squeezed", thickness(yarn),
        in_millimetres(yarn.laid_diameter), in_millimetres(yarn.packed_diameter));
    if (piece.knit)
        return fmt::format("stocking stitch, {:.0f} st/10 cm, loop {:.1f} mm; {}",
                           in_stitches_per_10cm(piece.knit->gauge.mid),
                           in_millimetres(piece.knit->loop), drawn);
    return fmt::format("plain weave, {:.0f} ends and {:.0f} picks/10 cm, washed; {}",
                       in_ends_per_10cm(piece.woven->ends) / (1 - piece.woven->width.mid),
                       in_ends_per_10cm(piece.woven->picks) / (1 - piece.woven->length.mid), drawn);
}

}  // namespace

Point HalfLoop::at(double t) const {
    const double s = 1 - t, a = 3 * s * s * t, b = 3 * s * t * t, c = t * t * t;
    return {-w / 2 * s * s * s + (-w / 2 + reach) * a - reach * b, h * (b + c)};
}

double HalfLoop::length() const {
    double out = 0;
    auto last = at(0);
    for (int i = 1; i <= 200; ++i) {
        const auto p = at(i / 200.0);
        out += std::hypot(p.x - last.x, p.y - last.y);
        last = p;
    }
    return out;
}

HalfLoop half_loop(double w, double h, double length) {
    double low = w / 6, high = 4 * w;
    for (int i = 0; i < 50; ++i) {
        const double middle = (low + high) / 2;
        (HalfLoop{w, h, middle}.length() < length ? low : high) = middle;
    }
    return {w, h, (low + high) / 2};
}

Svg cloth_picture(const Plan& plan, const YarnProfile& yarn) {
    const auto& piece = plan.pieces.front();
    const auto said = capital(cloth_words(piece, yarn));
    const double foot = frame_top + frame_height;
    Svg out(frame_width + 2 * frame_left, foot + 54, plan.article->title + ": the cloth",
            said + ". A drawing from measurements, not a photograph.");
    out.text({frame_left, 24}, plan.article->title, "head");
    out.lines({frame_left, 41}, said, 56, "label");
    out.place(piece.knit ? knitted_field(*piece.knit, yarn) : woven_field(*piece.woven, yarn),
              {frame_left, frame_top});
    out.line({frame_left, foot + 18}, {frame_left + 10 * scale, foot + 18}, "edge");
    out.text({frame_left + 10 * scale + 8, foot + 22}, "10 mm", "label");
    out.text({frame_left, foot + 42}, "A drawing from measurements, not a photograph.", "faint");
    return out;
}

}  // namespace gristwright::cli
