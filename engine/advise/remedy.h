#pragma once
// What might be done about a finding: a change of placement only, as data. It
// becomes an ordinary edit, so it is tried, kept, dropped and undone like any
// other; rules.h says what it may never do.
#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/plan/change_set.h"

namespace combdraft::advise {

enum class RemedyKind {
  Thinner,             ///< amount: new thickness, mm
  SplitWidth,          ///< amount: thickness of each strip, mm; left-outs between
  DropMiddleOfLength,  ///< amount: how much of the line is left dark in its middle, mm
  DropMiddleOfWidth,   ///< amount: how wide a left-out along the middle, mm
  StartLower,          ///< amount: new start off the scalp, mm
  MoreBackcomb,        ///< amount: new backcomb depth, mm
  BreakWithLeftOut,    ///< amount: thickness of the left-out across the pieces, mm
  AddLightPiece,       ///< amount: its thickness, mm
  TakeLess,            ///< amount: new share taken, 0..1
  FewerPieces,         ///< amount: how many go
  MorePieces,          ///< amount: how many come, each beside one that is there
};
inline constexpr std::array<RemedyKind, 11> kRemedyKinds{
    RemedyKind::Thinner,          RemedyKind::SplitWidth,    RemedyKind::DropMiddleOfLength,
    RemedyKind::DropMiddleOfWidth, RemedyKind::StartLower,   RemedyKind::MoreBackcomb,
    RemedyKind::BreakWithLeftOut, RemedyKind::AddLightPiece, RemedyKind::TakeLess,
    RemedyKind::FewerPieces,      RemedyKind::MorePieces};

/// What trying it showed of the finding it is for.
struct Effect {
  double before = 0, after = 0;  ///< the finding's size, in its unit; 0 after = gone
  std::string_view unit;
  /// Still there and over the line, only smaller ("leaves two smaller blocks").
  enum class Leaves { Nothing, UnderTheLine, Smaller } leaves = Leaves::Smaller;
};

struct Remedy {
  RemedyKind kind{};
  std::vector<plan::ItemId> pieces;     ///< what it changes; of AddLightPiece, what it is like
  double amount = 0;                    ///< see RemedyKind
  std::vector<plan::ScalpPoint> line;   ///< of the piece it adds, if it adds one
  std::optional<Effect> effect;         ///< nothing = not tried
};

/// Stable short name: "split-width".
std::string codeName(RemedyKind kind);
/// "mm", "of the hair", "pieces".
std::string_view unitOf(RemedyKind kind);
/// A size as it is read: "12 cm²", "40 %", "1.5 levels".
std::string sizeText(double size, std::string_view unit);
/// "Split the width: strips of 2 mm with left-outs between", and, once tried,
/// what it showed.
std::string sentenceOf(const Remedy& remedy);

/// The edit, twins included. Empty when its pieces are gone, when it changes
/// nothing, or when it would break a rule (rules.h).
plan::ChangeSet editOf(const plan::Plan& plan, const Remedy& remedy);

}  // namespace combdraft::advise
