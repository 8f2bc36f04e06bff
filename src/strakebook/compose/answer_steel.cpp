#include "strakebook/compose/answer_parts.h"

#include <algorithm>

#include "strakebook/compose/figures.h"
#include "strakebook/compose/looks.h"
#include "strakebook/compose/low_side.h"
#include "strakebook/compose/subjects.h"
#include "strakebook/compose/tables.h"
#include "strakebook/compose/told.h"
#include "strakebook/steel/survey/pit_blocks.h"

/// The steel on page one: the worst place and the lowest of each zone.
namespace strakebook::compose {

using content::Block;
using content::plain;
using content::operator+;

namespace {

/// Which limit the place is measured against and how far off it is.
Inlines limit_sentence(const Scope &scope, const assess::ZoneResult &zone, const assess::Subject &subject) {
  const auto *result = measured_against(subject);
  if (result == nullptr)
    return plain(scope.say_computed("answer.no-limit"));
  const base::Fill name{"criterion", signed_name(scope, zone, result->criterion)};
  const base::Fill margin{"margin", margin_words(scope, *result, subject.band_nm)};
  return plain(result->governs ? scope.say_computed("answer.governs", {name, margin})
                               : scope.say_computed("answer.nearest", {name, margin}));
}

/// What the figure is where it is not simply what a sound gauge displayed; ends with a blank.
std::string standing_of_figure(const Scope &scope, const assess::ZoneResult &zone, const assess::Subject &subject) {
  const base::Fill shown{"shown", remaining_text(scope, zone.zone, subject.remaining)};
  if (subject.low)
    return subject.indicative ? scope.say_computed("answer.low-indicative", {shown}) : scope.say_computed("answer.low", {shown});
  return subject.indicative ? scope.say_computed("answer.indicative") : std::string();
}

const survey::Zone &zone_at(const Scope &scope, std::string_view id) {
  const auto *pit = survey::pit_of(scope.survey(), id);
  const std::string &row = pit != nullptr ? pit->at.row : survey::mark_of(scope.survey(), id)->row;
  return survey::zone_of_row(scope.survey(), row);
}

} // namespace

std::vector<Block> worst_remaining(const Scope &scope) {
  std::vector<Block> out = {eyebrow(scope.say("answer.worst"))};
  const auto [zone, subject] = find_subject(scope, scope.assessment().worst);
  if (subject == nullptr) {
    out.push_back(paragraph(plain(scope.say_computed("answer.nothing-read")), look::answer));
    return out;
  }
  const auto *result = measured_against(*subject);
  Inlines figure = scope.tell("answer.worst-figure",
                              {{"mm", plain(judged_text(scope, zone->zone, *subject))}});
  if (result != nullptr)
    figure = figure + plain(" ") + verdict_sign(scope, result->verdict);
  out.push_back(paragraph(std::move(figure), look::worst));

  const std::string place = subject_place(scope, subject->id);
  const std::string where = is_pit(scope, subject->id) ? scope.say("answer.under", {{"place", place}})
                                                       : scope.say("answer.at", {{"place", place}});
  const std::string loss = loss_text(scope, *zone, *subject);
  Inlines text = link(subject_target(scope, subject->id), where) + plain(" ") +
                 plain(standing_of_figure(scope, *zone, *subject)) + limit_sentence(scope, *zone, *subject);
  if (!loss.empty())
    text = text + plain(" ") + plain(scope.say_computed("answer.loss", {{"loss", loss}}));
  out.push_back(paragraph(text + plain(" ") + page_link(zone_id(zone->zone)), look::answer));
  return out;
}

std::vector<Block> worst_loss(const Scope &scope) {
  std::vector<Block> out = {eyebrow(scope.say("answer.worst-loss"))};
  const std::string &id = scope.assessment().worst_loss;
  const auto *share = share_at(scope, id);
  if (share == nullptr) {
    out.push_back(paragraph(plain(scope.say_computed("answer.no-loss")), look::answer));
    return out;
  }
  const auto &original = zone_at(scope, id).original;
  const bool told = loss_is_told(scope, assess::zone_result(scope.assessment(), zone_at(scope, id).id));
  const std::string lost =
      tied(percent_figure(scope, share->nominal, 1), scope.say("voice.percent")) + told_sign(scope, told);
  const auto text = scope.tell_computed("answer.worst-loss-text",
                                        {{"share", content::strong(lost)},
                                         {"place", link(subject_target(scope, id), subject_place(scope, id))},
                                         {"original", plain(with_mm(scope, original.nominal))},
                                         {"basis", plain(original.basis)}});
  const bool some_left_out = std::ranges::any_of(scope.assessment().zones, &assess::ZoneResult::weak_basis);
  out.push_back(paragraph(some_left_out ? (text + scope.tell_computed("answer.loss-left-out")).text() : text.text(), look::answer));
  return out;
}

namespace {

content::Cell least_cell(const Scope &scope, const assess::ZoneResult &zone, const assess::Subject *subject) {
  if (subject == nullptr)
    return cell(scope.say("voice.dash"));
  Inlines text = content::strong(judged_text(scope, zone.zone, *subject));
  if (const auto *result = measured_against(*subject))
    text = text + plain(" ") + verdict_sign(scope, result->verdict) + plain(told_sign(scope, result->told));
  return cell(std::move(text));
}

content::Cell where_cell(const Scope &scope, const assess::Subject *subject, std::string none) {
  if (subject == nullptr)
    return cell(content::soft(std::move(none)));
  return cell(link(subject_target(scope, subject->id), subject->id));
}

bool limit_told(const assess::Subject &subject) {
  const auto *result = measured_against(subject);
  return result != nullptr && result->told;
}

/// Whether the sign of what was told stands on page one: at a zone's least steel, or at one of the two losses.
bool page_one_told(const Scope &scope) {
  const auto &all = scope.assessment();
  for (const std::string *id : {&all.worst, &all.worst_loss})
    if (!id->empty() && loss_is_told(scope, assess::zone_result(all, zone_at(scope, *id).id)))
      return true;
  return std::ranges::any_of(all.zones, [](const auto &zone) { return std::ranges::any_of(zone.subjects, limit_told); });
}

/// Of a zone of which no pit is listed: none, or only in the blocks that were looked over whole.
std::string no_pit_words(const Scope &scope, const std::string &zone) {
  return survey::pits_in_blocks(*survey::zone_of(scope.survey(), zone)) ? scope.say("unseen.in-blocks") : scope.say("answer.no-pit");
}

Block lowest_in_zones(const Scope &scope) {
  auto table = unlabelled_table(look::summary_table,
                                {stretching(scope.say("answer.lowest")),
                                 column(scope.say("answer.plate"), Align::right, scope.say("voice.mm")),
                                 column(scope.say("answer.plate-at")),
                                 column(scope.say("answer.pit"), Align::right, scope.say("voice.mm")),
                                 column(scope.say("answer.pit-under"))});
  std::vector<content::Row> rows;
  for (const auto &zone : scope.assessment().zones) {
    const auto *plate = subject_of_kind(zone, assess::Subject::Kind::plate);
    const auto *pit = subject_of_kind(zone, assess::Subject::Kind::pit);
    rows.push_back(row({cell(zone_name(scope, zone.zone)), least_cell(scope, zone, plate),
                        where_cell(scope, plate, scope.say("answer.not-read")), least_cell(scope, zone, pit),
                        where_cell(scope, pit, no_pit_words(scope, zone.zone))}));
  }
  add_rows(table, std::move(rows));
  if (any_mark_lowered(scope) || any_pit_lowered(scope))
    table.notes.push_back(plain(scope.say("answer.low-note")));
  using assess::Verdict;
  table.notes.push_back(scope.tell("answer.signs", {{"meets", verdict_sign(scope, Verdict::meets)},
                                                    {"close", verdict_sign(scope, Verdict::too_close)},
                                                    {"short", verdict_sign(scope, Verdict::falls_short)}}));
  if (page_one_told(scope))
    table.notes.push_back(told_legend(scope));
  return block(std::move(table), "table/lowest");
}

} // namespace

std::vector<Block> section_and_zones(const Scope &scope) {
  std::vector<Block> out;
  if (!scope.assessment().worst.empty()) {
    content::Figure figure{
        .label = {}, .caption = {}, .caption_above = false, .panels = {}, .lattice = {}, .notes = {}};
    figure.panels.push_back({{}, {}, worst_section(scope), "figure/worst"});
    const InlineFill place{"place", content::strong(scope.assessment().worst)};
    const auto *subject = find_subject(scope, scope.assessment().worst).subject;
    const bool low = subject != nullptr && subject->low.has_value();
    figure.notes.push_back(
        low ? scope.tell("answer.section-displayed", {place}) : scope.tell("answer.section-caption", {place}));
    out.push_back(block(std::move(figure)));
  }
  out.push_back(lowest_in_zones(scope));
  return out;
}

} // namespace strakebook::compose
