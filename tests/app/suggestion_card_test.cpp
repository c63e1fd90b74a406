// A suggestion in the window: the aims, the search, what it found, trying and
// keeping it. The search is a stand-in that waits to be let go.
#include <catch2/catch.hpp>

#include <QCheckBox>
#include <QComboBox>
#include <QProgressBar>
#include <QPushButton>
#include <atomic>
#include <thread>

#include "app/cards/choices_card.h"
#include "app/cards/piece_card.h"
#include "app/controls/segments.h"
#include "app/desk/card_column.h"
#include "app/desk/proposal_view.h"
#include "app/desk/suggestion_card.h"
#include "engine/plan/choice_edits.h"
#include "engine/plan/edits.h"
#include "tests/app/desk_fixture.h"

using namespace combdraft;
using tests::Desk;

namespace {

/// What the stand-in is told and has seen.
struct Script {
  enum class Find { Two, Nothing, Failure } find = Find::Two;
  std::atomic<int> steps{0};  ///< let go: 1 = the first proposal, 2 = the end
  std::atomic<bool> onWindowsThread{false};
  std::atomic<int> asked{0}, prepared{0};
  std::atomic<bool> preparing{false};  ///< until this is false
  advise::Wish wish;  ///< last
};

double thicknessOf(const plan::Plan& plan) { return plan.find<plan::Piece>("piece-1")->thickness_mm; }

advise::Standing standing(double level, double block_cm2, int pieces, double minutes) {
  advise::Standing s;
  s.readings.whole.level = level, s.readings.whole.lightness = 6 * level, s.readings.whole.b = 20;
  s.readings.whole.seen_mm2 = 9000;
  look::RegionReading crown;
  crown.region = look::Region::Crown;
  crown.whole = s.readings.whole;
  crown.contrast.verdict = look::ContrastVerdict::Soft;
  s.readings.regions = {crown};
  s.lightBlock_cm2 = block_cm2;
  s.effort = {pieces, pieces, minutes};
  return s;
}

advise::Proposal proposal(const plan::Plan& plan, advise::Manner manner, double thickness_mm, double level) {
  plan::Plan after = plan;
  plan::Piece piece = *plan.find<plan::Piece>("piece-1");
  piece.thickness_mm = thickness_mm;
  after.put("piece-1", piece);
  advise::Proposal p;
  p.manner = manner;
  p.edit = plan::difference(plan, after, plan::EditKind::ChangePieces, {"piece-1"});
  p.changed = {"crown: 1 piece, thinner"};
  p.before = standing(6, 7.5, 4, 30);
  p.after = standing(level, 2.5, 3, 24);
  return p;
}

live::SuggestionService::Engine scripted(const std::shared_ptr<Script>& script) {
  const auto window = std::this_thread::get_id();
  const auto prepare = [script](const plan::Plan&, const look::LookSettings&, std::stop_token stop) {
    ++script->prepared;
    while (script->preparing && !stop.stop_requested()) std::this_thread::sleep_for(std::chrono::milliseconds(1));
  };
  const auto search = [script, window](const plan::Plan& plan, const look::LookSettings&, const advise::Wish& wish, std::stop_token stop,
                          const std::function<void(const advise::Progress&)>& progress) -> Result<std::vector<advise::Proposal>> {
    script->onWindowsThread = std::this_thread::get_id() == window;
    script->wish = wish;
    ++script->asked;
    const Error cancelled{ErrorCode::Cancelled, "", {}, ""};
    const auto until = [&](int step) {
      while (script->steps < step && !stop.stop_requested()) std::this_thread::sleep_for(std::chrono::milliseconds(1));
      return !stop.stop_requested();
    };
    std::vector<advise::Proposal> found;
    if (!until(1)) return cancelled;
    if (script->find == Script::Find::Failure) return Error{ErrorCode::OutOfRange, "head", {}, ""};
    if (script->find == Script::Find::Two) found.push_back(proposal(plan, advise::Manner::AsDrawn, 2, 6.8));
    progress({0.35, &found});
    if (!until(2)) return cancelled;
    // The second comes nearer and stands first at the end.
    if (script->find == Script::Find::Two) found.insert(found.begin(), proposal(plan, advise::Manner::Starts, 3, 7.1));
    for (advise::Proposal& p : found) p.before.size = p.after.size = advise::Standing::Size::Full;
    return found;
  };
  return {search, prepare};
}

struct SuggestingDesk : Desk {
  std::shared_ptr<Script> script = std::make_shared<Script>();

  explicit SuggestingDesk(bool withCard = true) {
    window.reset();
    window = std::make_unique<desk::MainWindow>(
        desk::DeskPlaces{dir.filePath(QStringLiteral("settings.ini")), dir.filePath(QStringLiteral("recovery")), patterns()}, passes_,
        [this] { return scripted(script); });
    window->resize(1180, 820);
    window->show();
    REQUIRE(QTest::qWaitForWindowExposed(window.get()));
    window->openPath(file("Suggested"));
    REQUIRE(isFresh());
    if (withCard) window->actions().action(QStringLiteral("choice.suggest"))->trigger();
  }
  ~SuggestingDesk() { window.reset(); }
  document::DocumentController& controller() { return window->controller(); }
  desk::SuggestionCard& card() { return *window->cards().suggestionCard(); }
  void start() {
    card().startButton()->click();
    REQUIRE(QTest::qWaitFor([this] { return script->asked > 0; }, 5000));
  }
  bool ends() {
    return QTest::qWaitFor([this] { return card().startButton()->isVisible(); }, 5000);
  }
  void find() {
    script->steps = 2;
    start();
    REQUIRE(ends());
  }
  QString cell(int row, int column) { return card().proposal()->table()->item(row, column)->text(); }
  void change(const std::function<void(plan::Piece&)>& how) {
    plan::Plan next = controller().document();
    plan::Piece piece = *next.find<plan::Piece>("piece-1");
    how(piece);
    next.put("piece-1", piece);
    controller().edit(next, QStringLiteral("Change"));
  }
};

}  // namespace

TEST_CASE("a suggestion is reached by its command and from the choices", "[suggestion]") {
  SuggestingDesk desk(false);
  QAction* action = desk.window->actions().action(QStringLiteral("choice.suggest"));
  CHECK(action->isEnabled());
  desk.window->cards().turnTo(desk::CardColumn::Card::Choices);
  desk.window->cards().choicesCard()->suggestButton()->click();
  CHECK(desk.window->cards().current() == desk::CardColumn::Card::Suggestion);
  CHECK(desk.card().startButton()->hasFocus());
  CHECK(desk.card().aimsText().startsWith(QLatin1String("No aim is set")));
  // Selecting on the sheet does not lead away.
  desk.controller().select(document::Selection::one("piece-1"));
  CHECK(desk.window->cards().current() == desk::CardColumn::Card::Suggestion);
  desk.card().aimsButton()->click();
  CHECK(desk.window->cards().current() == desk::CardColumn::Card::Choices);
  // Without pieces the command says what is missing.
  desk.controller().edit(plan::applied(desk.controller().document(), plan::removeItems(desk.controller().document(), {"piece-1"})),
                         QStringLiteral("Remove"));
  CHECK_FALSE(action->isEnabled());
  CHECK(desk.window->actions().whyNot(QStringLiteral("choice.suggest")) == QLatin1String("Draw or lay out pieces first"));
  CHECK_FALSE(desk.window->cards().choicesCard()->suggestButton()->isEnabled());
}

TEST_CASE("proposals come while the search goes on, on a thread of its own", "[suggestion]") {
  SuggestingDesk desk;
  plan::Target aim;
  aim.level = 8.0, aim.contrast = plan::ContrastAim::TwoClearLevels;
  desk.controller().edit(plan::applied(desk.controller().document(),
                                       plan::setTarget(desk.controller().document(), "choice-1", "crown", aim)),
                         QStringLiteral("Aim"));
  CHECK(desk.card().aimsText() == QLatin1String("Crown: 8, two clear levels"));
  desk.start();
  CHECK_FALSE(desk.script->onWindowsThread);
  CHECK(desk.card().cancelButton()->hasFocus());
  CHECK(desk.card().progress()->isVisible());
  CHECK(desk.script->wish.pieces.empty());
  desk.script->steps = 1;
  REQUIRE(QTest::qWaitFor([&] { return desk.card().tryButton()->isVisible(); }, 5000));
  CHECK(desk.card().progress()->value() == 35);
  CHECK_FALSE(desk.card().proposals()->button(1)->isVisible());
  CHECK(desk.card().proposal()->text().contains(QLatin1String("Saves about 6 min")));
  desk.script->steps = 2;
  REQUIRE(desk.ends());
  CHECK_FALSE(desk.card().progress()->isVisible());
  // What was looked at stays in view although it is second now.
  CHECK(desk.card().proposals()->current() == 1);
  CHECK_FALSE(desk.card().proposals()->button(2)->isVisible());
  using Column = desk::ProposalView::Column;
  CHECK(desk.cell(0, Column::Before) == QLatin1String("Level 6.0"));
  CHECK(desk.cell(0, Column::After) == QLatin1String("Level 6.8"));
  CHECK(desk.cell(1, Column::What) == QLatin1String("Crown"));
  CHECK(desk.cell(1, Column::After) == QLatin1String("Level 6.8, soft"));
  CHECK(desk.cell(1, Column::Wanted) == QLatin1String("8, two clear levels"));
  CHECK(desk.cell(3, Column::Before) == QStringLiteral("7.5 cm²"));
  CHECK(desk.cell(3, Column::After) == QStringLiteral("2.5 cm²"));
  CHECK(desk.card().proposal()->table()->item(3, Column::After)->data(Qt::AccessibleTextRole).toString() ==
        QStringLiteral("Largest light block, After: 2.5 cm²"));
  desk.card().proposals()->button(0)->click();
  CHECK(desk.cell(0, Column::After) == QLatin1String("Level 7.1"));
}

TEST_CASE("a proposal is tried, kept as one edit or dropped", "[suggestion]") {
  SuggestingDesk desk;
  desk.find();
  const plan::Plan before = desk.controller().document();
  CHECK_FALSE(desk.card().dropButton()->isEnabled());
  desk.card().tryButton()->click();
  REQUIRE(desk.card().isTrying());
  CHECK(desk.card().keepButton()->hasFocus());
  CHECK(thicknessOf(desk.controller().plan()) == 2);
  CHECK_FALSE(desk.controller().plan() == before);
  CHECK(desk.controller().document() == before);

  SECTION("dropped") {
    SECTION("by its button") { desk.card().dropButton()->click(); }
    SECTION("by Escape") { QTest::keyClick(desk.card().keepButton(), Qt::Key_Escape); }
    SECTION("by looking at another") { desk.card().proposals()->button(0)->click(); }
    CHECK_FALSE(desk.card().isTrying());
    CHECK(desk.controller().plan() == before);
    CHECK_FALSE(desk.controller().undoStack().canUndo());
    CHECK(desk.card().tryButton()->isEnabled());
  }
  SECTION("kept") {
    desk.card().keepButton()->click();
    CHECK_FALSE(desk.card().isTrying());
    CHECK_FALSE(desk.controller().isTentative());
    CHECK_FALSE(desk.controller().document() == before);
    CHECK(desk.controller().undoStack().count() == 1);
    CHECK(desk.controller().undoStack().undoText().startsWith(QLatin1String("Use suggestion: ")));
    CHECK(desk.card().stateText() == QLatin1String("Kept. Undo takes it back."));
    CHECK_FALSE(desk.card().keepButton()->isEnabled());
    desk.controller().undoStack().undo();
    CHECK(desk.controller().document() == before);
    CHECK(desk.card().keepButton()->isEnabled());
  }
  SECTION("gone by another edit") {
    desk.edit();
    CHECK_FALSE(desk.card().isTrying());
    CHECK(thicknessOf(desk.controller().document()) == thicknessOf(before));
  }
  SECTION("gone by a drag on the sheet") {
    plan::Plan dragged = before;
    plan::Piece piece = *dragged.find<plan::Piece>("piece-1");
    piece.start_mm += 7;
    dragged.put("piece-1", piece);
    desk.controller().setTentative(dragged);
    CHECK_FALSE(desk.card().isTrying());
    CHECK(desk.controller().plan() == dragged);
    desk.controller().dropTentative();
  }
}

TEST_CASE("proposals of the plan before cannot be kept", "[suggestion]") {
  SuggestingDesk desk;
  desk.find();
  CHECK(desk.card().cautionText().isEmpty());
  desk.edit();
  CHECK(desk.card().cautionText().contains(QLatin1String("the plan before")));
  CHECK_FALSE(desk.card().keepButton()->isEnabled());
  CHECK_FALSE(desk.card().tryButton()->isEnabled());
  CHECK(desk.card().startButton()->isEnabled());
  desk.controller().undoStack().undo();
  CHECK(desk.card().cautionText().isEmpty());
  CHECK(desk.card().keepButton()->isEnabled());
  // Another plan has no proposals.
  desk.window->openPath(desk.file("Another"));
  CHECK_FALSE(desk.card().keepButton()->isVisible());
}

TEST_CASE("a search is cancelled, and another begins", "[suggestion]") {
  SuggestingDesk desk;
  desk.start();
  SECTION("by its button") { desk.card().cancelButton()->click(); }
  SECTION("by Escape") { QTest::keyClick(desk.card().cancelButton(), Qt::Key_Escape); }
  REQUIRE(desk.ends());
  CHECK(desk.card().stateText().startsWith(QLatin1String("Cancelled")));
  CHECK_FALSE(desk.card().tryButton()->isVisible());
  CHECK(desk.card().startButton()->hasFocus());
  desk.find();
  CHECK(desk.card().tryButton()->hasFocus());
  CHECK(desk.script->asked == 2);
}

TEST_CASE("what a search needs is prepared when the card is opened, and the search waits for it", "[suggestion]") {
  SuggestingDesk desk(false);
  desk.script->preparing = true;
  desk.window->actions().action(QStringLiteral("choice.suggest"))->trigger();
  REQUIRE(QTest::qWaitFor([&] { return desk.script->prepared == 1; }, 5000));
  CHECK(desk.card().startButton()->isVisible());
  desk.card().startButton()->click();
  CHECK(desk.card().cancelButton()->isVisible());
  QTest::qWait(50);
  CHECK(desk.script->asked == 0);
  SECTION("it is finished") {
    desk.script->preparing = false;
    desk.script->steps = 2;
    REQUIRE(desk.ends());
    CHECK(desk.script->asked == 1);
    CHECK(desk.card().tryButton()->isVisible());
  }
  SECTION("it is cancelled") {
    desk.card().cancelButton()->click();
    CHECK(desk.card().startButton()->isVisible());
    CHECK(desk.card().stateText().startsWith(QLatin1String("Cancelled")));
    QTest::qWait(50);
    CHECK(desk.script->asked == 0);
  }
}

TEST_CASE("a search of the plan before brings nothing into another plan", "[suggestion]") {
  SuggestingDesk desk;
  desk.start();
  desk.window->openPath(desk.file("Another"));
  desk.script->steps = 2;
  REQUIRE(desk.ends());
  CHECK_FALSE(desk.card().tryButton()->isVisible());
  CHECK(desk.card().stateText().isEmpty());
}

TEST_CASE("a window that closes ends its search", "[suggestion]") {
  SuggestingDesk desk;
  desk.start();
  desk.window.reset();  // comes back although the search was never let go
  CHECK(desk.script->asked == 1);
}

TEST_CASE("a search that finds nothing, or cannot be, says so", "[suggestion]") {
  SuggestingDesk desk;
  SECTION("nothing") {
    desk.script->find = Script::Find::Nothing;
    desk.find();
    CHECK(desk.card().stateText().startsWith(QLatin1String("Nothing better was found")));
  }
  SECTION("failure") {
    desk.script->find = Script::Find::Failure;
    desk.find();
    CHECK(desk.card().stateText().startsWith(QLatin1String("The search could not go on: ")));
  }
  CHECK_FALSE(desk.card().tryButton()->isVisible());
  CHECK(desk.card().startButton()->isEnabled());
}

TEST_CASE("the piece card holds pieces against a search", "[suggestion][piece]") {
  SuggestingDesk desk;
  desk.controller().select(document::Selection::one("piece-1"));
  desk.window->cards().turnTo(desk::CardColumn::Card::Piece);
  QCheckBox& held = *desk.window->cards().pieceCard()->held();
  CHECK(held.checkState() == Qt::Unchecked);
  held.click();
  CHECK(desk.controller().document().find<plan::Piece>("piece-1")->held);
  plan::Piece other = *desk.controller().document().find<plan::Piece>("piece-1");
  other.held = false;
  const plan::ChangeSet added = plan::addPiece(desk.controller().document(), other);
  desk.controller().edit(plan::applied(desk.controller().document(), added), QStringLiteral("Add"),
                         document::Selection({"piece-1", added.args.front()}));
  CHECK(held.checkState() == Qt::PartiallyChecked);
  held.click();
  CHECK(held.checkState() == Qt::Checked);
  CHECK(desk.controller().document().find<plan::Piece>(added.args.front())->held);
  held.click();
  CHECK(held.checkState() == Qt::Unchecked);
  CHECK_FALSE(desk.controller().document().find<plan::Piece>("piece-1")->held);
}

TEST_CASE("what may change is what is not held, or what is selected", "[suggestion]") {
  SuggestingDesk desk;
  desk.card().which()->setCurrentIndex(1);
  CHECK_FALSE(desk.card().startButton()->isEnabled());
  desk.controller().select(document::Selection::one("piece-1"));
  CHECK(desk.card().startButton()->isEnabled());
  desk.find();
  CHECK(desk.script->wish.pieces == std::vector<plan::ItemId>{"piece-1"});
  desk.change([](plan::Piece& piece) { piece.held = true; });
  CHECK_FALSE(desk.card().startButton()->isEnabled());
  desk.card().which()->setCurrentIndex(0);
  CHECK_FALSE(desk.card().startButton()->isEnabled());
  desk.controller().undoStack().undo();
  CHECK(desk.card().startButton()->isEnabled());
}
