#pragma once
// Where pieces lie, "back left", kept: a name takes about a millisecond, and a list of
// sixty pieces is filled again after every edit.
#include <map>
#include <optional>
#include <vector>

#include "app/paint/head_art.h"
#include "engine/plan/plan.h"

namespace combdraft::paint {

class PlaceBook {
 public:
  /// Of these pieces from now on. Names are asked for anew only where a line changed, and all on
  /// another head. Precondition: the head's measures fit one head.
  void take(const plan::Plan& plan, const std::vector<plan::ItemId>& pieces);
  /// "back left"; "" for a piece that was not taken.
  QString of(const plan::ItemId& piece) const;

 private:
  struct Known {
    std::vector<plan::ScalpPoint> line;
    QString words;
  };
  std::optional<plan::Head> head_;
  std::optional<HeadScene> scene_;
  std::map<plan::ItemId, Known> known_;
};

}  // namespace combdraft::paint
