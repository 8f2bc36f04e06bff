#include "strakebook/paper/file/packed.h"

#include <charconv>

namespace strakebook::file {

void Packer::add(std::string_view text) {
  add(text.size());
  bytes += text;
}

void Packer::add(std::size_t count) {
  bytes += std::to_string(count);
  bytes += ' ';
}

void Packer::add(const std::vector<std::string> &texts) {
  add(texts.size());
  for (const auto &text : texts) add(std::string_view(text));
}

std::size_t Unpacker::count() {
  std::size_t count = 0;
  const auto *end = left_.data() + left_.size();
  const auto read = std::from_chars(left_.data(), end, count);
  if (!whole_ || read.ec != std::errc{} || read.ptr == end || *read.ptr != ' ') {
    whole_ = false;
    return 0;
  }
  left_.remove_prefix(static_cast<std::size_t>(read.ptr - left_.data()) + 1);
  return count;
}

std::string Unpacker::text() {
  const std::size_t length = count();
  if (length > left_.size()) whole_ = false;
  if (!whole_) return {};
  std::string text(left_.substr(0, length));
  left_.remove_prefix(length);
  return text;
}

std::vector<std::string> Unpacker::texts() {
  std::vector<std::string> texts;
  for (std::size_t left = count(); left > 0 && whole_; --left) texts.push_back(text());
  return texts;
}

} // namespace strakebook::file
