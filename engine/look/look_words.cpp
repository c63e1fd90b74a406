#include "engine/look/look.h"

namespace combdraft::look {

std::string_view regionWord(Region region) {
  switch (region) {
    case Region::FaceFrameLeft: return "face frame left";
    case Region::FaceFrameRight: return "face frame right";
    case Region::FrontTop: return "front top";
    case Region::Top: return "top";
    case Region::Crown: return "crown";
    case Region::SideLeft: return "left side";
    case Region::SideRight: return "right side";
    case Region::BackUpper: return "upper back";
    case Region::BackMiddle: return "middle back";
    case Region::BackEnds: return "ends at the back";
    case Region::Nape: return "nape";
  }
  return "";
}

std::string_view verdictWord(ContrastVerdict verdict) {
  switch (verdict) {
    case ContrastVerdict::TwoClearLevels: return "two clear levels";
    case ContrastVerdict::Soft: return "soft";
    case ContrastVerdict::OneTone: return "one tone";
    case ContrastVerdict::TooLittleHair: return "too little hair to say";
  }
  return "";
}

}  // namespace combdraft::look
