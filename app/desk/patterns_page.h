#pragma once
// The page of patterns: a small drawing of each, what it is good for, for which
// hair it is not; use one, delete one's own, save what is selected as one.
#include <QThreadPool>
#include <QWidget>
#include <functional>
#include <vector>

#include "app/store/pattern_store.h"

class QFrame;
class QLabel;
class QLineEdit;
class QPlainTextEdit;
class QPushButton;
class QScrollArea;
class QVBoxLayout;

namespace combdraft::desk {

class PatternsPage : public QWidget {
  Q_OBJECT

 public:
  /// Where a used pattern goes: onto the head at work, or into a new plan.
  enum class Use { OnThisHead, BeginPlan };
  struct Row {
    QFrame* box = nullptr;
    QLabel* drawing = nullptr;
    QPushButton* use = nullptr;
    QPushButton* remove = nullptr;  ///< null for a starting pattern
  };

  explicit PatternsPage(QWidget* parent = nullptr);

  /// Drawings are made on the head of `plan`, on a thread of their own, one after the other.
  void fill(const store::Patterns& patterns, const plan::Plan& plan, Use use);
  /// Opens the form for a pattern of one's own from `sections` selected sections.
  void offerSaving(int sections);
  void closeForm();

  const std::vector<Row>& rows() const { return rows_; }
  const std::vector<store::StoredPattern>& patterns() const { return patterns_; }
  QString troubleText() const;
  bool isFormOpen() const;
  QLineEdit* nameField() { return name_; }
  QPlainTextEdit* goodForField() { return goodFor_; }
  QPlainTextEdit* notForField() { return notFor_; }
  QPushButton* saveButton() { return save_; }
  bool areDrawingsDone() const { return drawn_ >= rows_.size(); }
  /// Brings the pattern with this file into view and gives it the focus.
  void reveal(const QString& path);

 Q_SIGNALS:
  void done();
  void useWanted(const combdraft::store::StoredPattern& pattern);
  void saveWanted(const QString& name, const QString& goodFor, const QString& notFor);
  void removeWanted(const combdraft::store::StoredPattern& pattern);

 protected:
  void keyPressEvent(QKeyEvent* event) override;

 private:
  void buildForm(QVBoxLayout* column);
  void addRow(const store::StoredPattern& pattern, Use use);
  void drawAll(const plan::Plan& plan);
  void nameChanged();

  QLabel* trouble_;
  QFrame* form_;
  QLabel* formTitle_;
  QLineEdit* name_;
  QPlainTextEdit *goodFor_, *notFor_;
  QPushButton* save_;
  QLabel* nameHint_;
  QScrollArea* scroll_;
  QVBoxLayout* list_;
  std::vector<Row> rows_;
  std::vector<store::StoredPattern> patterns_;
  std::size_t drawn_ = 0;
  int round_ = 0;        ///< drawings of an older list are dropped
  QThreadPool drawers_;  // last: it waits for the one at work before the rest goes
};

}  // namespace combdraft::desk
