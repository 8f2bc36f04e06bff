#pragma once

#include <optional>
#include <string>
#include <vector>

#include <nlohmann/json_fwd.hpp>

#include "strakebook/steel/assess/assessment.h"
#include "strakebook/steel/quantity/quantity.h"
#include "strakebook/steel/works/works.h"

/// How she would float with the steel that the schedule adds: straight sides, level but for the hint of trim. Not a stability
/// assessment. Weights, sinkage and trim are doubles: they rest on a coefficient; heights are rounded to a nanometre.
namespace strakebook::afloat {

using base::Length;

/// Above the water; absent where the survey does not say.
struct Heights {
  std::optional<Length> freeboard;    ///< least of the deck edge
  std::optional<Length> downflooding; ///< of the lowest opening
};

/// What she is reckoned by.
struct Hull {
  double length_m = 0;      ///< of the waterline, or over all where that is not given
  bool by_waterline = false;
  double beam_m = 0;
  double coefficient = 0;   ///< of the waterplane
  double density = 0;       ///< t/m3
  double waterplane_m2 = 0; ///< Aw = L B Cw
  double tpc = 0;           ///< tonnes that sink her one centimetre: Aw rho / 100 (straight sides)
};

/// What a weight does to her trim, as to a box of her length and beam: 12 W x / (rho B L^2), over the whole length.
struct Trim {
  enum class By { even, bow, stern };
  double lever_m = 0;   ///< from the middle of her length; positive towards the bow
  double signed_mm = 0; ///< positive by the bow
  By by = By::even;     ///< the end that goes down; even where it is less than a nanometre
};

/// One weight put on her.
struct Step {
  std::string item;        ///< "S1"; "all"; of one way to cover an area "A1 insert" or "A1 overplate"
  double net_kg = 0;       ///< of this step alone; negative where more comes off than goes on
  double sinkage_mm = 0;   ///< of this step alone: W / (rho Aw)
  double sunk_mm = 0;      ///< the same with what the step stands on: an item of the schedule on the items before it
  Heights after;           ///< as found less sunk_mm
  std::optional<Trim> trim; ///< of this step alone; absent where its place is not known
};

/// What is not given and would be needed.
enum class Lack { water, coefficient, freeboard, downflooding };

struct Afloat {
  std::optional<double> waterplane_m2, density; ///< absent: the coefficient, or the water, is not given
  std::optional<Hull> hull;           ///< absent: one of them is not given
  Heights before;                     ///< as found
  std::vector<Step> steps;            ///< items of the schedule whose weight is known, in its order
  std::optional<Step> all;            ///< of them together
  std::vector<Step> options;          ///< ways to cover an area, each by itself, one for each of Works::options
  std::vector<Step> whole;            ///< every area covered in one way at once; none where fewer than two are
  std::vector<Lack> lacking;
  std::vector<std::string> unweighed; ///< items that add steel, and their weight cannot be reckoned
  bool steel_added = false;           ///< an item of the schedule adds steel
};

Afloat float_with(const survey::Survey &survey, const assess::Assessment &assessment, const policy::Policy &policy, const works::Works &works);

/// The step of one way to cover an area; nullptr where it is not reckoned.
const Step *option_step(const Afloat &found, const works::Option &option);

/// The least heights, as found and at every item of the schedule.
Heights lowest(const Afloat &found);

/// All of it for programs; heights as found as decimal strings in mm, what is reckoned as numbers.
nlohmann::ordered_json json(const Afloat &found);

/// What a reader may want to check, with formula and inputs.
std::vector<quantity::Quantity> quantities(const Afloat &found);

} // namespace strakebook::afloat
