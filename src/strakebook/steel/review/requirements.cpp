#include "strakebook/steel/review/requirements.h"

#include "strakebook/steel/review/gaps.h"

namespace strakebook::review {

namespace {

using namespace survey;

Gaps state_is_read(const Subject &) { return {}; } // the reader takes no survey without one

Gaps refloat_conditions(const Subject &subject) {
  const Answer &answer = subject.survey.answer;
  const bool asks = answer.refloat.text == "with conditions";
  return asks && !answer.refloat_conditions.given() ? Gaps{{"", nearest(answer.span, subject.survey.span)}} : Gaps{};
}

Gaps next_survey(const Subject &subject) {
  const Answer &answer = subject.survey.answer;
  const bool said = answer.next_survey.given() || answer.next_survey_by;
  return said ? Gaps{} : Gaps{{"", nearest(answer.span, subject.survey.span)}};
}

Gaps originals(const Subject &subject) {
  Gaps gaps;
  for (const Zone &zone : subject.survey.zones)
    if (!given(zone.original.nominal) || zone.original.basis.empty())
      gaps.push_back({called(zone), nearest(zone.span, subject.survey.span)});
  return gaps;
}

Gaps sources_of_originals(const Subject &subject) {
  Gaps gaps;
  for (const Zone &zone : subject.survey.zones)
    if (!zone.original.source.given())
      gaps.push_back({called(zone), nearest(zone.original.span, nearest(zone.span, subject.survey.span))});
  return gaps;
}

/// A budget says by itself how the uncertainty was arrived at.
Gaps bases_of_doubt(const Subject &subject) {
  Gaps gaps;
  for (const Gauge &gauge : subject.survey.gauges)
    if (gauge.doubt.empty() && !gauge.u_basis.given())
      gaps.push_back({called(gauge), nearest(gauge.span, subject.survey.span)});
  return gaps;
}

Gaps pictures(const Subject &subject) {
  Gaps gaps;
  for (const Photo &photo : subject.survey.photos)
    if (!photo.file.given() && !photo.not_taken.given() && !photo.withheld.given())
      gaps.push_back({called(photo), nearest(photo.span, subject.survey.span)});
  return gaps;
}

Gaps usable_reading(const Subject &subject) {
  return subject.assessment.coverage.used > 0 ? Gaps{} : Gaps{{"", subject.survey.span}};
}

Gaps decision_on_each_zone(const Subject &subject) {
  Gaps gaps;
  for (const Zone &zone : subject.survey.zones)
    if (!decision_of(subject.survey, zone.id)) gaps.push_back({called(zone), nearest(zone.span, subject.survey.span)});
  return gaps;
}

// Sections 1 to 20 of the report; the written examples are the trade's own words.
constexpr Requirement table[] = {
    {"report.number", true, "the report's number", "number: HT 0417", part_lacks<&Survey::report, &Report::number>},
    {"report.issue", true, "the issue of the report", "issue: 1", part_lacks<&Survey::report, &Report::issue>},
    {"report.state", true, "the state of the report", "state: final", state_is_read},
    {"report.inspected", true, "the day of the inspection", "inspected: 2026-10-14", part_lacks<&Survey::report, &Report::inspected>},
    {"report.issued", true, "the day of issue", "issued: 2026-10-20", part_lacks<&Survey::report, &Report::issued>},
    {"report.place", false, "where the vessel lay", "place: dry dock, town", part_lacks<&Survey::report, &Report::place>},
    {"report.insurer-reference", false, "the insurer's reference", "insurer-reference: none", part_lacks<&Survey::report, &Report::insurer_reference>},
    {"report.supersedes", false, "what the report replaces", "supersedes: none", part_lacks<&Survey::report, &Report::supersedes>},
    {"vessel.name", true, "the vessel's name", "name: the vessel's name", part_lacks<&Survey::vessel, &Vessel::name>},
    {"vessel.ids", true, "what identifies the vessel", "ids: [registration, hull number]", part_lacks<&Survey::vessel, &Vessel::ids>},
    {"instructed.by", true, "the client", "by: the buyer", part_lacks<&Survey::instructions, &Instructions::client>},
    {"instructed.purpose", true, "what the survey is for", "purpose: pre-purchase", part_lacks<&Survey::instructions, &Instructions::purpose>},
    {"surveyor.name", true, "the surveyor", "name: the surveyor's name", part_lacks<&Survey::surveyor, &Surveyor::name>},
    {"surveyor.qualification", true, "the surveyor's qualification", "qualification: marine surveyor", part_lacks<&Survey::surveyor, &Surveyor::qualification>},
    {"surveyor.body", true, "the surveyor's professional body, or that there is none", "body: none", part_lacks<&Survey::surveyor, &Surveyor::body>},

    {"readings", true, "a reading that can be used", "readings: {file: readings/hull.csv, unit: mm, stations: 17, marks: 153}", usable_reading},
    {"answer.refloat", true, "whether she may be refloated", "refloat: yes | with conditions | no | no opinion", part_lacks<&Survey::answer, &Answer::refloat>},
    {"answer.refloat-conditions", true, "on what conditions she may be refloated", "refloat-conditions: after what has been done", refloat_conditions},
    {"answer.reason", true, "the reason of the answer", "reason: three sentences", part_lacks<&Survey::answer, &Answer::reason>},
    {"answer.next-survey", true, "when the next survey is due", "next-survey: within 24 months", next_survey},
    {"answer.next-survey-by", false, "the day by which the next survey is due", "next-survey-by: 2028-10-14", part_lacks<&Survey::answer, &Answer::next_survey_by>},
    {"answer.limitation", true, "the limitation that matters most", "most-important-limitation: 1", part_lacks<&Survey::answer, &Answer::limitation>},

    {"instructed.how", false, "whether the instructions were written or oral", "how: letter", part_lacks<&Survey::instructions, &Instructions::how>},
    {"instructed.on", false, "the day of the instructions", "on: 2026-10-02", part_lacks<&Survey::instructions, &Instructions::on>},
    {"instructed.questions", false, "the questions asked", "questions: [what was asked]", part_lacks<&Survey::instructions, &Instructions::questions>},
    {"instructed.exclusions", false, "what was excluded by agreement", "exclusions: [what was left out]", part_lacks<&Survey::instructions, &Instructions::exclusions>},
    {"instructed.terms", false, "the terms of the engagement", "terms: the terms agreed", part_lacks<&Survey::instructions, &Instructions::terms>},
    {"instructed.reliance", false, "who may rely on the report", "reliance: the client", part_lacks<&Survey::instructions, &Instructions::reliance>},
    {"instructed.readers", false, "who may read the report", "readers: [the client, the underwriter]", part_lacks<&Survey::instructions, &Instructions::readers>},

    {"vessel.kind", false, "the kind of vessel", "kind: canal boat", part_lacks<&Survey::vessel, &Vessel::kind>},
    {"vessel.draught", false, "the draught", "draught: 0.7 m", part_lacks<&Survey::vessel, &Vessel::draught>},
    {"vessel.plated-height", false, "the height of the plated side", "plated-height: 1.0 m", part_lacks<&Survey::vessel, &Vessel::plated_height>},
    {"vessel.frame-spacing", false, "the frame spacing", "frame-spacing: 0.5 m", part_lacks<&Survey::vessel, &Vessel::frame_spacing>},
    {"vessel.built", false, "the year of build", "built: 1998", part_lacks<&Survey::vessel, &Vessel::built>},
    {"vessel.builder", false, "the builder", "builder: who built her", part_lacks<&Survey::vessel, &Vessel::builder>},
    {"vessel.construction", false, "how she is built", "construction: welded mild steel", part_lacks<&Survey::vessel, &Vessel::construction>},
    {"vessel.use", false, "how she is used", "use: residential", part_lacks<&Survey::vessel, &Vessel::use>},
    {"vessel.history", false, "earlier plating and repairs", "history: what is known of it", part_lacks<&Survey::vessel, &Vessel::history>},

    {"conditions.how-held", true, "how the hull was held", "how-held: on keel blocks", part_lacks<&Survey::conditions, &Conditions::how_held>},
    {"conditions.out-of-water", true, "whether she was out of the water", "out-of-water: yes", part_lacks<&Survey::conditions, &Conditions::out_of_water>},
    {"conditions.cleaned", true, "whether the hull was cleaned", "cleaned: yes", part_lacks<&Survey::conditions, &Conditions::cleaned>},
    {"conditions.preparation", false, "how the hull was prepared", "preparation: washed and scraped", part_lacks<&Survey::conditions, &Conditions::preparation>},
    {"zones.preparation", true, "how the zone was prepared", "preparation: washed and scraped", each_lacks<&Survey::zones, &Zone::preparation>},
    {"conditions.weather", false, "the weather", "weather: dry, 12 C", part_lacks<&Survey::conditions, &Conditions::weather>},
    {"conditions.access", false, "what could be reached", "access: what could be reached, and how", part_lacks<&Survey::conditions, &Conditions::access>},
    {"conditions.present", false, "who was present", "present: the owner", part_lacks<&Survey::conditions, &Conditions::present>},
    {"conditions.lighting", false, "by what light it was seen", "lighting: daylight and lamp", part_lacks<&Survey::conditions, &Conditions::lighting>},

    {"gauges", true, "the instruments", "gauges:\n  ut: {mode: echo-to-echo, u: 0.10}", survey_lacks<&Survey::gauges>},
    {"gauges.name", false, "what instrument it is", "name: ultrasonic thickness gauge", each_lacks<&Survey::gauges, &Gauge::name>},
    {"gauges.mode", false, "how the gauge was used", "mode: echo-to-echo", each_lacks<&Survey::gauges, &Gauge::mode>},
    {"gauges.probe", false, "the probe", "probe: 13 mm twin crystal", each_lacks<&Survey::gauges, &Gauge::probe>},
    {"gauges.certificate", false, "the gauge's certificate", "certificate: its number", each_lacks<&Survey::gauges, &Gauge::certificate>},
    {"gauges.certificate-until", false, "when the certificate runs out", "certificate-until: 2027-03-31", each_lacks<&Survey::gauges, &Gauge::certificate_until>},
    {"gauges.u-basis", false, "how the uncertainty was arrived at", "u-basis: repeat readings on the block", bases_of_doubt},

    {"datum.from", true, "where stations count from", "from: fore face of stem", part_lacks<&Survey::datum, &Datum::from>},
    {"datum.towards", true, "the direction in which stations count", "towards: aft", part_lacks<&Survey::datum, &Datum::towards>},
    {"datum.height", false, "what heights count from", "height: underside of base plate", part_lacks<&Survey::datum, &Datum::height>},
    {"datum.spacing", false, "the distance between stations", "spacing: 1.0 m", part_lacks<&Survey::datum, &Datum::spacing>},
    {"datum.swim", false, "how a curved swim was taped", "swim: along the plate", part_lacks<&Survey::datum, &Datum::swim>},
    {"datum.frames", false, "how frames are numbered", "frames: from aft", part_lacks<&Survey::datum, &Datum::frames>},
    {"rows.height", false, "where the row runs", "height: 0.55 m above the base plate", each_lacks<&Survey::rows, &Row::height>},

    {"zones.original", true, "the original thickness and its basis", "original: 6.0\nbasis: mill certificate", originals},
    {"zones.source", false, "where the original thickness comes from", "source: document, drawing 14", sources_of_originals},
    {"zones.area-m2", false, "the zone's area", "area-m2: 16.2", each_lacks<&Survey::zones, &Zone::area_m2>},
    {"zones.general-order", false, "how the plate is otherwise", "general-order: sound, even surface", each_lacks<&Survey::zones, &Zone::general_order>},
    {"criteria", true, "the criteria that the results are held against", "criteria:\n  absolute-4.0: {asked-by: the underwriter}", survey_lacks<&Survey::criteria>},

    {"photos.file", false, "the picture, or why there is none", "file: photos/p4.jpg, or not-taken: the reason, or withheld: the reason", pictures},
    {"photos.caption", false, "what the photograph shows", "caption: what to see", each_lacks<&Survey::photos, &Photo::caption>},
    {"previous-survey", false, "what is known of an earlier survey", "previous-survey: none known", survey_lacks<&Survey::previous_survey>},

    {"decisions", true, "the decision", "under decisions, for the zone:\n  action: what is to be done\n  why: the reason", decision_on_each_zone},
    {"decisions.why", true, "the reason", "why: the reason, with the marks it rests on", each_lacks<&Survey::decisions, &Decision::why>},
    {"decisions.claim", false, "the decision in a sentence", "claim: what is decided", each_lacks<&Survey::decisions, &Decision::claim>},
    {"decisions.evidence", false, "the evidence", "evidence: [PW 9, P3]", each_lacks<&Survey::decisions, &Decision::evidence>},
    {"decisions.others-may-say", false, "the range of opinion", "others-may-say: the other tenable view", each_lacks<&Survey::decisions, &Decision::range_of_opinion>},
    {"decisions.would-change", false, "what would change the decision", "would-change: what would", each_lacks<&Survey::decisions, &Decision::would_change>},
    {"decisions.confidence", false, "how sure the decision is", "confidence: high, and why", each_lacks<&Survey::decisions, &Decision::confidence>},

    {"recommendations.hazards", false, "the hazards of the work", "hazards: hot work beside foam", each_lacks<&Survey::recommendations, &Recommendation::hazards>},
    {"recommendations.binds", false, "whom it binds", "binds: the owner", each_lacks<&Survey::recommendations, &Recommendation::binds>},
    {"recommendations.alternative", false, "the alternative", "alternative: what would do instead", each_lacks<&Survey::recommendations, &Recommendation::alternative>},
    {"recommendations.evidence", false, "the evidence", "evidence: [PW 9, P3]", each_lacks<&Survey::recommendations, &Recommendation::evidence>},
    {"steelwork.lining", false, "the lining to be cleared", "lining: what is to be cleared", each_lacks<&Survey::steelwork, &SteelworkItem::lining>},
    {"steelwork.hold-point", false, "when the surveyor is called", "hold-point: before closing up", each_lacks<&Survey::steelwork, &SteelworkItem::hold_point>},
    {"steelwork.nearest-frame", false, "the nearest frame", "nearest-frame: 12", each_lacks<&Survey::steelwork, &SteelworkItem::nearest_frame>},
    {"coating.found", false, "the coating as found", "found: sound two-pack", part_lacks<&Survey::coating, &CoatingAndAnodes::coating>},
    {"coating.anodes", false, "the anodes as found", "anodes: half gone", part_lacks<&Survey::coating, &CoatingAndAnodes::anodes>},

    {"limitations", true, "the limitations", "limitations:\n  1: {area: ..., why: ..., prevents: ..., cure: ...}", survey_lacks<&Survey::limitations>},
    {"limitations.area", true, "the area that it is tied to", "area: what could not be seen or read", each_lacks<&Survey::limitations, &Limitation::area>},
    {"limitations.prevents", true, "what it prevented", "prevents: an opinion there", each_lacks<&Survey::limitations, &Limitation::prevents>},
    {"limitations.cure", true, "what would cure it", "cure: move the blocks", each_lacks<&Survey::limitations, &Limitation::cure>},

    {"surveyor.measured-by", false, "who took the readings", "measured-by: the surveyor", part_lacks<&Survey::surveyor, &Surveyor::measured_by>},
    {"surveyor.witnessed-by", false, "who watched", "witnessed-by: nobody", part_lacks<&Survey::surveyor, &Surveyor::witnessed_by>},
    {"surveyor.supervised-by", false, "who supervised", "supervised-by: nobody", part_lacks<&Survey::surveyor, &Surveyor::supervised_by>},
    {"surveyor.independence", false, "the surveyor's independence", "independence: no interest in vessel, yard or sale", part_lacks<&Survey::surveyor, &Surveyor::independence>},
    {"surveyor.literature", false, "what was relied on", "literature: none beyond the criteria", part_lacks<&Survey::surveyor, &Surveyor::literature>},
    {"surveyor.declaration", true, "the surveyor's declaration", "declaration: the surveyor's own words", part_lacks<&Survey::surveyor, &Surveyor::declaration>},
    {"surveyor.signed-at", false, "the place of signature", "signed-at: the place", part_lacks<&Survey::surveyor, &Surveyor::signed_at>},
    {"surveyor.signed-on", true, "the day of signature", "signed-on: 2026-10-20", part_lacks<&Survey::surveyor, &Surveyor::signed_on>},
};

} // namespace

std::span<const Requirement> requirements() { return table; }

} // namespace strakebook::review
