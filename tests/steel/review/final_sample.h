#pragma once

#include <algorithm>

#include "strakebook/steel/review/review.h"
#include "support/survey_builder.h"

namespace strakebook::sample {

inline base::SourceSpan at_line(int line) {
  static const auto file = std::make_shared<base::SourceFile>(base::SourceFile{"survey.yaml", ""});
  return {.file = file, .line = line, .column = 1};
}

/// The thick bottom as a final that lacks nothing.
inline survey::Survey complete_final() {
  survey::Survey made = thick_bottom().decide("B", "clean and recoat", "absolute-4.0").made;
  made.span = at_line(1);
  made.report = {.number = words("T 1"), .issue = 1, .state = survey::State::final,
                 .inspected = base::Located<base::Date>{{2026, 10, 14}}, .issued = base::Located<base::Date>{{2026, 10, 20}},
                 .span = at_line(2)};
  made.instructions = {.client = words("the buyer"), .purpose = words("pre-purchase")};
  made.surveyor = {.name = words("A surveyor"), .qualification = words("surveyor"), .body = words("none"),
                   .declaration = words("What is stated as seen was seen."), .signed_on = base::Located<base::Date>{{2026, 10, 20}}};
  made.vessel.name = words("A vessel");
  made.vessel.beam.length = station("2.08 m");
  made.afloat = {.water = words("fresh"), .waterplane_coefficient = decimal("0.9"),
                 .freeboard = survey::LengthFact{.length = station("0.40 m")},
                 .downflooding = survey::LengthFact{.length = station("0.30 m")}, .span = at_line(70)};
  made.vessel.ids = {{.text = words("hull 12")}};
  made.conditions = {.how_held = words("on keel blocks"), .out_of_water = base::Located<bool>{true}, .cleaned = base::Located<bool>{true}};
  made.datum = {.from = words("fore face of stem"), .towards = words("aft"), .span = at_line(20)};
  made.gauges[0].block = mm("5.00");
  made.gauges[0].before = mm("5.00");
  made.gauges[0].after = mm("5.10");
  made.gauges[0].span = at_line(30);
  made.zones[0].preparation = words("washed and scraped");
  made.zones[0].span = at_line(40);
  made.limitations = {{.id = "1", .area = words("under the blocks"), .why = words("she stood on them"),
                       .prevents = words("an opinion there"), .cure = words("move the blocks")}};
  made.answer = {.refloat = words("yes"), .reason = words("One. Two. Three."), .next_survey = words("in 24 months"),
                 .limitation = words("1")};
  made.decisions[0].span = at_line(50);
  made.decisions[0].range_of_opinion = words("Under 30 % the pits would be called deep.");
  made.decisions[0].would_change = words("A pit that leaves less.");
  made.decisions[0].conflict = survey::ConflictAnswer{
      .prefers = "absolute-4.0", .marks = {"P2"}, .because = words("The pits are few and old."), .span = at_line(51)};
  return made;
}

/// A schedule item with all that is asked of a plate, its place left open.
inline survey::SteelworkItem sound_plate(const std::string &action) {
  survey::SteelworkItem item{.id = "S1", .action = action};
  item.length = mm("1200 mm");
  item.breadth = mm("500 mm");
  item.thickness = mm("5");
  item.radius = mm("75 mm");
  item.lap_width = mm("40 mm");
  item.plug_pitch = mm("300 mm");
  item.lining = words("none there");
  return item;
}

inline std::vector<base::Diagnostic> reviewed(const survey::Survey &survey, const policy::Policy &policy = house(),
                                              base::Diagnostics sink = {}) {
  const auto before = sink.all().size();
  const auto assessment = assess::assess(survey, policy, sink);
  review::review(survey, assessment, outlook::outlook(survey, assessment, policy), policy, sink);
  return {sink.all().begin() + static_cast<std::ptrdiff_t>(before), sink.all().end()};
}

inline bool says(const base::Diagnostic &diagnostic, const std::string &part) {
  return diagnostic.message.find(part) != std::string::npos;
}

/// The one thing that was found; fails the test when it is not exactly one of this code.
inline base::Diagnostic only(const std::vector<base::Diagnostic> &found, base::Code code) {
  if (found.size() != 1 || found[0].code != code)
    throw std::runtime_error(std::to_string(found.size()) + " found, first: " + (found.empty() ? "" : found[0].message));
  return found[0];
}

} // namespace strakebook::sample
