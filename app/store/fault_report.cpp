#include "app/store/fault_report.h"

#include <cxxabi.h>
#include <execinfo.h>
#include <fcntl.h>
#include <signal.h>
#include <unistd.h>

#include <QDateTime>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QRegularExpression>
#include <QStandardPaths>
#include <algorithm>
#include <array>
#include <atomic>
#include <cstring>
#include <exception>
#include <thread>
#include <chrono>

#include "app/store/recovery.h"
#include "engine/base/expect.h"
#include "engine/plan/disk.h"

// First and last place of the program's own code, from the linker.
extern "C" const char __executable_start, etext;  // NOLINT

namespace combdraft::store {
namespace {

constexpr std::size_t kMostReport_bytes = 64u << 10;
constexpr int kMostPlaces = 40;  // of the call stack
constexpr std::array kSignals{SIGSEGV, SIGABRT, SIGBUS, SIGFPE, SIGILL};

// All that a signal handler may need, made beforehand.
struct Prepared {
  char path[4096] = {};
  char head[512] = {};
  std::array<std::atomic<char>, 121> context{};
  std::atomic<bool> isReported = false, isEnding = false;
};
Prepared prepared;

// ---- only what is safe in a signal handler -------------------------------------

void writeText(int file, const char* text) {
  std::size_t left = std::strlen(text);
  while (left > 0) {
    const ssize_t done = ::write(file, text, left);
    if (done <= 0) return;
    text += done;
    left -= static_cast<std::size_t>(done);
  }
}

void writeHex(int file, std::uintptr_t number) {
  constexpr int kDigits = 2 * sizeof number;
  char text[kDigits + 1] = {};
  char* first = text + kDigits;
  do {
    *--first = "0123456789abcdef"[number & 15];
    number >>= 4;
  } while (number != 0);
  writeText(file, "0x");
  writeText(file, first);
}

// Places in the program's own code, counted from its start: they name no folder.
void writeStack(int file) {
  void* places[kMostPlaces];
  const int count = ::backtrace(places, kMostPlaces);
  const auto begin = reinterpret_cast<std::uintptr_t>(&__executable_start);
  const auto end = reinterpret_cast<std::uintptr_t>(&etext);
  writeText(file, "Places in the program:");
  for (int i = 0; i < count; ++i) {
    const auto place = reinterpret_cast<std::uintptr_t>(places[i]);
    if (place < begin || place >= end) continue;
    writeText(file, " +");
    writeHex(file, place - begin);
  }
  writeText(file, "\n");
}

// The first reason is the one that counts; what follows comes from ending.
void writeReport(const char* what, const char* more) {
  if (prepared.path[0] == 0 || prepared.isReported.exchange(true)) return;
  const int file = ::open(prepared.path, O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0600);
  if (file < 0) return;
  writeText(file, prepared.head);
  writeText(file, "What happened: ");
  writeText(file, what);
  writeText(file, "\n");
  writeText(file, more);
  char context[121];
  for (std::size_t i = 0; i < sizeof context; ++i) context[i] = prepared.context[i];
  context[120] = 0;
  if (context[0] != 0) {
    writeText(file, "Looked at: ");
    writeText(file, context);
    writeText(file, "\n");
  }
  writeStack(file);
  (void)::fsync(file);
  (void)::close(file);
}

const char* nameOf(int signal) {
  switch (signal) {
    case SIGSEGV: return "signal SIGSEGV (memory that is not there)";
    case SIGABRT: return "signal SIGABRT (a part of the program stopped it)";
    case SIGBUS: return "signal SIGBUS (memory that cannot be used)";
    case SIGFPE: return "signal SIGFPE (a division that cannot be)";
    case SIGILL: return "signal SIGILL (an instruction that is none)";
  }
  return "a signal";
}

extern "C" void combdraftFatalSignal(int signal) {
  writeReport(nameOf(signal), "");
  // The system's own way from here, so that who started the program sees it.
  ::signal(signal, SIG_DFL);
  ::raise(signal);
}

// ---- ordinary hooks --------------------------------------------------------

// Once. When the same thread comes again, it was keeping the work that broke; another
// one waits for the first, which ends the program: several threads may break the same
// promise at once.
void keepWork() {
  static std::atomic<std::thread::id> ending;
  if (!prepared.isEnding.exchange(true)) {
    ending = std::this_thread::get_id();
    Recovery::writeLast();
    return;
  }
  constexpr int kTurns = 1000;
  for (int i = 0; i < kTurns && ending.load() != std::this_thread::get_id(); ++i)
    std::this_thread::sleep_for(std::chrono::milliseconds(10));
}

// Nothing leaves it: whoever catches would go on after a broken promise.
void expectationHook(const std::string& message) noexcept {
  // Keeping the work may break another: the first reason is said first.
  static thread_local std::string reasons;
  reasons += (reasons.empty() ? "" : "While the work was kept:\n") + reportOfExpectation(message);
  keepWork();  // not again when it was keeping the work that broke it
  writeReport("a broken expectation", reasons.c_str());
}

[[noreturn]] void terminateHook() {
  keepWork();
  std::string type = "none";
  // Only its type: what it says may hold somebody's words.
  if (const std::type_info* info = abi::__cxa_current_exception_type()) {
    int status = 0;
    char* readable = abi::__cxa_demangle(info->name(), nullptr, nullptr, &status);
    type = status == 0 && readable ? readable : info->name();
  }
  writeReport("an exception that nobody took", ("Exception: " + type + "\n").c_str());
  std::abort();
}

void copyInto(char* place, std::size_t size, const std::string& text) {
  const std::size_t length = std::min(size - 1, text.size());
  std::memcpy(place, text.data(), length);
  place[length] = 0;
}

std::string keptOperands(const QString& operands) {
  static const QRegularExpression harmless(QStringLiteral(
      R"(^(-?[0-9.]+([eE][-+]?[0-9]+)?|-?nan|-?inf|true|false|plan|head|hair|(piece|section|note|choice|formula|treatment)-[0-9]+)$)"));
  QStringList kept;
  int leftOut = 0;
  for (const QString& word : operands.split(QRegularExpression(QStringLiteral("\\s+")), Qt::SkipEmptyParts))
    if (harmless.match(word).hasMatch())
      kept << word;
    else
      ++leftOut;
  if (leftOut > 0) kept << QStringLiteral("(%1 left out)").arg(leftOut);
  return kept.join(u' ').toStdString();
}

}  // namespace

QString faultFolder() {
  return QStandardPaths::writableLocation(QStandardPaths::AppDataLocation) + QStringLiteral("/faults");
}

std::string reportOfExpectation(const std::string& message) {
  static const QRegularExpression parts(QStringLiteral(R"(^expectation broken: (.*?) at (\S*):(\d+) with (.*)$)"),
                                        QRegularExpression::DotMatchesEverythingOption);
  const auto match = parts.match(QString::fromStdString(message));
  if (!match.hasMatch()) return "Expectation: not known\n";
  // The folder that the program was built in is somebody's own.
  QString place = match.captured(2);
  for (const char* room : {"/engine/", "/app/", "/tests/"})
    if (const qsizetype at = place.lastIndexOf(QLatin1String(room)); at >= 0) {
      place = place.mid(at + 1);
      break;
    }
  if (place.startsWith(u'/')) place = place.section(u'/', -1);
  return "Expectation: " + match.captured(1).toStdString() + "\nWhere: " + place.toStdString() + ":" +
         match.captured(3).toStdString() + "\nOperands: " + keptOperands(match.captured(4)) + "\n";
}

void installFaultHooks(const QString& folder) {
  if (QDir().mkpath(folder))
    QFile::setPermissions(folder, QFileDevice::ReadOwner | QFileDevice::WriteOwner | QFileDevice::ExeOwner);
  const QString name = QStringLiteral("/fault-%1-%2.txt")
                           .arg(QDateTime::currentMSecsSinceEpoch())
                           .arg(static_cast<qint64>(::getpid()));
  copyInto(prepared.path, sizeof prepared.path, QFile::encodeName(folder + name).toStdString());
  copyInto(prepared.head, sizeof prepared.head,
           "Combdraft " COMBDRAFT_VERSION ", Qt " + std::string(qVersion()) + ", started " +
               QDateTime::currentDateTimeUtc().date().toString(Qt::ISODate).toStdString() + "\n");
  prepared.isReported = false;
  prepared.isEnding = false;
  void* warm[1];
  (void)::backtrace(warm, 1);  // loads what it needs, which a handler may not
  setExpectHook(expectationHook);
  std::set_terminate(terminateHook);
  // A stack that ran over leaves no room for the handler on itself.
  static std::array<char, 64 * 1024> spare;
  stack_t stack{};
  stack.ss_sp = spare.data();
  stack.ss_size = spare.size();
  ::sigaltstack(&stack, nullptr);
  struct sigaction action {};
  action.sa_handler = combdraftFatalSignal;
  action.sa_flags = SA_ONSTACK | SA_RESETHAND;
  ::sigemptyset(&action.sa_mask);
  for (const int signal : kSignals) ::sigaction(signal, &action, nullptr);
}

void noteForFaults(const std::string& words) {
  for (std::size_t i = 0; i + 1 < prepared.context.size(); ++i)
    prepared.context[i] = i < words.size() ? words[i] : '\0';
}

std::vector<FaultReport> findFaultReports(const QString& folder) {
  std::vector<FaultReport> reports;
  plan::Disk disk;
  const QDir dir(folder);
  for (const QString& name : dir.entryList({QStringLiteral("fault-*.txt")}, QDir::Files, QDir::Name | QDir::Reversed)) {
    const QString path = dir.filePath(name);
    auto bytes = disk.read(path.toStdString(), kMostReport_bytes);
    if (bytes) {
      reports.push_back({path, QString::fromStdString(*bytes)});
    } else {
      Error error = bytes.error();
      error.file.clear();  // the page shows no folder
      reports.push_back({path, QString::fromStdString(describe(error))});
    }
  }
  return reports;
}

Result<void> removeFaultReports(const std::vector<FaultReport>& reports) {
  for (const FaultReport& report : reports)
    if (!QFile::remove(report.path) && QFileInfo::exists(report.path))
      return Error{ErrorCode::FileUnwritable, {}, {"it cannot be removed"}, report.path.toStdString()};
  return {};
}

}  // namespace combdraft::store
