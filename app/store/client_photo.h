#pragma once
// Photos of a client: measured before they are decoded, turned upright, and written
// anew as pixels only. What a camera wrote beside them (place, time, name, a small
// picture of the uncut one) is not kept. Everything here may run on any thread.
#include <QImage>
#include <QString>
#include <string>

#include "engine/base/result.h"

namespace combdraft::store {

namespace limits {
inline constexpr qint64 kPhotoBytes = 40ll << 20;    ///< of a file to be read
inline constexpr qint64 kPhotoPixels = 60'000'000;   ///< of the picture in it
inline constexpr int kPhotoSide_px = 20'000;
inline constexpr int kKeptSide_px = 2400;            ///< larger ones are made smaller
}  // namespace limits

/// The bytes of a JPEG without metadata. Errors: FileMissing, FileUnreadable (no JPEG,
/// PNG or WebP; damaged; too many bytes), OutOfRange (pixels); each says what would be
/// right.
Result<std::string> photoBytesOf(const QString& path);

/// A kept photo, no side longer than `side_px`; null when it cannot be read.
QImage loadPhoto(const QString& path, int side_px);

}  // namespace combdraft::store
