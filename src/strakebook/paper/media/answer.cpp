#include "strakebook/paper/media/answer.h"

#include <cstdint>
#include <cstring>

namespace strakebook::media {

namespace {

using namespace std::string_view_literals;

constexpr char image_mark = 'i', refusal_mark = 'r';

struct Head {
  std::int32_t width, height, given_width, given_height, components, deflated;
};

bool sound(const Head &head, std::string_view data) {
  const bool sizes = head.width > 0 && head.height > 0 && head.width <= head.given_width && head.height <= head.given_height;
  const bool jpeg = head.deflated == 0 && (head.components == 1 || head.components == 3) &&
                    data.starts_with("\xFF\xD8"sv) && data.ends_with("\xFF\xD9"sv);
  const bool rows = head.deflated == 1 && head.components == 3 && !data.empty();
  return sizes && (jpeg || rows);
}

} // namespace

std::string packed(const Answer &answer) {
  if (const auto *refusal = std::get_if<std::string>(&answer)) return refusal_mark + *refusal;
  const auto &image = std::get<Image>(answer);
  const Head head{image.ref.width,    image.ref.height, image.given.width,
                  image.given.height, image.components, image.coding == Image::Coding::deflated};
  std::string bytes(1 + sizeof head, image_mark);
  std::memcpy(&bytes[1], &head, sizeof head);
  return bytes + image.data;
}

std::optional<Answer> unpacked(std::string_view bytes) {
  if (bytes.empty()) return std::nullopt;
  if (bytes[0] == refusal_mark) return std::string(bytes.substr(1));
  Head head{};
  if (bytes[0] != image_mark || bytes.size() < 1 + sizeof head) return std::nullopt;
  std::memcpy(&head, &bytes[1], sizeof head);
  const auto data = bytes.substr(1 + sizeof head);
  if (!sound(head, data)) return std::nullopt;
  return Image{.ref = {{}, head.width, head.height},
               .given = {head.given_width, head.given_height},
               .coding = head.deflated == 1 ? Image::Coding::deflated : Image::Coding::jpeg,
               .components = head.components,
               .data = std::string(data)};
}

} // namespace strakebook::media
