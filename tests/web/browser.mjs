// Real browsers for the tests of the page one works in: opened from disk, watched for every request and message.
import { execFileSync } from "node:child_process";
import { copyFileSync, existsSync, mkdirSync, readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";

const here = dirname(fileURLToPath(import.meta.url));
export const programs = { chromium: "/usr/bin/chromium", firefox: "/usr/bin/firefox-esr" };
const skipped = why => { console.log("BROWSERS NOT RUN: " + why); process.exit(77); };

// puppeteer-core and axe-core, fetched once into the build folder; without npm the tests are skipped, not passed.
export async function packages(build) {
  const folder = join(build, "browsers");
  if (!existsSync(join(folder, "node_modules/axe-core/axe.min.js"))) {
    mkdirSync(folder, { recursive: true });
    copyFileSync(join(here, "package.json"), join(folder, "package.json"));
    try {
      execFileSync("npm", ["install", "--no-audit", "--no-fund", "--ignore-scripts"], { cwd: folder, timeout: 120000, stdio: "pipe" });
    } catch (thrown) {
      skipped("npm could not fetch puppeteer-core: " + String(thrown.stderr || thrown.message).slice(-300));
    }
  }
  const found = createRequire(join(folder, "package.json")).resolve("puppeteer-core");
  const axe = readFileSync(join(folder, "node_modules/axe-core/axe.min.js"), "utf8");
  return { puppeteer: (await import(pathToFileURL(found))).default, axe };
}

export async function browserOpened(puppeteer, name, profile) {
  if (!existsSync(programs[name])) skipped(programs[name] + " is not installed");
  const args = name === "chromium" ? ["--no-sandbox", "--disable-gpu"] : [];
  return puppeteer.launch({ browser: name === "firefox" ? "firefox" : "chrome", executablePath: programs[name], headless: true, userDataDir: profile, args });
}

// A tab with the page. `seen` collects what must not be: messages on the console, faults, requests.
export async function pageOpened(browser, url, seen, { width = 1280, height = 900 } = {}) {
  const page = await browser.newPage();
  await page.setViewport({ width, height });
  page.on("console", message => seen.push("console: " + message.text()));
  page.on("pageerror", fault => seen.push("fault: " + fault.message));
  page.on("request", request => { if (!/^(file|blob|data):/.test(request.url())) seen.push("request: " + request.url()); });
  page.on("dialog", dialog => dialog.accept());
  await page.evaluateOnNewDocument(() => {
    const make = URL.createObjectURL;
    URL.createObjectURL = blob => { window.lastSaved = blob; return make(blob); };
  });
  await page.goto(url);
  await until(page, () => document.documentElement.dataset.ready === "yes");
  return page;
}

export const until = (page, test, ...values) => page.waitForFunction(test, { timeout: 60000, polling: 50 }, ...values);
export const said = (page, id) => page.$eval("#" + id, element => element.textContent.replaceAll("\u00a0", " "));
export const press = (page, selector) => page.$eval(selector, element => element.click());
export const savedText = page => page.evaluate(() => window.lastSaved.text());

export async function says(page, id, words) {
  try {
    await until(page, (id, words) => document.getElementById(id).textContent.replaceAll("\u00a0", " ").includes(words), id, words);
  } catch {
    throw new Error(`#${id} does not say '${words}' but '${await said(page, id)}'`);
  }
}

// Types in place of what stands in a field, as a hand would.
export async function typed(page, selector, words) {
  await page.$eval(selector, input => { input.focus(); input.select?.(); });
  await (words ? page.keyboard.type(words) : page.keyboard.press("Backspace"));
}

// The drawn answer is whole and belongs to what is asked.
export const drawn = (page, words = "") => until(page, words => {
  const place = document.getElementById("drawn");
  return place.getAttribute("aria-busy") === "false" && place.shadowRoot?.querySelector(".plan") &&
    document.getElementById("quick").textContent.replaceAll("\u00a0", " ").includes(words) && /[:;]/.test(document.getElementById("quick").textContent);
}, words);

// Boxes that reach beyond the window, the strip that scrolls by itself apart.
export const overflowing = page => page.evaluate(() => {
  const found = [];
  const look = root => root.querySelectorAll("*").forEach(element => {
    const box = element.getBoundingClientRect();
    if (box.width > 1 && box.right > innerWidth + 1 && !element.closest(".lineup, nav, .unseen, .skip")) found.push(element.tagName + "." + element.className + " to " + Math.round(box.right));
    if (element.shadowRoot) look(element.shadowRoot);
  });
  look(document);
  return found.slice(0, 5);
});
