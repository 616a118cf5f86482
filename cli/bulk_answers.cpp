#include "cli/bulk_answers.hpp"

#include <fmt/core.h>
#include <unistd.h>

#include <algorithm>
#include <cmath>
#include <cstdio>

#include "catalog/typed/suggestion_sheet.hpp"
#include "cli/output/layout.hpp"
#include "cli/output/reply.hpp"
#include "engine/project/role.hpp"
#include "engine/units/failure.hpp"

namespace gristwright::cli {
namespace {

constexpr std::size_t idea_bytes_kept = 480;
constexpr std::size_t rows_a_tick = 5000;  // between two signs of progress
constexpr std::size_t complaints_kept = 20;

std::string known_keys() {
    std::string out;
    for (const auto key : suggestion_fields) out += (out.empty() ? "" : ", ") + std::string(key);
    return out;
}

long rounded(double value) { return value > 0 ? std::lround(std::log(value) * 20) : -9999; }

// All that was read besides the article, the craft, the fabric and the amounts.
std::string read_besides(const Taken& t) {
    auto out = fmt::format("{}|{}|{}|{}|{}", words(t.role), words(t.wearer), t.weight,
                           t.years.value_or(0), t.alternatives);
    for (const auto topic : t.topics) out += fmt::format("|{}", words(topic));
    for (const auto& unmade : t.not_known) out += "|" + unmade.said;
    for (const auto& wanted : t.wanted)
        out += fmt::format("|{},{},{},{},{},{}", wanted.nearest.empty() ? wanted.kind : wanted.said,
                           wanted.form, wanted.count, wanted.sizes.size(), wanted.only_width,
                           wanted.sizes.size() > 1 ? rounded(wanted.sizes[1].si()) : 0);
    const auto of = [](const auto& q) { return q ? rounded(q->si()) : 0; };
    return out + fmt::format("|{}|{}|{}|{}|{}|{}", of(t.gauge), of(t.sett), of(t.needle),
                             of(t.loom_width), t.shoe, t.other_yarn);
}

// Alike: read alike, and so answered alike; amounts within a few per cent of each other.
std::string near_alike(const Suggestion& s, const SuggestionAnswer& a) {
    if (a.taken.not_an_idea) return "-";
    if (!a.answered) return "?" + s.idea;
    return fmt::format("{}|{}|{}|{}|{}|{}", a.article->name, a.taken.fabric.in(a.article->craft),
                       rounded(a.need.mid.si()), rounded(a.size.si()), s.colours,
                       read_besides(a.taken));
}

}  // namespace

Ground ground_of(const Question& q) {
    Ground out{
        q.yarn,           q.catalogue.templates, q.catalogue.yarn.classes, q.catalogue.fabrics,
        q.measured.owned, q.catalogue.words,     q.catalogue.bodies,       q.request};
    out.as_two_strands = [&q](Role role) {
        return profile(two_strands(q.measured.batch, role), q.catalogue.yarn, true);
    };
    return out;
}

void BulkAnswers::read(const std::string& file) {
    catalog::SuggestionSheet sheet(file);
    bool found = false;
    std::size_t columns = 0;
    catalog::for_each_row(
        file,
        [&](const std::vector<std::string>& headers) {
            columns = headers.size();
            return found = sheet.header(headers);
        },
        [&](const catalog::CsvRow& row) {
            const auto text = sheet.row(row);
            const bool too_many = row.fields.size() > columns;
            if (text) take(row.number, *text, too_many ? "more fields than the header names" : "");
        });
    if (!found)
        throw Refused(
            fmt::format("{}:1: the header needs a column 'idea'; known: {}", file, known_keys()));
    notes_ = sheet.notes();
    tick(true);
}

void BulkAnswers::add(std::size_t row, Suggestion s) {
    const auto a = answerer_.answer(s);
    const auto key = near_alike(s, a);
    s.idea.resize(first_bytes(s.idea, idea_bytes_kept).size());
    auto [place, fresh] = places_.try_emplace(key, groups_.size());
    if (fresh) {
        const double reach = a.taken.not_an_idea          ? -3
                             : !a.answered                ? -2
                             : a.reach == Reach::short_of ? 0
                             : a.reach == Reach::enough   ? 2
                                                          : 1;
        groups_.push_back(
            {{}, {}, {}, 1000 * reach + a.judgement.score, s, metres_verdict(a, q_.units)});
    }
    auto& group = groups_[place->second];
    group.rows.push_back(row);
    group.senders.push_back(std::move(s.from));
    group.ideas.push_back(std::move(s.idea));
}

std::vector<BulkAnswers::Group> BulkAnswers::ranked() const {
    auto out = groups_;
    std::stable_sort(out.begin(), out.end(), [](const Group& a, const Group& b) {
        return a.rank != b.rank ? a.rank > b.rank : a.rows.front() < b.rows.front();
    });
    return out;
}

void BulkAnswers::take_all(const std::vector<catalog::KeptSuggestion>& remembered) {
    for (const auto& text : remembered) take(rows_ + 1, text, "");
    tick(true);
}

void BulkAnswers::take(std::size_t row, const catalog::SuggestionText& text,
                       const std::string& wrong) {
    ++rows_;
    tick(false);
    try {
        if (!wrong.empty()) throw Refused(wrong);
        add(row, catalog::read_suggestion(text, q_.catalogue.yarn.classes));
        if (keep_) good_.push_back(text);
    } catch (const Refused& error) {
        ++bad_;
        if (complaints_.size() < complaints_kept)
            complaints_.push_back(fmt::format("row {}: {}", row, error.what()));
    }
}

void BulkAnswers::tick(bool last) const {
    if (isatty(STDERR_FILENO) != 1 || (!last && rows_ % rows_a_tick != 0)) return;
    std::fprintf(stderr, "\r%zu suggestions answered%s", rows_, last ? "\n" : "");
}

}  // namespace gristwright::cli
