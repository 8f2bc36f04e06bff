#include "strakebook/base/files.h"
#include "strakebook/paper/file/attached.h"
#include "strakebook/report/kept.h"
#include "strakebook/report/kept_names.h"

namespace strakebook {

namespace fs = std::filesystem;

namespace {

/// The manifest of a document: attached to it, whether the files that it lists are or not.
std::optional<issue::Manifest> manifest_in(const base::FileSet &attached) {
  const auto found = attached.find(std::string(issue::manifest_name));
  return found == attached.end() ? std::nullopt : issue::read_manifest(found->second);
}

/// What of a manifest's files lies in a folder.
base::FileSet lying_in(const base::Folder &folder, const issue::Manifest &manifest) {
  base::FileSet lying;
  base::Diagnostics absent; // taken_up() tells what is not there
  for (const auto &file : manifest.files)
    if (folder.holds(file.path) && folder.has(file.path))
      if (auto bytes = folder.read(file.path, base::most_source_bytes, {}, absent)) lying[file.path] = std::move(*bytes);
  return lying;
}

bool whole(const issue::Manifest &manifest, const base::FileSet &files) { return files.size() == manifest.files.size(); }

std::nullopt_t refuse(const fs::path &pdf, const std::string &why, base::Diagnostics &sink) {
  sink.error(base::Code::not_a_report, {}, pdf.string() + ": " + why, "the PDF of a report that was issued, as it was issued");
  return std::nullopt;
}

} // namespace

std::optional<base::FileSet> inputs_of_document(const fs::path &pdf, base::Diagnostics &sink) {
  const auto bytes = base::read_file(pdf, most_document_bytes, {}, sink);
  if (!bytes) return std::nullopt;
  const auto attached = file::attached_files(*bytes);
  if (!attached) return refuse(pdf, "no PDF that can be read", sink);
  const auto manifest = manifest_in(*attached);
  if (!manifest) return refuse(pdf, "no list of kept inputs is attached to it", sink);
  auto files = issue::taken_up(*manifest, *attached);
  if (!whole(*manifest, files)) files = issue::taken_up(*manifest, lying_in(pdf.parent_path() / kept::beside, *manifest));
  if (!whole(*manifest, files)) return refuse(pdf, "not all the inputs on its list are attached to it or lie beside it unaltered", sink);
  return files;
}

} // namespace strakebook
