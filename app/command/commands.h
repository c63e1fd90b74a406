#pragma once
// The commands behind the parser: each takes checked options and returns an
// exit code.
#include <optional>
#include <string>
#include <vector>

#include "app/command/options.h"
#include "app/command/outcome.h"
#include "app/paint/page_layer.h"
#include "engine/head/sheet_view.h"
#include "engine/work/work_list.h"

namespace combdraft::command {

enum class OutputForm { Table, Json };
enum class RangeWanted { Yes, No };
enum class AdviceWanted { Yes, No };

struct LookCommand {
  std::vector<std::string> plans;
  LookOptions look;
  OutputForm form = OutputForm::Table;
  RangeWanted range = RangeWanted::Yes;
  AdviceWanted advice = AdviceWanted::Yes;
};
Outcome runLook(const LookCommand& command);

struct CheckCommand {
  std::vector<std::string> plans;
  OutputForm form = OutputForm::Table;
};
Outcome runCheck(const CheckCommand& command);

struct UpgradeCommand {
  std::string plan, out;
};
/// Writes a plan of any format in the newest one.
Outcome runUpgrade(const UpgradeCommand& command);

struct ShareCommand {
  std::string plan, out;
};
/// Writes a copy to hand on, under a name that nothing has.
Outcome runShare(const ShareCommand& command);

struct DrawCommand {
  std::vector<std::string> plans;
  LookOptions look;
  std::vector<head::ViewName> views{head::kAllViews.begin(), head::kAllViews.end()};
  paint::PageLayer layer = paint::PageLayer::Both;
  paint::Ground ground = paint::Ground::Paper;
  std::string out;      ///< {plan} and {view} are filled in
  double width_px = 0;  ///< 0 = by dpi
  double dpi = 200;
};
Outcome runDraw(const DrawCommand& command, int& argc, char** argv);

struct WorkCommand {
  std::string plan, choice;
  work::WorkSettings settings;
  double pairs = 1, locks = 40000;
  OutputForm form = OutputForm::Table;
};
/// Order, foils, bowls, minutes and what needs a look.
Outcome runWork(const WorkCommand& command);

enum class DocumentWanted { Handout, RecordCard, ClientPage };

struct HandoutCommand {
  std::string plan, out, choice;
  DocumentWanted document = DocumentWanted::Handout;
  std::vector<plan::HandoutPart> parts;  ///< empty = as the plan has it
  std::optional<plan::PaperSize> paper;  ///< nothing = as the plan has it
  std::optional<plan::PageTurn> turn;
  std::string aftercare, nextVisit, call;  ///< of the client's page
  double dpi = 200, locks = 30000;
};
Outcome runHandout(const HandoutCommand& command, int& argc, char** argv);

}  // namespace combdraft::command
