#include "strakebook/steel/works/areas.h"

#include <algorithm>
#include <utility>

#include "strakebook/base/approximate.h"
#include "strakebook/steel/assess/ladder.h"
#include "strakebook/steel/survey/reach.h"
#include "strakebook/steel/works/frames.h"
#include "strakebook/steel/works/runs.h"

namespace strakebook::works {

namespace {

using Runs = std::vector<Run>; ///< of one area

bool across_the_keel(survey::Side a, survey::Side b) {
  return a != b && a != survey::Side::centre && b != survey::Side::centre;
}

bool adjoin(const survey::Survey &survey, const Run &a, const Run &b) {
  if (a.kind != b.kind || std::max(a.row, b.row) - std::min(a.row, b.row) != 1) return false;
  const survey::Row &one = survey.rows[a.row], &other = survey.rows[b.row];
  return one.zone == other.zone && !across_the_keel(one.side, other.side) && a.along.from < b.along.to && b.along.from < a.along.to;
}

/// Puts a run to the areas that it adjoins, which become one.
void gather(std::vector<Runs> &areas, const survey::Survey &survey, const Run &run) {
  Runs joined;
  std::erase_if(areas, [&](Runs &area) {
    if (std::ranges::none_of(area, [&](const Run &own) { return adjoin(survey, own, run); })) return false;
    joined.insert(joined.end(), area.begin(), area.end());
    return true;
  });
  joined.push_back(run);
  areas.push_back(std::move(joined));
}

std::optional<Length> breadth_of(const survey::Survey &survey, const std::vector<std::string> &rows) {
  Length sum;
  for (const auto &id : rows) {
    const auto &breadth = survey::row_of(survey, id)->stands_for;
    if (!breadth) return std::nullopt;
    sum = sum + breadth->value;
  }
  return sum;
}

void set_places(Area &area, const survey::Survey &survey, const Runs &runs) {
  std::optional<Length> least;
  for (const Run &run : runs) {
    const auto &row = survey.rows[run.row].id;
    if (std::ranges::find(area.rows, row) == area.rows.end()) area.rows.push_back(row);
    area.unseen += run.unseen;
    for (const Failing &place : run.places) {
      area.places.push_back(place.id);
      if (least && *least <= place.judged) continue;
      least = place.judged;
      area.at = place.id;
    }
  }
  area.least = *least;
}

Area area_of(const survey::Survey &survey, const Runs &runs) {
  Area area{.kind = runs.front().kind, .zone = survey.rows[runs.front().row].zone, .along = runs.front().along};
  for (const Run &run : runs)
    area.along = {std::min(area.along.from, run.along.from), std::max(area.along.to, run.along.to)};
  set_places(area, survey, runs);
  area.breadth = breadth_of(survey, area.rows);
  if (area.breadth) area.area_m2 = base::in_metres(area.along.length()) * base::in_metres(*area.breadth);
  const auto frames = framing(survey);
  area.frame_from = nearest(frames, area.along.from);
  area.frame_to = nearest(frames, area.along.to);
  return area;
}

std::vector<std::string> suggested(const survey::Survey &survey, const assess::Assessment &assessment, const policy::Policy &policy,
                                   const Area &area) {
  const assess::ZoneResult &zone = assess::zone_result(assessment, area.zone);
  if (zone.too_few) return {};
  std::vector<Length> used;
  for (const assess::MarkResult &mark : assessment.marks)
    if (mark.used && survey::row_of(survey, survey.marks[mark.mark].row)->zone == area.zone) used.push_back(mark.judged());
  const bool under_pit = survey::pit_of(survey, area.at) != nullptr;
  return assess::suggest(policy, {area.least, under_pit, zone.extent}, zone.highest_original, used).actions;
}

bool covers_place(const survey::Survey &survey, const survey::Reach &reach, const std::string &id) {
  if (const auto *mark = survey::mark_of(survey, id)) return survey::covers(survey, reach, mark->row, mark->station.value);
  const auto *pit = survey::pit_of(survey, id);
  return survey::covers(survey, reach, pit->at.row, pit->at.station.value);
}

bool meets(const survey::Survey &survey, const survey::Reach &reach, const Runs &runs) {
  return std::ranges::any_of(runs, [&](const Run &run) {
    return survey::overlap(survey, reach, {.rows = {survey.rows[run.row].id}, .from = base::Measured{run.along.from}, .to = base::Measured{run.along.to}});
  });
}

void set_cover(Area &area, const survey::Survey &survey, const Runs &runs) {
  std::vector<const survey::Reach *> reaches;
  const auto look = [&](const auto &items, std::vector<std::string> &into) {
    for (const auto &item : items) {
      if (!survey::written(item.at) || !meets(survey, item.at, runs)) continue;
      into.push_back(item.id);
      reaches.push_back(&item.at);
    }
  };
  look(survey.steelwork, area.covered_by);
  look(survey.recommendations, area.recommended_by);
  for (const auto &place : area.places)
    if (std::ranges::none_of(reaches, [&](const survey::Reach *reach) { return covers_place(survey, *reach, place); }))
      area.uncovered.push_back(place);
}

} // namespace

std::vector<Area> areas_of(const survey::Survey &survey, const assess::Assessment &assessment, const policy::Policy &policy) {
  std::vector<Runs> gathered;
  for (std::size_t row = 0; row < survey.rows.size(); ++row)
    for (const Run &run : runs_of(survey, assessment, row)) gather(gathered, survey, run);
  const auto place = [](const Run &run) { return std::pair(run.row, run.along.from); };
  for (Runs &runs : gathered) std::ranges::stable_sort(runs, {}, place);
  std::ranges::stable_sort(gathered, {}, [&](const Runs &runs) {
    const auto &zone = survey.rows[runs.front().row].zone;
    return std::pair(std::ranges::find(survey.zones, zone, &survey::Zone::id) - survey.zones.begin(), place(runs.front()));
  });
  std::vector<Area> out;
  for (const Runs &runs : gathered) {
    out.push_back(area_of(survey, runs));
    out.back().id = "A" + std::to_string(out.size());
    out.back().suggested = suggested(survey, assessment, policy, out.back());
    set_cover(out.back(), survey, runs);
  }
  return out;
}

} // namespace strakebook::works
