#include <catch2/catch.hpp>

#include <qpdf/Buffer.hh>
#include <qpdf/Pl_Buffer.hh>
#include <qpdf/Pl_Flate.hh>

#include "strakebook/paper/file/attached.h"
#include "strakebook/paper/file/contents.h"
#include "strakebook/paper/file/letters_of_codes.h"
#include "strakebook/paper/file/packed.h"
#include "support/small_pdf.h"

using namespace strakebook;
using support::pdf_stream;

namespace {

/// One page, and these objects from 4 on; `names`: the list of attachments.
std::string with_objects(std::vector<std::string> more, const std::string &names, const std::string &content = "", const std::string &font = "") {
  std::vector<std::string> objects{"<<\n/Type /Catalog\n/Pages 2 0 R\n/Names <<\n/EmbeddedFiles <<\n/Names [ " + names + " ]\n>>\n>>\n>>",
                                   "<<\n/Type /Pages\n/Kids [ 3 0 R ]\n/Count 1\n>>",
                                   "<<\n/Type /Page\n/Parent 2 0 R\n/MediaBox [0 0 300 400]\n/Resources <<\n/Font <<\n/F0 " + font + "\n>>\n>>\n/Contents 4 0 R\n>>",
                                   pdf_stream("", content)};
  objects.insert(objects.end(), more.begin(), more.end());
  return support::written_pdf(objects);
}

std::string file_specification(const std::string &name, int stream) {
  return "<<\n/Type /Filespec\n/F (" + name + ")\n/EF <<\n/F " + std::to_string(stream) + " 0 R\n>>\n>>";
}

std::string deflated(std::size_t zeros) {
  Pl_Buffer to("deflated");
  Pl_Flate packing("packing", &to, Pl_Flate::a_deflate);
  std::vector<unsigned char> block(1u << 20);
  for (std::size_t done = 0; done < zeros; done += block.size()) packing.write(block.data(), block.size());
  packing.finish();
  const auto bytes = to.getBufferSharedPointer();
  return {reinterpret_cast<const char *>(bytes->getBuffer()), bytes->getSize()};
}

} // namespace

TEST_CASE("every attached file is found, also one that no viewer lists, and one that stands inside another object") {
  const auto pdf = with_objects({file_specification("a.txt", 6), pdf_stream("", "first"), file_specification("hidden.txt", 8), pdf_stream("", "second"),
                                 "[ 1 " + file_specification("inner.txt", 10) + " ]", pdf_stream("", "third")},
                                "(a.txt) 5 0 R");
  CHECK(file::attached_files(pdf) == base::FileSet{{"a.txt", "first"}, {"hidden.txt", "second"}, {"inner.txt", "third"}});
}

TEST_CASE("a name that stands for two files is no answer") {
  const auto twice = with_objects({file_specification("a.txt", 6), pdf_stream("", "first"), file_specification("a.txt", 8), pdf_stream("", "second")}, "(a.txt) 5 0 R");
  CHECK(file::contents_of(twice).value().damaged == std::vector<std::string>{"a.txt"});
  CHECK_FALSE(file::attached_files(twice));
  auto two_systems = "<<\n/Type /Filespec\n/F (a.txt)\n/UF (a.txt)\n/EF <<\n/F 6 0 R\n/UF 7 0 R\n>>\n>>";
  CHECK_FALSE(file::attached_files(with_objects({two_systems, pdf_stream("", "first"), pdf_stream("", "second")}, "(a.txt) 5 0 R")));
}

TEST_CASE("what is no PDF, or is cut or damaged, gives no answer and does no harm") {
  for (const std::string bytes : {"", "%PDF-1.7", "vessel: {name: Small}\n", "%PDF-1.7\nxref\n0 1\ntrailer\n<< /Size 1 /Root 1 0 R >>\nstartxref\n9\n%%EOF\n"})
    CHECK_FALSE(file::attached_files(bytes));
  const auto cut = with_objects({file_specification("a.txt", 6), pdf_stream("/Filter /FlateDecode", "no deflated data")}, "(a.txt) 5 0 R");
  CHECK(file::contents_of(cut).value().damaged == std::vector<std::string>{"a.txt"});
}

TEST_CASE("a file made to unpack without end is stopped") {
  const auto bomb = with_objects({file_specification("a.txt", 6), pdf_stream("/Filter /FlateDecode", deflated(300u << 20))}, "(a.txt) 5 0 R");
  REQUIRE(bomb.size() < 400'000);
  CHECK(file::contents_of(bomb).value().damaged == std::vector<std::string>{"a.txt"});
}

TEST_CASE("a file made to nest without end, or to lead in circles, ends") {
  CHECK_NOTHROW(file::contents_of(with_objects({std::string(100'000, '[')}, "")));
  auto circle = with_objects({}, "");
  const auto table = circle.rfind("xref\n0 ");
  circle.replace(circle.rfind("/Size"), 5, "/Prev " + std::to_string(table) + "\n/Size");
  CHECK_NOTHROW(file::contents_of(circle));
}

TEST_CASE("the text of a page comes by the maps of its fonts, whatever cuts it in pieces") {
  const std::string map = "2 beginbfchar\n<0001> <0033>\n<0002> <00660069>\nendbfchar\n1 beginbfchar\n<0003> <D835DC00>\nendbfchar\n";
  const auto pdf = with_objects({"<<\n/Type /Font\n/Subtype /Type0\n/ToUnicode 6 0 R\n>>", pdf_stream("", map)}, "",
                                "BT /F0 9 Tf [<0001> -35 <0002>] TJ <0003> Tj <00FF> Tj ET", "5 0 R");
  CHECK(file::contents_of(pdf).value().pages == std::vector<std::string>{"3fi\xF0\x9D\x90\x80"});
}

TEST_CASE("codes and their letters") {
  CHECK(file::letters_of_codes("beginbfchar <0041> <0042>\n<0043> <> endbfchar beginbfrange <0001> <0002> <0003> endbfrange") ==
        std::map<unsigned, std::string>{{0x41, "B"}, {0x43, ""}});
  CHECK(file::letters_of_codes("beginbfchar <0041> <DC00") == std::map<unsigned, std::string>{});
  CHECK(file::letters_of_codes("beginbfchar <0041> <D800> <0042> <DC00> <0043> <xyzw> endbfchar").at(0x41).empty()); // half a letter
}

TEST_CASE("what is packed comes out as it was, and nothing else does") {
  file::Packer to;
  to.add(std::string_view("a\0b", 3));
  to.add(std::vector<std::string>{"", "c d"});
  to.add(std::size_t{7});
  file::Unpacker from(to.bytes);
  CHECK(from.text() == std::string("a\0b", 3));
  CHECK(from.texts() == std::vector<std::string>{"", "c d"});
  CHECK((from.count() == 7 && from.whole() && from.ended()));
  for (const char *bad : {"", "x", "5 abc", "99999999999999999999999 a", "3"}) {
    file::Unpacker wrong(bad);
    CHECK(wrong.text().empty());
    CHECK_FALSE(wrong.whole());
  }
  file::Unpacker many("1000000000 ");
  CHECK(many.texts().size() < 2);
  CHECK_FALSE(many.whole());
}
