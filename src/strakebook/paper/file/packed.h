#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace strakebook::file {

/// Texts one behind another, each with its length before it.
struct Packer {
  std::string bytes;
  void add(std::string_view text);
  void add(std::size_t count);
  void add(const std::vector<std::string> &texts);
};

/// Takes them out again in the same order. After anything that was not packed so, whole() is false and what comes is empty.
class Unpacker {
public:
  explicit Unpacker(std::string_view bytes) : left_(bytes) {}
  std::string text();
  std::size_t count();
  std::vector<std::string> texts();
  bool whole() const { return whole_; }
  bool ended() const { return left_.empty(); }

private:
  std::string_view left_;
  bool whole_ = true;
};

} // namespace strakebook::file
