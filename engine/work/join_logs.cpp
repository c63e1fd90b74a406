#include "engine/work/join_logs.h"

#include <algorithm>
#include <optional>

namespace combdraft::work {
namespace {

bool isSameTap(const LogEvent& a, const LogEvent& b) {
  return a.run == b.run && a.utc_ms == b.utc_ms && a.tap == b.tap && a.pieces == b.pieces;
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
    same->takenBack = same->takenBack || event.takenBack;
    isInB[*inA.back()] = true;
  }
  AppointmentLog both{{}, a.extra};
  std::size_t next = 0;  // of a
  for (std::size_t i = 0; i < b.events.size(); ++i) {
    const auto comesBefore = [&] { return inA[i] ? next <= *inA[i] : !isInB[next] && ofA[next].utc_ms <= b.events[i].utc_ms; };
    while (next < ofA.size() && comesBefore()) both.events.push_back(std::move(ofA[next++]));
    if (!inA[i]) both.events.push_back(b.events[i]);
  }
  while (next < ofA.size()) both.events.push_back(std::move(ofA[next++]));
  for (std::size_t i = 0; i < both.events.size(); ++i) both.events[i].number = static_cast<int>(i) + 1;
  both.extra.insert(b.extra.begin(), b.extra.end());
  return both;
}

}  // namespace combdraft::work
