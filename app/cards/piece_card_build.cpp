// How the piece card is laid out, and what each of its fields changes.
#include <QVBoxLayout>

#include "app/cards/card_parts.h"
#include "app/cards/drop_out_text.h"
#include "app/cards/piece_card.h"
#include "app/cards/piece_numbers.h"
#include "app/controls/wrapped_label.h"
#include "engine/plan/field_info.h"

namespace combdraft::cards {
namespace {

constexpr int kNoteLines = 3;

QStringList toneWords() {
  return {PieceCard::tr("natural"), PieceCard::tr("ash"),  PieceCard::tr("pearl"), PieceCard::tr("beige"),
          PieceCard::tr("gold"),    PieceCard::tr("copper"), PieceCard::tr("red")};
}

}  // namespace

QVBoxLayout* PieceCard::section(const QString& title, QWidget** box) {
  auto* frame = new QWidget(body_);
  auto* column = new QVBoxLayout(frame);
  column->setContentsMargins(0, 8, 0, 0);
  column->setSpacing(5);
  if (!title.isEmpty()) {
    auto* heading = new controls::WrappedLabel(title, frame);
    QFont f = heading->font();
    f.setWeight(QFont::DemiBold);
    heading->setFont(f);
    column->addWidget(heading);
  }
  body_->layout()->addWidget(frame);
  if (box) *box = frame;
  return column;
}

void PieceCard::addNumbers(QVBoxLayout* column, int group) {
  const auto table = pieceNumbers();
  numbers_.resize(table.size());
  for (std::size_t i = 0; i < table.size(); ++i) {
    const PieceNumber& row = table[i];
    if (static_cast<int>(row.group) != group) continue;
    controls::NumberFieldSpec spec = specOf(row.field, tr(row.label), QString::fromLatin1(row.unit),
                                            row.shownPerValue, row.decimals);
    spec.mayBeEmpty = row.emptyText != nullptr;
    if (row.emptyText) spec.emptyText = tr(row.emptyText);
    auto* field = new controls::NumberField(spec, column->parentWidget());
    field->setObjectName(QString::fromLatin1(row.change));
    connect(field, &controls::NumberField::edited, this,
            [this, &row](const std::optional<double>& value, bool stepping) {
              if (!stepping) stepping_ = document::Gesture::begin();
              const document::Gesture gesture = stepping ? stepping_ : document::Gesture::none();
              if (row.group == PieceNumber::Group::Order) {
                const plan::Plan& before = controller_.document();
                const std::vector<plan::ItemId> ids = selected();
                controller_.edit(withPiecesAt(before, ids, static_cast<int>(value.value_or(1))),
                                 tr("Change order of %1").arg(piecesName(before, ids)), gesture);
                fill();  // the place taken may not be the one typed
                return;
              }
              change(tr(row.change), [&](plan::Piece& piece) { row.set(piece, value); }, gesture);
            });
    numbers_[i] = field;
    column->addWidget(field);
  }
}

void PieceCard::build() {
  auto* outer = new QVBoxLayout(this);
  outer->setContentsMargins(12, 10, 12, 12);
  outer->setSpacing(4);
  title_ = addTitle(outer, {});
  nothing_ = addSoftText(outer, tr("Click a piece on the sheet, or press Tab there to walk through the "
                                   "pieces. Shift or a frame drawn round several selects them together."));
  body_ = new QWidget(this);
  auto* bodyColumn = new QVBoxLayout(body_);
  bodyColumn->setContentsMargins(0, 0, 0, 0);
  bodyColumn->setSpacing(2);
  outer->addWidget(body_);
  outer->addStretch(1);

  caution_ = addCaution(bodyColumn);
  standIn_ = addSoftText(bodyColumn, tr("Lifting to level 9 (8 to 10) is what every new piece comes with: type what a test strand showed."));
  action_ = new controls::Segments(
      tr("What it does"),
      {{tr("Lighten"), {}, {}}, {tr("Deepen"), tr("A lowlight: darker than the hair"), {}},
       {tr("Leave out"), tr("Hair deliberately not lightened"), {}}},
      body_);
  bodyColumn->addWidget(action_);
  connect(action_, &controls::Segments::chosen, this, [this](int i) {
    change(tr("what it does"), [i](plan::Piece& p) { p.action = static_cast<plan::Action>(i); });
  });

  QVBoxLayout* strand = section(tr("Along the strand"), &strandBox_);
  strand_ = new StrandDrawing(strandBox_);
  strand->addWidget(strand_);
  addNumbers(strand, static_cast<int>(PieceNumber::Group::Strand));
  buildStrip();
  buildColour();
  buildWork();
}

void PieceCard::buildStrip() {
  QVBoxLayout* strip = section(tr("On the head"));
  taking_ = new controls::Segments(tr("How it is taken"),
                                   {{tr("Slice"), tr("The whole strip"), {}},
                                    {tr("Weave"), tr("Teeth and gaps"), {}},
                                    {tr("Paint"), tr("Brush on the surface"), {}}},
                                   body_);
  strip->addWidget(taking_);
  connect(taking_, &controls::Segments::chosen, this, [this](int i) {
    change(tr("how it is taken"), [i](plan::Piece& p) { p.taking = static_cast<plan::Taking>(i); });
  });
  addNumbers(strip, static_cast<int>(PieceNumber::Group::Strip));
  under_ = new controls::Segments(tr("Underneath"), {{tr("Painted"), {}, {}}, {tr("Bare"), {}, {}}}, body_);
  auto* underRow = new QHBoxLayout;
  underRow->addWidget(new QLabel(tr("Underneath"), body_), 1);
  underRow->addWidget(under_);
  strip->addLayout(underRow);
  connect(under_, &controls::Segments::chosen, this, [this](int i) {
    change(tr("underneath"), [i](plan::Piece& p) { p.under = static_cast<plan::Side>(i); });
  });

  dropOuts_ = new controls::TextField({tr("Drop-outs along it"), tr("none"),
                                       tr("Stretches of the piece left dark, from where to where along it, as in 40–60; 110–125"), 400},
                                      body_);
  dropOuts_->setObjectName(QStringLiteral("drop-outs"));
  strip->addWidget(dropOuts_);
  const auto typed = [this](const QString& text) {
    const std::vector<plan::ItemId> ids = selected();
    const auto* first = ids.empty() ? nullptr : controller_.document().find<plan::Piece>(ids.front());
    return dropOutsFrom(text, controls::Units::current().length(), first ? first->dropOuts : std::vector<plan::Stretch>());
  };
  dropOuts_->setCheck([typed](const QString& text) {
    return typed(text) ? QString() : tr("“%1” is not a list of stretches. Right would be: 40–60; 110–125").arg(text);
  });
  connect(dropOuts_, &controls::TextField::edited, this, [this, typed](const QString& text) {
    if (const auto stretches = typed(text))
      change(tr("drop-outs"), [&](plan::Piece& p) { p.dropOuts = *stretches; });
  });
  connect(&controls::Units::current(), &controls::Units::changed, this, &PieceCard::fill);
}

QComboBox* PieceCard::addTone(QVBoxLayout* column, const QString& label, const QString& what,
                              plan::ZoneColour plan::Piece::*zone) {
  QComboBox* combo = addChoice(column, label, toneWords());
  combo->setToolTip(tr("Once a level to finish at is typed"));
  connect(combo, &QComboBox::activated, this, [this, what, zone](int i) {
    change(what, [i, zone](plan::Piece& p) {
      if ((p.*zone).finish) (p.*zone).finish->tone = static_cast<plan::Tone>(i);
    });
  });
  return combo;
}

QComboBox* PieceCard::addFormula(QVBoxLayout* column, const QString& label, const QString& what,
                                 plan::ZoneColour plan::Piece::*zone) {
  QComboBox* combo = addChoice(column, label, {});
  combo->setToolTip(tr("Formulas stand on the formula card; their letter is the hatch on the sheet"));
  connect(combo, &QComboBox::activated, this, [this, what, zone, combo](int i) {
    change(what, [id = combo->itemData(i).toString().toStdString(), zone](plan::Piece& p) { (p.*zone).formula = id; });
  });
  return combo;
}

void PieceCard::buildColour() {
  QVBoxLayout* colour = section(tr("Colour"), &finishBox_);
  rootFormula_ = addFormula(colour, tr("Formula"), tr("formula"), &plan::Piece::root);
  addNumbers(colour, static_cast<int>(PieceNumber::Group::RootZone));
  rootTone_ = addTone(colour, tr("Tone"), tr("tone"), &plan::Piece::root);
  QVBoxLayout* ends = section(tr("Colour of the ends"), &endZone_);
  endFormula_ = addFormula(ends, tr("Formula at the ends"), tr("formula of the ends"), &plan::Piece::end);
  addNumbers(ends, static_cast<int>(PieceNumber::Group::EndZone));
  endTone_ = addTone(ends, tr("Tone at the ends"), tr("tone of the ends"), &plan::Piece::end);
  rootFormula_->setObjectName(QStringLiteral("root formula"));
  endFormula_->setObjectName(QStringLiteral("end formula"));
  rootTone_->setObjectName(QStringLiteral("root tone"));
}

void PieceCard::buildWork() {
  QVBoxLayout* work = section(tr("Working"));
  keptIn_ = new controls::Segments(
      tr("Kept in"), {{tr("Foil"), {}, {}}, {tr("Film"), {}, {}}, {tr("Open air"), {}, {}}}, body_);
  work->addWidget(keptIn_);
  connect(keptIn_, &controls::Segments::chosen, this, [this](int i) {
    change(tr("kept in"), [i](plan::Piece& p) { p.keptIn = static_cast<plan::KeptIn>(i); });
  });
  foil_ = new controls::TextField({tr("Shares foil"), tr("its own"), tr("Pieces with the same word here share one foil"), 60}, body_);
  foil_->setObjectName(QStringLiteral("foil"));
  work->addWidget(foil_);
  connect(foil_, &controls::TextField::edited, this, [this](const QString& text) {
    change(tr("foil"), [&](plan::Piece& p) { p.foil = text.toStdString(); });
  });
  sharers_ = addSoftText(work, {});
  sharers_->setObjectName(QStringLiteral("sharers"));
  shareFoil_ = new QPushButton(tr("Put these in one foil"), body_);
  shareFoil_->setObjectName(QStringLiteral("share foil"));
  work->addWidget(shareFoil_, 0, Qt::AlignLeft);
  connect(shareFoil_, &QPushButton::clicked, this, [this] {
    change(tr("foil"), [name = freeFoil(controller_.document())](plan::Piece& p) { p.foil = name; });
  });
  addNumbers(work, static_cast<int>(PieceNumber::Group::Order));
  held_ = new QCheckBox(tr("Held"), body_);
  held_->setToolTip(tr("A suggestion leaves held pieces as they are; your hand may still change them"));
  work->addWidget(held_);
  connect(held_, &QCheckBox::clicked, this, [this](bool on) {
    change(tr("held"), [on](plan::Piece& p) { p.held = on; });
  });
  label_ = new controls::TextField({tr("Name"), tr("by number"), tr("A name of your own for this piece"), 60}, body_);
  label_->setObjectName(QStringLiteral("name"));
  work->addWidget(label_);
  connect(label_, &controls::TextField::edited, this, [this](const QString& text) {
    change(tr("name"), [&](plan::Piece& p) { p.label = text.toStdString(); });
  });
  note_ = new controls::TextBox(tr("Note"), tr("why it is here; shown in class and printed, so nothing about a person"), kNoteLines,
                                static_cast<qsizetype>(plan::limits::kTextBytes), body_);
  work->addWidget(note_);
  connect(note_, &controls::TextBox::edited, this, [this](const QString& text, bool goesOn) {
    if (!goesOn) writing_ = document::Gesture::begin();
    change(tr("note"), [&](plan::Piece& p) { p.note = text.toStdString(); }, writing_);
  });
}

void PieceCard::connectStrand() {
  connect(strand_, &StrandDrawing::moving, this, [this](StrandHandle handle, double place_mm) {
    const double length = strand_->length_mm();
    controller_.setTentative(withPieces(controller_.document(), selected(), [&](plan::Piece& p) {
      p = withHandleAt(p, handle, place_mm, length);
    }));
  });
  const auto nameOf = [this](StrandHandle handle) {
    static constexpr const char* kNames[] = {
        QT_TRANSLATE_NOOP("combdraft::cards::PieceCard", "start"), QT_TRANSLATE_NOOP("combdraft::cards::PieceCard", "blend length"),
        QT_TRANSLATE_NOOP("combdraft::cards::PieceCard", "backcomb depth"), QT_TRANSLATE_NOOP("combdraft::cards::PieceCard", "handover"),
        QT_TRANSLATE_NOOP("combdraft::cards::PieceCard", "stop")};
    return tr("Change %1 of %2").arg(tr(kNames[static_cast<int>(handle)]),
                                     piecesName(controller_.document(), selected()));
  };
  connect(strand_, &StrandDrawing::released, this,
          [this, nameOf](StrandHandle handle) { controller_.commitTentative(nameOf(handle)); });
  connect(strand_, &StrandDrawing::dropped, this, [this] { controller_.dropTentative(); });
  connect(strand_, &StrandDrawing::stepped, this, [this, nameOf](StrandHandle handle, double place_mm) {
    const double length = strand_->length_mm();
    controller_.edit(withPieces(controller_.document(), selected(),
                                [&](plan::Piece& p) { p = withHandleAt(p, handle, place_mm, length); }),
                     nameOf(handle), stepping_);
  });
}

}  // namespace combdraft::cards
