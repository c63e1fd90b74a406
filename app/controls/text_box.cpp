#include "app/controls/text_box.h"
#include "app/controls/wrapped_label.h"
#include "app/words/typed_text.h"

#include <QEvent>
#include <QVBoxLayout>

namespace combdraft::controls {

TextBox::TextBox(const QString& label, const QString& emptyText, int lines, qsizetype maxBytes, QWidget* parent)
    : QWidget(parent), emptyText_(emptyText), maxBytes_(maxBytes) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(3);
  auto* text = new WrappedLabel(label, this);
  edit_ = new QPlainTextEdit(this);
  edit_->setPlaceholderText(emptyText);
  edit_->setTabChangesFocus(true);
  edit_->setAccessibleName(label);
  edit_->setFixedHeight(edit_->fontMetrics().lineSpacing() * lines + 22);
  edit_->setMinimumWidth(0);
  text->setBuddy(edit_);
  problem_ = new WrappedLabel(this);
  problem_->setProperty("caution", true);
  problem_->hide();
  column->addWidget(text);
  column->addWidget(edit_);
  column->addWidget(problem_);
  setFocusProxy(edit_);
  edit_->installEventFilter(this);
  connect(edit_, &QPlainTextEdit::textChanged, this, &TextBox::commit);
}

void TextBox::setText(const QString& text) {
  edit_->setPlaceholderText(emptyText_);
  if (edit_->toPlainText() == text) return;
  filling_ = true;
  edit_->setPlainText(text);
  filling_ = false;
  goesOn_ = false;
  problem_->hide();
}

void TextBox::setMixed() {
  setText({});
  edit_->setPlaceholderText(tr("mixed"));
}

void TextBox::commit() {
  if (filling_) return;
  const QString typed = words::severalLines(edit_->toPlainText());
  const bool tooLong = typed.toUtf8().size() > maxBytes_;
  problem_->setVisible(tooLong);
  if (tooLong) {
    problem_->setText(QStringLiteral("\u26A0 ") +
                      tr("Too long to be kept; about %1 letters are. Shorten it.").arg(maxBytes_));
    return;
  }
  Q_EMIT edited(typed, goesOn_);
  goesOn_ = true;
}

bool TextBox::eventFilter(QObject* watched, QEvent* event) {
  if (watched == edit_ && event->type() == QEvent::FocusIn) goesOn_ = false;
  return QWidget::eventFilter(watched, event);
}

}  // namespace combdraft::controls
