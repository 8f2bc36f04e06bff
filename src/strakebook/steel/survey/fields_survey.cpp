#include <fmt/format.h>

#include "strakebook/steel/survey/fields.h"
#include "strakebook/steel/survey/pit_figures.h"
#include "strakebook/steel/survey/readings.h"

/// The whole file, in the order in which a missing key is reported.
namespace strakebook::survey {

namespace {

/// A long file names the surface line by line; everywhere else the set's surface is that of every mark.
void check_coating(Reading &r, const Node &map, const ReadingSet &set) {
  const bool single_echo = set.surface == Surface::coated_single_echo || set.form == Form::long_form;
  if (set.coating_thickness && !single_echo)
    r.error(base::Code::coating_unused, map.find("coating-thickness")->span,
            "a coating thickness is given, and no mark of this set was read single echo",
            "a coating thickness only beside surface: coated single-echo", "leave it out, or surface: coated single-echo");
}

/// What has to be written for each form of a set, and only there.
void check_form(Reading &r, const Node &map, const ReadingSet &set, const base::SourceSpan &key) {
  const auto need = [&](bool there, std::string_view name, std::string_view why, std::string_view write) {
    if (!there)
      r.error(base::Code::missing_key, key, fmt::format("{} is missing from the readings", name),
              std::string(why), std::string(write));
  };
  check_coating(r, map, set);
  const bool file = map.find("file") != nullptr, here = map.find("inline") != nullptr;
  if (file == here)
    return r.error(
        base::Code::missing_key, key,
        fmt::format("readings come from a file or stand here, and these do {}", file ? "both" : "neither"),
        "either file or inline", "file: readings/hull.csv");
  if (here)
    return;
  need(set.form.has_value(), "form", "how the file is laid out", "form: grid");
  need(set.separator.has_value(), "separator", "what stands between its cells", "separator: comma");
  if (set.form == Form::grid)
    need(set.stations.has_value(), "stations", "how many stations the file must have", "stations: 17");
  if (set.form == Form::long_form)
    need(set.lines.has_value(), "lines", "how many lines the file must have", "lines: 153");
}

bool take_name(Reading &r, const std::string &id, const Node &, const base::SourceSpan &key) {
  r.references.push_back({Vocabulary::new_criterion, id, key});
  return false;
}

void measurements(Fields &f, SurveyFile &file) {
  auto &s = file.survey;
  f.by_id(maybe("gauges", "instruments and their block checks"), {IdForm::free}, s.gauges, &Gauge::id);
  f.by_id(required("zones", "areas that share an original thickness and a judgement"), {IdForm::zone},
          s.zones, &Zone::id);
  f.by_id(required("rows", "named lines of marks"), {IdForm::row}, s.rows, &Row::id);
  f.list_of(required("readings", "thickness readings, one set or several"), file.readings, true);
  f.by_id(maybe("pits", "pits, each with adjacent and depth"), {IdForm::pit}, s.pits, &Pit::id,
          refuse_bare_figure);
  f.by_id(maybe("doublers", "plates laid over the hull's"), {IdForm::doubler}, s.doublers, &Doubler::id);
  f.by_id(maybe("notes", "what eye and hammer found"), {IdForm::note}, s.notes, &Note::id);
  f.list_of(maybe("none-found", "what was looked for and not found"), s.none_found);
  f.by_id(maybe("photos", "photographs"), {IdForm::number}, s.photos, &Photo::id);
}

void after_issue(Fields &f, Survey &s) {
  f.list_of(maybe("recipients", "who is sent this issue"), s.recipients);
  f.group(maybe("amendment", "why this issue differs from the one before"), s.amendment);
  f.by_id(maybe("addenda", "short reports after repair"), {IdForm::number}, s.addenda, &Addendum::id);
  f.by_id(maybe("carried", "recommendations of an earlier report that were open when this survey began"), {IdForm::number}, s.carried,
          &CarriedItem::id);
  f.value(maybe("private", "your own notes: never printed, never kept with an issued report"), s.private_notes);
}

void opinions(Fields &f, Survey &s) {
  f.by_id(maybe("criteria", "the house's criteria that are used, in order"),
          {IdForm::free, Vocabulary::criterion}, s.criteria, &CriterionUse::id);
  f.by_id(maybe("own-criteria", "criteria of this survey alone"), {IdForm::free}, s.own_criteria,
          &policy::Criterion::id, take_name);
  f.by_id(maybe("decisions", "the decision on each zone"), {IdForm::zone, Vocabulary::zone}, s.decisions,
          &Decision::zone);
  f.by_id(maybe("recommendations", "what is to be done"), {IdForm::number}, s.recommendations,
          &Recommendation::id);
  f.by_id(maybe("steelwork", "the yard's schedule"), {IdForm::steelwork}, s.steelwork, &SteelworkItem::id);
  f.group(maybe("coating", "coating and anodes"), s.coating);
  f.by_id(maybe("limitations", "what could not be seen, and what would cure that"), {IdForm::number},
          s.limitations, &Limitation::id);
  f.value(maybe("acknowledged", "warnings that were seen, and why they stand"), s.acknowledgements);
  f.value(maybe("previous-survey", "what is known of an earlier survey, or that none is"), s.previous_survey);
  f.by_id(maybe("earlier-surveys", "surveys of other years, each with its own datum and gauge"), {IdForm::free}, s.earlier,
          &EarlierSurvey::id);
  f.group(maybe("afloat", "how she floats before any steel is added"), s.afloat);
  f.group(maybe("answer", "what page one says"), s.answer);
  f.list_of(maybe("issue-record", "what was issued to whom"), s.issue_record);
  after_issue(f, s);
}

} // namespace

void fields(Fields &f, ReadingSet &s) {
  f.value(maybe("file", "a file inside the survey's folder"), s.file);
  f.value(maybe("form", "grid: a line a station, a column a row; long: a line a mark"), s.form);
  f.value(maybe("separator", "what stands between the cells"), s.separator);
  f.value(maybe("inline", "readings written here, by row and station"), s.written_here);
  f.value(required("unit", "unit of the readings", Rule::none, "mm|in|thou"), s.unit);
  f.value(maybe("stations", "how many lines of stations a grid has"), s.stations);
  f.value(maybe("lines", "how many lines of readings a long file has"), s.lines);
  f.value(required("marks", "how many marks were planned in this set"), s.marks);
  f.value(required("surface", "surface that was read"), s.surface);
  f.value(maybe("coating-thickness", "dry film that single echoes were read through", Rule::unit_written),
          s.coating_thickness);
  f.reference(required("gauge", "the gauge that read them"), Vocabulary::gauge, s.gauge);
  f.value(required("reduce", "how the repeats at a mark become one figure"), s.reduce);
  f.value(maybe("rejected", "for each mark whose figures are rejected, why"), s.rejected);
  f.value(maybe("queried", "for each mark noted with a query, 5/16?, why it is held"), s.queried);
  f.check([&](Reading &r, const Node &map, const base::SourceSpan &key) { check_form(r, map, s, key); });
}

void fields(Fields &f, SurveyFile &file) {
  auto &s = file.survey;
  f.value(required("strakebook", "version of this file's form"), file.version);
  f.value(required("house", "the layout: house wording, criteria and style"), s.house);
  f.group(required("report", "the report's identity"), s.report);
  f.group(maybe("instructed", "who asked, and for what"), s.instructions);
  f.group(maybe("surveyor", "who looked, and signs"), s.surveyor);
  f.group(required("vessel", "the vessel"), s.vessel);
  f.group(maybe("conditions", "how she lay"), s.conditions);
  f.group(required("datum", "where stations count from"), s.datum);
  measurements(f, file);
  opinions(f, s);
}

} // namespace strakebook::survey
