"use strict";
// One article in full: the plan in words, its cloth, the sheet to hang over the loom; begun, and weighed as it goes.
function planChosen(name) {
  $("article").value = articles.find(one => one.name === name).title;
  $("size").value = $("for").value = "";
  later("plan", 0, planAsked);
  $("plan").scrollIntoView({block: "start"});
  $("article").focus({preventScroll: true});
}

const articleFields = ["size", "for", "needle", "as", "with"];

function articleWords(article, fields = articleFields) {
  const said = fields.filter(id => $(id).value.trim());
  return [article.name, ...said.flatMap(id => [id === "needle" ? "--needles" : "--" + id, $(id).value.trim()])];
}

async function planAsked(fresh) {
  const article = articleNamed($("article").value), batch = batchAsked();
  if (!$("article").value.trim()) return;
  $("spun").hidden = !article;
  if (article) spunKnown(article);
  if (!article) return planRefused(await nameless($("article").value));
  if (!batch.skeins) {
    $("spun").open = true;
    return planRefused("Put the skeins on the table to plan it; what to spin for it stands below.");
  }
  const words = articleWords(article);
  const {code, out, err} = await ask(["plan", ...words, ...batch.words, ...wishes()], batch.files);
  if (!fresh()) return;
  const refused = code === 0 ? null : problem(err, batch);
  marked(refused?.input ? [refused] : [], $("article-asked"));
  if (refused) return planRefused(refused.input ? "" : refused.words);
  const parts = worded(out), verdict = parts.find(part => part.textContent.startsWith(article.title)) || parts[0];
  say("plan-said", verdict.textContent);
  $("plan-drawn").replaceChildren(...parts.filter(part => part !== verdict));
  moreAsked(fresh, article, batch).catch(failed);
  whyKnown(["plan", ...words, ...batch.words, ...wishes()], batch.files);
  const {files} = await ask(["sheet", ...words, ...batch.words, ...wishes(), "-o", "sheet.html"], batch.files);
  if (!fresh() || !files["sheet.html"]) return;
  $("cloth-fold").hidden = false;
  $("cloth-fold").ontoggle = () => { if ($("cloth-fold").open) later("cloth", 0, fresh => clothAsked(fresh, article, batch)); };
  $("cloth-fold").ontoggle();
  sheetText = text.decode(files["sheet.html"]);
  shown($("sheet"), sheetText, undefined, sheetLooks);
  $("sheet-buttons").hidden = false;
}

let sheetText = "";
const sheetLooks = `figure { flex-shrink: 1; } figure, figure svg { max-width: 100%; }
@media screen and (max-width: 50rem) { .top { display: block; } figure { margin: 0 0 1rem; } }`;

// What is missing for the size wished, or the ideal one.
async function moreAsked(fresh, article, batch) {
  const said = id => $(id).value.trim(), words = ["spin-more", ...articleWords(article, ["size", "needle"]), ...batch.words, ...wishes()];
  say("more", "");
  if (["for", "as", "with"].some(said)) return;
  const {code, out} = await ask([...words, "--json"], batch.files);
  if (code !== 0 || JSON.parse(out).metres_more <= 0 || !fresh()) return;
  const {out: told} = await ask(words, batch.files);
  if (fresh()) say("more", "To spin more: " + flowing(told));
}

// How a yarn is spun for an article, whether or not there is one yet; asked when the fold is open.
function spunKnown(article) {
  const spun = $("spun"), size = $("size").value.trim();
  $("spun-title").textContent = "How to spin a yarn for it: " + article.title;
  spun.ontoggle = () => { if (spun.open) later("spun", 0, fresh => spunAsked(fresh, ["spin-for", article.name, ...size ? ["--size", size] : [], ...unitsAsked()])); };
  spun.ontoggle();
}

async function spunAsked(fresh, words) {
  const {code, out, err} = await ask(words);
  if (fresh()) $("spun-drawn").replaceChildren(...code === 0 ? worded(out) : [made("p", {textContent: plain(complaint(err))})]);
}

// Every factor of the suitability, and what speaks against it; asked when the fold is open.
function whyKnown(words, files) {
  const why = $("why");
  why.hidden = false;
  why.ontoggle = () => { if (why.open) later("why", 0, fresh => whyAsked(fresh, words, files)); };
  why.ontoggle();
}

async function whyAsked(fresh, words, files) {
  const below = out => out.split("\n").slice(1).filter(line => line.trim());
  const factors = below((await ask([...words, "--why"], files)).out.split(/\n{2,}/).find(block => block.startsWith("Why, ")) || "");
  const against = below((await ask([...words, "--why-not"], files)).out);
  const part = (title, lines) => lines.length ? [made("h3", {textContent: title}), ...bodied(lines)] : [];
  if (fresh()) $("why-drawn").replaceChildren(...part("Factor by factor", factors), ...part("What speaks against it", against));
}

async function clothAsked(fresh, article, batch) {
  const {files} = await long.ask(["picture", "cloth", ...articleWords(article, ["needle", "as", "with"]), ...batch.words, ...wishes(), "-o", "cloth.svg"], batch.files);
  if (fresh() && files["cloth.svg"]) shown($("cloth"), text.decode(files["cloth.svg"]), undefined, ".body svg { max-width: 100%; height: auto; }");
}

function planRefused(words) {
  say("plan-said", words);
  $("plan-drawn").replaceChildren();
  $("sheet").shadowRoot?.replaceChildren();
  $("sheet-buttons").hidden = $("cloth-fold").hidden = $("why").hidden = true;
  say("more", "");
}

async function begun() {
  const article = articleNamed($("article").value);
  if (!kept.name && !await keptNow()) return say("plan-said", "To begin it, the batch must be in the notebook: give it a name that is free.");
  if ($("needle").value.trim()) return say("plan-said", "A needle tried here is not kept with the project: put it among your needles, and clear the field.");
  const words = ["start", ...articleWords(article), kept.name, "--certainty", $("certainty").value, ...whichAsked(), "--on", today()];
  let answer = await changing(words);
  if (answer.code !== 0 && answer.err.includes("--instead") && confirm(flowing(complaint(answer.err)) + "\n\nEnd that one, with its weighings?")) answer = await changing([...words, "--instead"]);
  await keptKnown();
  const told = answer.out.replace(/:? gristwright weigh .*/, ", here.");
  say("weigh-said", flowing(newly(answer.err) + "\n" + told));
  if (answer.code !== 0) say("plan-said", flowing(complaint(answer.err)));
}

async function weighed(event) {
  event.preventDefault();
  const woven = kept.woven, several = $("of-piece").options.length > 1;
  const place = $("row").value.trim() + (several ? " of " + $("of-piece").value : "");
  const {out, err} = await changing(["weigh", kept.name, woven ? "--woven" : "--row", place, "--ball", $("ball").value.trim(), "--on", today()]);
  await keptKnown();
  say("weigh-said", flowing(newly(err) + "\n" + out));
}

const today = () => new Date().toLocaleDateString("sv");

function planReady() {
  $("article-asked").addEventListener("input", () => later("plan", 400, planAsked));
  $("article-asked").addEventListener("submit", event => event.preventDefault());
  $("sheet-print").onclick = () => printed($("sheet"));
  $("sheet-save").onclick = () => saved(articleNamed($("article").value).name + ".html", sheetText, "text/html");
  $("begin").onclick = () => begun().catch(failed);
  $("weigh").onsubmit = event => weighed(event).catch(failed);
}
