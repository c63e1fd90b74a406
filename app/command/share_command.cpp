#include <iostream>
#include <random>

#include "app/command/commands.h"
#include "engine/plan/plan_file.h"
#include "engine/plan/share.h"

namespace combdraft::command {

Outcome runShare(const ShareCommand& command) {
  plan::Disk disk;
  // A file that is there would stay beside the copy as its previous version.
  if (disk.kindOf(command.out) != plan::FileKind::Missing)
    return complain(Error{ErrorCode::FileUnwritable, {}, {"a file of that name is there", "a new name"}, command.out});
  const Result<plan::Plan> plan = plan::loadPlan(command.plan);
  if (!plan) return complain(plan.error());
  std::random_device random;
  const std::uint64_t number = (std::uint64_t{random()} << 32) | random();
  if (const Result<void> saved = plan::savePlan(command.out, plan::sharedCopy(*plan, number)); !saved) return complain(saved.error());
  std::cout << command.out << ": a copy without client data, notes, photos, agreed picture, visits and log. Head and hair with their history, formulas, "
            << "handout texts and the names of choices, sections and pieces go along: look through them before you send it. Its title goes along: "
            << plan->info().title << '\n';
  return Outcome::Fine;
}

}  // namespace combdraft::command
