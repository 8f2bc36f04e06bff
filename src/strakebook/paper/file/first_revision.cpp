#include "strakebook/paper/file/first_revision.h"

#include <charconv>

namespace strakebook::file {

namespace {

constexpr std::string_view start = "startxref", end_mark = "%%EOF";

/// Past one end of line, as each system writes it.
std::size_t past_line_end(std::string_view pdf, std::size_t at) {
  if (pdf.substr(at, 2) == "\r\n") return at + 2;
  return at < pdf.size() && (pdf[at] == '\n' || pdf[at] == '\r') ? at + 1 : at;
}

bool leads_to_references(std::string_view pdf, std::size_t at) {
  if (pdf.substr(at, 5) == "xref\n" || pdf.substr(at, 5) == "xref\r") return true;
  constexpr std::size_t dictionary = 512; // of a stream of references: its entries fit by far
  const auto object = pdf.substr(at, dictionary);
  return object.find("/XRef") < object.find("stream");
}

/// What a "startxref" at this place says, if a file ends with it.
std::optional<FirstRevision> ended_by(std::string_view pdf, std::size_t at) {
  const auto *const last = pdf.data() + pdf.size();
  const auto *const digits = pdf.data() + past_line_end(pdf, at + start.size());
  FirstRevision found;
  const auto read = std::from_chars(digits, last, found.references);
  if (read.ec != std::errc() || found.references == 0 || found.references >= at || !leads_to_references(pdf, found.references)) return std::nullopt;
  const auto mark = past_line_end(pdf, static_cast<std::size_t>(read.ptr - pdf.data()));
  if (pdf.substr(mark, end_mark.size()) != end_mark) return std::nullopt;
  found.end = past_line_end(pdf, mark + end_mark.size());
  return found;
}

} // namespace

std::optional<FirstRevision> first_revision(std::string_view pdf) {
  if (pdf.substr(0, 5) != "%PDF-") return std::nullopt;
  for (auto at = pdf.find(start); at != pdf.npos; at = pdf.find(start, at + start.size()))
    if (const auto found = ended_by(pdf, at)) return found;
  return std::nullopt;
}

} // namespace strakebook::file
