#pragma once
// For a class, on a projector: the pattern grows foil by foil with its reason
// (the note on the piece, or what the printed sheet says) and its step there,
// diagram beside look; a pause before the crown opens; a blank head to draw on;
// a student's plan beside the teacher's with the differences named.
//
// It has no engine of its own (look_shelf.h). Keys: Right, Page down, Space:
// place the next; Left, Page up: take it back; Home, End; B blank sheet; Escape leads one step out.
#include <QLabel>
#include <QWidget>
#include <functional>

#include "app/chair/class_steps.h"
#include "app/chair/look_shelf.h"
#include "app/chair/pair_picture.h"
#include "app/document/document_controller.h"
#include "app/document/view_state.h"

class QGridLayout;
class QPushButton;
class QScrollArea;
class QStackedWidget;

namespace combdraft::chair {

class BlankSheet;
class PictureRow;

class ClassView : public QWidget {
  Q_OBJECT

 public:
  /// Names what differs between the teacher's plan and the student's.
  using Differences = std::function<QStringList(const plan::Plan& teacher, const plan::Plan& student)>;

  /// A step of the printed sheet, as it is numbered there from 1.
  struct SheetStep {
    std::vector<plan::ItemId> pieces;
    QString why;
  };
  using SheetSteps = std::function<std::vector<SheetStep>(const paint::Scene& whole)>;

  ClassView(document::DocumentController& controller, document::ViewState& view, Differences differences, QWidget* parent = nullptr);
  ~ClassView() override;

  /// Where the sheet's steps come from; without, none are named.
  void setSheetSteps(SheetSteps stepsOf) { sheetStepsOf_ = std::move(stepsOf); }
  /// From the first step; a blank sheet.
  void begin();
  void end();
  std::optional<LookWish> next();
  void set(const std::shared_ptr<const live::LookResult>& result);
  void setTrouble(const QString& why);
  /// A plan beside the teacher's. Its title and file may name a person and are not shown.
  void setStudent(const plan::Plan& plan);
  bool hasStudent() const { return student_.has_value(); }
  void closeStudent();

  void goTo(std::size_t index);
  std::size_t step() const { return step_; }
  const std::vector<ClassStep>& steps() const { return steps_; }
  bool isDrawing() const;
  void openSheet();
  void closeSheet();

  PairPicture* picture() { return picture_; }
  BlankSheet* sheet() { return sheet_; }
  PictureRow* viewRow() { return views_; }
  QPushButton *nextButton() { return next_; }
  QPushButton *backButton() { return back_; }
  QPushButton *sheetButton() { return blank_; }
  QPushButton *studentButton() { return studentButton_; }
  QPushButton *leaveButton() { return leave_; }
  QPushButton *wipeButton() { return wipe_; }
  QString titleText() const { return title_->text(); }
  QString whatText() const { return what_->text(); }
  QString reasonText() const { return reason_->text(); }
  QString noticeText() const { return notice_->text(); }

 Q_SIGNALS:
  void lookWanted();
  void leaveWanted();
  /// The window chooses the file.
  void studentWanted();

 protected:
  void keyPressEvent(QKeyEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void build();
  QWidget* buildBar();
  QWidget* buildWords();
  void connectControls();
  void arrange();
  void fitFont();
  void fill();
  void fillWords();
  void fillFoilWords(const ClassStep& step);
  void fillButtons();
  void fillStudentWords();
  void wantLooks();
  void showLooks();
  LookWish wishFor(std::size_t index) const;
  LookWish studentWish() const;
  head::ViewName viewNow() const;
  const plan::Plan& planNow(std::size_t index) const;
  QString choiceText() const;
  QString aimText() const;

  document::DocumentController& controller_;
  document::ViewState& viewState_;
  Differences differences_;
  LookShelf shelf_;
  bool begun_ = false;
  plan::Plan plan_;
  std::uint64_t ticket_ = 0;
  std::vector<ClassStep> steps_;
  SheetSteps sheetStepsOf_;
  std::vector<SheetStep> sheetSteps_;
  std::size_t step_ = 0;
  std::optional<head::ViewName> chosenView_;  ///< nothing: follows the step
  mutable std::map<std::size_t, plan::Plan> plans_;
  struct Student {
    plan::Plan plan;
    QStringList lines;
  };
  std::optional<Student> student_;
  std::shared_ptr<const paint::Scene> scene_, wholeScene_, studentScene_;
  std::shared_ptr<const live::LookResult> shown_;
  std::size_t shownStep_ = 0;  ///< of shown_

  QGridLayout* grid_ = nullptr;
  QStackedWidget* middle_ = nullptr;
  PairPicture* picture_ = nullptr;
  BlankSheet* sheet_ = nullptr;
  PictureRow* views_ = nullptr;
  QScrollArea* scroll_ = nullptr;
  QWidget* bar_ = nullptr;
  QLabel *title_ = nullptr, *what_ = nullptr, *reasonTitle_ = nullptr, *reason_ = nullptr, *notice_ = nullptr;
  QPushButton *next_ = nullptr, *back_ = nullptr, *blank_ = nullptr, *takeBack_ = nullptr, *wipe_ = nullptr, *studentButton_ = nullptr, *leave_ = nullptr;
};

}  // namespace combdraft::chair
