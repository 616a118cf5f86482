// Yarns and articles of any kind, the same for the same seed: what a hand can spin and a person can
// want.
#pragma once

#include <cmath>
#include <numbers>
#include <random>
#include <string>

#include "engine/project/plan.hpp"
#include "engine/yarn/batch.hpp"
#include "tests/engine/invented.hpp"

namespace random_case {

using namespace gristwright;

class Random {
  public:
    explicit Random(unsigned seed) : engine_(seed) {}

    double between(double low, double high) {
        return std::uniform_real_distribution<double>(low, high)(engine_);
    }
    int whole(int low, int high) { return std::uniform_int_distribution<int>(low, high)(engine_); }
    bool once_in(int times) { return whole(1, times) == 1; }
    template <class List>
    auto one_of(const List& list) {
        return list[static_cast<std::size_t>(whole(0, static_cast<int>(std::size(list)) - 1))];
    }
    std::mt19937& engine() { return engine_; }

  private:
    std::mt19937 engine_;
};

// The count of a ruler wrapped with a yarn of which that share of the space is fibre.
inline Wraps wraps_of(LinearDensity grist, double packing) {
    const double area = grist.si() / (FibrePart{}.density.si() * packing);
    return Wraps::from_si(1 / std::sqrt(4 * area / std::numbers::pi));
}

inline Batch batch(Random& random) {
    constexpr LengthState states[] = {LengthState::unknown, LengthState::washed,
                                      LengthState::off_reel, LengthState::on_reel};
    constexpr double scales[] = {0.01, 0.1, 1, 5};
    Batch out;
    const double grist = random.between(60, 900);
    const auto state = random.one_of(states);
    const int skeins = random.whole(1, 6);
    for (int i = 0; i < skeins; ++i) {
        const auto length = metres(random.between(20, 400));
        out.skeins.push_back({"skein " + std::to_string(i), length,
                              length * tex(grist * random.between(0.95, 1.05)),
                              random.once_in(8) ? random.one_of(states) : state});
    }
    out.measuring.scale_step = grams(random.one_of(scales));
    if (random.once_in(2))
        out.wraps = WrapsReading{wraps_of(tex(grist), random.between(0.1, 0.35))};
    if (random.once_in(2)) out.preparation = Preparation::combed;
    if (random.once_in(2)) out.draw = Draw::long_draw;
    if (random.once_in(2)) out.plies = random.whole(1, 4);
    return out;
}

inline PieceTemplate knitted_piece(Random& random) {
    constexpr Shape shapes[] = {Shape::rectangle,     Shape::tube,     Shape::triangle,
                                Shape::half_circle,   Shape::crescent, Shape::square_from_corner,
                                Shape::bias_triangle, Shape::circle,   Shape::cap,
                                Shape::taper};
    auto out = invented::piece(random.once_in(2) ? "plain" : "lace", random.between(15, 150),
                               random.between(10, 150), Grows::both);
    out.outline.shape = random.one_of(shapes);
    out.outline.narrow = out.outline.width * random.between(0.2, 0.9);
    if (!one_measure(out.outline.shape) && random.once_in(2)) out.grows = Grows::length;
    return out;
}

inline PieceTemplate woven_piece(Random& random) {
    constexpr Grows ways[] = {Grows::length, Grows::both, Grows::width};
    return invented::piece(random.once_in(3) ? "twill" : "tabby", random.between(15, 80),
                           random.between(30, 200), random.one_of(ways));
}

// Sizes need not be whole centimetres: people write inches too.
inline Template article(Random& random) {
    const auto craft = random.once_in(2) ? Craft::knitted : Craft::woven;
    const auto piece = [&] {
        auto out = craft == Craft::knitted ? knitted_piece(random) : woven_piece(random);
        out.count = random.once_in(4) ? random.whole(2, 4) : 1;
        return out;
    };
    auto out = invented::article(craft, piece());
    if (random.once_in(3)) out.pieces.push_back(piece());
    if (random.once_in(5)) out.pieces.back().yarn = out.pieces.size() > 1 ? 2 : 1;
    out.ideal = centimetres(random.between(20, 200));
    out.smallest = out.ideal * random.between(0.3, 1);
    out.largest = out.ideal * random.between(1, 2);
    out.fitted = random.once_in(4);
    return out;
}

}  // namespace random_case
