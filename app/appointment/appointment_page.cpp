#include "app/appointment/appointment_page.h"

#include <QHBoxLayout>
#include <QHideEvent>
#include <QKeyEvent>
#include <QVBoxLayout>
#include <utility>

namespace combdraft::appointment {
namespace {

bool showsHair(AppointmentPage::View view) {
  using View = AppointmentPage::View;
  return view == View::WorkList || view == View::Outcome || view == View::NextVisit;
}

}  // namespace

AppointmentPage::AppointmentPage(document::DocumentController& controller, QWidget* parent, LogView::Clock clock, live::HairCountService::Count count)
    : QWidget(parent), counts_(new live::HairCountService(std::move(count), this)) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(18, 12, 18, 12);
  column->setSpacing(10);
  auto* top = new QHBoxLayout;
  top->setSpacing(14);
  column->addLayout(top);
  auto* title = new QLabel(tr("Appointment"), this);
  QFont font = title->font();
  font.setPointSizeF(font.pointSizeF() * 1.7);
  font.setWeight(QFont::DemiBold);
  title->setFont(font);
  top->addWidget(title);
  which_ = new controls::Segments(tr("What is shown of the appointment"),
                                  {{tr("Work list"), tr("Order, bowls, foils and minutes, before it begins"), {}},
                                   {tr("Log"), tr("What is placed, looked at, taken out and rinsed, as it happens"), {}},
                                   {tr("After the rinse"), tr("Which level came where; finishes and corrections that you type"), {}},
                                   {tr("Planned and got"), tr("Levels piece by piece, and your own speed and amounts"), {}},
                                   {tr("Next visit"), tr("What shows by then, which pieces to repeat, and its plan"), {}}}, this);
  top->addWidget(which_);
  top->addStretch(1);
  auto* back = new QPushButton(tr("Back to the sheet"), this);
  back->setMinimumHeight(34);
  back->setToolTip(tr("Back to where you were (Escape); the log stays as it is"));
  top->addWidget(back);
  views_ = new QStackedWidget(this);
  column->addWidget(views_, 1);
  workList_ = new WorkListView(controller, *counts_, views_);
  log_ = new LogView(controller, std::move(clock), views_);
  views_->addWidget(workList_);
  views_->addWidget(log_);
  after_ = new AfterView(controller, views_);
  views_->addWidget(after_);
  outcome_ = new OutcomeView(controller, *counts_, views_);
  views_->addWidget(outcome_);
  nextVisit_ = new NextVisitView(controller, *counts_, views_);
  views_->addWidget(nextVisit_);
  setFactors({});
  which_->setCurrent(0);
  connect(which_, &controls::Segments::chosen, this, [this](int i) { turnTo(static_cast<View>(i)); });
  connect(back, &QPushButton::clicked, this, &AppointmentPage::left);
  connect(log_, &LogView::tapped, this, &AppointmentPage::tapped);
  connect(outcome_, &OutcomeView::factorsChanged, this, &AppointmentPage::factorsChanged);
  connect(after_, &AfterView::lookWanted, this, &AppointmentPage::lookWanted);
}

void AppointmentPage::turnTo(View view) {
  which_->setCurrent(static_cast<int>(view));
  views_->setCurrentIndex(static_cast<int>(view));
  if (!showsHair(view)) counts_->cancel();
  QWidget* const first[] = {workList_->table(), log_->pieces(), after_->finishOfAll()->level(), outcome_->mixed(), nextVisit_->weeks()};
  first[static_cast<int>(view)]->setFocus();
  Q_EMIT turned();
}

void AppointmentPage::setFactors(const work::OwnFactors& factors) {
  workList_->setFactors(factors);
  outcome_->setFactors(factors);
}

void AppointmentPage::hideEvent(QHideEvent* event) {
  counts_->cancel();
  QWidget::hideEvent(event);
}

void AppointmentPage::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape) return Q_EMIT left();
  QWidget::keyPressEvent(event);
}

}  // namespace combdraft::appointment
