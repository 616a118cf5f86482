// SQLite runs out of memory at its N-th request: nothing torn, nothing falsely reported.
#include <doctest/doctest.h>
#include <sqlite3.h>

#include <climits>

#include "notebook_help.hpp"

using namespace notebook_tests;

namespace {

int requests_left = INT_MAX;
sqlite3_mem_methods real;

bool refuses() {
    if (requests_left == INT_MAX) return false;
    if (requests_left > 0) --requests_left;
    return requests_left == 0;
}
void* take(int size) { return refuses() ? nullptr : real.xMalloc(size); }
void* take_again(void* old, int size) { return refuses() ? nullptr : real.xRealloc(old, size); }

// SQLite's memory through us while this lives. No notebook may be open then.
struct ScarceMemory {
    ScarceMemory() {
        sqlite3_shutdown();
        sqlite3_config(SQLITE_CONFIG_GETMALLOC, &real);
        auto ours = real;
        ours.xMalloc = take;
        ours.xRealloc = take_again;
        sqlite3_config(SQLITE_CONFIG_MALLOC, &ours);
        REQUIRE(sqlite3_initialize() == SQLITE_OK);
    }
    ~ScarceMemory() {
        sqlite3_shutdown();
        sqlite3_config(SQLITE_CONFIG_MALLOC, &real);
        sqlite3_initialize();
    }
};

}  // namespace

TEST_CASE("notebook memory: refused at the N-th request and after") {
    ScarceMemory memory;
    Scratch scratch;
    changing(scratch.file()).add_batch("heron", heron());
    const auto before = looking(scratch.file()).export_json();
    int tried = 0;
    for (bool kept = false; !kept; tried += 7) {
        requests_left = tried + 1;
        try {
            auto notebook = changing(scratch.file());
            notebook.add_swatch("heron", knitted_swatch());
            kept = true;
        } catch (const NotebookFailed&) {
        }
        requests_left = INT_MAX;
        const auto after = looking(scratch.file());
        CHECK(after.swatches("heron").size() == (kept ? 1 : 0));
        if (!kept) CHECK(after.export_json() == before);
    }
    CHECK(tried > 100);
}
