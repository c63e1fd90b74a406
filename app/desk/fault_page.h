#pragma once
// What the program wrote down when it ended itself: to read, to copy, to
// remove. Nothing is sent.
#include <QWidget>

#include "app/store/fault_report.h"

class QPlainTextEdit;
class QPushButton;

namespace combdraft::desk {

class FaultPage : public QWidget {
  Q_OBJECT

 public:
  explicit FaultPage(QWidget* parent = nullptr);

  void fill(const std::vector<store::FaultReport>& reports);
  QPlainTextEdit* text() { return text_; }
  QPushButton* copyButton() { return copy_; }
  QPushButton* removeButton() { return remove_; }

 Q_SIGNALS:
  void done();
  void copied();
  void removeWanted();

 protected:
  void keyPressEvent(QKeyEvent* event) override;

 private:
  QPlainTextEdit* text_;
  QPushButton *copy_, *remove_;
};

}  // namespace combdraft::desk
