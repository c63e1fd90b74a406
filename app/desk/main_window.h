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
#include "app/live/suggestion_service.h"
#include "app/paint/drawing.h"
#include "app/store/pattern_store.h"
#include "app/store/recovery.h"
#include "app/store/settings.h"

class QMenu;
class QPushButton;
class QSplitter;
class QStackedWidget;
class QToolBar;

namespace combdraft::sheet {
class HeadSheet;
}

namespace combdraft::desk {

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

/// Where a window keeps its things; tests give their own.
struct DeskPlaces {
  QString settingsFile;                           ///< "" = the user's own
  QString recoveryRoot = store::recoveryRoot();
  QString patternsFolder = store::patternsFolder();  ///< of the user's own patterns
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
  /// Looks for work left behind and offers it.
  void offerRecovery();
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
  HintBar& hints() { return *hints_; }
  QPushButton& findingsButton() { return *findingsButton_; }
  CommandSearch& search() { return *search_; }
  WornBar& wornBar() { return *wornBar_; }
  store::Recovery& recovery() { return recovery_; }

 protected:
  void changeEvent(QEvent* event) override;
  void closeEvent(QCloseEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void dragEnterEvent(QDragEnterEvent* event) override;
  void dropEvent(QDropEvent* event) override;

 private:
  enum class Page { Start, NewPlan, Work, Preferences, Keys, Patterns };

  void buildPages();
  Condition whileWorking() const;
  Condition whileSelected() const;
  void declareFileActions();
  void declareEditActions();
  void declareClipActions();
  void declarePatternActions();
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
  void buildFindingsButton();
  void connectSettings();
  void takePreferences();
  void offerHints();
  void restoreWindow();
  void fitReadings();  ///< main_window_look.cpp
  void widenCards(int steps);
  void keepWindow();
  MainWindow* windowWith(const QString& path) const;
  void quitAll();
  void comeForward();

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
  void bringIn(const plan::ChangeSet& edit, const QString& name);

  // patterns (main_window_patterns.cpp)
  void connectPatterns();
  void fillPatterns();
  void usePattern(const store::StoredPattern& pattern);
  void beginWithPattern(const store::StoredPattern& pattern);

  const DeskPlaces places_;
  const PassesMaker makePasses_;
  const SearchMaker makeSearch_;
  store::Settings settings_;
  QString recoveryRoot_;
  document::DocumentController controller_;
  document::ViewState view_;
  live::LookService looks_;
  live::SuggestionService suggestions_;
  store::Recovery recovery_;
  ActionRegistry actions_;
  std::vector<look::PictureRequest> askedPictures_;
  std::shared_ptr<const live::LookResult> shownLook_;  ///< null: none yet for this document
  bool closing_ = false;
  std::optional<store::Settings::WindowHeight> fittedHeight_;  ///< that the readings are folded for
  Page before_ = Page::Start;  ///< where a page of settings leads back to

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
  HintBar* hints_ = nullptr;
  QSplitter* splitter_ = nullptr;
  QPushButton* findingsButton_ = nullptr;
};

}  // namespace combdraft::desk
