#pragma once

#include <string>
#include <string_view>

#include "strakebook/steel/survey/prose.h"

/// Block ids: where a link leads. Every chapter names its blocks by these, so that each reference finds its block.
namespace strakebook::compose {

std::string mark_id(std::string_view mark);             ///< "PW 9" -> "mark/PW 9": its row in the results tables
std::string pit_id(std::string_view pit);               ///< "pit/P3": its row in the pit table
std::string doubler_id(std::string_view doubler);       ///< "doubler/D1"
std::string note_id(std::string_view note);             ///< "note/N2"
std::string photo_id(std::string_view photo);           ///< "photo/4"
std::string item_id(std::string_view recommendation);   ///< "item/1"
std::string steelwork_id(std::string_view item);        ///< "steelwork/S1"
std::string limitation_id(std::string_view limitation); ///< "limitation/1"
std::string zone_id(std::string_view zone);             ///< "zone/W": its decision
std::string section_id(std::string_view section);       ///< "section/results"
std::string criterion_id(std::string_view criterion);   ///< "criterion/absolute-4.0": its row in the criteria table
std::string original_id(std::string_view zone);         ///< "original/W": the zone's original thickness
/// "mark/PW 9" -> "map/mark/PW 9": the place of a mark, pit or photograph on the map.
std::string map_id(std::string_view id);
std::string map_bay_id(std::string_view row, int bay); ///< "map/bay/PT 12": the cell that its marks share on a large boat

/// The block that a pointer of the prose leads to.
std::string target_id(const survey::Pointer &pointer);

} // namespace strakebook::compose
