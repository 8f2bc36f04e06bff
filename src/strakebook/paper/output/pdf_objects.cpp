#include "strakebook/paper/output/pdf_objects.h"

#include <deque>
#include <fmt/format.h>
#include <hpdf.h>
#include <hpdf_doc.h>
#include <hpdf_objects.h>

#include "strakebook/base/digest.h"
#include "strakebook/base/text.h"
#include "strakebook/paper/output/deflate.h"
#include "strakebook/paper/output/pdf_number.h"

namespace strakebook::output {

namespace {

HPDF_Dict dict_of(void *object) { return static_cast<HPDF_Dict>(object); }
HPDF_Array array_of(void *object) { return static_cast<HPDF_Array>(object); }

/// Offsets in the file are written in 32 bits, and beyond 2 GiB libharu writes a broken file without an
/// error.
constexpr std::size_t most_bytes = 2'000'000'000;
constexpr int most_pages = 32'767;

constexpr std::size_t identifier_digits = 32;

/// libharu names only filters that it applies itself; data that are compressed before are named while their dictionary
/// is written.
HPDF_STATUS name_deflate(HPDF_Dict, HPDF_Stream to) {
  return HPDF_Stream_WriteStr(to, "/Filter /FlateDecode\012");
}

/// Entries that are kept as text, many times smaller than as objects.
HPDF_STATUS write_entries(HPDF_Dict dict, HPDF_Stream to) {
  const auto &text = *static_cast<const std::string *>(dict->attr);
  return HPDF_Stream_Write(to, reinterpret_cast<const HPDF_BYTE *>(text.data()), static_cast<HPDF_UINT>(text.size()));
}

} // namespace

struct PdfFile::State {
  HPDF_Doc doc = HPDF_New(nullptr, nullptr);
  PdfKind kind;
  std::deque<std::string> entries; ///< of dictionaries, at places that stay
  std::size_t stream_bytes = 0;
  int pages = 0;
  explicit State(PdfKind of) : kind(of) {}
  State(const State &) = delete;
  State &operator=(const State &) = delete;
  ~State() {
    if (doc)
      HPDF_Free(doc);
  }
};

PdfFile::PdfFile(PdfKind kind) : state_(std::make_unique<State>(kind)) {
  if (!state_->doc)
    throw PdfFailure("no memory for a PDF document");
  state_->doc->pdf_version = kind == PdfKind::archival ? HPDF_VER_14 : HPDF_VER_17;
}

PdfFile::~PdfFile() = default;

void PdfFile::check(unsigned long status, const char *step) {
  if (status != HPDF_OK)
    throw PdfFailure(fmt::format("{}: status {:#06x}", step, status));
}

void *PdfFile::made(void *object, const char *step) {
  if (!object)
    check(state_->doc->error.error_no, step);
  if (!object)
    throw PdfFailure(fmt::format("{}: nothing came back", step));
  return object;
}

void *PdfFile::binary(std::string_view value) {
  auto bytes = std::string(value); // libharu takes a pointer to bytes that may change
  return made(HPDF_Binary_New(state_->doc->mmgr, reinterpret_cast<HPDF_BYTE *>(bytes.data()),
                              static_cast<HPDF_UINT>(bytes.size())),
              "a byte string");
}

PdfDict PdfFile::dict() { return {this, made(HPDF_Dict_New(state_->doc->mmgr), "a dictionary")}; }

PdfDict PdfFile::indirect_dict() {
  auto result = dict();
  check(HPDF_Xref_Add(state_->doc->xref, result.object_), "an indirect dictionary");
  return result;
}

PdfArray PdfFile::array() { return {this, made(HPDF_Array_New(state_->doc->mmgr), "an array")}; }

void PdfFile::fill(void *stream_dict, std::string_view data, Coding coding) {
  auto *dict = dict_of(stream_dict);
  std::string packed;
  if (coding == Coding::deflate) {
    packed = deflated(data);
    data = packed;
  }
  if (coding == Coding::deflate || coding == Coding::deflated)
    dict->write_fn = name_deflate;
  dict->filter = coding == Coding::jpeg ? HPDF_STREAM_FILTER_DCT_DECODE : HPDF_STREAM_FILTER_NONE;
  state_->stream_bytes += data.size();
  if (state_->stream_bytes > most_bytes)
    throw PdfTooLarge("the document holds more than 2 GB");
  if (data.empty())
    return;
  check(HPDF_Stream_Write(dict->stream, reinterpret_cast<const HPDF_BYTE *>(data.data()),
                          static_cast<HPDF_UINT>(data.size())),
        "the data of a stream");
}

PdfDict PdfFile::stream(std::string_view data, Coding coding) {
  PdfDict result(this, made(HPDF_DictStream_New(state_->doc->mmgr, state_->doc->xref), "a stream"));
  fill(result.object_, data, coding);
  return result;
}

PdfDict PdfFile::add_page(base::Size size, std::string_view operators) {
  if (++state_->pages > most_pages)
    throw PdfTooLarge(fmt::format("the document has more than {} pages", most_pages));
  auto *page = static_cast<HPDF_Page>(made(HPDF_AddPage(state_->doc), "a page"));
  check(HPDF_Page_SetWidth(page, static_cast<HPDF_REAL>(size.width.v)), "the width of a page");
  check(HPDF_Page_SetHeight(page, static_cast<HPDF_REAL>(size.height.v)), "the height of a page");
  fill(made(HPDF_Dict_GetItem(page, "Contents", HPDF_OCLASS_DICT), "the contents of a page"), operators,
       Coding::deflate);
  return {this, page};
}

PdfKind PdfFile::kind() const { return state_->kind; }

std::string PdfFile::reference(const PdfDict &indirect) const {
  constexpr HPDF_UINT32 number_bits = 0x00FFFFFF; // the rest says what kind of object it is
  return fmt::format("{} 0 R", dict_of(indirect.object_)->header.obj_id & number_bits);
}

PdfDict PdfFile::catalog() { return {this, state_->doc->catalog}; }

PdfDict PdfFile::names() {
  if (auto *known = HPDF_Dict_GetItem(state_->doc->catalog, "Names", HPDF_OCLASS_DICT))
    return {this, known};
  auto fresh = dict();
  catalog().put("Names", fresh);
  return fresh;
}

PdfDict PdfFile::info() { return {this, made(state_->doc->info, "the information dictionary")}; }

std::string PdfFile::producer() const { return std::string("Haru Free PDF Library ") + HPDF_GetVersion(); }

std::string PdfFile::save() {
  const std::string blank(identifier_digits / 2, '\0');
  PdfDict(this, state_->doc->trailer).put("ID", array().bytes(blank).bytes(blank));
  check(HPDF_SaveToStream(state_->doc), "putting the file together");
  std::string bytes(HPDF_GetStreamSize(state_->doc), '\0');
  if (bytes.size() > most_bytes)
    throw PdfTooLarge("the document holds more than 2 GB");
  auto size = static_cast<HPDF_UINT32>(bytes.size());
  check(HPDF_ReadFromStream(state_->doc, reinterpret_cast<HPDF_BYTE *>(bytes.data()), &size),
        "reading the file back");

  const std::string blank_digits = "<" + std::string(identifier_digits, '0') + ">";
  const auto digits = base::sha256_hex(bytes).substr(0, identifier_digits);
  const auto second = bytes.rfind(blank_digits);
  const auto first = second == std::string::npos ? second : bytes.rfind(blank_digits, second - 1);
  if (size != bytes.size() || first == std::string::npos)
    throw PdfFailure("the file does not end with its identifier");
  for (auto at : {first, second})
    bytes.replace(at + 1, identifier_digits, digits);
  return bytes;
}

PdfDict &PdfDict::name(const char *key, const char *value) {
  file_->check(HPDF_Dict_AddName(dict_of(object_), key, value), key);
  return *this;
}
PdfDict &PdfDict::number(const char *key, int value) {
  file_->check(HPDF_Dict_AddNumber(dict_of(object_), key, value), key);
  return *this;
}
PdfDict &PdfDict::real(const char *key, double value) {
  file_->check(HPDF_Dict_AddReal(dict_of(object_), key, static_cast<HPDF_REAL>(value)), key);
  return *this;
}
PdfDict &PdfDict::boolean(const char *key, bool value) {
  file_->check(HPDF_Dict_AddBoolean(dict_of(object_), key, value ? HPDF_TRUE : HPDF_FALSE), key);
  return *this;
}
PdfDict &PdfDict::bytes(const char *key, std::string_view value) {
  file_->check(HPDF_Dict_Add(dict_of(object_), key, file_->binary(value)), key);
  return *this;
}
PdfDict &PdfDict::text(const char *key, std::string_view utf8) { return bytes(key, text_string(utf8)); }
PdfDict &PdfDict::put(const char *key, const PdfDict &value) {
  file_->check(HPDF_Dict_Add(dict_of(object_), key, value.object_), key);
  return *this;
}
PdfDict &PdfDict::put(const char *key, const PdfArray &value) {
  file_->check(HPDF_Dict_Add(dict_of(object_), key, value.object_), key);
  return *this;
}
PdfDict &PdfDict::entries(std::string pdf) {
  auto &kept = file_->state_->entries.emplace_back(std::move(pdf));
  dict_of(object_)->attr = &kept;
  dict_of(object_)->write_fn = write_entries;
  return *this;
}

PdfArray &PdfArray::name(const char *value) {
  file_->check(HPDF_Array_AddName(array_of(object_), value), value);
  return *this;
}
PdfArray &PdfArray::number(int value) {
  file_->check(HPDF_Array_AddNumber(array_of(object_), value), "a number in an array");
  return *this;
}
PdfArray &PdfArray::real(double value) {
  file_->check(HPDF_Array_AddReal(array_of(object_), static_cast<HPDF_REAL>(value)), "a number in an array");
  return *this;
}
PdfArray &PdfArray::null() {
  auto *nothing = file_->made(HPDF_Null_New(file_->state_->doc->mmgr), "null");
  file_->check(HPDF_Array_Add(array_of(object_), nothing), "null in an array");
  return *this;
}
PdfArray &PdfArray::bytes(std::string_view value) {
  file_->check(HPDF_Array_Add(array_of(object_), file_->binary(value)), "a byte string in an array");
  return *this;
}
PdfArray &PdfArray::put(const PdfDict &value) {
  file_->check(HPDF_Array_Add(array_of(object_), value.object_), "a dictionary in an array");
  return *this;
}
PdfArray &PdfArray::put(const PdfArray &value) {
  file_->check(HPDF_Array_Add(array_of(object_), value.object_), "an array in an array");
  return *this;
}

std::string utf16be(std::string_view utf8) {
  std::string result;
  const auto unit = [&result](char32_t value) {
    result += static_cast<char>(value >> 8 & 0xFF);
    result += static_cast<char>(value & 0xFF);
  };
  for (char32_t point : base::code_points(utf8)) {
    if (point < 0x10000) {
      unit(point);
    } else {
      unit(0xD800 + ((point - 0x10000) >> 10));
      unit(0xDC00 + ((point - 0x10000) & 0x3FF));
    }
  }
  return result;
}

std::string text_string(std::string_view utf8) {
  for (char c : utf8)
    if (static_cast<unsigned char>(c) >= 0x80)
      return "\xFE\xFF" + utf16be(utf8);
  return std::string(utf8);
}

std::string text_literal(std::string_view utf8) {
  std::string literal = "<";
  append_hex(literal, text_string(utf8));
  return literal + '>';
}

} // namespace strakebook::output
