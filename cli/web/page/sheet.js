"use strict";
// Small things for the document: finding, making, saying, and showing what the program drew.
const $ = id => document.getElementById(id);
const text = new TextDecoder();

function made(tag, properties = {}, ...children) {
  const element = Object.assign(document.createElement(tag), properties);
  element.append(...children);
  return element;
}

function say(id, words) {
  const place = $(id);
  if (place.textContent !== words) place.textContent = words;
  place.hidden = !words;
}

function failed(thrown) {
  say("old", "Something went wrong in this page: " + thrown.message + ". What was kept is safe; load the page again.");
}

const complaint = words => words.replace(/^gristwright: /gm, "").trim();

function saved(name, content, type = "text/plain") {
  const link = made("a", {download: name, href: URL.createObjectURL(new Blob([content], {type}))});
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60000);
}

// HTML or SVG of the program inside a shadow, so that neither its looks nor its names meet the page's own.
function shown(host, html, change = () => {}, looks = "") {
  const root = host.shadowRoot || host.attachShadow({mode: "open"});
  const drawn = new DOMParser().parseFromString(html, "text/html");
  const style = [...drawn.querySelectorAll("style")].map(one => one.textContent).join("\n");
  drawn.querySelectorAll("style, script, .skip").forEach(one => one.remove());
  change(drawn);
  const body = made("div", {className: "body"});
  body.append(...drawn.body.childNodes);
  const main = body.querySelector("main"), same = main && made("div", {className: "main " + main.className});  // the sheet has its own
  same?.append(...main.childNodes);
  main?.replaceWith(same);
  root.replaceChildren(made("style", {textContent: style.replace(/:root/g, ":host").replace(/(^|[\s,{}])(body|main)(?=[\s:{,.])/g, "$1.$2") + ownInside + looks}), body);
  root.onclick = event => followed(root, event);
  return root;
}

const ownInside = `
.body { background: transparent; overflow-wrap: break-word; } .body::before { content: none; }
:focus-visible { outline: 3px solid var(--madder, #a23b2a); outline-offset: 2px; }`;

// A link inside a shadow leads to a place in it.
function followed(root, event) {
  const link = event.target.closest?.("a[href^='#']"), place = link && root.getElementById(link.hash.slice(1));
  if (!place) return;
  event.preventDefault();
  for (let fold = place.closest("details"); fold; fold = fold.parentElement.closest("details")) fold.open = true;
  place.scrollIntoView({block: "start", behavior: matchMedia("(prefers-reduced-motion: reduce)").matches ? "auto" : "smooth"});
  place.tabIndex = -1;
  place.focus({preventScroll: true});
}

// Prints one drawn thing alone.
function printed(host) {
  document.body.classList.add("printing");
  host.classList.add("printed");
  for (let above = host.parentElement; above; above = above.parentElement) above.classList.add("holds-printed");
  window.print();
  document.querySelectorAll(".printed, .holds-printed").forEach(one => one.classList.remove("printed", "holds-printed"));
  document.body.classList.remove("printing");
}
