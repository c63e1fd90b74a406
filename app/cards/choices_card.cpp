#include "app/cards/choices_card.h"

#include <QSignalBlocker>
#include <QVBoxLayout>
#include <algorithm>

#include "app/cards/card_parts.h"
#include "app/controls/flow_layout.h"
#include "app/words/engine_words.h"
#include "engine/plan/choice_edits.h"
#include "engine/plan/field_info.h"

namespace combdraft::cards {
namespace {

constexpr int kListLines = 6, kNameLetters = 60;

QString pieceCount(std::size_t count) {
  return count == 1 ? ChoicesCard::tr("1 piece") : ChoicesCard::tr("%1 pieces").arg(count);
}

}  // namespace

QString choiceName(const plan::ItemId& id, const plan::Choice& choice) {
  return ChoicesCard::tr("Choice %1").arg(QString::fromStdString(choice.name.empty() ? id : choice.name));
}

std::vector<plan::ItemId> takable(const plan::Plan& plan, const std::vector<plan::ItemId>& ids) {
  std::vector<plan::ItemId> found;
  for (const plan::ItemId& id : ids)
    if (plan.find<plan::Piece>(id) || plan.find<plan::Section>(id) || plan.find<plan::Note>(id)) found.push_back(id);
  return found;
}

ChoicesCard::ChoicesCard(document::DocumentController& controller, QWidget* parent)
    : QWidget(parent), controller_(controller) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(12, 10, 12, 12);
  column->setSpacing(5);
  addTitle(column, tr("Choices"));
  addSoftText(column, tr("Each choice is a placement of its own for the same head, hair and formulas. The marked one "
                         "is worked on, and its look is shown."));
  list_ = new QListWidget(this);
  list_->setAccessibleName(tr("Choices"));
  column->addWidget(list_);
  connect(list_, &QListWidget::currentItemChanged, this, [this](const QListWidgetItem* item) {
    if (item) activate(item->data(Qt::UserRole).toString().toStdString());
  });

  name_ = new controls::TextField({tr("Name"), tr("none"), tr("What this choice is called, here and in print"), kNameLetters}, this);
  name_->setObjectName(QStringLiteral("choiceName"));
  name_->setCheck([this](const QString& text) {
    if (text.isEmpty()) return tr("A choice needs a name.");
    const plan::Plan& plan = controller_.document();
    const plan::ItemId taken = plan::choiceNamed(plan, text.toStdString());
    if (!taken.empty() && taken != plan.info().activeChoice) return tr("Another choice is called that.");
    return text.toUtf8().size() > static_cast<qsizetype>(plan::limits::kLineBytes) ? tr("That is too long.") : QString();
  });
  column->addWidget(name_);
  connect(name_, &controls::TextField::edited, this, [this](const QString& text) {
    const plan::Plan& before = controller_.document();
    controller_.edit(plan::applied(before, plan::renameChoice(before, before.info().activeChoice, text.toStdString())),
                     tr("Rename a choice to %1").arg(text));
  });

  const auto button = [this](const QString& text, const QString& tip, void (ChoicesCard::*run)()) {
    auto* made = new QPushButton(text, this);
    made->setToolTip(tip);
    connect(made, &QPushButton::clicked, this, run);
    return made;
  };
  copy_ = button(tr("Copy as new"), tr("A new choice that begins with all of this one"), &ChoicesCard::addCopy);
  empty_ = button(tr("New, empty"), tr("A new choice without pieces"), &ChoicesCard::addEmpty);
  remove_ = button(tr("Remove"), tr("Take this choice and all its pieces off the plan; undo brings them back"), &ChoicesCard::remove);
  compare_ = button(tr("Compare…"), tr("Two choices side by side, or today and a choice"), &ChoicesCard::compareWanted);
  auto* buttons = new QWidget(this);
  auto* flow = new controls::FlowLayout(buttons, 6, 6);
  flow->setContentsMargins(0, 0, 0, 0);
  for (QPushButton* made : {copy_, empty_, remove_, compare_}) flow->addWidget(made);
  column->addWidget(buttons);

  addHeading(column, tr("Take what is selected"));
  takeHint_ = addSoftText(column, {});
  takeHint_->setObjectName(QStringLiteral("takeHint"));
  auto* row = new QHBoxLayout;
  others_ = newCombo(this, tr("Into which choice"), {});
  take_ = button(tr("Take into it"), tr("Copies what is selected to the same places in that choice"), &ChoicesCard::take);
  row->addWidget(others_, 1);
  row->addWidget(take_);
  column->addLayout(row);

  targets_ = new TargetEditor(controller_, this);
  column->addWidget(targets_);
  suggest_ = button(tr("Suggest a placement…"), tr("Searches how the pieces of this choice might come nearer to its aims"),
                    &ChoicesCard::suggestWanted);
  column->addWidget(suggest_, 0, Qt::AlignLeft);
  column->addStretch(1);

  connect(&controller_, &document::DocumentController::changed, this, &ChoicesCard::fill);
  connect(&controller_, &document::DocumentController::selectionChanged, this, &ChoicesCard::fillSelection);
  fill();
}

bool ChoicesCard::canAdd() const { return plan::choicesOf(controller_.document()).size() < plan::limits::kChoices; }
bool ChoicesCard::canRemove() const { return plan::choicesOf(controller_.document()).size() > 1; }
bool ChoicesCard::canTake() const {
  return canRemove() && !takable(controller_.document(), controller_.selection().ids()).empty();
}

void ChoicesCard::add(const plan::ItemId& model, const QString& name) {
  const plan::Plan& before = controller_.document();
  const auto added = plan::addChoice(before, plan::freeChoiceName(before), model);
  if (!added) {
    Q_EMIT refused(tr("No room for another choice: %1").arg(words::inWords(added.error())));
    return;
  }
  abandonTyping(this);
  controller_.edit(plan::applied(before, *added), name, document::Selection());
}

void ChoicesCard::addCopy() { add(controller_.document().info().activeChoice, tr("Copy as a new choice")); }
void ChoicesCard::addEmpty() { add({}, tr("New choice")); }

void ChoicesCard::remove() {
  const plan::Plan& before = controller_.document();
  const plan::ItemId choice = before.info().activeChoice;
  const plan::ChangeSet gone = plan::removeChoice(before, choice);
  if (gone.empty()) return;
  const QString name = choiceName(choice, *before.find<plan::Choice>(choice));
  const QString pieces = pieceCount(before.pieces(choice).size());
  abandonTyping(this);
  if (controller_.edit(plan::applied(before, gone), tr("Remove %1").arg(name), document::Selection()) ==
      document::DocumentController::Outcome::Refused)
    return;
  Q_EMIT told(tr("%1 and its %2 are taken off the plan; undo brings them back.").arg(name, pieces));
}

void ChoicesCard::activate(const plan::ItemId& choice) {
  const plan::Plan& before = controller_.document();
  const plan::Choice* found = before.find<plan::Choice>(choice);
  if (!found || choice == before.info().activeChoice) return;
  abandonTyping(this);
  // What is selected stays only where it still can be seen.
  controller_.edit(plan::applied(before, plan::activateChoice(before, choice)),
                   tr("Work on %1").arg(choiceName(choice, *found)), document::Selection(), activating_);
}

void ChoicesCard::activateNext() {
  const auto choices = plan::choicesOf(controller_.document());
  const auto now = std::find_if(choices.begin(), choices.end(), [&](const auto& entry) {
    return entry.first == controller_.document().info().activeChoice;
  });
  activate(now == choices.end() || now + 1 == choices.end() ? choices.front().first : (now + 1)->first);
}

void ChoicesCard::rename() {
  name_->edit()->setFocus();
  name_->edit()->selectAll();
}

void ChoicesCard::take() {
  const plan::ItemId into = others_->currentData().toString().toStdString();
  const plan::Plan& before = controller_.document();
  const plan::Choice* found = before.find<plan::Choice>(into);
  const std::vector<plan::ItemId> ids = takable(before, controller_.selection().ids());
  if (!found || ids.empty()) return;
  const QString name = choiceName(into, *found);
  const auto taken = plan::takeInto(before, ids, into);
  if (!taken) {
    Q_EMIT refused(tr("%1 has no room for that: %2").arg(name, words::inWords(taken.error())));
    return;
  }
  const plan::Plan after = plan::applied(before, *taken);
  const std::size_t came = after.pieces(into).size() - before.pieces(into).size();
  if (controller_.edit(after, tr("Take into %1").arg(name)) == document::DocumentController::Outcome::Refused) return;
  Q_EMIT told(tr("%1 has %2 more; here they stay as well.").arg(name, pieceCount(came)));
}

void ChoicesCard::fill() {
  const plan::Plan& plan = controller_.plan();
  const plan::ItemId& active = plan.info().activeChoice;
  const auto choices = plan::choicesOf(plan);
  {
    const QSignalBlocker quiet(list_);
    while (list_->count() > static_cast<int>(choices.size())) delete list_->takeItem(list_->count() - 1);
    while (list_->count() < static_cast<int>(choices.size())) list_->addItem(QString());
    for (int i = 0; i < list_->count(); ++i) {
      const auto& [id, choice] = choices[static_cast<std::size_t>(i)];
      const QString text = tr("%1, %2").arg(choiceName(id, *choice), pieceCount(plan.pieces(id).size()));
      QListWidgetItem* item = list_->item(i);
      item->setText((id == active ? QStringLiteral("\u25CF ") : QStringLiteral("\u25CB ")) + text);
      item->setData(Qt::UserRole, QString::fromStdString(id));
      item->setData(Qt::AccessibleTextRole, id == active ? tr("%1, worked on").arg(text) : text);
      if (id == active) list_->setCurrentRow(i);
    }
    const int line = std::max(list_->sizeHintForRow(0), list_->fontMetrics().height());
    list_->setFixedHeight(line * std::clamp(list_->count(), 2, kListLines) + 12);
  }
  {
    const QSignalBlocker quiet(others_);
    const QString chosen = others_->currentData().toString();
    others_->clear();
    for (const auto& [id, choice] : choices)
      if (id != active) others_->addItem(choiceName(id, *choice), QString::fromStdString(id));
    others_->setCurrentIndex(std::max(0, others_->findData(chosen)));
    if (others_->count() == 0) others_->setCurrentIndex(-1);
  }
  const auto* now = plan.find<plan::Choice>(active);
  name_->setText(now ? QString::fromStdString(now->name) : QString());
  copy_->setEnabled(canAdd());
  empty_->setEnabled(canAdd());
  suggest_->setEnabled(!plan.pieces(active).empty());
  remove_->setEnabled(canRemove());
  fillSelection();
}

void ChoicesCard::fillSelection() {
  take_->setEnabled(canTake());
  others_->setEnabled(canRemove());
  takeHint_->setText(!canRemove() ? tr("A second choice is needed first.")
                     : canTake()  ? tr("Copies go to the same places in the other choice; here they stay.")
                                  : tr("Select pieces, sections or notes on the sheet first."));
}

}  // namespace combdraft::cards
