#include "strakebook/issuing.h"

#include <exception>

#include <fmt/format.h>

#include "strakebook/base/files.h"
#include "strakebook/issue/issued_folder.h"
#include "strakebook/issue/register_text.h"
#include "strakebook/report/kept.h"
#include "strakebook/report/kept_names.h"

namespace strakebook {

namespace fs = std::filesystem;

namespace {

constexpr std::size_t largest_certificate = 1u << 20;

std::string in_one_line(const base::Diagnostic &found) {
  if (!found.span.file) return found.message;
  const auto line = found.span.line == 0 ? "" : fmt::format(":{}", found.span.line);
  return fmt::format("{}{}: {}", found.span.file->path, line, found.message);
}

/// Does it begin as a register of this program? Others keep registers too.
bool is_register(const fs::path &file) {
  base::Diagnostics none_of_ours;
  const auto text = base::read_file(file, base::most_source_bytes, {}, none_of_ours);
  return text && text->starts_with(issue::register_head);
}

/// Beside the PDF or one folder up; empty: at neither place. In a folder of issues whatever has its name is the register.
fs::path register_near(const fs::path &pdf) {
  const auto folder = fs::absolute(pdf).lexically_normal().parent_path();
  std::error_code failed;
  for (const auto &place : {folder, folder.parent_path()})
    if (const auto file = place / issue::register_name;
        fs::exists(fs::symlink_status(file, failed)) && (place.filename() == issue::issued_name || is_register(file)))
      return file;
  return {};
}

/// In its own place a register is held against the folders that lie beside it too.
void hold_to_folders(const fs::path &file, base::Diagnostics &sink) {
  const auto folder = fs::absolute(file).lexically_normal().parent_path();
  if (folder.filename() == issue::issued_name && file.filename() == issue::register_name) issue::register_in(folder.parent_path(), sink);
}

bool add_register(const fs::path &file, issue::Against &to, base::Diagnostics &sink) {
  const auto source = base::read_source(file, file.string(), {}, sink);
  if (!source) return false;
  base::Diagnostics faults;
  to.register_ = issue::read_register(source, faults);
  if (faults.ok()) hold_to_folders(file, faults);
  to.register_broken = !faults.ok();
  if (to.register_broken) to.register_fault = in_one_line(faults.all().front());
  return true;
}

bool add_certificate(const fs::path &file, issue::Against &to, base::Diagnostics &sink) {
  if (file.empty()) return true;
  const auto bytes = base::read_file(file, largest_certificate, {}, sink);
  if (bytes) to.known_certificate = *bytes;
  return bytes.has_value();
}

issue::MadeAgain made_again(const base::FileSet &inputs, const issue::Manifest &manifest, const Resources &resources) {
  base::Diagnostics sink;
  try {
    const auto made = manifest.addendum == 0 ? make_report(inputs, resources, sink)
                                             : make_addendum(inputs, std::to_string(manifest.addendum), resources, sink);
    if (made) return {made->pdf, {}};
  } catch (const std::exception &fault) { // inputs that nobody issued may be anything
    return {{}, fault.what()};
  }
  return {{}, sink.all().empty() ? "they cannot be read" : in_one_line(sink.all().front())};
}

/// Neither by its form nor by what it carries, and no register knows it.
bool is_no_report(const std::string &pdf, const issue::Verification &found, bool has_register) {
  constexpr std::size_t head_within = 1024; // ISO 32000-1, annex H, 3.4.1
  const bool looks_like_one = pdf.substr(0, head_within).find("%PDF-") != pdf.npos;
  return found.what == issue::What::unknown && (!looks_like_one || (!has_register && !found.broken()));
}

} // namespace

std::optional<issue::Verification> verify_document(const fs::path &pdf, const VerifyOptions &options, const Resources &resources,
                                                   base::Diagnostics &sink) {
  const auto bytes = base::read_file(pdf, most_document_bytes, {}, sink);
  if (!bytes) return std::nullopt;
  issue::Against against{.here = makers()};
  against.make_again = [&](const auto &inputs, const auto &manifest) { return made_again(inputs, manifest, resources); };
  const auto register_file = options.register_file.empty() ? register_near(pdf) : options.register_file;
  if (!register_file.empty() && !add_register(register_file, against, sink)) return std::nullopt;
  if (!add_certificate(options.certificate, against, sink)) return std::nullopt;
  against.beside.emplace(options.inputs.empty() ? pdf.parent_path() / kept::beside : options.inputs);
  auto found = issue::verify(*bytes, against);
  if (!is_no_report(*bytes, found, against.register_.has_value())) return found;
  sink.error(base::Code::not_a_report, {}, fmt::format("{} is not a PDF of an issued report: nothing in it says which", pdf.string()),
             "a PDF that this program issued, or the register that it stands in", "--register FILE, where there is one elsewhere");
  return std::nullopt;
}

} // namespace strakebook
