#include "app/cards/consultation_client.h"

#include <QListWidget>
#include <QPushButton>

#include "app/cards/card_parts.h"
#include "app/words/date_words.h"

namespace combdraft::cards {
namespace {

constexpr int kListLines = 6;

}  // namespace

QString clientTitle(const store::ClientFile& file) {
  const QString last = words::dateText(store::lastOccasion(file));
  const QString visits = ConsultationClient::tr("visits: %1").arg(file.visits.size());
  return file.name.empty() ? ConsultationClient::tr("without a name, last %1, %2").arg(last, visits)
                           : ConsultationClient::tr("%1, last %2, %3").arg(QString::fromStdString(file.name), last, visits);
}

ConsultationClient::ConsultationClient(QWidget* parent) : ConsultationPage(parent) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(5);
  addHeading(column, tr("Client"));
  addLine(column, {tr("First name or mark"), tr("not typed"), tr("Only if you need it: a mark of your own does too"), 50},
          [](ClientFile& f) -> std::string& { return f.name; });
  addText(column, tr("Contact"), tr("only if you need it"), 2, [](ClientFile& f) -> std::string& { return f.contact; });
  buildOther(column);

  addHeading(column, tr("Where it is kept"));
  addSoftText(column, tr("On this computer, in a folder that only your login can open, apart from the plan. It is not encrypted unless your disk is."));
  addSoftText(column, tr("The plan has no field for a name, a contact or a health answer. It does hold the head, the hair, your notes, the agreed "
                         "picture and the log: write no name and no health answer into it."));
  since_ = addSoftText(column, {});

  addHeading(column, tr("Hand over, delete"));
  export_ = new QPushButton(tr("Hand over what is kept…"), this);
  export_->setMinimumHeight(30);
  export_->setToolTip(tr("A folder that the client can read: text, JSON and photos, with the day of consent"));
  column->addWidget(export_, 0, Qt::AlignLeft);
  connect(export_, &QPushButton::clicked, this, &ConsultationClient::exportWanted);
  const QString gone = tr("All that is kept of this client goes for good: answers, photos, notes, visits; of the plans of this client also what the "
                          "program keeps beside them: unsaved work, versions before the last save. Plans of other visits, pages and PDFs, handed-over folders and backups stay.");
  remove_ = new ConfirmRow(tr("Delete this client"), gone + QStringLiteral(" ") + tr("The plan files stay."), tr("Delete for good"), this);
  removeWithPlan_ = new ConfirmRow(tr("Delete this client and the plan"), gone + QStringLiteral(" ") + tr("The plan that is open goes too."),
                                   tr("Delete both for good"), this);
  column->addWidget(remove_);
  column->addWidget(removeWithPlan_);
  connect(remove_, &ConfirmRow::confirmed, this, &ConsultationClient::removeWanted);
  connect(removeWithPlan_, &ConfirmRow::confirmed, this, &ConsultationClient::removeWithPlanWanted);
  column->addStretch(1);
}

void ConsultationClient::buildOther(QVBoxLayout* column) {
  other_ = new QWidget(this);
  auto* inside = new QVBoxLayout(other_);
  inside->setContentsMargins(0, 0, 0, 0);
  inside->setSpacing(5);
  addHeading(inside, tr("Here before?"));
  addSoftText(inside, tr("Was this client here with another plan, the visits belong together."));
  look_ = new QPushButton(tr("Show the clients to choose from"), other_);
  look_->setMinimumHeight(30);
  look_->setToolTip(tr("Shows names: turn the screen away from others first"));
  inside->addWidget(look_, 0, Qt::AlignLeft);
  none_ = addSoftText(inside, tr("No other client is kept here."));
  others_ = new QListWidget(other_);
  others_->setAccessibleName(tr("Clients"));
  others_->setFixedHeight((others_->fontMetrics().height() + 12) * kListLines);
  inside->addWidget(others_);
  choose_ = new QPushButton(tr("It is this client"), other_);
  choose_->setMinimumHeight(30);
  inside->addWidget(choose_, 0, Qt::AlignLeft);
  column->addWidget(other_);
  connect(look_, &QPushButton::clicked, this, &ConsultationClient::listOthers);
  connect(others_, &QListWidget::currentRowChanged, this, [this](int row) { choose_->setEnabled(row >= 0); });
  const auto take = [this] {
    if (const QListWidgetItem* item = others_->currentItem()) Q_EMIT clientChosen(item->data(Qt::UserRole).toULongLong());
  };
  connect(choose_, &QPushButton::clicked, this, take);
  connect(others_, &QListWidget::itemActivated, this, take);
}

void ConsultationClient::listOthers() {
  others_->clear();
  for (const store::ClientEntry& client : store::findClients(keeper()->root())) {
    if (client.trouble || client.number == keeper()->number()) continue;
    auto* item = new QListWidgetItem(clientTitle(client.file));
    item->setData(Qt::UserRole, QVariant::fromValue<quint64>(client.number));
    others_->insertItem(0, item);  // the last one here first
  }
  const bool some = others_->count() > 0;
  others_->setVisible(some);
  choose_->setVisible(some);
  choose_->setEnabled(false);
  none_->setVisible(!some);
  if (some) others_->setFocus();
}

void ConsultationClient::fill() {
  ConsultationPage::fill();
  // Names of others do not stay on the screen.
  others_->clear();
  others_->hide();
  choose_->hide();
  none_->hide();
  const bool empty = store::isEmpty(file());
  other_->setVisible(keeper() && empty);
  since_->setText(empty ? tr("Nothing is kept of this client yet.")
                        : tr("Begun on %1.").arg(words::dateText(file().begun)));
  export_->setEnabled(!empty);
  remove_->ask()->setEnabled(!empty);
  remove_->calm();
  removeWithPlan_->calm();
}

}  // namespace combdraft::cards
