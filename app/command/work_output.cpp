#include "app/command/work_output.h"

#include <algorithm>

#include "app/paint/describe_piece.h"
#include "engine/base/number_text.h"
#include "engine/plan/plan_words.h"
#include "engine/work/speeds.h"

namespace combdraft::command {
namespace {

using work::StepKind;

std::string_view wordOf(StepKind kind) {
  switch (kind) {
    case StepKind::Mix: return "mix";
    case StepKind::Backcomb: return "backcomb";
    case StepKind::Place: return "place";
    case StepKind::Look: return "look";
    case StepKind::CombOut: return "comb-out";
  }
  return {};
}
std::string_view wordOf(work::Pace pace) {
  return pace == work::Pace::Slow ? "slow" : pace == work::Pace::Usual ? "usual" : "hairline";
}
std::string_view wordOf(work::Saving::Kind kind) {
  switch (kind) {
    case work::Saving::Kind::SecondPair: return "second-pair-of-hands";
    case work::Saving::Kind::WithoutBackcomb: return "without-backcomb";
    case work::Saving::Kind::SliceForWeave: return "slice-for-weave";
    case work::Saving::Kind::LeaveOut: return "leave-out";
  }
  return {};
}

/// Letter and kind, or the id; "(none named)" for "".
std::string formulaName(const plan::Plan& plan, const plan::ItemId& id) {
  const auto* formula = plan.find<plan::Formula>(id);
  if (!formula) return "(none named)";
  if (formula->letter.empty()) return id;
  return formula->kind.empty() ? formula->letter : formula->letter + " " + formula->kind;
}
std::string bowlName(const plan::Plan& plan, const work::Bowl& bowl) {
  return formulaName(plan, bowl.formula) + ", bowl " + std::to_string(bowl.number);
}
std::string savingText(const work::Saving& saving) {
  std::string where = saving.section;
  if (where.empty()) where = std::to_string(saving.pieces.size()) + (saving.pieces.size() == 1 ? " piece" : " pieces");
  if (saving.zone) where += ", " + std::string(plan::wordOf(*saving.zone));
  switch (saving.kind) {
    case work::Saving::Kind::SecondPair: return "a second pair of hands";
    case work::Saving::Kind::WithoutBackcomb: return where + ", without backcombing";
    case work::Saving::Kind::SliceForWeave: return where + ", sliced, not woven";
    case work::Saving::Kind::LeaveOut: return where + ", left out";
  }
  return {};
}

std::string padded(std::string text, std::size_t width) {
  if (text.size() < width) text.insert(0, width - text.size(), ' ');
  return text;
}
std::string filled(std::string text, std::size_t width) {
  text.resize(std::max(text.size(), width), ' ');
  return text;
}

void stepLine(std::ostream& out, const WorkShown& shown, const work::StepLine& line, const paint::HeadScene& head) {
  const work::Timeline& timeline = shown.list.timeline;
  const work::Step &step = timeline.steps[line.front()], &last = timeline.steps[line.back()];
  std::string where = step.piece;
  if (const auto* piece = shown.plan.find<plan::Piece>(step.piece))
    if (const std::string place = paint::placeWords(head, *piece).toStdString(); !place.empty()) where += ", " + place;
  out << padded(numberText(step.from_min, 1), 7) << " to " << padded(numberText(last.to_min, 1), 6) << "  ";
  if (shown.settings.pairs == 2) out << "hands " << step.pair + 1 << "  ";
  out << filled(std::string(wordOf(step.kind)), 9) << ' ' << filled(where, 24);
  if (step.bowl) out << ' ' << bowlName(shown.plan, timeline.bowls[*step.bowl]);
  if (line.size() > 1) out << ", to the handover, then " << bowlName(shown.plan, timeline.bowls[*last.bowl]);
  if (step.kind == StepKind::Place) {
    out << "; product " << numberText(step.productAge_min, 1);
    if (line.size() > 1) out << " and " << numberText(last.productAge_min, 1);
    out << " min old";
  }
  out << '\n';
}
void stepLines(std::ostream& out, const WorkShown& shown) {
  const paint::HeadScene head(shown.plan.head());
  const std::vector<work::StepLine> lines = work::linesOf(shown.list.timeline);
  for (const work::StepLine& line : lines) stepLine(out, shown, line, head);
}

// The command line knows nothing of the user's own heads: a value of the plan has no span here.
void mixedLine(std::ostream& out, const work::Amounts& amounts) {
  const auto grams = [](double value) { return numberText(value, value < 10 ? 1 : 0); };
  const work::GramsSpan mixed = amounts.mixed_g();
  out << "  about " << grams(mixed.about) << " g mixed in all";
  if (amounts.product.from == work::ProductRange::From::Assumption)
    out << ", somewhere from " << grams(mixed.low) << " to " << grams(mixed.high) << " g by the assumption's range: weigh what is left and take it over\n";
  else
    out << ", by the plan's own product for hair; how far off it may be is not known: weigh what is left\n";
  out << "  Thin weaves take more product for their hair than this estimates.\n";
}

void bowlLine(std::ostream& out, const WorkShown& shown, std::size_t i) {
  const work::Bowl& bowl = shown.list.timeline.bowls[i];
  const work::BowlGrams& grams = shown.list.bowls[i];
  out << "  " << bowlName(shown.plan, bowl) << ": about " << numberText(grams.mixed_g, 0) << " g";
  if (grams.split) {
    std::string parts;
    for (const work::PartGrams& part : *grams.split)
      parts += (parts.empty() ? " (" : ", ") + (part.name.empty() ? std::string("unnamed") : part.name) + " " + numberText(part.grams, 1) + " g";
    out << parts << ')';
  }
  out << ", mixed at " << numberText(bowl.mixFrom_min, 1) << ", last used at " << numberText(bowl.lastUse_min, 1) << ", "
      << bowl.pieces.size() << (bowl.pieces.size() == 1 ? " piece\n" : " pieces\n");
}

class Json {
 public:
  Json(JsonOut& out, const WorkShown& shown) : out_(out), shown_(shown) {}
  void write() {
    out_.beginObject();
    text("plan", shown_.file);
    text("title", shown_.plan.info().title);
    text("choice", shown_.choice);
    text("order", shown_.settings.order == work::OrderUse::ByRule ? "rule" : "planned");
    number("hands", shown_.settings.pairs, 0);
    pieces();
    packets("foils", shown_.list.amounts.foils);
    packets("films", shown_.list.amounts.films);
    number("open_air", shown_.list.amounts.openAir, 0);
    number("hairs", shown_.list.amounts.hairs, 0);
    number("hair_g", shown_.list.amounts.hair_g, 2);
    formulas();
    bowls();
    steps();
    const work::Timeline& line = shown_.list.timeline;
    number("last_in_min", line.lastIn_min, 2);
    number("looked_min", line.looked_min, 2);
    number("comb_out_min", line.combOut_min, 2);
    number("total_min", line.total_min, 2);
    number("reserve_min", line.reserve_min, 2);
    notes();
    savings();
    out_.endObject();
  }

 private:
  void text(const char* key, std::string_view value) { out_.key(key), out_.text(value); }
  void number(const char* key, double value, int decimals) { out_.key(key), out_.number(value, decimals); }
  void number(const char* key, const std::optional<double>& value, int decimals) { out_.key(key), out_.number(value, decimals); }
  void ids(const char* key, const std::vector<plan::ItemId>& ids) {
    out_.key(key);
    out_.beginList();
    for (const plan::ItemId& id : ids) out_.text(id);
    out_.endList();
  }
  template <class List, class One>
  void list(const char* key, const List& all, One one) {
    out_.key(key);
    out_.beginList();
    for (const auto& item : all) {
      out_.beginObject();
      one(item);
      out_.endObject();
    }
    out_.endList();
  }

  void pieces() {
    const work::PiecePlaces places(shown_.plan);
    const Assumptions own(shown_.plan.info().assumptions);
    list("pieces", shown_.list.order, [&](const plan::ItemId& id) {
      const plan::Piece& piece = *shown_.plan.find<plan::Piece>(id);
      const work::PiecePlace place = places.of(piece);
      const work::PieceMinutes minutes = work::minutesOf(piece, own);
      const work::PieceAmount* amount = shown_.list.amounts.of(id);
      text("piece", id);
      text("label", piece.label);
      text("section", piece.section);
      text("zone", plan::wordOf(place.zone));
      text("pace", wordOf(place.pace));
      out_.key("top"), out_.boolean(place.top);
      number("backcomb_min", minutes.backcomb, 2);
      number("place_min", minutes.place, 2);
      number("comb_out_min", minutes.combOut, 2);
      number("line_mm", amount->line_mm, 1);
      number("hairs", amount->hairs, 0);
      number("hair_g", amount->hair_g, 3);
      number("covered_g", amount->covered_g(), 3);
      number("product_g", amount->covered_g() * own["amount.product_per_hair"], 2);
    });
  }
  void packets(const char* key, const std::vector<work::FoilNeed>& packets) {
    list(key, packets, [&](const work::FoilNeed& foil) {
      text("name", foil.name);
      ids("pieces", foil.pieces);
      number("needed_mm", foil.needed_mm, 1);
      number("width_mm", foil.width_mm, 0);
    });
  }
  void formulas() {
    const bool isSpanKnown = shown_.list.amounts.product.from != work::ProductRange::From::Typed;
    list("formulas", shown_.list.amounts.formulas, [&](const work::FormulaAmount& amount) {
      const auto* formula = shown_.plan.find<plan::Formula>(amount.formula);
      text("id", amount.formula);
      text("letter", formula ? formula->letter : "");
      text("kind", formula ? formula->kind : "");
      number("life_min", formula ? formula->leaflet.workingLife_min : std::nullopt, 2);
      number("longest_min", formula ? formula->leaflet.longestTime_min : std::nullopt, 2);
      strength(formula);
      number("hair_g", amount.hair_g, 2);
      number("product_g", amount.product_g, 2);
      number("waste_g", amount.waste_g, 1);
      number("mixed_g", amount.mixed_g(), 2);
      number("mixed_low_g", isSpanKnown ? std::optional(amount.mixedLow_g) : std::nullopt, 2);
      number("mixed_high_g", isSpanKnown ? std::optional(amount.mixedHigh_g) : std::nullopt, 2);
    });
  }
  void strength(const plan::Formula* formula) {
    out_.key("developer");
    const auto strength = formula ? work::developerStrength(*formula) : Result<std::optional<work::Strength>>(std::nullopt);
    if (!strength || !*strength) return out_.null();
    const work::Strength& known = **strength;
    const auto label = work::nominalLabel(known);
    out_.beginObject();
    number("percent", known.percent, 3);
    number("volumes", known.volumes(), 2);
    number("mol_per_litre", known.molPerLitre(), 4);
    number("label_percent", label ? std::optional<double>(label->percent) : std::nullopt, 1);
    number("label_volumes", label ? std::optional<double>(label->volumes) : std::nullopt, 0);
    out_.key("over_eu_limit"), out_.boolean(known.isOverEuLimit());
    out_.endObject();
  }
  void bowls() {
    std::size_t i = 0;
    list("bowls", shown_.list.timeline.bowls, [&](const work::Bowl& bowl) {
      const work::BowlGrams& grams = shown_.list.bowls[i++];
      text("formula", bowl.formula);
      number("number", bowl.number, 0);
      number("hands", bowl.pair + 1, 0);
      number("mix_from_min", bowl.mixFrom_min, 2);
      number("from_min", bowl.from_min, 2);
      number("last_use_min", bowl.lastUse_min, 2);
      number("product_g", bowl.product_g, 2);
      number("mixed_g", grams.mixed_g, 2);
      if (grams.split)
        list("parts", *grams.split, [&](const work::PartGrams& part) {
          text("name", part.name);
          number("grams", part.grams, 2);
        });
      else
        out_.key("parts"), out_.null();
      ids("pieces", bowl.pieces);
    });
  }
  void steps() {
    list("steps", shown_.list.timeline.steps, [&](const work::Step& step) {
      text("kind", wordOf(step.kind));
      number("from_min", step.from_min, 2);
      number("to_min", step.to_min, 2);
      number("hands", step.pair + 1, 0);
      text("piece", step.piece);
      number("bowl", step.bowl ? std::optional<double>(static_cast<double>(*step.bowl)) : std::nullopt, 0);
      number("product_age_min", step.kind == StepKind::Place ? std::optional(step.productAge_min) : std::nullopt, 2);
      const work::OldestNow oldest = work::oldestAt(shown_.list.timeline, step.to_min);
      text("oldest_piece", oldest.piece);
      number("oldest_piece_min", oldest.pieceAge_min, 2);
      number("oldest_product_min", oldest.productAge_min, 2);
    });
  }
  void notes() {
    list("notes", shown_.list.notes, [&](const work::WorkNote& note) {
      text("kind", work::codeName(note.kind));
      text("formula", note.formula);
      ids("pieces", note.pieces);
      number("found", note.found, 2);
      number("limit", note.limit, 2);
      text("text", work::sentenceOf(note));
    });
  }
  void savings() {
    list("savings", shown_.savings, [&](const work::Saving& saving) {
      text("kind", wordOf(saving.kind));
      text("section", saving.section);
      ids("pieces", saving.pieces);
      number("saved_min", saving.saved_min, 2);
      text("zone", saving.zone ? plan::wordOf(*saving.zone) : std::string_view());
    });
  }

  JsonOut& out_;
  const WorkShown& shown_;
};

}  // namespace

void workTable(std::ostream& out, const WorkShown& shown) {
  const work::Amounts& amounts = shown.list.amounts;
  const work::Timeline& line = shown.list.timeline;
  out << shown.file << ": " << shown.plan.info().title << ", choice " << shown.choice << '\n';
  if (shown.list.order.empty()) {
    out << "  No piece is lightened or deepened: there is nothing to work.\n";
    return;
  }
  out << "  " << shown.list.order.size() << " pieces in " << amounts.foils.size() << " foils, " << amounts.films.size() << " films, "
      << amounts.openAir << " in open air; " << numberText(amounts.hairs, 0) << " hairs, " << numberText(amounts.hair_g, 1) << " g of hair\n";
  out << "\nMinutes of work, by the plan's assumptions (the time product stays on the hair is not in them)\n";
  stepLines(out, shown);
  out << "  last piece in at " << numberText(line.lastIn_min, 1) << ", looked at all by " << numberText(line.looked_min, 1) << ", comb-out "
      << numberText(line.combOut_min, 1) << "; in all " << numberText(line.total_min, 1) << " min and " << numberText(line.reserve_min, 1)
      << " min in reserve\n";
  out << "\nBowls (grams by the plan's assumptions, not measured)\n";
  for (std::size_t i = 0; i < line.bowls.size(); ++i) bowlLine(out, shown, i);
  mixedLine(out, amounts);
  if (!shown.settings.foils_mm.empty()) {
    out << "\nFoils\n";
    std::vector<double> widths = shown.settings.foils_mm;
    std::sort(widths.begin(), widths.end());
    for (const double width : widths)
      out << "  " << numberText(width, 0) << " mm: "
          << std::count_if(amounts.foils.begin(), amounts.foils.end(), [&](const work::FoilNeed& f) { return f.width_mm == width; }) << '\n';
  }
  out << "\nOrder, bowls and times\n";
  if (shown.list.notes.empty()) out << "  Nothing of what this list looks for was found; that says nothing about this hair.\n";
  for (const work::WorkNote& note : shown.list.notes)
    out << "  " << (note.formula.empty() ? "" : formulaName(shown.plan, note.formula) + ": ") << work::sentenceOf(note) << '\n';
  if (!shown.savings.empty()) out << "\nWould save time\n  Each of these but a second pair of hands changes the look too: see it first.\n";
  for (std::size_t i = 0; i < std::min<std::size_t>(5, shown.savings.size()); ++i)
    out << "  " << padded(numberText(shown.savings[i].saved_min, 1), 6) << " min  " << savingText(shown.savings[i]) << '\n';
  out << "\nThe maker's directions, local rules and your licence come first. Wear gloves and keep the air moving.\n"
         "Pain, burning, swelling: rinse the product off at once with plenty of lukewarm water, unless the maker's\n"
         "first aid says otherwise, and get medical help.\n"
         "In the eye: rinse with water at once, then medical help. Trouble breathing or a swelling face: the emergency number.\n"
         "Minutes and grams are estimates: this head may take more or less of both.\n";
}

void workJson(JsonOut& out, const WorkShown& shown) { Json(out, shown).write(); }

}  // namespace combdraft::command
