#pragma once
// One line of text with its label, typed by a person: names, dates, lists. What
// was typed and refused stays in the field until it is put right or dropped
// with Escape.
#include <QLabel>
#include <QLineEdit>
#include <QWidget>
#include <functional>

namespace combdraft::controls {

struct TextFieldSpec {
  QString label;
  QString emptyText;  ///< shown in an empty field
  QString tip;
  int maxLength = 60;
};

class TextField : public QWidget {
  Q_OBJECT

 public:
  /// What is wrong with a text; "" = nothing, and then the text may have been put into
  /// the form that is kept.
  using Check = std::function<QString(QString&)>;

  explicit TextField(TextFieldSpec spec, QWidget* parent = nullptr);

  void setCheck(Check check) { check_ = std::move(check); }
  /// Shows a text (no signal). Typing under way stays.
  void setText(const QString& text);
  /// Shows that several things differ here; typing sets them all.
  void setMixed();
  void abandonTyping();
  QLineEdit* edit() { return edit_; }
  QString text() const { return text_; }
  QString problem() const { return problem_->isHidden() ? QString() : problem_->text(); }

 Q_SIGNALS:
  /// A new text that passed the check: one line, ends trimmed.
  void edited(const QString& text);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void commit();
  void refill();
  void showProblem(const QString& problem);

  const TextFieldSpec spec_;
  Check check_;
  QLineEdit* edit_;
  QLabel* problem_;
  QString text_;
  bool mixed_ = false;
};

/// A check for dates: empty, or a day, which becomes "2026-03-14".
QString dateProblem(QString& text);

}  // namespace combdraft::controls
