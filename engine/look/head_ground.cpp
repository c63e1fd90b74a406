#include "engine/look/head_ground.h"

#include "engine/base/content_hash.h"
#include "engine/base/parallel.h"
#include "engine/head/landmarks.h"

namespace combdraft::look {

std::uint64_t HeadGround::keyOf(const plan::Plan& plan, int locks, double measuringPixel_mm) {
  const plan::Head& head = plan.head();
  ContentHash h;
  h.add(locks).add(measuringPixel_mm).add(plan.info().number);
  const auto optional = [&](const std::optional<double>& v) { h.add(v ? 1 : 0).add(v.value_or(0.0)); };
  h.add(static_cast<int>(head.measures.set)).add(static_cast<int>(head.measures.size));
  optional(head.measures.circumference_mm), optional(head.measures.length_mm);
  optional(head.measures.breadth_mm), optional(head.measures.earToEar_mm);
  h.add(head.hairline.front_mm).add(head.hairline.temples_mm).add(head.hairline.sides_mm).add(head.hairline.nape_mm);
  if (!head.whorls.empty())
    h.add(head.whorls.front().at.bearing_deg).add(head.whorls.front().at.drop_deg);
  h.add(plan.hair().density_per_cm2);
  return h.key();
}

Result<std::shared_ptr<const HeadGround>> HeadGround::build(const plan::Plan& plan, int locks,
                                                            double measuringPixel_mm) {
  const auto fitted = head::fitHead(plan.head().measures);
  if (!fitted) return fitted.error();
  const head::HeadShape shape(fitted->axes);
  const head::Hairline hairline(shape, plan.head().hairline);
  std::shared_ptr<HeadGround> made(new HeadGround(shape, hairline));
  made->key_ = keyOf(plan, locks, measuringPixel_mm);
  made->seed_ = plan.info().number;
  made->crown_ = plan.head().whorls.empty() ? head::defaultWhorl(shape)
                                            : shape.pointAt(plan.head().whorls.front().at);
  made->body_ = std::make_unique<hair::BodyGrid>(made->solid_);
  made->roots_ = hair::spreadRoots(shape, hairline, plan.hair().density_per_cm2, locks, made->seed_);
  made->grid_ = std::make_unique<hair::RootGrid>(made->roots_);
  for (std::size_t v = 0; v < made->depths_.size(); ++v)
    made->depths_[v] = made->bodyDepthOf(head::kAllViews[v], measuringPixel_mm);
  return std::shared_ptr<const HeadGround>(std::move(made));
}

visibility::RasterSpec HeadGround::specOf(head::ViewName view, double pixel_mm) const {
  const head::SheetView projection = view == head::ViewName::Crown
                                         ? head::SheetView::crown(shape_, crown_)
                                         : head::SheetView(view);
  return {projection, projection.frame(), pixel_mm};
}

visibility::BodyDepth HeadGround::bodyDepthOf(head::ViewName view, double pixel_mm) const {
  return bodyDepthIn(specOf(view, std::max(pixel_mm, 1.0)));
}

visibility::BodyDepth HeadGround::refinedDepth(int view, const visibility::RasterSpec& spec) const {
  return visibility::refined(measuredDepth(view), spec, solid_, *body_, shape_, hairline_);
}

visibility::BodyDepth HeadGround::bodyDepthIn(const visibility::RasterSpec& spec) const {
  return visibility::bodyDepth(spec, solid_, *body_, shape_, hairline_);
}

}  // namespace combdraft::look
