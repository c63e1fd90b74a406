#include "app/store/settings.h"

#include <QCoreApplication>
#include <QFile>
#include <QFileInfo>
#include <QSettings>
#include <QStandardPaths>
#include <algorithm>

#include "app/store/set_aside.h"
#include "app/words/engine_words.h"
#include "engine/plan/field_info.h"

namespace combdraft::store {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(store)
};

constexpr int kRecentPlans = 10;
constexpr qsizetype kMostSettings_bytes = 1 << 20;
const QString kFoldedLow = QStringLiteral("window/foldedReadingsLow");
const QString kFoldedTall = QStringLiteral("window/foldedReadingsTall");
const QString kGrey = QStringLiteral("window/greySurround");
const QString kGeometry = QStringLiteral("window/geometry");
const QString kSplitter = QStringLiteral("window/splitter");
const QString kLayer = QStringLiteral("window/layer");
const QString kLargeView = QStringLiteral("window/largeView");
const QString kCard = QStringLiteral("window/card");
const QString kUnit = QStringLiteral("preferences/unit");
const QString kTheme = QStringLiteral("preferences/theme");
const QString kTextSize = QStringLiteral("preferences/textSize");
const QString kThickness = QStringLiteral("preferences/newThickness_mm");
const QString kBegin = QStringLiteral("preferences/begin");
const QString kLanguage = QStringLiteral("preferences/language");
const QString kStart = QStringLiteral("preferences/newStart_mm");
const QString kHints = QStringLiteral("hints/shown");
const QString kPutAway = QStringLiteral("hints/putAway");
const QString kKeys = QStringLiteral("keys");
const QString kFolder = QStringLiteral("files/lastFolder");
const QString kStudents = QStringLiteral("files/studentsFolder");
const QString kToldFault = QStringLiteral("faults/told");
const QString kRecent = QStringLiteral("recent");
const QString kKeepMonths = QStringLiteral("clients/keep_months");
const QString kTestMonths = QStringLiteral("clients/test_months_");
const QString kPerHour = QStringLiteral("rates/perHour");
const QString kPerGram = QStringLiteral("rates/perGram");
const QString kCurrency = QStringLiteral("rates/currency");
const QString kFactors = QStringLiteral("work/ownFactors");
const QString kFactorsAside = QStringLiteral("work/ownFactors_setAside");

const QStringList kUnitWords{QStringLiteral("mm"), QStringLiteral("cm"), QStringLiteral("inch")};
const QStringList kBeginWords{QStringLiteral("what-was-open"), QStringLiteral("start-page")};
const QStringList kLanguageWords{QStringLiteral("system"), QStringLiteral("en"), QStringLiteral("de")};
const QStringList kThemeWords{QStringLiteral("light"), QStringLiteral("dark"), QStringLiteral("system")};

template <class Word>
Word wordOf(const QSettings& settings, const QString& key, const QStringList& words, Word otherwise) {
  const qsizetype at = words.indexOf(settings.value(key).toString());
  return at < 0 ? otherwise : static_cast<Word>(at);
}

double lengthOf(const QSettings& settings, const QString& key, const char* field, double otherwise) {
  bool isNumber = false;
  const double value = settings.value(key).toDouble(&isNumber);
  const plan::FieldInfo& info = plan::fieldInfo(field);
  return isNumber && value >= info.low && value <= info.high ? value : otherwise;
}

int wholeOf(const QSettings& settings, const QString& key, int low, int high, int otherwise) {
  bool isNumber = false;
  const int value = settings.value(key).toInt(&isNumber);
  return isNumber && value >= low && value <= high ? value : otherwise;
}

std::optional<double> rateOf(const QSettings& settings, const QString& key) {
  bool isNumber = false;
  const double value = settings.value(key).toDouble(&isNumber);
  return isNumber && value >= 0 && value <= kHighestRate ? std::optional(value) : std::nullopt;
}

// Documents where none is remembered yet.
QString folderIn(const QString& path, const QString& key) {
  return QSettings(path, QSettings::IniFormat).value(key, QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation)).toString();
}

QString placeOf(const QString& path) {
  if (!path.isEmpty()) return path;
  return QStandardPaths::writableLocation(QStandardPaths::AppConfigLocation) + QStringLiteral("/settings.ini");
}

bool isSettingsFile(const QString& path) {
  QFile file(path);
  if (!file.exists()) return true;
  if (!file.open(QIODevice::ReadOnly)) return true;  // that is another matter
  const QByteArray bytes = file.read(kMostSettings_bytes + 1);
  if (bytes.size() > kMostSettings_bytes || bytes.contains('\0')) return false;
  return QSettings(path, QSettings::IniFormat).status() != QSettings::FormatError;
}

// A text that was changed by hand may have become a list at its commas.
QString factorsText(const QSettings& settings) { return settings.value(kFactors).toStringList().join(u','); }

Result<work::OwnFactors> factorsIn(const QSettings& settings) { return work::readFactors(factorsText(settings).toStdString()); }

// Under another key, after what stands there already: nothing of it is lost.
void setFactorsAside(QSettings& settings) {
  QStringList kept = settings.value(kFactorsAside).toStringList();
  kept << factorsText(settings);
  settings.setValue(kFactorsAside, kept);
  settings.remove(kFactors);
}

}  // namespace

QString mendSettings(const QString& path) {
  const QString place = placeOf(path);
  if (!isSettingsFile(place)) {
    const Result<QString> aside = setAside(place);
    if (!aside) return Words::tr("The settings could not be read. %1").arg(words::inWords(aside.error()));
    return Words::tr("The settings could not be read and were set aside as %1. The program begins with those it came with.")
        .arg(QFileInfo(*aside).fileName());
  }
  QSettings settings(place, QSettings::IniFormat);
  if (!settings.isWritable())
    return Words::tr("The settings cannot be written to %1: what you choose holds until the program ends.").arg(place);
  if (const auto factors = factorsIn(settings); !factors) {
    setFactorsAside(settings);
    return Words::tr("Your own factors could not be read (%1). They were set aside in the settings as %2; the work list goes by the assumptions until you take new ones over.")
        .arg(words::inWords(factors.error()), kFactorsAside);
  }
  return {};
}

QString unwrittenText(const Error& error) {
  return Words::tr("%1 cannot be written: what you chose or taught the program last is gone when it ends, if not before. It needs room on the disk and the permission to write there; then choose it once more.")
      .arg(QString::fromStdString(error.file));
}

Settings::Settings(QString path) : path_(placeOf(path)) {}

void Settings::finish(QSettings& settings) {
  settings.sync();
  // A file of which a part cannot be understood is written all the same.
  isWritten_ = settings.status() != QSettings::AccessError;
}

Result<void> Settings::written() const {
  if (isWritten_) return {};
  return Error{ErrorCode::FileUnwritable, {}, {"the settings do not go onto the disk", "a folder that you may write to, with room on its disk"}, path_.toStdString()};
}

Preferences Settings::preferences() const {
  const QSettings settings(path_, QSettings::IniFormat);
  Preferences p;
  p.unit = wordOf(settings, kUnit, kUnitWords, p.unit);
  p.theme = wordOf(settings, kTheme, kThemeWords, p.theme);
  const int size = wholeOf(settings, kTextSize, 1, 1000, p.textSize_percent);
  if (std::find(std::begin(kTextSizes), std::end(kTextSizes), size) != std::end(kTextSizes))
    p.textSize_percent = size;
  p.newThickness_mm = lengthOf(settings, kThickness, "piece.thickness_mm", p.newThickness_mm);
  p.newStart_mm = lengthOf(settings, kStart, "piece.start_mm", p.newStart_mm);
  p.begin = wordOf(settings, kBegin, kBeginWords, p.begin);
  p.language = wordOf(settings, kLanguage, kLanguageWords, p.language);
  return p;
}

void Settings::setPreferences(const Preferences& p) {
  QSettings settings(path_, QSettings::IniFormat);
  settings.setValue(kUnit, kUnitWords[static_cast<int>(p.unit)]);
  settings.setValue(kTheme, kThemeWords[static_cast<int>(p.theme)]);
  settings.setValue(kTextSize, p.textSize_percent);
  settings.setValue(kThickness, p.newThickness_mm);
  settings.setValue(kStart, p.newStart_mm);
  settings.setValue(kBegin, kBeginWords[static_cast<int>(p.begin)]);
  settings.setValue(kLanguage, kLanguageWords[static_cast<int>(p.language)]);
  finish(settings);
}

bool Settings::isGreySurround() const {
  return QSettings(path_, QSettings::IniFormat).value(kGrey, false).toBool();
}
void Settings::setGreySurround(bool grey) {
  QSettings(path_, QSettings::IniFormat).setValue(kGrey, grey);
}

bool Settings::hasFoldedReadings(WindowHeight height) const {
  const bool low = height == WindowHeight::Low;
  return QSettings(path_, QSettings::IniFormat).value(low ? kFoldedLow : kFoldedTall, low).toBool();
}

void Settings::setFoldedReadings(WindowHeight height, bool folded) {
  QSettings(path_, QSettings::IniFormat).setValue(height == WindowHeight::Low ? kFoldedLow : kFoldedTall, folded);
}

WindowState Settings::windowState() const {
  const QSettings settings(path_, QSettings::IniFormat);
  return {settings.value(kGeometry).toByteArray(), settings.value(kSplitter).toByteArray(),
          wholeOf(settings, kLayer, 0, 2, -1), wholeOf(settings, kLargeView, -2, 5, -1),
          wholeOf(settings, kCard, 0, 99, -1)};
}

void Settings::setWindowState(const WindowState& state) {
  QSettings settings(path_, QSettings::IniFormat);
  settings.setValue(kGeometry, state.geometry);
  settings.setValue(kSplitter, state.splitter);
  settings.setValue(kLayer, state.layer);
  settings.setValue(kLargeView, state.largeView);
  settings.setValue(kCard, state.card);
}

StoredKeys Settings::keys() const {
  QSettings settings(path_, QSettings::IniFormat);
  StoredKeys stored;
  settings.beginGroup(kKeys);
  for (const QString& id : settings.allKeys()) {
    const QString text = settings.value(id).toString();
    const QKeySequence keys = QKeySequence::fromString(text, QKeySequence::PortableText);
    bool isReal = settings.value(id).typeId() == QMetaType::QString && keys.isEmpty() == text.isEmpty();
    for (int i = 0; i < keys.count(); ++i)
      isReal = isReal && keys[static_cast<unsigned>(i)].key() != Qt::Key_unknown &&
               keys[static_cast<unsigned>(i)].key() != Qt::Key(0);
    if (isReal)
      stored.keys[id] = keys;
    else
      stored.refused << QStringLiteral("%1=%2").arg(id, text);
  }
  return stored;
}

void Settings::setKeys(const std::map<QString, QKeySequence>& keys) {
  QSettings settings(path_, QSettings::IniFormat);
  settings.remove(kKeys);
  settings.beginGroup(kKeys);
  for (const auto& [id, sequence] : keys) settings.setValue(id, sequence.toString(QKeySequence::PortableText));
  finish(settings);
}

bool Settings::hasHints() const { return QSettings(path_, QSettings::IniFormat).value(kHints, true).toBool(); }
void Settings::setHints(bool shown) { QSettings(path_, QSettings::IniFormat).setValue(kHints, shown); }
QStringList Settings::hintsPutAway() const {
  return QSettings(path_, QSettings::IniFormat).value(kPutAway).toStringList();
}
void Settings::setHintsPutAway(const QStringList& ids) {
  QSettings(path_, QSettings::IniFormat).setValue(kPutAway, ids);
}

ClientPolicy Settings::clientPolicy() const {
  const QSettings settings(path_, QSettings::IniFormat);
  ClientPolicy policy;
  policy.keep_months = wholeOf(settings, kKeepMonths, 0, kMostMonths, 0);
  for (const auto& test : plan::words<TestKind>())
    policy.test_months[static_cast<std::size_t>(test.value)] =
        wholeOf(settings, kTestMonths + QLatin1String(test.word.data(), static_cast<qsizetype>(test.word.size())), 0, kMostMonths, 0);
  return policy;
}

void Settings::setClientPolicy(const ClientPolicy& policy) {
  QSettings settings(path_, QSettings::IniFormat);
  settings.setValue(kKeepMonths, policy.keep_months);
  for (const auto& test : plan::words<TestKind>())
    settings.setValue(kTestMonths + QLatin1String(test.word.data(), static_cast<qsizetype>(test.word.size())),
                      policy.test_months[static_cast<std::size_t>(test.value)]);
  finish(settings);
}

Rates Settings::rates() const {
  const QSettings settings(path_, QSettings::IniFormat);
  return {rateOf(settings, kPerHour), rateOf(settings, kPerGram), settings.value(kCurrency).toString()};
}

void Settings::setRates(const Rates& rates) {
  QSettings settings(path_, QSettings::IniFormat);
  const auto keep = [&](const QString& key, const std::optional<double>& value) { value ? settings.setValue(key, *value) : settings.remove(key); };
  keep(kPerHour, rates.perHour);
  keep(kPerGram, rates.perGram);
  settings.setValue(kCurrency, rates.currency);
  finish(settings);
}

work::OwnFactors Settings::ownFactors() const {
  const auto read = factorsIn(QSettings(path_, QSettings::IniFormat));
  return read ? *read : work::OwnFactors();
}

void Settings::setOwnFactors(const work::OwnFactors& factors) {
  QSettings settings(path_, QSettings::IniFormat);
  if (!factorsIn(settings)) setFactorsAside(settings);
  settings.setValue(kFactors, QString::fromStdString(work::writeFactors(factors)));
  finish(settings);
}

QString Settings::toldFault() const { return QSettings(path_, QSettings::IniFormat).value(kToldFault).toString(); }
void Settings::setToldFault(const QString& name) { QSettings(path_, QSettings::IniFormat).setValue(kToldFault, name); }

QString Settings::lastFolder() const { return folderIn(path_, kFolder); }
void Settings::setLastFolder(const QString& folder) {
  QSettings(path_, QSettings::IniFormat).setValue(kFolder, folder);
}

QString Settings::studentsFolder() const { return folderIn(path_, kStudents); }
void Settings::setStudentsFolder(const QString& folder) {
  QSettings(path_, QSettings::IniFormat).setValue(kStudents, folder);
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
