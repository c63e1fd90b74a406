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
#include "engine/work/log_text.h"
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
        CHECK(row.where.contains(row.pieces.front()->place));
        CHECK(row.where.contains(QRegularExpression(QStringLiteral("middle \\d+ mm (below|above|behind|before) the "))));
        for (const paint::PieceShape* shape : row.pieces) {
          const plan::Piece& piece = *shape->piece;
          CHECK(piece.action == first.action);
          CHECK(piece.taking == first.taking);
          CHECK(piece.section == first.section);
          CHECK(piece.label == first.label);
          CHECK(piece.note == first.note);
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

// Pieces square to the centre line behind, their middles on it, at these drops.
plan::Plan downTheBack(const std::vector<double>& drops_deg) {
  plan::Plan plan = plan::Plan::fresh(23);
  int order = 0;
  for (const double drop : drops_deg) {
    ++order;
    plan.put("piece-" + std::to_string(order), tests::pieceAlong({{170, drop}, {180, drop}, {-170, drop}}, order));
  }
  return plan;
}
std::vector<PieceRow> rowsOf(const plan::Plan& plan) { return pieceRows(paint::Scene(plan, {}, nullptr)); }

// The figure that the pattern's one group finds; -1 where it is not there.
int figureIn(const QString& words, const char* pattern) {
  const QRegularExpressionMatch found = QRegularExpression(QString::fromLatin1(pattern)).match(words);
  return found.hasMatch() ? found.captured(1).toInt() : -1;
}

TEST_CASE("ways between pieces are measured along the scalp", "[handout][record]") {
  const plan::Plan plan = downTheBack({50, 105});
  const paint::Scene scene(plan, {}, nullptr);
  const std::vector<PieceRow> rows = pieceRows(scene);
  REQUIRE(rows.size() == 1);
  const QString where = rows.front().where;
  CAPTURE(where.toStdString());
  // The centre line is the shortest way between its own points: the head is the same on both sides.
  const auto at = [&](double drop_deg) { return scene.head().shape.pointAt({180, drop_deg}); };
  double way_mm = 0;
  for (double drop = 50; drop < 104.9; drop += 0.25) way_mm += (at(drop + 0.25) - at(drop)).norm();
  const int printed = figureIn(where, "; (\\d+) mm from it 2: ");
  CHECK(std::abs(printed - way_mm) <= 1);
  CHECK(printed > (at(105) - at(50)).norm() + 1.5);
  const int first = figureIn(where, "^1: .*?middle (\\d+) mm below the crown, on the centre line"), second = figureIn(where, "2: .*?middle (\\d+) mm below the crown");
  CHECK(first >= 0);
  CHECK(std::abs(second - first - printed) <= 2);
  CHECK(where.contains(QStringLiteral("horizontal")));
}

TEST_CASE("a row goes on while its pieces go on in one direction at like distances", "[handout][record]") {
  std::vector<PieceRow> rows = rowsOf(downTheBack({60, 66, 72, 78}));
  REQUIRE(rows.size() == 1);
  CHECK(rows[0].where.contains(QRegularExpression(QStringLiteral("; then every (9|10|11) mm, to 4: "))));

  rows = rowsOf(downTheBack({60, 66, 72, 90, 96}));
  REQUIRE(rows.size() == 2);
  CHECK(rows[0].numbers == QStringLiteral("1–3"));
  CHECK(rows[1].numbers == QStringLiteral("4–5"));

  rows = rowsOf(downTheBack({50, 56, 62.4, 69.2, 76.4}));  // each step a little longer
  REQUIRE(rows.size() == 1);
  CHECK(rows[0].where.contains(QRegularExpression(QStringLiteral("; then \\d+, \\d+, \\d+, \\d+ mm from one to the next, to 5: "))));

  CHECK(rowsOf(downTheBack({60, 70, 80})).size() == 1);
  CHECK(rowsOf(downTheBack({60, 70, 60})).size() == 2);  // back again
}

TEST_CASE("pieces of both sides share a row only as mirrors and with their sides named", "[handout][record]") {
  const auto at = [](const std::vector<std::pair<double, double>>& middles) {
    plan::Plan plan = plan::Plan::fresh(24);
    int order = 0;
    for (const auto& [bearing, drop] : middles) {
      ++order;
      plan.put("piece-" + std::to_string(order), tests::pieceAlong({{bearing - 6, drop}, {bearing, drop}, {bearing + 6, drop}}, order));
    }
    return rowsOf(plan);
  };
  std::vector<PieceRow> rows = at({{120, 66}, {-120, 66}});
  REQUIRE(rows.size() == 1);
  CHECK(rows[0].where.startsWith(QStringLiteral("1 right; 2 left; 1: ")));
  CHECK(rows[0].where.contains(QStringLiteral("the other side the same")));
  rows = at({{-120, 66}, {120, 66}});
  REQUIRE(rows.size() == 1);
  CHECK(rows[0].where.startsWith(QStringLiteral("2 right; 1 left; 1: ")));
  rows = at({{120, 66}, {-120, 66}, {120, 73}, {-120, 73}, {120, 80}, {-120, 80}});
  REQUIRE(rows.size() == 1);
  CHECK(rows[0].where.startsWith(QStringLiteral("1, 3, 5 right; 2, 4, 6 left; 1: ")));
  CHECK(rows[0].where.contains(QRegularExpression(QStringLiteral("; then every \\d+ mm, to 5: "))));
  CHECK(at({{120, 66}, {-120, 70}}).size() == 2);  // no mirror
  rows = at({{120, 66}, {-120, 66}, {120, 73}});   // the third has no other side
  REQUIRE(rows.size() == 2);
  CHECK(rows[0].numbers == QStringLiteral("1–2"));
}

TEST_CASE("the heads of the card's columns carry the units", "[handout][record]") {
  const QString words = wordsOf(rowOfPieces(2)).join(u' ').simplified();
  for (const char* head : {"Thick, mm", "Start, mm off the scalp", "Backcomb: depth mm, pushed %, blend mm"}) CHECK(words.contains(QLatin1String(head)));
}

TEST_CASE("a card without taps has lines for what happened and one with taps has none", "[handout][record]") {
  plan::Plan plan = rowOfPieces(2);
  QStringList printed = wordsOf(plan);
  QString words = printed.join(u' ').simplified();
  for (const char* line : {"Before", "Skin test, on, seen:", "Test strand, on, seen:", "Elasticity:", "Looked at, level seen", "Rinsed at", "After", "What the client said:", "Next time differently"})
    CHECK(words.contains(QLatin1String(line)));
  const qsizetype head = printed.indexOf(QStringLiteral("Bowl"));
  REQUIRE(head >= 0);
  CHECK(printed.indexOf(QStringLiteral("A"), head) >= 0);  // a row by formula
  CHECK(printed.indexOf(QStringLiteral("B"), head) >= 0);

  work::AppointmentLog log;
  work::LogEvent event;
  event.number = 1;
  event.tap = work::Tap::Placed;
  event.utc_ms = 1'800'000'000'000;
  event.pieces = {"piece-1"};
  log.events.push_back(event);
  plan::PlanInfo info = plan.info();
  info.logJson = work::writeLog(log);
  plan.put(plan::kPlanId, info);
  printed = wordsOf(plan);
  CHECK(printed.contains(QStringLiteral("The appointment, tap by tap")));
  CHECK_FALSE(printed.contains(QStringLiteral("What happened")));
  CHECK(printed.contains(QStringLiteral("Before")));
}

TEST_CASE("the card says how much of a colour shows and no strength", "[handout][record]") {
  plan::Plan plan = rowOfPieces(1);
  plan::Treatment glaze;
  glaze.choice = "choice-1";
  glaze.strength_frac = 0.9;
  plan.put("treatment-1", glaze);
  const QString words = wordsOf(plan).join(u' ').simplified();
  CHECK(words.contains(QStringLiteral("how much of the colour shows: 90 %")));
  CHECK_FALSE(words.contains(QStringLiteral("strength of the colour"), Qt::CaseInsensitive));
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
