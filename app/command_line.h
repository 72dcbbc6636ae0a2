#pragma once
// The program without a window: plan, sun, weather, rate. docs/guide/command-line.md tells how to use it.

#include <QString>
#include <QStringList>
#include <iosfwd>

namespace wg::app {

/// Exit codes, stable for scripts.
enum Exit : int {
    exit_done = 0,       ///< done
    exit_stop = 1,       ///< done, but the plan has a stop, a test or declared value is missed, or a store is damaged
    exit_bad_usage = 2,  ///< the command line is wrong
    exit_bad_input = 3,  ///< a file or value is wrong
    exit_failed = 4,     ///< could not write
};

/// True when the first argument is a command of this file or asks for help or the version.
[[nodiscard]] bool is_command(const QStringList& arguments);

/// Runs the command; `arguments` without the program's name. Needs a QGuiApplication only for `plan` (fonts).
[[nodiscard]] int run_command(const QStringList& arguments, std::ostream& out, std::ostream& err);

[[nodiscard]] QString usage();

}  // namespace wg::app
