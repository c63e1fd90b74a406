#include "app/cards/consultation_wishes.h"

#include "app/cards/card_parts.h"
#include "app/cards/photo_strip.h"

namespace combdraft::cards {
namespace {

constexpr int kLines = 3;
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
  addSoftText(column, tr("Typed by you: the program works out none of it."));
  offers_ = new QWidget(this);
  new QVBoxLayout(offers_);
  offers_->layout()->setContentsMargins(0, 0, 0, 0);
  column->addWidget(offers_);
  column->addStretch(1);
  connect(&controller_, &document::DocumentController::changed, this, [this](const document::DocumentChange& change) {
    if (change.kind != document::DocumentChange::Kind::Tentative) fillOffers();
  });
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

void ConsultationWishes::fillOffers() {
  std::vector<std::pair<plan::ItemId, std::string>> choices;
  for (const auto& [id, item] : controller_.document().items())
    if (const auto* choice = std::get_if<plan::Choice>(item.get())) choices.emplace_back(id, choice->name);
  if (choices != choices_) {
    choices_ = choices;
    fields_.clear();
    delete offers_->layout();
    qDeleteAll(offers_->findChildren<QWidget*>(Qt::FindDirectChildrenOnly));
    auto* column = new QVBoxLayout(offers_);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(5);
    for (const auto& [id, name] : choices_) {
      const QString choice = tr("Choice %1").arg(QString::fromStdString(name));
      const controls::TextFieldSpec specs[] = {{tr("%1: minutes").arg(choice), tr("not typed"), tr("How long it takes, by your own reckoning"), kClientLineLetters},
                                               {tr("%1: price").arg(choice), tr("not typed"), tr("In your own words or numbers"), kClientLineLetters},
                                               {tr("%1: visits").arg(choice), tr("not typed"), tr("In how many visits it is reached"), kClientLineLetters}};
      auto& row = fields_.emplace_back();
      for (std::size_t i = 0; i < 3; ++i) {
        row[i] = new controls::TextField(specs[i], offers_);
        column->addWidget(row[i]);
        connect(row[i], &controls::TextField::edited, this, [this, i, id = id](const QString& text) {
          const std::uint64_t number = controller_.document().info().number;
          change([&](ClientFile& file) { store::offerFor(file, number, id).*kValues[i] = text.toStdString(); });
        });
      }
    }
  }
  for (std::size_t c = 0; c < choices_.size(); ++c) {
    const store::Offer* offer = store::findOffer(file(), controller_.document().info().number, choices_[c].first);
    for (std::size_t i = 0; i < 3; ++i) fields_[c][i]->setText(offer ? QString::fromStdString(offer->*kValues[i]) : QString());
  }
}

}  // namespace combdraft::cards
