#include "app/controls/number_input.h"

#include <QLocale>
#include <cmath>

#include "engine/base/number_text.h"

namespace combdraft::controls {
namespace {

// Recursive descent over the text without its spaces' meaning changed:
//   sum = product {(+|-) product};  product = mixed {(*|/) mixed}
//   mixed = signed [space signed '/' signed];  signed = [-|+] (number | '(' sum ')')
class Sum {
 public:
  explicit Sum(const QString& text) : text_(text.trimmed()) {}

  std::optional<double> value() {
    if (text_.isEmpty() || text_.size() > 80) return std::nullopt;
    const double result = sum(0);
    skipSpace();
    if (!good_ || at_ != text_.size() || !std::isfinite(result)) return std::nullopt;
    return result;
  }

 private:
  double sum(int depth) {
    double total = product(depth);
    while (good_) {
      const QChar next = peek();
      if (next == u'+') {
        ++at_;
        total += product(depth);
      } else if (next == u'-' || next == QChar(0x2212)) {
        ++at_;
        total -= product(depth);
      } else {
        break;
      }
    }
    return total;
  }

  double product(int depth) {
    double total = mixed(depth);
    while (good_) {
      const QChar next = peek();
      if (next == u'*' || next == QChar(0xD7)) {
        ++at_;
        total *= mixed(depth);
      } else if (next == u'/' || next == u':') {
        ++at_;
        const double by = mixed(depth);
        good_ = good_ && by != 0;
        total /= by;
      } else {
        break;
      }
    }
    return total;
  }

  double mixed(int depth) {
    const double whole = operand(depth);
    // "1 1/8": a number, a space, a fraction.
    const qsizetype before = at_;
    if (at_ < text_.size() && text_[at_].isSpace()) {
      skipSpace();
      if (at_ < text_.size() && text_[at_].isDigit()) {
        const double top = number();
        if (good_ && peek() == u'/') {
          ++at_;
          skipSpace();
          const double bottom = number();
          good_ = good_ && bottom != 0;
          return whole + top / bottom;
        }
        good_ = false;
        return 0;
      }
      at_ = before;
    }
    return whole;
  }

  double operand(int depth) {
    const QChar next = peek();
    if (next == u'-' || next == QChar(0x2212)) {
      ++at_;
      return -operand(depth + 1);
    }
    if (next == u'+') {
      ++at_;
      return operand(depth + 1);
    }
    if (next == u'(') {
      if (depth > 20) {
        good_ = false;
        return 0;
      }
      ++at_;
      const double inside = sum(depth + 1);
      good_ = good_ && peek() == u')';
      ++at_;
      return inside;
    }
    return number();
  }

  double number() {
    QString digits;
    while (at_ < text_.size() && (text_[at_].isDigit() || text_[at_] == u'.' || text_[at_] == u','))
      digits += text_[at_++];
    digits.replace(u',', u'.');
    const std::optional<double> value = parseNumber(digits.toStdString());
    if (!value) good_ = false;
    return value.value_or(0);
  }

  void skipSpace() {
    while (at_ < text_.size() && text_[at_].isSpace()) ++at_;
  }
  QChar peek() {
    skipSpace();
    return at_ < text_.size() ? text_[at_] : QChar();
  }

  const QString text_;
  qsizetype at_ = 0;
  bool good_ = true;
};

}  // namespace

std::optional<double> evaluate(const QString& text) { return Sum(text).value(); }

QString shownNumber(double value, int decimals) {
  QString text = QString::fromStdString(numberText(value, decimals));
  if (text.contains(u'.')) {
    while (text.endsWith(u'0')) text.chop(1);
    if (text.endsWith(u'.')) text.chop(1);
  }
  if (text == QLatin1String("-0")) return QStringLiteral("0");
  return text.replace(u'.', QLocale().decimalPoint());
}

}  // namespace combdraft::controls
