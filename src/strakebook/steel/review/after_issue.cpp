#include <algorithm>

#include "strakebook/steel/review/findings.h"
#include "strakebook/steel/survey/closing.h"

/// What a final says of items that were open when it began, and an addendum of those that it closes.
namespace strakebook::review {

namespace {

using survey::Addendum;
using survey::Became;
using survey::CarriedItem;
using survey::ClosedItem;
using survey::Closing;

/// What is missing of the answer to a carried item; empty: nothing.
std::string unanswered(const CarriedItem &item) {
  if (!item.now) return "nothing is said of it";
  if (*item.now == Became::closed && item.evidence.empty()) return "it is called closed, and nothing shows that";
  if (*item.now != Became::open && !item.found.given()) return "it says what became of it, and not how that was found";
  return {};
}

void lacks(Findings &found, const Subject &subject, const Addendum &addendum, const base::SourceSpan &span, const std::string &what,
           std::string expected, std::string write) {
  found.push_back({base::Code::addendum_incomplete, nearest(span, nearest(addendum.span, subject.survey.span)),
                   "addendum " + addendum.id + ": " + what, std::move(expected), std::move(write)});
}

void check_head(Findings &found, const Subject &subject, const Addendum &addendum) {
  std::vector<std::string> missing;
  if (!addendum.inspected) missing.push_back("inspected");
  if (!addendum.issued) missing.push_back("issued");
  if (!addendum.by.given()) missing.push_back("by");
  if (!addendum.how.given()) missing.push_back("how");
  if (addendum.closes.empty()) missing.push_back("closes");
  if (missing.empty()) return;
  lacks(found, subject, addendum, addendum.span, listed(missing) + (missing.size() > 1 ? " are missing" : " is missing"),
        "who looked, on which day, how she lay, the day of issue, and what became of each item",
        "inspected: 2026-12-01\nissued: 2026-12-02\nby: the surveyor\nhow: on keel blocks, the work seen from outside");
}

/// `later` must not lie before `earlier`.
void in_order(Findings &found, const Subject &subject, const Addendum &addendum, const survey::Given<base::Date> &earlier,
              const std::string &first, const survey::Given<base::Date> &later, const std::string &second) {
  if (!earlier || !later || earlier->value <= later->value) return;
  lacks(found, subject, addendum, later->span,
        second + ", " + base::iso(later->value) + ", lies before " + first + ", " + base::iso(earlier->value),
        base::iso(earlier->value) + " or later", "the day as it was, year first: " + base::iso(earlier->value));
}

void check_gauge(Findings &found, const Subject &subject, const Addendum &addendum) {
  const bool reads = std::ranges::any_of(addendum.closes, [](const ClosedItem &item) { return !item.readings.empty(); });
  if (!reads) return;
  if (addendum.gauge.empty() || !addendum.block.given())
    return lacks(found, subject, addendum, addendum.span, "it gives readings, and not the gauge and its check on the block that day",
                 "the gauge, and what it showed on the block", "gauge: ut\nblock: 5.0 shown on the block of 5.0, before and after");
  const survey::Gauge *gauge = survey::gauge_of(subject.survey, addendum.gauge);
  if (gauge == nullptr || !gauge->certificate_until || !addendum.inspected) return;
  if (addendum.inspected->value <= gauge->certificate_until->value || says(addendum.remarks.text, "certificate")) return;
  lacks(found, subject, addendum, addendum.inspected->span,
        "the certificate of gauge " + gauge->id + " ran out on " + base::iso(gauge->certificate_until->value) +
            ", before its inspection, and its remarks do not speak of the certificate",
        "a certificate that holds on that day, or remarks that say what it means for the readings",
        "remarks: The certificate of the gauge had run out, so the readings are indicative.");
}

std::vector<std::string> lacking(const ClosedItem &item) {
  std::vector<std::string> missing;
  if (item.outcome != Closing::open && !item.on) missing.push_back("on");
  if (item.outcome != Closing::open && !item.evidence.given()) missing.push_back("evidence");
  if (item.outcome != Closing::closed && !item.left.given()) missing.push_back("left");
  return missing;
}

void check_item(Findings &found, const Subject &subject, const Addendum &addendum, const ClosedItem &item) {
  if (const auto missing = lacking(item); !missing.empty())
    lacks(found, subject, addendum, item.span, "item " + item.item + " lacks " + listed(missing),
          "of work that was done the day and the evidence; of what is not wholly closed, what is left",
          "on: 2026-11-28\nevidence: what was seen, measured or handed over\nleft: what is still to be done");
  if (item.outcome == Closing::closed && item.left.given())
    lacks(found, subject, addendum, item.left.span, "item " + item.item + " is closed, and something is left of it",
          "closed with nothing left, or partly closed", "outcome: partly closed");
  in_order(found, subject, addendum, item.on, "the day of the work on item " + item.item, addendum.inspected, "the inspection");
  const auto same = [&](const ClosedItem &other) { return other.item == item.item; };
  if (std::ranges::count_if(addendum.closes, same) > 1 && &item == &*std::ranges::find_if(addendum.closes, same))
    lacks(found, subject, addendum, item.span, "it speaks of item " + item.item + " twice", "each item once", "one entry for item " + item.item);
}

/// An item that an earlier addendum closed stays closed: reopening it takes an issue or a survey, with its reasons.
void check_closed_before(Findings &found, const Subject &subject, const Addendum &addendum, const Addendum *before) {
  if (before == nullptr) return;
  for (const ClosedItem &item : addendum.closes)
    if (survey::outcome_of(subject.survey, item.item, before->id).closed())
      lacks(found, subject, addendum, item.span, "item " + item.item + " was closed by an addendum before it",
            "items that are open", "leave item " + item.item + " out");
}

} // namespace

Findings carried(const Subject &subject) {
  Findings found;
  for (const CarriedItem &item : subject.survey.carried) {
    const std::string missing = unanswered(item);
    if (missing.empty()) continue;
    found.push_back({base::Code::carried_unanswered, nearest(item.span, subject.survey.span),
                     "carried " + item.id + ", item " + item.item.text + " of " + item.from.text + ": " + missing,
                     "what this survey found of it: open; or closed, overtaken or not seen, with how that was found; closed also with evidence",
                     "now: closed\nfound: The plate was renewed and reads 6.0.\nevidence: [PW 9, photo 4]"});
  }
  return found;
}

Findings addenda(const Subject &subject) {
  Findings found;
  const Addendum *before = nullptr;
  for (const Addendum &addendum : subject.survey.addenda) {
    check_head(found, subject, addendum);
    in_order(found, subject, addendum, subject.survey.report.inspected, "that of the report", addendum.inspected, "its inspection");
    in_order(found, subject, addendum, addendum.inspected, "its inspection", addendum.issued, "its issue");
    check_gauge(found, subject, addendum);
    for (const ClosedItem &item : addendum.closes) check_item(found, subject, addendum, item);
    check_closed_before(found, subject, addendum, before);
    before = &addendum;
  }
  return found;
}

} // namespace strakebook::review
