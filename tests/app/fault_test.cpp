// What is kept and said when the program has to end itself.
#include <catch2/catch.hpp>

#include <signal.h>

#include <QClipboard>
#include <QDir>
#include <QFileInfo>
#include <QPlainTextEdit>
#include <stdexcept>
#include <thread>

#include "app/desk/fault_page.h"
#include "app/desk/left_plans_box.h"
#include "app/desk/message_bar.h"
#include "app/desk/start_page.h"
#include "app/store/fault_report.h"
#include "engine/base/expect.h"
#include "tests/support/child_role.h"
#include "tests/app/desk_fixture.h"

using namespace combdraft;
using tests::Desk;

namespace {

void breakPromise() { COMBDRAFT_EXPECT(1 == 2, 41, std::string("Marianne's-plan"), std::string("piece-7")); }

// arguments: folder with everything, plan, how to end
int endItself(const QStringList& arguments) {
  const QDir dir(arguments.at(0));
  store::installFaultHooks(dir.filePath(QStringLiteral("faults")));
  store::noteForFaults("worn down, 8000 and 30000 locks");
  const QString how = arguments.at(2);
  desk::DeskPlaces places{dir.filePath(QStringLiteral("settings.ini")), dir.filePath(QStringLiteral("recovery")),
                          dir.filePath(QStringLiteral("patterns"))};
  // Its own time never comes, but for a signal only that counts.
  places.pace.snapshotAfter_ms = how == QStringLiteral("signal") ? 10 : 60000;
  desk::MainWindow window(places, tests::instantPasses);
  window.show();
  window.openPath(arguments.at(1));
  plan::Plan next = window.controller().document();
  plan::Hair hair = next.hair();
  hair.white_frac = 0.77;
  next.put(plan::kHairId, hair);
  window.controller().edit(next, QStringLiteral("Change white hair"));
  if (how == QStringLiteral("expectation")) breakPromise();
  if (how == QStringLiteral("thread")) std::thread(breakPromise).join();
  if (how == QStringLiteral("exception")) std::thread([] { throw std::out_of_range("Marianne's plan"); }).join();
  if (how == QStringLiteral("signal")) {
    if (!QTest::qWaitFor([&] { return !window.recovery().folder().isEmpty(); })) return 3;
    ::raise(SIGSEGV);
  }
  if (how == QStringLiteral("abort")) std::abort();
  return 0;
}
const tests::ChildRole ending("end-itself", endItself);

QString end(Desk& desk, const QString& path, const char* how) {
  tests::Child child("end-itself", {desk.dir.path(), path, QLatin1String(how)});
  REQUIRE(child.waitUntilEnded());
  CHECK(child.process().exitStatus() == QProcess::CrashExit);
  const auto reports = store::findFaultReports(desk.dir.filePath(QStringLiteral("faults")));
  REQUIRE(reports.size() == 1);
  CHECK_FALSE(QFileInfo(reports.front().path).permissions().testAnyFlags(QFile::ReadGroup | QFile::ReadOther));
  return reports.front().text;
}

}  // namespace

TEST_CASE("unsaved work and a report are written before the program ends itself", "[fault][process]") {
  for (const char* how : {"expectation", "thread", "exception", "signal"}) {
    INFO(how);
    Desk desk;
    const QString path = desk.file("kept");
    const QString report = end(desk, path, how);
    INFO(report.toStdString());
    // The work.
    const auto left = store::findLeftPlans(desk.dir.filePath(QStringLiteral("recovery")));
    REQUIRE(left.size() == 1);
    CHECK(left.front().originalPath == path);
    CHECK(store::peekLeftPlan(left.front())->hair().white_frac == 0.77);
    // The report: what helps, and nothing of the user's.
    CHECK(report.contains(QStringLiteral("Combdraft " COMBDRAFT_VERSION ", Qt 6.")));
    CHECK(report.contains(QStringLiteral("Looked at: worn down, ")));
    CHECK(report.contains(QStringLiteral("Places in the program: +0x")));
    for (const char* own : {"Marianne", "kept", "white", "/tmp", "plan.json"}) {
      INFO(own);
      CHECK_FALSE(report.contains(QLatin1String(own)));
    }
    const std::string what = how;
    if (what == "expectation" || what == "thread") {
      CHECK(report.contains(QStringLiteral("Expectation: 1 == 2\n")));
      CHECK(report.contains(QStringLiteral("app/fault_test.cpp:")));
      CHECK(report.contains(QStringLiteral("Operands: 41 piece-7 (1 left out)\n")));
    }
    if (what == "exception") CHECK(report.contains(QStringLiteral("Exception: std::out_of_range")));
    if (what == "signal") CHECK(report.contains(QStringLiteral("signal SIGSEGV")));
  }
}

TEST_CASE("the next start says what happened, shows the report, and sends nothing", "[fault]") {
  Desk desk;
  end(desk, desk.file("kept"), "abort");
  desk.window->offerRecovery();
  desk.window->offerFaults();
  // A question goes before news; both are there.
  REQUIRE(desk.window->messages().text().contains(QStringLiteral("The program stopped")));
  CHECK(QApplication::activeModalWidget() == nullptr);
  desk.press("Read the report");
  desk::FaultPage& page = desk.window->faultPage();
  REQUIRE(page.isVisible());
  CHECK(page.text()->isReadOnly());
  CHECK(page.text()->toPlainText().contains(QStringLiteral("SIGABRT")));
  page.copyButton()->click();
  CHECK(QGuiApplication::clipboard()->text() == page.text()->toPlainText());
  page.removeButton()->click();
  CHECK(store::findFaultReports(desk.dir.filePath(QStringLiteral("faults"))).empty());
  CHECK(page.text()->toPlainText().isEmpty());
  CHECK_FALSE(page.copyButton()->isEnabled());
  QTest::keyClick(&page, Qt::Key_Escape);
  CHECK_FALSE(page.isVisible());
}

TEST_CASE("without a report nothing is said of faults, and the page has an empty state", "[fault]") {
  Desk desk;
  desk.window->offerFaults();
  CHECK_FALSE(desk.window->messages().isShowing());
  desk.window->actions().action(QStringLiteral("file.faults"))->trigger();
  CHECK(desk.window->faultPage().isVisible());
  CHECK_FALSE(desk.window->faultPage().text()->placeholderText().isEmpty());
}

TEST_CASE("a report keeps numbers and ids of the program's making only", "[fault]") {
  const std::string report = store::reportOfExpectation(
      "expectation broken: found && \"x at y\" at /built/somewhere/engine/plan/plan.h:12 with -1.5e-3 nan Somebody piece-12 somebody-1 true two\nlines ");
  CHECK(report ==
        "Expectation: found && \"x at y\"\nWhere: engine/plan/plan.h:12\nOperands: -1.5e-3 nan piece-12 true (4 left out)\n");
  CHECK(store::reportOfExpectation("no such thing") == "Expectation: not known\n");
}
