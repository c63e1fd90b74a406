#include "app/controls/text_field.h"
#include "app/controls/wrapped_label.h"
#include "app/words/typed_text.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QStyle>
#include <QVBoxLayout>

namespace combdraft::controls {

TextField::TextField(TextFieldSpec spec, QWidget* parent) : QWidget(parent), spec_(std::move(spec)) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(2);
  auto* row = new QHBoxLayout;
  row->setSpacing(6);
  column->addLayout(row);
  auto* label = new WrappedLabel(spec_.label, this);
  edit_ = new QLineEdit(this);
  edit_->setMaxLength(spec_.maxLength);
  edit_->setToolTip(spec_.tip);
  edit_->setAccessibleName(spec_.label);
  edit_->setAccessibleDescription(spec_.tip);
  edit_->setMinimumHeight(28);
  label->setBuddy(edit_);
  row->addWidget(label, 1);
  row->addWidget(edit_, 1);
  problem_ = new WrappedLabel(this);
  problem_->setProperty("caution", true);
  problem_->hide();
  column->addWidget(problem_);
  setFocusProxy(edit_);
  edit_->installEventFilter(this);
  connect(edit_, &QLineEdit::editingFinished, this, &TextField::commit);
  refill();
}

void TextField::setText(const QString& text) {
  text_ = text;
  mixed_ = false;
  if (!edit_->isModified()) refill();
}

void TextField::setMixed() {
  text_.clear();
  mixed_ = true;
  if (!edit_->isModified()) refill();
}

void TextField::abandonTyping() {
  if (edit_->isModified()) refill();
}

void TextField::refill() {
  edit_->setPlaceholderText(mixed_ ? tr("mixed") : spec_.emptyText);
  if (edit_->text() != text_) edit_->setText(text_);
  edit_->setModified(false);
  showProblem({});
}

void TextField::showProblem(const QString& problem) {
  const bool wrong = !problem.isEmpty();
  problem_->setText(wrong ? QStringLiteral("\u26A0 ") + problem : QString());
  problem_->setVisible(wrong);
  if (edit_->property("wrong").toBool() != wrong) {
    edit_->setProperty("wrong", wrong);
    edit_->style()->unpolish(edit_);
    edit_->style()->polish(edit_);
  }
}

void TextField::commit() {
  if (!edit_->isModified()) return;
  QString typed = words::oneLine(edit_->text()).trimmed();
  if (const QString wrong = check_ ? check_(typed) : QString(); !wrong.isEmpty())
    return showProblem(wrong);
  const bool isNew = mixed_ || typed != text_;
  text_ = typed;
  mixed_ = false;
  refill();
  if (isNew) Q_EMIT edited(typed);
}

bool TextField::eventFilter(QObject* watched, QEvent* event) {
  if (watched == edit_ && event->type() == QEvent::KeyPress && edit_->isModified() &&
      static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape) {
    refill();
    return true;
  }
  return QWidget::eventFilter(watched, event);
}

QString dateProblem(QString& text) {
  if (text.isEmpty()) return {};
  if (const QString day = words::isoDay(text); !day.isEmpty()) {
    text = day;
    return {};
  }
  return TextField::tr("“%1” is not a date. Right would be: 2026-03-14").arg(text);
}

}  // namespace combdraft::controls
