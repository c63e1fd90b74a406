#pragma once
// When the program has to end itself (a broken expectation, an exception that
// nobody took, a fatal signal) it first writes the unsaved work of every window
// where that is still possible, and then a report for its user to read.
//
// A report holds no personal data: versions, which promise broke and where in
// the program, operands that are numbers or ids of the program's own making,
// how hair was worn and how much of it was looked at. No plan content, titles,
// paths or names. It stays in a folder that only the owner can read; nothing is
// ever sent by the program.
#include <QString>
#include <QStringList>
#include <string>

#include "engine/base/result.h"

namespace combdraft::store {

/// Where reports lie unless told otherwise.
QString faultFolder();

/// Installs the hooks of this process; `folder` is made when it is missing.
/// What is in the signal handlers touches neither heap nor locks: there the
/// autosaved snapshot, at most two seconds old, is what counts.
void installFaultHooks(const QString& folder);

/// What is looked at now, for the report: words of the program only, such as
/// "worn down, 30000 locks". At most 120 characters are kept.
void noteForFaults(const std::string& words);

struct FaultReport {
  QString path;
  QString text;
};
/// Reports that lie there, newest first. Files that cannot be read have a text
/// that says so.
std::vector<FaultReport> findFaultReports(const QString& folder);
/// Errors name the first file that could not be removed.
Result<void> removeFaultReports(const std::vector<FaultReport>& reports);

/// The text of a report about a broken expectation, from its message
/// ("expectation broken: EXPRESSION at FILE:LINE with OPERANDS"). Operands that
/// might be somebody's words are left out and counted.
std::string reportOfExpectation(const std::string& message);

}  // namespace combdraft::store
