#include "app/desk/readings_strip.h"

#include <QHBoxLayout>
#include <QPainter>
#include <QScrollArea>
#include <QScrollBar>
#include <QVBoxLayout>
#include <cmath>

#include "app/cards/target_words.h"
#include "app/controls/number_input.h"
#include "app/controls/theme.h"
#include "engine/colour/screen.h"
#include "engine/plan/plan_words.h"

namespace combdraft::desk {

using controls::shownNumber;
using Freshness = live::LookService::Freshness;

// Own choice: natural and bare hair of such lightness has a chroma of 15 and more.
constexpr double kGrey_chroma = 8;

ReadingText readingText(const look::Reading& reading, const look::Contrast* contrast) {
  ReadingText text;
  // Grey (white among dark, or ash): its lightness has a level, its colour has none.
  const bool grey = reading.level > 5.5 && std::hypot(reading.a, reading.b) < kGrey_chroma;
  const QString level = reading.level > 10.05 ? QStringLiteral("10+") : shownNumber(reading.level, 1);
  text.level = grey ? ReadingTile::tr("Light as %1").arg(level) : ReadingTile::tr("Level %1").arg(level);
  text.lightness = ReadingTile::tr("L* %1").arg(shownNumber(reading.lightness, 0));
  if (reading.rangeKnown)
    text.lightness = ReadingTile::tr("%1 (%2 to %3)")
                         .arg(text.lightness, shownNumber(reading.low, 0),
                              shownNumber(reading.high, 0));
  text.light = ReadingTile::tr("%1 % light").arg(shownNumber(100 * reading.light_share, 0));
  if (contrast) text.contrast = QString::fromUtf8(look::verdictWord(contrast->verdict).data());
  return text;
}

QColor swatchColour(const look::Reading& reading, colour::Light light) {
  const colour::Xyz xyz =
      colour::xyzFrom({reading.lightness, reading.a, reading.b}, colour::whitePoint(light));
  const std::array<double, 3> rgb = colour::linearSrgb(xyz, light);
  return QColor(colour::encodeSrgb(rgb[0]), colour::encodeSrgb(rgb[1]), colour::encodeSrgb(rgb[2]));
}

ReadingTile::ReadingTile(const QString& name, QWidget* parent) : QFrame(parent), name_(name) {
  setObjectName(QStringLiteral("tile"));
  setFocusPolicy(Qt::TabFocus);
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
  for (QLabel* label : {lightness_, share_, contrast_}) label->clear();
  swatch_ = QColor();
  setToolTip(tr("%1: being worked out").arg(title_->text()));
  describe();
  update();
}

void ReadingTile::set(const std::optional<look::Reading>& reading, const look::Contrast* contrast,
                       colour::Light light) {
  if (reading) {
    const ReadingText text = readingText(*reading, contrast);
    level_->setText(text.level);
    lightness_->setText(text.lightness);
    share_->setText(text.light);
    contrast_->setText(text.contrast);
    swatch_ = swatchColour(*reading, light);
    setToolTip(tr("%1: %2 of hair seen, sampling error %3 L*. %4")
                   .arg(title_->text(), tr("%1 cm²").arg(shownNumber(reading->seen_mm2 / 100, 0)),
                        shownNumber(reading->sampling_error, 2),
                        reading->rangeKnown
                            ? tr("The range comes from the assumptions, one at a time.")
                            : tr("Range not yet known.")));
  } else {
    level_->setText(tr("not seen"));
    for (QLabel* label : {lightness_, share_, contrast_}) label->clear();
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

void ReadingTile::setDetail(Detail detail) {
  for (QLabel* label : {lightness_, share_, contrast_}) label->setVisible(detail == Detail::All);
  layout()->activate();
  updateGeometry();
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
    if (!label->text().isEmpty()) parts << label->text();
  if (!aimSentence_.isEmpty()) parts << aimSentence_;
  if (freshness_ == Freshness::Lagging) parts << tr("of the plan before the last change");
  setAccessibleName(parts.join(QStringLiteral(", ")));
}

void ReadingTile::paintEvent(QPaintEvent* event) {
  QFrame::paintEvent(event);
  QPainter painter(this);
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

ReadingsStrip::ReadingsStrip(QWidget* parent) : QFrame(parent) {
  setObjectName(QStringLiteral("strip"));
  setAccessibleName(tr("Readings"));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(14, 4, 14, 6);
  column->setSpacing(3);
  state_ = new QLabel(this);
  state_->setProperty("soft", true);
  auto* head = new QHBoxLayout;
  head->addWidget(state_, 1);
  auto* promise = new QLabel(tr("A picture of the plan, not a promise; a test strand shows how far "
                                "this hair lightens."), this);
  promise->setObjectName(QStringLiteral("notAPromise"));
  promise->setProperty("soft", true);
  head->addWidget(promise);
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
    tiles_.push_back(tile);
  };
  add(tr("whole head"));
  for (int i = 0; i < look::kRegions; ++i)
    add(QString::fromUtf8(look::regionWord(static_cast<look::Region>(i)).data()));
  scroll->setWidget(row);
  fitHeight();
  column->addWidget(scroll);
  setFreshness(Freshness::Lagging);
}

void ReadingsStrip::fitHeight() {
  // Always as high as a tile and its scroll bar, whatever the font.
  scroll_->widget()->layout()->invalidate();
  scroll_->setFixedHeight(scroll_->widget()->sizeHint().height() + scroll_->horizontalScrollBar()->sizeHint().height());
}

void ReadingsStrip::setDetail(Detail detail) {
  if (detail == detail_) return;
  detail_ = detail;
  for (ReadingTile* tile : tiles_) tile->setDetail(detail);
  fitHeight();
}

void ReadingsStrip::changeEvent(QEvent* event) {
  QFrame::changeEvent(event);
  if (event->type() == QEvent::FontChange && scroll_ && scroll_->widget()) fitHeight();
}

void ReadingsStrip::set(const live::LookResult& result) {
  if (!result.frame.readings) return;
  const look::Readings& readings = *result.frame.readings;
  readings_ = result.frame.readings;
  tiles_.front()->set(readings.whole, nullptr, result.settings.light);
  for (std::size_t i = 0; i + 1 < tiles_.size(); ++i) {
    if (i < readings.regions.size()) {
      const look::RegionReading& region = readings.regions[i];
      tiles_[i + 1]->set(region.whole, &region.contrast, result.settings.light);
    } else {
      tiles_[i + 1]->set(std::nullopt, nullptr, result.settings.light);
    }
  }
}

void ReadingsStrip::setAims(const plan::Plan& plan) {
  const auto regions = plan::targetRegions();
  for (std::size_t i = 0; i < tiles_.size(); ++i) {
    const plan::Target target = cards::targetOf(plan, {}, regions[i]);
    plan::Target brief = target;  // the first of its aims
    if (brief.level) brief.contrast.reset();
    if (brief.level || brief.contrast) brief.brightest = brief.darkest = std::nullopt;
    const auto check = readings_ ? look::checkTarget(target, *readings_, i) : std::nullopt;
    const QString full = cards::aimText(target);
    tiles_[i]->setAim(cards::aimText(brief), full, check && !full.isEmpty() ? cards::metText(*check) : QString());
  }
  fitHeight();
}

void ReadingsStrip::clear() {
  readings_.reset();
  for (ReadingTile* tile : tiles_) tile->await();
}

void ReadingsStrip::setFreshness(Freshness freshness) {
  for (ReadingTile* tile : tiles_) tile->setFreshness(freshness);
  switch (freshness) {
    case Freshness::Fresh: state_->setText(tr("Readings")); break;
    case Freshness::Refining: state_->setText(tr("Readings \u25D4 first estimate, being refined")); break;
    case Freshness::Failed: state_->setText(tr("Readings of the last plan that could be worked out")); break;
    case Freshness::Lagging:
      state_->setText(tr("Readings \u25A8 of the plan before the last change, being worked out"));
      break;
  }
}

}  // namespace combdraft::desk
