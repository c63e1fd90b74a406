#pragma once
// A number with its label, unit and allowed range, typed by a person. Lengths
// follow the unit in force (units.h). What was typed and refused stays in the
// field, with the reason, until it is put right or dropped with Escape.
#include <QLabel>
#include <QLineEdit>
#include <QWidget>
#include <functional>
#include <optional>

#include "app/controls/units.h"

namespace combdraft::controls {

struct NumberFieldSpec {
  QString label;
  QString unit;          ///< "mm" = a length, shown in the unit in force; "%", ""
  double low = 0, high = 100;
  int decimals = 1;
  double step = 1;       ///< arrow keys; Shift ten times, Alt a tenth (inches: 8, a quarter)
  double shownPerValue = 1;  ///< 100 shows a share as per cent
  bool mayBeEmpty = false;   ///< an empty field means "not set"
  QString emptyText;     ///< shown in an empty field: "follows", "through the ends"
  QString tip;           ///< one plain phrase
  enum class Face { WithLabel, BoxOnly } face = Face::WithLabel;  ///< BoxOnly: for tables
};

class NumberField : public QWidget {
  Q_OBJECT

 public:
  /// What is wrong with a value beside its range; "" = nothing.
  using Check = std::function<QString(const std::optional<double>&)>;

  explicit NumberField(NumberFieldSpec spec, QWidget* parent = nullptr);

  /// Shows a value (no signal); nothing = empty. Typing under way stays.
  void setValue(const std::optional<double>& value);
  /// Shows that several things differ here; typing sets them all.
  void setMixed();
  /// What an empty field shows.
  void setEmptyText(const QString& text);
  /// Where the value stands from, for tooltip and screen reader.
  void setProvenance(const QString& text);
  void setCheck(Check check) { check_ = std::move(check); }
  /// Drops what was typed and not taken: the field now is about something else.
  void abandonTyping();

  std::optional<double> value() const { return value_; }
  bool isMixed() const { return mixed_; }
  const NumberFieldSpec& spec() const { return spec_; }
  QLineEdit* edit() { return edit_; }
  /// "0.2 to 40 mm"
  QString rangeText() const;
  /// Why the typing was refused; "" = it was not.
  QString problem() const { return problemText_; }

 Q_SIGNALS:
  /// The user gave a new value inside the range; nothing = emptied. `stepping`
  /// = by arrow keys, one of a run that belongs together.
  void edited(std::optional<double> value, bool stepping);
  /// For tables, where a box has no room to say it.
  void problemChanged(const QString& problem);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  bool isLength() const;
  QString shownText(double value) const;
  void commit();
  void accept(const std::optional<double>& value, bool stepping);
  void stepBy(double steps);
  void showProblem(const QString& problem);
  void refill();
  void describe();
  void followUnit();

  NumberFieldSpec spec_;
  Check check_;
  QLineEdit* edit_;
  QLabel *unit_ = nullptr, *problem_;
  std::optional<double> value_;
  LengthUnit shownUnit_ = LengthUnit::Millimetres;
  bool mixed_ = false;
  QString provenance_, problemText_;
};

}  // namespace combdraft::controls
