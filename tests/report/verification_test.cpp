#include <catch2/catch.hpp>

#include <nlohmann/json.hpp>

#include "issue/small_report.h"
#include "strakebook/issuing.h"
#include "strakebook/report/kept.h"
#include "support/temp_folder.h"

using namespace small_report;
using strakebook::verification_json;
using strakebook::verification_text;
using strakebook::VerifyOptions;
using Catch::Contains;
using issue::Answer;

namespace {

const base::Date october{2026, 10, 21}, november{2026, 11, 9};

/// A folder of issues with a register, as issuing lays it down.
struct Issued {
  Made first = made(inputs("6.4"), 1), second = made(inputs("4.6"), 2);
  std::vector<issue::Entry> entries{entry(first, 1, october), entry(second, 2, november)};
  support::TempFolder folder;
  std::filesystem::path first_pdf = folder.write("issued/RD-2644-issue-1/RD-2644-issue-1.pdf", first.pdf);
  std::filesystem::path second_pdf = folder.write("issued/RD-2644-issue-2/RD-2644-issue-2.pdf", second.pdf);
  std::filesystem::path register_file = folder.write("issued/register.txt", registered(entries).text);
};

std::optional<issue::Verification> verified(const std::filesystem::path &pdf, const VerifyOptions &options = {}) {
  base::Diagnostics sink;
  return strakebook::verify_document(pdf, options, strakebook::installed_resources(), sink);
}

base::Code refusal(const std::filesystem::path &pdf, const VerifyOptions &options = {}) {
  base::Diagnostics sink;
  CHECK_FALSE(strakebook::verify_document(pdf, options, strakebook::installed_resources(), sink));
  return sink.all().at(0).code;
}

} // namespace

TEST_CASE("the register is found one folder up, and beside a PDF that lies next to it") {
  const Issued issued;
  for (const auto &pdf : {issued.first_pdf, issued.folder.write("issued/a-copy.pdf", issued.first.pdf)}) {
    const auto found = verified(pdf).value();
    CHECK((answer(found, "register") == Answer::holds && answer(found, "file") == Answer::holds && answer(found, "inputs") == Answer::holds));
    CHECK(found.superseded.issue == 2);
  }
  const auto elsewhere = issued.folder.write("downloads/far/a-copy.pdf", issued.first.pdf);
  CHECK(answer(verified(elsewhere).value(), "register") == Answer::cannot_be_checked);
  CHECK(answer(verified(elsewhere, {.register_file = issued.register_file}).value(), "file") == Answer::holds);
}

TEST_CASE("what another program made is not made again here") {
  const Issued issued;
  const auto found = verified(issued.first_pdf).value();
  CHECK(answer(found, "rendering") == Answer::cannot_be_checked);
  CHECK_THAT(layer(found, "rendering").why, Contains("sources 11aa22bb") && Contains(strakebook::makers().tool));
}

TEST_CASE("a register without its last entry is given away by the folder of it") {
  const Issued issued;
  issued.folder.write("issued/register.txt", registered({issued.entries[0]}).text);
  const auto found = verified(issued.first_pdf).value();
  CHECK(answer(found, "register") == Answer::broken);
  CHECK_THAT(layer(found, "register").why, Contains("register.txt: ") && Contains("RD-2644-issue-2"));
  CHECK(found.superseded.by == issue::Superseded::By::not_known);
}

TEST_CASE("a register that was altered says its line") {
  const Issued issued;
  auto text = registered(issued.entries).text;
  text.replace(text.find("state: final"), 12, "state: draft");
  issued.folder.write("issued/register.txt", text);
  CHECK_THAT(layer(verified(issued.second_pdf).value(), "register").why, Contains("register.txt:"));
}

TEST_CASE("inputs beside the PDF are found in their folder, and one given is taken before it") {
  const support::TempFolder folder;
  const auto report = made(inputs(), 1, false);
  const auto pdf = folder.write("report.pdf", report.pdf);
  CHECK(refusal(pdf) == base::Code::not_a_report); // nothing of it says which report it is
  for (const char *where : {"elsewhere/", "inputs/"}) {
    folder.write(std::string(where) + "manifest.txt", report.list);
    for (const auto &[name, bytes] : inputs()) folder.write(where + name, bytes);
  }
  CHECK(answer(verified(pdf).value(), "inputs") == Answer::holds);
  folder.write("inputs/readings.csv", "mark,mm\nSW 7,9.9\n");
  CHECK(answer(verified(pdf).value(), "inputs") == Answer::broken);
  CHECK(answer(verified(pdf, {.inputs = folder.path / "elsewhere"}).value(), "inputs") == Answer::holds);
}

TEST_CASE("what is no issued report is refused, and what cannot be read too") {
  const support::TempFolder folder;
  CHECK(refusal(folder.write("survey.yaml", "vessel: {name: Small}\n")) == base::Code::not_a_report);
  CHECK(refusal(folder.write("other.pdf", support::written_pdf({"<<\n/Type /Catalog\n/Pages 2 0 R\n>>", "<<\n/Type /Pages\n/Kids [ ]\n/Count 0\n>>"}))) ==
        base::Code::not_a_report);
  CHECK(refusal(folder.path / "nowhere.pdf") == base::Code::file_unreadable);
  const auto report = folder.write("report.pdf", made(inputs()).pdf);
  CHECK(refusal(report, {.register_file = folder.path / "nowhere.txt"}) == base::Code::file_unreadable);
  CHECK(refusal(report, {.certificate = folder.path / "nowhere.pem"}) == base::Code::file_unreadable);
}

TEST_CASE("a report without any register is not refused where it was damaged") {
  const support::TempFolder folder;
  const auto whole = made(inputs()).pdf;
  const auto found = verified(folder.write("cut.pdf", whole.substr(0, whole.size() / 3)));
  CHECK(found.value().broken());
}

TEST_CASE("in words: what it is, what replaces it, each layer, and the sum of them") {
  const Issued issued;
  const auto text = verification_text(verified(issued.first_pdf).value());
  CHECK_THAT(text, Catch::StartsWith("RD 2644, issue 1, final, of 2026-10-21\nReplaced by issue 2 of 2026-11-09, SHA-256 " +
                                     base::sha256_hex(issued.second.pdf) + ".\n  register   holds: "));
  CHECK_THAT(text, Contains("\n  rendering  cannot be checked: it was made with") && Catch::EndsWith("Not altered, but REPLACED: it is not to be relied on. Not checked: rendering, signature.\n"));
  const auto bytes = issued.second.pdf + "more";
  const auto broken = verification_text(verified(issued.folder.write("issued/RD-2644-issue-2/RD-2644-issue-2.pdf", bytes)).value());
  CHECK_THAT(broken, Contains("No later issue is registered.\n") && Contains("Broken: file, signature. Not checked: rendering.\n"));
}

TEST_CASE("in words nothing of a file moves what a terminal shows") {
  issue::Verification found{.report = "RD\x1b[2J 1\n\xE2\x80\xAE\xFF", .issue = 1};
  found.what = issue::What::report;
  found.layers = {{"file", Answer::broken, "a\rb"}};
  CHECK_THAT(verification_text(found), Catch::StartsWith("RD\xEF\xBF\xBD[2J 1\xEF\xBF\xBD\xEF\xBF\xBD\xEF\xBF\xBD, issue 1\n") && Contains("a\xEF\xBF\xBD" "b\n"));
  CHECK(nlohmann::json::parse(verification_json(found)).at("layers").at(0).at("why") == "a\rb");
}

TEST_CASE("for programs: the same, every key there") {
  const Issued issued;
  const auto found = nlohmann::json::parse(verification_json(verified(issued.first_pdf).value()));
  CHECK(found.at("what") == "report");
  CHECK((found.at("report") == "RD 2644" && found.at("issue") == 1 && found.at("addendum") == 0 && found.at("broken") == false));
  CHECK(found.at("superseded") == nlohmann::json{{"by", "issue"}, {"issue", 2}, {"date", "2026-11-09"}, {"digest", base::sha256_hex(issued.second.pdf)}});
  CHECK(found.at("layers").size() == 5);
  CHECK(found.at("layers").at(3).at("answer") == "cannot be checked");
  CHECK(found.at("addenda").empty());
}
