#pragma once
// The command `rate`: the rating test of a catalogue set, and its fit to a data sheet.

#include <QStringList>
#include <iosfwd>

namespace wg::app {

/// `arguments` without the command's name. Exit codes as command_line.h has them.
[[nodiscard]] int run_rate(const QStringList& arguments, std::ostream& out, std::ostream& err);

}  // namespace wg::app
