#include "strakebook/base/decimal.h"
#include "strakebook/steel/review/findings.h"

namespace strakebook::review {

namespace {

using afloat::Lack;

std::string when(const afloat::Afloat &found) {
  return found.steps.empty() ? "as found" : "with the steel of the schedule";
}

void low(Findings &to, const Subject &subject, const std::optional<Length> &height, Length least, const std::string &what,
         const std::string &name) {
  if (!height || *height >= least) return;
  to.push_back(to_acknowledge(base::Code::little_freeboard, nearest(subject.survey.afloat.span, subject.survey.span), name,
                              what + " is " + base::mm_clear_of(*height, least, 0) + " mm above the water " + when(subject.outlook.afloat),
                              base::mm_exact(least, 0) + " mm or more, or a reason why less will do"));
}

std::string key_of(Lack lack) {
  switch (lack) {
  case Lack::water: return "water";
  case Lack::coefficient: return "waterplane-coefficient";
  case Lack::freeboard: return "freeboard";
  case Lack::downflooding: return "downflooding";
  }
  return {};
}

void not_reckoned(Findings &to, const Subject &subject) {
  const afloat::Afloat &found = subject.outlook.afloat;
  if (!found.steel_added) return;
  std::vector<std::string> missing;
  for (const Lack lack : found.lacking) missing.push_back("afloat: " + key_of(lack));
  for (const works::Item &item : subject.outlook.works.items) // a plate without its figures is asked after by itself
    if (item.adds_steel && !item.net_kg && works::outlined(item)) missing.push_back(item.id + ": a mark read where it is let in");
  if (missing.empty()) return;
  to.push_back(to_acknowledge(base::Code::afloat_inputs, nearest(subject.survey.afloat.span, subject.survey.steelwork.front().span),
                              "afloat-inputs", "the schedule adds steel, and how she floats with it is not all reckoned: " +
                                                   listed(missing) + (missing.size() == 1 ? " is" : " are") + " not given",
                              "what is missing, or a reason why it cannot be had"));
}

} // namespace

Findings floating(const Subject &subject) {
  Findings found;
  not_reckoned(found, subject);
  const afloat::Heights least = afloat::lowest(subject.outlook.afloat);
  const policy::AfloatRule &rule = subject.policy.afloat;
  low(found, subject, least.freeboard, rule.least_freeboard, "the least freeboard", "freeboard");
  low(found, subject, least.downflooding, rule.least_downflooding, "the lowest opening", "downflooding");
  return found;
}

} // namespace strakebook::review
