// A head, hair-shape or worn change: everything that is traced and rastered
// anew, to readings of five views; and the memory it takes.
//
//   bench_worn PLAN LOCKS [PIXEL_MM]
#include "tests/bench/bench.h"

using namespace combdraft;

int main(int argc, char** argv) {
  if (argc < 3) bench::giveUp("usage: bench_worn PLAN LOCKS [PIXEL_MM]");
  const plan::Plan plan = bench::planFrom(argv[1]);
  const int locks = static_cast<int>(bench::argument(argc, argv, 2, 30000));
  const double pixel_mm = bench::argument(argc, argv, 3, 1);
  const std::string at = ", " + numberText(pixel_mm) + " mm";

  look::LookEngine engine(locks, pixel_mm);
  const auto run = [&](const std::string& what, const look::LookSettings& settings,
                       const std::vector<look::PictureRequest>& pictures) {
    const bench::Times t = bench::timed([&] { bench::lookAt(engine, plan, settings, pictures); });
    bench::figure(what, locks, t.wall_ms / 1e3, 2, "s", "processor " + numberText(t.cpu_ms / 1e3, 2) + " s");
  };
  look::LookSettings moved, tied;
  moved.worn.partShift_mm = 15;
  tied.worn.way = hair::WornWay::TiedBack;
  run("first look of a head" + at, {}, {});
  run("part moved" + at, moved, {});
  run("tied back" + at, tied, {});
  run("the shown view's picture, 0.5 mm", tied, {{head::ViewName::Back, 0.5}});
  bench::figure("peak memory" + at, locks, bench::peakMemory_mb(), 0, "MB");
  return 0;
}
