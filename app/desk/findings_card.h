#pragma once
// "Needs a look": how large blocks show where the hair opens, what was found,
// and the chosen finding opened.
#include <QWidget>

#include "app/document/document_controller.h"
#include "app/document/view_state.h"
#include "app/live/look_result.h"

class QLabel;
class QScrollArea;

namespace combdraft::desk {

class FindingDetail;
class FindingsList;
class OpeningChart;

class FindingsCard : public QWidget {
  Q_OBJECT

 public:
  FindingsCard(document::DocumentController& controller, document::ViewState& view, QWidget* parent = nullptr);

  void setLook(const live::LookResult& look);
  void setAdvice(std::shared_ptr<const live::AdviceResult> advice);

  FindingsList* list() { return list_; }
  OpeningChart* chart() { return chart_; }
  FindingDetail* detail() { return detail_; }

 protected:
  void hideEvent(QHideEvent* event) override;
  void showEvent(QShowEvent* event) override;

 private:
  void open(std::optional<std::size_t> finding);
  void choose(std::optional<std::size_t> finding);

  document::DocumentController& controller_;
  document::ViewState& view_;
  std::shared_ptr<const live::AdviceResult> advice_;
  OpeningChart* chart_;
  FindingsList* list_;
  FindingDetail* detail_;
  QLabel* words_;   ///< what the chart says
  QLabel* growth_;  ///< when regrowth shows, where stripes are seen
  QScrollArea* scroll_;
};

}  // namespace combdraft::desk
