// `handout`: the printed lesson, the record card or the client's page.
#include <QGuiApplication>
#include <algorithm>

#include "app/command/commands.h"
#include "app/command/headless.h"
#include "app/command/progress.h"
#include "app/handout/document.h"
#include "app/handout/page_files.h"
#include "engine/plan/plan_file.h"

namespace combdraft::command {
namespace {

// The parts that were asked for, in that order; all others are hidden.
void takeParts(plan::Handout& handout, const std::vector<plan::HandoutPart>& parts) {
  if (parts.empty()) return;
  handout.parts.clear();
  for (const plan::HandoutPart part : parts) handout.parts.push_back({part, false, {}});
  for (const plan::HandoutPart part : handout::kHandoutParts)
    if (std::find(parts.begin(), parts.end(), part) == parts.end()) handout.parts.push_back({part, true, {}});
}

}  // namespace

Outcome runHandout(const HandoutCommand& command, int& argc, char** argv) {
  const QString out = QString::fromStdString(command.out);
  if (!paint::formatOf(out)) {
    complain("--out " + command.out + ": a file ending in .pdf, .svg or .png is needed");
    return Outcome::WrongUsage;
  }
  const Result<plan::Plan> plan = plan::loadPlan(command.plan);
  if (!plan) return complain(plan.error());
  handout::Request request = handout::requestFor(
      command.document == DocumentWanted::RecordCard   ? handout::DocumentKind::RecordCard
      : command.document == DocumentWanted::ClientPage ? handout::DocumentKind::ClientPage
                                                       : handout::DocumentKind::Handout,
      *plan);
  LookOptions look;
  look.choice = command.choice;
  const Result<look::LookSettings> settings = settingsFor(*plan, look, command.plan);
  if (!settings) return complain(settings.error());
  request.choice = settings->choice;
  if (command.paper) request.handout.paper = *command.paper;
  if (command.turn) request.handout.turn = *command.turn;
  takeParts(request.handout, command.parts);
  request.client = {QString::fromStdString(command.aftercare).replace(QStringLiteral("\\n"), QStringLiteral("\n")),
                    QString::fromStdString(command.nextVisit), QString::fromStdString(command.call)};

  const std::unique_ptr<QGuiApplication> app = lettersWithoutDisplay(argc, argv);
  handout::Looks looks;
  if (handout::looksNeeded(request).any()) {
    const Progress progress(command.plan + ": drawing the hair, " + std::to_string(static_cast<int>(command.locks)) + " locks");
    handout::LookMaker maker(static_cast<int>(command.locks));
    Result<handout::Looks> made = maker.make(request, handout::kPrintPixel_mm, {}, {});
    if (!made) {
      Error error = made.error();
      error.file = command.plan;
      return complain(error);
    }
    looks = std::move(made).value();
  }
  const Progress progress(command.plan + ": setting the pages");
  const Result<std::vector<paint::Page>> pages = handout::makePages(request, looks, {}, {});
  if (!pages) return complain(pages.error());
  const handout::FilesThere there = handout::filesThere(out, static_cast<int>(pages->size()));
  const Result<void> written = handout::writePages(*pages, {out, pages->front().title, command.dpi}, {}, {});
  if (!written) return complain(written.error());
  if (!there.older.isEmpty())
    complain(command.out + ": " + handout::firstToLast(there.older) + (there.older.size() == 1 ? ", a page of an older set, stays" : ", pages of an older set, stay") +
             "; remove what is no longer wanted");
  return Outcome::Fine;
}

}  // namespace combdraft::command
