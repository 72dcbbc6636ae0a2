#pragma once
// Text between core (UTF-8 in std::string) and Qt.

#include <QString>
#include <string>

namespace wg::store {

/// Qt and SQLite both drop a byte order mark at the front; a text that has to come back with the same hash must not
/// begin with one.
[[nodiscard]] inline QString to_qt(const std::string& text) {
    return QString::fromStdString(text);
}

}  // namespace wg::store
