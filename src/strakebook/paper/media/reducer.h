#pragma once

#include <cstdint>
#include <vector>

#include "strakebook/paper/media/pixels.h"

namespace strakebook::media {

/// Makes a picture smaller while its rows come in, so that the whole of it is never in memory: each pixel that is kept is
/// the mean of the area that it covers, in exact fractions of the pixels given, rounded once. Equal sizes change nothing.
class Reducer {
public:
  /// 0 < to <= from, either way.
  Reducer(Extent from, Extent to);

  /// The next row from the top, from.width * 3 bytes of RGB. Neither allocates nor throws: decoders are left by longjmp.
  void take(const unsigned char *rgb);

  /// What came of it, once every row was taken.
  Pixels pixels() &&;

private:
  void sum_across(const unsigned char *rgb);
  void add_line(std::uint64_t weight);
  void put_line();

  Extent from_, to_;
  std::vector<std::uint64_t> line_, area_; ///< sums of a row taken, and of the row that is being made
  std::uint64_t row_ = 0;
  std::size_t put_ = 0;
  Pixels made_;
};

} // namespace strakebook::media
