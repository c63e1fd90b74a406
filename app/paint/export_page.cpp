#include "app/paint/export_page.h"

#include <QBuffer>
#include <QFileInfo>
#include <QPageSize>
#include <QPdfWriter>
#include <QSaveFile>
#include <cmath>

#include "app/paint/painter_backend.h"
#include "app/paint/svg_writer.h"
#include "engine/base/number_text.h"

namespace combdraft::paint {
namespace {

constexpr int kLargest_px = 20000;

QByteArray pdf(const Page& page) {
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  QPdfWriter writer(&buffer);
  writer.setTitle(page.title);
  writer.setCreator(QStringLiteral("Combdraft"));
  writer.setPageSize(QPageSize(page.size_mm, QPageSize::Millimeter, QString(),
                               QPageSize::ExactMatch));
  writer.setPageMargins(QMarginsF(0, 0, 0, 0));
  writer.setResolution(600);
  QPainter painter(&writer);
  painter.scale(600 / 25.4, 600 / 25.4);
  paintPage(painter, page);
  painter.end();
  return bytes;
}

}  // namespace

Result<QByteArray> pngBytes(const Page& page, const ExportSize& size) {
  const double perMm =
      size.width_px ? *size.width_px / page.size_mm.width() : size.dpi / 25.4;
  const double width = page.size_mm.width() * perMm, height = page.size_mm.height() * perMm;
  if (!(width >= 1) || !(height >= 1) || width > kLargest_px || height > kLargest_px)
    return Error{ErrorCode::OutOfRange, "picture size",
                 {numberText(std::round(width)) + " x " + numberText(std::round(height)) + " pixels",
                  "1 to " + std::to_string(kLargest_px) + " pixels a side"}, {}};
  QImage image(static_cast<int>(std::lround(width)), static_cast<int>(std::lround(height)),
               QImage::Format_RGB32);
  if (image.isNull())
    return Error{ErrorCode::OutOfRange, "picture size", {"too large for memory", "a smaller one"}, {}};
  image.fill(page.ground);
  image.setDotsPerMeterX(static_cast<int>(std::lround(perMm * 1000)));
  image.setDotsPerMeterY(static_cast<int>(std::lround(perMm * 1000)));
  QPainter painter(&image);
  painter.scale(perMm, perMm);
  paintPage(painter, page);
  painter.end();
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  image.save(&buffer, "PNG");
  return bytes;
}

std::optional<PictureFormat> formatOf(const QString& fileName) {
  const QString ending = QFileInfo(fileName).suffix().toLower();
  if (ending == QLatin1String("svg")) return PictureFormat::Svg;
  if (ending == QLatin1String("png")) return PictureFormat::Png;
  if (ending == QLatin1String("pdf")) return PictureFormat::Pdf;
  return std::nullopt;
}

Result<void> writePage(const Page& page, const QString& fileName, const ExportSize& size) {
  const std::string name = fileName.toStdString();
  const auto format = formatOf(fileName);
  if (!format)
    return Error{ErrorCode::UnknownName, "ending", {name, ".svg, .png or .pdf"}, name};
  if (QFileInfo(fileName).isDir())
    return Error{ErrorCode::FileIsDirectory, "", {"a folder", "a file name"}, name};
  QByteArray bytes;
  if (*format == PictureFormat::Png) {
    Result<QByteArray> made = pngBytes(page, size);
    if (!made) return made.error();
    bytes = *made;
  } else {
    bytes = *format == PictureFormat::Svg ? svgText(page) : pdf(page);
  }
  QSaveFile file(fileName);
  if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size() || !file.commit())
    return Error{ErrorCode::FileUnwritable, "",
                 {file.errorString().toStdString(), "a folder that you may write to"}, name};
  return {};
}

}  // namespace combdraft::paint
