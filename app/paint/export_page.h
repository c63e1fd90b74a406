#pragma once
// Writes a page to a file: SVG, PNG or PDF by the file's ending.
#include <QByteArray>
#include <QString>

#include "app/paint/drawing.h"
#include "engine/base/result.h"

namespace combdraft::paint {

enum class PictureFormat { Svg, Png, Pdf };
/// From ".svg", ".png", ".pdf" (any case); nothing for other endings.
std::optional<PictureFormat> formatOf(const QString& fileName);

struct ExportSize {
  std::optional<int> width_px;  ///< PNG only; wins over dpi
  double dpi = 200;             ///< PNG only
};

/// The page as PNG. Error: OutOfRange over 20,000 pixels a side.
Result<QByteArray> pngBytes(const Page& page, const ExportSize& size);

/// Atomic: an existing file stays whole when writing fails. PNG is limited to
/// 20,000 pixels a side. Errors: FileIsDirectory, FileUnwritable, OutOfRange.
Result<void> writePage(const Page& page, const QString& fileName, const ExportSize& size);

}  // namespace combdraft::paint
