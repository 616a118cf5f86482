#include "engine/lay/shade.hpp"

#include <algorithm>
#include <cmath>

#include "engine/lay/constants.hpp"
#include "engine/lay/seeded.hpp"

namespace gristwright::lay {
namespace {

constexpr float nothing = -1e6F;
constexpr Colour ground{0.133, 0.118, 0.110};
// Light from the upper left, towards the eye; of length 1.
constexpr Spot light{-0.45, 0.55, 0.703};

struct Layers {
    Field red, green, blue;

    Layers(int w, int h) : red(w, h, 0), green(w, h, 0), blue(w, h, 0) {}
    template <class F>
    void each(F f) {
        for (auto* channel : {&red, &green, &blue}) f(*channel);
    }
};

// How much higher the surroundings lie, over three distances: what lies deep gets little light.
Field shade_of(const Canvas& canvas, const View& view, const Field& height) {
    Field out(canvas.width(), canvas.height(), 0);
    for (const double reach : {0.25, 0.6, 1.2}) {
        const auto around = blurred(height, reach * view.pixels_per_mm);
        for (std::size_t i = 0; i < out.at.size(); ++i)
            out.at[i] += std::max(0.0F, around.at[i] - height.at[i]) / 3;
    }
    return out;
}

// Depth from 0 (deepest yarn, and where there is none) to 1.
Field height_of(const Canvas& canvas) {
    float low = 1e6F, high = nothing;
    for (const float z : canvas.depth.at)
        if (z > nothing) low = std::min(low, z), high = std::max(high, z);
    Field out(canvas.width(), canvas.height(), 0);
    const float span = std::max(1e-6F, high - low);
    for (std::size_t i = 0; i < out.at.size(); ++i)
        if (canvas.covered(i)) out.at[i] = 0.15F + 0.85F * (canvas.depth.at[i] - low) / span;
    return out;
}

// The unevenness of fibre, about 1: coarser than a pixel, finer than a ply.
Field grain_of(const Canvas& canvas, const View& view) {
    Field out(canvas.width(), canvas.height(), 0);
    Seeded chance(977);
    for (float& v : out.at) v = static_cast<float>(chance.next());
    const double size = 0.05 * view.pixels_per_mm;
    out = blurred(std::move(out), size);
    for (float& v : out.at) v = 1 + 0.22F * static_cast<float>(1 + 2 * size) * (v - 0.5F);
    return out;
}

Layers lit(const Canvas& canvas, const View& view) {
    const auto height = height_of(canvas);
    const auto grain = grain_of(canvas, view);
    const auto shade = shade_of(canvas, view, height);
    Layers out(canvas.width(), canvas.height());
    for (std::size_t i = 0; i < height.at.size(); ++i) {
        const bool yarn = canvas.covered(i);
        const float bright = yarn ? grain.at[i] * (0.42F + 0.66F * canvas.lit.at[i]) *
                                        (0.42F + 0.66F * height.at[i]) *
                                        std::max(0.25F, 1 - 2.1F * shade.at[i])
                                  : 1;
        out.red.at[i] = bright * (yarn ? canvas.red.at[i] : float(ground.red));
        out.green.at[i] = bright * (yarn ? canvas.green.at[i] : float(ground.green));
        out.blue.at[i] = bright * (yarn ? canvas.blue.at[i] : float(ground.blue));
    }
    return out;
}

// Fibre too fine to be drawn one by one: it smears the yarn's own colour over edges and holes.
void add_haze(const Canvas& canvas, const View& view, const Haze& haze, Layers& out) {
    const double blur = haze.blur, felted = haze.felted;
    if (blur <= 0 && felted <= 0) return;
    const double reach = std::max(0.34 * blur, constants::felted_spreads * felted);
    const double sigma = reach * view.pixels_per_mm;
    Field mask(canvas.width(), canvas.height(), 0);
    for (std::size_t i = 0; i < mask.at.size(); ++i) mask.at[i] = canvas.covered(i) ? 1 : 0;
    mask = blurred(std::move(mask), sigma);
    const auto soften = [&](Field& channel, const Field& yarn) {
        const auto soft = blurred(channel, 0.5 * sigma);
        const auto fibre = blurred(yarn, sigma);  // the yarn's colour where there is yarn, else 0
        const double hidden = constants::felted_hides * felted;
        const auto mix = static_cast<float>(std::max(std::min(0.8, 1.1 * blur), hidden));
        const auto veil = static_cast<float>(std::max(0.6 * blur, 0.9 * hidden));
        for (std::size_t i = 0; i < channel.at.size(); ++i) {
            channel.at[i] += mix * (soft.at[i] - channel.at[i]);
            if (mask.at[i] <= 0) continue;
            const float cover = veil * mask.at[i];
            channel.at[i] += cover * (0.82F * fibre.at[i] / mask.at[i] - channel.at[i]);
        }
    };
    soften(out.red, canvas.red), soften(out.green, canvas.green), soften(out.blue, canvas.blue);
}

// The matted surface of fulled cloth, which the haze has smoothed away.
void add_mat(const Canvas& canvas, const View& view, double felted, Layers& out) {
    if (felted <= 0) return;
    const auto grain = grain_of(canvas, view);
    out.each([&](Field& channel) {
        for (std::size_t i = 0; i < channel.at.size(); ++i)
            channel.at[i] *= 1 + static_cast<float>(0.7 * felted) * (grain.at[i] - 1);
    });
}

// A curved hair, thinner than a pixel: drawn as so much of its colour at each step.
void add_hair(const Hair& hair, const View& view, Layers& out) {
    const double k = view.pixels_per_mm;
    const int steps = std::max(4, int(hair.reach * k));
    double x = hair.x * k, y = (view.height - hair.y) * k;
    for (int i = 0; i < steps; ++i) {
        const double angle = hair.angle + hair.bend * i / steps;
        x += hair.reach * k / steps * std::cos(angle);
        y += hair.reach * k / steps * std::sin(angle);
        if (x < 0 || y < 0 || x >= out.red.width || y >= out.red.height) return;
        const auto at = out.red.index(int(x), int(y));
        const auto paint = [&](Field& channel, double colour) {
            const auto lighter = static_cast<float>(colour + (1 - colour) * 0.10);
            channel.at[at] += 0.20F * (lighter - channel.at[at]);
        };
        paint(out.red, hair.colour.red), paint(out.green, hair.colour.green);
        paint(out.blue, hair.colour.blue);
    }
}

std::uint8_t byte_of(float v) {
    return static_cast<std::uint8_t>(std::lround(255 * std::clamp(v, 0.0F, 1.0F)));
}

}  // namespace

Canvas::Canvas(const View& view) {
    const int w = std::max(1, int(std::lround(view.width * view.pixels_per_mm)));
    const int h = std::max(1, int(std::lround(view.height * view.pixels_per_mm)));
    depth = Field(w, h, nothing);
    red = green = blue = lit = Field(w, h, 0);
}

bool Canvas::covered(std::size_t i) const { return depth.at[i] > nothing; }

void Canvas::cover(int x, int y, double z, const Spot& face, const Colour& colour) {
    const auto i = depth.index(x, y);
    if (z <= double{depth.at[i]}) return;
    depth.at[i] = static_cast<float>(z);
    lit.at[i] = static_cast<float>(
        std::clamp(light.x * face.x + light.y * face.y + light.z * face.z, 0.0, 1.0));
    red.at[i] = static_cast<float>(colour.red), green.at[i] = static_cast<float>(colour.green);
    blue.at[i] = static_cast<float>(colour.blue);
}

Picture shaded(const Canvas& canvas, const View& view, const Haze& haze) {
    auto layers = lit(canvas, view);
    add_haze(canvas, view, haze, layers);
    add_mat(canvas, view, haze.felted, layers);
    for (const auto& hair : canvas.hairs) add_hair(hair, view, layers);
    Picture out{canvas.width(), canvas.height(), {}, view.pixels_per_mm, 0};
    std::size_t hidden = 0;
    for (std::size_t i = 0; i < layers.red.at.size(); ++i) {
        hidden += canvas.covered(i) ? 1 : 0;
        layers.each([&](const Field& channel) { out.rgb.push_back(byte_of(channel.at[i])); });
    }
    out.cover = double(hidden) / double(layers.red.at.size());
    return out;
}

}  // namespace gristwright::lay
