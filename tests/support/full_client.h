#pragma once
// A client with every field set to a word of its own, so that one that is left behind
// anywhere is found by a search.
#include "app/store/client_file.h"

namespace combdraft::tests {

inline store::ClientFile fullClient(std::uint64_t number) {
  using namespace store;
  ClientFile f;
  f.number = number;
  f.begun = "2026-01-02";
  f.kept = "2026-01-03";
  f.name = "Markername";
  f.contact = "Markercontact\nsecond line";
  f.consent = Consent{"Markerpurpose", "2026-01-04", {{"later", "{\"a\": 1}"}}};
  f.wishes = {"Markerwanted", "Markernotwanted", "Markerworn", "Markerupkeep", "Markerbudget", "Markertwo visits", {}};
  f.history = {Answer::Yes, Answer::No, Answer::Yes, Answer::No, "Markerlast", "Markerhistory", {}};
  f.health = {Answer::Yes, Answer::Yes, "Markerreaction", ScalpFound::Something, "Markerscalp", "2026-01-05", {}};
  f.tests = {{TestKind::Skin, "2026-01-06", "Markerresult", "2026-07-06", {}}, {TestKind::Metal, "", "", "", {}}};
  f.offers = {{number, "choice-1", "Marker150", "Markerprice", "Markeronce", {}}};
  f.visits = {{"2026-01-07", "Soft root", number, "Markervisit", {}}};
  f.notes = "Markernotes";
  f.extra = {{"newer", "[1, 2]"}};
  return f;
}

}  // namespace combdraft::tests
