#pragma once
// The composer: which parts the handout has and in which order, its texts, the paper,
// and the pages as they will be printed. Record card, client's page and work list as well. What
// is typed for a client is kept by this page only, never in the plan.
#include <QListWidget>
#include <QPlainTextEdit>
#include <QProgressBar>
#include <QPushButton>
#include <QWidget>

#include "app/controls/segments.h"
#include "app/controls/text_box.h"
#include "app/document/document_controller.h"
#include "app/handout/page_maker.h"

class QBoxLayout;
class QComboBox;
class QLabel;
class QStackedWidget;

namespace combdraft::handout {

class PagesView;

class ComposerPage : public QWidget {
  Q_OBJECT

 public:
  explicit ComposerPage(document::DocumentController& controller, PageMaker::Look look = PageMaker::engineLooks(),
                        QWidget* parent = nullptr);

  /// Fills the page and follows the document from now on; `leave` ends that.
  void enter(const QString& folder);
  void leave();
  void showDocument(DocumentKind kind);
  /// How the work list is set, for when it is printed.
  void setWork(const WorkOnPaper& work);
  /// What was typed for a client is forgotten: another plan was opened.
  void forgetClient();
  void saveAs();
  void print();
  void previewPrint();
  /// Writes at once, without asking where.
  void saveTo(const QString& fileName);

  PageMaker& maker() { return maker_; }
  PagesView& pagesView() { return *pages_; }
  QListWidget* partList() { return parts_; }
  QComboBox* stepChoice() { return step_; }
  controls::TextBox* textBox(plan::HandoutPart part);  ///< null for a part without text
  controls::TextBox* stepBox(int row) { return stepBoxes_[row]; }  ///< what, how, why
  controls::TextBox* clientBox(int row) { return clientBoxes_[row]; }  ///< aftercare, next visit, call
  controls::Segments* kind() { return kind_; }
  controls::Segments* paper() { return paper_; }
  controls::Segments* turn() { return turn_; }
  QPushButton* upButton() { return up_; }
  QPushButton* downButton() { return down_; }
  QPushButton* stopButton() { return stop_; }

 Q_SIGNALS:
  void done();
  void news(const QString& text);
  void trouble(const combdraft::Error& error);
  void folderChosen(const QString& folder);

 protected:
  void keyPressEvent(QKeyEvent* event) override;
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void sayBusy();
  QWidget* buildTop();
  QWidget* buildLeft();
  QWidget* buildTexts();
  void connectAll();
  void fill();
  void fillParts(const plan::Handout& handout);
  void fillTexts(const plan::Handout& handout);
  void fillStep();
  void ask();
  Request requestNow() const;
  void change(const QString& name, const plan::Handout& handout, document::Gesture gesture = document::Gesture::none());
  void turnTextsTo(plan::HandoutPart part);
  std::optional<plan::HandoutPart> currentPart() const;
  void movePart(int places);
  void stepEdited(bool goesOn);
  QString suggestedName() const;

  document::DocumentController& controller_;
  PageMaker maker_;
  bool follows_ = false, filling_ = false;
  QString folder_;
  ClientWords client_;
  WorkOnPaper work_;
  std::vector<Step> steps_;
  document::Gesture typing_ = document::Gesture::begin();

  controls::Segments *kind_, *paper_, *turn_;
  QListWidget* parts_;
  QPushButton *up_, *down_, *save_, *print_, *preview_, *stop_;
  QStackedWidget *left_, *texts_;
  QComboBox* step_;
  QLabel *stepState_, *count_, *state_;
  QProgressBar* bar_;
  std::vector<std::pair<plan::HandoutPart, controls::TextBox*>> boxes_;
  std::array<controls::TextBox*, 3> stepBoxes_{}, clientBoxes_{};
  PagesView* pages_;
};

}  // namespace combdraft::handout
