// What the texts of a remembered swatch mean.
#pragma once

#include "catalog/typed/kept_texts.hpp"
#include "engine/evidence/progress.hpp"
#include "engine/evidence/swatch.hpp"

namespace gristwright::catalog {

// "28/10.3cm": a count over a length.
Counted read_counted(const std::string& text);
// "15.2x14.8cm", "15.2cm x 14.8cm": width and length.
std::pair<Length, Length> read_sides(const std::string& text);
// "4/5": 0 to 1.
double read_look(const std::string& text);

// Throw Refused naming the key. Keys of a knitted swatch: stitches, rows, sides,
// mass, needle (mm), insist and washed (yes or no), look, fabric, firmness; of a woven one: reed,
// woven, finished, look, finish. Both may have from: the skein.
KnittedSwatch read_knitted(const SwatchText& text);
WovenSwatch read_woven(const SwatchText& text);

// The stitch it was knitted in, else stocking stitch. Throws for one that is not in the table.
const KnitFabric& fabric_of(const SwatchText& text, const Fabrics& fabrics);
// How it was rated, knitted or woven.
std::optional<double> look_of(const SwatchText& text);

// The place of the skein called so: by its name, or by its number where that is its name; "a" is A.
std::optional<std::size_t> skein_called(const std::string& name,
                                        const std::vector<std::string>& skeins);
// Which of the batch's yarns it was made of, by the skein that it names; of one yarn the first.
// Nothing: the yarns are several, and it names none of their skeins.
std::optional<std::size_t> yarn_of(const SwatchText& text, const Batch& batch,
                                   const Agreement& agreement);

// Everything the swatches tell, taken in the order they were made, added to what the yarn's
// evidence holds of the hands.
Evidence evidence_of(const std::vector<SwatchText>& swatches, const YarnProfile& yarn,
                     const Fabrics& fabrics);

// Row 0 and 0 cm are the weighing before the work begins. A row may name its piece: "34 of sleeve
// 2".
Weighing read_weighing(const WeighingText& text);

}  // namespace gristwright::catalog
