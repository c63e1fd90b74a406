#pragma once
// Looks at a plan as it will be worn (openings, tied back, a layer raised) and
// says what needs a look and what might be done. Keeps what it traced.
//
//   Advisor advisor(10000);
//   auto advice = advisor.update(plan, settings, *frame.readings, stop);
//   auto trial = advisor.tried(plan, settings, advice->findings[0].remedies[0], stop);
#include <functional>

#include "engine/advise/findings.h"

namespace combdraft::advise {

/// Whether remedies are tried as well: each costs an edit of all openings.
enum class Remedies { Leave, Try };

struct Advice {
  look::Readings down;       ///< as given
  look::Readings tiedBack;   ///< without contrast
  look::Readings raised;     ///< without contrast
  look::Openings openings;
  std::vector<look::Regrowth> regrowth;  ///< down, tied back
  std::vector<look::Stripes> stripes;    ///< per region, worn down
  std::vector<Finding> findings;  ///< worst first
  bool complete = false;          ///< false: not all was looked at yet; what is not listed may come
};

/// A remedy on trial; the plan itself is not touched.
struct Trial {
  plan::ChangeSet edit;   ///< what keeping it would do; empty = a rule forbids it
  Advice before, after;   ///< both from the advisor's own locks, so that they compare
};

/// Used by one thread at a time.
class Advisor {
 public:
  /// `locks`: 2,000 to 200,000; 10,000 know the change made by an edit to 0.3 L*.
  explicit Advisor(int locks);
  ~Advisor();
  Advisor(Advisor&&) noexcept;
  Advisor& operator=(Advisor&&) noexcept;

  /// Seconds for a new head, tenths of a second after an edit. `early`, when
  /// given, gets the advice as soon as it stands, before remedies were tried.
  /// Errors: Cancelled (what was traced is kept), OutOfRange (measures).
  Result<Advice> update(const plan::Plan& plan, const look::LookSettings& settings,
                        const look::Readings& down, Remedies remedies, std::stop_token stop,
                        const std::function<void(const Advice&)>& early = {});

  /// The same advice with the ranges of the largest blocks. Some ten seconds for a
  /// new head or another opening, then tenths of a second. Errors: as update.
  Result<Advice> withRanges(const plan::Plan& plan, const look::LookSettings& settings, Advice advice,
                            std::stop_token stop);

  /// What a remedy would do: readings, openings and findings before and after.
  Result<Trial> tried(const plan::Plan& plan, const look::LookSettings& settings,
                      const Remedy& remedy, std::stop_token stop);

 private:
  struct State;
  std::unique_ptr<State> state_;
};

}  // namespace combdraft::advise
