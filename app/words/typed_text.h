#pragma once
// What a person types or pastes, as a plan or a client's file can hold it: the reader takes
// no control characters, in a name no line break of any kind, and dates as ISO 8601 only.
#include <QString>

namespace combdraft::words {

/// One line: controls, line and paragraph separators become blanks, what is no character
/// (half of a pair, U+FFFE) the sign for one that is unknown.
QString oneLine(const QString& typed);

/// Several lines: like it, but every kind of line end becomes a line feed, and tabs stay.
QString severalLines(const QString& typed);

/// A day as it is kept, "2026-03-14"; also what has other marks between year, month and day
/// in that order ("2026/03/14", "2026.03.14"). "" for what is no such day.
QString isoDay(const QString& typed);

}  // namespace combdraft::words
