/* musl has no renameat2: nobody else writes to the page's files, so it need not promise anything. */
#pragma once
#include_next <stdio.h>

#include <errno.h>

#define RENAME_NOREPLACE 1

static inline int renameat2(int from_folder, const char* from, int to_folder, const char* to,
                            unsigned flags) {
    (void)from_folder, (void)from, (void)to_folder, (void)to, (void)flags;
    errno = ENOSYS;
    return -1;
}
