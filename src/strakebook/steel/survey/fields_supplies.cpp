#include <fmt/format.h>

#include "strakebook/steel/survey/fields.h"

/// What floating, coating and anodes are reckoned from.
namespace strakebook::survey {

namespace {

void refuse(Reading &r, const Node &map, std::string_view key, std::string_view expected) {
  r.error(base::Code::out_of_range, map.find(key)->span, fmt::format("{} is outside its range", map.find(key)->text), std::string(expected));
}

void check_scheme(Reading &r, const Node &map, const CoatingScheme &c) {
  if (c.solids_percent && c.solids_percent->digits == 0) refuse(r, map, "solids-percent", "more than 0");
  if (c.loss_percent && c.loss_percent->ratio() == base::Ratio{100, 1}) refuse(r, map, "loss-percent", "less than 100");
}

void check_coefficient(Reading &r, const Node &map, const AfloatFigures &a) {
  constexpr base::Ratio least{3, 10}, most{1, 1};
  if (a.waterplane_coefficient && (a.waterplane_coefficient->ratio() < least || most < a.waterplane_coefficient->ratio()))
    refuse(r, map, "waterplane-coefficient", "0.3 to 1: a box has 1");
}

} // namespace

void fields(Fields &f, AfloatFigures &a) {
  f.reference(maybe("water", "the water she floats in: one of the house's"), Vocabulary::water, a.water);
  f.value(maybe("waterplane-coefficient", "area of the waterplane over length times beam", Rule::positive),
          a.waterplane_coefficient);
  f.value(maybe("coefficient-from", "what the coefficient rests on"), a.source);
  f.value(maybe("freeboard", "least height of the deck edge above the water", Rule::unit_written), a.freeboard);
  f.value(maybe("downflooding", "height of the lowest opening above the water", Rule::unit_written), a.downflooding);
  f.value(maybe("opening", "which opening that is"), a.opening);
  f.value(maybe("as", "in what state of loading"), a.as);
  f.check([&](Reading &r, const Node &map, const base::SourceSpan &) { check_coefficient(r, map, a); });
}

void fields(Fields &f, CoatingScheme &c) {
  f.value(required("at", "where"), c.at);
  f.value(maybe("coating", "what is put on, without its make"), c.coating);
  f.value(maybe("area-m2", "area in square metres", Rule::positive), c.area_m2);
  f.value(maybe("blast", "grade of preparation"), c.blast);
  f.value(maybe("dry-film", "thickness of all coats, dry", Rule::unit_written), c.dry_film);
  f.value(maybe("solids-percent", "solids by volume", Rule::percent), c.solids_percent);
  f.value(maybe("loss-percent", "share of what is bought that never reaches the plate", Rule::percent), c.loss_percent);
  f.value(maybe("recoat", "when again, where the house's interval does not hold"), c.recoat);
  f.check([&](Reading &r, const Node &map, const base::SourceSpan &) { check_scheme(r, map, c); });
}

void fields(Fields &f, AnodesFitted &a) {
  f.value(maybe("count", "how many were on her"), a.count);
  f.value(maybe("metal", "of what metal"), a.metal);
  f.value(maybe("on", "the day they were fitted"), a.on);
  f.value(maybe("worn-percent", "share of their mass that has gone", Rule::percent), a.worn_percent);
  f.value(maybe("bonded", "is the bond to the hull sound", Rule::none, "yes|no|not tested"), a.bonded);
  f.value(maybe("answer", "what you make of anodes that have not worn"), a.answer);
}

void fields(Fields &f, AnodePlan &a) {
  f.reference(maybe("metal", "of what metal: one of the house's"), Vocabulary::metal, a.metal);
  f.value(maybe("area-m2", "wetted steel in square metres", Rule::positive), a.area_m2);
  f.value(maybe("bare-percent", "share of it taken as bare, on average", Rule::percent), a.bare_percent);
  f.value(maybe("current-ma-m2", "current on bare steel, in mA a square metre", Rule::positive), a.current_ma_m2);
  f.value(maybe("current-from", "what that current rests on"), a.source);
  f.value(maybe("years", "how long they are to last", Rule::positive), a.years);
  f.value(maybe("net-kg", "mass of one without its core, in kg", Rule::positive), a.net_kg);
  f.value(maybe("stands-out", "how far one stands out from the plate", Rule::unit_written), a.stands_out);
}

void fields(Fields &f, CoatingAndAnodes &c) {
  f.value(maybe("found", "coating as found"), c.coating);
  f.value(maybe("anodes", "anodes as found"), c.anodes);
  f.value(maybe("recommended", "what is recommended"), c.recommended);
  f.by_id(maybe("schemes", "what is to be put on, by area"), {IdForm::number}, c.schemes, &CoatingScheme::id);
  f.group(maybe("fitted", "the anodes that were on her"), c.fitted);
  f.group(maybe("anode-plan", "the anodes that she is to have"), c.plan);
}

} // namespace strakebook::survey
