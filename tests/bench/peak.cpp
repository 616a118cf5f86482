// Runs a program and says its peak memory in kB on the standard error. Started from here, because
// the kernel counts what stood in a process before it became another program: Python is large.
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <cstdio>

int main(int argc, char** argv) {
    if (argc < 2) return 64;
    const auto child = fork();
    if (child == 0) {
        execv(argv[1], argv + 1);
        _exit(127);
    }
    int status = 0;
    rusage used{};
    if (wait4(child, &status, 0, &used) < 0) return 71;
    std::fprintf(stderr, "%ld\n", used.ru_maxrss);
    return WIFEXITED(status) ? WEXITSTATUS(status) : 70;
}
