// A view's diagram after an edit, drawn only where it changed, is the one drawn whole.
#include <catch2/catch.hpp>
#include <cmath>

#include "app/sheet/changed_area.h"
#include "app/sheet/view_layers.h"
#include "tests/app/demo_plans.h"

namespace combdraft::sheet {
namespace {

ViewPlace placeFor(head::ViewName view, const QSizeF& size) {
  ViewPlace place;
  place.view = view;
  place.rect = QRectF(QPointF(13, 7), size);
  place.scale = std::min(size.width(), size.height()) / 320;
  place.origin = place.rect.center() + QPointF(0.3, 0.6);
  return place;
}

// How far two pictures are apart in their most different colour, 0 to 255.
int apart(const QPixmap& one, const QPixmap& other) {
  const QImage a = one.toImage().convertToFormat(QImage::Format_ARGB32_Premultiplied);
  const QImage b = other.toImage().convertToFormat(QImage::Format_ARGB32_Premultiplied);
  if (a.size() != b.size()) return 255;
  int most = 0;
  for (int y = 0; y < a.height(); ++y)
    for (int x = 0; x < a.width(); ++x) {
      const QRgb p = a.pixel(x, y), q = b.pixel(x, y);
      for (const int shift : {0, 8, 16, 24})
        most = std::max(most, std::abs(static_cast<int>((p >> shift) & 255) - static_cast<int>((q >> shift) & 255)));
    }
  return most;
}

// Draws one plan after the other with one ViewLayers, and each with a new one. How often only a
// part was drawn.
int checkEdits(const std::vector<plan::Plan>& plans, double pixelRatio) {
  int parts = 0;
  for (const head::ViewName name : head::kAllViews) {
    INFO(head::viewWord(name) << " at " << pixelRatio);
    ViewLayers kept;
    std::shared_ptr<const paint::Scene> scene;
    for (std::size_t i = 0; i < plans.size(); ++i) {
      INFO("plan " << i);
      scene = std::make_shared<const paint::Scene>(plans[i], plan::ItemId(), scene.get());
      const ViewLayers::Source source{scene, nullptr, placeFor(name, {420, 360}), pixelRatio, {}};
      kept.update(source);
      ViewLayers fresh;
      fresh.update(source);
      // Smoothing rounds otherwise at the rim of what is drawn anew: 5 of 255 seen.
      CHECK(apart(kept.diagram(), fresh.diagram()) <= 8);
      CHECK(kept.items() == fresh.items());
      CHECK(fresh.drawn().parts == 0);
    }
    parts += kept.drawn().parts;
  }
  return parts;
}

std::vector<plan::Plan> edited(const plan::Plan& first) {
  std::vector<plan::Plan> plans{first};
  const auto change = [&](const plan::ItemId& id, auto how) {
    plan::Plan next = plans.back();
    plan::Piece piece = *next.find<plan::Piece>(id);
    how(piece);
    next.put(id, piece);
    plans.push_back(next);
  };
  for (int step = 0; step < 4; ++step)
    change("piece-3", [](plan::Piece& piece) {
      for (head::ScalpPoint& point : piece.line) point.drop_deg -= 3;
    });
  change("piece-1", [](plan::Piece& piece) { piece.thickness_mm = 12; });
  change("piece-2", [](plan::Piece& piece) { piece.action = plan::Action::LeaveOut; });
  change("piece-4", [](plan::Piece& piece) { std::swap(piece.line.front(), piece.line.back()); });
  plan::Plan without = plans.back();
  without.put("piece-7", plan::ItemPtr{});
  plans.push_back(without);
  plans.push_back(plans[plans.size() - 2]);
  plan::Plan swapped = plans.back();  // an order of drawing that no part can draw
  plan::Piece one = *swapped.find<plan::Piece>("piece-1"), two = *swapped.find<plan::Piece>("piece-2");
  std::swap(one.order, two.order);
  swapped.put("piece-1", one);
  swapped.put("piece-2", two);
  plans.push_back(swapped);
  plan::Plan other = plans.back();
  plan::Head head = other.head();
  head.part = {{30, 40}, {10, 20}};
  for (plan::Whorl& whorl : head.whorls) whorl.at.bearing_deg += 12;
  other.put(plan::kHeadId, head);
  plans.push_back(other);
  for (const auto& [id, section] : other.sections("choice-1")) {
    plan::Section moved = *section;
    for (head::ScalpPoint& point : moved.outline) point.drop_deg -= 5;
    moved.label = "low";
    other.put(id, moved);
  }
  plans.push_back(other);
  return plans;
}

TEST_CASE("what an edit changes is drawn as the whole would be", "[sheet]") {
  CHECK(checkEdits(edited(tests::demoPlan()), 1) > 20);
  CHECK(checkEdits(edited(tests::demoPlan()), 1.5) > 20);
  CHECK(checkEdits(edited(tests::sixtyPlan()), 1) > 10);
}

TEST_CASE("at a screen scale without whole dots everything is drawn", "[sheet]") {
  CHECK(checkEdits(edited(tests::demoPlan()), 1.1) == 0);
}

TEST_CASE("another formula's letter draws a piece that itself did not change", "[sheet]") {
  std::vector<plan::Plan> plans{tests::demoPlan()};
  plan::Plan next = plans.back();
  plan::Formula formula = *next.find<plan::Formula>("formula-1");
  formula.letter = "C";
  next.put("formula-1", formula);
  plans.push_back(next);
  CHECK(checkEdits(plans, 1) > 0);
}

TEST_CASE("changed area: only what differs, all where the order does", "[sheet]") {
  const auto item = [](const char* id, double x) {
    paint::DrawingItem one;
    one.id = QLatin1String(id);
    one.path.addRect(QRectF(x, 0, 10, 10));
    one.style.stroke = Qt::black;
    one.style.width_mm = 1;
    return one;
  };
  const paint::Items before{item("a", 0), item("b", 20), item("c", 40)};
  REQUIRE(changedArea(before, before));
  CHECK(changedArea(before, before)->empty());

  const auto moved = changedArea(before, {item("a", 0), item("b", 60), item("c", 40)});
  REQUIRE(moved);
  REQUIRE(moved->size() == 2);  // where it lay and where it lies, with half its line on each side and more
  CHECK((*moved)[0].contains(QRectF(19.5, -0.5, 11, 11)));
  CHECK((*moved)[1].contains(QRectF(59.5, -0.5, 11, 11)));
  CHECK_FALSE((*moved)[0].intersects(QRectF(0, 0, 10, 10)));

  const auto gone = changedArea(before, {item("a", 0), item("c", 40)});
  REQUIRE(gone);
  CHECK(gone->size() == 1);
  CHECK_FALSE(changedArea(before, {item("b", 20), item("a", 0), item("c", 40)}));
}

}  // namespace
}  // namespace combdraft::sheet
