#include <fmt/format.h>

#include "strakebook/steel/survey/fields.h"
#include "strakebook/steel/survey/readings.h"

/// Surveys of other years.
namespace strakebook::survey {

using base::Code;

namespace {

void check_frames(Reading &r, const Node &map, const EarlierDatum &d, const base::SourceSpan &key) {
  const auto *spacing = map.find("frame-spacing");
  if (d.stations_in != StationsIn::frames) {
    if (d.frame_spacing)
      r.error(Code::earlier_datum, spacing->span, "a frame spacing is given, and stations are not counted in frames",
              "stations-in: frames, or no frame-spacing");
    return;
  }
  if (!spacing)
    r.error(Code::earlier_datum, key, "stations are frames, and nothing says how far apart those are",
            "the distance between two frames", "frame-spacing: 500 mm");
}

/// Without their spacing, which was reported, frames have no places; their numbers are read all the same.
base::Length spacing_of(const EarlierDatum &d) { return d.frame_spacing ? d.frame_spacing->value : base::Length{}; }

OtherDatum counted(const EarlierDatum &d) {
  switch (d.stations_in) {
  case StationsIn::metres:
    return {.unit = base::Unit::metre, .frame = {}};
  case StationsIn::feet:
    return {.unit = base::Unit::foot, .frame = {}};
  case StationsIn::frames:
    return {.unit = base::Unit::metre, .frame = spacing_of(d)};
  }
  return {};
}

void check_depth_doubt(Reading &r, const Node &map, const EarlierSurvey &e, const base::SourceSpan &key) {
  if (e.pits.empty() || map.find("depth-u"))
    return;
  r.error(Code::missing_key, key, fmt::format("{} has pits, and nothing says how far their depths may be off", e.id),
          "standard uncertainty of its pit depths", "depth-u: 0.10");
}

} // namespace

void fields(Fields &f, EarlierDatum &d) {
  f.value(required("from", "where its stations count from"), d.from);
  f.value(required("counts", "the direction in which they count"), d.counts);
  f.value(required("zero", "where it counts from, as a station of this survey's datum", Rule::position), d.zero);
  f.value(maybe("zero-within", "how near that is known", Rule::unit_written), d.zero_within);
  f.value(required("stations-in", "what its stations are counted in"), d.stations_in);
  f.value(maybe("frame-spacing", "distance between frames, where it counts those", Rule::unit_written), d.frame_spacing);
  f.check([&](Reading &r, const Node &map, const base::SourceSpan &key) { check_frames(r, map, d, key); });
}

void fields(Fields &f, EarlierReadings &e) {
  f.value(required("file", "a file inside the survey's folder: a line a station, a column a row of this survey"), e.file);
  f.value(required("separator", "what stands between the cells"), e.separator);
  f.value(required("unit", "unit of the readings", Rule::none, "mm|in|thou"), e.unit);
  f.value(required("stations", "how many lines of stations it has"), e.stations);
  f.value(required("marks", "how many marks were planned in it"), e.marks);
}

void fields(Fields &f, EarlierPit &p) {
  f.value(required("at", "where it is, as that survey counts"), p.at);
  f.value(required("adjacent", "plate beside it", Rule::plate), p.adjacent);
  f.value(required("depth", "depth below the surface beside it", Rule::plate), p.depth);
  f.check([&](Reading &r, const Node &map, const base::SourceSpan &) {
    if (map.find("adjacent") && map.find("depth") && p.remaining() < base::Length{})
      r.error(Code::pit_not_closed, map.find("depth")->span,
              fmt::format("pit {} is deeper than the plate beside it: {} of {}", p.id, p.depth.raw, p.adjacent.raw),
              fmt::format("a depth of at most {}", p.adjacent.raw));
  });
}

void fields(Fields &f, EarlierSurvey &e) {
  f.value(required("inspected", "day of that inspection"), e.inspected);
  f.value(maybe("number", "number of its report"), e.number);
  f.value(maybe("by", "who made it, as a role"), e.by);
  f.value(required("source", "where its figures come from", Rule::source), e.source);
  f.value(required("gauge", "what it was read with"), e.gauge);
  f.value(required("u", "standard uncertainty of its readings"), e.u);
  f.value(maybe("depth-u", "standard uncertainty of its pit depths"), e.depth_u);
  f.value(maybe("u-basis", "how those were arrived at"), e.u_basis);
  f.group(required("datum", "where its stations count from, and how that lies in this survey's"), e.datum);
  f.check([&](Reading &r, const Node &, const base::SourceSpan &) { r.other_datum = counted(e.datum); });
  f.group(required("readings", "the grid of its readings"), e.readings);
  f.by_id(maybe("pits", "its pits, each with adjacent and depth, as it counted them"), {IdForm::pit}, e.pits, &EarlierPit::id);
  f.check([&](Reading &r, const Node &map, const base::SourceSpan &key) {
    r.other_datum.reset();
    check_depth_doubt(r, map, e, key);
  });
}

namespace {

ReadingSet as_set(const EarlierReadings &e) {
  ReadingSet set;
  set.file = e.file;
  set.form = Form::grid;
  set.separator = e.separator;
  set.unit = e.unit;
  set.stations = e.stations;
  set.marks = e.marks;
  set.span = e.span;
  return set;
}

void check_day(Reading &reading, const EarlierSurvey &earlier) {
  const auto &today = reading.survey.report.inspected;
  if (!today)
    reading.error(Code::earlier_not_before, earlier.inspected.span,
                  fmt::format("the years since {} cannot be counted: report.inspected is missing", earlier.id),
                  "the day of this inspection", "inspected: 2026-10-14");
  else if (today->value <= earlier.inspected.value)
    reading.error(Code::earlier_not_before, earlier.inspected.span,
                  fmt::format("{}, of {}, is not earlier than this survey, of {}", earlier.id,
                              base::iso(earlier.inspected.value), base::iso(today->value)),
                  fmt::format("a day before {}", base::iso(today->value)));
}

} // namespace

void take_earlier(Reading &reading, const base::Folder &folder, Survey &survey) {
  for (auto &earlier : survey.earlier) {
    if (earlier.inspected.value.year > 0)
      check_day(reading, earlier);
    const bool nowhere = earlier.datum.stations_in == StationsIn::frames && !earlier.datum.frame_spacing;
    if (!earlier.readings.file.given() || nowhere)
      continue;
    reading.other_datum = counted(earlier.datum);
    if (auto taken = take_file(reading, as_set(earlier.readings), folder, survey)) {
      survey.inputs.back().kind = "earlier readings";
      earlier.marks = std::move(taken->marks);
      put_in_order(reading, earlier.marks);
    }
    reading.other_datum.reset();
  }
}

} // namespace strakebook::survey
