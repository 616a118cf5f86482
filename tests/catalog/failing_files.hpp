// A file system for SQLite that passes everything on, and fails (or ends the process at) the N-th
// call that opens, writes, syncs, truncates or deletes.
#pragma once

namespace notebook_tests {

class FailingFiles {
  public:
    enum class How { error, full, once_then_fine, process_ends };

    FailingFiles();  // becomes the usual file system of SQLite
    ~FailingFiles();
    FailingFiles(const FailingFiles&) = delete;
    FailingFiles& operator=(const FailingFiles&) = delete;

    void fail_at(int call, How how);  // counted from now
    void never_fail();
    bool has_failed() const;
};

}  // namespace notebook_tests
