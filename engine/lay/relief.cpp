#include "engine/lay/relief.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "engine/lay/field.hpp"
#include "engine/lay/seeded.hpp"
#include "engine/lay/shade.hpp"

namespace gristwright::lay {
namespace {

// Between two stamps, of the thickness: no closer than what a picture's pixels show.
constexpr double least_step = 0.04, greatest_step = 0.12, step_pixels = 0.7;

// Of the yarn's thickness: a ply's own radius and how far its middle runs from the yarn's, so that
// the plies touch and together are as thick as the yarn.
struct PlyShape {
    double radius, offset;
};

PlyShape ply_shape(int plies) {
    if (plies <= 1) return {0.5, 0};
    const double touching = std::sin(std::numbers::pi / plies);  // n circles in a ring
    const double offset = 0.5 / (1 + touching);
    return {1.12 * offset * touching, offset};  // squeezed flat against each other
}

// Evenly spaced spots along a strand, and how far along each lies.
std::vector<Spot> even(const std::vector<Spot>& line, double step) {
    std::vector<Spot> out;
    double carried = 0;
    for (std::size_t i = 1; i < line.size(); ++i) {
        const auto &a = line[i - 1], &b = line[i];
        const double long_ = std::hypot(b.x - a.x, b.y - a.y, b.z - a.z);
        for (; carried < long_; carried += step) {
            const double t = carried / long_;
            out.push_back({a.x + t * (b.x - a.x), a.y + t * (b.y - a.y), a.z + t * (b.z - a.z)});
        }
        carried -= long_;
    }
    return out;
}

class Stamper {
  public:
    Stamper(const View& view, Canvas& canvas) : view_(view), canvas_(canvas) {}

    void strand(const Strand& strand, const Fibres& yarn) {
        const double step =
            yarn.thickness * std::clamp(step_pixels / (view_.pixels_per_mm * yarn.thickness),
                                        least_step, greatest_step);
        const auto line = even(strand.line, step);
        const double phase = 2 * std::numbers::pi * chance_.next();
        const double first_colour = yarn.colour_length * 20 * chance_.next();
        for (std::size_t i = 1; i + 1 < line.size(); ++i) {
            if (!near(line[i], yarn.thickness)) continue;
            const double along = double(i) * step;
            const auto colour = colour_at(yarn, first_colour + along);
            plies(line, i, yarn, phase + turned(yarn, along), colour);
            if (chance_.next() < hairs_per_mm * yarn.halo * step) hair(line[i], yarn, colour);
        }
    }

  private:
    static constexpr double hairs_per_mm = 4.5;

    bool near(const Spot& s, double reach) const {
        return s.x > -reach && s.x < view_.width + reach && s.y > -reach &&
               s.y < view_.height + reach;
    }

    static double turned(const Fibres& yarn, double along) {
        return yarn.turn > 0 ? 2 * std::numbers::pi * along / yarn.turn : 0;
    }

    static Colour colour_at(const Fibres& yarn, double along) {
        if (yarn.colours.empty()) return {};
        const auto turn = static_cast<std::size_t>(along / yarn.colour_length);
        return yarn.colours[turn % yarn.colours.size()];
    }

    // Round the middle line, in the plane across it.
    void plies(const std::vector<Spot>& line, std::size_t i, const Fibres& yarn, double phase,
               const Colour& colour) {
        const auto &a = line[i - 1], &b = line[i + 1], &p = line[i];
        const double flat = std::hypot(b.x - a.x, b.y - a.y);
        const double aside_x = flat > 0 ? -(b.y - a.y) / flat : 1;
        const double aside_y = flat > 0 ? (b.x - a.x) / flat : 0;
        const auto shape = ply_shape(yarn.plies);
        for (int ply = 0; ply < std::max(1, yarn.plies); ++ply) {
            const double angle = phase + 2 * std::numbers::pi * ply / std::max(1, yarn.plies);
            const double aside = shape.offset * yarn.thickness * std::cos(angle);
            stamp({p.x + aside * aside_x, p.y + aside * aside_y,
                   p.z + shape.offset * yarn.thickness * std::sin(angle)},
                  shape.radius * yarn.thickness, colour);
        }
    }

    // A ball in the depth buffer: a strand is a row of them.
    void stamp(const Spot& s, double radius, const Colour& colour) {
        const double k = view_.pixels_per_mm, r = radius * k;
        // The middle of pixel i lies at i + 1/2.
        const double cx = s.x * k - 0.5, cy = (view_.height - s.y) * k - 0.5;
        const int x0 = std::max(0, int(std::ceil(cx - r))),
                  y0 = std::max(0, int(std::ceil(cy - r)));
        const int x1 = std::min(canvas_.width() - 1, int(std::floor(cx + r)));
        const int y1 = std::min(canvas_.height() - 1, int(std::floor(cy + r)));
        const double nearest = s.z + radius;
        for (int y = y0; y <= y1; ++y)
            for (int x = x0; x <= x1; ++x) {
                if (canvas_.hides(x, y, nearest)) continue;
                const double dx = (x - cx) / r, dy = (y - cy) / r, up = 1 - dx * dx - dy * dy;
                if (up <= 0) continue;
                const double rise = std::sqrt(up);
                canvas_.cover(x, y, s.z + radius * rise, {dx, -dy, rise}, colour);
            }
    }

    void hair(const Spot& from, const Fibres& yarn, const Colour& colour) {
        Hair out;
        out.x = from.x, out.y = from.y;
        out.angle = 2 * std::numbers::pi * chance_.next();
        out.bend = chance_.between(-1.5, 1.5);
        out.reach = yarn.halo * chance_.between(0.4, 2.0);
        out.colour = colour;
        canvas_.hairs.push_back(out);
    }

    const View& view_;
    Canvas& canvas_;
    Seeded chance_;
};

}  // namespace

Picture relief(const std::vector<Strand>& strands, const std::array<Fibres, 2>& yarns,
               const View& view) {
    Canvas canvas(view);
    Stamper stamper(view, canvas);
    for (const auto& strand : strands)
        stamper.strand(strand, yarns[static_cast<std::size_t>(strand.yarn)]);
    return shaded(
        canvas, view,
        {std::max(yarns[0].blur, yarns[1].blur), std::max(yarns[0].felted, yarns[1].felted)});
}

double contrast(const Picture& picture, double blur) {
    Field light(picture.width, picture.height, 0);
    for (std::size_t i = 0; i < light.at.size(); ++i)
        light.at[i] =
            static_cast<float>(0.2126 * picture.rgb[3 * i] + 0.7152 * picture.rgb[3 * i + 1] +
                               0.0722 * picture.rgb[3 * i + 2]);
    light = blurred(std::move(light), blur * picture.pixels_per_mm);
    double sum = 0, squares = 0;
    for (const float v : light.at) sum += v, squares += double{v} * v;
    const double n = double(light.at.size()), mean = sum / n;
    return mean > 0 ? std::sqrt(std::max(0.0, squares / n - mean * mean)) / mean : 0;
}

}  // namespace gristwright::lay
