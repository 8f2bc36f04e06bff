#include "strakebook/report/photographs.h"

#include "strakebook/base/files.h"

namespace strakebook {

namespace fs = std::filesystem;

namespace {

void report_missing(const survey::Photo &photo, base::Diagnostics &sink) {
  sink.add({.severity = base::Severity::warning,
            .code = base::Code::photo_missing,
            .span = photo.file.span,
            .message = "photograph " + photo.id + " is not in the folder: " + photo.file.text,
            .expected = "a PNG or JPEG file at that path inside the survey's folder",
            .write = "add the file, or leave `file` out for a placeholder without a picture",
            .subject = "photo-missing " + photo.id});
}

void admit_one(Case &the_case, const survey::Photo &photo, const fs::path &folder, base::Diagnostics &sink) {
  const auto path = base::inside(folder, photo.file.text);
  if (!path) {
    sink.add({.code = base::Code::path_escapes,
              .span = photo.file.span,
              .message = "the path of photograph " + photo.id + " leaves the survey's folder",
              .expected = "a relative path inside the folder of the survey file",
              .write = "photos/" + fs::path(photo.file.text).filename().string()});
    return;
  }
  std::error_code failed;
  if (!fs::exists(*path, failed)) return report_missing(photo, sink);
  const media::ImageLimits limits;
  const auto bytes = base::read_file(*path, limits.bytes, photo.file.span, sink);
  if (!bytes) return;
  auto image = media::admit(*bytes, photo.file.text, photo.file.span, sink, limits);
  if (!image) return;
  the_case.inputs.push_back(
      {.kind = "photograph", .path = photo.file.text, .digest = image->ref.digest, .bytes = bytes->size()});
  the_case.photos[photo.id] = image->ref;
  the_case.images.try_emplace(image->ref.digest, std::move(*image));
}

} // namespace

void admit_photographs(Case &the_case, const fs::path &folder, base::Diagnostics &sink) {
  the_case.inputs = the_case.house.inputs;
  the_case.inputs.insert(the_case.inputs.end(), the_case.survey.inputs.begin(), the_case.survey.inputs.end());
  for (const auto &photo : the_case.survey.photos)
    if (photo.file.given()) admit_one(the_case, photo, folder, sink);
}

} // namespace strakebook
