#include "catalog/typed/blend_parts.hpp"

#include <algorithm>
#include <cstdlib>

#include "catalog/typed/number_words.hpp"
#include "engine/units/ascii.hpp"
#include "engine/units/has.hpp"
#include "engine/units/measure.hpp"
#include "engine/units/plain.hpp"

namespace gristwright::catalog {
namespace {

constexpr std::string_view marks[] = {"/",   ",",    ";", "+",  "&",    ":",       "(",  ")", "%",
                                      "and", "with", "w", "to", "plus", "percent", "of", "in"};
constexpr std::string_view rests[] = {"rest", "remainder", "balance"};
constexpr std::string_view equal_words[] = {"equal", "equally", "even", "evenly"};
// Words about how much that say no share, and words that say nothing.
constexpr std::string_view vague[] = {"mostly", "mainly", "some", "bit",  "little",
                                      "touch",  "hint",   "dash", "lots", "pinch"};
constexpr std::string_view idle[] = {"mix", "blend", "mixed", "blended"};
constexpr std::string_view articles[] = {"a", "an", "the"};
constexpr std::string_view micron_words[] = {"micron", "microns", "mic", "um"};

// A word, a number or a mark of its own from the front of `rest`, which holds no leading space.
std::string_view take_token(std::string_view& rest) {
    constexpr std::string_view signs = "/,;+&:()%";
    std::size_t size = 1;
    if (signs.find(rest[0]) == std::string_view::npos) {
        const bool figure = is_figure(rest[0]);
        while (size < rest.size() && rest[size] != ' ' && is_figure(rest[size]) == figure &&
               signs.find(rest[size]) == std::string_view::npos)
            ++size;
    }
    const auto token = rest.substr(0, size);
    rest.remove_prefix(size);
    while (!rest.empty() && rest[0] == ' ') rest.remove_prefix(1);
    return token;
}

std::string_view next_token(std::string_view rest) {
    return rest.empty() ? rest : take_token(rest);
}

// How a share is said; those of one blend are of one kind.
enum class By { hundred, whole, parts, mass };

struct Share {
    double value = 0;
    By by = By::hundred;
    bool rest = false;
};

// A name, a share or what stands between, in the order they were typed.
struct Event {
    enum class Kind { name, share, mark } kind;
    std::size_t at = 0;  // of the names or the shares
};

class Blend {
  public:
    Blend(std::string_view typed, const SpokenWords& spoken)
        : text_(plain(typed)), spoken_(spoken) {
        std::replace(text_.begin(), text_.end(), '-', ' ');
    }

    BlendPieces read() {
        for (rest_ = text_; !rest_.empty();) take_one();
        return settled();
    }

  private:
    void mark() {
        open_ = false;
        if (events_.empty() || events_.back().kind != Event::Kind::mark)
            events_.push_back({Event::Kind::mark});
    }

    void share(const Share& s) {
        open_ = false;
        events_.push_back({Event::Kind::share, shares_.size()});
        shares_.push_back(s);
    }

    void take_one() {
        if (take_in_words()) return;
        const auto token = take_token(rest_);
        if (is_figure(token[0])) return take_figure(token);
        if (has(marks, token)) return mark();
        if (has(rests, token)) return share({0, By::hundred, true});
        if (has(equal_words, token)) return take_equal();
        vague_ = vague_ || has(vague, token);
        if (has(vague, token) || has(idle, token) || (!open_ && has(articles, token))) return;
        if (has(articles, token) && has(rests, next_token(rest_))) return mark();
        if (!open_) {
            events_.push_back({Event::Kind::name, names_.size()});
            names_.push_back({});
        }
        auto& name = names_.back().name;
        name += (open_ ? " " : "") + std::string(token);
        open_ = true;
    }

    // "half", "two thirds of", "a pound of", "one part".
    bool take_in_words() {
        auto ahead = rest_;
        auto value = take_number_words(ahead, spoken_);
        if (!value && !open_ && has(articles, next_token(ahead))) take_token(ahead), value = 1;
        if (!value) return false;
        const auto next = next_token(ahead);
        const bool part = next == "part" || next == "parts";
        const auto* unit = unit_word(next);
        const bool mass = unit && unit->dimension == Dimension::mass;
        if (*value >= 1 && !part && !mass) return false;
        if (part || mass) take_token(ahead);
        rest_ = ahead;
        share({*value * (mass ? unit->si : 1), mass ? By::mass : part ? By::parts : By::whole});
        return true;
    }

    void take_equal() {
        equal_ = true;
        for (const std::string_view word : {"parts", "part", "amounts", "shares", "mix", "blend"})
            if (next_token(rest_) == word) take_token(rest_);
    }

    void take_figure(std::string_view token) {
        const double value = std::strtod(std::string(token).c_str(), nullptr);
        const auto next = next_token(rest_);
        if (has(micron_words, next) && !names_.empty()) {
            names_.back().micron = value;
            take_token(rest_);
            return mark();
        }
        const auto* unit = unit_word(next);
        if (unit && unit->dimension == Dimension::mass) {
            take_token(rest_);
            return share({value * unit->si, By::mass});
        }
        if (next == "part" || next == "parts") {
            take_token(rest_);
            return share({value, By::parts});
        }
        if (next == "/") {  // "1/4", but "70/30"
            auto ahead = rest_;
            take_token(ahead);
            const auto under = next_token(ahead);
            if (token.size() == 1 && under.size() == 1 && is_figure(under[0]) && token < under) {
                take_token(ahead);
                rest_ = ahead;
                return share({value / (under[0] - '0'), By::whole});
            }
        }
        const bool ratio = next == ":" || (!events_.empty() && colon_);
        colon_ = next == ":";
        share({value, ratio && value < 10 ? By::parts : By::hundred});
    }

    // To shares of 100 each, where they are of one kind.
    bool level() {
        double sum = 0, rests = 0;
        for (const auto& s : shares_) {
            if (s.rest)
                ++rests;
            else if (s.by != kind())
                return false;
            sum += s.value;
        }
        const auto by = kind();
        const double whole = by == By::hundred ? 100 : by == By::whole ? 1 : sum;
        if (rests > 1 || (rests > 0 && (sum >= whole || by == By::parts || by == By::mass)))
            return false;
        for (auto& s : shares_) s.value = 100 / whole * (s.rest ? whole - sum : s.value);
        return true;
    }

    By kind() const {
        const auto first =
            std::find_if(shares_.begin(), shares_.end(), [](const Share& s) { return !s.rest; });
        return first == shares_.end() ? By::hundred : first->by;
    }

    BlendPieces settled() {
        BlendPieces out{names_, vague_ && names_.size() == 1, false};
        if (equal_ && shares_.empty() && names_.size() > 1)
            for (auto& piece : out.pieces) piece.share = 100.0 / static_cast<double>(names_.size());
        if (shares_.empty()) return out;
        if (!level()) return {names_, true, false};
        for (const auto& s : shares_) out.shares.push_back(s.value);
        out.unread = true;
        if (shares_.size() == names_.size()) {
            for (std::size_t n = 0; n < names_.size(); ++n) out.pieces[n].share = shares_[n].value;
            out.unread = false;
            return out;
        }
        if (names_.size() != 2 || shares_.size() != 1 || shares_[0].value >= 100) return out;
        const auto owner = owner_of_one();
        if (!owner) return out;
        out.unread = false;
        out.pieces[*owner].share = shares_[0].value;
        out.pieces[1 - *owner].share = 100 - shares_[0].value;
        out.by_rest = true;
        return out;
    }

    // Of two names the one beside which the one share stands, with nothing between.
    std::optional<std::size_t> owner_of_one() const {
        using Kind = Event::Kind;
        const auto at = std::find_if(events_.begin(), events_.end(),
                                     [](const Event& e) { return e.kind == Kind::share; });
        const bool before = at != events_.begin() && (at - 1)->kind == Kind::name;
        auto next = at + 1;
        const bool percent = next != events_.end() && next->kind == Kind::mark;
        const bool behind = next != events_.end() && next->kind == Kind::name;
        if (before == behind) {
            // "Merino, with 10% silk": the sign is a mark of its own.
            if (!before && percent && next + 1 != events_.end() && (next + 1)->kind == Kind::name &&
                text_.find('%') != std::string::npos)
                return (next + 1)->at;
            return {};
        }
        return before ? (at - 1)->at : next->at;
    }

    std::string text_;
    const SpokenWords& spoken_;
    std::string_view rest_;
    std::vector<BlendPiece> names_;
    std::vector<Share> shares_;
    std::vector<Event> events_;
    bool open_ = false;  // a name is being read
    bool equal_ = false, colon_ = false, vague_ = false;
};

}  // namespace

bool is_figure(char c) { return ascii::is_digit(c) || c == '.'; }

BlendPieces blend_pieces(std::string_view typed, const SpokenWords& spoken) {
    return Blend(typed, spoken).read();
}

}  // namespace gristwright::catalog
