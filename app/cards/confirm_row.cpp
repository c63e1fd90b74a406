#include "app/cards/confirm_row.h"
#include "app/controls/wrapped_label.h"

#include <QHBoxLayout>
#include <QVBoxLayout>

namespace combdraft::cards {

ConfirmRow::ConfirmRow(const QString& text, const QString& question, const QString& yes, QWidget* parent) : QWidget(parent) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  ask_ = new QPushButton(text, this);
  ask_->setMinimumHeight(30);
  column->addWidget(ask_, 0, Qt::AlignLeft);
  asking_ = new QWidget(this);
  auto* inside = new QVBoxLayout(asking_);
  inside->setContentsMargins(0, 0, 0, 0);
  inside->setSpacing(4);
  auto* words = new controls::WrappedLabel(QStringLiteral("\u26A0 ") + question, asking_);
  words->setProperty("caution", true);
  inside->addWidget(words);
  auto* row = new QHBoxLayout;
  no_ = new QPushButton(tr("Keep it"), asking_);
  yes_ = new QPushButton(yes, asking_);
  for (QPushButton* button : {no_, yes_}) {
    button->setMinimumHeight(30);
    button->setAccessibleDescription(question);
    row->addWidget(button);
  }
  row->addStretch(1);
  inside->addLayout(row);
  column->addWidget(asking_);
  asking_->hide();
  connect(ask_, &QPushButton::clicked, this, [this] {
    ask_->hide();
    asking_->show();
    no_->setFocus();  // Enter by habit keeps it
  });
  connect(no_, &QPushButton::clicked, this, [this] {
    calm();
    ask_->setFocus();
  });
  connect(yes_, &QPushButton::clicked, this, [this] {
    calm();
    Q_EMIT confirmed();
  });
}

void ConfirmRow::setText(const QString& text) { ask_->setText(text); }

void ConfirmRow::calm() {
  asking_->hide();
  ask_->show();
}

}  // namespace combdraft::cards
