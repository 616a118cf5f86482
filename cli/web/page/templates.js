"use strict";
// Own articles: templates that were opened, kept in the browser and laid on the program's shelf, where it finds them.
const templateFolder = shelf + "templates/", templatePath = name => templateFolder + name + ".toml";

const isTemplate = content => /^\s*\[\[piece\]\]/m.test(content);

async function templateBrought(fileName, content) {
  const name = fileName.replace(/\.toml$/i, "").toLowerCase().replace(/[^a-z0-9]+/g, "-").replace(/^-+|-+$/g, "") || "own", file = name + ".toml";
  const {out, err} = await ask(["templates", "check", file], {[file]: content});
  if (err) return say("opened-said", complaint(err));
  await templatesChanged(all => { all[name] = content; });
  say("opened-said", `${flowing(out.split("\n")[0])}. It is among the articles now.`);
}

// Those that a page came with, by their names; what is kept here goes before one of the same name.
function articlesInside(template = $("articles-inside")) {
  return Object.fromEntries([...template.content.querySelectorAll("code")].map(one => [one.title, one.textContent]));
}

let unkept = {};  // where the browser keeps nothing
const ownTemplates = async () => keeps ? await stored("templates") || {} : unkept;

async function templatesChanged(change) {
  if (keeps) {
    await store("readwrite", all => {
      all.get("templates").onsuccess = event => {
        const own = event.target.result || {};
        change(own);
        all.put(own, "templates");
      };
    });
  } else change(unkept);
  otherTabs?.postMessage("templates");
  await templatesLaid();
}

// On the shelves of both hands lies what is kept, and nothing else.
async function templatesLaid() {
  const keptHere = await ownTemplates(), own = {...articlesInside(), ...keptHere}, files = new Map(Object.entries(own).map(([name, content]) => [templatePath(name), content]));
  for (const hand of [quick, long]) {
    for (const [path, content] of hand.shelved) if (path.startsWith(templateFolder) && content && !files.has(path)) await hand.write(path, null);
    for (const [path, content] of files) if (hand.shelved.get(path) !== content) await hand.write(path, content);
  }
  await articlesListed();
  $("own-articles").hidden = !files.size;
  $("own-articles-list").replaceChildren(...Object.keys(own).sort().map(name => ownShownAs(name, name in keptHere)));
  asked = "";  // the answer is drawn anew
  changed();
}

function ownShownAs(name, here) {
  const title = articles.find(one => one.name === name)?.title || name + " (this program cannot take it)";
  if (!here) return made("li", {}, title, made("span", {className: "quiet", textContent: " came with this page"}));
  const away = made("button", {type: "button", textContent: "take it away", onclick: () => templatesChanged(all => { delete all[name]; }).catch(failed)});
  away.setAttribute("aria-label", "take it away: " + title);
  return made("li", {}, title, " ", away);
}
