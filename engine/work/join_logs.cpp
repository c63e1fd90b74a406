#include "engine/work/join_logs.h"

#include <algorithm>
#include <optional>

namespace combdraft::work {
namespace {

bool isSameTap(const LogEvent& a, const LogEvent& b) {
  return a.run == b.run && a.utc_ms == b.utc_ms && a.tap == b.tap && a.pieces == b.pieces;
}

// What the two do not agree on counts as is safer: product that may be on the hair is.
bool isTakenBack(const LogEvent& a, const LogEvent& b) {
  return a.tap == Tap::Placed ? a.takenBack && b.takenBack : a.takenBack || b.takenBack;
}

}  // namespace

AppointmentLog joined(const AppointmentLog& a, const AppointmentLog& b) {
  std::vector<LogEvent> ofA = a.events;
  std::vector<bool> isInB(ofA.size(), false);
  std::vector<std::optional<std::size_t>> inA;  // of each tap of b
  for (const LogEvent& event : b.events) {
    const auto same = std::find_if(ofA.begin(), ofA.end(), [&](const LogEvent& other) { return isSameTap(other, event); });
    inA.push_back(same == ofA.end() ? std::nullopt : std::optional(static_cast<std::size_t>(same - ofA.begin())));
    if (!inA.back()) continue;
    same->takenBack = isTakenBack(*same, event);
    isInB[*inA.back()] = true;
  }
  AppointmentLog both{{}, a.extra};
  // Both count from their first tap where it is the same one; the wall clock may have been set.
  const bool isOneCount = !inA.empty() && inA.front() == 0U;
  const auto isEarlier = [&](const LogEvent& one, const LogEvent& other) {
    return isOneCount ? one.at_s <= other.at_s : one.utc_ms <= other.utc_ms;
  };
  std::size_t next = 0;  // of a
  for (std::size_t i = 0; i < b.events.size(); ++i) {
    const auto comesBefore = [&] { return inA[i] ? next <= *inA[i] : !isInB[next] && isEarlier(ofA[next], b.events[i]); };
    while (next < ofA.size() && comesBefore()) both.events.push_back(std::move(ofA[next++]));
    if (!inA[i]) both.events.push_back(b.events[i]);
  }
  while (next < ofA.size()) both.events.push_back(std::move(ofA[next++]));
  for (std::size_t i = 0; i < both.events.size(); ++i) both.events[i].number = static_cast<int>(i) + 1;
  both.extra.insert(b.extra.begin(), b.extra.end());
  return both;
}

}  // namespace combdraft::work
