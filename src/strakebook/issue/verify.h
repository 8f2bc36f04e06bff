#pragma once

#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "strakebook/base/folder.h"
#include "strakebook/issue/register.h"

/// Is this PDF what was issued?
namespace strakebook::issue {

enum class Answer { holds, broken, cannot_be_checked };

struct Layer {
  std::string name; ///< "register", "file", "inputs", "rendering", "signature"
  Answer answer{};
  std::string why;  ///< of broken, what differs and where; of cannot_be_checked, what is missing here; of holds, what was compared
};

struct Superseded {
  enum class By { none, issue, not_known } by = By::not_known;
  int issue = 0;      ///< by which
  std::string date;   ///< of that one
  std::string digest; ///< of its PDF
};

struct Verification {
  std::string report, state, date, signer;
  int issue = 0, addendum = 0;
  Superseded superseded;
  std::vector<Layer> layers;
  bool broken() const; ///< any layer
};

/// The unsigned bytes that these inputs make here; nullopt: they cannot be read.
using MakeAgain = std::function<std::optional<std::string>(const base::FileSet &inputs)>;

/// What a PDF is held against.
struct Against {
  std::optional<Register> register_;   ///< absent: none was found
  bool register_broken = false;        ///< it has a fault, said in `register_fault`
  std::string register_fault;
  std::optional<base::FileSet> beside; ///< kept inputs that lie beside the PDF, where they are not attached
  std::string known_certificate;       ///< PEM; empty: none given
  Makers here;
  MakeAgain make_again;
};

Verification verify(std::string_view pdf, const Against &against);

} // namespace strakebook::issue
