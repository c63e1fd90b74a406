#include "app/words/engine_words.h"

#include <QCoreApplication>
#include <QHash>
#include <QLocale>
#include <QMutex>
#include <QRegularExpression>
#include <QStringList>
#include <algorithm>
#include <functional>
#include <optional>
#include <utility>
#include <vector>

#include "app/words/engine_phrases.h"

namespace combdraft::words {
namespace {

constexpr char kContext[] = "Engine";
constexpr int kDeepest = 4;  // a phrase in a hole of a phrase in a hole …
// A sentence of which not all is known must be told by more than "%1 to %2" or "%1 mm",
// which stand in words of others (of the system, of files) too.
constexpr qsizetype kTelling_letters = 10;
constexpr qsizetype kMostParts = 4000;  // read of one sentence; those of the engine need some hundred
constexpr qsizetype kLongest = 1000;  // no sentence of the engine has as many letters

struct Phrase {
  const char* text;
  QStringList literals;         // what stands before, between and after the holes
  qsizetype letters = 0;        // of the literals: the fuller phrase fits better
};

Phrase phraseOf(const char* text) {
  static const QRegularExpression hole(QStringLiteral("%\\d"));
  Phrase phrase{text, QString::fromUtf8(text).split(hole), 0};
  for (const QString& literal : phrase.literals) phrase.letters += literal.size();
  return phrase;
}

// The fullest first.
const std::vector<Phrase>& phrases() {
  static const std::vector<Phrase> made = [] {
    std::vector<Phrase> all;
    for (const char* text : enginePhrases()) all.push_back(phraseOf(text));
    std::stable_sort(all.begin(), all.end(), [](const Phrase& a, const Phrase& b) { return a.letters > b.letters; });
    return all;
  }();
  return made;
}

// Whether what stands between the holes is there in its order: told before any hole is read.
bool mayFit(const QString& text, const Phrase& phrase) {
  qsizetype at = 0;
  for (const QString& literal : phrase.literals) {
    at = text.indexOf(literal, at);
    if (at < 0) return false;
    at += literal.size();
  }
  return text.startsWith(phrase.literals.front());
}

// How to take what stands in a hole: nothing where it may not stand there.
using InHole = std::function<std::optional<QString>(const QString&)>;

// Puts what stands in the holes of `text` from `at` on into `values`; every way to cut the
// text is tried, the shortest first, until each value is taken.
bool cut(const QString& text, const Phrase& phrase, qsizetype at, const InHole& take, QStringList& values) {
  const qsizetype hole = values.size();
  if (hole == phrase.literals.size() - 1) return at == text.size();
  const QString& next = phrase.literals[hole + 1];
  const bool isLast = hole == phrase.literals.size() - 2;
  const bool isQuoted = phrase.literals[hole].endsWith(u'"');  // the user's own
  for (qsizetype end = isLast ? text.size() - next.size() : text.indexOf(next, at + 1); end > at; end = text.indexOf(next, end + 1)) {
    if (isLast && !text.endsWith(next)) return false;
    const QString value = text.mid(at, end - at);
    if (const std::optional<QString> taken = isQuoted ? value : take(value)) {
      values << *taken;
      if (cut(text, phrase, end + next.size(), take, values)) return true;
      values.removeLast();
    }
    if (isLast) break;
  }
  return false;
}

// %1 … %9 at once, so that a value with a % in it stays as it is.
QString filled(const QString& pattern, const QStringList& values) {
  QString text;
  for (qsizetype i = 0; i < pattern.size(); ++i) {
    const int hole = pattern[i] == u'%' && i + 1 < pattern.size() ? pattern[i + 1].digitValue() : -1;
    if (hole < 1 || hole > values.size()) {
      text += pattern[i];
      continue;
    }
    text += values[hole - 1];
    ++i;
  }
  return text;
}

std::optional<QString> byPhrase(const QString& english, const InHole& take, qsizetype least_letters) {
  for (const Phrase& phrase : phrases()) {
    if (phrase.letters < least_letters) break;  // the fullest are first
    QStringList values;
    if (mayFit(english, phrase) && cut(english, phrase, phrase.literals.front().size(), take, values))
      return filled(QCoreApplication::translate(kContext, phrase.text), values);
  }
  return std::nullopt;
}

// Sentences begin with a capital, phrases with the letter they have inside one.
std::optional<QString> byPhraseInAnyCase(const QString& english, const InHole& take, qsizetype least_letters) {
  std::optional<QString> found = byPhrase(english, take, least_letters);
  if (found || !english[0].isUpper()) return found;
  found = byPhrase(english[0].toLower() + english.mid(1), take, least_letters);
  if (found) (*found)[0] = (*found)[0].toUpper();
  return found;
}

std::optional<QString> listOf(const QString& english, const InHole& take) {
  QStringList parts = english.split(QStringLiteral(", "));  // of a place, of what is missed
  if (parts.size() == 1) return std::nullopt;
  for (QString& part : parts) {
    const std::optional<QString> taken = take(part);
    if (!taken) return std::nullopt;
    part = *taken;
  }
  return parts.join(QStringLiteral(", "));
}

// One sentence being read. What was found of a part of it is kept: the same parts come
// back in every way to cut the whole, and without it a long sentence would take for ever.
class Reader {
 public:
  // As far as it is known; names and words of others stay.
  QString said(const QString& english, int depth = 0) {
    if (english.isEmpty() || depth > kDeepest || said_.size() >= kMostParts) return english;
    const std::pair key(depth, english);
    if (const auto it = said_.constFind(key); it != said_.constEnd()) return *it;
    const InHole deeper = [this, depth](const QString& part) { return said(part, depth + 1); };
    std::optional<QString> found = understood(english, depth);
    if (!found) found = byPhraseInAnyCase(english, deeper, kTelling_letters);
    if (!found) found = listOf(english, deeper);
    return *said_.insert(key, found.value_or(english));
  }

 private:
  // The translation where every word of it is known.
  std::optional<QString> understood(const QString& english, int depth) {
    static const QRegularExpression number(QStringLiteral("^-?\\d+(\\.\\d+)?$"));
    if (english.isEmpty() || depth > kDeepest) return std::nullopt;
    if (number.match(english).hasMatch()) return QString(english).replace(u'.', QLocale().decimalPoint());
    const std::pair key(depth, english);
    if (const auto it = known_.constFind(key); it != known_.constEnd()) return *it;
    if (known_.size() >= kMostParts) return std::nullopt;
    const InHole deeper = [this, depth](const QString& part) { return understood(part, depth + 1); };
    std::optional<QString> found = byPhraseInAnyCase(english, deeper, 0);
    if (!found) found = listOf(english, deeper);
    known_.insert(key, found);
    return found;
  }

  QHash<std::pair<int, QString>, std::optional<QString>> known_;
  QHash<std::pair<int, QString>, QString> said_;
};

// English needs no work: no phrase is translated.
bool isSpokenAsIs() {
  const std::span<const char* const> all = enginePhrases();
  return std::all_of(all.begin(), all.begin() + std::min<std::ptrdiff_t>(std::ssize(all), 8), [](const char* text) {
    return QCoreApplication::translate(kContext, text) == QString::fromUtf8(text);
  });
}

}  // namespace

QString inWords(std::string_view english) {
  const QString text = QString::fromUtf8(english.data(), static_cast<qsizetype>(english.size()));
  if (text.size() > kLongest || isSpokenAsIs()) return text;
  static QHash<QString, QString> known;
  static QMutex guard;  // recovery and searches say what went wrong from threads of their own
  constexpr qsizetype kMost = 4096;
  const QMutexLocker locked(&guard);
  const QString key = QLocale().name() + text;
  if (const auto it = known.constFind(key); it != known.constEnd()) return *it;
  if (known.size() > kMost) known.clear();
  return *known.insert(key, Reader().said(text));
}

QString inWords(const Error& error) {
  QString text;
  if (!error.file.empty()) text += QString::fromStdString(error.file) + QStringLiteral(": ");
  if (!error.where.empty()) text += inWords(shownText(error.where)) + QStringLiteral(": ");
  return text + inWords(describe(Error{error.code, {}, error.args, {}}));
}

}  // namespace combdraft::words
