// The page worked in as a spinner would, in a real browser, from disk.
// usage: work.mjs BUILD PAGE.html chromium|firefox        PAGE.html as cli/web/build writes it
import assert from "node:assert/strict";
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { browserOpened, drawn, overflowing, packages, pageOpened, press, said, savedText, says, typed, until } from "./browser.mjs";

const [build, file, name] = process.argv.slice(2);
if (!existsSync(file)) { console.log("NOT RUN: there is no " + file); process.exit(77); }
const { puppeteer, axe } = await packages(build);
const folder = mkdtempSync(join(tmpdir(), "worked-")), profile = join(folder, "profile"), seen = [];
const url = pathToFileURL(file).href, root = join(dirname(fileURLToPath(import.meta.url)), "../..");
let browser = await browserOpened(puppeteer, name, profile), page;

const steps = [];
const step = (words, work) => steps.push([words, work]);
const cell = (row, column) => `#rows tbody:nth-of-type(${row}) [data-column=${column}]`;
const rowsIn = () => page.$$eval("#rows [data-column=length]", cells => cells.map(one => one.value).filter(Boolean));

step("by keyboard alone two skeins are typed, and the answer comes", async () => {
  page = await pageOpened(browser, url, seen);
  assert.match(await said(page, "quick"), /comes as you type/);
  await page.focus("#name");
  for (const words of ["Moor", "A", "139m", "38.5g"]) { await page.keyboard.type(words); await page.keyboard.press("Tab"); }
  await page.keyboard.press("Tab");
  for (const words of ["B", "163m", "45.0g"]) { await page.keyboard.type(words); await page.keyboard.press("Tab"); }
  await drawn(page, "302 m");
  assert.equal(await said(page, "title"), "Moor");
});

step("cells of a spreadsheet are pasted", async () => {
  await page.$eval(cell(3, "name"), input => {
    const clipboardData = new DataTransfer();
    clipboardData.setData("text/plain", "C\t155 m\t43 g\nD\t78 m\t21.6 g\n");
    const event = new Event("paste", { bubbles: true, cancelable: true });
    Object.defineProperty(event, "clipboardData", { value: clipboardData });
    input.dispatchEvent(event);
  });
  await until(page, () => document.querySelectorAll("#rows tbody").length === 5);
  assert.deepEqual(await rowsIn(), ["139m", "163m", "155 m", "78 m"]);
  for (const [id, words] of [["preparation", "carded"], ["draw", "short"], ["plies", "3"], ["wraps", "13wpi"]]) await typed(page, "#" + id, words);
  await drawn(page, "three-ply");
});

step("two wrong measures are marked at their cells, with what would be right; mended, the answer is back", async () => {
  await typed(page, cell(1, "length"), "139");
  await typed(page, "#wraps", "lots");
  await page.focus("#draw");
  await until(page, () => document.querySelectorAll("[aria-invalid]").length === 2);
  const notes = await page.$$eval("[aria-invalid]", inputs => inputs.map(input => document.getElementById(input.getAttribute("aria-describedby")).textContent));
  assert.match(notes[0], /cannot read '139': a length needs a unit/);
  assert.match(notes[1], /'lots'/);
  await typed(page, cell(1, "length"), "139m");
  await typed(page, "#wraps", "13wpi");
  await until(page, () => !document.querySelector("[aria-invalid]"));
  await drawn(page, "535 m of three-ply");
});

step("which skeins, how sure, what is put by, which craft: the answer follows", async () => {
  await press(page, "#rows tbody:nth-of-type(4) .in");
  await drawn(page, "457 m");
  await press(page, "#rows tbody:nth-of-type(4) .in");
  await drawn(page, "535 m");
  const before = await said(page, "quick");
  await page.$eval("#certainty", range => { range.value = "99"; range.dispatchEvent(new Event("input", { bubbles: true })); });
  await until(page, before => document.getElementById("drawn").getAttribute("aria-busy") === "false" && document.getElementById("quick").textContent.replaceAll("\u00a0", " ") !== before && /99\s% (sure|chance)/.test(document.getElementById("drawn").shadowRoot.textContent), before);
  if (await page.$eval("#beside", choice => !choice.closest("label").hidden)) {
    await page.select("#beside", "combed");
    await until(page, () => document.getElementById("drawn").shadowRoot.getElementById("two"));
    await page.select("#beside", "");
    await until(page, () => !document.getElementById("drawn").shadowRoot.getElementById("two"));
  }
  await typed(page, "#spare", "10");
  await until(page, () => document.getElementById("spare").getAttribute("aria-invalid"));
  await typed(page, "#spare", "10m");
  await until(page, () => !document.querySelector("[aria-invalid]"));
});

step("200 suggestions are ranked, with replies; the audience sees them, moved by keys", async () => {
  const ideas = ["cabled hat", "lace shawl", "woven scarf", "socks", "mittens", "weave a bag", "ribbed cowl", "crochet a poncho", "baby blanket", "a jumper"];
  const list = "idea\tfrom\n" + Array.from({ length: 200 }, (_, i) => `${ideas[i % 10]} ${i % 7 ? "please" : ""}\tguest ${i}`).join("\n");
  await page.$eval("#ideas", (area, list) => { area.value = list; area.dispatchEvent(new Event("input", { bubbles: true })); }, list);
  await says(page, "ideas-said", "200 suggestions");
  const rows = await page.$$eval(".replies tbody tr", rows => rows.map(row => row.textContent));
  assert.ok(rows.length >= 10 && rows.every(row => row.includes("Thank you") || row.includes("asked back")), rows.join("\n"));
  await press(page, "#show");
  const first = await said(page, "audience");
  await page.keyboard.press("ArrowDown");
  assert.notEqual(await said(page, "audience"), first);
  await until(page, () => document.querySelector(".picture-place").shadowRoot?.querySelector("svg"));
  await page.keyboard.press("Escape");
  await until(page, () => document.getElementById("audience").hidden);
});

step("an article is planned; a wrong size is marked; the sheet is there", async () => {
  await page.evaluate(() => document.getElementById("drawn").shadowRoot.querySelector("[data-plan]").click());
  await until(page, () => document.getElementById("sheet").shadowRoot?.querySelector(".five"));
  assert.match(await said(page, "plan-said"), /suitability \d+ of 100/);
  assert.match(await said(page, "plan-drawn"), /Mind/);
  await typed(page, "#size", "90");
  await until(page, () => document.getElementById("size").getAttribute("aria-invalid"));
  await typed(page, "#size", "");
  await typed(page, "#for", "my brother");
  await until(page, () => document.getElementById("for").getAttribute("aria-invalid"));
  await typed(page, "#for", "");
  await typed(page, "#size", "30cm");
  await says(page, "plan-said", "suitability");
  await until(page, () => document.getElementById("sheet").shadowRoot.textContent.includes("30 cm"));
});

step("what is wanted is split; no skein gives more than it has", async () => {
  await page.evaluate(() => document.getElementById("drawn").shadowRoot.querySelector("[data-want]").click());
  await press(page, "#sample-knitted");
  await press(page, "#split-do");
  await says(page, "split-said", "Split.");
  const list = await said(page, "split-words");
  const cuts = [...list.matchAll(/from ([A-D]): ([\d.]+) m, /g)], given = { A: 139, B: 163, C: 155, D: 78 };
  assert.ok(cuts.length > 1, list);
  for (const skein of "ABCD") assert.ok(cuts.filter(cut => cut[1] === skein).reduce((sum, cut) => sum + Number(cut[2]), 0) <= given[skein] + 1, list);
  assert.ok(await page.evaluate(() => Boolean(document.getElementById("split-bars").shadowRoot.querySelector("svg"))));
});

step("an article is dragged into the basket; a split that is stopped keeps the best so far, and the page answers meanwhile", async () => {
  const wanted = await page.$$eval("#wanted li", items => items.length);
  await page.$eval("#basket", basket => {
    const dataTransfer = new DataTransfer(), event = new Event("drop", { bubbles: true, cancelable: true });
    dataTransfer.setData("text/plain", "watch-cap");
    Object.defineProperty(event, "dataTransfer", { value: dataTransfer });
    basket.dispatchEvent(event);
  });
  assert.equal(await page.$$eval("#wanted li", items => items.length), wanted + 1);
  // At once: on a quick machine the split is soon done.
  const stoppedWhen = words => page.evaluate(words => new Promise(pressed => {
    const told = document.getElementById("split-said");
    const look = () => { if (told.textContent.startsWith(words)) { watch.disconnect(); document.getElementById("split-stop").click(); pressed(); } };
    const watch = new MutationObserver(look);
    watch.observe(told, { childList: true, characterData: true, subtree: true });
    document.getElementById("split-do").click();
    look();
  }), words);
  await stoppedWhen("Looking");
  await says(page, "split-said", "Stopped before anything was found.");
  await stoppedWhen("A first split");
  await says(page, "split-said", "Stopped. This is the best so far.");
  assert.match(await said(page, "split-words"), /Fingerless|Watch cap/);
  assert.equal(await page.$eval("#split-stop", button => button.hidden), true);
  await typed(page, "#wraps", "14wpi");
  await drawn(page, "535 m");
  await typed(page, "#wraps", "13wpi");
  await drawn(page, "535 m");
});

step("skeins that are several yarns: one of them is taken", async () => {
  await typed(page, cell(4, "mass"), "60g");
  await until(page, () => !document.getElementById("which").closest("label").hidden);
  await page.select("#which", "2");
  await drawn(page, "78 m");
  await page.select("#which", "");
  await typed(page, cell(4, "mass"), "21.6g");
  await until(page, () => document.getElementById("which").closest("label").hidden);
  await drawn(page, "535 m");
});

step("the batch is kept, a swatch counted, the project begun and weighed", async () => {
  await press(page, "#keep");
  await says(page, "notebook-said", "Moor is in the notebook");
  await typed(page, "#swatch [name=stitches]", "28/10.3cm");
  await typed(page, "#swatch [name=rows]", "39/10.1cm");
  await press(page, "#swatch button");
  await says(page, "swatch-said", "With 1 swatch Moor now knows");
  await until(page, () => !document.getElementById("learnt").closest("label").hidden);
  await typed(page, "#article", "Mittens");
  await typed(page, "#size", "20cm");
  await says(page, "plan-said", "Mittens");
  await press(page, "#begin");
  await says(page, "weigh-said", "Begun:");
  await until(page, () => !document.getElementById("weigh").hidden);
  await typed(page, "#row", "0");
  await typed(page, "#ball", "148g");
  await press(page, "#weigh button");
  await says(page, "weigh-said", "Begun with 148 g");
  await typed(page, "#row", "20");
  await typed(page, "#ball", "143g");
  await press(page, "#weigh button");
  await says(page, "weigh-said", "the work takes");
});

step("of a work in several pieces the ball is weighed by the piece in work", async () => {
  const pieces = await page.$$eval("#of-piece option", pieces => pieces.map(one => one.value));
  assert.deepEqual(pieces, [1, 2].flatMap(one => ["wrist", "thumb gusset", "hand", "thumb"].map(piece => `${piece} ${one}`)));
  for (const [piece, row, words] of [["hand 2", "20", "Hand 2 has"], ["hand 1", "30", "was some of it ripped back?"], ["thumb 2", "90", "count those of it alone"]]) {
    await page.select("#of-piece", piece);
    await typed(page, "#row", row);
    await typed(page, "#ball", "100g");
    await press(page, "#weigh button");
    await says(page, "weigh-said", words);
  }
});

step("a woven project is begun in its place, and weighed by its length", async () => {
  await typed(page, "#article", "woven scarf");
  await typed(page, "#size", "");
  await until(page, () => document.getElementById("sheet").shadowRoot?.textContent.includes("Plain woven scarf"));
  await press(page, "#begin");
  await says(page, "weigh-said", "Begun: Plain woven scarf");
  assert.match(await said(page, "row-label"), /Woven so far/);
  for (const [place, ball, words] of [["0cm", "60g", "of weft are left"], ["30cm", "50g", "of what was planned"]]) {
    await typed(page, "#row", place);
    await typed(page, "#ball", ball);
    await press(page, "#weigh button");
    await says(page, "weigh-said", words);
  }
});

const example = readFileSync(join(root, "docs/templates.md"), "utf8").match(/```toml\n([^]*?)```/)[1], own = example.replace("Half-circle shawl", "Moon shawl");
const moon = join(folder, "moon-shawl.toml");
step("an article of one's own is brought in as a file, planned, and taken away", async () => {
  for (const [toml, words] of [[own.replace("stocking stitch", "stocking stich"), "did you mean 'stocking stitch'"], [example, "already an article titled 'Half-circle shawl'"]]) {
    writeFileSync(moon, toml);
    await (await page.$("#open")).uploadFile(moon);
    await says(page, "opened-said", words);
  }
  const path = moon;
  writeFileSync(path, own);
  await (await page.$("#open")).uploadFile(path);
  await says(page, "opened-said", "among the articles now");
  await typed(page, "#article", "Moon shawl");
  await says(page, "plan-said", "Moon shawl");
  await says(page, "own-articles", "Moon shawl");
  await press(page, "#own-articles button");
  await until(page, () => document.getElementById("own-articles").hidden);
});

step("a plan that does not reach says what to spin more; without a yarn, what to spin", async () => {
  await typed(page, "#article", "Triangle shawl");
  await typed(page, "#size", "190cm");
  await says(page, "more", "with 10 % lost on the way");
  const other = await pageOpened(browser, url, seen);
  await other.evaluate(() => emptied());
  await typed(other, "#article", "Plain socks");
  await says(other, "spun-drawn", "singles of");
  await other.close();
});

step("skeins that are not alike say so in their own lines, by keyboard", async () => {
  const own = "#rows tbody:nth-of-type(4) [data-own=wraps]";
  await page.focus("#unlike");
  await page.keyboard.press(" ");
  await typed(page, own, "lots");
  await page.focus("#name");
  await until(page, own => document.querySelector(own).getAttribute("aria-invalid"), own);
  await typed(page, own, "18wpi");
  await until(page, () => !document.getElementById("which").closest("label").hidden);
  await typed(page, own, "");
  await until(page, () => document.getElementById("which").closest("label").hidden);
  await drawn(page, "535 m");
});

step("nothing reaches beyond the window at 320 pixels", async () => {
  await page.setViewport({ width: 320, height: 700 });
  assert.deepEqual(await overflowing(page), []);
  assert.ok(await page.evaluate(() => document.documentElement.scrollWidth <= 320));
  await page.setViewport({ width: 1280, height: 900 });
});

step("an independent judge finds nothing, in light and in dark", async () => {
  await page.evaluate(axe);
  for (const value of name === "chromium" ? ["light", "dark"] : ["light"]) {
    if (name === "chromium") await page.emulateMediaFeatures([{ name: "prefers-color-scheme", value }]);
    const found = await page.evaluate(() => window.axe.run(document, { resultTypes: ["violations"] }).then(result => result.violations.map(one => `${one.impact} ${one.id}: ${one.nodes.slice(0, 3).map(node => node.html.slice(0, 160))}`)));
    assert.deepEqual(found, [], value);
  }
});

step("an old browser is told so in a sentence", async () => {
  const other = await browser.newPage();
  await other.evaluateOnNewDocument(() => { delete window.DecompressionStream; });
  await other.goto(url);
  await says(other, "old", "This browser is too old for the page");
  await other.close();
});

step("what a file says of each skein is still said when it is written again", async () => {
  const other = await pageOpened(browser, url, seen);
  const written = await other.evaluate(async () => {
    const skein = own => `[[skein]]\nlength = "100m"\nmass = "40g"\nmeasured = "off the reel"\n${own}\n`;
    await batchOpened("batch.toml", skein('fibre = "BFL"') + skein('colour = ["teal", "grey"]'));
    return batchWritten(new Set(), true).text;
  });
  for (const words of ['measured = "off the reel"', 'fibre = "BFL"', 'colour = ["teal", "grey"]']) assert.ok(written.includes(words), written);
  await other.close();
});

step("two tabs do not overwrite each other", async () => {
  const other = await pageOpened(browser, url, seen);
  await says(other, "batches", "Moor");
  await press(other, "button[data-example=Sedge]");
  await drawn(other, "805 yd");
  await Promise.all([press(other, "#keep"), (async () => { await typed(page, "#name", "Fell"); await press(page, "#keep"); })()]);
  for (const one of [page, other]) for (const batch of ["Moor", "Fell", "Sedge"]) await says(one, "batches", batch);
  await other.close();
});

let notebook, worked;
step("notebook and page are saved to files", async () => {
  await press(page, "#export");
  await says(page, "notebook-said", "whole notebook");
  notebook = join(folder, "notebook.json");
  writeFileSync(notebook, await savedText(page));
  await typed(page, "#name", "Fell </script><img src=x onerror=alert(1)>");
  writeFileSync(moon, own + "# </code></template><img src=x>\n");
  await (await page.$("#open")).uploadFile(moon);
  await says(page, "own-articles", "Moon shawl");
  await press(page, "#save-page");
  await says(page, "notebook-said", "Your own articles are in it");
  worked = join(folder, "fell.html");
  writeFileSync(worked, await savedText(page));
  await press(page, "#own-articles button");
  await until(page, () => document.getElementById("own-articles").hidden);
});

step("what is printed alone is on the paper: cards, cut list, sheet", async () => {
  if (name !== "chromium") return;  // the other browser shows no page as on paper
  await page.emulateMediaType("print");
  await page.evaluate(() => { window.print = () => { const one = document.querySelector(".printed"); window.onPaper = [one.id, one.offsetHeight > 100]; }; });
  for (const [button, id] of [["cards", "cards-drawn"], ["split-print", "split-drawn"], ["sheet-print", "sheet"]]) {
    await press(page, "#" + button);
    await until(page, id => window.onPaper?.[0] === id, id);
    assert.deepEqual(await page.evaluate(() => window.onPaper), [id, true]);
  }
  await page.emulateMediaType(null);
});

step("the page is loaded again: what lay on the table lies there", async () => {
  await typed(page, "#name", "Fell");
  await new Promise(done => setTimeout(done, 1500));
  await page.reload();
  await drawn(page, "535 m");
  assert.equal(await said(page, "title"), "Fell");
});

step("the browser is killed: what was kept is there", async () => {
  await typed(page, "#name", "Tarn");
  await press(page, "#keep");
  await says(page, "notebook-said", "Tarn is in the notebook");
  browser.process().kill("SIGKILL");
  await new Promise(done => setTimeout(done, 500));
  browser = await browserOpened(puppeteer, name, profile);
  page = await pageOpened(browser, url, seen);
  for (const batch of ["Moor", "Fell", "Sedge", "Tarn"]) await says(page, "batches", batch);
});

step("undo takes the last one back", async () => {
  await press(page, "#undo");
  await until(page, () => !document.getElementById("batches").textContent.includes("Tarn"));
});

step("the saved page opens with its batch, names inert; what is changed on it stays with it alone", async () => {
  await page.close();
  page = await pageOpened(browser, pathToFileURL(worked).href, seen);
  await drawn(page, "535 m");
  assert.match(await said(page, "title"), /^Fell <\/script>/);
  assert.equal(await page.$("img"), null);
  await says(page, "own-articles-list", "Moon shawl came with this page");
  await typed(page, "#article", "Moon shawl");
  await says(page, "plan-said", "Moon shawl");
  await (await page.$("#import")).uploadFile(notebook);
  await until(page, () => document.getElementById("notebook-said").textContent);
  assert.doesNotMatch(await said(page, "old"), /wrong/);
  await typed(page, cell(1, "length"), "141m");
  await (await page.$("#open")).uploadFile(worked);
  await until(page, cell => document.querySelector(cell).value === "139m" && document.getElementById("as-came").hidden, cell(1, "length"));
  await typed(page, cell(1, "length"), "140m");
  await until(page, () => !document.getElementById("as-came").hidden);
  await page.reload();
  await drawn(page, "536 m");
  const other = await pageOpened(browser, url, seen);
  assert.doesNotMatch((await other.evaluate(() => batchWritten(new Set(), true).text)), /140m/);
  await other.close();
  await press(page, "#as-came");
  await drawn(page, "535 m");
});

let failed = false;
for (const [words, work] of steps) {
  const since = Date.now();
  try {
    await work();
    console.log(`ok ${((Date.now() - since) / 1000).toFixed(1)} s  ${words}`);
  } catch (thrown) {
    console.log(`FAILED  ${words}\n${thrown.message}\n${thrown.stack?.split("\n").find(line => line.includes("work.mjs"))}`);
    failed = true;
    break;
  }
}
if (seen.length) console.log("SEEN: " + seen.join("\n"));
await browser.close();
rmSync(folder, { recursive: true, force: true });
process.exit(failed || seen.length ? 1 : 0);
