#include "app/desk/finding_place.h"

#include "app/paint/marks.h"
#include "engine/advise/findings.h"

namespace combdraft::desk {
namespace {

head::ViewName viewOf(look::Region region) {
  using look::Region;
  switch (region) {
    case Region::FaceFrameLeft:
    case Region::FaceFrameRight:
    case Region::FrontTop: return head::ViewName::Front;
    case Region::Top: return head::ViewName::Top;
    case Region::Crown: return head::ViewName::Crown;
    case Region::SideLeft: return head::ViewName::Left;
    case Region::SideRight: return head::ViewName::Right;
    case Region::BackUpper:
    case Region::BackMiddle:
    case Region::BackEnds:
    case Region::Nape: return head::ViewName::Back;
  }
  return head::ViewName::Back;
}

}  // namespace

head::ViewName FindingPlace::view(const paint::HeadScene& head) const {
  if (places.empty()) return fallback;
  Vec3 middle = Vec3::Zero();
  for (const Point3f& p : places) middle += toVec3(p);
  return paint::viewFacing(head, middle / static_cast<double>(places.size()));
}

FindingPlace placeOf(const look::Openings& openings, const advise::Finding& finding) {
  FindingPlace place;
  if (finding.region) place.fallback = viewOf(*finding.region);
  using Kind = advise::FindingKind;
  if (finding.kind != Kind::LightBlock && finding.kind != Kind::DarkBlock && finding.kind != Kind::RunAtOpening) return place;
  for (const look::Opening& o : openings.all) {
    if (!(advise::wornOf(o) == finding.worn)) continue;
    const bool dark = finding.kind == Kind::DarkBlock ||
                      (finding.kind == Kind::RunAtOpening && o.darkRun.length_mm > o.lightRun.length_mm);
    const look::Patch& patch = dark ? o.dark : o.light;
    place.places = patch.places;
    if (patch.cell_mm > 0) place.cell_mm = patch.cell_mm;
    break;
  }
  return place;
}

}  // namespace combdraft::desk
