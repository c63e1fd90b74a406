// The window's part that keeps a plan from harm: one writer, changes from
// outside, edits that were refused, and what to say after a fault.
#include <QFileInfo>
#include <QLocale>
#include <QPlainTextEdit>
#include <algorithm>
#include <optional>
#include <set>

#include "app/desk/error_text.h"
#include "app/desk/fault_page.h"
#include "app/desk/main_window.h"
#include "app/desk/message_bar.h"
#include "app/desk/message_topics.h"
#include "app/paint/check_words.h"
#include "app/store/plan_store.h"
#include "engine/plan/agreement.h"
#include "engine/plan/validate.h"
#include "engine/work/appointment_log.h"
#include "engine/work/join_logs.h"
#include "engine/work/log_text.h"

namespace combdraft::desk {
namespace {

using Access = document::DocumentController::Access;

const QString kFault = QStringLiteral("fault");
const QString kRefused = QStringLiteral("refused");
const QString kRecords = QStringLiteral("records");

// Commands that change the plan or its file. Whatever else would, the
// controller refuses.
bool changesPlan(const QString& id) {
  static const std::set<QString> kIds{
      QStringLiteral("file.save"),   QStringLiteral("edit.undo"),     QStringLiteral("edit.redo"),
      QStringLiteral("edit.cut"),    QStringLiteral("edit.paste"),    QStringLiteral("choice.copy"),
      QStringLiteral("choice.empty"), QStringLiteral("choice.rename"), QStringLiteral("choice.remove"),
      QStringLiteral("choice.next"), QStringLiteral("choice.take"),   QStringLiteral("choice.aim"),
      QStringLiteral("choice.suggest")};
  const bool isTool = id.startsWith(QLatin1String("tool.")) && id != QLatin1String("tool.select") && id != QLatin1String("tool.measure");
  return isTool || id.startsWith(QLatin1String("piece.")) || kIds.contains(id);
}

QString fileName(const document::FileIdentity& file) { return QFileInfo(file.path).fileName(); }

QString roomText(const document::NoRoom& room) {
  using For = document::NoRoom::For;
  const QString found = QLocale().toString(static_cast<qulonglong>(room.found));
  const QString most = QLocale().toString(static_cast<qulonglong>(room.most));
  QString what;
  switch (room.what) {
    case For::Pieces: what = MainWindow::tr("the plan would have %1 pieces; a plan file holds at most %2"); break;
    case For::Sections: what = MainWindow::tr("the plan would have %1 sections; a plan file holds at most %2"); break;
    case For::Formulas: what = MainWindow::tr("the plan would have %1 formulas; a plan file holds at most %2"); break;
    case For::Treatments: what = MainWindow::tr("the plan would have %1 root shadows and glazes; a plan file holds at most %2"); break;
    case For::Notes: what = MainWindow::tr("the plan would have %1 notes; a plan file holds at most %2"); break;
    case For::Choices: what = MainWindow::tr("the plan would have %1 choices; a plan file holds at most %2"); break;
    case For::Points: what = MainWindow::tr("the plan would have %1 points in all; a plan file holds at most %2"); break;
    case For::LinePoints: what = MainWindow::tr("a line would have %1 points; a plan file holds at most %2"); break;
    case For::OutlinePoints: what = MainWindow::tr("an outline would have %1 points; a plan file holds at most %2"); break;
    case For::Text: what = MainWindow::tr("a text would be too long (%1); a plan file holds at most about %2 letters of it"); break;
    case For::Name: what = MainWindow::tr("a name would be too long (%1); a plan file holds at most about %2 letters of it"); break;
    case For::FileBytes: what = MainWindow::tr("the plan would have %1 bytes; a plan file holds at most %2"); break;
    case For::FileValues: what = MainWindow::tr("the plan would be too large for one file (%1 of %2 values); remove something, or go on in a second plan"); break;
  }
  return what.arg(found, most);
}

QString valueText(const plan::FieldProblem& value) {
  return words::inWords(plan::sentenceOf({plan::IssueCode::ValueOutOfRange, plan::Severity::Error, {}, {value.field, value.found, value.allowed}}));
}

// What stands outside undo, of file and window, as one text; nothing where that cannot be
// without losing one of them.
using OfBoth = std::optional<std::string>;

// The file's agreement, with mine among the earlier ones.
OfBoth agreedOfBoth(const std::string& theirs, const std::string& mine) {
  const Result<plan::Agreement> file = plan::readAgreement(theirs), ours = plan::readAgreement(mine);
  if (!file || !ours) return {};
  plan::Agreement both = plan::withEarlier(*file, mine);
  for (const std::string& one : file->earlier)
    if (std::find(both.earlier.begin(), both.earlier.end(), one) == both.earlier.end()) both.earlier.push_back(one);
  const Result<std::string> text = plan::writeAgreement(both);
  return text ? OfBoth(*text) : OfBoth();
}

// Every tap of both: an appointment may go on here while an older state of the file comes
// back from elsewhere.
OfBoth logOfBoth(const std::string& theirs, const std::string& mine) {
  const Result<work::AppointmentLog> file = work::readLog(theirs), ours = work::readLog(mine);
  if (!file || !ours) return {};
  const work::AppointmentLog both = work::joined(*file, *ours);
  if (both.events.size() > work::kMostTaps) return {};  // no program would read it
  return work::writeLog(both);
}

// This program only keeps visits as they were found.
OfBoth visitsOfBoth(const std::string&, const std::string&) { return {}; }

// Where only one side has some there is nothing to put together, read or not.
OfBoth recordOfBoth(const std::string& theirs, const std::string& mine, OfBoth (*together)(const std::string&, const std::string&)) {
  if (mine.empty()) return theirs;
  if (theirs.empty() || theirs == mine) return mine;
  return together(theirs, mine);
}

}  // namespace

QString holderText(const store::PlanHolder& holder) {
  if (holder.isThisProgram) return MainWindow::tr("in another window of this program");
  if (holder.process == 0) return MainWindow::tr("somewhere else (it is not known where)");
  const QString who = holder.program.isEmpty() ? MainWindow::tr("another program") : holder.program;
  return holder.computer.isEmpty() ? MainWindow::tr("in %1").arg(who)
                                   : MainWindow::tr("in %1 on the computer “%2”").arg(who, holder.computer);
}

void MainWindow::declareKeepingActions() {
  actions_.add({QStringLiteral("file.openAnyway"), tr("Chan&ge it anyway"),
                tr("Change a plan that is open elsewhere too; whoever saves second must choose between the two"), {}, {}, [this] { openAnyway(); },
                {[this] { return whileWorking()() && controller_.access() == Access::ReadOnly; }, tr("Only for a plan that may only be read")}});
  actions_.add({QStringLiteral("file.openAsCopy"), tr("Work on a &copy"),
                tr("What may only be read becomes a plan of your own for the same client, not saved yet"), {}, {}, [this] { openAsCopy(); },
                {[this] { return whileWorking()() && controller_.access() == Access::ReadOnly; }, tr("Only for a plan that may only be read")}});
  actions_.add({QStringLiteral("file.faults"), tr("Reports of &faults…"),
                tr("What the program wrote down when it ended itself; nothing is ever sent"), {}, {},
                [this] { turnTo(Page::Faults); }});
  actions_.add({QStringLiteral("view.workOutLook"), tr("Work o&ut the look"),
                tr("The plan was opened without the look; this works it out now"), {}, {}, [this] { resumeLook(); },
                {[this] { return whileWorking()() && lookPaused_; }, tr("The look is worked out by itself")}});
}

void MainWindow::connectKeeping() {
  using document::DocumentController;
  connect(&controller_, &DocumentController::editRefused, this, &MainWindow::sayRefused);
  connect(&controller_, &DocumentController::changed, this, [this](const document::DocumentChange& change) {
    // A question is about the plan for which it was asked: its buttons must not reach another.
    if (change.kind != document::DocumentChange::Kind::Replaced) return;
    for (const QString& topic : {kQuestion, kOnDisk, kRecords, QStringLiteral("file")}) messages_->clear(topic);
  });
  connect(&controller_, &DocumentController::accessChanged, this, [this] {
    if (controller_.access() == Access::Full)
      messages_->clear(kInUse);
    else
      view_.setTool(document::Tool::Select);  // nothing can be drawn
    titleChanged();
    actions_.refresh();
  });
  actions_.setHold([this](const QString& id) {
    if (showing_ != Showing::Desk) return tr("Come back to the desk first");
    if (controller_.access() == Access::Full || !changesPlan(id)) return QString();
    return inUseBy_.isEmpty() ? tr("This plan may only be read: its file is write-protected. Change it anyway, or work on a copy")
                              : tr("This plan may only be read: it is open elsewhere. Change it anyway, or work on a copy");
  });
  connect(&fileWatch_, &store::FileWatch::changedOnDisk, this, &MainWindow::sayChanged);
  connect(&fileWatch_, &store::FileWatch::goneFromDisk, this, &MainWindow::sayGone);
  connect(&fileWatch_, &store::FileWatch::asKnownAgain, this, [this] { messages_->clear(kOnDisk); });
  connect(faults_, &FaultPage::done, this, [this] { turnBack(); });
  connect(faults_, &FaultPage::removeWanted, this, [this] {
    removeReports();
    faults_->fill(store::findFaultReports(places_.faultFolder));
  });
  connect(faults_, &FaultPage::copied, this,
          [this] { messages_->say({Message::Kind::News, tr("The report is on the clipboard. Nothing was sent."), {}, kFault}); });
  if (!settingsTrouble_.isEmpty() && allWindows().size() == 1)  // said once
    messages_->say({Message::Kind::Caution, settingsTrouble_, {}, QStringLiteral("settings")});
}

// ---- one writer ---------------------------------------------------------------

void MainWindow::takeLock(const QString& path) {
  messages_->clear(kInUse);
  messages_->clear(kOnDisk);
  switch (planLock_.take(path)) {
    case store::PlanLock::Standing::Others: {
      const store::PlanHolder holder = planLock_.holder();
      planLock_ = {};  // of the plan before
      inUseBy_ = holderText(holder);
      controller_.setAccess(Access::ReadOnly);
      return sayInUse();
    }
    case store::PlanLock::Standing::CannotTell:
      if (store::isProtected(path)) return sayProtected();
      return messages_->say({Message::Kind::News,
                             tr("This folder does not let the program write beside %1. If it is opened elsewhere too, you are not told; "
                                "and where saving fails, a copy elsewhere is offered.").arg(QFileInfo(path).fileName()),
                             {}, kInUse});
    case store::PlanLock::Standing::Held:
    case store::PlanLock::Standing::None:
      if (store::isProtected(path)) sayProtected();
  }
}

// Replacing a file asks its folder, not the file: what someone protected is looked at only.
void MainWindow::sayProtected() {
  inUseBy_.clear();
  controller_.setAccess(Access::ReadOnly);
  messages_->say({Message::Kind::Caution,
                  tr("%1 is write-protected. Looking changes nothing. If you change it anyway, saving replaces it.").arg(fileName(controller_.file())),
                  {{tr("Change it anyway"), [this] { openAnyway(); }},
                   {tr("Work on a copy"), [this] { openAsCopy(); }},
                   {tr("Just look"), {}}},
                  kInUse});
}

void MainWindow::sayInUse() {
  messages_->say({Message::Kind::Caution,
                  tr("%1 is already open %2. Looking changes nothing. If it is changed in both places, whoever saves second must choose between the two.").arg(fileName(controller_.file()), inUseBy_),
                  {{tr("Change it anyway"), [this] { openAnyway(); }},
                   {tr("Work on a copy"), [this] { openAsCopy(); }},
                   {tr("Just look"), {}}},
                  kInUse});
}

void MainWindow::openAnyway() {
  (void)planLock_.takeAnyway(controller_.file().path);
  controller_.setAccess(Access::Full);
  fileWatch_.look();  // it may have been saved elsewhere meanwhile
}

void MainWindow::openAsCopy() {
  planLock_.giveBack();
  controller_.replaceModified(controller_.document(), {});
  messages_->clear(kInUse);
  messages_->say({Message::Kind::News, tr("This is a copy for the same client, not saved yet: it keeps the client's answers, the agreed picture and the log. For "
                                            "another client: Plan, Begin another client's plan with it."), {}, QStringLiteral("file")});
}

void MainWindow::sayRefused(const document::Refusal& refusal) {
  if (refusal.why == document::Refusal::Why::ReadOnly) return inUseBy_.isEmpty() ? sayProtected() : sayInUse();
  if (refusal.why == document::Refusal::Why::WrongValue)
    return messages_->say({Message::Kind::Caution, tr("Not changed: a file could not hold it. %1.").arg(valueText(refusal.value)), {}, kRefused});
  if (refusal.why == document::Refusal::Why::OffHead)
    return messages_->say({Message::Kind::Caution,
                           tr("Not changed: on a head like that %1 would lie off the hair, and the plan could not be saved. Move or remove it first.")
                               .arg(paint::itemName(controller_.document(), refusal.item)),
                           {}, kRefused});
  messages_->say({Message::Kind::Caution, tr("Not done: %1.").arg(roomText(refusal.room)), {}, kRefused});
}

// ---- changes from outside -------------------------------------------------------

void MainWindow::sayChanged() {
  const document::FileIdentity file = controller_.file();
  messages_->say({Message::Kind::Caution,
                  controller_.isModified() ? tr("%1 was saved meanwhile by someone else or another program; you have changes here too.").arg(fileName(file))
                                           : tr("%1 was saved meanwhile by someone else or another program.").arg(fileName(file)),
                  {{tr("Read it anew"), [this] { readAnew(); }},
                   {tr("Save as…"), [this] { saveAs(); }},
                   {tr("Keep mine"),
                    [this] {
                      const document::FileIdentity now = controller_.file();
                      const bool ofBoth = takeRecordsOf(now.path);
                      controller_.markDiffering({now.path, store::contentKeyOf(now.path)});
                      messages_->say({Message::Kind::News,
                                      (ofBoth ? tr("Yours stays, unsaved, with the taps, visits and agreed pictures of both. Your next save replaces the other version, "
                                                   "which stands beside it as %1.previous until the save after that; Save as… keeps both.")
                                              : tr("Yours stays, unsaved. Your next save replaces the other version, which stands beside it as %1.previous "
                                                   "until the save after that; Save as… keeps both.")).arg(fileName(now)),
                                      {}, kOnDisk});
                    }},
                   {tr("Decide later"), {}}},
                  kOnDisk});
}

void MainWindow::sayGone() {
  controller_.markDiffering(controller_.file());
  messages_->say({Message::Kind::Caution,
                  tr("%1 is not there any more: it was moved, renamed or deleted. It is still open in this window; save it to keep it.")
                      .arg(fileName(controller_.file())),
                  {{tr("Save it there again"), [this] { writeTo(controller_.file().path, {}); }},
                   {tr("Save as…"), [this] { saveAs(); }},
                   {tr("Stay"), {}}},
                  kOnDisk});
}

void MainWindow::readAnew() {
  if (!controller_.isModified()) return readAnewNow();
  messages_->say({Message::Kind::Caution,
                  tr("Your changes would give way to what stands in %1. Undo brings back all but agreed picture, visits and log until you close this window. "
                     "Of these, the file's and yours are put together; where that cannot be, yours stay.").arg(fileName(controller_.file())),
                  {{tr("Read it anew"), [this] { readAnewNow(); }}, {tr("Stay"), {}}},
                  kQuestion});
}

// One step of undo; what stands outside undo is put together, or stays as it is here.
void MainWindow::readAnewNow() {
  const Result<store::OpenedPlan> opened = store::openPlan(controller_.file().path);
  if (!opened) {
    messages_->say({Message::Kind::Caution, tr("Not read anew. %1. Yours is still open here, as it was.").arg(errorText(opened.error())),
                    {{tr("Try again"), [this] { readAnewNow(); }}, {tr("Save as…"), [this] { saveAs(); }}, {tr("Stay"), {}}}, kOnDisk});
    return;
  }
  if (clientOf(opened->plan) != clientOf(controller_.document())) {
    messages_->say({Message::Kind::Caution,
                    tr("Not read anew: %1 holds another client's plan now, and what is kept of this client stands in this window. Yours is still open here, as it was.").arg(fileName(controller_.file())),
                    {{tr("Open it instead"), [this, path = controller_.file().path] { askBeforeLeaving(tr("Save them before opening the other plan?"), [this, path] { openNow(path); }); }},
                     {tr("Save as…"), [this] { saveAs(); }},
                     {tr("Stay"), {}}}, kOnDisk});
    return;
  }
  messages_->clear(kOnDisk);
  messages_->clear(kQuestion);
  if (controller_.access() == Access::ReadOnly) {
    controller_.replace(opened->plan, opened->file);
    controller_.setAccess(Access::ReadOnly);
    return;
  }
  using document::DocumentController;
  if (controller_.edit(opened->plan, tr("Read anew from the disk")) == DocumentController::Outcome::Refused) return;
  const QStringList stay = bringRecords(opened->plan.info(), Current::Theirs);
  controller_.markSaved(opened->file);
  if (!(controller_.document() == opened->plan)) controller_.markDiffering(opened->file);
  if (!stay.isEmpty()) sayRecordsStay(stay);
}

// Taps, visits and what was agreed are nobody's to overwrite: those of both stand afterwards.
// Which of them could not be put together, and so are as they are here.
QStringList MainWindow::bringRecords(const plan::PlanInfo& theirs, Current current) {
  using document::DocumentController;
  const plan::PlanInfo mine = controller_.document().info();
  QStringList stay;
  const auto bring = [&](DocumentController::Record which, const OfBoth& both, const QString& what) {
    if (!both || controller_.record(which, *both) == DocumentController::Outcome::Refused) stay << what;
  };
  bring(DocumentController::Record::Agreed,
        current == Current::Theirs ? recordOfBoth(theirs.agreedJson, mine.agreedJson, agreedOfBoth)
                                   : recordOfBoth(mine.agreedJson, theirs.agreedJson, agreedOfBoth),
        tr("the agreed picture"));
  bring(DocumentController::Record::Visits, recordOfBoth(theirs.visitsJson, mine.visitsJson, visitsOfBoth), tr("the visits"));
  bring(DocumentController::Record::Log, recordOfBoth(theirs.logJson, mine.logJson, logOfBoth), tr("the log"));
  return stay;
}

// Before mine replaces what someone else saved of the same client's plan. Whether all of it is
// in mine now; what is not is said.
bool MainWindow::takeRecordsOf(const QString& path) {
  if (controller_.access() == Access::ReadOnly) return false;  // nothing of mine replaces it
  const Result<store::OpenedPlan> theirs = store::openPlan(path);
  QStringList stay{tr("the agreed picture"), tr("the visits"), tr("the log")};
  if (theirs && clientOf(theirs->plan) == clientOf(controller_.document())) stay = bringRecords(theirs->plan.info(), Current::Mine);
  messages_->clear(kRecords);
  if (stay.isEmpty()) return true;
  messages_->say({Message::Kind::Caution,
                  tr("Of the other version these are not in yours: %1. It is another client's plan, one of the two cannot be read by this program, or both are too much "
                     "for one file. The other version stands beside %2 as %2.previous until the save after that.").arg(stay.join(QStringLiteral(", ")), QFileInfo(path).fileName()),
                  {}, kRecords});
  return false;
}

void MainWindow::sayRecordsStay(const QStringList& which) {
  messages_->say({Message::Kind::Caution,
                  tr("Read anew, except: %1. What stands in %2 of it cannot be put together with yours: one of the two cannot be read by this program, or "
                     "both are too much for one file. Yours stays. Your next save replaces the file's, which stands beside it as %2.previous until the "
                     "save after that; Save as… keeps both.").arg(which.join(QStringLiteral(", ")), fileName(controller_.file())),
                  {{tr("Save as…"), [this] { saveAs(); }}, {tr("Decide later"), {}}},
                  kRecords});
}

// ---- faults -------------------------------------------------------------------

void MainWindow::offerFaults() {
  const std::vector<store::FaultReport> reports = store::findFaultReports(places_.faultFolder);
  faults_->fill(reports);
  if (reports.empty()) return;
  // Once for each report; afterwards it waits in the menu.
  const QString newest = QFileInfo(reports.front().path).fileName();
  if (settings_.toldFault() == newest) return;
  settings_.setToldFault(newest);
  QString text = tr("The program stopped because of an error in it.");
  std::vector<MessageChoice> choices;
  if (!store::findLeftPlans(recoveryRoot_).empty()) {
    text += u' ' + tr("Work that was not saved is on the start page.");
    choices.push_back({tr("Show unsaved work"), [this] { showStart(); }});
  }
  choices.push_back({tr("Read the report"), [this] { turnTo(Page::Faults); }});
  choices.push_back({tr("Remove the report"), [this] { removeReports(); }});
  choices.push_back({tr("Later"), {}});
  messages_->say({Message::Kind::Caution, text + u' ' + tr("A report says where in the program; nothing was sent."), std::move(choices), kFault});
}

void MainWindow::removeReports() {
  const Result<void> removed = store::removeFaultReports(store::findFaultReports(places_.faultFolder));
  if (!removed) return tellError(errorText(removed.error()));
  messages_->say({Message::Kind::News, tr("The reports were removed."), {}, kFault});
}

}  // namespace combdraft::desk
