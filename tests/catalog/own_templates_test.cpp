// The person's own templates: what is wrong with one of them costs that one only.
#include "catalog/reference/own_templates.hpp"

#include <doctest/doctest.h>
#include <sys/stat.h>
#include <unistd.h>

#include <fstream>
#include <iterator>

#include "catalog/text/bad_text.hpp"
#include "engine/units/failure.hpp"

using namespace gristwright::catalog;

namespace {

namespace fs = std::filesystem;

std::string built_in_scarf() {
    std::ifstream in(ROOT_DIR "/catalog/templates/garter-scarf.toml");
    return {std::istreambuf_iterator<char>(in), {}};
}

std::string titled(const std::string& title) {
    auto out = built_in_scarf();
    return "title = \"" + title + "\"\n" + out.substr(out.find('\n') + 1);
}

std::string good_template() { return titled("My scarf"); }

// A folder of its own, gone with the test.
class Folder {
  public:
    Folder() {
        std::string name = fs::temp_directory_path() / "gristwright-own-XXXXXX";
        REQUIRE(::mkdtemp(name.data()) != nullptr);
        path_ = name;
    }
    ~Folder() { fs::remove_all(path_); }
    void put(const std::string& name, const std::string& text) const {
        std::ofstream(path_ / name) << text;
    }
    const fs::path& path() const { return path_; }

  private:
    fs::path path_;
};

Catalogue with(const fs::path& folder) {
    auto out = built_in();
    add_own_templates(out, folder);
    return out;
}

}  // namespace

TEST_CASE("one bad template of a person's own never stops the rest") {
    // A half-written file, an editor's lock or a folder stopped nearly every command.
    const Folder own;
    own.put("good.toml", good_template());
    own.put("half.toml", good_template().substr(0, good_template().size() / 2));
    own.put("My Scarf.toml", good_template());
    own.put("garter-scarf.toml", good_template());  // the name of a built-in one
    own.put(".hidden.toml", "nonsense");
    own.put("notes.txt", "nonsense");
    own.put("escape.toml",
            "title = \"\\u001b[31m\"\n" + good_template().substr(good_template().find('\n') + 1));
    fs::create_directory(own.path() / "folder.toml");
    fs::create_symlink("nobody@host.123", own.path() / ".#good.toml");  // an editor's lock
    fs::create_symlink("not there", own.path() / "dangling.toml");
    REQUIRE(::mkfifo((own.path() / "pipe.toml").c_str(), 0600) == 0);
    const auto catalogue = with(own.path());
    CHECK(catalogue.templates.size() == built_in().templates.size() + 1);
    CHECK(catalogue.template_named("good") != nullptr);
    std::string names;
    for (const auto& bad : catalogue.left_out) {
        names += bad.name + ";";
        CHECK(bad.why.find(bad.name + ".toml") != std::string::npos);
    }
    CHECK(names == "My Scarf;dangling;escape;folder;garter-scarf;half;pipe;");
}

TEST_CASE("a template that is titled as another is left out and says so") {
    // One's own "Garter scarf" stayed hidden behind the built-in one wherever a title was asked
    // for.
    const Folder own;
    own.put("mine.toml", built_in_scarf());
    own.put("moor-a.toml", titled("Moor scarf"));
    own.put("moor-b.toml", titled("MOOR  scarf"));
    const auto catalogue = with(own.path());
    CHECK(catalogue.template_named("moor-a") != nullptr);
    REQUIRE(catalogue.left_out.size() == 2);
    CHECK(catalogue.left_out[0].why.find("titled 'Garter scarf', garter-scarf; give this one") !=
          std::string::npos);
    CHECK(catalogue.left_out[1].why.find("titled 'Moor scarf', moor-a; give this one") !=
          std::string::npos);
}

TEST_CASE("only what is wrong with a template leaves it out, a mistake of ours passes on") {
    // A bug in the reader used to be told as "your template is wrong" and the run went on.
    const Folder own;
    own.put("good.toml", good_template());
    const auto left_out = [&](const auto& failure) {
        auto catalogue = built_in();
        add_own_templates(
            catalogue, own.path(),
            [&](const fs::path&, const gristwright::Fabrics&) -> gristwright::Template {
                throw failure;
            });
        return catalogue.left_out.size();
    };
    CHECK(left_out(gristwright::Refused("the title is empty")) == 1);
    CHECK(left_out(StorageFailed("the disk is gone")) == 1);
    CHECK_THROWS_AS(left_out(std::invalid_argument("stod")), std::invalid_argument);
    CHECK_THROWS_AS(left_out(gristwright::OurMistake("no shape")), gristwright::OurMistake);
    CHECK_THROWS_AS(left_out(std::out_of_range("vector")), std::out_of_range);
}

TEST_CASE("a templates folder that is not there is empty, one that is a file is said") {
    const Folder own;
    CHECK(with(own.path() / "templates").left_out.empty());
    own.put("templates", "");
    CHECK(with(own.path() / "templates").left_out.size() == 1);
}
