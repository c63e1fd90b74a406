#include "app/store/client_photo.h"

#include <QBuffer>
#include <QColorSpace>
#include <QFile>
#include <QFileInfo>
#include <QImageReader>
#include <QImageWriter>
#include <QPainter>

namespace combdraft::store {
namespace {

constexpr int kQuality = 90;
// Four bytes for each pixel that is allowed, and as much again to turn it.
constexpr int kMostMemory_MB = 512;

const char* const kKinds = "a photo as JPEG, PNG or WebP";

Error refused(ErrorCode code, const QString& path, std::vector<std::string> args) {
  return {code, {}, std::move(args), path.toStdString()};
}

bool isKnownKind(const QByteArray& format) { return format == "jpeg" || format == "jpg" || format == "png" || format == "webp"; }

std::string sizeText(const QSize& size) {
  return std::to_string(size.width()) + " by " + std::to_string(size.height()) + " pixels";
}

// Pixels and nothing else: drawing leaves texts, profiles and marks behind.
QImage pixelsOnly(const QImage& read) {
  QImage from = read;
  if (from.colorSpace().isValid() && from.colorSpace() != QColorSpace(QColorSpace::SRgb))
    from.convertToColorSpace(QColorSpace(QColorSpace::SRgb));
  QImage made(from.size(), QImage::Format_RGB32);
  if (made.isNull()) return made;
  made.fill(Qt::white);
  from.setDevicePixelRatio(1);
  QPainter(&made).drawImage(QPoint(0, 0), from);
  return made;
}

}  // namespace

Result<std::string> photoBytesOf(const QString& path) {
  const QFileInfo info(path);
  if (!info.exists()) return refused(ErrorCode::FileMissing, path, {});
  if (!info.isFile()) return refused(ErrorCode::FileUnreadable, path, {std::string("it is no file; right would be ") + kKinds});
  if (info.size() > limits::kPhotoBytes)
    return refused(ErrorCode::FileUnreadable, path,
                   {"it has " + std::to_string(info.size()) + " bytes; a photo may have " + std::to_string(limits::kPhotoBytes)});
  QFile file(path);
  if (!file.open(QIODevice::ReadOnly)) return refused(ErrorCode::FileUnreadable, path, {file.errorString().toStdString()});
  QImageReader reader(&file);
  reader.setDecideFormatFromContent(true);
  if (!isKnownKind(reader.format()))
    return refused(ErrorCode::FileUnreadable, path, {std::string("it is no picture of a known kind; right would be ") + kKinds});
  QImageReader::setAllocationLimit(kMostMemory_MB);
  reader.setAutoTransform(true);
  const QSize size = reader.size();  // from its first bytes, before anything is decoded
  if (!size.isValid() || size.isEmpty())
    return refused(ErrorCode::FileUnreadable, path, {std::string("it does not say how large it is; right would be ") + kKinds});
  if (size.width() > limits::kPhotoSide_px || size.height() > limits::kPhotoSide_px ||
      qint64{size.width()} * size.height() > limits::kPhotoPixels)
    return refused(ErrorCode::OutOfRange, path,
                   {sizeText(size), "at most " + std::to_string(limits::kPhotoPixels / 1'000'000) + " million pixels, no side longer than " +
                                        std::to_string(limits::kPhotoSide_px)});
  if (size.width() > limits::kKeptSide_px || size.height() > limits::kKeptSide_px)
    reader.setScaledSize(size.scaled(limits::kKeptSide_px, limits::kKeptSide_px, Qt::KeepAspectRatio));
  const QImage read = reader.read();
  if (read.isNull())
    return refused(ErrorCode::FileUnreadable, path, {"it is damaged (" + reader.errorString().toStdString() + "); right would be " + kKinds});
  const QImage made = pixelsOnly(read);
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  QImageWriter writer(&buffer, "jpeg");
  writer.setQuality(kQuality);
  if (made.isNull() || !writer.write(made)) return refused(ErrorCode::FileUnreadable, path, {"there is not enough memory for it"});
  return bytes.toStdString();
}

QImage loadPhoto(const QString& path, int side_px) {
  QImageReader reader(path, "jpeg");
  const QSize size = reader.size();
  if (!size.isValid() || size.width() > limits::kPhotoSide_px || size.height() > limits::kPhotoSide_px) return {};
  if (size.width() > side_px || size.height() > side_px) reader.setScaledSize(size.scaled(side_px, side_px, Qt::KeepAspectRatio));
  return reader.read();
}

}  // namespace combdraft::store
