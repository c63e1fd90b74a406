#include "app/paint/drawing.h"

#include <QStringList>

namespace combdraft::paint {

QString layerWord(Layer layer) {
  switch (layer) {
    case Layer::Art: return QStringLiteral("art");
    case Layer::Look: return QStringLiteral("look");
    case Layer::Regions: return QStringLiteral("regions");
    case Layer::Diagram: return QStringLiteral("diagram");
    case Layer::Labels: return QStringLiteral("labels");
    case Layer::Overlay: return QStringLiteral("overlay");
    case Layer::Key: return QStringLiteral("key");
  }
  return {};
}

QString roleWord(Role role) {
  switch (role) {
    case Role::Ground: return QStringLiteral("ground");
    case Role::Skin: return QStringLiteral("skin");
    case Role::Scalp: return QStringLiteral("scalp");
    case Role::Outline: return QStringLiteral("outline");
    case Role::Hairline: return QStringLiteral("hairline");
    case Role::Feature: return QStringLiteral("feature");
    case Role::Guide: return QStringLiteral("guide");
    case Role::Part: return QStringLiteral("part");
    case Role::Whorl: return QStringLiteral("whorl");
    case Role::Look: return QStringLiteral("look");
    case Role::Region: return QStringLiteral("region");
    case Role::Section: return QStringLiteral("section");
    case Role::Piece: return QStringLiteral("piece");
    case Role::Teeth: return QStringLiteral("teeth");
    case Role::Hatch: return QStringLiteral("hatch");
    case Role::LeftOut: return QStringLiteral("left-out");
    case Role::Deepen: return QStringLiteral("deepen");
    case Role::Paint: return QStringLiteral("paint");
    case Role::DropOut: return QStringLiteral("drop-out");
    case Role::Backcomb: return QStringLiteral("backcomb");
    case Role::Hidden: return QStringLiteral("hidden");
    case Role::Number: return QStringLiteral("number");
    case Role::Letter: return QStringLiteral("letter");
    case Role::Depth: return QStringLiteral("depth");
    case Role::Leader: return QStringLiteral("leader");
    case Role::Note: return QStringLiteral("note");
    case Role::Arrow: return QStringLiteral("arrow");
    case Role::Mark: return QStringLiteral("mark");
    case Role::Handle: return QStringLiteral("handle");
    case Role::Selection: return QStringLiteral("selection");
    case Role::Caption: return QStringLiteral("caption");
    case Role::Key: return QStringLiteral("key");
  }
  return {};
}

QRectF DrawingItem::extent() const {
  constexpr double kWidest = 1.5, kHighest = 2;  // of a letter, in its size
  const double margin = style.stroke.isValid() ? style.width_mm : 0;
  QRectF box;
  if (!path.isEmpty()) box = path.controlPointRect().adjusted(-margin, -margin, margin, margin);
  if (!image.isNull()) box |= imageRect;
  if (text) {
    const double width = 2 * text->size_mm * kWidest * static_cast<double>(text->words.size() + 1), height = text->size_mm * kHighest;
    box |= QRectF(text->at - QPointF(width / 2, height / 2), QSizeF(width, height));
  }
  return box;
}

QStringList fontFamilies() {
  return {QStringLiteral("Inter"), QStringLiteral("DejaVu Sans"), QStringLiteral("sans-serif")};
}

}  // namespace combdraft::paint
