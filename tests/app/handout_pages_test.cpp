// Pages of handout, record card and client's page: what stands on them, nothing off
// the paper, steps that keep their texts.
#include <QRegularExpression>
#include <catch2/catch.hpp>
#include <set>

#include "app/controls/theme.h"
#include "app/handout/close_up.h"
#include "app/handout/document.h"
#include "app/handout/figures.h"
#include "app/handout/flow.h"
#include "app/handout/handout_edits.h"
#include "app/paint/svg_writer.h"
#include "tests/app/demo_plans.h"
#include "tests/app/long_plan.h"

namespace combdraft::handout {
namespace {

using plan::HandoutPart;

QString wordsOn(const paint::Page& page) {
  QStringList words;
  for (const paint::PlacedFigure& placed : page.figures)
    for (const paint::DrawingItem& item : placed.figure.items)
      if (item.text) words << item.text->words;
  return words.join(u'\n');
}
QString wordsOn(const std::vector<paint::Page>& pages) {
  QString all;
  for (const paint::Page& page : pages) all += wordsOn(page) + u'\n';
  return all;
}

std::vector<paint::Page> pagesOf(const Request& request) {
  // As the window and the command line do before they draw: lines break by its widths.
  static const QString font = controls::loadBundledFont();
  REQUIRE_FALSE(font.isEmpty());
  Result<std::vector<paint::Page>> pages = makePages(request, {}, {}, {});
  REQUIRE(pages.ok());
  return std::move(pages).value();
}

plan::HandoutStep written(const char* about, const char* why) {
  plan::HandoutStep step;
  step.about = about;
  step.why = why;
  return step;
}

std::vector<Step> stepsIn(const plan::Plan& plan, const std::vector<plan::HandoutStep>& typed = {}) {
  return stepsOf(paint::Scene(plan, {}, nullptr), typed);
}

const std::pair<plan::PaperSize, QSizeF> kPapers[] = {{plan::PaperSize::A4, {210, 297}}, {plan::PaperSize::Letter, {215.9, 279.4}}};

TEST_CASE("every document has pages of the paper that was chosen and nothing off them", "[handout]") {
  for (const auto& [paper, upright] : kPapers)
    for (const plan::PageTurn turn : {plan::PageTurn::Portrait, plan::PageTurn::Landscape})
      for (const DocumentKind kind : {DocumentKind::Handout, DocumentKind::RecordCard, DocumentKind::ClientPage}) {
        Request request = requestFor(kind, tests::demoPlan());
        request.handout.paper = paper;
        request.handout.turn = turn;
        const QSizeF size = turn == plan::PageTurn::Portrait ? upright : upright.transposed();
        for (const paint::Page& page : pagesOf(request)) {
          CHECK(page.size_mm == size);
          CHECK(wordsOn(page).contains(QStringLiteral("A picture of the plan, not a promise")));
          CHECK(wordsOn(page).contains(QStringLiteral("Page ")));
          for (const paint::PlacedFigure& placed : page.figures) {
            INFO(placed.figure.id.toStdString() << " " << placed.figure.title.toStdString());
            const QRectF on(placed.corner_mm, placed.figure.frame.size() * placed.scale);
            CHECK(on.left() >= 10);
            CHECK(on.top() >= 10);
            CHECK(on.right() <= size.width() - 10);
            CHECK(on.bottom() <= size.height() - 5);
          }
        }
      }
}

TEST_CASE("chosen parts come in the chosen order and hidden ones not at all", "[handout]") {
  Request request = requestFor(DocumentKind::Handout, tests::demoPlan());
  request.handout.aim = "Keep two clear levels";
  const QString usual = wordsOn(pagesOf(request));
  for (const HandoutPart part : kHandoutParts)
    if (part != HandoutPart::Title && part != HandoutPart::PredictThenOpen) CHECK(usual.contains(partTitle(part)));
  CHECK(usual.contains(QStringLiteral("Now open it")));
  CHECK(usual.contains(QStringLiteral("Keep two clear levels")));
  CHECK(usual.indexOf(partTitle(HandoutPart::Checks)) < usual.indexOf(partTitle(HandoutPart::Faults)));

  request.handout = withPart(request.handout, HandoutPart::Kit, Shown::No);
  request.handout = withPartMoved(request.handout, HandoutPart::Faults, -20);
  CHECK(partsOf(request.handout).front().part == HandoutPart::Faults);
  const QString changed = wordsOn(pagesOf(request));
  CHECK_FALSE(changed.contains(partTitle(HandoutPart::Kit)));
  CHECK(changed.indexOf(partTitle(HandoutPart::Faults)) < changed.indexOf(partTitle(HandoutPart::Checks)));
}

TEST_CASE("the question page comes before the page that shows the look", "[handout]") {
  const std::vector<paint::Page> pages = pagesOf(requestFor(DocumentKind::Handout, tests::demoPlan()));
  int predict = -1, open = -1;
  for (std::size_t i = 0; i < pages.size(); ++i) {
    const QString words = wordsOn(pages[i]);
    if (words.startsWith(QStringLiteral("Predict\n"))) predict = static_cast<int>(i);
    if (words.contains(QStringLiteral("Now open it"))) open = static_cast<int>(i);
  }
  REQUIRE(predict >= 0);
  CHECK(open == predict + 1);
}

TEST_CASE("a formula box shows no figure that nobody typed", "[handout]") {
  Request request = requestFor(DocumentKind::Handout, tests::demoPlan());
  request.handout.parts = {{HandoutPart::Kit, false, {}}};
  for (const HandoutPart part : kHandoutParts)
    if (part != HandoutPart::Kit) request.handout.parts.push_back({part, true, {}});
  QString words = wordsOn(pagesOf(request));
  CHECK(words.contains(QStringLiteral("Formula A: lightener")));
  CHECK_FALSE(words.contains(u'%'));
  CHECK_FALSE(words.contains(QStringLiteral(" vol")));
  CHECK_FALSE(words.contains(QRegularExpression(QStringLiteral("\\d min"))));
  CHECK(words.contains(QStringLiteral("scalp contact not stated")));

  plan::Formula formula = *request.plan.find<plan::Formula>("formula-1");
  formula.developers = {{"cream", 3.0, plan::StrengthUnit::Percent, 2.0, {}}};
  formula.leaflet.longestTime_min = 41;
  formula.leaflet.origin = "the box's own sheet";
  request.plan.put("formula-1", formula);
  words = wordsOn(pagesOf(request));
  CHECK(words.contains(QStringLiteral("cream 3 %, 2 parts")));
  CHECK(words.contains(QStringLiteral("41 min")));
  CHECK(words.contains(QStringLiteral("the box's own sheet")));
}

TEST_CASE("a step says where its pieces lie and how thick they are by the record card's rule", "[handout]") {
  plan::Plan plan = plan::Plan::fresh(5);
  plan::Piece piece = tests::pieceAlong({{170, 70}, {180, 70}, {-170, 70}}, 1);
  piece.thickness_mm = 10.2;
  plan.put("piece-1", piece);
  const auto what = [&] { return stepsIn(plan).front().what(); };
  CHECK(what().contains(QStringLiteral(", 10 mm thick.")));
  CHECK(what().contains(QRegularExpression(QStringLiteral("Its middle lies \\d+ mm below the crown, on the centre line\\."))));
  piece.thickness_mm = 4.2;
  plan.put("piece-1", piece);
  CHECK(what().contains(QStringLiteral(", 4.2 mm thick.")));

  piece = tests::pieceAlong({{170, 76}, {180, 76}, {-170, 76}}, 2);
  piece.thickness_mm = 4.2;
  plan.put("piece-2", piece);
  REQUIRE(stepsIn(plan).size() == 1);
  CHECK(what().contains(QRegularExpression(QStringLiteral("The middle of piece 1 lies \\d+ mm below the crown, on the centre line; from one to the next it is (9|10|11) mm\\."))));
}

TEST_CASE("pieces of one section are one step and every worked piece is in one", "[handout]") {
  const plan::Plan plan = tests::longPlan(60);
  const std::vector<Step> steps = stepsIn(plan);
  CHECK(steps.size() < 12);
  std::multiset<plan::ItemId> told;
  for (const Step& step : steps) {
    told.insert(step.pieces.begin(), step.pieces.end());
    CHECK_FALSE(step.what().isEmpty());
    CHECK_FALSE(step.how().isEmpty());
  }
  CHECK(told.size() == plan.pieces().size());
  for (const auto& [id, piece] : plan.pieces()) CHECK(told.count(id) == 1);
}

TEST_CASE("typed words stay with their piece, and a step whose piece is gone is marked and kept", "[handout]") {
  plan::Plan plan = tests::demoPlan();
  const std::vector<plan::HandoutStep> typed{written("piece-4", "Because the curl falls here")};
  const auto find = [](const std::vector<Step>& steps, const char* about) {
    for (const Step& step : steps)
      if (step.about == about) return step;
    FAIL("no step about " << about);
    return Step{};
  };
  Step step = find(stepsIn(plan, typed), "piece-4");
  CHECK(step.standing == Step::Standing::InPlan);
  CHECK(step.why() == QStringLiteral("Because the curl falls here"));
  CHECK_FALSE(step.what().isEmpty());  // what was not typed is made

  plan::Piece moved = *plan.find<plan::Piece>("piece-4");
  moved.order = 99;
  plan.put("piece-4", moved);
  CHECK(stepsIn(plan, typed).back().about == "piece-4");
  CHECK(find(stepsIn(plan, typed), "piece-4").why() == QStringLiteral("Because the curl falls here"));

  plan.put("piece-4", plan::ItemPtr());
  step = find(stepsIn(plan, typed), "piece-4");
  CHECK(step.standing == Step::Standing::Gone);
  CHECK(step.why() == QStringLiteral("Because the curl falls here"));
  Request request = requestFor(DocumentKind::Handout, plan);
  request.handout.steps = typed;
  const QString words = wordsOn(pagesOf(request));
  CHECK(words.contains(QStringLiteral("no longer in the plan")));
  CHECK(words.contains(QStringLiteral("Because the curl falls here")));
}

TEST_CASE("typing about a joined step does not take the step apart", "[handout]") {
  const plan::Plan plan = tests::longPlan(30);
  const std::vector<Step> before = stepsIn(plan);
  for (const Step& step : before) {
    const std::vector<Step> after = stepsIn(plan, withWords({}, step.about, {{}, {}, QStringLiteral("A reason")}));
    REQUIRE(after.size() == before.size());
    for (std::size_t i = 0; i < after.size(); ++i) CHECK(after[i].pieces == before[i].pieces);
  }
}

TEST_CASE("words of a step that are emptied leave no entry behind", "[handout]") {
  std::vector<plan::HandoutStep> typed = withWords({}, "piece-1", {QStringLiteral("x"), {}, {}});
  CHECK(typed.size() == 1);
  CHECK(withWords(typed, "piece-1", {}).empty());
  typed.front().extra["later"] = "1";
  CHECK(withWords(typed, "piece-1", {}).size() == 1);  // what a newer program wrote stays
}

TEST_CASE("a plan without pieces makes pages that say so", "[handout]") {
  for (const DocumentKind kind : {DocumentKind::Handout, DocumentKind::RecordCard, DocumentKind::ClientPage}) {
    const std::vector<paint::Page> pages = pagesOf(requestFor(kind, plan::Plan::fresh(3)));
    CHECK_FALSE(pages.empty());
    const QString words = wordsOn(pages);
    CHECK(words.contains(QStringLiteral("A picture of the plan, not a promise")));
    CHECK(words.contains(kind == DocumentKind::ClientPage ? QStringLiteral("has not been worked out") : QStringLiteral("There are no pieces in this choice yet")));
  }
}

TEST_CASE("long words flow over pages and none is lost", "[handout]") {
  plan::HandoutStep step = written("piece-1", "");
  for (int i = 0; i < 2500; ++i) step.what += "w" + std::to_string(i) + " ";
  Request request = requestFor(DocumentKind::Handout, tests::demoPlan());
  request.handout.steps = {step};
  request.handout.faults = "a fault: " + step.what;
  const std::vector<paint::Page> pages = pagesOf(request);
  std::map<QString, int> seen;
  for (const paint::Page& page : pages) {
    for (const QString& word : wordsOn(page).split(QRegularExpression(QStringLiteral("\\s+")))) ++seen[word];
    for (const paint::PlacedFigure& placed : page.figures)
      CHECK(placed.corner_mm.y() + placed.figure.frame.height() * placed.scale < page.size_mm.height());
  }
  int lost = 0;
  for (int i = 0; i < 2500; ++i) lost += seen[QStringLiteral("w%1").arg(i)] != 2;
  CHECK(lost == 0);
}

TEST_CASE("a table repeats its head on each page", "[handout]") {
  plan::Plan plan = tests::longPlan(120);
  for (int i = 1; i <= 120; i += 2) {  // no two that follow each other are alike
    plan::Piece piece = *plan.find<plan::Piece>("piece-" + std::to_string(i));
    piece.start_mm = 60;
    plan.put("piece-" + std::to_string(i), piece);
  }
  const Request request = requestFor(DocumentKind::RecordCard, plan);
  int heads = 0, withPieces = 0;
  for (const paint::Page& page : pagesOf(request)) {
    const QString words = wordsOn(page);
    heads += words.contains(QStringLiteral("\nKept in\n"));
    withPieces += words.contains(QRegularExpression(QStringLiteral("mm\\s+long")));  // in lines as its column has them
  }
  CHECK(withPieces > 2);
  CHECK(heads >= withPieces);
}

TEST_CASE("the record card lists every piece with its measures and what was changed", "[handout]") {
  plan::Plan plan = tests::demoPlan();
  plan::PlanInfo info = plan.info();
  info.assumptions["fall.partReach_mm"] = 30;
  info.notes = "Ends were drier than the middle";
  plan.put(plan::kPlanId, info);
  const QString words = wordsOn(pagesOf(requestFor(DocumentKind::RecordCard, plan)));
  for (const auto& [id, piece] : plan.pieces()) CHECK(words.contains(QStringLiteral("\n%1\n").arg(piece->order)));
  CHECK(words.contains(QStringLiteral("60, 60 %")));  // backcomb depth and pushed share of piece 1
  CHECK(words.simplified().contains(QStringLiteral("teeth 6, gaps 5 mm")));  // of lines as its column has them
  CHECK(words.contains(QStringLiteral("30 mm (default")));
  CHECK(words.contains(QStringLiteral("Ends were drier")));
}

TEST_CASE("the client's page speaks no technique and carries what was typed for this client only", "[handout]") {
  Request request = requestFor(DocumentKind::ClientPage, tests::demoPlan());
  request.client = {QStringLiteral("Wash after two days\nDry it gently"), QStringLiteral("in nine weeks"), QStringLiteral("the salon")};
  const QString words = wordsOn(pagesOf(request));
  for (const char* typed : {"Wash after two days", "Dry it gently", "in nine weeks", "the salon"}) CHECK(words.contains(QLatin1String(typed)));
  for (const char* technique : {"foil", "backcomb", "weave", "slice", "formula", "developer", "gram"})
    CHECK_FALSE(words.contains(QLatin1String(technique), Qt::CaseInsensitive));
}

TEST_CASE("the scale's bar is as long as it says", "[handout]") {
  for (const int length_mm : {50, 100}) {
    const paint::Figure figure = scaleFigure(length_mm);
    bool found = false;
    for (const paint::DrawingItem& item : figure.items)
      if (item.id == QLatin1String("scale-bar")) {
        found = true;
        CHECK(item.path.boundingRect().width() == Approx(length_mm));
        CHECK(item.style.cap == Qt::FlatCap);  // round ends would make it longer
      }
    CHECK(found);
  }
  Request request = requestFor(DocumentKind::Handout, tests::longPlan(20));
  int scales = 0;
  for (const paint::Page& page : pagesOf(request))
    for (const paint::PlacedFigure& placed : page.figures)
      if (placed.figure.id.startsWith(QLatin1String("scale-100"))) {
        ++scales;
        CHECK(placed.scale == 1);
      }
  CHECK(scales == 1);
}

TEST_CASE("a close-up is as large as it says in its middle", "[handout]") {
  const plan::Plan plan = tests::longPlan(20);
  const paint::Scene scene(plan, {}, nullptr);
  REQUIRE_FALSE(scene.sections().empty());
  const std::vector<CloseUpOf> all = closeUpsOf(scene);
  std::set<plan::ItemId> shown;
  for (const CloseUpOf& of : all) {
    // Against the plan itself: the thickness of each piece, measured where it faces squarely.
    for (const plan::ItemId& id : of.pieces) {
      const paint::PieceShape& piece = *scene.find(id);
      const paint::StripSample& s = piece.strip[piece.strip.size() / 2];
      const head::SheetView view = head::SheetView::facing(scene.head().shape, s.centre);
      const head::ViewPoint a = view.project(s.a), b = view.project(s.b);
      CHECK(std::hypot(a.u_mm - b.u_mm, a.v_mm - b.v_mm) == Approx(piece.piece->thickness_mm).margin(0.15));
      shown.insert(id);
    }
    const double scale = closeUpScale(scene, of, {174, 222});
    const paint::Figure figure = closeUp(scene, of, scale);
    CHECK(figure.frame.width() * scale <= 174);
    CHECK(figure.frame.height() * scale <= 222);
  }
  CHECK(shown.size() == scene.pieces().size());  // free ones too
}

TEST_CASE("the same request gives the same SVG to the byte", "[handout][svg]") {
  const Request request = requestFor(DocumentKind::Handout, tests::demoPlan());
  const std::vector<paint::Page> a = pagesOf(request), b = pagesOf(request);
  REQUIRE(a.size() == b.size());
  for (std::size_t i = 0; i < a.size(); ++i) CHECK(paint::svgText(a[i]) == paint::svgText(b[i]));
}

TEST_CASE("made pages are given up when asked", "[handout]") {
  std::stop_source stop;
  stop.request_stop();
  const Result<std::vector<paint::Page>> pages = makePages(requestFor(DocumentKind::Handout, tests::demoPlan()), {}, stop.get_token(), {});
  REQUIRE_FALSE(pages.ok());
  CHECK(pages.error().code == ErrorCode::Cancelled);
}

}  // namespace
}  // namespace combdraft::handout
