#include "app/chair/class_view.h"

#include <QGridLayout>
#include <QKeyEvent>
#include <QPushButton>
#include <QScrollArea>
#include <QStackedWidget>
#include <algorithm>
#include <cmath>

#include "app/chair/blank_sheet.h"
#include "app/chair/plain_readings.h"
#include "app/chair/touch_controls.h"
#include "app/controls/number_input.h"
#include "app/paint/describe_piece.h"
#include "app/paint/look_layer.h"

namespace combdraft::chair {
namespace {

constexpr std::uint64_t kStepsInTicket = 1u << 14, kStudentStep = kStepsInTicket - 1;
constexpr double kSame_L = 1;  // no eye is promised less [own]

// What is compared: the choice that is shown, whatever the plan is called.
plan::Plan activeAlone(const plan::Plan& plan) {
  plan::Plan alone = plan::frozenChoice(plan, plan.info().activeChoice).value_or(plan);
  plan::PlanInfo info = alone.info();
  info.title.clear();
  alone.put(plan::kPlanId, std::move(info));
  return alone;
}

}  // namespace

ClassView::ClassView(document::DocumentController& controller, document::ViewState& view, Differences differences, QWidget* parent)
    : QWidget(parent), controller_(controller), viewState_(view), differences_(std::move(differences)), plan_(controller.document()) {
  setObjectName(QStringLiteral("page"));
  setAccessibleName(tr("For a class"));
  build();
}

ClassView::~ClassView() = default;

void ClassView::begin() {
  begun_ = true;
  plan_ = controller_.document();
  ++ticket_;
  plans_.clear();
  steps_ = classSteps(plan_);
  step_ = 0;
  chosenView_.reset();
  student_.reset();
  shown_.reset();
  wholeScene_ = std::make_shared<const paint::Scene>(plan_, plan::ItemId(), nullptr);
  scene_ = wholeScene_;
  sheetSteps_ = sheetStepsOf_ ? sheetStepsOf_(*wholeScene_) : std::vector<SheetStep>();
  sheet_->forget();
  picture_->setHeads(Heads::Two);
  picture_->setDivider(0.5);
  notice_->clear();
  fitFont();
  middle_->setCurrentWidget(picture_);
  fill();
  next_->setFocus();
}

void ClassView::end() {
  begun_ = false;
  shelf_.clear();
  plans_.clear();
  student_.reset();
  shown_.reset();
  scene_.reset();
  studentScene_.reset();
  wholeScene_.reset();
  sheet_->forget();
  sheet_->show(nullptr, head::ViewName::Back);
  for (const int side : {0, 1}) picture_->setPane(side, {});
}

void ClassView::goTo(std::size_t index) {
  step_ = std::min(index, steps_.size() - 1);
  fill();
}

bool ClassView::isDrawing() const { return middle_->currentWidget() == sheet_; }

void ClassView::openSheet() {
  middle_->setCurrentWidget(sheet_);
  sheet_->show(wholeScene_, viewNow());
  sheet_->setFocus();
  fill();
}

void ClassView::closeSheet() {
  middle_->setCurrentWidget(picture_);
  fill();
  next_->setFocus();
}

void ClassView::setStudent(const plan::Plan& plan) {
  if (!begun_) return;
  const plan::Plan mine = activeAlone(plan_), theirs = activeAlone(plan);
  student_ = Student{plan, differences_ ? differences_(mine, theirs) : QStringList()};
  studentScene_ = std::make_shared<const paint::Scene>(plan, plan::ItemId(), nullptr);
  ++ticket_;
  middle_->setCurrentWidget(picture_);
  notice_->clear();
  fill();
}

void ClassView::closeStudent() {
  student_.reset();
  studentScene_.reset();
  fill();
  next_->setFocus();
}

head::ViewName ClassView::viewNow() const {
  if (chosenView_) return *chosenView_;
  return student_ ? head::ViewName::Back : viewOf(plan_, steps_[step_]);
}

const plan::Plan& ClassView::planNow(std::size_t index) const {
  const auto known = plans_.find(index);
  if (known != plans_.end()) return known->second;
  if (plans_.size() > 12) plans_.clear();
  return plans_.emplace(index, planAfter(plan_, steps_, index)).first->second;
}

LookWish ClassView::wishFor(std::size_t index) const {
  const std::size_t shown = student_ ? steps_.size() - 1 : index;
  LookWish wish{planNow(shown), ticket_ * kStepsInTicket + std::min<std::uint64_t>(shown, kStudentStep - 1), {}, picture_->wanted()};
  wish.settings.light = viewState_.lookSettings().light;
  wish.settings.distance_m = viewState_.lookSettings().distance_m;
  if (steps_[shown].kind == ClassStep::Kind::Today) wish.settings.subject = look::Subject::Today;
  if (steps_[shown].kind == ClassStep::Kind::Opened && !student_) wish.settings.worn.way = hair::WornWay::CrownOpened;
  if (!student_ && !chosenView_) wish.picture.view = viewOf(plan_, steps_[shown]);
  return wish;
}

LookWish ClassView::studentWish() const {
  LookWish wish = wishFor(step_);
  wish.plan = student_->plan;
  wish.ticket = ticket_ * kStepsInTicket + kStudentStep;
  wish.settings.subject = look::Subject::Planned;
  return wish;
}

void ClassView::wantLooks() {
  if (!begun_) return;
  std::vector<LookWish> wishes{wishFor(step_)};
  std::size_t shown = 1;
  if (student_) {
    wishes.push_back(studentWish());
    shown = 2;
  } else {
    if (step_ + 1 < steps_.size()) wishes.push_back(wishFor(step_ + 1));
    if (step_ > 0) wishes.push_back(wishFor(step_ - 1));
  }
  shelf_.want(std::move(wishes), shown);
  showLooks();
  Q_EMIT lookWanted();
}

std::optional<LookWish> ClassView::next() { return begun_ ? shelf_.next() : std::nullopt; }

void ClassView::set(const std::shared_ptr<const live::LookResult>& result) {
  if (!begun_) return;
  shelf_.set(result);
  showLooks();
}

void ClassView::showLooks() {
  if (!begun_) return;
  const LookWish wish = wishFor(step_);
  const auto stateWords = [this](const LookWish& one) {
    switch (shelf_.state(one)) {
      case LookShelf::State::Known: return QString();
      case LookShelf::State::Estimate: return tr("\u25D4 first estimate");
      case LookShelf::State::Missing: return tr("\u25D4 being worked out");
    }
    return QString();
  };
  // While a look is worked out the one before it stays; never one from later in the lesson.
  if (const auto found = shelf_.find(wish); found && !student_) shown_ = found, shownStep_ = step_;
  else if (shown_ && (shownStep_ > step_ || !paint::pictureOf(shown_->frame, viewNow()))) shown_.reset();
  if (student_) {
    const LookWish theirs = studentWish();
    const auto mine = shelf_.find(wish), other = shelf_.find(theirs);
    picture_->setPane(0, {Pane::Kind::Look, mine ? wholeScene_ : nullptr, mine, tr("The teacher’s plan"), stateWords(wish), {}});
    picture_->setPane(1, {Pane::Kind::Look, other ? studentScene_ : nullptr, other, tr("The student’s plan"), stateWords(theirs), {}});
    fillStudentWords();
    return;
  }
  const ClassStep& step = steps_[step_];
  const QString title = step.kind == ClassStep::Kind::Today     ? tr("Today")
                        : step.kind == ClassStep::Kind::Opened ? tr("The crown opened")
                        : step.kind == ClassStep::Kind::Predict ? tr("All foils, worn down")
                                                                : tr("The look so far");
  picture_->setPane(0, {Pane::Kind::Diagram, scene_, nullptr, tr("The placement"), {}, step.pieces});
  picture_->setPane(1, {Pane::Kind::Look, shown_ ? scene_ : nullptr, shown_, title, stateWords(wish), {}});
}

void ClassView::fill() {
  if (!begun_) return;
  scene_ = std::make_shared<const paint::Scene>(planNow(step_), plan::ItemId(), scene_.get());
  picture_->setView(viewNow(), Facing::AsOthersSee);
  static constexpr std::array kViews{head::ViewName::Front, head::ViewName::Left, head::ViewName::Right,
                                     head::ViewName::Back, head::ViewName::Top, head::ViewName::Crown};
  views_->setCurrent(chosenView_ ? static_cast<int>(std::find(kViews.begin(), kViews.end(), *chosenView_) - kViews.begin()) + 1 : 0);
  if (isDrawing() && sheet_->view() != viewNow()) sheet_->show(wholeScene_, viewNow());
  fillButtons();
  blank_->setText(isDrawing() ? tr("Close the sheet") : tr("Blank sheet"));
  studentButton_->setText(student_ ? tr("Back to the steps") : tr("Student’s plan…"));
  studentButton_->setToolTip(student_ ? QString() : tr("Opens a list of files that everybody sees: keep students’ plans in a folder of their own"));
  takeBack_->setVisible(isDrawing());
  wipe_->setVisible(isDrawing());
  takeBack_->setEnabled(!sheet_->strokes().empty());
  wipe_->setEnabled(!sheet_->strokes().empty());
  student_ ? fillStudentWords() : fillWords();
  wantLooks();
}

// Named for what they do to the head.
void ClassView::fillButtons() {
  using Kind = ClassStep::Kind;
  const bool isLast = step_ + 1 >= steps_.size();
  const Kind now = steps_[step_].kind, after = isLast ? now : steps_[step_ + 1].kind;
  next_->setText(isLast || after == Kind::Foil ? tr("Place the next") : after == Kind::Opened ? tr("Open the crown") : tr("All are placed"));
  back_->setText(now == Kind::Opened ? tr("Close the crown") : now == Kind::Predict ? tr("Back to the last") : tr("Take it back"));
  for (QPushButton* button : {back_, next_}) button->setAccessibleName(button->text());
  back_->setEnabled(!student_ && step_ > 0);
  next_->setEnabled(!student_ && !isLast);
}

QString ClassView::choiceText() const {
  const auto* choice = plan_.find<plan::Choice>(plan_.info().activeChoice);
  return choice ? tr("Choice %1").arg(QString::fromStdString(choice->name)) : QString();
}

// Never the plan's notes: they may be about a person, and this is a wall.
QString ClassView::aimText() const {
  const auto* handout = plan_.find<plan::Handout>(plan::kHandoutId);
  return handout ? QString::fromStdString(handout->aim) : QString();
}

void ClassView::fillWords() {
  const ClassStep& step = steps_[step_];
  const FoilCount count = foilCount(steps_, step_);
  reasonTitle_->setText(tr("Why"));
  switch (step.kind) {
    case ClassStep::Kind::Today:
      title_->setText(count.all == 0 ? tr("Today, nothing planned yet") : tr("Today"));
      what_->setText(count.all == 0 ? tr("This choice has no pieces. Draw or lay out some at the desk, then come back.")
                                    : tr("%1, pieces: %2. The hair as it came in.").arg(choiceText()).arg(plan_.pieces().size()));
      reason_->setText(aimText());
      break;
    case ClassStep::Kind::Foil:
      fillFoilWords(step);
      break;
    case ClassStep::Kind::Predict:
      title_->setText(tr("Before the crown opens"));
      what_->setText(tr("What will show where the hair opens at the crown? Say it or draw it on the blank sheet. The next step opens the crown."));
      reasonTitle_->setText(tr("Look for"));
      reason_->setText(tr("A block of light, a block of dark, or light and dark in turn."));
      break;
    case ClassStep::Kind::Opened:
      title_->setText(tr("The crown opened"));
      what_->setText(tr("The hand spreads the hair at the swirl. Compare it with what was said and drawn; the sheet is kept."));
      reasonTitle_->setText(tr("Talk about"));
      reason_->setText(tr("What shows as expected, what does not, and which foil makes it."));
      break;
  }
  reasonTitle_->setVisible(!reason_->text().isEmpty());
  picture_->setLine(classLine());
  QWidget::setAccessibleDescription(title_->text() + QStringLiteral(". ") + what_->text() + QStringLiteral(" ") + reason_->text());
}

// "Piece 7 (step 4 on the sheet)": the sheet joins pieces that are worked the same way.
void ClassView::fillFoilWords(const ClassStep& step) {
  QStringList numbers, on, what, notes, made;
  QString name;
  for (const plan::ItemId& id : step.pieces) {
    const paint::PieceShape* shape = scene_->find(id);
    if (!shape) continue;
    name = paint::pieceName(*shape->piece);
    numbers << paint::pieceNumber(*shape->piece);
    what << paint::describePiece(*shape->piece, shape->place);
    const QString note = QString::fromStdString(shape->piece->note).trimmed();
    if (!note.isEmpty() && !notes.contains(note)) notes << note;
    for (std::size_t i = 0; i < sheetSteps_.size(); ++i) {
      const SheetStep& one = sheetSteps_[i];
      if (std::find(one.pieces.begin(), one.pieces.end(), id) == one.pieces.end()) continue;
      if (const QString number = QString::number(i + 1); !on.contains(number)) on << number;
      if (!one.why.isEmpty() && !made.contains(one.why)) made << one.why;
    }
  }
  if (numbers.size() > 1) name = tr("Pieces %1").arg(numbers.join(QStringLiteral(", ")));
  title_->setText(on.isEmpty()     ? name
                  : on.size() == 1 ? tr("%1 (step %2 on the sheet)").arg(name, on[0])
                                   : tr("%1 (steps %2 on the sheet)").arg(name, on.join(QStringLiteral(", "))));
  what_->setText(what.join(u'\n'));
  reason_->setText((notes.isEmpty() ? made : notes).join(u'\n'));
}

// What differs, in words, and how much lighter or darker it comes out.
void ClassView::fillStudentWords() {
  title_->setText(tr("Two plans side by side"));
  QStringList what;
  const auto mine = shelf_.find(wishFor(step_)), theirs = shelf_.find(studentWish());
  if (mine && theirs && mine->frame.readings && theirs->frame.readings) {
    const look::Reading &a = mine->frame.readings->whole, &b = theirs->frame.readings->whole;
    const QString by = controls::shownNumber(std::abs(b.level - a.level), 1);
    what << (std::abs(b.lightness - a.lightness) < kSame_L ? tr("On the whole both look as light.")
             : b.lightness > a.lightness                   ? tr("On the whole the student’s looks %1 levels lighter.").arg(by)
                                                           : tr("On the whole the student’s looks %1 levels darker.").arg(by));
    what << tr("Light hair: %1 % in the teacher’s, %2 % in the student’s.")
                .arg(controls::shownNumber(100 * a.light_share, 0), controls::shownNumber(100 * b.light_share, 0));
  } else {
    what << tr("The looks are being worked out.");
  }
  what << tr("Pieces: %1 in the teacher’s, %2 in the student’s.").arg(plan_.pieces().size()).arg(student_->plan.pieces().size());
  what_->setText(what.join(u'\n'));
  reasonTitle_->setText(tr("What differs, from the teacher’s to the student’s"));
  reason_->setText(student_->lines.isEmpty() ? tr("Nothing: both plans say the same.") : student_->lines.join(u'\n'));
  reasonTitle_->show();
}

void ClassView::setTrouble(const QString& why) { notice_->setText(tr("\u26A0 %1").arg(why)); }

void ClassView::keyPressEvent(QKeyEvent* event) {
  switch (event->key()) {
    case Qt::Key_Right:
    case Qt::Key_PageDown: return next_->click();
    case Qt::Key_Left:
    case Qt::Key_PageUp: return back_->click();
    case Qt::Key_Home: return student_ ? void() : goTo(0);
    case Qt::Key_End: return student_ ? void() : goTo(steps_.size() - 1);
    case Qt::Key_B: return blank_->click();
    case Qt::Key_Escape:
      if (isDrawing()) return closeSheet();
      if (student_) return closeStudent();
      return Q_EMIT leaveWanted();
    default: QWidget::keyPressEvent(event);
  }
}

}  // namespace combdraft::chair
