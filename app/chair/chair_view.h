#pragma once
// The client's screen: today beside a choice, or two choices, in large pictures
// that a finger moves; how it is worn, when and in which light as pictures;
// three plain readings; and "This one", which keeps what was agreed in the plan:
// worn as it is shown, but as planned, on the day and in daylight.
//
// It has no engine of its own: `next` says what to ask the window's for, `set`
// and `setAdvice` take what came. Nothing of the desk is reached from it; it is
// left by a held button, or a held Escape.
#include <QLabel>
#include <QWidget>
#include <array>
#include <functional>

#include "app/chair/agree.h"
#include "app/chair/look_shelf.h"
#include "app/chair/pair_picture.h"
#include "app/chair/plain_readings.h"
#include "app/document/document_controller.h"
#include "app/document/view_state.h"

class QBoxLayout;
class QFrame;
class QGridLayout;
class QPushButton;
class QScrollArea;
class QVBoxLayout;
class QToolButton;

namespace combdraft::chair {

class HoldButton;
class PictureRow;
class TouchSlider;

class ChairView : public QWidget {
  Q_OBJECT

 public:
  ChairView(document::DocumentController& controller, document::ViewState& view, QWidget* parent = nullptr);
  ~ChairView() override;

  /// Today beside the active choice, worn down, on the day, in the desk's light.
  void begin();
  /// Nothing of this plan stays on the screen.
  void end();
  std::optional<LookWish> next();
  void set(const std::shared_ptr<const live::LookResult>& result);
  void setAdvice(const live::AdviceResult& advice);
  /// The look cannot be worked out.
  void setTrouble(const QString& why);
  /// The agreement could not be kept.
  void sayRefused(const QString& why);
  /// Visits, minutes and price of a choice in one line, as typed; "" = nothing
  /// typed, and no place is taken.
  void setCostLine(std::function<QString(const plan::ItemId& choice)> lineOf);
  /// Somebody tried to close it in a hurry.
  void showHowToLeave();

  PairPicture* picture() { return picture_; }
  HoldButton* leaveButton() { return leave_; }
  PictureRow* wornRow() { return worn_; }
  PictureRow* viewRow() { return views_; }
  PictureRow* lightRow() { return lights_; }
  PictureRow* liftRow() { return lifts_; }
  PictureRow* headsRow() { return heads_; }
  PictureRow* facingRow() { return facings_; }
  TouchSlider* part() { return part_; }
  TouchSlider* weeks() { return weeks_; }
  /// Chips of a side: today (not on the right), then the choices.
  const std::vector<QToolButton*>& chips(int side) const { return sides_[static_cast<std::size_t>(side)].chips; }
  QPushButton* thisOne(int side) { return sides_[static_cast<std::size_t>(side)].thisOne; }
  QString readingText(int index) const;
  QString darkText() const { return dark_->text(); }
  QString costText() const { return cost_->isVisibleTo(this) ? cost_->text() : QString(); }
  QString noticeText() const { return notice_->text(); }
  /// What "This one" of a side keeps is worked out, its range too.
  bool knowsWhatIsKept(int side) const;
  const look::LookSettings& settings() const { return settings_; }

 Q_SIGNALS:
  void lookWanted();
  void leaveWanted();

 protected:
  void resizeEvent(QResizeEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void keyReleaseEvent(QKeyEvent* event) override;
  void changeEvent(QEvent* event) override;
  bool event(QEvent* event) override;

 private:
  struct Side {
    plan::ItemId choice;  ///< "" = today
    QWidget* box = nullptr;
    QWidget* chipBox = nullptr;
    std::vector<QToolButton*> chips;
    QPushButton* thisOne = nullptr;
    std::shared_ptr<const live::LookResult> shown;
  };
  struct ReadingBox {
    QFrame* frame = nullptr;
    QLabel *title = nullptr, *value = nullptr, *sentence = nullptr;
  };

  // chair_view_build.cpp
  void build();
  QWidget* buildTop();
  QWidget* buildControls();
  QWidget* buildPanel();
  void buildFoot(QVBoxLayout* column);
  void connectControls();
  void arrange();
  int panelRoom() const;
  void fitFont();

  void fillChips();
  void choose(int side, const plan::ItemId& choice);
  void fillControls();
  void change(const std::function<void(look::LookSettings&)>& what);
  void wantLooks();
  LookWish wishFor(const plan::ItemId& choice, look::Lift lift) const;
  /// What "This one" keeps of a choice, whatever else is looked at.
  LookWish keptWish(const plan::ItemId& choice, look::Lift lift) const;
  LookSpan spanOf(const plan::ItemId& choice, LookWish (ChairView::*wish)(const plan::ItemId&, look::Lift) const) const;
  void noteWhatIsKept();
  void showLooks();
  void fillReadings();
  void fillAgreed();
  void agree(int side);
  void say(const QString& news);
  QString nameOf(const plan::ItemId& choice) const;
  QString typedName(const plan::ItemId& choice) const;  ///< its id where nothing is typed
  /// The side that the readings are about: the right one.
  const plan::ItemId& readChoice() const { return sides_[1].choice; }

  document::DocumentController& controller_;
  document::ViewState& viewState_;
  LookShelf shelf_;
  look::LookSettings settings_;
  head::ViewName view_ = head::ViewName::Front;
  Facing facing_ = Facing::AsInMirror;
  bool begun_ = false;
  std::uint64_t ticket_ = 0;  ///< rises when the plan's look changes
  plan::Plan lookPlan_;       ///< that the ticket stands for
  std::map<plan::ItemId, look::Regrowth> regrowth_;  ///< worn down, by choice
  plan::ItemId askedAdvice_;  ///< "" = none under way
  std::function<QString(const plan::ItemId&)> costLineOf_;
  QString keptNote_;          ///< as it was last said
  double lastShift_mm_ = 25;  ///< where "part moved" goes

  std::array<Side, 2> sides_;
  std::array<ReadingBox, 3> readings_;
  std::shared_ptr<const paint::Scene> scene_;
  PairPicture* picture_ = nullptr;
  HoldButton* leave_ = nullptr;
  PictureRow *worn_ = nullptr, *views_ = nullptr, *lights_ = nullptr, *lifts_ = nullptr, *heads_ = nullptr, *facings_ = nullptr;
  TouchSlider *part_ = nullptr, *weeks_ = nullptr;
  QLabel *partText_ = nullptr, *weeksText_ = nullptr, *dark_ = nullptr, *cost_ = nullptr, *notice_ = nullptr;
  std::optional<bool> isTall_;  ///< how it is arranged now
  QGridLayout* grid_ = nullptr;
  QWidget *top_ = nullptr, *middle_ = nullptr, *controls_ = nullptr, *side_ = nullptr;
  QScrollArea* panelScroll_ = nullptr;
  QBoxLayout *readingsLayout_ = nullptr, *chipsLayout_ = nullptr;
};

}  // namespace combdraft::chair
