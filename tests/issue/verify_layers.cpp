#include <catch2/catch.hpp>

#include "issue/small_report.h"

using namespace small_report;
using Catch::Contains;
using issue::Answer;
using issue::Superseded;
using issue::What;

namespace {

const base::Date october{2026, 10, 21}, november{2026, 11, 9};

struct Two {
  Made first = made(inputs("6.4"), 1), second = made(inputs("4.6"), 2);
  std::string stamped = first.pdf + " as a stamped copy", notice = "%PDF-1.7 a notice";
  std::vector<issue::Entry> entries{entry(first, 1, october), entry(second, 2, november)};

  Two() {
    entries[1].replaces = entries[0].document.digest;
    entries[1].beside = {kept("RD-2644-issue-1-superseded.pdf", stamped), kept("recall-of-issue-1-to-the-buyer.pdf", notice)};
  }
};

/// A report whose words, list or files are not what they were.
std::string forged(const base::FileSet &files, const std::string &printed_reading, const std::string &printed_digest) {
  const auto list = text_of(issue::manifest_of(files, "RD 2644", 1, 0, makers()));
  auto attached = files;
  attached.emplace("manifest.txt", list);
  const auto foot = ", Inputs " + (printed_digest.empty() ? issue::short_digest(base::sha256_hex(list)) : printed_digest);
  return pdf_with({"Issue 1, 2 files" + foot, "SW 7," + printed_reading + foot}, attached);
}

} // namespace

TEST_CASE("an issued report: all but a signature holds, and nothing replaces it") {
  const auto report = made(inputs());
  const auto found = verify(report.pdf, with_register({entry(report, 1, october)}));
  for (const char *name : {"register", "file", "inputs", "rendering"}) {
    INFO(name << ": " << layer(found, name).why);
    CHECK(answer(found, name) == Answer::holds);
  }
  CHECK(layer(found, "signature").why == "it carries none");
  CHECK(answer(found, "signature") == Answer::cannot_be_checked);
  CHECK(found.superseded.by == Superseded::By::none);
  CHECK(found.what == What::report);
  CHECK((found.report == "RD 2644" && found.issue == 1 && found.state == "final" && found.date == "2026-10-21"));
  std::vector<std::string> order;
  for (const auto &layer : found.layers) order.push_back(layer.name);
  CHECK(order == std::vector<std::string>{"register", "file", "inputs", "rendering", "signature"});
}

TEST_CASE("without a register: what the file says by itself, and what cannot be known") {
  const auto found = verify(made(inputs()).pdf, without_register());
  CHECK((answer(found, "inputs") == Answer::holds && answer(found, "rendering") == Answer::holds));
  CHECK((answer(found, "register") == Answer::cannot_be_checked && answer(found, "file") == Answer::cannot_be_checked));
  CHECK_THAT(layer(found, "register").why, Contains("whether a later issue replaces them"));
  CHECK((found.superseded.by == Superseded::By::not_known && found.date.empty() && found.report == "RD 2644"));
  CHECK_FALSE(found.broken());
}

TEST_CASE("an issue that was replaced is whole, and says by which") {
  const Two two;
  const auto found = verify(two.first.pdf, with_register(two.entries));
  CHECK_FALSE(found.broken());
  CHECK(found.superseded.by == Superseded::By::issue);
  CHECK((found.superseded.issue == 2 && found.superseded.date == "2026-11-09" && found.superseded.digest == base::sha256_hex(two.second.pdf)));
  CHECK(verify(two.second.pdf, with_register(two.entries)).superseded.by == Superseded::By::none);
}

TEST_CASE("a stamped copy and a notice are known by what was registered beside the issue") {
  const Two two;
  auto found = verify(two.stamped, with_register(two.entries));
  CHECK((found.what == What::stamped_copy && found.issue == 1 && found.superseded.issue == 2));
  CHECK(answer(found, "file") == Answer::holds);
  CHECK(answer(found, "rendering") == Answer::cannot_be_checked);
  found = verify(two.notice, with_register(two.entries));
  CHECK((found.what == What::companion && found.issue == 2 && answer(found, "file") == Answer::holds));
}

TEST_CASE("addenda to an issue are told, and one of a replaced issue is replaced with it") {
  const Two two;
  auto entries = two.entries;
  auto addendum = entry(made(inputs("6.5")), 1, november);
  addendum.addendum = 1;
  entries.insert(entries.begin() + 1, addendum);
  CHECK(verify(two.first.pdf, with_register(entries)).addenda == std::vector<std::pair<int, std::string>>{{1, "2026-11-09"}});
  CHECK(verify(two.second.pdf, with_register(entries)).addenda.empty());
}

TEST_CASE("a report that the register does not have was not issued") {
  const Two two;
  const auto found = verify(two.second.pdf, with_register({two.entries[0]}));
  CHECK(answer(found, "register") == Answer::broken);
  CHECK_THAT(layer(found, "register").why, Contains("does not have RD 2644 issue 2"));
  CHECK(answer(found, "file") == Answer::broken);
  CHECK(found.superseded.by == Superseded::By::not_known);
}

TEST_CASE("bytes behind an issued report are broken, with a register and without") {
  const Two two;
  for (const std::string more : {"\n", "x", "\n% a comment\n%%EOF\n"}) {
    auto found = verify(two.first.pdf + more, with_register(two.entries));
    CHECK(answer(found, "file") == Answer::broken);
    CHECK_THAT(layer(found, "file").why, Contains("it begins with the"));
    CHECK(found.superseded.issue == 2);
    found = verify(two.first.pdf + more, without_register());
    for (const char *name : {"file", "rendering", "signature"}) CHECK(answer(found, name) == Answer::broken);
    CHECK_THAT(layer(found, "rendering").why, Contains(std::to_string(more.size()) + " follow"));
  }
}

TEST_CASE("a page that is gone is missed") {
  const auto files = inputs();
  auto attached = files;
  attached.emplace("manifest.txt", made(files).list);
  const auto foot = "Inputs " + issue::short_digest(base::sha256_hex(made(files).list));
  for (const auto &pages : {std::vector<std::string>{"SW 7,4.6, " + foot}, {"Issue 1, 2 files, " + foot}}) {
    const auto cut = pdf_with(pages, attached);
    auto found = verify(cut, without_register());
    CHECK_THAT(layer(found, "rendering").why, Contains("it has 1 pages and its inputs make 2"));
    CHECK(answer(found, "inputs") == Answer::holds);
    found = verify(cut, with_register({entry(made(files), 1, october)}));
    CHECK(answer(found, "file") == Answer::broken);
  }
}

TEST_CASE("each attached input that was altered, left out or added is named") {
  const auto report = made(inputs());
  const base::FileSet whole{{"readings.csv", inputs().at("readings.csv")}, {"survey.yaml", inputs().at("survey.yaml")}, {"manifest.txt", report.list}};
  const std::vector<std::string> pages{"page"};
  for (const auto &[name, bytes] : inputs()) {
    auto attached = whole;
    attached[name][3] ^= 1;
    auto found = verify(pdf_with(pages, attached), without_register());
    CHECK_THAT(layer(found, "inputs").why, Contains(name + ", attached, is not as listed"));
    CHECK(answer(found, "rendering") == Answer::cannot_be_checked);
    attached.erase(name);
    CHECK_THAT(layer(verify(pdf_with(pages, attached), without_register()), "inputs").why, Contains(name + " is listed and is missing"));
  }
  auto more = whole;
  more["more.txt"] = "more";
  CHECK_THAT(layer(verify(pdf_with(pages, more), without_register()), "inputs").why, Contains("more.txt is attached and is not listed"));
  auto listless = whole;
  listless.erase("manifest.txt");
  CHECK(answer(verify(pdf_with(pages, listless), without_register()), "inputs") == Answer::broken);
}

TEST_CASE("a list made anew for altered inputs is betrayed by the pages, and pages made anew by the rendering") {
  const auto report = made(inputs("6.4"));
  const auto printed = issue::short_digest(base::sha256_hex(report.list));
  const auto old_pages = forged(inputs("4.6"), "6.4", printed);
  CHECK_THAT(layer(verify(old_pages, without_register()), "inputs").why, Contains("page 1 does not carry"));
  CHECK_THAT(layer(verify(old_pages, with_register({entry(report, 1, october)})), "inputs").why, Contains("registered is"));
  const auto other_words = forged(inputs("4.6"), "6.4", "");
  const auto found = verify(other_words, without_register());
  CHECK(answer(found, "inputs") == Answer::holds);
  CHECK(answer(found, "rendering") == Answer::broken);
  CHECK_THAT(layer(found, "rendering").why, Contains("page 2 reads (without blanks) \"SW7,6.4,") && Contains("make \"SW7,4.6,"));
}

TEST_CASE("made by another version: the rendering says with what, and holds nothing against it") {
  const auto report = made(inputs());
  auto against = without_register();
  against.here = {"strakebook 0.1.0 (sources 11aa22bb)", {"zlib 1.3"}};
  const auto found = verify(report.pdf, against);
  CHECK(answer(found, "rendering") == Answer::cannot_be_checked);
  CHECK(layer(found, "rendering").why == "it was made with zlib 1.2.13, and here is zlib 1.3");
  CHECK_FALSE(found.broken());
}

TEST_CASE("inputs that make no report are broken") {
  auto against = without_register();
  against.make_again = [](const auto &, const auto &) { return issue::MadeAgain{{}, "survey.yaml:1: it has no readings"}; };
  CHECK_THAT(layer(verify(made(inputs()).pdf, against), "rendering").why, Contains("it has no readings"));
  CHECK(verify(made(inputs()).pdf, against).broken());
}

TEST_CASE("inputs kept beside the PDF are held against their list, the register and the pages") {
  const auto report = made(inputs(), 1, false);
  auto registered_entry = entry(report, 1, october);
  for (const auto &file : registered_entry.inputs) registered_entry.beside.push_back({"inputs/" + file.path, file.digest, file.bytes});
  auto against = with_register({registered_entry});
  auto found = verify(report.pdf, against);
  CHECK(answer(found, "inputs") == Answer::cannot_be_checked);
  CHECK(answer(found, "file") == Answer::holds);

  against.make_again = [](const auto &files, const auto &manifest) { return issue::MadeAgain{made(files, manifest.issue, false).pdf, {}}; };
  auto beside = inputs();
  beside.emplace("manifest.txt", report.list);
  against.beside = base::Folder::kept(beside);
  found = verify(report.pdf, against);
  CHECK((answer(found, "inputs") == Answer::holds && answer(found, "rendering") == Answer::holds));
  for (const auto &[name, bytes] : beside) {
    auto altered = beside;
    altered[name].back() ^= 1;
    against.beside = base::Folder::kept(altered);
    INFO(name);
    CHECK(answer(verify(report.pdf, against), "inputs") == Answer::broken);
  }
  against.beside = base::Folder::kept({{"manifest.txt", report.list}, {"survey.yaml", beside.at("survey.yaml")}});
  CHECK(layer(verify(report.pdf, against), "inputs").why == "readings.csv is listed and is missing");
}

TEST_CASE("a folder beside a report that has its inputs attached is none of its inputs") {
  auto against = without_register();
  against.beside = base::Folder::kept({{"survey.yaml", "of another report"}, {"manifest.txt", "another list"}});
  CHECK(answer(verify(made(inputs()).pdf, against), "inputs") == Answer::holds);
}

TEST_CASE("inputs that were attached and are no more are missed") {
  const auto without = made(inputs(), 1, false);
  const auto found = verify(without.pdf, with_register({entry(without, 1, october)}));
  CHECK_THAT(layer(found, "inputs").why, Contains("were attached to it, and are no more"));
}

TEST_CASE("what is no PDF at all answers too") {
  for (const std::string bytes : {"", "vessel: {name: Small}\n", "%PDF-1.7\n%%EOF\n"}) {
    const auto found = verify(bytes, without_register());
    CHECK(found.what == What::unknown);
    CHECK((answer(found, "file") == Answer::broken && answer(found, "inputs") == Answer::broken));
  }
}
