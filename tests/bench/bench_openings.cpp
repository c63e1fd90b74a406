// All openings after an edit of one piece, and the first time for a head.
//
//   bench_openings PLAN LOCKS [EDITS]
#include "engine/look/openings.h"
#include "tests/bench/bench.h"

using namespace combdraft;

int main(int argc, char** argv) {
  if (argc < 3) bench::giveUp("usage: bench_openings PLAN LOCKS [EDITS]");
  const plan::Plan plan = bench::planFrom(argv[1]);
  const int locks = static_cast<int>(bench::argument(argc, argv, 2, 12000));
  const int edits = static_cast<int>(bench::argument(argc, argv, 3, 20));
  look::OpeningSweep sweep(locks);
  const auto sweepOnce = [&](const plan::Plan& p) {
    if (!sweep.update(p, {}, {})) bench::giveUp("the sweep failed");
  };
  const bench::Times first = bench::timed([&] { sweepOnce(plan); });
  bench::figure("openings, new head", locks, first.wall_ms, 0, "ms", "processor " + numberText(first.cpu_ms, 0) + " ms");
  const plan::ItemId id = bench::middlePiece(plan);
  std::vector<double> wall, cpu;
  for (int k = 1; k <= edits; ++k) {
    const plan::Plan edited = bench::withThickness(plan, id, 0.1 * (k % 10));
    const bench::Times t = bench::timed([&] { sweepOnce(edited); });
    wall.push_back(t.wall_ms), cpu.push_back(t.cpu_ms);
  }
  bench::figure("openings, edit a thickness", locks, bench::quantile(wall, 0.5), 1, "ms",
                "95 %: " + numberText(bench::quantile(wall, 0.95), 1) + " ms; processor " + numberText(bench::quantile(cpu, 0.5), 1) + " ms");
  return 0;
}
