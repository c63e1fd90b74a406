#pragma once
// Opening and saving plans from the window: the engine's plan files, plus which
// bytes the file held, so that a file changed on disk is noticed by content.
#include <QString>
#include <QStringList>

#include "app/document/document_controller.h"
#include "engine/base/result.h"
#include "engine/plan/migrations.h"

namespace combdraft::store {

struct OpenedPlan {
  plan::Plan plan;
  document::FileIdentity file;
  plan::Migration migration{};  ///< from an older format
};

/// Opens a plan file; errors name the file and the place in it.
Result<OpenedPlan> openPlan(const QString& path);
/// Saves, with read-back; only a value says that it is saved.
Result<document::FileIdentity> savePlan(const plan::Plan& plan, const QString& path);
/// Whether the file holds other bytes than this program last saw there. False
/// for files that are gone or were never seen.
bool isChangedOnDisk(const document::FileIdentity& file);

/// Whether someone took the right to write from a file that is there; its folder may still
/// let it be replaced.
bool isProtected(const QString& path);

/// The content of a file as it is now; 0 when it cannot be read.
std::uint64_t contentKeyOf(const QString& path);

/// What the name of a plan file ends in, so that the desktop knows its type. Plans
/// that end in .json alone are plans as well.
inline constexpr char kPlanEnding[] = "combdraft.json";
/// The file's name without its folder and ending.
QString nameOfFile(const QString& path);

/// The title to show: the plan's own, or the file's name, or "Untitled plan".
QString shownTitle(const plan::Plan& plan, const QString& path);

/// The example plans that come with the program; empty when they are missing.
QStringList examplePlans();

}  // namespace combdraft::store
