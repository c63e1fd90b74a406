#pragma once
// The consultation: what the client wants, what must be asked, what was tested, when
// the client was here. It stands beside the plan and is kept apart from it.
#include <QLabel>
#include <memory>
#include <optional>

#include "app/controls/segments.h"
#include "app/document/document_controller.h"
#include "app/store/client_keeper.h"
#include "app/store/settings.h"
#include "engine/plan/agreement.h"

namespace combdraft::cards {

class ConsultationClient;
class ConsultationQuestions;
class ConsultationVisits;
class ConsultationWishes;

class ConsultationCard : public QWidget {
  Q_OBJECT

 public:
  enum class Page { Wishes, Questions, Visits, Client };

  explicit ConsultationCard(document::DocumentController& controller, QWidget* parent = nullptr);

  /// The client of the plan that is open; null = none.
  void setKeeper(std::shared_ptr<store::ClientKeeper> keeper);
  const std::shared_ptr<store::ClientKeeper>& keeper() const { return keeper_; }
  void setPolicy(const store::ClientPolicy& policy);
  /// The user's own rates: what a choice comes to stands beside its price.
  void setRates(const store::Rates& rates);
  void turnTo(Page page);
  Page current() const;

  ConsultationWishes* wishes() { return wishes_; }
  ConsultationQuestions* questions() { return questions_; }
  ConsultationVisits* visits() { return visits_; }
  ConsultationClient* client() { return client_; }
  /// The cautions as they are shown, a line each.
  QString cautions() const { return asks_->text(); }
  /// What was agreed and what was open then; "" where nothing was agreed. Filled while it is shown.
  QString agreedText() const { return agreed_->text(); }

 Q_SIGNALS:
  void photosWanted();
  void clientChosen(quint64 number);
  void exportWanted();
  void removeWanted();
  void removeWithPlanWanted();

 protected:
  void showEvent(QShowEvent* event) override;

 private:
  void fill();
  void fillAgreed();

  document::DocumentController& controller_;
  std::shared_ptr<store::ClientKeeper> keeper_;
  store::ClientPolicy policy_;
  std::string agreedJson_;                ///< that the two below are of
  std::optional<plan::Agreement> agreement_;
  std::optional<std::size_t> openFindings_;
  QLabel *trouble_, *asks_, *agreed_;
  controls::Segments* tabs_;
  ConsultationWishes* wishes_;
  ConsultationQuestions* questions_;
  ConsultationVisits* visits_;
  ConsultationClient* client_;
};

}  // namespace combdraft::cards
