#include <algorithm>
#include <map>
#include <set>

#include "strakebook/base/text.h"
#include "strakebook/base/yaml_text.h"
#include "strakebook/base/yaml_tree.h"
#include "strakebook/issuing.h"
#include "strakebook/report/earlier_grid.h"
#include "strakebook/steel/assess/spots.h"
#include "strakebook/steel/survey/closing.h"

/// A survey to fill in that starts from another of the same boat.
namespace strakebook {

namespace {

using base::YamlNode;

YamlNode scalar(std::string text) {
  YamlNode node;
  node.kind = YamlNode::Kind::scalar;
  node.text = std::move(text);
  return node;
}

void put(YamlNode &map, std::string key, YamlNode value) {
  map.kind = YamlNode::Kind::map;
  map.entries.push_back({std::move(key), {}, std::move(value)});
}
void put(YamlNode &map, std::string key, const std::string &text) {
  if (!text.empty()) put(map, std::move(key), scalar(text));
}

/// "key: value" as it stands in a file.
std::string written(const std::string &key, YamlNode value) {
  if (value.kind == YamlNode::Kind::empty) return {};
  YamlNode top;
  put(top, key, std::move(value));
  return base::yaml_text(top);
}

std::string as_remarks(const std::string &text) {
  std::string out;
  for (std::size_t begin = 0; begin < text.size();) {
    const std::size_t end = std::min(text.find('\n', begin), text.size() - 1) + 1;
    out += "# " + text.substr(begin, end - begin);
    begin = end;
  }
  return out;
}

std::string report_words(const Case &the_case) {
  const auto &report = the_case.survey.report;
  return report.number.text + ", issue " + std::to_string(report.issue);
}

std::string part_of(const YamlNode &file, const std::string &key) {
  const YamlNode *found = file.find(key);
  return found == nullptr ? std::string() : written(key, *found);
}

/// Zones without what is seen and counted anew each time.
std::string zones(const YamlNode &file) {
  YamlNode all = *file.find("zones");
  for (auto &zone : all.entries)
    std::erase_if(zone.value.entries, [](const YamlNode::Entry &entry) {
      return std::set<std::string_view>{"preparation", "general-order", "pitting", "pit-blocks"}.contains(entry.key);
    });
  return "# preparation, general-order, pitting and pit-blocks of each zone are to be seen again\n" + written("zones", std::move(all));
}

/// What the gauges were, as remarks: certificate and block checks are of another day.
std::string gauges(const YamlNode &file) {
  const std::string last = part_of(file, "gauges");
  return "# the gauges of the last survey: certificate, block, before and after are to be checked again\n" + as_remarks(last);
}

/// The greatest doubt of those gauges that a list of places was read with.
template <class Places, class GaugeOf> std::string greatest_u(const Places &places, GaugeOf gauge_of) {
  std::optional<base::Length> most;
  for (const auto &place : places)
    if (const assess::GaugeResult *gauge = gauge_of(place); gauge != nullptr && (!most || *most < gauge->u)) most = gauge->u;
  return most ? base::mm_exact(*most, 2) : std::string();
}

YamlNode earlier_datum(const Case &the_case) {
  const auto &datum = the_case.survey.datum;
  const bool feet = datum.station_unit == base::Unit::foot;
  YamlNode out;
  put(out, "from", datum.from.text);
  put(out, "counts", survey::counts_forward(datum) ? "forward" : "aft");
  put(out, "zero", feet ? "0 ft" : "0 m");
  put(out, "stations-in", feet ? "ft" : "m");
  return out;
}

YamlNode earlier_pits(const Case &the_case) {
  YamlNode out;
  for (const auto &pit : the_case.survey.pits) {
    YamlNode one;
    put(one, "at", pit.at.row + " " + pit.at.station.raw);
    put(one, "adjacent", pit.adjacent.raw);
    put(one, "depth", pit.depth.raw);
    put(out, pit.id, std::move(one));
  }
  return out;
}

YamlNode earlier_readings(const GridToCopy &grid) {
  YamlNode out;
  put(out, "file", grid.file);
  put(out, "separator", grid.separator);
  put(out, "unit", grid.unit);
  put(out, "stations", grid.stations);
  put(out, "marks", grid.marks);
  return out;
}

/// This survey as the next one has to name it.
YamlNode as_earlier(const Case &the_case, const GridToCopy &grid) {
  const auto &survey = the_case.survey;
  const auto &gauges = the_case.assessment.gauges;
  YamlNode out;
  put(out, "inspected", survey.report.inspected ? base::iso(survey.report.inspected->value) : std::string());
  put(out, "number", report_words(the_case));
  put(out, "by", survey.surveyor.name.text);
  put(out, "source", "document, report " + survey.report.number.text);
  std::set<std::string> names;
  for (const auto &mark : survey.marks)
    if (const auto *gauge = survey::gauge_of(survey, mark.gauge)) names.insert(gauge->name.given() ? gauge->name.text : gauge->id);
  put(out, "gauge", base::joined(std::vector<std::string>(names.begin(), names.end()), "; "));
  put(out, "u", greatest_u(survey.marks, [&](const survey::Mark &mark) { return assess::gauge_result(the_case.assessment, mark.gauge); }));
  put(out, "depth-u", greatest_u(survey.pits, [&](const survey::Pit &pit) { return assess::depth_gauge(gauges, pit); }));
  put(out, "u-basis", "as report " + survey.report.number.text + " gives it");
  put(out, "datum", earlier_datum(the_case));
  put(out, "readings", earlier_readings(grid));
  if (!survey.pits.empty()) put(out, "pits", earlier_pits(the_case));
  return out;
}

std::string year_of(const Case &the_case) {
  const auto &day = the_case.survey.report.inspected;
  return day ? std::to_string(day->value.year) : std::string("last");
}

std::string earlier_surveys(const Case &the_case, const YamlNode &file) {
  const GridToCopy grid = grid_to_copy(the_case.survey, file, year_of(the_case));
  YamlNode all = file.find("earlier-surveys") == nullptr ? YamlNode{} : *file.find("earlier-surveys");
  std::string id = "V" + year_of(the_case);
  while (all.find(id) != nullptr) id += "b";
  put(all, id, as_earlier(the_case, grid));
  return grid.what_to_do + written("earlier-surveys", std::move(all));
}

YamlNode carried_item(std::string from, std::string item, std::string title, const std::string &klass, const std::string &deadline,
                      const survey::Given<base::Date> &by) {
  YamlNode out;
  put(out, "from", std::move(from));
  put(out, "item", std::move(item));
  put(out, "title", std::move(title));
  put(out, "class", klass);
  put(out, "deadline", deadline);
  put(out, "by", by ? base::iso(by->value) : std::string());
  return out;
}

/// Every recommendation that no addendum closed, and what this survey itself had carried and did not find closed.
std::string carried(const Case &the_case) {
  const auto &survey = the_case.survey;
  YamlNode all;
  int number = 0;
  for (const auto &one : survey.carried)
    if (survey::still_open(one))
      put(all, std::to_string(++number), carried_item(one.from.text, one.item.text, one.title.text, one.klass, one.deadline.text, one.by));
  for (const auto *one : survey::open_items(survey))
    put(all, std::to_string(++number), carried_item("report " + report_words(the_case), one->id, one->title.text, one->klass, one->deadline.text, one->by));
  if (number == 0) return "# nothing was left open\n";
  return "# of each, what this survey finds: now: open | closed | overtaken | not seen, found: in words, evidence: [marks, photos]\n" +
         written("carried", std::move(all));
}

/// The empty survey in its parts, by key, in their order; first what stands before them all.
std::vector<std::pair<std::string, std::string>> skeleton_parts() {
  const std::string whole = survey_skeleton();
  std::vector<std::pair<std::string, std::string>> parts;
  for (std::size_t begin = 0; begin < whole.size();) {
    const std::size_t gap = whole.find("\n\n", begin);
    const std::size_t end = gap == std::string::npos ? whole.size() : gap + 2;
    const std::string part = whole.substr(begin, end - begin);
    const std::size_t from = part.starts_with("# ") ? 2 : 0;
    parts.emplace_back(part.substr(from, part.find(':') - from), part);
    begin = end;
  }
  return parts;
}

} // namespace

std::string next_skeleton(const Case &the_case) {
  base::Diagnostics found;
  const YamlNode file = base::parse_yaml(the_case.survey.span.file, found);
  const std::map<std::string, std::string> kept = {
      {"house", part_of(file, "house")},       {"vessel", part_of(file, "vessel")},
      {"datum", part_of(file, "datum")},       {"gauges", gauges(file)},
      {"zones", zones(file)},                  {"rows", part_of(file, "rows")},
      {"earlier-surveys", earlier_surveys(the_case, file)}, {"carried", carried(the_case)}};
  std::string out = "# The next survey after report " + report_words(the_case) + ". What was measured, seen or judged then is not in it.\n";
  for (const auto &[key, part] : skeleton_parts()) {
    const auto own = kept.find(key);
    out += own == kept.end() ? part : own->second + "\n";
  }
  return out;
}

} // namespace strakebook
