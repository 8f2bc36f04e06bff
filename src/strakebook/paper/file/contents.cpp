#include "strakebook/paper/file/contents.h"

#include "strakebook/base/apart.h"
#include "strakebook/paper/file/attached.h"
#include "strakebook/paper/file/inside.h"
#include "strakebook/paper/file/packed.h"

namespace strakebook::file {

namespace {

std::string packed(const Contents &contents) {
  Packer to;
  to.add(contents.attached.size());
  for (const auto &[name, bytes] : contents.attached) {
    to.add(name);
    to.add(bytes);
  }
  to.add(contents.damaged);
  to.add(contents.pages);
  return std::move(to.bytes);
}

std::optional<Contents> unpacked(std::string_view bytes) {
  Unpacker from(bytes);
  Contents contents;
  for (std::size_t left = from.count(); left > 0 && from.whole(); --left) {
    std::string name = from.text();
    contents.attached.emplace(std::move(name), from.text());
  }
  contents.damaged = from.texts();
  contents.pages = from.texts();
  if (!from.whole()) return std::nullopt;
  return contents;
}

std::string packed(const std::optional<Revisions> &found) {
  Packer to;
  if (!found) return to.bytes;
  to.add(found->first);
  to.add(std::size_t{found->more});
  if (const auto &signature = found->signature)
    for (const auto *text : {&signature->words.name, &signature->words.reason, &signature->words.location, &signature->words.date,
                             &signature->der, &signature->covered})
      to.add(*text);
  return std::move(to.bytes);
}

std::optional<Revisions> unpacked_revisions(std::string_view bytes) {
  Unpacker from(bytes);
  Revisions found;
  found.first = from.count();
  found.more = from.count() != 0;
  if (!from.whole()) return std::nullopt;
  if (from.ended()) return found;
  auto &signature = found.signature.emplace();
  for (auto *text : {&signature.words.name, &signature.words.reason, &signature.words.location, &signature.words.date, &signature.der,
                     &signature.covered})
    *text = from.text();
  if (!from.whole()) return std::nullopt;
  return found;
}

/// A report of two thousand pages takes a third of a gigabyte.
base::ApartLimits limits() {
  return {.memory = 1u << 30, .cpu_seconds = 60, .wall = std::chrono::milliseconds{120'000}, .answer = 512u << 20};
}

} // namespace

std::optional<Contents> contents_of(std::string_view pdf) {
  const auto heard = base::run_apart([&] { return packed(contents_inside(pdf)); }, limits());
  const auto *answer = std::get_if<std::string>(&heard);
  return answer ? unpacked(*answer) : std::nullopt;
}

std::optional<Revisions> revisions_apart(std::string_view pdf) {
  const auto heard = base::run_apart([&] { return packed(revisions(pdf)); }, limits());
  const auto *answer = std::get_if<std::string>(&heard);
  return answer ? unpacked_revisions(*answer) : std::nullopt;
}

std::optional<base::FileSet> attached_files(std::string_view pdf) {
  auto contents = contents_of(pdf);
  if (!contents || !contents->damaged.empty()) return std::nullopt;
  return std::move(contents->attached);
}

} // namespace strakebook::file
