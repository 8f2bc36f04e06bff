#include "strakebook/base/apart_frame.h"

#include <fmt/format.h>

#include "strakebook/base/digest.h"

namespace strakebook::base {

namespace {

std::string head_of(std::string_view answer) {
  return fmt::format("SBA1{:016x}{}", answer.size(), sha256_hex(answer));
}

} // namespace

std::string framed(std::string_view answer) { return head_of(answer).append(answer); }

std::optional<std::string> unframed(std::string_view frame) {
  if (frame.size() < frame_size) return std::nullopt;
  const auto answer = frame.substr(frame_size);
  if (frame.substr(0, frame_size) != head_of(answer)) return std::nullopt;
  return std::string(answer);
}

} // namespace strakebook::base
