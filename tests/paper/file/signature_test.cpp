#include <catch2/catch.hpp>

#include <stdexcept>

#include <qpdf/QPDF.hh>

#include "strakebook/paper/file/signature.h"
#include "support/small_pdf.h"

namespace file = strakebook::file;
using support::small_pdf;

namespace {

const file::SignatureWords words{.name = "A. Surveyor", .reason = "Issued", .location = "The slip at \u0141\u0119g", .date = "2026-10-21"};

/// The head of a signature, and something in it: no more is asked here of what it is.
const std::string der = std::string("\x30\x82\x01\x00", 4) + std::string(256, '\x5a');

std::string signed_pdf() { return file::filled(file::prepared(small_pdf(), words), der).value(); }

std::string with(std::string text, std::string_view from, std::string_view to) {
  const auto at = text.rfind(from);
  REQUIRE(at != text.npos);
  return text.replace(at, from.size(), to);
}

void reads_cleanly(const std::string &pdf, QPDF &into) {
  into.setAttemptRecovery(false);
  into.setSuppressWarnings(true);
  into.processMemoryFile("a test", pdf.data(), pdf.size());
  CHECK_FALSE(into.anyWarnings());
}

void is_no_signature(const std::string &pdf) {
  const auto found = file::revisions(pdf);
  REQUIRE(found);
  CHECK(found->first == small_pdf().size());
  CHECK(found->more);
  CHECK_FALSE(found->signature);
}

} // namespace

TEST_CASE("a file as written has one revision") {
  const auto found = file::revisions(small_pdf());
  REQUIRE(found);
  CHECK(found->first == small_pdf().size());
  CHECK_FALSE(found->more);
  CHECK_FALSE(found->signature);
  CHECK_FALSE(file::revisions("no PDF"));
  CHECK_FALSE(file::revisions(""));
  CHECK_FALSE(file::revisions(small_pdf().substr(0, small_pdf().size() - 8)));
}

TEST_CASE("what is signed is the file, to the byte, and the update but for its hole") {
  const auto made = file::prepared(small_pdf(), words);
  CHECK(made.bytes.substr(0, small_pdf().size()) == small_pdf());
  CHECK(made.bytes[made.hole] == '<');
  CHECK(made.bytes[made.hole_end - 1] == '>');
  CHECK(made.covered().size() == made.bytes.size() - (made.hole_end - made.hole));
  CHECK(file::prepared(small_pdf(), words).bytes == made.bytes);

  const auto found = file::revisions(signed_pdf());
  REQUIRE(found);
  REQUIRE(found->signature);
  CHECK(found->first == small_pdf().size());
  CHECK(found->more);
  CHECK(found->signature->der == der);
  CHECK(found->signature->covered == made.covered());
  CHECK(found->signature->words.name == words.name);
  CHECK(found->signature->words.reason == words.reason);
  CHECK(found->signature->words.location == words.location);
  CHECK(found->signature->words.date == words.date);
}

TEST_CASE("words that are not given are not said, and come back so") {
  const auto found = file::revisions(file::filled(file::prepared(small_pdf(), {}), der).value());
  REQUIRE(found);
  REQUIRE(found->signature);
  CHECK(found->signature->words.name.empty());
  CHECK(found->signature->words.date.empty());
}

// ISO 32000-1, 12.7.4.5 and 12.8.1, tables 165, 219, 252.
TEST_CASE("the update is a signature field without a place that shows, and the range names all but the hole") {
  const auto pdf = signed_pdf();
  QPDF read;
  reads_cleanly(pdf, read);
  auto form = read.getRoot().getKey("/AcroForm");
  CHECK(form.getKey("/SigFlags").getIntValue() == 3);
  REQUIRE(form.getKey("/Fields").getArrayNItems() == 1);
  auto field = form.getKey("/Fields").getArrayItem(0);
  CHECK(field.getKey("/FT").getName() == "/Sig");
  CHECK((field.getKey("/F").getIntValue() & 2) == 2);
  CHECK(field.getKey("/Rect").unparse() == "[ 0 0 0 0 ]");
  const auto page = read.getAllPages().at(0);
  CHECK(field.getKey("/P").getObjGen() == page.getObjGen());
  auto annotations = QPDFObjectHandle(page).getKey("/Annots");
  REQUIRE(annotations.getArrayNItems() == 2);
  CHECK(annotations.getArrayItem(1).getObjGen() == field.getObjGen());
  auto signature = field.getKey("/V");
  CHECK(signature.getKey("/SubFilter").getName() == "/ETSI.CAdES.detached");
  CHECK(signature.getKey("/M").getUTF8Value() == "D:20261021");
  CHECK(signature.getKey("/Location").getUTF8Value() == words.location);
  auto range = signature.getKey("/ByteRange");
  REQUIRE(range.getArrayNItems() == 4);
  const auto at = [&](int i) { return static_cast<std::size_t>(range.getArrayItem(i).getIntValue()); };
  CHECK(at(0) == 0);
  CHECK(pdf[at(1)] == '<');
  CHECK(pdf[at(2) - 1] == '>');
  CHECK(at(2) + at(3) == pdf.size());
  CHECK(QPDFObjectHandle(read.getTrailer()).getKey("/ID").getArrayItem(0).getStringValue()[1] == '\x11');
}

TEST_CASE("every byte of the update is held to what it would be made as again") {
  const auto whole = signed_pdf();
  const auto made = file::prepared(small_pdf(), words);
  const auto put = [&](std::size_t at) {
    auto other = whole;
    other[at] = static_cast<char>(other[at] ^ 1);
    return other;
  };
  for (std::size_t at = small_pdf().size(); at < whole.size(); ++at) {
    if (at > made.hole && at + 1 < made.hole_end) continue;
    INFO("byte " << at);
    const auto found = file::revisions(put(at));
    CHECK((found && found->more && !found->signature));
  }
  is_no_signature(put(made.hole + 1));      // no longer the head of a signature
  is_no_signature(put(made.hole_end - 2));  // not a zero after it
}

TEST_CASE("only one signature, last, exactly as it is written here") {
  const auto whole = signed_pdf();
  is_no_signature(whole + "\n");
  is_no_signature(whole + "% more\n");
  is_no_signature(whole.substr(0, whole.size() - 1));
  is_no_signature(small_pdf() + "\n");
  is_no_signature(file::prepared(small_pdf(), words).bytes); // room, and nothing in it
  is_no_signature(with(whole, "5a5a5a", "5A5a5a"));
  is_no_signature(with(whole, "/Reason <feff", "/Reason <FEFF"));
  is_no_signature(with(whole, "/Reason ", "/Season "));
  is_no_signature(with(whole, "(D:20261021)", "(D:20261022)") + " ");
  is_no_signature(with(whole, "/SigFlags 3", "/SigFlags 1"));
  is_no_signature(with(whole, "\nxref\n", "\n99 0 obj\nnull\nendobj\nxref\n"));
  is_no_signature(small_pdf() + whole.substr(small_pdf().size()) + whole.substr(small_pdf().size()));
}

TEST_CASE("a page put behind a signature, with a table of its own, is noticed") {
  const auto whole = signed_pdf();
  const auto table = whole.size() + std::string("6 0 obj\n<<\n/Length 0\n>>\nstream\n\nendstream\nendobj\n").size();
  char line[32];
  std::snprintf(line, sizeof line, "%010zu 00000 n\r\n", whole.size());
  const auto changed = whole + "6 0 obj\n<<\n/Length 0\n>>\nstream\n\nendstream\nendobj\nxref\n6 1\n" + line + "trailer\n<<\n/Root 1 0 R\n/Size 17\n/Prev " +
                       std::to_string(whole.rfind("xref\n", whole.rfind("startxref"))) + "\n>>\nstartxref\n" + std::to_string(table) + "\n%%EOF\n";
  QPDF read;
  reads_cleanly(changed, read); // as good a PDF as any
  is_no_signature(changed);
}

TEST_CASE("a file whose references are a stream is read too, and not signed") {
  const std::string pdf = "%PDF-1.7\n1 0 obj\n<<\n/Type /XRef\n/Size 2\n>>\nstream\n\nendstream\nendobj\nstartxref\n9\n%%EOF\n";
  const auto found = file::revisions(pdf);
  REQUIRE(found);
  CHECK(found->first == pdf.size());
  CHECK(file::revisions(pdf + "x")->more);
  CHECK_THROWS_AS(file::prepared(pdf, words), std::logic_error);
}

TEST_CASE("a signature that is too long for its room is not put in") {
  const auto made = file::prepared(small_pdf(), words);
  CHECK_FALSE(file::filled(made, std::string(made.hole_end - made.hole, 'x')));
  CHECK_FALSE(file::filled(made, ""));
}

TEST_CASE("a file that this program did not write is not signed") {
  CHECK_THROWS_AS(file::prepared("no PDF", words), std::logic_error);
  CHECK_THROWS_AS(file::prepared(signed_pdf(), words), std::logic_error);
  CHECK_THROWS_AS(file::prepared(small_pdf() + " ", words), std::logic_error);
  CHECK_THROWS_AS(file::prepared(with(small_pdf(), "/Kids [ 4 0 R", "/Kids [ 1 0 R"), words), std::logic_error);
  CHECK_THROWS_AS(file::prepared(with(small_pdf(), "/Kids [ 4 0 R", "/Kids [ 2 0 R"), words), std::logic_error); // leads round
  CHECK_THROWS_AS(file::prepared(with(small_pdf(), "/Lang (en)", "/AcroForm 2"), words), std::logic_error);
  CHECK_THROWS_AS(file::prepared(small_pdf(), {.name = "", .reason = "", .location = "", .date = "2026-02-30"}), std::logic_error);
}

TEST_CASE("words that look like the end of a file do not end it") {
  const auto pdf = small_pdf("\nstartxref\n15\n%%EOF\n"); // where the first object begins
  const auto found = file::revisions(pdf);
  REQUIRE(found);
  CHECK(found->first == pdf.size());
  CHECK_FALSE(found->more);
}
