// Dragging a value of a section's rule on a plan of about sixty pieces: the edit
// (the run flows anew, twins follow) and what needs a look afterwards.
//
//   bench_layout [EDITS]
#include "engine/plan/edits.h"
#include "engine/plan/placement_check.h"
#include "tests/bench/bench.h"

using namespace combdraft;

namespace {

plan::Plan sixtyPieces(plan::ItemId& dragged) {
  plan::Plan plan = plan::Plan::fresh(11);
  const std::vector<std::vector<head::ScalpPoint>> outlines{
      {{178, 108}, {150, 106}, {122, 103}, {122, 84}, {150, 84}, {178, 84}},
      {{178, 82}, {150, 82}, {122, 82}, {122, 60}, {150, 52}, {178, 50}},
      {{118, 78}, {90, 72}, {70, 66}, {74, 48}, {96, 46}, {118, 48}}};
  for (const auto& outline : outlines) {
    plan::Section section;
    section.outline = outline;
    section.layout = plan::Layout{};
    section.layout->leftOut_mm = {3, 3};
    section.layout->thickness_mm = {2.5, 2.5};
    const plan::ChangeSet added = plan::addSection(plan, section);
    plan = plan::applied(std::move(plan), added);
    dragged = added.args.front();
    plan = plan::applied(plan, plan::addTwins(plan, {dragged}));
  }
  return plan;
}

}  // namespace

int main(int argc, char** argv) {
  const int edits = static_cast<int>(bench::argument(argc, argv, 1, 60));
  plan::ItemId dragged;
  const plan::Plan plan = sixtyPieces(dragged);
  std::vector<double> flow, look;
  for (int k = 0; k < edits; ++k) {
    plan::Plan moved;
    flow.push_back(bench::timed([&] {
      moved = plan::applied(plan, plan::changeSections(plan, {dragged}, [&](plan::Section& s) {
        s.layout->leftOut_mm = {3 + 0.1 * (k % 30), 3 + 0.1 * (k % 30)};
      }));
    }).wall_ms);
    look.push_back(bench::timed([&] { plan::checkPlacement(moved); }).wall_ms);
  }
  const std::string note = numberText(static_cast<double>(plan.pieces().size()), 0) + " pieces";
  bench::figure("drag a value of a section's rule", 0, bench::quantile(flow, 0.5), 1, "ms",
                note + ", 95 %: " + numberText(bench::quantile(flow, 0.95), 1) + " ms");
  bench::figure("what needs a look in the placement", 0, bench::quantile(look, 0.5), 1, "ms", note);
  return 0;
}
