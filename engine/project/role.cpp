#include "engine/project/role.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <stdexcept>

#include "engine/project/constants.hpp"
#include "engine/units/failure.hpp"

namespace gristwright {
namespace {

struct Named {
    Role role;
    std::string_view name, words;
    std::string_view also = {};  // as the help spells it out
};
constexpr std::array<Named, 7> roles{{
    {Role::whole, "whole", "all of it"},
    {Role::weft, "weft", "weft on another warp"},
    {Role::warp, "warp", "warp under another weft"},
    {Role::border, "border", "border and edges round another yarn", "border and edges"},
    {Role::colour, "colour", "one of two yarns, half of it", "one of two colours"},
    {Role::doubled, "double", "held double"},
    {Role::plied_again, "plied", "plied again, two strands together", "plied again"},
}};

double size_of(const PieceTemplate& piece) { return area(piece.outline).si() * piece.count; }

void share(Template& article, double of_warp, double of_weft) {
    for (auto& piece : article.pieces) {
        piece.of_warp = std::min(piece.of_warp, of_warp);
        piece.of_weft = std::min(piece.of_weft, of_weft);
    }
}

Wish& wish(Template& article, Asked what) { return article.wishes[static_cast<std::size_t>(what)]; }

void need_woven(const Template& article) {
    if (article.craft == Craft::woven) return;
    throw Refused(fmt::format("{} is knitted: it has neither warp nor weft", article.title));
}

// The largest piece is the other yarn's.
void keep_border(Template& article) {
    const auto middle =
        std::max_element(article.pieces.begin(), article.pieces.end(),
                         [](const auto& a, const auto& b) { return size_of(a) < size_of(b); });
    const bool all_alike = std::all_of(article.pieces.begin(), article.pieces.end(),
                                       [&](const auto& p) { return p.name == middle->name; });
    if (all_alike)
        throw Refused(fmt::format("{} is made in one: it has no border or edge", article.title));
    middle->yarn = 2;
}

}  // namespace

std::string_view words(Role role) {
    return std::find_if(roles.begin(), roles.end(), [&](const auto& r) { return r.role == role; })
        ->words;
}

std::string_view name_of(Role role) {
    return std::find_if(roles.begin(), roles.end(), [&](const auto& r) { return r.role == role; })
        ->name;
}

std::optional<Role> role_named(std::string_view name) {
    const auto found = std::find_if(roles.begin(), roles.end(), [&](const auto& r) {
        return r.name == name || r.words == name || (!r.also.empty() && r.also == name);
    });
    if (found == roles.end()) return {};
    return found->role;
}

bool takes_two(const Template& article) {
    return std::any_of(article.pieces.begin(), article.pieces.end(), [](const auto& piece) {
        return piece.warp_ours() < 1 || piece.weft_ours() < 1;
    });
}

Template rest_of(Template article) {
    for (auto& piece : article.pieces) {
        const double of_warp = 1 - piece.warp_ours(), of_weft = 1 - piece.weft_ours();
        piece.yarn = of_warp > 0 || of_weft > 0 ? 1 : 2;
        piece.of_warp = of_warp;
        piece.of_weft = of_weft;
    }
    if (article.role == Role::weft || article.role == Role::warp)
        article.role = article.role == Role::weft ? Role::warp : Role::weft;
    return article;
}

Template in_role(Template article, Role role) {
    article.role = role;
    switch (role) {
        case Role::weft:
            need_woven(article);
            share(article, 0, 1);
            wish(article, Asked::warp_fitness).weight = 0;
            break;
        case Role::warp:
            need_woven(article);
            share(article, 1, 0);
            break;
        case Role::border:
            keep_border(article);
            break;
        case Role::colour:  // one that has two is shared as it says
            if (!takes_two(article)) share(article, 0.5, 0.5);
            break;
        case Role::whole:
        case Role::doubled:
        case Role::plied_again:
            break;
    }
    return article;
}

Batch two_strands(Batch batch, Role role) {
    const double kept = role == Role::plied_again ? 1 - constants::plying_takes_up : 1.0;
    for (auto& skein : batch.skeins) skein.length = skein.length * (kept / 2);
    if (batch.wraps) batch.wraps->count = batch.wraps->count * std::sqrt(kept / 2);
    if (role == Role::plied_again && batch.plies > 0) batch.plies *= 2;
    batch.ply_twist.reset();
    batch.washed_gauge.reset();
    return batch;
}

}  // namespace gristwright
