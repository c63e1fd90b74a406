// An edit of one piece, to all readings, the pictures of six views at 1 mm and
// the shown view's at 0.5 mm.
//
//   bench_edit PLAN LOCKS [EDITS]
//   bench_edit PLAN LOCKS EDITS count    one thread, no output but the edits:
//                                        for counting instructions (tests/bench/run)
#include "engine/base/parallel.h"
#include "tests/bench/bench.h"

using namespace combdraft;
using bench::lookAt;

namespace {
const std::vector<look::PictureRequest> kPictures{
    {head::ViewName::Back, 0.5},  {head::ViewName::Front, 1}, {head::ViewName::Left, 1},
    {head::ViewName::Right, 1}, {head::ViewName::Top, 1},   {head::ViewName::Crown, 1}};
}

// Callgrind counts inside this function only.
extern "C" __attribute__((noinline)) void measuredEdit(look::LookEngine* engine,
                                                       const plan::Plan* plan) {
  lookAt(*engine, *plan, {}, kPictures);
}

int main(int argc, char** argv) {
  if (argc < 3) bench::giveUp("usage: bench_edit PLAN LOCKS [EDITS [count]]");
  const plan::Plan plan = bench::planFrom(argv[1]);
  const int locks = static_cast<int>(bench::argument(argc, argv, 2, 30000));
  const int edits = static_cast<int>(bench::argument(argc, argv, 3, 60));
  const bool counting = argc > 4;
  if (counting) setThreadLimit(1);

  look::LookEngine engine(locks);
  lookAt(engine, plan, {}, kPictures);
  const plan::ItemId id = bench::middlePiece(plan);

  const auto run = [&](const std::string& what, auto planAt) {
    std::vector<double> wall, cpu;
    double touched = 0;
    for (int k = 1; k <= edits; ++k) {
      const plan::Plan edited = planAt(k);
      const bench::Times t = bench::timed([&] { measuredEdit(&engine, &edited); });
      wall.push_back(t.wall_ms), cpu.push_back(t.cpu_ms);
    }
    touched = lookAt(engine, planAt(edits + 1), {}, kPictures).locksRecoloured;
    if (counting) return;
    bench::figure(what, locks, bench::quantile(wall, 0.5), 2, "ms",
                  "95 %: " + numberText(bench::quantile(wall, 0.95), 2) + " ms; processor " +
                      numberText(bench::quantile(cpu, 0.5), 1) + " ms; " +
                      numberText(touched, 0) + " locks");
  };
  run("edit a thickness", [&](int k) { return bench::withThickness(plan, id, 0.1 * (k % 20)); });
  if (counting) return 0;
  run("edit a start", [&](int k) { return bench::withStart(plan, id, 0.5 * (k % 20)); });

  // A change that touches every lock: another light.
  std::vector<double> wall;
  for (int k = 0; k < 6; ++k) {
    look::LookSettings settings;
    settings.light = k % 2 ? colour::Light::Daylight : colour::Light::WarmLamp;
    wall.push_back(bench::timed([&] { lookAt(engine, plan, settings, kPictures); }).wall_ms);
  }
  bench::figure("another light, every lock", locks, bench::quantile(wall, 0.5), 1, "ms");
  return 0;
}
