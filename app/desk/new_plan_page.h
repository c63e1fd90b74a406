#pragma once
// Eight questions to the first look, all in view, each one touch.
#include <QWidget>

#include "app/controls/number_field.h"
#include "app/controls/segments.h"
#include "app/desk/new_plan.h"

class QLabel;

namespace combdraft::desk {

class NewPlanPage : public QWidget {
  Q_OBJECT

 public:
  explicit NewPlanPage(QWidget* parent = nullptr);

  /// Takes all answers back.
  void clear();
  NewPlanAnswers answers() const;
  void showProblem(const QString& problem);
  controls::Segments* question(std::size_t index) { return questions_[index]; }

 Q_SIGNALS:
  void finished();
  void cancelled();

 private:
  QWidget* row(int number, const QString& question, QWidget* answer, QWidget* more = nullptr);
  controls::Segments* choices(const QString& name, const QStringList& words);

  std::vector<controls::Segments*> questions_;
  controls::Segments *size_, *curl_, *strand_, *amount_, *length_, *part_, *swirl_;
  controls::NumberField *tape_, *root_, *middle_, *end_;
  QLabel* problem_;
};

}  // namespace combdraft::desk
