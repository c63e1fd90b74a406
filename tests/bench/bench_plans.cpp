// Many plans of one head, each with another placement.
//
//   bench_plans PLAN COUNT [LOCKS]          through one engine
//   bench_plans PLAN COUNT LOCKS FOLDER     writes the plans for the command line
#include <fstream>

#include "engine/plan/json_writer.h"
#include "tests/bench/bench.h"

using namespace combdraft;

int main(int argc, char** argv) {
  if (argc < 3) bench::giveUp("usage: bench_plans PLAN COUNT [LOCKS [FOLDER]]");
  const plan::Plan plan = bench::planFrom(argv[1]);
  const int count = static_cast<int>(bench::argument(argc, argv, 2, 1000));
  const int locks = static_cast<int>(bench::argument(argc, argv, 3, 30000));
  const auto variant = [&](int k) {
    plan::Plan changed = plan;
    int n = 0;
    for (const auto& [id, piece] : plan.pieces()) {
      plan::Piece other = *piece;
      other.thickness_mm *= 0.7 + 0.1 * ((k + n) % 7);
      other.start_mm += (k * 7 + n * 3) % 25;
      changed.put(id, other);
      ++n;
    }
    return changed;
  };

  if (argc > 4) {
    for (int k = 0; k < count; ++k) {
      std::ofstream file(std::string(argv[4]) + "/plan-" + std::to_string(k) + ".json", std::ios::binary);
      file << plan::writePlan(variant(k));
      if (!file) bench::giveUp(std::string(argv[4]) + ": cannot be written");
    }
    return 0;
  }
  look::LookEngine engine(locks);
  const bench::Times t = bench::timed([&] {
    for (int k = 0; k < count; ++k) bench::lookAt(engine, variant(k), {});
  });
  bench::figure("plans of one head, engine", locks, count / (t.wall_ms / 60e3), 0, "a minute",
                numberText(count, 0) + " plans, processor " + numberText(t.cpu_ms / 1e3, 1) + " s");
  return 0;
}
