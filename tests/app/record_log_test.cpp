// The appointment log on the record card: what stands, what was taken back, planned
// against got, over as many pages as it needs, and what cannot be read.
#include <catch2/catch.hpp>

#include <QDateTime>
#include <QRegularExpression>
#include <functional>
#include <map>

#include "app/controls/theme.h"
#include "app/handout/document.h"
#include "app/paint/work_words.h"
#include "engine/work/log_text.h"
#include "tests/app/demo_plans.h"

namespace combdraft::handout {
namespace {

using work::LogEvent;
using work::Tap;

constexpr std::int64_t kBegin_ms = 1'800'000'000'000;

std::vector<paint::Page> cardOf(const plan::Plan& plan) {
  static const QString font = controls::loadBundledFont();
  REQUIRE_FALSE(font.isEmpty());
  Result<std::vector<paint::Page>> pages = makePages(requestFor(DocumentKind::RecordCard, plan), {}, {}, {});
  REQUIRE(pages.ok());
  return std::move(pages).value();
}

QString wordsOn(const paint::Page& page) {
  QStringList words;
  for (const paint::PlacedFigure& placed : page.figures)
    for (const paint::DrawingItem& item : placed.figure.items)
      if (item.text) words << item.text->words;
  return words.join(u' ').simplified();
}
QString wordsOn(const std::vector<paint::Page>& pages) {
  QStringList all;
  for (const paint::Page& page : pages) all << wordsOn(page);
  return all.join(u' ');
}

void add(work::AppointmentLog& log, Tap tap, double at_s, std::vector<plan::ItemId> pieces, const std::function<void(LogEvent&)>& also = {}) {
  LogEvent event;
  event.number = static_cast<int>(log.events.size()) + 1;
  event.tap = tap;
  event.at_s = at_s;
  event.utc_ms = kBegin_ms + static_cast<std::int64_t>(at_s * 1000);
  event.pieces = std::move(pieces);
  if (also) also(event);
  log.events.push_back(std::move(event));
}

plan::Plan withLog(const std::string& json) {
  plan::Plan plan = tests::demoPlan();
  plan::PlanInfo info = plan.info();
  info.logJson = json;
  plan.put(plan::kPlanId, info);
  return plan;
}

QString timeOf(double at_s) {
  return QDateTime::fromMSecsSinceEpoch(kBegin_ms + static_cast<qint64>(at_s * 1000)).toLocalTime().toString(QStringLiteral("HH:mm"));
}

}  // namespace

TEST_CASE("the record card prints the taps that stand and planned against got", "[handout][log]") {
  work::AppointmentLog log;
  add(log, Tap::Placed, 0, {"piece-1", "piece-2", "piece-3", "piece-4"});
  add(log, Tap::BowlMixed, 120, {}, [](LogEvent& e) { e.formula = "formula-1"; });
  add(log, Tap::Placed, 180, {"piece-7"}, [](LogEvent& e) { e.takenBack = true; });
  add(log, Tap::Looked, 600, {"piece-1"}, [](LogEvent& e) { e.level = 7.5, e.pigment = "warm yellow", e.who = "second hand"; });
  add(log, Tap::Rinsed, 1200, {"piece-1"});
  add(log, Tap::Looked, 1500, {"piece-1"}, [](LogEvent& e) { e.level = 8.5; });
  const QString words = wordsOn(cardOf(withLog(work::writeLog(log))));
  INFO(words.toStdString());
  CHECK(words.contains(QStringLiteral("The appointment, tap by tap")));
  // All pieces of a tap by name, not their number.
  CHECK(words.contains(timeOf(0) + u' ' + paint::minutes(0) + QStringLiteral(" placed: piece 1, piece 2, piece 3, piece 4")));
  CHECK(words.contains(timeOf(120) + u' ' + paint::minutes(2) + QStringLiteral(" bowl mixed: A, lightener")));
  CHECK(words.contains(paint::minutes(10) + QStringLiteral(" looked: piece 1 7.5 warm yellow second hand")));
  CHECK(words.contains(paint::minutes(25) + QStringLiteral(" looked: piece 1 8.5")));
  CHECK_FALSE(words.contains(QStringLiteral("placed: piece 7")));
  CHECK(words.contains(QStringLiteral("1 tap was taken back")));
  // The span that was typed for piece 1 is 8 to 10 at 9.
  CHECK(words.contains(QStringLiteral("piece 1 9 8.5 inside 8 to 10")));
}

TEST_CASE("no level after a rinse means no planned against got", "[handout][log]") {
  work::AppointmentLog log;
  add(log, Tap::Placed, 0, {"piece-1"});
  add(log, Tap::Looked, 600, {"piece-1"}, [](LogEvent& e) { e.level = 9; });
  const QString words = wordsOn(cardOf(withLog(work::writeLog(log))));
  CHECK(words.contains(QStringLiteral("tap by tap")));
  CHECK_FALSE(words.contains(QStringLiteral("Planned and got")));
}

TEST_CASE("a log of two visits is printed as two", "[handout][log]") {
  work::AppointmentLog log;
  add(log, Tap::Placed, 0, {"piece-1"});
  add(log, Tap::Begun, 60.0 * 86400, {});
  add(log, Tap::Placed, 60.0 * 86400 + 30, {"piece-2"});
  const QString words = wordsOn(cardOf(withLog(work::writeLog(log))));
  CHECK(words.count(QStringLiteral("Visit of")) == 2);
  // Minutes count from the first tap of each.
  CHECK(words.contains(paint::minutes(0) + QStringLiteral(" placed: piece 2")));
}

TEST_CASE("a long log flows over pages and none of its taps is lost", "[handout][log]") {
  constexpr int kTaps = 200;
  work::AppointmentLog log;
  for (int i = 0; i < kTaps; ++i)
    add(log, i == 0 ? Tap::Placed : Tap::Looked, 30.0 * i, {"piece-1"}, [i](LogEvent& e) { e.pigment = "w" + std::to_string(i); });
  const std::vector<paint::Page> pages = cardOf(withLog(work::writeLog(log)));
  std::map<QString, int> seen;
  int withTaps = 0, heads = 0;
  for (const paint::Page& page : pages) {
    const QString words = wordsOn(page);
    static const QRegularExpression kTap(QStringLiteral("\\bw\\d+\\b"));
    withTaps += words.contains(kTap);
    heads += words.contains(QStringLiteral("Pigment left"));
    for (const QString& word : words.split(u' ')) ++seen[word];
    for (const paint::PlacedFigure& placed : page.figures)
      CHECK(placed.corner_mm.y() + placed.figure.frame.height() * placed.scale < page.size_mm.height());
  }
  CHECK(withTaps >= 3);
  CHECK(heads == withTaps);
  int lost = 0;
  for (int i = 0; i < kTaps; ++i) lost += seen[QStringLiteral("w%1").arg(i)] != 1;
  CHECK(lost == 0);
}

TEST_CASE("a log that cannot be read is said and an empty one takes no room", "[handout][log]") {
  const QString broken = wordsOn(cardOf(withLog(R"({"events": "many"})")));
  CHECK(broken.contains(QStringLiteral("log stands in the plan and cannot be read")));
  CHECK(QString(broken).remove(u' ').contains(QStringLiteral("/log/events")));
  for (const char* none : {"", R"({"events": []})"}) CHECK_FALSE(wordsOn(cardOf(withLog(none))).contains(QStringLiteral("tap by tap")));
}

}  // namespace combdraft::handout
