#include "app/paint/svg_writer.h"

#include <QBuffer>
#include <QXmlStreamWriter>
#include <cmath>

#include "engine/base/number_text.h"

namespace combdraft::paint {
namespace {

QString number(double value) {
  const double rounded = std::round(value * 1000) / 1000;
  return QString::fromStdString(numberText(rounded == 0 ? 0.0 : rounded));
}

class Writer {
 public:
  QByteArray write(const Page& page) {
    xml_.setAutoFormatting(true);
    xml_.setAutoFormattingIndent(1);
    xml_.writeStartDocument();
    xml_.writeStartElement(QStringLiteral("svg"));
    xml_.writeDefaultNamespace(QStringLiteral("http://www.w3.org/2000/svg"));
    xml_.writeNamespace(QStringLiteral("http://www.w3.org/1999/xlink"), QStringLiteral("xlink"));
    attribute("version", QStringLiteral("1.1"));
    const QString w = number(page.size_mm.width()), h = number(page.size_mm.height());
    attribute("width", w + QStringLiteral("mm"));
    attribute("height", h + QStringLiteral("mm"));
    attribute("viewBox", QStringLiteral("0 0 %1 %2").arg(w, h));
    attribute("font-family", fontFamilies().join(QStringLiteral(", ")));
    xml_.writeTextElement(QStringLiteral("title"), page.title);
    if (page.ground.isValid()) {
      xml_.writeEmptyElement(QStringLiteral("rect"));
      attribute("id", QStringLiteral("ground"));
      attribute("width", w);
      attribute("height", h);
      attribute("fill", page.ground.name());
    }
    for (const PlacedFigure& placed : page.figures) writeFigure(placed);
    xml_.writeEndDocument();
    return bytes_;
  }

 private:
  void attribute(const char* name, const QString& value) {
    xml_.writeAttribute(QLatin1String(name), value);
  }

  void writeFigure(const PlacedFigure& placed) {
    const Figure& figure = placed.figure;
    openGroup(figure.id, figure.title);
    attribute("transform", QStringLiteral("translate(%1 %2) scale(%3) translate(%4 %5)")
                               .arg(number(placed.corner_mm.x()), number(placed.corner_mm.y()),
                                    QString::fromStdString(numberText(placed.scale)),
                                    number(-figure.frame.left()), number(-figure.frame.top())));
    for (const Layer layer : kLayers) {
      bool open = false;
      for (std::size_t i = 0; i < figure.items.size(); ++i) {
        if (figure.items[i].layer != layer) continue;
        if (!open) openGroup(figure.id + QLatin1Char('-') + layerWord(layer), layerWord(layer));
        open = true;
        i = writeThing(figure, layer, i);
      }
      if (open) xml_.writeEndElement();
    }
    xml_.writeEndElement();
  }

  void openGroup(const QString& id, const QString& name) {
    xml_.writeStartElement(QStringLiteral("g"));
    attribute("id", id);
    if (!name.isEmpty()) attribute("aria-label", name);
  }

  // All neighbouring items of one id make one group; returns the last index.
  std::size_t writeThing(const Figure& figure, Layer layer, std::size_t from) {
    const QString id = figure.items[from].id;
    xml_.writeStartElement(QStringLiteral("g"));
    attribute("class", id);
    if (!figure.items[from].name.isEmpty()) {
      attribute("aria-label", figure.items[from].name);
      xml_.writeTextElement(QStringLiteral("title"), figure.items[from].name);
    }
    std::size_t i = from;
    for (; i < figure.items.size(); ++i) {
      if (figure.items[i].layer != layer || figure.items[i].id != id) break;
      writeItem(figure.items[i]);
    }
    xml_.writeEndElement();
    return i - 1;
  }

  void writeItem(const DrawingItem& item) {
    QString clip;
    if (!item.clip.isEmpty()) {
      clip = QStringLiteral("clip-%1").arg(++clips_);
      xml_.writeStartElement(QStringLiteral("clipPath"));
      attribute("id", clip);
      xml_.writeEmptyElement(QStringLiteral("path"));
      attribute("d", svgPath(item.clip));
      if (item.clip.fillRule() == Qt::OddEvenFill)
        attribute("clip-rule", QStringLiteral("evenodd"));
      xml_.writeEndElement();
    }
    if (!item.image.isNull()) writeImage(item, clip);
    if (!item.path.isEmpty()) writePath(item, clip);
    if (item.text) writeTextRun(*item.text, item.role, clip);
  }

  void clipWith(const QString& clip) {
    if (!clip.isEmpty()) attribute("clip-path", QStringLiteral("url(#%1)").arg(clip));
  }

  void writePath(const DrawingItem& item, const QString& clip) {
    xml_.writeEmptyElement(QStringLiteral("path"));
    attribute("class", roleWord(item.role));
    attribute("d", svgPath(item.path));
    const Style& style = item.style;
    attribute("fill", style.fill.isValid() ? style.fill.name() : QStringLiteral("none"));
    if (style.fill.isValid() && item.path.fillRule() == Qt::OddEvenFill)
      attribute("fill-rule", QStringLiteral("evenodd"));
    if (style.fill.isValid() && style.fill.alpha() < 255)
      attribute("fill-opacity", number(style.fill.alphaF()));
    if (style.stroke.isValid()) {
      attribute("stroke", style.stroke.name());
      attribute("stroke-width", number(style.width_mm));
      attribute("stroke-linejoin", QStringLiteral("round"));
      if (style.cap == Qt::RoundCap) attribute("stroke-linecap", QStringLiteral("round"));
      QStringList dashes;
      for (const double d : style.dash_mm) dashes << number(d);
      if (!dashes.isEmpty()) attribute("stroke-dasharray", dashes.join(QLatin1Char(' ')));
    }
    clipWith(clip);
  }

  void writeTextRun(const TextRun& text, Role role, const QString& clip) {
    xml_.writeStartElement(QStringLiteral("text"));
    attribute("class", roleWord(role));
    attribute("x", number(text.at.x()));
    attribute("y", number(text.at.y() + 0.36 * text.size_mm));
    attribute("font-size", number(text.size_mm));
    attribute("fill", text.colour.name());
    if (text.anchor != TextRun::Anchor::Start)
      attribute("text-anchor", text.anchor == TextRun::Anchor::Middle ? QStringLiteral("middle")
                                                                       : QStringLiteral("end"));
    if (text.weight == TextRun::Weight::Bold) attribute("font-weight", QStringLiteral("600"));
    clipWith(clip);
    xml_.writeCharacters(text.words);
    xml_.writeEndElement();
  }

  void writeImage(const DrawingItem& item, const QString& clip) {
    QByteArray png;
    QBuffer buffer(&png);
    buffer.open(QIODevice::WriteOnly);
    item.image.save(&buffer, "PNG");
    xml_.writeEmptyElement(QStringLiteral("image"));
    attribute("class", roleWord(item.role));
    attribute("x", number(item.imageRect.left()));
    attribute("y", number(item.imageRect.top()));
    attribute("width", number(item.imageRect.width()));
    attribute("height", number(item.imageRect.height()));
    attribute("preserveAspectRatio", QStringLiteral("none"));
    xml_.writeAttribute(QStringLiteral("http://www.w3.org/1999/xlink"), QStringLiteral("href"),
                        QStringLiteral("data:image/png;base64,") +
                            QString::fromLatin1(png.toBase64()));
    clipWith(clip);
  }

  QByteArray bytes_;
  QXmlStreamWriter xml_{&bytes_};
  int clips_ = 0;
};

}  // namespace

QString svgPath(const QPainterPath& path) {
  QString text;
  QPointF start;
  for (int i = 0; i < path.elementCount(); ++i) {
    const QPainterPath::Element e = path.elementAt(i);
    const QString point = number(e.x) + QLatin1Char(',') + number(e.y);
    switch (e.type) {
      case QPainterPath::MoveToElement:
        text += QLatin1Char('M') + point;
        start = e;
        break;
      case QPainterPath::LineToElement:
        // Qt has no closing element: a line back to the start is one.
        text += QPointF(e) == start ? QStringLiteral("Z") : QLatin1Char('L') + point;
        break;
      case QPainterPath::CurveToElement: text += QLatin1Char('C') + point; break;
      case QPainterPath::CurveToDataElement:
        text += QLatin1Char(' ') + point;
        if (i + 1 == path.elementCount() ||
            path.elementAt(i + 1).type != QPainterPath::CurveToDataElement)
          if (QPointF(e) == start) text += QLatin1Char('Z');
        break;
    }
  }
  return text;
}

QByteArray svgText(const Page& page) { return Writer().write(page); }

}  // namespace combdraft::paint
