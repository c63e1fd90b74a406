#include "app/store/settings.h"

#include <QFileInfo>
#include <QSettings>
#include <QStandardPaths>

namespace combdraft::store {
namespace {

constexpr int kRecentPlans = 10;
const QString kDark = QStringLiteral("window/dark");
const QString kGrey = QStringLiteral("window/greySurround");
const QString kGeometry = QStringLiteral("window/geometry");
const QString kFolder = QStringLiteral("files/lastFolder");
const QString kRecent = QStringLiteral("recent");

}  // namespace

Settings::Settings(QString path) : path_(std::move(path)) {
  if (path_.isEmpty())
    path_ = QStandardPaths::writableLocation(QStandardPaths::AppConfigLocation) +
            QStringLiteral("/settings.ini");
}

bool Settings::isDark() const {
  return QSettings(path_, QSettings::IniFormat).value(kDark, false).toBool();
}
void Settings::setDark(bool dark) { QSettings(path_, QSettings::IniFormat).setValue(kDark, dark); }

bool Settings::isGreySurround() const {
  return QSettings(path_, QSettings::IniFormat).value(kGrey, false).toBool();
}
void Settings::setGreySurround(bool grey) {
  QSettings(path_, QSettings::IniFormat).setValue(kGrey, grey);
}

QByteArray Settings::windowGeometry() const {
  return QSettings(path_, QSettings::IniFormat).value(kGeometry).toByteArray();
}
void Settings::setWindowGeometry(const QByteArray& geometry) {
  QSettings(path_, QSettings::IniFormat).setValue(kGeometry, geometry);
}

QString Settings::lastFolder() const {
  return QSettings(path_, QSettings::IniFormat)
      .value(kFolder, QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation))
      .toString();
}
void Settings::setLastFolder(const QString& folder) {
  QSettings(path_, QSettings::IniFormat).setValue(kFolder, folder);
}

std::vector<RecentPlan> Settings::recent() const {
  QSettings settings(path_, QSettings::IniFormat);
  std::vector<RecentPlan> plans;
  const int count = std::min(settings.beginReadArray(kRecent), kRecentPlans);
  for (int i = 0; i < count; ++i) {
    settings.setArrayIndex(i);
    const QString path = settings.value(QStringLiteral("path")).toString();
    if (path.isEmpty()) continue;
    plans.push_back(
        {path, settings.value(QStringLiteral("title")).toString(), QFileInfo::exists(path)});
  }
  settings.endArray();
  return plans;
}

namespace {
void writeRecent(const QString& file, const std::vector<RecentPlan>& plans) {
  QSettings settings(file, QSettings::IniFormat);
  settings.remove(kRecent);
  settings.beginWriteArray(kRecent);
  int index = 0;
  for (const RecentPlan& plan : plans) {
    if (index == kRecentPlans) break;
    settings.setArrayIndex(index++);
    settings.setValue(QStringLiteral("path"), plan.path);
    settings.setValue(QStringLiteral("title"), plan.title);
  }
  settings.endArray();
}
}  // namespace

void Settings::addRecent(const QString& path, const QString& title) {
  std::vector<RecentPlan> plans = recent();
  std::erase_if(plans, [&](const RecentPlan& plan) { return plan.path == path; });
  plans.insert(plans.begin(), {path, title, true});
  writeRecent(path_, plans);
}

void Settings::removeRecent(const QString& path) {
  std::vector<RecentPlan> plans = recent();
  std::erase_if(plans, [&](const RecentPlan& plan) { return plan.path == path; });
  writeRecent(path_, plans);
}

}  // namespace combdraft::store
