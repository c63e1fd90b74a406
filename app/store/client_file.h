#pragma once
// What is written down about one client: values only. It stands apart from plans,
// in a folder that only its user can open (client_folder.h); a plan knows nothing
// of it but a random number. All texts are the user's own words.
#include <QDate>
#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "engine/plan/plan.h"
#include "engine/plan/plan_words.h"

namespace combdraft::store {

using plan::Extra;

/// What the client agreed to. Health answers and photos are kept only with it.
struct Consent {
  std::string purpose;
  std::string date;  ///< ISO
  Extra extra{};
  bool operator==(const Consent&) const = default;
};

/// Unknown: asked, and the client does not know; it is looked at as if it were a yes.
enum class Answer { NotAsked, No, Yes, Unknown };
/// Unsure: looked at, and the colourist cannot tell.
enum class ScalpFound { NotLooked, Nothing, Something, Unsure };

struct Wishes {
  std::string wanted, notWanted, howWorn, upkeep, budget, visits;
  Extra extra{};
  bool operator==(const Wishes&) const = default;
};

/// What the hair has been through.
struct HairHistory {
  Answer dye = Answer::NotAsked, henna = Answer::NotAsked, metallic = Answer::NotAsked, boxColour = Answer::NotAsked;
  std::string lastLightening, words;
  Extra extra{};
  bool operator==(const HairHistory&) const = default;
};

struct Health {
  Answer ageReached = Answer::NotAsked;  ///< the age that label, local rules and insurer ask for
  Answer reacted = Answer::NotAsked;     ///< to colour, lightener, a temporary black tattoo, before
  std::string reactions;
  ScalpFound scalp = ScalpFound::NotLooked;
  std::string scalpWords;
  std::string asked;  ///< ISO date of the answers
  Extra extra{};
  bool operator==(const Health&) const = default;
};

enum class TestKind { Skin, Strand, Elasticity, Porosity, Metal, Other };
inline constexpr std::size_t kTestKinds = 6;

struct ClientTest {
  TestKind kind = TestKind::Skin;
  std::string date;    ///< when it was made; ISO, "" = not yet
  std::string result;  ///< in the user's words
  std::string due;     ///< when one is due, as typed; "" = by the user's policy
  Extra extra{};
  bool operator==(const ClientTest&) const = default;
};

enum class PhotoOf { Wanted, NotWanted, Today, Result };
struct ClientPhoto {
  std::string file;  ///< its name in the client's folder
  PhotoOf of = PhotoOf::Wanted;
  std::string words;
  std::string date;  ///< ISO, when it was added
  Extra extra{};
  bool operator==(const ClientPhoto&) const = default;
};

/// What one choice of a plan would cost, as typed.
struct Offer {
  std::uint64_t plan = 1;  ///< the plan's number
  plan::ItemId choice;
  std::string minutes, price, visits;
  Extra extra{};
  bool operator==(const Offer&) const = default;
};

struct Visit {
  std::string date;          ///< ISO
  std::string title;         ///< of the plan
  std::uint64_t number = 1;  ///< of the plan
  std::string words;
  Extra extra{};
  bool operator==(const Visit&) const = default;
};

struct ClientFile {
  std::uint64_t number = 1;  ///< of the first plan; names the folder
  std::string begun;         ///< ISO date
  std::string kept;          ///< ISO date of the last decision to keep it; "" = none
  std::string name, contact; ///< a first name or mark of the user's own; only if typed
  std::optional<Consent> consent;
  Wishes wishes;
  HairHistory history;
  Health health;
  std::vector<ClientTest> tests;
  std::vector<ClientPhoto> photos;
  std::vector<Offer> offers;
  std::vector<Visit> visits;
  std::string notes;
  Extra extra{};
  bool operator==(const ClientFile&) const = default;
};

/// Both a purpose and a date.
bool hasConsent(const ClientFile& file);
/// Without what may only be kept with consent: health answers, tests and photos.
ClientFile withoutConsent(const ClientFile& file);
/// Nothing typed yet: no file needs to be there.
bool isEmpty(const ClientFile& file);
/// The offer for a choice of a plan, or null.
const Offer* findOffer(const ClientFile& file, std::uint64_t plan, const plan::ItemId& choice);
/// The same, made when it is missing.
Offer& offerFor(ClientFile& file, std::uint64_t plan, const plan::ItemId& choice);

/// What the user decided for all clients: nothing is preset.
struct ClientPolicy {
  int keep_months = 0;                       ///< 0 = no limit of one's own
  std::array<int, kTestKinds> test_months{}; ///< how long a test counts; 0 = not decided
  bool operator==(const ClientPolicy&) const = default;
};
inline constexpr int kMostMonths = 600;

/// The date from which on a test is due again: as typed, or by the policy.
/// Invalid = nobody decided.
QDate dueOn(const ClientTest& test, const ClientPolicy& policy);
/// The last day that anything happened: visits, consent, the decision to keep it.
QDate lastOccasion(const ClientFile& file);
/// Whether the policy's months have passed since then. False without a policy.
bool isOverKept(const ClientFile& file, const ClientPolicy& policy, const QDate& today);

}  // namespace combdraft::store

namespace combdraft::plan {
template <> std::span<const WordEntry<store::Answer>> words<store::Answer>();
template <> std::span<const WordEntry<store::ScalpFound>> words<store::ScalpFound>();
template <> std::span<const WordEntry<store::TestKind>> words<store::TestKind>();
template <> std::span<const WordEntry<store::PhotoOf>> words<store::PhotoOf>();
}  // namespace combdraft::plan
