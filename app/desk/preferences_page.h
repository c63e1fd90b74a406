#pragma once
// What the user chooses for the whole program; every choice holds at once.
#include <QWidget>

#include "app/store/settings.h"

class QCheckBox;
class QPushButton;
class QVBoxLayout;

namespace combdraft::controls {
class NumberField;
class Segments;
class TextField;
}

namespace combdraft::desk {

class PreferencesPage : public QWidget {
  Q_OBJECT

 public:
  explicit PreferencesPage(QWidget* parent = nullptr);

  /// Shows values; no signal.
  void set(const store::Preferences& preferences, bool hints, int hintsPutAway);
  void setPolicy(const store::ClientPolicy& policy);
  void setRates(const store::Rates& rates);
  controls::Segments* unit() { return unit_; }
  controls::Segments* theme() { return theme_; }
  controls::Segments* textSize() { return textSize_; }
  controls::Segments* begin() { return begin_; }
  controls::NumberField* thickness() { return thickness_; }
  controls::NumberField* start() { return start_; }
  controls::NumberField* keepMonths() { return keep_; }
  controls::NumberField* testMonths(store::TestKind kind) { return tests_[static_cast<std::size_t>(kind)]; }
  controls::NumberField* perHour() { return perHour_; }
  controls::NumberField* perGram() { return perGram_; }
  controls::TextField* currency() { return currency_; }
  QCheckBox* hints() { return hints_; }
  QPushButton* hintsAgain() { return again_; }

 Q_SIGNALS:
  void ratesChanged(const combdraft::store::Rates& rates);
  void policyChanged(const combdraft::store::ClientPolicy& policy);
  void changed(const combdraft::store::Preferences& preferences);
  void hintsWanted(bool shown);
  void hintsAgainWanted();
  void keysWanted();
  void done();

 protected:
  void keyPressEvent(QKeyEvent* event) override;

 private:
  void buildPolicy(QVBoxLayout* column);
  void buildRates(QVBoxLayout* column);

  store::Preferences now_;
  store::ClientPolicy policy_;
  store::Rates rates_;
  controls::Segments *unit_, *theme_, *textSize_, *begin_, *language_;
  controls::NumberField *thickness_, *start_;
  controls::NumberField *keep_ = nullptr, *perHour_ = nullptr, *perGram_ = nullptr;
  controls::TextField* currency_ = nullptr;
  std::array<controls::NumberField*, store::kTestKinds> tests_{};
  QCheckBox* hints_;
  QPushButton* again_;
};

}  // namespace combdraft::desk
