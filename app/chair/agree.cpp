#include "app/chair/agree.h"

namespace combdraft::chair {
namespace {

std::string liftWord(look::Lift lift) {
  switch (lift) {
    case look::Lift::Less: return "less";
    case look::Lift::AsPlanned: return "as-planned";
    case look::Lift::More: return "more";
  }
  return {};
}

}  // namespace

plan::Agreement agreementOf(const plan::Plan& plan, const Shown& shown, const QDate& date) {
  plan::Agreement agreement;
  agreement.date = date.toString(Qt::ISODate).toStdString();
  agreement.choice = shown.choice;
  agreement.choiceName = shown.choiceName.toStdString();
  agreement.frozen = plan::frozenChoice(plan, shown.choice);
  agreement.view = {std::string(hair::wornWord(shown.settings.worn.way)),
                    hair::showsPart(shown.settings.worn.way) ? shown.settings.worn.partShift_mm : 0.0,
                    shown.settings.weeks,
                    std::string(colour::lightWord(shown.settings.light)),
                    liftWord(shown.settings.lift),
                    std::string(head::viewWord(shown.view)),
                    shown.facing};
  if (shown.span) {
    const LevelSpan span = asShown(*shown.span);  // what stood on the screen, not what lies behind it
    agreement.span = plan::AgreedSpan{span.planned, span.low, span.high};
  }
  agreement.promiseLine = promiseLine().toStdString();
  agreement.pictureBase64 = smallPicture(shown.pane, shown.view, shown.facing, promiseLine(), plan::kAgreedPictureBytes);
  agreement.engineVersion = COMBDRAFT_VERSION;
  return plan::withEarlier(std::move(agreement), plan.info().agreedJson);
}

std::optional<plan::Agreement> agreedIn(const plan::Plan& plan) {
  if (plan.info().agreedJson.empty()) return std::nullopt;
  Result<plan::Agreement> read = plan::readAgreement(plan.info().agreedJson);
  if (!read) return std::nullopt;
  return std::move(read).value();
}

}  // namespace combdraft::chair
