#pragma once
// Questions and news inside the window: one line with buttons, never a box that
// blocks. Messages wait their turn.
#include <QFrame>
#include <QLabel>
#include <deque>
#include <functional>
#include <vector>

class QHBoxLayout;

namespace combdraft::desk {

struct MessageChoice {
  QString text;
  std::function<void()> run;  ///< may be empty: only closes the message
};

struct Message {
  enum class Kind { News, Caution } kind = Kind::News;
  QString text;
  std::vector<MessageChoice> choices;  ///< a "Close" button is added when empty
  QString topic;  ///< a newer message of the same topic replaces the older
};

class MessageBar : public QFrame {
  Q_OBJECT

 public:
  explicit MessageBar(QWidget* parent = nullptr);

  void say(Message message);
  /// Takes away the message of a topic, shown or waiting.
  void clear(const QString& topic);
  bool isShowing() const { return !waiting_.empty(); }
  QString text() const;
  /// The buttons now shown, for the keyboard and for tests.
  std::vector<class QPushButton*> buttons() const { return buttons_; }

 protected:
  void keyPressEvent(QKeyEvent* event) override;

 private:
  void next();
  void fill();

  std::deque<Message> waiting_;  // front = shown
  QLabel* sign_;
  QLabel* text_;
  QHBoxLayout* row_;
  std::vector<class QPushButton*> buttons_;
};

}  // namespace combdraft::desk
