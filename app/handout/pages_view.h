#pragma once
// Pages to look at, one below the other, drawn by the painter that prints them.
#include <QScrollArea>

#include "app/handout/page_maker.h"

namespace combdraft::handout {

/// One page; its name says which, its description what stands on it.
class PageView : public QWidget {
  Q_OBJECT

 public:
  explicit PageView(QWidget* parent = nullptr);
  void setPage(const Pages& pages, std::size_t index);
  void setWidth(int width_px);
  /// Its picture goes; it is drawn anew when it is next seen.
  void dropPicture() { drawn_ = {}; }
  bool isDrawn() const { return !drawn_.isNull(); }

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  Pages pages_;
  std::size_t index_ = 0;
  QImage drawn_;
};

class PagesView : public QScrollArea {
  Q_OBJECT

 public:
  explicit PagesView(QWidget* parent = nullptr);
  void setPages(const Pages& pages);
  /// Takes all pages out of sight at once; null until the next ones come.
  void clear();
  const Pages& pages() const { return pages_; }
  int count() const { return static_cast<int>(views_.size()); }
  /// Brings the page with this heading to the top; "" = the first.
  void reveal(const QString& heading);
  /// Wider or narrower pages; 1 = as wide as the view.
  void zoom(double factor);

 protected:
  void resizeEvent(QResizeEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;

 private:
  void fit();
  void dropFar();

  Pages pages_;
  std::vector<PageView*> views_;
  QWidget* inside_;
  double zoom_ = 1;
};

}  // namespace combdraft::handout
