#include "app/desk/proposal_view.h"

#include <QHeaderView>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

#include "app/cards/card_parts.h"
#include "app/cards/target_words.h"
#include "app/controls/number_input.h"
#include "app/controls/wrapped_label.h"
#include "app/desk/readings_strip.h"
#include "app/words/engine_words.h"

namespace combdraft::desk {
namespace {

using controls::shownNumber;

/// "Level 7.2, soft"; the contrast where one is wanted.
QString levelText(const look::Reading& reading, const look::Contrast* contrast) {
  const QString level = readingText(reading, nullptr).level;
  if (!contrast) return level;
  const QString name = contrast->verdict == look::ContrastVerdict::TooLittleHair
                           ? ProposalView::tr("too little hair")
                           : cards::contrastName(static_cast<plan::ContrastAim>(contrast->verdict));
  return ProposalView::tr("%1, %2").arg(level, name);
}

QString regionText(const look::Readings& readings, std::string_view word, const plan::Target& aim) {
  for (const look::RegionReading& region : readings.regions)
    if (look::regionWord(region.region) == word && region.whole)
      return levelText(*region.whole, aim.contrast ? &region.contrast : nullptr);
  return ProposalView::tr("not seen");
}

}  // namespace

QString minutesText(const advise::Effort& before, const advise::Effort& after) {
  const double more = std::round(after.minutes) - std::round(before.minutes);
  if (more == 0) return ProposalView::tr("Placing takes as long as before.");
  return (more < 0 ? ProposalView::tr("Saves about %1 min of placing.") : ProposalView::tr("Takes about %1 min more to place."))
      .arg(shownNumber(std::abs(more), 0));
}

ProposalView::ProposalView(QWidget* parent) : QWidget(parent) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(6);
  const auto label = [this, column](bool soft) {
    auto* made = new controls::WrappedLabel(this);
    made->setTextFormat(Qt::PlainText);
    made->setTextInteractionFlags(Qt::TextSelectableByMouse);
    made->setProperty("soft", soft);
    column->addWidget(made);
    return made;
  };
  manner_ = label(false);
  QFont font = manner_->font();
  font.setWeight(QFont::DemiBold);
  manner_->setFont(font);
  changes_ = label(false);
  effort_ = label(false);
  table_ = new QTableWidget(0, 4, this);
  table_->setAccessibleName(tr("Before and after"));
  table_->setHorizontalHeaderLabels({tr("Reading"), tr("Before"), tr("After"), tr("Aim")});
  table_->verticalHeader()->hide();
  table_->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
  table_->horizontalHeader()->setHighlightSections(false);
  table_->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
  table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
  table_->setSelectionMode(QAbstractItemView::SingleSelection);
  table_->setTabKeyNavigation(false);
  table_->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  table_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  table_->setWordWrap(true);
  column->addWidget(table_);
  size_ = label(true);
}

void ProposalView::addRow(const QString& what, const QString& before, const QString& after, const QString& wanted) {
  const int row = table_->rowCount();
  table_->setRowCount(row + 1);
  const QString texts[] = {what, before, after, wanted};
  for (int c = 0; c < 4; ++c) {
    auto* item = new QTableWidgetItem(texts[c]);
    // Aloud, a cell says what it is of.
    if (c > 0) item->setData(Qt::AccessibleTextRole, tr("%1, %2: %3").arg(what, table_->horizontalHeaderItem(c)->text(), texts[c]));
    table_->setItem(row, c, item);
  }
}

void ProposalView::show(const advise::Proposal& p, const advise::Aims& aims) {
  manner_->setText(words::inWords(advise::sentenceOf(p.manner)));
  QStringList changes;
  for (const std::string& one : p.changed) changes << QStringLiteral("\u2022 ") + words::inWords(one);
  changes_->setText(changes.join(u'\n'));
  effort_->setText(minutesText(p.before.effort, p.after.effort));

  table_->setRowCount(0);
  table_->setColumnHidden(Wanted, aims.empty());
  const auto aimOf = [&](std::string_view word) {
    const auto found = aims.find(std::string(word));
    return found == aims.end() ? plan::Target{} : found->second;
  };
  addRow(tr("Whole head"), levelText(p.before.readings.whole, nullptr), levelText(p.after.readings.whole, nullptr),
         cards::wantedText(aimOf("whole")));
  for (const look::RegionReading& region : p.before.readings.regions) {
    const std::string_view word = look::regionWord(region.region);
    if (aims.empty() ? !region.whole : !aims.count(std::string(word))) continue;
    const plan::Target aim = aimOf(word);
    addRow(cards::regionTitle(word), regionText(p.before.readings, word, aim), regionText(p.after.readings, word, aim),
           cards::wantedText(aim));
  }
  const auto numbers = [this](const QString& what, double before, double after, int decimals, const QString& unit) {
    addRow(what, shownNumber(before, decimals) + unit, shownNumber(after, decimals) + unit);
  };
  numbers(aims.empty() ? tr("Off the levels now") : tr("Off the aims"), p.before.miss_levels, p.after.miss_levels, 2,
          tr(" levels"));
  numbers(tr("Largest light block"), p.before.lightBlock_cm2, p.after.lightBlock_cm2, 1, tr(" cm²"));
  numbers(tr("Largest dark block"), p.before.darkBlock_cm2, p.after.darkBlock_cm2, 1, tr(" cm²"));
  numbers(tr("Pieces"), p.before.effort.pieces, p.after.effort.pieces, 0, {});
  numbers(tr("Foils"), p.before.effort.foils, p.after.effort.foils, 0, {});
  numbers(tr("To place"), p.before.effort.minutes, p.after.effort.minutes, 0, tr(" min"));
  size_->setText(p.after.size == advise::Standing::Size::Full
                     ? tr("Levels: worn down. Blocks: the largest at any opening. Minutes: placing only, by the assumptions.")
                     : tr("First figures, from few locks of hair. Try it to see all of it."));
  fitHeight();
}

void ProposalView::fitHeight() {
  table_->resizeRowsToContents();
  int height = table_->horizontalHeader()->sizeHint().height() + 2 * table_->frameWidth();
  for (int r = 0; r < table_->rowCount(); ++r) height += table_->rowHeight(r);
  table_->setFixedHeight(height + 2);
}

void ProposalView::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  fitHeight();
}

}  // namespace combdraft::desk
