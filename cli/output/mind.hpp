// What of the work that is chosen can hurt somebody or spoil the cloth: collected once, said
// together.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "cli/question.hpp"

namespace gristwright::cli {

// For whoever chooses one of these articles, made of this yarn; `said` is the idea that was
// suggested and for whom. Without articles: of the yarn alone.
std::vector<Caution> cautions_on(const Question& q, const std::vector<const Template*>& articles,
                                 std::string_view said = "");

// For an idea that no article answers: what its words alone call for.
std::vector<Caution> cautions_on_words(const Question& q, std::string_view said);

// For whoever spins for an article, of whatever fibre.
std::vector<Caution> cautions_on_spinning(const catalog::Catalogue& catalogue,
                                          const Template& article);

// Their briefs, each once; of those that harm a person only, if asked.
std::vector<std::string> briefs(const std::vector<Caution>& cautions, bool harm_only = false);
std::vector<std::string> whole(const std::vector<Caution>& cautions);

// A reply with the first of what could hurt behind it, as long as it stays within `most`
// characters.
std::string with_care(std::string reply, const std::vector<Caution>& cautions, std::size_t most);

// "Care: round the neck: ...; felts: ...", a line end behind it; empty when there is none.
std::string care_line(const std::vector<Caution>& cautions);

}  // namespace gristwright::cli
