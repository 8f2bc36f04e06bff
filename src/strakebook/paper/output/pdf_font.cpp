#include "strakebook/paper/output/pdf_font.h"

#include <algorithm>
#include <cmath>
#include <fmt/format.h>
#include <hb-ot.h>
#include <hb-subset.h>

#include "strakebook/base/digest.h"
#include "strakebook/paper/output/pdf_number.h"

namespace strakebook::output {

namespace {

struct SubsetRelease {
  void operator()(hb_subset_input_t *it) const { hb_subset_input_destroy(it); }
};

/// Tables that a reader of a PDF does not need: text is already shaped, and codes lead to glyphs without a
/// cmap.
constexpr hb_tag_t unneeded_tables[] = {HB_TAG('G', 'S', 'U', 'B'), HB_TAG('G', 'P', 'O', 'S'),
                                        HB_TAG('G', 'D', 'E', 'F'), HB_TAG('k', 'e', 'r', 'n'),
                                        HB_TAG('n', 'a', 'm', 'e'), HB_TAG('D', 'S', 'I', 'G'),
                                        HB_TAG('p', 'o', 's', 't'), HB_TAG('m', 'e', 't', 'a'),
                                        HB_TAG('O', 'S', '/', '2'), HB_TAG('S', 'T', 'A', 'T')};

std::string bytes_of(hb_blob_t *blob) {
  unsigned length = 0;
  const char *data = hb_blob_get_data(blob, &length);
  return {data, length};
}

/// The face with only the glyphs in use; they keep their numbers.
std::string subset_bytes(const FontSubset &subset) {
  const std::unique_ptr<hb_subset_input_t, SubsetRelease> input(hb_subset_input_create_or_fail());
  if (!input)
    throw PdfFailure("no memory for a font subset");
  hb_set_t *glyphs = hb_subset_input_glyph_set(input.get());
  for (const auto &code : subset.codes())
    hb_set_add(glyphs, code.glyph);
  hb_set_t *dropped = hb_subset_input_set(input.get(), HB_SUBSET_SETS_DROP_TABLE_TAG);
  for (auto tag : unneeded_tables)
    hb_set_add(dropped, tag);
  hb_subset_input_set_flags(input.get(), HB_SUBSET_FLAGS_RETAIN_GIDS | HB_SUBSET_FLAGS_NOTDEF_OUTLINE);
  const Hb<hb_face_t> face(hb_subset_or_fail(subset.face(), input.get()));
  if (!face)
    throw PdfFailure("making a subset of the font " + subset.name());
  const Hb<hb_blob_t> blob(hb_face_reference_blob(face.get()));
  return bytes_of(blob.get());
}

/// "ABCDEF+Name", the letters from the digest of the subset: two subsets of one face never share a name.
std::string tagged_name(const FontSubset &subset, std::string_view font_bytes) {
  constexpr std::size_t tag_letters = 6;
  const auto digest = base::sha256_hex(font_bytes);
  std::string tag;
  for (std::size_t i = 0; i < tag_letters; ++i) {
    const auto digit = [&](std::size_t at) {
      return digest[at] <= '9' ? digest[at] - '0' : digest[at] - 'a' + 10;
    };
    tag += static_cast<char>('A' + (digit(2 * i) * 16 + digit(2 * i + 1)) % 26);
  }
  return tag + "+" + subset.name();
}

/// Signed and unsigned numbers out of a table of the font, 0 where the table is too short.
class Table {
public:
  Table(const FontSubset &subset, hb_tag_t tag) {
    const Hb<hb_blob_t> blob(hb_face_reference_table(subset.face(), tag));
    bytes_ = bytes_of(blob.get());
  }
  int number(std::size_t at) const {
    if (at + 2 > bytes_.size())
      return 0;
    return static_cast<std::int16_t>(static_cast<unsigned char>(bytes_[at]) << 8 |
                                     static_cast<unsigned char>(bytes_[at + 1]));
  }

private:
  std::string bytes_;
};

int thousandths(const FontSubset &subset, int units) {
  return static_cast<int>(std::lround(units * 1000.0 / hb_face_get_upem(subset.face())));
}

int metric(const FontSubset &subset, hb_ot_metrics_tag_t tag) {
  hb_position_t units = 0;
  hb_ot_metrics_get_position(subset.font(), tag, &units);
  return thousandths(subset, units);
}

/// A bit for each code, the first one highest: all of them are in the font (ISO 19005-1, 6.3.5).
std::string all_codes(const FontSubset &subset) {
  const auto count = subset.codes().size();
  std::string bits(count / 8, '\xFF');
  if (count % 8 > 0)
    bits += static_cast<char>(0xFF00 >> (count % 8) & 0xFF);
  return bits;
}

PdfDict descriptor(PdfFile &file, const FontSubset &subset, const std::string &name,
                   std::string_view font_bytes) {
  constexpr int symbolic = 4, italic = 64; // ISO 32000-1, table 123
  const Table head(subset, HB_TAG('h', 'e', 'a', 'd')), post(subset, HB_TAG('p', 'o', 's', 't')),
      os2(subset, HB_TAG('O', 'S', '/', '2'));
  const int slant = post.number(4), weight = os2.number(4);
  auto box = file.array();
  for (std::size_t at : {36, 38, 40, 42})
    box.number(thousandths(subset, head.number(at)));
  auto program = file.stream(font_bytes, Coding::deflate);
  program.number("Length1", static_cast<int>(font_bytes.size()));
  // StemV is required but no reader draws with it when the font is embedded: common approximation from the
  // weight class.
  const int stem = 50 + weight * weight / (65 * 65);
  auto made = file.indirect_dict();
  if (file.kind() == PdfKind::archival)
    made.put("CIDSet", file.stream(all_codes(subset), Coding::deflate));
  return made.name("Type", "FontDescriptor")
      .name("FontName", name.c_str())
      .number("Flags", symbolic | (slant != 0 ? italic : 0))
      .put("FontBBox", box)
      .number("ItalicAngle", slant)
      .number("Ascent", metric(subset, HB_OT_METRICS_TAG_HORIZONTAL_ASCENDER))
      .number("Descent", metric(subset, HB_OT_METRICS_TAG_HORIZONTAL_DESCENDER))
      .number("CapHeight", metric(subset, HB_OT_METRICS_TAG_CAP_HEIGHT))
      .number("StemV", stem)
      .put("FontFile2", program);
}

PdfArray widths(PdfFile &file, const FontSubset &subset) {
  auto list = file.array();
  for (const auto &code : subset.codes())
    list.real(code.width);
  return file.array().number(0).put(list);
}

std::string glyph_numbers(const FontSubset &subset) {
  std::string map;
  for (const auto &code : subset.codes()) {
    map += static_cast<char>(code.glyph >> 8 & 0xFF);
    map += static_cast<char>(code.glyph & 0xFF);
  }
  return map;
}

/// The CMap from codes to text (ISO 32000-1, 9.10.3), at most 100 entries a block.
std::string to_unicode(const FontSubset &subset) {
  constexpr std::size_t block = 100;
  std::vector<std::string> entries;
  for (std::size_t code = 1; code < subset.codes().size(); ++code) {
    const auto &text = subset.codes()[code].text;
    if (text.empty())
      continue;
    std::string entry = "<";
    append_hex(entry, static_cast<unsigned>(code));
    entry += "> <";
    append_hex(entry, utf16be(text));
    entries.push_back(entry + ">\n");
  }
  std::string map =
      "/CIDInit /ProcSet findresource begin\n12 dict begin\nbegincmap\n/CIDSystemInfo << /Registry (Adobe) "
      "/Ordering (UCS) /Supplement 0 >> def\n/CMapName /Adobe-Identity-UCS def\n/CMapType 2 def\n"
      "1 begincodespacerange\n<0000> <ffff>\nendcodespacerange\n";
  for (std::size_t first = 0; first < entries.size(); first += block) {
    const auto end = std::min(first + block, entries.size());
    map += fmt::format("{} beginbfchar\n", end - first);
    for (auto i = first; i < end; ++i)
      map += entries[i];
    map += "endbfchar\n";
  }
  return map + "endcmap\nCMapName currentdict /CMap defineresource pop\nend\nend\n";
}

} // namespace

void write_font(PdfFile &file, PdfDict font, const FontSubset &subset) {
  const auto font_bytes = subset_bytes(subset);
  const auto name = tagged_name(subset, font_bytes);
  auto system = file.dict();
  system.bytes("Registry", "Adobe").bytes("Ordering", "Identity").number("Supplement", 0);
  auto descendant = file.indirect_dict();
  descendant.name("Type", "Font")
      .name("Subtype", "CIDFontType2")
      .name("BaseFont", name.c_str())
      .put("CIDSystemInfo", system)
      .put("FontDescriptor", descriptor(file, subset, name, font_bytes))
      .number("DW", 0)
      .put("W", widths(file, subset))
      .put("CIDToGIDMap", file.stream(glyph_numbers(subset), Coding::deflate));
  font.name("Type", "Font")
      .name("Subtype", "Type0")
      .name("BaseFont", name.c_str())
      .name("Encoding", "Identity-H")
      .put("DescendantFonts", file.array().put(descendant))
      .put("ToUnicode", file.stream(to_unicode(subset), Coding::deflate));
}

} // namespace strakebook::output
