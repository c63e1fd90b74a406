// The pieces of a record card in rows: each stands on it once, a row holds for all of its
// pieces; what is said of the look is what the window says.
#include <QRegularExpression>
#include <catch2/catch.hpp>
#include <cmath>
#include <filesystem>
#include <functional>
#include <set>

#include "app/controls/theme.h"
#include "app/handout/document.h"
#include "app/handout/piece_rows.h"
#include "app/live/look_service.h"
#include "engine/plan/plan_file.h"
#include "tests/app/demo_plans.h"
#include "tests/support/places.h"

namespace combdraft::handout {
namespace {

// "7" and "12–27" as they are printed.
std::multiset<int> numbersIn(const QString& printed) {
  static const QRegularExpression one(QStringLiteral("^(\\d+)(?:–(\\d+))?$"));
  std::multiset<int> numbers;
  const QRegularExpressionMatch match = one.match(printed);
  if (!match.hasMatch()) return numbers;
  const int from = match.captured(1).toInt(), to = match.captured(2).isEmpty() ? from : match.captured(2).toInt();
  for (int number = from; number <= to; ++number) numbers.insert(number);
  return numbers;
}

plan::Plan rowOfPieces(int count, const std::function<void(plan::Piece&)>& change = {}) {
  plan::Plan plan = plan::Plan::fresh(21);
  plan::Formula a, b;
  a.letter = "A", a.kind = "lightener";
  b.letter = "B", b.kind = "lightener";
  plan.put("formula-1", a);
  plan.put("formula-2", b);
  for (int i = 1; i <= count; ++i) {
    plan::Piece piece = tests::pieceAlong({{160, 60.0 + 2 * i}, {180, 60.0 + 2 * i}, {-160 + 0.5 * i, 60.0 + 2 * i}}, i);
    piece.thickness_mm = 12;
    piece.root.formula = "formula-1";
    if (change) change(piece);
    plan.put("piece-" + std::to_string(i), piece);
  }
  return plan;
}

// What comes out when the third of five equal pieces is made otherwise.
std::size_t rowsWith(const std::function<void(plan::Piece&)>& change) {
  const plan::Plan plan = rowOfPieces(5, [&](plan::Piece& piece) {
    if (piece.order == 3) change(piece);
  });
  const paint::Scene scene(plan, {}, nullptr);
  return pieceRows(scene).size();
}

QStringList wordsOf(const plan::Plan& plan) {
  static const QString font = controls::loadBundledFont();
  REQUIRE_FALSE(font.isEmpty());
  Result<std::vector<paint::Page>> made = makePages(requestFor(DocumentKind::RecordCard, plan), {}, {}, {});
  REQUIRE(made.ok());
  const std::vector<paint::Page> pages = std::move(made).value();
  QStringList words;
  for (const paint::Page& page : pages)
    for (const paint::PlacedFigure& placed : page.figures)
      for (const paint::DrawingItem& item : placed.figure.items)
        if (item.text) words << item.text->words;
  return words;
}

TEST_CASE("twenty equal pieces with another one between are three rows", "[handout][record]") {
  const plan::Plan plan = rowOfPieces(21, [](plan::Piece& piece) {
    if (piece.order == 11) piece.start_mm = 60;
  });
  const paint::Scene scene(plan, {}, nullptr);
  const std::vector<PieceRow> rows = pieceRows(scene);
  REQUIRE(rows.size() == 3);
  CHECK(rows[0].numbers == QStringLiteral("1–10"));
  CHECK(rows[1].numbers == QStringLiteral("11"));
  CHECK(rows[2].numbers == QStringLiteral("12–21"));
  CHECK(rows[0].start == QStringLiteral("20, blend 12"));
  CHECK(rows[1].start == QStringLiteral("60, blend 12"));
  CHECK(rows[0].where.contains(QStringLiteral("back")));
  CHECK(rows[0].where.contains(QRegularExpression(QStringLiteral("\\d+ to \\d+ mm long$"))));

  const QStringList words = wordsOf(plan);
  for (const char* printed : {"1–10", "12–21"}) {
    const qsizetype at = words.indexOf(QString::fromUtf8(printed));
    REQUIRE(at >= 0);
    CHECK(words.indexOf(QString::fromUtf8(printed), at + 1) < 0);
    CHECK(words.value(at + 1).startsWith(QStringLiteral("10")));  // "10 pieces"
  }
  CHECK(words.join(u' ').contains(QStringLiteral("A row of several pieces holds for each of them.")));
  CHECK_FALSE(wordsOf(rowOfPieces(1)).join(u' ').contains(QStringLiteral("A row of several pieces")));
}

TEST_CASE("a row ends where anything that is printed differs", "[handout][record]") {
  CHECK(rowsWith([](plan::Piece&) {}) == 1);
  CHECK(rowsWith([](plan::Piece& p) { p.thickness_mm = 12.2; }) == 1);  // the same in whole mm
  CHECK(rowsWith([](plan::Piece& p) { p.thickness_mm = 13; }) == 3);
  CHECK(rowsWith([](plan::Piece& p) { p.action = plan::Action::LeaveOut; }) == 3);
  CHECK(rowsWith([](plan::Piece& p) { p.action = plan::Action::Deepen; }) == 3);
  CHECK(rowsWith([](plan::Piece& p) { p.taking = plan::Taking::Paint; }) == 3);
  CHECK(rowsWith([](plan::Piece& p) { p.taken_frac = 0.5; }) == 3);
  CHECK(rowsWith([](plan::Piece& p) { p.dropOuts = {{10, 20}}; }) == 3);
  CHECK(rowsWith([](plan::Piece& p) { p.start_mm = 21; }) == 3);
  CHECK(rowsWith([](plan::Piece& p) { p.stop_mm = 200; }) == 3);
  CHECK(rowsWith([](plan::Piece& p) { p.blend_mm = 30; }) == 3);
  CHECK(rowsWith([](plan::Piece& p) { p.backcomb = {60, 0.6, 28}; }) == 3);
  CHECK(rowsWith([](plan::Piece& p) { p.root.formula = "formula-2"; }) == 3);
  CHECK(rowsWith([](plan::Piece& p) { p.root.lifts.level = 8.5; }) == 3);
  CHECK(rowsWith([](plan::Piece& p) { p.root.finish = plan::FinishesAt{8, plan::Tone::Beige}; }) == 3);
  CHECK(rowsWith([](plan::Piece& p) { p.handover_mm = 90; }) == 3);
  CHECK(rowsWith([](plan::Piece& p) { p.keptIn = plan::KeptIn::Film; }) == 3);
  CHECK(rowsWith([](plan::Piece& p) { p.foil = "shared"; }) == 3);
  CHECK(rowsWith([](plan::Piece& p) { p.label = "veil"; }) == 3);
  CHECK(rowsWith([](plan::Piece& p) { p.note = "slipped last time"; }) == 3);
}

TEST_CASE("numbers with a gap are not one span", "[handout][record]") {
  const plan::Plan plan = rowOfPieces(6, [](plan::Piece& piece) {
    if (piece.order > 3) piece.order += 2;
  });
  const paint::Scene scene(plan, {}, nullptr);
  const std::vector<PieceRow> rows = pieceRows(scene);
  REQUIRE(rows.size() == 2);
  CHECK(rows[0].numbers == QStringLiteral("1–3"));
  CHECK(rows[1].numbers == QStringLiteral("6–8"));
}

TEST_CASE("steps of a rule are whole millimetres and typed figures stay", "[handout][record]") {
  plan::Section section;
  section.choice = "choice-1";
  section.label = "back";
  section.outline = {{150, 60}, {180, 58}, {-150, 60}, {-140, 104}, {180, 112}, {140, 104}};
  section.layout = plan::Layout{};
  section.layout->thickness_mm = {2.5, 6};
  const auto thick = [&](double thickness_mm, std::vector<plan::RunField> own) {
    plan::Plan plan = rowOfPieces(1, [&](plan::Piece& piece) {
      piece.section = "section-1";
      piece.thickness_mm = thickness_mm;
      piece.laidOut = plan::LaidOut{};
      piece.laidOut->own = std::move(own);
    });
    plan.put("section-1", section);
    const paint::Scene scene(plan, {}, nullptr);
    return pieceRows(scene).front().thick;
  };
  CHECK(thick(4.4, {}) == QStringLiteral("4"));
  CHECK(thick(4.4, {plan::RunField::Thickness}) == QStringLiteral("4.4"));
  CHECK(thick(2.5, {}) == QStringLiteral("2.5"));  // an end of the rule
  CHECK(thick(1.5, {}) == QStringLiteral("2"));
  section.layout->lastThickness_mm = 1.5;
  CHECK(thick(1.5, {}) == QStringLiteral("1.5"));
}

TEST_CASE("every piece of the examples stands in one row that holds for it", "[handout][record]") {
  std::size_t examples = 0, pieces = 0, rowCount = 0;
  for (const auto& entry : std::filesystem::directory_iterator(test::sourceDir() + "/examples")) {
    if (entry.path().extension() != ".json") continue;
    INFO(entry.path().filename().string());
    const Result<plan::Plan> read = plan::loadPlan(entry.path().string());
    REQUIRE(read.ok());
    const plan::Plan plan = *read;
    ++examples;
    std::vector<plan::ItemId> choices;
    for (const auto& [id, item] : plan.items())
      if (std::get_if<plan::Choice>(item.get())) choices.push_back(id);
    REQUIRE_FALSE(choices.empty());
    for (const plan::ItemId& choice : choices) {
      const paint::Scene scene(plan, choice, nullptr);
      std::multiset<int> planned, printed;
      for (const auto& [id, piece] : plan.pieces(choice)) planned.insert(piece->order);
      const std::vector<PieceRow> rows = pieceRows(scene);
      for (const PieceRow& row : rows) {
        printed.merge(numbersIn(row.numbers));
        const plan::Piece& first = *row.pieces.front()->piece;
        for (const paint::PieceShape* shape : row.pieces) {
          const plan::Piece& piece = *shape->piece;
          CHECK(piece.action == first.action);
          CHECK(piece.taking == first.taking);
          CHECK(piece.section == first.section);
          CHECK(piece.label == first.label);
          CHECK(piece.note == first.note);
          CHECK(row.where.contains(shape->place));
          CHECK(std::abs(piece.thickness_mm - first.thickness_mm) <= 1);
          if (piece.action == plan::Action::LeaveOut) continue;
          CHECK(piece.keptIn == first.keptIn);
          CHECK(piece.foil == first.foil);
          CHECK(piece.root == first.root);
          CHECK(std::abs(piece.start_mm - first.start_mm) <= 1);
          CHECK(std::abs(piece.backcomb.depth_mm - first.backcomb.depth_mm) <= 1);
        }
      }
      CHECK(printed == planned);
      pieces += planned.size(), rowCount += rows.size();
    }
  }
  CHECK(examples >= 9);
  CHECK(rowCount < pieces);
}

TEST_CASE("level and contrast on paper are the window's at any number of drawn locks", "[handout][record]") {
  STATIC_REQUIRE(kReadingLocks == live::kFullLocks);
  const Request request = requestFor(DocumentKind::RecordCard, tests::demoPlan());
  const Result<Looks> made = LookMaker(2000).make(request, 2, {}, {});
  REQUIRE(made.ok());
  REQUIRE(made->down);
  REQUIRE(made->down->readings);
  CHECK(made->down->pictures.size() == 3);
  const look::Readings& paper = *made->down->readings;
  look::LookEngine engine(live::kFullLocks);
  const Result<look::LookFrame> frame = engine.update(request.plan, {}, {}, {});
  REQUIRE(frame.ok());
  const look::Readings& window = *frame->readings;
  CHECK(paper.locks == window.locks);
  CHECK(paper.whole.lightness == Approx(window.whole.lightness).epsilon(1e-9));
  CHECK(paper.contrast.verdict == window.contrast.verdict);
  CHECK(paper.contrast.delta == Approx(window.contrast.delta).epsilon(1e-9));
  CHECK(paper.contrast.spread == Approx(window.contrast.spread).epsilon(1e-9));
}

}  // namespace
}  // namespace combdraft::handout
