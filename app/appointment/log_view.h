#pragma once
// The appointment as it goes: large buttons for a gloved hand, what to look at
// first, and the safety line. Every tap is in the plan at once (outside undo) and
// `tapped` tells the window to bring it onto the disk. Nothing here makes a sound,
// stops the hand or asks anything. While it is in view the screen is kept awake.
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QTimer>
#include <QWidget>
#include <array>
#include <functional>
#include <optional>

#include "app/appointment/screen_awake.h"
#include "app/controls/number_field.h"
#include "app/controls/segments.h"
#include "app/document/document_controller.h"
#include "app/paint/place_book.h"
#include "engine/work/appointment_log.h"

class QVBoxLayout;

namespace combdraft::appointment {

class LogView : public QWidget {
  Q_OBJECT

 public:
  using Clock = std::function<work::TapClock()>;
  /// The wall clock, the clock of this computer that cannot be set back and counts on
  /// while it sleeps, and a name for as long as that one counts: until the computer is started
  /// anew, where the system tells.
  static Clock systemClock();

  explicit LogView(document::DocumentController& controller, Clock clock = systemClock(), QWidget* parent = nullptr);

  void fill();
  /// The last tap that stands counts no more; nothing to take back changes nothing.
  void takeBackLast();
  /// The tap that was taken back last stands again, unless one came since.
  void restoreLast();
  bool canRestore() const { return !taken_.empty(); }
  bool canTakeBack() const { return takeBack_->isEnabled(); }
  /// In the place of the session's own bus; for tests.
  void setAwake(ScreenAwake* awake);
  QPushButton* button(work::Tap tap) { return buttons_[static_cast<std::size_t>(tap)]; }
  QPushButton* takeBack() { return takeBack_; }
  QPushButton* takeBackOf() { return takeBackOf_; }
  QPushButton* beginAnew() { return beginAnew_; }
  QListWidget* pieces() { return pieces_; }
  controls::Segments* scope() { return scope_; }
  controls::NumberField* level() { return level_; }
  QLineEdit* who() { return who_; }
  QString firstText() const { return first_->text(); }
  QString lastText() const { return last_->text(); }
  /// The last tap is in the plan and not on the disk: said above the pieces until it is.
  void setUnwritten(bool isUnwritten);
  QString unwrittenText() const { return unwritten_->isHidden() ? QString() : unwritten_->text(); }
  QString doubtText() const { return doubt_->isHidden() ? QString() : doubt_->text(); }
  QString troubleText() const { return trouble_->isHidden() ? QString() : trouble_->text(); }
  QString safetyText() const { return safety_->text(); }
  QString stateText() const { return state_->isHidden() ? QString() : state_->text(); }
  QString offerText() const { return offer_->isHidden() ? QString() : offer_->text(); }

 Q_SIGNALS:
  /// The log grew or a tap was taken back.
  void tapped();

 protected:
  void showEvent(QShowEvent* event) override;
  void hideEvent(QHideEvent* event) override;

 private:
  QWidget* buildButtons();
  QWidget* buildSide();
  void fillPieces(const work::AppointmentLog& log, double now_s);
  void fillSide(const work::AppointmentLog& log, double now_s);
  void sayDoubt(const work::AppointmentLog& log);
  void tick();
  std::optional<work::AppointmentLog> logNow();
  std::vector<plan::ItemId> chosen(const work::AppointmentLog& log, work::Tap tap) const;
  void tap(work::Tap tap);
  void beginNewLog();
  bool isTouchedTwice(std::optional<work::Tap> tap);
  /// Whether it is in the plan now.
  bool keep(const work::AppointmentLog& log);
  void say(const QString& text);
  void offerNewLog(const work::AppointmentLog& log);
  void goOn(const work::AppointmentLog& log);
  void chooseNext();
  /// "" = none.
  plan::ItemId chosenId() const;
  void takeBack(const plan::ItemId& piece);
  void takeBackOfPiece();
  void fillTakeBackOf();
  void forgetPlan();
  void forgetSeen();

  document::DocumentController& controller_;
  const Clock clock_;
  QTimer timer_;
  std::array<QPushButton*, 5> buttons_{};
  QPushButton *takeBack_, *takeBackOf_, *beginAnew_;
  ScreenAwake* awake_ = nullptr;
  paint::PlaceBook places_;
  std::optional<std::pair<std::optional<work::Tap>, work::TapClock>> touched_;
  std::vector<std::size_t> taken_;  ///< places of taps taken back since the last one, for bringing back
  std::string own_;         ///< the log as this view last wrote it
  QListWidget* pieces_;
  controls::Segments* scope_;
  controls::NumberField* level_;
  QComboBox *pigment_, *bowl_;
  QLineEdit* who_;
  QLabel *safety_, *trouble_, *doubt_, *unwritten_, *state_, *offer_, *awakeText_, *first_, *bowls_, *last_, *odd_;
};

}  // namespace combdraft::appointment
