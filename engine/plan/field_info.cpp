#include "engine/plan/field_info.h"

#include "engine/base/expect.h"
#include "engine/base/number_text.h"

namespace combdraft::plan {
namespace {

constexpr std::optional<double> kNotTyped = std::nullopt;

// Ranges are our own: wide enough for any hair and any head that a person has,
// narrow enough that a slip of the finger is caught. Head measures: those of
// fitHead (engine/head/measures.cpp). Defaults are those of the structs in plan.h.
constexpr FieldInfo kFields[] = {
    {"head.circumference_mm", "mm", 400, 700, kNotTyped, "tape measure round the head"},
    {"head.length_mm", "mm", 130, 250, kNotTyped, "forehead to the back of the head"},
    {"head.breadth_mm", "mm", 100, 200, kNotTyped, "widest, above the ears"},
    {"head.earToEar_mm", "mm", 220, 460, kNotTyped, "ear hole to ear hole over the top"},
    {"head.hairlineFront_mm", "mm", -30, 30, 0, "front hairline moved up (+) or down (-)"},
    {"head.hairlineTemples_mm", "mm", -30, 30, 0, "hairline at the temples moved up or down"},
    {"head.hairlineSides_mm", "mm", -20, 20, 0, "hairline over the ears moved up or down"},
    {"head.hairlineNape_mm", "mm", -30, 30, 0, "nape hairline moved up or down"},

    {"hair.density_per_cm2", "per cm2", 60, 400, 226, "hairs on a square centimetre"},
    {"hair.fibre_um", "um", 30, 130, 72.1, "thickness of one hair"},
    {"hair.length_mm", "mm", 5, 1500, kNotTyped, "length of a zone's hair, stretched"},
    {"hair.layering_frac", "", 0, 1, 0.15, "0 one length at the hem, 1 one length from the scalp"},
    {"hair.cutLine_mm", "mm", -90, 900, kNotTyped, "planned hem below the head centre"},
    {"hair.level", "levels", 1, 12, 5, "level at root, middle and end"},
    {"hair.toneWarmth", "", -1, 1, 0, "natural tone, -1 ash to +1 red-gold"},
    {"hair.white_frac", "", 0, 1, 0, "share of white hairs"},
    {"band.from_mm", "mm", 0, 1500, 0, "where the band begins, off the scalp"},
    {"band.to_mm", "mm", 0, 1500, 0, "where the band ends, off the scalp"},
    {"band.level", "levels", 1, 12, 5, "level of the band"},
    {"scattered.share_frac", "", 0, 1, 0, "share of the hairs that are already light"},
    {"scattered.from_mm", "mm", 0, 1500, 0, "where they turn light, off the scalp"},
    {"scattered.to_mm", "mm", 0, 1500, 1000, "where the light ends, off the scalp"},
    {"scattered.level", "levels", 1, 12, 8, "level of the light part"},

    {"lifts.level", "levels", 1, 12, 9, "level when bare, before toner"},
    {"lifts.low", "levels", 1, 12, 8, "lowest level it may lift to"},
    {"lifts.high", "levels", 1, 12, 10, "highest level it may lift to"},
    {"finish.level", "levels", 1, 12, 9, "level after toner"},

    {"mixPart.parts", "parts", 0, 1000, kNotTyped, "parts by weight"},
    {"developer.strength", "", 0, 200, kNotTyped, "hydrogen peroxide: percent as labels have it, or volumes"},
    {"developer.parts", "parts", 0, 1000, kNotTyped, "parts by weight"},
    {"leaflet.workingLife_min", "min", 0, 1440, kNotTyped, "how long a mixed bowl may be used"},
    {"leaflet.longestTime_min", "min", 0, 1440, kNotTyped, "how long it may stay on the hair"},

    {"piece.thickness_mm", "mm", 0.2, 40, 5, "full width square to the line"},
    {"piece.taken_frac", "", 0, 1, 1, "share taken of the hair inside the teeth"},
    {"piece.tooth_mm", "mm", 0, 100, 0, "width of a tooth, 0 for none"},
    {"piece.gap_mm", "mm", 0, 100, 0, "gap between teeth"},
    {"piece.dropOuts", "mm", 0, 600, kNotTyped, "stretch of the line left dark"},
    {"piece.start_mm", "mm", 0, 600, 20, "where lightener starts, off the scalp"},
    {"piece.blend_mm", "mm", 0, 300, 12, "blend length at the start"},
    {"piece.outer_frac", "", 0, 1, 0.5, "share of the thickness the brush reaches"},
    {"piece.handover_mm", "mm", 0, 1500, kNotTyped, "where the end formula takes over"},
    {"piece.stop_mm", "mm", 0, 1500, kNotTyped, "where lightener stops"},
    {"piece.order", "", 0, 100000, 0, "place in the working order"},
    {"backcomb.depth_mm", "mm", 0, 600, 0, "where pushed hairs end, off the scalp"},
    {"backcomb.pushed_frac", "", 0, 1, 0, "share of the taken hairs pushed back"},
    {"backcomb.blend_mm", "mm", 0, 300, 28, "blend length at the pushed start"},

    {"section.order", "", 0, 100000, 0, "place in the working order"},
    {"layout.thicknessFrom_mm", "mm", 0.2, 40, 5, "thickness of the first piece"},
    {"layout.thicknessTo_mm", "mm", 0.2, 40, 5, "thickness of the last piece"},
    {"layout.leftOutFrom_mm", "mm", 0, 100, 10, "left out after the first piece"},
    {"layout.leftOutTo_mm", "mm", 0, 100, 10, "left out before the last piece"},
    {"layout.startFrom_mm", "mm", 0, 600, 20, "start of the first piece, off the scalp"},
    {"layout.startTo_mm", "mm", 0, 600, 20, "start of the last piece, off the scalp"},
    {"layout.backcombFrom_mm", "mm", 0, 600, 0, "backcomb depth of the first piece, 0 for none"},
    {"layout.backcombTo_mm", "mm", 0, 600, 0, "backcomb depth of the last piece"},
    {"layout.pushedFrom_frac", "", 0, 1, 0, "share pushed back in the first piece"},
    {"layout.pushedTo_frac", "", 0, 1, 0, "share pushed back in the last piece"},
    {"layout.takenFrom_frac", "", 0, 1, 1, "share taken in the first piece"},
    {"layout.takenTo_frac", "", 0, 1, 1, "share taken in the last piece"},
    {"layout.tooth_mm", "mm", 0, 100, 0, "width of a tooth, 0 for none"},
    {"layout.gap_mm", "mm", 0, 100, 0, "gap between teeth"},
    {"layout.foil_mm", "mm", 20, 400, 120, "width of a foil"},
    {"layout.zigzag_mm", "mm", 0, 20, 0, "swing of a zigzag parting, 0 for straight"},
    {"layout.lastThickness_mm", "mm", 0.2, 40, kNotTyped, "thickness of the piece beside the opening"},
    {"layout.dropMiddle_mm", "mm", 0, 200, 0, "left dark where a piece crosses the centre line"},
    {"laidOut.row", "", 1, 1000, 1, "row, counted from the opening"},
    {"laidOut.column", "", 1, 1000, 1, "place along the row"},

    {"treatment.to_mm", "mm", 0, 1500, 40, "how far from the scalp a root shadow reaches"},
    {"treatment.blend_mm", "mm", 0, 300, 25, "blend length at its end"},
    {"treatment.strength_frac", "", 0, 1, 0.6, "0 nothing, 1 the typed colour"},

    {"target.level", "levels", 1, 12, kNotTyped, "level wanted in a region"},
    {"target.brightest", "levels", 1, 12, kNotTyped, "lightest hair allowed there"},
    {"target.darkest", "levels", 1, 12, kNotTyped, "darkest hair allowed there"},

    {"point.bearing_deg", "degrees", -360, 360, kNotTyped, "0 front, 90 wearer's right, 180 back"},
    {"point.drop_deg", "degrees", 0, 180, kNotTyped, "0 straight up, 90 level"},
};

}  // namespace

std::span<const FieldInfo> fieldTable() { return kFields; }

const FieldInfo& fieldInfo(std::string_view name) {
  for (const FieldInfo& field : kFields)
    if (field.name == name) return field;
  COMBDRAFT_EXPECT(false && "every number of a plan stands in the table", name);
  return kFields[0];
}

std::string rangeText(const FieldInfo& field) {
  std::string text = numberText(field.low) + " to " + numberText(field.high);
  if (!field.unit.empty()) text += " " + std::string(field.unit);
  return text;
}

}  // namespace combdraft::plan
