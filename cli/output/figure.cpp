#include "cli/output/figure.hpp"

#include <cmath>
#include <numbers>

namespace gristwright::cli {
namespace {

// The right half of the body, from the neck over the arm down to the foot and up inside the leg.
const Line half_body = {{0, -149},   {5.5, -149}, {6, -143},   {13, -140},   {19.5, -136},
                        {22, -126},  {23, -110},  {25, -94},   {27, -76},    {27.5, -68},
                        {24.5, -66}, {23, -77},   {20, -94},   {17.5, -110}, {16, -122},
                        {14, -106},  {16, -94},   {17.5, -84}, {16.5, -64},  {13, -47},
                        {12.5, -32}, {9, -12},    {11, -4},    {14, -1},     {13, 0},
                        {4, 0},      {3.5, -8},   {3.5, -30},  {3, -46},     {1.5, -76}};

// Corners cut twice (Chaikin 1974, from memory).
Line smooth(Line line) {
    for (int round = 0; round < 2; ++round) {
        Line out;
        for (std::size_t i = 0; i < line.size(); ++i) {
            const auto a = line[i], b = line[(i + 1) % line.size()];
            out.push_back({0.75 * a.x + 0.25 * b.x, 0.75 * a.y + 0.25 * b.y});
            out.push_back({0.25 * a.x + 0.75 * b.x, 0.25 * a.y + 0.75 * b.y});
        }
        line = std::move(out);
    }
    return line;
}

Line ellipse(Point centre, double across, double down) {
    Line out;
    for (int i = 0; i < 24; ++i) {
        const double angle = 2 * std::numbers::pi * i / 24;
        out.push_back({centre.x + across * std::cos(angle), centre.y + down * std::sin(angle)});
    }
    return out;
}

}  // namespace

std::vector<Line> standing_figure() {
    auto whole = half_body;
    for (auto p = half_body.rbegin(); p != half_body.rend(); ++p) whole.push_back({-p->x, p->y});
    return {smooth(whole), ellipse({0, 11.8 - figure_height}, 8.3, 11.8)};
}

}  // namespace gristwright::cli
