// Loading and saving on a real disk, and with faults put in.
#include <algorithm>
#include <catch2/catch.hpp>
#include <filesystem>
#include <fstream>

#include <sys/stat.h>
#include <unistd.h>

#include "engine/plan/field_info.h"
#include "engine/plan/json_writer.h"
#include "engine/plan/plan_file.h"
#include "tests/engine/plan_samples.h"

using namespace combdraft;
using namespace combdraft::plan;

namespace {

// A folder of its own that goes away with the test.
class Folder {
 public:
  Folder() {
    char name[] = "/tmp/combdraft-test-XXXXXX";
    REQUIRE(::mkdtemp(name));
    path_ = name;
  }
  Folder(const Folder&) = delete;
  Folder& operator=(const Folder&) = delete;
  ~Folder() { std::filesystem::remove_all(path_); }
  std::string operator/(const std::string& name) const { return path_ + "/" + name; }
  std::vector<std::string> names() const {
    std::vector<std::string> found;
    for (const auto& entry : std::filesystem::directory_iterator(path_))
      found.push_back(entry.path().filename());
    std::sort(found.begin(), found.end());
    return found;
  }

 private:
  std::string path_;
};

void put(const std::string& path, const std::string& bytes) {
  std::ofstream(path, std::ios::binary) << bytes;
}
ErrorCode codeOf(const Result<Plan>& result) {
  REQUIRE_FALSE(result.ok());
  return result.error().code;
}

}  // namespace

TEST_CASE("a plan is saved, opened again and equal, and the one before is kept", "[plan][file]") {
  const Folder folder;
  const std::string path = folder / "first plan.json";
  const Plan first = samples::fullPlan(), second = samples::randomPlan(3);
  REQUIRE(savePlan(path, first).ok());
  CHECK(folder.names() == std::vector<std::string>{"first plan.json"});
  CHECK(*loadPlan(path) == first);
  REQUIRE(savePlan(path, second).ok());
  CHECK(*loadPlan(path) == second);
  CHECK(*loadPlan(path + std::string(kPreviousEnding)) == first);
  REQUIRE(savePlan(path, first).ok());
  CHECK(*loadPlan(path + std::string(kPreviousEnding)) == second);
  CHECK(folder.names() ==
        std::vector<std::string>{"first plan.json", "first plan.json.previous"});
}

TEST_CASE("files that cannot be opened say why, with their name", "[plan][file]") {
  const Folder folder;
  CHECK(codeOf(loadPlan(folder / "none.json")) == ErrorCode::FileMissing);
  CHECK(codeOf(loadPlan(folder / "none/deeper.json")) == ErrorCode::FileMissing);
  CHECK(codeOf(loadPlan(folder / "")) == ErrorCode::FileIsDirectory);
  put(folder / "empty.json", "");
  CHECK(codeOf(loadPlan(folder / "empty.json")) == ErrorCode::FileEmpty);
  put(folder / "blank.json", " \n\t\r\n");
  CHECK(codeOf(loadPlan(folder / "blank.json")) == ErrorCode::FileEmpty);
  REQUIRE(::mkfifo((folder / "pipe").c_str(), 0600) == 0);
  CHECK(codeOf(loadPlan(folder / "pipe")) == ErrorCode::FileUnreadable);
  REQUIRE(::symlink("loop", (folder / "loop").c_str()) == 0);
  CHECK(codeOf(loadPlan(folder / "loop")) == ErrorCode::FileUnreadable);
  const auto missing = loadPlan(folder / "none.json");
  CHECK(describe(missing.error()) == (folder / "none.json") + ": there is no such file");
  put(folder / "broken.json", "{\n  \"format\": \n");
  CHECK(loadPlan(folder / "broken.json").error().file == folder / "broken.json");
}

TEST_CASE("a file of two gigabytes is refused without being read", "[plan][file]") {
  const Folder folder;
  const std::string path = folder / "huge.json";
  put(path, "{");
  REQUIRE(::truncate(path.c_str(), 2'000'000'000) == 0);  // takes no room on the disk
  CHECK(codeOf(loadPlan(path)) == ErrorCode::FileTooLarge);
  CHECK(describe(loadPlan(path).error()) ==
        path + ": the file has 2000000000 bytes; a plan has at most 16777216");
}

TEST_CASE("saving where no file can be leaves nothing behind", "[plan][file]") {
  const Folder folder;
  const Plan plan = Plan::fresh(1);
  CHECK(savePlan(folder / "", plan).error().code == ErrorCode::FileIsDirectory);
  CHECK(savePlan(folder / "no/such/plan.json", plan).error().code == ErrorCode::FileUnwritable);
  REQUIRE(::mkfifo((folder / "pipe").c_str(), 0600) == 0);
  CHECK(savePlan(folder / "pipe", plan).error().code == ErrorCode::FileUnwritable);
  CHECK(folder.names() == std::vector<std::string>{"pipe"});
}

TEST_CASE("mode and links survive a save", "[plan][file]") {
  const Folder folder;
  const std::string path = folder / "plan.json";
  REQUIRE(savePlan(path, Plan::fresh(1)).ok());
  REQUIRE(::chmod(path.c_str(), 0640) == 0);
  REQUIRE(::symlink("plan.json", (folder / "link").c_str()) == 0);
  REQUIRE(::symlink((folder / "link").c_str(), (folder / "link2").c_str()) == 0);
  REQUIRE(savePlan(folder / "link2", Plan::fresh(2)).ok());
  struct stat info {};
  REQUIRE(::lstat((folder / "link2").c_str(), &info) == 0);
  CHECK(S_ISLNK(info.st_mode));
  REQUIRE(::lstat(path.c_str(), &info) == 0);
  CHECK(S_ISREG(info.st_mode));
  CHECK((info.st_mode & 0777) == 0640);
  CHECK(loadPlan(path)->info().number == 2);
  CHECK(loadPlan(path + ".previous")->info().number == 1);
  // A link to a file that is not there yet makes that file.
  REQUIRE(::symlink("later.json", (folder / "link3").c_str()) == 0);
  REQUIRE(savePlan(folder / "link3", Plan::fresh(3)).ok());
  CHECK(loadPlan(folder / "later.json")->info().number == 3);
}

TEST_CASE("bytes that change on their way to the disk are noticed", "[plan][file]") {
  // Removing the read-back from savePlan turns this red.
  struct Changing : Disk {
    std::size_t at = 0;
    bool cut = false;
    Result<void> writeNew(const std::string& path, std::string_view bytes,
                          const std::string& like) override {
      std::string wrong(bytes);
      if (cut)
        wrong.resize(at);
      else
        wrong[at] = static_cast<char>(wrong[at] ^ 1);
      return Disk::writeNew(path, wrong, like);
    }
  };
  const Folder folder;
  const std::string path = folder / "plan.json";
  const Plan before = Plan::fresh(11), after = samples::fullPlan();
  REQUIRE(savePlan(path, before).ok());
  const std::size_t size = writePlan(after).size();
  for (const bool cut : {false, true})
    for (std::size_t at = 0; at < size; at += 97) {
      Changing disk;
      disk.at = at;
      disk.cut = cut;
      const auto saved = savePlan(path, after, disk);
      REQUIRE_FALSE(saved.ok());
      CHECK(saved.error().code == ErrorCode::FileReadBackDiffers);
      CHECK(saved.error().file == path);
    }
  CHECK(*loadPlan(path) == before);
  CHECK(folder.names() == std::vector<std::string>{"plan.json"});  // no litter, no false previous
}

TEST_CASE("a plan that the file cannot hold is not called saved", "[plan][file]") {
  const Folder folder;
  Plan plan = Plan::fresh(1);
  Piece piece;
  piece.choice = "choice-1";
  piece.line = {{-20, 60}, {20, 60}};
  piece.thickness_mm = -1;  // the reader would refuse it
  plan.put("piece-1", piece);
  // What is wrong is named, with its place and the file it was to go to.
  const auto refused = savePlan(folder / "plan.json", plan);
  REQUIRE_FALSE(refused.ok());
  CHECK(describe(refused.error()) ==
        (folder / "plan.json") + ": /pieces/0/thickness_mm: found -1, allowed is 0.2 to 40 mm");
  Plan dated = Plan::fresh(1);
  Hair hair = dated.hair();
  hair.conditionDate = "2026/03/14";
  dated.put(kHairId, hair);
  const auto undated = savePlan(folder / "plan.json", dated);
  REQUIRE_FALSE(undated.ok());
  CHECK(undated.error().where == "/hair/conditionDate");
  CHECK(undated.error().file == folder / "plan.json");
  PlanInfo info = plan.info();
  plan.put("piece-1", ItemPtr{});
  info.extra["later"] = "not JSON";
  plan.put(kPlanId, info);
  CHECK(savePlan(folder / "plan.json", plan).error().code == ErrorCode::FileReadBackDiffers);
  CHECK(folder.names().empty());
}

TEST_CASE("on a disk without hard links the version before is a copy, also of a file that is empty", "[plan][file]") {
  struct WithoutLinks : Disk {
    Result<void> link(const std::string&, const std::string& name) override { return Error{ErrorCode::FileUnwritable, {}, {"no links here"}, name}; }
  };
  const Folder folder;
  const std::string path = folder / "plan.json", previous = path + std::string(kPreviousEnding);
  const std::string before = GENERATE(std::string(), std::string("no plan at all"), std::string(3 << 20, 'x'));
  CAPTURE(before.size());
  std::ofstream(path, std::ios::binary) << before;
  WithoutLinks disk;
  REQUIRE(savePlan(path, samples::fullPlan(), disk).ok());
  CHECK(*loadPlan(path) == samples::fullPlan());
  std::ifstream kept(previous, std::ios::binary);
  CHECK(std::string(std::istreambuf_iterator<char>(kept), {}) == before);
  CHECK(folder.names().size() == 2);
}

TEST_CASE("a save that stops after any step leaves a whole file", "[plan][file]") {
  // Each step in turn fails; then the old or the new plan stands there, whole.
  struct Stopping : Disk {
    int stopAt = 0, step = 0;
    std::vector<std::string> steps;
    bool stops(const char* name) {
      steps.emplace_back(name);
      return ++step == stopAt;
    }
    Error failed() const { return {ErrorCode::FileUnwritable, {}, {"no space left"}, "other"}; }
    Result<void> writeNew(const std::string& path, std::string_view bytes,
                          const std::string& like) override {
      if (stops("write")) {
        CHECK(Disk::writeNew(path, bytes.substr(0, bytes.size() / 2), like).ok());
        Disk::remove(path);
        return failed();
      }
      return Disk::writeNew(path, bytes, like);
    }
    Result<std::string> read(const std::string& path, std::size_t most) override {
      if (stops("read")) return failed();
      return Disk::read(path, most);
    }
    Result<void> keepAs(const std::string& path, const std::string& name) override {
      if (stops("keep previous")) return failed();
      return Disk::keepAs(path, name);
    }
    Result<void> rename(const std::string& from, const std::string& to) override {
      if (stops("replace")) return failed();
      return Disk::rename(from, to);
    }
    Result<void> syncFolder(const std::string& path) override {
      if (stops("sync folder")) return Error{ErrorCode::FileNotSynced, {}, {"the disk reports a fault"}, path};
      return Disk::syncFolder(path);
    }
  };
  const Plan before = Plan::fresh(11), after = samples::fullPlan();
  // The second time it reads whether the old file is another: not known, it is kept.
  const std::vector<std::string> order{"write", "read", "read", "keep previous", "replace", "sync folder"};
  for (int stopAt = 1; stopAt <= 7; ++stopAt) {
    const Folder folder;
    const std::string path = folder / "plan.json";
    REQUIRE(savePlan(path, before).ok());
    Stopping disk;
    disk.stopAt = stopAt;
    const auto saved = savePlan(path, after, disk);
    CAPTURE(stopAt);
    const bool goesOn = stopAt == 3 || stopAt == 7;
    CHECK(saved.ok() == goesOn);
    CHECK(disk.steps.size() == (goesOn ? order.size() : static_cast<std::size_t>(stopAt)));
    CHECK(std::equal(disk.steps.begin(), disk.steps.end(), order.begin()));
    CHECK(*loadPlan(path) == (goesOn || stopAt == 6 ? after : before));
    if (stopAt == 6) {
      CHECK(saved.error().code == ErrorCode::FileNotSynced);
      REQUIRE(savePlan(path, after).ok());  // tried again
    }
    if (folder.names().size() > 1) CHECK(*loadPlan(path + std::string(kPreviousEnding)) == before);
    if (!saved.ok()) CHECK(saved.error().file == path);
    for (const std::string& name : folder.names())
      CHECK((name == "plan.json" || name == "plan.json.previous"));
  }
}
