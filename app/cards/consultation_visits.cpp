#include "app/cards/consultation_visits.h"

#include <QDate>
#include <QListWidget>
#include <QPushButton>
#include <QSignalBlocker>

#include "app/cards/card_parts.h"
#include "app/store/client_json.h"
#include "app/store/plan_store.h"
#include "app/words/date_words.h"
#include "engine/plan/field_info.h"

namespace combdraft::cards {
namespace {

constexpr int kListLines = 6;

}  // namespace

store::Visit visitToday(const document::DocumentController& controller) {
  store::Visit visit;
  visit.date = QDate::currentDate().toString(Qt::ISODate).toStdString();
  visit.title = store::shownTitle(controller.document(), controller.file().path).toStdString();
  visit.number = controller.document().info().number;
  return visit;
}

ConsultationVisits::ConsultationVisits(document::DocumentController& controller, QWidget* parent)
    : ConsultationPage(parent), controller_(controller) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(5);
  addHeading(column, tr("Visits"));
  empty_ = addSoftText(column, tr("None yet. A visit keeps the day and which plan it was, so that the next plan of this client finds all of this again."));
  list_ = new QListWidget(this);
  list_->setAccessibleName(tr("Visits"));
  list_->setFixedHeight((list_->fontMetrics().height() + 12) * kListLines);
  column->addWidget(list_);
  add_ = new QPushButton(tr("Add a visit with this plan"), this);
  add_->setMinimumHeight(30);
  add_->setToolTip(tr("Writes down today and the plan that is open; the day can be changed"));
  column->addWidget(add_, 0, Qt::AlignLeft);
  detail_ = new QWidget(this);
  auto* fields = new QVBoxLayout(detail_);
  fields->setContentsMargins(0, 4, 0, 0);
  fields->setSpacing(5);
  which_ = addSoftText(fields, {});
  date_ = new controls::TextField({tr("Day"), tr("YYYY-MM-DD"), tr("The day of this visit"), 10}, detail_);
  date_->setCheck(controls::dateProblem);
  fields->addWidget(date_);
  words_ = new controls::TextBox(tr("About this visit"), tr("how it went, what the client said, what to change"), 3,
                                 static_cast<qsizetype>(plan::limits::kTextBytes), detail_);
  fields->addWidget(words_);
  remove_ = new ConfirmRow(tr("Remove this visit"), tr("The visit and its words are gone then; its plan stays."), tr("Remove it for good"), detail_);
  fields->addWidget(remove_);
  column->addWidget(detail_);
  addText(column, tr("Notes"), tr("about this client"), 5, [](ClientFile& f) -> std::string& { return f.notes; });
  column->addStretch(1);

  connect(add_, &QPushButton::clicked, this, &ConsultationVisits::add);
  connect(list_, &QListWidget::currentRowChanged, this, [this](int row) {
    if (row < 0 || static_cast<std::size_t>(row) == shown_) return;
    shown_ = static_cast<std::size_t>(row);
    abandonTyping(detail_);
    remove_->calm();
    fill();
  });
  connect(date_, &controls::TextField::edited, this,
          [this](const QString& text) { changeShown([&](store::Visit& visit) { visit.date = text.toStdString(); }); });
  connect(words_, &controls::TextBox::edited, this,
          [this](const QString& text, bool) { changeShown([&](store::Visit& visit) { visit.words = text.toStdString(); }); });
  connect(remove_, &ConfirmRow::confirmed, this, [this] {
    change([this](ClientFile& file) {
      if (shown_ < file.visits.size()) file.visits.erase(file.visits.begin() + static_cast<std::ptrdiff_t>(shown_));
    });
  });
}

void ConsultationVisits::add() {
  shown_ = file().visits.size();
  abandonTyping(detail_);
  change([this](ClientFile& file) { file.visits.push_back(visitToday(controller_)); });
  words_->setFocus();
}

void ConsultationVisits::changeShown(const std::function<void(store::Visit&)>& change) {
  this->change([&](ClientFile& file) {
    if (shown_ < file.visits.size()) change(file.visits[shown_]);
  });
}

void ConsultationVisits::fill() {
  ConsultationPage::fill();
  const auto& visits = file().visits;
  if (shown_ >= visits.size()) {
    shown_ = visits.empty() ? 0 : visits.size() - 1;
    abandonTyping(detail_);
  }
  const auto nameOf = [](const store::Visit& visit) {
    return tr("%1: %2").arg(visit.date.empty() ? tr("no day") : words::dateText(visit.date), QString::fromStdString(visit.title));
  };
  const QSignalBlocker quiet(list_);
  while (list_->count() > static_cast<int>(visits.size())) delete list_->takeItem(list_->count() - 1);
  while (list_->count() < static_cast<int>(visits.size())) list_->addItem(QString());
  for (std::size_t i = 0; i < visits.size(); ++i) list_->item(static_cast<int>(i))->setText(nameOf(visits[i]));
  list_->setCurrentRow(visits.empty() ? -1 : static_cast<int>(shown_));
  list_->setVisible(!visits.empty());
  empty_->setVisible(visits.empty());
  detail_->setVisible(!visits.empty());
  add_->setEnabled(visits.size() < store::limits::kClientVisits);
  if (visits.empty()) return;
  const store::Visit& visit = visits[shown_];
  which_->setText(visit.number == controller_.document().info().number ? tr("With the plan that is open.")
                                                                       : tr("With the plan “%1”, number %2.").arg(QString::fromStdString(visit.title), QString::number(visit.number)));
  date_->setText(QString::fromStdString(visit.date));
  words_->setText(QString::fromStdString(visit.words));
}

}  // namespace combdraft::cards
