#include <fstream>

#include "strakebook/issuing.h"
#include "strakebook/report/comparison.h"
#include "strakebook/report/kept.h"
#include "strakebook/report/opening.h"

namespace strakebook {

namespace fs = std::filesystem;

namespace {

bool is_pdf(const fs::path &path) {
  constexpr std::string_view head = "%PDF-";
  std::string found(head.size(), '\0');
  std::ifstream file(path, std::ios::binary);
  return file.read(found.data(), static_cast<std::streamsize>(found.size())) && found == head;
}

std::optional<Case> open_either(const fs::path &path, const Resources &resources, base::Diagnostics &sink) {
  if (!is_pdf(path)) return open_case(path, resources, sink);
  const auto kept = inputs_of_document(path, sink);
  return kept ? open_kept(*kept, {}, sink) : std::nullopt;
}

/// What stands against a report is no reason not to compare it, so it is told and does not stop anything: the list of what changed is
/// wanted before the reasons for it are written.
std::optional<Case> open_to_compare(const fs::path &path, const Resources &resources, base::Diagnostics &sink) {
  base::Diagnostics found;
  auto opened = open_either(path, resources, found);
  for (base::Diagnostic one : found.all()) {
    if (opened && one.severity == base::Severity::error) one.severity = base::Severity::warning;
    sink.add(std::move(one));
  }
  return opened;
}

} // namespace

std::optional<Comparison> compare_reports(const fs::path &before, const fs::path &after, const Resources &resources, base::Diagnostics &sink) {
  const auto was = open_to_compare(before, resources, sink);
  const auto is = open_to_compare(after, resources, sink);
  if (!was || !is) return std::nullopt;
  return Comparison{issue_name(was->survey.report), issue_name(is->survey.report), changes_between(*was, *is)};
}

} // namespace strakebook
