// Our search against GLPK's branch and cut through its C interface, on the same seeded problems:
// medians, worst and the ratio of the totals. Then what gap is left where nobody proves.
#include <fmt/core.h>
#include <glpk.h>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <numeric>

#include "engine/allocation/allocate.hpp"
#include "tests/engine/allocation/lp_text.hpp"
#include "tests/engine/allocation/random_problem.hpp"

using namespace gristwright::allocation;

namespace {

template <class Work>
double milliseconds(Work work) {
    const auto start = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start)
        .count();
}

double glpk_ms(const Problem& problem, bool cuts) {
    const auto file = std::filesystem::temp_directory_path() / "gristwright-bench.lp";
    std::ofstream(file) << lp_text(problem);
    glp_prob* lp = glp_create_prob();
    glp_read_lp(lp, nullptr, file.c_str());
    glp_iocp options;
    glp_init_iocp(&options);
    options.presolve = GLP_ON;
    options.tm_lim = 10'000;
    options.msg_lev = GLP_MSG_OFF;
    if (cuts) options.gmi_cuts = options.mir_cuts = options.cov_cuts = options.clq_cuts = GLP_ON;
    const double ms = milliseconds([&] { glp_intopt(lp, &options); });
    glp_delete_prob(lp);
    std::filesystem::remove(file);
    return ms;
}

struct Times {
    std::vector<double> all;
    double total() const { return std::accumulate(all.begin(), all.end(), 0.0); }
    double worst() const { return *std::max_element(all.begin(), all.end()); }
    double median() {
        std::sort(all.begin(), all.end());
        return all[all.size() / 2];
    }
};

void against_glpk(std::size_t size, int instances) {
    Times ours, plain, cut;
    int unproven = 0;
    for (int seed = 1; seed <= instances; ++seed) {
        const auto problem = random_problem(size, size, static_cast<std::uint64_t>(seed));
        ours.all.push_back(milliseconds([&] {
            unproven += allocate(problem).outcome == Allocation::Outcome::best_found ? 1 : 0;
        }));
        plain.all.push_back(glpk_ms(problem, false));
        cut.all.push_back(glpk_ms(problem, true));
    }
    const double fastest = std::min(plain.total(), cut.total());
    fmt::print("{0:>2}x{0:<2} {1:>9.3f} {2:>9.1f} {3:>9.3f} {4:>9.3f} {5:>7.1f} {6:>5}\n", size,
               ours.median(), ours.worst(), plain.median(), cut.median(), fastest / ours.total(),
               unproven);
}

void gap_left(std::size_t size, int nodes) {
    for (std::uint64_t seed = 1; seed <= 5; ++seed) {
        const auto problem = random_problem(size, size, seed);
        Allocation answer;
        const double ms = milliseconds([&] { answer = allocate(problem, {nodes, -1, {}}); });
        fmt::print("{0:>2}x{0:<2} seed {1}: {2:.2f} % after {3:.0f} ms{4}\n", size, seed,
                   100 * answer.gap(), ms, answer.found() ? "" : ", no plan");
    }
}

}  // namespace

int main() {
    glp_term_out(GLP_OFF);
    fmt::print("size   ours med     worst      GLPK with cuts   ratio unproven (ms)\n");
    against_glpk(2, 40);
    against_glpk(4, 40);
    against_glpk(8, 6);
    gap_left(12, 4'000);
    gap_left(30, 300);
}
