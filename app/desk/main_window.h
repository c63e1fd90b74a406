#pragma once
// The window: puts document, worker, store, sheet and cards together. Decides
// nothing about hair.
#include <QMainWindow>
#include <QPointer>
#include <functional>
#include <memory>
#include <optional>

#include "app/desk/action_registry.h"
#include "app/document/document_controller.h"
#include "app/document/view_state.h"
#include "app/live/look_service.h"
#include "app/live/suggestion_service.h"
#include "app/paint/drawing.h"
#include "app/store/client_removal.h"
#include "app/store/fault_report.h"
#include "app/store/file_watch.h"
#include "app/store/left_plans.h"
#include "app/store/pattern_store.h"
#include "app/store/plan_lock.h"
#include "app/store/recovery.h"
#include "app/store/session.h"
#include "app/store/settings.h"

class QMenu;
class QPushButton;
class QSplitter;
class QStackedWidget;
class QToolBar;

namespace combdraft::sheet {
class HeadSheet;
}
namespace combdraft::chair {
class ChairView;
class ClassView;
}

namespace combdraft::handout {
class ComposerPage;
}

namespace combdraft::appointment {
class AppointmentPage;
}

namespace combdraft::desk {

class MenuCorner;
class MessageBar;
class NewPlanPage;
class PatternsPage;
class ReadingsStrip;
class StartPage;
class WornBar;
class FindingsList;
class HintBar;
class KeysPage;
class PreferencesPage;
class CardColumn;
class CommandSearch;
class CompareView;
class ClientsPage;
class FaultPage;
class LeftComparePage;

/// Where a window keeps its things; tests give their own.
struct DeskPlaces {
  QString settingsFile;                           ///< "" = the user's own
  QString recoveryRoot = store::recoveryRoot();
  QString patternsFolder = store::patternsFolder();  ///< of the user's own patterns
  QString faultFolder = store::faultFolder();        ///< reports of faults
  /// What was open; shared by all windows. Null = nothing is remembered.
  std::shared_ptr<store::SessionFile> session = {};
  store::RecoveryPace pace = {};
  QString clientsFolder = store::clientsRoot();  ///< client data, apart from plans
};

/// Theme and text size of the whole program.
void applyPreferences(const store::Preferences& preferences);

class MainWindow : public QMainWindow {
  Q_OBJECT

 public:
  /// Called once for each window: two windows must not share an engine.
  using PassesMaker = std::function<live::LookService::Passes()>;

  using SearchMaker = std::function<live::SuggestionService::Engine()>;

  explicit MainWindow(const DeskPlaces& places = {},
                      PassesMaker makePasses = live::LookService::enginePasses,
                      SearchMaker makeSearch = live::SuggestionService::fullEngine);
  ~MainWindow() override;

  /// Opens a plan; asks first when the one that is open has unsaved changes. A
  /// window of this program that has the file open already comes forward instead.
  void openPath(const QString& path);
  /// The same, in another window when this one has a plan already.
  void openBeside(const QString& path);
  /// Looks for work left behind and offers it.
  void offerRecovery();
  /// Says that the program ended itself, when it left a report.
  void offerFaults();
  /// Says that client data is kept for longer than its user wants, when it is.
  void offerRetention();
  /// Opens again what was open, in this window and others like it. Plans that
  /// were left behind are not opened: their recovery comes first.
  void bringBack();
  /// Another window like this one; it deletes itself when it is closed.
  MainWindow* newWindow();

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
  CompareView& compareView() { return *compare_; }
  KeysPage& keysPage() { return *keys_; }
  PreferencesPage& preferencesPage() { return *preferences_; }
  PatternsPage& patternsPage() { return *patterns_; }
  ClientsPage& clientsPage() { return *clients_; }
  handout::ComposerPage& composerPage() { return *composer_; }
  appointment::AppointmentPage& appointmentPage() { return *appointment_; }
  HintBar& hints() { return *hints_; }
  MenuCorner& corner() { return *corner_; }
  CommandSearch& search() { return *search_; }
  WornBar& wornBar() { return *wornBar_; }
  store::Recovery& recovery() { return recovery_; }
  store::FileWatch& fileWatch() { return fileWatch_; }
  FaultPage& faultPage() { return *faults_; }
  LeftComparePage& leftComparePage() { return *leftCompare_; }
  chair::ChairView& chairView() { return *chair_; }
  chair::ClassView& classView() { return *class_; }
  /// Whom the window is turned to.
  enum class Showing { Desk, Client, Class };
  Showing showing() const { return showing_; }
  /// A plan beside the teacher's in the class view; what is wrong is said there.
  void takeStudent(const QString& path);
  /// Whether the look waits until it is asked for (a safe start).
  bool isLookPaused() const { return lookPaused_; }

 protected:
  void changeEvent(QEvent* event) override;
  void closeEvent(QCloseEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void dragEnterEvent(QDragEnterEvent* event) override;
  void dropEvent(QDropEvent* event) override;
  void moveEvent(QMoveEvent* event) override;

 private:
  enum class Page { Start, NewPlan, Work, Preferences, Keys, Patterns, Faults, LeftCompare, Handout, Clients, Appointment };

  void buildPages();
  Condition whileWorking() const;
  Condition whileSelected() const;
  Condition whilePlanShown() const;  ///< the sheet, or the pages made from it
  void declareFileActions();
  void declareEditActions();
  void declareClipActions();
  void declarePatternActions();
  void declareHandoutActions();
  void declareClientActions();
  void declareAppointmentActions();
  void declareToolActions();
  void declareViewActions();
  void declareLookActions();  ///< main_window_look.cpp; fills its menu
  void declareReadingActions();
  void declareSettingsActions();
  void declareWidthActions();
  void buildMenusAndTools();
  void connectAll();
  void turnTo(Page page);
  void turnBack();
  void showStart();
  void titleChanged();
  void requestLook();

  // for others (main_window_chair.cpp)
  void declareShowActions();
  void connectShow();
  void showToOthers(Showing what);
  enum class DeskIs { Shown, Hidden };
  void setDesk(DeskIs is);
  void askAboutPagesUnderWay();
  bool refusesToClose();

  // choices (main_window_choices.cpp)
  void declareChoiceActions();
  void fillChoiceMenu(QMenu* menu);
  void connectChoices();
  void nameChoice();
  void setAim(int region);  ///< 0 = whole head
  void turnMiddle(QWidget* to);
  bool isComparing() const;
  void showCompare();
  void showSheet();
  // readings (main_window_look.cpp)
  void connectReadings();
  void foldReadings();
  store::Settings::WindowHeight heightNow() const;

  // habits (main_window_settings.cpp)
  void buildCorner();
  void connectSettings();
  void takePreferences();
  /// Tells when what the user chose could not be written, until it can be.
  void sayUnwritten();
  void offerHints();
  void restoreWindow();
  QSize leastDesk() const;
  void fitReadings();  ///< main_window_look.cpp
  void widenCards(int steps);
  void keepWindow();
  MainWindow* windowWith(const QString& path) const;
  static std::vector<MainWindow*> allWindows();
  void quitAll();
  void stayOpen();
  void comeForward();

  store::WindowState deskState() const;
  void setDeskState(const store::WindowState& state);

  // session (main_window_session.cpp)
  void sessionChanged();
  void writeSession();
  void leaveSession();
  void bringBackNow(const std::vector<store::SessionWindow>& windows);

  // files
  void takeTyping();  ///< a field that is still typed in hands over what stands in it
  /// Asks for the plan, then for what was typed about the client; `go` at once where nothing is to be asked.
  void askBeforeLeaving(const QString& question, std::function<void()> go);
  void askBeforeLosing(const std::function<void()>& go);
  void beginForAnother();
  void openNow(const QString& path);
  void openDialog();
  void save(std::function<void()> then = {});
  void saveAs(std::function<void()> then = {});
  enum class IfInUse { Ask, WriteAnyway };
  void writeTo(const QString& path, const std::function<void()>& then, IfInUse ifInUse = IfInUse::Ask);
  void beginPlan(plan::Plan plan);
  void tellError(const QString& text);
  void tellNotOpened(const QString& path, const Error& error);

  // left plans (main_window_left.cpp)
  void connectLeft();
  enum class Look { Now, WhenAsked };
  void openRecovered(const store::LeftPlan& left, Look look);
  void wantRecovered(const store::LeftPlan& left, Look look);
  void discardLeft(const store::LeftPlan& left);
  void discardLeftNow(const store::LeftPlan& left);
  void copyLeft(const store::LeftPlan& left);
  void sayPaused();
  void resumeLook();

  // one writer, changes from outside, refusals, faults (main_window_keeping.cpp)
  void declareKeepingActions();
  void connectKeeping();
  void takeLock(const QString& path);
  void sayInUse();
  void sayProtected();
  void openAnyway();
  void openAsCopy();
  void sayChanged();
  void sayGone();
  void readAnew();
  void readAnewNow();
  enum class Current { Theirs, Mine };  ///< whose agreement is the one that counts
  QStringList bringRecords(const plan::PlanInfo& theirs, Current current);
  bool takeRecordsOf(const QString& path);
  void sayRecordsStay(const QStringList& which);
  void sayRefused(const document::Refusal& refusal);
  void removeReports();

  // pieces
  void addPiece();
  void removeSelected();
  void selectAllPieces();

  // clipboard (main_window_clip.cpp)
  void copySelected();
  /// The sheet as it is shown now: one view, or all.
  paint::Page picturePage(const std::optional<head::ViewName>& view) const;
  void dragOut(head::ViewName view);
  void savePicture();
  void cutSelected();
  void pasteClip();
  void duplicateSelected();
  /// One undo entry; what came is selected.
  document::DocumentController::Outcome bringIn(const plan::ChangeSet& edit, const QString& name);

  void connectHandout();  ///< main_window_handout.cpp
  void connectAppointment();  ///< main_window_appointment.cpp
  bool isLogShown() const;
  void nameUndo();  ///< undo and redo say what they would do
  void showWorkListOnPaper();
  void beginNextVisit(const plan::Plan& next, const std::vector<std::string>& leave);

  // the client beside the plan (main_window_client.cpp)
  void connectClient();
  std::uint64_t clientOf(const plan::Plan& plan) const;
  void followClient();
  void showClient(std::shared_ptr<store::ClientKeeper> keeper);
  void joinClient(quint64 number);
  void joinClientNow(quint64 number);
  /// Why what was typed about the client is not on the disk, where no other window would go on
  /// trying; waits for the disk (ClientKeeper::writeNow).
  enum class Leaving { Plan, Window };  ///< with the last window photos that are still read end too
  std::optional<Error> clientNotKept(Leaving leaving);
  void leaveClient(const std::function<void()>& go, Leaving leaving = Leaving::Plan);  ///< `go` at once where all of it is kept
  void sayClientNotKept(const Error& trouble, const std::function<void()>& go, Leaving leaving);
  void addPhotos();
  void handOver(const std::shared_ptr<store::ClientKeeper>& keeper);
  void removeClient(const std::shared_ptr<store::ClientKeeper>& keeper, store::PlanFiles files);
  void fillClients();
  void shareCopy();

  // patterns (main_window_patterns.cpp)
  void connectPatterns();
  void fillPatterns();
  void usePattern(const store::StoredPattern& pattern);
  void beginWithPattern(const store::StoredPattern& pattern);

  const DeskPlaces places_;
  const PassesMaker makePasses_;
  const SearchMaker makeSearch_;
  const QString settingsTrouble_;  ///< before `settings_` is read
  store::Settings settings_;
  QString recoveryRoot_;
  document::DocumentController controller_;
  document::ViewState view_;
  live::LookService looks_;
  live::SuggestionService suggestions_;
  store::Recovery recovery_;
  store::FileWatch fileWatch_;
  store::PlanLock planLock_;
  store::DiscardedPlans discarded_;
  QTimer sessionTimer_;
  ActionRegistry actions_;
  std::vector<look::PictureRequest> askedPictures_;
  std::shared_ptr<const live::LookResult> shownLook_;  ///< null: none yet for this document
  bool closing_ = false;
  QString inUseBy_;           ///< who has the plan that may only be read; "" = its file is write-protected
  bool leftSession_ = false;  ///< closed while others stay
  bool lookPaused_ = false, pauseNext_ = false;
  int attempts_ = 0;  ///< of the recovered plan that waits for its look
  std::optional<store::Settings::WindowHeight> fittedHeight_;  ///< that the readings are folded for
  Page before_ = Page::Start;  ///< where a page of settings leads back to

  Showing showing_ = Showing::Desk;
  std::vector<QToolBar*> shownBars_;               ///< to be shown again
  std::vector<QPointer<QWidget>> hiddenWindows_;   ///< of other plans, meanwhile
  bool wasFullScreen_ = false;

  QStackedWidget* stage_ = nullptr;  ///< the desk, the client's screen, the class's
  QWidget* desk_ = nullptr;
  chair::ChairView* chair_ = nullptr;
  chair::ClassView* class_ = nullptr;
  QStackedWidget* pages_ = nullptr;
  StartPage* start_ = nullptr;
  NewPlanPage* newPlan_ = nullptr;
  QWidget* work_ = nullptr;
  MessageBar* messages_ = nullptr;
  WornBar* wornBar_ = nullptr;
  QStackedWidget* middle_ = nullptr;  ///< the sheet, or two choices side by side
  sheet::HeadSheet* sheet_ = nullptr;
  CompareView* compare_ = nullptr;
  CardColumn* cards_ = nullptr;
  ReadingsStrip* readings_ = nullptr;
  QToolBar *tools_ = nullptr, *drawing_ = nullptr;
  CommandSearch* search_ = nullptr;
  PreferencesPage* preferences_ = nullptr;
  PatternsPage* patterns_ = nullptr;
  KeysPage* keys_ = nullptr;
  FaultPage* faults_ = nullptr;
  LeftComparePage* leftCompare_ = nullptr;
  handout::ComposerPage* composer_ = nullptr;
  ClientsPage* clients_ = nullptr;
  appointment::AppointmentPage* appointment_ = nullptr;
  HintBar* hints_ = nullptr;
  QSplitter* splitter_ = nullptr;
  MenuCorner* corner_ = nullptr;
};

}  // namespace combdraft::desk
