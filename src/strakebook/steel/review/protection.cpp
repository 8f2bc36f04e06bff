#include "strakebook/base/decimal.h"
#include "strakebook/steel/review/findings.h"

namespace strakebook::review {

namespace {

const base::SourceSpan &place(const Subject &subject) { return nearest(subject.survey.coating.span, subject.survey.span); }

void unsuited(Findings &to, const Subject &subject, const std::optional<protection::Suited> &metal, const std::string &which,
              const base::SourceSpan &span) {
  if (!metal || metal->suits) return;
  to.push_back(to_acknowledge(base::Code::anode_metal, nearest(span, place(subject)), "anode-metal " + which,
                              "the anodes " + which + " are of " + metal->metal + ", and she floats in " + metal->water + " water",
                              "a metal that suits it; " + metal->metal + " suits " + listed(metal->waters) + " water"));
}

void wide(Findings &to, const Subject &subject) {
  const auto &width = subject.outlook.protection.width;
  if (!width || !width->too_wide()) return;
  to.push_back(to_acknowledge(base::Code::too_wide, nearest(subject.survey.vessel.span, subject.survey.span), "beam-over-all",
                              "the beam over all would be " + base::mm_exact(width->over_all(), 0) + " mm in a lock of " +
                                  base::mm_exact(*width->narrowest, 0) + " mm",
                              "less than the narrowest place that she has to pass"));
}

void unworn(Findings &to, const Subject &subject) {
  const auto &worn = subject.outlook.protection.worn;
  const auto &fitted = subject.survey.coating.fitted;
  if (!worn || !worn->unworn || fitted->answer.given()) return;
  to.push_back(to_acknowledge(base::Code::anodes_unworn, nearest(fitted->span, place(subject)), "anodes-unworn",
                              "the anodes were fitted on " + base::iso(worn->on) + " and have lost " + base::to_text(worn->percent) +
                                  " % by " + base::iso(worn->inspected) + ": a sign of a bad bond",
                              "an answer under fitted"));
}

} // namespace

Findings protection(const Subject &subject) {
  Findings found;
  const auto &coating = subject.survey.coating;
  if (coating.fitted) unsuited(found, subject, subject.outlook.protection.fitted, "fitted", coating.fitted->span);
  if (coating.plan) unsuited(found, subject, subject.outlook.protection.planned, "planned", coating.plan->span);
  wide(found, subject);
  unworn(found, subject);
  return found;
}

} // namespace strakebook::review
