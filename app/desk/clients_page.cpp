#include "app/desk/clients_page.h"

#include <QKeyEvent>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <algorithm>

#include "app/cards/confirm_row.h"
#include "app/cards/consultation_client.h"
#include "app/controls/wrapped_label.h"
#include "app/desk/error_text.h"
#include "app/desk/page_parts.h"

namespace combdraft::desk {

ClientsPage::ClientsPage(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("page"));
  QVBoxLayout* column = pageColumn(this, tr("Clients"), [this] { Q_EMIT done(); });
  what_ = new controls::WrappedLabel(this);
  what_->setProperty("soft", true);
  column->addWidget(what_);
  list_ = new QListWidget(this);
  list_->setAccessibleName(tr("Clients"));
  list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  column->addWidget(list_, 1);
  trouble_ = new controls::WrappedLabel(this);
  trouble_->setProperty("caution", true);
  trouble_->hide();
  column->addWidget(trouble_);
  auto* row = new QHBoxLayout;
  keep_ = new QPushButton(tr("Keep it"), this);
  keep_->setToolTip(tr("Your time for keeping counts anew from today"));
  handOver_ = new QPushButton(tr("Hand over what is kept…"), this);
  handOver_->setToolTip(tr("A folder that the client can read: text, JSON and photos"));
  for (QPushButton* button : {keep_, handOver_}) {
    button->setMinimumHeight(32);
    row->addWidget(button);
  }
  row->addStretch(1);
  column->addLayout(row);
  remove_ = new cards::ConfirmRow(
      tr("Delete this client"),
      tr("All that is kept of this client goes for good, with unsaved work and earlier versions of the plans of this client. The plan files stay, and so do copies elsewhere."),
      tr("Delete for good"), this);
  column->addWidget(remove_);
  connect(list_, &QListWidget::currentRowChanged, this, &ClientsPage::chosenChanged);
  connect(keep_, &QPushButton::clicked, this, [this] { Q_EMIT keepWanted(chosen()); });
  connect(handOver_, &QPushButton::clicked, this, [this] { Q_EMIT handOverWanted(chosen()); });
  connect(remove_, &cards::ConfirmRow::confirmed, this, [this] { Q_EMIT removeWanted(chosen()); });
}

void ClientsPage::fill(std::vector<store::ClientEntry> clients, const store::ClientPolicy& policy) {
  const int row = list_->currentRow();
  const QDate today = QDate::currentDate();
  clients_ = std::move(clients);
  std::stable_partition(clients_.begin(), clients_.end(),
                        [&](const store::ClientEntry& client) { return store::isOverKept(client.file, policy, today); });
  list_->clear();
  int over = 0;
  for (const store::ClientEntry& client : clients_) {
    const bool isOver = store::isOverKept(client.file, policy, today);
    over += isOver;
    const QString title = client.trouble ? tr("number %1: cannot be read").arg(client.number) : cards::clientTitle(client.file);
    list_->addItem(isOver ? tr("\u26A0 %1 (over your time)").arg(title) : title);
  }
  const QString kept = clients_.empty() ? tr("Nothing is kept of any client.")
                                        : tr("Kept on this computer in a folder that only your login can open; not encrypted unless your disk is.");
  what_->setText(policy.keep_months == 0 ? kept + QStringLiteral(" ") + tr("You set no time for keeping them (Preferences).")
                                         : kept + QStringLiteral(" ") + tr("Over the %1 months that you set: %2. Nothing is deleted by itself.").arg(policy.keep_months).arg(over));
  if (!clients_.empty()) list_->setCurrentRow(std::clamp(row, 0, static_cast<int>(clients_.size()) - 1));
  chosenChanged();
}

void ClientsPage::clear() {
  list_->clear();
  clients_.clear();
}

quint64 ClientsPage::chosen() const {
  const int row = list_->currentRow();
  return row < 0 || row >= static_cast<int>(clients_.size()) ? 0 : clients_[static_cast<std::size_t>(row)].number;
}

void ClientsPage::chosenChanged() {
  remove_->calm();
  const int row = list_->currentRow();
  const bool some = chosen() != 0;
  const auto* trouble = some && clients_[static_cast<std::size_t>(row)].trouble ? &*clients_[static_cast<std::size_t>(row)].trouble : nullptr;
  trouble_->setVisible(trouble);
  if (trouble) trouble_->setText(QStringLiteral("\u26A0 ") + errorText(*trouble));
  keep_->setEnabled(some && !trouble);
  handOver_->setEnabled(some && !trouble);
  remove_->ask()->setEnabled(some);
}

void ClientsPage::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape) {
    Q_EMIT done();
    return;
  }
  QWidget::keyPressEvent(event);
}

}  // namespace combdraft::desk
