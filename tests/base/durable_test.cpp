#include "strakebook/base/durable.h"

#include <catch2/catch.hpp>
#include <fcntl.h>
#include <unistd.h>

#include "strakebook/base/files.h"
#include "support/temp_folder.h"

using namespace strakebook::base;

TEST_CASE("a new file has all its bytes, and never takes the place of another") {
  support::TempFolder temp;
  const std::string bytes(3u << 20, 'x');
  REQUIRE(write_new_file(temp.path / "new", bytes));
  Diagnostics sink;
  CHECK(read_file(temp.path / "new", 4u << 20, {}, sink) == bytes);
  CHECK_FALSE(write_new_file(temp.path / "new", "other"));
  CHECK(errno == EEXIST);
  CHECK(read_file(temp.path / "new", 4u << 20, {}, sink) == bytes);
  CHECK_FALSE(write_new_file(temp.path / "no folder" / "new", ""));
  CHECK(errno == ENOENT);
}

TEST_CASE("bytes that a full device does not take are a failure") {
  const int full = ::open("/dev/full", O_WRONLY);
  REQUIRE(full >= 0);
  CHECK_FALSE(write_all(full, "bytes"));
  CHECK(errno == ENOSPC);
  ::close(full);
  CHECK_FALSE(write_all(-1, "bytes"));
}

TEST_CASE("a folder can be synced, nothing cannot") {
  support::TempFolder temp;
  CHECK(sync_folder(temp.path));
  CHECK_FALSE(sync_folder(temp.path / "not there"));
  CHECK_FALSE(sync_folder(-1));
}

TEST_CASE("a call is made again only for as long as a signal interrupts it") {
  int calls = 0;
  const int result = uninterrupted([&] {
    errno = ++calls < 3 ? EINTR : EIO;
    return -1;
  });
  CHECK(result == -1);
  CHECK(calls == 3);
}
