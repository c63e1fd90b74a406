#pragma once
// The predicted hair of one view as a drawing item over the line art.
#include <QImage>

#include "app/paint/drawing.h"
#include "engine/look/look.h"

namespace combdraft::paint {

/// A copy of the picture as an image with straight alpha.
QImage lookImage(const look::Picture& picture);
/// The image fading out toward its sides and foot, so that hair longer than the
/// picture is not cut off square. Format_RGBA8888.
QImage withSoftEdge(QImage image, double edge_px);
/// One item of layer Look covering what the picture covers.
DrawingItem lookItem(const look::Picture& picture);
/// The picture of a view in a frame, or null.
const look::Picture* pictureOf(const look::LookFrame& frame, head::ViewName view);

}  // namespace combdraft::paint
