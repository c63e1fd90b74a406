#include "app/desk/findings_card.h"

#include <QLabel>
#include <QScrollArea>
#include <QScrollBar>
#include <QTimer>
#include <QVBoxLayout>

#include "app/controls/number_input.h"
#include "app/controls/wrapped_label.h"
#include "app/desk/finding_detail.h"
#include "app/desk/findings_list.h"
#include "app/desk/opening_chart.h"
#include "app/words/engine_words.h"
#include "engine/base/assumptions.h"

namespace combdraft::desk {
namespace {

QString weeks(const std::optional<double>& week) {
  return week ? controls::shownNumber(*week, 0) : FindingsCard::tr("over 26");
}

/// "Regrowth shows worn down after 8 weeks (6 to 11), tied back after 5 (4 to 7)."
QString growthText(const advise::Advice& advice) {
  QStringList lines;
  for (const look::Regrowth& r : advice.regrowth)
    lines << (!r.week && !r.earliest
                  ? (r.way == hair::WornWay::TiedBack ? FindingsCard::tr("Within 26 weeks the drawing shows no regrowth tied back, which is no sign that none will show")
                                                      : FindingsCard::tr("Within 26 weeks the drawing shows no regrowth worn down, which is no sign that none will show"))
                  : (r.way == hair::WornWay::TiedBack ? FindingsCard::tr("Regrowth shows tied back after about %1 weeks (%2 to %3)")
                                               : FindingsCard::tr("Regrowth shows worn down after about %1 weeks (%2 to %3)"))
                 .arg(weeks(r.week), weeks(r.earliest), weeks(r.latest)));
  QStringList striped;
  for (const look::Stripes& s : advice.stripes)
    if (s.judged && s.at[2].seen)
      striped << FindingsCard::tr("%1 (%2 mm)").arg(words::inWords(look::regionWord(s.region)), controls::shownNumber(s.at[2].width_mm, 0));
  if (!striped.isEmpty()) lines << FindingsCard::tr("Ribbons are seen in the salon mirror at: %1").arg(striped.join(QStringLiteral(", ")));
  return lines.join(u'\n');
}

}  // namespace

FindingsCard::FindingsCard(document::DocumentController& controller, document::ViewState& view, QWidget* parent)
    : QWidget(parent), controller_(controller), view_(view) {
  setAccessibleName(tr("Needs a look"));
  auto* outer = new QVBoxLayout(this);
  outer->setContentsMargins(0, 4, 0, 0);
  outer->setSpacing(4);
  // The chart stays in sight while a remedy is tried; all the rest scrolls.
  scroll_ = new QScrollArea(this);
  scroll_->setWidgetResizable(true);
  scroll_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  scroll_->setFocusPolicy(Qt::NoFocus);
  scroll_->setAccessibleName(tr("Needs a look"));
  scroll_->setObjectName(QStringLiteral("card"));
  auto* content = new QWidget(scroll_);
  scroll_->setWidget(content);
  auto* column = new QVBoxLayout(content);
  column->setContentsMargins(0, 4, 6, 0);
  column->setSpacing(8);
  list_ = new FindingsList(controller, this);
  chart_ = new OpeningChart(view, this);
  detail_ = new FindingDetail(controller, view, this);
  words_ = new controls::WrappedLabel(chart_->words(), this);
  words_->setProperty("soft", true);
  auto* heading = new QLabel(tr("Blocks where the hair opens"), this);
  QFont font = heading->font();
  font.setWeight(QFont::DemiBold);
  heading->setFont(font);
  outer->addWidget(heading);
  outer->addWidget(chart_);
  outer->addWidget(scroll_, 1);
  column->addWidget(list_);
  column->addWidget(detail_);
  column->addWidget(words_);
  growth_ = new controls::WrappedLabel(this);
  growth_->setTextInteractionFlags(Qt::TextSelectableByMouse);
  growth_->hide();
  column->addWidget(growth_);
  column->addStretch(1);
  connect(list_, &FindingsList::findingChosen, this, &FindingsCard::choose);
  connect(list_, &FindingsList::findingToldAgain, this, &FindingsCard::open);  // stays under the hand
  connect(detail_, &FindingDetail::tryingChanged, this, [this] {
    const bool trying = detail_->isTrying();
    list_->setEnabled(!trying);
    chart_->setBefore(trying && advice_ ? std::optional(advice_->advice.openings) : std::nullopt);
  });
  connect(&controller_, &document::DocumentController::changed, this, [this](const document::DocumentChange& change) {
    if (change.kind != document::DocumentChange::Kind::Replaced) return;
    advice_.reset();
    chart_->set(std::nullopt, 4, 6);
    words_->setText(chart_->words());
    growth_->hide();
  });
}

void FindingsCard::open(std::optional<std::size_t> finding) {
  // What belongs to the plan before the last change is listed, not opened.
  if (advice_ && advice_->revision != controller_.revision()) finding.reset();
  detail_->show(advice_, finding);
}

void FindingsCard::choose(std::optional<std::size_t> finding) {
  open(finding);
  // Once it has its place: the opened finding from its top, below a rest of the list.
  if (detail_->isVisible())
    QTimer::singleShot(40, detail_, [this] {
      if (detail_->isVisible()) scroll_->verticalScrollBar()->setValue(detail_->y() - fontMetrics().height());
    });
}

void FindingsCard::setLook(const live::LookResult& look) { detail_->setLook(look); }

void FindingsCard::setAdvice(std::shared_ptr<const live::AdviceResult> advice) {
  const Assumptions lines(controller_.plan().info().assumptions);
  chart_->set(advice->advice.openings, lines["block.light_cm2"], lines["block.dark_cm2"]);
  words_->setText(chart_->words());
  growth_->setText(growthText(advice->advice));
  growth_->setVisible(!growth_->text().isEmpty());
  if (detail_->isTrying()) return detail_->setTriedAdvice(*advice);
  advice_ = advice;
  list_->setAdvice(advice);  // tells the same finding again where it is still there
}

void FindingsCard::hideEvent(QHideEvent* event) {
  QWidget::hideEvent(event);
  view_.setMarks({});
}

void FindingsCard::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  list_->chooseAgain();
}

}  // namespace combdraft::desk
