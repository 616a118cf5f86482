// Published pieces predicted with the reviewed fabric table: shared by the tests and the report of
// accuracy.
#pragma once

#include <string>
#include <vector>

#include "catalog/reference/catalogue.hpp"
#include "tests/cases.hpp"

namespace published {

inline constexpr double skein_yards = 70;  // the rug yarn of the articles below is sold so

struct Article {
    const char* id;
    const char* fabric;    // the row of our table nearest to what the pattern calls it
    double square_inches;  // width x length of the print, and what its note adds
};

// American Thread Co. Star Book 225 (Project Gutenberg 69979); knit_cases_open.csv has the print.
const std::vector<Article>& articles();

CaseRow knit_case(const std::string& id);

// Yarn for an article from its printed gauge and area.
gristwright::Estimate<gristwright::Length> predicted(const Article& article,
                                                     const gristwright::Fabrics& fabrics);
// Our 90 % range meets what the print allows: all skeins but one are too few, all are enough.
bool meets_print(const gristwright::Estimate<gristwright::Length>& yarn, double most_yards);

// Ounces for the garter sweater K01, when the muffler K02 of that yarn was weighed whole and the
// grist, which is not printed, is guessed.
gristwright::Estimate<double> sweater_ounces(double tex_guessed,
                                             const gristwright::Fabrics& fabrics);
// Yarn for the lace shawl K73, when another knitter's shawl K70 was used up and measured.
gristwright::Estimate<gristwright::Length> second_shawl(const gristwright::Fabrics& fabrics);

}  // namespace published
