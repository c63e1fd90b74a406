#include "app/handout/print_preview.h"

#include <QAbstractScrollArea>
#include <QPageLayout>
#include <QPrintPreviewWidget>
#include <QPrinter>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/handout/page_print.h"

namespace combdraft::handout {
namespace {

constexpr int kWidth_px = 820, kHeight_px = 880;

}  // namespace

PrintPreview::PrintPreview(Pages pages, const QPageLayout& layout, QWidget* parent)
    : QDialog(parent), pages_(std::move(pages)), printer_(std::make_unique<QPrinter>(QPrinter::HighResolution)) {
  setWindowTitle(pages_->size() == 1 ? tr("Print preview: 1 page") : tr("Print preview: %1 pages").arg(pages_->size()));
  setAttribute(Qt::WA_DeleteOnClose);
  setWindowModality(Qt::NonModal);
  resize(kWidth_px, kHeight_px);
  printer_->setFullPage(true);
  printer_->setPageLayout(layout);
  auto* column = new QVBoxLayout(this);
  auto* row = new QHBoxLayout;
  const auto button = [&](const QString& text, const QString& tip) {
    auto* made = new QPushButton(text, this);
    made->setToolTip(tip);
    made->setAccessibleName(text);
    made->setAutoDefault(false);
    made->setMinimumHeight(32);
    row->addWidget(made);
    return made;
  };
  sheets_ = new QPrintPreviewWidget(printer_.get(), this);
  connect(sheets_, &QPrintPreviewWidget::paintRequested, this, [this](QPrinter* printer) {
    // No range is set here, so that all pages are painted; those of a print are chosen there.
    static_cast<void>(printPages(*printer, *pages_, {}, {}));
  });
  auto* wide = button(tr("Page width"), tr("As wide as the window"));
  auto* whole = button(tr("Whole page"), tr("One page in the window"));
  auto* larger = button(tr("Larger"), tr("Nearer (Ctrl and plus)"));
  auto* smaller = button(tr("Smaller"), tr("Farther (Ctrl and minus)"));
  larger->setShortcut(QKeySequence::ZoomIn);
  smaller->setShortcut(QKeySequence::ZoomOut);
  row->addStretch(1);
  auto* print = button(tr("Print…"), tr("Choose a printer and print these pages"));
  auto* close = button(tr("Close"), tr("Close the preview (Escape)"));
  connect(wide, &QPushButton::clicked, sheets_, &QPrintPreviewWidget::fitToWidth);
  connect(whole, &QPushButton::clicked, sheets_, &QPrintPreviewWidget::fitInView);
  connect(larger, &QPushButton::clicked, sheets_, [this] { sheets_->zoomIn(); });
  connect(smaller, &QPushButton::clicked, sheets_, [this] { sheets_->zoomOut(); });
  connect(print, &QPushButton::clicked, this, &PrintPreview::printWanted);
  connect(close, &QPushButton::clicked, this, &QDialog::reject);
  column->addLayout(row);
  column->addWidget(sheets_, 1);
  sheets_->setAccessibleName(tr("Pages as they are printed"));
  sheets_->updatePreview();
  if (auto* area = sheets_->findChild<QAbstractScrollArea*>()) {
    area->setAccessibleName(tr("Pages as they are printed"));
    area->setFocus();  // the arrows and Page down go through the pages
  }
}

PrintPreview::~PrintPreview() { delete sheets_; }  // it has the printer in its hands

}  // namespace combdraft::handout
