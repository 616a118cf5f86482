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
    Wearer wearer = Wearer::unsaid;
    bool fulled = false;
    Role role = Role::whole;
    std::optional<Length> size;
};

struct Answerer::Best {
    Plan plan;  // at the ideal size
    Judgement judgement;
    Wearer made_for = Wearer::unsaid;
    bool unasked = false;  // a way of making, or another yarn beside this one, that an idea names
    bool in_role = false;  // the metres are those of the part that was named
    bool drawn = false;    // in the fabric that was asked for
};

bool has_form(const Template& article, const std::string& form);

}  // namespace gristwright
