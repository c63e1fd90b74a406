#include "app/desk/clip_mime.h"

#include "app/paint/export_page.h"
#include "app/paint/svg_writer.h"
#include "engine/plan/clip.h"

namespace combdraft::desk {
namespace {

const QString kSvg = QStringLiteral("image/svg+xml"), kPng = QStringLiteral("image/png");

/// Draws its pictures when a program asks for one: most copies are pasted here, and
/// a picture of the whole sheet takes a second.
class PictureMime : public QMimeData {
 public:
  explicit PictureMime(paint::Page picture) : picture_(std::move(picture)) {}

  QStringList formats() const override { return QMimeData::formats() << kSvg << kPng; }
  bool hasFormat(const QString& type) const override { return formats().contains(type); }

 protected:
  QVariant retrieveData(const QString& type, QMetaType preferred) const override {
    if (type == kSvg) return paint::svgText(picture_);
    if (type == kPng) {
      const Result<QByteArray> png = paint::pngBytes(picture_, {});
      return png ? QVariant(*png) : QVariant();
    }
    return QMimeData::retrieveData(type, preferred);
  }

 private:
  paint::Page picture_;
};

}  // namespace

std::unique_ptr<QMimeData> pictureMime(const paint::Page& picture) { return std::make_unique<PictureMime>(picture); }

std::unique_ptr<QMimeData> clipMime(const std::string& clip, const paint::Page& picture) {
  std::unique_ptr<QMimeData> mime = pictureMime(picture);
  const QByteArray text = QByteArray::fromStdString(clip);
  mime->setData(QLatin1String(kClipMime), text);
  mime->setText(QString::fromUtf8(text));
  return mime;
}

std::optional<std::string> clipText(const QMimeData& mime) {
  if (mime.hasFormat(QLatin1String(kClipMime))) return mime.data(QLatin1String(kClipMime)).toStdString();
  if (!mime.hasText()) return std::nullopt;
  const std::string text = mime.text().toStdString();
  if (text.substr(0, 200).find(plan::kClipFormat) == std::string::npos) return std::nullopt;
  return text;
}

}  // namespace combdraft::desk
