#include "engine/base/result.h"

namespace combdraft {

std::string codeName(ErrorCode code) {
  switch (code) {
    case ErrorCode::FileMissing: return "file-missing";
    case ErrorCode::FileIsDirectory: return "file-is-directory";
    case ErrorCode::FileUnreadable: return "file-unreadable";
    case ErrorCode::FileEmpty: return "file-empty";
    case ErrorCode::FileTooLarge: return "file-too-large";
    case ErrorCode::FileUnwritable: return "file-unwritable";
    case ErrorCode::FileReadBackDiffers: return "file-read-back-differs";
    case ErrorCode::FileNotSynced: return "file-not-synced";
    case ErrorCode::JsonSyntax: return "json-syntax";
    case ErrorCode::JsonTooDeep: return "json-too-deep";
    case ErrorCode::JsonDuplicateKey: return "json-duplicate-key";
    case ErrorCode::JsonNotFinite: return "json-not-finite";
    case ErrorCode::JsonNotUtf8: return "json-not-utf8";
    case ErrorCode::NotAPlan: return "not-a-plan";
    case ErrorCode::VersionTooNew: return "version-too-new";
    case ErrorCode::VersionUnknown: return "version-unknown";
    case ErrorCode::FieldMissing: return "field-missing";
    case ErrorCode::FieldWrongType: return "field-wrong-type";
    case ErrorCode::FieldOutOfRange: return "field-out-of-range";
    case ErrorCode::FieldUnknownWord: return "field-unknown-word";
    case ErrorCode::TooManyItems: return "too-many-items";
    case ErrorCode::TextTooLong: return "text-too-long";
    case ErrorCode::IdDuplicate: return "id-duplicate";
    case ErrorCode::IdUnknown: return "id-unknown";
    case ErrorCode::ReferenceCycle: return "reference-cycle";
    case ErrorCode::PointOffHead: return "point-off-head";
    case ErrorCode::MeasuresContradict: return "measures-contradict";
    case ErrorCode::UnknownName: return "unknown-name";
    case ErrorCode::OutOfRange: return "out-of-range";
    case ErrorCode::Cancelled: return "cancelled";
    case ErrorCode::OutOfMemory: return "out-of-memory";
  }
  return "unknown";
}

std::string shownText(std::string_view text) {
  constexpr std::size_t kMost = 600;
  std::string shown;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const auto byte = static_cast<unsigned char>(text[i]);
    const bool startsLetter = (byte & 0xC0) != 0x80;
    if (startsLetter && shown.size() >= kMost) return shown + "...";
    const bool isControl = byte < 0x20 || byte == 0x7F || (byte == 0xC2 && i + 1 < text.size() && static_cast<unsigned char>(text[i + 1]) < 0xA0);
    if (isControl && byte == 0xC2) ++i;
    shown += isControl ? '?' : text[i];
  }
  return shown;
}

namespace {
std::string arg(const Error& e, std::size_t i) { return i < e.args.size() ? shownText(e.args[i]) : ""; }

std::string sentence(const Error& e) {
  switch (e.code) {
    case ErrorCode::FileMissing: return "there is no such file";
    case ErrorCode::FileIsDirectory:
      return "this is a folder; " + (e.args.size() > 1 ? arg(e, 1) : "a plan file") + " is needed";
    case ErrorCode::FileUnreadable: return "the file could not be read: " + arg(e, 0);
    case ErrorCode::FileEmpty: return "the file is empty; a plan is JSON text";
    case ErrorCode::FileTooLarge:
      return "the file has " + arg(e, 0) + " bytes; a plan has at most " + arg(e, 1);
    case ErrorCode::FileUnwritable:
      return "the file could not be written: " + arg(e, 0) + (e.args.size() > 1 ? "; needed is " + arg(e, 1) : std::string());
    case ErrorCode::FileReadBackDiffers:
      return "what was written does not read back the same; the file on disk was left as it was";
    case ErrorCode::FileNotSynced: return "the file stands in its place, and the disk did not confirm it: " + arg(e, 0);
    case ErrorCode::JsonSyntax: return "this is not valid JSON: " + arg(e, 0);
    case ErrorCode::JsonTooDeep: return "nested deeper than " + arg(e, 0) + " levels";
    case ErrorCode::JsonDuplicateKey: return "the key \"" + arg(e, 0) + "\" stands twice";
    case ErrorCode::JsonNotFinite: return "a number is too large to be read: " + arg(e, 0);
    case ErrorCode::JsonNotUtf8: return "the text is not UTF-8";
    case ErrorCode::NotAPlan: 
      return "this JSON is not a " + (e.args.size() > 1 ? arg(e, 1) : "plan") + ": " + arg(e, 0);
    case ErrorCode::VersionTooNew:
      return "the plan was written in format " + arg(e, 0) + "; this program reads up to format " +
             arg(e, 1) + ", so a newer program is needed";
    case ErrorCode::VersionUnknown:
      return "the plan says format " + arg(e, 0) + "; known formats are 1 to " + arg(e, 1);
    case ErrorCode::FieldMissing: return "\"" + arg(e, 0) + "\" is missing";
    case ErrorCode::FieldWrongType: return "found " + arg(e, 0) + ", needs " + arg(e, 1);
    case ErrorCode::FieldOutOfRange: return "found " + arg(e, 0) + ", allowed is " + arg(e, 1);
    case ErrorCode::FieldUnknownWord: return "found \"" + arg(e, 0) + "\", allowed: " + arg(e, 1);
    case ErrorCode::TooManyItems: return "found " + arg(e, 0) + ", at most " + arg(e, 1);
    case ErrorCode::TextTooLong:
      return "the text has " + arg(e, 0) + " bytes, at most " + arg(e, 1);
    case ErrorCode::IdDuplicate: return "the id \"" + arg(e, 0) + "\" is used twice";
    case ErrorCode::IdUnknown: return "there is no item with the id \"" + arg(e, 0) + "\"";
    case ErrorCode::ReferenceCycle: return "\"" + arg(e, 0) + "\" leads back to itself";
    case ErrorCode::PointOffHead:
      return "the point lies off the head: " + arg(e, 0) + ", allowed is " + arg(e, 1);
    case ErrorCode::MeasuresContradict: return "the head measures contradict each other: " + arg(e, 0);
    case ErrorCode::UnknownName: return "unknown name \"" + arg(e, 0) + "\"; known: " + arg(e, 1);
    case ErrorCode::OutOfRange: return "found " + arg(e, 0) + ", allowed is " + arg(e, 1);
    case ErrorCode::Cancelled: return "cancelled";
    case ErrorCode::OutOfMemory:
      return "there is not enough memory for this look; fewer locks or fewer views need less";
  }
  return "unknown error";
}
}  // namespace

std::string describe(const Error& error) {
  std::string text;
  if (!error.file.empty()) text += error.file + ": ";
  if (!error.where.empty()) text += shownText(error.where) + ": ";
  return text + sentence(error);
}

}  // namespace combdraft
