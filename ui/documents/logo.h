#pragma once
// The firm's logo: a picture from a file, checked before anything is done with it.

#include <QByteArray>
#include <QImage>

#include "core/quantity/result.h"

namespace wg::ui {

inline constexpr qsizetype max_logo_bytes = qsizetype{1} << 20;
inline constexpr int max_logo_px = 6000;  ///< of each side
inline constexpr int least_logo_px = 16;

/// PNG, JPEG or SVG as papers draw it: opaque on white (PDF/A-1b, ISO 19005-1, knows no transparency), no larger than
/// print needs. Refused, with the reason: other contents whatever the file's name, more bytes or pixels than above, a
/// picture that cannot be decoded whole, and an SVG that reaches outside itself, runs scripts or refers to itself over
/// and over.
[[nodiscard]] Result<QImage> logo_from_bytes(const QByteArray& bytes);

/// The image of a signature: PNG or JPEG of at most as many bytes and pixels, opaque on white.
[[nodiscard]] Result<QImage> signature_from_bytes(const QByteArray& bytes);

}  // namespace wg::ui
