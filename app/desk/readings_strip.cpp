#include "app/desk/readings_strip.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QPainter>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QStyleOption>
#include <QVBoxLayout>

#include "app/cards/target_words.h"
#include "app/controls/number_input.h"
#include "app/controls/theme.h"
#include "app/controls/wrapped_label.h"
#include "app/paint/reading_words.h"
#include "app/words/engine_words.h"
#include "engine/plan/plan_words.h"

namespace combdraft::desk {

using controls::shownNumber;
using Freshness = live::LookService::Freshness;

ReadingText readingText(const look::Reading& reading, const look::Contrast* contrast) {
  ReadingText text;
  text.level = paint::levelText(reading);
  text.lightness = ReadingTile::tr("L* %1").arg(paint::lightnessText(reading));
  text.light = ReadingTile::tr("%1 % light").arg(shownNumber(100 * reading.light_share, 0));
  if (contrast) {
    const std::string_view word = look::verdictWord(contrast->verdict);
    text.contrast = ReadingTile::tr("contrast:\n%1").arg(words::inWords(word));
  }
  return text;
}

ReadingTile::ReadingTile(const QString& name, QWidget* parent) : QAbstractButton(parent), name_(name) {
  setObjectName(QStringLiteral("tile"));
  setFocusPolicy(Qt::TabFocus);
  setCursor(Qt::PointingHandCursor);
  setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Preferred);
  auto* column = new QVBoxLayout(this);
  const int swatch = QFontMetrics(font()).height();
  column->setContentsMargins(6, swatch + 8, 3, 5);
  column->setSpacing(0);
  const auto line = [&](bool strong, bool soft) {
    auto* label = new QLabel(this);
    QFont f = label->font();
    f.setPointSizeF(f.pointSizeF() * (strong ? 1.0 : 0.88));
    f.setWeight(strong ? QFont::DemiBold : QFont::Normal);
    label->setFont(f);
    label->setProperty("soft", soft);
    label->setAttribute(Qt::WA_TransparentForMouseEvents);
    column->addWidget(label);
    return label;
  };
  title_ = line(false, false);
  title_->setText(name.at(0).toUpper() + name.mid(1));
  level_ = line(true, false);
  lightness_ = line(false, true);
  share_ = line(false, true);
  contrast_ = line(false, true);
  aim_ = line(false, false);
  aim_->hide();
  column->addStretch(1);  // tiles without an aim begin at the top as well
  await();
}

void ReadingTile::await() {
  level_->setText(tr("…"));
  leaveEmpty();
  swatch_ = QColor();
  setToolTip(tr("%1: being worked out").arg(title_->text()));
  describe();
  update();
}

void ReadingTile::leaveEmpty() {
  for (QLabel* label : {lightness_, share_}) label->clear();
  contrast_->setText(QStringLiteral("\n"));  // as high as one that is known
}

void ReadingTile::set(const std::optional<look::Reading>& reading, const look::Contrast* contrast,
                       colour::Light light) {
  if (reading) {
    const ReadingText text = readingText(*reading, contrast);
    level_->setText(text.level);
    lightness_->setText(text.lightness);
    share_->setText(text.light);
    contrast_->setText(text.contrast.isEmpty() ? QStringLiteral("\n") : text.contrast);
    swatch_ = paint::swatchColour(*reading, light);
    QStringList tip{tr("%1: %2 of hair seen, sampling error %3 L*.")
                        .arg(title_->text(), tr("%1 cm²").arg(shownNumber(reading->seen_mm2 / 100, 0)),
                             shownNumber(reading->sampling_error, 2)),
                    reading->rangeKnown ? tr("The range comes from the assumptions, one at a time.")
                                        : tr("Range not yet known."),
                    paint::lightnessMeaning()};
    if (contrast) tip << paint::contrastSentence(*contrast);
    tip << tr("Press to see how it came about.");
    setToolTip(tip.join(u'\n'));
  } else {
    level_->setText(tr("not seen"));
    leaveEmpty();
    swatch_ = QColor();
    setToolTip(tr("%1: too little of it is seen this way").arg(title_->text()));
  }
  describe();
  update();
}

void ReadingTile::setFreshness(Freshness freshness) {
  freshness_ = freshness;
  describe();
  update();
}

QSize ReadingTile::sizeHint() const { return layout()->sizeHint(); }

QString ReadingTile::line() const {
  QStringList parts{title_->text() + QStringLiteral(": ") + level_->text()};
  for (const QLabel* label : {lightness_, share_})
    if (!label->text().isEmpty()) parts << label->text();
  return parts.join(QStringLiteral(", "));
}

void ReadingTile::setAim(const QString& brief, const QString& full, const QString& met) {
  aim_->setText(met.isEmpty() ? brief : brief + u'\n' + met.section(QStringLiteral(", "), 0, 0));
  aim_->setVisible(!brief.isEmpty());
  aim_->setToolTip(met.isEmpty() ? full : full + QStringLiteral(": ") + met);
  aimSentence_ = aim_->toolTip();
  describe();
}

void ReadingTile::describe() {
  QStringList parts{title_->text(), level_->text()};
  for (const QLabel* label : {lightness_, share_, contrast_})
    if (!label->text().trimmed().isEmpty()) parts << label->text();
  if (!aimSentence_.isEmpty()) parts << aimSentence_;
  if (freshness_ == Freshness::Lagging) parts << tr("of the plan before the last change");
  setAccessibleName(parts.join(QStringLiteral(", ")).replace(u'\n', u' '));
}

void ReadingTile::paintEvent(QPaintEvent* event) {
  Q_UNUSED(event);
  QPainter painter(this);
  QStyleOption option;
  option.initFrom(this);
  style()->drawPrimitive(QStyle::PE_Widget, &option, &painter, this);  // ground and edge of the style sheet
  painter.setRenderHint(QPainter::Antialiasing);
  const controls::Theme& t = controls::currentTheme();
  const QRectF place(7.5, 6.5, width() - 15, QFontMetrics(font()).height() - 1);
  if (swatch_.isValid()) {
    painter.setPen(QPen(t.edge, 1));
    painter.setBrush(swatch_);
    painter.drawRoundedRect(place, 3, 3);
  }
  if (freshness_ == Freshness::Lagging) {  // a hatched corner: this value is behind
    painter.setPen(QPen(t.ink, 1.2));
    painter.setClipRect(place);
    for (double x = place.right() - place.height() * 1.6; x < place.right() + place.height(); x += 4)
      painter.drawLine(QPointF(x, place.bottom()), QPointF(x + place.height(), place.top()));
    painter.setClipping(false);
  }
  if (hasFocus()) {
    painter.setPen(QPen(t.accent, 2));
    painter.setBrush(Qt::NoBrush);
    painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), 6, 6);
  }
}

void ReadingTile::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) return click();
  QAbstractButton::keyPressEvent(event);
}

ReadingsStrip::ReadingsStrip(QWidget* parent) : QFrame(parent) {
  setObjectName(QStringLiteral("strip"));
  setAccessibleName(tr("Readings"));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(14, 4, 14, 6);
  column->setSpacing(3);
  state_ = new QLabel(this);
  state_->setProperty("soft", true);
  const auto quietButton = [this](QString name) {
    auto* button = new QPushButton(this);
    button->setProperty("quiet", true);
    button->setMinimumHeight(28);
    button->setObjectName(std::move(name));
    return button;
  };
  auto* head = new QHBoxLayout;
  head->setSpacing(4);
  fold_ = quietButton(QStringLiteral("foldReadings"));
  head->addWidget(fold_);
  connect(fold_, &QPushButton::clicked, this, &ReadingsStrip::foldWanted);
  head->addWidget(state_);
  whole_ = quietButton(QStringLiteral("wholeHeadLine"));
  whole_->setToolTip(tr("Press to see how it came about"));
  head->addWidget(whole_);
  connect(whole_, &QPushButton::clicked, this, [this] { Q_EMIT readingWanted(0); });
  assumptions_ = quietButton(QStringLiteral("assumptions"));
  assumptions_->setToolTip(tr("What these readings rest on where nobody measured this head"));
  head->addWidget(assumptions_);
  connect(assumptions_, &QPushButton::clicked, this, &ReadingsStrip::assumptionsWanted);
  auto* promise = new controls::WrappedLabel(
      tr("A picture of the plan, not a promise; a test strand shows how far this hair lightens."), this);
  promise->setObjectName(QStringLiteral("notAPromise"));
  promise->setProperty("soft", true);
  promise->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
  head->addWidget(promise, 1);
  column->addLayout(head);

  auto* scroll = scroll_ = new QScrollArea(this);
  scroll->setWidgetResizable(true);
  scroll->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  scroll->setAccessibleName(tr("Readings of each region"));
  scroll->setFocusPolicy(Qt::NoFocus);
  auto* row = new QWidget(scroll);
  auto* rowLayout = new QHBoxLayout(row);
  rowLayout->setContentsMargins(0, 0, 0, 0);
  rowLayout->setSpacing(4);
  const auto add = [&](const QString& name) {
    auto* tile = new ReadingTile(name, row);
    rowLayout->addWidget(tile, 1);
    connect(tile, &ReadingTile::clicked, this, [this, index = static_cast<int>(tiles_.size())] { Q_EMIT readingWanted(index); });
    tiles_.push_back(tile);
  };
  add(tr("whole head"));
  for (int i = 0; i < look::kRegions; ++i)
    add(words::inWords(look::regionWord(static_cast<look::Region>(i))));
  scroll->setWidget(row);
  fitHeight();
  column->addWidget(scroll);
  setAssumptionsChanged(0);
  setFreshness(Freshness::Lagging);
}

void ReadingsStrip::fitHeight() {
  // Always as high as a tile and its scroll bar, whatever the font.
  scroll_->widget()->layout()->invalidate();
  scroll_->setFixedHeight(scroll_->widget()->sizeHint().height() + scroll_->horizontalScrollBar()->sizeHint().height());
}

void ReadingsStrip::setDetail(Detail detail) {
  detail_ = detail;
  scroll_->setVisible(detail == Detail::All);
  fillLine();
}

void ReadingsStrip::fillLine() {
  const bool folded = detail_ == Detail::OneLine;
  fold_->setText(folded ? QStringLiteral("\u25B8") : QStringLiteral("\u25BE"));
  fold_->setAccessibleName(folded ? tr("Unfold the readings") : tr("Fold the readings to one line"));
  fold_->setToolTip(fold_->accessibleName());
  whole_->setVisible(folded);
  const ReadingTile& tile = *tiles_.front();
  whole_->setText(tile.line());
  whole_->setAccessibleName(tile.sentence());
  QPixmap colour(2 * fontMetrics().height(), fontMetrics().height());
  colour.fill(tile.swatch().isValid() ? tile.swatch() : QColor(Qt::transparent));
  whole_->setIcon(colour);
  whole_->setIconSize(colour.size());
  state_->setText(folded ? shortState_ : longState_);
  state_->setAccessibleName(longState_);
  state_->setToolTip(longState_);
}

void ReadingsStrip::setAssumptionsChanged(int count) {
  assumptions_->setText(count == 0   ? tr("Assumptions")
                        : count == 1 ? tr("\u25C6 1 assumption changed")
                                     : tr("\u25C6 %1 assumptions changed").arg(count));
  assumptions_->setAccessibleName(count == 0 ? tr("Assumptions, none changed") : assumptions_->text());
}

void ReadingsStrip::changeEvent(QEvent* event) {
  QFrame::changeEvent(event);
  if (event->type() == QEvent::FontChange && scroll_ && scroll_->widget()) fitHeight();
}

void ReadingsStrip::set(const live::LookResult& result) {
  if (!result.frame.readings) return;
  const look::Readings& readings = *result.frame.readings;
  readings_ = result.frame.readings;
  tiles_.front()->set(readings.whole, &readings.contrast, result.settings.light);
  for (std::size_t i = 0; i + 1 < tiles_.size(); ++i) {
    if (i < readings.regions.size()) {
      const look::RegionReading& region = readings.regions[i];
      tiles_[i + 1]->set(region.whole, &region.contrast, result.settings.light);
    } else {
      tiles_[i + 1]->set(std::nullopt, nullptr, result.settings.light);
    }
  }
  fillLine();
}

void ReadingsStrip::setAims(const plan::Plan& plan) {
  const auto regions = plan::targetRegions();
  const double tolerance_levels = look::targetTolerance_levels(plan.info().assumptions);
  for (std::size_t i = 0; i < tiles_.size(); ++i) {
    const plan::Target target = cards::targetOf(plan, {}, regions[i]);
    plan::Target brief = target;  // the first of its aims
    if (brief.level) brief.contrast.reset();
    if (brief.level || brief.contrast) brief.brightest = brief.darkest = std::nullopt;
    const auto check = readings_ ? look::checkTarget(target, *readings_, i, tolerance_levels) : std::nullopt;
    const QString full = cards::aimText(target);
    tiles_[i]->setAim(cards::aimText(brief), full, check && !full.isEmpty() ? cards::metText(*check) : QString());
  }
  fitHeight();
}

void ReadingsStrip::clear() {
  readings_.reset();
  for (ReadingTile* tile : tiles_) tile->await();
  fillLine();
}

void ReadingsStrip::setFreshness(Freshness freshness) {
  for (ReadingTile* tile : tiles_) tile->setFreshness(freshness);
  switch (freshness) {
    case Freshness::Fresh:
      shortState_ = longState_ = tr("Readings");
      break;
    case Freshness::Refining:
      shortState_ = tr("Readings \u25D4");
      longState_ = tr("Readings \u25D4 first estimate, being refined");
      break;
    case Freshness::Failed:
      shortState_ = tr("Readings \u26A0");
      longState_ = tr("Readings of the last plan that could be worked out");
      break;
    case Freshness::Lagging:
      shortState_ = tr("Readings \u25A8");
      longState_ = tr("Readings \u25A8 of the plan before the last change, being worked out");
      break;
  }
  fillLine();
}

}  // namespace combdraft::desk
