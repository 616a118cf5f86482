#!/usr/bin/env python3
"""Promises about the running program.

usage: kept.py codes|colour|busy|socket|locale|pipe|writing PROGRAM ROOT
"""
import os
import pathlib
import pty
import shutil
import sqlite3
import subprocess
import sys
import tempfile

HERON = "docs/examples/heron.toml"


def run(program, *words, **env):
    return subprocess.run([program, *words], capture_output=True, text=True,
                          env={**os.environ, **env})


def on_terminal(program, words, **env):
    """What a person sees: the program's output is a terminal."""
    child, terminal = pty.fork()
    if child == 0:
        os.execve(program, [program, *words], {**os.environ, **env})
    out = b""
    try:
        while piece := os.read(terminal, 65536):
            out += piece
    except OSError:  # the other end is gone
        pass
    os.waitpid(child, 0)
    return out


def codes(program, home):
    """Codes are few, and an answer and a complaint never share a stream. 75: see busy."""
    env = {"HOME": home, "XDG_DATA_HOME": home}
    run(program, "batch", "add", "heron", HERON, **env)
    for code, words in [(0, ["templates"]), (0, ["makes", HERON]), (64, ["mkaes"]), (64, ["yarn", "--skein"]),
                        (64, ["yarn", HERON, "--json=3"]), (64, ["yarn", HERON, "b", "c"]), (64, ["undo", "it"]),
                        (64, ["swatch", "heron"]), (65, ["yarn", "--skein", "171m"]), (65, ["plan", "nothing"]),
                        (65, ["yarn", HERON, "--units", ""]), (66, ["yarn", "nothing.toml"]),
                        (66, ["import", "nothing.json"]), (73, ["page", HERON, "-o", "/nowhere/x.html"]),
                        (74, ["backup", "/nowhere/copy.sqlite"])]:
        done = run(program, *words, **env)
        assert done.returncode == code, (words, done)
        assert bool(done.stdout) == (code == 0) and bool(done.stderr) == (code != 0), (words, done)


def colour(program, home):
    words = ["yarn", HERON, "--working"]
    base = {"HOME": home, "XDG_DATA_HOME": home}
    for env, wanted in [({"TERM": "xterm", "NO_COLOR": ""}, True),
                        ({"TERM": "xterm", "NO_COLOR": "1"}, False),
                        ({"TERM": "dumb", "NO_COLOR": ""}, False)]:
        assert (b"\x1b" in on_terminal(program, words, **base, **env)) == wanted, env
    assert "\x1b" not in run(program, *words, **base, TERM="xterm", NO_COLOR="").stdout


def busy(program, home):
    env = {"HOME": home, "XDG_DATA_HOME": home}
    book = home + "/notebook.sqlite"
    words = ["--notebook", book]
    assert run(program, "batch", "add", "heron", HERON, *words, **env).returncode == 0
    other = sqlite3.connect(book, isolation_level=None)
    other.execute("BEGIN EXCLUSIVE")
    done = run(program, "batch", "add", "second", HERON, *words, **env)
    assert done.returncode == 75 and not done.stdout and "notebook" in done.stderr, done
    other.execute("ROLLBACK")
    assert run(program, "batch", "add", "second", HERON, *words, **env).returncode == 0


def socket(program, _):
    def listed(*options):
        done = subprocess.run(["nm", "-D", *options, program], capture_output=True, text=True,
                              check=True)
        return {line.split()[-1].split("@")[0] for line in done.stdout.splitlines()}
    if any("asan" in name or "sanitizer" in name for name in listed()):
        sys.exit(77)  # a sanitizer's own code has sockets
    used = listed("--undefined-only")
    assert "fwrite" in used, "nm tells nothing"
    bad = used & {"socket", "connect", "getaddrinfo", "gethostbyname", "sendto", "recvfrom", "bind"}
    assert not bad, bad


def locale(program, home):
    said = [run(program, "plan", "triangle-shawl", HERON, HOME=home, XDG_DATA_HOME=home, LC_ALL=name,
                LANG=name).stdout for name in ("C", "C.UTF-8", "de_DE.UTF-8", "tr_TR", "nonsense")]
    assert said[0] and all(text == said[0] for text in said)


def pipe(program, home):
    words = " ".join([program, "yarn", HERON])
    for shell in (f"{words} >&-", f"trap '' PIPE; {{ {words}; echo $? >&3; }} 3>{home}/code | true; "
                  f"exit $(cat {home}/code)"):
        done = subprocess.run(["bash", "-c", shell], capture_output=True, text=True)
        assert done.returncode == 74 and "could not be written" in done.stderr, (shell, done)


def writing(program, home):
    """No file that a command reads or keeps is written over; each of these once was, with exit 0."""
    env = {"HOME": home, "XDG_DATA_HOME": home}
    batch, ideas, own = (os.path.join(home, name) for name in ("b.toml", "ideas.csv", "gristwright/templates/own.toml"))
    book = os.path.join(home, "gristwright/notebook.sqlite")
    shutil.copy(HERON, batch)
    pathlib.Path(ideas).write_text("idea\nhat\n")
    assert run(program, "batch", "add", "heron", batch, **env).returncode == 0
    pathlib.Path(own).parent.mkdir()
    shutil.copy("catalog/templates/garter-scarf.toml", own)
    os.symlink(book, os.path.join(home, "by-another-name"))
    commands = [["page", batch], ["card", batch], ["picture", "yarn", batch], ["answer", batch, ideas],
                ["page", "heron", "--suggestions", ideas], ["export"], ["export", "--csv"],
                ["export", "--notebook", book]]
    kept = [batch, ideas, own, book, os.path.join(home, "by-another-name")]
    before = [pathlib.Path(path).read_bytes() for path in kept]
    for words in commands:
        for path in kept:
            if path in (batch, ideas) and path not in words:
                continue  # not read by this one
            done = run(program, *words, "--out", path, "--replace", **env)
            assert done.returncode == 73 and not done.stdout and "cannot write" in done.stderr, (words, path, done)
        assert [pathlib.Path(path).read_bytes() for path in kept] == before, words
        out = os.path.join(home, "out")
        for more, code in [([], 0), ([], 73), (["--replace"], 0)]:
            assert run(program, *words, "-o", out, *more, **env).returncode == code, (words, more)
        os.unlink(out)
    done = run(program, "page", batch, "-o", "/proc/self/fd/1", **env)  # the answer itself
    assert done.returncode == 0 and done.stdout.rstrip().endswith("</html>") and "Written" in done.stderr, done


def main():
    name, program, root = sys.argv[1:4]
    os.chdir(root)
    with tempfile.TemporaryDirectory() as home:
        globals()[name](program, home)
    print(f"{name}: kept")


main()
