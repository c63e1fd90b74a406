#pragma once
// Patterns that come with the program and the user's own: one file each.
#include <QByteArray>
#include <QString>
#include <vector>

#include "app/words/engine_words.h"
#include "engine/plan/pattern.h"

namespace combdraft::store {

/// Where the user's own patterns stand.
QString patternsFolder();

struct StoredPattern {
  plan::Parts pattern;
  QString path;
  enum class Origin { Starting, Own } origin = Origin::Starting;

  QString name() const { return words::inWords(pattern.name); }
};

struct Patterns {
  std::vector<StoredPattern> all;  ///< the starting ones, the plain one first, then the user's by name
  std::vector<Error> broken;       ///< files that could not be read, with file and place
};

Patterns readPatterns(const QString& ownFolder);

/// Writes a pattern to a new file of the folder, which is made when it is
/// missing. Returns its path.
Result<QString> savePattern(const plan::Parts& pattern, const QString& ownFolder);
/// Takes a file away; what it held is returned, so that it can come back.
Result<QByteArray> removePattern(const QString& path);
/// Where it is now: its old name, or one beside it where that was taken meanwhile.
Result<QString> putPatternBack(const QString& path, const QByteArray& bytes);

}  // namespace combdraft::store
