// Several windows over several starts: what was open comes back.
#include <catch2/catch.hpp>

#include <QFile>
#include <map>

#include "app/controls/segments.h"
#include "app/desk/card_column.h"
#include "app/desk/left_plans_box.h"
#include "app/desk/message_bar.h"
#include "app/desk/preferences_page.h"
#include "app/desk/start_page.h"
#include "tests/app/desk_fixture.h"

using namespace combdraft;
using tests::Desk;

namespace {

struct Sessions : Desk {
  QString sessionPath() const { return dir.filePath(QStringLiteral("session.json")); }
  void start() {
    window.reset();
    session.reset();  // gives the lock back
    session = std::make_shared<store::SessionFile>(sessionPath());
    open();
  }
  void stop() {
    window->actions().action(QStringLiteral("file.quit"))->trigger();
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
  }
  std::vector<desk::MainWindow*> others() const {
    std::vector<desk::MainWindow*> found;
    for (QWidget* widget : QApplication::topLevelWidgets())
      if (auto* one = qobject_cast<desk::MainWindow*>(widget); one && one != window.get() && one->isVisible()) found.push_back(one);
    return found;
  }
};

}  // namespace

TEST_CASE("what was open comes back: plans, windows, views", "[session]") {
  Sessions desk;
  desk.start();
  desk.window->openPath(desk.file("first"));
  desk.window->resize(1240, 850);
  desk.window->actions().action(QStringLiteral("view.diagram"))->trigger();
  desk.window->actions().action(QStringLiteral("view.large.top"))->trigger();
  desk::MainWindow* second = desk.window->newWindow();
  second->openPath(desk.file("second"));
  second->actions().action(QStringLiteral("view.hairCard"))->trigger();
  desk.stop();
  CHECK(desk.others().empty());

  desk.start();
  desk.window->bringBack();
  REQUIRE(desk.others().size() == 1);
  std::map<std::string, desk::MainWindow*> by;
  for (desk::MainWindow* window : {desk.window.get(), desk.others().front()})
    by[window->controller().document().info().title] = window;
  REQUIRE(by.count("first"));
  REQUIRE(by.count("second"));
  CHECK(by["first"]->viewState().layer() == document::Layer::Diagram);
  CHECK(by["first"]->viewState().largeView() == head::ViewName::Top);
  CHECK(by["first"]->size() == QSize(1240, 850));
  CHECK(by["second"]->cards().current() == desk::CardColumn::Card::Hair);
  CHECK(by["first"]->controller().access() == document::DocumentController::Access::Full);
  desk.stop();
}

TEST_CASE("the session is written while the program runs, for one that is killed", "[session]") {
  Sessions desk;
  desk.start();
  desk.window->openPath(desk.file("first"));
  REQUIRE(QTest::qWaitFor([&] {
    QFile file(desk.sessionPath());
    return file.open(QIODevice::ReadOnly) && file.readAll().contains("first.json");
  }));
}

TEST_CASE("plans that are gone are said once, and unsaved work comes first", "[session]") {
  Sessions desk;
  desk.start();
  const QString first = desk.file("first"), second = desk.file("second");
  desk.window->openPath(first);
  desk::MainWindow* other = desk.window->newWindow();
  other->openPath(second);
  desk.stop();
  REQUIRE(QFile::remove(first));
  desk.start();
  desk.window->bringBack();
  CHECK(desk.window->messages().text().contains(QStringLiteral("first.json")));
  CHECK(desk.window->controller().document().info().title == "second");
  CHECK(desk.others().empty());
  // It ends with unsaved work.
  desk.edit();
  REQUIRE(desk.window->recovery().writeNow() == store::Recovery::Written::Yes);
  REQUIRE(QTest::qWaitFor([&] {
    QFile file(desk.sessionPath());
    return file.open(QIODevice::ReadOnly) && !file.readAll().contains("first.json");
  }));
  desk.start();
  desk.window->bringBack();
  CHECK_FALSE(desk.window->messages().isShowing());  // said once
  CHECK(desk.window->controller().file().path.isEmpty());
  CHECK(desk.window->startPage().isVisible());
  CHECK(desk.window->startPage().leftPlans().rows().size() == 1);
}

TEST_CASE("the program can begin with the start page instead", "[session]") {
  Sessions desk;
  desk.start();
  desk.window->openPath(desk.file("first"));
  desk.window->preferencesPage().begin()->button(1)->click();
  desk.stop();
  desk.start();
  desk.window->bringBack();
  CHECK(desk.window->startPage().isVisible());
}

TEST_CASE("a session that ended the program twice is not opened by itself", "[session]") {
  Sessions desk;
  desk.start();
  desk.window->openPath(desk.file("first"));
  desk.stop();
  for (int i = 0; i < 2; ++i) {
    desk.start();
    desk.window->bringBack();
    CHECK(desk.window->controller().document().info().title == "first");
    // Ends before it has stood.
  }
  desk.start();
  desk.window->bringBack();
  CHECK(desk.window->startPage().isVisible());
  CHECK(desk.window->messages().text().contains(QStringLiteral("ended soon after")));
  desk.press("Open it");
  CHECK(desk.window->controller().document().info().title == "first");
}

TEST_CASE("broken session and settings files are set aside and said", "[session]") {
  Sessions desk;
  desk.window.reset();
  for (const QString& path : {desk.sessionPath(), desk.dir.filePath(QStringLiteral("settings.ini"))}) {
    QFile file(path);
    REQUIRE(file.open(QIODevice::WriteOnly));
    file.write("[[[ {");
  }
  desk.start();
  CHECK(desk.window->messages().text().contains(QStringLiteral("settings.ini.broken")));
  desk.press("Close");
  desk.window->bringBack();
  CHECK(desk.window->messages().text().contains(QStringLiteral("session.json.broken")));
  CHECK(QFile::exists(desk.dir.filePath(QStringLiteral("settings.ini.broken"))));
}
