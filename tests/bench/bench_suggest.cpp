// The search for a better placement: time to prepare a new head, then to the first proposal and to the last,
// and how the plan stands to the aims before and after.
//
//   bench_suggest PLAN LOCKS [LEVELS]
//
// LEVELS: aim that many levels away from the whole head as it looks; without it
// the plan's own targets, or else the levels as they look.
#include <optional>

#include "engine/advise/suggestion.h"
#include "tests/bench/bench.h"

using namespace combdraft;

int main(int argc, char** argv) {
  if (argc < 3) bench::giveUp("usage: bench_suggest PLAN LOCKS [LEVELS]");
  const plan::Plan plan = bench::planFrom(argv[1]);
  const int locks = static_cast<int>(bench::argument(argc, argv, 2, 12000));
  advise::Wish wish;
  if (argc > 3) {
    look::LookEngine engine(locks, 2);
    wish.aims["whole"].level = bench::lookAt(engine, plan, {}).readings->whole.level + bench::argument(argc, argv, 3, 0);
  }
  advise::Suggester suggester(locks);
  const bench::Times made = bench::timed([&] { suggester.prepare(plan, {}, {}); });
  bench::figure("suggestion, new head", locks, made.wall_ms, 0, "ms", "processor " + numberText(made.cpu_ms, 0) + " ms");
  const auto begin = std::chrono::steady_clock::now();
  const double beginCpu_ms = bench::cpuNow_ms();
  std::optional<bench::Times> first;
  const auto now_ms = [&] { return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - begin).count(); };
  std::vector<advise::Proposal> found;
  const bench::Times all = bench::timed([&] {
    auto result = suggester.search(plan, {}, wish, {}, [&](const advise::Progress& p) {
      if (!first && !p.found->empty()) first = bench::Times{now_ms(), bench::cpuNow_ms() - beginCpu_ms};
    });
    if (!result) bench::giveUp(describe(result.error()));
    found = std::move(result).value();
  });
  const std::string pieces = std::to_string(plan.pieces().size()) + " pieces";
  if (first)
    bench::figure("suggestion, first proposal", locks, first->wall_ms, 0, "ms", pieces + "; processor " + numberText(first->cpu_ms, 0) + " ms");
  bench::figure("suggestion, all", locks, all.wall_ms, 0, "ms",
                pieces + ", " + std::to_string(found.size()) + " proposals; processor " + numberText(all.cpu_ms, 0) + " ms");
  for (const advise::Proposal& p : found) {
    const auto both = [&](double before, double after, int decimals) {
      return numberText(before, decimals) + " > " + numberText(after, decimals);
    };
    const advise::Standing &b = p.before, &a = p.after;
    bench::figure("suggestion, " + advise::codeName(p.manner), locks, a.miss_levels, 2, "levels",
                  "miss " + both(b.miss_levels, a.miss_levels, 2) + ", whole " + both(b.readings.whole.level, a.readings.whole.level, 2) +
                      ", light block cm2 " + both(b.lightBlock_cm2, a.lightBlock_cm2, 1) + ", dark block cm2 " +
                      both(b.darkBlock_cm2, a.darkBlock_cm2, 1) + ", pieces " + both(b.effort.pieces, a.effort.pieces, 0) + ", foils " +
                      both(b.effort.foils, a.effort.foils, 0) + ", min " + both(b.effort.minutes, a.effort.minutes, 0));
  }
  return 0;
}
