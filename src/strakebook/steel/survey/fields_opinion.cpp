#include <fmt/format.h>

#include "strakebook/steel/survey/fields.h"

/// What the surveyor makes of it, and what is to be done.
namespace strakebook::survey {

namespace {

/// What a criterion that was read has for its limit; nothing of one that is still to be read.
std::optional<base::Measured> limit_of(const policy::Criterion &c) {
  if (c.limit == base::Length{})
    return std::nullopt;
  return base::Measured{.value = c.limit, .raw = base::mm_exact(c.limit)};
}
/// Likewise, from the share that may go.
std::optional<base::Decimal> most_loss_percent_of(const policy::Criterion &c) {
  constexpr int most_places = 15; // of a number in a survey
  const base::Ratio percent = base::reduced({c.most_loss.num * 100, c.most_loss.den});
  if (percent.num == 0)
    return std::nullopt;
  for (int places = 0; places < most_places; ++places)
    if (const auto decimal = base::round_to(percent, places); decimal.ratio() == percent)
      return decimal;
  return std::nullopt;
}

} // namespace

void fields(Fields &f, CriterionUse &c) {
  f.value(maybe("asked-by", "who asked for it"), c.asked_by);
  f.value(maybe("why", "why it is used"), c.why);
}

void fields(Fields &f, policy::Criterion &c) {
  auto limit = limit_of(c);
  auto most_loss = most_loss_percent_of(c);
  f.value(required("name", "what it is called"), c.name);
  f.value(required("kind", "a remaining thickness, or a share of the original"), c.kind);
  f.value(maybe("limit", "least remaining thickness, of an absolute", Rule::plate), limit);
  f.value(maybe("most-loss-percent", "share that may go, of a percent", Rule::percent), most_loss);
  f.value(required("authority", "who says so"), c.authority);
  f.value(required("edition", "which edition, or letter of what day"), c.edition);
  f.value(required("scope", "to what it applies"), c.scope);
  f.value(maybe("plating", "parts of the shell it applies to; without it, every zone"), c.plating);
  f.value(maybe("asked-by", "who asked for it"), c.asked_by);
  f.check([&](Reading &r, const Node &, const base::SourceSpan &key) {
    const bool absolute = c.kind == policy::CriterionKind::absolute;
    const std::string needs = absolute ? "limit" : "most-loss-percent";
    if (absolute ? !limit : !most_loss)
      r.error(base::Code::missing_key, key, fmt::format("{} is missing from this criterion", needs),
              "a limit", fmt::format("{}: {}", needs, absolute ? "4.0" : "25"));
    if (absolute ? most_loss.has_value() : limit.has_value())
      r.error(base::Code::wrong_kind, key,
              "a criterion has one limit, and this one is written with another kind's",
              fmt::format("{} only", needs));
    if (limit)
      c.limit = limit->value;
    if (!most_loss)
      return;
    c.most_loss = most_loss->ratio();
    c.most_loss.den *= 100;
  });
}

void fields(Fields &f, ConflictAnswer &c) {
  f.reference(required("prefers", "the criterion that is preferred"), Vocabulary::criterion, c.prefers);
  f.reference(required("marks", "the marks or pits that it rests on"), Vocabulary::mark_or_pit, c.marks);
  f.value(required("because", "why, in a full sentence"), c.because);
}

void fields(Fields &f, Decision &d) {
  f.reference(required("action", "what is to be done: one of the house's actions"), Vocabulary::action,
              d.action);
  f.value(maybe("claim", "the decision in a sentence"), d.claim);
  f.reference(maybe("criterion", "the criterion that governs"), Vocabulary::criterion, d.criterion);
  f.value(maybe("facts", "what is known, and how: measured, seen, told, inferred, opinion"), d.facts);
  f.value(maybe("why", "the reason"), d.why);
  f.reference(maybe("evidence", "marks, pits, photographs and notes it rests on"), Vocabulary::evidence,
              d.evidence);
  f.value(maybe("instead-of", "alternatives, and why not"), d.instead_of);
  f.value(maybe("others-may-say", "the other tenable view"), d.range_of_opinion);
  f.value(maybe("would-change", "what would change the decision"), d.would_change);
  f.value(maybe("confidence", "how sure"), d.confidence);
  f.value(maybe("activity", "whether wasting is still at work"), d.activity);
  f.value(maybe("cause", "cause, if known"), d.cause);
  f.group(maybe("conflict", "the answer to criteria that contradict each other"), d.conflict);
  f.value(maybe("departure", "why it departs from the house's ladder"), d.departure);
  f.value(maybe("opinion-on-few", "why an opinion is given on few readings"), d.opinion_on_few);
}

void fields(Fields &f, Recommendation &r) {
  f.value(required("title", "what is to be done, in a line"), r.title);
  f.reference(maybe("action", "one of the house's actions"), Vocabulary::action, r.action);
  f.value(maybe("at", "where"), r.at);
  f.value(maybe("class", "A before use, B by a date, C at next maintenance", Rule::none, "A|B|C"), r.klass);
  f.value(maybe("deadline", "by when, in words"), r.deadline);
  f.value(maybe("by", "by what day"), r.by);
  f.value(maybe("reason", "why"), r.reason);
  f.value(maybe("alternative", "what would do instead"), r.alternative);
  f.value(maybe("feasible", "whether and how it can be done"), r.feasible);
  f.value(maybe("hazards", "hazards of the work"), r.hazards);
  f.value(maybe("binds", "who is to see to it"), r.binds);
  f.value(maybe("proof", "what proves it done"), r.proof);
  f.value(maybe("status", "open, done, overtaken"), r.status);
  f.reference(maybe("evidence", "marks, pits, photographs and notes it rests on"), Vocabulary::evidence,
              r.evidence);
}

void fields(Fields &f, SteelworkItem &s) {
  f.reference(maybe("recommendation", "the recommendation it carries out"), Vocabulary::recommendation,
              s.recommendation);
  f.reference(maybe("action", "one of the house's actions"), Vocabulary::action, s.action);
  f.value(required("at", "where"), s.at);
  f.value(maybe("length", "of the plate, along the hull", Rule::unit_written), s.length);
  f.value(maybe("breadth", "of the plate, across the hull", Rule::unit_written), s.breadth);
  f.value(maybe("thickness", "of the new plate", Rule::plate), s.thickness);
  f.value(maybe("radius", "of its corners; 0 mm where they are square", Rule::unit_written_or_none), s.radius);
  f.value(maybe("lap-width", "of a plate laid over, on to sound metal", Rule::unit_written), s.lap_width);
  f.value(maybe("plug-pitch", "of its plug welds", Rule::unit_written), s.plug_pitch);
  f.value(maybe("size", "size in words, where there is no plate"), s.size);
  f.value(maybe("plate", "thickness and grade of plate"), s.plate);
  f.value(maybe("lap", "lap on to sound metal"), s.lap);
  f.value(maybe("corners", "radius of corners"), s.corners);
  f.value(maybe("weld", "kind and order of welding"), s.weld);
  f.value(maybe("plugs", "plug welds"), s.plugs);
  f.value(maybe("preparation", "preparation of the steel"), s.preparation);
  f.value(maybe("lining", "lining to clear"), s.lining);
  f.value(maybe("test", "test of the work"), s.test);
  f.value(maybe("hold-point", "when the surveyor is called"), s.hold_point);
  f.value(maybe("coating", "coating afterwards"), s.coating);
  f.value(maybe("nearest-frame", "which frame is nearest, to find it by"), s.nearest_frame);
  f.value(maybe("tolerance", "how near to the place"), s.tolerance);
}

void fields(Fields &f, Limitation &l) {
  f.value(maybe("at", "where"), l.at);
  f.value(required("area", "what could not be seen or read"), l.area);
  f.value(required("why", "why not"), l.why);
  f.value(required("prevents", "what it prevented"), l.prevents);
  f.value(required("cure", "what would cure it"), l.cure);
}

} // namespace strakebook::survey
