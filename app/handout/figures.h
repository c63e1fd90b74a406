#pragma once
// The drawings of a handout, all from the sheet's own drawing items.
#include <map>
#include <set>

#include "app/paint/scene.h"
#include "app/paint/sheet_page.h"

namespace combdraft::handout {

/// A handout speaks of a model, a card of a client.
enum class Person { Model, Client };
/// "Back", "Model's left", "Client's left", "Crown, close".
QString viewName(head::ViewName view, Person person);

/// What of a view stands on paper: the head without the shoulders.
QRectF cropOf(head::ViewName view);

/// A view with all pieces.
paint::Figure viewFigure(const paint::Scene& scene, head::ViewName view, double scale);
/// The pieces of one step over those `before` it, whose outlines are pale.
paint::Figure stepFigure(const paint::Scene& scene, head::ViewName view, double scale, const std::set<plan::ItemId>& now,
                         const std::vector<plan::ItemId>& before);
/// The head without any piece, to draw on.
paint::Figure blankFigure(const paint::Scene& scene, head::ViewName view, double scale);
paint::Figure lookFigure(const paint::Scene& scene, head::ViewName view, const look::LookFrame* look, double scale);

/// A printed scale of exactly this many paper mm, with a tick every 10 and figures.
paint::Figure scaleFigure(int length_mm);

/// Minutes as bars one after the other, over a width.
struct TimedStep {
  QString name;
  double minutes = 0;
};
paint::Figure timingFigure(const std::vector<TimedStep>& steps, double width_mm);
/// Distance between two figures on the axis so that they can be read.
double axisStep_min(double whole_min);

/// Where a set of pieces is seen best.
head::ViewName bestView(const paint::Scene& scene, const std::vector<plan::ItemId>& pieces);

}  // namespace combdraft::handout
