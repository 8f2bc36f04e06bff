#pragma once

#include <filesystem>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "strakebook/base/diagnostic.h"
#include "strakebook/base/folder.h"
#include "strakebook/base/image_ref.h"
#include "strakebook/base/input_file.h"
#include "strakebook/house/house.h"
#include "strakebook/paper/media/media.h"
#include "strakebook/paper/page/page.h"
#include "strakebook/steel/amend/past_issue.h"
#include "strakebook/steel/assess/assessment.h"
#include "strakebook/steel/outlook/outlook.h"
#include "strakebook/steel/survey/survey.h"

/// The facade: from a survey file to a report. report.cpp reads top to bottom as the pipeline does.
namespace strakebook {

/// Where layouts and fonts are.
struct Resources {
  base::Folder layouts;
  std::filesystem::path fonts;
};

/// Beside the program when it is installed, else in the source tree that it was built from.
Resources installed_resources();

/// A survey read against its house, assessed and reviewed, with the photographs that passed the gate.
struct Case {
  house::House house;
  survey::Survey survey;
  assess::Assessment assessment;
  outlook::Outlook outlook;
  std::map<std::string, base::PrintedPicture> photos; ///< photo id -> picture
  media::ImageStore images;
  std::vector<base::InputFile> inputs;          ///< everything read, layouts first
  base::Folder folder{""};                      ///< where the survey lies, and what was read of it
  base::Folder layouts{""};                     ///< the installed layouts, and what was read of them
  std::shared_ptr<const Case> before;           ///< the issue that this one replaces; null: none, or it cannot be read
  std::optional<amend::Amended> amended;        ///< there with `before`
  std::vector<amend::PastIssue> past;           ///< issues of this report that went out
  std::string issued_digest;                    ///< of a copy that is issued: what each page carries
};

/// Reads, checks, assesses and reviews. nullopt: the survey or its layout could not be read. A Case that is returned is to be
/// used only when sink.ok().
std::optional<Case> open_case(const base::FileInFolder &survey, const Resources &resources, base::Diagnostics &sink);

/// What can be shown by itself: a figure, one panel of it, or a photograph.
struct Figure {
  std::string id;               ///< "figure/map", "photo/2"
  std::string label;            ///< as printed, "Figure 6.1"; may be empty
  std::vector<std::string> ids; ///< of its items on the page
  std::string spoken;           ///< what it shows, in words
  bool drawn = false;           ///< nothing but a drawing: its words can stand for the labels in it
};

/// The pages, and what stands on them that can be shown by itself, in its order.
struct Proof {
  page::Document pages;
  std::vector<std::string> page_names; ///< as printed at the foot, "page 3 of 12"
  std::vector<Figure> figures;
};

/// Composes and sets the pages; what cannot be set is added to `sink`. nullopt when anything in `sink` is an error.
std::optional<Proof> set_pages(const Case &the_case, const Resources &resources, base::Diagnostics &sink);

/// The pages as a PDF file's bytes; empty, with the reason in `sink`, where they cannot be written.
std::string pdf_of(const page::Document &pages, const Case &the_case, base::Diagnostics &sink);

enum class PictureKind { png, svg };

struct PictureForm {
  PictureKind kind = PictureKind::png;
  double dpi = 80;    ///< of a PNG
  double margin = 6;  ///< points of white round a figure that is shown by itself
};

/// One page as the bytes of a picture, for a look before the report is made. Same pages, same bytes.
std::string picture_of(const Proof &proof, std::size_t index, const Case &the_case, const PictureForm &form);

/// A figure by itself, as the bytes of a picture for each page that has something of it.
std::vector<std::string> pictures_of(const Proof &proof, const Figure &figure, const Case &the_case,
                                     const PictureForm &form);

/// Everything computed, as JSON; the survey file's JSON Schema; a commented survey to fill in.
std::string assessment_json(const Case &the_case);
/// Every quantity of the outlook with its formula and what went in: as CSV for a spreadsheet (RFC 4180, UTF-8; no cell of it is a
/// formula, see base::csv_line), as JSON, in plain text for people.
std::string quantities_csv(const Case &the_case);
std::string quantities_json(const Case &the_case);
std::string quantities_text(const Case &the_case);
std::string survey_schema();
std::string survey_skeleton();

/// The program's name and version as printed in the report: "strakebook 0.1.0".
std::string tool_name();

} // namespace strakebook
