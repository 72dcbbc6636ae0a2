#pragma once
// warmgable store: what a firm does with its store without a window.

#include <QString>
#include <QStringList>
#include <iosfwd>

namespace wg::app {

/// Where the window keeps the jobs when no other place is named; makes the folder.
[[nodiscard]] QString usual_store_path();
/// Who sits here, for others to read: user and machine.
[[nodiscard]] std::string seat_name();

[[nodiscard]] int run_store(const QStringList& arguments, std::ostream& out, std::ostream& err);

}  // namespace wg::app
