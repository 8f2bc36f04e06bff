#include "strakebook/steel/afloat/afloat.h"

#include <algorithm>
#include <cmath>

#include "strakebook/base/approximate.h"

namespace strakebook::afloat {

namespace {

constexpr std::int64_t nm_in_mm = 1'000'000;

std::optional<Length> height_of(const std::optional<survey::LengthFact> &fact) {
  return fact ? std::optional(fact->length.value) : std::nullopt;
}

Length length_of(const survey::Vessel &vessel) {
  return (vessel.waterline_length ? *vessel.waterline_length : vessel.length).length.value;
}

std::optional<double> waterplane_m2(const survey::Survey &survey) {
  const auto &coefficient = survey.afloat.waterplane_coefficient;
  if (!coefficient) return std::nullopt;
  return base::in_metres(length_of(survey.vessel)) * base::in_metres(survey.vessel.beam.length.value) * base::approximate(*coefficient);
}

std::optional<double> density_of(const survey::Survey &survey, const policy::AfloatRule &rule) {
  const auto water = rule.waters.find(survey.afloat.water.text);
  return water == rule.waters.end() ? std::nullopt : std::optional(base::approximate(water->second));
}

Hull hull_of(const survey::Survey &survey, double waterplane, double density) {
  return {.length_m = base::in_metres(length_of(survey.vessel)),
          .by_waterline = survey.vessel.waterline_length.has_value(),
          .beam_m = base::in_metres(survey.vessel.beam.length.value),
          .coefficient = base::approximate(*survey.afloat.waterplane_coefficient),
          .density = density,
          .waterplane_m2 = waterplane,
          .tpc = waterplane * density / 100};
}

std::vector<Lack> lacking(const survey::Survey &survey, const policy::AfloatRule &rule) {
  const survey::AfloatFigures &given = survey.afloat;
  std::vector<Lack> out;
  if (!rule.waters.contains(given.water.text)) out.push_back(Lack::water);
  if (!given.waterplane_coefficient) out.push_back(Lack::coefficient);
  if (!given.freeboard) out.push_back(Lack::freeboard);
  if (!given.downflooding) out.push_back(Lack::downflooding);
  return out;
}

/// Kilograms over t/m3 and m2 are millimetres.
double sinkage_mm(const Hull &hull, double kg) { return kg / (hull.density * hull.waterplane_m2); }

std::optional<Length> lower_by(const std::optional<Length> &height, double mm) {
  if (!height) return std::nullopt;
  return *height - Length::nanometres(std::llround(mm * nm_in_mm));
}

/// Of a moment in kg m, positive towards the bow.
Trim trim_of(const Hull &hull, double moment, double lever_m) {
  const double mm = 12 * moment / (hull.density * hull.beam_m * hull.length_m * hull.length_m);
  const std::int64_t nm = std::llround(mm * nm_in_mm);
  return {.lever_m = lever_m, .signed_mm = mm, .by = nm > 0 ? Trim::By::bow : nm < 0 ? Trim::By::stern : Trim::By::even};
}

/// `on_her`: how far she has sunk before.
Step step(const Hull &hull, std::string item, double kg, double on_her, const Heights &as_found) {
  const double down = sinkage_mm(hull, kg), sunk = on_her + down;
  return {.item = std::move(item), .net_kg = kg, .sinkage_mm = down, .sunk_mm = sunk,
          .after = {lower_by(as_found.freeboard, sunk), lower_by(as_found.downflooding, sunk)}, .trim = std::nullopt};
}

/// Stations run along the whole of her, so the middle lies at half her length; positive is towards the bow.
double lever_m(const survey::Survey &survey, Length centre) {
  const double twice = base::in_metres(centre * 2 - survey.vessel.length.length.value);
  return (survey::counts_forward(survey.datum) ? twice : -twice) / 2;
}

Step placed(const survey::Survey &survey, const Hull &hull, Step step, const std::optional<Length> &centre) {
  if (!centre) return step;
  const double lever = lever_m(survey, *centre);
  step.trim = trim_of(hull, step.net_kg * lever, lever);
  return step;
}

/// All steps at once, where their moments add up to a lever.
Step together(const Hull &hull, const std::vector<Step> &steps, const Heights &as_found) {
  double kg = 0, moment = 0;
  bool known = true;
  for (const Step &one : steps) {
    kg += one.net_kg;
    known = known && one.trim;
    if (one.trim) moment += one.net_kg * one.trim->lever_m;
  }
  Step all = step(hull, "all", kg, 0, as_found);
  if (known && kg != 0) all.trim = trim_of(hull, moment, moment / kg);
  return all;
}

std::string word_of(works::Option::Kind kind) { return kind == works::Option::Kind::insert ? "insert" : "overplate"; }

std::string option_name(const works::Option &option) { return option.area + " " + word_of(option.kind); }

void add_whole(Afloat &found, const works::Works &works, works::Option::Kind kind) {
  std::vector<Step> steps;
  for (std::size_t i = 0; i < works.options.size(); ++i)
    if (works.options[i].kind == kind) steps.push_back(found.options[i]);
  if (steps.size() < 2) return;
  found.whole.push_back(together(*found.hull, steps, found.before));
  found.whole.back().item = "all " + word_of(kind);
}

void lower_to(std::optional<Length> &least, const std::optional<Length> &height) {
  if (height && (!least || *height < *least)) least = height;
}

} // namespace

Afloat float_with(const survey::Survey &survey, const assess::Assessment &, const policy::Policy &policy, const works::Works &works) {
  Afloat found;
  found.waterplane_m2 = waterplane_m2(survey);
  found.density = density_of(survey, policy.afloat);
  found.before = {height_of(survey.afloat.freeboard), height_of(survey.afloat.downflooding)};
  found.lacking = lacking(survey, policy.afloat);
  for (const works::Item &item : works.items) {
    found.steel_added = found.steel_added || item.adds_steel;
    if (item.adds_steel && !item.net_kg) found.unweighed.push_back(item.id);
  }
  if (!found.waterplane_m2 || !found.density) return found;
  const Hull &hull = found.hull.emplace(hull_of(survey, *found.waterplane_m2, *found.density));
  double sunk = 0;
  for (const works::Item &item : works.items) {
    if (!item.net_kg) continue;
    found.steps.push_back(placed(survey, hull, step(hull, item.id, *item.net_kg, sunk, found.before), item.centre));
    sunk = found.steps.back().sunk_mm;
  }
  if (!found.steps.empty()) found.all = together(hull, found.steps, found.before);
  for (const works::Option &option : works.options)
    found.options.push_back(placed(survey, hull, step(hull, option_name(option), option.net_kg, 0, found.before), option.centre));
  for (const auto kind : {works::Option::Kind::insert, works::Option::Kind::overplate}) add_whole(found, works, kind);
  return found;
}

const Step *option_step(const Afloat &found, const works::Option &option) {
  const auto step = std::ranges::find(found.options, option_name(option), &Step::item);
  return step == found.options.end() ? nullptr : &*step;
}

Heights lowest(const Afloat &found) {
  Heights least = found.before;
  for (const Step &one : found.steps) {
    lower_to(least.freeboard, one.after.freeboard);
    lower_to(least.downflooding, one.after.downflooding);
  }
  return least;
}

} // namespace strakebook::afloat
