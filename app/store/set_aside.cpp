#include "app/store/set_aside.h"

#include <QFile>

namespace combdraft::store {
namespace {

constexpr int kMostKept = 1000;

}  // namespace

Result<QString> setAside(const QString& path) {
  for (int count = 1; count < kMostKept; ++count) {
    QString name = path + QStringLiteral(".broken");
    if (count > 1) name += QStringLiteral("-%1").arg(count);
    if (QFile::exists(name)) continue;
    if (QFile::rename(path, name)) return name;
    break;
  }
  return Error{ErrorCode::FileUnwritable, {}, {"it cannot be renamed"}, path.toStdString()};
}

}  // namespace combdraft::store
