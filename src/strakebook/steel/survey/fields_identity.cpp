#include "strakebook/steel/survey/fields.h"

/// Who asked, who looked, at what, and how it lay.
namespace strakebook::survey {

void fields(Fields &f, Report &r) {
  f.value(required("number", "the report's number"), r.number);
  f.value(required("issue", "issue of the report, from 1"), r.issue);
  f.value(required("state", "how far the report has got"), r.state);
  f.value(maybe("inspected", "day of the inspection"), r.inspected);
  f.value(maybe("issued", "day of issue"), r.issued);
  f.value(maybe("place", "where the vessel lay"), r.place);
  f.value(maybe("insurer-reference", "the insurer's reference, or none"), r.insurer_reference);
  f.value(maybe("supersedes", "the report or issue that this one replaces, or none"), r.supersedes);
}

void fields(Fields &f, Instructions &i) {
  f.value(maybe("by", "the client, as a role"), i.client);
  f.value(maybe("purpose", "what the survey is for"), i.purpose);
  f.value(maybe("how", "written or oral"), i.how);
  f.value(maybe("on", "day of the instructions"), i.on);
  f.value(maybe("questions", "what was asked"), i.questions);
  f.value(maybe("exclusions", "what was left out by agreement"), i.exclusions);
  f.value(maybe("terms", "terms of the engagement"), i.terms);
  f.value(maybe("reliance", "who may rely on the report"), i.reliance);
  f.value(maybe("readers", "who may read it"), i.readers);
}

void fields(Fields &f, Surveyor &s) {
  f.value(maybe("name", "the surveyor"), s.name);
  f.value(maybe("qualification", "the surveyor's qualification"), s.qualification);
  f.value(maybe("body", "professional body, or none"), s.body);
  f.value(maybe("measured-by", "who took the readings"), s.measured_by);
  f.value(maybe("witnessed-by", "who watched"), s.witnessed_by);
  f.value(maybe("supervised-by", "who supervised"), s.supervised_by);
  f.value(maybe("independence", "interest in vessel, yard or sale"), s.independence);
  f.value(maybe("literature", "what was relied on beyond the criteria"), s.literature);
  f.value(maybe("declaration", "the surveyor's declaration"), s.declaration);
  f.value(maybe("signed-at", "place of signature"), s.signed_at);
  f.value(maybe("signed-on", "day of signature"), s.signed_on);
}

void fields(Fields &f, Vessel &v) {
  f.inherited_source(maybe("source", "where the values below come from, unless one says otherwise"));
  f.value(required("name", "the vessel's name"), v.name);
  f.value(maybe("kind", "canal boat, barge, coaster"), v.kind);
  f.value(maybe("ids", "registration, hull number"), v.ids);
  f.value(required("length", "length of the hull", Rule::unit_written), v.length);
  f.value(required("beam", "beam of the hull", Rule::unit_written), v.beam);
  f.value(maybe("draught", "draught", Rule::unit_written), v.draught);
  f.value(maybe("plated-height", "height of the plated side", Rule::unit_written), v.plated_height);
  f.value(maybe("frame-spacing", "distance between frames", Rule::unit_written), v.frame_spacing);
  f.value(maybe("waterline-length", "length of the waterline at the greatest draught", Rule::unit_written), v.waterline_length);
  f.value(maybe("narrowest", "narrowest lock or bridge that she has to pass", Rule::unit_written), v.narrowest);
  f.value(maybe("built", "year of build"), v.built);
  f.value(maybe("builder", "who built her"), v.builder);
  f.value(maybe("construction", "how she is built"), v.construction);
  f.value(maybe("use", "how she is used"), v.use);
  f.value(maybe("history", "earlier plating and repairs"), v.history);
  f.value(maybe("wing-voids", "double bottom and wing voids"), v.wing_voids);
  f.value(maybe("carries", "what she carries", Rule::none, "passengers|cargo|neither"), v.carries);
  f.value(maybe("light-scantlings", "is she built lighter than usual for her size"), v.light_scantlings);
}

void fields(Fields &f, Conditions &c) {
  f.value(maybe("how-held", "what the hull stood on, or afloat"), c.how_held);
  f.value(maybe("out-of-water", "was the hull out of the water"), c.out_of_water);
  f.value(maybe("cleaned", "was it cleaned"), c.cleaned);
  f.value(maybe("preparation", "how it was prepared"), c.preparation);
  f.value(maybe("weather", "weather and temperature"), c.weather);
  f.value(maybe("access", "what could be reached, and how"), c.access);
  f.value(maybe("present", "who was present"), c.present);
  f.value(maybe("lighting", "by what light"), c.lighting);
}

void fields(Fields &f, Answer &a) {
  f.value(maybe("refloat", "may she be refloated", Rule::none,
                "yes|with conditions|no|no opinion|not applicable"),
          a.refloat);
  f.value(maybe("refloat-conditions", "on what conditions"), a.refloat_conditions);
  f.value(maybe("reason", "why, in three sentences"), a.reason);
  f.value(maybe("next-survey", "when the next survey is due, in words"), a.next_survey);
  f.value(maybe("next-survey-by", "and by what day"), a.next_survey_by);
  f.reference(maybe("most-important-limitation", "the limitation that matters most"), Vocabulary::limitation,
              a.limitation);
}

void fields(Fields &f, IssueNote &n) {
  f.value(required("issue", "which issue"), n.issue);
  f.value(maybe("on", "day it went out"), n.on);
  f.value(maybe("to", "who had it"), n.to);
  f.value(maybe("why", "why it was issued"), n.why);
}

} // namespace strakebook::survey
