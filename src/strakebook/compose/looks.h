#pragma once

/// Names that the layout's style gives form to: text styles, lattices, tables, keys and meanings, in one place so that a
/// chapter and the layout cannot drift apart (a test holds them against the layout).
namespace strakebook::compose::look {

// text styles
inline constexpr const char *text = "text";
inline constexpr const char *claim = "claim";                 ///< the decision in a sentence
inline constexpr const char *lead = "lead";                   ///< soft line under a heading
inline constexpr const char *note = "note";                   ///< small line under a table
inline constexpr const char *side = "side-note";
inline constexpr const char *caution = "caution";             ///< beside an item
inline constexpr const char *eyebrow = "eyebrow";
inline constexpr const char *eyebrow_first = "eyebrow-first"; ///< at the top of a cell
inline constexpr const char *title_eyebrow = "title-eyebrow";
inline constexpr const char *vessel_name = "vessel-name";
inline constexpr const char *title_facts = "title-facts";
inline constexpr const char *advice = "refloat-advice";
inline constexpr const char *worst = "worst-remaining";
inline constexpr const char *answer = "answer-text";          ///< sans text of page one
inline constexpr const char *answer_side = "answer-side";
inline constexpr const char *issue_notice = "issue-notice";
inline constexpr const char *item_title = "item-title";
inline constexpr const char *item_number = "item-number";
inline constexpr const char *item_place = "item-place";
inline constexpr const char *class_line = "class-line";
inline constexpr const char *decision_head = "heading-decision";

// lattices
inline constexpr const char *text_side = "text-side";            ///< 106 + 6 + 52
inline constexpr const char *particulars = "answer-particulars"; ///< 82 + 6 + 76
inline constexpr const char *answer_grid = "answer";             ///< 55 + 5 + 104
inline constexpr const char *halves = "halves";                  ///< 79 + 6 + 79
inline constexpr const char *map_legend = "map-legend";          ///< 154 + 8 + 99, on the page of the map
inline constexpr const char *item_grid = "item";                 ///< 9 + 97 + 6 + 52

// tables and keys
inline constexpr const char *plain_table = "plain";
inline constexpr const char *summary_table = "summary";
inline constexpr const char *items_table = "items";
inline constexpr const char *steelwork_table = "steelwork";
inline constexpr const char *small_table = "small";
inline constexpr const char *register_table = "register";
inline constexpr const char *plain_keys = "plain";
inline constexpr const char *cover_keys = "cover";
inline constexpr const char *item_keys = "item";

// meanings of rules and bars
inline constexpr const char *rule = "rule";
inline constexpr const char *rule_title = "rule-title";
inline constexpr const char *rule_item = "rule-item";
inline constexpr const char *not_given_rule = "not-given";
inline constexpr const char *signature_rule = "signature";
inline constexpr const char *caution_bar = "caution";

// measures
inline constexpr const char *signature_gap = "group-gap";

} // namespace strakebook::compose::look
