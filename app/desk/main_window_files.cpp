// The window's part that opens, saves and recovers plans.
#include <QFileDialog>
#include <QFileInfo>
#include <QRandomGenerator>

#include "app/appointment/appointment_page.h"
#include "app/desk/error_text.h"
#include "app/desk/main_window.h"
#include "app/desk/message_bar.h"
#include "app/desk/message_topics.h"
#include "app/desk/new_plan_page.h"
#include "app/store/plan_store.h"
#include "app/words/engine_words.h"
#include "engine/plan/plan_file.h"
#include "engine/plan/share.h"

namespace combdraft::desk {
namespace {

QString fileFilter() { return MainWindow::tr("Plans (*.json);;All files (*)"); }
QLatin1String previousEnding() { return QLatin1String(plan::kPreviousEnding.data(), static_cast<qsizetype>(plan::kPreviousEnding.size())); }

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
  actions_.add({QStringLiteral("file.saveAs"), tr("Save &as…"), tr("Save the plan under another name, for the same client"),
                QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_S), QStringLiteral("save-as"), [this] { saveAs(); }, shown, {}});
  actions_.add({QStringLiteral("file.forAnother"), tr("Begin another client's plan with it"),
                tr("The drawing as a new plan: without client data, notes, photos, agreed picture, visits and log"),
                {}, {}, [this] { beginForAnother(); }, shown, {}});
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

void MainWindow::takeTyping() {
  const QPointer<QWidget> typing = focusWidget();
  if (!typing || !typing->hasFocus()) return;
  typing->clearFocus();
  if (typing) typing->setFocus();
}

void MainWindow::askBeforeLeaving(const QString& question, std::function<void()> go) {
  takeTyping();
  if (!controller_.isModified()) return leaveClient(go);
  const std::function<void()> leave = [this, go] { leaveClient(go); };
  messages_->say({Message::Kind::Caution,
                   tr("“%1” has changes that are not saved. %2")
                       .arg(store::shownTitle(controller_.document(), controller_.file().path), question),
                   {{tr("Save"), [this, leave] { save(leave); }},
                    {tr("Do not save…"), [this, leave] { askBeforeLosing(leave); }},
                    {tr("Stay"), [this] { stayOpen(); }}},
                   kQuestion});
}

void MainWindow::askBeforeLosing(const std::function<void()>& go) {
  const QString title = store::shownTitle(controller_.document(), controller_.file().path);
  messages_->say({Message::Kind::Caution,
                  controller_.file().path.isEmpty() ? tr("“%1” was never saved: all of it goes for good.").arg(title)
                                                    : tr("What was changed in “%1” since its last save goes for good.").arg(title),
                  {{tr("Throw it away"), go},  // what comes instead takes the snapshot away, once it is there
                   {tr("Stay"), [this] { stayOpen(); }}},
                  kQuestion});
}

void MainWindow::beginForAnother() {
  askBeforeLeaving(tr("Save them before the other client's plan begins?"), [this] {
    const QString title = store::shownTitle(controller_.document(), controller_.file().path);
    beginPlan(plan::sharedCopy(controller_.document(), QRandomGenerator::system()->generate64()));
    messages_->say({Message::Kind::News,
                    tr("A new plan, begun with the drawing of “%1” and not saved yet. Look at its title, its head and hair with their history, its "
                       "formulas and texts: they came along. Nothing of the client did.").arg(title),
                    {}, QStringLiteral("file")});
  });
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
  if (!opened) return tellNotOpened(path, opened.error());
  if (path.endsWith(previousEnding())) {  // saving must not write there
    beginPlan(std::move(opened).value().plan);
    return messages_->say({Message::Kind::News,
                           tr("This is what %1 was before its last save, as a plan that is not saved yet.").arg(QFileInfo(path).fileName().chopped(previousEnding().size())),
                           {}, QStringLiteral("file")});
  }
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
                         .arg(QFileInfo(path).fileName(), QString::number(plan.migration.from), QString::number(plan.migration.to),
                              previousEnding()),
                     {}, kFormat});
  turnTo(Page::Work);
  controller_.replace(std::move(plan.plan), std::move(plan.file));
  takeLock(controller_.file().path);
}

void MainWindow::tellNotOpened(const QString& path, const Error& error) {
  if (error.code == ErrorCode::VersionTooNew)
    return tellError(tr("Not opened, and left as it was: %1 is of a newer program (format %2; this one reads up to format %3). Open it where it was saved, or with a newer program.")
                         .arg(QFileInfo(path).fileName(), QString::fromStdString(error.args.at(0)), QString::fromStdString(error.args.at(1))));
  const QString text = tr("Not opened, and left as it was. %1.").arg(errorText(error)), before = path + previousEnding();
  if (!QFileInfo::exists(before)) return tellError(text);
  messages_->say({Message::Kind::Caution,
                  tr("%1 The version before its last save is beside it.").arg(text),
                  {{tr("Open the version before, as a copy"), [this, before] { openPath(before); }}, {tr("Close"), {}}},
                  QStringLiteral("file")});
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
  takeTyping();
  const document::FileIdentity& file = controller_.file();
  if (file.path.isEmpty()) return saveAs(std::move(then));
  if (store::isChangedOnDisk(file)) {
    messages_->say({Message::Kind::Caution,
                     tr("%1 was saved by someone else meanwhile. Yours is still here, not saved. If you put it in its place, theirs is kept "
                        "beside it until the save after that; taps, visits and agreed pictures are put together where that can be.").arg(QFileInfo(file.path).fileName()),
                     {{tr("Save as…"), [this, then] { saveAs(then); }},
                      {tr("Put mine in its place"),
                       [this, then, path = file.path] {
                         (void)takeRecordsOf(path);
                         writeTo(path, then);
                       }},
                      {tr("Read it anew"), [this] { readAnew(); }},
                      {tr("Stay"), {}}},
                     kQuestion});
    return;
  }
  writeTo(file.path, then);
}

void MainWindow::saveAs(std::function<void()> then) {
  auto* dialog = new QFileDialog(this, tr("Save the plan; its name is seen: by the plan, not by a person"), settings_.lastFolder(), fileFilter());
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
  if (ifInUse == IfInUse::Ask && path != controller_.file().path && store::isProtected(path)) {
    messages_->say({Message::Kind::Caution, tr("%1 is write-protected. Saving would change it all the same.").arg(QFileInfo(path).fileName()),
                    {{tr("Save as…"), [this, then] { saveAs(then); }},
                     {tr("Replace it"), [this, path, then] { writeTo(path, then, IfInUse::WriteAnyway); }},
                     {tr("Stay"), {}}},
                    kQuestion});
    return;
  }
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
  if (!saved && saved.error().code == ErrorCode::FileNotSynced) {
    if (path == controller_.file().path) {  // what stands there is this, and not another program's
      controller_.markDiffering({path, store::contentKeyOf(path)});
      messages_->clear(kOnDisk);
      messages_->clear(kQuestion);
    }
    messages_->say({Message::Kind::Caution,
                    tr("%1 was written, but the disk did not confirm it (%2): it may not outlive a power cut. Your work is still open here.")
                        .arg(QFileInfo(path).fileName(), words::inWords(saved.error().args.empty() ? std::string() : saved.error().args.front())),
                    {{tr("Try again"), [this, path, then] { path == controller_.file().path ? save(then) : writeTo(path, then); }},
                     {tr("Save it elsewhere…"), [this, then] { saveAs(then); }},
                     {tr("Go on working"), {}}},
                    QStringLiteral("file")});
    return;
  }
  if (!saved) {
    const QString why = tr("Not saved. %1.").arg(errorText(saved.error()));
    messages_->say({Message::Kind::Caution,
                     path == controller_.file().path && QFileInfo::exists(path) && !store::isChangedOnDisk(controller_.file()) ? tr("%1 Your work is still open here, and the file holds what it held before. Do not close this window.").arg(why)
                                             : tr("%1 Your work is still open here. Do not close this window.").arg(why),
                     {{tr("Save it elsewhere…"), [this, then] { saveAs(then); }},
                      {tr("Try again"), [this, path, then] { writeTo(path, then); }},
                      {tr("Go on working"), {}}},
                     QStringLiteral("file")});
    return;
  }
  const QString before = controller_.file().path;
  if (!planLock_.isHeldFor(path)) planLock_ = std::move(next);
  messages_->clear(QStringLiteral("file"));
  messages_->clear(kInUse);
  messages_->clear(kOnDisk);
  messages_->clear(kQuestion);  // what it asked of the file is answered
  controller_.markSaved(*saved);
  controller_.setAccess(document::DocumentController::Access::Full);
  recovery_.close();
  settings_.addRecent(saved->path, store::shownTitle(controller_.document(), saved->path));
  settings_.setLastFolder(QFileInfo(saved->path).absolutePath());
  appointment_->log().setUnwritten(false);
  if (!before.isEmpty() && before != saved->path) {
    const bool areNamedAlike = QFileInfo(before).fileName() == QFileInfo(saved->path).fileName();
    const auto named = [&](const QString& file) { return areNamedAlike ? file : QFileInfo(file).fileName(); };
    messages_->say({Message::Kind::News, tr("Saved as %1. You go on in it; %2 stays as its last save left it.").arg(named(saved->path), named(before)), {}, QStringLiteral("file")});
  }
  if (then)
    then();
  else
    stayOpen();  // no window closes with this one
}

}  // namespace combdraft::desk
