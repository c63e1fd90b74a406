#pragma once
// Every number of our own that a reading rests on: one table, with its range
// and where it comes from. Shown to the user in one place; a plan may override
// any of them.
#include <map>
#include <span>
#include <string>
#include <string_view>

namespace combdraft {

enum class Provenance { Published, CommonPractice, OwnAssumption, Typed };
std::string_view provenanceWord(Provenance p);

/// What an assumption moves.
enum class Moves {
  Fall,       ///< how hair lies: the hair is traced anew
  Colour,     ///< what colour it is
  Judgement,  ///< where a line is drawn between fine and needs a look; no reading moves
};

struct Assumption {
  std::string_view name;   ///< stable key: "fall.partReach_mm"
  double value, low, high;
  std::string_view unit;
  Provenance from;
  std::string_view what;   ///< one plain sentence
  Moves moves;
};

std::span<const Assumption> assumptionTable();

/// Values in force: the defaults with a plan's overrides.
class Assumptions {
 public:
  Assumptions() = default;
  explicit Assumptions(const std::map<std::string, double>& overrides);
  /// Broken expectation on an unknown name.
  double operator[](std::string_view name) const;
  Assumptions with(std::string_view name, double value) const;

 private:
  std::map<std::string, double, std::less<>> overrides_;
};

}  // namespace combdraft
