#include "app/cards/consultation_wishes.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <algorithm>

#include "app/cards/card_parts.h"
#include "app/cards/photo_strip.h"
#include "app/controls/drop_widgets.h"
#include "app/controls/wrapped_label.h"

namespace combdraft::cards {
namespace {

constexpr int kLines = 3, kAfterEdit_ms = 400, kBetween_ms = 1;
constexpr std::size_t kPrice = 1;
constexpr std::string store::Offer::* kValues[] = {&store::Offer::minutes, &store::Offer::price, &store::Offer::visits};

}  // namespace

ConsultationWishes::ConsultationWishes(document::DocumentController& controller, QWidget* parent)
    : ConsultationPage(parent), controller_(controller) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(5);
  addText(column, tr("Wanted"), tr("in the client's own words"), kLines, [](ClientFile& f) -> std::string& { return f.wishes.wanted; });
  addText(column, tr("Not wanted"), tr("what it must not look like"), kLines, [](ClientFile& f) -> std::string& { return f.wishes.notWanted; });
  photos_ = new PhotoStrip(this);
  column->addWidget(photos_);
  addHeading(column, tr("How it is lived with"));
  addText(column, tr("How it is worn and parted"), tr("down, tied, parted where, in the wind"), 2,
          [](ClientFile& f) -> std::string& { return f.wishes.howWorn; });
  addLine(column, {tr("Upkeep accepted"), tr("not asked"), tr("How often the client will come back, and what care happens at home"), 50},
          [](ClientFile& f) -> std::string& { return f.wishes.upkeep; });
  addLine(column, {tr("Budget"), tr("not asked"), tr("In the client's words or numbers"), 50}, [](ClientFile& f) -> std::string& { return f.wishes.budget; });
  addLine(column, {tr("Number of visits"), tr("not agreed"), tr("A plan may be one of several visits"), 50},
          [](ClientFile& f) -> std::string& { return f.wishes.visits; });
  addHeading(column, tr("Each choice costs"));
  addSoftText(column, tr("Typed by you: what is offered is yours to say."));
  offers_ = new QWidget(this);
  new QVBoxLayout(offers_);
  offers_->layout()->setContentsMargins(0, 0, 0, 0);
  column->addWidget(offers_);
  column->addStretch(1);
  connect(&controller_, &document::DocumentController::changed, this, [this](const document::DocumentChange& change) {
    if (change.kind == document::DocumentChange::Kind::Tentative) return;
    if (change.kind == document::DocumentChange::Kind::Replaced) worked_.clear();
    workLater();
    fillOffers();
  });
  later_.setSingleShot(true);
  connect(&later_, &QTimer::timeout, this, &ConsultationWishes::workNext);
}

void ConsultationWishes::setWishesKeeper(store::ClientKeeper* keeper) {
  photos_->setKeeper(keeper);
  setKeeper(keeper);
}

void ConsultationWishes::fill() {
  ConsultationPage::fill();
  photos_->fill();
  fillOffers();
}

void ConsultationWishes::setRates(const store::Rates& rates) {
  const bool wereNone = rates_.isEmpty();
  rates_ = rates;
  if (wereNone) workLater();
  fillEstimates();
}

void ConsultationWishes::showEvent(QShowEvent* event) {
  ConsultationPage::showEvent(event);
  workLater();
  fillEstimates();
}

void ConsultationWishes::fillOffers() {
  std::vector<Choice> choices;
  for (const auto& [id, item] : controller_.document().items())
    if (const auto* choice = std::get_if<plan::Choice>(item.get())) choices.emplace_back(id, choice->name);
  if (choices != choices_) {
    choices_ = choices;
    buildOffers();
  }
  for (std::size_t c = 0; c < choices_.size(); ++c) {
    const store::Offer* offer = store::findOffer(file(), controller_.document().info().number, choices_[c].first);
    for (std::size_t i = 0; i < 3; ++i) offersOf_[c].fields[i]->setText(offer ? QString::fromStdString(offer->*kValues[i]) : QString());
  }
  fillEstimates();
}

void ConsultationWishes::buildOffers() {
  offersOf_.clear();
  controls::dropContents(*offers_->layout());
  delete offers_->layout();
  auto* column = new QVBoxLayout(offers_);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(5);
  for (const Choice& choice : choices_) offersOf_.push_back(buildOffer(column, choice));
}

ConsultationWishes::OfferFields ConsultationWishes::buildOffer(QVBoxLayout* column, const Choice& choice) {
  const QString name = tr("Choice %1").arg(QString::fromStdString(choice.second));
  const controls::TextFieldSpec specs[] = {{tr("%1: minutes").arg(name), tr("not typed"), tr("How long it takes, by your own reckoning"), kClientLineLetters},
                                           {tr("%1: price").arg(name), tr("not typed"), tr("In your own words or numbers"), kClientLineLetters},
                                           {tr("%1: visits").arg(name), tr("not typed"), tr("How many visits you plan for"), kClientLineLetters}};
  OfferFields offer;
  for (std::size_t i = 0; i < 3; ++i) {
    offer.fields[i] = new controls::TextField(specs[i], offers_);
    column->addWidget(offer.fields[i]);
    connect(offer.fields[i], &controls::TextField::edited, this, [this, i, id = choice.first](const QString& text) {
      const std::uint64_t number = controller_.document().info().number;
      change([&](ClientFile& file) { store::offerFor(file, number, id).*kValues[i] = text.toStdString(); });
    });
    if (i == kPrice) buildEstimate(column, choice, offer);
  }
  return offer;
}

void ConsultationWishes::buildEstimate(QVBoxLayout* column, const Choice& choice, OfferFields& offer) {
  offer.estimate = new QWidget(offers_);
  auto* row = new QHBoxLayout(offer.estimate);
  row->setContentsMargins(0, 0, 0, 0);
  offer.words = new controls::WrappedLabel(offer.estimate);
  offer.words->setProperty("soft", true);
  row->addWidget(offer.words, 1);
  offer.typeIn = new QPushButton(tr("Type it in"), offer.estimate);
  offer.typeIn->setMinimumHeight(28);
  offer.typeIn->setToolTip(tr("Puts this sum into the price, where you can change it"));
  offer.typeIn->setAccessibleName(tr("Choice %1: type the estimate in as the price").arg(QString::fromStdString(choice.second)));
  row->addWidget(offer.typeIn, 0, Qt::AlignTop);
  column->addWidget(offer.estimate);
  offer.estimate->hide();
  connect(offer.typeIn, &QPushButton::clicked, this, [this, id = choice.first] { typeEstimate(id); });
}

// A plan's amounts take a tenth of a second for each choice: not at a keystroke, not for a
// page that nobody sees, and one choice at a time.
void ConsultationWishes::workLater() {
  if (rates_.isEmpty() || !isVisible()) return later_.stop();
  toWork_.clear();
  for (const auto& [id, item] : controller_.document().items())
    if (std::holds_alternative<plan::Choice>(*item)) toWork_.push_back(id);
  std::reverse(toWork_.begin(), toWork_.end());
  later_.start(kAfterEdit_ms);
}

void ConsultationWishes::workNext() {
  if (toWork_.empty() || rates_.isEmpty() || !isVisible()) return;
  const plan::ItemId choice = toWork_.back();
  worked_[choice] = paint::workedOut(controller_.document(), choice);
  toWork_.pop_back();
  fillEstimates();
  if (!toWork_.empty()) later_.start(kBetween_ms);
}

void ConsultationWishes::fillEstimates() {
  for (std::size_t c = 0; c < choices_.size(); ++c) {
    const OfferFields& offer = offersOf_[c];
    const auto known = worked_.find(choices_[c].first);
    const bool isOld = std::find(toWork_.begin(), toWork_.end(), choices_[c].first) != toWork_.end();
    const bool isNone = known != worked_.end() && !known->second && !isOld;
    offer.estimate->setVisible(!rates_.isEmpty() && (known != worked_.end() || isOld) && !isNone);
    if (known == worked_.end() || !known->second || isOld) {
      offer.words->setText(tr("By your own rates and the plan's assumptions: being worked out."));
      offer.typeIn->setEnabled(false);
      continue;
    }
    if (rates_.isEmpty()) continue;
    const QString sum = paint::sumText(rates_, *known->second);
    offer.words->setText(tr("By your own rates and the plan's assumptions, one pair of hands: %1, for %2. The time on the hair and the reserve are not in it.")
                             .arg(sum, paint::workedText(rates_, *known->second)));
    offer.typeIn->setEnabled(keeper() && keeper()->mayEdit() && offer.fields[kPrice]->text() != sum);
  }
}

void ConsultationWishes::typeEstimate(const plan::ItemId& choice) {
  const auto known = worked_.find(choice);
  if (known == worked_.end() || !known->second || rates_.isEmpty()) return;
  const std::string sum = paint::sumText(rates_, *known->second).toStdString();
  for (std::size_t c = 0; c < choices_.size(); ++c)
    if (choices_[c].first == choice) offersOf_[c].fields[kPrice]->abandonTyping();
  const std::uint64_t number = controller_.document().info().number;
  change([&](ClientFile& file) { store::offerFor(file, number, choice).*kValues[kPrice] = sum; });
}

QString ConsultationWishes::estimateText(std::size_t index) const {
  const OfferFields& offer = offersOf_[index];
  return offer.estimate->isHidden() ? QString() : offer.words->text();
}

}  // namespace combdraft::cards
