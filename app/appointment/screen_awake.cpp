#include "app/appointment/screen_awake.h"

#include <QCoreApplication>
#include <QDBusMessage>
#include <QDBusPendingCallWatcher>
#include <QDBusPendingReply>
#include <QFile>
#include <QPointer>

namespace combdraft::appointment {
namespace {

QDBusMessage callOf(const char* method) {
  const QString service = QStringLiteral("org.freedesktop.ScreenSaver");
  return QDBusMessage::createMethodCall(service, QStringLiteral("/org/freedesktop/ScreenSaver"), service, QString::fromLatin1(method));
}

}  // namespace

std::optional<QDBusConnection> ScreenAwake::sessionBus() {
  const QString socket = qEnvironmentVariable("XDG_RUNTIME_DIR") + QStringLiteral("/bus");
  if (!qEnvironmentVariableIsSet("DBUS_SESSION_BUS_ADDRESS") && !QFile::exists(socket)) return std::nullopt;
  return QDBusConnection::sessionBus();
}

ScreenAwake::ScreenAwake(std::optional<QDBusConnection> bus, QObject* parent) : QObject(parent), bus_(std::move(bus)) {}

ScreenAwake::~ScreenAwake() {
  blockSignals(true);
  letGo();
}

void ScreenAwake::keep(const QString& why) {
  if (state_ == State::Asked || state_ == State::Kept) return;
  if (!bus_ || !bus_->isConnected()) return setState(State::Refused);
  setState(State::Asked);
  QDBusMessage call = callOf("Inhibit");
  call << QCoreApplication::applicationName() << why;
  // Not a child of this: what is granted after this object went away must still be given back.
  auto* answer = new QDBusPendingCallWatcher(bus_->asyncCall(call), QCoreApplication::instance());
  connect(answer, &QDBusPendingCallWatcher::finished, answer, [owner = QPointer<ScreenAwake>(this), bus = *bus_](QDBusPendingCallWatcher* done) mutable {
    const QDBusPendingReply<uint> reply = *done;
    done->deleteLater();
    if (owner && owner->state_ == State::Asked) {
      if (reply.isValid()) owner->cookie_ = reply.value();
      return owner->setState(reply.isValid() ? State::Kept : State::Refused);
    }
    if (!reply.isValid()) return;
    QDBusMessage back = callOf("UnInhibit");  // let go before it was granted
    back << reply.value();
    bus.asyncCall(back);
  });
}

void ScreenAwake::letGo() {
  if (cookie_ && bus_) {
    QDBusMessage call = callOf("UnInhibit");
    call << *cookie_;
    bus_->asyncCall(call);
  }
  cookie_.reset();
  setState(State::LetGo);
}

void ScreenAwake::setState(State state) {
  if (state_ == state) return;
  state_ = state;
  Q_EMIT stateChanged();
}

}  // namespace combdraft::appointment
