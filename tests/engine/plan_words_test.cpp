// Words and the table of fields: nothing twice, nothing missing, defaults as in
// the structs.
#include <catch2/catch.hpp>
#include <set>

#include "engine/plan/field_info.h"
#include "engine/plan/plan_words.h"
#include "engine/visibility/region.h"

using namespace combdraft;
using namespace combdraft::plan;

TEMPLATE_TEST_CASE("every value has one word and comes back from it", "[plan]", head::HeadSet,
                   head::HeadSize, Turn, SkinTone, HairZone, CurlClass, Condition, Tone,
                   ScalpContact, Action, Taking, KeptIn, Side, LayoutRun, Columns, RunField,
                   Treatment::Kind, ContrastAim, Porosity, StrengthUnit, PaperSize, PageTurn,
                   HandoutPart) {
  std::set<std::string_view> seen;
  int expected = 0;
  for (const auto& entry : words<TestType>()) {
    CHECK(static_cast<int>(entry.value) == expected++);  // in order, none left out
    CHECK(seen.insert(entry.word).second);
    CHECK(fromWord<TestType>(entry.word) == entry.value);
    CHECK(wordOf(entry.value) == entry.word);
  }
  CHECK_FALSE(fromWord<TestType>("").has_value());
  CHECK_FALSE(fromWord<TestType>("no such word").has_value());
}

TEST_CASE("file words are the trade's words", "[plan]") {
  CHECK(allWords<Taking>() == "slice, weave, paint");
  CHECK(allWords<Action>() == "lighten, deepen, leave out");
  CHECK(allWords<LayoutRun>() ==
        "horizontal, vertical, diagonal forward, diagonal back, pivoting");
}

TEST_CASE("targets are for the whole and for the regions where hair is seen", "[plan]") {
  const auto regions = targetRegions();
  REQUIRE(regions.size() == 1 + visibility::kRegions);
  CHECK(regions[0] == "whole");
  for (int i = 0; i < visibility::kRegions; ++i)
    CHECK(regions[static_cast<std::size_t>(i) + 1] ==
          visibility::regionWord(static_cast<visibility::Region>(i)));
}

TEST_CASE("the defaults of the field table are those of the structs", "[plan]") {
  const auto standard = [](std::string_view name) { return fieldInfo(name).standard.value(); };
  const Piece piece;
  CHECK(standard("piece.thickness_mm") == piece.thickness_mm);
  CHECK(standard("piece.taken_frac") == piece.taken_frac);
  CHECK(standard("piece.tooth_mm") == piece.tooth_mm);
  CHECK(standard("piece.gap_mm") == piece.gap_mm);
  CHECK(standard("piece.start_mm") == piece.start_mm);
  CHECK(standard("piece.blend_mm") == piece.blend_mm);
  CHECK(standard("piece.outer_frac") == piece.outer_frac);
  CHECK(standard("piece.order") == piece.order);
  CHECK(standard("backcomb.depth_mm") == piece.backcomb.depth_mm);
  CHECK(standard("backcomb.pushed_frac") == piece.backcomb.pushed_frac);
  CHECK(standard("backcomb.blend_mm") == piece.backcomb.blend_mm);
  CHECK(standard("lifts.level") == piece.root.lifts.level);
  CHECK(standard("lifts.low") == piece.root.lifts.low);
  CHECK(standard("lifts.high") == piece.root.lifts.high);
  CHECK(standard("finish.level") == FinishesAt{}.level);
  const Hair hair;
  CHECK(standard("hair.density_per_cm2") == hair.density_per_cm2);
  CHECK(standard("hair.fibre_um") == hair.fibre_um);
  CHECK(standard("hair.layering_frac") == hair.layering_frac);
  CHECK(standard("hair.level") == hair.level[0].middle);
  CHECK(standard("hair.toneWarmth") == hair.toneWarmth);
  CHECK(standard("hair.white_frac") == hair.white_frac);
  CHECK(standard("band.level") == Band{}.level);
  CHECK(standard("band.to_mm") == Band{}.to_mm);
  CHECK(standard("scattered.share_frac") == ScatteredLight{}.share_frac);
  CHECK(standard("scattered.to_mm") == ScatteredLight{}.to_mm);
  CHECK(standard("scattered.level") == ScatteredLight{}.level);
  const Layout layout;
  CHECK(standard("layout.thicknessFrom_mm") == layout.thickness_mm.from);
  CHECK(standard("layout.thicknessTo_mm") == layout.thickness_mm.to);
  CHECK(standard("layout.leftOutFrom_mm") == layout.leftOut_mm.from);
  CHECK(standard("layout.leftOutTo_mm") == layout.leftOut_mm.to);
  CHECK(standard("layout.startFrom_mm") == layout.start_mm.from);
  CHECK(standard("layout.startTo_mm") == layout.start_mm.to);
  CHECK(standard("layout.backcombFrom_mm") == layout.backcomb_mm.from);
  CHECK(standard("layout.pushedFrom_frac") == layout.pushed_frac.from);
  CHECK(standard("layout.takenFrom_frac") == layout.taken_frac.from);
  CHECK(standard("layout.tooth_mm") == layout.tooth_mm);
  CHECK(standard("layout.gap_mm") == layout.gap_mm);
  CHECK(standard("layout.zigzag_mm") == layout.zigzag_mm);
  CHECK(standard("layout.dropMiddle_mm") == layout.dropMiddle_mm);
  CHECK(standard("layout.foil_mm") == layout.foil_mm);
  const Treatment treatment;
  CHECK(standard("treatment.to_mm") == treatment.to_mm);
  CHECK(standard("treatment.blend_mm") == treatment.blend_mm);
  CHECK(standard("treatment.strength_frac") == treatment.strength_frac);
}

TEST_CASE("field rows are sound", "[plan]") {
  std::set<std::string_view> names;
  for (const FieldInfo& field : fieldTable()) {
    CHECK(names.insert(field.name).second);
    CHECK(field.low < field.high);
    CHECK_FALSE(field.what.empty());
    if (field.standard) {
      CHECK(*field.standard >= field.low);
      CHECK(*field.standard <= field.high);
    }
  }
  CHECK(rangeText(fieldInfo("piece.thickness_mm")) == "0.2 to 40 mm");
}

TEST_CASE("ids sort as a person expects", "[plan]") {
  CHECK(idLess("piece-2", "piece-10"));
  CHECK_FALSE(idLess("piece-10", "piece-2"));
  CHECK(idLess("a", "b"));
  CHECK_FALSE(idLess("a", "a"));
  // A strict order: no cycle through mixed forms.
  const std::vector<ItemId> ids{"piece-10", "piece-1a3", "piece-2", "piece-", "7", "07", "x7"};
  for (const auto& a : ids)
    for (const auto& b : ids) {
      CHECK((a == b) == (!idLess(a, b) && !idLess(b, a)));
      for (const auto& c : ids)
        if (idLess(a, b) && idLess(b, c)) CHECK(idLess(a, c));
    }
}
