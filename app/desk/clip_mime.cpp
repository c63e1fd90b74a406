#include "app/desk/clip_mime.h"

#include "app/paint/export_page.h"
#include "app/paint/svg_writer.h"
#include "engine/plan/clip.h"

namespace combdraft::desk {

std::unique_ptr<QMimeData> pictureMime(const paint::Page& picture) {
  auto mime = std::make_unique<QMimeData>();
  mime->setData(QStringLiteral("image/svg+xml"), paint::svgText(picture));
  if (const Result<QByteArray> png = paint::pngBytes(picture, {})) mime->setData(QStringLiteral("image/png"), *png);
  return mime;
}

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
