#pragma once
// Two choices side by side, or today and a choice: the same view of both, and
// their readings region by region with what lies between them. How it is worn,
// when and in which light follow the bar above; edits show at once.
//
// Both sides come from one engine, one after the other: they share the hair and
// differ in colour only. `next` says what to ask for; `set` takes what came.
#include <QComboBox>
#include <QLabel>
#include <QTableWidget>
#include <QWidget>
#include <array>
#include <memory>
#include <optional>

#include "app/document/document_controller.h"
#include "app/document/view_state.h"
#include "app/live/look_result.h"
#include "app/paint/scene.h"

class QPushButton;

namespace combdraft::desk {

class ComparePicture;

/// What lies between two readings: "0.8 lighter", "the same" below 1 L*.
QString differenceText(const look::Reading& left, const look::Reading& right);

class CompareView : public QWidget {
  Q_OBJECT

 public:
  CompareView(document::DocumentController& controller, document::ViewState& view, QWidget* parent = nullptr);

  struct Ask {
    look::LookSettings settings;
    std::vector<look::PictureRequest> pictures;
  };
  /// The side whose look is not of this state of the plan and was asked for
  /// longest ago; nothing when both are up to date.
  std::optional<Ask> next();
  void set(const std::shared_ptr<const live::LookResult>& result);
  /// Nothing known yet: another plan was opened.
  void clear();
  /// Shows today, or the first other choice, beside the active one.
  void begin();

  enum Column { Where, Left, Right, Difference, Wanted };
  QComboBox* side(int side) { return sides_[static_cast<std::size_t>(side)].which; }
  QComboBox* viewChoice() { return viewChoice_; }
  QTableWidget* table() { return table_; }
  ComparePicture* picture(int side) { return sides_[static_cast<std::size_t>(side)].picture; }
  QString stateText(int side) const { return sides_[static_cast<std::size_t>(side)].state->text(); }

 Q_SIGNALS:
  /// Something to ask for may have come up.
  void lookWanted();
  void closed();

 protected:
  void keyPressEvent(QKeyEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  struct Asked {
    std::uint64_t revision = 0;
    look::LookSettings settings;
    look::PictureRequest picture;
    bool isSame(const Asked& other) const {
      return revision == other.revision && settings == other.settings && picture.view == other.picture.view &&
             picture.pixel_mm == other.picture.pixel_mm;
    }
  };
  struct Side {
    QComboBox* which = nullptr;
    QLabel* state = nullptr;
    ComparePicture* picture = nullptr;
    std::optional<Asked> asked;  ///< last
    std::optional<Asked> known;  ///< what `look` answers in full
    std::uint64_t turn = 0;
    std::shared_ptr<const live::LookResult> look;
  };

  QWidget* buildSide(Side& side, const QString& name);
  void buildTable();
  void fillChoices();
  void fillTable();
  void showPictures();
  void showStates();
  head::ViewName view() const;
  /// "" = today.
  plan::ItemId choiceOf(const Side& side) const;
  QString nameOf(const Side& side) const;
  Asked wantedOf(const Side& side) const;

  document::DocumentController& controller_;
  document::ViewState& viewState_;
  std::array<Side, 2> sides_;
  QComboBox* viewChoice_;
  QTableWidget* table_;
  std::shared_ptr<const paint::Scene> scene_;
  std::uint64_t turns_ = 0;
};

}  // namespace combdraft::desk
