// After the rinse: levels that came, finishes and corrections that are typed, and what
// a head says of one's own speed and amounts.
#include <catch2/catch.hpp>

#include <QRegularExpression>
#include <QSettings>
#include <QSignalSpy>
#include <QTemporaryDir>

#include "app/appointment/appointment_page.h"
#include "app/paint/work_words.h"
#include "app/sheet/head_sheet.h"
#include "engine/work/log_text.h"
#include "engine/work/outcome.h"
#include "engine/work/speeds.h"
#include "engine/work/toning.h"
#include "tests/app/appointment_helpers.h"
#include "tests/app/card_helpers.h"
#include "tests/app/demo_plans.h"
#include "tests/app/desk_fixture.h"
#include "tests/app/levels_that_came.h"

namespace combdraft::appointment {
namespace {

using document::DocumentController;
using tests::typeInto;

void choose(QComboBox* combo, const char* word) {
  const int at = combo->findText(QString::fromLatin1(word));
  REQUIRE(at >= 0);
  combo->setCurrentIndex(at);
  Q_EMIT combo->activated(at);
}

void typeFinish(FinishField* field, const char* level, const char* tone) {
  typeInto(field->level()->edit(), QString::fromLatin1(level));
  choose(field->tone(), tone);
}

void chooseRow(QListWidget* list, const char* piece) {
  for (int i = 0; i < list->count(); ++i)
    list->item(i)->setSelected(list->item(i)->data(Qt::UserRole).toString() == QLatin1String(piece));
}

const plan::Piece& pieceOf(const DocumentController& controller, const char* id) { return *controller.document().find<plan::Piece>(id); }

}  // namespace

TEST_CASE("without a level the page after the rinse says where levels are tapped", "[appointment][after]") {
  DocumentController controller(tests::demoPlan());
  AppointmentPage page(controller);
  page.show();
  page.turnTo(AppointmentPage::View::After);
  CHECK(page.after().stateText().contains(QStringLiteral("tap Looked")));
  CHECK_FALSE(page.after().table()->isVisible());
  CHECK_FALSE(page.after().tryFinish()->isEnabled());
}

TEST_CASE("levels stand by zone with what was planned and the colour left", "[appointment][after]") {
  DocumentController controller(withLevels(tests::demoPlan(), {{"piece-1", 8}, {"piece-2", 6}, {"piece-8", 7}}));
  AppointmentPage page(controller);
  page.show();
  page.turnTo(AppointmentPage::View::After);
  const auto zones = work::levelsByZone(controller.document(), work::readLog(controller.document().info().logJson).value());
  const QTableWidget* table = page.after().table();
  REQUIRE(table->rowCount() == static_cast<int>(zones.size()));
  int pieces = 0;
  for (int row = 0; row < table->rowCount(); ++row) {
    pieces += table->item(row, 3)->text().toInt();
    CHECK(table->item(row, 4)->text() == QStringLiteral("9.0"));
    CHECK(table->item(row, 5)->text() == QString::fromLatin1(work::pigmentWord(zones[static_cast<std::size_t>(row)].level).data()));
  }
  CHECK(pieces == 3);
}

TEST_CASE("an empty field after the rinse shows no example figure", "[appointment][after]") {
  DocumentController controller(withLevels(tests::demoPlan(), {{"piece-1", 8}}));
  AppointmentPage page(controller);
  page.show();
  page.turnTo(AppointmentPage::View::After);
  for (const auto* edit : page.after().findChildren<QLineEdit*>()) {
    INFO(edit->accessibleName().toStdString() << ": " << edit->placeholderText().toStdString());
    CHECK(edit->text().isEmpty());
    CHECK_FALSE(edit->placeholderText().contains(QRegularExpression(QStringLiteral("[0-9]"))));
  }
}

TEST_CASE("a typed finish is one undo and brings the levels that came", "[appointment][after]") {
  const plan::Plan plan = withLevels(tests::demoPlan(), {{"piece-1", 8}, {"piece-2", 7.5}});
  DocumentController controller(plan);
  AppointmentPage page(controller);
  page.show();
  page.turnTo(AppointmentPage::View::After);
  AfterView& view = page.after();
  typeInto(view.finishOfAll()->level()->edit(), QStringLiteral("7"));
  CHECK_FALSE(view.tryFinish()->isEnabled());  // a tone is missing
  choose(view.finishOfAll()->tone(), "beige");
  REQUIRE(view.tryFinish()->isEnabled());
  view.tryFinish()->click();
  REQUIRE(controller.undoStack().count() == 1);
  CHECK(pieceOf(controller, "piece-1").root.lifts.level == 8);
  CHECK(pieceOf(controller, "piece-2").root.lifts.level == 7.5);
  REQUIRE(pieceOf(controller, "piece-1").root.finish);
  CHECK(pieceOf(controller, "piece-1").root.finish->level == 7);
  CHECK(pieceOf(controller, "piece-1").root.finish->tone == plan::Tone::Beige);
  const QSignalSpy look(&page, &AppointmentPage::lookWanted);
  view.see()->click();
  CHECK(look.count() == 1);
  controller.undoStack().undo();
  CHECK(controller.document() == plan);
}

TEST_CASE("colour that is put on after the rinse has its own caution on both sides of the page", "[appointment][after]") {
  DocumentController controller(withLevels(tests::demoPlan(), {{"piece-1", 8}}));
  AppointmentPage page(controller);
  page.show();
  page.turnTo(AppointmentPage::View::After);
  const QString caution = paint::colourCaution();
  for (const char* word : {"Toner", "deepening", "root shadow", "past reactions", "scalp", "tests", "age", "maker's directions", "local rules", "refer"}) {
    INFO(word);
    CHECK(caution.contains(QLatin1String(word)));
  }
  CHECK_FALSE(caution.contains(QRegularExpression(QStringLiteral("[0-9]"))));
  int beside = 0, onThePage = 0;
  for (const auto* label : page.after().findChildren<QLabel*>()) {
    if (label->text() != caution) continue;
    ++onThePage;
    beside += page.after().corrections()->isAncestorOf(label);
    CHECK(label->wordWrap());
    CHECK(label->isVisibleTo(&page));
  }
  CHECK(onThePage == 2);
  CHECK(beside == 1);
}

TEST_CASE("a finish lighter than the hair is refused at its zone", "[appointment][after]") {
  const plan::Plan plan = withLevels(tests::demoPlan(), {{"piece-1", 8}});
  DocumentController controller(plan);
  AppointmentPage page(controller);
  page.show();
  page.turnTo(AppointmentPage::View::After);
  AfterView& view = page.after();
  const auto zones = work::levelsByZone(plan, work::readLog(plan.info().logJson).value());
  REQUIRE(zones.size() == 1);
  FinishField* field = view.finish(zones[0].zone);
  typeFinish(field, "9", "ash");
  view.tryFinish()->click();
  CHECK(field->problem().contains(QStringLiteral("Toning does not lighten")));
  CHECK(controller.document() == plan);
  CHECK(controller.undoStack().count() == 0);
  // A zone's own finish comes before the one for all, which is then not asked there.
  typeFinish(field, "6", "ash");
  typeFinish(view.finishOfAll(), "10", "gold");
  view.tryFinish()->click();
  CHECK(field->problem().isEmpty());
  CHECK(pieceOf(controller, "piece-1").root.finish->level == 6);
}

TEST_CASE("depth is put back as typed and each correction is one undo", "[appointment][after]") {
  const plan::Plan plan = tests::demoPlan();
  DocumentController controller(plan);
  AppointmentPage page(controller);
  page.show();
  page.turnTo(AppointmentPage::View::After);
  CorrectionsBox& box = *page.after().corrections();
  CHECK(box.pieces()->count() == 7);  // one of the eight is left out
  CHECK_FALSE(box.deepen()->isEnabled());
  CHECK_FALSE(box.leaveOut()->isEnabled());
  CHECK_FALSE(box.addShadow()->isEnabled());

  chooseRow(box.pieces(), "piece-2");
  typeFinish(box.deepenTo(), "6", "natural");
  box.deepen()->click();
  CHECK(pieceOf(controller, "piece-2").action == plan::Action::Deepen);
  CHECK(pieceOf(controller, "piece-2").root.finish->level == 6);
  CHECK(controller.undoStack().count() == 1);

  chooseRow(box.pieces(), "piece-1");
  typeFinish(box.deepenTo(), "11", "natural");
  box.deepen()->click();
  CHECK(box.deepenTo()->problem().contains(QStringLiteral("does not lighten")));
  CHECK(controller.undoStack().count() == 1);

  chooseRow(box.pieces(), "piece-3");
  box.leaveOut()->click();
  CHECK(pieceOf(controller, "piece-3").action == plan::Action::LeaveOut);
  CHECK(controller.undoStack().count() == 2);

  box.shadowZone()->setCurrentIndex(2);  // Top
  typeFinish(box.shadowColour(), "5", "natural");
  typeInto(box.shadowLength()->edit(), QStringLiteral("40"));
  typeInto(box.shadowBlend()->edit(), QStringLiteral("30"));
  CHECK_FALSE(box.addShadow()->isEnabled());  // how much of it shows is not typed
  typeInto(box.shadowCover()->edit(), QStringLiteral("50"));
  REQUIRE(box.addShadow()->isEnabled());
  box.addShadow()->click();
  const auto treatments = controller.document().treatments();
  REQUIRE(treatments.size() == 1);
  const plan::Treatment& shadow = *treatments.begin()->second;
  CHECK(shadow.kind == plan::Treatment::Kind::RootShadow);
  CHECK(shadow.zone == plan::HairZone::Top);
  CHECK(shadow.to_mm == 40);
  CHECK(shadow.blend_mm == 30);
  CHECK(shadow.strength_frac == Approx(0.5));
  CHECK(shadow.colour == plan::FinishesAt{5, plan::Tone::Natural});
  CHECK(controller.undoStack().count() == 3);
  CHECK_FALSE(work::bringsMoreLight(plan, controller.document()));
  while (controller.undoStack().canUndo()) controller.undoStack().undo();
  CHECK(controller.document() == plan);
}

TEST_CASE("in the window the page after the rinse leads to the heads and undo takes it back", "[appointment][after]") {
  tests::Desk desk;
  const QString path = desk.dir.filePath(QStringLiteral("after.json"));
  REQUIRE(store::savePlan(withLevels(tests::demoPlan(), {{"piece-1", 8}}), path).ok());
  desk.window->openPath(path);
  QApplication::processEvents();
  desk.window->actions().action(QStringLiteral("appointment.after"))->trigger();
  AppointmentPage& page = desk.window->appointmentPage();
  REQUIRE(page.after().isVisible());
  const plan::Plan before = desk.window->controller().document();
  typeFinish(page.after().finishOfAll(), "7", "pearl");
  page.after().tryFinish()->click();
  page.after().see()->click();
  CHECK_FALSE(page.isVisible());
  CHECK(desk.window->headSheet().isVisible());
  desk.window->actions().action(QStringLiteral("edit.undo"))->trigger();
  CHECK(desk.window->controller().document() == before);
}

TEST_CASE("planned and got stand piece by piece with the typed span", "[appointment][after]") {
  DocumentController controller(withLevels(tests::demoPlan(), {{"piece-1", 8}, {"piece-2", 6}}));
  AppointmentPage page(controller);
  page.show();
  page.turnTo(AppointmentPage::View::Outcome);
  const QTableWidget* table = page.outcome().table();
  REQUIRE(table->rowCount() == 2);
  CHECK(table->item(0, 0)->text() == QStringLiteral("piece 1"));
  CHECK(table->item(0, 1)->text() == QStringLiteral("9.0"));
  CHECK(table->item(0, 2)->text() == QStringLiteral("8.0"));
  CHECK(table->item(0, 3)->text().startsWith(QStringLiteral("inside")));
  CHECK(table->item(1, 3)->text().startsWith(QStringLiteral("outside")));
  // A finish that was tried puts the levels that came into the plan: they say nothing of the plan then.
  page.turnTo(AppointmentPage::View::After);
  typeFinish(page.after().finishOfAll(), "6", "ash");
  page.after().tryFinish()->click();
  page.turnTo(AppointmentPage::View::Outcome);
  CHECK(table->item(0, 1)->text().isEmpty());
  CHECK(table->item(0, 3)->text().startsWith(QStringLiteral("taken over")));
}

TEST_CASE("nothing of a head is taken over without the tick", "[appointment][after]") {
  DocumentController controller(withLevels(tests::demoPlan(), {{"piece-1", 8}, {"piece-2", 6}, {"piece-3", 7}, {"piece-4", 8}}));
  AppointmentPage page(controller);
  page.show();
  page.turnTo(AppointmentPage::View::Outcome);
  OutcomeView& view = page.outcome();
  std::vector<work::OwnFactors> kept;
  QObject::connect(&page, &AppointmentPage::factorsChanged, &page, [&](const work::OwnFactors& factors) {
    kept.push_back(factors);
    page.setFactors(factors);
  });
  CHECK(view.factorsText().contains(QStringLiteral("None yet")));
  CHECK_FALSE(view.takeAway()->isEnabled());
  REQUIRE(waitForCount(page));
  typeInto(view.mixed()->edit(), QStringLiteral("10"));
  typeInto(view.left()->edit(), QStringLiteral("2"));
  const auto measured = view.measured();
  REQUIRE(measured.got[static_cast<std::size_t>(work::Factor::Speed)]);  // four placed one after the other
  REQUIRE(measured.got[static_cast<std::size_t>(work::Factor::ProductPerHair)]);
  CHECK(*measured.got[static_cast<std::size_t>(work::Factor::Waste)] == Approx(0.25));  // 2 of 8
  CHECK_FALSE(view.take()->isEnabled());
  view.take()->click();
  CHECK(kept.empty());
  view.consent()->setChecked(true);
  REQUIRE(view.take()->isEnabled());
  view.take()->click();
  REQUIRE(kept.size() == 1);
  CHECK(kept[0].heads == std::vector<work::MeasuredHead>{measured});
  CHECK_FALSE(view.consent()->isChecked());
  CHECK(view.factorsText().contains(QStringLiteral("(1 head)")));
  // The same head once more is refused.
  view.consent()->setChecked(true);
  view.take()->click();
  CHECK(kept.size() == 1);
  CHECK(view.saidText().contains(QStringLiteral("already")));
  view.takeAway()->click();
  REQUIRE(kept.size() == 2);
  CHECK(kept[1].heads.empty());
  CHECK(view.factorsText().contains(QStringLiteral("None yet")));
}

TEST_CASE("more left than mixed is refused with what would be right", "[appointment][after]") {
  DocumentController controller(withLevels(tests::demoPlan(), {{"piece-1", 8}}));
  AppointmentPage page(controller);
  page.show();
  page.turnTo(AppointmentPage::View::Outcome);
  REQUIRE(waitForCount(page));
  typeInto(page.outcome().mixed()->edit(), QStringLiteral("50"));
  typeInto(page.outcome().left()->edit(), QStringLiteral("60"));
  CHECK(page.outcome().headText().contains(QStringLiteral("right would be 0 to less than the 50 g")));
  page.outcome().consent()->setChecked(true);
  CHECK_FALSE(page.outcome().take()->isEnabled());
}

TEST_CASE("the work list goes by own factors only when ticked", "[appointment][after]") {
  DocumentController controller(tests::demoPlan());
  const plan::Plan plan = controller.document();
  AppointmentPage page(controller);
  page.show();
  WorkListView& view = page.workList();
  CHECK_FALSE(view.byFactors()->isEnabled());
  work::MeasuredHead head;
  head.date = "2026-03-14";
  head.got[static_cast<std::size_t>(work::Factor::Speed)] = 2;
  page.setFactors({{head}});
  CHECK(view.byFactors()->isEnabled());
  CHECK_FALSE(view.byFactors()->isChecked());
  CHECK(view.byFactors()->text().contains(QStringLiteral("1 head")));
  const double before = view.list()->timeline.lastIn_min;
  view.byFactors()->setChecked(true);
  CHECK(view.list()->timeline.lastIn_min > before + 3);
  CHECK(controller.document() == plan);
  page.setFactors({});
  CHECK_FALSE(view.byFactors()->isChecked());
  CHECK(view.list()->timeline.lastIn_min == Approx(before));
}

TEST_CASE("own factors are kept by the settings and unreadable ones are set aside", "[appointment][after]") {
  QTemporaryDir dir;
  const QString ini = dir.filePath(QStringLiteral("settings.ini"));
  work::MeasuredHead head;
  head.date = "2026-03-14";
  head.got[static_cast<std::size_t>(work::Factor::Waste)] = 0.1;
  head.got[static_cast<std::size_t>(work::Factor::Speed)] = 1.25;
  store::Settings(ini).setOwnFactors({{head, head}});
  CHECK(store::Settings(ini).ownFactors() == work::OwnFactors{{head, head}});
  CHECK(store::mendSettings(ini).isEmpty());
  const QString broken = QStringLiteral("{\"heads\": [{\"speed\": \"fast\"}]}");
  QSettings(ini, QSettings::IniFormat).setValue(QStringLiteral("work/ownFactors"), broken);
  CHECK(store::Settings(ini).ownFactors().heads.empty());
  const QString said = store::mendSettings(ini);
  CHECK(said.contains(QStringLiteral("set aside")));
  CHECK(said.contains(QStringLiteral("/heads/0/speed")));
  CHECK(QSettings(ini, QSettings::IniFormat).value(QStringLiteral("work/ownFactors_setAside")).toStringList() == QStringList{broken});
  CHECK(store::mendSettings(ini).isEmpty());
  store::Settings(ini).setOwnFactors({{head}});
  CHECK(store::Settings(ini).ownFactors().heads.size() == 1);
  CHECK(QSettings(ini, QSettings::IniFormat).contains(QStringLiteral("work/ownFactors_setAside")));
}

TEST_CASE("backcombed pieces can be planned with the share that the comb pushed in fact", "[appointment][after]") {
  const plan::Plan plan = tests::demoPlan();
  DocumentController controller(plan);
  AppointmentPage page(controller);
  page.show();
  page.turnTo(AppointmentPage::View::Outcome);
  OutcomeView& view = page.outcome();
  CHECK(view.usePushedButton()->isHidden());  // nothing is learned yet
  work::OwnFactors factors;
  for (const double pushed : {0.35, 0.45}) {
    work::MeasuredHead head;
    head.got[static_cast<std::size_t>(work::Factor::PushedShare)] = pushed;
    factors = work::withHead(factors, head).value();
  }
  view.setFactors(factors);
  REQUIRE_FALSE(view.usePushedButton()->isHidden());
  CHECK(view.usePushedButton()->text().contains(QStringLiteral("40 %")));
  CHECK(view.factorsText().contains(QStringLiteral("40 % of the taken hair (2 heads)")));
  view.usePushedButton()->click();
  int changed = 0;
  for (const auto& [id, piece] : controller.document().pieces()) {
    const plan::Piece& before = *plan.find<plan::Piece>(id);
    const bool combed = work::isWorked(before) && work::isBackcombed(before);
    CHECK(piece->backcomb.pushed_frac == (combed ? 0.4 : before.backcomb.pushed_frac));
    changed += combed;
  }
  CHECK(changed > 0);
  CHECK(controller.undoStack().count() == 1);
  view.usePushedButton()->click();
  CHECK(view.saidText().contains(QStringLiteral("already")));
  controller.undoStack().undo();
  CHECK(controller.document() == plan);
  work::MeasuredHead slip;
  slip.got[static_cast<std::size_t>(work::Factor::PushedShare)] = 1.2;
  CHECK_FALSE(work::withHead(factors, slip));
}

}  // namespace combdraft::appointment
