"use strict";
// People's suggestions: typed one a line, pasted or opened; ranked, each with its reply; and before an audience.
let replies = [], refused = [], ideasFile = null;

// As a sheet for the program: a spreadsheet as it is, lines as a sheet of one column.
function ideasSheet() {
  const words = $("ideas").value.trim();
  if (!words) return null;
  if (words.includes("\t")) return {"ideas.tsv": words + "\n"};
  if (/^[^\n]*\b(idea|suggestion|project)s?\b[^\n]*[,;]/i.test(words)) return {"ideas.csv": words + "\n"};
  return {"ideas.csv": "idea\n" + words.split("\n").filter(line => line.trim()).map(line => '"' + line.trim().replace(/"/g, '""') + '"').join("\n") + "\n"};
}

async function ideasAsked(fresh) {
  const sheet = ideasSheet(), batch = batchAsked();
  replies = [];
  refused = [];
  if (!sheet || !batch.skeins) {
    say("ideas-said", sheet ? "Put the skeins on the table first: the answers stand on them." : "");
    return repliesShown();
  }
  const {out, err} = await long.ask(["answer", ...batch.words, Object.keys(sheet)[0], ...wishes(), "--json"], {...batch.files, ...sheet});
  if (!fresh()) return;
  if (!out) { say("ideas-said", complaint(err)); return repliesShown(); }
  const answer = JSON.parse(out);
  replies = answer.answers;
  const many = answer.rows === 1 ? "One suggestion." : `${answer.rows} suggestions, ${replies.length} of them different.`;
  refused = answer.refused;
  const unread = answer.left_out.map(cell => `row ${cell.row}: ${cell.why}; answered without it`);
  say("ideas-said", unread.length ? many + " Not read: " + unread.join("\n") : many);
  repliesShown();
}

const verdict = one => one.answered ? `${one.serves}; ${one.reach}` : "asked back";
const replyOf = one => one.answered ? one.reply : one.ask;

function repliesShown() {
  $("ideas-save").disabled = $("show").disabled = !replies.length;
  if (!replies.length && !refused.length) return $("replies").replaceChildren();
  const head = made("tr", {}, ...["Suits", "Suggestion", "Answer"].map(words => made("th", {scope: "col", textContent: words})));
  const table = made("table", {className: "replies"}, made("caption", {textContent: "First what the yarn reaches for, then what it falls short of; each by how well it suits, of 100"}), made("thead", {}, head), made("tbody", {}, ...replies.map(replyRow), ...refused.map(refusedRow)));
  $("replies").replaceChildren(table);
}

function replyRow(one) {
  const copy = made("button", {type: "button", textContent: "copy the reply"});
  copy.setAttribute("aria-label", "copy the reply: " + one.idea);
  copy.onclick = () => copied(copy, replyOf(one));
  const buttons = made("p", {className: "buttons"}, copy);
  if (one.template) {
    const plan = made("button", {type: "button", textContent: "plan it"});
    plan.setAttribute("aria-label", "plan it: " + one.idea);
    plan.onclick = () => planChosen(one.template);
    buttons.append(" ", plan);
  }
  const times = one.times > 1 ? `, ${one.times} times` : "";
  return made("tr", {},
    made("td", {className: "score", textContent: one.answered ? Math.round(one.suitability) : "?"}),
    made("th", {scope: "row", textContent: one.idea + times}),
    made("td", {}, made("b", {textContent: verdict(one)}), made("p", {textContent: replyOf(one)}), buttons));
}

// Who gets no answer still has a line.
function refusedRow(row) {
  const idea = row.idea || `row ${row.row}`;
  return made("tr", {},
    made("td", {className: "score", textContent: "?"}),
    made("th", {scope: "row", textContent: row.from ? `${idea}, from ${row.from}` : idea}),
    made("td", {textContent: "could not be read: " + row.why}));
}

async function copied(button, words) {
  try {
    await navigator.clipboard.writeText(words);
  } catch {
    const area = made("textarea", {value: words});
    button.after(area);
    area.select();
    document.execCommand("copy");
    area.remove();
    button.focus();
  }
  button.textContent = "copied";
  setTimeout(() => { button.textContent = "copy the reply"; }, 2000);
}

async function ideasSaved() {
  const sheet = ideasSheet(), batch = batchAsked();
  const {files, err} = await long.ask(["answer", ...batch.words, Object.keys(sheet)[0], ...wishes(), "--out", "answers.csv"], {...batch.files, ...sheet});
  if (files["answers.csv"]) saved("answers.csv", files["answers.csv"], "text/csv");
  else say("ideas-said", complaint(err));
}

const largeLooks = `
.top { gap: 3vw; } figure { flex: 0 0 22vw; } figure svg { width: 22vw; max-height: 38vh; }
.five dd { font-size: 2.2vw; } .five dt { font-size: max(1rem, 1.2vw); }
@media (max-width: 50rem) { .top { flex-wrap: wrap; } }`;

// Before an audience: the ranked list in large letters, one answer open, moved by keys alone.
let at = 0;

function audienceOpened() {
  at = 0;
  $("audience").hidden = false;
  document.body.classList.add("before-audience");
  audienceShown();
  $("audience").focus();
  document.documentElement.requestFullscreen?.().catch(() => {});
}

function audienceClosed() {
  $("audience").hidden = true;
  document.body.classList.remove("before-audience");
  if (document.fullscreenElement) document.exitFullscreen();
  $("show").focus();
}

function audienceShown() {
  const first = Math.max(0, Math.min(at - 3, replies.length - 8)), one = replies[at];
  $("audience-title").textContent = ($("name").value.trim() || "This yarn") + ": your suggestions";
  $("audience-list").start = first + 1;
  $("audience-list").replaceChildren(...replies.slice(first, first + 8).map((each, e) => {
    const item = made("li", {}, made("b", {textContent: each.answered ? Math.round(each.suitability) : "?"}), " ", made("span", {textContent: each.idea}), made("i", {textContent: each.answered ? each.reach : "asked back"}));
    if (first + e === at) item.setAttribute("aria-current", "true");
    return item;
  }));
  $("audience-open").replaceChildren(made("h3", {textContent: one.idea}), made("p", {className: "verdict", textContent: verdict(one)}), made("p", {textContent: replyOf(one)}));
  $("audience-picture").hidden = true;
  later("audience", 200, fresh => audiencePictured(fresh, one));
}

async function audiencePictured(fresh, one) {
  if (!one.template) return;
  const batch = batchAsked();
  const {files} = await ask(["sheet", one.template, ...batch.words, ...wishes(), "-o", "sheet.html"], batch.files);
  if (!fresh() || !files["sheet.html"]) return;
  $("audience-picture").hidden = false;
  shown($("audience-picture"), text.decode(files["sheet.html"]), drawn => drawn.body.replaceChildren(drawn.querySelector(".top")), largeLooks);
}

function audienceKey(event) {
  const to = {ArrowDown: at + 1, ArrowRight: at + 1, PageDown: at + 1, " ": at + 1, ArrowUp: at - 1, ArrowLeft: at - 1, PageUp: at - 1, Home: 0, End: replies.length - 1}[event.key];
  if (event.key === "Escape") audienceClosed();
  if (event.key === "Tab") event.preventDefault();
  if (to === undefined) return;
  event.preventDefault();
  at = Math.max(0, Math.min(replies.length - 1, to));
  audienceShown();
}

function suggestionsReady() {
  const anew = () => { later("ideas", 400, ideasAsked); later("draft", 1000, draftKept); };
  const fromFile = async file => { $("ideas").value = await file.text(); anew(); };
  $("ideas").addEventListener("input", anew);
  $("ideas-file").onchange = event => { if (event.target.files[0]) fromFile(event.target.files[0]); event.target.value = ""; };
  $("suggested").addEventListener("drop", event => { const file = event.dataTransfer.files[0]; if (file) { event.preventDefault(); event.stopPropagation(); fromFile(file); } });
  $("ideas-save").onclick = ideasSaved;
  $("show").onclick = audienceOpened;
  $("audience").onkeydown = audienceKey;
  // In full screen the browser takes Escape for itself.
  document.addEventListener("fullscreenchange", () => { if (!document.fullscreenElement && !$("audience").hidden) audienceClosed(); });
}
