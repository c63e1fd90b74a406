#pragma once
// Unsaved work that was left behind: each plan with a picture, what became of
// its file, and what can be done with it.
#include <QFrame>
#include <optional>
#include <vector>

#include "app/store/left_plans.h"

class QLabel;
class QPushButton;
class QVBoxLayout;

namespace combdraft::desk {

/// "“Soft root”" or "Untitled plan".
QString leftTitle(const store::LeftPlan& left);
/// Which file it belongs to, and what became of that.
QString leftBelongs(const store::LeftPlan& left);
/// Whether it is opened without working out the look first.
bool opensSafely(const store::LeftPlan& left);

class LeftPlansBox : public QFrame {
  Q_OBJECT

 public:
  struct Row {
    QFrame* box = nullptr;
    QLabel* drawing = nullptr;
    QLabel* words = nullptr;
    QLabel* trouble = nullptr;
    /// Null where it does not apply.
    QPushButton *open = nullptr, *openSafely = nullptr, *compare = nullptr, *keep = nullptr, *discard = nullptr,
                *copy = nullptr;
  };

  explicit LeftPlansBox(QWidget* parent = nullptr);
  void fill(const std::vector<store::LeftPlan>& left);
  const std::vector<Row>& rows() const { return rows_; }
  bool areDrawingsDone() const { return nextDrawing_ >= rows_.size(); }

 Q_SIGNALS:
  void openWanted(const combdraft::store::LeftPlan& left);
  void openSafelyWanted(const combdraft::store::LeftPlan& left);
  void compareWanted(const combdraft::store::LeftPlan& left);
  void keepWanted(const combdraft::store::LeftPlan& left);
  void discardWanted(const combdraft::store::LeftPlan& left);
  /// It cannot be read: its bytes are wanted elsewhere.
  void copyWanted(const combdraft::store::LeftPlan& left);

 private:
  void addRow(const store::LeftPlan& left);
  void addButtons(Row& row, const store::LeftPlan& left, bool isReadable, QVBoxLayout* into);
  void drawNext();

  QVBoxLayout* column_;
  std::vector<Row> rows_;
  std::vector<store::LeftPlan> left_;
  std::vector<std::optional<plan::Plan>> plans_;
  std::size_t nextDrawing_ = 0;
  int round_ = 0;  ///< drawings of an older list stop
};

}  // namespace combdraft::desk
