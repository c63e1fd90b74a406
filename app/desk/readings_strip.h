#pragma once
// What the engine reports, region by region: a swatch, the level, lightness,
// how much of the hair is light, and how light and dark stand to each other.
// Values that belong to an older state of the plan are marked by a word and a
// shape, not only by colour.
#include <QFrame>
#include <QLabel>
#include <memory>
#include <vector>

#include "app/live/look_service.h"

class QScrollArea;

namespace combdraft::desk {

/// One region's words, as shown and as read out.
struct ReadingText {
  QString level;     ///< "Level 7.3" or "Level 10+"
  QString lightness; ///< "L* 54"; "L* 54 (51 to 58)" when the range is known
  QString light;     ///< "38 % light"
  QString contrast;  ///< "two clear levels"
};
ReadingText readingText(const look::Reading& reading, const look::Contrast* contrast);
/// The swatch of a reading under its light, for the screen.
QColor swatchColour(const look::Reading& reading, colour::Light light);

/// How much a tile shows; a low window keeps the room for the sheet. What is
/// not shown is still read out.
enum class Detail { All, LevelOnly };

class ReadingTile : public QFrame {
  Q_OBJECT

 public:
  ReadingTile(const QString& name, QWidget* parent);
  void set(const std::optional<look::Reading>& reading, const look::Contrast* contrast,
            colour::Light light);
  /// No reading yet.
  void await();
  void setFreshness(live::LookService::Freshness freshness);
  void setDetail(Detail detail);
  /// What is wanted here, in short and in full, and how the reading stands to it;
  /// empty texts for no aim.
  void setAim(const QString& brief, const QString& full, const QString& met);
  QString aimText() const { return aim_->text(); }
  QString sentence() const { return accessibleName(); }

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  void describe();

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
  const std::vector<ReadingTile*>& tiles() const { return tiles_; }
  QString stateText() const { return state_->text(); }

 protected:
  void changeEvent(QEvent* event) override;

 private:
  void fitHeight();

  QLabel* state_;
  std::shared_ptr<const look::Readings> readings_;
  QScrollArea* scroll_ = nullptr;
  Detail detail_ = Detail::All;
  std::vector<ReadingTile*> tiles_;  // whole head, then the regions in order
};

}  // namespace combdraft::desk
