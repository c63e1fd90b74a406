#include "app/desk/patterns_page.h"

#include <QFileInfo>
#include <QFormLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QTimer>

#include "app/controls/drop_widgets.h"
#include "app/controls/wrapped_label.h"
#include "app/desk/error_text.h"
#include "app/desk/page_parts.h"
#include "app/desk/pattern_drawing.h"
#include "app/desk/plan_drawing.h"
#include "app/sheet/screen_palette.h"
#include "app/words/engine_words.h"
#include "app/words/typed_text.h"
#include "engine/plan/field_info.h"

namespace combdraft::desk {
namespace {

constexpr int kLowest_px = 32;  // buttons

QLabel* wrapped(const QString& text, QWidget* parent) {
  auto* label = new controls::WrappedLabel(text, parent);
  label->setTextFormat(Qt::PlainText);
  return label;
}

}  // namespace

PatternsPage::PatternsPage(QWidget* parent) : QWidget(parent) {
  drawers_.setMaxThreadCount(1);
  setObjectName(QStringLiteral("page"));
  QVBoxLayout* column = pageColumn(this, tr("Patterns"), [this] { Q_EMIT done(); });
  auto* what = wrapped(tr("Sections with their rules. On another head they follow its hairline and their pieces are laid out anew; "
                          "levels and formulas are for you to type. What is on the plan stays."),
                       this);
  what->setProperty("soft", true);
  column->addWidget(what);
  trouble_ = wrapped({}, this);
  trouble_->setObjectName(QStringLiteral("caution"));
  trouble_->setProperty("caution", true);
  trouble_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
  column->addWidget(trouble_);
  buildForm(column);
  scroll_ = new QScrollArea(this);
  scroll_->setWidgetResizable(true);
  scroll_->setFocusPolicy(Qt::NoFocus);
  scroll_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  scroll_->setAccessibleName(tr("Patterns"));
  auto* content = new QWidget(scroll_);
  list_ = new QVBoxLayout(content);
  list_->setContentsMargins(0, 0, 8, 0);
  list_->setSpacing(8);
  scroll_->setWidget(content);
  column->addWidget(scroll_, 1);
  trouble_->hide();
  form_->hide();
}

void PatternsPage::buildForm(QVBoxLayout* column) {
  form_ = new QFrame(this);
  form_->setObjectName(QStringLiteral("card"));
  auto* fields = new QFormLayout(form_);
  fields->setContentsMargins(14, 10, 14, 12);
  formTitle_ = new QLabel(form_);
  fields->addRow(formTitle_);
  name_ = new QLineEdit(form_);
  name_->setAccessibleName(tr("Name of the pattern"));
  name_->setPlaceholderText(tr("what it does, such as: soft sides, dark nape"));
  nameHint_ = new QLabel(form_);
  nameHint_->setProperty("soft", true);
  const auto several = [this](const QString& name) {
    auto* text = new QPlainTextEdit(form_);
    text->setAccessibleName(name);
    text->setTabChangesFocus(true);
    text->setFixedHeight(fontMetrics().lineSpacing() * 3 + 10);
    return text;
  };
  goodFor_ = several(tr("What it is good for"));
  notFor_ = several(tr("For which hair it is not"));
  fields->addRow(tr("Name"), name_);
  fields->addRow(QString(), nameHint_);
  fields->addRow(tr("Good for"), goodFor_);
  fields->addRow(tr("Not for"), notFor_);
  auto* buttons = new QHBoxLayout;
  save_ = new QPushButton(tr("Save the pattern"), form_);
  save_->setProperty("primary", true);
  auto* drop = new QPushButton(tr("Do not save"), form_);
  for (QPushButton* button : {save_, drop}) {
    button->setMinimumHeight(kLowest_px);
    button->setAccessibleName(button->text());
    buttons->addWidget(button);
  }
  buttons->addStretch(1);
  fields->addRow(QString(), buttons);
  column->addWidget(form_);
  connect(name_, &QLineEdit::textChanged, this, &PatternsPage::nameChanged);
  for (QPlainTextEdit* text : {goodFor_, notFor_}) connect(text, &QPlainTextEdit::textChanged, this, &PatternsPage::nameChanged);
  connect(name_, &QLineEdit::returnPressed, save_, &QPushButton::click);
  connect(drop, &QPushButton::clicked, this, &PatternsPage::closeForm);
  connect(save_, &QPushButton::clicked, this, [this] {
    if (!save_->isEnabled()) return;
    Q_EMIT saveWanted(words::oneLine(name_->text()).simplified(), words::severalLines(goodFor_->toPlainText()).trimmed(),
                      words::severalLines(notFor_->toPlainText()).trimmed());
  });
}

void PatternsPage::nameChanged() {
  const auto bytes = static_cast<std::size_t>(words::oneLine(name_->text()).simplified().toUtf8().size());
  const auto longest = static_cast<qsizetype>(plan::limits::kTextBytes);
  QString hint;
  if (bytes == 0) hint = tr("A name is needed.");
  if (bytes > plan::limits::kLineBytes) hint = tr("The name is too long: at most about %1 letters.").arg(plan::limits::kLineBytes);
  if (goodFor_->toPlainText().toUtf8().size() > longest || notFor_->toPlainText().toUtf8().size() > longest)
    hint = tr("The texts are too long.");
  nameHint_->setText(hint);
  nameHint_->setVisible(!hint.isEmpty());
  save_->setEnabled(hint.isEmpty());
}

void PatternsPage::offerSaving(int sections) {
  formTitle_->setText(sections == 1 ? tr("A pattern of your own from the selected section")
                                    : tr("A pattern of your own from %1 selected sections").arg(sections));
  name_->clear();
  goodFor_->clear();
  notFor_->clear();
  nameChanged();
  form_->show();
  name_->setFocus();
}

void PatternsPage::closeForm() {
  form_->hide();
  setFocus();
}

bool PatternsPage::isFormOpen() const { return !form_->isHidden(); }
QString PatternsPage::troubleText() const { return trouble_->isHidden() ? QString() : trouble_->text(); }

void PatternsPage::fill(const store::Patterns& patterns, const plan::Plan& plan, Use use) {
  patterns_ = patterns.all;
  QStringList broken;
  for (const Error& error : patterns.broken)
    broken << QStringLiteral("\u26A0 ") + errorText(error);
  trouble_->setText(tr("Not every pattern could be read; the others are below.") + u'\n' + broken.join(u'\n'));
  trouble_->setVisible(!broken.isEmpty());

  rows_.clear();
  controls::dropContents(*list_);
  for (const store::StoredPattern& pattern : patterns_) addRow(pattern, use);
  list_->addStretch(1);
  scroll_->verticalScrollBar()->setValue(0);
  drawAll(plan);
}

void PatternsPage::addRow(const store::StoredPattern& pattern, Use use) {
  const QString name = pattern.name();
  const bool own = pattern.origin == store::StoredPattern::Origin::Own;
  Row row;
  row.box = new QFrame(list_->parentWidget());
  row.box->setObjectName(QStringLiteral("card"));
  row.box->setAccessibleName(name);
  auto* line = new QHBoxLayout(row.box);
  line->setContentsMargins(10, 8, 12, 8);
  line->setSpacing(14);
  row.drawing = new QLabel(row.box);
  const int height = fontMetrics().height() * 8;
  row.drawing->setFixedSize(height * 3, height);
  row.drawing->setAccessibleName(tr("Drawing of %1: from behind, from the client's left, from above").arg(name));
  line->addWidget(row.drawing, 0, Qt::AlignTop);

  auto* words = new QVBoxLayout;
  words->setSpacing(4);
  auto* title = wrapped(own ? tr("%1 (your own)").arg(name) : name, row.box);
  QFont font = title->font();
  font.setPointSizeF(font.pointSizeF() * 1.15);
  font.setWeight(QFont::DemiBold);
  title->setFont(font);
  words->addWidget(title);
  if (!pattern.pattern.goodFor.empty())
    words->addWidget(wrapped(tr("Good for: %1").arg(words::inWords(pattern.pattern.goodFor)), row.box));
  if (!pattern.pattern.notFor.empty())
    words->addWidget(wrapped(tr("Not for: %1").arg(words::inWords(pattern.pattern.notFor)), row.box));
  auto* buttons = new QHBoxLayout;
  row.use = new QPushButton(use == Use::OnThisHead ? tr("Use on this head") : tr("Begin a plan with it"), row.box);
  row.use->setAccessibleName(QStringLiteral("%1: %2").arg(name, row.use->text()));
  row.use->setMinimumHeight(kLowest_px);
  buttons->addWidget(row.use);
  connect(row.use, &QPushButton::clicked, this, [this, pattern] { Q_EMIT useWanted(pattern); });
  if (own) {
    row.remove = new QPushButton(tr("Delete"), row.box);
    row.remove->setAccessibleName(tr("Delete %1").arg(name));
    row.remove->setToolTip(pattern.path);
    row.remove->setMinimumHeight(kLowest_px);
    buttons->addWidget(row.remove);
    // The list is filled anew by the answer: not while the button still works.
    connect(row.remove, &QPushButton::clicked, this, [this, pattern] { Q_EMIT removeWanted(pattern); },
            Qt::QueuedConnection);
  }
  buttons->addStretch(1);
  words->addStretch(1);
  words->addLayout(buttons);
  line->addLayout(words, 1);
  list_->addWidget(row.box);
  row.box->show();  // reveal() may be next
  rows_.push_back(row);
}

void PatternsPage::drawAll(const plan::Plan& plan) {
  drawers_.clear();
  drawn_ = 0;
  ++round_;
  for (std::size_t i = 0; i < rows_.size(); ++i)
    drawers_.start([this, plan, i, round = round_, pattern = patterns_[i].pattern, size = rows_[i].drawing->size(),
                    ratio = devicePixelRatioF(), palette = sheet::screenPalette()] {
      const auto scene = patternScene(plan, pattern);
      const QImage drawing = scene ? sidesDrawing(*scene, size, ratio, palette) : QImage();
      QMetaObject::invokeMethod(this, [this, i, round, drawing] {
        if (round != round_) return;
        ++drawn_;
        if (!drawing.isNull()) rows_[i].drawing->setPixmap(QPixmap::fromImage(drawing));
      }, Qt::QueuedConnection);
    });
}

void PatternsPage::reveal(const QString& path) {
  for (std::size_t i = 0; i < rows_.size(); ++i) {
    if (patterns_[i].path != path) continue;
    rows_[i].use->setFocus();
    QTimer::singleShot(0, rows_[i].box, [this, box = rows_[i].box] { scroll_->ensureWidgetVisible(box); });
  }
}

void PatternsPage::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape) {
    if (isFormOpen())
      closeForm();
    else
      Q_EMIT done();
    return;
  }
  QWidget::keyPressEvent(event);
}

}  // namespace combdraft::desk
