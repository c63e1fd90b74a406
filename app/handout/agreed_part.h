#pragma once
// What was agreed with the client, as a part of the record card and the client's
// page: its picture, what it shows, the span, and the line that it is no promise.
#include <QImage>

#include "app/handout/flow.h"
#include "engine/plan/agreement.h"

namespace combdraft::handout {

/// The agreement's picture; null where there is none, where it is larger than a
/// picture of ours, or where it cannot be read.
QImage agreedPicture(const plan::Agreement& agreement);

/// Nothing where nothing was agreed; a sentence where it cannot be read.
void addAgreed(Column& column, const plan::Plan& plan);

}  // namespace combdraft::handout
