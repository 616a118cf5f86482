#include "catalog/typed/weight_reading.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <optional>

#include "catalog/text/nearest.hpp"
#include "engine/units/ascii.hpp"
#include "engine/units/failure.hpp"
#include "engine/units/reading.hpp"

namespace gristwright::catalog {
namespace {

// "dk yarn", "chunky weight".
std::string without_ending(std::string name) {
    for (const std::string_view end : {" yarn", " weight", " wt", " wool"})
        if (name.size() > end.size() && name.ends_with(end)) name.resize(name.size() - end.size());
    return name;
}

// "#3", "3 (light)", "light 3": a number of the classes in front or behind, taken off.
std::optional<int> take_number(std::string& name) {
    for (const char sign : {'#', '(', ')'}) std::replace(name.begin(), name.end(), sign, ' ');
    name = as_spoken(name);
    for (const std::string_view word : {"class ", "category ", "size ", "cyc "})
        if (name.starts_with(word)) name.erase(0, word.size());
    const auto alone = [&](std::size_t at) {
        return ascii::is_digit(name[at]) && (at == 0 || name[at - 1] == ' ') &&
               (at + 1 == name.size() || name[at + 1] == ' ');
    };
    if (name.empty()) return {};
    for (const auto at : {std::size_t{0}, name.size() - 1})
        if (alone(at)) {
            const int number = name[at] - '0';
            name.erase(at, 1);
            name = as_spoken(name);
            return number;
        }
    return {};
}

class WeightReader {
  public:
    WeightReader(const std::string& text, const std::vector<WeightClass>& classes,
                 const SpokenWords& spoken)
        : text_(text), classes_(classes), spoken_(spoken) {}

    int read() const {
        std::optional<int> out;
        for (const auto& part : parts()) {
            const auto number = one(part);
            if (!number)
                throw Refused(fmt::format("there is no weight class '{}'{}", shown(text_),
                                          did_you_mean_or_all(text_, names_of(classes_))));
            if (out && *out != *number)
                throw Refused(fmt::format(
                    "'{}' names two weight classes: which? Write it such as dk", shown(text_)));
            out = number;
        }
        return *out;
    }

  private:
    std::vector<std::string> parts() const {
        auto whole = as_spoken(text_);
        for (const std::string_view word : {" or ", " to ", ","})
            for (auto at = whole.find(word); at != std::string::npos; at = whole.find(word))
                whole.replace(at, word.size(), 1, '/');
        std::vector<std::string> out;
        for (std::size_t from = 0; from <= whole.size();) {
            const auto end = std::min(whole.find('/', from), whole.size());
            out.push_back(whole.substr(from, end - from));
            from = end + 1;
        }
        return out;
    }

    std::optional<int> named(const std::string& name) const {
        for (const auto& form : {name, without_ending(name)}) {
            for (const auto& c : classes_)
                if (c.name == form) return c.number;
            const auto said = spoken_.find("weight", form);
            if (said && said->means.empty())
                throw Refused(
                    fmt::format("'{}' can mean {}: which? Write it such as dk, or leave it out",
                                shown(text_), said->note));
            if (said) return named(said->means);
        }
        return {};
    }

    std::optional<int> one(std::string name) const {
        if (const auto whole = named(as_spoken(name))) return whole;
        const auto number = take_number(name);
        const bool known =
            number && std::any_of(classes_.begin(), classes_.end(),
                                  [&](const auto& c) { return c.number == *number; });
        if (known && name.empty()) return number;
        const auto rest = named(name);
        return !number || (known && rest == number) ? rest : std::nullopt;
    }

    const std::string& text_;
    const std::vector<WeightClass>& classes_;
    const SpokenWords& spoken_;
};

}  // namespace

int read_weight(const std::string& text, const std::vector<WeightClass>& classes,
                const SpokenWords& spoken) {
    return WeightReader(text, classes, spoken).read();
}

}  // namespace gristwright::catalog
