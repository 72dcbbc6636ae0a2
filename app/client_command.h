#pragma once
// warmgable client: what the firm keeps about a client, handed out or erased at their request.

#include <QStringList>
#include <iosfwd>

namespace wg::app {

[[nodiscard]] int run_client(const QStringList& arguments, std::ostream& out, std::ostream& err);

}  // namespace wg::app
