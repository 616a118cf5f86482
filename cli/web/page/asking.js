// In the worker, behind the program's own loader: the program, its files, one question at a time.
// Comes in: {id, args, files} a question; {id, read} or {id, write, bytes} the notebook; first of all {wasm}.
// Goes out: {id, code, out, err, files}, {id, bytes}, {id, progress} while a long question runs, or {broken}.
const home = "/home/spinner", desk = "/desk", kept = home + "/.local/share/gristwright/notebook.sqlite";
let program;

// What the program writes to a stream, whole writes at a time. On the standard error a line that is written
// over and over tells how far a long search is.
const lifesign = /\r([^\r\n\x1b]*)(?:\x1b\[K|\n)?/g;

function caught(stream, progress) {
  const parts = [];
  let tail = "";
  stream.stream_ops = {...stream.stream_ops, write(_, memory, at, length) {
    const part = new Uint8Array(memory.buffer, memory.byteOffset + at, length).slice();
    parts.push(part);
    if (progress) {
      tail += new TextDecoder().decode(part);
      const line = [...tail.matchAll(lifesign)].at(-1);
      if (line) { tail = ""; if (line[1]) progress(line[1]); }
    }
    return length;
  }};
  return () => {
    const whole = new TextDecoder().decode(joined(parts.splice(0)));
    return progress ? whole.replace(lifesign, "") : whole;  // a spreadsheet's line ends stay
  };
}

function joined(parts) {
  const whole = new Uint8Array(parts.reduce((length, part) => length + part.length, 0));
  let at = 0;
  for (const part of parts) { whole.set(part, at); at += part.length; }
  return whole;
}

function cleared() {
  for (const name of program.FS.readdir(desk)) if (name !== "." && name !== "..") program.FS.unlink(desk + "/" + name);
}

function asked({id, args, files}) {
  const FS = program.FS;
  FS.chdir(desk);
  cleared();
  for (const [path, content] of Object.entries(files)) FS.writeFile(path, content);
  asked.id = id;
  let code;
  try {
    code = program.callMain(args);
  } catch (thrown) {
    if (thrown?.name !== "ExitStatus") throw thrown;
    code = thrown.status;
  }
  const written = {};
  for (const name of FS.readdir(desk))
    if (name !== "." && name !== ".." && !(name in files)) written[name] = FS.readFile(desk + "/" + name);
  return {id, code, out: program.out(), err: program.err(), files: written};
}

function read(path) {
  return program.FS.analyzePath(path).exists ? program.FS.readFile(path) : null;
}

function put(path, bytes) {
  program.FS.mkdirTree(path.slice(0, path.lastIndexOf("/")));
  if (bytes) program.FS.writeFile(path, bytes);
  else if (program.FS.analyzePath(path).exists) program.FS.unlink(path);
}

// The page breaks its lines itself: so many columns tell the program to break none.
async function begun(wasm, columns = "9999") {
  const set = module => Object.assign(module.ENV, {HOME: home, NO_COLOR: "1", LANG: "C.UTF-8", COLUMNS: columns});
  program = await Gristwright({wasmBinary: wasm, noInitialRun: true, preRun: [set]});
  const FS = program.FS;
  FS.mkdirTree(desk);
  FS.mkdirTree(home);
  program.out = caught(FS.getStream(1));
  program.err = caught(FS.getStream(2), words => self.postMessage({id: asked.id, progress: words}));
  FS.getStream(1).tty = null;
}

let ready;
self.onmessage = async ({data}) => {
  try {
    if (data.wasm) return void (ready = begun(data.wasm));
    await ready;
    if (data.args) self.postMessage(asked(data));
    else if (data.write) self.postMessage({id: data.id, bytes: put(data.write, data.bytes) ?? null});
    else self.postMessage({id: data.id, bytes: read(data.read)});
  } catch (thrown) {
    self.postMessage({id: data.id, broken: String(thrown?.message || thrown)});
  }
};
