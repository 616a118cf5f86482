// For node: newer ones have a fetch that reads no file, so the program's bytes are handed over; the
// environment is the process's own, and a pipe is no terminal.
Module["wasmBinary"] = require("fs").readFileSync(__filename.replace(/js$/, "wasm"));
Module["preRun"] = () => Object.assign(ENV, process.env);
Module["onRuntimeInitialized"] = () => {
  for (const fd of [0, 1, 2])
    if (!require("tty").isatty(fd)) FS.streams[fd].tty = null;
};
