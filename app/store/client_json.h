#pragma once
// One client as JSON text: read with limits, fields of newer programs kept, written
// the same way each time.
#include <string>
#include <string_view>

#include "app/store/client_file.h"
#include "engine/base/result.h"

namespace combdraft::store {

inline constexpr std::string_view kClientFormat = "combdraft client";
inline constexpr int kClientVersion = 1;
namespace limits {
inline constexpr std::size_t kClientBytes = 4u << 20;
inline constexpr std::size_t kClientTests = 500, kClientPhotos = 200, kClientOffers = 500, kClientVisits = 1000;
}  // namespace limits

/// Errors: those of the JSON text, NotAPlan ("a client file would be right"),
/// VersionTooNew, and each field's with its place.
Result<ClientFile> readClient(std::string_view text);
std::string writeClient(const ClientFile& file);

}  // namespace combdraft::store
