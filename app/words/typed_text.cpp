#include "app/words/typed_text.h"

#include <QDate>

namespace combdraft::words {
namespace {

constexpr char16_t kUnknown = 0xFFFD;

// Half of a pair would come back from UTF-8 as another letter.
bool isHalf(const QString& text, qsizetype at) {
  if (text[at].isHighSurrogate()) return at + 1 >= text.size() || !text[at + 1].isLowSurrogate();
  return text[at].isLowSurrogate() && (at == 0 || !text[at - 1].isHighSurrogate());
}

bool endsLine(QChar c) {
  return c == QChar::LineFeed || c == QChar::CarriageReturn || c.category() == QChar::Separator_Line ||
         c.category() == QChar::Separator_Paragraph;
}

QString readable(const QString& typed, QChar lineEnd, QChar tab) {
  QString text = typed;
  for (qsizetype i = 0; i < text.size(); ++i) {
    const QChar c = text[i];
    if (endsLine(c))
      text[i] = lineEnd;
    else if (c == QChar::Tabulation)
      text[i] = tab;
    else if (c.category() == QChar::Other_Control)
      text[i] = QChar::Space;
    else if (c.isNonCharacter() || isHalf(text, i))
      text[i] = QChar(kUnknown);
  }
  return text;
}

}  // namespace

QString oneLine(const QString& typed) { return readable(typed, QChar::Space, QChar::Space); }

QString severalLines(const QString& typed) {
  QString text = typed;
  text.replace(QStringLiteral("\r\n"), QStringLiteral("\n"));
  return readable(text, QChar::LineFeed, QChar::Tabulation);
}

QString isoDay(const QString& typed) {
  constexpr qsizetype kLetters = 10;
  if (typed.size() != kLetters) return {};  // Qt would take a time behind it
  const QString day = QDate::fromString(typed, Qt::ISODate).toString(Qt::ISODate);
  return day.size() == kLetters ? day : QString();
}

}  // namespace combdraft::words
