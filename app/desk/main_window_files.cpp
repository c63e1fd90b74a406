// The window's part that opens, saves and recovers plans.
#include <QFileDialog>
#include <QFileInfo>
#include <QRandomGenerator>

#include "app/desk/error_text.h"
#include "app/desk/main_window.h"
#include "app/desk/message_bar.h"
#include "app/desk/message_topics.h"
#include "app/desk/new_plan_page.h"
#include "app/store/plan_store.h"
#include "engine/plan/plan_file.h"

namespace combdraft::desk {
namespace {

QString fileFilter() { return MainWindow::tr("Plans (*.json);;All files (*)"); }

}  // namespace

void MainWindow::declareFileActions() {
  const Condition working = whileWorking(), shown = whilePlanShown();
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
                QKeySequence::Save, QStringLiteral("save"), [this] { save(); }, shown, {}});
  actions_.add({QStringLiteral("file.saveAs"), tr("Save &as…"), tr("Save the plan under another name"),
                QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_S), QStringLiteral("save-as"), [this] { saveAs(); }, shown, {}});
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
                     go},  // what comes instead takes the snapshot away, once it is there
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

void MainWindow::openBeside(const QString& path) {
  const bool isFree = controller_.file().path.isEmpty() && !controller_.isModified();
  (isFree || windowWith(path) ? this : newWindow())->openPath(path);
}

void MainWindow::openNow(const QString& path) {
  Result<store::OpenedPlan> opened = store::openPlan(path);
  if (!opened) return tellError(errorText(opened.error()));
  store::OpenedPlan plan = std::move(opened).value();
  if (places_.session) places_.session->thaw();
  settings_.addRecent(plan.file.path, store::shownTitle(plan.plan, plan.file.path));
  settings_.setLastFolder(QFileInfo(plan.file.path).absolutePath());
  messages_->clear(QStringLiteral("file"));
  if (plan.migration.isNone())
    messages_->clear(kFormat);
  else
    messages_->say({Message::Kind::News,
                     tr("%1 was written by an older program (format %2) and was read as format %3. Your next save writes the newer one; this file is "
                        "then kept beside it as %1%4 until the save after that.")
                         .arg(QFileInfo(path).fileName()).arg(plan.migration.from).arg(plan.migration.to)
                         .arg(QLatin1String(plan::kPreviousEnding.data(), static_cast<qsizetype>(plan::kPreviousEnding.size()))),
                     {}, kFormat});
  turnTo(Page::Work);
  controller_.replace(std::move(plan.plan), std::move(plan.file));
  takeLock(controller_.file().path);
}

void MainWindow::beginPlan(plan::Plan plan) {
  messages_->clear(QStringLiteral("file"));
  messages_->clear(kInUse);
  messages_->clear(kOnDisk);
  planLock_.giveBack();
  if (places_.session) places_.session->thaw();
  turnTo(Page::Work);
  controller_.replaceModified(std::move(plan), {});
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
                      {tr("Read it anew"), [this] { readAnew(); }},
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
  dialog->setDefaultSuffix(QLatin1String(store::kPlanEnding));
  QString name = store::shownTitle(controller_.document(), controller_.file().path);
  for (QChar& c : name)
    if (!c.isLetterOrNumber()) c = u'-';
  dialog->selectFile(name.toLower() + u'.' + QLatin1String(store::kPlanEnding));
  connect(dialog, &QFileDialog::fileSelected, this,
          [this, then](const QString& path) { writeTo(path, then); });
  dialog->open();
}

void MainWindow::writeTo(const QString& path, const std::function<void()>& then, IfInUse ifInUse) {
  // The lock that is held stays until the plan stands in its new place.
  store::PlanLock next;
  if (!planLock_.isHeldFor(path) && next.take(path) == store::PlanLock::Standing::Others && ifInUse == IfInUse::Ask) {
    messages_->say({Message::Kind::Caution,
                    tr("%1 is open elsewhere: %2. Saving would change it there.").arg(QFileInfo(path).fileName(), holderText(next.holder())),
                    {{tr("Save as…"), [this, then] { saveAs(then); }},
                     {tr("Replace it"), [this, path, then] { writeTo(path, then, IfInUse::WriteAnyway); }},
                     {tr("Stay"), {}}},
                    kQuestion});
    return;
  }
  const Result<document::FileIdentity> saved = store::savePlan(controller_.document(), path);
  if (!saved) {
    messages_->say({Message::Kind::Caution,
                     tr("Not saved: %1").arg(errorText(saved.error())),
                     {{tr("Save a copy elsewhere…"), [this, then] { saveAs(then); }}, {tr("Stay"), {}}},
                     QStringLiteral("file")});
    return;
  }
  if (!planLock_.isHeldFor(path)) planLock_ = std::move(next);
  messages_->clear(QStringLiteral("file"));
  messages_->clear(kInUse);
  messages_->clear(kOnDisk);
  controller_.markSaved(*saved);
  controller_.setAccess(document::DocumentController::Access::Full);
  recovery_.close();
  settings_.addRecent(saved->path, store::shownTitle(controller_.document(), saved->path));
  settings_.setLastFolder(QFileInfo(saved->path).absolutePath());
  if (then) then();
}

}  // namespace combdraft::desk
