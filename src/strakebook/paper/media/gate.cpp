#include "strakebook/paper/media/media.h"

#include <fmt/format.h>

#include "strakebook/paper/media/answer.h"
#include "strakebook/paper/media/refusal.h"

namespace strakebook::media {

namespace {

using base::Code;

std::string what_is_read(const ImageLimits &limits) {
  return fmt::format("a whole, undamaged PNG or JPEG picture of at most {} million pixels and {} MiB",
                     limits.pixels / 1'000'000, limits.bytes >> 20);
}

void refuse(const GivenFile &file, const std::string &found, const ImageLimits &limits, base::Diagnostics &sink) {
  sink.error(Code::photo_unreadable, file.span, fmt::format("{} does not decode cleanly: {}", file.path, found),
             what_is_read(limits), "copy the file again from the camera, or export it anew as JPEG");
}

void report(const GivenFile &file, const base::Lost &lost, const ImageLimits &limits, base::Diagnostics &sink) {
  if (lost.started)
    sink.error(Code::decoding_died, file.span, fmt::format("the decoder of {} {}", file.path, lost.how),
               what_is_read(limits), "open the file in a program that you trust with it and export it anew, or leave it out");
  else
    sink.error(Code::decoding_not_started, file.span,
               fmt::format("no process can be started to decode {}: {}", file.path, lost.how),
               "a system that lets this program start a process and limit it",
               "close other programs and run it again; the file itself was not looked at");
}

std::string answer_to(const GivenFile &file, const Placing &placing, const ImageLimits &limits, const Decode &decode) {
  try {
    return packed(decode(file.bytes, placing, limits));
  } catch (const Refusal &refusal) {
    return packed(std::string(refusal.what()));
  }
}

} // namespace

std::optional<Image> admit(const GivenFile &file, const Placing &placing, base::Diagnostics &sink,
                           const ImageLimits &limits, const Decode &decode) {
  if (file.bytes.size() > limits.bytes) {
    refuse(file, fmt::format("a file of {} bytes", file.bytes.size()), limits, sink);
    return std::nullopt;
  }
  const auto heard = base::run_apart([&] { return answer_to(file, placing, limits, decode); }, limits.apart);
  if (const auto *lost = std::get_if<base::Lost>(&heard)) {
    report(file, *lost, limits, sink);
    return std::nullopt;
  }
  auto answer = unpacked(std::get<std::string>(heard));
  if (!answer) {
    report(file, {.how = "gave an answer that is no picture"}, limits, sink);
    return std::nullopt;
  }
  if (const auto *refusal = std::get_if<std::string>(&*answer)) {
    refuse(file, *refusal, limits, sink);
    return std::nullopt;
  }
  auto image = std::get<Image>(std::move(*answer));
  image.ref.digest = file.digest;
  return image;
}

} // namespace strakebook::media
