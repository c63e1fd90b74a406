#pragma once
// What the pages of settings are laid out from.
#include <QVBoxLayout>
#include <functional>

namespace combdraft::desk {

/// Gives a page its margins, its title and the button that leads back; returns
/// the column its content goes into.
QVBoxLayout* pageColumn(QWidget* page, const QString& title, std::function<void()> back);

}  // namespace combdraft::desk
