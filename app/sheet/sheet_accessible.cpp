#include "app/sheet/sheet_accessible.h"

#include <QAccessible>
#include <QAccessibleWidget>
#include <QPointer>
#include <map>

#include "app/paint/describe_piece.h"
#include "app/paint/diagram.h"
#include "app/sheet/head_sheet.h"

namespace combdraft::sheet {
namespace {

// One item. Knows it by id, so that it survives every edit.
class ItemInterface : public QAccessibleInterface, public QAccessibleActionInterface {
 public:
  ItemInterface(HeadSheet& sheet, plan::ItemId id) : sheet_(&sheet), id_(std::move(id)) {}

  const plan::ItemId& id() const { return id_; }
  bool isValid() const override { return sheet_ && !sheet_->describe(id_).isEmpty(); }
  QObject* object() const override { return nullptr; }
  QAccessibleInterface* parent() const override {
    return sheet_ ? QAccessible::queryAccessibleInterface(sheet_) : nullptr;
  }
  QAccessibleInterface* child(int) const override { return nullptr; }
  QAccessibleInterface* childAt(int, int) const override { return nullptr; }
  int childCount() const override { return 0; }
  int indexOfChild(const QAccessibleInterface*) const override { return -1; }
  QAccessible::Role role() const override { return QAccessible::ListItem; }
  void setText(QAccessible::Text, const QString&) override {}

  QString text(QAccessible::Text kind) const override {
    if (!isValid()) return {};
    if (kind == QAccessible::Name) return sheet_->describe(id_);
    const paint::PieceShape* piece = sheet_->scene().find(id_);
    if (kind == QAccessible::Description && piece) return QString::fromStdString(piece->piece->note);
    return {};
  }
  QAccessible::State state() const override {
    QAccessible::State state;
    state.focusable = state.selectable = true;
    if (!isValid()) {
      state.invalid = true;
      return state;
    }
    state.selected = sheet_->isSelected(id_);
    state.focused = sheet_->hasFocus() && state.selected;
    return state;
  }
  QRect rect() const override {
    if (!isValid()) return {};
    const QRectF px = sheet_->placeOnSheet(id_);
    if (px.isEmpty()) return {};
    return QRect(sheet_->mapToGlobal(px.topLeft().toPoint()), px.size().toSize());
  }
  void* interface_cast(QAccessible::InterfaceType type) override {
    return type == QAccessible::ActionInterface ? static_cast<QAccessibleActionInterface*>(this)
                                                : nullptr;
  }
  QStringList actionNames() const override { return {pressAction(), setFocusAction()}; }
  void doAction(const QString&) override {
    if (!isValid()) return;
    sheet_->setFocus();
    sheet_->selectOnly(id_);
  }
  QStringList keyBindingsForAction(const QString&) const override { return {}; }

 private:
  QPointer<HeadSheet> sheet_;
  plan::ItemId id_;
};

class SheetInterface : public QAccessibleWidget {
 public:
  explicit SheetInterface(HeadSheet& sheet) : QAccessibleWidget(&sheet, QAccessible::List), sheet_(sheet) {}
  ~SheetInterface() override {
    for (const auto& [id, known] : known_) QAccessible::deleteAccessibleInterface(known);
  }

  int childCount() const override { return static_cast<int>(sheet_.items().size()); }
  QAccessibleInterface* child(int index) const override {
    const std::vector<plan::ItemId> items = sheet_.items();
    if (index < 0 || index >= static_cast<int>(items.size())) return nullptr;
    const plan::ItemId& id = items[static_cast<std::size_t>(index)];
    const auto found = known_.find(id);
    if (found != known_.end()) return QAccessible::accessibleInterface(found->second);
    auto* made = new ItemInterface(sheet_, id);  // owned by Qt's registry
    known_[id] = QAccessible::registerAccessibleInterface(made);
    return made;
  }
  int indexOfChild(const QAccessibleInterface* child) const override {
    for (int i = 0; i < childCount(); ++i)
      if (this->child(i) == child) return i;
    return -1;
  }
  QAccessibleInterface* childAt(int x, int y) const override {
    for (int i = 0; i < childCount(); ++i)
      if (child(i)->rect().contains(x, y)) return child(i);
    return nullptr;
  }
  QAccessibleInterface* focusChild() const override {
    for (int i = 0; i < childCount(); ++i)
      if (child(i)->state().focused) return child(i);
    return nullptr;
  }

 private:
  HeadSheet& sheet_;
  mutable std::map<plan::ItemId, QAccessible::Id> known_;
};

QAccessibleInterface* sheetInterface(const QString& name, QObject* object) {
  if (name != QLatin1String("combdraft::sheet::HeadSheet")) return nullptr;
  auto* sheet = qobject_cast<HeadSheet*>(object);
  return sheet ? new SheetInterface(*sheet) : nullptr;
}

}  // namespace

void installSheetAccessibility() {
  static const bool kInstalled = [] {
    QAccessible::installFactory(sheetInterface);
    return true;
  }();
  Q_UNUSED(kInstalled)
}

void announceSelectedItem(HeadSheet& sheet) {
  if (!QAccessible::isActive() || !sheet.hasFocus()) return;
  const std::vector<plan::ItemId> items = sheet.items();
  for (std::size_t i = 0; i < items.size(); ++i) {
    if (!sheet.isSelected(items[i])) continue;
    QAccessibleEvent focus(&sheet, QAccessible::Focus);
    focus.setChild(static_cast<int>(i));
    QAccessible::updateAccessibility(&focus);
    return;
  }
}

}  // namespace combdraft::sheet
