#pragma once

#include <string>
#include <vector>

#include <nlohmann/json_fwd.hpp>

#include "strakebook/steel/assess/assessment.h"

/// Whether a verdict stays when limit, original thickness and doubt move inside their ranges.
namespace strakebook::robustness {

using assess::Length;
using assess::Ratio;
using assess::Verdict;

/// One combination that was tried at one place. The verdict is exact, by assess::judged, of what the place is judged by.
struct Tried {
  assess::CriterionResult result; ///< verdict, limit and margin; it belongs to no criterion
  Length band_nm;                 ///< the doubt w, rounded up to a nanometre, for print
  bool used = false;              ///< it is the one by which the zone is measured
};

/// An absolute limit, with the doubt taken so many times.
struct AtLimit {
  Length limit;
  base::Decimal doubt; ///< factor on the place's standard uncertainty
  Tried tried;
};

/// A share of an original that may go, with the doubt as it is.
struct AtLoss {
  Ratio loss;
  Length original;
  Tried tried;
};

/// Every combination at one place: each limit under each doubt, each share of each original.
struct Grid {
  std::string id; ///< mark or pit
  assess::Subject::Kind kind = assess::Subject::Kind::plate;
  std::vector<AtLimit> limits;
  std::vector<AtLoss> losses;
};

/// What is tried, each ascending. The criterion that the zone is measured by and the doubt as it is (1) are among them.
struct Ranges {
  std::vector<Length> limits;
  std::vector<base::Decimal> doubts;
  std::vector<Ratio> losses;
  /// Thinnest delivery, nominal and thickest delivery over the tolerances named, the nominal alone without one; on a weak basis
  /// the sizes alive.
  std::vector<Length> originals;
};

/// The zone's verdict with one thing moved and all else as it is used.
struct Moved {
  enum class What { limit, loss, original, doubt } what = What::limit;
  Length length;       ///< of limit and original
  Ratio loss;          ///< of loss
  base::Decimal doubt; ///< of doubt
  Verdict verdict = Verdict::not_applicable;
  bool used = false;   ///< not moved at all
};

/// Whether the verdict of any place of the zone changes with one of them inside its range, all else as it is used. `limit`: the limit or, of a share
/// of the original, the share. `original`: never of an absolute limit.
struct Flips {
  bool limit = false, original = false, doubt = false;
};

struct InZone {
  std::string zone;
  std::string criterion;                     ///< that the zone is measured by; empty: none applies, nothing is used or moved
  Verdict verdict = Verdict::not_applicable; ///< under it: the gravest of the zone's lowest plate and worst pit
  Ranges over;
  std::vector<Grid> grids;                   ///< one for each subject of the zone, same order
  std::vector<Moved> moved;                  ///< by what is moved, then ascending
  Flips flips;
};

struct Robustness {
  std::vector<InZone> zones; ///< in the order of the survey
};

Robustness robustness(const survey::Survey &survey, const assess::Assessment &assessment, const policy::Policy &policy);

const InZone &in_zone(const Robustness &found, std::string_view zone);

/// All of it for programs; lengths as decimal strings in mm.
nlohmann::ordered_json json(const Robustness &found);

} // namespace strakebook::robustness
