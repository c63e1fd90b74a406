#pragma once
// Days as the reader's language writes them, wherever one is shown. What is stored and
// what is typed into a field is ISO ("2026-11-28").
#include <QDateTime>
#include <QString>
#include <string>

namespace combdraft::words {

/// "28.11.2026", "11/28/2026": the locale's short form with all digits of the year; ""
/// for a day that is none.
QString dateText(const QDate& date);
/// "29. November 2026, 08:46": the month as a word, so that no day is read as a month.
QString momentText(const QDateTime& when);
/// Of a stored day; what is none stands as it is.
QString dateText(const std::string& iso);

}  // namespace combdraft::words
