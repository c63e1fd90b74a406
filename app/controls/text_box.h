#pragma once
// Several lines of text with their label. Every letter is taken at once, so that
// nothing typed waits for anything; Tab goes on to the next field.
#include <QLabel>
#include <QPlainTextEdit>
#include <QWidget>

namespace combdraft::controls {

class TextBox : public QWidget {
  Q_OBJECT

 public:
  /// `maxBytes` counts UTF-8; `lines` is the height.
  TextBox(const QString& label, const QString& emptyText, int lines, qsizetype maxBytes,
          QWidget* parent = nullptr);

  /// Shows a text (no signal); the cursor stays when it is the same.
  void setText(const QString& text);
  void setMixed();
  QPlainTextEdit* edit() { return edit_; }

 Q_SIGNALS:
  /// `goesOn` = not the first change since the box was entered or filled.
  void edited(const QString& text, bool goesOn);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void commit();

  const QString emptyText_;
  const qsizetype maxBytes_;
  QPlainTextEdit* edit_;
  QLabel* problem_;
  bool goesOn_ = false, filling_ = false;
};

}  // namespace combdraft::controls
