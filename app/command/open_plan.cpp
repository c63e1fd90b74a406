#include "app/command/open_plan.h"

#include <filesystem>
#include <fstream>

#include "engine/plan/field_info.h"
#include "engine/plan/json_reader.h"

namespace combdraft::command {

Result<plan::Plan> openPlan(const std::string& file) {
  namespace fs = std::filesystem;
  const auto fail = [&](ErrorCode code, std::vector<std::string> args = {}) {
    return Error{code, "", std::move(args), file};
  };
  std::error_code trouble;
  const fs::file_status status = fs::status(fs::path(file), trouble);
  if (status.type() == fs::file_type::not_found) return fail(ErrorCode::FileMissing);
  if (trouble) return fail(ErrorCode::FileUnreadable, {trouble.message()});
  if (status.type() == fs::file_type::directory) return fail(ErrorCode::FileIsDirectory);
  if (status.type() == fs::file_type::regular) {
    const std::uintmax_t size = fs::file_size(fs::path(file), trouble);
    if (!trouble && size > plan::limits::kFileBytes)
      return fail(ErrorCode::FileTooLarge,
                  {std::to_string(size), std::to_string(plan::limits::kFileBytes)});
  }
  std::ifstream stream(file, std::ios::binary);
  if (!stream) return fail(ErrorCode::FileUnreadable, {"it may not be opened by you"});
  std::string text(plan::limits::kFileBytes + 1, '\0');
  stream.read(text.data(), static_cast<std::streamsize>(text.size()));
  if (stream.bad()) return fail(ErrorCode::FileUnreadable, {"reading stopped half way"});
  text.resize(static_cast<std::size_t>(stream.gcount()));
  if (text.empty()) return fail(ErrorCode::FileEmpty);
  if (text.size() > plan::limits::kFileBytes)
    return fail(ErrorCode::FileTooLarge,
                {"more than " + std::to_string(plan::limits::kFileBytes),
                 std::to_string(plan::limits::kFileBytes)});
  Result<plan::Plan> plan = plan::readPlan(text);
  if (plan) return plan;
  Error error = plan.error();
  error.file = file;
  return error;
}

}  // namespace combdraft::command
