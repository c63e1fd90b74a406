#include "engine/look/look.h"

namespace combdraft::look {

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
