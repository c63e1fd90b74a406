// Patterns in the window: shown, used, saved, deleted, and a bad file.
#include <catch2/catch.hpp>

#include <QDir>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPlainTextEdit>

#include "app/desk/patterns_page.h"
#include "app/desk/start_page.h"
#include "engine/plan/edits.h"
#include "tests/app/desk_fixture.h"

using namespace combdraft;
using namespace combdraft::tests;

namespace {

struct Patterns : Desk {
  desk::PatternsPage& page() { return window->patternsPage(); }
  void open() { window->actions().action(QStringLiteral("pattern.show"))->trigger(); }
  void work(plan::CurlClass curl = plan::CurlClass::Straight) {
    window->openPath(file("patterns"));
    plan::Plan plan = window->controller().document();
    plan = plan::applied(plan, plan::changeHair(plan, [&](plan::Hair& hair) { hair.curl = curl; }));
    window->controller().edit(plan, QStringLiteral("Change the curl"));
  }
  std::size_t indexOf(const char* name) {
    const auto& all = page().patterns();
    for (std::size_t i = 0; i < all.size(); ++i)
      if (all[i].name() == QLatin1String(name)) return i;
    FAIL("no pattern " << name);
    return 0;
  }
  const plan::Plan& plan() { return window->controller().document(); }
};

}  // namespace

TEST_CASE("the page shows every starting pattern with a drawing and its words", "[desk][patterns]") {
  Patterns desk;
  desk.work();
  desk.open();
  REQUIRE(desk.page().isVisible());
  REQUIRE(desk.page().rows().size() >= 8);
  CHECK(desk.page().patterns().front().name() == QStringLiteral("Growing toward the apex"));
  CHECK(desk.page().troubleText().isEmpty());
  REQUIRE(QTest::qWaitFor([&] { return desk.page().areDrawingsDone(); }, 30000));
  for (const auto& row : desk.page().rows()) {
    CHECK_FALSE(row.drawing->pixmap().isNull());
    CHECK(row.use->text() == QStringLiteral("Use on this head"));
    CHECK(row.use->height() >= 28);
    CHECK_FALSE(row.remove);  // what comes with the program stays
    QStringList words;
    for (const auto* label : row.box->findChildren<QLabel*>()) words << label->text();
    CHECK(words.filter(QStringLiteral("Good for:")).size() == 1);
    CHECK(words.filter(QStringLiteral("Not for:")).size() == 1);
  }
  QTest::keyClick(&desk.page(), Qt::Key_Escape);
  CHECK_FALSE(desk.page().isVisible());
}

TEST_CASE("using a pattern keeps what is there, selects what came, is one undo", "[desk][patterns]") {
  Patterns desk;
  desk.work();
  const plan::Plan before = desk.plan();
  const int entries = desk.window->controller().undoStack().index();
  desk.open();
  desk.page().rows()[desk.indexOf("Fine all over")].use->click();
  CHECK_FALSE(desk.page().isVisible());
  CHECK(desk.window->controller().undoStack().index() == entries + 1);
  CHECK(desk.plan().find<plan::Piece>("piece-1"));
  CHECK(desk.plan().sections().size() == 6);
  const auto& selection = desk.window->controller().selection();
  CHECK(selection.size() == desk.plan().sections().size() + desk.plan().pieces().size() - 1);
  CHECK_FALSE(selection.contains("piece-1"));
  CHECK(desk.window->messages().text().contains(QStringLiteral("type their levels")));
  desk.window->controller().undoStack().undo();
  CHECK(desk.plan() == before);
}

TEST_CASE("what a pattern cannot do on this hair is said in words", "[desk][patterns]") {
  Patterns desk;
  desk.work(plan::CurlClass::Coil);
  desk.window->controller().edit(
      plan::applied(desk.plan(), plan::changeHair(desk.plan(), [](plan::Hair& hair) { hair.length_mm.fill(30); })),
      QStringLiteral("Cut"));
  desk.open();
  desk.page().rows()[desk.indexOf("Soft root, bold ends")].use->click();
  const QString text = desk.window->messages().text();
  CHECK(text.contains(QStringLiteral("backcomb was taken out")));
  CHECK(text.contains(QStringLiteral("the hair there is at most 30 mm long and ends before the start")));
  for (const auto& [id, piece] : desk.plan().pieces()) CHECK(piece->backcomb.depth_mm == 0);
}

TEST_CASE("the start page begins a plan with a pattern", "[desk][patterns]") {
  Patterns desk;
  QListWidget* list = desk.window->startPage().patternList();
  REQUIRE(list->count() >= 8);
  CHECK(list->item(0)->text() == QStringLiteral("Growing toward the apex"));
  CHECK(list->item(0)->toolTip().contains(QStringLiteral("Not for:")));
  Q_EMIT list->itemActivated(list->item(0));
  CHECK(desk.plan().sections().size() == 6);
  CHECK(desk.plan().pieces().size() > 20);
  CHECK(desk.plan().info().title == "Growing toward the apex");
  CHECK(desk.window->controller().isModified());
  Q_EMIT list->itemClicked(list->item(0));  // one press may say both
  CHECK(desk.plan().sections().size() == 6);
}

TEST_CASE("a pattern of one's own is saved, used, deleted and brought back", "[desk][patterns]") {
  Patterns desk;
  desk.work();
  QAction* save = desk.window->actions().action(QStringLiteral("pattern.save"));
  CHECK_FALSE(save->isEnabled());
  plan::Section section;
  section.label = "back";
  section.outline = {{176, 105}, {150, 105}, {120, 103}, {120, 70}, {150, 62}, {176, 60}};
  section.layout = plan::Layout{};
  const plan::ChangeSet added = plan::addSection(desk.plan(), section);
  desk.window->controller().edit(plan::applied(desk.plan(), added), QStringLiteral("Add"),
                                 document::Selection(added.args));
  REQUIRE(save->isEnabled());
  save->trigger();
  auto& page = desk.page();
  REQUIRE(page.isFormOpen());
  CHECK_FALSE(page.saveButton()->isEnabled());  // no name yet
  page.nameField()->setText(QStringLiteral("  Half a back  "));
  page.goodForField()->setPlainText(QStringLiteral("A try."));
  page.notForField()->setPlainText(QStringLiteral("Short hair."));
  page.saveButton()->click();
  CHECK_FALSE(page.isFormOpen());
  const QString path = desk.patterns() + QStringLiteral("/half-a-back.json");
  REQUIRE(QFile::exists(path));
  const std::size_t own = desk.indexOf("Half a back");
  CHECK(own == page.rows().size() - 1);
  REQUIRE(page.rows()[own].remove);
  CHECK(page.patterns()[own].pattern.goodFor == "A try.");
  CHECK(page.patterns()[own].pattern.notFor == "Short hair.");

  page.rows()[own].use->click();
  CHECK(desk.plan().sections().size() == 2);

  desk.open();
  page.rows()[own].remove->click();
  CHECK(QTest::qWaitFor([&] { return !QFile::exists(path); }, 2000));
  CHECK(page.rows().size() == own);
  desk.press("Bring it back");
  CHECK(QFile::exists(path));
  CHECK(desk.indexOf("Half a back") == own);

  // The same name again is another file.
  save->trigger();
  if (!page.isFormOpen()) {
    desk.window->controller().select(document::Selection(added.args));
    QTest::keyClick(&page, Qt::Key_Escape);
    save->trigger();
  }
  page.nameField()->setText(QStringLiteral("Half a back"));
  page.saveButton()->click();
  CHECK(QFile::exists(desk.patterns() + QStringLiteral("/half-a-back-2.json")));

  // What took its name meanwhile stays.
  desk.open();
  page.rows()[desk.indexOf("Half a back")].remove->click();
  REQUIRE(QTest::qWaitFor([&] { return QDir(desk.patterns()).entryList(QDir::Files).size() == 1; }, 2000));
  const QString first = QFile::exists(path) ? desk.patterns() + QStringLiteral("/half-a-back-2.json") : path;
  QFile other(first);
  REQUIRE(other.open(QIODevice::WriteOnly));
  other.write("somebody else's");
  other.close();
  desk.press("Bring it back");
  REQUIRE(other.open(QIODevice::ReadOnly));
  CHECK(other.readAll() == "somebody else's");
  const auto named = [&](const store::StoredPattern& pattern) { return pattern.name() == QStringLiteral("Half a back"); };
  CHECK(std::count_if(page.patterns().begin(), page.patterns().end(), named) == 2);
}

TEST_CASE("a text of a pattern that is too long is said as soon as it is there", "[desk][patterns]") {
  Patterns desk;
  desk.work();
  plan::Section section;
  section.outline = {{176, 105}, {150, 105}, {120, 103}, {120, 70}, {150, 62}, {176, 60}};
  section.layout = plan::Layout{};
  const plan::ChangeSet added = plan::addSection(desk.plan(), section);
  desk.window->controller().edit(plan::applied(desk.plan(), added), QStringLiteral("Add"), document::Selection(added.args));
  desk.window->actions().action(QStringLiteral("pattern.save"))->trigger();
  auto& page = desk.page();
  REQUIRE(page.isFormOpen());
  page.nameField()->setText(QStringLiteral("long"));
  CHECK(page.saveButton()->isEnabled());
  page.goodForField()->setPlainText(QString(20'001, u'x'));
  CHECK_FALSE(page.saveButton()->isEnabled());
  // And nothing is kept that could not be read back.
  const plan::Parts pattern = plan::patternOf(desk.plan(), added.args, "long", std::string(20'001, 'x'), "");
  CHECK_FALSE(store::savePattern(pattern, desk.patterns()).ok());
  CHECK(QDir(desk.patterns()).entryList(QDir::Files).isEmpty());
}

TEST_CASE("a bad pattern file is named with its place and the others still show", "[desk][patterns]") {
  Patterns desk;
  QDir().mkpath(desk.patterns());
  QFile bad(desk.patterns() + QStringLiteral("/bad.json"));
  REQUIRE(bad.open(QIODevice::WriteOnly));
  bad.write(R"({"format": "combdraft pattern", "version": 2, "name": "Bad", "sections": [{"id": "s",
             "outline": [[0, 20], [40, 20], [40, 50]], "layout": {"thicknessFrom_mm": 90}}]})");
  bad.close();
  QFile(desk.patterns() + QStringLiteral("/empty.json")).open(QIODevice::WriteOnly);
  desk.work();
  desk.open();
  CHECK(desk.page().rows().size() >= 8);
  const QString trouble = desk.page().troubleText();
  CHECK(trouble.contains(QStringLiteral("bad.json: /sections/0/layout/thicknessFrom_mm: found 90, allowed is 0.2 to 40 mm")));
  CHECK(trouble.contains(QStringLiteral("empty.json")));
}

TEST_CASE("a pattern that cannot be written is said", "[desk][patterns]") {
  Patterns desk;
  QFile inTheWay(desk.patterns());
  REQUIRE(inTheWay.open(QIODevice::WriteOnly));
  inTheWay.close();
  plan::Parts pattern{"x", "", "", plan::noParts()};
  const auto saved = store::savePattern(pattern, desk.patterns());
  REQUIRE_FALSE(saved);
  CHECK(saved.error().code == ErrorCode::FileUnwritable);
  CHECK(QString::fromStdString(describe(saved.error())).contains(desk.patterns()));
}
