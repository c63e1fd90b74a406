#pragma once
// The row of tools under the menus: an icon with its word for each, in as many lines as
// the words of the language need. No word is cut.
#include <QWidget>
#include <vector>

class QAction;

namespace combdraft::controls {
class FlowLayout;
}

namespace combdraft::desk {

class ToolRow : public QWidget {
 public:
  ToolRow(int icon_px, QWidget* parent);

  /// Commands that belong together: they stay on one line, set apart from the group before.
  void addGroup(const std::vector<QAction*>& commands);

  /// One line wide, and as high as the lines of the width that it has now.
  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;

 protected:
  bool event(QEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  void fit();

  const int icon_px_;
  controls::FlowLayout* flow_;
  int height_px_ = 0;  ///< 0 = no width yet: one line
};

}  // namespace combdraft::desk
