#pragma once
// An error as the window says it.
#include <QFileInfo>
#include <QString>

#include "app/words/engine_words.h"
#include "engine/base/result.h"

namespace combdraft::desk {

/// With the file's name only: a folder may hold a person's name, and the client
/// looks at the screen too. The command line says the whole path.
inline QString errorText(Error error) {
  error.file = QFileInfo(QString::fromStdString(error.file)).fileName().toStdString();
  return words::inWords(error);
}

}  // namespace combdraft::desk
