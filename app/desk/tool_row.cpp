#include "app/desk/tool_row.h"

#include <QAction>
#include <QEvent>
#include <QHBoxLayout>
#include <QPainter>
#include <QToolButton>

#include "app/controls/flow_layout.h"
#include "app/controls/plain_words.h"
#include "app/controls/theme.h"

namespace combdraft::desk {
namespace {

constexpr int kGap_px = 2;  // between two tools
// Room for the rule between two groups, and what is left free above and below it.
constexpr int kRule_px = 7, kRuleInset_px = 8;

// Some tools, and a rule before them where a group stands before them on the same line.
class ToolGroup : public QWidget {
 public:
  using QWidget::QWidget;

 protected:
  void paintEvent(QPaintEvent*) override {
    const bool mirrored = layoutDirection() == Qt::RightToLeft;
    const bool beginsLine = mirrored ? geometry().right() >= parentWidget()->width() - 1 : x() <= 0;
    if (beginsLine) return;
    QPainter painter(this);
    const int at_px = mirrored ? width() - 1 - kRule_px / 2 : kRule_px / 2;
    painter.fillRect(at_px, kRuleInset_px, 1, height() - 2 * kRuleInset_px, controls::currentTheme().line);
  }
};

}  // namespace

ToolRow::ToolRow(int icon_px, QWidget* parent)
    : QWidget(parent), icon_px_(icon_px), flow_(new controls::FlowLayout(this, kGap_px, kGap_px)) {
  flow_->setContentsMargins(0, 0, 0, 0);
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void ToolRow::addGroup(const std::vector<QAction*>& commands) {
  auto* group = new ToolGroup(this);
  auto* line = new QHBoxLayout(group);
  line->setContentsMargins(0, 0, 0, 0);
  line->setSpacing(kGap_px);
  if (flow_->count() > 0) line->addSpacing(kRule_px);
  for (QAction* command : commands) {
    auto* button = new QToolButton(group);
    button->setAutoRaise(true);
    button->setToolButtonStyle(Qt::ToolButtonTextUnderIcon);
    button->setIconSize({icon_px_, icon_px_});
    button->setDefaultAction(command);
    button->setFocusPolicy(Qt::TabFocus);
    const auto name = [button, command] {
      const QString said = controls::wordsOfButton(command->iconText());
      if (button->accessibleName() != said) button->setAccessibleName(said);
    };
    connect(command, &QAction::changed, button, name);  // the choice that is worked on may be renamed
    name();
    line->addWidget(button);
  }
  flow_->addWidget(group);
}

QSize ToolRow::sizeHint() const {
  int width = 0;
  for (int i = 0; i < flow_->count(); ++i) width += flow_->itemAt(i)->sizeHint().width() + (i == 0 ? 0 : kGap_px);
  return {width, minimumSizeHint().height()};
}

QSize ToolRow::minimumSizeHint() const {
  return {flow_->minimumSize().width(), height_px_ > 0 ? height_px_ : flow_->heightForWidth(QWIDGETSIZE_MAX)};
}

bool ToolRow::event(QEvent* event) {
  const bool done = QWidget::event(event);
  if (event->type() == QEvent::LayoutRequest) fit();  // a word or the font is another
  return done;
}

void ToolRow::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  fit();
}

void ToolRow::fit() {
  if (!testAttribute(Qt::WA_Resized)) return;  // no width of its own yet
  const int needed_px = flow_->heightForWidth(width());
  if (needed_px == height_px_) return;
  height_px_ = needed_px;
  updateGeometry();
}

}  // namespace combdraft::desk
