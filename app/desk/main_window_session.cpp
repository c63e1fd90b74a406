// The window's part that remembers what was open and opens it again.
#include <QApplication>
#include <QFileInfo>

#include "app/desk/error_text.h"
#include "app/desk/left_plans_box.h"
#include "app/desk/main_window.h"
#include "app/desk/message_bar.h"

namespace combdraft::desk {
namespace {

const QString kSession = QStringLiteral("session");
constexpr int kSettled_ms = 500;  // changes come in groups

}  // namespace

void MainWindow::sessionChanged() {
  if (!places_.session || leftSession_ || closing_) return;
  if (sessionTimer_.interval() == 0) {
    sessionTimer_.setSingleShot(true);
    sessionTimer_.setInterval(kSettled_ms);
    connect(&sessionTimer_, &QTimer::timeout, this, &MainWindow::writeSession);
  }
  sessionTimer_.start();
}

void MainWindow::writeSession() {
  std::vector<store::SessionWindow> windows;
  for (MainWindow* window : allWindows()) {
    if (window->places_.session != places_.session || window->leftSession_ || !window->isVisible()) continue;
    const store::SessionWindow state{window->controller_.file().path, window->deskState()};
    // The one in front comes last, so that it is in front again.
    windows.insert(window->isActiveWindow() ? windows.end() : windows.begin(), state);
  }
  if (windows.empty()) return;
  const Result<void> written = places_.session->write(windows);
  if (!written)
    messages_->say({Message::Kind::Caution,
                    tr("What is open cannot be remembered for the next start: %1").arg(errorText(written.error())),
                    {}, kSession});
}

void MainWindow::leaveSession() {
  if (!places_.session) return;
  sessionTimer_.stop();
  for (const MainWindow* window : allWindows())
    if (window != this && window->isVisible() && window->places_.session == places_.session) leftSession_ = true;
  writeSession();  // the last window is what was open
  if (!leftSession_) (void)places_.session->setFailedStarts(0);  // closed by its user: that is no failure
  leftSession_ = true;
}

void MainWindow::bringBack() {
  if (!places_.session || !places_.session->isOurs()) return;
  const store::Session before = places_.session->read();
  if (!places_.session->trouble().isEmpty())
    messages_->say({Message::Kind::Caution, places_.session->trouble(), {}, kSession});
  if (before.windows.empty() || settings_.preferences().begin == store::Beginning::StartPage) return;
  if (before.failedStarts < store::kAskFromFailedStarts) return bringBackNow(before.windows);
  messages_->say({Message::Kind::Caution,
                  tr("The program ended soon after its last starts. What was open is not opened by itself this time."),
                  {{tr("Open it"), [this, windows = before.windows] { bringBackNow(windows); }}, {tr("Leave it"), [session = places_.session] { (void)session->setFailedStarts(0); }}},
                  kSession});
}

void MainWindow::bringBackNow(const std::vector<store::SessionWindow>& windows) {
  const std::shared_ptr<store::SessionFile> session = places_.session;
  // Counted before, taken back when everything has stood for a while.
  (void)session->setFailedStarts(session->failedStarts() + 1);
  QTimer::singleShot(places_.pace.standsAfter_ms, qApp, [one = std::weak_ptr(session)] {
    if (const auto still = one.lock()) (void)still->setFailedStarts(0);
  });
  QStringList left, missing;
  for (const store::LeftPlan& plan : store::findLeftPlans(recoveryRoot_)) left << plan.originalPath;
  MainWindow* window = this;
  for (const store::SessionWindow& one : windows) {
    const bool isMissing = !one.path.isEmpty() && !QFileInfo::exists(one.path);
    if (isMissing) missing << QFileInfo(one.path).fileName();
    const bool opens = !one.path.isEmpty() && !isMissing && !left.contains(one.path);
    if (!opens && windows.size() > 1) continue;  // no empty windows beside others
    if (!window) window = newWindow();
    window->setDeskState(one.state);
    if (opens) window->openPath(one.path);
    window = nullptr;
  }
  if (!missing.isEmpty())
    messages_->say({Message::Kind::News,
                    tr("Was open the last time and is not there any more: %1.").arg(missing.join(QStringLiteral(", "))), {}, kSession});
}

void MainWindow::moveEvent(QMoveEvent* event) {
  QMainWindow::moveEvent(event);
  sessionChanged();
}

}  // namespace combdraft::desk
