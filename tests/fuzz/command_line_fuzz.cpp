// Any words as a command line: parsed or refused, never a crash, and what reaches
// a command is within its ranges. The commands themselves stand aside.
#include <cmath>
#include <cstdint>
#include <cstdlib>
#include <string>
#include <vector>

#include "app/command/command.h"
#include "app/command/commands.h"

namespace combdraft::command {
namespace {

void require(bool holds) {
  if (!holds) std::abort();
}

void requireLook(const LookOptions& look) {
  require(look.locks >= 2000 && look.locks <= 200000);
  require(std::abs(look.settings.worn.partShift_mm) <= 60);
  require(look.settings.weeks >= 0 && look.settings.weeks <= 26);
  require(look.settings.distance_m >= 0.3 && look.settings.distance_m <= 10);
  require(look.settings.worn.raised_mm >= 40 && look.settings.worn.raised_mm <= 220);
}

}  // namespace

Outcome runLook(const LookCommand& command) {
  require(!command.plans.empty());
  requireLook(command.look);
  return Outcome::Fine;
}
Outcome runCheck(const CheckCommand& command) {
  require(!command.plans.empty());
  return Outcome::Fine;
}
Outcome runUpgrade(const UpgradeCommand&) { return Outcome::Fine; }
Outcome runShare(const ShareCommand& command) {
  require(!command.plan.empty() && !command.out.empty());
  return Outcome::Fine;
}
Outcome runDraw(const DrawCommand& command, int&, char**) {
  require(!command.plans.empty() && !command.views.empty());
  requireLook(command.look);
  require(command.width_px == 0 || (command.width_px >= 50 && command.width_px <= 20000));
  require(command.dpi >= 20 && command.dpi <= 1200);
  return Outcome::Fine;
}
Outcome runWork(const WorkCommand& command) {
  require(!command.plan.empty());
  require(command.pairs >= 1 && command.pairs <= 2);
  require(command.locks >= 2000 && command.locks <= 200000);
  for (const double foil_mm : command.settings.foils_mm) require(foil_mm >= 10 && foil_mm <= 1000);
  if (command.settings.lookEvery_min)
    require(*command.settings.lookEvery_min > 0 && *command.settings.lookEvery_min <= 240);
  if (command.settings.smallestBowl_g)
    require(*command.settings.smallestBowl_g >= 1 && *command.settings.smallestBowl_g <= 1000);
  return Outcome::Fine;
}
Outcome runHandout(const HandoutCommand& command, int&, char**) {
  require(!command.plan.empty() && !command.out.empty());
  require(command.dpi >= 20 && command.dpi <= 1200);
  require(command.locks >= 2000 && command.locks <= 200000);
  for (std::size_t i = 0; i < command.parts.size(); ++i)  // each part once
    for (std::size_t k = 0; k < i; ++k) require(command.parts[i] != command.parts[k]);
  return Outcome::Fine;
}

}  // namespace combdraft::command

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  // Words are parted by line feeds.
  std::vector<std::string> words{"combdraft"};
  for (std::size_t i = 0, start = 0; i <= size; ++i)
    if (i == size || data[i] == '\n' || data[i] == 0) {
      words.emplace_back(reinterpret_cast<const char*>(data) + start, i - start);
      start = i + 1;
    }
  std::vector<char*> argv;
  for (std::string& word : words) argv.push_back(word.data());
  argv.push_back(nullptr);
  const int argc = static_cast<int>(words.size());
  if (!combdraft::command::isCommand(argc, argv.data())) return 0;
  const int code = combdraft::command::runCommand(argc, argv.data());
  if (code != 0 && code != 2) std::abort();
  return 0;
}
