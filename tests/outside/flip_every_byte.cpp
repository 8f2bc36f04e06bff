// Turns every STEP-th byte of an issued PDF from FIRST on, and prints those that verification lets pass: with the register the layer "file"
// has to be broken, and by itself the inputs or the rendering. In one process, because a document has more bytes than one can start
// programs; what its inputs make is made once.
#include <charconv>
#include <cstdio>
#include <string>
#include <vector>

#include "strakebook/base/files.h"
#include "strakebook/issuing.h"
#include "strakebook/report/kept.h"

using namespace strakebook;

namespace {

std::size_t number(const char *text) {
  std::size_t value = 0;
  const std::string_view digits(text);
  std::from_chars(digits.data(), digits.data() + digits.size(), value);
  return value;
}

bool is_broken(const issue::Verification &found, std::string_view name) {
  for (const auto &layer : found.layers)
    if (layer.name == name) return layer.answer == issue::Answer::broken;
  return false;
}

/// Renders once; other inputs are rendered again.
struct Press {
  base::FileSet inputs;
  issue::MadeAgain last;

  issue::MadeAgain operator()(const base::FileSet &files, const issue::Manifest &manifest) {
    if (files == inputs) return last;
    base::Diagnostics sink;
    const auto made = manifest.addendum == 0 ? make_report(files, installed_resources(), sink)
                                             : make_addendum(files, std::to_string(manifest.addendum), installed_resources(), sink);
    inputs = files;
    last = {made ? made->pdf : std::string(), "refused"};
    return last;
  }
};

} // namespace

int main(int count, char **given) {
  if (count != 5) return 2;
  base::Diagnostics sink;
  auto pdf = base::read_file(given[1], most_document_bytes, {}, sink);
  const auto source = base::read_source(given[2], given[2], {}, sink);
  if (!pdf || !source) return 3;
  Press press;
  issue::Against against{.register_ = issue::read_register(source, sink), .here = makers(), .make_again = std::ref(press)};
  if (!sink.ok() || issue::verify(*pdf, against).broken()) return 4;
  std::size_t turned = 0, held = 0;
  for (std::size_t at = number(given[3]); at < pdf->size(); at += number(given[4]), ++turned) {
    (*pdf)[at] ^= 1;
    const auto found = issue::verify(*pdf, against);
    const bool seen = is_broken(found, "file") && (is_broken(found, "inputs") || is_broken(found, "rendering"));
    if (!seen) std::printf("byte %zu held\n", at);
    held += !seen;
    (*pdf)[at] ^= 1;
  }
  std::printf("%zu bytes turned, %zu held\n", turned, held);
  return held == 0 ? 0 : 1;
}
