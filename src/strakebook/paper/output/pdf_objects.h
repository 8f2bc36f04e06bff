#pragma once

#include <memory>
#include <string>
#include <string_view>

#include "strakebook/base/geometry.h"
#include "strakebook/paper/output/pdf_failure.h"
#include "strakebook/paper/output/pdf_kind.h"

/// The objects of a PDF file, and the only files that know libharu. A dictionary or array belongs to the
/// file; a direct one may be put into one parent only, an indirect one into any number. All failures throw
/// PdfFailure.
namespace strakebook::output {

class PdfFile;
class PdfArray;

class PdfDict {
public:
  PdfDict &name(const char *key, const char *value);
  PdfDict &number(const char *key, int value);
  PdfDict &real(const char *key, double value);
  PdfDict &boolean(const char *key, bool value);
  PdfDict &bytes(const char *key, std::string_view value); ///< a byte string
  PdfDict &text(const char *key, std::string_view utf8);   ///< a text string for readers
  PdfDict &put(const char *key, const PdfDict &value);
  PdfDict &put(const char *key, const PdfArray &value);
  PdfDict &entries(std::string pdf); ///< more entries, given in PDF syntax; once, and not for a stream

private:
  friend class PdfFile;
  friend class PdfArray;
  PdfDict(PdfFile *file, void *object) : file_(file), object_(object) {}
  PdfFile *file_;
  void *object_;
};

class PdfArray {
public:
  PdfArray &name(const char *value);
  PdfArray &number(int value);
  PdfArray &real(double value);
  PdfArray &null();
  PdfArray &bytes(std::string_view value);
  PdfArray &put(const PdfDict &value);
  PdfArray &put(const PdfArray &value);

private:
  friend class PdfFile;
  friend class PdfDict;
  PdfArray(PdfFile *file, void *object) : file_(file), object_(object) {}
  PdfFile *file_;
  void *object_;
};

/// How the data of a stream are coded in the file.
enum class Coding {
  plain,   ///< as given
  deflate, ///< compressed here
  deflated, ///< given compressed
  jpeg     ///< given as JPEG data
};

class PdfFile {
public:
  explicit PdfFile(PdfKind kind); ///< empty
  ~PdfFile();
  PdfFile(const PdfFile &) = delete;
  PdfFile &operator=(const PdfFile &) = delete;

  PdfDict dict();
  PdfDict indirect_dict();
  PdfArray array();
  PdfDict stream(std::string_view data,
                 Coding coding); ///< indirect; more entries may be put into its dictionary
  PdfDict add_page(base::Size size, std::string_view operators); ///< the next page, drawn by these operators

  PdfKind kind() const;
  std::string reference(const PdfDict &indirect) const; ///< "12 0 R"
  PdfDict catalog();
  PdfDict names(); ///< the catalog's name dictionary (ISO 32000-1, 7.7.4)
  PdfDict info();
  std::string producer() const; ///< the writing library and its version

  /// All objects as the bytes of a file; the file identifier is the digest of everything else. Call once,
  /// last.
  std::string save();

private:
  friend class PdfDict;
  friend class PdfArray;
  struct State;
  void *made(void *object, const char *step);
  void check(unsigned long status, const char *step);
  void *binary(std::string_view value);
  void fill(void *stream_dict, std::string_view data, Coding coding);
  std::unique_ptr<State> state_;
};

/// A text string of PDF: plain bytes where the text is ASCII, else UTF-16BE with its byte order mark.
std::string text_string(std::string_view utf8);

/// The same as it stands between the entries of a dictionary: "<FEFF00BD>".
std::string text_literal(std::string_view utf8);

/// UTF-16BE without a mark.
std::string utf16be(std::string_view utf8);

} // namespace strakebook::output
