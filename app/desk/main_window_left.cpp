// The window's part for plans that were left behind: offered, compared, opened,
// kept, discarded and put back.
#include <QFileDialog>
#include <QFileInfo>

#include "app/desk/error_text.h"
#include "app/desk/left_compare_page.h"
#include "app/desk/left_plans_box.h"
#include "app/desk/main_window.h"
#include "app/desk/message_bar.h"
#include "app/desk/message_topics.h"
#include "app/desk/start_page.h"
#include "app/paint/work_words.h"
#include "engine/work/log_text.h"

namespace combdraft::desk {
namespace {

const QString kPaused = QStringLiteral("paused");

// What the plan's log says is still under product: that comes before all else. Reading it
// may be what ended the program, and is left alone then.
std::optional<work::OnHair> hairOf(const store::LeftPlan& left) {
  if (left.endedWhileDrawn) return std::nullopt;
  const store::DrawingMark mark(left);
  const Result<plan::Plan> plan = store::peekLeftPlan(left);
  return plan ? work::onHair(*plan) : std::nullopt;
}

}  // namespace

void MainWindow::connectLeft() {
  LeftPlansBox& box = start_->leftPlans();
  connect(&box, &LeftPlansBox::openWanted, this, [this](const store::LeftPlan& left) { wantRecovered(left, Look::Now); });
  connect(&box, &LeftPlansBox::openSafelyWanted, this, [this](const store::LeftPlan& left) { wantRecovered(left, Look::WhenAsked); });
  connect(&box, &LeftPlansBox::compareWanted, this, [this](const store::LeftPlan& left) {
    messages_->clear(kLeft);
    leftCompare_->show(left);
    turnTo(Page::LeftCompare);
  });
  connect(&box, &LeftPlansBox::keepWanted, this, [this](const store::LeftPlan& left) {
    messages_->clear(kLeft);
    messages_->say({Message::Kind::News, tr("“%1” stays. The start page offers it until you open or discard it.").arg(leftTitle(left)), {}, kLeft});
  });
  connect(&box, &LeftPlansBox::discardWanted, this, &MainWindow::discardLeft);
  connect(&box, &LeftPlansBox::copyWanted, this, &MainWindow::copyLeft);
  connect(leftCompare_, &LeftComparePage::done, this, [this] { showStart(); });
  connect(leftCompare_, &LeftComparePage::recoveredWanted, this, [this](const store::LeftPlan& left) {
    wantRecovered(left, opensSafely(left) ? Look::WhenAsked : Look::Now);
  });
  connect(leftCompare_, &LeftComparePage::savedWanted, this, &MainWindow::openPath);
}

void MainWindow::offerRecovery() {
  const std::vector<store::LeftPlan> left = store::findLeftPlans(recoveryRoot_);
  if (left.empty()) return;
  const store::LeftPlan first = left.front();
  std::vector<MessageChoice> choices{{left.size() == 1 ? tr("Show it") : tr("Show them"), [this] { showStart(); }}, {tr("Later"), {}}};
  if (left.size() == 1) {
    const Look look = opensSafely(first) ? Look::WhenAsked : Look::Now;
    choices.insert(choices.begin(), {look == Look::Now ? tr("Open recovered") : tr("Open without the look"),
                                     [this, first, look] { wantRecovered(first, look); }});
  }
  QString text = left.size() == 1 ? tr("“%1” has unsaved changes from last time.").arg(leftTitle(first))
                                  : tr("%1 plans have unsaved changes from last time.").arg(left.size());
  auto kind = Message::Kind::News;
  for (const store::LeftPlan& one : left)
    if (const auto on = hairOf(one)) {
      kind = Message::Kind::Caution;
      text += u' ' + (left.size() == 1 ? paint::onHairText(*on) : tr("“%1”: %2").arg(leftTitle(one), paint::onHairText(*on)));
    }
  messages_->say({kind, text, std::move(choices), kLeft});
}

void MainWindow::wantRecovered(const store::LeftPlan& left, Look look) {
  askBeforeLeaving(tr("Save them before opening the other plan?"), [this, left, look] { openRecovered(left, look); });
}

void MainWindow::openRecovered(const store::LeftPlan& left, Look look) {
  Result<store::ReadLeftPlan> read = store::readLeftPlan(left);
  if (!read) {
    tellError(errorText(read.error()));
    return showStart();  // it may stand there differently now
  }
  store::ReadLeftPlan plan = std::move(read).value();
  messages_->clear(kLeft);
  messages_->clear(kInUse);
  messages_->clear(kOnDisk);
  if (places_.session) places_.session->thaw();
  lookPaused_ = pauseNext_ = look == Look::WhenAsked;  // also before the plan is there
  turnTo(Page::Work);
  controller_.replaceModified(std::move(plan.plan), std::move(plan.file));
  // A new snapshot that counts on first, and on the disk; then the old one may go.
  attempts_ = plan.attempts;
  recovery_.setAttempts(attempts_, look == Look::Now ? store::Recovery::Forget::OnceStood : store::Recovery::Forget::Never);
  if (recovery_.writeNow() == store::Recovery::Written::Yes) store::removeLeftPlan(left);
  // It is unsaved work of this window, whoever has the file open: saving asks.
  planLock_.giveBack();
  if (!left.originalPath.isEmpty()) (void)planLock_.take(left.originalPath);
  if (look == Look::WhenAsked) {
    view_.setLayer(document::Layer::Diagram);
    sayPaused();
  }
  const QString recovered = tr("Recovered as it was. It is not saved in its file yet.");
  if (const auto on = work::onHair(controller_.document()))
    messages_->say({Message::Kind::Caution, recovered + u' ' + paint::onHairText(*on),
                    {{tr("Open the log"), [this] { actions_.action(QStringLiteral("appointment.log"))->trigger(); }}, {tr("Stay"), {}}}, QStringLiteral("file")});
  else
    messages_->say({Message::Kind::News, recovered, {}, QStringLiteral("file")});
}

void MainWindow::sayPaused() {
  messages_->say({Message::Kind::News,
                  tr("Opened without the look, since the program ended with it before. The diagram can be changed and saved as always."),
                  {{tr("Work out the look"), [this] { resumeLook(); }}, {tr("Not now"), {}}},
                  kPaused});
  actions_.refresh();
}

void MainWindow::resumeLook() {
  // From here on it may end the program once more: that counts.
  recovery_.setAttempts(attempts_);
  (void)recovery_.writeNow();
  lookPaused_ = false;
  messages_->clear(kPaused);
  view_.setLayer(document::Layer::Both);
  requestLook();
  actions_.refresh();
}

void MainWindow::discardLeft(const store::LeftPlan& left) {
  const auto on = hairOf(left);
  if (!on) return discardLeftNow(left);
  messages_->say({Message::Kind::Caution, tr("“%1”: %2").arg(leftTitle(left), paint::onHairText(*on)),
                  {{tr("Open recovered"), [this, left] { wantRecovered(left, opensSafely(left) ? Look::WhenAsked : Look::Now); }},
                   {tr("Discard it all the same"), [this, left] { discardLeftNow(left); }},
                   {tr("Keep for later"), {}}},
                  kLeft});
}

void MainWindow::discardLeftNow(const store::LeftPlan& left) {
  const Result<void> done = discarded_.discard(left);
  showStart();
  messages_->clear(kLeft);
  if (!done) return tellError(errorText(done.error()));
  messages_->say({Message::Kind::News, tr("“%1” was discarded. It can be put back until this window is closed.").arg(leftTitle(left)),
                  {{tr("Put back"),
                    [this, left] {
                      if (!discarded_.putBack(left)) tellError(tr("“%1” could not be put back.").arg(leftTitle(left)));
                      showStart();
                    }},
                   {tr("Close"), {}}},
                  QStringLiteral("discarded ") + left.folder});  // of its own: each waits for its answer
}

void MainWindow::copyLeft(const store::LeftPlan& left) {
  auto* dialog = new QFileDialog(this, tr("Save a copy of the damaged file"), settings_.lastFolder(), tr("All files (*)"));
  dialog->setObjectName(QStringLiteral("copyLeft"));
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  dialog->setAcceptMode(QFileDialog::AcceptSave);
  dialog->selectFile(QStringLiteral("unreadable-plan.json"));
  connect(dialog, &QFileDialog::fileSelected, this, [this, left](const QString& path) {
    const Result<void> copied = store::copyLeftPlan(left, path);
    if (!copied) return tellError(errorText(copied.error()));
    messages_->say({Message::Kind::News, tr("The copy is in %1; the damaged file is still here too.").arg(QFileInfo(path).fileName()), {}, kLeft});
  });
  dialog->open();
}

}  // namespace combdraft::desk
