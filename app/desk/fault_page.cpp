#include "app/desk/fault_page.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>

#include "app/controls/wrapped_label.h"
#include "app/desk/page_parts.h"

namespace combdraft::desk {
namespace {

constexpr int kLowest_px = 32;  // buttons

}  // namespace

FaultPage::FaultPage(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("page"));
  QVBoxLayout* column = pageColumn(this, tr("Reports of faults"), [this] { Q_EMIT done(); });
  auto* what = new controls::WrappedLabel(tr("Where in the program it ended itself, and what it was doing. A report holds no title, note, name "
                             "and no folder. This program sends nothing: if you want to tell its makers, read the "
                             "report, copy it, and send it yourself."),
                          this);
  what->setProperty("soft", true);
  column->addWidget(what);
  text_ = new QPlainTextEdit(this);
  text_->setReadOnly(true);
  text_->setTabChangesFocus(true);
  text_->setAccessibleName(tr("Reports"));
  text_->setPlaceholderText(tr("There are no reports."));
  column->addWidget(text_, 1);
  auto* buttons = new QHBoxLayout;
  copy_ = new QPushButton(tr("Copy"), this);
  remove_ = new QPushButton(tr("Remove"), this);
  remove_->setToolTip(tr("Takes the reports off this computer"));
  for (QPushButton* button : {copy_, remove_}) {
    button->setMinimumHeight(kLowest_px);
    button->setAccessibleName(button->text());
    buttons->addWidget(button);
  }
  buttons->addStretch(1);
  column->addLayout(buttons);
  connect(copy_, &QPushButton::clicked, this, [this] {
    QGuiApplication::clipboard()->setText(text_->toPlainText());
    Q_EMIT copied();
  });
  connect(remove_, &QPushButton::clicked, this, &FaultPage::removeWanted);
}

void FaultPage::fill(const std::vector<store::FaultReport>& reports) {
  QStringList texts;
  for (const store::FaultReport& report : reports) texts << report.text.trimmed();
  text_->setPlainText(texts.join(QStringLiteral("\n\n")));
  copy_->setEnabled(!reports.empty());
  remove_->setEnabled(!reports.empty());
}

void FaultPage::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape) {
    Q_EMIT done();
    return;
  }
  QWidget::keyPressEvent(event);
}

}  // namespace combdraft::desk
