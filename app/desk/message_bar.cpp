#include "app/desk/message_bar.h"

#include <QAccessible>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QPushButton>
#include <QStyle>
#include <algorithm>

#include "app/controls/drop_widgets.h"
#include "app/controls/wrapped_label.h"

namespace combdraft::desk {
namespace {
constexpr int kTouch_px = 44;  // for a finger in a glove
}

MessageBar::MessageBar(QWidget* parent) : QFrame(parent) {
  setObjectName(QStringLiteral("message"));
  setAccessibleName(tr("Message"));
  row_ = new QHBoxLayout(this);
  row_->setContentsMargins(14, 7, 14, 7);
  row_->setSpacing(12);
  sign_ = new QLabel(this);
  row_->addWidget(sign_);
  text_ = new controls::WrappedLabel(this);
  text_->setTextFormat(Qt::PlainText);
  row_->addWidget(text_, 1);
  hide();
}

void MessageBar::say(Message message) {
  if (!message.topic.isEmpty()) {
    const auto same = std::find_if(waiting_.begin(), waiting_.end(), [&](const Message& other) {
      return other.topic == message.topic;
    });
    if (same != waiting_.end()) {
      *same = std::move(message);
      fill();
      return;
    }
  }
  // A question goes before news.
  if (!message.choices.empty())
    waiting_.push_front(std::move(message));
  else
    waiting_.push_back(std::move(message));
  fill();
}

void MessageBar::clear(const QString& topic) {
  std::erase_if(waiting_, [&](const Message& message) { return message.topic == topic; });
  fill();
}

QString MessageBar::text() const { return waiting_.empty() ? QString() : waiting_.front().text; }

void MessageBar::next() {
  if (!waiting_.empty()) waiting_.pop_front();
  fill();
}

void MessageBar::fill() {
  for (QPushButton* button : buttons_) controls::dropWidget(button);
  buttons_.clear();
  if (waiting_.empty()) {
    hide();
    return;
  }
  const Message message = waiting_.front();
  const bool caution = message.kind == Message::Kind::Caution;
  setProperty("caution", caution);
  style()->unpolish(this);
  style()->polish(this);
  sign_->setText(caution ? QStringLiteral("\u26A0") : QStringLiteral("\u2139"));
  text_->setText(message.text);
  std::vector<MessageChoice> choices = message.choices;
  if (choices.empty()) choices.push_back({tr("Close"), {}});
  for (const MessageChoice& choice : choices) {
    auto* button = new QPushButton(choice.text, this);
    button->setMinimumHeight(kTouch_px);
    button->setAccessibleName(choice.text);
    connect(button, &QPushButton::clicked, this, [this, run = choice.run] {
      next();
      if (run) run();
    });
    row_->addWidget(button);
    buttons_.push_back(button);
  }
  QFrame::show();
  QAccessibleEvent event(this, QAccessible::Alert);
  QAccessible::updateAccessibility(&event);
}

void MessageBar::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape && !waiting_.empty()) {
    // Escape takes the last choice, which is always the one that changes nothing.
    buttons_.back()->click();
    return;
  }
  QFrame::keyPressEvent(event);
}

}  // namespace combdraft::desk
