#pragma once
// A row of buttons of which one is down: a small choice that is all in view.
#include <QButtonGroup>
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

  /// -1 = none down (mixed or not chosen). No signal.
  void setCurrent(int index);
  int current() const { return group_->checkedId(); }
  QAbstractButton* button(int index) { return group_->button(index); }

 Q_SIGNALS:
  void chosen(int index);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  QButtonGroup* group_;
};

}  // namespace combdraft::controls
