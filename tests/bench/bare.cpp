// The least that a C++ process with SQLite can do: the yardstick for a whole answer.
#include <SQLiteCpp/SQLiteCpp.h>

#include <cstdio>

int main() {
    const SQLite::Database db(":memory:", SQLite::OPEN_READWRITE);
    std::puts("opened");
}
