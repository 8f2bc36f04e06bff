#include "strakebook/steel/survey/as_written.h"

#include "strakebook/base/text.h"
#include "strakebook/steel/survey/reach.h"

namespace strakebook::survey {

namespace {

void see_text(std::string text, const SeeWritten &see, const base::SourceSpan &span = {}) {
  if (!text.empty())
    see({.parts = {std::move(text)}, .span = span});
}

void see_source(const base::Provenance &from, const SeeWritten &see, const base::SourceSpan &span) {
  see({.name = "source", .parts = {text_of(from)}, .span = span});
}

std::string_view kind_word(StatementKind kind) {
  for (const auto &choice : choices_of(kind))
    if (choice.value == kind)
      return choice.word;
  return {};
}

} // namespace

std::string with_unit(const base::Measured &length) {
  if (length.raw.empty() || base::unit_written(length))
    return length.raw;
  return length.raw + " " + std::string(base::name_of(length.unit));
}

std::string text_of(const base::Provenance &from) {
  switch (from.origin) {
  case base::Origin::measured:
    return "measured";
  case base::Origin::told:
    return "told, " + from.by;
  case base::Origin::document:
    return "document, " + from.by;
  }
  return {};
}

std::string text_of(const Reach &reach) {
  if (!written(reach))
    return {};
  std::string text = reach.zone.empty() ? base::joined(reach.rows, ", ") : "zone " + reach.zone;
  if (text.empty())
    return "whole shell";
  if (reach.from)
    text += " " + reach.from->raw;
  if (reach.to && reach.to != reach.from)
    text += " to " + reach.to->raw;
  return text;
}

void each_written(const std::string &value, const SeeWritten &see) { see_text(value, see); }
void each_written(const Words &value, const SeeWritten &see) { see_text(value.text, see, value.span); }
void each_written(const int &value, const SeeWritten &see) {
  if (value != 0)
    see_text(std::to_string(value), see);
}
void each_written(const base::Decimal &value, const SeeWritten &see) { see_text(base::to_text(value), see); }
void each_written(const base::Length &value, const SeeWritten &see) {
  see_text(base::mm_exact(value) + " mm", see);
}
void each_written(const base::Measured &value, const SeeWritten &see) { see_text(with_unit(value), see); }
void each_written(const base::Date &value, const SeeWritten &see) {
  if (value.year > 0)
    see_text(base::iso(value), see);
}

void each_written(const Fact &value, const SeeWritten &see) {
  each_written(value.text, see);
  if (value.text.given())
    see_source(value.from, see, value.text.span);
}
void each_written(const LengthFact &value, const SeeWritten &see) {
  if (value.length.raw.empty())
    return;
  see_text(with_unit(value.length), see, value.span);
  see_source(value.from, see, value.span);
}

void each_written(const Place &value, const SeeWritten &see) {
  if (!value.row.empty())
    see_text(value.row + " " + value.station.raw, see, value.span);
}
void each_written(const Reach &value, const SeeWritten &see) { see_text(text_of(value), see, value.span); }

void each_written(const std::vector<Fact> &values, const SeeWritten &see) {
  Written all{.apart = true};
  for (const Fact &fact : values) {
    all.parts.push_back(fact.text.text + " (" + text_of(fact.from) + ")");
    all.span = all.span.line == 0 ? fact.text.span : all.span;
  }
  if (!all.parts.empty())
    see(std::move(all));
}
void each_written(const std::vector<Named> &values, const SeeWritten &see) {
  for (const Named &named : values)
    see({.name = named.name, .parts = {named.words.text}, .span = named.words.span});
}
void each_written(const std::vector<Acknowledgement> &values, const SeeWritten &see) {
  for (const Acknowledgement &answer : values)
    see({.name = answer.subject, .parts = {answer.reason.text}, .span = answer.span});
}
void each_written(const std::vector<Statement> &values, const SeeWritten &see) {
  Written all{.apart = true};
  for (const Statement &statement : values) {
    all.parts.push_back(std::string(kind_word(statement.kind)) + ": " + statement.text.text);
    all.span = all.span.line == 0 ? statement.text.span : all.span;
  }
  if (!all.parts.empty())
    see(std::move(all));
}

} // namespace strakebook::survey
