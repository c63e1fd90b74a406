// The log's page: slips of a gloved hand, taps that are refused, another visit, and a
// screen that stays awake.
#include <catch2/catch.hpp>

#include <QDBusMessage>
#include <QDBusVirtualObject>
#include <QProcess>

#include "app/appointment/appointment_page.h"
#include "engine/plan/edits.h"
#include "tests/app/appointment_helpers.h"
#include "tests/app/card_helpers.h"
#include "tests/app/desk_fixture.h"

namespace combdraft::appointment {
namespace {

using document::DocumentController;
using work::Tap;

struct LogPage {
  TestClock clock;
  DocumentController controller;
  AppointmentPage page;

  explicit LogPage(const plan::Plan& plan = typedPlan(10, 30)) : controller(plan), page(controller, nullptr, clock.clock()) {
    page.show();
    page.turnTo(AppointmentPage::View::Log);
  }
  LogView& view() { return page.log(); }
  void tap(Tap which, double minute) {
    clock.minute = minute;
    view().button(which)->click();
  }
};

/// A bus of its own, and a desktop on it that keeps screens awake.
class StandInDesktop : public QDBusVirtualObject {
 public:
  StandInDesktop() {
    daemon_.start(QStringLiteral("dbus-daemon"), {QStringLiteral("--session"), QStringLiteral("--nofork"), QStringLiteral("--print-address")});
    REQUIRE(daemon_.waitForReadyRead(10'000));
    address_ = QString::fromUtf8(daemon_.readLine()).trimmed();
  }
  ~StandInDesktop() override {
    for (const QString& name : names_) QDBusConnection::disconnectFromBus(name);
    daemon_.terminate();
    daemon_.waitForFinished(5'000);
  }
  QDBusConnection connection(const char* name) {
    names_ << QString::fromLatin1(name);
    return QDBusConnection::connectToBus(address_, names_.back());
  }
  void serve() {
    QDBusConnection desktop = connection("desktop");
    REQUIRE(desktop.isConnected());
    REQUIRE(desktop.registerVirtualObject(QStringLiteral("/org/freedesktop/ScreenSaver"), this));
    REQUIRE(desktop.registerService(QStringLiteral("org.freedesktop.ScreenSaver")));
  }
  QString introspect(const QString&) const override { return {}; }
  bool handleMessage(const QDBusMessage& message, const QDBusConnection& connection) override {
    calls << message.member();
    if (message.member() == QLatin1String("Inhibit")) {
      asked_.push_back(message);
      if (!isSlow) answer(connection);
      return true;
    }
    if (message.member() == QLatin1String("UnInhibit")) cookies << message.arguments().value(0).toUInt();
    return connection.send(message.createReply());
  }
  /// Grants what was asked and not answered yet, each with a number of its own.
  void answer(const QDBusConnection& connection) {
    for (const QDBusMessage& message : asked_) connection.send(message.createReply(QVariant::fromValue<uint>(++granted)));
    asked_.clear();
  }
  bool isSlow = false;
  uint granted = 6;
  QStringList calls;
  QList<uint> cookies;

 private:
  std::vector<QDBusMessage> asked_;
  QProcess daemon_;
  QString address_;
  QStringList names_;
};

}  // namespace

TEST_CASE("a second touch within a moment is one tap", "[appointment][log]") {
  LogPage log;
  log.tap(Tap::Placed, 1);
  log.tap(Tap::Placed, 1 + 0.2 / 60);  // a glove that touched twice
  CHECK(logOf(log.controller).events.size() == 1);
  CHECK(log.view().stateText().contains(QStringLiteral("was not counted")));
  log.tap(Tap::Placed, 1 + 0.9 / 60);
  CHECK(logOf(log.controller).events.size() == 2);
  CHECK(log.view().stateText().isEmpty());
  log.tap(Tap::Rinsed, 1 + 1.0 / 60);  // another button is another tap
  CHECK(logOf(log.controller).events.size() == 3);
}

TEST_CASE("a tap that is refused leaves what was typed and says so", "[appointment][log]") {
  LogPage log;
  log.tap(Tap::Placed, 1);
  log.controller.setAccess(DocumentController::Access::ReadOnly);
  log.view().pieces()->setCurrentRow(0);
  tests::typeInto(log.view().level()->edit(), QStringLiteral("7.5"));
  log.tap(Tap::Looked, 5);
  CHECK(logOf(log.controller).events.size() == 1);
  CHECK(log.view().level()->value() == 7.5);
  CHECK(log.view().stateText().contains(QStringLiteral("Not noted: this plan may only be read")));
  log.tap(Tap::Placed, 6);
  CHECK(log.view().pieces()->currentRow() == 0);  // it does not go on
  log.controller.setAccess(DocumentController::Access::Full);
  log.tap(Tap::Looked, 7);
  CHECK(logOf(log.controller).events.back().level == 7.5);
  CHECK_FALSE(log.view().level()->value());
}

TEST_CASE("a piece under product stays on the log's page when the plan loses it", "[appointment][log]") {
  LogPage log;
  log.tap(Tap::Placed, 1);
  REQUIRE(logOf(log.controller).events[0].pieces == std::vector<plan::ItemId>{"piece-1"});
  const plan::Plan plan = log.controller.document();
  log.controller.edit(plan::applied(plan, plan::removeItems(plan, {"piece-1"})), QStringLiteral("Remove"));
  REQUIRE_FALSE(log.controller.document().find<plan::Piece>("piece-1"));
  QListWidget* list = log.view().pieces();
  const auto row = [&] {
    for (int i = 0; i < list->count(); ++i)
      if (list->item(i)->data(Qt::UserRole).toString() == QLatin1String("piece-1")) return i;
    return -1;
  };
  REQUIRE(row() >= 0);
  CHECK(list->item(row())->text().contains(QStringLiteral("on the hair")));
  list->setCurrentRow(row());
  log.tap(Tap::Rinsed, 20);
  CHECK(logOf(log.controller).events.back().pieces == std::vector<plan::ItemId>{"piece-1"});
  CHECK(row() < 0);  // rinsed and no longer in the plan
}

TEST_CASE("another visit begins a new log and the one before stays", "[appointment][log]") {
  LogPage log;
  log.tap(Tap::Placed, 1);
  log.view().pieces()->setCurrentRow(0);
  log.tap(Tap::Rinsed, 40);
  CHECK(log.view().beginAnew()->isHidden());
  log.clock.minute = 40 + 9 * 7 * 24 * 60;  // nine weeks later, the same plan
  log.view().fill();
  REQUIRE_FALSE(log.view().beginAnew()->isHidden());
  CHECK(log.view().offerText().contains(QStringLiteral("begin a new log")));
  log.view().beginAnew()->click();
  CHECK(log.view().beginAnew()->isHidden());
  CHECK(log.view().firstText() == QStringLiteral("nothing is on the hair"));
  CHECK(log.view().pieces()->item(0)->text().startsWith(QStringLiteral("piece 1, ")));
  log.view().pieces()->setCurrentRow(0);
  log.tap(Tap::Placed, log.clock.minute + 1);
  CHECK(logOf(log.controller).events.size() == 4);
  CHECK(work::tapsOfVisit(logOf(log.controller)).size() == 1);
  log.view().takeBack()->click();
  log.view().takeBack()->click();  // a second touch
  CHECK(work::tapsOfVisit(logOf(log.controller)).size() == 1);
  log.clock.minute += 1;
  log.view().takeBack()->click();  // the new log itself
  CHECK(work::stateAt(logOf(log.controller), 1e18).at("piece-1").stage == work::Stage::Rinsed);
}

TEST_CASE("undo on the log's page takes back the tap and no edit of the plan", "[appointment][log]") {
  tests::Desk desk;
  desk.window->openPath(desk.file("undo-there"));
  desk.edit();
  const plan::Plan edited = desk.window->controller().document();
  desk.window->actions().action(QStringLiteral("appointment.log"))->trigger();
  LogView& view = desk.window->appointmentPage().log();
  view.button(Tap::Placed)->click();
  QAction* undo = desk.window->actions().action(QStringLiteral("edit.undo"));
  REQUIRE(undo->isEnabled());
  CHECK(undo->text().contains(QStringLiteral("the last tap")));
  QAction* redo = desk.window->actions().action(QStringLiteral("edit.redo"));
  CHECK_FALSE(redo->isEnabled());
  undo->trigger();
  CHECK(logOf(desk.window->controller()).events.at(0).takenBack);
  CHECK(desk.window->controller().document().hair() == edited.hair());
  CHECK_FALSE(undo->isEnabled());  // nothing left to take back
  REQUIRE(redo->isEnabled());
  QTest::qWait(450);  // a slip is not a second thought
  redo->trigger();
  CHECK_FALSE(logOf(desk.window->controller()).events.at(0).takenBack);
  QTest::qWait(450);
  undo->trigger();
  QTest::keyClick(&desk.window->appointmentPage(), Qt::Key_Escape);
  CHECK_FALSE(undo->text().contains(QStringLiteral("the last tap")));
  undo->trigger();
  CHECK_FALSE(desk.window->controller().document().hair() == edited.hair());
}

TEST_CASE("the screen is kept awake while the log is in view", "[appointment][log]") {
  StandInDesktop desktop;
  desktop.serve();
  LogPage log;
  log.view().setAwake(new ScreenAwake(desktop.connection("program")));
  REQUIRE(QTest::qWaitFor([&] { return !desktop.calls.isEmpty(); }));
  log.page.turnTo(AppointmentPage::View::WorkList);
  REQUIRE(QTest::qWaitFor([&] { return !desktop.cookies.isEmpty(); }));
  CHECK(desktop.calls == QStringList{QStringLiteral("Inhibit"), QStringLiteral("UnInhibit")});
  CHECK(desktop.cookies == QList<uint>{7});
}

TEST_CASE("a screen that was let go before it was granted is given back", "[appointment][log]") {
  StandInDesktop desktop;
  desktop.isSlow = true;
  desktop.serve();
  const QDBusConnection bus = desktop.connection("program");
  ScreenAwake awake(bus);
  awake.keep(QStringLiteral("first"));
  awake.letGo();
  awake.keep(QStringLiteral("second"));
  REQUIRE(QTest::qWaitFor([&] { return desktop.calls.size() == 2; }));
  QDBusConnection served(QStringLiteral("desktop"));
  desktop.answer(served);
  REQUIRE(QTest::qWaitFor([&] { return desktop.cookies.size() == 1 && awake.state() == ScreenAwake::State::Kept; }));
  awake.letGo();
  REQUIRE(QTest::qWaitFor([&] { return desktop.cookies.size() == 2; }));
  std::sort(desktop.cookies.begin(), desktop.cookies.end());
  CHECK(desktop.cookies == QList<uint>{7, 8});  // both were given back, each once
}

TEST_CASE("times that only wall clocks counted are said under the safety line until the hair is rinsed", "[appointment][log]") {
  LogPage log;
  log.tap(Tap::Placed, 1);
  CHECK(log.view().doubtText().isEmpty());
  DocumentController controller(log.controller.document());
  double minute = 9;
  std::int64_t back_ms = 0;
  AppointmentPage page(controller, nullptr, [&] {
    return work::TapClock{1'700'000'000'000 + static_cast<std::int64_t>(minute * 60'000) - back_ms, static_cast<std::int64_t>(minute * 60'000), "started anew"};
  });
  page.show();
  page.turnTo(AppointmentPage::View::Log);
  CHECK(page.log().doubtText().contains(QStringLiteral("compare with another clock")));
  back_ms = 3'600'000;  // it stands before the last tap: that weighs more
  page.log().hide();
  page.log().show();
  CHECK(page.log().doubtText().contains(QStringLiteral("min before the last tap")));
  back_ms = 0;
  page.log().pieces()->setCurrentRow(0);
  minute = 12;
  page.log().button(Tap::Rinsed)->click();
  CHECK(page.log().doubtText().isEmpty());
}

TEST_CASE("a desktop that cannot keep the screen awake is told on the page", "[appointment][log]") {
  const QString text = QStringLiteral("screen may go dark");
  const auto isTold = [&](LogView& view) {
    for (const auto* label : view.findChildren<QLabel*>())
      if (label->isVisibleTo(&view) && label->text().contains(text)) return true;
    return false;
  };
  LogPage without;
  without.view().setAwake(new ScreenAwake(std::nullopt));
  CHECK(isTold(without.view()));
  StandInDesktop silent;  // a bus, and nobody on it who could
  LogPage log;
  log.view().setAwake(new ScreenAwake(silent.connection("alone")));
  CHECK(QTest::qWaitFor([&] { return isTold(log.view()); }));
}

TEST_CASE("a tap stays with the piece that was chosen, whatever slides into its row", "[appointment][log]") {
  LogPage log;
  QListWidget* pieces = log.view().pieces();
  const auto idOf = [&](int row) { return pieces->item(row)->data(Qt::UserRole).toString(); };
  const auto without = [&](const QString& id) {
    plan::Plan next = log.controller.document();
    next.put(id.toStdString(), plan::ItemPtr());
    REQUIRE(log.controller.edit(next, QStringLiteral("Remove")) == document::DocumentController::Outcome::Made);
  };
  pieces->setCurrentRow(2);
  const QString chosen = idOf(2);
  without(idOf(0));
  REQUIRE(pieces->currentItem());
  CHECK(pieces->currentItem()->data(Qt::UserRole).toString() == chosen);
  log.tap(Tap::Rinsed, 0);
  const auto last = [&] { return work::readLog(log.controller.document().info().logJson)->events; };
  CHECK(last().back().pieces == std::vector<plan::ItemId>{chosen.toStdString()});
  pieces->setCurrentRow(1);
  without(idOf(1));
  CHECK(pieces->currentRow() == -1);
  log.tap(Tap::Placed, 1);
  CHECK(last().size() == 1);
  CHECK(log.view().stateText().contains(QStringLiteral("no piece is chosen")));
}

TEST_CASE("hair under product keeps its limit and its place on top when its piece leaves the plan", "[appointment][log]") {
  LogPage log;
  QListWidget* pieces = log.view().pieces();
  const std::string placed = pieces->item(0)->data(Qt::UserRole).toString().toStdString();
  pieces->setCurrentRow(0);
  log.tap(Tap::Placed, 0);
  REQUIRE(work::readLog(log.controller.document().info().logJson)->events.back().limits_s.count(placed));
  plan::Plan next = log.controller.document();
  next.put(placed, plan::ItemPtr());
  log.controller.edit(next, QStringLiteral("Remove"));
  log.clock.minute = 500;
  log.view().fill();
  CHECK(log.view().firstText().contains(QStringLiteral("product off now")));
  CHECK_FALSE(log.view().firstText().contains(QStringLiteral("nothing is on the hair")));
}

TEST_CASE("what is brought back is what was taken back last, and one piece's tap can be taken back alone", "[appointment][log]") {
  LogPage log;
  LogView& view = log.view();
  const auto events = [&] { return work::readLog(log.controller.document().info().logJson)->events; };
  view.pieces()->setCurrentRow(0);
  log.tap(Tap::Placed, 0);
  log.tap(Tap::Placed, 1);
  const auto takeBack = [&](double minute) {
    log.clock.minute = minute;
    view.takeBack()->click();
  };
  takeBack(2);
  log.tap(Tap::Placed, 3);
  takeBack(4);
  log.clock.minute = 5;
  view.restoreLast();
  REQUIRE(events().size() == 3);
  CHECK(events()[1].takenBack);
  CHECK_FALSE(events()[2].takenBack);
  CHECK_FALSE(view.canRestore());

  view.pieces()->setCurrentRow(0);
  log.tap(Tap::Rinsed, 6);  // by mistake
  view.pieces()->setCurrentRow(2);
  log.tap(Tap::Looked, 7);
  view.pieces()->setCurrentRow(0);
  log.clock.minute = 8;
  REQUIRE(view.takeBackOf()->isEnabled());
  view.takeBackOf()->click();
  CHECK(events()[3].takenBack);
  CHECK_FALSE(events()[4].takenBack);
  log.clock.minute = 9;
  view.restoreLast();
  CHECK_FALSE(events()[3].takenBack);
}

}  // namespace combdraft::appointment
