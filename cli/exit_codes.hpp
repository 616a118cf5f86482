// What the program's exit code says; the numbers are those of sysexits.h.
#pragma once

#include <string_view>

namespace gristwright::cli {

enum ExitCode {
    answered = 0,
    usage = 64,
    bad_data = 65,
    no_input = 66,
    our_bug = 70,
    cannot_create = 73,
    io_error = 74,
    busy = 75,
    interrupted = 130  // 128 and the signal's number, as shells say it
};

struct ExitMeaning {
    ExitCode code;
    std::string_view meaning;
};

inline constexpr ExitMeaning exit_meanings[] = {
    {answered, "Answered. \"Not enough yarn\" is an answer too."},
    {usage, "Used wrongly: no such command, topic or option, or a word too many or too few."},
    {bad_data, "A measurement, a name or a file is not what it should be."},
    {no_input, "There is no such file."},
    {our_bug, "Our mistake: please report it."},
    {cannot_create, "A file cannot be created."},
    {io_error, "Reading or writing failed, as on a full disk."},
    {busy, "Another program is using the notebook; try again."},
    {interrupted, "Interrupted; what is printed is the best that was found so far."},
};

}  // namespace gristwright::cli
