#pragma once
// A finish that the user types: level and tone. Empty until both are given; nothing
// is proposed.
#include <QComboBox>
#include <QLabel>
#include <QWidget>
#include <optional>

#include "app/controls/number_field.h"
#include "engine/plan/plan.h"

class QBoxLayout;

namespace combdraft::appointment {

class FinishField : public QWidget {
  Q_OBJECT

 public:
  /// `about` names it for screen readers too: "Front", "Deepen".
  explicit FinishField(const QString& about, QWidget* parent = nullptr);

  /// Nothing while level or tone is missing.
  std::optional<plan::FinishesAt> value() const;
  /// One of the two only: a finish that is meant and cannot be used yet.
  bool isHalf() const;
  void clear();
  /// What is wrong, beneath the field; "" = nothing.
  void setProblem(const QString& text);
  QString problem() const { return problem_->isHidden() ? QString() : problem_->text(); }
  controls::NumberField* level() { return level_; }
  QComboBox* tone() { return tone_; }

 Q_SIGNALS:
  void edited();

 private:
  controls::NumberField* level_;
  QComboBox* tone_;
  QLabel* problem_;
};

/// A number field for what the user types; empty at first.
controls::NumberField* addTyped(QBoxLayout* into, controls::NumberFieldSpec spec, QWidget* parent);

}  // namespace combdraft::appointment
