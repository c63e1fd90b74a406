// Widgets that go while somebody still holds them: out of sight at once, deleted later.
#include <catch2/catch.hpp>

#include <QApplication>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPointer>
#include <QPushButton>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <QVBoxLayout>
#include <vector>

#include "app/cards/consultation_wishes.h"
#include "app/controls/drop_widgets.h"
#include "tests/app/card_helpers.h"
#include "tests/app/demo_plans.h"

using namespace combdraft;
using tests::textNamed;

namespace {

void deleteDropped() { QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete); }

}  // namespace

TEST_CASE("a dropped widget is out of sight and silent and nameless until it is deleted", "[controls][drop]") {
  QWidget window;
  auto* outer = new QVBoxLayout(&window);
  auto* inner = new QHBoxLayout;
  outer->addLayout(inner);
  auto* box = new QWidget(&window);
  box->setAccessibleName(QStringLiteral("box"));
  auto* field = new QLineEdit(box);
  field->setObjectName(QStringLiteral("field"));
  field->setAccessibleName(QStringLiteral("name"));
  inner->addWidget(box);
  auto* stays = new QPushButton(QStringLiteral("stays"), &window);
  inner->addWidget(stays);
  window.show();
  REQUIRE(QTest::qWaitForWindowExposed(&window));
  const QSignalSpy finished(field, &QLineEdit::editingFinished);
  const QPointer<QWidget> gone(box);
  controls::dropWidget(box);
  REQUIRE_FALSE(gone.isNull());
  CHECK_FALSE(box->isVisible());
  CHECK(box->accessibleName().isEmpty());
  CHECK(window.findChild<QLineEdit*>(QStringLiteral("field")) == nullptr);
  CHECK(field->accessibleName().isEmpty());
  REQUIRE(inner->count() == 1);
  CHECK(inner->itemAt(0)->widget() == stays);
  QTest::keyClick(field, Qt::Key_Return);
  CHECK(finished.count() == 0);
  deleteDropped();
  CHECK(gone.isNull());
}

TEST_CASE("the focus leaves a dropped widget for one in sight", "[controls][drop]") {
  QWidget window;
  auto* column = new QVBoxLayout(&window);
  QLineEdit* fields[3] = {};
  for (QLineEdit*& field : fields) {
    field = new QLineEdit(&window);
    column->addWidget(field);
  }
  window.show();
  window.activateWindow();
  REQUIRE(QTest::qWaitForWindowActive(&window));
  fields[0]->setFocus();
  REQUIRE(fields[0]->hasFocus());
  controls::dropWidget(fields[0]);
  controls::dropWidget(fields[1]);
  CHECK(fields[2]->hasFocus());
}

TEST_CASE("a layout is emptied with the layouts inside it", "[controls][drop]") {
  QWidget window;
  auto* column = new QVBoxLayout(&window);
  std::vector<QPointer<QWidget>> all;
  const auto label = [&](QLayout* into) {
    all.emplace_back(new QLabel(QStringLiteral("words"), &window));
    into->addWidget(all.back());
  };
  label(column);
  auto* row = new QHBoxLayout;
  column->addLayout(row);
  label(row);
  label(row);
  column->addStretch(1);
  controls::dropContents(*column);
  CHECK(column->count() == 0);
  for (const QPointer<QWidget>& one : all) {
    REQUIRE_FALSE(one.isNull());
    CHECK(one->isHidden());
  }
  deleteDropped();
  for (const QPointer<QWidget>& one : all) CHECK(one.isNull());
  label(column);
  CHECK(column->count() == 1);
}

// Qt chooses who gets the focus, then tells the field that loses it; what that field does
// may take the chosen one away.
TEST_CASE("Tab out of a field whose edit rebuilds the next one leaves the focus on something in sight", "[controls][drop][client]") {
  QTemporaryDir dir;
  document::DocumentController controller(tests::demoPlan());
  const auto keeper = store::ClientKeeper::of(dir.filePath(QStringLiteral("clients")), controller.document().info().number);
  QWidget window;
  auto* column = new QVBoxLayout(&window);
  auto* name = new controls::TextField({QStringLiteral("Name"), {}, {}, 40}, &window);
  column->addWidget(name);
  auto* wishes = new cards::ConsultationWishes(controller, &window);
  wishes->setWishesKeeper(keeper.get());
  column->addWidget(wishes);
  window.show();
  window.activateWindow();
  REQUIRE(QTest::qWaitForWindowActive(&window));

  const QPointer<QLineEdit> chosen(textNamed(*wishes, QStringLiteral("Choice A: minutes"))->edit());
  QWidget::setTabOrder(name->edit(), chosen);
  bool outlivedTheRebuild = false;
  QObject::connect(name, &controls::TextField::edited, &window, [&](const QString& text) {
    plan::Plan plan = controller.document();
    const plan::ItemId id = plan.info().activeChoice;
    plan::Choice choice = *plan.find<plan::Choice>(id);
    choice.name = text.toStdString();
    plan.put(id, choice);
    controller.edit(plan, QStringLiteral("Rename"));
    outlivedTheRebuild = !chosen.isNull();
  });
  name->edit()->setFocus();
  QTest::keyClicks(name->edit(), QStringLiteral("Soft"));
  QTest::keyClick(name->edit(), Qt::Key_Tab);

  CHECK(outlivedTheRebuild);
  CHECK(controller.document().find<plan::Choice>(controller.document().info().activeChoice)->name == "Soft");
  const QWidget* focus = QApplication::focusWidget();
  REQUIRE(focus);
  CHECK(focus->isVisible());
  CHECK(focus != name->edit());
  CHECK(focus != chosen.data());
  deleteDropped();
  QApplication::processEvents();  // what is new is shown
  CHECK(textNamed(*wishes, QStringLiteral("Choice Soft: minutes"))->isVisible());
  CHECK(chosen.isNull());
  CHECK(QApplication::focusWidget() == focus);
  wishes->setWishesKeeper(nullptr);
}
