#pragma once
// warmgable job: one job out of the store as a file to send, or in from one.

#include <QStringList>
#include <iosfwd>

namespace wg::app {

[[nodiscard]] int run_job(const QStringList& arguments, std::ostream& out, std::ostream& err);

}  // namespace wg::app
