#include "app/store/client_file.h"

#include <algorithm>

namespace combdraft::store {
namespace {

QDate dateOf(const std::string& iso) { return QDate::fromString(QString::fromStdString(iso), Qt::ISODate); }

}  // namespace

bool hasConsent(const ClientFile& file) {
  return file.consent && !file.consent->purpose.empty() && !file.consent->date.empty();
}

ClientFile withoutConsent(const ClientFile& file) {
  ClientFile rest = file;
  rest.consent.reset();
  rest.health = {};
  rest.tests.clear();
  rest.photos.clear();
  return rest;
}

bool isEmpty(const ClientFile& file) {
  ClientFile nothing;
  nothing.number = file.number;
  nothing.begun = file.begun;
  return file == nothing;
}

const Offer* findOffer(const ClientFile& file, std::uint64_t plan, const plan::ItemId& choice) {
  const auto it = std::find_if(file.offers.begin(), file.offers.end(),
                               [&](const Offer& offer) { return offer.plan == plan && offer.choice == choice; });
  return it == file.offers.end() ? nullptr : &*it;
}

Offer& offerFor(ClientFile& file, std::uint64_t plan, const plan::ItemId& choice) {
  if (const Offer* found = findOffer(file, plan, choice)) return file.offers[static_cast<std::size_t>(found - file.offers.data())];
  Offer offer;
  offer.plan = plan;
  offer.choice = choice;
  return file.offers.emplace_back(std::move(offer));
}

QDate dueOn(const ClientTest& test, const ClientPolicy& policy) {
  if (!test.due.empty()) return dateOf(test.due);
  const int months = policy.test_months[static_cast<std::size_t>(test.kind)];
  const QDate made = dateOf(test.date);
  return months > 0 && made.isValid() ? made.addMonths(months) : QDate();
}

QDate lastOccasion(const ClientFile& file) {
  QDate last = dateOf(file.begun);
  const auto take = [&last](const std::string& iso) {
    if (const QDate date = dateOf(iso); date.isValid() && (!last.isValid() || date > last)) last = date;
  };
  take(file.kept);
  if (file.consent) take(file.consent->date);
  for (const Visit& visit : file.visits) take(visit.date);
  return last;
}

bool isOverKept(const ClientFile& file, const ClientPolicy& policy, const QDate& today) {
  const QDate last = lastOccasion(file);
  return policy.keep_months > 0 && last.isValid() && last.addMonths(policy.keep_months) < today;
}

}  // namespace combdraft::store

namespace combdraft::plan {

template <>
std::span<const WordEntry<store::Answer>> words<store::Answer>() {
  using E = store::Answer;
  static constexpr WordEntry<E> kWords[] = {{E::NotAsked, "not asked"}, {E::No, "no"}, {E::Yes, "yes"}, {E::Unknown, "not known"}};
  return kWords;
}

template <>
std::span<const WordEntry<store::ScalpFound>> words<store::ScalpFound>() {
  using E = store::ScalpFound;
  static constexpr WordEntry<E> kWords[] = {
      {E::NotLooked, "not looked at"}, {E::Nothing, "nothing found"}, {E::Something, "something found"}, {E::Unsure, "not sure"}};
  return kWords;
}

template <>
std::span<const WordEntry<store::TestKind>> words<store::TestKind>() {
  using E = store::TestKind;
  static constexpr WordEntry<E> kWords[] = {{E::Skin, "skin"},         {E::Strand, "strand"}, {E::Elasticity, "elasticity"},
                                            {E::Porosity, "porosity"}, {E::Metal, "metal"},   {E::Other, "other"}};
  return kWords;
}

template <>
std::span<const WordEntry<store::PhotoOf>> words<store::PhotoOf>() {
  using E = store::PhotoOf;
  static constexpr WordEntry<E> kWords[] = {
      {E::Wanted, "wanted"}, {E::NotWanted, "not wanted"}, {E::Today, "today"}, {E::Result, "result"}};
  return kWords;
}

}  // namespace combdraft::plan
