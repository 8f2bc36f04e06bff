#include "strakebook/issue/register.h"

#include <catch2/catch.hpp>

#include "strakebook/base/digest.h"
#include "support/entry_sample.h"

using namespace strakebook;
using issue::Entry;
using issue::Register;
using sample::as_file;
using sample::issued;

namespace {

Register registered(const std::vector<Entry> &entries) {
  Register made;
  for (const Entry &entry : entries) {
    made.text = issue::with_entry(made, entry);
    made.entries.push_back(entry);
  }
  return made;
}

struct Read {
  Register found;
  base::Diagnostics sink;
};
Read read(const std::string &text) {
  Read result;
  result.found = issue::read_register(as_file(text), result.sink);
  return result;
}

const Register &two_issues() {
  static const Register made = registered({issued("RD 2644", 1).entry, issued("RD 2644", 2).entry});
  return made;
}

std::vector<std::string> lines_of(const std::string &text) {
  std::vector<std::string> lines;
  for (std::size_t from = 0, to; from < text.size(); from = to) {
    to = text.find('\n', from) + 1;
    lines.push_back(text.substr(from, to - from));
  }
  return lines;
}

std::string joined(const std::vector<std::string> &lines) {
  std::string text;
  for (const auto &line : lines) text += line;
  return text;
}

} // namespace

TEST_CASE("a register is read as it was written") {
  const auto [found, sink] = read(two_issues().text);
  CHECK(sink.all().empty());
  CHECK(found.entries == two_issues().entries);
  CHECK(found.text == two_issues().text);
}

TEST_CASE("another entry leaves every byte before it alone") {
  const auto first = registered({issued("RD 2644", 1).entry}).text;
  CHECK(two_issues().text.substr(0, first.size()) == first);
}

TEST_CASE("whatever words hold stands on one line and comes back") {
  Entry entry = issued("RD 2644", 1).entry;
  entry.report = "  R/D\t26\\44 \xc3\xa9 ";
  entry.signer = base::sha256_hex("a certificate");
  entry.addendum = 12;
  entry.reasons = {"two\nlines\r\n", "\nchain: 0", "\x01\x7f", "\\n is no line end", "\xe2\x80\xa8"};
  entry.recipients = {{"the buyer: who", ""}, {"", "how: by letter"}};
  entry.inputs.push_back({"a path with blanks.csv", base::sha256_hex(""), 0});
  const auto made = registered({entry, issued("another", 1).entry});
  const auto [found, sink] = read(made.text);
  CHECK(sink.all().empty());
  CHECK(found.entries == made.entries);
}

TEST_CASE("it reads as plain text") {
  const auto lines = lines_of(two_issues().text);
  CHECK(lines[3] == "report: RD 2644\n");
  CHECK(lines[4] == "issue: 1\n");
  CHECK(lines[6] == "date: 2026-10-21\n");
  CHECK(lines[8] == "document: " + base::sha256_hex("%PDF the report") + " 15 RD-2644-issue-1.pdf\n");
}

// What a reader with sha256sum does; the digest itself is held by the examples of FIPS 180-4 in tests/base.
TEST_CASE("a chain covers the lines from the chain before it to the one above") {
  std::string covered;
  int chains = 0;
  for (const auto &line : lines_of(two_issues().text)) {
    if (line.rfind("chain: ", 0) == 0) {
      CHECK(line == "chain: " + base::sha256_hex(covered) + "\n");
      covered.clear();
      ++chains;
    }
    covered += line;
  }
  CHECK(chains == 2);
}

TEST_CASE("every bit of every byte is held") {
  const auto &whole = two_issues();
  for (std::size_t at = 0; at < whole.text.size(); ++at)
    for (int bit = 0; bit < 8; ++bit) {
      std::string text = whole.text;
      text[at] = static_cast<char>(text[at] ^ (1 << bit));
      const auto [found, sink] = read(text);
      if (sink.errors() != 1 || sink.all()[0].code != base::Code::register_broken || sink.all()[0].span.line < 1) FAIL("byte " << at << " bit " << bit);
    }
}

TEST_CASE("a line that is gone, doubled or in another place is found") {
  const auto lines = lines_of(two_issues().text);
  for (std::size_t at = 0; at < lines.size(); ++at) {
    INFO("line " << at + 1);
    auto gone = lines;
    gone.erase(gone.begin() + static_cast<std::ptrdiff_t>(at));
    CHECK(read(joined(gone)).sink.errors() == 1);
    auto doubled = lines;
    doubled.insert(doubled.begin() + static_cast<std::ptrdiff_t>(at), lines[at]);
    CHECK(read(joined(doubled)).sink.errors() == 1);
    if (at == 0) continue;
    auto changed = lines;
    std::swap(changed[at - 1], changed[at]);
    CHECK(read(joined(changed)).sink.errors() == 1);
  }
}

TEST_CASE("a register that was cut anywhere but after an entry is found; what is left of it is whole entries") {
  const auto &whole = two_issues().text;
  const auto one = registered({two_issues().entries[0]}).text;
  for (std::size_t length = 0; length < whole.size(); ++length) {
    const auto [found, sink] = read(whole.substr(0, length));
    if ((sink.errors() == 0) != (length == one.size())) FAIL("cut to " << length);
    if (found.entries.size() != (length < one.size() ? 0u : 1u)) FAIL("entries of a register cut to " << length);
  }
}

TEST_CASE("bytes after the last entry are found") {
  for (const char *more : {"\n", " ", "chain: 0\n", "# a remark\n"}) CHECK(read(two_issues().text + more).sink.errors() == 1);
}

TEST_CASE("an entry in another place breaks the chain") {
  const auto first = registered({issued("A", 1).entry, issued("B", 1).entry, issued("C", 1).entry}).text;
  const auto other = registered({issued("A", 1).entry, issued("C", 1).entry, issued("B", 1).entry}).text;
  const auto third = first.substr(first.find("\nreport: C"));
  auto without = first;
  without.erase(first.find("\nreport: B"), first.find("\nreport: C") - first.find("\nreport: B"));
  CHECK(read(without).sink.errors() == 1);
  CHECK(read(other.substr(0, other.find("\nreport: C")) + third).sink.errors() == 1);
}

TEST_CASE("a number may stand once") {
  const auto [found, sink] = read(registered({issued("RD 2644", 1).entry, issued("RD 2644", 1, "other bytes").entry}).text);
  REQUIRE(sink.errors() == 1);
  CHECK(sink.all()[0].message == "the register was altered or cut: RD 2644 issue 1 stands in the register twice");
  CHECK(found.entries.size() == 1);
}

TEST_CASE("the fault is named with its line") {
  auto text = two_issues().text;
  text.replace(text.rfind("date: 2026"), 10, "date: 2036");
  const auto [found, sink] = read(text);
  CHECK(found.entries.size() == 1);
  REQUIRE(sink.all().size() == 1);
  CHECK(sink.all()[0].message ==
        "the register was altered or cut: the entry of RD 2644 issue 2 is not as it was written: one of the lines 20 to 42 was altered");
  CHECK(sink.all()[0].span.line == 22);
  CHECK(sink.all()[0].span.file->path == "issued/register.txt");

  text = two_issues().text;
  text.replace(text.find("date: 2026-10"), 13, "date: 2026-13");
  const auto bad_date = read(text).sink.all();
  REQUIRE(bad_date.size() == 1);
  CHECK(bad_date[0].message == "the register was altered or cut: \"date\" has to be a day that exists, YYYY-MM-DD");
  CHECK(bad_date[0].span.line == 7);
}

TEST_CASE("an entry that a clever hand chained anew is still to be spelled as the program spells it") {
  auto text = registered({issued("RD 2644", 1).entry}).text;
  text.replace(text.find("issue: 1"), 8, "issue: 01");
  const auto chain = text.rfind("chain: ");
  text = text.substr(0, chain) + "chain: " + base::sha256_hex(text.substr(0, chain)) + "\n";
  const auto [found, sink] = read(text);
  REQUIRE(sink.errors() == 1);
  CHECK(sink.all()[0].message == "the register was altered or cut: the entry of RD 2644 issue 1 is not spelled as this program spells one");
}

TEST_CASE("issues are found by number, the last one by report") {
  Entry addendum = issued("RD 2644", 2).entry;
  addendum.addendum = 1;
  const auto made = registered({issued("RD 2644", 1).entry, issued("other", 7).entry, issued("RD 2644", 2).entry, addendum});
  CHECK(made.of("RD 2644", 1, 0) == &made.entries[0]);
  CHECK(made.of("RD 2644", 2, 1) == &made.entries[3]);
  CHECK(made.of("RD 2644", 3, 0) == nullptr);
  CHECK(made.last_issue("RD 2644") == &made.entries[2]);
  CHECK(made.last_issue("RD") == nullptr);
}
