"use strict";
// What is wanted out of the same skeins, and the split that the program finds.
const wanted = [];

function wantedAdded(name) {
  if (!name || wanted.includes(name)) return;
  wanted.push(name);
  wantedShown();
  const title = articles.find(one => one.name === name).title;
  say("split-said", `${title} is wanted${wanted.length === 1 ? ", as the main project" : ""}.`);
}

function wantedShown() {
  $("wanted-none").hidden = wanted.length > 0;
  $("wanted").replaceChildren(...wanted.map((name, number) => {
    const title = articles.find(one => one.name === name).title;
    const button = (words, label, act) => {
      const one = made("button", {type: "button", textContent: words, onclick: () => { act(); wantedShown(); $("want").focus(); }});
      one.setAttribute("aria-label", label + ": " + title);
      return one;
    };
    const up = button("first", "first, as the main project", () => { wanted.splice(number, 1); wanted.unshift(name); });
    const away = button("×", "not wanted any more", () => wanted.splice(number, 1));
    return made("li", {}, title, number ? "" : made("span", {className: "quiet", textContent: " the main project"}), " ", number ? up : "", " ", away);
  }));
}

function splitWords() {
  const words = [];
  if ($("sample-knitted").checked) words.push("--sample", "knitted");
  if ($("sample-woven").checked) words.push("--sample", "woven");
  wanted.forEach((name, number) => words.push(number ? "--piece" : "--main", name));
  if ($("reserve").value.trim()) words.push("--reserve", $("reserve").value.trim());
  if ($("joins").value) words.push("--join-cost", $("joins").value);
  return words;
}

async function splitAsked() {
  const batch = batchAsked(), words = splitWords();
  if (!batch.skeins) return say("split-said", "Put the skeins on the table first.");
  if (!words.includes("--main") && !words.includes("--sample")) return say("split-said", "Say what is wanted: an article, or a sample.");
  let heardOf = "looking for the best split";
  const hand = new Hand(long.source, long.wasm), since = Date.now();
  const clock = setInterval(() => say("split-so-far", `${Math.round((Date.now() - since) / 1000)} s: ${heardOf}. You may go on working meanwhile.`), 1000);
  say("split-said", "Looking for the best split.");
  $("split-stop").hidden = false;
  $("split-do").disabled = true;
  $("split-stop").onclick = () => hand.stop();
  try {
    await hand.write(notebookPath, quick.home);
    const tell = progress => { heardOf = progress.replace(/ \(Ctrl-C.*/, ""); };
    const answer = await hand.ask(["split", ...batch.words, ...words, ...wishesOfSplit()], batch.files, tell);
    const bars = answer.code === 0 && await hand.ask(["picture", "split", ...batch.words, ...words, ...wishesOfSplit(), "-o", "split.svg"], batch.files, tell);
    splitShown(answer, bars, batch);
  } catch (thrown) {
    say("split-said", thrown instanceof Stopped ? "Stopped. Nothing is split." : thrown.message);
  } finally {
    clearInterval(clock);
    say("split-so-far", "");
    hand.worker.terminate();
    $("split-stop").hidden = true;
    $("split-do").disabled = false;
  }
}

const wishesOfSplit = () => ["--certainty", $("certainty").value, ...unitsAsked(), ...whichAsked()];

function splitShown({code, out, err}, bars, batch) {
  const refused = code === 0 ? null : problem(err, batch);
  marked(refused?.input ? [refused] : [], $("basket"));
  say("split-said", code === 0 ? "Split. The cut list is in the order to wind off." : refused.input ? "" : refused.words);
  $("split-print").hidden = code !== 0;
  $("split-drawn").hidden = code !== 0;
  if (code !== 0) return;
  const blocks = out.trim().split(/\n\n/).slice(1).filter(block => !block.startsWith("Skeins\n"));
  $("split-words").replaceChildren(...worded("\n\n" + blocks.join("\n\n")));
  shown($("split-bars"), text.decode(bars.files["split.svg"]), undefined, ".body svg { max-width: 100%; height: auto; }");
}

function splitReady() {
  const basket = $("basket");
  basket.addEventListener("dragover", event => { event.preventDefault(); basket.classList.add("over"); });
  basket.addEventListener("dragleave", () => basket.classList.remove("over"));
  basket.addEventListener("drop", event => {
    event.preventDefault();
    basket.classList.remove("over");
    const article = articleNamed(event.dataTransfer.getData("text/plain"));
    if (article) wantedAdded(article.name);
  });
  const add = () => {
    const article = articleNamed($("want").value);
    if (!article) return say("split-said", $("want").value ? `There is no article '${$("want").value}'; the list at the field has them all.` : "Type or choose an article first.");
    $("want").value = "";
    wantedAdded(article.name);
  };
  $("want-add").onclick = add;
  $("want").onkeydown = event => { if (event.key === "Enter") { event.preventDefault(); add(); } };
  $("split-do").onclick = splitAsked;
  $("split-print").onclick = () => printed($("split-drawn"));
}
