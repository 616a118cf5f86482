// The stem of an English word, by the Snowball stemmer (Porter 2): knitted, knits, knitting ->
// knit.
#pragma once

#include <memory>
#include <string>
#include <string_view>
#include <unordered_map>

namespace gristwright {

class Stemmer {
  public:
    Stemmer();
    ~Stemmer();
    Stemmer(Stemmer&&) noexcept;
    Stemmer& operator=(Stemmer&&) noexcept;

    // Small ASCII letters; other words come back as they are.
    const std::string& stem(const std::string& word);

  private:
    struct Snowball;
    std::unique_ptr<Snowball> snowball_;
    std::unordered_map<std::string, std::string> known_;  // a bounded memory
};

}  // namespace gristwright
