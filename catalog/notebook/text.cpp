#include "catalog/notebook/text.hpp"

#include <fmt/core.h>

#include "catalog/notebook/notebook.hpp"
#include "catalog/text/characters.hpp"

namespace gristwright::catalog {
namespace {

void refuse_name(std::string_view name, std::string_view why) {
    throw NotebookRefused(fmt::format("a batch cannot be called '{}': {}", name, why));
}

}  // namespace

bool is_plain_text(std::string_view text) {
    while (!text.empty()) {
        const auto c = take_character(text);
        if (c == no_character || is_control(c)) return false;
    }
    return true;
}

void check_kept_text(std::string_view text) {
    if (text.size() > longest_kept_text)
        throw NotebookRefused(fmt::format("a text of {} bytes is too long to keep: at most {}",
                                          text.size(), longest_kept_text));
    if (!is_plain_text(text))
        throw NotebookRefused(
            fmt::format("'{}' cannot be kept: it has control characters or is not UTF-8",
                        inert(text)));  // a zero byte would cut the message short
}

void check_batch_name(std::string_view name) {
    check_kept_text(name);
    if (name.empty()) refuse_name(name, "a name has at least one letter");
    if (name.size() > longest_batch_name)
        refuse_name(name, fmt::format("a name has at most {} bytes", longest_batch_name));
    if (name.front() == '-') refuse_name(name, "it would be taken for an option");
    if (name.front() == ' ' || name.back() == ' ')
        refuse_name(name, "a name neither begins nor ends with a space");
    if (name.find('/') != name.npos || name.ends_with(".toml") || name.ends_with(".csv"))
        refuse_name(name, "it would be taken for a file");
}

}  // namespace gristwright::catalog
