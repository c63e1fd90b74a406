#pragma once
// Draws items with QPainter: screen, PNG, PDF and print.
#include <QPainter>

#include "app/paint/drawing.h"

namespace combdraft::paint {

/// Draws items in drawing mm under the painter's transform.
void paintItems(QPainter& painter, const Items& items);
/// Only the items of some layers.
void paintLayers(QPainter& painter, const Items& items, std::initializer_list<Layer> layers);
/// Draws a page in paper mm under the painter's transform.
void paintPage(QPainter& painter, const Page& page);

}  // namespace combdraft::paint
