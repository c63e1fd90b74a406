#include "app/controls/drop_widgets.h"

#include <QLayout>
#include <QWidget>

namespace combdraft::controls {
namespace {

bool takeOut(QLayout& layout, const QWidget* widget) {
  for (int i = 0; i < layout.count(); ++i) {
    QLayoutItem* item = layout.itemAt(i);
    if (item->widget() == widget) {
      delete layout.takeAt(i);
      layout.invalidate();
      return true;
    }
    QLayout* inner = item->layout();
    if (inner && takeOut(*inner, widget)) return true;
  }
  return false;
}

}  // namespace

void dropWidget(QWidget* widget) {
  const QWidget* parent = widget->parentWidget();
  if (parent && parent->layout()) takeOut(*parent->layout(), widget);
  QList<QWidget*> all = widget->findChildren<QWidget*>();
  all.append(widget);
  // Quiet before it is hidden: a field that loses the focus here would take its typing
  // into a card that is half rebuilt.
  for (QWidget* one : all) one->blockSignals(true);
  widget->hide();
  for (QWidget* one : all) {
    one->setObjectName(QString());
    one->setAccessibleName(QString());
    one->setAccessibleDescription(QString());
  }
  widget->deleteLater();
}

void dropContents(QLayout& layout) {
  while (QLayoutItem* item = layout.takeAt(0)) {
    if (QWidget* widget = item->widget())
      dropWidget(widget);
    else if (QLayout* inner = item->layout())
      dropContents(*inner);
    delete item;
  }
  layout.invalidate();
}

}  // namespace combdraft::controls
