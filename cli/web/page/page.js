"use strict";
// The page as a whole: beginning, files that are opened or dropped, and the page saved with its batch inside.
const asOpened = document.documentElement.outerHTML;  // before anything is changed
window.begunHere = true;

const inScript = words => words.replace(/<(?=\/|!)/g, "<\\");
const outOfScript = words => words.replace(/<\\([/!])/g, "<$1");

// The batch that this page came with.
const batchInside = () => outOfScript($("batch").textContent).trim();
let asCame = "";

async function insideLaidOut() {
  const inside = batchInside();
  if (!inside) return;
  await batchOpened("batch.toml", inside + "\n");
  asCame = batchWritten(new Set(), true).text;
  document.title = $("name").value.trim() + ": what this yarn can make";
}

async function pageSaved() {
  const batch = inScript(batchWritten(new Set(), true).text), own = Object.entries({...articlesInside(), ...await ownTemplates()});
  const inside = made("div", {}, ...own.map(([title, textContent]) => made("code", {title, textContent}))).innerHTML;
  const page = asOpened.replace(/(<script type="application\/toml" id="batch">)[^]*?(<\/script>)/, (_, from, to) => from + "\n" + batch + to)
    .replace(/(<template id="articles-inside">)[^]*?(<\/template>)/, (_, from, to) => from + inside + to);
  saved(($("name").value.trim() || "yarn").replace(/[^\p{L}\p{N} _-]/gu, "") + ".html", "<!DOCTYPE html>\n" + page, "text/html");
  say("notebook-said", "Whoever opens that file finds your batch on the table and can try their own ideas." + (own.length ? " Your own articles are in it." : "") + " The notebook is not.");
}

async function fileOpened(file) {
  const content = await file.text();
  say("opened-said", "");
  if (/\.html?$/i.test(file.name)) {
    const page = new DOMParser().parseFromString(content, "text/html"), batch = page.querySelector("script#batch[type='application/toml']");
    const own = page.querySelector("template#articles-inside");
    for (const [name, toml] of own ? Object.entries(articlesInside(own)) : []) await templateBrought(name, toml);
    if (!batch?.textContent.trim()) return say("opened-said", `There is no batch in ${file.name}.`);
    return batchOpened("batch.toml", outOfScript(batch.textContent));
  }
  if (/\.json$/i.test(file.name)) return imported(file);
  if (/\.toml$/i.test(file.name) && isTemplate(content)) return templateBrought(file.name, content);
  const name = file.name.replace(/^-+/, "") || "batch";  // never an option
  return batchOpened(/\.(toml|csv|tsv|txt)$/i.test(name) ? name : name + ".toml", content);
}

function filesReady() {
  $("open").onchange = ({target}) => { if (target.files[0]) fileOpened(target.files[0]).catch(failed); target.value = ""; };
  document.addEventListener("dragover", event => { if (event.dataTransfer.types.includes("Files")) event.preventDefault(); });
  document.addEventListener("drop", event => {
    if (!event.dataTransfer.files.length) return;
    event.preventDefault();
    fileOpened(event.dataTransfer.files[0]).catch(failed);
  });
  $("save-page").onclick = () => pageSaved().catch(failed);
  $("as-came").onclick = () => insideLaidOut().catch(failed);
  document.querySelectorAll("button[data-example]").forEach(button => {
    const batch = $("made-up").content.querySelector(`[data-example=${button.dataset.example.toLowerCase()}]`);
    button.onclick = () => batchOpened("batch.toml", batch.textContent);
    button.hidden = !batch;
  });
}

async function started() {
  skeinsReady();
  answerReady();
  suggestionsReady();
  splitReady();
  planReady();
  filesReady();
  await handsBegun();
  await choicesListed();
  await notebookReady();
  await insideLaidOut();
  await draftOpened();
  document.documentElement.dataset.ready = "yes";
}

// By then the last script has said whether the browser is too old.
document.addEventListener("DOMContentLoaded", () => { if ($("old").hidden) started().catch(failed); });
