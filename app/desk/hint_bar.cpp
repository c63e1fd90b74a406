#include "app/controls/wrapped_label.h"
#include "app/desk/hint_bar.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

namespace combdraft::desk {

HintBar::HintBar(store::Settings& settings, QWidget* parent) : QFrame(parent), settings_(settings) {
  setObjectName(QStringLiteral("hint"));
  setAccessibleName(tr("Hint"));
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(14, 5, 14, 5);
  row->setSpacing(8);
  text_ = new controls::WrappedLabel(this);
  row->addWidget(text_, 1);
  gotIt_ = new QPushButton(tr("Got it"), this);
  gotIt_->setToolTip(tr("This hint does not come again"));
  noMore_ = new QPushButton(tr("No hints"), this);
  noMore_->setToolTip(tr("No hint comes again; Preferences can bring them back"));
  for (QPushButton* button : {gotIt_, noMore_}) {
    button->setMinimumHeight(30);
    button->setAccessibleName(button->text());
    row->addWidget(button);
  }
  connect(gotIt_, &QPushButton::clicked, this, [this] {
    settings_.setHintsPutAway(settings_.hintsPutAway() << id_);
    offer({});
  });
  connect(noMore_, &QPushButton::clicked, this, [this] {
    settings_.setHints(false);
    offer({});
  });
  QFrame::hide();
}

void HintBar::offer(const std::vector<Hint>& hints) {
  QString id, text;
  if (!hints.empty() && settings_.hasHints()) {
    const QStringList away = settings_.hintsPutAway();
    for (const Hint& hint : hints) {
      if (away.contains(hint.id)) continue;
      id = hint.id;
      text = hint.text;
      break;
    }
  }
  id_ = id;
  text_->setText(QStringLiteral("\u2139  ") + text);
  setVisible(!id.isEmpty());
}

QString HintBar::text() const { return isHidden() ? QString() : text_->text(); }

}  // namespace combdraft::desk
