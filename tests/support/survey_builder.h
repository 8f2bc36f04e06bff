#pragma once

#include "strakebook/steel/survey/survey.h"
#include "support/house_sample.h"

/// Surveys for tests, made by hand in a few lines.
namespace strakebook::sample {

inline survey::Words words(std::string text) { return {.text = std::move(text)}; }
inline base::Measured station(const std::string &text) {
  base::MeasuredError wrong;
  return base::parse_measured(text, base::Unit::metre, wrong).value();
}

/// Adds to one survey; each call returns the builder. Lengths in mm, stations in m, places "PW 9".
class SurveyBuilder {
public:
  SurveyBuilder() {
    made.gauges = {{.id = "ut", .u = length("0.1")}, {.id = "depth", .u = length("0.1")}};
    made.vessel.length.length = station("18.0 m");
    made.vessel.draught = survey::LengthFact{.length = station("0.7 m")};
    made.vessel.frame_spacing = survey::LengthFact{.length = station("0.5 m")};
  }

  SurveyBuilder &zone(const std::string &id, const std::string &nominal, const std::string &basis = "mill certificate",
                      policy::Plating plating = policy::Plating::side) {
    made.zones.push_back({.id = id, .plating = plating, .original = {.nominal = mm(nominal), .basis = basis}});
    return *this;
  }
  SurveyBuilder &row(const std::string &id, const std::string &zone, const std::string &name = "a row") {
    made.rows.push_back({.id = id, .zone = zone, .name = words(name)});
    return *this;
  }
  /// Marks at stations 1, 2, 3 ... of a row; "5.8/5.7" gives repeats.
  SurveyBuilder &marks(const std::string &row, const std::vector<std::string> &figures) {
    for (const auto &figure : figures) mark(row, std::to_string(++stations[row]), figure);
    return *this;
  }
  SurveyBuilder &mark(const std::string &row, const std::string &at, const std::string &figures) {
    survey::Mark mark{.row = row, .station = station(at), .gauge = "ut"};
    for (std::size_t from = 0; from <= figures.size();) {
      const auto to = std::min(figures.find('/', from), figures.size());
      mark.repeats.push_back(mm(figures.substr(from, to - from)));
      from = to + 1;
    }
    made.marks.push_back(std::move(mark));
    return *this;
  }
  SurveyBuilder &unread(const std::string &row, survey::Status status) {
    made.marks.push_back({.row = row, .station = station(std::to_string(++stations[row])), .status = status, .gauge = "ut"});
    return *this;
  }
  SurveyBuilder &on_doubler(const std::string &row, const std::string &figure) {
    marks(row, {figure});
    made.marks.back().plate = survey::Plate::doubler;
    return *this;
  }
  SurveyBuilder &pit(const std::string &id, const std::string &row, const std::string &at, const std::string &adjacent,
                     const std::string &depth) {
    made.pits.push_back({.id = id, .at = {.row = row, .station = station(at)}, .adjacent = mm(adjacent), .depth = mm(depth),
                         .gauge = "depth"});
    return *this;
  }
  SurveyBuilder &pitting(const std::string &count, const std::string &m2, const std::string &share) {
    made.zones.back().pitting = {.count = decimal(count), .area_m2 = decimal(m2), .share_percent = decimal(share)};
    return *this;
  }
  SurveyBuilder &criteria(const std::vector<std::string> &ids) {
    for (const auto &id : ids) made.criteria.push_back({.id = id});
    return *this;
  }
  SurveyBuilder &decide(const std::string &zone, const std::string &action, const std::string &criterion = "") {
    made.decisions.push_back({.zone = zone, .action = action, .criterion = criterion, .why = words("For the reasons given here.")});
    return *this;
  }

  survey::Survey made;

private:
  std::map<std::string, int> stations;
};

/// A thick bottom with deep pits. The builder's invoice gives 12 mm.
inline SurveyBuilder thick_bottom() {
  return SurveyBuilder()
      .zone("B", "12", "mill certificate", policy::Plating::bottom)
      .pitting("4", "20", "0.1")
      .row("BC", "B")
      .marks("BC", {"11.4", "11.5", "11.6", "11.4"})
      .pit("P1", "BC", "1.4", "11.4", "3.1")
      .pit("P2", "BC", "2.4", "11.4", "3.5")
      .criteria({"percent-20", "percent-25", "percent-30", "absolute-4.0", "absolute-3.0"});
}

} // namespace strakebook::sample
