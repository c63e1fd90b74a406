#pragma once
// A 64-bit content key for caches: equal content gives an equal key. Not for
// security.
#include <bit>
#include <concepts>
#include <cstdint>
#include <string_view>

#include "engine/base/random.h"

namespace combdraft {

class ContentHash {
 public:
  template <std::integral T>
  ContentHash& add(T value) {
    key_ = mix64(key_ ^ static_cast<std::uint64_t>(value));
    return *this;
  }
  ContentHash& add(double value) {
    return add(std::bit_cast<std::uint64_t>(value == 0 ? 0.0 : value));
  }
  ContentHash& add(std::string_view text) {
    add(text.size());
    for (const char c : text) add(static_cast<unsigned char>(c));
    return *this;
  }
  std::uint64_t key() const { return key_; }

 private:
  std::uint64_t key_ = 0x1234'5678'9ABC'DEF0ull;
};

}  // namespace combdraft
