#include <catch2/catch.hpp>

#include "paper/output/pdf_bytes.h"
#include "paper/output/sample.h"
#include "strakebook/paper/output/output.h"

namespace output = strakebook::output;
using namespace sample;
using Catch::Contains;

namespace {

page::Document with_files() {
  auto document = sample::document();
  document.attachments = {{"survey.yaml", "application/yaml", "The survey.", "name: one\n"},
                          {"photos/caf\u00e9 1.jpg", "image/jpeg", "A picture.", "\xFF\xD8 any bytes"},
                          {"empty.csv", "text/csv", "", ""}};
  return document;
}

std::string written(const page::Document &document, output::PdfKind kind = output::PdfKind::report) {
  base::Diagnostics sink;
  auto bytes = output::pdf(document, images(), sink, kind);
  CHECK(sink.all().empty());
  return bytes;
}

} // namespace

TEST_CASE("files are attached as sources of the document, by name, without dates") {
  const auto bytes = written(with_files());
  CHECK(pdf_bytes::cross_reference_fault(bytes).empty());
  CHECK(pdf_bytes::count(bytes, "/Type /EmbeddedFile") == 3);
  CHECK(pdf_bytes::count(bytes, "/Type /Filespec") == 3);
  CHECK(pdf_bytes::count(bytes, "/AFRelationship /Source") == 3);
  CHECK(pdf_bytes::count(bytes, "/EmbeddedFiles") == 1);
  CHECK(pdf_bytes::count(bytes, "/Dests") == 1); // beside the places of links
  CHECK(pdf_bytes::count(bytes, "/AF [") == 1);
  CHECK_THAT(bytes, Contains("/Subtype /text#2Fcsv"));
  CHECK_THAT(bytes, Contains("\xFF\xD8 any bytes")); // a picture is packed already
  for (const char *date : {"/CreationDate", "/ModDate"}) CHECK(pdf_bytes::count(bytes, date) <= 1); // the document's own
  CHECK(bytes == written(with_files()));
  CHECK(pdf_bytes::count(written(sample::document()), "/EmbeddedFiles") == 0);
}

TEST_CASE("the dump lists attached files") {
  CHECK_THAT(page::dump(with_files()), Contains("attached \"survey.yaml\" application/yaml 10 bytes "));
}

TEST_CASE("two files of one name, a file without one, and files of an archival PDF are faults of the caller") {
  auto document = with_files();
  document.attachments.push_back(document.attachments.front());
  base::Diagnostics sink;
  CHECK_THROWS_AS(output::pdf(document, images(), sink), std::logic_error);
  document.attachments = {{"", "text/plain", "", "x"}};
  CHECK_THROWS_AS(output::pdf(document, images(), sink), std::logic_error);
  CHECK_THROWS_AS(output::pdf(with_files(), images(), sink, output::PdfKind::archival), std::logic_error);
}

TEST_CASE("the libraries that a PDF depends on are named with their versions") {
  const auto named = output::libraries();
  CHECK(named.size() == 3);
  CHECK_THAT(named.at(1), Contains("libharu 2."));
}
