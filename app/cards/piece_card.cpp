#include "app/cards/piece_card.h"

#include <QSignalBlocker>
#include <algorithm>

#include "app/cards/card_parts.h"
#include "app/cards/drop_out_text.h"
#include "app/cards/formula_words.h"
#include "app/cards/issue_lines.h"
#include "app/cards/piece_numbers.h"
#include "app/cards/provenance.h"
#include "app/paint/check_words.h"
#include "engine/hair/hair_zone.h"

namespace combdraft::cards {
namespace {

// The value that all pieces share, or nothing when they differ.
template <class Get>
auto shared(const std::vector<const plan::Piece*>& pieces, Get get)
    -> std::optional<std::decay_t<decltype(get(*pieces.front()))>> {
  const auto first = get(*pieces.front());
  for (const plan::Piece* piece : pieces)
    if (!(get(*piece) == first)) return std::nullopt;
  return first;
}

template <class Test>
bool any(const std::vector<const plan::Piece*>& pieces, Test test) {
  return std::any_of(pieces.begin(), pieces.end(), [&](const plan::Piece* p) { return test(*p); });
}

template <class Field>
void showText(Field* field, const std::optional<std::string>& text) {
  if (text)
    field->setText(QString::fromStdString(*text));
  else
    field->setMixed();
}

// Lists all formulas and shows the one named; nothing = they differ.
void showFormula(QComboBox* combo, const plan::Plan& plan, const std::optional<plan::ItemId>& id) {
  const QSignalBlocker quiet(combo);
  combo->clear();
  combo->addItem(PieceCard::tr("none named"), QString());
  for (const auto& [formulaId, formula] : formulasOf(plan))
    combo->addItem(formulaName(formulaId, *formula), QString::fromStdString(formulaId));
  combo->setCurrentIndex(id ? combo->findData(QString::fromStdString(*id)) : -1);
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
    writing_ = document::Gesture::begin();
    abandonTyping(this);
    fill();
  });
  fill();
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
  Pieces pieces;
  for (const plan::ItemId& id : ids) pieces.push_back(plan.find<plan::Piece>(id));
  const bool some = !pieces.empty();
  body_->setVisible(some);
  nothing_->setVisible(!some);
  if (!some) {
    title_->setText(tr("No piece selected"));
    strand_->setStrand(std::nullopt);
    return;
  }
  QString title = piecesName(plan, ids);
  title[0] = title[0].toUpper();
  title_->setText(title);
  fillChoices(pieces);
  fillNumbers(pieces);
  fillColour(pieces);
  fillWork(pieces);
  showWhatApplies(pieces);

  const plan::Piece* lead = plan.find<plan::Piece>(controller_.selection().lead());
  const plan::Piece& drawn = lead ? *lead : *pieces.front();
  strand_->setStrand(Strand{drawn, strandLength_mm(plan, drawn), plan.hair(), zoneOf(plan, drawn),
                            plan.info().assumptions});
  showLines(caution_, pieceIssues(plan, ids));
  standIn_->setVisible(any(pieces, paint::liftsAsNew));
}

void PieceCard::fillChoices(const Pieces& pieces) {
  const auto pick = [&](controls::Segments* segments, auto get) {
    const auto value = shared(pieces, get);
    if (value)
      segments->setCurrent(static_cast<int>(*value));
    else
      segments->setMixed();
  };
  pick(action_, [](const plan::Piece& p) { return p.action; });
  pick(taking_, [](const plan::Piece& p) { return p.taking; });
  pick(keptIn_, [](const plan::Piece& p) { return p.keptIn; });
  pick(under_, [](const plan::Piece& p) { return p.under; });
}

void PieceCard::fillNumbers(const Pieces& pieces) {
  const auto table = pieceNumbers();
  for (std::size_t i = 0; i < table.size(); ++i) {
    const auto value = shared(pieces, table[i].get);
    if (value)
      numbers_[i]->setValue(*value);
    else
      numbers_[i]->setMixed();
    numbers_[i]->setProvenance(value ? provenance(table[i].field, *value) : tr("These pieces differ here."));
  }
  const auto dropOuts = shared(pieces, [](const plan::Piece& p) { return p.dropOuts; });
  if (dropOuts)
    dropOuts_->setText(dropOutText(*dropOuts, controls::Units::current().length()));
  else
    dropOuts_->setMixed();
}

void PieceCard::fillColour(const Pieces& pieces) {
  const auto zone = [&](QComboBox* tone, QComboBox* formula, plan::ZoneColour plan::Piece::*part) {
    const auto shownTone = shared(pieces, [part](const plan::Piece& p) {
      return (p.*part).finish ? static_cast<int>((p.*part).finish->tone) : -1;
    });
    tone->setCurrentIndex(shownTone.value_or(-1));
    tone->setPlaceholderText(shownTone ? tr("stays bare") : tr("mixed"));
    tone->setEnabled(any(pieces, [part](const plan::Piece& p) { return (p.*part).finish.has_value(); }));
    showFormula(formula, controller_.plan(), shared(pieces, [part](const plan::Piece& p) { return (p.*part).formula; }));
  };
  zone(rootTone_, rootFormula_, &plan::Piece::root);
  zone(endTone_, endFormula_, &plan::Piece::end);
}

void PieceCard::fillWork(const Pieces& pieces) {
  showText(foil_, shared(pieces, [](const plan::Piece& p) { return p.foil; }));
  showText(label_, shared(pieces, [](const plan::Piece& p) { return p.label; }));
  showText(note_, shared(pieces, [](const plan::Piece& p) { return p.note; }));
  label_->setEnabled(pieces.size() == 1);
  const auto held = shared(pieces, [](const plan::Piece& p) { return p.held; });
  held_->setTristate(!held);
  held_->setCheckState(!held ? Qt::PartiallyChecked : *held ? Qt::Checked : Qt::Unchecked);
  const QStringList others = foilSharers(controller_.plan(), selected());
  sharers_->setVisible(!others.isEmpty());
  sharers_->setText(tr("in one foil with %1").arg(others.join(QStringLiteral(", "))));
  const auto foil = shared(pieces, [](const plan::Piece& p) { return p.foil; });
  shareFoil_->setVisible(pieces.size() > 1 && (!foil || foil->empty()) &&
                         any(pieces, [](const plan::Piece& p) { return p.keptIn == plan::KeptIn::Foil; }));
}

// Only what this kind of piece has.
void PieceCard::showWhatApplies(const Pieces& pieces) {
  const bool treated = any(pieces, [](const plan::Piece& p) { return p.action != plan::Action::LeaveOut; });
  const bool weave = any(pieces, [](const plan::Piece& p) { return p.taking == plan::Taking::Weave; });
  const bool paint = any(pieces, [](const plan::Piece& p) { return p.taking == plan::Taking::Paint; });
  strandBox_->setVisible(treated);
  finishBox_->setVisible(treated);
  endZone_->setVisible(treated && any(pieces, [](const plan::Piece& p) { return p.handover_mm.has_value(); }));
  const auto table = pieceNumbers();
  for (std::size_t i = 0; i < table.size(); ++i) {
    const QLatin1String field(table[i].field);
    if (field == QLatin1String("piece.tooth_mm") || field == QLatin1String("piece.gap_mm"))
      numbers_[i]->setVisible(weave);
    if (field == QLatin1String("piece.outer_frac")) numbers_[i]->setVisible(paint);
  }
  under_->setEnabled(paint);
}

}  // namespace combdraft::cards
