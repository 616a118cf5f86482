"use strict";
// Questions to the program, which runs in workers: one hand for what is quick (and for the notebook), one for
// what takes longer. A hand answers one question at a time; long work that may be stopped gets a hand of its own.
const shelf = "/home/spinner/.local/share/gristwright/", notebookPath = shelf + "notebook.sqlite";

class Stopped extends Error {}

class Hand {
  // `shelved` is what lies on the program's shelf: the notebook and own templates, by their paths.
  constructor(source, wasm, shelved = new Map()) { Object.assign(this, {source, wasm, shelved, number: 0}); this.begin(); }

  begin() {
    this.waiting = new Map();
    this.worker = new Worker(this.source);
    this.worker.onmessage = ({data}) => this.answered(data);
    this.worker.onerror = event => this.fallen(event.message || "the program could not be started");
    this.worker.postMessage({wasm: this.wasm});
    for (const [path, bytes] of this.shelved) this.write(path, bytes).catch(() => {});
  }

  send(what, progress) {
    return new Promise((done, failed) => {
      const id = ++this.number;
      this.waiting.set(id, {done, failed, progress});
      this.worker.postMessage({...what, id});
    });
  }

  answered(data) {
    const question = this.waiting.get(data.id);
    if (!question) return;
    if ("progress" in data) return void question.progress?.(data.progress);
    this.waiting.delete(data.id);
    if (data.broken) {  // the next question finds a new worker with the same shelf
      question.failed(new Error(data.broken));
      this.end(new Error(data.broken));
      this.begin();
    }
    else question.done(data);
  }

  fallen(why) {
    for (const {failed} of this.waiting.values()) failed(new Error(why));
    this.waiting.clear();
  }

  // Everything that waits ends.
  end(why = new Stopped("stopped")) {
    this.worker.terminate();
    for (const {failed} of this.waiting.values()) failed(why);
    this.waiting.clear();
  }

  ask(args, files = {}, progress) { return this.send({args, files}, progress); }
  async read(path) { return (await this.send({read: path})).bytes; }
  async write(path, bytes) { if (path.startsWith(shelf)) this.shelved.set(path, bytes); await this.send({write: path, bytes}); }
}

// The program out of the page: gzip inside base64.
async function unpacked(element) {
  const letters = atob(element.textContent.trim()), packed = new Uint8Array(letters.length);
  for (let i = 0; i < letters.length; ++i) packed[i] = letters.charCodeAt(i);
  element.textContent = "";
  return new Response(new Blob([packed]).stream().pipeThrough(new DecompressionStream("gzip"))).arrayBuffer();
}

let quick, long;

async function handsBegun() {
  const wasm = await unpacked($("program"));
  const source = URL.createObjectURL(new Blob([$("program-loader").textContent, "\n", $("asking").textContent], {type: "text/javascript"}));
  quick = new Hand(source, wasm);
  long = new Hand(source, wasm);
}

// For work that is stopped by throwing the hand away.
const spareHand = () => new Hand(long.source, long.wasm, new Map(quick.shelved));

const ask = (args, files, progress) => quick.ask(args, files, progress);

// Of questions on one topic only the newest counts, and it waits for the one that is being answered. `work` gets
// a test of whether it still is the newest.
const turns = {}, timers = {}, running = {};
function later(topic, wait, work) {
  const turn = turns[topic] = (turns[topic] || 0) + 1, fresh = () => turns[topic] === turn;
  clearTimeout(timers[topic]);
  timers[topic] = setTimeout(async () => {
    await running[topic];
    if (!fresh()) return;
    running[topic] = Promise.resolve(work(fresh)).catch(thrown => { if (!(thrown instanceof Stopped)) failed(thrown); });
  }, wait);
}
