#pragma once
// Options that the commands share, and how numbers and words are read from
// them.
#include <CLI/CLI.hpp>
#include <memory>
#include <string>
#include <vector>

#include "engine/look/look.h"

namespace combdraft::command {

/// How the look is asked for; words and numbers already checked by the parser.
struct LookOptions {
  look::LookSettings settings;
  std::string choice;  ///< a name such as "B"; "" = the plan's active choice
  double locks = 30000;
};

/// A number option with a range, read without regard to the locale.
CLI::Option* addNumber(CLI::App& app, const std::string& name, double& value, double low,
                       double high, const std::string& unit, const std::string& what);

/// --worn, --part-shift, --weeks, --light, --lift, --toner, --today, --wet,
/// --distance, --choice, --locks, --raised.
void addLookOptions(CLI::App& app, LookOptions& options);

/// The settings with the choice's id filled in; error UnknownName when the
/// plan has no choice of that name.
Result<look::LookSettings> settingsFor(const plan::Plan& plan, const LookOptions& options,
                                       const std::string& file);

std::string_view liftWord(look::Lift lift);
std::string_view tonerWord(look::Toner toner);

/// The name of the choice that is looked at.
std::string choiceName(const plan::Plan& plan, const look::LookSettings& settings);

}  // namespace combdraft::command
