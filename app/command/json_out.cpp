#include "app/command/json_out.h"

#include <cmath>
#include <nlohmann/json.hpp>

#include "engine/base/number_text.h"

namespace combdraft::command {

void JsonOut::before() {
  if (afterKey_) {
    afterKey_ = false;
    return;
  }
  if (depth_ == 0) return;
  if (!first_) out_ += ',';
  first_ = false;
  out_ += '\n';
  out_.append(static_cast<std::size_t>(depth_) * 2, ' ');
}

void JsonOut::open(char bracket) {
  before();
  out_ += bracket;
  ++depth_;
  first_ = true;
}

void JsonOut::close(char bracket) {
  --depth_;
  if (!first_) {
    out_ += '\n';
    out_.append(static_cast<std::size_t>(depth_) * 2, ' ');
  }
  out_ += bracket;
  first_ = false;
}

void JsonOut::key(std::string_view name) {
  before();
  out_ += quoted(name) + ": ";
  afterKey_ = true;
}

void JsonOut::text(std::string_view value) {
  before();
  out_ += quoted(value);
}

void JsonOut::number(double value, int decimals) {
  if (!std::isfinite(value)) return null();
  before();
  // Rounded, then as the shortest text: 0.5, not 0.500.
  const auto rounded = parseNumber(numberText(value, decimals));
  out_ += numberText(rounded && *rounded != 0 ? *rounded : 0.0);
}

void JsonOut::number(const std::optional<double>& value, int decimals) {
  value ? number(*value, decimals) : null();
}

void JsonOut::null() {
  before();
  out_ += "null";
}

void JsonOut::boolean(bool value) {
  before();
  out_ += value ? "true" : "false";
}

std::string JsonOut::quoted(std::string_view value) {
  return nlohmann::json(value).dump(-1, ' ', false, nlohmann::json::error_handler_t::replace);
}

}  // namespace combdraft::command
