#include "strakebook/report/earlier_grid.h"

#include <algorithm>
#include <iterator>
#include <map>

#include "strakebook/steel/survey/readings.h"
#include "strakebook/steel/survey/vocabulary.h"

namespace strakebook {

namespace {

using base::YamlNode;

/// The one set of readings of the file, if it is a grid in a file of its own; nullptr: it is not.
const YamlNode *one_grid(const YamlNode &written) {
  const YamlNode *sets = written.find("readings");
  if (sets == nullptr) return nullptr;
  const YamlNode *set = sets->kind != YamlNode::Kind::list ? sets : sets->items.size() == 1 ? &sets->items.front() : nullptr;
  if (set == nullptr || set->find("file") == nullptr || set->find("form") == nullptr) return nullptr;
  return set->find("form")->text == "grid" ? set : nullptr;
}

std::string text_at(const YamlNode &map, std::string_view key) {
  const YamlNode *found = map.find(key);
  return found == nullptr ? std::string() : found->text;
}

std::string figure(const base::Measured &reading) {
  if (reading.unit == base::Unit::millimetre || base::unit_written(reading)) return reading.raw;
  return reading.raw + " " + std::string(base::name_of(reading.unit));
}

/// A mark as a cell of a grid in mm: every figure shown, then the word of one that was not used.
std::string cell_of(const survey::Mark &mark) {
  std::vector<std::string> words;
  for (const auto &reading : mark.repeats) words.push_back(figure(reading));
  for (const auto &choice : survey::choices_of(mark.status))
    if (choice.value == mark.status && mark.status != survey::Status::queried) words.emplace_back(choice.word);
  return base::joined(words, " ");
}

/// A figure of a doubler is not one of the hull's plate: no mark of the next survey is compared with it.
bool on_hull(const survey::Mark &mark) { return mark.plate == survey::Plate::hull; }

/// Every mark of the hull's own plate, a line a station, a column a row.
std::string grid_of(const survey::Survey &survey) {
  std::map<base::Length, std::map<std::string, const survey::Mark *>> lines;
  for (const auto &mark : survey.marks)
    if (on_hull(mark)) lines[mark.station.value][mark.row] = &mark;
  std::string out = survey.datum.station_unit == base::Unit::foot ? "# station ft" : "# station m";
  for (const auto &row : survey.rows) out += "," + row.id;
  for (const auto &[station, marks] : lines) {
    out += "\n# " + marks.begin()->second->station.raw;
    for (const auto &row : survey.rows) {
      const auto found = marks.find(row.id);
      out += "," + (found == marks.end() ? std::string("none-planned") : cell_of(*found->second));
    }
  }
  return out + "\n";
}

std::string lines_of(const survey::Survey &survey) {
  std::vector<base::Length> stations;
  for (const auto &mark : survey.marks)
    if (on_hull(mark)) stations.push_back(mark.station.value);
  std::ranges::sort(stations);
  const auto repeated = std::ranges::unique(stations);
  return std::to_string(stations.size() - repeated.size());
}

} // namespace

GridToCopy grid_to_copy(const survey::Survey &survey, const YamlNode &written, const std::string &year) {
  const std::string file = "earlier/" + year + ".csv";
  const auto marks = std::ranges::count_if(survey.marks, on_hull);
  if (const YamlNode *set = one_grid(written); set != nullptr && marks == std::ssize(survey.marks))
    return {.file = file, .separator = text_at(*set, "separator"), .unit = text_at(*set, "unit"), .stations = text_at(*set, "stations"),
            .marks = text_at(*set, "marks"),
            .what_to_do = "# copy " + text_at(*set, "file") + " of the last survey's folder to " + file + " in this one's\n"};
  return {.file = file, .separator = "comma", .unit = "mm", .stations = lines_of(survey), .marks = std::to_string(marks),
          .what_to_do = "# save these lines, without the signs before them, as " + file + "\n" + grid_of(survey)};
}

} // namespace strakebook
