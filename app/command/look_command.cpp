#include <iostream>

#include "app/command/commands.h"
#include "app/command/look_output.h"
#include "app/command/progress.h"
#include "engine/look/look_range.h"
#include "engine/plan/plan_file.h"

namespace combdraft::command {
namespace {

// A block is known well enough with these: it is blurred over ribbons' widths.
constexpr int kMostAdviceLocks = 30000;

/// What is kept from plan to plan: one head traced serves all of its plans.
struct Kept {
  look::LookEngine engine;
  look::LookRange range;
  advise::Advisor advisor;
};

Result<LookReport> lookAt(const std::string& file, const LookCommand& command, Kept& kept) {
  const Result<plan::Plan> plan = plan::loadPlan(file);
  if (!plan) return plan.error();
  const Result<look::LookSettings> settings = settingsFor(*plan, command.look, file);
  if (!settings) return settings.error();
  const int locks = static_cast<int>(command.look.locks);
  const Progress progress(file + ": working out the hair, " + std::to_string(locks) + " locks");
  const Result<look::LookFrame> frame = kept.engine.update(*plan, *settings, {}, {});
  if (!frame) {
    Error error = frame.error();
    error.file = file;
    return error;
  }
  look::Readings readings = *frame->readings;
  if (command.range == RangeWanted::Yes) {
    auto ranged = kept.range.apply(*plan, *settings, std::move(readings), {});
    if (!ranged) return ranged.error();
    readings = std::move(ranged).value();
  }
  std::optional<advise::Advice> advice;
  if (command.advice == AdviceWanted::Yes) {
    const Progress looking(file + ": looking where the hair opens");
    auto found = kept.advisor.update(*plan, *settings, readings, advise::Remedies::Try, {});
    if (!found) return found.error();
    advice = std::move(found).value();
    if (command.range == RangeWanted::Yes) {
      auto ranged = kept.advisor.withRanges(*plan, *settings, std::move(*advice), {});
      if (!ranged) return ranged.error();
      advice = std::move(ranged).value();
    }
  }
  const plan::ItemId& choice =
      settings->choice.empty() ? plan->info().activeChoice : settings->choice;
  const auto* chosen = plan->find<plan::Choice>(choice);
  return LookReport{file, plan->info().title, choiceName(*plan, *settings), *settings,
                    std::move(readings), chosen ? chosen->targets : Targets{}, plan->info().assumptions, std::move(advice)};
}

}  // namespace

Outcome runLook(const LookCommand& command) {
  Outcome outcome = Outcome::Fine;
  JsonOut json;
  Kept kept{look::LookEngine(static_cast<int>(command.look.locks)), {},
            advise::Advisor(std::min(static_cast<int>(command.look.locks), kMostAdviceLocks))};
  const bool list = command.plans.size() > 1;
  if (list) json.beginList();
  for (const std::string& file : command.plans) {
    const Result<LookReport> report = lookAt(file, command, kept);
    if (!report) {
      outcome = worse(outcome, complain(report.error()));
      continue;
    }
    if (command.form == OutputForm::Json)
      lookJson(json, *report);
    else
      std::cout << lookTable(*report) << (list ? "\n" : "") << std::flush;
  }
  if (list) json.endList();
  if (command.form == OutputForm::Json && !json.str().empty()) std::cout << json.str() << '\n';
  return outcome;
}

}  // namespace combdraft::command
