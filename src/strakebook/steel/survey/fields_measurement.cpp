#include "strakebook/steel/survey/fields.h"
#include "strakebook/steel/survey/pit_figures.h"

/// What was measured, where, with what.
namespace strakebook::survey {

void fields(Fields &f, Datum &d) {
  f.value(required("from", "where stations count from"), d.from);
  f.value(required("towards", "the direction in which they count"), d.towards);
  f.value(maybe("height", "what heights count from"), d.height);
  f.value(maybe("spacing", "distance between stations", Rule::unit_written), d.spacing);
  f.value(maybe("frame-zero", "station of frame 0", Rule::unit_written_or_none), d.frame_zero);
  f.value(maybe("frames-run", "which way frames are numbered", Rule::none, "with stations|against stations"), d.frames_run);
  f.value(maybe("swim", "how a curved swim was taped"), d.swim);
  f.value(maybe("frames", "how frames are numbered"), d.frames);
  f.value(required("station-unit", "unit of every station", Rule::none, "m|ft"), d.station_unit);
}

void fields(Fields &f, PittingExtent &p) {
  f.value(required("count", "number of pits", Rule::positive), p.count);
  f.value(required("over-m2", "on so many square metres", Rule::positive), p.area_m2);
  f.value(required("share-percent", "share of that area", Rule::percent), p.share_percent);
  f.value(maybe("spacing", "least distance between two of them", Rule::unit_written), p.spacing);
}

void fields(Fields &f, PitBlocks &p) {
  f.value(required("block-m2", "area of one block, in square metres", Rule::positive), p.block_m2);
  f.value(required("blocks", "how many blocks were looked over whole"), p.blocks);
  f.value(required("deepest", "depth of the deepest pit in each block; 0 where it has none", Rule::depth), p.deepest);
  f.reference(maybe("gauge", "the gauge that took the depths"), Vocabulary::gauge, p.gauge);
  f.value(required("chosen", "how the blocks were chosen"), p.chosen);
}

void fields(Fields &f, Zone &z) {
  f.value(required("name", "what the zone is called"), z.name);
  f.value(required("plating", "part of the shell, for the rule formula"), z.plating);
  f.value(required("original", "thickness when new", Rule::plate), z.original.nominal);
  f.place_of("original", z.original.span);
  f.reference(required("basis", "what that thickness rests on: one of the house's bases"), Vocabulary::basis,
              z.original.basis);
  f.value(required("source", "where it comes from", Rule::source), z.original.source);
  f.reference(maybe("tolerance", "delivery tolerance with edition and class: one of the house's, or several"),
              Vocabulary::tolerance, z.original.tolerances);
  f.value(maybe("assumption", "why thicker plate is set aside, where the basis is weak"),
          z.original.assumption);
  f.value(maybe("area-m2", "area in square metres", Rule::positive), z.area_m2);
  f.value(maybe("preparation", "how clean it was"), z.preparation);
  f.value(maybe("general-order", "how the plate is otherwise"), z.general_order);
  f.value(maybe("bilge", "form of bilge plating", Rule::none, "round|hard chine"), z.bilge);
  f.group(maybe("pitting", "extent of pitting"), z.pitting);
  f.group(maybe("pit-blocks", "the deepest pit in each of so many blocks of equal area"), z.pit_blocks);
}

void fields(Fields &f, Row &r) {
  f.reference(required("zone", "the zone that the row lies in"), Vocabulary::zone, r.zone);
  f.value(required("side", "side of the vessel"), r.side);
  f.value(required("name", "what the row is called"), r.name);
  f.value(maybe("height", "where it runs"), r.height);
  f.value(maybe("stands-for", "breadth of plating that its marks stand for", Rule::unit_written), r.stands_for);
}

void fields(Fields &f, Pit &p) {
  std::optional<base::Measured> adjacent, depth, remaining;
  if (!p.adjacent.raw.empty()) { // a reader finds nothing there yet; a walk finds what was written
    adjacent = p.adjacent;
    depth = p.depth;
  }
  f.value(required("at", "where it is"), p.at);
  f.value(maybe("adjacent", "plate beside it; needed, with depth", Rule::plate), adjacent);
  f.value(maybe("depth", "depth below the surface beside it; needed, with adjacent", Rule::plate), depth);
  f.value(maybe("remaining", "adjacent less depth, if you wish: it must close", Rule::plate), remaining);
  f.value(maybe("across", "diameter"), p.across);
  f.value(maybe("face", "the side of the plate it is on", Rule::none, "outside|inside"), p.face);
  f.value(maybe("activity", "whether it is still at work", Rule::none, "active|old"), p.activity);
  f.value(maybe("per-m2", "pits to the square metre about it", Rule::positive), p.per_m2);
  f.value(maybe("share-percent", "share of the area about it", Rule::percent), p.share_percent);
  f.reference(maybe("gauge", "the gauge that took the depth"), Vocabulary::gauge, p.gauge);
  f.reference(maybe("photo", "photographs of it"), Vocabulary::photo, p.photos);
  f.value(maybe("note", "what else was seen"), p.note);
  f.check([&](Reading &r, const Node &node, const base::SourceSpan &key) {
    close_pit(r, node, key, {adjacent, depth, remaining}, p);
  });
}

void fields(Fields &f, InnerReading &i) {
  f.value(required("reading", "the plate behind, as displayed", Rule::plate), i.reading);
  f.value(required("at", "where it was read"), i.at);
  f.reference(required("gauge", "the gauge that read it"), Vocabulary::gauge, i.gauge);
}

void fields(Fields &f, Doubler &d) {
  f.value(required("over", "what it covers"), d.over);
  f.value(maybe("edges", "how its edges are welded"), d.edges);
  f.value(maybe("plugs", "plug welds"), d.plugs);
  f.value(maybe("drumminess", "how it sounds"), d.drumminess);
  f.value(maybe("outer", "thickness of the outer plate", Rule::plate), d.outer);
  f.group(maybe("from-inside", "one reading of the plate behind, taken from inside; never added up"), d.from_inside);
  f.reference(maybe("photo", "photographs of it"), Vocabulary::photo, d.photos);
  f.value(maybe("note", "what else was seen"), d.note);
}

void fields(Fields &f, Note &n) {
  f.value(required("kind", "by eye or by hammer"), n.kind);
  f.value(required("at", "where"), n.at);
  f.value(required("text", "what was found"), n.text);
  f.reference(maybe("photo", "photographs of it"), Vocabulary::photo, n.photos);
}

void fields(Fields &f, NoneFound &n) {
  f.value(required("what", "what was looked for and not found"), n.what);
  f.value(required("at", "where it was looked for"), n.at);
  f.value(maybe("how", "how it was looked for"), n.how);
}

void fields(Fields &f, Photo &p) {
  f.value(maybe("file", "the image, inside the survey's folder; without it a placeholder is printed"),
          p.file);
  f.value(maybe("not-taken", "in place of a file: why the photograph was not taken"), p.not_taken);
  f.value(maybe("withheld", "in place of a file: why the photograph is not shown"), p.withheld);
  f.value(maybe("taken", "the day it was taken"), p.taken);
  f.value(required("at", "where it was taken"), p.at);
  f.value(maybe("looking", "which way: square on, forward, aft, up"), p.looking);
  f.value(maybe("caption", "what to see"), p.caption);
}

} // namespace strakebook::survey
