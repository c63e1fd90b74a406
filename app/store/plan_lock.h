#pragma once
// One writer for one plan file: a hidden file beside it says which program has
// it open. Links are followed, so that two names of one file are one plan. What
// a program that ended has left behind is taken over, whatever the clock says.
#include <QLockFile>
#include <QString>
#include <memory>

namespace combdraft::store {

/// Who has a plan open, as far as the lock says.
struct PlanHolder {
  qint64 process = 0;  ///< 0 = not known
  QString program, computer;
  bool isThisProgram = false;  ///< another window of this very process
};

class PlanLock {
 public:
  enum class Standing {
    None,        ///< nothing asked for, or given back
    Held,        ///< nobody else will write this plan without being told
    Others,      ///< another program or window has it
    CannotTell,  ///< no file can be made there: others cannot be kept out
  };

  /// Gives back what is held and takes the lock of `path`. With Others, what
  /// was held before is still held.
  Standing take(const QString& path);
  /// Takes it from a holder that has no name (a lock file cut short) or that no
  /// process stands behind, as far as the disk can tell (another computer's name is
  /// left by a backup too); from one that runs it cannot be taken, and nothing is
  /// held then.
  Standing takeAnyway(const QString& path);
  void giveBack();

  Standing standing() const { return standing_; }
  /// Whether the lock of this very file is held.
  bool isHeldFor(const QString& path) const;
  /// Who had it when `take` said Others.
  const PlanHolder& holder() const { return holder_; }

  /// ".NAME.in-use" beside the file that `path` leads to.
  static QString lockFileOf(const QString& path);

 private:
  std::unique_ptr<QLockFile> lock_;
  Standing standing_ = Standing::None;
  PlanHolder holder_;
};

}  // namespace combdraft::store
