#include "app/command/advice_output.h"

#include <algorithm>

#include "engine/base/number_text.h"

namespace combdraft::command {
namespace {

void pieces(JsonOut& out, const std::vector<plan::ItemId>& ids) {
  out.key("pieces");
  out.beginList();
  for (const plan::ItemId& id : ids) out.text(id);
  out.endList();
}

std::vector<plan::ItemId> both(const look::Opening& opening) {
  std::vector<plan::ItemId> ids = opening.light.pieces;
  for (const plan::ItemId& id : opening.dark.pieces)
    if (std::find(ids.begin(), ids.end(), id) == ids.end()) ids.push_back(id);
  return ids;
}

void patch(JsonOut& out, const char* name, const look::Patch& p) {
  out.key(name);
  if (p.area_cm2 <= 0) return out.null();
  out.beginObject();
  const auto number = [&](const char* field, double value, int decimals) {
    out.key(field);
    out.number(value, decimals);
  };
  number("area_cm2", p.area_cm2, 2);
  number("run_mm", p.run_mm, 0);
  number("lightness", p.lightness, 1);
  number("surround", p.surround, 1);
  number("bearing_deg", p.at.bearing_deg, 1);
  number("drop_deg", p.at.drop_deg, 1);
  pieces(out, p.pieces);
  out.endObject();
}

std::string where(const advise::Finding& finding) {
  std::string text = finding.region ? std::string(look::regionWord(*finding.region)) : std::string("whole");
  return finding.at ? std::string("opening") : text;
}

std::string weeksText(const std::optional<double>& weeks) {
  return weeks ? numberText(*weeks, 0) : std::string("over 26");
}

/// "worn down after 8 weeks (6 to 11)".
std::string regrowthText(const look::Regrowth& r) {
  if (!r.week && !r.earliest) return std::string(hair::wornWord(r.way)) + " not within 26 weeks";
  return std::string(hair::wornWord(r.way)) + " after " + weeksText(r.week) + " weeks (" + weeksText(r.earliest) +
         " to " + weeksText(r.latest) + ")";
}

std::string patchText(const char* word, const look::Opening* opening, look::Patch look::Opening::*p,
                      const std::optional<look::PatchRange>& range) {
  if (!opening) return std::string("no ") + word + " patch stands out\n";
  std::string text = std::string("largest ") + word + " patch " + numberText((opening->*p).area_cm2, 1) + " cm2";
  if (range) text += " (from " + numberText(range->low_cm2, 1) + " to " + numberText(range->high_cm2, 1) + ")";
  text += ", " + std::string(look::openingWord(opening->way));
  if (opening->way == look::OpeningWay::Part) text += " at " + numberText(opening->shift_mm) + " mm";
  if (!(opening->*p).pieces.empty()) {
    text += ":";
    for (const plan::ItemId& id : (opening->*p).pieces) text += " " + id;
  }
  return text + "\n";
}

void patchRange(JsonOut& out, const char* key, const std::optional<look::PatchRange>& range) {
  out.key(key);
  if (!range) return out.null();
  out.beginObject();
  out.key("way");
  out.text(look::openingWord(range->way));
  out.key("shift_mm");
  out.number(range->shift_mm, 1);
  out.key("low_cm2");
  out.number(range->low_cm2, 2);
  out.key("high_cm2");
  out.number(range->high_cm2, 2);
  out.key("moves_most");
  out.beginList();
  for (const std::string& name : range->movesMost) out.text(name);
  out.endList();
  out.endObject();
}

}  // namespace

std::string adviceText(const advise::Advice& advice) {
  std::string text = "\nwhere the hair opens: " + patchText("light", advice.openings.worstLight(), &look::Opening::light, advice.openings.lightRange) +
                     "                      " + patchText("dark", advice.openings.worstDark(), &look::Opening::dark, advice.openings.darkRange);
  if (!advice.regrowth.empty()) {
    text += "regrowth shows:";
    for (std::size_t i = 0; i < advice.regrowth.size(); ++i) text += (i ? ", " : " ") + regrowthText(advice.regrowth[i]);
    text += "\n";
  }
  std::string stripes;
  for (const look::Stripes& s : advice.stripes)
    if (s.judged && s.at[2].seen)
      stripes += (stripes.empty() ? " " : ", ") + std::string(look::regionWord(s.region)) + " (" + numberText(s.at[2].width_mm, 0) + " mm)";
  if (!stripes.empty()) text += "stripes seen in the salon mirror:" + stripes + "\n";
  if (advice.findings.empty()) return text + "\nnothing listed from the look; cautions about hair and scalp are in `check`\n";
  text += "\nneeds a look (cautions about hair and scalp are in `check`):\n";
  for (const advise::Finding& finding : advice.findings) {
    text += "- " + advise::sentenceOf(finding) + "\n";
    if (!finding.remedies.empty() && &finding == &advice.findings.front())
      text += "    Changes of placement that helped when tried; the maker's directions, the hair and the scalp come first.\n";
    for (const advise::Remedy& remedy : finding.remedies) text += "    " + advise::sentenceOf(remedy) + "\n";
  }
  return text;
}

void adviceJson(JsonOut& out, const advise::Advice& advice) {
  out.key("openings");
  out.beginList();
  for (const look::Opening& opening : advice.openings.all) {
    out.beginObject();
    out.key("way");
    out.text(look::openingWord(opening.way));
    out.key("shift_mm");
    out.number(opening.shift_mm, 1);
    out.key("light_cm2");
    out.number(opening.light.area_cm2, 2);
    out.key("dark_cm2");
    out.number(opening.dark.area_cm2, 2);
    out.key("run_mm");
    out.number(opening.run_mm, 0);
    pieces(out, both(opening));
    patch(out, "light", opening.light);
    patch(out, "dark", opening.dark);
    out.endObject();
  }
  out.endList();
  patchRange(out, "largest_light", advice.openings.lightRange);
  patchRange(out, "largest_dark", advice.openings.darkRange);
  out.key("off_hair_mm");
  out.beginList();
  for (const double shift : advice.openings.offHair_mm) out.number(shift, 0);
  out.endList();
  out.key("regrowth");
  out.beginList();
  for (const look::Regrowth& r : advice.regrowth) {
    out.beginObject();
    out.key("worn");
    out.text(hair::wornWord(r.way));
    out.key("week");
    out.number(r.week, 1);
    out.key("earliest");
    out.number(r.earliest, 1);
    out.key("latest");
    out.number(r.latest, 1);
    out.endObject();
  }
  out.endList();
  out.key("stripes");
  out.beginList();
  for (const look::Stripes& s : advice.stripes) {
    if (!s.judged) continue;
    out.beginObject();
    out.key("region");
    out.text(look::regionWord(s.region));
    out.key("at");
    out.beginList();
    for (const look::SeenStripe& seen : s.at) {
      out.beginObject();
      out.key("distance_m");
      out.number(seen.distance_m, 1);
      out.key("width_mm");
      out.number(seen.width_mm, 1);
      out.key("contrast");
      out.number(seen.contrast, 3);
      out.key("seen");
      out.boolean(seen.seen);
      out.endObject();
    }
    out.endList();
    out.endObject();
  }
  out.endList();
  out.key("findings");
  out.beginList();
  for (const advise::Finding& finding : advice.findings) {
    out.beginObject();
    out.key("kind");
    out.text(advise::codeName(finding.kind));
    out.key("where");
    out.text(where(finding));
    out.key("worn");
    out.text(hair::wornWord(finding.worn.way));
    out.key("shift_mm");
    out.number(finding.worn.partShift_mm, 1);
    out.key("size");
    out.number(finding.size, 3);
    out.key("unit");
    out.text(finding.unit);
    out.key("limit");
    out.number(finding.limit, 3);
    out.key("assumption");
    finding.assumption.empty() ? out.null() : out.text(finding.assumption);
    out.key("text");
    out.text(advise::sentenceOf(finding));
    pieces(out, finding.pieces);
    out.key("remedies");
    out.beginList();
    for (const advise::Remedy& remedy : finding.remedies) {
      out.beginObject();
      out.key("kind");
      out.text(advise::codeName(remedy.kind));
      out.key("amount");
      out.number(remedy.amount, 2);
      out.key("unit");
      out.text(advise::unitOf(remedy.kind));
      pieces(out, remedy.pieces);
      out.key("before");
      remedy.effect ? out.number(remedy.effect->before, 3) : out.null();
      out.key("after");
      remedy.effect ? out.number(remedy.effect->after, 3) : out.null();
      out.key("text");
      out.text(advise::sentenceOf(remedy));
      out.endObject();
    }
    out.endList();
    out.endObject();
  }
  out.endList();
}

}  // namespace combdraft::command
