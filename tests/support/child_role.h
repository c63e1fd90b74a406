#pragma once
// What a test needs another process for: a part of this very program, started
// with --role NAME and arguments. `childMain` is called after the application
// was made.
#include <QCoreApplication>
#include <QProcess>
#include <QStringList>
#include <catch2/catch.hpp>
#include <cstdio>
#include <map>

namespace combdraft::tests {

using ChildMain = int (*)(const QStringList& arguments);

inline std::map<QString, ChildMain>& childRoles() {
  static std::map<QString, ChildMain> roles;
  return roles;
}

struct ChildRole {
  ChildRole(const char* name, ChildMain run) { childRoles()[QLatin1String(name)] = run; }
};

/// Tells the test that it may go on.
inline void tellReady() {
  std::fputs("ready\n", stdout);
  std::fflush(stdout);
}

/// A running child; killed when the test is over.
class Child {
 public:
  Child(const char* role, const QStringList& arguments) {
    process_.start(QCoreApplication::applicationFilePath(),
                   QStringList{QStringLiteral("--role"), QLatin1String(role)} + arguments);
    REQUIRE(process_.waitForStarted());
  }
  ~Child() { kill(); }
  Child(const Child&) = delete;
  Child& operator=(const Child&) = delete;

  void waitUntilReady() {
    while (!process_.canReadLine()) REQUIRE(process_.waitForReadyRead(30000));
    REQUIRE(process_.readLine() == "ready\n");
  }
  bool waitUntilEnded() { return process_.waitForFinished(60000); }
  void kill() {
    process_.kill();
    process_.waitForFinished();
  }
  QProcess& process() { return process_; }

 private:
  QProcess process_;
};

}  // namespace combdraft::tests
