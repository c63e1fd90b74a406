#pragma once
// The parts of a handout, one after the other into a column.
#include "app/handout/document.h"
#include "app/handout/figures.h"
#include "app/handout/flow.h"

namespace combdraft::handout {

void addPart(Column& column, plan::HandoutPart part, const Request& request, const paint::Scene& scene, const Looks& looks,
             const Room& room, std::stop_token stop);

/// Pieces, sections and hair in two columns of label and value.
void addModelFacts(Column& column, const Request& request);
/// A box for each formula: what was typed, and lines where nothing was.
void addFormulas(Column& column, const Request& request);
void addFormulaLines(Column& box, const plan::Formula& formula);
/// Views in rows of `columns`, with their names; as large as `height_mm` allows.
void addViews(Column& column, const std::vector<head::ViewName>& views, int columns, double height_mm, Person person,
              const std::function<paint::Figure(head::ViewName, double scale)>& draw);
/// The key of the drawings, in the column's width.
void addKey(Column& column, const paint::Scene& scene);
/// A picture that is as wide as its place.
void addLookRow(Column& column, const paint::Scene& scene, const std::vector<head::ViewName>& views, const look::LookFrame* look,
                double height_mm, Person person);

// typed texts that the plan makes when they are empty; shown grey in the composer
QString madeKit(const Request& request);
QString madeChecks(const Request& request);
QString madeFaults(const Request& request);
/// Those of them that come first and stand out, also among typed ones.
QStringList urgentFaults();
QString madeSelfCheck(const Request& request);

}  // namespace combdraft::handout
