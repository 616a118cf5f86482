// A stitch or a weave that a template brings with it, known by its chart alone.
#pragma once

#include "catalog/text/toml_text.hpp"
#include "engine/project/template.hpp"

namespace gristwright::catalog {

// [[stitch]]: name, chart, and gauge = [stitches, rows] against stocking stitch where it was
// counted. Metres follow from the chart; holes, and how far they open, from its yarn overs.
KnitFabric read_own_stitch(TomlTable from);

// [[weave]]: name and chart; threads, crossings, floats, take-up and shafts follow from it.
Weave read_own_weave(TomlTable from);

}  // namespace gristwright::catalog
