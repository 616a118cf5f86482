"use strict";
// The notebook: the program's own file, kept in the browser's store. Each change is made on the newest one, under a lock.
const kept = {name: "", text: "", revision: 0, woven: false};
let keeps = true, otherTabs = null;

function store(mode, work) {
  return new Promise((done, refused) => {
    const open = indexedDB.open("gristwright", 1);
    open.onupgradeneeded = () => open.result.createObjectStore("kept");
    open.onerror = () => refused(open.error);
    open.onsuccess = () => {
      const all = open.result.transaction("kept", mode, {durability: "strict"});
      const result = {};
      work(all.objectStore("kept"), result);
      all.oncomplete = () => { open.result.close(); done(result.value); };
      all.onabort = all.onerror = () => refused(all.error);
    };
  });
}

const stored = key => store("readonly", (all, result) => { all.get(key).onsuccess = event => { result.value = event.target.result; }; });

// Puts the notebook if nobody has since; says whether.
const storedAfter = (revision, bytes) => store("readwrite", (all, result) => {
  all.get("notebook").onsuccess = event => {
    result.value = (event.target.result?.revision || 0) === revision;
    if (result.value) all.put({revision: revision + 1, bytes}, "notebook");
  };
});

async function newest() {
  if (!keeps) return;
  const found = await stored("notebook");
  const revision = found?.revision || 0;
  if (revision === kept.revision) return;
  await handed(found?.bytes || null, revision);
}

async function handed(bytes, revision) {
  kept.revision = revision;
  await Promise.all([quick.write(notebookPath, bytes), long.write(notebookPath, bytes)]);
}

// A question that changes the notebook.
async function changing(args, files = {}) {
  const turn = async () => {
    for (;;) {
      await newest();
      const answer = await ask(args, files), bytes = await quick.read(notebookPath);
      if (keeps && bytes && !await storedAfter(kept.revision, bytes)) { kept.revision = -1; continue; }
      await handed(bytes, kept.revision + 1);
      otherTabs?.postMessage(kept.revision);
      return answer;
    }
  };
  return navigator.locks && keeps ? navigator.locks.request("gristwright notebook", turn) : turn();
}

async function everything() {
  const {code, out} = await ask(["export"]);
  return code === 0 ? JSON.parse(out).batches : [];
}

// Keeps the batch of the table, under its name; says whether it worked.
async function keptNow() {
  const batch = batchWritten(new Set(), true), name = $("name").value.trim();
  if (!name) { say("notebook-said", "Give the batch a name first, above the skeins."); $("name").focus(); return false; }
  const known = (await everything()).some(one => one.name === name);
  if (known && kept.name !== name && !confirm(`The notebook has a batch called ${name}. Put this one in its place? Undo brings the old one back.`)) return false;
  const {code, out, err} = await changing(["batch", known ? "change" : "add", name, "batch.toml", ...insisted()], {"batch.toml": batch.text});
  if (code === 0) Object.assign(kept, {name, text: batch.text});
  await keptKnown();
  say("notebook-said", code === 0 ? `${name} is in the notebook.` : flowing(complaint(err)));
  return code === 0;
}

// What the notebook knows: the list, and of the batch on the table its swatches and what is begun.
async function keptKnown() {
  await newest();
  const all = await everything();
  if (kept.name && !all.some(one => one.name === kept.name)) kept.name = "";
  $("batches").replaceChildren(...all.map(one => {
    const open = made("button", {type: "button", textContent: "lay it on the table", onclick: () => keptOpened(one).catch(failed)});
    open.setAttribute("aria-label", "lay it on the table: " + one.name);
    const away = made("button", {type: "button", textContent: "take it out", onclick: () => takenOut(one.name).catch(failed)});
    away.setAttribute("aria-label", "take it out of the notebook: " + one.name);
    return made("li", {}, made("b", {textContent: one.name}), ` ${one.skeins.length} ${one.skeins.length === 1 ? "skein" : "skeins"} `, open, " ", away);
  }));
  besideListed(all.map(one => one.name).filter(name => name !== kept.name));
  const {out, code} = kept.name ? await ask(["batch", "show", kept.name, "--json"]) : {code: 1};
  const known = code === 0 ? JSON.parse(out) : null;
  $("learnt").closest("label").hidden = !known?.swatches.length;
  $("weigh").hidden = !known?.begun;
  if (known?.begun) weighFor(known.begun);
  await handsShown();
  $("undo").disabled = !kept.revision;
  changed();
}

function weighFor(running) {
  const article = articles.find(one => one.name === running.template);
  kept.woven = article?.craft === "woven";
  $("row-label").firstChild.textContent = kept.woven ? "Woven so far " : "Rows worked ";
  $("ball-label").firstChild.textContent = kept.woven ? "What is left for the weft weighs " : "The ball weighs ";
  $("row").placeholder = kept.woven ? "0cm" : "0";
  const pieces = kept.woven ? [] : running.pieces, same = [...$("of-piece").options].map(one => one.value).join() === pieces.join();
  if (!same) $("of-piece").replaceChildren(...pieces.map(value => made("option", {value, textContent: value})));
  $("of-piece").closest("label").hidden = pieces.length < 2;
  $("weigh").querySelector("h3").textContent = `Weigh as you go: ${article?.title || running.template}, ${running.size}`;
}

// With its swatches and its work; Undo brings all of it back.
async function takenOut(name) {
  const {code, out, err} = await changing(["batch", "remove", name]);
  await keptKnown();
  say("notebook-said", code === 0 ? `${name} is out of the notebook, with its swatches and weighings. Undo brings it back.` : flowing(complaint(err) + "\n" + out));
}

function keptShown() {
  const same = kept.name && batchWritten(new Set(), true).text === kept.text;
  $("keep").textContent = kept.name && !same ? "Keep the changes" : "Keep this batch";
  $("keep").disabled = Boolean(same);
  $("swatch").hidden = !kept.name;
}

function keptOpened(batch) {
  laidOut(batch);
  Object.assign(kept, {name: batch.name, text: batchWritten(new Set(), true).text});
  say("notebook-said", `${batch.name} lies on the table.`);
  return keptKnown();
}

// What all swatches tell of the person's own hands.
async function handsShown() {
  const {code, out} = await ask(["hands", "--json"]), seen = code === 0 && JSON.parse(out).seen;
  $("hands").hidden = !seen?.length;
  if (seen?.length) $("hands-said").replaceChildren(...worded((await ask(["hands"])).out.replace(/^Not you any more: .*/m, "")));
}

async function handsBegunAnew() {
  if (!confirm("The swatches kept so far will say nothing about your hands any more; each still counts for its own batch.")) return;
  const {out, err} = await changing(["hands", "--forget"]);
  await keptKnown();
  say("notebook-said", flowing(complaint(err) + "\n" + out));
}

// A field is an option by its name; one whose value is an option itself stands for that.
async function swatchKept(event) {
  event.preventDefault();
  const said = [...new FormData($("swatch"))].filter(([, value]) => value.trim());
  const words = said.flatMap(([name, value]) => value.startsWith("--") ? [value] : ["--" + name, value.trim()]);
  const {code, out, err} = await changing(["swatch", kept.name, ...words, "--on", today()]);
  if (code === 0) $("swatch").reset();
  await keptKnown();
  say("swatch-said", flowing(newly(err) + "\n" + out));
}

async function undone() {
  const {out, err} = await changing(["undo"]);
  const before = (await everything()).find(one => one.name === kept.name);
  if (before) await keptOpened(before);
  else await keptKnown();
  say("notebook-said", flowing(complaint(err) + "\n" + out));
}

async function imported(file) {
  const {out, err} = await changing(["import", file.name], {[file.name]: new Uint8Array(await file.arrayBuffer())});
  await keptKnown();
  say("notebook-said", flowing(complaint(err) + "\n" + out));
}

async function cardsPrinted() {
  const batch = batchAsked();
  if (!batch.skeins) return say("notebook-said", "Put the skeins on the table first.");
  const {files, err} = await ask(["card", ...batch.words, ...unitsAsked(), "-o", "cards.html"], batch.files);
  if (!files["cards.html"]) return say("notebook-said", flowing(complaint(err)));
  shown($("cards-drawn"), text.decode(files["cards.html"]));
  printed($("cards-drawn"));
  $("cards-drawn").shadowRoot.replaceChildren();
}

async function exported() {
  await newest();
  const {out} = await ask(["export"]);
  saved("notebook.json", out, "application/json");
  say("notebook-said", "The file holds the whole notebook; open it here, or with gristwright import.");
}

// What lies on the table unkept is there again when the page is opened anew. A page that came with a batch has a place
// of its own, so that nobody's draft lies on another's yarn.
const draftKey = () => batchInside() ? "draft of " + batchInside() : "draft";

async function draftKept() {
  const batch = batchWritten(new Set(), true), ideas = $("ideas").value;
  const draft = {text: batch.skeins && batch.text !== asCame ? batch.text : "", kept: kept.name, ideas};
  if (keeps && document.documentElement.dataset.ready) await store("readwrite", all => all.put(draft, draftKey()));
  $("as-came").hidden = !asCame || batch.text === asCame;
}

async function draftOpened() {
  const draft = keeps ? await stored(draftKey()) : null;
  if (draft?.ideas && !$("ideas").value) $("ideas").value = draft.ideas;
  if (!draft?.text || !asCame && tableRows().some(row => !blank(row))) return;
  const known = draft.kept && (await everything()).find(one => one.name === draft.kept);
  if (known) await keptOpened(known);
  await batchOpened("batch.toml", draft.text);
  say("notebook-said", "");
  if (asCame) say("opened-said", "The table lies as you left it.");
}

async function notebookReady() {
  try {
    await stored("notebook");
    otherTabs = new BroadcastChannel("gristwright notebook");
    otherTabs.onmessage = ({data}) => (data === "templates" ? templatesLaid() : keptKnown()).catch(failed);
  } catch {
    keeps = false;
    say("kept-where", "This browser lets a page that was opened from a file keep nothing. Save the notebook to a file before you close the page.");
  }
  const act = work => () => work().catch(failed);
  $("keep").onclick = act(keptNow);
  $("undo").onclick = act(undone);
  $("export").onclick = act(exported);
  $("cards").onclick = act(cardsPrinted);
  $("import").onchange = ({target}) => { if (target.files[0]) imported(target.files[0]).catch(failed); target.value = ""; };
  $("hands-anew").onclick = act(handsBegunAnew);
  $("swatch").onsubmit = event => swatchKept(event).catch(failed);
  await templatesLaid();
  await keptKnown();
}
