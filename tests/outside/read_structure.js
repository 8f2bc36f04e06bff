// read_structure.js PDF_JS FILE: the structure tree of each page as pdf.js gives it to a browser's reader, as a line of JSON.
"use strict";
const fs = require("fs");
const path = require("path");
const [, , library, file] = process.argv;
const pdfjs = require(library);
pdfjs.GlobalWorkerOptions.workerSrc = path.join(path.dirname(library), "pdf.worker.js");

function plain(node, text) {
  if (!node) return null;
  if (node.type === "content") return { text: text.get(node.id) || "" };
  if (!node.role) return null;
  return { role: node.role, alt: node.alt || "", kids: (node.children || []).map(k => plain(k, text)).filter(k => k) };
}

// The words of each piece of marked content, by its name.
async function words(page) {
  const text = new Map(), open = [];
  for (const item of (await page.getTextContent({ includeMarkedContent: true })).items) {
    if (item.type === "beginMarkedContentProps" || item.type === "beginMarkedContent") open.push(item.id || open[open.length - 1]);
    else if (item.type === "endMarkedContent") open.pop();
    else if (open.length) text.set(open[open.length - 1], (text.get(open[open.length - 1]) || "") + item.str);
  }
  return text;
}

async function main() {
  const document = await pdfjs.getDocument({ data: new Uint8Array(fs.readFileSync(file)), verbosity: 0 }).promise;
  for (let n = 1; n <= document.numPages; ++n) {
    const page = await document.getPage(n);
    console.log(JSON.stringify(plain(await page.getStructTree(), await words(page))));
  }
}
main().catch(error => { console.error(error); process.exit(1); });
