#include "strakebook/steel/survey/reading.h"

#include <algorithm>
#include <tuple>

#include <fmt/format.h>

#include "strakebook/base/text.h"

namespace strakebook::survey {

void Reading::error(base::Code code, const base::SourceSpan &span, std::string message, std::string expected,
                    std::string write) {
  sink.error(code, span, std::move(message), std::move(expected), std::move(write));
}

void Reading::unknown_word(const base::SourceSpan &span, std::string_view word, std::string_view what,
                           const std::vector<std::string> &known) {
  const auto near = base::nearest(word, known);
  error(base::Code::unknown_word, span, fmt::format("\"{}\" is not {}", word, what),
        known.empty() ? "none is known" : fmt::format("one of: {}", base::joined(known, ", ")),
        near ? *near : std::string{});
}

base::Unit Reading::station_unit() const { return other_datum ? other_datum->unit : survey.datum.station_unit; }

std::string_view Reading::stations_in() const {
  return other_datum && other_datum->frame ? "frames" : base::name_of(station_unit());
}

std::string_view kind_words(const base::YamlNode &node) {
  using Kind = base::YamlNode::Kind;
  switch (node.kind) {
  case Kind::scalar:
    return "a text";
  case Kind::list:
    return "a list";
  case Kind::map:
    return "a map";
  case Kind::empty:
    return "nothing";
  }
  return "nothing";
}

const std::string *scalar(Reading &reading, const base::YamlNode &node, std::string_view expected) {
  if (node.kind == base::YamlNode::Kind::scalar)
    return &node.text;
  reading.error(base::Code::wrong_kind, node.span,
                fmt::format("{} stands where a single value belongs", kind_words(node)),
                std::string(expected));
  return nullptr;
}

void hand_over(const base::Diagnostics &found, const base::SourcePtr &first, base::Diagnostics &sink) {
  auto all = found.all();
  const auto place = [&](const base::Diagnostic &d) {
    return std::tuple(d.span.file != first,
                      d.span.file ? std::string_view(d.span.file->path) : std::string_view{}, d.span.line,
                      d.span.column);
  };
  std::stable_sort(all.begin(), all.end(), [&](const auto &a, const auto &b) { return place(a) < place(b); });
  for (auto &one : all)
    sink.add(std::move(one));
}

} // namespace strakebook::survey
