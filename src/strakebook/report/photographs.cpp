#include "strakebook/report/photographs.h"

#include "strakebook/base/digest.h"
#include "strakebook/compose/looks.h"
#include "strakebook/house/photo_frame.h"

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

media::Placing placing_of(const style::Style &style) {
  return {.frame = [&style](media::Extent given) {
            return house::photo_frame(style, compose::look::halves, given.width, given.height).size;
          },
          .per_inch = style.photographs.per_inch,
          .quality = style.photographs.quality};
}

/// The picture of these bytes, decoded if no photograph before had the same ones; nullptr when it is refused.
const media::Image *image_of(Case &the_case, const media::GivenFile &file, const media::Placing &placing,
                             const media::ImageLimits &limits, base::Diagnostics &sink) {
  if (const auto known = the_case.images.find(file.digest); known != the_case.images.end()) return &known->second;
  auto image = media::admit(file, placing, sink, limits);
  return image ? &the_case.images.emplace(file.digest, std::move(*image)).first->second : nullptr;
}

void admit_one(Case &the_case, const survey::Photo &photo, const base::Folder &folder, base::Diagnostics &sink) {
  if (!folder.holds(photo.file.text)) {
    sink.add({.code = base::Code::path_escapes,
              .span = photo.file.span,
              .message = "the path of photograph " + photo.id + " leaves the survey's folder",
              .expected = "a relative path inside the folder of the survey file",
              .write = "photos/" + fs::path(photo.file.text).filename().string()});
    return;
  }
  if (!folder.has(photo.file.text)) return report_missing(photo, sink);
  const media::ImageLimits limits;
  const auto bytes = folder.read(photo.file.text, limits.bytes, photo.file.span, sink);
  if (!bytes) return;
  const auto placing = placing_of(the_case.house.style);
  const auto *image =
      image_of(the_case, {*bytes, base::sha256_hex(*bytes), photo.file.text, photo.file.span}, placing, limits, sink);
  if (!image) return;
  the_case.inputs.push_back(
      {.kind = "photograph", .path = photo.file.text, .digest = image->ref.digest, .bytes = bytes->size()});
  the_case.photos[photo.id] = {image->ref, image->given.width, image->given.height,
                               media::pixels_per_inch(image->given, {image->ref.width, image->ref.height}, placing)};
}

} // namespace

void admit_photographs(Case &the_case, const base::Folder &folder, base::Diagnostics &sink) {
  the_case.inputs = the_case.house.inputs;
  the_case.inputs.insert(the_case.inputs.end(), the_case.survey.inputs.begin(), the_case.survey.inputs.end());
  for (const auto &photo : the_case.survey.photos)
    if (photo.file.given()) admit_one(the_case, photo, folder, sink);
}

} // namespace strakebook
