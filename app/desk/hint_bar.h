#pragma once
// One hint at a time for someone who is new: a line with a way to put it away
// for good. Takes no focus and blocks nothing.
#include <QFrame>

#include "app/store/settings.h"

class QLabel;
class QPushButton;

namespace combdraft::desk {

struct Hint {
  QString id;    ///< stable
  QString text;
};

class HintBar : public QFrame {
  Q_OBJECT

 public:
  HintBar(store::Settings& settings, QWidget* parent = nullptr);

  /// Shows the first of these that was not put away; hides when there is none.
  void offer(const std::vector<Hint>& hints);
  QString shownId() const { return id_; }
  QString text() const;
  QPushButton* gotIt() { return gotIt_; }
  QPushButton* noMore() { return noMore_; }

 private:
  store::Settings& settings_;
  QString id_;
  QLabel* text_;
  QPushButton *gotIt_, *noMore_;
};

}  // namespace combdraft::desk
