#include "cli/lifesign.hpp"

#include <unistd.h>

#include <csignal>
#include <cstdio>

namespace gristwright::cli {
namespace {

using namespace std::chrono_literals;
constexpr auto silence = 500ms, between = 200ms;

volatile std::sig_atomic_t interrupts = 0;

extern "C" void note_interrupt(int signal) {
    interrupts = 1;
    std::signal(signal, SIG_DFL);
}

}  // namespace

Lifesign::Lifesign()
    : next_(std::chrono::steady_clock::now() + silence),
      terminal_(isatty(STDERR_FILENO) == 1),
      before_(std::signal(SIGINT, note_interrupt)) {
    interrupts = 0;
    if (before_ == SIG_IGN) std::signal(SIGINT, SIG_IGN);  // as in the background of a script
}

Lifesign::~Lifesign() {
    if (said_) std::fputs("\r\x1b[K", stderr);
    std::signal(SIGINT, before_);
}

bool Lifesign::due() {
    if (interrupts != 0) stop_.request_stop();
    if (!terminal_) return false;
    const auto now = std::chrono::steady_clock::now();
    if (now < next_) return false;
    next_ = now + between;
    return true;
}

void Lifesign::say(const std::string& line) {
    if (!terminal_) return;
    std::fprintf(stderr, "\r%s\x1b[K", line.c_str());
    std::fflush(stderr);
    said_ = true;
}

}  // namespace gristwright::cli
