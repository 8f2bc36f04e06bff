#include <cstdint>
#include <exception>

#include <qpdf/QUtil.hh>

#include "strakebook/base/date.h"
#include "strakebook/paper/file/first_revision.h"
#include "strakebook/paper/file/signature.h"
#include "strakebook/paper/file/spelled.h"

namespace strakebook::file {

namespace {

std::string_view between(std::string_view text, std::string_view before, char after) {
  const auto begin = text.find(before);
  if (begin == text.npos) return {};
  const auto from = begin + before.size(), end = text.find(after, from);
  return end == text.npos ? std::string_view() : text.substr(from, end - from);
}

/// What an update says that it says; whether it is one is asked afterwards.
SignatureWords words_in(std::string_view update) {
  const auto text = [&](std::string_view key) { return text_read(between(update, key, '>')); };
  SignatureWords words{.name = text("\n/Name <"), .reason = text("\n/Reason <"), .location = text("\n/Location <"), .date = {}};
  if (const auto day = between(update, "\n/M (D:", ')'); day.size() == 8)
    words.date = std::string(day.substr(0, 4)) + "-" + std::string(day.substr(4, 2)) + "-" + std::string(day.substr(6));
  return words;
}

/// How long the value that begins here is, by its head (X.690, 8.1.3); 0: none that a signature is in.
std::size_t length_of_der(std::string_view bytes) {
  if (bytes.size() < 2 || bytes[0] != 0x30) return 0;
  const auto first = static_cast<unsigned char>(bytes[1]);
  if (first < 0x80) return first + std::size_t{2};
  const std::size_t digits = first & 0x7F;
  if (digits == 0 || digits > 4 || bytes.size() < 2 + digits) return 0;
  std::uint64_t length = 0;
  for (const unsigned char c : bytes.substr(2, digits)) length = length << 8 | c;
  return static_cast<std::size_t>(length) + 2 + digits;
}

/// The signature in its room: its digits, then zeros and nothing else. nullopt: not so.
std::optional<std::string> in_hole(std::string_view hole) {
  if (hole.size() < 2 || hole.front() != '<' || hole.back() != '>') return std::nullopt;
  const std::string digits(hole.substr(1, hole.size() - 2));
  if (digits.find_first_not_of("0123456789abcdef") != digits.npos) return std::nullopt;
  auto bytes = QUtil::hex_decode(digits);
  const auto length = length_of_der(bytes);
  if (length == 0 || length > bytes.size() || bytes.find_first_not_of('\0', length) != bytes.npos) return std::nullopt;
  return bytes.substr(0, length);
}

std::optional<Prepared> prepared_again(std::string_view first, const SignatureWords &words) {
  try {
    return prepared(first, words);
  } catch (const std::exception &) { // a file that was altered so that no update can be made for it
    return std::nullopt;
  }
}

std::optional<Revisions::Signed> signed_update(std::string_view pdf, std::size_t first) {
  const auto words = words_in(pdf.substr(first));
  const auto again = prepared_again(pdf.substr(0, first), words);
  if (!again || again->bytes.size() != pdf.size()) return std::nullopt;
  Prepared found{.bytes = std::string(pdf), .hole = again->hole, .hole_end = again->hole_end};
  auto covered = found.covered();
  auto der = in_hole(pdf.substr(found.hole, found.hole_end - found.hole));
  if (!der || covered != again->covered()) return std::nullopt;
  return Revisions::Signed{.words = words, .der = std::move(*der), .covered = std::move(covered)};
}

} // namespace

std::optional<Revisions> revisions(std::string_view pdf) {
  const auto first = first_revision(pdf);
  if (!first) return std::nullopt;
  Revisions found{.first = first->end, .more = first->end != pdf.size(), .signature = {}};
  if (found.more) found.signature = signed_update(pdf, first->end);
  return found;
}

} // namespace strakebook::file
