// The window's part that works: the appointment's page and its log on the disk.
#include <QStackedWidget>

#include "app/appointment/appointment_page.h"
#include "app/desk/main_window.h"
#include "app/desk/message_bar.h"

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
  actions_.add({QStringLiteral("appointment.after"), tr("A&fter the rinse…"), tr("Which level came where; try a finish or put depth back, as you type it"),
                QKeySequence(Qt::CTRL | Qt::Key_R), {}, [show] { show(AppointmentPage::View::After); }, shown, {}, tr("After the rinse")});
  actions_.add({QStringLiteral("appointment.outcome"), tr("Planned and &got…"), tr("Levels piece by piece, and what this head says of your own speed and amounts"),
                {}, {}, [show] { show(AppointmentPage::View::Outcome); }, shown, {}, tr("Planned and got")});
}

void MainWindow::connectAppointment() {
  connect(appointment_, &appointment::AppointmentPage::left, this, [this] { turnBack(); });
  connect(appointment_, &appointment::AppointmentPage::lookWanted, this, [this] { turnTo(Page::Work); });
  connect(appointment_, &appointment::AppointmentPage::factorsChanged, this, [this](const work::OwnFactors& factors) {
    settings_.setOwnFactors(factors);
    for (MainWindow* window : allWindows()) window->takePreferences();
  });
  // A tap is on the disk before the next one can come, whatever happens then.
  connect(appointment_, &appointment::AppointmentPage::tapped, this, [this] {
    if (recovery_.writeNow() == store::Recovery::Written::No)
      messages_->say({Message::Kind::Caution,
                      tr("The last tap is in the plan but not on the disk yet. It is tried again; note times on paper until this message goes."), {}, kTopic});
    else
      messages_->clear(kTopic);
  });
}

}  // namespace combdraft::desk
