// The window's part that shows a plan to others: the client's screen and the
// class's. While one of them is shown it fills the screen, no command of the
// desk can be used, and nothing of another plan is in sight.
#include <QApplication>
#include <QFileDialog>
#include <QFileInfo>
#include <QMenuBar>
#include <QStackedWidget>
#include <QToolBar>

#include "app/chair/chair_view.h"
#include "app/chair/class_view.h"
#include "app/cards/consultation_card.h"
#include "app/cards/consultation_words.h"
#include "app/desk/card_column.h"
#include "app/desk/command_search.h"
#include "app/desk/error_text.h"
#include "app/desk/main_window.h"
#include "app/desk/message_bar.h"
#include "app/desk/plan_changes.h"
#include "app/handout/composer_page.h"
#include "app/handout/steps.h"
#include "app/sheet/head_sheet.h"
#include "app/store/plan_store.h"

namespace combdraft::desk {
namespace {

constexpr QSize kLeastShown(720, 600);

}  // namespace

void MainWindow::declareShowActions() {
  const Condition ready{[this] { return whileWorking()() && !lookPaused_; }, tr("Open or begin a plan, and let its look be worked out")};
  actions_.add({QStringLiteral("show.client"), tr("For the &client"),
                tr("Today beside a choice, large, for fingers. No lock: stay beside it."),
                QKeySequence(Qt::Key_F12), {}, [this] { showToOthers(Showing::Client); }, ready});
  actions_.add({QStringLiteral("show.class"), tr("Fo&r a class"),
                tr("The pattern foil by foil with its reasons, large, with a blank head to draw on"),
                QKeySequence(Qt::SHIFT | Qt::Key_F12), {}, [this] { showToOthers(Showing::Class); }, ready});
}

void MainWindow::connectShow() {
  connect(chair_, &chair::ChairView::lookWanted, this, [this] {
    if (showing_ == Showing::Client) requestLook();
  });
  connect(class_, &chair::ClassView::lookWanted, this, [this] {
    if (showing_ == Showing::Class) requestLook();
  });
  connect(chair_, &chair::ChairView::leaveWanted, this, [this] { showToOthers(Showing::Desk); });
  chair_->setCostLine([this](const plan::ItemId& choice) {
    const auto& keeper = cards_->consultationCard()->keeper();
    const store::Offer* offer = keeper ? store::findOffer(keeper->file(), controller_.document().info().number, choice) : nullptr;
    return offer ? cards::offerText(*offer) : QString();
  });
  class_->setSheetSteps([](const paint::Scene& scene) {
    const auto* typed = scene.plan().find<plan::Handout>(plan::kHandoutId);
    std::vector<chair::ClassView::SheetStep> steps;
    for (const handout::Step& step : handout::stepsOf(scene, typed ? typed->steps : std::vector<plan::HandoutStep>()))
      if (step.standing == handout::Step::Standing::InPlan) steps.push_back({step.pieces, step.why()});
    return steps;
  });
  connect(class_, &chair::ClassView::leaveWanted, this, [this] { showToOthers(Showing::Desk); });
  connect(class_, &chair::ClassView::studentWanted, this, [this] {
    // Everybody sees the list: never the folder of the clients' plans.
    auto* dialog = new QFileDialog(this, tr("The student's plan"), settings_.studentsFolder(), tr("Plans (*.json)"));
    dialog->setObjectName(QStringLiteral("studentsPlan"));
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setFileMode(QFileDialog::ExistingFile);
    connect(dialog, &QFileDialog::fileSelected, this, &MainWindow::takeStudent);
    dialog->open();
  });
}

void MainWindow::takeStudent(const QString& path) {
  const Result<store::OpenedPlan> opened = store::openPlan(path);
  if (!opened) return class_->setTrouble(errorText(opened.error()));
  settings_.setStudentsFolder(QFileInfo(path).absolutePath());
  class_->setStudent(opened->plan);
}

void MainWindow::showToOthers(Showing what) {
  if (what == showing_) return;
  if (what != Showing::Desk && showing_ != Showing::Desk) showToOthers(Showing::Desk);
  const bool leaving = what == Showing::Desk;
  if (!leaving) {
    // What is being typed belongs to the plan; what is being drawn is not there yet.
    if (QWidget* typing = focusWidget()) typing->clearFocus();
    controller_.dropTentative();
    search_->close();
    // Coming back must not bring a client's name or answers up in front of both.
    if (cards_->consultationCard()->isVisible()) cards_->turnTo(CardColumn::Card::Piece);
    keepWindow();
  }
  looks_.forget();
  const Showing before = std::exchange(showing_, what);
  if (before == Showing::Client) chair_->end();
  if (before == Showing::Class) class_->end();
  setDesk(leaving ? DeskIs::Shown : DeskIs::Hidden);
  if (what == Showing::Client) {
    stage_->setCurrentWidget(chair_);
    chair_->begin();
  } else if (what == Showing::Class) {
    stage_->setCurrentWidget(class_);
    class_->begin();
  }
  actions_.refresh();
  titleChanged();
  if (leaving) sheet_->setFocus();
  requestLook();
}

void MainWindow::setDesk(DeskIs is) {
  if (is == DeskIs::Shown) {
    stage_->setCurrentWidget(desk_);
    setMinimumSize(leastDesk());
    menuBar()->show();
    for (QToolBar* bar : std::exchange(shownBars_, {})) bar->show();
    for (const QPointer<QWidget>& other : std::exchange(hiddenWindows_, {}))
      if (other) other->show();
    setContextMenuPolicy(Qt::DefaultContextMenu);
    setAcceptDrops(true);
    if (!wasFullScreen_) setWindowState(windowState() & ~Qt::WindowFullScreen);
    raise();
    activateWindow();
    return;
  }
  setMinimumSize(kLeastShown);  // a tablet held upright is narrower than the desk
  menuBar()->hide();
  for (QToolBar* bar : findChildren<QToolBar*>())
    if (bar->isVisibleTo(this)) {
      shownBars_.push_back(bar);
      bar->hide();
    }
  // Plans in other windows of the program wait out of sight.
  for (MainWindow* other : allWindows())
    if (other != this && other->isVisible()) {
      hiddenWindows_.emplace_back(other);
      other->hide();
    }
  // What else is open, a preview of pages say, may be another client's; so may one under way.
  for (MainWindow* window : allWindows()) window->composer_->dropPreview();
  for (QWidget* other : QApplication::topLevelWidgets())
    if (other != this && other->isVisible() && other->windowType() == Qt::Dialog) other->close();
  setContextMenuPolicy(Qt::NoContextMenu);  // else it offers the rows of tools
  setAcceptDrops(false);
  wasFullScreen_ = isFullScreen();
  setWindowState(windowState() | Qt::WindowFullScreen);
}

bool MainWindow::refusesToClose() {
  if (showing_ == Showing::Desk || closing_ || qApp->isSavingSession()) return false;
  if (showing_ == Showing::Client) chair_->showHowToLeave();
  return showing_ == Showing::Client;
}

}  // namespace combdraft::desk
