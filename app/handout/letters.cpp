#include "app/handout/letters.h"

#include <QFontMetricsF>
#include <QTextLayout>

namespace combdraft::handout {
namespace {

constexpr int kPixels = 100;  // as the painter sets letters

QFont fontOf(Weight weight) {
  QFont font;
  font.setFamilies(paint::fontFamilies());
  font.setPixelSize(kPixels);
  font.setHintingPreference(QFont::PreferNoHinting);
  if (weight == Weight::Bold) font.setWeight(QFont::DemiBold);
  return font;
}

}  // namespace

double widthOf(const QString& text, double size_mm, Weight weight) {
  return QFontMetricsF(fontOf(weight)).horizontalAdvance(text) * size_mm / kPixels;
}

QStringList linesOf(const QString& text, double size_mm, double width_mm, Weight weight) {
  QStringList lines;
  if (text.isEmpty() || !(width_mm > 0)) return lines;
  for (const QString& paragraph : text.split(u'\n')) {
    QTextLayout layout(paragraph, fontOf(weight));
    QTextOption option;
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    layout.setTextOption(option);
    layout.beginLayout();
    for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
      line.setLineWidth(width_mm * kPixels / size_mm);
      lines << paragraph.mid(line.textStart(), line.textLength()).trimmed();
    }
    layout.endLayout();
    if (paragraph.isEmpty()) lines << QString();
  }
  return lines;
}

QString cutTo(const QString& text, double size_mm, double width_mm, Weight weight) {
  return QFontMetricsF(fontOf(weight)).elidedText(text, Qt::ElideRight, width_mm * kPixels / size_mm);
}

}  // namespace combdraft::handout
