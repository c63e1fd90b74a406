#pragma once
// A number with its label, unit and allowed range, typed by a person.
#include <QLabel>
#include <QLineEdit>
#include <QWidget>
#include <optional>

namespace combdraft::controls {

struct NumberFieldSpec {
  QString label;
  QString unit;          ///< "mm", "%", ""
  double low = 0, high = 100;
  int decimals = 1;
  double step = 1;       ///< arrow keys; Shift ten times, Alt a tenth
  double shownPerValue = 1;  ///< 100 shows a share as per cent
  bool mayBeEmpty = false;   ///< an empty field means "not set"
  QString emptyText;     ///< shown in an empty field: "follows", "through the ends"
  QString tip;           ///< one plain phrase
  enum class Face { WithLabel, BoxOnly } face = Face::WithLabel;  ///< BoxOnly: for tables
};

class NumberField : public QWidget {
  Q_OBJECT

 public:
  explicit NumberField(NumberFieldSpec spec, QWidget* parent = nullptr);

  /// Shows a value (no signal); nothing = empty.
  void setValue(const std::optional<double>& value);
  /// Shows that several things differ here; typing sets them all.
  void setMixed();
  std::optional<double> value() const { return value_; }
  bool isMixed() const { return mixed_; }
  const NumberFieldSpec& spec() const { return spec_; }
  QLineEdit* edit() { return edit_; }
  /// "0.2 to 40 mm"
  QString rangeText() const;

 Q_SIGNALS:
  /// The user gave a new value inside the range; nothing = emptied. `stepping`
  /// = by arrow keys, one of a run that belongs together.
  void edited(std::optional<double> value, bool stepping);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void commit();
  void stepBy(double steps);
  void show(const QString& problem);
  void refill();

  const NumberFieldSpec spec_;
  QLineEdit* edit_;
  QLabel* problem_;
  std::optional<double> value_;
  bool mixed_ = false;
};

}  // namespace combdraft::controls
