#include "app/desk/compare_view.h"

#include <QHeaderView>
#include <QKeyEvent>
#include <QPushButton>
#include <QSignalBlocker>
#include <QSplitter>
#include <QVBoxLayout>
#include <cmath>

#include "app/cards/choices_card.h"
#include "app/cards/target_words.h"
#include "app/controls/number_input.h"
#include "app/controls/theme.h"
#include "app/controls/wrapped_label.h"
#include "app/desk/compare_picture.h"
#include "app/desk/readings_strip.h"
#include "app/paint/reading_words.h"
#include "app/words/engine_words.h"
#include "engine/plan/choice_edits.h"
#include "engine/plan/plan_words.h"

namespace combdraft::desk {
namespace {

constexpr double kSame_L = 1;  // no eye is promised less [own]
constexpr int kColumns = 5;

const look::Reading* readingAt(const std::shared_ptr<const live::LookResult>& look, int row) {
  if (!look || !look->frame.readings) return nullptr;
  const look::Readings& readings = *look->frame.readings;
  if (row == 0) return &readings.whole;
  const auto region = static_cast<std::size_t>(row - 1);
  return region < readings.regions.size() && readings.regions[region].whole ? &*readings.regions[region].whole : nullptr;
}

const look::Contrast& contrastAt(const look::Readings& readings, int row) {
  return row == 0 ? readings.contrast : readings.regions[static_cast<std::size_t>(row - 1)].contrast;
}

QString verdictText(const look::Contrast& contrast) {
  const std::string_view word = look::verdictWord(contrast.verdict);
  return words::inWords(word);
}

}  // namespace

QString differenceText(const look::Reading& left, const look::Reading& right) {
  const double lightness = right.lightness - left.lightness, levels = right.level - left.level;
  if (std::abs(lightness) < kSame_L) return CompareView::tr("the same");
  const QString by = controls::shownNumber(std::abs(levels), 1);
  return lightness > 0 ? QStringLiteral("\u25B2 ") + CompareView::tr("%1 lighter").arg(by)
                       : QStringLiteral("\u25BC ") + CompareView::tr("%1 darker").arg(by);
}

CompareView::CompareView(document::DocumentController& controller, document::ViewState& view, QWidget* parent)
    : QWidget(parent), controller_(controller), viewState_(view) {
  setAccessibleName(tr("Compare"));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(12, 8, 6, 6);
  column->setSpacing(6);
  auto* head = new QHBoxLayout;
  auto* title = new QLabel(tr("Compare"), this);
  QFont font = title->font();
  font.setPointSizeF(font.pointSizeF() * 1.25);
  font.setWeight(QFont::DemiBold);
  title->setFont(font);
  head->addWidget(title);
  head->addStretch(1);
  auto* viewLabel = new QLabel(tr("Seen from"), this);
  head->addWidget(viewLabel);
  viewChoice_ = new QComboBox(this);
  viewChoice_->setAccessibleName(tr("Seen from"));
  viewChoice_->setMinimumHeight(30);
  viewLabel->setBuddy(viewChoice_);
  for (const head::ViewName name : head::kAllViews) viewChoice_->addItem(paint::viewTitle(name));
  head->addWidget(viewChoice_);
  auto* close = new QPushButton(tr("Back to the sheet"), this);
  close->setToolTip(tr("Escape does it too"));
  head->addWidget(close);
  connect(close, &QPushButton::clicked, this, &CompareView::closed);
  column->addLayout(head);

  auto* split = new QSplitter(Qt::Vertical, this);
  split->setChildrenCollapsible(false);
  auto* pair = new QWidget(split);
  auto* row = new QHBoxLayout(pair);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(8);
  row->addWidget(buildSide(sides_[0], tr("Left side")), 1);
  row->addWidget(buildSide(sides_[1], tr("Right side")), 1);
  buildTable();
  split->addWidget(pair);
  split->addWidget(table_);
  split->setStretchFactor(0, 3);
  split->setStretchFactor(1, 2);
  column->addWidget(split, 1);
  auto* promise = new controls::WrappedLabel(tr("A picture of the plan, not a promise; a test strand shows how far this hair lightens."), this);
  promise->setProperty("soft", true);
  column->addWidget(promise);

  connect(viewChoice_, &QComboBox::currentIndexChanged, this, [this] {
    showPictures();
    showStates();
    Q_EMIT lookWanted();
  });
  connect(&controller_, &document::DocumentController::changed, this, [this] {
    if (!isVisible()) return;
    fillChoices();
    fillTable();
    showPictures();
    showStates();
  });
  connect(&viewState_, &document::ViewState::changed, this, [this](document::ViewState::Aspects aspects) {
    if (!isVisible()) return;
    if (aspects.testFlag(document::ViewState::Aspect::Layer)) showPictures();
    if (aspects.testFlag(document::ViewState::Aspect::Look)) showStates();
  });
}

QWidget* CompareView::buildSide(Side& side, const QString& name) {
  auto* box = new QWidget(this);
  auto* column = new QVBoxLayout(box);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(4);
  auto* row = new QHBoxLayout;
  side.which = new QComboBox(box);
  side.which->setAccessibleName(name);
  side.which->setMinimumHeight(30);
  row->addWidget(side.which);
  side.state = new QLabel(box);
  side.state->setProperty("soft", true);
  row->addWidget(side.state, 1);
  column->addLayout(row);
  side.picture = new ComparePicture(box);
  column->addWidget(side.picture, 1);
  connect(side.which, &QComboBox::currentIndexChanged, this, [this, &side] {
    side.look.reset();  // the look of another choice
    side.known.reset();
    fillTable();
    showPictures();
    showStates();
    Q_EMIT lookWanted();
  });
  connect(side.picture, &ComparePicture::resized, this, [this] {
    if (isVisible()) Q_EMIT lookWanted();
  });
  return box;
}

void CompareView::buildTable() {
  const auto regions = plan::targetRegions();
  table_ = new QTableWidget(static_cast<int>(regions.size()), kColumns, this);
  table_->setAccessibleName(tr("Readings side by side"));
  table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
  table_->setSelectionBehavior(QAbstractItemView::SelectRows);
  table_->setSelectionMode(QAbstractItemView::SingleSelection);
  table_->setShowGrid(false);
  table_->setTabKeyNavigation(false);
  table_->verticalHeader()->hide();
  table_->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
  table_->horizontalHeader()->setHighlightSections(false);
  table_->horizontalHeader()->setStretchLastSection(true);
  table_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  table_->verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
  table_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
  table_->setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
  for (int r = 0; r < table_->rowCount(); ++r)
    for (int c = 0; c < kColumns; ++c) table_->setItem(r, c, new QTableWidgetItem);
  for (std::size_t r = 0; r < regions.size(); ++r)
    table_->item(static_cast<int>(r), Where)->setText(cards::regionTitle(regions[r]));
}

void CompareView::begin() {
  fillChoices();
  const QString active = QString::fromStdString(controller_.plan().info().activeChoice);
  int left = 0;  // today
  for (int i = 1; i < sides_[0].which->count() && left == 0; ++i)
    if (sides_[0].which->itemData(i).toString() != active) left = i;
  sides_[0].which->setCurrentIndex(left);
  sides_[1].which->setCurrentIndex(std::max(0, sides_[1].which->findData(active)));
  const head::ViewName large = viewState_.largeView().value_or(head::ViewName::Back);
  for (int i = 0; i < viewChoice_->count(); ++i)
    if (head::kAllViews[static_cast<std::size_t>(i)] == large) viewChoice_->setCurrentIndex(i);
  fillTable();
  showPictures();
  showStates();
}

void CompareView::fillChoices() {
  const plan::Plan& plan = controller_.plan();
  for (Side& side : sides_) {
    const QSignalBlocker quiet(side.which);
    const bool none = side.which->count() == 0;
    const QString chosen = side.which->currentData().toString();
    QString fallback = QString::fromStdString(plan.info().activeChoice);
    side.which->clear();
    side.which->addItem(tr("Today"), QString());
    for (const auto& [id, choice] : plan::choicesOf(plan))
      side.which->addItem(cards::choiceName(id, *choice), QString::fromStdString(id));
    int row = none ? 0 : side.which->findData(chosen);
    if (row < 0) {  // that choice is gone
      row = side.which->findData(fallback);
      side.look.reset();
      side.known.reset();
    }
    side.which->setCurrentIndex(row);
  }
}

head::ViewName CompareView::view() const {
  return head::kAllViews[static_cast<std::size_t>(std::max(0, viewChoice_->currentIndex()))];
}

plan::ItemId CompareView::choiceOf(const Side& side) const { return side.which->currentData().toString().toStdString(); }

QString CompareView::nameOf(const Side& side) const { return side.which->currentText(); }

CompareView::Asked CompareView::wantedOf(const Side& side) const {
  Asked wanted{controller_.revision(), viewState_.lookSettings(), side.picture->wanted(view())};
  wanted.settings.choice = choiceOf(side);
  wanted.settings.subject = wanted.settings.choice.empty() ? look::Subject::Today : look::Subject::Planned;
  return wanted;
}

std::optional<CompareView::Ask> CompareView::next() {
  Side* stale = nullptr;
  for (Side& side : sides_) {
    if (side.known && side.known->isSame(wantedOf(side))) continue;
    if (!stale || side.turn < stale->turn) stale = &side;
  }
  if (!stale) return std::nullopt;
  stale->asked = wantedOf(*stale);
  stale->turn = ++turns_;
  return Ask{stale->asked->settings, {stale->asked->picture}};
}

void CompareView::set(const std::shared_ptr<const live::LookResult>& result) {
  for (Side& side : sides_) {
    if (!side.asked || !(side.asked->settings == result->settings)) continue;
    side.look = result;
    if (result->pass == live::Pass::Full && result->revision == side.asked->revision) side.known = side.asked;
  }
  fillTable();
  showPictures();
  showStates();
}

void CompareView::clear() {
  for (Side& side : sides_) {
    side.look.reset();
    side.known.reset();
    side.asked.reset();
  }
  fillChoices();
  fillTable();
  showPictures();
  showStates();
}

void CompareView::showPictures() {
  scene_ = std::make_shared<const paint::Scene>(controller_.plan(), plan::ItemId(), scene_.get());
  const bool grey = viewState_.surround() == document::Surround::MidGrey ||
                    controls::currentTheme().name == controls::ThemeName::Dark;  // as on the sheet
  const paint::Ground ground = grey ? paint::Ground::MidGrey : paint::Ground::Paper;
  for (Side& side : sides_) {
    side.picture->show(scene_, side.look, view(), ground);
    side.picture->setAccessibleName(tr("Look of %1, %2").arg(nameOf(side), viewChoice_->currentText()));
  }
}

void CompareView::showStates() {
  for (Side& side : sides_) {
    const Asked wanted = wantedOf(side);
    const bool known = side.known && side.known->isSame(wanted);
    const bool estimate = side.look && side.look->revision == wanted.revision && side.look->settings == wanted.settings;
    side.state->setText(known        ? QString()
                        : estimate   ? tr("\u25D4 first estimate")
                        : side.look  ? tr("\u25A8 before the last change")
                                     : tr("\u25D4 being worked out"));
  }
}

void CompareView::fillTable() {
  const std::array<QString, kColumns> heads{tr("Where"), nameOf(sides_[0]), nameOf(sides_[1]),
                                            tr("The right is"), tr("Aim of the right")};
  for (int c = 0; c < kColumns; ++c) table_->setHorizontalHeaderItem(c, new QTableWidgetItem(heads[static_cast<std::size_t>(c)]));
  const plan::ItemId right = choiceOf(sides_[1]);
  table_->setColumnHidden(Wanted, right.empty());
  const auto regions = plan::targetRegions();
  for (int r = 0; r < table_->rowCount(); ++r) {
    const look::Reading* readings[2] = {readingAt(sides_[0].look, r), readingAt(sides_[1].look, r)};
    for (std::size_t s = 0; s < 2; ++s) {
      QTableWidgetItem* cell = table_->item(r, s == 0 ? Left : Right);
      const auto& look = sides_[s].look;
      if (!readings[s]) {
        cell->setText(look ? tr("not seen") : QStringLiteral("\u2026"));
        cell->setIcon({});
        cell->setToolTip({});
        continue;
      }
      const ReadingText text = readingText(*readings[s], nullptr);
      const look::Contrast& contrast = contrastAt(*look->frame.readings, r);
      cell->setText(tr("%1, %2").arg(text.level, verdictText(contrast)));
      cell->setToolTip(tr("%1, %2, %3").arg(text.lightness, text.light, verdictText(contrast)));
      QPixmap swatch(fontMetrics().height(), fontMetrics().height());
      swatch.fill(paint::swatchColour(*readings[s], look->settings.light));
      cell->setIcon(swatch);
    }
    table_->item(r, Difference)->setText(readings[0] && readings[1] ? differenceText(*readings[0], *readings[1])
                                                                    : QStringLiteral("\u2013"));
    const plan::Target target = cards::targetOf(controller_.plan(), right, regions[static_cast<std::size_t>(r)]);
    QString wanted = cards::wantedText(target);
    if (!wanted.isEmpty() && readings[1])
      if (const auto check = look::checkTarget(target, *sides_[1].look->frame.readings, static_cast<std::size_t>(r),
                                               look::targetTolerance_levels(controller_.plan().info().assumptions)))
        wanted += QStringLiteral("  ") + cards::metText(*check);
    table_->item(r, Wanted)->setText(wanted);
    table_->item(r, Wanted)->setToolTip(wanted);
  }
  table_->verticalHeader()->setMinimumSectionSize(fontMetrics().height() + 8);
  table_->verticalHeader()->setDefaultSectionSize(fontMetrics().height() + 8);
  table_->setIconSize({fontMetrics().height(), fontMetrics().height()});
}

void CompareView::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape) return Q_EMIT closed();
  QWidget::keyPressEvent(event);
}

void CompareView::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange) fillTable();
}

}  // namespace combdraft::desk
