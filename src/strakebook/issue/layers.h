#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "strakebook/issue/found_inputs.h"
#include "strakebook/issue/identity.h"
#include "strakebook/issue/signer.h"
#include "strakebook/issue/verify.h"
#include "strakebook/paper/file/contents.h"
#include "strakebook/paper/file/signature.h"

/// The layers of verification, each a function of what was found.
namespace strakebook::issue {

/// What was found of a PDF before any layer is judged.
struct Examined {
  std::string_view pdf;
  std::string digest;
  std::optional<file::Contents> contents;
  std::optional<file::Revisions> revisions;
  FoundInputs inputs;
  Identity identity;
  std::optional<SignatureFound> signature; ///< there where a signature is

  /// Is there a register to hold it against?
  bool registered(const Against &against) const { return against.register_ && !against.register_broken; }
};

Layer register_layer(const Examined &pdf, const Against &against);
Layer file_layer(const Examined &pdf, const Against &against);
Layer inputs_layer(const Examined &pdf, const Against &against);
Layer rendering_layer(const Examined &pdf, const Against &against);
Layer signature_layer(const Examined &pdf, const Against &against);

/// "RD 2644 issue 2", "RD 2644 issue 2 addendum 1".
std::string name_of(std::string_view report, int issue, int addendum);

} // namespace strakebook::issue
