#include "app/cards/test_list.h"

#include <QComboBox>
#include <QListWidget>
#include <QPushButton>
#include <QSignalBlocker>

#include "app/cards/card_parts.h"
#include "app/cards/consultation_words.h"
#include "app/store/client_json.h"
#include "app/words/date_words.h"
#include "engine/plan/field_info.h"

namespace combdraft::cards {
namespace {

constexpr int kListLines = 4;

}  // namespace

TestList::TestList(QWidget* parent) : ConsultationPage(parent) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(5);
  addHeading(column, tr("Tests"));
  empty_ = addSoftText(column, tr("None written down. Add one before it is made, or with its date and result."));
  list_ = new QListWidget(this);
  list_->setAccessibleName(tr("Tests"));
  list_->setFixedHeight((list_->fontMetrics().height() + 12) * kListLines);
  list_->setWordWrap(true);
  column->addWidget(list_);
  auto* row = new QHBoxLayout;
  QStringList names;
  for (const auto& kind : plan::words<store::TestKind>()) names << testName(kind.value);
  kind_ = newCombo(this, tr("Kind of test"), names);
  kind_->setCurrentIndex(0);
  add_ = new QPushButton(tr("Add test"), this);
  add_->setMinimumHeight(30);
  row->addWidget(kind_, 1);
  row->addWidget(add_);
  column->addLayout(row);

  detail_ = new QWidget(this);
  auto* fields = new QVBoxLayout(detail_);
  fields->setContentsMargins(0, 4, 0, 0);
  fields->setSpacing(5);
  date_ = new controls::TextField({tr("Tested on"), tr("YYYY-MM-DD"), tr("Empty while the test is not made yet"), 10}, detail_);
  date_->setCheck(controls::dateProblem);
  fields->addWidget(date_);
  result_ = new controls::TextBox(tr("What came of it"), tr("in your own words"), 2, static_cast<qsizetype>(plan::limits::kTextBytes), detail_);
  fields->addWidget(result_);
  dueDate_ = new controls::TextField({tr("Due again on"), tr("by your policy"), tr("As label, insurer or your own rule asks; empty goes by your policy in Preferences"), 10}, detail_);
  dueDate_->setCheck(controls::dateProblem);
  fields->addWidget(dueDate_);
  due_ = addSoftText(fields, {});
  due_->setObjectName(QStringLiteral("due"));
  remove_ = new ConfirmRow(tr("Remove this test"), tr("What was written down about this test is gone then."), tr("Remove it for good"), detail_);
  fields->addWidget(remove_);
  column->addWidget(detail_);

  connect(add_, &QPushButton::clicked, this, &TestList::add);
  connect(list_, &QListWidget::currentRowChanged, this, [this](int index) {
    if (index < 0 || static_cast<std::size_t>(index) == shown_) return;
    shown_ = static_cast<std::size_t>(index);
    abandonTyping(detail_);
    remove_->calm();
    fill();
  });
  connect(date_, &controls::TextField::edited, this,
          [this](const QString& text) { changeShown([&](store::ClientTest& test) { test.date = text.toStdString(); }); });
  connect(dueDate_, &controls::TextField::edited, this,
          [this](const QString& text) { changeShown([&](store::ClientTest& test) { test.due = text.toStdString(); }); });
  connect(result_, &controls::TextBox::edited, this,
          [this](const QString& text, bool) { changeShown([&](store::ClientTest& test) { test.result = text.toStdString(); }); });
  connect(remove_, &ConfirmRow::confirmed, this, [this] {
    change([this](ClientFile& file) {
      if (shown_ < file.tests.size()) file.tests.erase(file.tests.begin() + static_cast<std::ptrdiff_t>(shown_));
    });
  });
}

void TestList::setPolicy(const store::ClientPolicy& policy) {
  policy_ = policy;
  fill();
}

void TestList::add() {
  store::ClientTest test;
  test.kind = static_cast<store::TestKind>(std::max(0, kind_->currentIndex()));
  shown_ = file().tests.size();
  abandonTyping(detail_);
  change([&](ClientFile& file) { file.tests.push_back(test); });
  date_->setFocus();
}

store::ClientTest* TestList::shownIn(ClientFile& file) { return shown_ < file.tests.size() ? &file.tests[shown_] : nullptr; }

void TestList::changeShown(const std::function<void(store::ClientTest&)>& change) {
  this->change([&](ClientFile& file) {
    if (auto* test = shownIn(file)) change(*test);
  });
}

void TestList::fill() {
  ConsultationPage::fill();
  const auto& tests = file().tests;
  if (shown_ >= tests.size()) {
    shown_ = tests.empty() ? 0 : tests.size() - 1;
    abandonTyping(detail_);
  }
  const QDate today = QDate::currentDate();
  const QSignalBlocker quiet(list_);
  while (list_->count() > static_cast<int>(tests.size())) delete list_->takeItem(list_->count() - 1);
  while (list_->count() < static_cast<int>(tests.size())) list_->addItem(QString());
  for (std::size_t i = 0; i < tests.size(); ++i) {
    const QString date = words::dateText(tests[i].date);
    list_->item(static_cast<int>(i))->setText(date.isEmpty() ? tr("%1, %2").arg(testName(tests[i].kind), dueText(tests[i], policy_, today))
                                                             : tr("%1, %2, %3").arg(testName(tests[i].kind), date, dueText(tests[i], policy_, today)));
  }
  list_->setCurrentRow(tests.empty() ? -1 : static_cast<int>(shown_));
  list_->setVisible(!tests.empty());
  empty_->setVisible(tests.empty());
  detail_->setVisible(!tests.empty());
  add_->setEnabled(tests.size() < store::limits::kClientTests);
  if (tests.empty()) return;
  const store::ClientTest& test = tests[shown_];
  date_->setText(QString::fromStdString(test.date));
  dueDate_->setText(QString::fromStdString(test.due));
  result_->setText(QString::fromStdString(test.result));
  due_->setText(dueText(test, policy_, today));
}

}  // namespace combdraft::cards
