#pragma once

#include <cstdio>
#include <string>
#include <string_view>
#include <vector>

namespace support {

/// Objects written as a PDF file with a plain table of references, each under its place in the list, from 1. Same objects, same bytes.
inline std::string written_pdf(const std::vector<std::string> &objects) {
  std::string bytes = "%PDF-1.7\n%\xB7\xBE\xAD\xAA\n", table;
  for (std::size_t i = 0; i < objects.size(); ++i) {
    char line[32];
    std::snprintf(line, sizeof line, "%010zu 00000 n\r\n", bytes.size());
    table += line;
    bytes += std::to_string(i + 1) + " 0 obj\n" + objects[i] + "\nendobj\n";
  }
  const auto at = std::to_string(bytes.size()), size = std::to_string(objects.size() + 1);
  const std::string id = "<00112233445566778899aabbccddeeff>";
  return bytes + "xref\n0 " + size + "\n0000000000 65535 f\r\n" + table + "trailer\n<<\n/ID [ " + id + " " + id + " ]\n/Root 1 0 R\n/Info 3 0 R\n/Size " + size +
         "\n>>\nstartxref\n" + at + "\n%%EOF\n";
}

inline std::string pdf_stream(const std::string &entries, const std::string &data) {
  return "<<\n" + entries + "\n/Length " + std::to_string(data.size()) + "\n>>\nstream\n" + data + "\nendstream";
}

/// Two tagged pages, a link from the first to the second, and a file attached. `says` is drawn on both.
inline std::string small_pdf(const std::string &says = "A") {
  const std::string page = "<<\n/Type /Page\n/Parent 2 0 R\n/MediaBox [0 0 300 400]\n/Resources <<\n/Font <<\n/F0 8 0 R\n>>\n>>\n";
  const std::string text = "/P <</MCID 0>> BDC\nBT /F0 12 Tf 20 200 Td (" + says + ") Tj ET\nEMC";
  return written_pdf({
      "<<\n/Type /Catalog\n/Pages 2 0 R\n/Names <<\n/EmbeddedFiles <<\n/Names [ (survey.yaml) 9 0 R ]\n>>\n>>\n/MarkInfo <<\n/Marked true\n>>\n"
      "/StructTreeRoot 11 0 R\n/Lang (en)\n>>",
      "<<\n/Type /Pages\n/Kids [ 4 0 R 5 0 R ]\n/Count 2\n>>",
      "<<\n/Title (A small report)\n>>",
      page + "/Contents 6 0 R\n/StructParents 0\n/Annots [ 12 0 R ]\n>>",
      page + "/Contents 7 0 R\n/StructParents 1\n>>",
      pdf_stream("", text),
      pdf_stream("", text),
      "<<\n/Type /Font\n/Subtype /Type1\n/BaseFont /Helvetica\n>>",
      "<<\n/Type /Filespec\n/F (survey.yaml)\n/EF <<\n/F 10 0 R\n>>\n>>",
      pdf_stream("/Type /EmbeddedFile", "vessel: {name: Small}\n"),
      "<<\n/Type /StructTreeRoot\n/K [ 13 0 R ]\n/ParentTree <<\n/Nums [ 0 [ 13 0 R ] 1 [ 14 0 R ] ]\n>>\n>>",
      "<<\n/Type /Annot\n/Subtype /Link\n/Rect [20 190 60 220]\n/F 4\n/Dest [ 5 0 R /XYZ 0 400 null ]\n>>",
      "<<\n/S /P\n/P 11 0 R\n/Pg 4 0 R\n/K 0\n>>",
      "<<\n/S /P\n/P 11 0 R\n/Pg 5 0 R\n/K 0\n>>",
  });
}

} // namespace support
