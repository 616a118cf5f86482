// Puts the page together: assemble.mjs PAGE-FOLDER EXAMPLES-FOLDER PROGRAM-FOLDER OUT.html
// frame.html says where with {{name}}: style, asking (the worker's script), page (the rest of the
// scripts, in the order of their names), examples (batches to lay out), loader and program (gzip in
// base64).
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";

const [pages, samples, programs, out] = process.argv.slice(2);
const text = (folder, name) => readFileSync(join(folder, name), "utf8");
const inert = script => script.replace(/<\/(script)/gi, "<\\/$1").replace(/<!--/g, "<\\!--");

const scripts = readdirSync(pages).filter(name => name.endsWith(".js") && name !== "asking.js");
const batches = readdirSync(samples).filter(name => name.endsWith(".toml")).sort();
const example = name =>
  `<script type="application/toml" data-example="${name.replace(".toml", "")}">` +
  `${inert(text(samples, name))}</script>`;
const zipped = gzipSync(readFileSync(join(programs, "gristwright.wasm")), { level: 9 });
zipped[9] = 255;  // no operating system's name: the same bytes everywhere
const parts = {
  style: text(pages, "page.css"),
  asking: inert(text(pages, "asking.js")),
  page: scripts.sort().map(name => inert(text(pages, name))).join("\n"),
  examples: batches.map(example).join("\n"),
  loader: inert(text(programs, "gristwright.js")),
  program: zipped.toString("base64"),
};
const frame = text(pages, "frame.html");
for (const name of Object.keys(parts))
  if (!frame.includes(`{{${name}}}`)) throw new Error(`frame.html has no {{${name}}}`);
writeFileSync(out, frame.replace(/\{\{(\w+)\}\}/g, (place, name) => parts[name] ?? place));
