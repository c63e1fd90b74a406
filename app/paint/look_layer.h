#pragma once
// A view as it will look: the line art with the predicted hair over it.
#include <QImage>

#include "app/paint/head_art.h"
#include "engine/look/look.h"

namespace combdraft::paint {

/// A copy of the picture as an image with straight alpha.
QImage lookImage(const look::Picture& picture);
/// The image fading out toward its sides and foot, so that hair longer than the
/// picture is not cut off square. Format_RGBA8888.
QImage withSoftEdge(QImage image, double edge_px);
/// Line art in the colour of the skin and over it, where `picture` is given, its hair:
/// an item of layer Look. What of the body shows between hair lies under both.
Items lookItems(const HeadScene& scene, head::ViewName view, plan::SkinTone tone, const Palette& palette,
                const Ink& ink, const look::Picture* picture);
/// The picture of a view in a frame, or null.
const look::Picture* pictureOf(const look::LookFrame& frame, head::ViewName view);

}  // namespace combdraft::paint
