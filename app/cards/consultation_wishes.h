#pragma once
// What the client wants and does not want, how the hair is worn, and what each choice
// would cost, as typed. Where the user typed rates of her own, what the work list comes to
// stands beside the price: hers to take over, never filled in by itself.
#include <QTimer>
#include <map>
#include <optional>

#include "app/cards/consultation_page.h"
#include "app/document/document_controller.h"
#include "app/paint/price_words.h"

class QLabel;
class QPushButton;

namespace combdraft::cards {

class PhotoStrip;

class ConsultationWishes : public ConsultationPage {
  Q_OBJECT

 public:
  ConsultationWishes(document::DocumentController& controller, QWidget* parent);

  void setWishesKeeper(store::ClientKeeper* keeper);
  /// The user's own; none typed = nothing is worked out and nothing shown.
  void setRates(const store::Rates& rates);
  void fill() override;
  PhotoStrip* photos() { return photos_; }
  /// The line beside the price of the choice at `index`; "" where none is shown.
  QString estimateText(std::size_t index) const;
  QPushButton* typeIn(std::size_t index) { return offersOf_[index].typeIn; }

 protected:
  void showEvent(QShowEvent* event) override;

 private:
  using Choice = std::pair<plan::ItemId, std::string>;  ///< id and name
  struct OfferFields {
    std::array<controls::TextField*, 3> fields{};
    QWidget* estimate = nullptr;
    QLabel* words = nullptr;
    QPushButton* typeIn = nullptr;
  };

  void buildOffers();
  OfferFields buildOffer(QVBoxLayout* column, const Choice& choice);
  void buildEstimate(QVBoxLayout* column, const Choice& choice, OfferFields& offer);
  void fillOffers();
  void fillEstimates();
  void workLater();
  void workNext();
  void typeEstimate(const plan::ItemId& choice);

  document::DocumentController& controller_;
  PhotoStrip* photos_;
  QWidget* offers_;
  std::vector<Choice> choices_;  ///< that have fields now
  std::vector<OfferFields> offersOf_;
  store::Rates rates_;
  QTimer later_;
  std::vector<plan::ItemId> toWork_;  ///< choices whose estimate is out of date
  /// Nothing in it = the choice has no piece that is worked.
  std::map<plan::ItemId, std::optional<paint::WorkedOut>> worked_;
};

}  // namespace combdraft::cards
