// The window's part that opens, saves and recovers plans.
#include <QFileDialog>
#include <QFileInfo>
#include <QRandomGenerator>

#include "app/desk/main_window.h"
#include "app/desk/message_bar.h"
#include "app/desk/new_plan_page.h"
#include "app/store/plan_store.h"

namespace combdraft::desk {
namespace {

const QString kQuestion = QStringLiteral("question");

QString fileFilter() { return MainWindow::tr("Plans (*.json);;All files (*)"); }

}  // namespace

void MainWindow::declareFileActions() {
  const Condition working = whileWorking();
  actions_.add({QStringLiteral("file.start"), tr("Start &page"), tr("Recent plans, examples and unsaved work"),
                QKeySequence(Qt::CTRL | Qt::Key_Home), QStringLiteral("start"), [this] { showStart(); }, {}, {}, tr("Start")});
  actions_.add({QStringLiteral("file.new"), tr("&New plan"), tr("Eight touches to the first look of a new head"),
                QKeySequence::New, QStringLiteral("new"),
                [this] {
                  newPlan_->clear();
                  turnTo(Page::NewPlan);
                  newPlan_->question(0)->button(1)->setFocus();
                },
                {}, {}, tr("New")});
  actions_.add({QStringLiteral("file.open"), tr("&Open…"), tr("Open a plan file"), QKeySequence::Open,
                QStringLiteral("open"), [this] { openDialog(); }, {}, {}});
  actions_.add({QStringLiteral("file.save"), tr("&Save"), tr("Save the plan; the version before is kept beside it"),
                QKeySequence::Save, QStringLiteral("save"), [this] { save(); }, working, {}});
  actions_.add({QStringLiteral("file.saveAs"), tr("Save &as…"), tr("Save the plan under another name"),
                QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_S), QStringLiteral("save-as"), [this] { saveAs(); }, working, {}});
  actions_.add({QStringLiteral("file.back"), tr("&Back to the plan"), tr("Go on with the plan that is open"),
                QKeySequence(Qt::CTRL | Qt::Key_End), {}, [this] { turnTo(Page::Work); },
                {[this, working] {
                  return !working() && (controller_.isModified() || !controller_.file().path.isEmpty());
                }, tr("The plan is in front already, or none is open")}});
  actions_.add({QStringLiteral("file.quit"), tr("&Quit"), tr("Close every window; each asks when its plan is not saved"),
                QKeySequence(Qt::CTRL | Qt::Key_Q), {}, [this] { quitAll(); }, {}, {}});
}

void MainWindow::tellError(const QString& text) {
  messages_->say({Message::Kind::Caution, text, {}, QStringLiteral("file")});
}

void MainWindow::askBeforeLeaving(const QString& question, std::function<void()> go) {
  if (!controller_.isModified()) return go();
  messages_->say({Message::Kind::Caution,
                   tr("“%1” has changes that are not saved. %2")
                       .arg(store::shownTitle(controller_.document(), controller_.file().path), question),
                   {{tr("Save"), [this, go] { save(go); }},
                    {tr("Do not save"),
                     [this, go] {
                       recovery_.close();
                       controller_.replace(controller_.document(), controller_.file());
                       go();
                     }},
                    {tr("Stay"), {}}},
                   kQuestion});
}

void MainWindow::openPath(const QString& path) {
  if (MainWindow* other = windowWith(path); other && other != this) {
    other->turnTo(Page::Work);
    other->comeForward();
    other->messages_->say({Message::Kind::News,
                           tr("%1 was open here already; this window came forward.").arg(QFileInfo(path).fileName()),
                           {}, QStringLiteral("window")});
    return;
  }
  askBeforeLeaving(tr("Save them before opening the other plan?"), [this, path] { openNow(path); });
}

void MainWindow::openNow(const QString& path) {
  Result<store::OpenedPlan> opened = store::openPlan(path);
  if (!opened) return tellError(QString::fromStdString(describe(opened.error())));
  store::OpenedPlan plan = std::move(opened).value();
  settings_.addRecent(plan.file.path, store::shownTitle(plan.plan, plan.file.path));
  settings_.setLastFolder(QFileInfo(plan.file.path).absolutePath());
  messages_->clear(QStringLiteral("file"));
  turnTo(Page::Work);
  controller_.replace(std::move(plan.plan), std::move(plan.file));
}

void MainWindow::beginPlan(plan::Plan plan) {
  messages_->clear(QStringLiteral("file"));
  turnTo(Page::Work);
  controller_.replaceModified(std::move(plan), {});
}

void MainWindow::openRecovered(const store::LeftPlan& left) {
  Result<store::ReadLeftPlan> read = store::readLeftPlan(left);
  if (!read) return tellError(QString::fromStdString(describe(read.error())));
  store::ReadLeftPlan plan = std::move(read).value();
  turnTo(Page::Work);
  controller_.replaceModified(std::move(plan.plan), std::move(plan.file));
  recovery_.writeNow();  // a new snapshot first, then the old one may go
  if (!recovery_.folder().isEmpty()) store::discardLeftPlan(left);
  messages_->clear(QStringLiteral("left"));  // offered once
  messages_->say({Message::Kind::News,
                   tr("Recovered as it was. It is not saved in its file yet."),
                   {},
                   QStringLiteral("file")});
}

void MainWindow::offerRecovery() {
  const std::vector<store::LeftPlan> left = store::findLeftPlans(recoveryRoot_);
  if (left.empty()) return;
  const QString title = left.front().title.isEmpty() ? tr("Untitled plan") : left.front().title;
  const QString text =
      left.size() == 1
          ? tr("“%1” was not closed the last time. Nothing typed is lost.").arg(title)
          : tr("%1 plans were not closed the last time. Nothing typed is lost.").arg(left.size());
  if (left.size() == 1)
    messages_->say({Message::Kind::News, text,
                     {{tr("Open it"), [this, one = left.front()] {
                         askBeforeLeaving(tr("Save them before opening the other plan?"), [this, one] { openRecovered(one); });
                       }},
                      {tr("Later"), {}}},
                     QStringLiteral("left")});
  else
    messages_->say({Message::Kind::News, text,
                     {{tr("Show them"), [this] { showStart(); }}, {tr("Later"), {}}},
                     QStringLiteral("left")});
}

void MainWindow::openDialog() {
  auto* dialog = new QFileDialog(this, tr("Open a plan"), settings_.lastFolder(), fileFilter());
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  dialog->setFileMode(QFileDialog::ExistingFile);
  connect(dialog, &QFileDialog::fileSelected, this, &MainWindow::openPath);
  dialog->open();
}

void MainWindow::save(std::function<void()> then) {
  // What is being typed belongs to the plan too.
  if (QWidget* typing = focusWidget(); typing && typing->hasFocus()) {
    typing->clearFocus();
    typing->setFocus();
  }
  const document::FileIdentity& file = controller_.file();
  if (file.path.isEmpty()) return saveAs(std::move(then));
  if (store::isChangedOnDisk(file)) {
    messages_->say({Message::Kind::Caution,
                     tr("%1 was changed by someone else since you opened it.").arg(QFileInfo(file.path).fileName()),
                     {{tr("Save as…"), [this, then] { saveAs(then); }},
                      {tr("Replace it"), [this, then, path = file.path] { writeTo(path, then); }},
                      {tr("Stay"), {}}},
                     kQuestion});
    return;
  }
  writeTo(file.path, then);
}

void MainWindow::saveAs(std::function<void()> then) {
  auto* dialog = new QFileDialog(this, tr("Save the plan as"), settings_.lastFolder(), fileFilter());
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  dialog->setAcceptMode(QFileDialog::AcceptSave);
  dialog->setDefaultSuffix(QStringLiteral("json"));
  QString name = store::shownTitle(controller_.document(), controller_.file().path);
  for (QChar& c : name)
    if (!c.isLetterOrNumber()) c = u'-';
  dialog->selectFile(name.toLower() + QStringLiteral(".json"));
  connect(dialog, &QFileDialog::fileSelected, this,
          [this, then](const QString& path) { writeTo(path, then); });
  dialog->open();
}

void MainWindow::writeTo(const QString& path, const std::function<void()>& then) {
  const Result<document::FileIdentity> saved = store::savePlan(controller_.document(), path);
  if (!saved) {
    messages_->say({Message::Kind::Caution,
                     tr("Not saved: %1").arg(QString::fromStdString(describe(saved.error()))),
                     {{tr("Save a copy elsewhere…"), [this, then] { saveAs(then); }}, {tr("Stay"), {}}},
                     QStringLiteral("file")});
    return;
  }
  messages_->clear(QStringLiteral("file"));
  controller_.markSaved(*saved);
  recovery_.close();
  settings_.addRecent(saved->path, store::shownTitle(controller_.document(), saved->path));
  settings_.setLastFolder(QFileInfo(saved->path).absolutePath());
  if (then) then();
}

}  // namespace combdraft::desk
