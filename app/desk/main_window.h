#pragma once
// The window: puts document, worker, store, sheet and cards together. Decides
// nothing about hair.
#include <QMainWindow>
#include <functional>
#include <memory>

#include "app/desk/action_registry.h"
#include "app/document/document_controller.h"
#include "app/document/view_state.h"
#include "app/live/look_service.h"
#include "app/store/recovery.h"
#include "app/store/settings.h"

class QStackedWidget;
class QToolBar;

namespace combdraft::sheet {
class HeadSheet;
}

namespace combdraft::desk {

class MessageBar;
class NewPlanPage;
class ReadingsStrip;
class StartPage;
class WornBar;
class CardColumn;

/// Where a window keeps its things; tests give their own.
struct DeskPlaces {
  QString settingsFile;                           ///< "" = the user's own
  QString recoveryRoot = store::recoveryRoot();
};

class MainWindow : public QMainWindow {
  Q_OBJECT

 public:
  explicit MainWindow(const DeskPlaces& places = {},
                      live::LookService::Passes passes = live::LookService::enginePasses());
  ~MainWindow() override;

  /// Opens a plan; asks first when the one that is open has unsaved changes.
  void openPath(const QString& path);
  /// Looks for work left behind and offers it.
  void offerRecovery();

  document::DocumentController& controller() { return controller_; }
  document::ViewState& viewState() { return view_; }
  live::LookService& lookService() { return looks_; }
  ActionRegistry& actions() { return actions_; }
  MessageBar& messages() { return *messages_; }
  StartPage& startPage() { return *start_; }
  NewPlanPage& newPlanPage() { return *newPlan_; }
  ReadingsStrip& readings() { return *readings_; }
  sheet::HeadSheet& headSheet() { return *sheet_; }
  CardColumn& cards() { return *cards_; }
  WornBar& wornBar() { return *wornBar_; }
  store::Recovery& recovery() { return recovery_; }

 protected:
  void closeEvent(QCloseEvent* event) override;
  void dragEnterEvent(QDragEnterEvent* event) override;
  void dropEvent(QDropEvent* event) override;

 private:
  enum class Page { Start, NewPlan, Work };

  void buildPages();
  void declareFileActions();
  void declareEditActions();
  void declareToolActions();
  void declareViewActions();
  void buildMenusAndTools();
  void connectAll();
  void turnTo(Page page);
  void showStart();
  void titleChanged();
  void requestLook();

  // files
  void askBeforeLeaving(const QString& question, std::function<void()> go);
  void openNow(const QString& path);
  void openRecovered(const store::LeftPlan& left);
  void openDialog();
  void save(std::function<void()> then = {});
  void saveAs(std::function<void()> then = {});
  void writeTo(const QString& path, const std::function<void()>& then);
  void beginPlan(plan::Plan plan);
  void tellError(const QString& text);

  // pieces
  void addPiece();
  void duplicatePieces();
  void removePieces();
  void selectAllPieces();

  store::Settings settings_;
  QString recoveryRoot_;
  document::DocumentController controller_;
  document::ViewState view_;
  live::LookService looks_;
  store::Recovery recovery_;
  ActionRegistry actions_;
  std::vector<look::PictureRequest> askedPictures_;
  bool closing_ = false;

  QStackedWidget* pages_ = nullptr;
  StartPage* start_ = nullptr;
  NewPlanPage* newPlan_ = nullptr;
  QWidget* work_ = nullptr;
  MessageBar* messages_ = nullptr;
  WornBar* wornBar_ = nullptr;
  sheet::HeadSheet* sheet_ = nullptr;
  CardColumn* cards_ = nullptr;
  ReadingsStrip* readings_ = nullptr;
  QToolBar* tools_ = nullptr;
};

}  // namespace combdraft::desk
