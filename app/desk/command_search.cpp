#include "app/desk/command_search.h"

#include <QAccessible>
#include <QApplication>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPainter>
#include <QStyledItemDelegate>
#include <QVBoxLayout>
#include <algorithm>

#include "app/controls/theme.h"
#include "app/controls/wrapped_label.h"

namespace combdraft::desk {
namespace {

constexpr int kShownRows = 7;
enum Role { Id = Qt::UserRole, Tip, Keys, IsOff };

// Lower case, accents taken off.
QString folded(const QString& text) {
  QString out;
  for (const QChar c : text.normalized(QString::NormalizationForm_D))
    if (!c.isMark()) out += c.toCaseFolded();
  return out;
}

// How well one word fits: 3 begins a word of the name, 2 inside the name, 1 in
// tip or keys, 0 not at all.
int fit(const QString& word, const QString& name, const QString& rest) {
  const qsizetype at = name.indexOf(word);
  if (at == 0 || name.contains(u' ' + word)) return 3;
  return at > 0 ? 2 : rest.contains(word) ? 1 : 0;
}

// Two lines: name and key, then the tip or what to do first.
class Row : public QStyledItemDelegate {
 public:
  using QStyledItemDelegate::QStyledItemDelegate;

  QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex&) const override {
    return {100, 2 * option.fontMetrics.height() + 12};
  }

  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override {
    const controls::Theme& t = controls::currentTheme();
    const bool chosen = option.state & QStyle::State_Selected, off = index.data(IsOff).toBool();
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    if (chosen) {
      painter->setPen(Qt::NoPen);
      painter->setBrush(t.accent);
      painter->drawRoundedRect(option.rect.adjusted(1, 1, -1, -1), 4, 4);
    }
    const QRect box = option.rect.adjusted(9, 5, -9, -5);
    const int line = option.fontMetrics.height();
    const QRect top(box.left(), box.top(), box.width(), line), below = top.translated(0, line + 2);
    const QString keys = index.data(Keys).toString();
    const int keyWidth = keys.isEmpty() ? 0 : option.fontMetrics.horizontalAdvance(keys) + 12;
    QFont bold = option.font;
    if (!off) bold.setWeight(QFont::DemiBold);
    painter->setFont(bold);
    painter->setPen(chosen ? t.onAccent : off ? t.softInk : t.ink);
    const QFontMetrics metrics(bold);
    const Qt::Alignment start = option.direction == Qt::RightToLeft ? Qt::AlignRight : Qt::AlignLeft;
    const Qt::Alignment end = start == Qt::AlignLeft ? Qt::AlignRight : Qt::AlignLeft;
    const QRect name = start == Qt::AlignLeft ? top.adjusted(0, 0, -keyWidth, 0) : top.adjusted(keyWidth, 0, 0, 0);
    painter->drawText(name, start | Qt::AlignVCenter,
                      metrics.elidedText(index.data(Qt::DisplayRole).toString(), Qt::ElideRight, name.width()));
    painter->setFont(option.font);
    painter->setPen(chosen ? t.onAccent : t.softInk);
    painter->drawText(top, end | Qt::AlignVCenter, keys);
    painter->drawText(below, start | Qt::AlignVCenter,
                      option.fontMetrics.elidedText(index.data(Tip).toString(), Qt::ElideRight, below.width()));
    painter->restore();
  }
};

}  // namespace

std::vector<QString> findCommands(const ActionRegistry& actions, const QString& words) {
  const QStringList wanted = folded(words).split(u' ', Qt::SkipEmptyParts);
  std::vector<std::pair<int, QString>> found;
  for (const ActionSpec& spec : actions.specs()) {
    const QAction* action = actions.action(spec.id);
    const QString name = folded(plainText(action->text()));
    const QString rest = folded(plainText(spec.text) + u' ' + spec.tip + u' ' +
                                action->shortcut().toString(QKeySequence::NativeText));
    int score = 0;
    const bool all = std::all_of(wanted.begin(), wanted.end(), [&](const QString& word) {
      const int one = fit(word, name, rest);
      score += one;
      return one > 0;
    });
    if (all) found.emplace_back(-score, spec.id);
  }
  std::stable_sort(found.begin(), found.end(),
                   [](const auto& a, const auto& b) { return a.first < b.first; });
  std::vector<QString> ids;
  for (auto& [score, id] : found) ids.push_back(std::move(id));
  return ids;
}

CommandSearch::CommandSearch(ActionRegistry& actions, QWidget* over) : QFrame(over), actions_(actions) {
  setObjectName(QStringLiteral("panel"));
  setAccessibleName(tr("Find a command"));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(10, 10, 10, 10);
  column->setSpacing(6);
  field_ = new QLineEdit(this);
  field_->setPlaceholderText(tr("Find a command: type a word of what you want to do"));
  field_->setAccessibleName(tr("Find a command"));
  field_->setMinimumHeight(34);
  field_->setClearButtonEnabled(false);
  column->addWidget(field_);
  list_ = new QListWidget(this);
  list_->setItemDelegate(new Row(list_));
  list_->setAccessibleName(tr("Commands found"));
  list_->setFocusPolicy(Qt::NoFocus);  // the field's arrow keys walk it
  list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  list_->setUniformItemSizes(true);
  column->addWidget(list_);
  note_ = new controls::WrappedLabel(this);
  column->addWidget(note_);
  connect(field_, &QLineEdit::textChanged, this, [this] { fill(); });
  connect(list_, &QListWidget::itemClicked, this, [this] { runCurrent(); });
  connect(list_, &QListWidget::currentRowChanged, this, [this] {
    if (list_->currentItem()) say(list_->currentItem()->data(IsOff).toBool()
                                      ? list_->currentItem()->data(Tip).toString() : QString());
  });
  field_->installEventFilter(this);
  over->installEventFilter(this);
  QFrame::hide();
}

void CommandSearch::open() {
  before_ = QApplication::focusWidget();
  field_->clear();
  fill();
  show();
  raise();
  place();
  field_->setFocus(Qt::ShortcutFocusReason);
}

void CommandSearch::close() {
  if (!isVisible()) return;
  const bool hadFocus = isAncestorOf(QApplication::focusWidget());
  hide();
  if (hadFocus && before_ && before_->isVisible()) before_->setFocus(Qt::OtherFocusReason);
}

QString CommandSearch::note() const { return note_->isHidden() ? QString() : note_->text(); }

void CommandSearch::fill() {
  list_->clear();
  for (const QString& id : findCommands(actions_, field_->text())) {
    const QAction* action = actions_.action(id);
    auto* item = new QListWidgetItem(plainText(action->text()), list_);
    const QString first = actions_.whyNot(id), keys = action->shortcut().toString(QKeySequence::NativeText);
    const bool off = !action->isEnabled();
    QString tip = actions_.find(id)->tip;
    if (off) tip = tr("Not now. %1").arg(first.isEmpty() ? tip : first + u'.');
    item->setData(Id, id);
    item->setData(Tip, tip);
    item->setData(Keys, keys);
    item->setData(IsOff, off);
    item->setData(Qt::AccessibleTextRole, QStringList{item->text(), keys, tip}.join(QStringLiteral(", ")));
  }
  const bool nothing = list_->count() == 0;
  list_->setVisible(!nothing);
  say(nothing ? tr("No command has “%1” in its name or its tip. Try one plain word, such as “piece”, “view” or “save”.")
                    .arg(field_->text().trimmed())
              : QString());
  if (!nothing) list_->setCurrentRow(0);
  place();
}

void CommandSearch::say(const QString& words) {
  note_->setText(words);
  note_->setVisible(!words.isEmpty());
  if (isVisible()) place();
  if (words.isEmpty() || !isVisible()) return;
  note_->setAccessibleName(words);
  QAccessibleEvent event(note_, QAccessible::Alert);
  QAccessible::updateAccessibility(&event);
}

void CommandSearch::place() {
  const QWidget* over = parentWidget();
  const int row = 2 * fontMetrics().height() + 12;
  list_->setFixedHeight(std::min(list_->count(), kShownRows) * row + 10);
  const int wide = std::min(fontMetrics().averageCharWidth() * 78, over->width() - 24);
  setFixedWidth(wide);
  layout()->activate();
  const int high = std::min(layout()->heightForWidth(wide) > 0 ? layout()->heightForWidth(wide) : sizeHint().height(),
                            over->height() - 24);
  resize(wide, high);
  move((over->width() - wide) / 2, std::min(60, over->height() / 10));
}

void CommandSearch::runCurrent() {
  const QListWidgetItem* item = list_->currentItem();
  if (!item) return;
  if (item->data(IsOff).toBool()) return say(item->data(Tip).toString());
  const QString id = item->data(Id).toString();
  close();
  actions_.action(id)->trigger();
}

bool CommandSearch::eventFilter(QObject* watched, QEvent* event) {
  if (watched == parentWidget()) {
    if (event->type() == QEvent::Resize && isVisible()) place();
    return false;
  }
  if (event->type() == QEvent::FocusOut && isVisible()) {
    // A click or Tab elsewhere leaves the search; a change of window does not.
    const auto reason = static_cast<QFocusEvent*>(event)->reason();
    if (reason == Qt::MouseFocusReason || reason == Qt::TabFocusReason || reason == Qt::BacktabFocusReason) hide();
    return false;
  }
  if (event->type() != QEvent::KeyPress) return false;
  switch (static_cast<QKeyEvent*>(event)->key()) {
    case Qt::Key_Escape: close(); return true;
    case Qt::Key_Return:
    case Qt::Key_Enter: runCurrent(); return true;
    case Qt::Key_Up:
    case Qt::Key_Down:
    case Qt::Key_PageUp:
    case Qt::Key_PageDown: QApplication::sendEvent(list_, event); return true;
    default: return false;
  }
}

}  // namespace combdraft::desk
