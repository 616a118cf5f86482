// Sharing skeins out: our exact search against GLPK and CBC on the same random problems, and how
// near to its bound it comes where nobody proves anything. One run, noisy: read the ratios.
//
// GLPK and CBC run inside this process on a problem already read; only their solving is timed. CBC
// runs without cuts and preprocessing, with which it calls wrong plans best now and then.
#include <coin/Cbc_C_Interface.h>
#include <fmt/core.h>
#include <glpk.h>
#include <unistd.h>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <numeric>

#include "engine/allocation/allocate.hpp"
#include "tests/bench/timing.hpp"
#include "tests/engine/allocation/lp_text.hpp"
#include "tests/engine/allocation/random_problem.hpp"

using namespace gristwright::allocation;

namespace {

constexpr int limit_s = 4;

template <class Work>
double ms_of(Work work) {
    const auto start = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start)
        .count();
}

struct Times {
    std::vector<double> ms;
    int unproven = 0;

    double total() const { return std::accumulate(ms.begin(), ms.end(), 0.0); }
    double worst() const { return *std::max_element(ms.begin(), ms.end()); }
    double median() const {
        auto sorted = ms;
        std::sort(sorted.begin(), sorted.end());
        return sorted[sorted.size() / 2];
    }
};

void glpk(glp_prob* lp, Times& times) {
    glp_iocp how;
    glp_init_iocp(&how);
    how.msg_lev = GLP_MSG_OFF;
    how.presolve = GLP_ON;
    how.tm_lim = limit_s * 1000;
    int failed = 0;
    times.ms.push_back(ms_of([&] { failed = glp_intopt(lp, &how); }));
    times.unproven += failed == GLP_ETMLIM ? 1 : 0;
}

void cbc(const std::string& mps, Times& times) {
    auto* model = Cbc_newModel();
    Cbc_setLogLevel(model, 0);
    Cbc_readMps(model, mps.c_str());
    Cbc_setObjSense(model, -1);
    const auto seconds = std::to_string(limit_s);
    for (const auto& [name, value] :
         {std::pair{"log", "0"}, std::pair{"cuts", "off"}, std::pair{"preprocess", "off"},
          std::pair{"ratioGap", "0"}, std::pair{"allowableGap", "0"},
          std::pair{"seconds", seconds.c_str()}})
        Cbc_setParameter(model, name, value);
    times.ms.push_back(ms_of([&] { Cbc_solve(model); }));
    times.unproven += Cbc_isProvenOptimal(model) || Cbc_isProvenInfeasible(model) ? 0 : 1;
    Cbc_deleteModel(model);
}

void ours(const Problem& problem, Times& times) {
    Allocation answer;
    times.ms.push_back(ms_of([&] { answer = allocate(problem); }));
    times.unproven += answer.outcome == Allocation::Outcome::best_found ||
                              answer.outcome == Allocation::Outcome::nothing_found
                          ? 1
                          : 0;
}

void print(const char* who, const Times& times, const Times& base) {
    fmt::print(
        "  {:6} median {:9.3f} ms  total {:10.1f} ms  worst {:9.1f} ms  unproven {:2}  {:7.1f}x\n",
        who, times.median(), times.total(), times.worst(), times.unproven,
        times.total() / base.total());
}

void row(const std::string& what, const Times& we, const std::string& who, const Times& they) {
    bench::row("splits " + what, fmt::format("{:.1f} ms", we.total()),
               fmt::format("{}: {:.1f} ms, {} of {} unproven", who, they.total(), they.unproven,
                           they.ms.size()),
               fmt::format("{:.1f} x faster", they.total() / we.total()));
}

template <class Make>  // by seed
void against_others(const std::string& what, std::uint64_t count, Make make) {
    Times we, they, others;
    const auto file =
        std::filesystem::temp_directory_path() / fmt::format("gristwright-bench-{}", getpid());
    const auto lp_file = file.string() + ".lp", mps_file = file.string() + ".mps";
    // One solver after the other, so that none pays for the others' leaving the caches cold.
    const auto each = [&](auto work) {
        for (std::uint64_t seed = 1; seed <= count; ++seed) work(make(seed));
    };
    each([&](const Problem& problem) { ours(problem, we); });
    const auto as_lp = [&](const Problem& problem, auto work) {
        std::ofstream(lp_file) << lp_text(problem);
        auto* lp = glp_create_prob();
        glp_read_lp(lp, nullptr, lp_file.c_str());
        work(lp);
        glp_delete_prob(lp);
    };
    each([&](const Problem& problem) { as_lp(problem, [&](glp_prob* lp) { glpk(lp, they); }); });
    each([&](const Problem& problem) {
        as_lp(problem, [&](glp_prob* lp) {
            glp_write_mps(lp, GLP_MPS_DECK, nullptr, mps_file.c_str());
            cbc(mps_file, others);
        });
    });
    std::filesystem::remove(lp_file);
    std::filesystem::remove(mps_file);
    fmt::print("{}, {} problems, limit {} s, total time by ours:\n", what, count, limit_s);
    print("ours", we, we);
    print("GLPK", they, we);
    print("CBC", others, we);
    row(what, we, "GLPK", they);
    row(what, we, "CBC", others);
}

// With an effort that takes about the seconds named, on the machine it was written on.
void alone(std::size_t size, std::uint64_t seeds, Effort effort, const char* aim) {
    fmt::print("{0}x{0}, aim {1}:\n", size, aim);
    for (std::uint64_t seed = 1, shown = 0; shown < seeds; ++seed) {
        const auto problem = random_problem(size, size, seed);
        Allocation answer;
        const auto ms = ms_of([&] { answer = allocate(problem, effort); });
        if (answer.outcome == Allocation::Outcome::impossible) continue;  // it shows nothing
        ++shown;
        fmt::print("  seed {:2}  {:7.0f} ms  value {:10.3f}  bound {:10.3f}  gap {:6.2f} %{}\n",
                   seed, ms, static_cast<double>(answer.list.worth) / 1e6,
                   static_cast<double>(answer.bound) / 1e6, 100 * answer.gap(),
                   answer.outcome == Allocation::Outcome::proven_best  ? " proven"
                   : answer.outcome == Allocation::Outcome::best_found ? ""
                                                                       : " no plan");
    }
}

}  // namespace

int main() {
    glp_term_out(GLP_OFF);
    std::setvbuf(stdout, nullptr, _IOLBF, 0);
    for (const auto& [size, count] :
         {std::pair<std::size_t, std::uint64_t>{2, 40}, {4, 40}, {8, 20}})
        against_others(fmt::format("{0}x{0}", size), count, [size = size](std::uint64_t seed) {
            return random_problem(size, size, seed);
        });
    against_others("tight, 4 to 8 skeins, 3 to 6 pieces", 20, [](std::uint64_t seed) {
        return tight_problem(4 + seed % 5, 3 + seed / 5 % 4, seed);
    });
    alone(12, 10, {3'000}, "1 s");
}
