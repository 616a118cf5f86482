#include "catalog/reference/own_templates.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <system_error>
#include <vector>

#include "catalog/reference/ordinary.hpp"
#include "catalog/reference/spoken.hpp"
#include "catalog/text/storage_failed.hpp"
#include "engine/units/failure.hpp"

namespace gristwright::catalog {
namespace {

namespace fs = std::filesystem;

// In the order of their names. What of the folder cannot be listed is said in `error`.
std::vector<fs::path> template_files(const fs::path& folder, std::error_code& error) {
    std::vector<fs::path> out;
    for (auto at = fs::directory_iterator(folder, error); !error && at != fs::directory_iterator();
         at.increment(error)) {
        const auto& path = at->path();
        if (path.extension() == ".toml" && path.filename().string().front() != '.')
            out.push_back(path);
    }
    std::sort(out.begin(), out.end());
    return out;
}

void check_title(const Template& known, const Template& own) {
    if (as_spoken(known.title) == as_spoken(own.title))
        throw Refused(
            fmt::format("{}: there is already an article titled '{}', {}; give this one another "
                        "title",
                        own.origin, known.title, known.name));
}

Template read_own(const Catalogue& catalogue, const fs::path& file, const TemplateReader& read) {
    std::error_code none;
    if (!fs::is_regular_file(file, none))  // a pipe would keep us waiting
        throw Refused(fmt::format("{}: is not a file", file.string()));
    auto own = read(file, catalogue.fabrics);
    check_among_others(catalogue, own);
    return own;
}

// Those of the folder's files that can be taken; the others are left out, and why is said.
std::vector<Template> read_all(Catalogue& catalogue, const std::vector<fs::path>& files,
                               const TemplateReader& read) {
    std::vector<Template> out;
    for (const auto& file : files) {
        const auto leave_out = [&](const std::exception& wrong) {
            catalogue.left_out.push_back({file.stem().string(), wrong.what()});
        };
        try {
            auto own = read_own(catalogue, file, read);
            for (const auto& before : out) check_title(before, own);
            out.push_back(std::move(own));
        } catch (const Refused& wrong) {
            leave_out(wrong);
        } catch (const StorageFailed& wrong) {
            leave_out(wrong);
        }
    }
    return out;
}

}  // namespace

void check_new_template(const Catalogue& catalogue, const Template& own) {
    if (catalogue.template_named(own.name))
        throw Refused(
            fmt::format("{}: there is already a template called '{}'; give the file another name",
                        own.origin, own.name));
}

void check_among_others(const Catalogue& catalogue, const Template& own) {
    check_new_template(catalogue, own);
    for (const auto& known : catalogue.templates) check_title(known, own);
}

void add_own_templates(Catalogue& catalogue, const fs::path& folder, const TemplateReader& read) {
    std::error_code error;
    if (auto own = read_all(catalogue, template_files(folder, error), read); !own.empty()) {
        const auto ordinary = ordinary_yarns(catalogue);
        auto all = catalogue.templates.rows();
        for (auto& article : own) {
            make_ready(article, catalogue, ordinary);
            all.push_back(std::move(article));
        }
        catalogue.templates = std::move(all);
    }
    if (error && error != std::errc::no_such_file_or_directory)
        catalogue.left_out.push_back({"", fmt::format("{}: {}", folder.string(), error.message())});
}

}  // namespace gristwright::catalog
