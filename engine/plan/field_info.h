#pragma once
// Every number of a plan file: its unit, range and default, once. Reader,
// writer, schema, documentation and the number fields on screen all follow
// this table (tests hold them to it).
#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace combdraft::plan {

struct FieldInfo {
  std::string_view name;  ///< "piece.thickness_mm": object kind, then the file's key
  std::string_view unit;  ///< "mm", "levels", "" for shares and counts
  double low, high;       ///< allowed, both ends included
  std::optional<double> standard;  ///< when the file does not say; nothing = not typed
  std::string_view what;  ///< one plain phrase
};

std::span<const FieldInfo> fieldTable();

/// The row of a field; a broken expectation when there is none.
const FieldInfo& fieldInfo(std::string_view name);

/// "0.2 to 40 mm"
std::string rangeText(const FieldInfo& field);

/// Limits of a plan file as a whole.
namespace limits {
inline constexpr std::size_t kFileBytes = 16u << 20;
inline constexpr std::size_t kDepth = 64;        ///< nested arrays and objects
inline constexpr std::size_t kValues = 500'000;  ///< JSON values of any kind
inline constexpr std::size_t kPieces = 2'000;
inline constexpr std::size_t kSections = 500;
inline constexpr std::size_t kFormulas = 200;
inline constexpr std::size_t kTreatments = 200;
inline constexpr std::size_t kNotes = 1'000;
inline constexpr std::size_t kChoices = 26;
inline constexpr std::size_t kPoints = 20'000;   ///< all lines and outlines together
inline constexpr std::size_t kTextBytes = 20'000;
inline constexpr std::size_t kLineBytes = 200;   ///< titles, names, labels: one line
inline constexpr std::size_t kIdBytes = 64;
inline constexpr std::size_t kLinePoints = 64;
inline constexpr std::size_t kOutlinePoints = 128;
inline constexpr std::size_t kRunPieces = 256;   ///< retired pieces, empty places
inline constexpr std::size_t kMixParts = 12;      ///< products, developers, additives of a formula
inline constexpr std::size_t kSmallList = 64;    ///< bands, drop-outs, targets
inline constexpr double kOffHair_mm = 15;        ///< how far outside the hairline a point may lie
}  // namespace limits

}  // namespace combdraft::plan
