"use strict";
// The program's plain text as a document. It breaks no lines here: a line is a sentence or an item of a list.

// A number stays with its unit.
const unbroken = words => words.replace(/(\d) (?=(?:m|cm|mm|g|kg|yd|oz|lb|in|ft|st|%|tex|rows|stitches)\b|%)/g, "$1\u00a0");

// Where the program names a command, the page has a button or a list.
const plain = words => words.replace("(--insist takes it as it is)", "If it is so, tick 'the measures are right' beside the answer.")
  .replace(/\(--yarn takes another, or all\)/, "").replace("gristwright help fibres lists it", "the list at the field has them").replace(/gristwright undo/g, "Undo").replace(/;? see gristwright templates/, "")
  .replace("there is no template '", "there is no article '").replace(" The titles do as well, in quotes", "")
  .replace(/, and say it where another is in work: --row '[^']*'/, ", and choose the piece that is in work");
const flowing = words => plain(unbroken(words.replace(/^ +/gm, ""))).trim();

// What stands beside the skeins already is not said again.
const newly = words => complaint(words).split("\n").filter(line => !$("skeins-said").textContent.includes(flowing(line))).join("\n");

// Headings, lists, bars and paragraphs of an answer.
function worded(words) {
  const blocks = words.replace(/^Next: .*/m, "").trim().split(/\n{2,}/);
  return blocks.flatMap((block, number) => {
    const lines = block.split("\n"), rest = lines.slice(1);
    const headed = number > 0 && rest.length && rest.every(line => line.startsWith("  ")) && !/: |[.:]$/.test(lines[0]);
    return [...headed ? [made("h3", {textContent: lines[0]})] : [], ...bodied(headed ? rest : lines)];
  });
}

function bodied(lines) {
  const bars = lines.map(line => /^\s*(.+?) {2,}(=*) *(\S.*)$/.exec(line));
  if (bars.every(Boolean) && bars.some(([, , bar]) => bar)) return [barred(bars)];
  const mark = /^(?:- |\d+\. )/, out = [];
  const depth = line => line.search(/\S/), least = Math.min(...lines.filter(line => line.trim()).map(depth));
  for (const line of lines.filter(line => line.trim())) {
    const words = plain(unbroken(line.trim())), kind = !mark.test(words) ? "P" : words.startsWith("- ") ? "UL" : "OL";
    if (kind === "P" && depth(line) > least && out.at(-1)?.tagName === "P") { out.at(-1).append(made("br"), words); continue; }
    if (kind === "P") { out.push(made("p", {textContent: words})); continue; }
    if (out.at(-1)?.tagName !== kind) out.push(made(kind));
    out.at(-1).append(made("li", {textContent: words.replace(mark, "")}));
  }
  return out;
}

function barred(bars) {
  const most = Math.max(...bars.map(([, , bar]) => bar.length));
  return made("table", {className: "bars"}, made("tbody", {}, ...bars.map(([, label, bar, value]) => {
    const drawn = made("span", {className: "bar"});
    drawn.style.width = bar.length / most * 100 + "%";
    return made("tr", {}, made("th", {scope: "row", textContent: unbroken(label)}), made("td", {className: "length"}, drawn), made("td", {textContent: unbroken(value)}));
  })));
}
