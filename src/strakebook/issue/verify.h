#pragma once

#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
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

/// What a PDF is.
enum class What {
  unknown,
  report,
  addendum,
  stamped_copy, ///< of an issue that was replaced
  companion     ///< a notice, or another file that went out with an issue
};

struct Verification {
  What what = What::unknown;
  std::string report, state, date, signer; ///< of a companion: of the issue that it went out with
  int issue = 0, addendum = 0;
  Superseded superseded;
  std::vector<std::pair<int, std::string>> addenda; ///< to the same issue: number and date
  std::vector<Layer> layers;
  bool broken() const; ///< any layer
};

/// The unsigned bytes that inputs make here.
struct MadeAgain {
  std::string pdf; ///< empty: they make none
  std::string why; ///< of none
};
using MakeAgain = std::function<MadeAgain(const base::FileSet &inputs, const Manifest &manifest)>;

/// What a PDF is held against.
struct Against {
  std::optional<Register> register_;   ///< absent: none was found
  bool register_broken = false;        ///< it has a fault, said in `register_fault`; its entries are those before the fault
  std::string register_fault;
  std::optional<base::Folder> beside;  ///< a folder with the kept inputs that are not attached; absent: there is none
  std::string known_certificate;       ///< PEM; empty: none given
  Makers here;
  MakeAgain make_again;
};

/// Layers come in the order register, file, inputs, rendering, signature. A signature update as this program adds it, last, is all that
/// may follow the report as written; any other byte behind it is broken, with or without a register. No exception leaves it for what a
/// file holds.
Verification verify(std::string_view pdf, const Against &against);

} // namespace strakebook::issue
