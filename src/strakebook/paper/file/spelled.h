#pragma once

#include <map>
#include <string>
#include <string_view>

#include <qpdf/QPDFObjectHandle.hh>

namespace strakebook::file {

/// Entries of a dictionary by their key ("/Type"), each as it is spelled in a file. The spelling is this program's own, so that it does
/// not change with the library that reads.
using Entries = std::map<std::string, std::string>;

/// Throws std::logic_error where an object is a stream or part of a page's content.
std::string spelled(const QPDFObjectHandle &object);
Entries entries_of(const QPDFObjectHandle &dictionary);
std::string spelled(const Entries &entries); ///< one a line

/// A text string for readers (ISO 32000-1, 7.9.2.2) in hexadecimal: "<feff004d>".
std::string text_spelled(std::string_view utf8);
/// Back; empty for what is none.
std::string text_read(std::string_view hexadecimal);

} // namespace strakebook::file
