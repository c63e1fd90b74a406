#include "app/command/target_output.h"

#include <cmath>

#include "engine/base/number_text.h"
#include "engine/look/target_check.h"
#include "engine/plan/plan_words.h"

namespace combdraft::command {
namespace {

using Found = std::optional<look::TargetCheck>;

// Calls `each` with region, target and check, in the order of the regions.
template <class Each>
void forEach(const Targets& targets, const look::Readings& readings, double tolerance_levels, Each each) {
  const auto regions = plan::targetRegions();
  for (std::size_t i = 0; i < regions.size(); ++i)
    if (const auto target = targets.find(std::string(regions[i])); target != targets.end())
      each(regions[i], target->second, look::checkTarget(target->second, readings, i, tolerance_levels));
}

std::string joined(const std::vector<std::string>& parts) {
  std::string text;
  for (const std::string& part : parts) text += (text.empty() ? "" : ", ") + part;
  return text;
}

std::string wanted(const plan::Target& target) {
  std::vector<std::string> parts;
  if (target.level) parts.push_back("level " + numberText(*target.level));
  if (target.contrast) parts.emplace_back(plan::wordOf(*target.contrast));
  if (target.brightest) parts.push_back("not lighter than " + numberText(*target.brightest));
  if (target.darkest) parts.push_back("not darker than " + numberText(*target.darkest));
  return joined(parts);
}

std::string met(const Found& check) {
  if (!check) return "not seen";
  std::vector<std::string> parts;
  const auto levels = [](double by) { return numberText(std::abs(by), 1); };
  if (check->level)
    parts.push_back(levels(*check->level) + (*check->level > 0 ? " too light" : " too dark"));
  if (check->contrast) parts.emplace_back("another contrast");
  if (check->brightest) parts.push_back("lightest " + levels(*check->brightest) + " over");
  if (check->darkest) parts.push_back("darkest " + levels(*check->darkest) + " under");
  return parts.empty() ? "met" : "missed: " + joined(parts);
}

}  // namespace

std::string targetLines(const Targets& targets, const look::Readings& readings, double tolerance_levels) {
  std::string text;
  forEach(targets, readings, tolerance_levels, [&](std::string_view region, const plan::Target& target, const Found& check) {
    if (const std::string what = wanted(target); !what.empty())
      text += "  " + std::string(region) + ": " + what + "; " + met(check) + "\n";
  });
  return text.empty() ? text : "\naims\n" + text;
}

void targetJson(JsonOut& out, const Targets& targets, const look::Readings& readings,
                double tolerance_levels) {
  out.beginList();
  forEach(targets, readings, tolerance_levels, [&](std::string_view region, const plan::Target& target, const Found& check) {
    const auto number = [&](const char* name, const std::optional<double>& value) {
      out.key(name);
      out.number(value, 3);
    };
    out.beginObject();
    out.key("region");
    out.text(region);
    number("level", target.level);
    out.key("contrast");
    target.contrast ? out.text(plan::wordOf(*target.contrast)) : out.null();
    number("brightest", target.brightest);
    number("darkest", target.darkest);
    out.key("met");
    check ? out.boolean(!check->missed()) : out.null();
    number("level_off", check ? check->level : std::nullopt);
    number("brightest_off", check ? check->brightest : std::nullopt);
    number("darkest_off", check ? check->darkest : std::nullopt);
    out.key("contrast_off");
    check ? out.boolean(check->contrast) : out.null();
    out.endObject();
  });
  out.endList();
}

}  // namespace combdraft::command
