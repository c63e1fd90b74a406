#pragma once
// One finding opened: where it is, how its line is drawn and what might be
// done. A remedy is tried on the plan as a whole, with the look and all
// readings following, and then kept or dropped.
#include <QFrame>

#include "app/document/document_controller.h"
#include "app/document/view_state.h"
#include "app/live/look_result.h"

class QLabel;
class QPushButton;
class QVBoxLayout;

namespace combdraft::desk {

class FindingDetail : public QFrame {
  Q_OBJECT

 public:
  FindingDetail(document::DocumentController& controller, document::ViewState& view, QWidget* parent = nullptr);

  /// Shows a finding of an advice; nothing shows nothing.
  void show(std::shared_ptr<const live::AdviceResult> advice, std::optional<std::size_t> finding);
  /// The newest look: while something is tried, its readings are compared with
  /// those before.
  void setLook(const live::LookResult& look);
  /// Advice of the plan as tried.
  void setTriedAdvice(const live::AdviceResult& advice);
  bool isTrying() const { return trying_.has_value(); }

  // for tests
  QList<QPushButton*> tryButtons() const { return tries_; }
  QPushButton* keepButton() const { return keep_; }
  QPushButton* dropButton() const { return drop_; }
  QString effectText() const;

 Q_SIGNALS:
  /// Trying began or ended.
  void tryingChanged();
  /// The line that the finding crossed is wanted on its card.
  void assumptionWanted(const QString& name);

 protected:
  void keyPressEvent(QKeyEvent* event) override;

 private:
  void build();
  void tryRemedy(std::size_t remedy);
  void keep();
  void drop();
  void showEffect();
  void documentChanged(const document::DocumentChange& change);

  document::DocumentController& controller_;
  document::ViewState& view_;
  std::shared_ptr<const live::AdviceResult> advice_;
  std::optional<std::size_t> finding_, trying_;
  std::shared_ptr<const look::Readings> lastReadings_, before_, after_;
  look::LookSettings lastSettings_;      ///< of `lastReadings_`: only the same are compared
  std::optional<QString> triedFinding_;  ///< what the tried plan's own advice says
  QVBoxLayout* column_ = nullptr;
  QWidget* content_ = nullptr;
  QList<QPushButton*> tries_;
  QPushButton *keep_ = nullptr, *drop_ = nullptr;
  QLabel* effect_ = nullptr;
};

}  // namespace combdraft::desk
