#include "strakebook/compose/chapters.h"

namespace strakebook::compose {

const std::map<std::string, Chapter, std::less<>> &chapters() {
  static const std::map<std::string, Chapter, std::less<>> all = {
      {"answer", answer},
      {"changes", changes},
      {"identity", identity},
      {"scope", scope_of_survey},
      {"vessel", vessel},
      {"conditions", conditions},
      {"instruments", instruments},
      {"datum", datum},
      {"original", original},
      {"criteria", criteria},
      {"map", map},
      {"results", results},
      {"comparison", comparison},
      {"assessment", assessment},
      {"recommendations", recommendations},
      {"steelwork", steelwork},
      {"coating", coating},
      {"limitations", limitations},
      {"safety", safety},
      {"basis", basis},
      {"photographs", photographs},
      {"issue-record", issue_record},
      {"appendices", appendices},
  };
  return all;
}

} // namespace strakebook::compose
