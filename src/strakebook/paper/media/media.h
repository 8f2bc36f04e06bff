#pragma once

#include <functional>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "strakebook/base/diagnostic.h"
#include "strakebook/base/image_ref.h"
#include "strakebook/base/apart.h"
#include "strakebook/paper/media/placing.h"

namespace strakebook::media {

/// A photograph that decoded cleanly: upright, 8-bit grey or RGB, at the resolution of its place, without metadata.
/// Only compressed data are kept.
///
/// A JPEG that is small enough, upright, and coded in a way that every reader of a PDF takes (grey, YCbCr, or RGB by
/// Adobe's marker; baseline or progressive) keeps its own data without metadata; any other is coded anew. What came without
/// loss, as PNG, is kept without loss. Colour profiles go with the rest of the metadata: samples are taken as sRGB, so a
/// picture in a wider colour space comes out a little paler; inks are converted without a profile.
struct Image {
  base::ImageRef ref;
  Extent given; ///< pixels of the file, upright
  enum class Coding { jpeg, deflated } coding = Coding::jpeg;
  int components = 3; ///< 1 grey, 3 colour; of deflated data always 3
  std::string data;   ///< a JPEG file, or RGB rows from the top packed by zlib
};

/// The pixels of an image that passed the gate. Throws std::logic_error when its data do not fill its size.
Pixels pixels_of(const Image &image);

/// A picture file, JPEG or PNG, of which decode_picture makes the same image again where all its pixels are kept; it holds nothing but
/// those. Throws as pixels_of() does.
std::string file_of(const Image &image);

/// The libraries that an image's data depend on, with their versions: "libpng 1.6.39".
std::vector<std::string> libraries();

/// Pictures by digest, each stored once.
using ImageStore = std::map<std::string, Image>;

struct ImageLimits {
  long long pixels = 60'000'000;
  std::size_t bytes = 64u << 20;
  base::ApartLimits apart;
};

/// A file as the survey names it.
struct GivenFile {
  const std::string &bytes;
  std::string digest; ///< SHA-256 of the bytes
  std::string path;   ///< as shown to the user
  base::SourceSpan span;
};

/// Makes an Image of a file's bytes (its digest left empty). Throws Refusal when it is no picture to be printed.
using Decode = std::function<Image(const std::string &bytes, const Placing &placing, const ImageLimits &limits)>;

/// Sniffs the type from the bytes (PNG or JPEG, whatever the name says), caps pixels from the header, decodes fully (any
/// decoder warning is an error), applies the EXIF orientation, reduces to the resolution of the place, drops metadata.
Image decode_picture(const std::string &bytes, const Placing &placing, const ImageLimits &limits);

/// The photo gate. A file is decoded in a child process under limits, so that one made to break a decoder breaks nothing
/// else. What is refused is added at the file's place, and nullopt returned: photo_unreadable with what the decoder found,
/// decoding_died when it crashed, hung, or went past a limit, decoding_not_started when no child could be made.
std::optional<Image> admit(const GivenFile &file, const Placing &placing, base::Diagnostics &sink,
                           const ImageLimits &limits = {}, const Decode &decode = decode_picture);

} // namespace strakebook::media
