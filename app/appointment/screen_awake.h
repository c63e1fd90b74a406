#pragma once
// Keeps the screen from going dark while hair is under product: asks the desktop over
// the session's own message bus (org.freedesktop.ScreenSaver, Inhibit and UnInhibit; no
// network). A desktop without it says no; then the window tells, and nothing else changes.
#include <QDBusConnection>
#include <QObject>
#include <optional>

namespace combdraft::appointment {

class ScreenAwake : public QObject {
  Q_OBJECT

 public:
  /// The session's bus where one runs; none is ever started for this.
  static std::optional<QDBusConnection> sessionBus();
  explicit ScreenAwake(std::optional<QDBusConnection> bus = sessionBus(), QObject* parent = nullptr);
  ~ScreenAwake() override;

  enum class State { LetGo, Asked, Kept, Refused };
  State state() const { return state_; }
  /// Asks once; `why` is what the desktop may show. Asking again while it is kept does nothing.
  void keep(const QString& why);
  void letGo();

 Q_SIGNALS:
  void stateChanged();

 private:
  void setState(State state);

  std::optional<QDBusConnection> bus_;
  State state_ = State::LetGo;
  std::optional<uint> cookie_;
};

}  // namespace combdraft::appointment
