#include "strakebook/steel/amend/words.h"

namespace strakebook::amend {

std::string_view word_of(Kind kind) {
  switch (kind) {
  case Kind::decision: return "decision";
  case Kind::recommendation: return "recommendation";
  case Kind::answer: return "answer";
  case Kind::steelwork: return "steelwork";
  case Kind::criterion: return "criterion";
  case Kind::original: return "original";
  case Kind::reading: return "reading";
  case Kind::pit: return "pit";
  case Kind::doubler: return "doubler";
  case Kind::limitation: return "limitation";
  case Kind::photograph: return "photograph";
  case Kind::instrument: return "instrument";
  case Kind::text: return "text";
  case Kind::house: return "house";
  }
  return {};
}

std::string_view word_of(How how) {
  switch (how) {
  case How::changed: return "changed";
  case How::added: return "added";
  case How::withdrawn: return "withdrawn";
  }
  return {};
}

} // namespace strakebook::amend
