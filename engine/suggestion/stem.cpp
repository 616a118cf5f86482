#include "engine/suggestion/stem.hpp"

#include <libstemmer.h>

#include <stdexcept>

namespace gristwright {
namespace {

constexpr std::size_t most_known = 20000;  // words; then the memory begins anew

}  // namespace

struct Stemmer::Snowball {
    sb_stemmer* stemmer = sb_stemmer_new("english", "UTF_8");
    Snowball() {
        if (!stemmer) throw std::runtime_error("the stemmer of English words cannot be made");
    }
    ~Snowball() { sb_stemmer_delete(stemmer); }
    Snowball(const Snowball&) = delete;
    Snowball& operator=(const Snowball&) = delete;
};

Stemmer::Stemmer() : snowball_(std::make_unique<Snowball>()) {}
Stemmer::~Stemmer() = default;
Stemmer::Stemmer(Stemmer&&) noexcept = default;
Stemmer& Stemmer::operator=(Stemmer&&) noexcept = default;

const std::string& Stemmer::stem(const std::string& word) {
    if (const auto found = known_.find(word); found != known_.end()) return found->second;
    if (known_.size() >= most_known) known_.clear();
    const auto* bytes = reinterpret_cast<const sb_symbol*>(word.data());
    const auto* stem = sb_stemmer_stem(snowball_->stemmer, bytes, static_cast<int>(word.size()));
    if (!stem) throw std::bad_alloc();
    const auto size = static_cast<std::size_t>(sb_stemmer_length(snowball_->stemmer));
    return known_[word] = std::string(reinterpret_cast<const char*>(stem), size);
}

}  // namespace gristwright
