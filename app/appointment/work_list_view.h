#pragma once
// The work list before the appointment: order, strip, bowls, foils, what needs a
// look and what would save time. Worked out while it is shown, from the plan and
// what is typed here; nothing is changed but by the one button that numbers pieces.
// Order, bowls and minutes stand at once; grams and foils follow when the hair of this
// plan is counted, and until then it is said that they do.
#include <QCheckBox>
#include <QLabel>
#include <QPushButton>
#include <QTableWidget>
#include <QTimer>
#include <QWidget>
#include <optional>

#include "app/appointment/timeline_strip.h"
#include "app/controls/number_field.h"
#include "app/controls/segments.h"
#include "app/controls/text_field.h"
#include "app/document/document_controller.h"
#include "app/live/hair_count_service.h"
#include "app/paint/place_book.h"
#include "app/store/settings.h"
#include "engine/work/outcome.h"
#include "engine/work/work_list.h"

class QVBoxLayout;

namespace combdraft::appointment {

class WorkListView : public QWidget {
  Q_OBJECT

 public:
  /// `counts` outlives the view.
  WorkListView(document::DocumentController& controller, live::HairCountService& counts, QWidget* parent = nullptr);

  /// Works the list out now, and again after each change while it is in view. Asks for
  /// the hair where it is not counted.
  void fill();
  /// The user's own factors; she ticks whether the list goes by them.
  void setFactors(const work::OwnFactors& factors);
  /// The user's own rates; a sum is shown only of what is typed.
  void setRates(const store::Rates& rates);
  /// Without grams and foils until the hair is counted.
  const std::optional<work::WorkList>& list() const { return list_; }
  bool isCounted() const { return isCounted_; }
  /// As the list is set now, and the factors that it goes by (none = the assumptions).
  work::WorkSettings settings() const;
  work::OwnFactors factorsUsed() const { return byFactors_->isChecked() ? factors_ : work::OwnFactors(); }
  QTableWidget* table() { return table_; }
  TimelineStrip* strip() { return strip_; }
  controls::Segments* order() { return order_; }
  controls::Segments* pairs() { return pairs_; }
  controls::TextField* foils() { return foils_; }
  controls::NumberField* lookEvery() { return lookEvery_; }
  controls::NumberField* smallestBowl() { return smallestBowl_; }
  QPushButton* paper() { return paper_; }
  QCheckBox* byFactors() { return byFactors_; }
  QPushButton* useOrder() { return useOrder_; }
  /// What minutes and grams come to; "" without rates.
  QString priceText() const { return price_->text(); }
  QString summaryText() const { return summary_->text(); }
  /// What stands at the side, as text: bowls, foils, notes, savings; empty until they are worked out.
  QString sideText() const;

 Q_SIGNALS:
  void paperWanted();

 protected:
  void showEvent(QShowEvent* event) override;

 private:
  void buildTop(QVBoxLayout* column);
  void buildTyped(QVBoxLayout* column);
  void buildMiddle(QVBoxLayout* column);
  QWidget* buildSide();
  plan::Plan planUsed() const;
  void showList();
  void showNothing(const QString& why);
  void fillSummary();
  void fillTable(const plan::Plan& plan);
  void fillSide(const plan::Plan& plan);
  QStringList foilLines() const;
  QString waitingText() const;
  void fillPrice();
  void numberPieces();

  document::DocumentController& controller_;
  live::HairCountService& counts_;
  QTimer later_;
  std::optional<work::WorkList> list_;
  bool isCounted_ = false;   ///< the list has its grams and foils
  std::vector<double> foils_mm_;
  work::OwnFactors factors_;
  store::Rates rates_;
  controls::Segments *order_, *pairs_;
  controls::TextField* foils_;
  controls::NumberField *lookEvery_, *smallestBowl_;
  QCheckBox* byFactors_;
  QPushButton *useOrder_, *paper_;
  QLabel *summary_, *moment_, *checks_, *bowls_, *foilCounts_, *notes_, *savings_, *price_;
  TimelineStrip* strip_;
  QTableWidget* table_;
  QWidget* found_;           ///< the side's parts, hidden until they are worked out
  paint::PlaceBook places_;  ///< of the pieces in the list
};

}  // namespace combdraft::appointment
