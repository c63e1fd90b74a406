#include "app/appointment/work_list_view.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QShowEvent>
#include <QVBoxLayout>
#include <algorithm>
#include <map>

#include "app/appointment/side_parts.h"
#include "app/paint/amount_words.h"
#include "app/paint/check_words.h"
#include "app/paint/figure.h"
#include "app/paint/price_words.h"
#include "app/paint/work_words.h"
#include "app/words/engine_words.h"
#include "engine/base/number_text.h"
#include "engine/plan/edits.h"

namespace combdraft::appointment {
using namespace paint;  // its words
namespace {

constexpr int kAfterEdit_ms = 200;
constexpr double kNarrowest_mm = 10, kWidest_mm = 1000;
constexpr double kLeastBowl_g = 1, kMostBowl_g = 1000;

/// "90, 120" or "90 120" as widths; nothing when one is none.
std::optional<std::vector<double>> widthsIn(const QString& text) {
  std::vector<double> widths;
  for (const QString& word : QString(text).replace(u';', u' ').replace(u',', u' ').split(u' ', Qt::SkipEmptyParts)) {
    const auto width = parseNumber(word.toStdString());
    if (!width || *width < kNarrowest_mm || *width > kWidest_mm) return std::nullopt;
    widths.push_back(*width);
  }
  return widths;
}

}  // namespace

WorkListView::WorkListView(document::DocumentController& controller, live::HairCountService& counts, QWidget* parent)
    : QWidget(parent), controller_(controller), counts_(counts) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(8);
  buildTop(column);
  summary_ = addText(column);
  price_ = addText(column);
  price_->hide();
  strip_ = new TimelineStrip(this);
  column->addWidget(strip_);
  moment_ = addSoftText(column);
  connect(strip_, &TimelineStrip::momentChanged, this, [this] { moment_->setText(strip_->momentText()); });
  addSoftText(column, tr("Above: filled mixes, hatched places (each formula with its hatch of the sheet), white backcombs, dashed looks or is in reserve. Below: the bowls."));
  buildMiddle(column);

  later_.setSingleShot(true);
  later_.setInterval(kAfterEdit_ms);
  connect(&later_, &QTimer::timeout, this, &WorkListView::fill);
  connect(&controller_, &document::DocumentController::changed, this, [this](const document::DocumentChange& change) {
    if (isVisible() && change.kind != document::DocumentChange::Kind::Tentative) later_.start();
  });
  connect(&counts_, &live::HairCountService::answered, this, [this] {
    if (isVisible()) showList();
  });
}

void WorkListView::buildMiddle(QVBoxLayout* column) {
  auto* middle = new QHBoxLayout;
  middle->setSpacing(14);
  column->addLayout(middle, 1);
  table_ = newTable(tr("Steps of the appointment"), {tr("from, min"), tr("hands"), tr("what"), tr("foil")}, this);
  table_->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
  table_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  table_->horizontalHeader()->setSectionResizeMode(2, QHeaderView::Stretch);
  table_->verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);  // long steps wrap
  middle->addWidget(table_, 3);
  middle->addWidget(buildSide(), 2);
  connect(table_, &QTableWidget::currentCellChanged, this, [this](int row) {
    const QTableWidgetItem* cell = row < 0 ? nullptr : table_->item(row, 0);
    if (!cell) return;
    const std::string piece = cell->data(Qt::UserRole).toString().toStdString();
    strip_->setMoment(cell->data(Qt::UserRole + 1).toDouble());
    if (controller_.document().find<plan::Piece>(piece)) controller_.select(document::Selection::one(piece));
  });
}

void WorkListView::buildTop(QVBoxLayout* column) {
  auto* row = new QHBoxLayout;
  row->setSpacing(14);
  column->addLayout(row);
  order_ = new controls::Segments(tr("Order"), {{tr("As numbered"), tr("The order of the numbers on the sheet"), {}},
                                                {tr("By rule"), tr("Slow hair first, fine hair at the front hairline last"), {}}}, this);
  order_->setCurrent(0);
  row->addWidget(order_);
  useOrder_ = new QPushButton(tr("Number the pieces so"), this);
  useOrder_->setToolTip(tr("Gives the pieces this order on the sheet; one undo takes it back"));
  row->addWidget(useOrder_);
  connect(useOrder_, &QPushButton::clicked, this, &WorkListView::numberPieces);
  pairs_ = new controls::Segments(tr("Hands"), {{tr("One pair of hands"), {}, {}}, {tr("Two"), tr("Two people place at the same time"), {}}}, this);
  pairs_->setCurrent(0);
  row->addWidget(pairs_);
  row->addStretch(1);
  paper_ = new QPushButton(tr("On paper…"), this);
  paper_->setToolTip(tr("The list as pages, to print or to save"));
  row->addWidget(paper_);
  connect(paper_, &QPushButton::clicked, this, &WorkListView::paperWanted);
  buildTyped(column);
  byFactors_ = new QCheckBox(this);
  byFactors_->setMinimumHeight(30);
  byFactors_->setToolTip(tr("Speeds and amounts that you took over from your own heads; what is typed under Assumptions of this plan still comes first"));
  column->addWidget(byFactors_, 0, Qt::AlignLeft);
  connect(byFactors_, &QCheckBox::toggled, this, &WorkListView::fill);
  setFactors({});
  connect(order_, &controls::Segments::chosen, this, [this](int i) {
    order_->setCurrent(i);
    fill();
  });
  connect(pairs_, &controls::Segments::chosen, this, [this](int i) {
    pairs_->setCurrent(i);
    fill();
  });
}

// What only she knows: nothing of it has a figure of ours.
void WorkListView::buildTyped(QVBoxLayout* column) {
  auto* second = new QHBoxLayout;
  second->setSpacing(14);
  column->addLayout(second);
  foils_ = new controls::TextField({tr("Your foil widths, mm"), tr("none typed: counted only"), tr("With commas; each piece gets the narrowest that is wide enough"), 80}, this);
  foils_->setCheck([](const QString& text) {
    return widthsIn(text) ? QString() : tr("Widths of %1 to %2 mm with commas between.").arg(kNarrowest_mm).arg(kWidest_mm);
  });
  second->addWidget(foils_, 3);
  controls::NumberFieldSpec spec;
  spec.label = tr("Look every");
  spec.unit = tr("min");
  spec.low = 1;
  spec.high = 240;
  spec.mayBeEmpty = true;
  spec.emptyText = tr("not typed");
  spec.tip = tr("A round of looking while placing goes on, as you work; not typed: when the last piece is in");
  lookEvery_ = new controls::NumberField(spec, this);
  second->addWidget(lookEvery_, 2);
  controls::NumberFieldSpec least;
  least.label = tr("Smallest bowl that I mix");
  least.unit = tr("g");
  least.low = kLeastBowl_g;
  least.high = kMostBowl_g;
  least.mayBeEmpty = true;
  least.emptyText = tr("none typed");
  least.tip = tr("Bowls that come to less are told");
  smallestBowl_ = new controls::NumberField(least, this);
  second->addWidget(smallestBowl_, 2);
  connect(foils_, &controls::TextField::edited, this, [this](const QString& text) {
    foils_mm_ = widthsIn(text).value_or(std::vector<double>());
    foils_->setText(text);
    fill();
  });
  connect(lookEvery_, &controls::NumberField::edited, this, [this](std::optional<double> value) {
    lookEvery_->setValue(value);
    fill();
  });
  connect(smallestBowl_, &controls::NumberField::edited, this, [this](std::optional<double> value) {
    smallestBowl_->setValue(value);
    fill();
  });
}

QWidget* WorkListView::buildSide() {
  const auto [scroll, column] = newScrolledColumn(this, Reached::ByItself);
  found_ = new QWidget(column->parentWidget());
  column->addWidget(found_);
  auto* parts = new QVBoxLayout(found_);
  parts->setContentsMargins(0, 0, 0, 0);
  parts->setSpacing(column->spacing());
  checks_ = addPart(parts, tr("Check before work"));
  bowls_ = addPart(parts, tr("Bowls"));
  foilCounts_ = addPart(parts, tr("Foils and hair"));
  notes_ = addPart(parts, tr("Order, bowls and times"));
  savings_ = addPart(parts, tr("Would save time"));
  found_->hide();
  addCaution(column, QStringList{firstCome(), glovesAndAir(), safetyLine(), looksLighter(), estimatesOnly()}.join(u'\n'));
  column->addStretch(1);
  return scroll;
}

work::WorkSettings WorkListView::settings() const {
  work::WorkSettings settings;
  settings.order = order_->current() == 1 ? work::OrderUse::ByRule : work::OrderUse::AsPlanned;
  settings.pairs = pairs_->current() == 1 ? 2 : 1;
  settings.foils_mm = foils_mm_;
  settings.lookEvery_min = lookEvery_->value();
  settings.locks = live::kCountedLocks;
  settings.smallestBowl_g = smallestBowl_->value();
  settings.perHair_heads = work::weighedHeads(factorsUsed(), controller_.document());
  return settings;
}

plan::Plan WorkListView::planUsed() const {
  plan::Plan plan = controller_.document();
  if (!byFactors_->isChecked()) return plan;
  plan::PlanInfo info = plan.info();
  info.assumptions = work::withFactors(factors_, info.assumptions);
  plan.put(plan::kPlanId, info);
  return plan;
}

void WorkListView::setFactors(const work::OwnFactors& factors) {
  const bool isNew = !(factors == factors_);
  factors_ = factors;
  const auto heads = factors_.heads.size();
  const QSignalBlocker quiet(byFactors_);
  byFactors_->setText(heads == 0   ? tr("By my own factors (no head yet)")
                      : heads == 1 ? tr("By my own factors (1 head)")
                                   : tr("By my own factors (%1 heads)").arg(heads));
  byFactors_->setEnabled(heads > 0);
  if (heads == 0) byFactors_->setChecked(false);
  if (isNew && isVisible()) fill();
}

void WorkListView::setRates(const store::Rates& rates) {
  rates_ = rates;
  fillPrice();
}

void WorkListView::fillPrice() {
  const bool any = list_ && !list_->order.empty() && !rates_.isEmpty();
  price_->setVisible(any);
  if (!any) return price_->clear();
  if (!isCounted_) return price_->setText(tr("At your own rates: %1").arg(waitingText()));
  const WorkedOut worked = workedOut(*list_);
  price_->setText(tr("At your own rates: %1 for %2. The time on the hair and the reserve are not in it; what you ask for is yours to say.")
                      .arg(sumText(rates_, worked), workedText(rates_, worked)));
}

void WorkListView::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  fill();
}

void WorkListView::fill() {
  later_.stop();
  counts_.request(controller_.document());
  showList();
}

// What stands of the list: all of it once the hair of this very plan is counted.
void WorkListView::showList() {
  const plan::Plan plan = planUsed();
  const Result<work::HairCount>* hair = counts_.answerFor(controller_.document());
  isCounted_ = hair && hair->ok();
  const Result<work::WorkList> made = work::workListOf(plan, settings(), isCounted_ ? hair->value() : work::HairCount());
  list_.reset();
  if (made) list_ = *made;
  const bool any = list_ && !list_->order.empty();
  fillPrice();
  paper_->setEnabled(any);  // the pages count for themselves, on a thread of their own
  useOrder_->setEnabled(any && order_->current() == 1);
  table_->setVisible(any);
  strip_->setVisible(any);
  moment_->setVisible(any);
  found_->setVisible(any);
  if (!any)
    return showNothing(made ? tr("No piece is lightened or deepened yet. Draw pieces on the sheet; their order, foils and bowls then stand here.")
                            : tr("The head's measures do not fit together; look at the head card."));
  fillSummary();
  places_.take(plan, list_->order);
  strip_->show(plan, list_->timeline, pairs_->current() == 1 ? 2 : 1);
  moment_->setText(strip_->momentText());
  fillTable(plan);
  fillSide(plan);
}

void WorkListView::showNothing(const QString& why) {
  summary_->setText(why);
  table_->setRowCount(0);
  for (QLabel* label : {checks_, bowls_, foilCounts_, notes_, savings_}) label->clear();
}

QString WorkListView::waitingText() const {
  const Result<work::HairCount>* hair = counts_.answerFor(controller_.document());
  if (hair && !hair->ok()) return tr("The hair could not be counted: %1").arg(words::inWords(hair->error()));
  return tr("The hair of the pieces is being counted; grams and foils follow.");
}

void WorkListView::fillSummary() {
  const work::Timeline& line = list_->timeline;
  summary_->setText(tr("%1 pieces; the last is in after %2 min, work in all %3 min and %4 min in reserve, by the assumptions or, where ticked, your own factors. "
                       "How long the product stays on the hair is not in it: that is seen, not planned.")
                        .arg(list_->order.size())
                        .arg(minutes(line.lastIn_min), minutes(line.total_min), minutes(line.reserve_min)) +
                    u' ' + (isCounted_ ? mixedText(list_->amounts) : waitingText()));
}

void WorkListView::fillTable(const plan::Plan& plan) {
  const QSignalBlocker quiet(table_);
  const auto sized = [this](QHeaderView::ResizeMode mode) {
    table_->verticalHeader()->setSectionResizeMode(mode);
    for (const int column : {0, 1, 3}) table_->horizontalHeader()->setSectionResizeMode(column, mode);
  };
  sized(QHeaderView::Fixed);  // all is sized once when all stands, not for every cell that is set
  const auto& steps = list_->timeline.steps;
  const std::vector<work::StepLine> lines = work::linesOf(list_->timeline);
  table_->setRowCount(static_cast<int>(lines.size()));
  for (int row = 0; row < table_->rowCount(); ++row) {
    const work::StepLine& line = lines[static_cast<std::size_t>(row)];
    const work::Step& step = steps[line.front()];
    const auto* piece = plan.find<plan::Piece>(step.piece);
    const QString foil = piece && step.kind == work::StepKind::Place ? QString::fromStdString(piece->foil) : QString();
    setRow(table_, row, {step.kind == work::StepKind::CombOut ? QString() : minutes(step.from_min), QString::number(step.pair + 1),
                         stepText(plan, list_->timeline, line, places_), foil});
    table_->item(row, 0)->setData(Qt::UserRole, QString::fromStdString(step.piece));
    table_->item(row, 0)->setData(Qt::UserRole + 1, steps[line.back()].to_min);
  }
  sized(QHeaderView::ResizeToContents);
}

void WorkListView::fillSide(const plan::Plan& plan) {
  QStringList bowls, notes, savings;
  const QString unknown = counts_.isCounting() ? tr("being counted") : tr("not counted");
  for (std::size_t i = 0; i < list_->timeline.bowls.size(); ++i) {
    const work::Bowl& bowl = list_->timeline.bowls[i];
    bowls << tr("%1, at %2 min, %3 pieces: %4")
                 .arg(bowlName(plan, bowl), minutes(bowl.mixFrom_min)).arg(bowl.pieces.size())
                 .arg(isCounted_ ? gramsText(list_->bowls[i]) : unknown);
  }
  bowls << thinWeavesText();
  for (const work::WorkNote& note : list_->notes) notes << noteText(plan, note);
  if (!isCounted_) notes << waitingText();  // what depends on grams and widths is not looked for yet
  if (notes.isEmpty()) notes << nothingFound();
  constexpr std::size_t kMost = 5;
  const auto found = work::savingsOf(plan, settings(), *list_);
  if (!found.empty()) savings << changesLook();
  for (std::size_t i = 0; i < std::min(kMost, found.size()); ++i) savings << savingText(plan, found[i]);
  bowls_->setText(bowls.join(u'\n'));
  foilCounts_->setText(isCounted_ ? foilLines().join(u'\n') : waitingText());
  const QStringList checks = checksBeforeWork(plan, settings().choice);
  checks_->setText(checks.isEmpty() ? tr("Of hair, skin and product this program found nothing in the plan; look at both hair and scalp all the same, and read the consultation before mixing.") : checks.join(u'\n'));
  notes_->setText(notes.join(u'\n'));
  savings_->setText(savings.isEmpty() ? tr("nothing of half a minute or more") : savings.join(u'\n'));
}

QStringList WorkListView::foilLines() const {
  QStringList counts;
  const work::Amounts& amounts = list_->amounts;
  std::map<double, int> widths;
  int unsized = 0;
  for (const work::FoilNeed& foil : amounts.foils) foil.width_mm ? ++widths[*foil.width_mm] : ++unsized;
  for (const auto& [width, count] : widths) counts << tr("%1 foils of %2 mm").arg(count).arg(width);
  if (unsized > 0) counts << (widths.empty() ? tr("%1 foils").arg(unsized) : tr("%1 foils that no width of yours is wide enough for").arg(unsized));
  if (!amounts.films.empty()) counts << tr("%1 films").arg(amounts.films.size());
  if (amounts.openAir > 0) counts << tr("%1 pieces in open air").arg(amounts.openAir);
  counts << tr("%1 hairs, %2 g of hair taken").arg(paint::figure(numberText(amounts.hairs, 0)), paint::figure(numberText(amounts.hair_g, 0)));
  return counts;
}

QString WorkListView::sideText() const {
  return QStringList{checks_->text(), bowls_->text(), foilCounts_->text(), notes_->text(), savings_->text()}.join(u'\n');
}

void WorkListView::numberPieces() {
  const plan::Plan& plan = controller_.document();
  controller_.edit(plan::applied(plan, plan::renumber(plan, plan.info().activeChoice, work::workOrder(plan, {}, work::OrderUse::ByRule))),
                   tr("Number the pieces by pace of hair"));
  order_->setCurrent(0);
  fill();
}

}  // namespace combdraft::appointment
