#include "strakebook/steel/survey/fields.h"

/// What is written of a report when it goes out, and after.
namespace strakebook::survey {

std::span<const Choice<Closing>> choices_of(Closing) {
  static constexpr Choice<Closing> all[] = {{"closed", Closing::closed}, {"partly closed", Closing::partly}, {"open", Closing::open}};
  return all;
}

std::span<const Choice<Became>> choices_of(Became) {
  static constexpr Choice<Became> all[] = {
      {"open", Became::open}, {"closed", Became::closed}, {"overtaken", Became::overtaken}, {"not seen", Became::not_seen}};
  return all;
}

void fields(Fields &f, Recipient &r) {
  f.value(required("who", "who is sent the report, as a role"), r.who);
  f.value(maybe("how", "by letter, by hand"), r.how);
}

void fields(Fields &f, ChangeReason &c) {
  f.value(required("what", "what changed, or several such, as the list of changes names them"), c.what);
  f.value(required("why", "the reason, in a sentence"), c.why);
}

void fields(Fields &f, Told &t) {
  f.value(required("who", "who had the issue that is replaced"), t.who);
  f.value(maybe("how", "by letter, by telephone"), t.how);
  f.value(maybe("on", "the day"), t.on);
  f.value(maybe("acknowledged", "the day an answer came"), t.acknowledged);
}

void fields(Fields &f, Amendment &a) {
  f.value(maybe("cause", "what went wrong"), a.cause);
  f.value(maybe("found-by", "who noticed it"), a.found_by);
  f.value(maybe("found-on", "the day it was noticed"), a.found_on);
  f.value(maybe("checked", "what else was checked for the same fault"), a.checked);
  f.list_of(maybe("changes", "a reason for everything that differs from the issue before"), a.changes);
  f.list_of(maybe("stands", "decisions that stand though what they rest on changed, and why"), a.stands);
  f.list_of(maybe("told", "who was told that the issue before is replaced"), a.told);
}

void fields(Fields &f, NewReading &n) {
  f.value(required("at", "where: row and station"), n.at);
  f.value(required("reading", "as displayed", Rule::plate), n.reading);
  f.value(maybe("note", "of this reading"), n.note);
}

void fields(Fields &f, ClosedItem &c) {
  f.reference(required("item", "the recommendation's number"), Vocabulary::recommendation, c.item);
  f.value(required("outcome", "what became of it"), c.outcome);
  f.value(maybe("on", "the day the work was done"), c.on);
  f.value(maybe("evidence", "what was seen, measured or handed over"), c.evidence);
  f.list_of(maybe("readings", "new readings"), c.readings);
  f.reference(maybe("photos", "photographs of it"), Vocabulary::photo, c.photos);
  f.value(maybe("left", "what is still to be done, where it is not wholly closed"), c.left);
}

void fields(Fields &f, Addendum &a) {
  f.value(maybe("inspected", "day of the inspection after repair"), a.inspected);
  f.value(maybe("issued", "day of issue"), a.issued);
  f.value(maybe("by", "who looked"), a.by);
  f.value(maybe("how", "how she lay, and how the work was seen"), a.how);
  f.reference(maybe("gauge", "the gauge that took the new readings"), Vocabulary::gauge, a.gauge);
  f.value(maybe("block", "its check on the block that day"), a.block);
  f.list_of(maybe("closes", "what became of each recommendation"), a.closes);
  f.value(maybe("remarks", "anything else"), a.remarks);
}

void fields(Fields &f, CarriedItem &c) {
  f.value(required("from", "report and issue that it stands in"), c.from);
  f.value(required("item", "its number there"), c.item);
  f.value(required("title", "what was to be done"), c.title);
  f.value(maybe("class", "its class there", Rule::none, "A|B|C"), c.klass);
  f.value(maybe("deadline", "until when, in words"), c.deadline);
  f.value(maybe("by", "until which day"), c.by);
  f.value(maybe("now", "what this survey found of it"), c.now);
  f.value(maybe("found", "the same in words"), c.found);
  f.reference(maybe("evidence", "marks, pits, photos, notes"), Vocabulary::evidence, c.evidence);
}

} // namespace strakebook::survey
