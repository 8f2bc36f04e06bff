#include "strakebook/paper/file/stamp.h"

#include <memory>
#include <stdexcept>

#include <fmt/format.h>
#include <qpdf/Pl_String.hh>
#include <qpdf/QPDF.hh>
#include <qpdf/QPDFPageDocumentHelper.hh>
#include <qpdf/QPDFPageObjectHelper.hh>
#include <qpdf/QPDFWriter.hh>

#include "strakebook/paper/file/signature.h"

namespace strakebook::file {

namespace {

/// Drops the marks of a page's structure and keeps what it draws: the stamp is no part of the report's structure.
class WithoutMarks : public QPDFObjectHandle::TokenFilter {
public:
  void handleToken(QPDFTokenizer::Token const &token) override {
    pending_ += token.getRawValue();
    if (token.getType() != QPDFTokenizer::tt_word) return;
    const auto &word = token.getValue();
    if (word != "BDC" && word != "BMC" && word != "EMC" && word != "DP" && word != "MP") write(pending_);
    pending_.clear();
  }
  void handleEOF() override { write(pending_); }

private:
  std::string pending_; ///< operands, until their operator is known
};

std::shared_ptr<QPDF> opened(std::string_view bytes, const char *called) {
  auto document = std::make_shared<QPDF>();
  document->setAttemptRecovery(false);
  document->setSuppressWarnings(true);
  document->processMemoryFile(called, bytes.data(), bytes.size());
  return document;
}

/// The first page as something that other pages can draw.
QPDFObjectHandle first_page_as_form(QPDF &document) {
  auto pages = QPDFPageDocumentHelper(document).getAllPages();
  if (pages.empty()) throw std::runtime_error("the stamp has no page");
  std::string operators;
  Pl_String drawn("the stamp", nullptr, operators);
  WithoutMarks filter;
  pages[0].filterContents(&filter, &drawn);
  auto form = pages[0].getFormXObjectForPage();
  form.replaceStreamData(operators, QPDFObjectHandle::newNull(), QPDFObjectHandle::newNull());
  return form;
}

/// Over what the page has, in a state of its own, and no part of what is read out (ISO 32000-1, 14.8.2.2).
void lay_over(QPDF &document, QPDFPageObjectHelper page, const QPDFObjectHandle &form) {
  auto resources = page.getAttribute("/Resources", true);
  if (!resources.isDictionary()) resources = page.getObjectHandle().replaceKeyAndGetNew("/Resources", QPDFObjectHandle::newDictionary());
  int number = 1;
  const auto name = resources.getUniqueResourceName("/Stamp", number);
  auto drawn = resources.getKey("/XObject");
  drawn = drawn.isDictionary() ? drawn.shallowCopy() : QPDFObjectHandle::newDictionary();
  drawn.replaceKey(name, form);
  resources.replaceKey("/XObject", drawn);
  const auto placed = page.placeFormXObject(form, name, page.getTrimBox().getArrayAsRectangle());
  auto object = page.getObjectHandle();
  object.addPageContents(QPDFObjectHandle::newStream(&document, "q\n"), true);
  object.addPageContents(QPDFObjectHandle::newStream(&document, "\nQ\n/Artifact <</Type /Pagination>> BDC\n" + placed + "EMC\n"), false);
}

std::string written(QPDF &document) {
  QPDFWriter writer(document);
  writer.setOutputMemory();
  writer.setDeterministicID(true);
  writer.setObjectStreamMode(qpdf_o_disable);
  writer.write();
  const auto bytes = writer.getBufferSharedPointer();
  return {reinterpret_cast<const char *>(bytes->getBuffer()), bytes->getSize()};
}

std::string_view before_signature(std::string_view pdf) {
  const auto found = revisions(pdf);
  if (!found) throw std::runtime_error("it is no PDF");
  if (found->more && !found->signature) throw std::runtime_error("something was appended to it that is no signature of this program");
  return pdf.substr(0, found->first);
}

} // namespace

std::string stamped(std::string_view pdf, std::string_view stamp, base::Diagnostics &sink) {
  try {
    const auto document = opened(before_signature(pdf), "the report");
    const auto over = opened(stamp, "the stamp");
    const auto form = document->copyForeignObject(first_page_as_form(*over));
    for (auto &page : QPDFPageDocumentHelper(*document).getAllPages()) lay_over(*document, page, form);
    if (document->anyWarnings() || over->anyWarnings()) throw std::runtime_error("it is damaged");
    return written(*document);
  } catch (const std::exception &failure) {
    sink.error(base::Code::output_failed, {}, fmt::format("a stamped copy cannot be made: {}", failure.what()), "the PDF as it was issued",
               "put the file back as it was delivered; `verify` says what differs");
    return {};
  }
}

} // namespace strakebook::file
