#pragma once
// Writes JSON in one fixed order with numbers through engine/base/number_text.
#include <optional>
#include <string>
#include <string_view>

namespace combdraft::command {

class JsonOut {
 public:
  void beginObject() { open('{'); }
  void endObject() { close('}'); }
  void beginList() { open('['); }
  void endList() { close(']'); }
  void key(std::string_view name);
  void text(std::string_view value);
  /// Rounded to `decimals`.
  void number(double value, int decimals);
  void number(const std::optional<double>& value, int decimals);
  void null();
  void boolean(bool value);
  /// Everything so far; complete after the last end.
  const std::string& str() const { return out_; }

  /// Escaped and quoted; bytes that are not UTF-8 become U+FFFD.
  static std::string quoted(std::string_view value);

 private:
  void open(char bracket);
  void close(char bracket);
  void before();
  std::string out_;
  int depth_ = 0;
  bool first_ = true, afterKey_ = false;
};

}  // namespace combdraft::command
