#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include <nlohmann/json_fwd.hpp>

#include "strakebook/steel/assess/assessment.h"
#include "strakebook/steel/quantity/quantity.h"

/// The steel to buy: places that do not meet their limit gathered into areas, and the quantities of the schedule. Weights and
/// areas are doubles: no verdict turns on them.
namespace strakebook::works {

using base::Length;

/// The frame that a place is nearest to; of two that are as near, the one of the higher number.
struct NearestFrame {
  std::int64_t number = 0;
  Length off; ///< place - the frame's own station: positive on the side to which stations count
};

struct Stretch {
  Length from, to; ///< stations, from <= to
  Length length() const { return to - from; }
  Length middle() const { return Length::nanometres(from.nm() + (to - from).nm() / 2); } ///< to a nanometre, down
};

/// Places that do not meet the limit of their zone, gathered. A run is a stretch of one row: a planned station is in it where a
/// mark or pit there does not meet, by one kind throughout; one whose mark shows nothing (not read, on a doubler) does not end it
/// whatever a pit there keeps, any other planned station does. Its ends lie half-way to the planned stations that end it, to a
/// nanometre outwards; where none does, at the last planned mark of the row. Runs of one kind that lie over each other on adjoining
/// rows are one area. Rows adjoin that follow each other in the survey, within a zone, and do not lie one to port and one to
/// starboard.
struct Area {
  enum class Kind { falls_short, too_close };
  std::string id; ///< "A1"; by zone, then by first row and station
  Kind kind = Kind::falls_short;
  std::string zone;
  std::vector<std::string> rows;
  Stretch along;                   ///< of no length where its row has one planned mark
  std::optional<Length> breadth;   ///< sum of what its rows stand for; absent: a row does not say
  std::optional<double> area_m2;   ///< the rectangle about it
  std::vector<std::string> places; ///< marks and pits that do not meet, row by row, stations ascending
  int unseen = 0;                  ///< planned marks within it that show nothing of the hull plate
  Length least;                    ///< judged figure, of its places
  std::string at;                  ///< where that is
  std::vector<std::string> suggested;      ///< the ladder's actions for `least`, as if it were the worst of its zone
  std::vector<std::string> covered_by;     ///< schedule items whose reach meets it
  std::vector<std::string> recommended_by; ///< recommendations likewise
  std::vector<std::string> uncovered;      ///< its places that none of them covers
  std::optional<NearestFrame> frame_from, frame_to;
};

/// Plug welds of a doubler: evenly spaced rows, so that no two rows, and no row and edge, lie further apart than the pitch.
struct Plugs {
  std::int64_t along = 0, across = 0;
  Length pitch; ///< as the survey gives it
  std::int64_t count() const { return along * across; }
};

/// One item of the schedule as far as its figures allow; what they do not allow is absent.
struct Item {
  std::string id;     ///< "S1"
  std::string action; ///< policy action id; may be empty
  bool adds_steel = false;
  bool doubler = false; ///< laid over: all its weight is added
  bool insert = false;  ///< let in: what it takes the place of comes off
  std::optional<Length> length, breadth, thickness;
  std::optional<Length> radius;         ///< absent: not given, and its area is reckoned as of square corners
  std::optional<double> plate_m2;       ///< of length and breadth, less the corners; absent without a thickness, too
  std::optional<double> weight_kg;      ///< of the new plate
  std::optional<double> mean_removed_mm; ///< of an insert: mean of what the used marks within its reach are judged by
  int removed_marks = 0;                ///< that it is the mean of
  std::optional<double> removed_kg;     ///< of an insert
  std::optional<double> net_kg;         ///< what the hull is heavier by; absent where no steel is added, or it cannot be reckoned
  std::optional<double> weld_m;         ///< round its edge
  std::optional<Plugs> plugs;           ///< of a doubler broader than the house's bound, whose pitch is given
  std::optional<Length> centre;         ///< station of the middle of its reach
  std::optional<NearestFrame> frame;    ///< of the centre
};

/// Has a length, a breadth, a thickness, and corners that go into it.
bool outlined(const Item &item);

/// An area covered by one plate of its own rectangle: let in, or laid over. Laps and corners come on top and are not in it.
struct Option {
  enum class Kind { insert, overplate };
  std::string area;   ///< "A1"
  Kind kind = Kind::insert;
  Length thickness;   ///< of the first schedule item that covers the area and gives one, else the zone's nominal
  std::string thickness_from; ///< that item's id; empty: the nominal
  double area_m2 = 0;
  double weight_kg = 0;        ///< of the new plate
  double mean_removed_mm = 0;  ///< of an insert: mean of what the used marks within the area are judged by
  int removed_marks = 0;       ///< that it is the mean of
  double removed_kg = 0;       ///< of an insert
  double net_kg = 0;           ///< what the hull would be heavier by
  Length centre;      ///< station of its middle
};

struct Works {
  std::vector<Area> areas;
  std::vector<Item> items;     ///< one for each Survey::steelwork, same order
  std::vector<Option> options; ///< for each area with a length and a breadth: an insert where it has a used mark, and an overplate
  base::Decimal density;       ///< kg per m2 and mm
};

Works reckon(const survey::Survey &survey, const assess::Assessment &assessment, const policy::Policy &policy);

/// All of it for programs; lengths as decimal strings in mm, centres in m.
nlohmann::ordered_json json(const Works &found);

/// What a reader may want to check, with formula and inputs.
std::vector<quantity::Quantity> quantities(const Works &found);

} // namespace strakebook::works
