// Labels of pieces on the drawings: a number never stands without its formula's letter,
// and no piece is without a label.
#include <catch2/catch.hpp>
#include <QLineF>
#include <algorithm>
#include <cmath>
#include <filesystem>
#include <functional>
#include <set>
#include <vector>

#include "app/handout/figures.h"
#include "app/paint/describe_piece.h"
#include "app/paint/diagram.h"
#include "app/paint/diagram_labels.h"
#include "app/paint/key.h"
#include "app/paint/labels.h"
#include "engine/base/random.h"
#include "engine/plan/plan_file.h"
#include "tests/app/demo_plans.h"
#include "tests/support/places.h"

namespace combdraft::paint {
namespace {

constexpr head::ViewName kViews[] = {head::ViewName::Front, head::ViewName::Back, head::ViewName::Left,
                                     head::ViewName::Right, head::ViewName::Top, head::ViewName::Crown};

const PieceShape* pieceOf(const Scene& scene, const DrawingItem& item) { return scene.find(item.id.toStdString()); }

// What one label takes: the plate with its letters, or the circle alone.
struct Label {
  QString id;
  QRectF room;
};

// Each number has its letters on the plate beneath it, each plate its number.
std::vector<Label> checkLabels(const Scene& scene, const Items& items) {
  std::vector<Label> labels;
  int plates = 0, lettered = 0;
  for (std::size_t i = 0; i < items.size(); ++i) {
    const DrawingItem& item = items[i];
    const PieceShape* piece = pieceOf(scene, item);
    if (!piece) continue;
    plates += item.role == Role::Letter;
    if (item.role != Role::Number) continue;
    INFO(item.id.toStdString());
    REQUIRE(item.text);
    CHECK(item.text->words == pieceNumber(*piece->piece));
    const QString letters = formulaLetters(scene.plan(), *piece->piece);
    labels.push_back({item.id, item.path.boundingRect()});
    if (letters.isEmpty()) continue;
    ++lettered;
    REQUIRE(i > 0);
    const DrawingItem& plate = items[i - 1];
    REQUIRE(plate.role == Role::Letter);
    REQUIRE(plate.text);
    CHECK(plate.id == item.id);
    CHECK(plate.text->words == letters);
    const QRectF circle = item.path.boundingRect(), room = plate.path.boundingRect();
    CHECK(room.adjusted(-0.01, -0.01, 0.01, 0.01).contains(circle));
    CHECK_FALSE(circle.contains(plate.text->at));
    CHECK(room.contains(plate.text->at));
    CHECK(std::abs(plate.text->at.x() - circle.center().x()) < 2.5 * circle.width());
    labels.back().room = room;
  }
  CHECK(plates == lettered);
  return labels;
}

// Where there is no other room a leader may pass beneath a label, once in a view, and in a full
// view a label over a swirl; no label lies over another.
void checkRoom(const Items& items, const std::vector<Label>& labels) {
  int beneath = 0;
  for (std::size_t i = 0; i < labels.size(); ++i)
    for (std::size_t k = 0; k < i; ++k) {
      INFO(labels[i].id.toStdString() << " over " << labels[k].id.toStdString());
      CHECK_FALSE(labels[i].room.intersects(labels[k].room));
    }
  for (const DrawingItem& item : items) {
    if (item.role == Role::Whorl && labels.size() <= 20)
      for (const Label& label : labels) {
        INFO(label.id.toStdString() << " over a swirl");
        CHECK_FALSE(item.path.intersects(label.room));
      }
    if (item.role != Role::Leader) continue;
    for (const Label& label : labels) {
      INFO("leader of " << item.id.toStdString() << " over " << label.id.toStdString());
      if (label.id != item.id)
        beneath += item.path.intersects(label.room) ? 1 : 0;
      else
        CHECK(label.room.contains(item.path.currentPosition()));
    }
  }
  CHECK(beneath <= 1);
}

void checkPlan(const plan::Plan& plan, const std::function<Items(const Scene&, head::ViewName)>& draw) {
  const Scene scene(plan, {}, nullptr);
  std::set<QString> found;
  for (const head::ViewName view : kViews) {
    INFO(head::viewWord(view));
    const Items items = draw(scene, view);
    const std::vector<Label> labels = checkLabels(scene, items);
    checkRoom(items, labels);
    for (const Label& label : labels) found.insert(label.id);
  }
  for (const auto& piece : scene.pieces()) {
    INFO(piece->id);
    if (piece->piece->action != plan::Action::LeaveOut && piece->strip.size() > 1)
      CHECK(found.count(QString::fromStdString(piece->id)) == 1);
  }
}

Items onSheet(const Scene& scene, head::ViewName view) { return diagramItems(scene, view, {}); }
// Three to a row on A4: the smallest on paper.
Items onPaper(const Scene& scene, head::ViewName view) {
  return handout::viewFigure(scene, view, 58 / handout::cropOf(view).width()).items;
}

TEST_CASE("a number never stands without its letter and no piece without a label", "[paint][labels]") {
  int examples = 0;
  for (const auto& entry : std::filesystem::directory_iterator(test::sourceDir() + "/examples")) {
    if (entry.path().extension() != ".json") continue;
    INFO(entry.path().filename().string());
    const Result<plan::Plan> plan = plan::loadPlan(entry.path().string());
    REQUIRE(plan.ok());
    checkPlan(*plan, onSheet);
    checkPlan(*plan, onPaper);
    ++examples;
  }
  CHECK(examples >= 9);
}

TEST_CASE("a piece without a formula has a number alone", "[paint][labels]") {
  plan::Plan plan = tests::demoPlan();
  plan::Piece piece = *plan.find<plan::Piece>("piece-1");
  piece.root.formula.clear();
  piece.end.formula.clear();
  plan.put("piece-1", piece);
  checkPlan(plan, onSheet);
  int numbers = 0;
  for (const DrawingItem& item : onSheet(Scene(plan, {}, nullptr), head::ViewName::Back)) {
    if (item.id != QLatin1String("piece-1")) continue;
    CHECK(item.role != Role::Letter);
    numbers += item.role == Role::Number;
  }
  CHECK(numbers == 1);
}

TEST_CASE("a label with letters is wider by each letter", "[paint][labels]") {
  const QSizeF none = numberLabelSize({}, 2), one = numberLabelSize(QStringLiteral("B"), 2),
               two = numberLabelSize(QStringLiteral("A/B"), 2);
  CHECK(none == QSizeF(4, 4));
  CHECK(one.height() == Approx(4));
  CHECK(one.width() > none.width() + 1);
  CHECK(two.width() > one.width() + 2);
}

TEST_CASE("the key shows a label as the drawings do", "[paint][labels]") {
  const Scene scene(tests::demoPlan(), {}, nullptr);
  int numbers = 0, letters = 0;
  for (const KeyEntry& entry : keyEntries(scene, Palette()))
    for (const DrawingItem& item : entry.sample) {
      numbers += item.role == Role::Number;
      letters += item.role == Role::Letter;
      if (item.role == Role::Letter) CHECK(item.path.boundingRect().right() <= entry.width_mm);
    }
  CHECK(numbers == 1);
  CHECK(letters == 1);
}

TEST_CASE("room for a label keeps clear of labels and leaders", "[paint][labels]") {
  using Cover = LabelRoom::Cover;
  LabelRoom room(QRectF(0, 0, 100, 100));
  const LabelRoom::Spot earlier{QPointF(50, 50), QLineF(20, 50, 50, 50)};
  REQUIRE(room.take({earlier}, {10, 10}, Cover::Nothing));
  const LabelRoom::Spot onLabel{QPointF(55, 52), {}}, onLeader{QPointF(30, 50), {}}, outside{QPointF(98, 50), {}},
      through{QPointF(80, 50), QLineF(80, 50, 52, 52)}, clear{QPointF(80, 80), {}};
  for (const LabelRoom::Spot& spot : {onLabel, onLeader, outside, through})
    CHECK_FALSE(room.take({spot}, {10, 10}, Cover::PlacesAndLines));
  const auto found = room.take({onLabel, onLeader, outside, through, clear}, {10, 10}, Cover::PlacesAndLines);
  REQUIRE(found);
  CHECK(found->centre == clear.centre);
  CHECK_FALSE(room.take({onLabel, outside}, {10, 10}, Cover::Leaders));
  CHECK(room.take({through}, {10, 10}, Cover::Leaders));
}

TEST_CASE("every place to keep off is kept off, wherever it lies", "[paint][labels]") {
  for (const double size : {30.0, 100.0, 320.0}) {
    const QRectF frame(-0.3 * size, 0.1 * size, size, 0.8 * size);
    LabelRoom room(frame);
    std::vector<QPointF> places;
    for (std::uint64_t i = 0; i < 40; ++i) {
      places.emplace_back(frame.left() + frame.width() * randomUniform(7, i, 0), frame.top() + frame.height() * randomUniform(7, i, 1));
      room.avoid(places.back());
    }
    int off = 0;
    for (std::uint64_t i = 0; i < 4000; ++i) {
      const QSizeF label(0.05 * size, 0.04 * size);
      const QRectF box(QPointF(frame.left() + (frame.width() - label.width()) * randomUniform(8, i, 0),
                               frame.top() + (frame.height() - label.height()) * randomUniform(8, i, 1)), label);
      const bool isOn = std::any_of(places.begin(), places.end(), [&](const QPointF& place) { return box.contains(place); });
      off += isOn;
      LabelRoom copy = room;  // taking leaves a label
      CHECK(copy.take({{box.center(), {}}}, label, LabelRoom::Cover::Nothing).has_value() != isOn);
    }
    CHECK(off > 40);
  }
}

TEST_CASE("room for a label keeps off the ear and the pieces when it can", "[paint][labels]") {
  using Cover = LabelRoom::Cover;
  LabelRoom room(QRectF(0, 0, 100, 100));
  QPainterPath ear(QPointF(50, 0));
  ear.lineTo(50, 100);
  room.avoidLines(ear);
  room.avoid({20, 20});
  const LabelRoom::Spot onEar{QPointF(52, 80), {}}, overEar{QPointF(70, 40), QLineF(40, 40, 70, 40)},
      onPiece{QPointF(20, 22), {}};
  for (const LabelRoom::Spot& spot : {onEar, overEar, onPiece}) CHECK_FALSE(room.take({spot}, {8, 8}, Cover::Nothing));
  for (const LabelRoom::Spot& spot : {onEar, overEar}) CHECK_FALSE(room.take({spot}, {8, 8}, Cover::Places));
  CHECK(room.take({onPiece}, {8, 8}, Cover::Places));
  for (const LabelRoom::Spot& spot : {onEar, overEar}) CHECK(room.take({spot}, {8, 8}, Cover::PlacesAndLines));
}

}  // namespace
}  // namespace combdraft::paint
