#include "app/store/plan_store.h"

#include <QCoreApplication>
#include <QDir>
#include <QFileInfo>

#include "engine/base/content_hash.h"
#include "engine/plan/field_info.h"
#include "engine/plan/json_reader.h"
#include "engine/plan/json_writer.h"
#include "engine/plan/plan_file.h"

namespace combdraft::store {
namespace {

std::uint64_t keyOf(std::string_view bytes) { return ContentHash().add(bytes).key(); }

}  // namespace

std::uint64_t contentKeyOf(const QString& path) {
  plan::Disk disk;
  const auto bytes = disk.read(path.toStdString(), plan::limits::kFileBytes);
  return bytes ? keyOf(*bytes) : 0;
}

Result<OpenedPlan> openPlan(const QString& path) {
  // Read once, so that the key is that of what was opened.
  plan::Disk disk;
  const auto bytes = disk.read(path.toStdString(), plan::limits::kFileBytes);
  Result<plan::PlanAsRead> read = bytes ? plan::readPlanAsRead(*bytes) : bytes.error();
  if (read) {
    plan::PlanAsRead made = std::move(read).value();
    return OpenedPlan{std::move(made.plan), {QFileInfo(path).absoluteFilePath(), keyOf(*bytes)}, std::move(made.migration)};
  }
  Error error = read.error();
  error.file = path.toStdString();
  return error;
}

Result<document::FileIdentity> savePlan(const plan::Plan& plan, const QString& path) {
  const Result<void> saved = plan::savePlan(path.toStdString(), plan);
  if (!saved) return saved.error();
  return document::FileIdentity{QFileInfo(path).absoluteFilePath(), keyOf(plan::writePlan(plan))};
}

bool isChangedOnDisk(const document::FileIdentity& file) {
  if (file.path.isEmpty() || file.contentKey == 0 || !QFileInfo::exists(file.path)) return false;
  return contentKeyOf(file.path) != file.contentKey;
}

bool isProtected(const QString& path) {
  const QFileInfo file(path);
  constexpr auto kAnyone = QFile::WriteOwner | QFile::WriteGroup | QFile::WriteOther;
  return file.exists() && (!file.isWritable() || !(file.permissions() & kAnyone));  // the second for whoever may write all
}

QString nameOfFile(const QString& path) {
  const QString name = QFileInfo(path).fileName(), ending = u'.' + QLatin1String(kPlanEnding);
  return name.endsWith(ending) && name != ending ? name.chopped(ending.size()) : QFileInfo(path).completeBaseName();
}

QString shownTitle(const plan::Plan& plan, const QString& path) {
  if (!plan.info().title.empty()) return QString::fromStdString(plan.info().title);
  if (!path.isEmpty()) return nameOfFile(path);
  return QCoreApplication::translate("store", "Untitled plan");
}

QStringList examplePlans() {
  const QStringList places{QCoreApplication::applicationDirPath() +
                               QStringLiteral("/../share/combdraft/examples"),
                           QStringLiteral(COMBDRAFT_EXAMPLES_DIR)};
  for (const QString& place : places) {
    const QDir dir(place);
    QStringList plans;
    for (const QString& name : dir.entryList({QStringLiteral("*.json")}, QDir::Files, QDir::Name))
      plans << dir.absoluteFilePath(name);
    if (!plans.isEmpty()) return plans;
  }
  return {};
}

}  // namespace combdraft::store
