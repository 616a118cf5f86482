#include "cli/ranking.hpp"

namespace gristwright::cli {

Ranked rank(const Question& q, std::string_view craft) {
    return ranked(q.catalogue->templates, q.yarn, q.catalogue->fabrics, q.measured.owned, q.request,
                  craft);
}

}  // namespace gristwright::cli
