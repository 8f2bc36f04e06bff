#include "strakebook/report/kept.h"

#include <stdexcept>

#include "strakebook/base/tidy_path.h"
#include "strakebook/report/canonical.h"
#include "strakebook/report/kept_names.h"
#include "strakebook/report/kept_past.h"
#include "strakebook/steel/survey/closing.h"

namespace strakebook {

namespace {

bool is_readings(const base::InputFile &input) { return input.kind == "readings" || input.kind == "earlier readings"; }

/// The survey's own files and where they come from.
class Keeping {
public:
  Keeping(const Case &of, std::string_view addendum)
      : case_(of), told_(survey::without_later_addenda(of.survey, addendum)), seen_(of.folder.seen()) {}

  base::FileSet files() {
    put(kept::survey, canonical::survey_yaml(seen_.at(base::tidy_path(case_.survey.inputs.front().path)), told_));
    for (const auto &input : case_.survey.inputs)
      if (is_readings(input)) put(input.path, canonical::csv(seen_.at(base::tidy_path(input.path))));
    for (const auto &[path, bytes] : seen_)
      if (path.starts_with(kept::own_layouts) && !files_.contains(path)) put(path, canonical::yaml(bytes));
    for (const auto &[path, bytes] : case_.layouts.seen()) put(std::string(kept::installed_layouts) + path, canonical::yaml(bytes));
    photographs();
    return std::move(files_);
  }

private:
  void put(std::string_view path, std::string bytes) { files_.insert_or_assign(base::tidy_path(path), std::move(bytes)); }

  void photographs() {
    std::map<std::string, Original> originals;
    for (const auto &photo : told_.photos) {
      const auto found = case_.photos.find(photo.id);
      if (found == case_.photos.end()) continue;
      const auto &picture = found->second;
      put(photo.file.text, media::file_of(case_.images.at(picture.shown.digest)));
      originals[base::tidy_path(photo.file.text)] = {picture.shown.digest, bytes_of(photo.file.text), {picture.given_width, picture.given_height}};
    }
    if (!originals.empty()) put(kept::photographs, kept::text_of(originals));
  }

  std::size_t bytes_of(const std::string &photograph) const {
    for (const auto &input : case_.inputs)
      if (input.kind == "photograph" && input.path == photograph) return input.bytes;
    throw std::logic_error("a photograph that is no input of its case");
  }

  const Case &case_;
  const survey::Survey told_; ///< what the document tells of it
  const base::FileSet &seen_;
  base::FileSet files_;
};

bool is_taken(const std::string &path) {
  return path == kept::survey || path == kept::photographs || path == kept::past || path == issue::manifest_name ||
         path.starts_with(kept::before) || path.starts_with(kept::installed_layouts);
}

} // namespace

bool can_be_kept(const Case &the_case, base::Diagnostics &sink) {
  const auto before = sink.errors();
  const auto check = [&](const std::string &path, const base::SourceSpan &span) {
    if (!is_taken(base::tidy_path(path))) return;
    sink.error(base::Code::issuing_failed, span, path + " cannot be kept with an issued report, which gives that name to another file of its own",
               "another name or folder", "readings/" + std::filesystem::path(path).filename().string());
  };
  for (const auto &input : the_case.survey.inputs)
    if (is_readings(input)) check(input.path, the_case.survey.span);
  for (const auto &photo : the_case.survey.photos)
    if (photo.file.given()) check(photo.file.text, photo.file.span);
  return sink.errors() == before;
}

base::FileSet kept_inputs(const Case &the_case, std::string_view addendum) {
  base::Diagnostics clashes;
  if (!can_be_kept(the_case, clashes)) throw std::logic_error(clashes.all().front().message);
  auto files = Keeping(the_case, addendum).files();
  if (!the_case.past.empty()) files[std::string(kept::past)] = kept::text_of(the_case.past);
  if (!the_case.before) return files;
  for (auto &[path, bytes] : kept_inputs(*the_case.before))
    if (!path.starts_with(kept::before)) files[std::string(kept::before) + path] = std::move(bytes);
  return files;
}

} // namespace strakebook
