#include "strakebook/paper/file/page_text.h"

#include <exception>
#include <map>
#include <optional>

#include <qpdf/Buffer.hh>
#include <qpdf/QPDF.hh>
#include <qpdf/QPDFPageDocumentHelper.hh>

#include "strakebook/paper/file/letters_of_codes.h"

namespace strakebook::file {

namespace {

using Letters = std::map<unsigned, std::string>;

/// The maps of a file's fonts, each read once.
class Fonts {
public:
  const Letters &letters(QPDFObjectHandle font) {
    const auto known = letters_.find(font.getObjGen());
    if (known != letters_.end()) return known->second;
    auto map = font.isDictionary() ? font.getKey("/ToUnicode") : QPDFObjectHandle::newNull();
    Letters read;
    if (map.isStream()) {
      const auto bytes = map.getStreamData(qpdf_dl_generalized);
      read = letters_of_codes({reinterpret_cast<const char *>(bytes->getBuffer()), bytes->getSize()});
    }
    return letters_.emplace(font.getObjGen(), std::move(read)).first->second;
  }

private:
  std::map<QPDFObjGen, Letters> letters_;
};

/// Follows the operators that choose a font and show text.
class Reader : public QPDFObjectHandle::ParserCallbacks {
public:
  Reader(QPDFObjectHandle resources, Fonts &fonts) : resources_(resources), fonts_(fonts) {}

  void handleObject(QPDFObjectHandle object) override {
    if (!object.isOperator()) return operands_.push_back(object);
    const auto name = object.getOperatorValue();
    if (name == "Tf" && operands_.size() == 2 && operands_[0].isName()) choose(operands_[0].getName());
    if ((name == "Tj" || name == "TJ") && operands_.size() == 1) show(operands_[0]);
    operands_.clear();
  }
  void handleEOF() override {}

  std::string text;

private:
  void choose(const std::string &name) {
    auto fonts = resources_.isDictionary() ? resources_.getKey("/Font") : QPDFObjectHandle::newNull();
    font_ = fonts.isDictionary() ? &fonts_.letters(fonts.getKey(name)) : nullptr;
  }

  void show(QPDFObjectHandle what) {
    if (what.isArray())
      for (auto &part : what.getArrayAsVector()) show(part);
    if (!what.isString() || !font_) return;
    const auto codes = what.getStringValue();
    for (std::size_t at = 0; at + 1 < codes.size(); at += 2) {
      const unsigned code = static_cast<unsigned char>(codes[at]) << 8 | static_cast<unsigned char>(codes[at + 1]);
      const auto letter = font_->find(code);
      if (letter != font_->end() && letter->second != " " && letter->second != "\xC2\xA0") text += letter->second;
    }
  }

  QPDFObjectHandle resources_;
  Fonts &fonts_;
  const Letters *font_ = nullptr;
  std::vector<QPDFObjectHandle> operands_;
};

std::string text_of(QPDFPageObjectHelper &page, Fonts &fonts) {
  try {
    Reader reader(page.getAttribute("/Resources", false), fonts);
    page.parseContents(&reader);
    return std::move(reader.text);
  } catch (const std::bad_alloc &) {
    throw;
  } catch (const std::exception &) {
    return {}; // the other pages can be read all the same
  }
}

} // namespace

std::vector<std::string> page_texts(QPDF &file) {
  Fonts fonts;
  std::vector<std::string> texts;
  for (auto &page : QPDFPageDocumentHelper(file).getAllPages()) texts.push_back(text_of(page, fonts));
  return texts;
}

} // namespace strakebook::file
