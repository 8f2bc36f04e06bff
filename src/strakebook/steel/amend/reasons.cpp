#include "strakebook/steel/amend/reasons.h"

#include <algorithm>

#include "strakebook/base/text.h"

namespace strakebook::amend {

namespace {

bool same_name(std::string_view written, std::string_view name) { return base::words(written) == base::words(name); }

template <class T> survey::Words reason_for(const T &one, const std::vector<survey::ChangeReason> &reasons) {
  for (const auto &reason : reasons)
    if (std::ranges::any_of(reason.what, [&](const survey::Words &what) { return names(what, one); })) return reason.why;
  return {};
}

} // namespace

bool names(const survey::Words &what, const Change &change) { return same_name(what.text, change.subject); }

bool names(const survey::Words &what, const Stands &stands) {
  return std::ranges::any_of(std::vector{stands.zone, "zone " + stands.zone, "decision " + stands.zone},
                             [&](const std::string &name) { return same_name(what.text, name); });
}

void give_reasons(Changes &changes, const survey::Amendment &amendment) {
  for (auto &change : changes.all) change.why = reason_for(change, amendment.changes);
  for (auto &stands : changes.stands) stands.why = reason_for(stands, amendment.stands);
}

} // namespace strakebook::amend
