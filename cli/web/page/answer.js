"use strict";
// What the skeins make: the quick words at once, then the drawn answer, as the program writes both.
let asked = "", answered = "", articles = [];

// How everything is asked: of the remembered batch while the table is as it was kept, else of the table.
function batchAsked() {
  const batch = batchWritten();
  const known = kept.name && $("learnt").checked && batch.text === kept.text;
  return {...batch, words: known ? [kept.name] : ["batch.toml", ...insisted()], files: known ? {} : {"batch.toml": batch.text}};
}

function wishes() {
  const words = ["--certainty", $("certainty").value], spare = $("spare").value.trim(), units = $("units").value;
  if (spare) words.push("--spare", spare);
  if (units) words.push("--units", units);
  return [...words, ...whichAsked()];
}

const unitsAsked = () => $("units").value ? ["--units", $("units").value] : [];
const besideAsked = () => !$("beside").value ? [] : $("beside").selectedOptions[0].dataset.kept ? [$("beside").value] : ["--would-be", $("beside").value];

// Another batch of the notebook can lie beside this one.
function besideListed(names) {
  const before = $("beside").value;
  $("beside").querySelectorAll("[data-kept]").forEach(one => one.remove());
  for (const value of names) {
    const one = made("option", {value, textContent: value});
    one.dataset.kept = "yes";
    $("beside").append(one);
  }
  $("beside").value = before;
  if ($("beside").selectedIndex < 0) $("beside").value = "";
}

async function posterSaved() {
  const batch = batchAsked();
  const {files, err} = await ask(["picture", "lineup", ...batch.words, ...wishes(), "-o", "poster.svg"], batch.files);
  if (files["poster.svg"]) saved(($("name").value.trim() || "yarn").replace(/[^\p{L}\p{N} _-]/gu, "") + ".svg", files["poster.svg"], "image/svg+xml");
  else say("skeins-said", flowing(complaint(err)));
}
const whichAsked = () => $("which").value ? ["--yarn", $("which").value] : [];

// Where the skeins are several yarns one is chosen.
function severalShown(words) {
  const several = Number(/The skeins are (\d+) yarns/.exec(words)?.[1] || 0), label = $("which").closest("label");
  if (!several && $("which").value) return;
  label.hidden = !several;
  const values = several ? [...Array(several).keys()].map(number => String(number + 1)) : [];
  if ($("which").options.length === values.length + 1) return;
  $("which").replaceChildren($("which").options[0], ...values.map(value => made("option", {value, textContent: "yarn " + value})));
}

// Spoken once by a screen reader, when an answer is whole.
function heard(words) {
  if ($("heard").textContent !== words) $("heard").textContent = words;
}

// Called after every change of the table or of the wishes.
function changed() {
  $("sure-said").textContent = $("certainty").value + "\u00a0%";
  $("certainty").setAttribute("aria-valuetext", $("certainty").value + " %");
  $("title").textContent = $("name").value.trim() || "What can your yarn make?";
  $("examples").hidden = !tableRows().every(blank);
  keptShown();
  later("quick", 250, quickAsked);
  later("draft", 1000, draftKept);
}

async function quickAsked(fresh) {
  const batch = batchAsked();
  if (!batch.skeins) return nothingYet();
  const {code, out, err} = await ask(["makes", ...batch.words, ...wishes()], batch.files);
  if (!fresh()) return;
  if (code !== 0) return wrong(await problems(problem(err, batch), batch, fresh), fresh);
  marked([], $("skeins"));
  marked([], $("asked"));
  severalShown(out.replace(/\n/g, " "));
  say("skeins-said", flowing(complaint(err)));
  const key = JSON.stringify([batch.words, batch.files, wishes(), $("craft").value, $("beside").value, kept.revision]);
  if (key === asked) {  // what was asked in between is not wanted any more
    notDrawn();
    return say("quick", answered);
  }
  say("quick", flowing(out.split("\n\n")[0]));
  $("drawn").setAttribute("aria-busy", "true");
  later("drawn", 200, still => drawnAsked(still, batch, key));
  if ($("article").value) later("plan", 500, planAsked);
  if ($("ideas").value.trim()) later("ideas", 500, ideasAsked);
}

// An answer that is still being drawn is not waited for.
function notDrawn() {
  later("drawn", 0, () => $("drawn").setAttribute("aria-busy", "false"));
}

function nothingYet() {
  notDrawn();
  marked([], $("skeins"));
  asked = "";
  say("skeins-said", "");
  say("quick", "Type two skeins, or one, with their length and mass. The answer comes as you type.");
  $("drawn").shadowRoot?.replaceChildren();
  $("poster-buttons").hidden = true;
}

function wrong(found, fresh) {
  if (!fresh()) return;
  notDrawn();
  const wished = found.filter(({input}) => input?.closest("#asked"));
  marked(wished, $("asked"));
  marked(found.filter(one => !wished.includes(one)), $("skeins"));
  const loose = found.filter(({input}) => !input).map(({words}) => words);
  say("skeins-said", loose.map(plain).join(" "));
  say("quick", found.length === 1 ? "One measure cannot be read; it is marked at its place." : found.length + " measures cannot be read; they are marked at their places.");
  if (loose.length === found.length) say("quick", "");
  heard(found[0].words);
}

async function drawnAsked(fresh, batch, key) {
  const craft = $("craft").value;
  const {code, err, files} = await long.ask(["page", ...batch.words, ...wishes(), ...besideAsked(), "-o", "page.html"], batch.files);
  if (!fresh()) return;
  $("drawn").setAttribute("aria-busy", "false");
  if (code !== 0) return wrong([problem(err, batch)], fresh);
  asked = key;
  $("poster-buttons").hidden = false;
  shown($("drawn"), text.decode(files["page.html"]), drawn => {
    answered = unbroken(drawn.querySelector(".said")?.textContent || "");
    arranged(drawn, craft);
  }, pageLooks);
  const root = $("drawn").shadowRoot;
  root.querySelectorAll("[data-plan]").forEach(button => { button.onclick = () => planChosen(button.dataset.plan); });
  root.querySelectorAll("[data-want]").forEach(button => { button.onclick = () => wantedAdded(button.dataset.want); });
  root.querySelectorAll("[draggable]").forEach(one => {
    one.ondragstart = event => { event.dataTransfer.setData("text/plain", one.dataset.article); setTimeout(() => document.body.classList.add("dragging")); };
    one.ondragend = () => document.body.classList.remove("dragging");
  });
  say("quick", answered);
  heard(answered);
}

const pageLooks = `
.body .main { padding: 0; max-width: none; } .body section { margin-top: 1.6rem; } summary h2 { display: inline; background: none; font-size: 1.2rem; }
details > summary { font-weight: 600; } details > section { margin-top: 0; } details:not(.rest) > .made caption { position: absolute; left: -99rem; }
.lineup { flex-wrap: nowrap !important; overflow-x: auto; padding: .3rem 0 .8rem !important; } .lineup li { flex: none; } .lineup li:first-child { position: sticky; left: 0; background: var(--paper); }
button { font: inherit; font-size: .9rem; color: inherit; background: none; border: 1px solid currentcolor; border-radius: 2px; padding: .15rem .6rem; margin: .2rem .4rem .2rem 0; cursor: pointer; min-height: 1.9rem; }
button:hover, button:focus-visible { background: var(--tint); } [draggable] { cursor: grab; }
@media print { details:not([open]) { display: none; } summary { break-after: avoid; } .lineup { flex-wrap: wrap !important; overflow: visible; } button { display: none; } }`;

// The page of the program on this sheet: its own head goes, what is long is folded, and articles can be taken.
function arranged(drawn, craft) {
  drawn.querySelectorAll("header, footer, .tosheet").forEach(one => one.remove());
  drawn.querySelectorAll(".quiet code").forEach(one => { one.parentElement.textContent = one.parentElement.textContent.split(";")[0]; });
  const two = drawn.getElementById("two")?.closest("section");
  if (two) drawn.querySelector("main").prepend(two);
  if (craft) drawn.querySelectorAll(".plan, .made tbody tr").forEach(one => { if (one.querySelector(".craft")?.textContent !== craft) one.remove(); });
  for (const id of ["both", "kept", "yarn", "mind", "ground"]) folded(drawn, drawn.getElementById(id)?.closest("section"), drawn.getElementById(id), id);
  drawn.querySelectorAll(".made").forEach(table => { if (!table.closest("details")) folded(drawn, table, table.caption.textContent); });
  drawn.querySelectorAll(".plan h3, .made tbody th").forEach(head => {
    const title = head.firstChild.textContent.trim(), article = articles.find(one => one.title === title);
    if (!article) return;
    const plan = made("button", {type: "button", textContent: "plan it"}), want = made("button", {type: "button", textContent: "want it"});
    plan.dataset.plan = want.dataset.want = article.name;
    plan.setAttribute("aria-label", "plan it: " + title);
    want.setAttribute("aria-label", "want it: " + title);
    const whole = head.closest(".plan, tr");
    whole.draggable = true;
    whole.dataset.article = article.name;
    (head.closest("tr") ? head : whole).append(made("div", {}, plan, want));
  });
}

function folded(drawn, part, title, id = "") {
  if (!part) return;
  const fold = drawn.createElement("details"), summary = drawn.createElement("summary");
  fold.dataset.of = id;
  part.before(fold);
  summary.append(title);
  fold.append(summary, part);
}

// An article by its title or its name, with blanks or hyphens.
const articleNamed = words => {
  const wished = words.trim().toLowerCase();
  return articles.find(one => one.title.toLowerCase() === wished || one.name === wished.replace(/ +/g, "-"));
};

// What the program says of a name that it does not know.
const nameless = async words => plain(complaint((await ask(["templates", "show", words.trim()])).err)) || `Which of the articles is '${words.trim()}'? The list at the field has them.`;

async function articlesListed() {
  const {out} = await ask(["templates", "--json"]);
  articles = JSON.parse(out).templates;
  $("articles").replaceChildren(...articles.map(one => made("option", {value: one.title, label: one.craft})));
}

// The choices that the program's tables have.
async function choicesListed() {
  $("beside").closest("label").hidden = !(await ask(["page", "--help"])).out.includes("--would-be");
  const names = (topic, pattern) => ask(["help", topic]).then(({out: words}) => [...words.matchAll(pattern)].map(found => made("option", {value: found[1].trim()})));
  $("fibres").replaceChildren(...await names("fibres", /^ {2}(\S.*?) +(?:[\d.]+ to [\d.]+ micron|fineness not stated)$/gm));
  $("fabrics").replaceChildren(...await names("fabrics", /^ {2}(\S.*?) {2,}x \d/gm));
}

// On paper nothing can be unfolded: what one must mind and what the yarn is lie open there.
function unfoldedForPaper(printing) {
  $("drawn").shadowRoot?.querySelectorAll("[data-of=mind], [data-of=yarn]").forEach(fold => {
    if (printing && !fold.open) fold.dataset.shut = "yes";
    if (printing || fold.dataset.shut) fold.open = printing;
    if (!printing) delete fold.dataset.shut;
  });
}

function answerReady() {
  addEventListener("beforeprint", () => unfoldedForPaper(true));
  addEventListener("afterprint", () => unfoldedForPaper(false));

  $("poster").onclick = () => posterSaved().catch(failed);
  $("asked").addEventListener("input", changed);
  $("asked").addEventListener("submit", event => event.preventDefault());
}
