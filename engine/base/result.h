#pragma once
// Result<T>: a value or an Error. Bad input is an Error, never an exception.
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

#include "engine/base/expect.h"

namespace combdraft {

/// Grouped by the part of the program that reports them. The app turns a code
/// and its arguments into a sentence; the engine holds no translated text.
enum class ErrorCode {
  // reading and writing files
  FileMissing = 100,
  FileIsDirectory,
  FileUnreadable,
  FileEmpty,
  FileTooLarge,
  FileUnwritable,
  FileReadBackDiffers,
  FileNotSynced,  ///< it stands in its place; whether it outlives a power cut is not known
  // JSON text
  JsonSyntax = 200,
  JsonTooDeep,
  JsonDuplicateKey,
  JsonNotFinite,
  JsonNotUtf8,
  // plan document
  NotAPlan = 300,
  VersionTooNew,
  VersionUnknown,
  FieldMissing,
  FieldWrongType,
  FieldOutOfRange,
  FieldUnknownWord,
  TooManyItems,
  TextTooLong,
  IdDuplicate,
  IdUnknown,
  ReferenceCycle,
  PointOffHead,
  MeasuresContradict,
  // what was asked of the engine
  UnknownName = 400,
  OutOfRange,
  Cancelled,
  OutOfMemory,
};

/// Stable short name of a code, for `--json` and tests: "field-out-of-range".
std::string codeName(ErrorCode code);

struct Error {
  ErrorCode code{};
  std::string where;              ///< JSON pointer, "line 3, column 7", file or item id
  std::vector<std::string> args;  ///< what was found, what would be right
  std::string file;               ///< file name as the user gave it; may be empty

  bool operator==(const Error&) const = default;
};

/// One English line: file, place, what was found and what would be right.
std::string describe(const Error& error);
/// What a file said, as it may be shown: at most some 600 bytes, control characters as "?".
std::string shownText(std::string_view text);

template <class T>
class [[nodiscard]] Result {
 public:
  Result(T value) : content_(std::move(value)) {}
  Result(Error error) : content_(std::move(error)) {}

  bool ok() const { return content_.index() == 0; }
  explicit operator bool() const { return ok(); }
  const T& value() const& {
    COMBDRAFT_EXPECT(ok(), content_.index());
    return std::get<0>(content_);
  }
  T&& value() && {
    COMBDRAFT_EXPECT(ok(), content_.index());
    return std::get<0>(std::move(content_));
  }
  const T& operator*() const& { return value(); }
  const T* operator->() const { return &value(); }
  const Error& error() const {
    COMBDRAFT_EXPECT(!ok(), content_.index());
    return std::get<1>(content_);
  }

 private:
  std::variant<T, Error> content_;
};

template <>
class [[nodiscard]] Result<void> {
 public:
  Result() = default;
  Result(Error error) : error_(std::move(error)) {}
  bool ok() const { return !error_; }
  explicit operator bool() const { return ok(); }
  const Error& error() const {
    COMBDRAFT_EXPECT(!ok(), 0);
    return *error_;
  }

 private:
  std::optional<Error> error_;
};

}  // namespace combdraft
