#include "app/handout/composer_page.h"

#include <QComboBox>
#include <QKeyEvent>
#include <QLabel>
#include <QStackedWidget>
#include <QVBoxLayout>
#include <utility>

#include "app/handout/handout_edits.h"
#include "app/handout/pages_view.h"
#include "app/handout/parts.h"
#include "app/handout/print_preview.h"

namespace combdraft::handout {
namespace {

using plan::HandoutPart;

constexpr int kPartRole = Qt::UserRole;

std::string plan::Handout::*fieldOf(HandoutPart part) {
  switch (part) {
    case HandoutPart::Title: return &plan::Handout::aim;
    case HandoutPart::Kit: return &plan::Handout::kit;
    case HandoutPart::Checks: return &plan::Handout::checks;
    case HandoutPart::Faults: return &plan::Handout::faults;
    case HandoutPart::SelfCheck: return &plan::Handout::selfCheck;
    default: return nullptr;
  }
}

QString madeFor(HandoutPart part, const Request& request) {
  switch (part) {
    case HandoutPart::Kit: return madeKit(request);
    case HandoutPart::Checks: return madeChecks(request);
    case HandoutPart::Faults: return madeFaults(request);
    case HandoutPart::SelfCheck: return madeSelfCheck(request);
    default: return {};
  }
}

}  // namespace

ComposerPage::ComposerPage(document::DocumentController& controller, PageMaker::Look look, QWidget* parent)
    : QWidget(parent), controller_(controller), maker_(std::move(look)) {
  setObjectName(QStringLiteral("page"));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(20, 14, 20, 12);
  column->setSpacing(10);
  column->addWidget(buildTop());
  auto* middle = new QHBoxLayout;
  middle->setSpacing(16);
  middle->addWidget(buildLeft());
  pages_ = new PagesView(this);
  middle->addWidget(pages_, 1);
  column->addLayout(middle, 1);
  connectAll();
}

controls::TextBox* ComposerPage::textBox(HandoutPart part) {
  for (const auto& [of, box] : boxes_)
    if (of == part) return box;
  return nullptr;
}

std::optional<HandoutPart> ComposerPage::currentPart() const {
  const QListWidgetItem* item = parts_->currentItem();
  return item ? std::optional(static_cast<HandoutPart>(item->data(kPartRole).toInt())) : std::nullopt;
}

void ComposerPage::connectAll() {
  connect(&controller_, &document::DocumentController::changed, this, [this](const document::DocumentChange& change) {
    // First, so that no page of the new plan has words of the client before.
    if (change.kind == document::DocumentChange::Kind::Replaced) forget();
    if (follows_) fill();
  });
  connect(&controller_, &document::DocumentController::editRefused, this, [this] {
    if (follows_) fill();
  });
  connect(kind_, &controls::Segments::chosen, this, [this](int) {
    left_->setCurrentIndex(kind_->current());
    ask();
  });
  connect(paper_, &controls::Segments::chosen, this, [this](int index) {
    plan::Handout next = handoutOf(controller_.document());
    next.paper = static_cast<plan::PaperSize>(index);
    change(tr("Change the paper"), next);
  });
  connect(turn_, &controls::Segments::chosen, this, [this](int index) {
    plan::Handout next = handoutOf(controller_.document());
    next.turn = static_cast<plan::PageTurn>(index);
    change(tr("Turn the paper"), next);
  });
  connect(parts_, &QListWidget::currentRowChanged, this, [this](int) {
    const auto part = currentPart();
    if (!part) return;
    turnTextsTo(*part);
    if (filling_) return;
    pages_->reveal(*part == HandoutPart::Title ? QString() : partHeading(*part));
  });
  connect(parts_, &QListWidget::itemChanged, this, [this](QListWidgetItem* item) {
    if (filling_) return;
    const auto part = static_cast<HandoutPart>(item->data(kPartRole).toInt());
    const bool shown = item->checkState() == Qt::Checked;
    change(shown ? tr("Print “%1”").arg(partTitle(part)) : tr("Do not print “%1”").arg(partTitle(part)),
           withPart(handoutOf(controller_.document()), part, shown ? Shown::Yes : Shown::No));
  });
  connect(parts_->model(), &QAbstractItemModel::rowsMoved, this, [this] {
    if (filling_) return;
    std::vector<HandoutPart> order;
    for (int i = 0; i < parts_->count(); ++i) order.push_back(static_cast<HandoutPart>(parts_->item(i)->data(kPartRole).toInt()));
    change(tr("Order the parts"), withOrder(handoutOf(controller_.document()), order));
  });
  connect(up_, &QPushButton::clicked, this, [this] { movePart(-1); });
  connect(down_, &QPushButton::clicked, this, [this] { movePart(1); });
  for (const auto& [part, box] : boxes_)
    connect(box, &controls::TextBox::edited, this, [this, part = part](const QString& text, bool goesOn) {
      if (!goesOn) typing_ = document::Gesture::begin();
      plan::Handout next = handoutOf(controller_.document());
      next.*fieldOf(part) = text.toStdString();
      change(tr("Type in “%1”").arg(partTitle(part)), next, typing_);
    });
  for (controls::TextBox* box : stepBoxes_)
    connect(box, &controls::TextBox::edited, this, [this](const QString&, bool goesOn) { stepEdited(goesOn); });
  for (controls::TextBox* box : clientBoxes_)
    connect(box, &controls::TextBox::edited, this, [this] {
      client_ = {clientBoxes_[0]->edit()->toPlainText(), clientBoxes_[1]->edit()->toPlainText(), clientBoxes_[2]->edit()->toPlainText()};
      ask();
    });
  connect(step_, &QComboBox::activated, this, [this](int) { fillStep(); });
  connect(save_, &QPushButton::clicked, this, &ComposerPage::saveAs);
  connect(print_, &QPushButton::clicked, this, &ComposerPage::print);
  connect(preview_, &QPushButton::clicked, this, &ComposerPage::previewPrint);
  connect(stop_, &QPushButton::clicked, this, [this] { maker_.cancel(); });
  connectMaker();
}

void ComposerPage::connectMaker() {
  connect(&maker_, &PageMaker::ready, this, [this](const Pages& pages, bool looksFollow) {
    pages_->setPages(pages);
    count_->setText(pages->size() == 1 ? tr("1 page") : tr("%1 pages").arg(pages->size()));
    if (!looksFollow) state_->clear();
  });
  connect(&maker_, &PageMaker::progressed, this, [this](double done, bool isWriting) {
    const bool busy = done < 1;
    bar_->setVisible(busy);
    stop_->setVisible(busy);
    bar_->setValue(static_cast<int>(100 * done));
    state_->setText(!busy ? QString() : isWriting ? tr("Making the pages for paper…") : tr("Drawing the hair…"));
    for (QPushButton* one : {save_, print_, preview_}) one->setEnabled(!maker_.isWriting());
  });
  connect(&maker_, &PageMaker::written, this, &ComposerPage::sayWritten);
  connect(&maker_, &PageMaker::failed, this, &ComposerPage::sayFailed);
  connect(&maker_, &PageMaker::filesStand, this, &ComposerPage::askAbout);
  connect(&maker_, &PageMaker::forPaper, this, &ComposerPage::showPreview);
}

void ComposerPage::enter(const QString& folder) {
  folder_ = folder;
  follows_ = true;
  fill();
  parts_->setFocus();
  if (!parts_->currentItem()) parts_->setCurrentRow(0);
}

void ComposerPage::leave() {
  follows_ = false;
  dropPreview();
}

void ComposerPage::showDocument(DocumentKind kind) {
  kind_->setCurrent(static_cast<int>(kind));
  left_->setCurrentIndex(kind_->current());
  if (follows_) ask();
}

void ComposerPage::setWork(const WorkOnPaper& work) {
  work_ = work;
  if (follows_) ask();
}

void ComposerPage::forgetClient() {
  forget();
  if (follows_) ask();
}

void ComposerPage::forget() {
  client_ = {};
  maker_.forget();
  pages_->clear();
  count_->clear();
  for (controls::TextBox* box : clientBoxes_) box->setText({});
  previewed_.reset();
  if (previewWindow_) previewWindow_->close();
  previewWindow_.clear();
  pending_.reset();
  if (!std::exchange(isAsked_, false)) return;
  Q_EMIT askedNoMore();
  sayUnanswered();
}

Request ComposerPage::requestNow() const {
  Request request = requestFor(static_cast<DocumentKind>(kind_->current()), controller_.document());
  request.client = client_;
  request.work = work_;
  return request;
}

void ComposerPage::ask() { maker_.request(requestNow()); }

void ComposerPage::change(const QString& name, const plan::Handout& handout, document::Gesture gesture) {
  const plan::Plan& now = controller_.document();
  if (controller_.edit(withHandout(now, handout), name, gesture) != document::DocumentController::Outcome::Made) fill();
}

void ComposerPage::fill() {
  filling_ = true;
  const plan::Handout handout = handoutOf(controller_.document());
  paper_->setCurrent(static_cast<int>(handout.paper));
  turn_->setCurrent(static_cast<int>(handout.turn));
  fillParts(handout);
  fillTexts(handout);
  filling_ = false;
  ask();
}

void ComposerPage::fillParts(const plan::Handout& handout) {
  const std::vector<plan::HandoutUse> uses = partsOf(handout);
  const auto current = currentPart();
  for (std::size_t i = 0; i < uses.size(); ++i) {
    const int row = static_cast<int>(i);
    QListWidgetItem* item = parts_->item(row);
    if (!item) parts_->addItem(item = new QListWidgetItem);
    item->setText(partTitle(uses[i].part));
    item->setData(kPartRole, static_cast<int>(uses[i].part));
    item->setFlags((item->flags() | Qt::ItemIsUserCheckable | Qt::ItemIsDragEnabled) & ~Qt::ItemIsDropEnabled);
    item->setCheckState(uses[i].hidden ? Qt::Unchecked : Qt::Checked);
    if (current == uses[i].part) parts_->setCurrentRow(row);
  }
}

void ComposerPage::fillTexts(const plan::Handout& handout) {
  const Request request = requestFor(DocumentKind::Handout, controller_.document());
  for (const auto& [part, box] : boxes_) {
    box->setText(QString::fromStdString(handout.*fieldOf(part)));
    const QString made = madeFor(part, request);
    if (!made.isEmpty()) box->edit()->setPlaceholderText(made);
  }
  const plan::ItemId shown = step_->currentIndex() >= 0 && static_cast<std::size_t>(step_->currentIndex()) < steps_.size()
                                 ? steps_[static_cast<std::size_t>(step_->currentIndex())].about
                                 : plan::ItemId();
  scene_ = std::make_shared<const paint::Scene>(controller_.document(), plan::ItemId(), scene_.get());
  steps_ = stepsOf(*scene_, handout.steps);
  step_->clear();
  int row = steps_.empty() ? -1 : 0;
  for (std::size_t i = 0; i < steps_.size(); ++i) {
    const bool gone = steps_[i].standing == Step::Standing::Gone;
    step_->addItem(gone ? QStringLiteral("\u26A0 ") + steps_[i].name : tr("%1. %2").arg(QString::number(i + 1), steps_[i].name));
    if (steps_[i].about == shown) row = static_cast<int>(i);
  }
  step_->setCurrentIndex(row);
  fillStep();
}

void ComposerPage::fillStep() {
  const int row = step_->currentIndex();
  const bool some = row >= 0 && static_cast<std::size_t>(row) < steps_.size();
  for (controls::TextBox* box : stepBoxes_) box->setEnabled(some);
  if (!some) {
    stepState_->setText(tr("No steps yet: draw pieces or lay out a section first."));
    stepState_->show();
    for (controls::TextBox* box : stepBoxes_) box->setText({});
    return;
  }
  const Step& step = steps_[static_cast<std::size_t>(row)];
  stepState_->setText(step.standing == Step::Standing::Gone
                          ? tr("Its piece or section is no longer in the plan. The words are kept until you take them out.")
                          : QString());
  stepState_->setVisible(!stepState_->text().isEmpty());
  const std::array<std::pair<QString, QString>, 3> words{{{step.typed.what, step.made.what}, {step.typed.how, step.made.how}, {step.typed.why, step.made.why}}};
  for (std::size_t i = 0; i < words.size(); ++i) {
    stepBoxes_[i]->setText(words[i].first);
    if (!words[i].second.isEmpty()) stepBoxes_[i]->edit()->setPlaceholderText(words[i].second);
  }
}

void ComposerPage::stepEdited(bool goesOn) {
  const int row = step_->currentIndex();
  if (row < 0 || static_cast<std::size_t>(row) >= steps_.size()) return;
  if (!goesOn) typing_ = document::Gesture::begin();
  const Step& step = steps_[static_cast<std::size_t>(row)];
  plan::Handout next = handoutOf(controller_.document());
  next.steps = withWords(next.steps, step.about,
                         {stepBoxes_[0]->edit()->toPlainText(), stepBoxes_[1]->edit()->toPlainText(), stepBoxes_[2]->edit()->toPlainText()});
  change(tr("Type in step “%1”").arg(step.name), next, typing_);
}

void ComposerPage::turnTextsTo(HandoutPart part) {
  int page = part == HandoutPart::Steps ? texts_->count() - 1 : 0;
  for (std::size_t i = 0; i < boxes_.size(); ++i)
    if (boxes_[i].first == part) page = static_cast<int>(i) + 1;
  texts_->setCurrentIndex(page);
}

void ComposerPage::movePart(int places) {
  const auto part = currentPart();
  if (!part) return;
  change(places < 0 ? tr("Move “%1” up").arg(partTitle(*part)) : tr("Move “%1” down").arg(partTitle(*part)),
         withPartMoved(handoutOf(controller_.document()), *part, places));
  for (int i = 0; i < parts_->count(); ++i)
    if (parts_->item(i)->data(kPartRole).toInt() == static_cast<int>(*part)) parts_->setCurrentRow(i);
}

QString ComposerPage::suggestedName() const {
  QString title = QString::fromStdString(controller_.document().info().title);
  for (QChar& c : title)
    if (QStringLiteral("/\\:*?\"<>|").contains(c)) c = u'-';
  const QString words[] = {tr("handout"), tr("record card"), tr("client's page"), tr("work list")};
  const QString what = words[kind_->current()];
  return (title.isEmpty() ? what : title + QStringLiteral(", ") + what) + QStringLiteral(".pdf");
}

void ComposerPage::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape) return Q_EMIT done();
  QWidget::keyPressEvent(event);
}

bool ComposerPage::eventFilter(QObject* watched, QEvent* event) {
  if (watched == parts_ && event->type() == QEvent::KeyPress) {
    const auto* key = static_cast<QKeyEvent*>(event);
    if (key->modifiers().testFlag(Qt::AltModifier) && (key->key() == Qt::Key_Up || key->key() == Qt::Key_Down)) {
      movePart(key->key() == Qt::Key_Up ? -1 : 1);
      return true;
    }
  }
  return QWidget::eventFilter(watched, event);
}

}  // namespace combdraft::handout
