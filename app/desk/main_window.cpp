#include "app/desk/main_window.h"

#include <QApplication>
#include <QCloseEvent>
#include <QMimeData>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QRandomGenerator>
#include <QSplitter>
#include <QStackedWidget>
#include <QVBoxLayout>

#include "app/appointment/appointment_page.h"
#include "app/cards/reading_card.h"
#include "app/chair/chair_view.h"
#include "app/chair/class_view.h"
#include "app/controls/theme.h"
#include "app/desk/card_column.h"
#include "app/desk/clients_page.h"
#include "app/desk/command_search.h"
#include "app/desk/compare_view.h"
#include "app/desk/error_text.h"
#include "app/desk/fault_page.h"
#include "app/desk/findings_card.h"
#include "app/desk/hint_bar.h"
#include "app/desk/keys_page.h"
#include "app/desk/left_compare_page.h"
#include "app/desk/menu_corner.h"
#include "app/desk/message_bar.h"
#include "app/desk/new_plan_page.h"
#include "app/desk/patterns_page.h"
#include "app/desk/plan_changes.h"
#include "app/desk/preferences_page.h"
#include "app/desk/readings_strip.h"
#include "app/desk/start_page.h"
#include "app/desk/worn_bar.h"
#include "app/handout/composer_page.h"
#include "app/sheet/head_sheet.h"
#include "app/store/plan_store.h"
#include "engine/base/give_back.h"

namespace combdraft::desk {

MainWindow::MainWindow(const DeskPlaces& places, PassesMaker makePasses, SearchMaker makeSearch)
    : places_(places),
      makePasses_(std::move(makePasses)),
      makeSearch_(std::move(makeSearch)),
      settingsTrouble_(store::mendSettings(places.settingsFile)),
      settings_(places.settingsFile),
      recoveryRoot_(places.recoveryRoot),
      controller_(plan::Plan::fresh(1)),
      looks_(makePasses_()),
      suggestions_(makeSearch_()),
      recovery_(controller_, places.recoveryRoot, places.pace),
      fileWatch_(controller_),
      discarded_(places.recoveryRoot) {
  giveMemoryBack();
  setAcceptDrops(true);
  buildPages();
  declareFileActions();
  declareEditActions();
  declareClipActions();
  declarePatternActions();
  declareHandoutActions();
  declareClientActions();
  declareAppointmentActions();
  declareToolActions();
  declareViewActions();
  declareChoiceActions();
  declareSettingsActions();
  declareKeepingActions();
  declareShowActions();
  buildMenusAndTools();
  buildCorner();
  connectAll();
  connectReadings();
  connectSettings();
  connectPatterns();
  connectHandout();
  connectClient();
  connectAppointment();
  connectChoices();
  connectKeeping();
  connectLeft();
  connectShow();
  view_.setSurround(settings_.isGreySurround() ? document::Surround::MidGrey
                                               : document::Surround::Paper);
  restoreWindow();
  takePreferences();
  showStart();
}

MainWindow::~MainWindow() {
  // The stack's end and late looks are no news to a window that goes away.
  disconnect(&controller_, nullptr, this, nullptr);
  disconnect(&controller_.undoStack(), nullptr, this, nullptr);
  disconnect(&looks_, nullptr, this, nullptr);
  for (const QPointer<QWidget>& other : hiddenWindows_)
    if (other) other->show();
  delete takeCentralWidget();
}

void MainWindow::buildPages() {
  stage_ = new QStackedWidget(this);
  auto* central = desk_ = new QWidget(stage_);
  stage_->addWidget(desk_);
  auto* column = new QVBoxLayout(central);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(0);
  messages_ = new MessageBar(central);
  column->addWidget(messages_);
  pages_ = new QStackedWidget(central);
  column->addWidget(pages_, 1);
  setCentralWidget(stage_);

  start_ = new StartPage(pages_);
  newPlan_ = new NewPlanPage(pages_);
  work_ = new QWidget(pages_);
  pages_->addWidget(start_);
  pages_->addWidget(newPlan_);
  pages_->addWidget(work_);
  preferences_ = new PreferencesPage(pages_);
  keys_ = new KeysPage(actions_, pages_);
  pages_->addWidget(preferences_);
  pages_->addWidget(keys_);
  patterns_ = new PatternsPage(pages_);
  pages_->addWidget(patterns_);
  faults_ = new FaultPage(pages_);
  leftCompare_ = new LeftComparePage(pages_);
  pages_->addWidget(faults_);
  pages_->addWidget(leftCompare_);
  composer_ = new handout::ComposerPage(controller_, handout::PageMaker::engineLooks(), pages_);
  pages_->addWidget(composer_);
  clients_ = new ClientsPage(pages_);
  pages_->addWidget(clients_);
  appointment_ = new appointment::AppointmentPage(controller_, pages_);
  pages_->addWidget(appointment_);

  auto* work = new QVBoxLayout(work_);
  work->setContentsMargins(0, 0, 0, 0);
  work->setSpacing(0);
  wornBar_ = new WornBar(view_, work_);
  work->addWidget(wornBar_);
  splitter_ = new QSplitter(Qt::Horizontal, work_);
  splitter_->setChildrenCollapsible(false);
  splitter_->setHandleWidth(7);
  work->addWidget(splitter_, 1);
  middle_ = new QStackedWidget(work_);
  sheet_ = new sheet::HeadSheet(controller_, view_, middle_);
  compare_ = new CompareView(controller_, view_, middle_);
  middle_->addWidget(sheet_);
  middle_->addWidget(compare_);
  cards_ = new CardColumn(controller_, view_, suggestions_, work_);
  splitter_->addWidget(middle_);
  splitter_->addWidget(cards_);
  splitter_->setStretchFactor(0, 1);
  splitter_->setStretchFactor(1, 0);
  hints_ = new HintBar(settings_, work_);
  work->addWidget(hints_);
  readings_ = new ReadingsStrip(work_);
  work->addWidget(readings_);
  search_ = new CommandSearch(actions_, central);
  chair_ = new chair::ChairView(controller_, view_, stage_);
  class_ = new chair::ClassView(controller_, view_, planChanges, stage_);
  stage_->addWidget(chair_);
  stage_->addWidget(class_);
  // The hidden ones ask for no room of the desk.
  for (QWidget* one : {static_cast<QWidget*>(chair_), static_cast<QWidget*>(class_)})
    one->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored);
}

void MainWindow::connectAll() {
  using document::DocumentChange;
  using document::ViewState;
  connect(&controller_, &document::DocumentController::changed, this,
          [this](const DocumentChange& change) {
            if (change.kind == DocumentChange::Kind::Replaced) {
              lookPaused_ = std::exchange(pauseNext_, false);
              messages_->clear(QStringLiteral("paused"));
              looks_.forget();
              shownLook_.reset();
              sheet_->setLook(nullptr);  // no head wears the hair of the one before
              readings_->clear();
              cards_->readingCard()->clear();
            }
            requestLook();
            if (change.kind != DocumentChange::Kind::Tentative) {
              titleChanged();
              actions_.refresh();
              offerHints();
            }
          });
  connect(&controller_, &document::DocumentController::fileChanged, this, [this] {
    titleChanged();
    actions_.refresh();
  });
  connect(&controller_, &document::DocumentController::selectionChanged, this, [this] {
    actions_.refresh();
    // These are about the look and follow the hand, or stand beside the plan.
    using Card = CardColumn::Card;
    const Card now = cards_->current();
    const bool stays = now == Card::Findings || now == Card::Reading || now == Card::Suggestion || now == Card::Consultation;
    if (!controller_.selection().isEmpty() && !stays)
      cards_->turnTo(controller_.document().find<plan::Section>(controller_.selection().lead())
                         ? CardColumn::Card::Section
                         : CardColumn::Card::Piece);
    offerHints();
  });
  connect(&controller_.undoStack(), &QUndoStack::indexChanged, &actions_,
          [this] { actions_.refresh(); });
  connect(&view_, &ViewState::changed, this, [this](ViewState::Aspects aspects) {
    if (aspects.testFlag(ViewState::Aspect::Look)) requestLook();
    if (aspects.testFlag(ViewState::Aspect::Layer))
      settings_.setGreySurround(view_.surround() == document::Surround::MidGrey);
    if (!(aspects & ~ViewState::Aspects(ViewState::Aspect::Hover))) return;
    actions_.refresh();
    sessionChanged();
  });
  connect(sheet_, &sheet::HeadSheet::viewDraggedOut, this, &MainWindow::dragOut);
  connect(sheet_, &sheet::HeadSheet::wantedPicturesChanged, this, [this] {
    const auto same = [](const look::PictureRequest& a, const look::PictureRequest& b) {
      return a.view == b.view && a.pixel_mm == b.pixel_mm;
    };
    const std::vector<look::PictureRequest> wanted = sheet_->wantedPictures();
    if (!std::equal(wanted.begin(), wanted.end(), askedPictures_.begin(), askedPictures_.end(), same))
      requestLook();
  });
  connect(&looks_, &live::LookService::lookReady, this,
          [this](const std::shared_ptr<const live::LookResult>& result) {
            if (showing_ != Showing::Desk) {
              showing_ == Showing::Client ? chair_->set(result) : class_->set(result);
              if (result->pass == live::Pass::Full) requestLook();  // the next one
              return;
            }
            if (isComparing()) {
              compare_->set(result);
              if (result->pass == live::Pass::Full) requestLook();  // the other side
              return;
            }
            shownLook_ = result;
            sheet_->setLook(result);
            readings_->set(*result);
            readings_->setAims(controller_.plan());
            cards_->readingCard()->set(*result);
            cards_->findingsCard()->setLook(*result);
            messages_->clear(QStringLiteral("look"));
          });
  connect(&looks_, &live::LookService::adviceReady, this,
          [this](const std::shared_ptr<const live::AdviceResult>& result) {
            if (showing_ != Showing::Desk) return chair_->setAdvice(*result);
            // While two are compared the other side is looked at too; it is not what is worked on.
            if (result->settings.choice == view_.lookSettings().choice && result->settings.subject == view_.lookSettings().subject)
              cards_->findingsCard()->setAdvice(result);
          });
  connect(&looks_, &live::LookService::failed, this, [this](const Error& error) {
    if (showing_ == Showing::Client) chair_->setTrouble(errorText(error));
    if (showing_ == Showing::Class) class_->setTrouble(errorText(error));
    messages_->say({Message::Kind::Caution,
                     tr("The look cannot be worked out: %1").arg(errorText(error)),
                     {},
                     QStringLiteral("look")});
  });
  connect(&recovery_, &store::Recovery::failed, this, [this](const QString& why) {
    messages_->say({Message::Kind::Caution,
                     tr("Your latest work is only in this window: %1. It is tried again. Do not close the window; save it on another disk.").arg(why),
                     {{tr("Save it elsewhere…"), [this] { saveAs(); }}, {tr("Go on working"), {}}},
                     QStringLiteral("recovery")});
  });
  connect(&recovery_, &store::Recovery::written, this,
          [this](store::Recovery::Reached which) {
            messages_->clear(QStringLiteral("recovery"));
            if (which == store::Recovery::Reached::Newest) appointment_->log().setUnwritten(false);
          });

  connect(start_, &StartPage::newWanted, this, [this] { actions_.action(QStringLiteral("file.new"))->trigger(); });
  connect(start_, &StartPage::openWanted, this, [this] { openDialog(); });
  connect(start_, &StartPage::planWanted, this, &MainWindow::openPath);
  connect(start_, &StartPage::exampleWanted, this, [this](const QString& path) {
    askBeforeLeaving(tr("Save the changes before opening the example?"), [this, path] {
      // An example opens as a new plan, so that saving never changes it.
      Result<store::OpenedPlan> opened = store::openPlan(path);
      if (!opened) return tellError(errorText(opened.error()));
      plan::Plan plan = std::move(opened).value().plan;
      // A number of its own: every plan begun with the example is another client's.
      plan::PlanInfo info = plan.info();
      info.number = plan::Plan::fresh(QRandomGenerator::system()->generate64()).info().number;
      plan.put(plan::kPlanId, info);
      beginPlan(std::move(plan));
    });
  });
  connect(start_, &StartPage::recentRemoved, this, [this](const QString& path) {
    settings_.removeRecent(path);
    showStart();
  });
  connect(newPlan_, &NewPlanPage::cancelled, this, [this] { showStart(); });
  connect(newPlan_, &NewPlanPage::finished, this, [this] {
    Result<plan::Plan> plan = newPlan(newPlan_->answers(), QRandomGenerator::system()->generate64());
    if (!plan) return newPlan_->showProblem(errorText(plan.error()));
    askBeforeLeaving(tr("Save them before the new plan begins?"),
                     [this, made = std::move(plan).value()] { beginPlan(made); });
  });
}

Condition MainWindow::whileWorking() const {
  return {[this] { return pages_->currentIndex() == static_cast<int>(Page::Work); }, tr("Open or begin a plan first")};
}

void MainWindow::turnTo(Page page) {
  const auto now = static_cast<Page>(pages_->currentIndex());
  if (now <= Page::Work) before_ = now;
  search_->close();
  if (page == Page::Preferences) takePreferences();
  if (page == Page::Keys) keys_->fill();
  if (page == Page::Patterns) {
    patterns_->closeForm();
    fillPatterns();
  }
  if (page == Page::Clients) fillClients();
  if (now == Page::Clients && page != Page::Clients) clients_->clear();
  if (now == Page::Handout && page != Page::Handout) composer_->leave();
  pages_->setCurrentIndex(static_cast<int>(page));
  if (page == Page::Handout) composer_->setWork({appointment_->workList().settings(), appointment_->workList().factorsUsed()});
  if (page == Page::Handout) composer_->enter(settings_.lastFolder());
  if ((now == Page::Handout || now == Page::Appointment) && page == Page::Work) requestLook();  // undo reaches pieces from there too
  drawing_->setVisible(page == Page::Work);
  offerHints();
  nameUndo();
  actions_.refresh();
  titleChanged();
  if (page == Page::Start) start_->setFocus();
  if (page == Page::Work) sheet_->setFocus();
  if (page == Page::Preferences) preferences_->setFocus();
  if (page == Page::Patterns) patterns_->setFocus();
  if (page == Page::Clients) clients_->list()->setFocus();
  if (page == Page::Appointment) appointment_->setFocus();
  if (page == Page::Keys) keys_->filter()->setFocus();
  if (page == Page::Faults) faults_->text()->setFocus();
  if (page == Page::LeftCompare) leftCompare_->openRecovered()->setFocus();
}

void MainWindow::turnBack() { before_ == Page::Start ? showStart() : turnTo(before_); }

void MainWindow::showStart() {
  start_->fill(store::findLeftPlans(recoveryRoot_), settings_.recent(), store::examplePlans(),
               store::readPatterns(places_.patternsFolder).all);
  turnTo(Page::Start);
}

void MainWindow::titleChanged() {
  const bool work = whilePlanShown()();
  setWindowModified(work && controller_.isModified() && showing_ == Showing::Desk);
  QString title = store::shownTitle(controller_.document(), controller_.file().path);
  title.replace(QLatin1String("[*]"), QLatin1String("[*][*]"));  // the mark of a modified window, unless doubled
  const bool readOnly = controller_.access() == document::DocumentController::Access::ReadOnly;
  setWindowTitle(!work || showing_ != Showing::Desk ? QStringLiteral("Combdraft[*]")
                 : readOnly ? tr("%1[*] (read only) — Combdraft").arg(title)
                            : tr("%1[*] — Combdraft").arg(title));
  const QString path = controller_.file().path;
  if (!corner_) return sessionChanged();
  if (work)
    corner_->setFile(path, readOnly ? MenuCorner::Kept::ReadOnly : controller_.isModified() ? MenuCorner::Kept::NotSaved : MenuCorner::Kept::Saved);
  else
    corner_->setNoFile();
  sessionChanged();
}

void MainWindow::requestLook() {
  if (pages_->currentIndex() != static_cast<int>(Page::Work) || lookPaused_) return;
  store::noteForFaults("worn " + std::string(hair::wornWord(view_.lookSettings().worn.way)) + ", " +
                       std::to_string(controller_.plan().items().size()) + " things, " +
                       std::to_string(live::kQuickLocks) + " and " + std::to_string(live::kFullLocks) + " locks");
  if (showing_ != Showing::Desk) {
    const auto wish = showing_ == Showing::Client ? chair_->next() : class_->next();
    if (wish) looks_.request(wish->plan, wish->ticket, wish->settings, {wish->picture});
    return;
  }
  if (isComparing()) {
    if (const auto ask = compare_->next())
      looks_.request(controller_.plan(), controller_.revision(), ask->settings, ask->pictures);
    return;
  }
  askedPictures_ = sheet_->wantedPictures();
  looks_.request(controller_.plan(), controller_.revision(), view_.lookSettings(), askedPictures_);
}

void MainWindow::closeEvent(QCloseEvent* event) {
  takeTyping();
  if (refusesToClose()) return event->ignore();
  if (showing_ == Showing::Class) showToOthers(Showing::Desk);
  if (composer_->isPuttingOut() && !qApp->isSavingSession()) {
    closing_ = false;
    event->ignore();
    return askAboutPagesUnderWay();
  }
  const auto closeNow = [this] {
    closing_ = true;
    close();
  };
  if (!closing_ && controller_.isModified()) {
    event->ignore();
    return askBeforeLeaving(tr("Save the changes before closing?"), closeNow);
  }
  // Asked for here, not through `leaveClient`: a window cannot close itself while it is closing.
  if (const auto trouble = closing_ ? std::nullopt : clientNotKept(Leaving::Window)) {
    event->ignore();
    return sayClientNotKept(*trouble, closeNow, Leaving::Window);
  }
  recovery_.close();
  planLock_.giveBack();
  keepWindow();
  leaveSession();
  event->accept();
}

void MainWindow::dragEnterEvent(QDragEnterEvent* event) {
  if (event->mimeData()->hasUrls()) event->acceptProposedAction();
}

void MainWindow::dropEvent(QDropEvent* event) {
  for (const QUrl& url : event->mimeData()->urls()) {
    if (!url.isLocalFile()) continue;
    event->acceptProposedAction();
    openPath(url.toLocalFile());
    return;
  }
  tellError(tr("Only plan files on this computer can be dropped here."));
}

}  // namespace combdraft::desk
