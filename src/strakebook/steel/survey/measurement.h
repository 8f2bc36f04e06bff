#pragma once

#include <optional>
#include <string>
#include <vector>

#include "strakebook/base/length.h"
#include "strakebook/steel/policy/policy.h"
#include "strakebook/steel/survey/words.h"

namespace strakebook::survey {

/// One component of a gauge's budget of doubt. Exactly one of u, half_width and share is given.
struct DoubtComponent {
  std::string id;                                ///< one of doubt_components(): "resolution"
  std::optional<base::Measured> u;               ///< standard uncertainty
  std::optional<base::Measured> half_width;      ///< of the interval that it lies in, all of it equally likely
  std::optional<base::Decimal> share;            ///< standard uncertainty in percent of the thickness
  std::optional<base::Decimal> degrees;          ///< of freedom, 1 or more; absent: infinite
  Words why;
  base::SourceSpan span;
};

/// An instrument, described without make or model.
struct Gauge {
  std::string id; ///< "ut", "pit"
  Words name;     ///< "ultrasonic thickness gauge"
  std::optional<base::Measured> crystal; ///< diameter of plate that one reading takes in
  Words mode, probe, velocity, resolution, serial, setting;
  Words certificate;
  Given<base::Date> certificate_until;
  std::optional<base::Measured> block, before,
      after;      ///< block check: known thickness, figure shown before and after
  std::optional<base::Decimal> true_velocity; ///< m/s, where the one that was set is known to be wrong
  Words true_velocity_basis;
  std::optional<base::Length> u;     ///< standard uncertainty; absent: the budget gives it
  Words u_basis;                     ///< how u was set
  std::vector<DoubtComponent> doubt; ///< its budget; empty: u is given
  base::SourceSpan span;
};

struct Datum {
  Words from;    ///< "fore face of stem"
  Words towards; ///< "aft"
  Words height;  ///< height datum
  std::optional<base::Measured> spacing;
  std::optional<base::Measured> frame_zero; ///< station of frame 0
  Words frames_run; ///< "with stations" or "against stations"
  Words swim; ///< how a curved swim is taped
  Words frames;
  base::Unit station_unit = base::Unit::metre;
  base::SourceSpan span;
};

/// Original thickness: what is assumed and on what basis.
struct Original {
  base::Measured nominal;
  std::string basis;                   ///< id of a policy basis
  Words source;                        ///< the document or person
  std::vector<std::string> tolerances; ///< ids of policy tolerances; several where the standard is not known
  Words assumption; ///< for a weak basis: why nominals far above the thickest reading are set aside
  base::SourceSpan span;
};

/// Declared pitting of a zone: so many pits over an area, covering a share of it. The extent rule reads
/// these.
struct PittingExtent {
  base::Decimal count;
  base::Decimal area_m2;
  base::Decimal share_percent;
  std::optional<base::Measured> spacing; ///< least distance between two of them
  base::SourceSpan span;
};

/// Blocks of equal area looked over whole, with the deepest pit of each.
struct PitBlocks {
  base::Decimal block_m2;
  int blocks = 0;                      ///< how many were looked over
  std::vector<base::Measured> deepest; ///< depth of the deepest pit in each; 0 where a block has none
  std::string gauge;                   ///< the depth gauge; may be empty
  Words chosen;                        ///< how the blocks were chosen
  base::SourceSpan span;
};

struct Zone {
  std::string id;
  Words name;
  policy::Plating plating = policy::Plating::side;
  Words bilge; ///< of bilge plating: "round" or "hard chine"
  Original original;
  std::optional<base::Decimal> area_m2;
  Words preparation;   ///< how clean it was
  Words general_order; ///< context: how the plate is otherwise
  std::optional<PittingExtent> pitting;
  std::optional<PitBlocks> pit_blocks;
  base::SourceSpan span;
};

enum class Side { port, centre, starboard };

struct Row {
  std::string id; ///< "PW"
  std::string zone;
  Side side = Side::port;
  Words name;   ///< "wind-and-water"
  Words height; ///< where it runs
  std::optional<base::Measured> stands_for; ///< breadth of plating that its marks stand for
  base::SourceSpan span;
};

/// queried: a figure was noted with a query behind it ("5/16?"); it is kept, and never used.
enum class Status { read, no_echo, unstable, not_cleaned, no_access, weld_or_fitting, rejected, queried };
enum class Surface { bare, coated_echo_to_echo, coated_single_echo };
enum class Plate { hull, doubler };
enum class Reduction { least_of_repeats, mean_of_repeats }; ///< how the repeats at a mark become one figure
enum class Separator { comma, semicolon, tab };             ///< what stands between the cells of a file of readings

/// One planned mark. Not read: `repeats` is empty (or holds rejected or queried figures) and status says why.
struct Mark {
  std::string row;
  base::Measured station;
  std::vector<base::Measured> repeats; ///< as displayed, in order
  Status status = Status::read;
  Surface surface = Surface::bare;
  Plate plate = Plate::hull;
  Reduction reduce = Reduction::least_of_repeats;
  std::optional<base::Measured> coating; ///< dry film that a single echo was read through; absent: not given
  std::string gauge;
  Words why; ///< reason of a rejection or query, or a remark
  base::SourceSpan span;
  std::string id() const { return row + " " + station.raw; } ///< "PW 9"
};

struct Pit {
  std::string id; ///< "P3"
  Place at;
  base::Measured adjacent, depth;
  std::optional<base::Measured> across;
  Words face;                                         ///< outside or inside
  Words activity;                                     ///< active or old
  std::optional<base::Decimal> per_m2, share_percent; ///< pitting about it
  std::string gauge;                                  ///< the depth gauge
  std::vector<std::string> photos;
  Words note;
  base::SourceSpan span;
};

/// One reading of the plate behind a doubler, taken from inside. It stands alone: nothing is added to it.
struct InnerReading {
  base::Measured reading;
  Place at;
  std::string gauge;
  base::SourceSpan span;
};

struct Doubler {
  std::string id; ///< "D1"
  Reach over;
  Words edges, plugs, drumminess, note;
  std::optional<base::Measured> outer; ///< thickness of the outer plate as read
  std::optional<InnerReading> from_inside;
  std::vector<std::string> photos;
  base::SourceSpan span;
};

/// What eye or hammer found at a place.
struct Note {
  std::string id; ///< "N2"
  enum class Kind { seen, hammer } kind = Kind::seen;
  Reach at;
  Words text;
  std::vector<std::string> photos;
  base::SourceSpan span;
};

/// "None found": looked for at a place and not there.
struct NoneFound {
  Words what;
  Reach at;
  Words how;
};

struct Photo {
  std::string id; ///< "4"
  Words file;     ///< inside the folder; not given: a placeholder
  Words not_taken, withheld; ///< why there is no picture: one of them at the most, and never beside a file
  Given<base::Date> taken;
  Place at;
  Words looking; ///< square on, forward, aft, up, inboard ...
  Words caption;
  base::SourceSpan span;
};

} // namespace strakebook::survey
