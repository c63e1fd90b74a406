#pragma once
// One look over its line art, as large as the place allows.
#include <QPixmap>
#include <QWidget>
#include <memory>

#include "app/live/look_result.h"
#include "app/paint/sheet_page.h"

namespace combdraft::desk {

class ComparePicture : public QWidget {
  Q_OBJECT

 public:
  explicit ComparePicture(QWidget* parent = nullptr);

  /// `look` may be null: the bare head is drawn then.
  void show(std::shared_ptr<const paint::Scene> scene, std::shared_ptr<const live::LookResult> look,
            head::ViewName view, paint::Ground ground);
  /// What to ask the engine for, so that it is sharp here.
  look::PictureRequest wanted(head::ViewName view) const;
  /// How often the picture was drawn (for tests).
  int drawn() const { return drawn_; }

 Q_SIGNALS:
  void resized();

 protected:
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  double scaleFor(head::ViewName view) const;

  std::shared_ptr<const paint::Scene> scene_;
  std::shared_ptr<const live::LookResult> look_;
  head::ViewName view_ = head::ViewName::Back;
  paint::Ground ground_ = paint::Ground::Paper;
  QPixmap picture_;  ///< null = to be drawn
  int drawn_ = 0;
};

}  // namespace combdraft::desk
