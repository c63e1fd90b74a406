#include "app/command/options.h"

#include <cmath>

#include "engine/base/number_text.h"

namespace combdraft::command {
namespace {

// An option that takes one of a list of words and hands on its value.
template <class E, std::size_t N, class WordOf>
void addWord(CLI::App& app, const std::string& name, E& value, const std::array<E, N>& all,
             WordOf wordOf, const std::string& what) {
  std::string known;
  for (const E& one : all) known += (known.empty() ? "" : ", ") + std::string(wordOf(one));
  app.add_option_function<std::string>(
         name,
         [&value, all, wordOf, known, name](const std::string& text) {
           for (const E& one : all)
             if (wordOf(one) == text) {
               value = one;
               return;
             }
           throw CLI::ValidationError(name, "unknown name \"" + text + "\"; known: " + known);
         },
         what + ": " + known)
      ->type_name("NAME");
}

}  // namespace

std::string_view liftWord(look::Lift lift) {
  switch (lift) {
    case look::Lift::Less: return "less";
    case look::Lift::AsPlanned: return "as-planned";
    case look::Lift::More: return "more";
  }
  return "";
}

std::string_view tonerWord(look::Toner toner) {
  return toner == look::Toner::Before ? "before" : "after";
}

CLI::Option* addNumber(CLI::App& app, const std::string& name, double& value, double low,
                       double high, const std::string& unit, const std::string& what) {
  const auto plain = [](double v) {
    return v == std::floor(v) ? numberText(v, 0) : numberText(v);
  };
  const std::string range = plain(low) + " to " + plain(high) +
                            (unit.empty() ? std::string() : " " + unit);
  return app
      .add_option_function<std::string>(
          name,
          [&value, low, high, range, name](const std::string& text) {
            const auto number = parseNumber(text);
            if (!number || *number < low || *number > high)
              throw CLI::ValidationError(name, "found \"" + text + "\", allowed is " + range);
            value = *number;
          },
          what + " (" + range + ")")
      ->type_name(unit.empty() ? "N" : unit);
}

void addLookOptions(CLI::App& app, LookOptions& options) {
  look::LookSettings& s = options.settings;
  addWord(app, "--worn", s.worn.way, hair::kWornWays, hair::wornWord, "how the hair is worn");
  addNumber(app, "--part-shift", s.worn.partShift_mm, -60, 60, "mm",
            "the part moved, + toward the client's right");
  addNumber(app, "--raised", s.worn.raised_mm, hair::kLeastRaised_mm, hair::kMostRaised_mm, "mm",
            "layer-raised: where the parting crosses the back, below the vertex");
  addNumber(app, "--weeks", s.weeks, 0, 26, "weeks", "growth since the appointment");
  addWord(app, "--light", s.light, colour::kAllLights, colour::lightWord, "the light");
  addWord(app, "--lift", s.lift,
          std::array{look::Lift::Less, look::Lift::AsPlanned, look::Lift::More}, liftWord,
          "how far the hair lightens within its span");
  addWord(app, "--toner", s.toner, std::array{look::Toner::Before, look::Toner::After}, tonerWord,
          "before or after the toner");
  app.add_flag_callback(
      "--today", [&s] { s.subject = look::Subject::Today; }, "the hair as it came in");
  app.add_flag_callback(
      "--wet", [&s] { s.moisture = look::Moisture::Wet; }, "the hair wet");
  addNumber(app, "--distance", s.distance_m, 0.3, 10, "m", "viewing distance, for contrast");
  app.add_option("--choice", options.choice, "choice of the plan; its active one when not given")
      ->type_name("NAME");
  addNumber(app, "--locks", options.locks, 2000, 200000, "", "locks of hair to compute with");
}

Result<look::LookSettings> settingsFor(const plan::Plan& plan, const LookOptions& options,
                                       const std::string& file) {
  look::LookSettings settings = options.settings;
  if (options.choice.empty()) return settings;
  std::string known;
  for (const auto& [id, item] : plan.items()) {
    const auto* choice = std::get_if<plan::Choice>(item.get());
    if (!choice) continue;
    if (choice->name == options.choice || id == options.choice) {
      settings.choice = id;
      return settings;
    }
    known += (known.empty() ? "" : ", ") + choice->name;
  }
  return Error{ErrorCode::UnknownName, "--choice", {options.choice, known}, file};
}

std::string choiceName(const plan::Plan& plan, const look::LookSettings& settings) {
  const plan::ItemId& id = settings.choice.empty() ? plan.info().activeChoice : settings.choice;
  const auto* choice = plan.find<plan::Choice>(id);
  return choice ? choice->name : id;
}

}  // namespace combdraft::command
