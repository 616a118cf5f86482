// The page's program in a real browser against the native one: the same code, the same bytes on both
// outputs and in every file written, question by question, from disk and without a network.
// usage: same_answers.mjs BUILD PAGE.html PROGRAM ROOT chromium|firefox
import { spawnSync } from "node:child_process";
import { cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { browserOpened, packages, pageOpened } from "./browser.mjs";

const [build, file, program, root, name] = process.argv.slice(2);
if (!existsSync(file)) { console.log("NOT RUN: there is no " + file); process.exit(77); }
const { puppeteer } = await packages(build);
const folder = mkdtempSync(join(tmpdir(), "same-")), home = join(folder, "home"), desk = join(folder, "desk");
mkdirSync(home);
const examples = join(root, "docs/examples");
const files = Object.fromEntries(readdirSync(examples).map(each => [each, readFileSync(join(examples, each), "utf8")]));
const words = line => [...line.matchAll(/"([^"]*)"|(\S+)/g)].map(([, quoted, plain]) => quoted ?? plain);

function native(args) {
  cpSync(examples, desk, { recursive: true });
  const done = spawnSync(program, args, { cwd: desk, env: { PATH: "/usr/bin:/bin", HOME: home, NO_COLOR: "1", COLUMNS: "9999", LANG: "C.UTF-8" }, encoding: "utf8", maxBuffer: 1e8 });
  const written = Object.fromEntries(readdirSync(desk).filter(each => !(each in files)).map(each => [each, readFileSync(join(desk, each), "utf8")]));
  rmSync(desk, { recursive: true });
  return { code: done.status, out: done.stdout, err: done.stderr, files: written };
}

const seen = [], browser = await browserOpened(puppeteer, name, join(folder, "profile"));
const page = await pageOpened(browser, pathToFileURL(file).href, seen);
const here = args => page.evaluate(async (args, files) => {
  const { code, out, err, files: written } = await ask(args, files);
  return { code, out, err, files: Object.fromEntries(Object.entries(written).map(([each, bytes]) => [each, new TextDecoder().decode(bytes)])) };
}, args, files);

let asked = 0, differ = 0;
const spent = { native: 0, here: 0 };
const timed = async (which, work) => {
  const from = performance.now(), found = await work();
  spent[which] += performance.now() - from;
  return found;
};
for (const line of readFileSync(join(dirname(fileURLToPath(import.meta.url)), "questions.txt"), "utf8").trim().split("\n")) {
  const expected = await timed("native", () => native(words(line))), got = await timed("here", () => here(words(line)));
  ++asked;
  const ours = JSON.stringify(got), theirs = JSON.stringify(expected);
  if (ours === theirs) continue;
  ++differ;
  let at = 0;
  while (ours[at] === theirs[at]) ++at;
  console.log(`${line}\n  native ${theirs.substr(at, 120)}\n  here   ${ours.substr(at, 120)}`);
}

// The page that the native program writes has the person's own articles inside.
async function ownArticleInside() {
  const shelf = join(home, ".local/share/gristwright/templates"), example = readFileSync(join(root, "docs/templates.md"), "utf8").match(/```toml\n([^]*?)```/)[1];
  mkdirSync(shelf, { recursive: true });
  writeFileSync(join(shelf, "moon-shawl.toml"), example.replace("Half-circle shawl", "Moon <b>shawl"));
  const { err, files: written } = native(["page", "heron.toml", "--live", "-o", "live.html"]);
  const path = join(folder, "live.html");
  writeFileSync(path, written["live.html"] || "");
  const live = await pageOpened(browser, pathToFileURL(path).href, seen);
  return err.includes("your own articles are in the page: moon-shawl") &&
    await live.evaluate(() => document.getElementById("own-articles-list").textContent.includes("Moon <b>shawl came with this page"));
}
const inside = name !== "chromium" || await ownArticleInside();
if (!inside) console.log("the page of the native program has not the person's own article inside");
for (const message of seen) console.log("seen: " + message);
await browser.close();
rmSync(folder, { recursive: true, force: true });
console.log(`${asked} questions in ${name}, ${differ} answered otherwise; ${(spent.here / spent.native).toFixed(1)} times the native program's time, its start and what the browser takes included`);
process.exit(!inside || differ || seen.length || asked < 60 ? 1 : 0);
