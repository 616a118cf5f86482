// What the headings of people's spreadsheets mean, for sheets of skeins and of suggestions.
#pragma once

#include <string>

namespace gristwright::catalog {

enum class Holds {
    nothing_known,
    name,
    length,
    mass,
    state,
    wraps,
    fibre,
    colour,
    count,
    preparation,
    draw,
    plies,
    other
};

struct Heading {
    Holds holds = Holds::nothing_known;
    std::string unit;  // that bare numbers under it are in: "Length (yd)"; empty: not said
    bool before_washing = false;
    bool finished = false;  // said to be washed, or of the yarn as finished
    bool of_each = false;   // said to be of one skein: "yds per skein", "grams ea"
    std::string why_not;    // why a column that looks like one of these is none: "it is a grist"
};

// "Length (yd)", "Yarn weight, g", "Metres". A grist (m/100g, "Metres per 100 g", yd/lb), a twist,
// a price, a count, and what was weighed before spinning (fibre, fleece, top) are `other`.
Heading heading_of(const std::string& header);

// A row that sums the others up: "Total", "Sum:", "Grand total", "Average".
bool names_a_total(const std::string& cell);

// `"`, "ditto", "same": the cell above says it.
bool is_ditto(const std::string& cell);

// "-", "?", "n/a": nothing is said there.
bool says_nothing(const std::string& cell);

// "wheel", "drop spindle": what it was spun on, which says nothing of the draw.
bool names_a_tool(const std::string& cell);

// "171", "38,5", "1 3/4", "~220": a number without a unit.
bool bare_number(const std::string& cell);

// Also "up to 200" and "150 to 200": no unit stands in it, and a number ends it.
bool lacks_unit(const std::string& cell);

// A size with its heading's unit behind each figure that has none of its own: "22 in head" of "22
// head", "60 x 8 in"; "shoe 42" and "age 8" are no lengths.
std::string with_unit(const std::string& cell, const std::string& unit);

}  // namespace gristwright::catalog
