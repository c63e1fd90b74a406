#include "app/command/look_output.h"

#include <algorithm>
#include <vector>

#include "app/command/advice_output.h"
#include "app/command/options.h"
#include "app/paint/assumption_words.h"
#include "app/paint/reading_words.h"
#include "engine/base/number_text.h"
#include "engine/look/target_check.h"

namespace combdraft::command {
namespace {

std::size_t letters(const std::string& text) {  // UTF-8 code points
  return static_cast<std::size_t>(
      std::count_if(text.begin(), text.end(), [](char c) { return (c & 0xC0) != 0x80; }));
}

std::string padded(const std::string& text, std::size_t width, bool toTheRight) {
  const std::string space(width > letters(text) ? width - letters(text) : 0, ' ');
  return toTheRight ? space + text : text + space;
}

std::vector<std::string> row(const std::string& name, const std::optional<look::Reading>& r,
                             const look::Contrast& contrast, std::string warmth, bool greyMix) {
  if (!r) return {name, "", "", "", "", "", "", "not seen", ""};
  std::string range = "not worked out";
  if (r->rangeKnown) range = numberText(r->low, 1) + " to " + numberText(r->high, 1);
  std::string words(look::verdictWord(contrast.verdict));
  if (contrast.verdict == look::ContrastVerdict::TwoClearLevels)
    words += " (L* " + numberText(contrast.delta, 0) + " between them)";
  if (greyMix) warmth += warmth.empty() ? "reads grey" : ", reads grey";
  return {name,
          numberText(r->seen_mm2 / 100, 0),
          numberText(100 * r->skin_share, 0),
          numberText(r->lightness, 1),
          range,
          (paint::isGrey(*r) ? "light as " : "") + numberText(r->level, 1),
          numberText(100 * r->light_share, 0),
          words,
          warmth};
}

void reading(JsonOut& out, const std::optional<look::Reading>& r) {
  const auto field = [&](const char* name, double look::Reading::*value, int decimals) {
    out.key(name);
    r ? out.number((*r).*value, decimals) : out.null();
  };
  field("seen_mm2", &look::Reading::seen_mm2, 1);
  field("skin_share", &look::Reading::skin_share, 4);
  field("lightness", &look::Reading::lightness, 3);
  field("a", &look::Reading::a, 3);
  field("b", &look::Reading::b, 3);
  field("level", &look::Reading::level, 3);
  out.key("grey");
  r ? out.boolean(paint::isGrey(*r)) : out.null();
  field("light_share", &look::Reading::light_share, 4);
  const bool known = r && r->rangeKnown;
  out.key("low");
  known ? out.number(r->low, 3) : out.null();
  out.key("high");
  known ? out.number(r->high, 3) : out.null();
  field("sampling_error", &look::Reading::sampling_error, 3);
}

/// What stands beside a reading of a region or of the whole.
void contrastAndMix(JsonOut& out, const look::Contrast& c, bool greyMix, bool seen) {
  const auto number = [&](const char* name, double value, int decimals) {
    out.key(name);
    out.number(value, decimals);
  };
  out.key("grey_mix");
  seen ? out.boolean(greyMix) : out.null();
  out.key("contrast");
  if (!seen) {
    out.null();
    return;
  }
  out.beginObject();
  out.key("verdict");
  out.text(look::verdictWord(c.verdict));
  number("delta", c.delta, 3);
  number("spread", c.spread, 3);
  number("light_share", c.light_share, 4);
  number("dark_share", c.dark_share, 4);
  number("distance_m", c.distance_m, 3);
  out.key("histogram");
  out.beginObject();
  number("from", c.local.from, 3);
  number("step", c.local.step, 3);
  out.key("counts");
  out.beginList();
  for (const int count : c.local.counts) out.number(count, 0);
  out.endList();
  out.endObject();
  out.endObject();
}

}  // namespace

std::string lookTable(const LookReport& report) {
  const look::LookSettings& s = report.settings;
  std::string text = report.file;
  if (!report.title.empty()) text += ": " + report.title;
  text += "\nchoice " + report.choice + ", " + std::string(hair::wornWord(s.worn.way));
  if (s.worn.partShift_mm != 0) text += ", part moved " + numberText(s.worn.partShift_mm) + " mm";
  text += ", " + std::string(colour::lightWord(s.light)) + ", " + numberText(s.weeks) + " weeks";
  if (s.subject == look::Subject::Today)
    text += ", today";
  else
    text += ", lifts " + std::string(liftWord(s.lift)) + ", " + std::string(tonerWord(s.toner)) +
            " toner";
  if (s.moisture == look::Moisture::Wet) text += ", wet";
  text += ", " + std::to_string(report.readings.locks) + " locks\n\n";

  std::vector<std::vector<std::string>> rows;
  rows.push_back({"region", "seen cm2", "scalp %", "L*", "range", "level", "light %", "contrast",
                  "warmth"});
  rows.push_back(row("whole", report.readings.whole, report.readings.contrast, "",
                     report.readings.grey_mix));
  for (const look::RegionReading& region : report.readings.regions)
    rows.push_back(row(std::string(look::regionWord(region.region)), region.whole,
                       region.contrast, region.warmth, region.grey_mix));
  std::vector<std::size_t> widths(rows.front().size(), 0);
  for (const auto& r : rows)
    for (std::size_t c = 0; c < r.size(); ++c) widths[c] = std::max(widths[c], letters(r[c]));
  for (const auto& r : rows) {
    std::string line;
    for (std::size_t c = 0; c < r.size(); ++c)
      line += padded(r[c], widths[c], c >= 1 && c <= 6) + (c + 1 < r.size() ? "  " : "");
    line.erase(line.find_last_not_of(' ') + 1);
    text += line + "\n";
  }
  if (!report.readings.movesMost.empty()) {
    text += "\nwhat moves the range most:";
    const char* between = " ";
    for (const std::string& name : report.readings.movesMost) {
      text += between + paint::assumptionName(name).toStdString() + " (" + name + ")";
      between = ", ";
    }
    text += "\n";
  }
  text += targetLines(report.targets, report.readings, look::targetTolerance_levels(report.assumptions));
  if (report.advice) text += adviceText(*report.advice);
  const std::string changed = paint::changedText(report.assumptions).toStdString();
  if (!changed.empty()) text += "\n" + changed + "\n";
  text += "\nA picture of the plan, not a promise; a test strand shows how far this hair "
          "lightens.\n";
  return text;
}

void lookJson(JsonOut& out, const LookReport& report) {
  const look::LookSettings& s = report.settings;
  const auto text = [&](const char* name, std::string_view value) {
    out.key(name);
    out.text(value);
  };
  const auto number = [&](const char* name, double value, int decimals) {
    out.key(name);
    out.number(value, decimals);
  };
  out.beginObject();
  text("plan", report.file);
  text("title", report.title);
  text("choice", report.choice);
  text("worn", hair::wornWord(s.worn.way));
  number("shift_mm", s.worn.partShift_mm, 3);
  text("light", colour::lightWord(s.light));
  number("weeks", s.weeks, 3);
  text("subject", s.subject == look::Subject::Today ? "today" : "planned");
  text("moisture", s.moisture == look::Moisture::Wet ? "wet" : "dry");
  text("lift", liftWord(s.lift));
  text("toner", tonerWord(s.toner));
  number("distance_m", s.distance_m, 3);
  number("locks", report.readings.locks, 0);
  out.key("whole");
  out.beginObject();
  reading(out, report.readings.whole);
  contrastAndMix(out, report.readings.contrast, report.readings.grey_mix, true);
  out.endObject();
  out.key("regions");
  out.beginList();
  for (const look::RegionReading& region : report.readings.regions) {
    out.beginObject();
    text("name", look::regionWord(region.region));
    reading(out, region.whole);
    text("warmth", region.warmth);
    contrastAndMix(out, region.contrast, region.grey_mix, region.whole.has_value());
    const std::array<const char*, 3> parts{"root", "middle", "end"};
    for (std::size_t i = 0; i < parts.size(); ++i) {
      out.key(parts[i]);
      if (!region.rootMiddleEnd[i]) {
        out.null();
        continue;
      }
      out.beginObject();
      reading(out, region.rootMiddleEnd[i]);
      out.endObject();
    }
    out.endObject();
  }
  out.endList();
  out.key("moves_most");
  out.beginList();
  for (const std::string& name : report.readings.movesMost) out.text(name);
  out.endList();
  out.key("targets");
  targetJson(out, report.targets, report.readings, look::targetTolerance_levels(report.assumptions));
  out.key("assumptions_changed");
  out.beginList();
  for (const paint::ChangedAssumption& changed : paint::changedAssumptions(report.assumptions)) {
    out.beginObject();
    text("name", changed.assumption->name);
    text("words", paint::assumptionName(changed.assumption->name).toStdString());
    number("value", changed.value, 6);
    number("default", changed.assumption->value, 6);
    text("unit", changed.assumption->unit);
    out.endObject();
  }
  out.endList();
  adviceJson(out, report.advice.value_or(advise::Advice{}));
  out.endObject();
}

}  // namespace combdraft::command
