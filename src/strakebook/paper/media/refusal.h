#pragma once

#include <stdexcept>
#include <string>

namespace strakebook::media {

/// A picture that the gate does not let through; what() says what was found, in words for a reader.
struct Refusal : std::runtime_error {
  using std::runtime_error::runtime_error;
};

/// Throws Refusal when a picture of this size has no pixels or more than `most` of them.
void check_pixels(long long width, long long height, long long most);

} // namespace strakebook::media
