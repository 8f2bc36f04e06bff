#include "strakebook/issue/issued_folder.h"

#include <algorithm>
#include <set>

#include <catch2/catch.hpp>
#include <sys/wait.h>
#include <unistd.h>

#include "strakebook/base/files.h"
#include "support/entry_sample.h"
#include "support/temp_folder.h"

using namespace strakebook;
using issue::Issuing;
using sample::issued;
using support::TempFolder;

namespace fs = std::filesystem;

namespace {

bool commit(const fs::path &folder, const sample::Issued &made, base::Diagnostics &sink) {
  auto issuing = Issuing::begin(folder, sink);
  return issuing && issuing->commit(made.entry, made.files, sink);
}

std::string bytes_of(const fs::path &file) {
  base::Diagnostics sink;
  return base::read_file(file, 1u << 20, {}, sink).value_or("(not there)");
}

std::set<std::string> names_in(const fs::path &folder) {
  std::set<std::string> names;
  for (const auto &entry : fs::directory_iterator(folder)) names.insert(entry.path().filename().string());
  return names;
}

/// A folder with issue 1 in it.
struct OneIssue {
  TempFolder temp;
  fs::path folder = temp.path, issued_folder = temp.path / "issued";
  base::Diagnostics sink;
  OneIssue() { REQUIRE(commit(folder, issued("RD 2644", 1), sink)); }
};

} // namespace

TEST_CASE("a report's number as the name of a folder") {
  CHECK(issue::folder_name("RD 2644", 2, 0) == "RD-2644-issue-2");
  CHECK(issue::folder_name("RD 2644", 2, 1) == "RD-2644-issue-2-addendum-1");
  CHECK(issue::folder_name("../../etc", 1, 0) == "etc-issue-1");
  CHECK(issue::folder_name(" .R/D -- 26\\44. ", 1, 0) == "R-D-26-44-issue-1");
  CHECK(issue::folder_name("n\xc2\xb0 7", 1, 0) == "n-7-issue-1");
  CHECK(issue::folder_name("\xc3\xa9", 1, 0) != issue::folder_name("\xc3\xa8", 1, 0));
  CHECK(issue::file_part("the buyer's underwriter") == "the-buyer-s-underwriter");

  const std::string as(300, 'a');
  CHECK(issue::folder_name(as + "1", 1, 0) != issue::folder_name(as + "2", 1, 0));
  CHECK(issue::folder_name(as, 2147483647, 2147483647).size() < 150);
}

TEST_CASE("an issue is a folder and an entry") {
  OneIssue one;
  CHECK(names_in(one.issued_folder) == std::set<std::string>{".lock", "RD-2644-issue-1", "register.txt"});
  CHECK(bytes_of(one.issued_folder / "RD-2644-issue-1" / "RD-2644-issue-1.pdf") == "%PDF the report");
  const auto found = issue::register_in(one.folder, one.sink);
  REQUIRE(found);
  CHECK(found->entries == std::vector{issued("RD 2644", 1).entry});
  CHECK(found->text == bytes_of(one.issued_folder / "register.txt"));

  REQUIRE(commit(one.folder, issued("RD 2644", 2), one.sink));
  CHECK(names_in(one.issued_folder / "RD-2644-issue-2") ==
        std::set<std::string>{"RD-2644-issue-2.pdf", "recall-of-issue-1-to-the-buyer.pdf"});
  CHECK(one.sink.all().empty());
}

TEST_CASE("files in folders of an issue") {
  TempFolder temp;
  base::Diagnostics sink;
  auto made = issued("RD 2644", 1);
  for (const char *path : {"inputs/manifest.txt", "inputs/readings/hull.csv", "inputs/photographs/1.jpg"}) {
    made.files[path] = path;
    made.entry.beside.push_back(sample::kept(path, path));
  }
  REQUIRE(commit(temp.path, made, sink));
  CHECK(bytes_of(temp.path / "issued/RD-2644-issue-1/inputs/readings/hull.csv") == "inputs/readings/hull.csv");
  const auto files = issue::files_of(temp.path, made.entry);
  REQUIRE(files);
  CHECK(files->read("inputs/photographs/1.jpg", 100, {}, sink) == "inputs/photographs/1.jpg");
}

TEST_CASE("where nothing was issued there is nothing, and looking makes nothing") {
  TempFolder temp;
  base::Diagnostics sink;
  const auto found = issue::register_in(temp.path, sink);
  REQUIRE(found);
  CHECK(found->entries.empty());
  CHECK(sink.all().empty());
  CHECK(temp.names().empty());
}

TEST_CASE("a number that is issued stays as it is") {
  OneIssue one;
  const auto before = bytes_of(one.issued_folder / "register.txt");
  CHECK_FALSE(commit(one.folder, issued("RD 2644", 1, "%PDF other"), one.sink));
  REQUIRE(one.sink.errors() == 1);
  CHECK(one.sink.all()[0].code == base::Code::already_issued);
  CHECK(one.sink.all()[0].message.find("2026-10-21") != std::string::npos);
  CHECK(bytes_of(one.issued_folder / "register.txt") == before);
  CHECK(bytes_of(one.issued_folder / "RD-2644-issue-1" / "RD-2644-issue-1.pdf") == "%PDF the report");
  CHECK(names_in(one.issued_folder).size() == 3);
}

TEST_CASE("two reports whose folders would be one are refused, also where a disk takes capitals for small letters") {
  for (const char *other : {"RD-2644", "RD/2644", "rd 2644"}) {
    OneIssue one;
    CHECK_FALSE(commit(one.folder, issued(other, 1), one.sink));
    REQUIRE(one.sink.errors() == 1);
    CHECK(one.sink.all()[0].code == base::Code::already_issued);
    CHECK(one.sink.all()[0].message.find(other) != std::string::npos);
  }
}

TEST_CASE("an entry that is not what its files are never gets in") {
  TempFolder temp;
  base::Diagnostics sink;
  auto issuing = Issuing::begin(temp.path, sink);
  REQUIRE(issuing);
  auto wrong = issued("RD 2644", 1);
  wrong.files["RD-2644-issue-1.pdf"] += " ";
  CHECK_THROWS_AS(issuing->commit(wrong.entry, wrong.files, sink), std::logic_error);
  auto more = issued("RD 2644", 1);
  more.files["another.pdf"] = "";
  CHECK_THROWS_AS(issuing->commit(more.entry, more.files, sink), std::logic_error);
  CHECK(names_in(temp.path / "issued") == std::set<std::string>{".lock"});
}

TEST_CASE("what an ended run left before the register was written is cleared") {
  OneIssue one;
  one.temp.write("issued/.begun-RD-2644-issue-2/RD-2644-issue-2.pdf", "%PDF half");
  one.temp.write("issued/.begun-RD-2644-issue-2/inputs/survey.yaml", "form");
  one.temp.write("issued/.strakebook-77-0.tmp", "# Register");
  const auto seen = issue::register_in(one.folder, one.sink);
  REQUIRE(seen);
  CHECK(seen->entries.size() == 1);
  REQUIRE(commit(one.folder, issued("RD 2644", 2), one.sink));
  CHECK(names_in(one.issued_folder) == std::set<std::string>{".lock", "RD-2644-issue-1", "RD-2644-issue-2", "register.txt"});
  CHECK(bytes_of(one.issued_folder / "RD-2644-issue-2" / "RD-2644-issue-2.pdf") == "%PDF the report");
  CHECK_FALSE(fs::exists(one.issued_folder / "RD-2644-issue-2" / "inputs"));
}

TEST_CASE("what was registered and not yet in place is found, and put in place by the next run") {
  OneIssue one;
  fs::rename(one.issued_folder / "RD-2644-issue-1", one.issued_folder / ".begun-RD-2644-issue-1");
  const auto found = issue::register_in(one.folder, one.sink);
  REQUIRE(found);
  const auto files = issue::files_of(one.folder, found->entries[0]);
  REQUIRE(files);
  CHECK(files->read("RD-2644-issue-1.pdf", 100, {}, one.sink) == "%PDF the report");
  CHECK(names_in(one.issued_folder).count("RD-2644-issue-1") == 0);
  {
    const auto issuing = Issuing::begin(one.folder, one.sink);
    REQUIRE(issuing);
    CHECK(issuing->current().entries.size() == 1);
  }
  CHECK(names_in(one.issued_folder) == std::set<std::string>{".lock", "RD-2644-issue-1", "register.txt"});
  CHECK(bytes_of(one.issued_folder / "RD-2644-issue-1" / "RD-2644-issue-1.pdf") == "%PDF the report");
}

TEST_CASE("files of an entry whose folder is gone are not found") {
  OneIssue one;
  fs::remove_all(one.issued_folder / "RD-2644-issue-1");
  CHECK_FALSE(issue::files_of(one.folder, issued("RD 2644", 1).entry));
}

TEST_CASE("a register whose last entry was taken off is told by the folder beside it") {
  OneIssue one;
  const auto first = bytes_of(one.issued_folder / "register.txt");
  REQUIRE(commit(one.folder, issued("RD 2644", 2), one.sink));
  one.temp.write("issued/register.txt", first);
  CHECK_FALSE(issue::register_in(one.folder, one.sink));
  REQUIRE(one.sink.errors() == 1);
  CHECK(one.sink.all()[0].code == base::Code::register_broken);
  CHECK(one.sink.all()[0].message.find("RD-2644-issue-2") != std::string::npos);

  fs::remove(one.issued_folder / "register.txt");
  CHECK_FALSE(commit(one.folder, issued("RD 2644", 3), one.sink));
  CHECK_FALSE(fs::exists(one.issued_folder / "register.txt"));
}

TEST_CASE("a folder of the surveyor's own in it is left alone") {
  OneIssue one;
  one.temp.write("issued/letters/answer.pdf", "an answer");
  REQUIRE(commit(one.folder, issued("RD 2644", 2), one.sink));
  CHECK(bytes_of(one.issued_folder / "letters/answer.pdf") == "an answer");
}

TEST_CASE("nothing is issued on a broken register, and nothing is cleared") {
  OneIssue one;
  const auto text = bytes_of(one.issued_folder / "register.txt");
  one.temp.write("issued/register.txt", text.substr(0, text.size() - 2));
  one.temp.write("issued/.begun-RD-2644-issue-2/RD-2644-issue-2.pdf", "%PDF whole");
  CHECK_FALSE(Issuing::begin(one.folder, one.sink));
  REQUIRE(one.sink.errors() == 1);
  CHECK(one.sink.all()[0].code == base::Code::register_broken);
  CHECK(bytes_of(one.issued_folder / ".begun-RD-2644-issue-2/RD-2644-issue-2.pdf") == "%PDF whole");
}

TEST_CASE("a folder that cannot be used is said, with the place") {
  const auto refused = [](const TempFolder &temp, base::Code code) {
    base::Diagnostics sink;
    CHECK_FALSE(commit(temp.path, issued("RD 2644", 1), sink));
    REQUIRE(sink.errors() >= 1);
    CHECK(sink.all()[0].code == code);
    CHECK(sink.all()[0].span.file->path.find("issued") != std::string::npos);
  };
  TempFolder file_instead;
  file_instead.write("issued", "a file");
  refused(file_instead, base::Code::issuing_failed);
  TempFolder no_lock;
  no_lock.write("issued/.lock/file", "");
  refused(no_lock, base::Code::issuing_failed);
  TempFolder taken;
  taken.write("issued/.begun-RD-2644-issue-1", "a file, not a folder");
  base::Diagnostics sink;
  CHECK(commit(taken.path, issued("RD 2644", 1), sink));
  TempFolder no_place;
  no_place.write("issued/RD-2644-issue-1", "a file, where its folder should go");
  refused(no_place, base::Code::issuing_failed);
}

TEST_CASE("twenty processes in one folder: each issue once, the chain whole") {
  TempFolder temp;
  std::vector<pid_t> children;
  for (int number = 1; number <= 20; ++number) {
    const pid_t child = fork();
    REQUIRE(child >= 0);
    if (child == 0) {
      base::Diagnostics sink;
      _exit(commit(temp.path, issued("R" + std::to_string(number % 10), 1), sink) ? 0 : 1);
    }
    children.push_back(child);
  }
  int written = 0;
  for (const pid_t child : children) {
    int status = 0;
    waitpid(child, &status, 0);
    written += WIFEXITED(status) && WEXITSTATUS(status) == 0;
  }
  CHECK(written == 10);
  base::Diagnostics sink;
  const auto found = issue::register_in(temp.path, sink);
  REQUIRE(found);
  CHECK(found->entries.size() == 10);
  CHECK(sink.all().empty());
  CHECK(names_in(temp.path / "issued").size() == 12);
}
