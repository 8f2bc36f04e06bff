#pragma once

#include <string>
#include <string_view>
#include <vector>

/// A PDF file looked at as bytes.
namespace pdf_bytes {

std::size_t count(std::string_view bytes, std::string_view part);

/// What is wrong with the cross-reference table: every object must begin where it says. Empty: nothing.
std::string cross_reference_fault(const std::string &bytes);

/// The streams that are compressed, unpacked, in the order of the file.
std::vector<std::string> unpacked_streams(const std::string &bytes);

/// The first unpacked stream that holds `part`; fails the test when there is none.
std::string stream_with(const std::string &bytes, std::string_view part);

/// The two hexadecimal identifiers of the trailer.
std::vector<std::string> identifiers(const std::string &bytes);

/// Everything between `before` and the next `after`, from the first place that holds `before`; empty if there
/// is none.
std::string between(std::string_view bytes, std::string_view before, std::string_view after);

} // namespace pdf_bytes
