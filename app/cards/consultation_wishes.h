#pragma once
// What the client wants and does not want, how the hair is worn, and what each choice
// would cost, as typed.
#include "app/cards/consultation_page.h"
#include "app/document/document_controller.h"

namespace combdraft::cards {

class PhotoStrip;

class ConsultationWishes : public ConsultationPage {
  Q_OBJECT

 public:
  ConsultationWishes(document::DocumentController& controller, QWidget* parent);

  void setWishesKeeper(store::ClientKeeper* keeper);
  void fill() override;
  PhotoStrip* photos() { return photos_; }

 private:
  void fillOffers();

  document::DocumentController& controller_;
  PhotoStrip* photos_;
  QWidget* offers_;
  std::vector<std::pair<plan::ItemId, std::string>> choices_;  ///< that have fields now
  std::vector<std::array<controls::TextField*, 3>> fields_;
};

}  // namespace combdraft::cards
