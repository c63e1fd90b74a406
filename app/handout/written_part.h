#pragma once
// Lines and tables of the record card that are written in by hand, before, during and after
// the appointment. Blank: no figure stands in them that nobody wrote.
#include "app/handout/flow.h"
#include "engine/plan/plan.h"

namespace combdraft::handout {

/// Tests, elasticity and scalp: what was seen before anything was mixed.
void addBeforeLines(Column& column);
/// A table by formula for the bowls of a visit; for a plan whose log holds no tap.
void addBowlTable(Column& column, const plan::Plan& plan);
/// Levels, hair, scalp, what the client said, what is to be done otherwise.
void addAfterLines(Column& column);

}  // namespace combdraft::handout
