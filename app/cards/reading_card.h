#pragma once
// How one reading came about: what was seen, its colour, its range and what
// moves it most, the strand from root to end, light and dark, contrast.
#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QWidget>
#include <map>
#include <memory>

#include "app/live/look_result.h"

class QGridLayout;
class QVBoxLayout;

namespace combdraft::cards {

class HistogramDrawing;

class ReadingCard : public QWidget {
  Q_OBJECT

 public:
  explicit ReadingCard(QWidget* parent = nullptr);

  /// 0 = whole head, then the regions in order. Puts the keyboard there.
  void turnTo(int reading);
  int reading() const { return which_->currentIndex(); }
  void set(const live::LookResult& result);
  /// What the active choice of a plan wants, beside the readings.
  void setAims(const plan::Plan& plan);
  /// Nothing known yet: another plan was opened.
  void clear();
  enum class Age { OfThisPlan, OfThePlanBefore };
  void setAge(Age age);
  /// All that is shown, as sentences: for a screen reader, and for tests.
  QString text() const { return which_->accessibleDescription(); }
  QPushButton* mover(std::size_t i) { return movers_[i]; }
  QComboBox* which() { return which_; }
  QPushButton* aimButton() { return aim_; }
  HistogramDrawing* histogram() { return histogram_; }

 Q_SIGNALS:
  /// The user wants to see or change an assumption.
  void assumptionWanted(const std::string& key);
  /// The user wants to see or change what is wanted of a reading.
  void aimWanted(int reading);

 private:
  QLabel* addLine(QVBoxLayout* column);
  QLabel* addFact(QGridLayout* grid, const QString& name, const QString& tip = {});
  void fill();
  void showAim();
  void show(const look::Reading& reading, const look::RegionReading* region);
  void describe();

  std::shared_ptr<const look::Readings> readings_;
  colour::Light light_{};
  std::map<std::string, plan::Target> targets_;
  double tolerance_levels_ = 0;  ///< of the aims; set with them
  QComboBox* which_;
  QPushButton* aim_;
  QLabel *age_, *empty_;
  QWidget* body_;
  QLabel* swatch_;
  QLabel *level_, *warmth_, *lightness_, *range_, *error_, *a_, *b_, *seen_, *skin_, *lightShare_, *darkShare_;
  HistogramDrawing* histogram_;
  QLabel* parts_[3];
  QLabel *contrast_, *moversText_;
  QPushButton* movers_[2];
};

}  // namespace combdraft::cards
