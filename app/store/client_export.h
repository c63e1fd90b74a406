#pragma once
// What is kept of a client, handed over: a folder with a text for people, the same as
// JSON, and the photos.
#include <QString>

#include "app/store/client_file.h"
#include "engine/base/result.h"
#include "engine/plan/disk.h"

namespace combdraft::store {

/// Everything that is kept, a line each, as the client can read it; the consent with
/// its purpose and date first. Translated.
QString clientText(const ClientFile& file);

/// Makes `to`, which must not exist, with client.txt, client.json and the photos of
/// `folder`; it is there only when it is whole. For its owner only. Returns the names
/// of photos that are missing.
Result<QStringList> exportClient(const ClientFile& file, const QString& folder, const QString& to, plan::Disk& disk);

}  // namespace combdraft::store
