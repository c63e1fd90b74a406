#include "app/cards/formula_card.h"

#include <QLineEdit>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <algorithm>
#include <set>

#include "app/cards/card_parts.h"
#include "app/cards/formula_words.h"
#include "app/cards/piece_edits.h"
#include "app/words/typed_text.h"
#include "engine/plan/edits.h"
#include "engine/plan/field_info.h"

namespace combdraft::cards {
namespace {

constexpr int kTextLines = 6, kListLines = 4, kKindLetters = 60;

// The order of the buttons, beside that of the enum.
constexpr plan::ScalpContact kContacts[] = {
    plan::ScalpContact::Yes, plan::ScalpContact::No, plan::ScalpContact::NotStated};

}  // namespace

FormulaCard::FormulaCard(document::DocumentController& controller, QWidget* parent)
    : QWidget(parent), controller_(controller) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(12, 10, 12, 12);
  column->setSpacing(5);
  addTitle(column, tr("Formulas"));
  QLabel* caution = addCaution(column);
  caution->setObjectName(QStringLiteral("formulaCaution"));
  showLines(caution, {tr("The maker's directions come first, then local rules, your licence and your insurer. "
                         "Strengths, times and ratios stand here only as you type them from the leaflet."),
                      tr("Gloves, changed between clients; fresh air; powder can harm the lungs. Keep it out of the eyes: if it gets in, rinse with water at once and get medical help.")});

  list_ = new QListWidget(this);
  list_->setAccessibleName(tr("Formulas"));
  list_->setFixedHeight((list_->fontMetrics().height() + 12) * kListLines);
  column->addWidget(list_);
  empty_ = addSoftText(column, tr("No formula yet. Add one for each mixture: what you type here gets its letter and "
                                  "hatch on the sheet, and pieces can name it."));
  auto* buttons = new QHBoxLayout;
  add_ = new QPushButton(tr("Add formula"), this);
  remove_ = new QPushButton(tr("Remove"), this);
  remove_->setToolTip(tr("Remove this formula; pieces that use it then name none"));
  buttons->addWidget(add_);
  buttons->addWidget(remove_);
  buttons->addStretch(1);
  column->addLayout(buttons);

  body_ = new QWidget(this);
  auto* fields = new QVBoxLayout(body_);
  fields->setContentsMargins(0, 6, 0, 0);
  fields->setSpacing(5);
  buildFields(fields);
  column->addWidget(body_);
  column->addStretch(1);

  connect(add_, &QPushButton::clicked, this, &FormulaCard::add);
  connect(remove_, &QPushButton::clicked, this, &FormulaCard::remove);
  connect(list_, &QListWidget::currentItemChanged, this, [this](const QListWidgetItem* item) {
    if (item) showFormula(item->data(Qt::UserRole).toString().toStdString());
  });
  connect(&controller_, &document::DocumentController::changed, this, &FormulaCard::fill);
  fill();
}

void FormulaCard::buildFields(QVBoxLayout* column) {
  letter_ = new controls::TextField({tr("Letter on the sheet"), tr("none"), tr("One letter, A to Z: it stands with the hatch on the sheet and on paper"), 3}, body_);
  letter_->setObjectName(QStringLiteral("letter"));
  column->addWidget(letter_);
  letterTwice_ = addCaution(column);
  connect(letter_, &controls::TextField::edited, this, [this](const QString& text) {
    change(tr("letter"), [&](plan::Formula& f) { f.letter = text.toUpper().toStdString(); });
  });

  kind_ = addChoice(column, tr("Kind"), {tr("lightener"), tr("toner"), tr("glaze"), tr("deepening colour")});
  kind_->setEditable(true);
  kind_->setInsertPolicy(QComboBox::NoInsert);
  kind_->lineEdit()->setMaxLength(kKindLetters);
  kind_->lineEdit()->setPlaceholderText(tr("choose or type"));
  kind_->lineEdit()->setAccessibleName(tr("Kind"));
  const auto kindTyped = [this] {
    change(tr("kind"), [text = words::oneLine(kind_->currentText()).simplified().toStdString()](plan::Formula& f) { f.kind = text; });
  };
  connect(kind_, &QComboBox::activated, this, kindTyped);
  connect(kind_->lineEdit(), &QLineEdit::editingFinished, this, kindTyped);

  mix_ = new MixRows(body_);
  column->addWidget(mix_);
  connect(mix_, &MixRows::edited, this, [this](const QString& what, const std::function<void(plan::Formula&)>& f) { change(what, f); });

  text_ = new controls::TextBox(tr("More about it"), tr("what else belongs to it"),
                                kTextLines, static_cast<qsizetype>(plan::limits::kTextBytes), body_);
  column->addWidget(text_);
  connect(text_, &controls::TextBox::edited, this, [this](const QString& text, bool goesOn) {
    if (!goesOn) typing_ = document::Gesture::begin();
    change(tr("text"), [&](plan::Formula& f) { f.text = text.toStdString(); }, typing_);
  });

  origin_ = new controls::TextField({tr("Leaflet"), tr("not stated"), tr("Which leaflet, label or page this was read in"), 60}, body_);
  origin_->setObjectName(QStringLiteral("origin"));
  column->addWidget(origin_);
  connect(origin_, &controls::TextField::edited, this, [this](const QString& text) {
    change(tr("origin"), [&](plan::Formula& f) { f.leaflet.origin = text.toStdString(); });
  });
  date_ = new controls::TextField({tr("Date"), tr("YYYY-MM-DD"), tr("When it was read: leaflets change"), 10}, body_);
  date_->setObjectName(QStringLiteral("date"));
  date_->setCheck(controls::dateProblem);
  column->addWidget(date_);
  connect(date_, &controls::TextField::edited, this, [this](const QString& text) {
    change(tr("date"), [&](plan::Formula& f) { f.leaflet.read = text.toStdString(); });
  });

  const auto minutes = [&](const char* field, const QString& label, const QString& tip) {
    controls::NumberFieldSpec spec = specOf(field, label, tr("min"));
    spec.mayBeEmpty = true;
    spec.emptyText = tr("type it from the leaflet");
    spec.tip = tip;
    auto* made = new controls::NumberField(spec, body_);
    made->setCheck([](const std::optional<double>& value) {
      return value && !(*value > 0) ? tr("Above 0, or empty when the leaflet does not say.") : QString();
    });
    column->addWidget(made);
    return made;
  };
  life_ = minutes("leaflet.workingLife_min", tr("A bowl may be used for"), tr("Counted from the beginning of mixing; without it no bowl is planned anew"));
  connect(life_, &controls::NumberField::edited, this, [this](std::optional<double> value) {
    change(tr("working life"), [value](plan::Formula& f) { f.leaflet.workingLife_min = value; });
  });
  longest_ = minutes("leaflet.longestTime_min", tr("Longest time on the hair"), tr("The maker's limit; without it the appointment has no timer"));
  connect(longest_, &controls::NumberField::edited, this, [this](std::optional<double> value) {
    change(tr("longest time"), [value](plan::Formula& f) { f.leaflet.longestTime_min = value; });
  });
  directions_ = new controls::TextBox(tr("Directions"), tr("as the leaflet says, in its words"), kTextLines,
                                      static_cast<qsizetype>(plan::limits::kTextBytes), body_);
  directions_->setObjectName(QStringLiteral("directions"));
  column->addWidget(directions_);
  connect(directions_, &controls::TextBox::edited, this, [this](const QString& text, bool goesOn) {
    if (!goesOn) typingDirections_ = document::Gesture::begin();
    change(tr("directions"), [&](plan::Formula& f) { f.leaflet.directions = text.toStdString(); }, typingDirections_);
  });

  addHeading(column, tr("Leaflet allows scalp contact"));
  contact_ = new controls::Segments(tr("Leaflet allows scalp contact"),
                                    {{tr("Yes"), {}, {}}, {tr("No"), {}, {}}, {tr("Not stated"), {}, {}}}, body_);
  column->addWidget(contact_);
  connect(contact_, &controls::Segments::chosen, this, [this](int i) {
    change(tr("scalp contact"), [i](plan::Formula& f) { f.leaflet.scalpContact = kContacts[i]; });
  });

  addHeading(column, tr("Used by"));
  users_ = addSoftText(column, {});
  users_->setObjectName(QStringLiteral("users"));
  select_ = new QPushButton(tr("Select these pieces"), body_);
  column->addWidget(select_, 0, Qt::AlignLeft);
  connect(select_, &QPushButton::clicked, this, [this] {
    const FormulaUse use = usesOf(controller_.plan(), shown_);
    std::set<plan::ItemId> ids(use.roots.begin(), use.roots.end());
    ids.insert(use.ends.begin(), use.ends.end());
    controller_.select(document::Selection(std::vector<plan::ItemId>(ids.begin(), ids.end())));
  });
}

void FormulaCard::showFormula(const plan::ItemId& id) {
  if (id == shown_) return;
  shown_ = id;
  abandonTyping(this);
  mix_->abandonNames();
  fill();
}

void FormulaCard::add() {
  const plan::Plan& before = controller_.document();
  plan::Formula formula;
  formula.letter = freeLetter(before);
  const plan::ItemId id = before.freeId("formula");
  shown_ = id;
  abandonTyping(this);
  mix_->abandonNames();
  controller_.edit(plan::applied(before, plan::setItem(before, id, formula)),
                   tr("Add formula %1").arg(QString::fromStdString(formula.letter)));
  kind_->setFocus();
}

void FormulaCard::remove() {
  const plan::Plan& before = controller_.document();
  const plan::Formula* formula = before.find<plan::Formula>(shown_);
  if (!formula) return;
  const QString name = formulaName(shown_, *formula);
  controller_.edit(plan::applied(before, plan::removeItems(before, {shown_})), tr("Remove formula %1").arg(name));
}

void FormulaCard::change(const QString& what, const std::function<void(plan::Formula&)>& change,
                         document::Gesture gesture) {
  plan::Plan next = controller_.document();
  const plan::Formula* before = next.find<plan::Formula>(shown_);
  if (!before) return;
  plan::Formula formula = *before;
  change(formula);
  next.put(shown_, formula);
  controller_.edit(next, tr("Change %1 of formula %2").arg(what, formulaName(shown_, *before)), gesture);
}

void FormulaCard::fillList() {
  const auto formulas = formulasOf(controller_.plan());
  const auto isShown = [&](const auto& f) { return f.first == shown_; };
  if (std::none_of(formulas.begin(), formulas.end(), isShown)) {
    // The one that went: its place is taken by the next.
    const int row = std::clamp(list_->currentRow(), 0, std::max(0, static_cast<int>(formulas.size()) - 1));
    shown_ = formulas.empty() ? plan::ItemId() : formulas[static_cast<std::size_t>(row)].first;
    abandonTyping(this);
    mix_->abandonNames();
  }
  const QSignalBlocker quiet(list_);
  while (list_->count() > static_cast<int>(formulas.size())) delete list_->takeItem(list_->count() - 1);
  while (list_->count() < static_cast<int>(formulas.size())) list_->addItem(QString());
  for (int i = 0; i < list_->count(); ++i) {
    const auto& [id, formula] = formulas[static_cast<std::size_t>(i)];
    list_->item(i)->setText(formulaName(id, *formula));
    list_->item(i)->setData(Qt::UserRole, QString::fromStdString(id));
    if (id == shown_) list_->setCurrentRow(i);
  }
  add_->setEnabled(formulas.size() < plan::limits::kFormulas);
}

void FormulaCard::fill() {
  fillList();
  const plan::Plan& plan = controller_.plan();
  const plan::Formula* formula = plan.find<plan::Formula>(shown_);
  list_->setVisible(formula);
  empty_->setVisible(!formula);
  body_->setVisible(formula);
  remove_->setEnabled(formula);
  if (!formula) return;
  const auto text = [](const std::string& s) { return QString::fromStdString(s); };
  letter_->setText(text(formula->letter));
  origin_->setText(text(formula->leaflet.origin));
  date_->setText(text(formula->leaflet.read));
  text_->setText(text(formula->text));
  mix_->setFormula(*formula);
  life_->setValue(formula->leaflet.workingLife_min);
  longest_->setValue(formula->leaflet.longestTime_min);
  directions_->setText(text(formula->leaflet.directions));
  if (!(kind_->lineEdit()->hasFocus() && kind_->lineEdit()->isModified()) &&
      kind_->currentText() != text(formula->kind)) {
    const QSignalBlocker quiet(kind_);
    kind_->setCurrentIndex(kind_->findText(text(formula->kind)));
    kind_->setEditText(text(formula->kind));
  }
  contact_->setCurrent(static_cast<int>(
      std::find(std::begin(kContacts), std::end(kContacts), formula->leaflet.scalpContact) - std::begin(kContacts)));

  const auto formulas = formulasOf(plan);
  const bool twice = !formula->letter.empty() && std::count_if(formulas.begin(), formulas.end(), [&](const auto& f) {
                       return f.second->letter == formula->letter;
                     }) > 1;
  showLines(letterTwice_, twice ? QStringList{tr("Another formula has this letter too: on the sheet they look alike.")}
                                : QStringList());

  const FormulaUse use = usesOf(plan, shown_);
  QStringList lines;
  const auto names = [&](const std::vector<plan::ItemId>& ids) {
    QStringList words;
    for (const plan::ItemId& id : ids) words << pieceName(id, *plan.find<plan::Piece>(id));
    return words.join(QStringLiteral(", "));
  };
  if (!use.roots.empty()) lines << tr("at the root: %1").arg(names(use.roots));
  if (!use.ends.empty()) lines << tr("at the ends: %1").arg(names(use.ends));
  if (!use.treatments.empty()) lines << tr("root shadows and glazes: %1").arg(use.treatments.size());
  users_->setText(use.isEmpty() ? tr("no piece yet; choose it on the piece card") : lines.join(u'\n'));
  select_->setVisible(!use.roots.empty() || !use.ends.empty());
}

}  // namespace combdraft::cards
