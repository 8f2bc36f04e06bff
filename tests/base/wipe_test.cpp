#include <catch2/catch.hpp>

#include <algorithm>

#include "strakebook/base/wipe.h"

namespace base = strakebook::base;

TEST_CASE("a wiped secret is empty, and its memory holds nothing of it") {
  for (const std::size_t length : {5, 15, 16, 400}) {
    std::string secret(length, 's');
    secret.resize(length / 2); // the rest still lies behind it
    const char *const memory = secret.data();
    base::wipe(secret);
    CHECK(secret.empty());
    CHECK(secret.data() == memory);
    CHECK(std::all_of(memory, memory + length, [](char c) { return c == '\0'; }));
  }
}

TEST_CASE("a secret is wiped when its scope ends, whichever way") {
  std::string secret = "two words";
  try {
    const base::WipedAtEnd wiped(secret);
    throw 1;
  } catch (int) {
  }
  CHECK(secret.empty());
}
