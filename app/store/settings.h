#pragma once
// What the program remembers for its user between starts. An INI file through
// QSettings: readable, one file, written atomically and shared safely between
// windows by Qt; a JSON file of our own would give us nothing more. Values that
// cannot be what they should are as if they were not there.
#include <QByteArray>
#include <QKeySequence>
#include <QString>
#include <QStringList>
#include <map>
#include <optional>
#include <vector>

#include "app/store/client_file.h"
#include "engine/base/result.h"
#include "engine/work/outcome.h"

class QSettings;

namespace combdraft::store {

/// A plan that was opened or saved lately. Titles only, never a person.
struct RecentPlan {
  QString path, title;
  bool exists = true;
};

enum class ThemeChoice { Light, Dark, System };
/// What the program begins with.
enum class Beginning { WhatWasOpen, StartPage };
/// What the window speaks; System = the first language of the system that it knows.
enum class Language { System, English, German };
enum class LengthUnit { Millimetre, Centimetre, Inch };

/// What the user chose for the whole program.
struct Preferences {
  LengthUnit unit = LengthUnit::Millimetre;
  ThemeChoice theme = ThemeChoice::Light;
  int textSize_percent = 100;   ///< one of kTextSizes
  double newThickness_mm = 5;   ///< of a new piece, within the plan's range
  double newStart_mm = 20;
  Beginning begin = Beginning::WhatWasOpen;
  Language language = Language::System;  ///< taken up when the program starts
  bool operator==(const Preferences&) const = default;
};
inline constexpr int kTextSizes[] = {90, 100, 115, 130, 150};

/// The user's own rates; nothing = not typed, and then nothing is reckoned with it.
struct Rates {
  std::optional<double> perHour, perGram;  ///< 0 to kHighestRate
  QString currency;                        ///< her word for it, "" = numbers alone
  bool isEmpty() const { return !perHour && !perGram; }
  bool operator==(const Rates&) const = default;
};
inline constexpr double kHighestRate = 1'000'000;

/// How the window was left.
struct WindowState {
  QByteArray geometry, splitter;
  int layer = -1;      ///< -1 = not known; so with the others
  int largeView = -1;  ///< -2 = all at one size
  int card = -1;
  bool operator==(const WindowState&) const = default;
};

/// The keys the user gave to commands, by id; an empty sequence is a command
/// without key. `refused`: stored entries that are no keys, as stored.
struct StoredKeys {
  std::map<QString, QKeySequence> keys;
  QStringList refused;
};

/// Looks at the settings before they are used. A file that is no settings file
/// is set aside; one that cannot be written is left alone. Own factors that cannot
/// be read are set aside within the file. Returns what to say to the user, or "".
QString mendSettings(const QString& path);

class Settings {
 public:
  /// `path` = the INI file; "" = the user's own configuration folder.
  explicit Settings(QString path = {});

  Preferences preferences() const;
  void setPreferences(const Preferences& preferences);
  /// Whether what was set last of preferences, keys, policy, rates and factors is in
  /// the file. The error names the file and what would be right.
  Result<void> written() const;
  bool isGreySurround() const;
  void setGreySurround(bool grey);
  WindowState windowState() const;
  void setWindowState(const WindowState& state);
  /// Whether the readings are folded to one line; low and tall windows each
  /// remember their own.
  enum class WindowHeight { Low, Tall };
  bool hasFoldedReadings(WindowHeight height) const;
  void setFoldedReadings(WindowHeight height, bool folded);
  /// Folder of the last file dialog.
  QString lastFolder() const;
  void setLastFolder(const QString& folder);
  /// Where a student's plan was opened last: a folder of its own, since a class sees it.
  QString studentsFolder() const;
  void setStudentsFolder(const QString& folder);

  StoredKeys keys() const;
  /// Keeps exactly these; commands not named have the keys they came with.
  void setKeys(const std::map<QString, QKeySequence>& keys);

  /// First-use hints: whether they are shown, and which were put away for good.
  bool hasHints() const;
  void setHints(bool shown);
  QStringList hintsPutAway() const;
  void setHintsPutAway(const QStringList& ids);

  /// What the user decided for all clients.
  ClientPolicy clientPolicy() const;
  void setClientPolicy(const ClientPolicy& policy);

  Rates rates() const;
  void setRates(const Rates& rates);

  /// Factors learned from the user's own heads, which she took over one by one.
  /// None where they cannot be read; what is stored then is never written over.
  work::OwnFactors ownFactors() const;
  void setOwnFactors(const work::OwnFactors& factors);

  /// Name of the newest report of a fault that was told; "" = none.
  QString toldFault() const;
  void setToldFault(const QString& name);

  /// Newest first, at most ten; those whose file is gone are marked.
  std::vector<RecentPlan> recent() const;
  void addRecent(const QString& path, const QString& title);
  void removeRecent(const QString& path);

 private:
  void finish(QSettings& settings);

  QString path_;
  bool isWritten_ = true;
};

/// What to say of settings that were not written.
QString unwrittenText(const Error& error);

}  // namespace combdraft::store
