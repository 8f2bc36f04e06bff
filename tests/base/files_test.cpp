#include "strakebook/base/files.h"

#include <csignal>

#include <catch2/catch.hpp>
#include <sys/resource.h>
#include <sys/stat.h>
#include <unistd.h>

#include "helpers.h"
#include "support/temp_folder.h"

using namespace strakebook::base;
using testing::places_and_codes;
namespace fs = std::filesystem;

namespace {

using Found = std::vector<std::string>;

using Folder = support::TempFolder;

std::string bytes_of(const fs::path &path) {
  Diagnostics sink;
  return read_file(path, 1 << 20, {}, sink).value_or("(unreadable)");
}

Found refusals_of_reading(const fs::path &path, std::size_t most) {
  Diagnostics sink;
  CHECK_FALSE(read_file(path, most, {testing::source_of(""), 3, 7, 1}, sink));
  return places_and_codes(sink);
}

/// A disk with room for `bytes` in any one file, as long as this lives: writing more fails as on a full disk.
struct SmallDisk {
  rlimit before{};
  void (*handler)(int);
  explicit SmallDisk(rlim_t bytes) : handler(std::signal(SIGXFSZ, SIG_IGN)) {
    ::getrlimit(RLIMIT_FSIZE, &before);
    const rlimit now{bytes, before.rlim_max};
    ::setrlimit(RLIMIT_FSIZE, &now);
  }
  ~SmallDisk() {
    ::setrlimit(RLIMIT_FSIZE, &before);
    std::signal(SIGXFSZ, handler);
  }
};

} // namespace

TEST_CASE("a whole file is read, up to its bound and not beyond") {
  const Folder folder;
  const auto file = folder.write("a.csv", std::string("1,\0\xFF\n", 5));
  CHECK(bytes_of(file) == std::string("1,\0\xFF\n", 5));
  Diagnostics sink;
  CHECK(read_file(file, 5, {}, sink));
  CHECK(read_file(folder.write("empty", ""), 0, {}, sink)->empty());
  CHECK(sink.ok());
  CHECK(refusals_of_reading(file, 4) == Found{"3:7 SB0003"});
}

TEST_CASE("what is not a file that can be read is refused at the place that names it") {
  const Folder folder;
  CHECK(refusals_of_reading(folder.path / "absent", 9) == Found{"3:7 SB0001"});
  CHECK(refusals_of_reading(folder.path, 9) == Found{"3:7 SB0001"});
  REQUIRE(::mkfifo((folder.path / "pipe").c_str(), 0600) == 0);
  CHECK(refusals_of_reading(folder.path / "pipe", 9) == Found{"3:7 SB0001"});
  CHECK(refusals_of_reading("/dev/zero", 9) == Found{"3:7 SB0001"});
}

TEST_CASE("a source keeps the name that the user gave") {
  const Folder folder;
  Diagnostics sink;
  const auto source = read_source(folder.write("s.yaml", "a: 1\n"), "mine/s.yaml", {}, sink);
  REQUIRE(source);
  CHECK(source->path == "mine/s.yaml");
  CHECK(source->text == "a: 1\n");
  CHECK_FALSE(read_source(folder.path / "absent", "absent", {}, sink));
  CHECK(sink.errors() == 1);
}

TEST_CASE("writing makes or replaces the whole file and leaves nothing else") {
  const Folder folder;
  const auto target = folder.path / "report.pdf";
  Diagnostics sink;
  CHECK(write_atomically(target, "first", sink));
  CHECK(bytes_of(target) == "first");
  fs::permissions(target, fs::perms(0600));
  CHECK(write_atomically(target, std::string(100'000, 'x'), sink));
  CHECK(bytes_of(target) == std::string(100'000, 'x'));
  CHECK(fs::status(target).permissions() == fs::perms(0600));
  CHECK(folder.names() == Found{"report.pdf"});
  CHECK(sink.ok());
}

TEST_CASE("a new file is readable by others as far as the umask lets it") {
  const Folder folder;
  Diagnostics sink;
  const mode_t before = ::umask(027);
  CHECK(write_atomically(folder.path / "a", "x", sink));
  ::umask(before);
  CHECK(fs::status(folder.path / "a").permissions() == fs::perms(0640));
}

TEST_CASE("a link is kept and what it leads to is replaced") {
  const Folder folder;
  folder.write("real", "old");
  fs::create_symlink("real", folder.path / "link");
  Diagnostics sink;
  CHECK(write_atomically(folder.path / "link", "new", sink));
  CHECK(fs::is_symlink(folder.path / "link"));
  CHECK(bytes_of(folder.path / "real") == "new");
}

TEST_CASE("on a full disk the target is unchanged and the temporary file gone") {
  const Folder folder;
  const auto target = folder.write("report.pdf", "old");
  Diagnostics sink;
  {
    const SmallDisk disk(4096);
    CHECK_FALSE(write_atomically(target, std::string(100'000, 'x'), sink));
    CHECK(write_atomically(folder.path / "small", std::string(4096, 'x'), sink));
  }
  CHECK(places_and_codes(sink) == Found{"0:0 SB0901"});
  CHECK(sink.all()[0].span.file->path == target.string());
  CHECK_THAT(sink.all()[0].message, Catch::Contains("writing failed: File too large"));
  CHECK(bytes_of(target) == "old");
  fs::remove(folder.path / "small");
  CHECK(folder.names() == Found{"report.pdf"});
}

TEST_CASE("a folder, a device and a folder that is not there are never written to") {
  const Folder folder;
  fs::create_directory(folder.path / "sub");
  Diagnostics sink;
  CHECK_FALSE(write_atomically(folder.path / "sub", "x", sink));
  CHECK_FALSE(write_atomically(folder.path / "absent" / "a", "x", sink));
  CHECK_FALSE(write_atomically("/dev/full", "x", sink));
  REQUIRE(sink.errors() == 3);
  CHECK_THAT(sink.all()[0].message, Catch::EndsWith("it is a folder"));
  CHECK_THAT(sink.all()[1].message, Catch::Contains("absent cannot be opened: No such file or directory"));
  CHECK_THAT(sink.all()[2].message, Catch::EndsWith("it is not a regular file"));
  CHECK(fs::is_character_file("/dev/full"));
  CHECK(folder.names() == Found{"sub"});
  CHECK(fs::is_empty(folder.path / "sub"));
}

TEST_CASE("a folder that cannot be written leaves its file alone") {
  if (::geteuid() == 0)
    return; // the superuser may write everywhere
  const Folder folder;
  const auto target = folder.write("a", "old");
  fs::permissions(folder.path, fs::perms(0500));
  Diagnostics sink;
  CHECK_FALSE(write_atomically(target, "new", sink));
  fs::permissions(folder.path, fs::perms(0700));
  CHECK(bytes_of(target) == "old");
}

TEST_CASE("a path stays inside its folder, however it tries to leave") {
  const Folder outer;
  const fs::path survey = outer.path / "survey";
  fs::create_directories(survey / "photos");
  fs::create_directory(outer.path / "survey-two");
  outer.write("secret", "x");
  fs::create_symlink("../secret", survey / "out");
  fs::create_symlink("../gone", survey / "dangling");
  fs::create_directory_symlink("..", survey / "up");
  fs::create_directory_symlink("photos", survey / "pictures");

  CHECK(inside(survey, "photos/4.jpg") == survey / "photos/4.jpg"); // need not be there yet
  CHECK(inside(survey, "./photos/../a.csv"));
  CHECK(inside(survey, "pictures/4.jpg"));
  CHECK(inside(survey, "..photo"));
  for (const char *path : {"", "/etc/hostname", "../secret", "photos/../../secret", "..", "../survey-two/a",
                           "out", "dangling", "up/secret", "pictures/../../secret"}) {
    INFO(path);
    CHECK_FALSE(inside(survey, path));
  }
  CHECK_FALSE(inside(survey, std::string_view("a\0b", 3)));
  CHECK_FALSE(inside(outer.path / "absent", "a"));
}
