#include "app/desk/menu_corner.h"

#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QMenuBar>
#include <QPushButton>
#include <algorithm>

namespace combdraft::desk {
namespace {

constexpr int kLongestName_letters = 28;
constexpr int kMenuRim_px = 26;  // beside a menu's word
constexpr int kHeight_px = 28;

}  // namespace

MenuCorner::MenuCorner(QMenuBar* menus) : QWidget(menus), menus_(menus) {
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(10);
  file_ = new QLabel(this);
  file_->setTextFormat(Qt::PlainText);
  file_->setProperty("soft", true);
  file_->setMinimumHeight(kHeight_px);
  row->addWidget(file_);
  row->addStretch(1);
  findings_ = new QPushButton(this);
  findings_->setProperty("quiet", true);
  findings_->setMinimumHeight(kHeight_px);
  findings_->setFocusPolicy(Qt::TabFocus);
  row->addWidget(findings_);
  menus_->setCornerWidget(this, Qt::TopRightCorner);
}

void MenuCorner::setFile(const QString& path, Kept kept) {
  const QString name = file_->fontMetrics().elidedText(QFileInfo(path).fileName(), Qt::ElideMiddle,
                                                       kLongestName_letters * file_->fontMetrics().averageCharWidth());
  file_->setText(path.isEmpty()            ? tr("not saved yet")
                 : kept == Kept::ReadOnly ? tr("%1: read only").arg(name)
                 : kept == Kept::NotSaved ? tr("%1: not saved").arg(name)
                                          : tr("%1: saved").arg(name));
  file_->setAccessibleName(file_->text());
  file_->setToolTip(path);
  fit();
}

void MenuCorner::setFindings(const QString& sign, const QString& text, const QString& tip) {
  findings_->setText(sign + text);
  findings_->setAccessibleName(text);
  findings_->setToolTip(tip);
  widest_px_ = std::max(widest_px_, findings_->sizeHint().width());
  fit();
}

void MenuCorner::setFindingsShown(bool isShown) {
  findings_->setVisible(isShown);
  fit();
}

void MenuCorner::setNoFile() {
  file_->clear();
  fit();
}

void MenuCorner::fit() {
  int menus = 0;
  for (const QAction* action : menus_->actions()) menus += menus_->fontMetrics().horizontalAdvance(action->text()) + kMenuRim_px;
  // The file's name does not move to and fro while the words beside it change.
  const int both = file_->sizeHint().width() + layout()->spacing() + (findings_->isHidden() ? 0 : widest_px_);
  const bool isShown = !file_->text().isEmpty() && menus + both + kMenuRim_px <= menus_->width();
  file_->setVisible(isShown);
  setMinimumWidth(isShown ? both : 0);
  menus_->setCornerWidget(this, Qt::TopRightCorner);  // takes the new width
}

QString MenuCorner::fileText() const { return file_->isHidden() ? QString() : file_->text(); }

}  // namespace combdraft::desk
