#pragma once
// A row of buttons of which one is down: a small choice that is all in view.
#include <QBoxLayout>
#include <QButtonGroup>
#include <QLabel>
#include <QPushButton>
#include <QWidget>
#include <vector>

namespace combdraft::controls {

struct Segment {
  QString text;
  QString tip;
  QString icon;  ///< name in resources/icons, "" = text only
};

class Segments : public QWidget {
  Q_OBJECT

 public:
  /// `name` is the group's accessible name ("How it's worn").
  Segments(const QString& name, const std::vector<Segment>& segments, QWidget* parent = nullptr);

  /// How the row gives way when its words are wider than it is: `One` cuts them, `AsNeeded`
  /// takes as many lines as the words need.
  enum class Lines { One, AsNeeded };
  void setLines(Lines lines);
  /// -1 = none down (not chosen). No signal.
  void setCurrent(int index);
  /// None down, and it says that several things differ here.
  void setMixed();
  int current() const { return group_->checkedId(); }
  QAbstractButton* button(int index) { return group_->button(index); }

 Q_SIGNALS:
  void chosen(int index);

 protected:
  bool event(QEvent* event) override;
  bool eventFilter(QObject* watched, QEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  int count() const { return static_cast<int>(group_->buttons().size()); }
  int perLine(int lines) const { return (count() + lines - 1) / lines; }
  bool fits(int lines) const;
  void fit();
  void arrange(int lines);

  Lines mode_ = Lines::One;
  std::vector<QHBoxLayout*> lines_;
  QButtonGroup* group_;
  QLabel* mixed_;
};

}  // namespace combdraft::controls
