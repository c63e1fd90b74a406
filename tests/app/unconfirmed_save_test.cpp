// A save that only its last step fails: the new file stands, and the disk does not confirm
// that its name will outlive a power cut.
#include <catch2/catch.hpp>

#include <sys/stat.h>
#include <sys/syscall.h>
#include <unistd.h>

#include <QFileDialog>
#include <atomic>
#include <cerrno>

#include "app/desk/message_bar.h"
#include "tests/app/desk_actions.h"

namespace {

std::atomic<bool> failsForFolders = false;  // autosave's worker asks too

struct FoldersFail {
  FoldersFail() { failsForFolders = true; }
  FoldersFail(const FoldersFail&) = delete;
  FoldersFail& operator=(const FoldersFail&) = delete;
  ~FoldersFail() { failsForFolders = false; }
};

}  // namespace

// Stands before the C library's for the whole test program; fails only when told to.
extern "C" int fsync(int file) {
  struct stat what {};
  if (failsForFolders && ::fstat(file, &what) == 0 && S_ISDIR(what.st_mode)) {
    errno = EIO;
    return -1;
  }
  return static_cast<int>(::syscall(SYS_fsync, file));
}

namespace combdraft {
namespace {

using tests::actionOf;
using tests::Desk;

double white(const QString& path) { return store::openPlan(path)->plan.hair().white_frac; }

TEST_CASE("a save that the disk does not confirm is said, tried again, and keeps the version before", "[watch][save]") {
  Desk desk;
  const QString path = desk.file("plan");
  desk.window->openPath(path);
  desk.edit();
  bool isAlarm = false;
  {
    const FoldersFail fail;
    actionOf(desk, "file.save")->trigger();
    isAlarm = desk.window->messages().text().contains(QStringLiteral("plan.json was written, but the disk did not confirm it (the disk reports a fault)"));
  }
  CHECK(isAlarm);
  CHECK(desk.window->controller().isModified());  // not called saved
  CHECK(white(path) == 0.77);
  CHECK(white(path + QStringLiteral(".previous")) == 0.1);
  // The recovery copy stays until a save is sure.
  REQUIRE(QTest::qWaitFor([&] { return !desk.window->recovery().folder().isEmpty(); }));
  desk.window->fileWatch().look();
  CHECK(desk.window->messages().text().contains(QStringLiteral("did not confirm")));  // its own bytes are nobody else's

  {
    const FoldersFail fail;
    desk.press("Try again");
    CHECK(desk.window->messages().text().contains(QStringLiteral("did not confirm")));
    CHECK(desk.window->controller().isModified());
  }
  desk.press("Try again");
  CHECK_FALSE(desk.window->messages().isShowing());
  CHECK_FALSE(desk.window->controller().isModified());
  CHECK(white(path) == 0.77);
  CHECK(white(path + QStringLiteral(".previous")) == 0.1);  // the same bytes once more are no version
}

TEST_CASE("a first save that the disk does not confirm stays unsaved work", "[watch][save]") {
  Desk desk;
  desk.edit();
  actionOf(desk, "file.back")->trigger();  // from the start page
  const QString path = desk.dir.filePath(QStringLiteral("new.json"));
  {
    const FoldersFail fail;
    actionOf(desk, "file.saveAs")->trigger();
    auto* dialog = desk.window->findChild<QFileDialog*>();
    REQUIRE(dialog);
    Q_EMIT dialog->fileSelected(path);
    delete dialog;
    CHECK(desk.window->messages().text().contains(QStringLiteral("new.json was written, but the disk did not confirm it")));
  }
  CHECK(desk.window->controller().isModified());
  desk.press("Try again");
  CHECK_FALSE(desk.window->controller().isModified());
  CHECK(desk.window->controller().file().path == path);
  CHECK(white(path) == 0.77);
}

}  // namespace
}  // namespace combdraft
