#include "app/command/outcome.h"

#include <algorithm>
#include <iostream>

namespace combdraft::command {

Outcome outcomeOf(const Error& error) {
  switch (error.code) {
    case ErrorCode::FileMissing:
    case ErrorCode::FileIsDirectory:
    case ErrorCode::FileUnreadable:
    case ErrorCode::FileUnwritable:
    case ErrorCode::FileReadBackDiffers:
    case ErrorCode::FileNotSynced: return Outcome::FileTrouble;
    case ErrorCode::UnknownName: return Outcome::WrongUsage;
    case ErrorCode::Cancelled:
    case ErrorCode::OutOfMemory: return Outcome::OwnFault;
    default: return Outcome::DocumentWrong;
  }
}

Outcome worse(Outcome a, Outcome b) { return std::max(a, b); }

void complain(const std::string& message) {
  std::string line = "combdraft: " + message;
  // A file name or a value may hold a line break; a message is one line.
  for (char& c : line)
    if (c == '\n' || c == '\r' || c == '\t') c = ' ';
  std::cerr << line << '\n';
}

Outcome complain(const Error& error) {
  complain(describe(error));
  return outcomeOf(error);
}

}  // namespace combdraft::command
