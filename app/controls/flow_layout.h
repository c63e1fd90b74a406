#pragma once
// Lays widgets out in a row that wraps, like words on a line.
#include <QLayout>
#include <vector>

namespace combdraft::controls {

class FlowLayout : public QLayout {
 public:
  explicit FlowLayout(QWidget* parent, int spacingX = 14, int spacingY = 6);
  ~FlowLayout() override;

  void addItem(QLayoutItem* item) override { items_.push_back(item); }
  int count() const override { return static_cast<int>(items_.size()); }
  QLayoutItem* itemAt(int index) const override;
  QLayoutItem* takeAt(int index) override;
  Qt::Orientations expandingDirections() const override { return {}; }
  bool hasHeightForWidth() const override { return true; }
  int heightForWidth(int width) const override;
  void setGeometry(const QRect& rect) override;
  QSize sizeHint() const override { return minimumSize(); }
  QSize minimumSize() const override;

 private:
  enum class Apply { No, Yes };
  int flow(const QRect& rect, Apply apply) const;

  std::vector<QLayoutItem*> items_;
  int spacingX_, spacingY_;
};

}  // namespace combdraft::controls
