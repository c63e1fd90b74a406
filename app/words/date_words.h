#pragma once
// Days as the reader's language writes them, wherever one is shown. What is stored and
// what is typed into a field is ISO ("2026-11-28").
#include <QDate>
#include <QString>
#include <string>

namespace combdraft::words {

/// "28.11.2026", "11/28/2026": the locale's short form with all digits of the year; ""
/// for a day that is none.
QString dateText(const QDate& date);
/// Of a stored day; what is none stands as it is.
QString dateText(const std::string& iso);

}  // namespace combdraft::words
