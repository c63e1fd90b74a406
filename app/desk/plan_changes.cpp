#include "app/desk/plan_changes.h"

#include <QCoreApplication>
#include <array>
#include <variant>

#include "app/cards/piece_edits.h"
#include "engine/plan/change_set.h"
#include "engine/work/log_text.h"

namespace combdraft::desk {
namespace {

constexpr qsizetype kMostNames = 8;  // then it is counted

struct Said {
  Q_DECLARE_TR_FUNCTIONS(PlanChanges)
};

enum Kind { Pieces, Sections, Formulas, Treatments, Notes, Choices, kKinds };
enum Fate { Added, Removed, Changed, kFates };

struct Words {
  const char *one, *many;
};
constexpr Words kWords[kKinds][kFates] = {
    {{QT_TRANSLATE_NOOP("PlanChanges", "1 piece added: %1"), QT_TRANSLATE_NOOP("PlanChanges", "%2 pieces added: %1")},
     {QT_TRANSLATE_NOOP("PlanChanges", "1 piece removed: %1"), QT_TRANSLATE_NOOP("PlanChanges", "%2 pieces removed: %1")},
     {QT_TRANSLATE_NOOP("PlanChanges", "1 piece changed: %1"), QT_TRANSLATE_NOOP("PlanChanges", "%2 pieces changed: %1")}},
    {{QT_TRANSLATE_NOOP("PlanChanges", "1 section added: %1"), QT_TRANSLATE_NOOP("PlanChanges", "%2 sections added: %1")},
     {QT_TRANSLATE_NOOP("PlanChanges", "1 section removed: %1"), QT_TRANSLATE_NOOP("PlanChanges", "%2 sections removed: %1")},
     {QT_TRANSLATE_NOOP("PlanChanges", "1 section changed: %1"), QT_TRANSLATE_NOOP("PlanChanges", "%2 sections changed: %1")}},
    {{QT_TRANSLATE_NOOP("PlanChanges", "1 formula added: %1"), QT_TRANSLATE_NOOP("PlanChanges", "%2 formulas added: %1")},
     {QT_TRANSLATE_NOOP("PlanChanges", "1 formula removed: %1"), QT_TRANSLATE_NOOP("PlanChanges", "%2 formulas removed: %1")},
     {QT_TRANSLATE_NOOP("PlanChanges", "1 formula changed: %1"), QT_TRANSLATE_NOOP("PlanChanges", "%2 formulas changed: %1")}},
    {{QT_TRANSLATE_NOOP("PlanChanges", "1 root shadow or glaze added: %1"), QT_TRANSLATE_NOOP("PlanChanges", "%2 root shadows or glazes added: %1")},
     {QT_TRANSLATE_NOOP("PlanChanges", "1 root shadow or glaze removed: %1"), QT_TRANSLATE_NOOP("PlanChanges", "%2 root shadows or glazes removed: %1")},
     {QT_TRANSLATE_NOOP("PlanChanges", "1 root shadow or glaze changed: %1"), QT_TRANSLATE_NOOP("PlanChanges", "%2 root shadows or glazes changed: %1")}},
    {{QT_TRANSLATE_NOOP("PlanChanges", "1 note added: %1"), QT_TRANSLATE_NOOP("PlanChanges", "%2 notes added: %1")},
     {QT_TRANSLATE_NOOP("PlanChanges", "1 note removed: %1"), QT_TRANSLATE_NOOP("PlanChanges", "%2 notes removed: %1")},
     {QT_TRANSLATE_NOOP("PlanChanges", "1 note changed: %1"), QT_TRANSLATE_NOOP("PlanChanges", "%2 notes changed: %1")}},
    {{QT_TRANSLATE_NOOP("PlanChanges", "1 choice added: %1"), QT_TRANSLATE_NOOP("PlanChanges", "%2 choices added: %1")},
     {QT_TRANSLATE_NOOP("PlanChanges", "1 choice removed: %1"), QT_TRANSLATE_NOOP("PlanChanges", "%2 choices removed: %1")},
     {QT_TRANSLATE_NOOP("PlanChanges", "1 choice or its aims changed: %1"), QT_TRANSLATE_NOOP("PlanChanges", "%2 choices or their aims changed: %1")}}};

QString orId(const std::string& name, const plan::ItemId& id) {
  return name.empty() ? QString::fromStdString(id).replace(u'-', u' ') : QString::fromStdString(name);
}

struct Named {
  int kind = -1;  ///< -1: one of the single items
  QString name;
};

Named named(const plan::ItemId& id, const plan::Item& item) {
  if (const auto* piece = std::get_if<plan::Piece>(&item)) return {Pieces, cards::pieceName(id, *piece)};
  if (const auto* section = std::get_if<plan::Section>(&item)) return {Sections, orId(section->label, id)};
  if (const auto* formula = std::get_if<plan::Formula>(&item)) return {Formulas, orId(formula->letter, id)};
  if (std::get_if<plan::Treatment>(&item)) return {Treatments, orId({}, id)};
  if (std::get_if<plan::Note>(&item)) return {Notes, orId({}, id)};
  if (const auto* choice = std::get_if<plan::Choice>(&item)) return {Choices, orId(choice->name, id)};
  return {};
}

void addPlanLines(QStringList& lines, const plan::PlanInfo& before, const plan::PlanInfo& after) {
  if (before.title != after.title)
    lines << Said::tr("The title: “%1” became “%2”").arg(QString::fromStdString(before.title), QString::fromStdString(after.title));
  if (before.notes != after.notes) lines << Said::tr("The notes of the plan");
  if (before.assumptions != after.assumptions) lines << Said::tr("Assumptions");
  if (before.activeChoice != after.activeChoice) lines << Said::tr("Another choice is worked on");
  if (before.logJson != after.logJson) {
    const auto was = work::readLog(before.logJson), is = work::readLog(after.logJson);
    lines << (was && is && was->events.size() != is->events.size()
                  ? Said::tr("The appointment's log: %1 taps became %2").arg(QString::number(was->events.size()), QString::number(is->events.size()))
                  : Said::tr("The appointment's log"));
  }
  if (before.agreedJson != after.agreedJson) lines << Said::tr("The agreed picture");
  if (before.visitsJson != after.visitsJson) lines << Said::tr("The visits");
}

}  // namespace

QStringList planChanges(const plan::Plan& before, const plan::Plan& after) {
  std::array<std::array<QStringList, kFates>, kKinds> found;
  QStringList lines;
  for (const plan::ItemChange& change : plan::difference(before, after, plan::EditKind::ChangeItem).changes) {
    const Named thing = named(change.id, change.after ? *change.after : *change.before);
    const Fate fate = !change.before ? Added : !change.after ? Removed : Changed;
    if (thing.kind >= 0) found[static_cast<std::size_t>(thing.kind)][fate] << thing.name;
    if (change.id == plan::kPlanId) addPlanLines(lines, before.info(), after.info());
    if (change.id == plan::kHeadId) lines << Said::tr("The head: measures, hairline, part or swirls");
    if (change.id == plan::kHairId) lines << Said::tr("The hair: how much, how long, which level, bands, condition");
    if (change.id == plan::kHandoutId) lines << Said::tr("The handout: its parts or texts");
  }
  for (int kind = 0; kind < kKinds; ++kind)
    for (int fate = 0; fate < kFates; ++fate) {
      const QStringList& names = found[static_cast<std::size_t>(kind)][static_cast<std::size_t>(fate)];
      if (names.isEmpty()) continue;
      QString list = names.mid(0, kMostNames).join(QStringLiteral(", "));
      if (names.size() > kMostNames) list = Said::tr("%1 and %2 more").arg(list, QString::number(names.size() - kMostNames));
      const Words& words = kWords[kind][fate];
      lines << (names.size() == 1 ? Said::tr(words.one).arg(list) : Said::tr(words.many).arg(list, QString::number(names.size())));
    }
  return lines;
}

}  // namespace combdraft::desk
