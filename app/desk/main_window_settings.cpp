// The window's part that follows the user's habits: preferences, keys, hints,
// how the window was left, and other windows of the same program.
#include <QScreen>
#include <QApplication>
#include <QFileInfo>
#include <QMenuBar>
#include <QPushButton>
#include <QSplitter>
#include <QStackedWidget>

#include "app/appointment/appointment_page.h"
#include "app/cards/consultation_card.h"
#include "app/controls/theme.h"
#include "app/controls/units.h"
#include "app/desk/card_column.h"
#include "app/desk/findings_list.h"
#include "app/desk/hint_bar.h"
#include "app/desk/keys.h"
#include "app/desk/keys_page.h"
#include "app/desk/main_window.h"
#include "app/desk/menu_corner.h"
#include "app/desk/message_bar.h"
#include "app/desk/preferences_page.h"
#include "app/desk/readings_strip.h"
#include "app/sheet/head_sheet.h"

namespace combdraft::desk {
namespace {

controls::ThemeName themeFor(store::ThemeChoice choice) {
  switch (choice) {
    case store::ThemeChoice::Light: return controls::ThemeName::Light;
    case store::ThemeChoice::Dark: return controls::ThemeName::Dark;
    case store::ThemeChoice::System: return controls::systemTheme();
  }
  return controls::ThemeName::Light;
}

}  // namespace

std::vector<MainWindow*> MainWindow::allWindows() {
  std::vector<MainWindow*> windows;
  for (QWidget* widget : QApplication::topLevelWidgets())
    if (auto* window = qobject_cast<MainWindow*>(widget)) windows.push_back(window);
  return windows;
}

void applyPreferences(const store::Preferences& preferences) {
  controls::applyTheme(*qApp, themeFor(preferences.theme), preferences.textSize_percent);
}

void MainWindow::declareSettingsActions() {
  actions_.add({QStringLiteral("window.new"), tr("New &window"), tr("A second window, for another plan beside this one"),
                QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_N), {}, [this] { newWindow(); }});
  actions_.add({QStringLiteral("window.close"), tr("C&lose the window"),
                tr("Close this window only; asks when its plan is not saved"), QKeySequence(Qt::CTRL | Qt::Key_W), {},
                [this] { close(); }});
  actions_.add({QStringLiteral("edit.preferences"), tr("Preference&s…"),
                tr("Theme, text size, units, what a new piece begins with, policy, rates, hints"),
                QKeySequence(Qt::CTRL | Qt::Key_Comma), {}, [this] { turnTo(Page::Preferences); }, {}, {}, tr("Preferences")});
  actions_.add({QStringLiteral("edit.keys"), tr("&Keys…"), tr("See the keys of all commands and give them others"),
                QKeySequence(Qt::CTRL | Qt::Key_K), {}, [this] { turnTo(Page::Keys); }, {}, {}, tr("Keys")});
  actions_.add({QStringLiteral("view.findings"), tr("&Needs a look"),
                tr("What to check before work; choose a line to select its pieces"), QKeySequence(Qt::ALT | Qt::Key_9), {},
                [this] {
                  const bool shown = cards_->current() == CardColumn::Card::Findings;
                  cards_->turnTo(shown ? CardColumn::Card::Piece : CardColumn::Card::Findings);
                },
                whileWorking(), [this] { return cards_->current() == CardColumn::Card::Findings; }});
  declareWidthActions();
}

void MainWindow::declareWidthActions() {
  actions_.add({QStringLiteral("view.cardsWider"), tr("Cards &wider"), tr("Give the cards more room, the sheet less; the edge between them can be dragged too"),
                QKeySequence(Qt::CTRL | Qt::ALT | Qt::Key_Left), {}, [this] { widenCards(1); }, whileWorking()});
  actions_.add({QStringLiteral("view.cardsNarrower"), tr("Cards narr&ower"), tr("Give the sheet more room, the cards less"),
                QKeySequence(Qt::CTRL | Qt::ALT | Qt::Key_Right), {}, [this] { widenCards(-1); }, whileWorking()});
}

void MainWindow::buildCorner() {
  corner_ = new MenuCorner(menuBar());
  QAction* action = actions_.action(QStringLiteral("view.findings"));
  connect(corner_->findings(), &QPushButton::clicked, this, [this, action] {
    if (pages_->currentIndex() == static_cast<int>(Page::Work)) return action->trigger();
    turnTo(Page::Work);
    cards_->turnTo(CardColumn::Card::Findings);
    actions_.refresh();
  });
  const auto show = [this, action] {
    const auto& issues = cards_->findings()->issues();
    const bool serious = !issues.empty() && issues.front().severity != plan::Severity::Note;
    corner_->setFindings(issues.empty() ? QString() : serious ? QStringLiteral("\u26A0 ") : QStringLiteral("\u2139 "),
                         cards_->findings()->countText(), action->toolTip());
    const auto page = static_cast<Page>(pages_->currentIndex());
    corner_->setFindingsShown(page == Page::Work || page == Page::Appointment);
  };
  connect(cards_->findings(), &FindingsList::countChanged, this, show);
  connect(pages_, &QStackedWidget::currentChanged, this, show);
  connect(cards_->findings(), &FindingsList::itemWanted, this, [this](const std::string& id) {
    cards_->turnTo(id == plan::kHairId ? CardColumn::Card::Hair : CardColumn::Card::Head);
    actions_.refresh();
  });
  show();
}

void MainWindow::connectSettings() {
  connect(preferences_, &PreferencesPage::changed, this, [this](const store::Preferences& next) {
    const store::Preferences before = settings_.preferences();
    settings_.setPreferences(next);
    sayUnwritten();
    if (next.theme != before.theme || next.textSize_percent != before.textSize_percent) applyPreferences(next);
    for (MainWindow* window : allWindows()) window->takePreferences();
  });
  connect(preferences_, &PreferencesPage::ratesChanged, this, [this](const store::Rates& rates) {
    settings_.setRates(rates);
    sayUnwritten();
    for (MainWindow* window : allWindows()) window->takePreferences();
  });
  connect(preferences_, &PreferencesPage::hintsWanted, this, [this](bool shown) {
    settings_.setHints(shown);
    for (MainWindow* window : allWindows()) window->offerHints();
  });
  connect(preferences_, &PreferencesPage::hintsAgainWanted, this, [this] {
    settings_.setHintsPutAway({});
    settings_.setHints(true);
    takePreferences();
    messages_->say({Message::Kind::News, tr("The hints come again at their places."), {}, QStringLiteral("hints")});
  });
  connect(preferences_, &PreferencesPage::keysWanted, this, [this] { turnTo(Page::Keys); });
  connect(preferences_, &PreferencesPage::done, this, [this] { turnBack(); });
  connect(keys_, &KeysPage::done, this, [this] { turnBack(); });
  connect(keys_, &KeysPage::changed, this, [this] {
    settings_.setKeys(changedKeys(actions_));
    sayUnwritten();
    for (MainWindow* window : allWindows())
      if (window != this) applyKeys(window->actions_, settings_.keys());
  });
  const QStringList ignored = applyKeys(actions_, settings_.keys());
  if (!ignored.isEmpty())
    messages_->say({Message::Kind::Caution,
                    tr("Some keys of your settings could not be used; those commands have their own. %1").arg(ignored.join(u' ')),
                    {{tr("Show the keys"), [this] { turnTo(Page::Keys); }},
                     {tr("Forget them"), [this] { settings_.setKeys(changedKeys(actions_)); }},
                     {tr("Close"), {}}},
                    QStringLiteral("keys")});
}

void MainWindow::sayUnwritten() {
  const QString topic = QStringLiteral("settingsUnwritten");
  if (const auto written = settings_.written(); !written)
    messages_->say({Message::Kind::Caution, store::unwrittenText(written.error()), {}, topic});
  else
    messages_->clear(topic);
}

void MainWindow::takePreferences() {
  const store::Preferences now = settings_.preferences();
  preferences_->set(now, settings_.hasHints(), static_cast<int>(settings_.hintsPutAway().size()));
  preferences_->setPolicy(settings_.clientPolicy());
  cards_->consultationCard()->setPolicy(settings_.clientPolicy());
  cards_->consultationCard()->setRates(settings_.rates());
  preferences_->setRates(settings_.rates());
  appointment_->workList().setRates(settings_.rates());
  appointment_->setFactors(settings_.ownFactors());
  sheet_->setNewPiece(now.newThickness_mm, now.newStart_mm);
  controls::Units::current().setLength(static_cast<controls::LengthUnit>(now.unit));  // the same order
  actions_.refresh();
}

void MainWindow::offerHints() {
  if (pages_->currentIndex() != static_cast<int>(Page::Work)) return hints_->offer({});
  const auto key = [this](const char* id) {
    const QString keys = actions_.action(QLatin1String(id))->shortcut().toString(QKeySequence::NativeText);
    return keys.isEmpty() ? plainText(actions_.action(QLatin1String(id))->text()) : keys;
  };
  std::vector<Hint> hints;
  const plan::Plan& plan = controller_.document();
  if (plan.pieces().empty())
    hints.push_back({QStringLiteral("first-piece"),
                     tr("Nothing is placed yet. %1 draws a section and %2 lays it out; %3 draws one piece, %4 puts one across the back.")
                         .arg(key("tool.section"), key("tool.layOut"), key("tool.piece"), key("piece.add"))});
  if (controller_.selection().size() == 1 && plan.find<plan::Piece>(controller_.selection().lead()))
    hints.push_back({QStringLiteral("handles"),
                     tr("Drag the square for the thickness, the diamond for where light starts. Arrow keys move the piece by 1 mm, with Shift 10, with Alt 0.1.")});
  if (!plan.pieces().empty()) {
    if (!cards_->findings()->issues().empty())
      hints.push_back({QStringLiteral("findings"),
                       tr("“Needs a look”, top right or %1, lists what to check before work.").arg(key("view.findings"))});
    if (view_.layer() == document::Layer::Both)
      hints.push_back({QStringLiteral("divider"),
                       tr("Pull the line across a view: diagram on one side, look on the other. %1 and %2 show only one of them.")
                           .arg(key("view.diagram"), key("view.look"))});
    hints.push_back({QStringLiteral("find"), tr("%1 finds any command by a word of what you want to do.").arg(key("edit.findCommand"))});
  }
  hints_->offer(hints);
}

QSize MainWindow::leastDesk() const { return {fontMetrics().averageCharWidth() * 110, fontMetrics().height() * 32}; }

void MainWindow::restoreWindow() {
  setMinimumSize(leastDesk());
  const store::WindowState state = settings_.windowState();
  if (state.geometry.isEmpty()) resize(QSize(1280, 820).boundedTo(screen()->availableGeometry().size() - QSize(0, 32)));
  if (state.splitter.isEmpty()) splitter_->setSizes({1 << 15, 1});  // the cards as narrow as they go
  setDeskState(state);
}

void MainWindow::setDeskState(const store::WindowState& state) {
  if (!state.geometry.isEmpty() && !restoreGeometry(state.geometry))
    resize(QSize(1280, 820).boundedTo(screen()->availableGeometry().size() - QSize(0, 32)));
  if (!state.splitter.isEmpty() && !splitter_->restoreState(state.splitter)) splitter_->setSizes({1 << 15, 1});
  if (state.layer >= 0) view_.setLayer(static_cast<document::Layer>(state.layer));
  if (state.largeView == -2) view_.setLargeView(std::nullopt);
  if (state.largeView >= 0) view_.setLargeView(static_cast<head::ViewName>(state.largeView));
  const auto card = static_cast<CardColumn::Card>(state.card);  // a client's answers are not what a program begins with
  if (state.card >= 0 && state.card < CardColumn::kCards && card != CardColumn::Card::Consultation) cards_->turnTo(card);
}

store::WindowState MainWindow::deskState() const {
  if (showing_ != Showing::Desk) return settings_.windowState();  // kept before the screen was turned to others
  return {saveGeometry(), splitter_->saveState(), static_cast<int>(view_.layer()),
          view_.largeView() ? static_cast<int>(*view_.largeView()) : -2, static_cast<int>(cards_->current())};
}

void MainWindow::keepWindow() { settings_.setWindowState(deskState()); }

void MainWindow::changeEvent(QEvent* event) {
  QMainWindow::changeEvent(event);
  if (event->type() == QEvent::FontChange && readings_) fitReadings();
  // The desktop may have turned dark or light while another program was in front.
  if (event->type() != QEvent::ActivationChange || !isActiveWindow()) return;
  fileWatch_.look();  // it may have been changed while another program was in front
  sessionChanged();
  const store::Preferences now = settings_.preferences();
  if (now.theme == store::ThemeChoice::System && themeFor(now.theme) != controls::currentTheme().name)
    applyPreferences(now);
}

void MainWindow::resizeEvent(QResizeEvent* event) {
  QMainWindow::resizeEvent(event);
  fitReadings();
  if (corner_) corner_->fit();
  sessionChanged();
}

void MainWindow::widenCards(int steps) {
  const int by = steps * 4 * fontMetrics().averageCharWidth();
  const QList<int> sizes = splitter_->sizes();
  splitter_->setSizes({sizes.at(0) - by, sizes.at(1) + by});
}

MainWindow* MainWindow::newWindow() {
  keepWindow();
  if (places_.session) places_.session->thaw();
  auto* window = new MainWindow(places_, makePasses_, makeSearch_);
  window->setAttribute(Qt::WA_DeleteOnClose);
  const int step = 2 * fontMetrics().height();
  window->move(pos() + QPoint(step, step));
  window->show();
  return window;
}

MainWindow* MainWindow::windowWith(const QString& path) const {
  const QString wanted = QFileInfo(path).canonicalFilePath();
  if (wanted.isEmpty()) return nullptr;
  for (MainWindow* window : allWindows())
    if (window->isVisible() && QFileInfo(window->controller_.file().path).canonicalFilePath() == wanted) return window;
  return nullptr;
}

void MainWindow::stayOpen() {
  if (!places_.session) return;
  places_.session->thaw();
  writeSession();  // without the windows that closed before this one stayed
}

void MainWindow::quitAll() {
  takeTyping();
  // What is open now is what the next start brings back.
  if (places_.session) {
    writeSession();
    places_.session->freeze();
  }
  // Every window asks for itself; the first that stays keeps the program.
  for (MainWindow* window : allWindows())
    if (window != this && window->isVisible() && !window->close()) {
      window->comeForward();
      return;
    }
  close();
}

void MainWindow::comeForward() {
  if (isMinimized()) showNormal();
  raise();
  activateWindow();
}

}  // namespace combdraft::desk
