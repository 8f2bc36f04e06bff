#pragma once

#include <string>

namespace strakebook::base {

/// Overwrites a secret in memory and empties it; no compiler leaves it out.
void wipe(std::string &secret);

/// Wipes it when the scope ends.
class WipedAtEnd {
public:
  explicit WipedAtEnd(std::string &secret) : secret_(secret) {}
  WipedAtEnd(const WipedAtEnd &) = delete;
  WipedAtEnd &operator=(const WipedAtEnd &) = delete;
  ~WipedAtEnd() { wipe(secret_); }

private:
  std::string &secret_;
};

} // namespace strakebook::base
