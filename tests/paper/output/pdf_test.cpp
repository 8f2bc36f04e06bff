#include <catch2/catch.hpp>

#include "paper/output/pdf_bytes.h"
#include "paper/output/sample.h"
#include "strakebook/paper/output/output.h"

namespace output = strakebook::output;
using namespace sample;
using Catch::Contains;

namespace {

std::string written(const page::Document &document, const strakebook::media::ImageStore &store = images()) {
  base::Diagnostics sink;
  auto bytes = output::pdf(document, store, sink);
  CHECK(sink.all().empty());
  return bytes;
}

/// What pdf() reports when it writes nothing.
std::vector<base::Code> refusal(const page::Document &document) {
  base::Diagnostics sink;
  CHECK(output::pdf(document, images(), sink).empty());
  std::vector<base::Code> codes;
  for (const auto &found : sink.all())
    codes.push_back(found.code);
  return codes;
}

} // namespace

TEST_CASE("the file is PDF 1.7 and its cross-reference table is right") {
  const auto bytes = written(document());
  CHECK(bytes.starts_with("%PDF-1.7\n"));
  CHECK(bytes.ends_with("%%EOF\n"));
  CHECK(pdf_bytes::cross_reference_fault(bytes).empty());
  CHECK(pdf_bytes::count(bytes, "/Type /Page\n") == 2);
}

TEST_CASE("the same document gives the same bytes, another one another identifier") {
  const auto bytes = written(document());
  CHECK(bytes == written(document()));
  const auto first = pdf_bytes::identifiers(bytes);
  CHECK(first[0] == first[1]);
  CHECK(first[0].size() == 32);
  CHECK(first[0] != std::string(32, '0'));

  auto other = document();
  other.pages[0].items.back().id = "photo/2"; // nothing that is drawn
  CHECK(written(other) == bytes);
  std::get<page::Picture>(other.pages[0].items.back().what).box.at.x = {69};
  CHECK(pdf_bytes::identifiers(written(other))[0] != first[0]);
}

TEST_CASE("a font is embedded as a subset with the text of its codes") {
  const auto bytes = written(document());
  CHECK_THAT(bytes, Contains("+SourceSerif4-Regular") && Contains("+SourceSans3-Regular"));
  CHECK(pdf_bytes::count(bytes, "/FontFile2") == 2);
  CHECK(bytes.size() < 40'000); // the two faces have 711 kB
  CHECK_THAT(pdf_bytes::stream_with(bytes, "<00bd>"),
             Contains("<006600660069>")); // one half; a ligature of three letters
}

TEST_CASE("a font that the document does not use is not written") {
  auto only_serif = document();
  std::erase_if(only_serif.pages[0].items, [](const page::Item &item) {
    const auto *run = std::get_if<page::Run>(&item.what);
    return run && run->font == sans;
  });
  const auto bytes = written(only_serif);
  CHECK_THAT(bytes, Contains("SourceSerif4") && !Contains("SourceSans3"));
}

TEST_CASE("text turned a quarter has a turned matrix, set at its own place") {
  const auto content = pdf_bytes::stream_with(written(document()), "0 1 -1 0");
  CHECK_THAT(content, Contains("0 1 -1 0 60 441.89 Tm\n") && Contains("1 0 0 1 68 741.89 Tm\n"));
}

TEST_CASE("a picture is stored once, as packed rows or as JPEG data") {
  const auto pixels = written(document());
  CHECK(pdf_bytes::count(pixels, "/Subtype /Image") == 1);
  CHECK(pdf_bytes::count(pixels, "/DCTDecode") == 0);

  auto store = images();
  store.begin()->second.coding = strakebook::media::Image::Coding::jpeg;
  store.begin()->second.data = "\xFF\xD8 data of a camera \xFF\xD9";
  store.begin()->second.components = 1;
  const auto passed = written(document(), store);
  CHECK(pdf_bytes::count(passed, store.begin()->second.data) == 1);
  CHECK_THAT(passed, Contains("/DCTDecode") && Contains("/DeviceGray"));
}

TEST_CASE("pictures that are not in the store, or without data, are mistakes of the program") {
  base::Diagnostics sink;
  CHECK_THROWS_AS(output::pdf(document(), {}, sink), std::logic_error);
  auto store = images();
  store.begin()->second.data.clear();
  CHECK_THROWS_AS(output::pdf(document(), store, sink), std::logic_error);
}

TEST_CASE("bytes that are no font are reported") {
  auto broken = document();
  broken.fonts[0].bytes = std::make_shared<const std::string>("no font");
  CHECK(refusal(broken) == std::vector{base::Code::output_failed});
}

TEST_CASE("32,767 pages are written, one more is too large") {
  page::Document many;
  many.pages.assign(32'767, page::Page{.size = {{100}, {100}}, .frames = {}, .items = {}});
  CHECK_FALSE(written(many).empty());
  many.pages.push_back(many.pages.back());
  CHECK(refusal(many) == std::vector{base::Code::output_too_large});
}
