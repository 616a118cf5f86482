/* A page starts no process: what the program asks for when it would open a browser fails, and the
   program says so in its own words. */
#include <errno.h>
#include <spawn.h>

int posix_spawnp(pid_t* child, const char* file, const posix_spawn_file_actions_t* actions,
                 const posix_spawnattr_t* attributes, char* const words[], char* const names[]) {
    (void)child, (void)file, (void)actions, (void)attributes, (void)words, (void)names;
    return ENOSYS;
}

int posix_spawn_file_actions_init(posix_spawn_file_actions_t* actions) {
    (void)actions;
    return 0;
}

int posix_spawn_file_actions_addopen(posix_spawn_file_actions_t* actions, int to, const char* path,
                                     int flags, mode_t mode) {
    (void)actions, (void)to, (void)path, (void)flags, (void)mode;
    return 0;
}

int posix_spawn_file_actions_destroy(posix_spawn_file_actions_t* actions) {
    (void)actions;
    return 0;
}
