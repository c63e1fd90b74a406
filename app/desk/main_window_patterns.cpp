// The window's part that shows, uses, saves and deletes patterns.
#include <QRandomGenerator>
#include <QStackedWidget>

#include "app/desk/error_text.h"
#include "app/desk/main_window.h"
#include "app/desk/message_bar.h"
#include "app/desk/patterns_page.h"
#include "app/desk/select_by.h"
#include "app/desk/start_page.h"
#include "app/desk/thing_names.h"
#include "app/words/engine_words.h"
#include "engine/plan/edits.h"

namespace combdraft::desk {
namespace {

const QString kTopic = QStringLiteral("pattern");

// What using a pattern left to say, one sentence each.
QStringList remarks(const plan::Plan& after, const plan::UsedPattern& used) {
  QStringList said;
  if (used.isBackcombTakenOut)
    said << MainWindow::tr("Its backcomb was taken out: on tight curls it is chosen by hand, never preset.");
  for (const plan::ItemId& id : used.withoutPieces) {
    const QString label = QString::fromStdString(after.find<plan::Section>(id)->label);
    said << MainWindow::tr("The section “%1” has no room for a piece on this head.").arg(label.isEmpty() ? QString::fromStdString(id) : label);
  }
  for (const plan::Issue& issue : used.issues)
    said << MainWindow::tr("%1: %2.").arg(thingsName(after, issue.items), words::inWords(plan::sentenceOf(issue)));
  return said;
}

}  // namespace

void MainWindow::declarePatternActions() {
  const Condition working = whileWorking();
  actions_.add({QStringLiteral("pattern.show"), tr("Pat&terns…"),
                tr("Whole heads and parts of one to start from: what each is good for, and for which hair it is not"),
                QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_P), {}, [this] { turnTo(Page::Patterns); }, {}, {}, tr("Patterns")});
  actions_.add({QStringLiteral("pattern.save"), tr("Save selected sections as a &pattern…"),
                tr("Keep the selected sections with their rules for other heads"), {}, {},
                [this] {
                  const auto sections = sectionsIn(controller_.document(), controller_.selection());
                  turnTo(Page::Patterns);
                  patterns_->offerSaving(static_cast<int>(sections.size()));
                },
                {[this, working] {
                   return working() && !sectionsIn(controller_.document(), controller_.selection()).empty();
                 },
                 tr("Select a section, or a piece in one, first")}});
}

void MainWindow::connectPatterns() {
  connect(patterns_, &PatternsPage::done, this, [this] { turnBack(); });
  connect(patterns_, &PatternsPage::useWanted, this, [this](const store::StoredPattern& pattern) {
    before_ == Page::Work ? usePattern(pattern) : beginWithPattern(pattern);
  });
  connect(patterns_, &PatternsPage::saveWanted, this, [this](const QString& name, const QString& goodFor, const QString& notFor) {
    const plan::Plan& plan = controller_.document();
    const plan::Parts pattern = plan::patternOf(plan, sectionsIn(plan, controller_.selection()), name.toStdString(),
                                                goodFor.toStdString(), notFor.toStdString());
    const Result<QString> path = store::savePattern(pattern, places_.patternsFolder);
    if (!path)
      return messages_->say({Message::Kind::Caution, errorText(path.error()), {}, kTopic});
    patterns_->closeForm();
    fillPatterns();
    patterns_->reveal(*path);
    messages_->say({Message::Kind::News, tr("“%1” is kept with your patterns.").arg(name), {}, kTopic});
  });
  connect(patterns_, &PatternsPage::removeWanted, this, [this](const store::StoredPattern& pattern) {
    const Result<QByteArray> bytes = store::removePattern(pattern.path);
    fillPatterns();
    if (!bytes)
      return messages_->say({Message::Kind::Caution, errorText(bytes.error()), {}, kTopic});
    messages_->say({Message::Kind::News, tr("“%1” was deleted.").arg(pattern.name()),
                    {{tr("Bring it back"),
                      [this, path = pattern.path, kept = *bytes] {
                        const Result<QString> back = store::putPatternBack(path, kept);
                        fillPatterns();
                        patterns_->reveal(back ? *back : path);
                        if (!back)
                          messages_->say({Message::Kind::Caution, errorText(back.error()), {}, kTopic});
                      }},
                     {tr("Close"), {}}},
                    kTopic});
  });
  connect(start_, &StartPage::patternWanted, this, &MainWindow::beginWithPattern);
  connect(start_, &StartPage::patternsWanted, this, [this] { turnTo(Page::Patterns); });
}

void MainWindow::fillPatterns() {
  patterns_->fill(store::readPatterns(places_.patternsFolder),
                  before_ == Page::Work ? controller_.document() : plan::Plan::fresh(1),
                  before_ == Page::Work ? PatternsPage::Use::OnThisHead : PatternsPage::Use::BeginPlan);
}

void MainWindow::beginWithPattern(const store::StoredPattern& pattern) {
  askBeforeLeaving(tr("Save the changes before the new plan begins?"), [this, pattern] {
    plan::Plan plan = plan::Plan::fresh(QRandomGenerator::system()->generate64());
    plan = plan::applied(plan, plan::changePlan(plan, [&](plan::PlanInfo& info) { info.title = pattern.pattern.name; }));
    beginPlan(std::move(plan));
    usePattern(pattern);
  });
}

void MainWindow::usePattern(const store::StoredPattern& pattern) {
  const Result<plan::UsedPattern> used = plan::usePattern(controller_.document(), pattern.pattern);
  if (!used)
    return messages_->say({Message::Kind::Caution,
                           tr("“%1” cannot be used here. %2").arg(pattern.name(), errorText(used.error())),
                           {}, kTopic});
  turnTo(Page::Work);
  if (bringIn(used->edit, tr("Use the pattern “%1”").arg(pattern.name())) == document::DocumentController::Outcome::Refused) return;
  const plan::Plan& after = controller_.document();
  std::size_t pieces = 0, sections = 0;
  for (const plan::ItemChange& change : used->edit.changes) {
    pieces += !change.before && after.find<plan::Piece>(change.id);
    sections += !change.before && after.find<plan::Section>(change.id);
  }
  QString text = tr("“%1” came with %2 pieces in %3 sections; type their levels.").arg(pattern.name(), QString::number(pieces), QString::number(sections));
  const QStringList said = remarks(after, *used);
  if (!said.isEmpty()) text += u' ' + said.join(u' ');
  messages_->say({said.isEmpty() ? Message::Kind::News : Message::Kind::Caution, text, {}, kTopic});
}

}  // namespace combdraft::desk
