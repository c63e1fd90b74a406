#include "app/desk/page_parts.h"

#include <QLabel>
#include <QPushButton>
#include <QWidget>

namespace combdraft::desk {

QVBoxLayout* pageColumn(QWidget* page, const QString& title, std::function<void()> back) {
  auto* centre = new QHBoxLayout(page);
  centre->setContentsMargins(24, 18, 24, 16);
  centre->addStretch(1);
  auto* box = new QWidget(page);
  box->setMaximumWidth(page->fontMetrics().averageCharWidth() * 140);
  centre->addWidget(box, 100);
  centre->addStretch(1);
  auto* column = new QVBoxLayout(box);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(10);
  auto* top = new QHBoxLayout;
  auto* label = new QLabel(title, box);
  QFont font = label->font();
  font.setPointSizeF(font.pointSizeF() * 1.7);
  font.setWeight(QFont::DemiBold);
  label->setFont(font);
  top->addWidget(label, 1);
  auto* done = new QPushButton(QObject::tr("Back"), box);
  done->setObjectName(QStringLiteral("done"));
  done->setMinimumHeight(34);
  done->setAccessibleName(QObject::tr("Back"));
  done->setToolTip(QObject::tr("Back to where you were (Escape)"));
  QObject::connect(done, &QPushButton::clicked, page, std::move(back));
  top->addWidget(done);
  column->addLayout(top);
  return column;
}

}  // namespace combdraft::desk
