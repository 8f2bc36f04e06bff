#pragma once

#include <optional>
#include <string>
#include <vector>

#include "strakebook/base/decimal.h"
#include "strakebook/base/length.h"
#include "strakebook/base/ratio.h"
#include "strakebook/steel/policy/fraction.h"

/// What is computed of an instrument: its doubt, its block checks, and what its figures may stand for.
namespace strakebook::assess {

using base::Length;
using base::Ratio;

/// One part of a doubt; u2 is exact, in nm2.
struct DoubtPart {
  std::string component;                ///< of the budget; empty: the u that the survey states
  policy::Fraction u2;
  std::optional<base::Decimal> degrees; ///< of freedom; absent: infinite
  Length u;                             ///< its root, rounded up to the next nanometre
};

/// A figure shown on the check block against the block's own thickness.
struct BlockCheck {
  enum class State { missing, agrees, differs } state = State::missing; ///< missing: no block, or no figure shown on it
  std::optional<Length> off;                                            ///< shown - block
};

/// What may be wrong with a gauge's figures. By a block check: the velocity, so that a figure is scaled by block/shown, or the
/// zero, so that shown - block is taken off it. By a true velocity: a figure is scaled by true/set, t = v dt / 2 (ASTM E797).
struct Correction {
  enum class By { before, after, true_velocity } by = By::before;
  Ratio scale;
  std::optional<Length> shift; ///< absent: by a true velocity
};

struct GaugeResult {
  std::string gauge;
  std::vector<DoubtPart> parts;       ///< of its budget, in the order written; one where u is stated
  Length u;                           ///< combined standard uncertainty (JCGM 100:2008, 5.1.2), rounded up to a nanometre
  std::optional<std::int64_t> degrees; ///< effective, whole (JCGM 100:2008, G.4.1); absent: infinite
  base::Decimal factor;               ///< that u is multiplied by: the rule's band, or Student's where that is greater
  Length band_nm;                     ///< the doubt w of its readings, rounded up to a nanometre
  std::optional<Length> thickest;     ///< figure that it took, the greatest: a share of thickness is taken of it
  bool checked = false;               ///< a block check is asked of it: it took readings of plate, or some block figure is given
  BlockCheck before, after;
  std::optional<Length> drift;        ///< after - before
  bool lapsed = false;                ///< its certificate ran out before the day of the inspection
  bool indicative = false;            ///< a check is asked of it and missing or failed, or its certificate lapsed
  std::vector<Correction> corrections; ///< both checks where either differs; the true velocity where one is given
  std::string worst;                  ///< lowest mark that it read on hull plate, of equals the first by row and station; empty: none
  Length worst_shown;                 ///< the figure there
};

} // namespace strakebook::assess
