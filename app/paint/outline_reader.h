#pragma once
// Reads our own outline drawings: only <g> and <path>, absolute M, C, L, Z.
#include <QByteArray>
#include <QPainterPath>
#include <QString>
#include <vector>

#include "engine/head/sheet_view.h"

namespace combdraft::paint {

struct OutlinePath {
  QString group;  ///< "skin", "scalp", "hairline", "features", "guides"
  QString kind;   ///< class of the path; the group's when it has none
  QString id;
  QPainterPath path;
};

/// Paths in drawing order; text that is not such a drawing gives what was
/// understood so far.
std::vector<OutlinePath> readOutline(const QByteArray& svg);
/// The bundled drawing of one of the five fixed views (read once).
const std::vector<OutlinePath>& bundledOutline(head::ViewName view);

}  // namespace combdraft::paint
