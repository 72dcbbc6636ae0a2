#pragma once
// Whole files in and out, with problems that say what to do. Files that people choose are hostile: they may be folders,
// devices without an end, or far too long.

#include <QByteArray>
#include <QString>
#include <cstddef>
#include <string>
#include <string_view>

#include "core/quantity/result.h"

namespace wg::ui {

inline constexpr std::size_t mebibyte = std::size_t{1} << 20U;

/// Refused when it cannot be read or has more than `most` bytes; no more than those and one are read.
[[nodiscard]] Result<std::string> read_whole(const QString& path, std::size_t most = 64 * mebibyte);
/// Written beside and put in its place when whole, so that a full disk leaves the old file as it was. Refused: what is
/// there and is no regular file.
[[nodiscard]] Result<bool> write_whole(const QString& path, std::string_view bytes);
[[nodiscard]] Result<bool> write_whole(const QString& path, const QByteArray& bytes);

}  // namespace wg::ui
