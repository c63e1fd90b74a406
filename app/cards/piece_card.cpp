#include "app/cards/piece_card.h"

#include <QSignalBlocker>
#include <QVBoxLayout>
#include <algorithm>

#include "app/cards/card_parts.h"
#include "app/cards/drop_out_text.h"
#include "app/cards/piece_numbers.h"
#include "engine/hair/hair_zone.h"

namespace combdraft::cards {
namespace {

QStringList toneWords() {
  return {PieceCard::tr("natural"), PieceCard::tr("ash"),  PieceCard::tr("pearl"), PieceCard::tr("beige"),
          PieceCard::tr("gold"),    PieceCard::tr("copper"), PieceCard::tr("red")};
}

// The value that all pieces share, or nothing when they differ.
template <class Get>
auto shared(const std::vector<const plan::Piece*>& pieces, Get get)
    -> std::optional<std::decay_t<decltype(get(*pieces.front()))>> {
  const auto first = get(*pieces.front());
  for (const plan::Piece* piece : pieces)
    if (!(get(*piece) == first)) return std::nullopt;
  return first;
}

void quietly(QLineEdit* edit, const std::optional<QString>& text) {
  if (edit->hasFocus() && edit->isModified()) return;
  const QSignalBlocker quiet(edit);
  edit->setText(text.value_or(QString()));
  edit->setModified(false);
}

}  // namespace

plan::HairZone zoneOf(const plan::Plan& plan, const plan::Piece& piece) {
  const Result<head::FittedHead> fitted = head::fitHead(plan.head().measures);
  const head::HeadShape shape = fitted ? head::HeadShape(fitted->axes) : head::HeadShape();
  if (piece.line.empty()) return plan::HairZone::Back;
  return hair::zoneAt(shape, shape.pointAt(piece.line[piece.line.size() / 2]));
}

double strandLength_mm(const plan::Plan& plan, const plan::Piece& piece) {
  return plan.hair().length_mm[static_cast<std::size_t>(zoneOf(plan, piece))];
}

PieceCard::PieceCard(document::DocumentController& controller, QWidget* parent)
    : QWidget(parent), controller_(controller) {
  build();
  connectStrand();
  connect(&controller_, &document::DocumentController::changed, this, &PieceCard::fill);
  connect(&controller_, &document::DocumentController::selectionChanged, this, [this] {
    stepping_ = document::Gesture::begin();
    fill();
  });
  fill();
}

QVBoxLayout* PieceCard::section(const QString& title, QWidget** box) {
  auto* frame = new QWidget(body_);
  auto* column = new QVBoxLayout(frame);
  column->setContentsMargins(0, 8, 0, 0);
  column->setSpacing(5);
  if (!title.isEmpty()) {
    auto* heading = new QLabel(title, frame);
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
              change(tr(row.change), [&](plan::Piece& piece) { row.set(piece, value); },
                     stepping ? stepping_ : document::Gesture::none());
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
  nothing_ = new QLabel(tr("Click a piece on the sheet, or press Tab there to walk through the "
                           "pieces. Shift or a frame drawn round several selects them together."),
                        this);
  nothing_->setWordWrap(true);
  nothing_->setProperty("soft", true);
  outer->addWidget(nothing_);
  body_ = new QWidget(this);
  auto* bodyColumn = new QVBoxLayout(body_);
  bodyColumn->setContentsMargins(0, 0, 0, 0);
  bodyColumn->setSpacing(2);
  outer->addWidget(body_);
  outer->addStretch(1);

  caution_ = new QLabel(body_);
  caution_->setProperty("caution", true);
  caution_->setWordWrap(true);
  bodyColumn->addWidget(caution_);

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
  auto* dropRow = new QHBoxLayout;
  auto* dropLabel = new QLabel(tr("Drop-outs, mm along it"), body_);
  dropOuts_ = new QLineEdit(body_);
  dropOuts_->setAccessibleName(dropLabel->text());
  dropOuts_->setPlaceholderText(tr("none"));
  dropOuts_->setToolTip(tr("Stretches of the piece left dark, as in 40–60; 110–125"));
  dropOuts_->setMinimumHeight(28);
  dropLabel->setBuddy(dropOuts_);
  dropRow->addWidget(dropLabel, 1);
  dropRow->addWidget(dropOuts_, 1);
  strip->addLayout(dropRow);
  dropOutProblem_ = new QLabel(body_);
  dropOutProblem_->setProperty("caution", true);
  dropOutProblem_->setWordWrap(true);
  dropOutProblem_->hide();
  strip->addWidget(dropOutProblem_);
  connect(dropOuts_, &QLineEdit::editingFinished, this, [this] {
    if (!dropOuts_->isModified()) return;
    const auto typed = dropOutsFrom(dropOuts_->text());
    dropOutProblem_->setVisible(!typed);
    if (!typed) {
      dropOutProblem_->setText(
          QStringLiteral("\u26A0 ") +
          tr("“%1” is not a list of stretches. Right would be: 40–60; 110–125").arg(dropOuts_->text()));
      return;
    }
    dropOuts_->setModified(false);
    change(tr("drop-outs"), [&](plan::Piece& p) { p.dropOuts = *typed; });
  });

  QVBoxLayout* colour = section(tr("Colour"), &finishBox_);
  addNumbers(colour, static_cast<int>(PieceNumber::Group::RootZone));
  rootTone_ = addChoice(colour, tr("Tone"), toneWords());
  connect(rootTone_, &QComboBox::activated, this, [this](int i) {
    change(tr("tone"), [i](plan::Piece& p) {
      if (p.root.finish) p.root.finish->tone = static_cast<plan::Tone>(i);
    });
  });
  QVBoxLayout* ends = section(tr("Colour of the ends"), &endZone_);
  addNumbers(ends, static_cast<int>(PieceNumber::Group::EndZone));
  endTone_ = addChoice(ends, tr("Tone at the ends"), toneWords());
  connect(endTone_, &QComboBox::activated, this, [this](int i) {
    change(tr("tone of the ends"), [i](plan::Piece& p) {
      if (p.end.finish) p.end.finish->tone = static_cast<plan::Tone>(i);
    });
  });

  QVBoxLayout* work = section(tr("Working"));
  keptIn_ = new controls::Segments(
      tr("Kept in"), {{tr("Foil"), {}, {}}, {tr("Film"), {}, {}}, {tr("Open air"), {}, {}}}, body_);
  work->addWidget(keptIn_);
  connect(keptIn_, &controls::Segments::chosen, this, [this](int i) {
    change(tr("kept in"), [i](plan::Piece& p) { p.keptIn = static_cast<plan::KeptIn>(i); });
  });
  const auto addText = [&](const QString& label, const QString& placeholder, const QString& tip) {
    auto* row = new QHBoxLayout;
    auto* text = new QLabel(label, body_);
    auto* edit = new QLineEdit(body_);
    edit->setPlaceholderText(placeholder);
    edit->setToolTip(tip);
    edit->setMaxLength(60);
    edit->setAccessibleName(label);
    edit->setMinimumHeight(28);
    text->setBuddy(edit);
    row->addWidget(text, 1);
    row->addWidget(edit, 1);
    work->addLayout(row);
    return edit;
  };
  foil_ = addText(tr("Shares foil"), tr("its own"), tr("Pieces with the same word here share one foil"));
  connect(foil_, &QLineEdit::editingFinished, this, [this] {
    if (!foil_->isModified()) return;
    foil_->setModified(false);
    change(tr("foil"), [text = foil_->text().toStdString()](plan::Piece& p) { p.foil = text; });
  });
  addNumbers(work, static_cast<int>(PieceNumber::Group::Order));
  label_ = addText(tr("Name"), tr("by number"), tr("A name of your own for this piece"));
  connect(label_, &QLineEdit::editingFinished, this, [this] {
    if (!label_->isModified()) return;
    label_->setModified(false);
    change(tr("name"), [text = label_->text().toStdString()](plan::Piece& p) { p.label = text; });
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
        QT_TRANSLATE_NOOP("PieceCard", "start"), QT_TRANSLATE_NOOP("PieceCard", "blend length"),
        QT_TRANSLATE_NOOP("PieceCard", "backcomb depth"), QT_TRANSLATE_NOOP("PieceCard", "handover"),
        QT_TRANSLATE_NOOP("PieceCard", "stop")};
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

std::vector<plan::ItemId> PieceCard::selected() const {
  return piecesOf(controller_.document(), controller_.selection().ids());
}

void PieceCard::change(const QString& what, const PieceChange& change, document::Gesture gesture) {
  const std::vector<plan::ItemId> ids = selected();
  if (ids.empty()) return;
  controller_.edit(withPieces(controller_.document(), ids, change),
                   tr("Change %1 of %2").arg(what, piecesName(controller_.document(), ids)), gesture);
}

void PieceCard::fill() {
  const plan::Plan& plan = controller_.plan();
  const std::vector<plan::ItemId> ids = piecesOf(plan, controller_.selection().ids());
  std::vector<const plan::Piece*> pieces;
  for (const plan::ItemId& id : ids) pieces.push_back(plan.find<plan::Piece>(id));
  const bool some = !pieces.empty();
  body_->setVisible(some);
  nothing_->setVisible(!some);
  title_->setText(some ? piecesName(plan, ids) : tr("No piece selected"));
  if (!some) {
    strand_->setStrand(std::nullopt);
    return;
  }
  QString title = title_->text();
  title[0] = title[0].toUpper();
  title_->setText(title);

  const auto pick = [&](auto get) {
    const auto value = shared(pieces, get);
    return value ? static_cast<int>(*value) : -1;
  };
  action_->setCurrent(pick([](const plan::Piece& p) { return p.action; }));
  taking_->setCurrent(pick([](const plan::Piece& p) { return p.taking; }));
  keptIn_->setCurrent(pick([](const plan::Piece& p) { return p.keptIn; }));
  under_->setCurrent(pick([](const plan::Piece& p) { return p.under; }));

  const auto table = pieceNumbers();
  for (std::size_t i = 0; i < table.size(); ++i) {
    const auto value = shared(pieces, table[i].get);
    if (value)
      numbers_[i]->setValue(*value);
    else
      numbers_[i]->setMixed();
  }
  const auto tone = [&](plan::ZoneColour plan::Piece::*zone) {
    const auto value = shared(pieces, [zone](const plan::Piece& p) {
      return (p.*zone).finish ? static_cast<int>((p.*zone).finish->tone) : -1;
    });
    return value.value_or(-1);
  };
  rootTone_->setCurrentIndex(tone(&plan::Piece::root));
  endTone_->setCurrentIndex(tone(&plan::Piece::end));
  const auto has = [&](auto test) { return std::any_of(pieces.begin(), pieces.end(), test); };
  rootTone_->setEnabled(has([](const plan::Piece* p) { return p->root.finish.has_value(); }));
  endTone_->setEnabled(has([](const plan::Piece* p) { return p->end.finish.has_value(); }));
  endZone_->setVisible(has([](const plan::Piece* p) { return p->handover_mm.has_value(); }));

  const auto text = [&](auto get) -> std::optional<QString> {
    const auto value = shared(pieces, get);
    return value ? std::optional(QString::fromStdString(*value)) : std::nullopt;
  };
  const auto words = [&](QLineEdit* edit, const std::optional<QString>& value, const QString& empty) {
    quietly(edit, value);
    edit->setPlaceholderText(value ? empty : tr("mixed"));
  };
  words(foil_, text([](const plan::Piece& p) { return p.foil; }), tr("its own"));
  words(label_, text([](const plan::Piece& p) { return p.label; }), tr("by number"));
  label_->setEnabled(pieces.size() == 1);
  const auto dropOuts = shared(pieces, [](const plan::Piece& p) { return p.dropOuts; });
  words(dropOuts_, dropOuts ? std::optional(dropOutText(*dropOuts)) : std::nullopt, tr("none"));

  // Only what this kind of piece has.
  const bool leftOut = pick([](const plan::Piece& p) { return p.action; }) ==
                       static_cast<int>(plan::Action::LeaveOut);
  strandBox_->setVisible(!leftOut);
  finishBox_->setVisible(!leftOut);
  if (leftOut) endZone_->hide();
  const bool weave = has([](const plan::Piece* p) { return p->taking == plan::Taking::Weave; });
  const bool paint = has([](const plan::Piece* p) { return p->taking == plan::Taking::Paint; });
  for (std::size_t i = 0; i < table.size(); ++i) {
    const QLatin1String field(table[i].field);
    if (field == QLatin1String("piece.tooth_mm") || field == QLatin1String("piece.gap_mm"))
      numbers_[i]->setVisible(weave);
    if (field == QLatin1String("piece.outer_frac")) numbers_[i]->setVisible(paint);
  }
  under_->setEnabled(paint);

  const plan::Piece* lead = plan.find<plan::Piece>(controller_.selection().lead());
  const plan::Piece& shown = lead ? *lead : *pieces.front();
  strand_->setStrand(Strand{shown, strandLength_mm(plan, shown), plan.hair(), zoneOf(plan, shown),
                            plan.info().assumptions});
  showCautions(pieces);
}

void PieceCard::showCautions(const std::vector<const plan::Piece*>& pieces) {
  const QStringList cautions = pieceCautions(controller_.plan(), pieces);
  caution_->setVisible(!cautions.isEmpty());
  caution_->setText(QStringLiteral("\u26A0 ") + cautions.join(QStringLiteral("\n\u26A0 ")));
}

}  // namespace combdraft::cards
