#pragma once
// The sentences of an appointment, on screen and on paper: what the engine found, in
// the words of the window. Before a typed limit they say look, at it they say product off.
#include <QString>
#include <QStringList>

#include "app/paint/place_book.h"
#include "engine/plan/plan.h"
#include "engine/work/appointment_log.h"
#include "engine/work/outcome.h"
#include "engine/work/work_list.h"

namespace combdraft::paint {

/// "piece 7", "7 back low": the number on the sheet, and its label.
QString pieceName(const plan::Plan& plan, const plan::ItemId& id);
/// "piece 7, back left"; a place that the label says already is said once.
QString placedName(const plan::Plan& plan, const plan::ItemId& id, const PlaceBook& places);
/// "A, lightener"; "no formula named" for "" and for one that is gone.
QString formulaName(const plan::Plan& plan, const plan::ItemId& id);
/// What a saving changes: "section 2", its label, or "7 pieces, back" for those in no section.
QString sectionName(const plan::Plan& plan, const work::Saving& saving);
QString bowlName(const plan::Plan& plan, const work::Bowl& bowl);
/// "12.5"
QString minutes(double value);
/// "4:07", "1:02:11"; below 0 as 0.
QString clockText(double seconds);

QString noteText(const plan::Plan& plan, const work::WorkNote& note);
QString savingText(const plan::Plan& plan, const work::Saving& saving);
/// "mix A: bowl 2", "place piece 7, back left, from A: bowl 2; product 4.5 min old"; both formulas of a piece
/// where they are one line (work::linesOf). Places as the book has them.
QString stepText(const plan::Plan& plan, const work::Timeline& timeline, const work::StepLine& line, const PlaceBook& places);
/// "about 80 g: powder 26.7 g, developer 53.3 g"; the total alone where the parts are not typed.
QString gramsText(const work::BowlGrams& grams);

QString tapName(work::Tap tap);
/// "placed: piece 1, piece 2"
QString tapText(const plan::Plan& plan, const work::LogEvent& event);
QString problemText(const plan::Plan& plan, const work::LogProblem& problem);
QString reasonText(work::LookReason reason);
/// Of a piece with a typed limit.
QString timerText(const work::PieceTimer& timer);

/// "Placing took 1.2 times the planned minutes (3 heads)."
QString factorText(work::Factor which, const work::LearnedFactor& learned);

/// Always in view while hair is under product.
QString safetyLine();
QString looksLighter();
/// Said where a plan comes back that was left in the middle of an appointment.
QString onHairText(const work::OnHair& on);
/// Before colour is put on after the rinse: toner, deepening, a root shadow.
QString colourCaution();
QString firstCome();  ///< maker's directions, local rules, licence

}  // namespace combdraft::paint
