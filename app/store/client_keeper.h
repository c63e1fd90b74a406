#pragma once
// One client, open. Every change is kept by itself: a worker writes the newest state
// at the latest half a second after the first change that is not written; the window
// never waits. Windows with plans of the same client share one keeper, so that none
// overwrites what the other typed. Nothing of it goes into logs or reports.
#include <QObject>
#include <QTimer>
#include <condition_variable>
#include <functional>
#include <memory>
#include <mutex>
#include <optional>
#include <thread>

#include "app/store/client_folder.h"

namespace combdraft::store {

class ClientKeeper : public QObject, public std::enable_shared_from_this<ClientKeeper> {
  Q_OBJECT

 public:
  /// The client of that number; the one that is open already where there is one.
  static std::shared_ptr<ClientKeeper> of(const QString& root, std::uint64_t number,
                                          std::shared_ptr<plan::Disk> disk = std::make_shared<plan::Disk>());
  /// Tries once more to write (see `writeNow`); what still fails then is lost, so that
  /// whoever lets go of the last one asks `writeNow` before.
  ~ClientKeeper() override;

  const ClientFile& file() const { return file_; }
  std::uint64_t number() const { return file_.number; }
  const QString& root() const { return root_; }
  QString folder() const { return clientFolder(root_, file_.number); }
  ClientFolder::Standing standing() const { return standing_; }
  /// Whether what is typed is kept: nobody else has it, and it could be read.
  bool mayEdit() const;
  /// What there is to say about opening it: set aside, open elsewhere; "" = nothing.
  const QString& trouble() const { return trouble_; }

  /// Makes a change and keeps it. Health answers, tests and photos that come without
  /// consent are not taken.
  void edit(const std::function<void(ClientFile&)>& change);
  /// Takes consent back: health answers, tests and photos go, from the disk too. Returns
  /// how many photos could not be removed: these keep their entries, and the consent
  /// stays with them until it is taken back once more and they are gone.
  std::size_t takeConsentBack();
  /// Reads, checks and keeps photos, each on a thread of its own; `photoAdded` or
  /// `photoRefused` tells of each.
  void addPhotos(const QStringList& paths, PhotoOf of);
  /// How many were added and are not read yet.
  int photosOnTheWay() const { return photosOnTheWay_; }
  /// Of every client, shown or not.
  static int photosOnTheWayOfAll();
  /// The file goes first, then its entry. False: the file could not be removed, and
  /// its entry stays.
  bool removePhoto(const std::string& file);

  /// Waits until everything is on the disk (at most five seconds); the error of the
  /// last attempt otherwise.
  Result<void> writeNow();
  /// Takes everything of this client away; the keeper is empty then. Waits at most five
  /// seconds for a write that is under way.
  Result<void> remove();

 Q_SIGNALS:
  void changed();
  void photoAdded();
  /// `name` = the file's name without its folder.
  void photoRefused(const QString& name, const combdraft::Error& error);
  /// It could not be written; it is tried again.
  void failed(const QString& why);
  void written();

 private:
  ClientKeeper(const QString& root, std::uint64_t number, std::shared_ptr<plan::Disk> disk);
  void work(const std::stop_token& stop);
  void keep();
  void finished(const Result<void>& result);
  void photoRead(const QString& name, PhotoOf of, Result<std::string> bytes);

  const QString root_;
  ClientFile file_;
  ClientFolder::Standing standing_ = ClientFolder::Standing::None;
  QString trouble_;
  int photosOnTheWay_ = 0;

  // shared, under the mutex
  std::mutex mutex_;
  std::timed_mutex disk_mutex_;  ///< while the folder is written
  std::condition_variable_any wake_, done_;
  std::optional<ClientFile> newest_;  ///< not written yet
  bool isWriting_ = false, isHurried_ = false;
  int failures_ = 0;
  std::optional<Error> lastError_;

  const std::shared_ptr<plan::Disk> disk_;
  ClientFolder folder_;  ///< under disk_mutex_
  std::jthread worker_;  ///< last: stops before the rest goes
};

}  // namespace combdraft::store
