#include "app/paint/outline_reader.h"

#include <QFile>
#include <QXmlStreamReader>
#include <array>

#include "engine/base/expect.h"
#include "engine/base/number_text.h"

// The resources live in a static library; the linker must be told to keep them.
static void keepResources() { Q_INIT_RESOURCE(combdraft); }

namespace combdraft::paint {
namespace {

QPainterPath readPath(const QString& text) {
  QPainterPath path;
  std::vector<double> numbers;
  QChar command = QLatin1Char('M');
  const auto flush = [&] {
    const std::size_t need = command == QLatin1Char('C') ? 6 : 2;
    if (numbers.size() < need) return;
    if (command == QLatin1Char('M')) {
      path.moveTo(numbers[0], numbers[1]);
      command = QLatin1Char('L');
    } else if (command == QLatin1Char('L')) {
      path.lineTo(numbers[0], numbers[1]);
    } else {
      path.cubicTo(numbers[0], numbers[1], numbers[2], numbers[3], numbers[4], numbers[5]);
    }
    numbers.clear();
  };
  QString word;
  const auto endWord = [&] {
    if (word.isEmpty()) return;
    if (const auto value = parseNumber(word.toStdString())) numbers.push_back(*value);
    word.clear();
    flush();
  };
  for (const QChar c : text) {
    if (c == QLatin1Char('M') || c == QLatin1Char('C') || c == QLatin1Char('L')) {
      endWord();
      numbers.clear();
      command = c;
    } else if (c == QLatin1Char('Z')) {
      endWord();
      path.closeSubpath();
    } else if (c == QLatin1Char(',') || c.isSpace()) {
      endWord();
    } else {
      word += c;
    }
  }
  endWord();
  return path;
}

}  // namespace

std::vector<OutlinePath> readOutline(const QByteArray& svg) {
  std::vector<OutlinePath> paths;
  QXmlStreamReader xml(svg);
  QString group;
  while (!xml.atEnd()) {
    if (xml.readNext() != QXmlStreamReader::StartElement) continue;
    const QXmlStreamAttributes attributes = xml.attributes();
    if (xml.name() == QLatin1String("g")) {
      group = attributes.value(QLatin1String("id")).toString();
    } else if (xml.name() == QLatin1String("path")) {
      const QString kind = attributes.value(QLatin1String("class")).toString();
      paths.push_back({group, kind.isEmpty() ? group : kind,
                       attributes.value(QLatin1String("id")).toString(),
                       readPath(attributes.value(QLatin1String("d")).toString())});
    }
  }
  return paths;
}

const std::vector<OutlinePath>& bundledOutline(head::ViewName view) {
  static const std::array<std::vector<OutlinePath>, 5> kAll = [] {
    keepResources();
    std::array<std::vector<OutlinePath>, 5> all;
    for (std::size_t i = 0; i < all.size(); ++i) {
      const std::string_view word = head::viewWord(head::kAllViews[i]);
      QFile file(QStringLiteral(":/outlines/head-%1.svg")
                     .arg(QLatin1String(word.data(), static_cast<qsizetype>(word.size()))));
      COMBDRAFT_EXPECT(file.open(QIODevice::ReadOnly), word);
      all[i] = readOutline(file.readAll());
    }
    return all;
  }();
  const auto index = static_cast<std::size_t>(view);
  COMBDRAFT_EXPECT(index < kAll.size(), index);
  return kAll[index];
}

}  // namespace combdraft::paint
