#include "app/chair/pane.h"

#include <QBuffer>
#include <QPainter>
#include <cmath>

#include "app/controls/theme.h"
#include "app/paint/painter_backend.h"

namespace combdraft::chair {
namespace {

constexpr double kMark_px = 3, kInch_mm = 25.4, kScreen_dpi = 96;
constexpr double kLargerLetters = 1.5;  // a diagram here is read from across a room
constexpr int kSmallWidth_px = 300, kTiniest_px = 90;

paint::Items marksOf(const Pane& pane, head::ViewName view, double pixelsPerMm) {
  paint::Items items;
  for (const plan::ItemId& id : pane.marked) {
    const paint::PieceShape* piece = pane.scene->find(id);
    if (!piece) continue;
    paint::DrawingItem item;
    item.id = QString::fromStdString(id);
    item.role = paint::Role::Selection;
    item.layer = paint::Layer::Overlay;
    item.path = piece->in(pane.scene->head().view(view)).seen;
    item.style.stroke = paint::Palette().accent;
    item.style.width_mm = kMark_px / pixelsPerMm;
    items.push_back(std::move(item));
  }
  return items;
}

}  // namespace

QImage paneImage(const Pane& pane, head::ViewName view, Facing facing, double pixelsPerMm) {
  const QRectF frame = paint::frameOf(view);
  QImage image(static_cast<int>(std::ceil(frame.width() * pixelsPerMm)), static_cast<int>(std::ceil(frame.height() * pixelsPerMm)),
               QImage::Format_ARGB32_Premultiplied);
  image.fill(Qt::transparent);
  if (!pane.scene) return image;
  QPainter painter(&image);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setRenderHint(QPainter::SmoothPixmapTransform);
  if (facing == Facing::AsInMirror) {
    painter.translate(image.width(), 0);
    painter.scale(-1, 1);
  }
  painter.scale(pixelsPerMm, pixelsPerMm);
  painter.translate(-frame.topLeft());
  const paint::Palette palette;
  const double scale = pixelsPerMm * kInch_mm / kScreen_dpi;
  paint::Figure figure = pane.kind == Pane::Kind::Diagram
                             ? paint::diagramFigure(*pane.scene, view, {palette, scale / kLargerLetters})
                             : paint::lookFigure(*pane.scene, view, pane.look ? &pane.look->frame : nullptr, palette, scale,
                                                 paint::Ground::Paper);
  paint::paintItems(painter, figure.items);
  if (pane.kind == Pane::Kind::Diagram) paint::paintItems(painter, marksOf(pane, view, pixelsPerMm));
  return image;
}

std::string smallPicture(const Pane& pane, head::ViewName view, Facing facing, const QString& line, std::size_t most) {
  const QRectF frame = paint::frameOf(view);
  for (int width = kSmallWidth_px; width >= kTiniest_px; width = width * 4 / 5) {
    const QImage head = paneImage(pane, view, facing, width / frame.width());
    QFont font = QFont();
    font.setPixelSize(std::max(7, width / 27));
    const QFontMetrics metrics(font);
    const QRect words(6, head.height(), head.width() - 12, 3 * metrics.height());
    QImage whole(head.width(), head.height() + words.height() + 6, QImage::Format_RGB32);
    whole.fill(controls::theme(controls::ThemeName::Light).card);
    QPainter painter(&whole);
    painter.drawImage(0, 0, head);
    painter.setFont(font);
    painter.setPen(paint::Palette().ink);
    painter.drawText(words, Qt::AlignHCenter | Qt::AlignTop | Qt::TextWordWrap, line);
    painter.drawText(QRect(6, 4, head.width() - 12, metrics.height() + 2), Qt::AlignHCenter | Qt::AlignTop, pane.title);
    painter.end();
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    // A palette of 256 colours: hair is one family of hues, and it halves the size.
    if (!whole.convertToFormat(QImage::Format_Indexed8, Qt::DiffuseDither).save(&buffer, "PNG", 0)) continue;
    const QByteArray text = bytes.toBase64();
    if (static_cast<std::size_t>(text.size()) <= most) return text.toStdString();
  }
  return {};
}

}  // namespace combdraft::chair
