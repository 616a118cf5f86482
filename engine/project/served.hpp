// How far a cloth serves what an article wishes of it: judging reckons with this, and a heddle is
// chosen by it. All of it 0..1.
#pragma once

#include "engine/project/template.hpp"

namespace gristwright {

// What a wish is served by so much; never below constants::least_wish.
double wish_served(const Wish& wish, double had);

// Cover: a web's share of its greatest sett beside the band that its purpose wants.
double share_served(const WovenCloth& cloth);

// 0 as firm as board, 1 as loose as holds together.
double looseness(const WovenCloth& cloth);

// Of a cloth so loose in this yarn.
double drape_had(double looseness, const YarnProfile& yarn);

// What a sett leaves of the whole judgement: its cover and its drape, weighed as judging weighs
// them, and whether its heddle must be borrowed.
double sett_served(const Template& article, const YarnProfile& yarn, const WovenCloth& cloth);

}  // namespace gristwright
