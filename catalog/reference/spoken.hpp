// The words people use for what the tables call otherwise, by the list in which they are looked up:
// "fibre", "preparation", "needle us", ... Reviewed text in catalog/tables: batch_words.csv,
// fibre_names.csv, needle_sizes.csv, weight_names.csv.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace gristwright::catalog {

struct Spoken {
    std::string means;  // empty: the word may mean several things and is asked
    std::string note;   // to be said when it is taken, or the question
};

class SpokenWords {
  public:
    // Nothing when `list` does not know the word; capitals, hyphens and full stops do not matter.
    std::optional<Spoken> find(std::string_view list, std::string_view typed) const;
    std::vector<std::string> words(std::string_view list) const;  // in the order of their letters
    // Those of the list that stand as whole words in a longer text, the longest first and each word
    // of the text once; none where the text denies something: "not carded".
    std::vector<std::string> found_in(std::string_view list, std::string_view text) const;
    // False when the word stands there already. Throws std::runtime_error for a tab or a new line.
    bool add(std::string_view list, std::string_view word, const Spoken& spoken);
    // The word means several things now.
    void ask(std::string_view list, std::string_view word, const std::string& question);

    // Of each list a line for a word: the word, what it means, the note, parted by tabs. A command
    // asks for a few words of nine hundred.
    std::map<std::string, std::string, std::less<>> lists;
};

// "Blue-Faced  Leicester" is "blue faced leicester": how words are compared.
std::string as_spoken(std::string_view typed);

// Throw BadText for a missing column, a word that stands twice, a row that is not in `fibres`.
void read_batch_words(const std::string& text, const std::string& file, SpokenWords& out);
void read_fibre_names(const std::string& text, const std::string& file,
                      const std::vector<std::string>& fibres, SpokenWords& out);
// Lists "needle us", "needle uk" and "needle jp", each word meaning its millimetres.
void read_needle_sizes(const std::string& text, const std::string& file, SpokenWords& out);

}  // namespace gristwright::catalog
