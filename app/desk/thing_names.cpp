#include "app/desk/thing_names.h"

#include <QCoreApplication>
#include <QStringList>
#include <set>

#include "app/cards/piece_edits.h"

namespace combdraft::desk {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Things)
};

}  // namespace

std::vector<plan::ItemId> placedThings(const plan::Plan& plan, const std::vector<plan::ItemId>& ids) {
  std::vector<plan::ItemId> things;
  for (const plan::ItemId& id : ids)
    if (plan.find<plan::Piece>(id) || plan.find<plan::Section>(id) || plan.find<plan::Note>(id)) things.push_back(id);
  return things;
}

QString thingsName(const plan::Plan& plan, const std::vector<plan::ItemId>& ids) {
  const std::set<plan::ItemId> all(ids.begin(), ids.end());
  std::vector<plan::ItemId> pieces, sections, notes;
  for (const plan::ItemId& id : all) {
    if (const auto* piece = plan.find<plan::Piece>(id)) {
      if (!all.count(piece->section)) pieces.push_back(id);
    } else if (plan.find<plan::Section>(id)) {
      sections.push_back(id);
    } else if (plan.find<plan::Note>(id)) {
      notes.push_back(id);
    }
  }
  QStringList parts;
  if (sections.size() == 1) {
    const QString label = QString::fromStdString(plan.find<plan::Section>(sections.front())->label);
    parts << (label.isEmpty() ? Words::tr("1 section") : Words::tr("section “%1”").arg(label));
  } else if (!sections.empty()) {
    parts << Words::tr("%1 sections").arg(sections.size());
  }
  if (!pieces.empty()) parts << cards::piecesName(plan, pieces);
  if (!notes.empty()) parts << (notes.size() == 1 ? Words::tr("1 note") : Words::tr("%1 notes").arg(notes.size()));
  if (parts.size() < 2) return parts.join(QString());
  const QString last = parts.takeLast();
  return Words::tr("%1 and %2").arg(parts.join(QStringLiteral(", ")), last);
}

}  // namespace combdraft::desk
