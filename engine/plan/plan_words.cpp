#include "engine/plan/plan_words.h"

namespace combdraft::plan {
namespace {

constexpr WordEntry<head::HeadSet> kHeadSet[] = {{head::HeadSet::Women, "women"},
                                                 {head::HeadSet::Men, "men"}};
constexpr WordEntry<head::HeadSize> kHeadSize[] = {{head::HeadSize::Small, "small"},
                                                   {head::HeadSize::Medium, "medium"},
                                                   {head::HeadSize::Large, "large"}};
constexpr WordEntry<Turn> kTurn[] = {{Turn::Clockwise, "clockwise"},
                                     {Turn::Counterclockwise, "counterclockwise"}};
constexpr WordEntry<SkinTone> kSkin[] = {{SkinTone::Paper, "paper"},
                                         {SkinTone::Light, "light"},
                                         {SkinTone::Medium, "medium"},
                                         {SkinTone::Tan, "tan"},
                                         {SkinTone::Deep, "deep"}};
constexpr WordEntry<HairZone> kZone[] = {{HairZone::Front, "front"}, {HairZone::Top, "top"},
                                         {HairZone::Crown, "crown"}, {HairZone::Sides, "sides"},
                                         {HairZone::Back, "back"},   {HairZone::Nape, "nape"}};
constexpr WordEntry<CurlClass> kCurl[] = {{CurlClass::Straight, "straight"},
                                          {CurlClass::LooseWave, "loose wave"},
                                          {CurlClass::Wave, "wave"},
                                          {CurlClass::LooseCurl, "loose curl"},
                                          {CurlClass::Curl, "curl"},
                                          {CurlClass::TightCurl, "tight curl"},
                                          {CurlClass::Coil, "coil"},
                                          {CurlClass::TightCoil, "tight coil"}};
constexpr WordEntry<Condition> kCondition[] = {{Condition::NotChecked, "not checked"},
                                               {Condition::Good, "good"},
                                               {Condition::Fair, "fair"},
                                               {Condition::Poor, "poor"}};
constexpr WordEntry<Porosity> kPorosity[] = {{Porosity::NotChecked, "not checked"},
                                             {Porosity::Resistant, "resistant"},
                                             {Porosity::Usual, "usual"},
                                             {Porosity::Porous, "porous"}};
constexpr WordEntry<Tone> kTone[] = {
    {Tone::Natural, "natural"}, {Tone::Ash, "ash"},       {Tone::Pearl, "pearl"},
    {Tone::Beige, "beige"},     {Tone::Gold, "gold"},     {Tone::Copper, "copper"},
    {Tone::Red, "red"}};
constexpr WordEntry<ScalpContact> kContact[] = {
    {ScalpContact::NotStated, "not stated"},
    {ScalpContact::Yes, "yes"},
    {ScalpContact::No, "no"}};
constexpr WordEntry<StrengthUnit> kStrength[] = {{StrengthUnit::Percent, "percent"},
                                                 {StrengthUnit::Volume, "volume"}};
constexpr WordEntry<Action> kAction[] = {{Action::Lighten, "lighten"},
                                         {Action::Deepen, "deepen"},
                                         {Action::LeaveOut, "leave out"}};
constexpr WordEntry<Taking> kTaking[] = {
    {Taking::Slice, "slice"}, {Taking::Weave, "weave"}, {Taking::Paint, "paint"}};
constexpr WordEntry<KeptIn> kKeptIn[] = {
    {KeptIn::Foil, "foil"}, {KeptIn::Film, "film"}, {KeptIn::OpenAir, "open air"}};
constexpr WordEntry<Side> kSide[] = {{Side::Painted, "painted"}, {Side::Bare, "bare"}};
constexpr WordEntry<LayoutRun> kRun[] = {{LayoutRun::Horizontal, "horizontal"},
                                         {LayoutRun::Vertical, "vertical"},
                                         {LayoutRun::DiagonalForward, "diagonal forward"},
                                         {LayoutRun::DiagonalBack, "diagonal back"},
                                         {LayoutRun::Pivoting, "pivoting"}};
constexpr WordEntry<Columns> kColumns[] = {{Columns::InLine, "in line"},
                                           {Columns::Staggered, "staggered"}};
constexpr WordEntry<RunField> kRunField[] = {
    {RunField::Line, "line"},   {RunField::Thickness, "thickness"}, {RunField::Taking, "taking"},
    {RunField::Start, "start"}, {RunField::Backcomb, "backcomb"},   {RunField::DropOuts, "drop-outs"}};
constexpr WordEntry<Treatment::Kind> kKind[] = {{Treatment::Kind::RootShadow, "root shadow"},
                                                {Treatment::Kind::Glaze, "glaze"}};
constexpr WordEntry<ContrastAim> kContrast[] = {{ContrastAim::TwoClearLevels, "two-clear-levels"},
                                                {ContrastAim::Soft, "soft"},
                                                {ContrastAim::OneTone, "one-tone"}};
constexpr WordEntry<PaperSize> kPaper[] = {{PaperSize::A4, "A4"}, {PaperSize::Letter, "Letter"}};
constexpr WordEntry<PageTurn> kPageTurn[] = {{PageTurn::Portrait, "portrait"},
                                             {PageTurn::Landscape, "landscape"}};
constexpr WordEntry<HandoutPart> kHandout[] = {
    {HandoutPart::Title, "title"},           {HandoutPart::Kit, "kit"},
    {HandoutPart::Views, "views"},           {HandoutPart::Steps, "steps"},
    {HandoutPart::CloseUps, "close-ups"},    {HandoutPart::Checks, "checks"},
    {HandoutPart::Timing, "timing"},         {HandoutPart::Faults, "faults"},
    {HandoutPart::SelfCheck, "self-check"},  {HandoutPart::BlankSheets, "blank sheets"},
    {HandoutPart::PredictThenOpen, "predict then open"}};
constexpr std::string_view kTargetRegions[] = {
    "whole",      "face frame left", "face frame right", "front top",
    "top",        "crown",           "left side",        "right side",
    "upper back", "middle back",     "ends at the back", "nape"};

}  // namespace

template <> std::span<const WordEntry<head::HeadSet>> words() { return kHeadSet; }
template <> std::span<const WordEntry<head::HeadSize>> words() { return kHeadSize; }
template <> std::span<const WordEntry<Turn>> words() { return kTurn; }
template <> std::span<const WordEntry<SkinTone>> words() { return kSkin; }
template <> std::span<const WordEntry<HairZone>> words() { return kZone; }
template <> std::span<const WordEntry<CurlClass>> words() { return kCurl; }
template <> std::span<const WordEntry<Condition>> words() { return kCondition; }
template <> std::span<const WordEntry<Tone>> words() { return kTone; }
template <> std::span<const WordEntry<ScalpContact>> words() { return kContact; }
template <> std::span<const WordEntry<Action>> words() { return kAction; }
template <> std::span<const WordEntry<Taking>> words() { return kTaking; }
template <> std::span<const WordEntry<KeptIn>> words() { return kKeptIn; }
template <> std::span<const WordEntry<Side>> words() { return kSide; }
template <> std::span<const WordEntry<LayoutRun>> words() { return kRun; }
template <> std::span<const WordEntry<Columns>> words() { return kColumns; }
template <> std::span<const WordEntry<RunField>> words() { return kRunField; }
template <> std::span<const WordEntry<Treatment::Kind>> words() { return kKind; }
template <> std::span<const WordEntry<ContrastAim>> words() { return kContrast; }
template <> std::span<const WordEntry<Porosity>> words() { return kPorosity; }
template <> std::span<const WordEntry<StrengthUnit>> words() { return kStrength; }
template <> std::span<const WordEntry<PaperSize>> words() { return kPaper; }
template <> std::span<const WordEntry<PageTurn>> words() { return kPageTurn; }
template <> std::span<const WordEntry<HandoutPart>> words() { return kHandout; }

std::span<const std::string_view> targetRegions() { return kTargetRegions; }

}  // namespace combdraft::plan
