// What the program carries, read once for all tests of a file; and ideas as it reads them.
#pragma once

#include <string>
#include <vector>

#include "catalog/reference/catalogue.hpp"
#include "engine/suggestion/understand.hpp"

namespace gristwright::catalog {

inline const Catalogue& carried() {
    static const auto catalogue = built_in();
    return catalogue;
}

class IdeaReader {
  public:
    Taken read(const std::string& idea) { return understand(idea, lexicon_, stemmer_); }
    const Lexicon& lexicon() const { return lexicon_; }

    std::vector<std::string> kinds(const std::string& idea) {
        std::vector<std::string> out;
        for (const auto& wanted : read(idea).wanted) out.push_back(wanted.kind);
        return out;
    }

  private:
    Lexicon lexicon_{carried().words.text(), carried().kinds};
    Stemmer stemmer_;
};

}  // namespace gristwright::catalog
