#include "cli/spinning.hpp"

#include "engine/suggestion/constants.hpp"
#include "engine/yarn/count.hpp"

namespace gristwright::cli {

double losses(const Arguments& arguments) {
    return arguments.has("losses") ? read_share_option(arguments, "losses")
                                   : double{constants::spinning_losses};
}

double metres_per_gram(LinearDensity grist) {
    return count_of(grist, count_system("metres per gram"));
}
double yards_per_pound(LinearDensity grist) {
    return count_of(grist, count_system("yards per pound"));
}

}  // namespace gristwright::cli
