"use strict";
// The program's plain text as a document: it breaks its lines for a terminal, a sheet breaks its own.
const lineLength = 79;

const begins = /^\s*(?:- |\d+\. |[\d.]+ (?:m|yd) \()/;  // an item of a list; a piece's metres with their range

// Lines that are one sentence again: a line was broken where the next word would not have fitted.
function unwrapped(lines) {
  const items = [];
  lines.forEach((line, number) => {
    if (!line.trim()) return;
    const before = lines[number - 1], word = /^\S*\d\S* \S+|^\S+/.exec(line.trim())[0];
    const goesOn = items.length && /^\s*/.exec(line)[0].length >= /^\s*/.exec(before)[0].length &&
      before.length <= lineLength && before.length + 1 + word.length > lineLength && !begins.test(line);
    if (goesOn) items.push(items.pop() + " " + line.trim());
    else items.push(line.trim());
  });
  return items.filter(Boolean);
}

// A number stays with its unit.
const unbroken = words => words.replace(/(\d) (?=(?:m|cm|mm|g|kg|yd|oz|lb|in|ft|st|%|tex|rows|stitches)\b|%)/g, "$1\u00a0");

// Where the program names a command, the page has a button or a list.
const plain = words => words.replace("(--insist takes it as it is)", "If it is so, tick 'the measures are right' beside the answer.")
  .replace(/\(--yarn takes another, or all\)/, "").replace("gristwright help fibres lists it", "the list at the field has them").replace(/gristwright undo/g, "Undo");
const flowing = words => plain(unbroken(unwrapped(words.split("\n")).join("\n")));

// Headings, lists, bars and paragraphs of an answer.
function worded(words) {
  const blocks = words.replace(/^Next: .*(?:\n +.*)*/m, "").trim().split(/\n{2,}/);
  return blocks.flatMap((block, number) => {
    const lines = block.split("\n"), rest = lines.slice(1);
    const headed = number > 0 && rest.length && rest.every(line => line.startsWith("  ")) && !/: |[.:]$/.test(lines[0]);
    return [...headed ? [made("h3", {textContent: lines[0]})] : [], ...bodied(headed ? rest : lines)];
  });
}

function bodied(lines) {
  const bars = lines.map(line => /^\s*(.+?) {2,}(=+) +(.+)$/.exec(line));
  if (bars.every(Boolean)) return [barred(bars)];
  const items = unwrapped(lines).map(unbroken), mark = /^(?:- |\d+\. )/;
  const out = [];
  for (const words of items) {
    const kind = !mark.test(words) ? "P" : words.startsWith("- ") ? "UL" : "OL";
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
