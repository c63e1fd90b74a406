#pragma once
// The pages that a print would take, as the paper shows them, in a window beside the others.
#include <QDialog>
#include <memory>

#include "app/handout/page_maker.h"

class QPageLayout;
class QPrintPreviewWidget;

namespace combdraft::handout {

class PrintPreview : public QDialog {
  Q_OBJECT

 public:
  PrintPreview(Pages pages, const QPageLayout& layout, QWidget* parent = nullptr);
  ~PrintPreview() override;

  const Pages& pages() const { return pages_; }
  QPrintPreviewWidget* sheets() { return sheets_; }

 Q_SIGNALS:
  void printWanted();

 private:
  Pages pages_;
  std::unique_ptr<QPrinter> printer_;
  QPrintPreviewWidget* sheets_;
};

}  // namespace combdraft::handout
