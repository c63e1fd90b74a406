#include "app/store/plan_store.h"

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QFileInfo>

#include "engine/base/content_hash.h"
#include "engine/plan/field_info.h"
#include "engine/plan/json_writer.h"
#include "engine/plan/plan_file.h"

namespace combdraft::store {
namespace {

std::uint64_t keyOf(std::string_view bytes) { return ContentHash().add(bytes).key(); }

std::uint64_t keyOfFile(const QString& path) {
  QFile file(path);
  if (!file.open(QIODevice::ReadOnly) ||
      file.size() > static_cast<qint64>(plan::limits::kFileBytes))
    return 0;
  return keyOf(file.readAll().toStdString());
}

}  // namespace

Result<OpenedPlan> openPlan(const QString& path) {
  Result<plan::Plan> plan = plan::loadPlan(path.toStdString());
  if (!plan) return plan.error();
  const QString absolute = QFileInfo(path).absoluteFilePath();
  return OpenedPlan{std::move(plan).value(), {absolute, keyOfFile(absolute)}};
}

Result<document::FileIdentity> savePlan(const plan::Plan& plan, const QString& path) {
  const Result<void> saved = plan::savePlan(path.toStdString(), plan);
  if (!saved) return saved.error();
  return document::FileIdentity{QFileInfo(path).absoluteFilePath(), keyOf(plan::writePlan(plan))};
}

bool isChangedOnDisk(const document::FileIdentity& file) {
  if (file.path.isEmpty() || file.contentKey == 0 || !QFileInfo::exists(file.path)) return false;
  return keyOfFile(file.path) != file.contentKey;
}

QString shownTitle(const plan::Plan& plan, const QString& path) {
  if (!plan.info().title.empty()) return QString::fromStdString(plan.info().title);
  if (!path.isEmpty()) return QFileInfo(path).completeBaseName();
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
