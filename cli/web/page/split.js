"use strict";
// What is wanted out of the same skeins, and the split that the program finds.
const wanted = [];

function wantedAdded(name) {
  if (!name || wanted.includes(name)) return;
  wanted.push(name);
  wantedShown();
  const title = articles.find(one => one.name === name).title;
  say("split-said", `Wanted: ${title}${wanted.length === 1 ? ", as the main project" : ""}.`);
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
  const said = id => $(id).value.trim(), sample = (craft, id) => words.push("--sample", craft + (said(id) ? ":" + said(id) : ""));
  if ($("sample-knitted").checked) sample("knitted", "sample-stitch");
  if ($("sample-woven").checked) sample("woven", "sample-weave");
  wanted.forEach((name, number) => words.push(number ? "--piece" : "--main", name));
  for (const [option, id] of [["--reserve", "reserve"], ["--from", "sample-from"]]) if (said(id)) words.push(option, said(id));
  if ($("whole-warp").value) words.push($("whole-warp").value);
  if ($("joins").value) words.push("--join-cost", $("joins").value);
  return words;
}

// First a quick look, so that there is a split to keep when the long look is stopped; each takes the former's place.
const aFirstLook = 0.1, tenTimes = 10;
let longest = 1;

async function splitAsked(efforts) {
  const batch = batchAsked(), words = splitWords();
  if (!batch.skeins) return say("split-said", "Put the skeins on the table first.");
  if (!words.includes("--main") && !words.includes("--sample")) return say("split-said", "Say what is wanted: an article, or a sample.");
  const hand = spareHand(), ended = searching(hand);
  let stands = efforts[0] > aFirstLook;  // the former stands already
  try {
    for (const effort of efforts) {
      const question = ["split", ...batch.words, ...words, ...wishesOfSplit(), "--effort", String(effort), "-o", "split.svg"];
      const answer = await hand.ask(question, batch.files, ended.tell);
      if (!splitFound(answer) && answer.code === 0 && effort !== efforts.at(-1)) continue;
      splitShown(answer, batch, effort === efforts.at(-1));
      stands = true;
      longest = Math.max(1, effort);
      if (answer.code !== 0) break;
    }
  } catch (thrown) {
    if (!(thrown instanceof Stopped)) throw thrown;
    say("split-said", stands ? "Stopped. This is the best so far." : "Stopped before anything was found.");
  } finally {
    hand.end();
    ended();
  }
}

// The search is told of second by second, and can be stopped; gives what ends that.
function searching(hand) {
  const since = Date.now();
  let heardOf = "looking for the best split";
  const clock = setInterval(() => say("split-so-far", `${Math.round((Date.now() - since) / 1000)} s: ${heardOf}. You may go on working meanwhile.`), 1000);
  const during = going => {
    $("split-stop").hidden = !going;
    $("split-do").disabled = $("split-longer").disabled = going;
  };
  during(true);
  say("split-said", "Looking for the best split.");
  $("split-stop").onclick = () => hand.end();
  const ended = () => { clearInterval(clock); say("split-so-far", ""); during(false); };
  ended.tell = progress => { heardOf = progress.replace(/ \(Ctrl-C.*/, ""); };
  return ended;
}

const wishesOfSplit = () => ["--certainty", $("certainty").value, ...unitsAsked(), ...whichAsked()];
const splitFound = answer => Boolean(answer.files["split.svg"]);

function splitShown(answer, batch, last) {
  const {code, out, err, files} = answer, found = splitFound(answer), refused = code === 0 ? null : problem(err, batch);
  marked(refused?.input ? [refused] : [], $("basket"));
  const told = !found ? "They cannot be split so." : last ? "Split. The cut list is in the order to wind off." : "A first split is here; looking for a better one.";
  say("split-said", !refused ? told : refused.input ? "" : refused.words);
  $("split-print").hidden = !found;
  $("split-longer").hidden = !found || !last || /\(proven\)/.test(out);
  $("split-drawn").hidden = code !== 0;
  if (code !== 0) return;
  const blocks = out.trim().split(/\n\n/).slice(1).filter(block => !block.startsWith("Skeins\n"));
  $("split-words").replaceChildren(...worded("\n\n" + blocks.join("\n\n")));
  if (found) shown($("split-bars"), text.decode(files["split.svg"]), undefined, ".body svg { max-width: 100%; height: auto; }");
  else $("split-bars").shadowRoot?.replaceChildren();
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
  const add = async () => {
    const article = articleNamed($("want").value);
    if (!article) return say("split-said", $("want").value.trim() ? await nameless($("want").value) : "Type or choose an article first.");
    $("want").value = "";
    wantedAdded(article.name);
  };
  $("want-add").onclick = add;
  $("want").onkeydown = event => { if (event.key === "Enter") { event.preventDefault(); add(); } };
  $("split-do").onclick = () => splitAsked([aFirstLook, 1]).catch(failed);
  $("split-longer").onclick = () => splitAsked([tenTimes * longest]).catch(failed);
  $("split-print").onclick = () => printed($("split-drawn"));
}
