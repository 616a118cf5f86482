"use strict";
// The skeins on the table: typed, pasted or opened; written as a batch file; problems put back at their cells.
const columns = ["name", "length", "mass"], examples = ["A", "139m", "38.5g"];
const fieldKeys = ["name", "fibre", "preparation", "draw", "plies", "wraps", "wraps_how", "micron", "staple", "twist",
  "made", "gauge", "scale", "measured", "colour", "variegated"];
const equipmentKeys = ["needles", "heddles", "loom_width", "shafts", "loom_waste", "fringe"];
const listKeys = ["made", "colour"];  // a list to the program; of the others it reads a list in one text itself

// What a skein may say of its own, where the skeins are not alike.
const ownCells = {wraps: "14wpi", fibre: "BFL", colour: "teal", measured: null};

// Each skein is a body of the table: its line, its own line, what is wrong with it.
const tableRows = () => [...$("rows").tBodies];
const cellsOf = row => columns.map(column => row.querySelector(`[data-column=${column}]`));
const blank = row => cellsOf(row).every(cell => !cell.value.trim());
// Where a file says it in words that are none of the choices they are one choice more.
function filled(field, value) {
  if (value && field.options && ![...field.options].some(one => one.value === value)) field.append(made("option", {value, textContent: value}));
  field.value = value;
}

const ownOf = row => [...row.querySelectorAll("[data-own]")];

function rowAdded(values = {}) {
  const tick = made("input", {type: "checkbox", checked: true, className: "in"});
  const number = tableRows().length + 1;
  tick.setAttribute("aria-label", `skein ${number} is in`);
  const cells = columns.map((column, c) => {
    const cell = made("input", {value: values[column] || "", autocomplete: "off", spellcheck: false, placeholder: number === 1 ? examples[c] : ""});
    cell.dataset.column = column;
    cell.setAttribute("aria-label", `${column} of skein ${number}`);
    return made("td", {}, cell);
  });
  const away = made("button", {type: "button", className: "away", textContent: "×", title: "take this skein off the table"});
  away.setAttribute("aria-label", `take skein ${number} off`);
  away.onclick = () => { away.closest("tbody").remove(); rowsCompleted(); changed(); };
  const own = made("td", {colSpan: 3}, made("div", {}, ...Object.keys(ownCells).map(key => ownCell(key, values[key] || "", number))));
  $("rows").append(made("tbody", {}, made("tr", {}, made("td", {}, tick), ...cells, made("td", {}, away)), made("tr", {className: "own"}, made("td"), own, made("td"))));
}

function ownCell(key, value, number) {
  const cell = key === "measured" ? $("measured").cloneNode(true) : made("input", {placeholder: key + " " + ownCells[key], autocomplete: "off", spellcheck: false});
  if (key === "measured") cell.options[0].text = "length taken alike";
  if (key === "fibre") cell.setAttribute("list", "fibres");
  cell.removeAttribute("id");
  filled(cell, value);
  cell.dataset.own = key;
  cell.setAttribute("aria-label", `${key === "measured" ? "length taken, of" : key + " of"} skein ${number} alone`);
  return cell;
}

// The skeins' own lines are there as long as one of them says something.
function ownShown() {
  const said = tableRows().some(row => ownOf(row).some(cell => cell.value.trim()));
  $("unlike").closest("label").hidden = said;
  if (said) $("unlike").checked = true;
  $("rows").classList.toggle("alike", !$("unlike").checked);
}

// There is always one blank line to type on.
function rowsCompleted() {
  const rows = tableRows();
  if (rows.length < 2 || !blank(rows[rows.length - 1])) rowAdded();
  tableRows().forEach(row => { row.querySelector(".away").hidden = row.querySelector(".in").hidden = blank(row); row.classList.toggle("blank", blank(row)); });
  ownShown();
}

const quoted = words => '"' + words.replace(/[\u0000-\u001f\u007f]/g, " ").replace(/[\\"]/g, "\\$&") + '"';
const listed = words => "[" + words.split(",").map(word => quoted(word.trim())).filter(word => word !== '""').join(", ") + "]";

// The batch as a file of the program's own format, and which input stands in which line.
// `without` are inputs to leave out; a line that is being typed and is not complete is not there yet.
function batchWritten(without = new Set(), all = false) {
  const lines = [], inputs = {};
  const put = (key, input) => {
    const words = input.value.trim();
    if (!words || without.has(input)) return;
    lines.push(`${key} = ${listKeys.includes(key) && words.includes(",") ? listed(words) : quoted(words)}`);
    inputs[lines.length] = input;
  };
  fieldKeys.forEach(key => put(key, $(key)));
  for (const row of tableRows()) if (all ? !blank(row) : lies(row, without)) {
    lines.push("", "[[skein]]");
    columns.forEach((column, c) => {
      const cell = cellsOf(row)[c];
      if (cell.value.trim() || column !== "name") lines.push(`${column} = ${quoted(cell.value.trim())}`), inputs[lines.length] = cell;
    });
    ownOf(row).forEach(cell => put(cell.dataset.own, cell));
  }
  const skeins = lines.includes("[[skein]]");
  lines.push("", "[equipment]");
  equipmentKeys.forEach(key => put(key, $(key)));
  return {text: lines.join("\n") + "\n", inputs, skeins};
}

function lies(row, without) {
  const cells = cellsOf(row), typing = row.contains(document.activeElement);
  if (blank(row) || !row.querySelector(".in").checked || cells.some(cell => without.has(cell))) return false;
  return !(typing && cells.slice(1).some(cell => !cell.value.trim()));
}

const optionInputs = {certainty: "certainty", spare: "spare", size: "size", for: "for", needles: "needle", as: "as", with: "with", "would-be": "beside", reserve: "reserve", from: "sample-from"};

// What the program said is wrong, and at which input.
function problem(error, batch) {
  const words = complaint(error), placed = /^batch\.toml:(\d+): (?:[\w[\]]+(?: \d+ \w+)?: )?([^]*)$/.exec(words);
  if (placed) return {input: batch.inputs[placed[1]], words: placed[2]};
  const option = /^--([\w-]+)(?: [^:]*)?: ([^]*)$/.exec(words);
  if (option && optionInputs[option[1]]) return {input: $(optionInputs[option[1]]), words: option[2]};
  const of = tableRows().find(row => cellsOf(row)[0].value.trim() && words.startsWith(cellsOf(row)[0].value.trim() + ": "));
  return {input: of && cellsOf(of)[1], words};
}

// All problems, not the first alone: what is wrong is left out and the rest is asked again.
async function problems(first, batch, fresh) {
  const found = [first], without = new Set();
  while (found.length < 8 && found.at(-1).input && fresh()) {
    without.add(found.at(-1).input);
    const rest = batchWritten(without);
    if (!rest.skeins) break;
    const {code, err} = await ask(["yarn", "batch.toml", "--json", ...insisted()], {"batch.toml": rest.text});
    if (code === 0) break;
    found.push(problem(err, rest));
    if (without.has(found.at(-1).input)) break;
  }
  return found;
}

// Marks what is wrong within a part of the sheet, and that alone.
function marked(found, part) {
  part.querySelectorAll("[aria-invalid]").forEach(input => { input.removeAttribute("aria-invalid"); input.removeAttribute("aria-describedby"); });
  part.querySelectorAll(".wrong").forEach(note => note.remove());
  found.forEach(({input, words}, number) => {
    if (!input) return;
    const note = made("p", {className: "wrong", id: `wrong-${part.id}-${number}`, textContent: plain(unbroken(words))});
    input.setAttribute("aria-invalid", "true");
    input.setAttribute("aria-describedby", note.id);
    const row = input.closest("tbody tr");
    if (row) row.parentElement.append(made("tr", {className: "wrong"}, made("td", {colSpan: 5}, note)));
    else input.closest("label").after(note);
  });
  if (part.id !== "skeins") return;
  const asks = found.some(({words}) => words.includes("--insist"));
  $("insist").closest("label").hidden = !asks && !$("insist").checked;
}

const insisted = () => $("insist").checked ? ["--insist"] : [];

// A batch laid out on the table, from what the program exports.
function laidOut(batch) {
  tableRows().forEach(row => row.remove());
  $("unlike").checked = false;
  [...fieldKeys, ...equipmentKeys].forEach(key => filled($(key), (batch.fields[key] || []).map(one => one.text).join(", ")));
  $("name").value = batch.name;
  skeinsAdded(batch.skeins);
}

function skeinsAdded(skeins) {
  tableRows().filter(blank).forEach(row => row.remove());
  for (const skein of skeins) {
    const own = Object.entries(skein.own || {}).map(([key, texts]) => [key, texts.map(one => one.text).join(", ")]);
    rowAdded(Object.fromEntries([...columns, "measured"].map(key => [key, skein[key]?.text || ""]).concat(own)));
  }
  rowsCompleted();
}

// Any file of skeins, or cells of a spreadsheet, as the program reads them.
async function batchRead(name, content) {
  const given = {[name]: content}, apart = ["--notebook", "/tmp/read.sqlite"];
  await quick.write(apart[1], null);
  const {code, err} = await ask(["batch", "add", "batch", name, "--insist", ...apart], given);
  if (code !== 0) throw new Error(complaint(err));
  const {out} = await ask(["export", ...apart]), said = await ask(["yarn", name, "--json", "--insist"], given);
  return {...JSON.parse(out).batches[0], name: JSON.parse(said.out).batch.name};
}

async function batchOpened(name, content) {
  try {
    laidOut(await batchRead(name, content));
    say("opened-said", "");
  } catch (thrown) {
    if (thrown instanceof Stopped) return;
    say("opened-said", plain(thrown.message));
  }
  changed();
}

// Cells of a spreadsheet: the program reads them; what it cannot is laid out as it stands and judged there.
async function pasted(event) {
  const words = event.clipboardData.getData("text/plain"), cell = event.target;
  if (!/[\t\n]/.test(words.trim()) || !cell.dataset.column) return;
  event.preventDefault();
  try {
    skeinsAdded((await batchRead("pasted.tsv", words.trim() + "\n")).skeins);
  } catch {
    const from = columns.indexOf(cell.dataset.column), lines = words.trim().split(/\r?\n/);
    skeinsAdded(lines.map(line => {
      const skein = {};
      line.split("\t").forEach((value, v) => { if (columns[from + v]) skein[columns[from + v]] = {text: value.trim()}; });
      return skein;
    }));
  }
  changed();
}

function emptied() {
  laidOut({name: "", fields: {}, skeins: []});
  changed();
  $("name").focus();
}

function skeinsReady() {
  rowsCompleted();
  $("rows").addEventListener("paste", pasted);
  $("skeins").addEventListener("input", () => { rowsCompleted(); changed(); });
  $("skeins").addEventListener("focusout", event => { if (event.target.closest("tbody") && event.relatedTarget?.closest?.("tbody") !== event.target.closest("tbody")) changed(); });
  $("clear").onclick = emptied;
  $("rows").addEventListener("keydown", event => {
    if (event.key !== "Enter" || !event.target.dataset.column) return;
    event.preventDefault();
    const rows = tableRows(), next = rows[rows.indexOf(event.target.closest("tbody")) + 1];
    next?.querySelector(`[data-column=${event.target.dataset.column}]`).focus();
  });
}
