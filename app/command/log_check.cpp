#include "app/command/log_check.h"

#include <algorithm>

#include "engine/base/number_text.h"
#include "engine/work/log_text.h"

namespace combdraft::command {
namespace {

using Kind = work::LogProblemKind;

// What stands in the file may be anything: one line of it, and not without end.
constexpr std::size_t kMostOfAnId = 40;
std::string onOneLine(std::string text) {
  for (char& c : text)
    if (static_cast<unsigned char>(c) < 0x20 || c == 0x7F) c = ' ';
  return text;
}

std::string fieldOf(Kind kind) {
  switch (kind) {
    case Kind::ClockSetBack:
    case Kind::TimeUnknown:
    case Kind::ClockJumped: return "utc_ms";
    case Kind::TimeOutOfOrder: return "at_s";
    case Kind::OutBeforePlaced:
    case Kind::PlacedTwice:
    case Kind::PieceUnknown: return "pieces";
    case Kind::BowlNotMixed: return "pieces";
  }
  return {};
}

std::string sentenceOf(const work::LogProblem& problem) {
  const std::string tap = "tap " + std::to_string(problem.event), piece = "\"" + problem.piece.substr(0, kMostOfAnId) + "\"",
                    seconds = numberText(problem.seconds, 1) + " s";
  switch (problem.kind) {
    case Kind::ClockSetBack: return tap + " stands " + seconds + " before the tap above it; right would be a later time. Times on the hair are not shortened by it";
    case Kind::TimeUnknown:
      return tap + " stands " + seconds + " before the tap above it, which another run of the program made; right would be a later time. Times on the hair may be too short";
    case Kind::ClockJumped: return tap + ": wall clock and steady clock differ by " + seconds + "; right would be less than a minute. Times on the hair follow the steady clock";
    case Kind::TimeOutOfOrder: return tap + " has a time " + seconds + " before one above it; right would be a time that does not fall";
    case Kind::OutBeforePlaced: return tap + " takes " + piece + " out or rinses it, and no tap placed it; right would be a placed tap above it";
    case Kind::PlacedTwice: return tap + " places " + piece + ", which is placed already; right would be once, or a rinse between. Its time runs from the first";
    case Kind::BowlNotMixed: return tap + " places " + piece + ", and no bowl of its formula was tapped; right would be a bowl of it before";
    case Kind::PieceUnknown: return tap + " names " + piece + ", which the plan does not hold; right would be a piece of the plan";
  }
  return {};
}

// Numbers are the file's own and may come twice; the first that bears it is named.
std::string placeOf(const work::AppointmentLog& log, const work::LogProblem& problem) {
  const auto event = std::find_if(log.events.begin(), log.events.end(), [&](const work::LogEvent& e) { return e.number == problem.event; });
  if (event == log.events.end()) return "/log/events";
  return "/log/events/" + std::to_string(event - log.events.begin()) + "/" + fieldOf(problem.kind);
}

}  // namespace

std::vector<LogFinding> checkLog(const plan::Plan& plan) {
  const Result<work::AppointmentLog> log = work::readLog(plan.info().logJson);
  if (!log) {
    // Within the plan's file the log begins at "/log"; a line of its own text says nothing.
    const std::string& at = log.error().where;
    Error bare = log.error();
    bare.where.clear();
    const std::string where = at.empty() || at.front() != '/' ? "/log" : "/log" + at;
    return {{"log-" + codeName(bare.code), where, onOneLine("the appointment log cannot be read and is kept as it is: " + describe(bare)), {}}};
  }
  std::vector<LogFinding> findings;
  const std::vector<work::LogProblem> problems = work::problemsOf(plan, *log);
  for (const work::LogProblem& problem : problems) {
    LogFinding finding{"log-" + work::codeName(problem.kind), placeOf(*log, problem), onOneLine(sentenceOf(problem)), {}};
    if (!problem.piece.empty()) finding.items.push_back(problem.piece);
    findings.push_back(std::move(finding));
  }
  return findings;
}

}  // namespace combdraft::command
