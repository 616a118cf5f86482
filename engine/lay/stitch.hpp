// What one letter of a knitted chart is, and how much yarn it takes.
//
// k knit, p purl, K and P the same through the back of the loop; o yarn over; t, y two together
// (leaning right, left), d two together with a purl face, c three together, the middle one on top;
// m one of three made in one stitch, z three together that close them; s slipped with the yarn
// behind, f slipped with the yarn in front, u tucked: slipped with the yarn laid over it; 2 knit
// with the second yarn; < to the left in front and > to the right behind, ( to the left behind and
// ) to the right in front: stitches that cross; B a bobble; x a column dropped at the end; e
// wrapped twice and let long.
#pragma once

#include "engine/lay/chart.hpp"

namespace gristwright::lay {

bool purled(char stitch);      // a purl's bump to the front
bool held(char stitch);        // not worked in this row: slipped or tucked
bool crosses(char stitch);     // changes places with its neighbours
bool goes_right(char stitch);  // of those that cross
bool in_front(char stitch);    // of those that cross, at the crossing
bool decreases(char stitch);   // leans over a neighbour

// Yarn of one stitch against a loop of stocking stitch, the strand behind a second yarn's stitch
// not counted.
double loops(char stitch);

// Yarn of the repeat's mean stitch against a loop of stocking stitch: its own and, in rows of two
// yarns, the strand that passes behind.
double mean_loops(const Chart& chart);

// Share of the stitches worked with the second yarn, 0 to 1.
double second_share(const Chart& chart);

// Stitches that the longest strand behind passes; 0: no row has two yarns.
int longest_strand(const Chart& chart);

// Metres per area against stocking stitch: how much closer its stitches and rows stand, and how
// much yarn each takes.
double metres_by_chart(const Chart& chart, double stitches, double rows);

}  // namespace gristwright::lay
