#include "failing_files.hpp"

#include <sqlite3.h>
#include <unistd.h>

#include <climits>

namespace notebook_tests {
namespace {

using How = FailingFiles::How;
int calls_left = INT_MAX;
How how_to_fail = How::error;
bool failed = false;
sqlite3_vfs* real = nullptr;
sqlite3_vfs ours;
sqlite3_io_methods methods;

bool fails() {
    if (calls_left == INT_MAX || calls_left-- > 0) return false;
    if (how_to_fail == How::process_ends) ::_exit(9);
    const bool first = !failed;
    failed = true;
    return first || how_to_fail != How::once_then_fine;
}

int code(int otherwise) { return how_to_fail == How::full ? SQLITE_FULL : otherwise; }

// Our file: the methods, and behind them the real one.
struct File {
    sqlite3_file base;
    sqlite3_file* behind() { return reinterpret_cast<sqlite3_file*>(this + 1); }
};
sqlite3_file* behind(sqlite3_file* file) { return reinterpret_cast<File*>(file)->behind(); }

template <auto Method, class... Values>
int pass(sqlite3_file* file, Values... values) {
    return (behind(file)->pMethods->*Method)(behind(file), values...);
}

int write(sqlite3_file* file, const void* from, int size, sqlite3_int64 at) {
    if (!fails()) return behind(file)->pMethods->xWrite(behind(file), from, size, at);
    behind(file)->pMethods->xWrite(behind(file), from, size / 2, at);  // torn
    return code(SQLITE_IOERR_WRITE);
}
int truncate(sqlite3_file* file, sqlite3_int64 size) {
    if (fails()) return SQLITE_IOERR_TRUNCATE;
    return behind(file)->pMethods->xTruncate(behind(file), size);
}
// What matters here is when it is called; the disk need not be waited for.
int sync(sqlite3_file*, int) { return fails() ? SQLITE_IOERR_FSYNC : SQLITE_OK; }

int open(sqlite3_vfs*, sqlite3_filename name, sqlite3_file* file, int flags, int* out) {
    file->pMethods = nullptr;
    if (fails()) return SQLITE_CANTOPEN;
    const int result = real->xOpen(real, name, behind(file), flags, out);
    if (behind(file)->pMethods) file->pMethods = &methods;
    return result;
}
int remove(sqlite3_vfs*, const char* name, int sync_folder) {
    if (fails()) return SQLITE_IOERR_DELETE;
    const int result = real->xDelete(real, name, 0);
    if (result != SQLITE_OK || sync_folder == 0) return result;
    return fails() ? SQLITE_IOERR_DIR_FSYNC : SQLITE_OK;  // it is gone, but is that on the disk?
}

}  // namespace

FailingFiles::FailingFiles() {
    real = sqlite3_vfs_find(nullptr);
    ours = *real;
    ours.zName = "failing";
    ours.szOsFile = static_cast<int>(sizeof(File)) + real->szOsFile;
    ours.xOpen = open;
    ours.xDelete = remove;
    using M = sqlite3_io_methods;
    methods = {1,
               pass<&M::xClose>,
               pass<&M::xRead, void*, int, sqlite3_int64>,
               write,
               truncate,
               sync,
               pass<&M::xFileSize, sqlite3_int64*>,
               pass<&M::xLock, int>,
               pass<&M::xUnlock, int>,
               pass<&M::xCheckReservedLock, int*>,
               pass<&M::xFileControl, int, void*>,
               pass<&M::xSectorSize>,
               pass<&M::xDeviceCharacteristics>,
               nullptr,
               nullptr,
               nullptr,
               nullptr,
               nullptr,
               nullptr};
    never_fail();
    sqlite3_vfs_register(&ours, 1);
}

FailingFiles::~FailingFiles() {
    sqlite3_vfs_unregister(&ours);
    sqlite3_vfs_register(real, 1);
}

void FailingFiles::fail_at(int call, How how) {
    calls_left = call;
    how_to_fail = how;
    failed = false;
}

void FailingFiles::never_fail() {
    calls_left = INT_MAX;
    failed = false;
}

bool FailingFiles::has_failed() const { return failed; }

}  // namespace notebook_tests
