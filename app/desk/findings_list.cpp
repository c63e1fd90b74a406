#include "app/desk/findings_list.h"

#include <QCoreApplication>
#include <QLabel>
#include <QListWidget>
#include <QTimer>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>

#include "app/controls/wrapped_label.h"
#include "app/paint/check_words.h"
#include "app/words/engine_words.h"
#include "engine/plan/placement_check.h"

namespace combdraft::desk {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(FindingsList)
};

QString signOf(plan::Severity severity) {
  switch (severity) {
    case plan::Severity::Error: return QStringLiteral("\u2715 ") + Words::tr("Wrong");
    case plan::Severity::Caution: return QStringLiteral("\u26A0 ") + Words::tr("Check before work");
    case plan::Severity::Note: return QStringLiteral("\u2139 ") + Words::tr("Worth a look");
  }
  return {};
}

}  // namespace

FindingsList::FindingsList(document::DocumentController& controller, QWidget* parent)
    : QWidget(parent), controller_(controller) {
  setAccessibleName(tr("Needs a look"));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 4, 0, 0);
  column->setSpacing(8);
  title_ = new QLabel(this);
  QFont font = title_->font();
  font.setPointSizeF(font.pointSizeF() * 1.25);
  font.setWeight(QFont::DemiBold);
  title_->setFont(font);
  column->addWidget(title_);
  list_ = new QListWidget(this);
  list_->setAccessibleName(tr("What needs a look"));
  list_->setWordWrap(true);
  list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  list_->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);  // it is as high as its lines
  list_->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  list_->setSpacing(1);
  list_->viewport()->installEventFilter(this);
  column->addWidget(list_);
  empty_ = new controls::WrappedLabel(tr("Nothing is listed. What was looked for: in the drawing, pieces that start near the scalp or overlap, lightener over light "
                         "or poor hair, backcombing of poor hair, and what was typed and does not fit together. This says nothing about this hair or "
                         "this scalp: look at both, test, and read the maker's directions before work."), this);
  empty_->setProperty("soft", true);
  column->addWidget(empty_);
  connect(list_, &QListWidget::itemClicked, this, [this](QListWidgetItem* item) { choose(list_->row(item)); });
  connect(list_, &QListWidget::itemActivated, this, [this](QListWidgetItem* item) { choose(list_->row(item)); });
  connect(list_, &QListWidget::currentRowChanged, this, [this](int row) { if (list_->hasFocus()) choose(row); });
  connect(&controller_, &document::DocumentController::changed, this, [this](const document::DocumentChange& change) {
    const bool isOther = change.kind == document::DocumentChange::Kind::Replaced;
    if (isOther) advice_.reset();
    if (change.kind != document::DocumentChange::Kind::Tentative) check();
  });
  later_ = new QTimer(this);
  later_->setSingleShot(true);
  later_->setInterval(300);
  connect(later_, &QTimer::timeout, this, &FindingsList::checkLater);
  check();
}

QString FindingsList::countText() const {
  const auto wrong = std::count_if(issues_.begin(), issues_.end(), [](const plan::Issue& issue) {
    return issue.severity == plan::Severity::Error;
  });
  const auto others = static_cast<qsizetype>(issues_.size() + findings()) - wrong;
  if (wrong > 0 && others > 0) return tr("Wrong: %1, needs a look: %2").arg(wrong).arg(others);
  if (wrong > 0) return tr("Wrong: %1").arg(wrong);
  if (others > 0) return tr("Needs a look: %1").arg(others);
  if (state_ == Placement::Sought) return tr("The drawing is being checked");
  if (state_ == Placement::NoMemory) return tr("Not checked: too little memory");
  return advice_ ? tr("Nothing listed") : tr("Only the drawing was checked");
}

void FindingsList::check() {
  // How things lie is dearer to find out: once the hand rests, and on a worker.
  placementCheck_.cancel();
  state_ = Placement::Sought;
  std::erase_if(placement_, [this](const plan::Issue& issue) {
    return std::any_of(issue.items.begin(), issue.items.end(),
                       [this](const plan::ItemId& id) { return !controller_.document().item(id); });
  });
  later_->start();
  put();
}

void FindingsList::checkLater() {
  placementCheck_.begin(
      [this, plan = controller_.document()](const std::stop_token& stop) -> live::NewestJob::Deliver {
        return [this, issues = plan::checkPlacement(plan, stop)] { placed(issues, Placement::Known); };
      },
      [this] { placed({}, Placement::NoMemory); });
}

void FindingsList::placed(std::vector<plan::Issue> issues, Placement state) {
  placement_ = std::move(issues);
  state_ = state;
  put();
}

void FindingsList::put() {
  std::vector<plan::Issue> now = plan::validate(controller_.document());
  now.insert(now.end(), placement_.begin(), placement_.end());
  issues_ = std::move(now);
  fill();
  Q_EMIT countChanged();
}

void FindingsList::fill() {
  title_->setText(advice_ && advice_->revision != controller_.revision() ? tr("%1, of the plan before the last change").arg(countText())
                  : advice_ && !advice_->advice.complete               ? tr("%1 so far").arg(countText())
                                                                        : countText());
  const int row = list_->currentRow();
  const QSignalBlocker quiet(list_);
  list_->clear();
  lines_.clear();
  const auto add = [&](const QString& sign, const QString& text, const Line& line) {
    auto* item = new QListWidgetItem(sign + u'\n' + text, list_);
    item->setData(Qt::AccessibleTextRole, QString(sign.mid(2) + QStringLiteral(": ") + text));
    item->setToolTip(line.finding ? tr("Open this: where it is and what might be changed") : tr("Select what this is about"));
    lines_.push_back(line);
  };
  const auto addIssues = [&](auto wanted) {
    for (std::size_t i = 0; i < issues_.size(); ++i)
      if (wanted(issues_[i].severity)) add(signOf(issues_[i].severity), paint::issueText(controller_.document(), issues_[i]), {i, {}});
  };
  addIssues([](plan::Severity s) { return s != plan::Severity::Note; });
  for (std::size_t i = 0; i < findings(); ++i) {
    QString text = words::inWords(advise::sentenceOf(advice_->advice.findings[i]));
    if (!text.isEmpty()) text[0] = text[0].toUpper();
    add(QStringLiteral("\u25D0 ") + tr("The look"), text, {{}, i});
  }
  addIssues([](plan::Severity s) { return s == plan::Severity::Note; });
  list_->setCurrentRow(std::min(row, list_->count() - 1));
  fitHeight();
  list_->setVisible(!lines_.empty());
  empty_->setVisible(lines_.empty() && state_ == Placement::Known);
  chooseAgain();
}

void FindingsList::fitHeight() {
  if (list_->count() == 0) return;
  list_->doItemsLayout();  // words wrap at the width of now
  const int last = list_->visualItemRect(list_->item(list_->count() - 1)).bottom() - list_->visualItemRect(list_->item(0)).top();
  const int height = last + 2 * (list_->frameWidth() + list_->spacing()) + 12;
  if (height != list_->height()) list_->setFixedHeight(height);
}

bool FindingsList::eventFilter(QObject* watched, QEvent* event) {
  if (watched == list_->viewport() && event->type() == QEvent::Resize) QTimer::singleShot(0, this, &FindingsList::fitHeight);
  return QWidget::eventFilter(watched, event);
}

void FindingsList::setAdvice(std::shared_ptr<const live::AdviceResult> advice) {
  // The line under the hand stays the same finding, or none.
  std::optional<advise::Finding> chosen;
  const int row = list_->currentRow();
  if (row >= 0 && row < static_cast<int>(lines_.size()))
    if (const auto& finding = lines_[static_cast<std::size_t>(row)].finding)
      chosen = advice_->advice.findings[*finding];
  advice_ = std::move(advice);
  fill();
  if (chosen) {
    int again = -1;
    for (std::size_t i = 0; i < lines_.size() && again < 0; ++i)
      if (const auto& f = lines_[i].finding)
        if (advise::isSame(advice_->advice.findings[*f], *chosen)) again = static_cast<int>(i);
    const QSignalBlocker quiet(list_);
    list_->setCurrentRow(again);
    chooseAgain();
  }
  Q_EMIT countChanged();
}

void FindingsList::chooseAgain() {
  const int row = list_->currentRow();
  const bool has = row >= 0 && row < static_cast<int>(lines_.size());
  Q_EMIT findingToldAgain(has ? lines_[static_cast<std::size_t>(row)].finding : std::nullopt);
}

void FindingsList::choose(int row) {
  if (row < 0 || row >= static_cast<int>(lines_.size())) return;
  const Line line = lines_[static_cast<std::size_t>(row)];
  Q_EMIT findingChosen(line.finding);
  std::vector<plan::ItemId> onSheet;
  const plan::Plan& plan = controller_.document();
  const std::vector<plan::ItemId> items = line.issue ? issues_[*line.issue].items : advice_->advice.findings[*line.finding].pieces;
  for (const plan::ItemId& id : items)
    if (plan.find<plan::Piece>(id) || plan.find<plan::Section>(id)) onSheet.push_back(id);
  controller_.select(document::Selection(onSheet));
  if (onSheet.empty() && !items.empty()) Q_EMIT itemWanted(items.front());
}

}  // namespace combdraft::desk
