#include "app/paint/check_words.h"

#include <QCoreApplication>
#include <algorithm>

#include "app/paint/work_words.h"
#include "app/words/engine_words.h"

namespace combdraft::paint {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(CheckWords)
};

constexpr std::size_t kNamed = 4;  // then "and 7 more"

// Works on the head in another choice.
bool isOfAnother(const plan::Plan& plan, const plan::ItemId& id, const plan::ItemId& choice) {
  const auto* piece = plan.find<plan::Piece>(id);
  const auto* treatment = plan.find<plan::Treatment>(id);
  return (piece && piece->choice != choice) || (treatment && treatment->choice != choice);
}

}  // namespace

QString itemName(const plan::Plan& plan, const plan::ItemId& id) {
  if (id == plan::kPlanId) return Words::tr("plan");
  if (id == plan::kHeadId) return Words::tr("head");
  if (id == plan::kHairId) return Words::tr("hair");
  if (plan.find<plan::Piece>(id)) return pieceName(plan, id);
  if (const auto* treatment = plan.find<plan::Treatment>(id))
    return treatment->kind == plan::Treatment::Kind::Glaze ? Words::tr("glaze") : Words::tr("root shadow");
  if (const auto* section = plan.find<plan::Section>(id); section && !section->label.empty())
    return Words::tr("section %1").arg(QString::fromStdString(section->label));
  if (plan.find<plan::Note>(id)) return Words::tr("a note");
  return QString::fromStdString(id);
}

QString issueText(const plan::Plan& plan, const plan::Issue& issue) {
  QStringList names;
  for (std::size_t i = 0; i < std::min(issue.items.size(), kNamed); ++i) names << itemName(plan, issue.items[i]);
  QString who = names.join(QStringLiteral(", "));
  if (issue.items.size() > kNamed) who = Words::tr("%1 and %2 more").arg(who, QString::number(issue.items.size() - kNamed));
  if (!who.isEmpty()) who[0] = who[0].toUpper();
  const QString sentence = words::inWords(plan::sentenceOf(issue));
  return who.isEmpty() ? sentence : who + QStringLiteral(": ") + sentence;
}

QStringList checksBeforeWork(const plan::Plan& plan, const plan::ItemId& choice) {
  const plan::ItemId of = choice.empty() ? plan.info().activeChoice : choice;
  QStringList lines;
  for (plan::Issue issue : plan::validate(plan)) {
    if (issue.severity != plan::Severity::Caution) continue;
    const bool named = !issue.items.empty();
    std::erase_if(issue.items, [&](const plan::ItemId& id) { return isOfAnother(plan, id, of); });
    if (!named || !issue.items.empty()) lines << issueText(plan, issue);
  }
  return lines;
}

bool liftsAsNew(const plan::Piece& piece) { return piece.action == plan::Action::Lighten && piece.root.lifts == plan::LiftsTo{}; }

QString liftsAsNewText(const plan::Plan& plan, const plan::ItemId& choice) {
  const auto pieces = plan.pieces(choice);
  if (std::none_of(pieces.begin(), pieces.end(), [](const auto& piece) { return liftsAsNew(*piece.second); })) return {};
  return Words::tr("Worked out with level 9 (8 to 10), which stands in every new plan; whether this hair gets there, a test strand shows.");
}

}  // namespace combdraft::paint
