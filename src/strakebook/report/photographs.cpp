#include "strakebook/report/photographs.h"

#include <limits>

#include "strakebook/base/digest.h"
#include "strakebook/base/tidy_path.h"
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

/// Of a photograph that has passed the gate before, every pixel is kept.
media::Placing as_it_is(media::Placing placing) {
  placing.per_inch = std::numeric_limits<int>::max();
  return placing;
}

/// What the file is a picture of: itself, or the original that it was made from. nullopt: nothing says what that was.
std::optional<Original> original_of(const survey::Photo &photo, const std::string &bytes, const Opening &opening, base::Diagnostics &sink) {
  if (!opening.originals) return Original{base::sha256_hex(bytes), bytes.size(), {}};
  const auto known = opening.originals->find(base::tidy_path(photo.file.text));
  if (known != opening.originals->end()) return known->second;
  sink.error(base::Code::file_unreadable, photo.file.span, photo.file.text + " is kept, but not what it was before it was reduced");
  return std::nullopt;
}

/// The picture of these bytes, decoded if no photograph before had the same ones; nullptr when it is refused.
const media::Image *image_of(Case &the_case, const media::GivenFile &file, const media::Placing &placing,
                             const media::ImageLimits &limits, base::Diagnostics &sink) {
  if (const auto known = the_case.images.find(file.digest); known != the_case.images.end()) return &known->second;
  auto image = media::admit(file, placing, sink, limits);
  return image ? &the_case.images.emplace(file.digest, std::move(*image)).first->second : nullptr;
}

bool is_there(const survey::Photo &photo, const base::Folder &folder, base::Diagnostics &sink) {
  if (!folder.holds(photo.file.text)) {
    sink.add({.code = base::Code::path_escapes,
              .span = photo.file.span,
              .message = "the path of photograph " + photo.id + " leaves the survey's folder",
              .expected = "a relative path inside the folder of the survey file",
              .write = "photos/" + fs::path(photo.file.text).filename().string()});
    return false;
  }
  if (folder.has(photo.file.text)) return true;
  report_missing(photo, sink);
  return false;
}

void admit_one(Case &the_case, const survey::Photo &photo, const base::Folder &folder, const Opening &opening, base::Diagnostics &sink) {
  if (!is_there(photo, folder, sink)) return;
  const media::ImageLimits limits;
  const auto bytes = folder.read(photo.file.text, limits.bytes, photo.file.span, sink);
  if (!bytes) return;
  const auto original = original_of(photo, *bytes, opening, sink);
  if (!original) return;
  const auto placing = placing_of(the_case.house.style);
  const auto *image = image_of(the_case, {*bytes, original->digest, photo.file.text, photo.file.span},
                               opening.originals ? as_it_is(placing) : placing, limits, sink);
  if (!image) return;
  const auto given = opening.originals ? original->extent : image->given;
  the_case.inputs.push_back(
      {.kind = "photograph", .path = photo.file.text, .digest = image->ref.digest, .bytes = original->bytes});
  the_case.photos[photo.id] = {image->ref, given.width, given.height,
                               media::pixels_per_inch(given, {image->ref.width, image->ref.height}, placing)};
}

} // namespace

void admit_photographs(Case &the_case, const base::Folder &folder, const Opening &opening, base::Diagnostics &sink) {
  the_case.inputs = the_case.house.inputs;
  the_case.inputs.insert(the_case.inputs.end(), the_case.survey.inputs.begin(), the_case.survey.inputs.end());
  for (const auto &photo : the_case.survey.photos)
    if (photo.file.given()) admit_one(the_case, photo, folder, opening, sink);
}

} // namespace strakebook
