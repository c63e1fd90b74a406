#pragma once
// A button for what cannot be taken back: it asks once more, in its place, without a
// box that blocks.
#include <QLabel>
#include <QPushButton>
#include <QWidget>

namespace combdraft::cards {

class ConfirmRow : public QWidget {
  Q_OBJECT

 public:
  /// `question` says what would be gone; `yes` names the act ("Remove it for good").
  ConfirmRow(const QString& text, const QString& question, const QString& yes, QWidget* parent = nullptr);

  void setText(const QString& text);
  /// Back to the button alone.
  void calm();
  QPushButton* ask() { return ask_; }
  QPushButton* yes() { return yes_; }
  QPushButton* no() { return no_; }

 Q_SIGNALS:
  void confirmed();

 private:
  QPushButton *ask_, *yes_, *no_;
  QWidget* asking_;
};

}  // namespace combdraft::cards
