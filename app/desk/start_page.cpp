#include "app/desk/start_page.h"

#include <QFileInfo>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QScrollArea>
#include <QShortcut>
#include <QVBoxLayout>

#include "app/controls/icon.h"
#include "app/controls/wrapped_label.h"
#include "app/desk/left_plans_box.h"
#include "app/store/plan_store.h"
#include "app/words/engine_words.h"

namespace combdraft::desk {
namespace {

QLabel* heading(const QString& text, double size, QWidget* parent) {
  auto* label = new QLabel(text, parent);
  QFont f = label->font();
  f.setPointSizeF(f.pointSizeF() * size);
  f.setWeight(QFont::DemiBold);
  label->setFont(f);
  return label;
}

// Titles of the examples come from the plans themselves.
QString titleOf(const QString& path) {
  const Result<store::OpenedPlan> opened = store::openPlan(path);
  return opened ? store::shownTitle(opened->plan, path) : store::nameOfFile(path);
}

}  // namespace

StartPage::StartPage(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("page"));
  auto* outer = new QVBoxLayout(this);
  outer->setContentsMargins(0, 0, 0, 0);
  auto* scroll = new QScrollArea(this);
  scroll->setWidgetResizable(true);
  scroll->setFocusPolicy(Qt::NoFocus);
  scroll->setAccessibleName(tr("Start"));
  outer->addWidget(scroll);
  auto* content = new QWidget(scroll);
  scroll->setWidget(content);
  auto* centre = new QHBoxLayout(content);
  centre->setContentsMargins(28, 26, 28, 22);
  centre->addStretch(1);
  auto* pageBox = new QWidget(content);
  pageBox->setMaximumWidth(fontMetrics().averageCharWidth() * 140);
  centre->addWidget(pageBox, 100);
  centre->addStretch(1);
  auto* column = new QVBoxLayout(pageBox);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(14);

  column->addWidget(heading(QStringLiteral("Combdraft"), 2.4, pageBox));
  auto* what = new controls::WrappedLabel(tr("Draw where light goes and where depth stays, and see a picture of what that "
                             "placement aims at. A picture of the plan, not a promise; a test strand shows how "
                             "far this hair lightens. The maker's directions come first."),
                          pageBox);
  what->setProperty("soft", true);
  column->addWidget(what);

  auto* buttons = new QHBoxLayout;
  buttons->setSpacing(10);
  auto* begin = new QPushButton(controls::icon(QStringLiteral("new")), tr("New plan"), pageBox);
  begin->setObjectName(QStringLiteral("startNew"));
  auto* open = new QPushButton(controls::icon(QStringLiteral("open")), tr("Open a plan…"), pageBox);
  for (auto* button : {begin, open}) {
    button->setMinimumHeight(42);
    button->setMinimumWidth(fontMetrics().averageCharWidth() * 22);
    button->setAccessibleName(button->text());
    buttons->addWidget(button);
  }
  auto* drop = new QLabel(tr("or drop a plan file onto this window"), pageBox);
  drop->setProperty("soft", true);
  buttons->addSpacing(8);
  buttons->addWidget(drop);
  buttons->addStretch(1);
  column->addLayout(buttons);
  connect(begin, &QPushButton::clicked, this, &StartPage::newWanted);
  connect(open, &QPushButton::clicked, this, &StartPage::openWanted);

  left_ = new LeftPlansBox(pageBox);
  column->addWidget(left_);

  column->addSpacing(8);
  auto* lists = new QHBoxLayout;
  lists->setSpacing(22);
  auto* recentColumn = new QVBoxLayout;
  auto* exampleColumn = new QVBoxLayout;
  lists->addLayout(recentColumn, 1);
  lists->addLayout(exampleColumn, 1);
  auto* patternColumn = new QVBoxLayout;
  lists->addLayout(patternColumn, 1);
  column->addLayout(lists, 1);
  recent_ = list(tr("Recent plans"), tr("Plans you open or save will stand here."), &noRecent_, recentColumn);
  examples_ = list(tr("Examples"), tr("The examples were not found beside the program."), &noExamples_,
                   exampleColumn);
  patterns_ = list(tr("Begin with a pattern"), tr("No pattern could be read."), &noPatterns_, patternColumn);
  auto* drawings = new QPushButton(tr("See their drawings…"), pageBox);
  drawings->setMinimumHeight(32);
  drawings->setAccessibleName(drawings->text());
  patternColumn->insertWidget(patternColumn->count() - 1, drawings, 0, Qt::AlignLeft);
  connect(drawings, &QPushButton::clicked, this, &StartPage::patternsWanted);
  const auto beginWith = [this](QListWidgetItem* item) {
    if (!isVisible()) return;  // a click that also activates
    // The list may be filled anew by the answer.
    const store::StoredPattern pattern = known_.at(static_cast<std::size_t>(patterns_->row(item)));
    Q_EMIT patternWanted(pattern);
  };
  connect(patterns_, &QListWidget::itemActivated, this, beginWith);
  connect(patterns_, &QListWidget::itemClicked, this, beginWith);
  const auto wanted = [](QListWidgetItem* item) {
    return item->data(Qt::UserRole).toString();
  };
  connect(recent_, &QListWidget::itemActivated, this,
          [this, wanted](QListWidgetItem* item) { Q_EMIT planWanted(wanted(item)); });
  connect(examples_, &QListWidget::itemActivated, this,
          [this, wanted](QListWidgetItem* item) { Q_EMIT exampleWanted(wanted(item)); });
  connect(recent_, &QListWidget::itemClicked, this,
          [this, wanted](QListWidgetItem* item) { Q_EMIT planWanted(wanted(item)); });
  connect(examples_, &QListWidget::itemClicked, this,
          [this, wanted](QListWidgetItem* item) { Q_EMIT exampleWanted(wanted(item)); });
  auto* remove = new QShortcut(QKeySequence(Qt::Key_Delete), recent_);
  remove->setContext(Qt::WidgetShortcut);
  connect(remove, &QShortcut::activated, this, [this, wanted] {
    if (QListWidgetItem* item = recent_->currentItem()) Q_EMIT recentRemoved(wanted(item));
  });
}

QListWidget* StartPage::list(const QString& title, const QString& empty, QLabel** emptyLabel,
                             QVBoxLayout* into) {
  into->addWidget(heading(title, 1.15, this));
  *emptyLabel = new controls::WrappedLabel(empty, this);
  (*emptyLabel)->setProperty("soft", true);
  into->addWidget(*emptyLabel);
  auto* made = new QListWidget(this);
  made->setAccessibleName(title);
  made->setUniformItemSizes(true);
  made->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  into->addWidget(made);
  into->addStretch(1);
  return made;
}

void StartPage::fill(const std::vector<store::LeftPlan>& left,
                     const std::vector<store::RecentPlan>& recent, const QStringList& examples,
                     const std::vector<store::StoredPattern>& patterns) {
  left_->fill(left);
  recent_->clear();
  for (const store::RecentPlan& plan : recent) {
    auto* item = new QListWidgetItem(recent_);
    item->setText(plan.exists ? QStringLiteral("%1    %2").arg(plan.title, QFileInfo(plan.path).fileName())
                              : tr("%1    (file is gone; Delete takes it off)").arg(plan.title));
    item->setData(Qt::UserRole, plan.path);
    item->setToolTip(plan.path);
  }
  examples_->clear();
  for (const QString& path : examples) {
    auto* item = new QListWidgetItem(titleOf(path), examples_);
    item->setData(Qt::UserRole, path);
  }
  patterns_->clear();
  known_ = patterns;
  for (const store::StoredPattern& pattern : patterns) {
    auto* item = new QListWidgetItem(pattern.name(), patterns_);
    item->setToolTip(tr("Good for: %1\nNot for: %2")
                         .arg(words::inWords(pattern.pattern.goodFor), words::inWords(pattern.pattern.notFor)));
  }
  for (QListWidget* list : {recent_, examples_, patterns_}) {  // as high as what it holds
    const int row = list->count() ? list->sizeHintForRow(0) : 0;
    list->setFixedHeight(row * std::clamp(list->count(), 1, 10) + 2 * list->frameWidth() + 8);
  }
  recent_->setVisible(!recent.empty());
  noRecent_->setVisible(recent.empty());
  patterns_->setVisible(!patterns.empty());
  noPatterns_->setVisible(patterns.empty());
  examples_->setVisible(!examples.isEmpty());
  noExamples_->setVisible(examples.isEmpty());
}

}  // namespace combdraft::desk
