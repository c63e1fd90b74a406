#include "app/desk/keys_page.h"

#include <QAccessible>
#include <QHeaderView>
#include <QKeyEvent>
#include <QKeySequenceEdit>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTreeWidget>
#include <QVBoxLayout>

#include "app/controls/flow_layout.h"
#include "app/controls/wrapped_label.h"
#include "app/desk/command_search.h"
#include "app/desk/keys.h"
#include "app/desk/page_parts.h"

namespace combdraft::desk {
namespace {
QString shown(const QKeySequence& keys) { return keys.toString(QKeySequence::NativeText); }
}  // namespace

KeysPage::KeysPage(ActionRegistry& actions, QWidget* parent) : QWidget(parent), actions_(actions) {
  setObjectName(QStringLiteral("page"));
  QVBoxLayout* column = pageColumn(this, tr("Keys"), [this] { Q_EMIT done(); });
  auto* what = new controls::WrappedLabel(tr("Choose a command, then press the keys it should have. Keys that another command has "
                             "are never taken without asking."), this);
  what->setProperty("soft", true);
  column->addWidget(what);
  filter_ = new QLineEdit(this);
  filter_->setPlaceholderText(tr("Show only commands with these words"));
  filter_->setAccessibleName(tr("Show only commands with these words"));
  filter_->setMinimumHeight(32);
  column->addWidget(filter_);

  list_ = new QTreeWidget(this);
  list_->setAccessibleName(tr("Commands and their keys"));
  list_->setHeaderLabels({tr("Command"), tr("Keys"), tr("As delivered"), tr("What it does")});
  list_->setRootIsDecorated(false);
  list_->setUniformRowHeights(true);
  list_->setAllColumnsShowFocus(true);
  list_->setTextElideMode(Qt::ElideRight);
  list_->header()->setStretchLastSection(true);
  list_->header()->setSectionsClickable(false);
  column->addWidget(list_, 1);
  empty_ = new controls::WrappedLabel(this);
  column->addWidget(empty_);

  which_ = new QLabel(this);
  QFont strong = which_->font();
  strong.setWeight(QFont::DemiBold);
  which_->setFont(strong);
  column->addWidget(which_);
  auto* buttons = new QWidget(this);
  auto* flow = new controls::FlowLayout(buttons, 8, 6);
  flow->setContentsMargins(0, 0, 0, 0);
  catcher_ = new QKeySequenceEdit(buttons);
  catcher_->setAccessibleName(tr("Press the new keys"));
  catcher_->setToolTip(tr("Press the keys, one after the other; a second's rest ends them"));
  catcher_->setMinimumSize(fontMetrics().averageCharWidth() * 26, 32);
  if (auto* inner = catcher_->findChild<QLineEdit*>()) inner->setPlaceholderText(tr("Press the new keys"));
  flow->addWidget(catcher_);
  const auto button = [&](const QString& text, const QString& tip) {
    auto* made = new QPushButton(text, buttons);
    made->setMinimumHeight(32);
    made->setAccessibleName(text);
    made->setToolTip(tip);
    flow->addWidget(made);
    return made;
  };
  takeOver_ = button(tr("Take them over"), tr("The other command loses these keys"));
  none_ = button(tr("No keys"), tr("The command stays in its menu and in the command search"));
  reset_ = button(tr("Reset this one"), tr("The keys it came with"));
  resetAll_ = button(tr("Reset all"), tr("Every command gets the keys it came with"));
  column->addWidget(buttons);
  note_ = new controls::WrappedLabel(this);
  note_->setMinimumHeight(fontMetrics().height() + 4);
  column->addWidget(note_);

  catcher_->installEventFilter(this);
  connect(filter_, &QLineEdit::textChanged, this, [this] { fill(); });
  connect(list_, &QTreeWidget::currentItemChanged, this, [this] { showChosen(); });
  connect(list_, &QTreeWidget::itemActivated, this, [this] { catcher_->setFocus(Qt::OtherFocusReason); });
  connect(catcher_, &QKeySequenceEdit::editingFinished, this, [this] { give(catcher_->keySequence()); });
  connect(takeOver_, &QPushButton::clicked, this, [this] {
    while (const ActionSpec* holder = keyHolder(actions_, wanted_, chosen())) actions_.setShortcut(holder->id, {});
    give(wanted_);
  });
  connect(none_, &QPushButton::clicked, this, [this] { give({}); });
  connect(reset_, &QPushButton::clicked, this, [this] { resetOne(); });
  connect(resetAll_, &QPushButton::clicked, this, [this] { resetAll(); });
  connect(&actions_, &ActionRegistry::shortcutsChanged, this, [this] { if (isVisible()) refreshRows(); });
}

void KeysPage::fill() {
  const QString before = chosen();
  list_->clear();
  QList<QTreeWidgetItem*> rows;  // all at once: a list lays itself out for each change of a row it has
  for (const QString& id : findCommands(actions_, filter_->text())) {
    rows << new QTreeWidgetItem;
    rows.back()->setData(0, Qt::UserRole, id);
    fillRow(*rows.back());
  }
  list_->addTopLevelItems(rows);
  for (const int column : {0, 1, 2}) {
    list_->resizeColumnToContents(column);
    list_->setColumnWidth(column, list_->columnWidth(column) + 14);
  }
  const bool nothing = list_->topLevelItemCount() == 0;
  empty_->setVisible(nothing);
  empty_->setText(tr("No command has “%1” in its name, its tip or its keys.").arg(filter_->text().trimmed()));
  choose(before);
  if (!list_->currentItem() && !nothing) list_->setCurrentItem(list_->topLevelItem(0));
  showChosen();
}

void KeysPage::fillRow(QTreeWidgetItem& row) const {
  const ActionSpec& spec = *actions_.find(row.data(0, Qt::UserRole).toString());
  const QKeySequence keys = actions_.action(spec.id)->shortcut();
  const bool changed = keys != spec.shortcut;
  row.setText(0, plainText(spec.text));
  row.setText(1, keys.isEmpty() ? tr("none") : shown(keys));
  row.setText(2, !changed ? QString() : spec.shortcut.isEmpty() ? tr("none") : shown(spec.shortcut));
  row.setText(3, spec.tip);
  row.setToolTip(3, spec.tip);
  QFont font = list_->font();
  font.setWeight(changed ? QFont::DemiBold : QFont::Normal);
  row.setFont(1, font);
}

void KeysPage::refreshRows() {
  for (int i = 0; i < list_->topLevelItemCount(); ++i) fillRow(*list_->topLevelItem(i));
}

QString KeysPage::chosen() const {
  const QTreeWidgetItem* item = list_->currentItem();
  return item ? item->data(0, Qt::UserRole).toString() : QString();
}

void KeysPage::choose(const QString& id) {
  for (int i = 0; i < list_->topLevelItemCount(); ++i)
    if (list_->topLevelItem(i)->data(0, Qt::UserRole).toString() == id)
      list_->setCurrentItem(list_->topLevelItem(i));
}

void KeysPage::showChosen() {
  const ActionSpec* spec = actions_.find(chosen());
  for (QWidget* widget : std::initializer_list<QWidget*>{catcher_, none_, reset_}) widget->setEnabled(spec);
  takeOver_->hide();
  say({});
  which_->setText(spec ? tr("Keys for “%1”").arg(plainText(spec->text)) : QString());
  catcher_->setKeySequence(spec ? actions_.action(spec->id)->shortcut() : QKeySequence());
}

void KeysPage::give(const QKeySequence& keys) {
  const QString id = chosen();
  takeOver_->hide();
  if (id.isEmpty() || actions_.action(id)->shortcut() == keys) return;
  if (const QString trouble = keyTrouble(keys); !trouble.isEmpty()) {
    catcher_->setKeySequence(actions_.action(id)->shortcut());
    return say(trouble);
  }
  if (const ActionSpec* holder = keyHolder(actions_, keys, id)) {
    wanted_ = keys;
    takeOver_->show();
    const QKeySequence theirs = actions_.action(holder->id)->shortcut();
    return say(theirs == keys
                   ? tr("%1 belongs to “%2”. Press other keys, or take them over; “%2” then has none.")
                         .arg(shown(keys), plainText(holder->text))
                   : tr("%1 gets in the way of %2, which belongs to “%3”. Press other keys, or take them over; “%3” then has none.")
                         .arg(shown(keys), shown(theirs), plainText(holder->text)));
  }
  actions_.setShortcut(id, keys);
  refreshRows();
  catcher_->setKeySequence(keys);
  const QString name = plainText(actions_.find(id)->text);
  say(keys.isEmpty() ? tr("“%1” has no keys now.").arg(name) : tr("“%1” now has %2.").arg(name, shown(keys)));
  Q_EMIT changed();
}

void KeysPage::resetOne() {
  if (const ActionSpec* spec = actions_.find(chosen())) give(spec->shortcut);
}

void KeysPage::resetAll() {
  applyKeys(actions_, {});
  refreshRows();
  showChosen();
  say(tr("Every command has the keys it came with."));
  Q_EMIT changed();
}

QString KeysPage::note() const { return note_->text(); }

void KeysPage::say(const QString& words) {
  note_->setText(words);
  note_->setAccessibleName(words);
  if (words.isEmpty() || !isVisible()) return;
  QAccessibleEvent event(note_, QAccessible::Alert);
  QAccessible::updateAccessibility(&event);
}

bool KeysPage::eventFilter(QObject* watched, QEvent* event) {
  // Escape and Tab lead out of the field; every other key is caught by it.
  if (watched == catcher_ && event->type() == QEvent::KeyPress &&
      static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape) {
    showChosen();
    list_->setFocus(Qt::OtherFocusReason);
    return true;
  }
  return QWidget::eventFilter(watched, event);
}

void KeysPage::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape) {
    Q_EMIT done();
    return;
  }
  QWidget::keyPressEvent(event);
}

}  // namespace combdraft::desk
