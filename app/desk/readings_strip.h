#pragma once
// What the engine reports, region by region: a swatch, the level, lightness,
// how much of the hair is light, and how light and dark stand to each other. A
// press on one opens how it came about.
// Values that belong to an older state of the plan are marked by a word and a
// shape, not only by colour.
#include <QAbstractButton>
#include <QFrame>
#include <QLabel>
#include <memory>
#include <vector>

#include "app/live/look_service.h"

class QPushButton;
class QScrollArea;

namespace combdraft::desk {

/// One region's words, as shown and as read out.
struct ReadingText {
  QString level;     ///< "Level 7.3" or "Level 10+"
  QString lightness; ///< "L* 54"; "L* 54 (51 to 58)" when the range is known
  QString light;     ///< "38 % light"
  QString contrast;  ///< "contrast:", and on a line of its own "two clear levels"
};
ReadingText readingText(const look::Reading& reading, const look::Contrast* contrast);

/// How much the strip shows; a low window keeps the room for the sheet. Folded,
/// it is one line about the whole head.
enum class Detail { All, OneLine };

/// One reading; a press opens how it came about.
class ReadingTile : public QAbstractButton {
  Q_OBJECT

 public:
  ReadingTile(const QString& name, QWidget* parent);
  void set(const std::optional<look::Reading>& reading, const look::Contrast* contrast,
            colour::Light light);
  /// No reading yet.
  void await();
  void setFreshness(live::LookService::Freshness freshness);
  /// What is wanted here, in short and in full, and how the reading stands to it;
  /// empty texts for no aim.
  void setAim(const QString& brief, const QString& full, const QString& met);
  QString aimText() const { return aim_->text(); }
  QString sentence() const { return accessibleName(); }
  /// "Whole head: Level 7.3, L* 54, 38 % light"
  QString line() const;
  QColor swatch() const { return swatch_; }
  QSize sizeHint() const override;

 protected:
  void paintEvent(QPaintEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  void describe();
  void leaveEmpty();

  const QString name_;
  QLabel *title_, *level_, *lightness_, *share_, *contrast_, *aim_;
  QString aimSentence_;
  QColor swatch_;
  live::LookService::Freshness freshness_ = live::LookService::Freshness::Lagging;
};

class ReadingsStrip : public QFrame {
  Q_OBJECT

 public:
  explicit ReadingsStrip(QWidget* parent = nullptr);
  void set(const live::LookResult& result);
  /// Nothing known yet: another plan was opened.
  void clear();
  void setFreshness(live::LookService::Freshness freshness);
  /// What the active choice of a plan wants, beside the readings.
  void setAims(const plan::Plan& plan);
  void setDetail(Detail detail);
  Detail detail() const { return detail_; }
  /// How many assumptions the plan changes.
  void setAssumptionsChanged(int count);
  const std::vector<ReadingTile*>& tiles() const { return tiles_; }
  QString stateText() const { return state_->text(); }
  QPushButton* foldButton() { return fold_; }
  QPushButton* assumptionsButton() { return assumptions_; }
  /// The whole head in one line, shown while folded.
  QPushButton* wholeLine() { return whole_; }

 Q_SIGNALS:
  /// How a reading came about is wanted: 0 = whole head, then the regions.
  void readingWanted(int index);
  void assumptionsWanted();
  void foldWanted();

 protected:
  void changeEvent(QEvent* event) override;

 private:
  void fitHeight();
  void fillLine();

  QLabel* state_;
  std::shared_ptr<const look::Readings> readings_;
  QString longState_, shortState_;
  QPushButton *fold_, *whole_, *assumptions_;
  QScrollArea* scroll_ = nullptr;
  Detail detail_ = Detail::All;
  std::vector<ReadingTile*> tiles_;  // whole head, then the regions in order
};

}  // namespace combdraft::desk
