#include <algorithm>

#include "strakebook/base/decimal.h"
#include "strakebook/steel/review/findings.h"
#include "strakebook/steel/survey/reach.h"
#include "strakebook/steel/works/works.h"

/// The schedule of steelwork against the usual figures of plate work.
namespace strakebook::review {

namespace {

using base::Code;

/// One item as written and as reckoned, and where its findings go.
struct Plate {
  const Subject &subject;
  const survey::SteelworkItem &written;
  const works::Item &item;
  Findings &found;

  const policy::WorksRule &rule() const { return subject.policy.works; }
  bool pad() const { return item.action == rule().pad; }
  void warn(Code code, const std::string &about, const std::string &what, std::string expected) const {
    found.push_back(to_acknowledge(code, nearest(written.span, subject.survey.span), about + " " + item.id,
                                   "schedule item " + item.id + ": " + what, std::move(expected)));
  }
};

std::string mm(Length length) { return base::mm_exact(length, 0) + " mm"; }

/// The lesser of its sides, as far as they are given.
std::optional<Length> lesser_side(const works::Item &item) {
  if (!item.length || !item.breadth) return item.length ? item.length : item.breadth;
  return std::min(*item.length, *item.breadth);
}

void check_measured(const Plate &plate) {
  std::vector<std::string> lacks;
  if (!plate.item.length) lacks.push_back("length");
  if (!plate.item.breadth) lacks.push_back("breadth");
  if (!plate.item.thickness) lacks.push_back("thickness");
  if (lacks.empty()) return;
  plate.warn(Code::plate_unmeasured, "plate-figures", "its plate has no " + listed(lacks) + ", so it cannot be weighed",
             "length, breadth and thickness of the plate, each a figure with its unit");
}

void check_size(const Plate &plate) {
  const auto &rule = plate.rule();
  const Length least = plate.pad() ? rule.least_pad : plate.item.insert ? rule.least_insert : rule.least_doubler;
  const auto side = lesser_side(plate.item);
  if (!side || *side >= least) return;
  plate.warn(Code::plate_too_small, "plate-size", "its plate is " + mm(*side) + " at its lesser side",
             "edges of " + mm(least) + " or more");
}

void check_corners(const Plate &plate) {
  const auto &radius = plate.item.radius;
  const auto side = lesser_side(plate.item);
  if (radius && side && *radius * 2 > *side)
    plate.warn(Code::square_corners, "corners", "a corner radius of " + mm(*radius) + " does not go into a side of " + mm(*side),
               "half of the lesser side, or less");
  else if (!radius || *radius < plate.rule().least_radius)
    plate.warn(Code::square_corners, "corners", radius ? "its corners have a radius of " + mm(*radius) : "no radius of its corners is given",
               "radius: " + mm(plate.rule().least_radius) + " or more");
}

void check_thickness(const Plate &plate) {
  const auto &thickness = plate.item.thickness;
  if (!thickness || *thickness >= plate.rule().least_side_plate) return;
  plate.warn(Code::plate_too_thin, "plate-thickness", "its plate is " + base::mm_exact(*thickness) + " mm thick",
             "plate of " + mm(plate.rule().least_side_plate) + " or more");
}

void check_lap(const Plate &plate) {
  const auto &lap = plate.written.lap_width;
  if (lap && plate.rule().least_lap <= lap->value && lap->value <= plate.rule().most_lap) return;
  plate.warn(Code::lap_width, "lap", lap ? "its lap is " + mm(lap->value) : "the width of its lap is not given",
             "lap-width: " + mm(plate.rule().least_lap) + " to " + mm(plate.rule().most_lap) + " on to sound metal");
}

void check_plugs(const Plate &plate) {
  const auto side = lesser_side(plate.item);
  if (!side || *side <= plate.rule().plugs_over) return;
  const auto &pitch = plate.written.plug_pitch;
  if (pitch && Length{} < pitch->value && pitch->value <= plate.rule().plug_pitch) return;
  plate.warn(Code::plugs_missing, "plugs",
             "it is " + mm(*side) + " at its lesser side, and " + (pitch ? "its plugs are " + mm(pitch->value) + " apart" : "the pitch of its plugs is not given"),
             "plug-pitch: " + mm(plate.rule().plug_pitch) + " or less, on a plate over " + mm(plate.rule().plugs_over));
}

void check_bilge(const Plate &plate) {
  const auto &survey = plate.subject.survey;
  for (const survey::Zone &zone : survey.zones) {
    if (zone.plating != policy::Plating::bilge || zone.bilge.text == "hard chine") continue;
    if (!survey::overlap(survey, plate.written.at, {.zone = zone.id})) continue;
    plate.warn(Code::round_bilge, "bilge",
               zone.bilge.given() ? "it is laid over a round bilge, in zone " + zone.id
                                  : "it is laid over bilge plating, zone " + zone.id + ", and the form of the bilge is not said",
               "no doubler on a round bilge; bilge: hard chine in zone " + zone.id + ", where it is one");
    return;
  }
}

/// Marks of the hull plate within the reach; where there is none, on each of its rows the nearest at either side.
std::vector<const assess::MarkResult *> marks_under(const Plate &plate) {
  const auto &survey = plate.subject.survey;
  const auto &at = plate.written.at;
  std::vector<const assess::MarkResult *> within, beside;
  for (const survey::Row &row : survey.rows) {
    if (!survey::covers_row(survey, at, row.id)) continue;
    const assess::MarkResult *before = nullptr, *after = nullptr;
    for (const assess::MarkResult &mark : plate.subject.assessment.marks) {
      const survey::Mark &read = survey.marks[mark.mark];
      if (!mark.used || read.row != row.id) continue;
      if (survey::covers(survey, at, row.id, read.station.value)) within.push_back(&mark);
      else if (at.from && read.station.value < at.from->value) before = &mark;
      else if (after == nullptr) after = &mark;
    }
    for (const auto *mark : {before, after})
      if (mark != nullptr) beside.push_back(mark);
  }
  return within.empty() ? beside : within;
}

void check_parent(const Plate &plate) {
  std::vector<std::string> thin;
  for (const assess::MarkResult *mark : marks_under(plate))
    if (mark->judged() < plate.rule().sound_under_lap)
      thin.push_back(plate.subject.survey.marks[mark->mark].id() + " (" + base::mm_exact(mark->judged()) + ")");
  if (thin.empty()) return;
  plate.warn(Code::thin_under_lap, "under-lap", "it is laid over plate under " + mm(plate.rule().sound_under_lap) + ": " + listed(thin),
             "a lap on to plate of " + mm(plate.rule().sound_under_lap) + " or more, all round; say where it lands");
}

void check_lining(const Plate &plate) {
  const auto action = plate.subject.policy.actions.find(plate.item.action);
  const bool hot = plate.written.weld.given() || (action != plate.subject.policy.actions.end() && action->second.adverse);
  if (!hot || plate.written.lining.given()) return;
  plate.warn(Code::lining_not_cleared, "lining", "it does not say what lining, foam or fuel is cleared inside for the hot work",
             "lining: what is cleared, and how far; none there, where there is none");
}

void check(const Plate &plate) {
  check_lining(plate);
  if (!plate.item.adds_steel) return;
  for (const auto one : {check_measured, check_size, check_corners, check_thickness}) one(plate);
  if (!plate.item.doubler) return;
  for (const auto one : {check_bilge, check_parent, check_plugs}) one(plate);
  if (!plate.pad()) check_lap(plate);
}

} // namespace

Findings plate_work(const Subject &subject) {
  Findings found;
  const auto &items = subject.outlook.works.items;
  for (std::size_t i = 0; i < items.size(); ++i) check({subject, subject.survey.steelwork[i], items[i], found});
  return found;
}

} // namespace strakebook::review
