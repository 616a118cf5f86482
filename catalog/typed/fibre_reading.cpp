#include "catalog/typed/fibre_reading.hpp"

#include <fmt/core.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <optional>

#include "catalog/text/nearest.hpp"
#include "catalog/typed/blend_parts.hpp"
#include "catalog/typed/written_reading.hpp"
#include "engine/units/failure.hpp"
#include "engine/units/plain.hpp"
#include "engine/units/reading.hpp"

namespace gristwright::catalog {
namespace {

constexpr std::string_view list = "fibre";

Refused asked(std::string_view typed, std::string_view ways) {
    return Refused(fmt::format("'{}' can mean {}: which?", typed, ways));
}

// "merino", "Jacob (US)": a fibre, what is said with it; nothing when the name is not known.
class Names {
  public:
    explicit Names(const Catalogue& catalogue) : catalogue_(catalogue) {}

    std::optional<FibrePart> find(std::string_view typed, std::vector<std::string>& notes) const {
        auto name = as_spoken(typed);
        if (auto whole = known(name, notes)) return whole;
        const bool superwash =
            take_word(name, "superwash") || take_word(name, "super wash") || take_word(name, "sw");
        if (superwash && name.empty()) name = "wool";
        auto found = known(name, notes);
        for (auto less = without_besides(name); !found && !less.empty();
             less = without_besides(less))
            found = known(less, notes);
        if (found && superwash) {
            found->felting = "none";
            if (auto& felts = found->behaviour.of(Behaviour::felts)) felts = Level{};
            notes.push_back("superwash: taken as a wool that does not felt");
        }
        return found;
    }

    Refused unknown(std::string_view typed) const {
        auto near = catalogue_.fibre_names();
        const auto spoken = catalogue_.spoken.words(list);
        near.insert(near.end(), spoken.begin(), spoken.end());
        return Refused(fmt::format(
            "there is no fibre '{}' in the table{} (gristwright help fibres lists it; or "
            "give your own by micron and staple)",
            typed, did_you_mean_nearly(typed, near)));
    }

  private:
    std::optional<FibrePart> known(const std::string& name, std::vector<std::string>& notes) const {
        if (const auto* row = catalogue_.fibre_called(name)) return *row;
        if (const auto said = catalogue_.spoken.find(list, name)) {
            if (said->means.empty()) throw asked(name, said->note);
            if (!said->note.empty()) notes.push_back(said->note);
            return *catalogue_.fibre_called(said->means);
        }
        if (const auto* row = catalogue_.fibre_named(name)) return *row;
        return {};
    }

    // Whether `name` begins or ends with `word`, which is then taken off.
    static bool take_word(std::string& name, std::string_view word) {
        if (name == word) return name.clear(), true;
        if (name.size() <= word.size() + 1) return false;
        if (name.compare(0, word.size() + 1, std::string(word) + " ") == 0)
            return name.erase(0, word.size() + 1), true;
        const auto from = name.size() - word.size() - 1;
        if (name.compare(from, std::string::npos, " " + std::string(word)) != 0) return false;
        return name.erase(from), true;
    }

    // The name without one word that says nothing of the fibre; empty when there is none.
    std::string without_besides(const std::string& name) const {
        for (const auto& word : catalogue_.spoken.words("fibre besides"))
            if (auto less = name; take_word(less, word)) return less;
        return {};
    }

    const Catalogue& catalogue_;
};

// "merino silk": two known names side by side become two, where there is one way to part them.
std::vector<std::string> parted(const std::string& name, const Names& names) {
    std::vector<std::vector<std::string>> ways;
    for (auto at = name.find(' '); at != std::string::npos; at = name.find(' ', at + 1)) {
        std::vector<std::string> unused;
        const auto first = name.substr(0, at), second = name.substr(at + 1);
        if (names.find(first, unused) && names.find(second, unused))
            ways.push_back({first, second});
    }
    return ways.size() == 1 ? ways[0] : std::vector{name};
}

// The text without a share in front or behind, "Silk, Bombyx 30%", and that share.
std::optional<double> take_share(std::string& text) {
    const auto last = text.find_last_of(' ');
    const auto first = text.find(' ');
    for (const bool behind : {true, false}) {
        if (last == std::string::npos) return {};
        const auto token = behind ? text.substr(last + 1) : text.substr(0, first);
        if (token.size() < 2 || token.back() != '%' || !is_figure(token[0])) continue;
        text = behind ? text.substr(0, last) : text.substr(first + 1);
        return read_share(token);
    }
    return {};
}

Refused without_shares(const std::vector<BlendPiece>& pieces) {
    std::vector<std::string> names;
    for (const auto& piece : pieces) names.push_back(piece.name);
    return Refused(fmt::format("{} in what shares: which? Write '{} 70% {} 30%'",
                               fmt::join(names, " and "), names[0], names[1]));
}

}  // namespace

FibresRead read_fibres_said(const std::string& text, const Catalogue& catalogue) {
    const Names names(catalogue);
    FibresRead out;
    constexpr std::size_t longest = 200;
    if (text.size() > longest) throw names.unknown(text.substr(0, longest));
    if (catalogue.spoken.find("fibre unknown", text)) return out;
    auto whole = text;
    const auto share = take_share(whole);
    if (auto one = names.find(whole, out.notes)) {
        one->share = share.value_or(1);
        out.parts.push_back(*one);
        return out;
    }
    auto [pieces, unread, by_rest, shares] = blend_pieces(text, catalogue.spoken);
    if (pieces.size() == 1 && !pieces[0].share && !pieces[0].micron) {
        const auto names_of = parted(pieces[0].name, names);
        pieces.clear();
        for (const auto& name : names_of) pieces.push_back({name, {}, {}});
        if (shares.size() == pieces.size()) {  // "merino silk 80/20"
            for (std::size_t n = 0; n < shares.size(); ++n) pieces[n].share = shares[n];
            unread = false;
        }
    }
    const bool none = std::none_of(pieces.begin(), pieces.end(), [](auto& p) { return p.share; });
    if (pieces.size() > 1 && none && !unread) throw without_shares(pieces);
    if (pieces.empty() || unread) throw names.unknown(text);
    for (const auto& piece : pieces) {
        auto part = names.find(piece.name, out.notes);
        if (!part) throw names.unknown(pieces.size() == 1 ? text : piece.name);
        part->share = piece.share.value_or(100) / 100;
        if (piece.micron) part->micron_low = part->micron_high = microns(*piece.micron);
        out.parts.push_back(*part);
    }
    if (by_rest)
        out.notes.push_back(fmt::format("'{}' is taken as {} {:.4g}% and {} {:.4g}%", text,
                                        out.parts[0].name, 100 * out.parts[0].share,
                                        out.parts[1].name, 100 * out.parts[1].share));
    return out;
}

FibresRead read_blend(const std::vector<Written>& texts, const Catalogue& catalogue) {
    FibresRead out;
    double shares = 0;
    for (const auto& at : texts) {
        const auto read =
            measured(at, [&](const std::string& t) { return read_fibres_said(t, catalogue); });
        for (const auto& part : read.parts) out.parts.push_back(part), shares += part.share;
        out.notes.insert(out.notes.end(), read.notes.begin(), read.notes.end());
    }
    if (!out.parts.empty() && std::abs(shares - 1) > 0.005)
        throw wrong(texts.back(), fmt::format("the shares of the blend sum to {:.0f} %, not 100: "
                                              "write 'Corriedale 70%' and the rest",
                                              100 * shares));
    return out;
}

}  // namespace gristwright::catalog
