#pragma once
// The composer: which parts the handout has and in which order, its texts, the paper,
// and the pages as they will be printed. Record card, client's page and work list as well. What
// is typed for a client is kept by this page only, never in the plan.
#include <QListWidget>
#include <QPointer>
#include <QPlainTextEdit>
#include <QProgressBar>
#include <QPushButton>
#include <QWidget>
#include <functional>

#include "app/controls/number_field.h"
#include "app/controls/segments.h"
#include "app/controls/text_box.h"
#include "app/document/document_controller.h"
#include "app/handout/page_maker.h"
#include "app/handout/print_preview.h"

class QBoxLayout;
class QComboBox;
class QLabel;
class QStackedWidget;

namespace combdraft::handout {

class PagesView;

/// Files stand where pages are to be written: what is asked, and what can be answered; the
/// last answer changes nothing.
struct SaveQuestion {
  struct Answer {
    QString text;
    std::function<void()> give;
  };
  QString text;
  std::vector<Answer> answers;
};

class ComposerPage : public QWidget {
  Q_OBJECT

 public:
  explicit ComposerPage(document::DocumentController& controller, PageMaker::Look look = PageMaker::engineLooks(),
                        QWidget* parent = nullptr);

  /// Fills the page and follows the document from now on; `leave` ends that.
  void enter(const QString& folder);
  void leave();
  /// Stops a print preview that is under way; that it does not open is said. One that is open stays.
  void dropPreview();
  void showDocument(DocumentKind kind);
  /// How the work list is set, for when it is printed.
  void setWork(const WorkOnPaper& work);
  /// What was typed for a client is forgotten, and every page that shows it is taken out of
  /// sight. Comes by itself when the document is replaced.
  void forgetClient();
  void saveAs();
  void print();
  /// Makes the pages as for print and shows them in a window of their own.
  void previewPrint();
  /// Writes without asking where; `asked` when files stand there.
  void saveTo(const QString& fileName);
  /// Files or a print are under way.
  bool isPuttingOut() const { return maker_.isPuttingOut(); }

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
  controls::NumberField* resolution() { return resolution_; }  ///< dpi of PNG
  QPushButton* upButton() { return up_; }
  QPushButton* downButton() { return down_; }
  QPushButton* stopButton() { return stop_; }
  PrintPreview* printPreview();  ///< null when none is open

 Q_SIGNALS:
  void done();
  void news(const QString& text);
  void trouble(const combdraft::Error& error);
  void folderChosen(const QString& folder);
  void asked(const combdraft::handout::SaveQuestion& question);
  void askedNoMore();  ///< the question is void

 protected:
  void keyPressEvent(QKeyEvent* event) override;
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  /// What is to be written once it is known whether files stand there.
  struct Save {
    Request request;
    FileWish wish;
  };

  void sayBusy();
  void sayUnanswered();
  void sayNoPreview();
  void sayWritten(const QStringList& files);
  void sayFailed(const Error& error, bool wasWriting);
  void askAbout(const FilesThere& there, int pages);
  void saveOver(const QStringList& remove);
  void forget();
  void printOut(const Request& request);
  void showPreview(const Pages& pages);
  void connectMaker();
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
  std::optional<Save> pending_;
  bool isAsked_ = false;
  std::optional<Request> previewed_;
  QPointer<PrintPreview> previewWindow_;
  std::shared_ptr<const paint::Scene> scene_;  // kept for what the next one takes over
  std::vector<Step> steps_;
  document::Gesture typing_ = document::Gesture::begin();

  controls::Segments *kind_, *paper_, *turn_;
  controls::NumberField* resolution_;
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
