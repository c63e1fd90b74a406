#pragma once
// Exit codes and messages of the command line.
#include <string>

#include "engine/base/result.h"

namespace combdraft::command {

enum class Outcome { Fine = 0, DocumentWrong = 1, WrongUsage = 2, FileTrouble = 3, OwnFault = 4 };

/// The exit code that fits an error.
Outcome outcomeOf(const Error& error);
/// The worse of two.
Outcome worse(Outcome a, Outcome b);
/// One line on standard error: "combdraft: FILE: place: what is wrong".
void complain(const std::string& message);
Outcome complain(const Error& error);

}  // namespace combdraft::command
