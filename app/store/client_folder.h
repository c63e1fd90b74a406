#pragma once
// Where client data stands: one folder of the user's own, apart from plans, and in
// it one folder per client, named by the plan's random number. Folders are 0700 and
// files 0600: nobody else on this computer can open them. They are not encrypted
// unless the disk is.
//
//   clients/NUMBER/client.json     what was typed
//                  photo-….jpg     photos, without what the camera wrote into them
//                  lock            held by the program that has it open
//                  client.json.broken   set aside because it could not be read
#include <QLockFile>
#include <QString>
#include <memory>
#include <vector>

#include "app/store/client_file.h"
#include "engine/base/result.h"
#include "engine/plan/disk.h"

namespace combdraft::store {

/// Where client data stands unless told otherwise.
QString clientsRoot();
QString clientFolder(const QString& root, std::uint64_t number);
inline const QString kClientDocument = QStringLiteral("client.json");
inline const QString kClientLock = QStringLiteral("lock");

/// Whose client a plan is: the number of the client who has a visit with it, else
/// the plan's own number.
std::uint64_t clientOfPlan(const QString& root, std::uint64_t planNumber);

struct ClientEntry {
  std::uint64_t number = 1;
  QString folder;
  ClientFile file;             ///< as read; with `trouble` only the number
  std::optional<Error> trouble;
};
/// All clients, the one with the oldest last occasion first. Changes nothing.
std::vector<ClientEntry> findClients(const QString& root);

/// One client's folder, held for writing. Used by one thread at a time.
class ClientFolder {
 public:
  ClientFolder(QString root, std::uint64_t number);

  enum class Standing {
    None,    ///< there is no file yet
    Held,    ///< nobody else writes it
    Others,  ///< another program has it open
    Cannot,  ///< it cannot be read or made, and is left alone
  };
  struct Opened {
    Standing standing = Standing::None;
    ClientFile file;
    std::optional<Error> trouble;  ///< with Cannot, or why it was set aside
    QString setAside;              ///< name of the damaged file, "" = none
  };
  /// Reads what is there. A damaged file is set aside, one of a newer program left
  /// alone. Photos without an entry get one.
  Opened open();
  /// Makes the folder when it is missing, and replaces the file in one step, read
  /// back and synced. Refuses where another program wrote one meanwhile.
  Result<void> write(const ClientFile& file, plan::Disk& disk);
  /// Writes bytes as a new owner-only file of the folder.
  Result<void> addFile(const QString& name, std::string_view bytes, plan::Disk& disk);
  /// Takes everything of this client away and gives the lock back.
  Result<void> remove();

  const QString& path() const { return path_; }
  std::uint64_t number() const { return number_; }

 private:
  Result<void> hold();

  QString root_, path_;
  std::uint64_t number_;
  bool isKnown_ = false;  ///< what stands there is what was read or written here
  std::unique_ptr<QLockFile> lock_;
};

/// Removes a client's folder that nobody holds.
Result<void> removeClientFolder(const QString& root, std::uint64_t number);

}  // namespace combdraft::store
