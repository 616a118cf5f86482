// Which template answers a wish: of its kind the one in the form, the craft and the fabric that
// were named, then one that the metres reach for, then the one that this yarn serves best.
#pragma once

#include "engine/project/role.hpp"
#include "engine/suggestion/answer.hpp"

namespace gristwright {

struct Answerer::Wish {
    std::string kind, form;
    std::optional<Craft> craft;
    NamedFabric fabric;
    std::vector<NamedFabric> fabrics_out;
    std::vector<std::string> forms_out;
    Wearer wearer = Wearer::unsaid;
    bool fulled = false;
    Role role = Role::whole;
    std::optional<Length> size;
    std::string body;  // whose size decides where a body does, as body_sizes.csv has it
    int count = 0;     // how many; 0: as many as the template makes
    std::optional<Length> foot = {};  // in the shoe that was said
    Sett sett{};                      // on the loom; 0: none was said
};

struct Answerer::Best {
    Plan plan;          // at the ideal size
    Sett usual_sett{};  // woven: where none is said
    Judgement judgement;
    Wearer made_for = Wearer::unsaid;
    bool unasked = false;  // a way of making, or another yarn beside this one, that an idea names
    bool in_role = false;  // the metres are those of the part that was named
    bool drawn = false;    // in the fabric that was asked for
    double strands = 1;    // metres of this yarn in a metre of the plan's
    std::string purpose;   // the form of a title that is made for one use: "bed" socks
    bool plain = false;    // in a cloth that is taken where nobody names one
};

// How many whole articles a template makes: of "four napkins" each piece is a napkin.
int articles_made(const Template& article);

// "A blanket of 100 cm" of three squares by three: the side of one of them.
Length of_its_square(const Template& article, Length said);

bool has_form(const Template& article, const std::string& form);

}  // namespace gristwright
