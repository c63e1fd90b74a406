#pragma once
// Lengths as people show and type them: millimetres, centimetres, or inches in
// fractions. Values themselves are always millimetres.
#include <QObject>
#include <QString>
#include <optional>

namespace combdraft::controls {

enum class LengthUnit { Millimetres, Centimetres, Inches };

/// The unit that fields and drawings show lengths in. A preferences page sets
/// it; whoever shows a length listens.
class Units : public QObject {
  Q_OBJECT

 public:
  /// Those of the running program; window's thread only.
  static Units& current();

  LengthUnit length() const { return length_; }
  void setLength(LengthUnit unit);

 Q_SIGNALS:
  void changed();

 private:
  LengthUnit length_ = LengthUnit::Millimetres;
};

/// "mm", "cm", "in"
QString unitWord(LengthUnit unit);

/// Toward which side a length that an inch fraction does not meet is shown.
enum class Rounding { Nearest, Up, Down };

/// A length without its unit: "20.5", "2.05", "13/16". `decimals` counts those
/// in millimetres. Inches come in sixteenths, under a quarter inch in
/// sixty-fourths; a fraction more than 0.1 mm off begins with "≈".
QString lengthNumber(double value_mm, LengthUnit unit, int decimals = 1,
                     Rounding rounding = Rounding::Nearest);
/// With its unit: "20.5 mm".
QString lengthText(double value_mm, LengthUnit unit, int decimals = 1);

/// Millimetres of what was typed: a sum as in evaluate(), meant in `unit` unless
/// it ends in a unit of its own ("30+12", "1 1/8", "3 cm", "1/4\""). Nothing for
/// anything else.
std::optional<double> lengthFrom(const QString& text, LengthUnit unit);

/// What an arrow key adds to a length where one step is `steps_mm` in
/// millimetres: 1 mm, 0.1 cm, 1/16 in.
double lengthStep_mm(LengthUnit unit, double steps_mm);

}  // namespace combdraft::controls
