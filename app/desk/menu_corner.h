#pragma once
// The corner of the menus, always in sight: which file this window works on and whether it
// holds all that is here, and what needs a look.
#include <QWidget>

class QLabel;
class QMenuBar;
class QPushButton;

namespace combdraft::desk {

class MenuCorner : public QWidget {
  Q_OBJECT

 public:
  enum class Kept { Saved, NotSaved, ReadOnly };

  explicit MenuCorner(QMenuBar* menus);

  /// `path`: "" while the plan has no file.
  void setFile(const QString& path, Kept kept);
  /// No plan is shown.
  void setNoFile();
  void setFindings(const QString& sign, const QString& text, const QString& tip);
  /// Beside the sheet and at the appointment.
  void setFindingsShown(bool isShown);
  /// Takes the place that the menus leave; the file's name goes before they do.
  void fit();

  QSize sizeHint() const override { return QWidget::sizeHint().expandedTo(minimumSize()); }

  QPushButton* findings() { return findings_; }
  QString fileText() const;

 private:
  QMenuBar* menus_;
  QLabel* file_;
  QPushButton* findings_;
  int widest_px_ = 0;  ///< that `findings_` was
};

}  // namespace combdraft::desk
