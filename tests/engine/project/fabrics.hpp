// The fabrics that the planned articles are made of.
#pragma once

#include "tests/engine/invented.hpp"

inline const gristwright::Fabrics fabrics = invented::fabrics();
