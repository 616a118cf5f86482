// What a bench says last: rows of a Markdown table, `| what | ours | against | ratio |`, gathered
// by tests/bench/run.
#pragma once

#include <benchmark/benchmark.h>
#include <fmt/core.h>

#include <map>
#include <string>

namespace bench {

inline void row(const std::string& what, const std::string& ours, const std::string& against,
                const std::string& ratio) {
    fmt::print("| {} | {} | {} | {} |\n", what, ours, against, ratio);
}

// Google Benchmark's usual lines, without colours, and each processor time in seconds by the
// bench's name.
class Timing : public benchmark::ConsoleReporter {
  public:
    Timing() : ConsoleReporter(OO_Tabular) {}
    void ReportRuns(const std::vector<Run>& runs) override {
        ConsoleReporter::ReportRuns(runs);
        for (const auto& run : runs)
            seconds_[run.benchmark_name()] =
                run.GetAdjustedCPUTime() / benchmark::GetTimeUnitMultiplier(run.time_unit);
    }
    double seconds(const std::string& name) const { return seconds_.at(name); }

  private:
    std::map<std::string, double> seconds_;
};

inline Timing run(int argc, char** argv) {
    Timing timing;
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks(&timing);
    std::fflush(stdout);
    return timing;
}

}  // namespace bench
