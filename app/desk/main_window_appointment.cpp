// The window's part that works: the appointment's page and its log on the disk.
#include <QStackedWidget>

#include "app/appointment/appointment_page.h"
#include "app/cards/consultation_card.h"
#include "app/desk/card_column.h"
#include "app/desk/main_window.h"
#include "app/desk/message_bar.h"
#include "app/handout/composer_page.h"
#include "engine/plan/edits.h"

namespace combdraft::desk {
namespace {

const QString kTopic = QStringLiteral("appointment");

}  // namespace

void MainWindow::declareAppointmentActions() {
  using appointment::AppointmentPage;
  const auto show = [this](AppointmentPage::View view) {
    turnTo(Page::Appointment);
    appointment_->turnTo(view);
  };
  const Condition shown = whilePlanShown();
  actions_.add({QStringLiteral("appointment.workList"), tr("&Work list…"), tr("Order, bowls, foils and minutes of this placement"),
                QKeySequence(Qt::CTRL | Qt::Key_L), {}, [show] { show(AppointmentPage::View::WorkList); }, shown, {}, tr("Work list")});
  actions_.add({QStringLiteral("appointment.log"), tr("Appointment &log…"), tr("What is placed, looked at, taken out and rinsed, as it happens"),
                QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_L), {}, [show] { show(AppointmentPage::View::Log); }, shown, {}, tr("Log")});
  actions_.add({QStringLiteral("appointment.paper"), tr("Work list on &paper…"), tr("Bowls, steps and foils in order as pages, to print or to save"),
                {}, {}, [this] { showWorkListOnPaper(); }, shown, {}, tr("On paper")});
  actions_.add({QStringLiteral("appointment.after"), tr("&After the rinse…"), tr("Which level came where; try a finish or put depth back, as you type it"),
                QKeySequence(Qt::CTRL | Qt::Key_R), {}, [show] { show(AppointmentPage::View::After); }, shown, {}, tr("After the rinse")});
  actions_.add({QStringLiteral("appointment.outcome"), tr("Planned and &got…"), tr("Levels piece by piece, and what this head says of your own speed and amounts"),
                {}, {}, [show] { show(AppointmentPage::View::Outcome); }, shown, {}, tr("Planned and got")});
  actions_.add({QStringLiteral("appointment.nextVisit"), tr("&Next visit…"), tr("What shows by then, which pieces to repeat, and the plan for it"),
                QKeySequence(Qt::CTRL | Qt::Key_T), {}, [show] { show(AppointmentPage::View::NextVisit); }, shown, {}, tr("Next visit")});
}

bool MainWindow::isLogShown() const {
  return pages_->currentIndex() == static_cast<int>(Page::Appointment) && appointment_->view() == appointment::AppointmentPage::View::Log;
}

void MainWindow::connectAppointment() {
  connect(appointment_, &appointment::AppointmentPage::turned, this, [this] {
    nameUndo();
    actions_.refresh();
  });
  connect(appointment_, &appointment::AppointmentPage::left, this, [this] { turnBack(); });
  connect(&appointment_->workList(), &appointment::WorkListView::paperWanted, this, &MainWindow::showWorkListOnPaper);
  connect(appointment_, &appointment::AppointmentPage::lookWanted, this, [this] { turnTo(Page::Work); });
  const appointment::NextVisitView* nextVisit = &appointment_->nextVisit();
  connect(nextVisit, &appointment::NextVisitView::nextPlanWanted, this, [this](const plan::Plan& next, const std::vector<std::string>& leave) {
    askBeforeLeaving(tr("Save them before the next visit's plan begins?"), [this, next, leave] { beginNextVisit(next, leave); });
  });
  connect(nextVisit, &appointment::NextVisitView::consultationWanted, this, [this] {
    turnTo(Page::Work);
    cards_->turnTo(CardColumn::Card::Consultation);
    cards_->consultationCard()->turnTo(cards::ConsultationCard::Page::Visits);
    actions_.refresh();
  });
  connect(appointment_, &appointment::AppointmentPage::factorsChanged, this, [this](const work::OwnFactors& factors) {
    settings_.setOwnFactors(factors);
    sayUnwritten();
    if (const auto written = settings_.written(); !written) {
      // Not read back from there: it holds while the windows stand.
      for (MainWindow* window : allWindows()) window->appointment_->setFactors(factors);
      return appointment_->outcome().sayNotKept(store::unwrittenText(written.error()));
    }
    for (MainWindow* window : allWindows()) window->takePreferences();
  });
  // A tap is on the disk before the next one can come, whatever happens then.
  connect(appointment_, &appointment::AppointmentPage::tapped, this, [this] {
    actions_.refresh();
    appointment_->log().setUnwritten(recovery_.writeNow() == store::Recovery::Written::No);
  });
}

void MainWindow::showWorkListOnPaper() {
  turnTo(Page::Handout);
  composer_->showDocument(handout::DocumentKind::WorkList);
}

void MainWindow::beginNextVisit(const plan::Plan& next, const std::vector<std::string>& leave) {
  beginPlan(next);
  QString text = tr("This is the next visit's plan, not saved yet; the plan before is as it was. Condition and porosity are blank: check them anew.");
  // An undo entry of its own, so that what was left can come back.
  if (!leave.empty() && controller_.edit(plan::applied(next, plan::removeItems(next, leave)), tr("Leave %1 pieces that need no repeat").arg(leave.size())) ==
                            document::DocumentController::Outcome::Made)
    text += u' ' + tr("%1 pieces that need no repeat were taken off; undo brings them back.").arg(leave.size());
  messages_->say({Message::Kind::News, text, {}, QStringLiteral("file")});
}

}  // namespace combdraft::desk
