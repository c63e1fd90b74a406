// Copy, cut, paste, duplicate and selecting more of the same, in the window.
#include <catch2/catch.hpp>

#include <QClipboard>
#include <QMimeData>

#include "app/desk/clip_mime.h"
#include "app/desk/select_by.h"
#include "app/sheet/head_sheet.h"
#include "engine/plan/clip.h"
#include "engine/plan/edits.h"
#include "engine/plan/twins.h"
#include "tests/app/desk_fixture.h"

using namespace combdraft;
using namespace combdraft::tests;

namespace {

plan::Section backRight() {
  plan::Section section;
  section.label = "back";
  section.outline = {{176, 105}, {150, 105}, {120, 103}, {120, 70}, {150, 62}, {176, 60}};
  section.layout = plan::Layout{};
  return section;
}

struct Work : Desk {
  document::DocumentController& controller;
  Work() : controller(window->controller()) {
    window->openPath(file("clip"));
    const plan::Plan& plan = controller.document();
    controller.edit(plan::applied(plan, plan::addSection(plan, backRight())), QStringLiteral("Add a section"));
    QGuiApplication::clipboard()->clear();
  }
  void run(const char* id) {
    QAction* action = window->actions().action(QLatin1String(id));
    REQUIRE(action->isEnabled());
    action->trigger();
  }
  plan::ItemId section() const { return controller.document().sections().front().first; }
  void select(std::vector<plan::ItemId> ids) { controller.select(document::Selection(std::move(ids))); }
  std::size_t pieces() const { return controller.document().pieces().size(); }
};

}  // namespace

TEST_CASE("copy and paste bring a section with its pieces, as one undo entry", "[desk][clip]") {
  Work work;
  const std::size_t before = work.pieces();
  const plan::Plan plan = work.controller.document();
  work.select({work.section()});
  work.run("edit.copy");
  CHECK(work.window->messages().text().contains(QStringLiteral("section “back”")));
  CHECK(work.controller.document() == plan);
  const QMimeData* mime = QGuiApplication::clipboard()->mimeData();
  REQUIRE(mime->hasFormat(QLatin1String(desk::kClipMime)));
  CHECK(mime->text() == QString::fromUtf8(mime->data(QLatin1String(desk::kClipMime))));
  CHECK(mime->data(QStringLiteral("image/svg+xml")).contains("<svg"));
  QImage picture;
  CHECK(picture.loadFromData(mime->data(QStringLiteral("image/png")), "PNG"));
  CHECK(picture.width() > 400);

  work.run("edit.paste");
  CHECK(work.pieces() == 2 * before - 1);  // the one drawn free was not copied
  CHECK(work.controller.document().sections().size() == 2);
  const auto& selection = work.controller.selection();
  CHECK(selection.size() == before);  // the section and its pieces
  CHECK(work.controller.document().find<plan::Section>(selection.lead()));
  CHECK_FALSE(selection.contains(work.section()));
  CHECK(work.controller.undoStack().undoText() == QStringLiteral("Paste section “back”"));
  work.controller.undoStack().undo();
  CHECK(work.controller.document() == plan);
}

TEST_CASE("what is copied in one window can be pasted in another", "[desk][clip]") {
  Work work;
  work.select({"piece-1"});
  work.run("edit.copy");
  Desk other;
  other.window->openPath(other.file("other"));
  other.window->actions().action(QStringLiteral("edit.paste"))->trigger();
  const auto pieces = other.window->controller().document().pieces();
  REQUIRE(pieces.size() == 2);
  CHECK(pieces.back().second->line == work.controller.document().find<plan::Piece>("piece-1")->line);
  CHECK(other.window->controller().selection() == document::Selection::one(pieces.back().first));
}

TEST_CASE("cut takes a section and all in it away, and undo brings it back", "[desk][clip]") {
  Work work;
  const plan::Plan plan = work.controller.document();
  work.select({work.section()});
  work.run("edit.cut");
  CHECK(work.controller.document().sections().empty());
  CHECK(work.pieces() == 1);
  CHECK(work.controller.selection().isEmpty());
  work.run("edit.paste");
  CHECK(work.controller.document().sections().size() == 1);
  CHECK(work.pieces() == plan.pieces().size());
  work.controller.undoStack().undo();
  work.controller.undoStack().undo();
  CHECK(work.controller.document() == plan);
}

TEST_CASE("what cannot be pasted is said and changes nothing", "[desk][clip]") {
  Work work;
  const plan::Plan plan = work.controller.document();
  const auto pasteText = [&](const QString& text) {
    QGuiApplication::clipboard()->setText(text);
    work.run("edit.paste");
    CHECK(work.controller.document() == plan);
    return work.window->messages().text();
  };
  CHECK(pasteText(QStringLiteral("a shopping list")).startsWith(QStringLiteral("Nothing to paste")));
  CHECK(pasteText(QStringLiteral("{\"format\": \"combdraft clip\", \"version\": 2, \"pieces\": [7]}"))
            .contains(QStringLiteral("/pieces/0: found the number 7, needs an object")));
  // A clip that came as text, from a mail, say, is a clip.
  work.select({"piece-1"});
  const std::string clip = plan::copied(plan, {"piece-1"});
  QGuiApplication::clipboard()->setText(QString::fromStdString(clip));
  work.run("edit.paste");
  CHECK(work.pieces() == plan.pieces().size() + 1);
}

TEST_CASE("duplicate puts a section across and a piece lower", "[desk][clip]") {
  Work work;
  const std::size_t before = work.pieces();
  work.select({work.section()});
  work.run("piece.duplicate");
  REQUIRE(work.controller.document().sections().size() == 2);
  const auto* copy = work.controller.document().find<plan::Section>(work.controller.selection().lead());
  REQUIRE(copy);
  CHECK(copy->outline.front().bearing_deg < 0);
  CHECK(copy->twinOf.empty());
  CHECK(work.pieces() == 2 * before - 1);
  work.select({"piece-1"});
  work.run("piece.duplicate");
  const auto* lower = work.controller.document().find<plan::Piece>(work.controller.selection().lead());
  REQUIRE(lower);
  CHECK(lower->line[1].drop_deg > 85);
}

TEST_CASE("removing a section takes its pieces along and asks nothing", "[desk][clip]") {
  Work work;
  const plan::Plan plan = work.controller.document();
  work.select({work.section()});
  work.run("piece.remove");
  CHECK(work.controller.document().sections().empty());
  CHECK(work.pieces() == 1);
  work.controller.undoStack().undo();
  CHECK(work.controller.document() == plan);
  CHECK(work.controller.selection().contains(work.section()));
}

TEST_CASE("selections grow to the same kind, section and side", "[desk][clip]") {
  Work work;
  plan::Plan plan = work.controller.document();
  const plan::ItemId section = work.section();
  plan = plan::applied(plan, plan::addTwins(plan, {section}));
  plan::Piece leftOut;
  leftOut.action = plan::Action::LeaveOut;
  leftOut.line = {{-40, 40}, {-60, 40}};
  const plan::ChangeSet added = plan::addPiece(plan, leftOut);
  plan = plan::applied(plan, added);
  work.controller.edit(plan, QStringLiteral("more"));
  const std::size_t run = (plan.pieces().size() - 2) / 2;
  plan::ItemId right;
  for (const auto& [id, piece] : plan.pieces())
    if (piece->section == section) right = id;

  work.select({added.args.front()});
  work.run("edit.sameKind");
  CHECK(work.controller.selection().ids() == added.args);
  work.select({right});
  work.run("edit.sameKind");
  CHECK(work.controller.selection().size() == plan.pieces().size() - 1);
  CHECK(work.controller.selection().lead() == right);
  work.select({right});
  work.run("edit.sameSection");
  CHECK(work.controller.selection().size() == run);
  for (const plan::ItemId& id : work.controller.selection().ids())
    CHECK(plan.find<plan::Piece>(id)->section == section);
  work.select({right});
  work.run("edit.sameSide");
  CHECK(work.controller.selection().size() == run);  // the centre piece and the left ones stay out
  work.select({"piece-1"});
  work.run("edit.sameSide");
  CHECK(work.controller.selection() == document::Selection::one("piece-1"));
  work.select({section});
  work.run("edit.sameKind");
  CHECK(work.controller.selection().size() == 2);
  work.select({});
  CHECK_FALSE(work.window->actions().action(QStringLiteral("edit.sameSide"))->isEnabled());
  CHECK_FALSE(work.window->actions().whyNot(QStringLiteral("edit.copy")).isEmpty());
}
