#include "app/controls/units.h"

#include <cmath>
#include <utility>

#include "app/controls/number_input.h"

namespace combdraft::controls {
namespace {

constexpr double kInch_mm = 25.4;  // by definition since 1959
// Coarser than this the fraction says that it is not the whole truth.
constexpr double kShownOff_mm = 0.1;
constexpr double kFineUnder_in = 0.25;
constexpr int kParts = 16, kFineParts = 64;

double unit_mm(LengthUnit unit) {
  switch (unit) {
    case LengthUnit::Millimetres: return 1;
    case LengthUnit::Centimetres: return 10;
    case LengthUnit::Inches: return kInch_mm;
  }
  return 1;
}

QString inchNumber(double value_mm, Rounding rounding) {
  const double inches = std::abs(value_mm) / kInch_mm;
  long long parts = inches < kFineUnder_in ? kFineParts : kParts;
  // Up and down mean along the number line, so they change places below zero.
  const bool down = rounding == Rounding::Down ? value_mm >= 0 : value_mm < 0;
  const double exact = inches * double(parts);
  long long count = std::llround(exact);
  if (rounding != Rounding::Nearest && std::abs(exact - double(count)) > 1e-6)
    count = static_cast<long long>(down ? std::floor(exact) : std::ceil(exact));
  const bool off = std::abs(double(count) / double(parts) * kInch_mm - std::abs(value_mm)) > kShownOff_mm;
  const long long whole = count / parts;
  long long top = count % parts;
  while (top != 0 && top % 2 == 0) {
    top /= 2;
    parts /= 2;
  }
  QString text;
  if (whole != 0 || top == 0) text = QString::number(whole);
  if (top != 0) text += (text.isEmpty() ? QString() : QStringLiteral(" ")) + QStringLiteral("%1/%2").arg(top).arg(parts);
  if (value_mm < 0 && count != 0)  // "-(1 1/8)", so that it reads back as one number
    text = whole != 0 && top != 0 ? QStringLiteral("-(%1)").arg(text) : u'-' + text;
  return off && rounding == Rounding::Nearest ? QStringLiteral("\u2248 ") + text : text;
}

}  // namespace

Units& Units::current() {
  static Units units;  // window's thread only
  return units;
}

void Units::setLength(LengthUnit unit) {
  if (unit == length_) return;
  length_ = unit;
  Q_EMIT changed();
}

QString unitWord(LengthUnit unit) {
  switch (unit) {
    case LengthUnit::Millimetres: return QStringLiteral("mm");
    case LengthUnit::Centimetres: return QStringLiteral("cm");
    case LengthUnit::Inches: return QObject::tr("in", "inches");
  }
  return {};
}

QString lengthNumber(double value_mm, LengthUnit unit, int decimals, Rounding rounding) {
  switch (unit) {
    case LengthUnit::Millimetres: return shownNumber(value_mm, decimals);
    case LengthUnit::Centimetres: return shownNumber(value_mm / 10, decimals + 1);
    case LengthUnit::Inches: return inchNumber(value_mm, rounding);
  }
  return {};
}

QString lengthText(double value_mm, LengthUnit unit, int decimals) {
  return lengthNumber(value_mm, unit, decimals) + u' ' + unitWord(unit);
}

std::optional<double> lengthFrom(const QString& text, LengthUnit unit) {
  QString sum = text.trimmed();
  if (sum.startsWith(QChar(0x2248))) sum.remove(0, 1);
  static const std::pair<QString, LengthUnit> kEndings[] = {
      {QStringLiteral("mm"), LengthUnit::Millimetres}, {QStringLiteral("cm"), LengthUnit::Centimetres},
      {QStringLiteral("inches"), LengthUnit::Inches},  {QStringLiteral("inch"), LengthUnit::Inches},
      {QStringLiteral("in"), LengthUnit::Inches},      {QStringLiteral("\""), LengthUnit::Inches},
      {QStringLiteral("\u2033"), LengthUnit::Inches},  {unitWord(LengthUnit::Inches), LengthUnit::Inches}};
  for (const auto& [ending, meant] : kEndings)
    if (sum.endsWith(ending, Qt::CaseInsensitive)) {
      sum.chop(ending.size());
      unit = meant;
      break;
    }
  const std::optional<double> value = evaluate(sum);
  if (!value) return std::nullopt;
  if (unit == LengthUnit::Millimetres) return value;
  const double mm = *value * unit_mm(unit);
  return std::round(mm * 1e6) / 1e6;  // 0.3 cm is 3 mm, not a hair more
}

double lengthStep_mm(LengthUnit unit, double steps_mm) {
  return unit == LengthUnit::Inches ? steps_mm * kInch_mm / kParts : steps_mm;
}

}  // namespace combdraft::controls
