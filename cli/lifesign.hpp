// Long work shows life: where somebody looks, a line on the standard error says how far it is, and
// an interrupt ends it with what there is.
#pragma once

#include <chrono>
#include <stop_token>
#include <string>

namespace gristwright::cli {

// While it lives, the first interrupt (Ctrl-C) asks to stop; the second ends the program.
class Lifesign {
  public:
    Lifesign();
    ~Lifesign();  // wipes the line
    Lifesign(const Lifesign&) = delete;
    Lifesign& operator=(const Lifesign&) = delete;

    // Whether the next line is due: the first after half a second, then five a second. Looks for
    // the interrupt as well; call it often.
    bool due();
    void say(const std::string& line);  // on a terminal only

    std::stop_token stop() const { return stop_.get_token(); }

  private:
    std::stop_source stop_;
    std::chrono::steady_clock::time_point next_;
    bool terminal_, said_ = false;
    void (*before_)(int);
};

}  // namespace gristwright::cli
