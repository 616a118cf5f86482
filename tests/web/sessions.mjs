// The console sessions that the native program is held to, asked of the page's own program: the same
// bytes. One program answers all of them, one after the other, as in the page.
// usage: sessions.mjs WASM-FOLDER PAGE-FOLDER ROOT FILE...
import { existsSync, readFileSync, readdirSync } from "node:fs";
import { createRequire } from "node:module";
import { join, relative } from "node:path";
import vm from "node:vm";

const [programs, pages, root, ...files] = process.argv.slice(2);
if (!existsSync(join(programs, "gristwright.wasm"))) {
  console.log("NOT RUN: cli/web/build has not been run");
  process.exit(77);
}
globalThis.require = createRequire(import.meta.url);
globalThis.__dirname = programs;
globalThis.self = { postMessage() {} };
globalThis.wasm = readFileSync(join(programs, "gristwright.wasm"));
for (const script of [join(programs, "gristwright.js"), join(pages, "asking.js")])
  vm.runInThisContext(readFileSync(script, "utf8"));
await vm.runInThisContext('begun(wasm, "80")');
const program = vm.runInThisContext("program");
const FS = program.FS, home = vm.runInThisContext("home");

// The files that sessions name, where they name them.
const place = "/project";
for (const folder of ["docs/examples", "catalog/templates"]) {
  FS.mkdirTree(join(place, folder));
  for (const name of readdirSync(join(root, folder)))
    if (/\.(toml|csv)$/.test(name))
      FS.writeFile(join(place, folder, name), readFileSync(join(root, folder, name)));
}
FS.chdir(place);
FS.getStream(2).tty = null;  // as in a file: no line that says how far long work is

function emptied(folder) {
  for (const name of FS.readdir(folder).filter(name => name !== "." && name !== "..")) {
    const path = folder + "/" + name;
    if (FS.isDir(FS.stat(path).mode)) { emptied(path); FS.rmdir(path); }
    else FS.unlink(path);
  }
}

// A spreadsheet's line ends are as the session's file has them.
const lines = text => text.replaceAll("\r\n", "\n");

function answer(command) {
  let code;
  try {
    code = program.callMain(words(command));
  } catch (thrown) {
    if (thrown?.name !== "ExitStatus") throw thrown;
    code = thrown.status;
  }
  let out = lines(program.out());
  for (const line of program.err().split("\n").slice(0, -1)) out += `! ${line}\n`;
  return out + (code ? `[exit ${code}]\n` : "");
}

// As a shell takes a line apart: blanks, quotes, escapes.
function words(line) {
  const found = [];
  for (const [whole] of line.replaceAll("\\\n", "").matchAll(/(?:[^\s"'\\]|\\.|"(?:[^"\\]|\\.)*"|'[^']*')+/g))
    found.push(whole.replace(/"((?:[^"\\]|\\.)*)"|'([^']*)'|\\(.)/g, (_, double, single, one) =>
      single ?? one ?? double.replace(/\\(["\\$`])/g, "$1")));
  if (found[0] !== "gristwright") throw new Error("not a question: " + line);
  return found.slice(1);
}

let asked = 0, differ = 0;
for (const file of files)
  for (const [, continued, block] of lines(readFileSync(file, "utf8")).matchAll(/^```console( continued|)\n([^]*?)^```/gm)) {
    if (!continued) emptied(home);
    for (const part of block.split(/^\$ /m).slice(1)) {
      const [, command, expected] = part.match(/^((?:[^\n]*\\\n)*[^\n]*)\n([^]*)$/);
      const printed = answer(command);
      ++asked;
      if (printed === expected) continue;
      ++differ;
      const at = [...expected].findIndex((letter, i) => letter !== printed[i]);
      console.log(`${relative(root, file)}: ${command}\n  ... ${JSON.stringify(expected.substr(at, 90))}` +
                  `\n  here ${JSON.stringify(printed.substr(at, 90))}`);
    }
  }
console.log(`${asked} questions, ${differ} answered otherwise than by the native program`);
process.exit(differ || asked < 60 ? 1 : 0);
