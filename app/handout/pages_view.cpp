#include "app/handout/pages_view.h"

#include <QPainter>
#include <QScrollBar>
#include <QVBoxLayout>
#include <QWheelEvent>
#include <algorithm>

#include "app/controls/drop_widgets.h"
#include "app/controls/theme.h"
#include "app/paint/painter_backend.h"

namespace combdraft::handout {
namespace {

constexpr int kMargin_px = 14, kLeastWidth_px = 160, kMostWidth_px = 2400;

QString wordsOn(const paint::Page& page) {
  QStringList words;
  for (const paint::PlacedFigure& placed : page.figures)
    for (const paint::DrawingItem& item : placed.figure.items)
      if (item.text && item.role == paint::Role::Caption) words << item.text->words;
  return words.join(u' ');
}

}  // namespace

PageView::PageView(QWidget* parent) : QWidget(parent) { setAttribute(Qt::WA_OpaquePaintEvent); }

void PageView::setPage(const Pages& pages, std::size_t index) {
  pages_ = pages;
  index_ = index;
  drawn_ = {};
  setAccessibleName(tr("Page %1 of %2").arg(index + 1).arg(pages->size()));
  setAccessibleDescription(wordsOn((*pages)[index]));
  update();
}

void PageView::setWidth(int width_px) {
  const QSizeF size = (*pages_)[index_].size_mm;
  setFixedSize(width_px, static_cast<int>(width_px * size.height() / size.width()));
  drawn_ = {};
}

void PageView::paintEvent(QPaintEvent*) {
  const paint::Page& page = (*pages_)[index_];
  const QSize size_px = size() * devicePixelRatioF();
  if (drawn_.size() != size_px) {  // drawn when it is first seen, kept while it stays as it is
    drawn_ = QImage(size_px, QImage::Format_RGB32);
    drawn_.fill(Qt::white);
    QPainter painter(&drawn_);
    painter.scale(size_px.width() / page.size_mm.width(), size_px.height() / page.size_mm.height());
    paint::paintPage(painter, page);
  }
  QPainter painter(this);
  painter.drawImage(rect(), drawn_);
  painter.setPen(controls::currentTheme().edge);
  painter.drawRect(rect().adjusted(0, 0, -1, -1));
}

PagesView::PagesView(QWidget* parent) : QScrollArea(parent), inside_(new QWidget) {
  setWidgetResizable(true);
  setAccessibleName(tr("Pages"));
  setFocusPolicy(Qt::StrongFocus);  // the arrows and Page down go through the pages
  auto* column = new QVBoxLayout(inside_);
  column->setContentsMargins(kMargin_px, kMargin_px, kMargin_px, kMargin_px);
  column->setSpacing(kMargin_px);
  column->setAlignment(Qt::AlignHCenter | Qt::AlignTop);
  setWidget(inside_);
  connect(verticalScrollBar(), &QScrollBar::valueChanged, this, &PagesView::dropFar);
}

void PagesView::setPages(const Pages& pages) {
  pages_ = pages;
  while (views_.size() > pages->size()) {
    controls::dropWidget(views_.back());
    views_.pop_back();
  }
  while (views_.size() < pages->size()) {
    views_.push_back(new PageView(inside_));
    inside_->layout()->addWidget(views_.back());
  }
  for (std::size_t i = 0; i < views_.size(); ++i) views_[i]->setPage(pages, i);
  fit();
}

void PagesView::clear() {
  for (PageView* view : views_) {
    view->setAccessibleDescription({});  // it is read out what stands there
    controls::dropWidget(view);
  }
  views_.clear();
  pages_.reset();
}

void PagesView::reveal(const QString& heading) {
  const auto stands = [&](const paint::Page& page) {
    for (const paint::PlacedFigure& placed : page.figures)
      for (const paint::DrawingItem& item : placed.figure.items)
        if (item.text && item.text->weight == paint::TextRun::Weight::Bold && item.text->words == heading) return true;
    return false;
  };
  for (std::size_t i = 0; i < views_.size(); ++i)
    if (heading.isEmpty() || stands((*pages_)[i])) return verticalScrollBar()->setValue(views_[i]->y() - kMargin_px / 2);
}

void PagesView::zoom(double factor) {
  zoom_ = std::clamp(zoom_ * factor, 0.3, 4.0);
  fit();
}

void PagesView::fit() {
  const int room = width() - 2 * kMargin_px - verticalScrollBar()->sizeHint().width() - 4;
  const int width_px = std::clamp(static_cast<int>(std::min(room, 820) * zoom_), kLeastWidth_px, kMostWidth_px);
  for (PageView* view : views_) view->setWidth(width_px);
}

// A page's picture takes some ten MB: those in sight keep it, and one beside them each way.
void PagesView::dropFar() {
  const int top = verticalScrollBar()->value(), bottom = top + viewport()->height();
  for (PageView* view : views_) {
    const int room = view->height() + kMargin_px;
    if (view->y() > bottom + room || view->y() + view->height() < top - room) view->dropPicture();
  }
}

void PagesView::resizeEvent(QResizeEvent* event) {
  QScrollArea::resizeEvent(event);
  fit();
}

void PagesView::wheelEvent(QWheelEvent* event) {
  if (!event->modifiers().testFlag(Qt::ControlModifier)) return QScrollArea::wheelEvent(event);
  zoom(event->angleDelta().y() > 0 ? 1.15 : 1 / 1.15);
  event->accept();
}

}  // namespace combdraft::handout
