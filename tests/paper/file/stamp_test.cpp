#include <catch2/catch.hpp>

#include <qpdf/QPDF.hh>
#include <qpdf/QPDFEmbeddedFileDocumentHelper.hh>
#include <qpdf/QPDFPageDocumentHelper.hh>

#include "strakebook/paper/file/signature.h"
#include "strakebook/paper/file/stamp.h"
#include "support/small_pdf.h"

namespace file = strakebook::file;
namespace base = strakebook::base;
using support::small_pdf;

namespace {

std::string contents_of(QPDFObjectHandle page) {
  std::string all;
  for (auto &part : page.getPageContents()) {
    const auto data = part.getStreamData();
    all.append(reinterpret_cast<const char *>(data->getBuffer()), data->getSize()) += "\n";
  }
  return all;
}

std::size_t count(const std::string &text, std::string_view word) {
  std::size_t found = 0;
  for (auto at = text.find(word); at != text.npos; at = text.find(word, at + 1)) ++found;
  return found;
}

std::string stamped(const std::string &pdf) {
  base::Diagnostics sink;
  const auto copy = file::stamped(pdf, small_pdf("SUPERSEDED"), sink);
  CHECK(sink.ok());
  return copy;
}

} // namespace

TEST_CASE("a stamp lies over every page, and what the page had is there as it was") {
  const auto copy = stamped(small_pdf());
  QPDF read;
  read.setSuppressWarnings(true);
  read.processMemoryFile("a test", copy.data(), copy.size());
  const auto pages = read.getAllPages();
  REQUIRE(pages.size() == 2);
  for (auto page : pages) {
    const auto drawn = contents_of(page);
    CHECK(drawn.find("/P <</MCID 0>> BDC\nBT /F0 12 Tf 20 200 Td (A) Tj ET\nEMC") != drawn.npos);
    CHECK(count(drawn, " BDC") == 2);
    CHECK(count(drawn, "EMC") == 2);
    CHECK(drawn.find("/Artifact <</Type /Pagination>> BDC") != drawn.npos);
    auto forms = page.getKey("/Resources").getKey("/XObject");
    REQUIRE(forms.getKeys().size() == 1);
    auto form = forms.getKey(*forms.getKeys().begin());
    const auto data = form.getStreamData();
    const std::string over(reinterpret_cast<const char *>(data->getBuffer()), data->getSize());
    CHECK(over.find("(SUPERSEDED) Tj") != over.npos);
    CHECK(count(over, "BDC") + count(over, "EMC") == 0); // its marks belong to no structure here
    CHECK(form.getDict().getKey("/Resources").getKey("/Font").hasKey("/F0"));
  }
  CHECK_FALSE(read.anyWarnings());
}

TEST_CASE("attachments, tags and links of a stamped copy are kept") {
  const auto copy = stamped(small_pdf());
  QPDF read;
  read.processMemoryFile("a test", copy.data(), copy.size());
  QPDFEmbeddedFileDocumentHelper attached(read);
  REQUIRE(attached.getEmbeddedFile("survey.yaml"));
  auto tree = read.getRoot().getKey("/StructTreeRoot");
  auto first = tree.getKey("/K").getArrayItem(0);
  const auto pages = read.getAllPages();
  CHECK(first.getKey("/Pg").getObjGen() == pages.at(0).getObjGen());
  auto link = QPDFObjectHandle(pages.at(0)).getKey("/Annots").getArrayItem(0);
  CHECK(link.getKey("/Dest").getArrayItem(0).getObjGen() == pages.at(1).getObjGen());
}

TEST_CASE("same files, same stamped copy; a signature is not in it") {
  const auto plain = small_pdf();
  CHECK(stamped(plain) == stamped(plain));
  const std::string der = std::string("\x30\x82\x01\x00", 4) + std::string(256, '\x5a');
  const auto signed_one = file::filled(file::prepared(plain, {.name = "A. Surveyor", .reason = "", .location = "", .date = ""}), der).value();
  CHECK(stamped(signed_one) == stamped(plain));
  CHECK(stamped(plain) != plain);
}

TEST_CASE("what cannot be read is not stamped, and nothing is returned") {
  for (const auto &[pdf, stamp] : {std::pair{std::string("no PDF"), small_pdf()}, {small_pdf(), std::string("no PDF")},
                                   {small_pdf() + "appended", small_pdf()}, {small_pdf().substr(0, 300), small_pdf()}}) {
    base::Diagnostics sink;
    CHECK(file::stamped(pdf, stamp, sink).empty());
    REQUIRE(sink.errors() == 1);
    CHECK(sink.all()[0].code == base::Code::output_failed);
  }
}
