// Close-ups of a handout: what they are of, and no bits of anything else.
#include <catch2/catch.hpp>
#include <filesystem>
#include <set>

#include "app/controls/theme.h"
#include "app/handout/close_up.h"
#include "app/handout/letters.h"
#include "engine/plan/plan_file.h"
#include "tests/app/demo_plans.h"
#include "tests/app/long_plan.h"
#include "tests/support/places.h"

namespace combdraft::handout {
namespace {

using paint::Role;

const QSizeF kRoom_mm(174, 222);

// Of each line on its own, how much of it lies in the frame.
std::vector<double> lengthsInside(const QPainterPath& path, const QRectF& frame) {
  std::vector<double> lengths;
  const QList<QPolygonF> polygons = path.toSubpathPolygons();
  for (const QPolygonF& line : polygons) {
    double length = 0;
    for (qsizetype i = 1; i < line.size(); ++i)
      if (frame.contains(line[i - 1]) && frame.contains(line[i])) length += QLineF(line[i - 1], line[i]).length();
    lengths.push_back(length);
  }
  return lengths;
}

void checkNoStrays(const paint::Scene& scene) {
  std::set<QString> sections;
  for (const paint::SectionShape& section : scene.sections()) sections.insert(QString::fromStdString(section.id));
  const std::vector<CloseUpOf> all = closeUpsOf(scene);
  for (const CloseUpOf& of : all) {
    INFO(of.name.toStdString());
    const double scale = closeUpScale(scene, of, kRoom_mm);
    const paint::Figure figure = closeUp(scene, of, scale);
    const double least = 0.999 * std::min(25 / scale, 0.25 * std::max(figure.frame.width(), figure.frame.height()));
    std::set<QString> drawn;
    bool ownParting = false;
    for (const paint::DrawingItem& item : figure.items) {
      const bool own = of.section && item.id == QString::fromStdString(of.section->id);
      if (item.role == Role::Section && of.section) CHECK(own);
      ownParting = ownParting || (item.role == Role::Section && own);
      if (item.role == Role::Letter) CHECK(sections.count(item.id) == 0);
      if (item.role == Role::Hairline || item.role == Role::Part || (item.role == Role::Section && !own))
        for (const double length : lengthsInside(item.path, figure.frame)) CHECK(length >= least);
      if (of.pieces.contains(item.id.toStdString())) drawn.insert(item.id);
    }
    CHECK(ownParting == (of.section != nullptr));
    CHECK(drawn.size() == of.pieces.size());  // nothing of its own was taken for a stray
  }
}

TEST_CASE("a close-up shows no bits of other sections and no stubs of lines", "[handout][close-up]") {
  static const QString font = controls::loadBundledFont();
  REQUIRE_FALSE(font.isEmpty());
  int examples = 0;
  for (const auto& entry : std::filesystem::directory_iterator(test::sourceDir() + "/examples")) {
    if (entry.path().extension() != ".json") continue;
    INFO(entry.path().filename().string());
    const Result<plan::Plan> plan = plan::loadPlan(entry.path().string());
    REQUIRE(plan.ok());
    checkNoStrays(paint::Scene(*plan, {}, nullptr));
    ++examples;
  }
  CHECK(examples >= 9);
  checkNoStrays(paint::Scene(tests::longPlan(30), {}, nullptr));
}

TEST_CASE("a close-up keeps its notes inside and shows none from elsewhere", "[handout][close-up]") {
  static const QString font = controls::loadBundledFont();
  REQUIRE_FALSE(font.isEmpty());
  plan::Plan plan = tests::demoPlan();
  plan::Note note;
  note.choice = "choice-1";
  note.at = {180, 25};
  note.text = "far above the section";
  plan.put("note-1", note);
  for (const double azimuth_deg : {150.0, 180.0, -150.0}) {
    note.at = {azimuth_deg, 85};
    note.text = "how it fell when it was dry " + std::to_string(static_cast<int>(azimuth_deg));
    plan.put("note-at-" + std::to_string(static_cast<int>(azimuth_deg)), note);
  }
  const paint::Scene scene(plan, {}, nullptr);
  const std::vector<CloseUpOf> all = closeUpsOf(scene);
  REQUIRE_FALSE(all.empty());
  REQUIRE(all.front().section);
  const paint::Figure figure = closeUp(scene, all.front(), closeUpScale(scene, all.front(), kRoom_mm));
  int notes = 0;
  for (const paint::DrawingItem& item : figure.items) {
    if (item.role != Role::Note) continue;
    CHECK(item.id != QStringLiteral("note-1"));
    if (!item.text) continue;
    ++notes;
    INFO(item.text->words.toStdString());
    const double width = widthOf(item.text->words, item.text->size_mm);
    const double left = item.text->anchor == paint::TextRun::Anchor::End ? item.text->at.x() - width : item.text->at.x();
    CHECK(left >= figure.frame.left() - 0.01);
    CHECK(left + width <= figure.frame.right() + 0.01);
  }
  CHECK(notes == 3);
}

}  // namespace
}  // namespace combdraft::handout
