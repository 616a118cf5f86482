#!/usr/bin/env python3
"""Promises about the running program.

usage: kept.py codes|lifesign|colour|busy|socket|locale|pipe|writing|own|at_once|stands|rescue PROGRAM ROOT
"""
import json
import os
import pathlib
import pty
import shutil
import signal
import sqlite3
import subprocess
import sys
import tempfile
import time

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


LONG_SPLIT = ["split", *[word for i in range(24) for word in ("--skein", f"{60 + 13 * i}m/{15 + 3 * i}g")],
              "--sample", "knitted", "--reserve", "7m", "--effort", "1000",
              *[word for name in ("triangle-shawl", "crescent-shawl", "garter-scarf", "watch-cap", "mittens",
                                  "plain-socks", "woven-scarf", "ribbed-scarf", "mesh-stole") for word in ("--piece", name)]]


def interrupted(program, home, words):
    """What it says on a terminal as its standard error, its answer and exit code, when interrupted at the first line."""
    mine, its = pty.openpty()
    with subprocess.Popen([program, *words], stdout=subprocess.PIPE, stderr=its, text=True,
                          env={"PATH": os.environ["PATH"], "HOME": home, "TERM": "dumb"}) as process:
        os.close(its)
        said = os.read(mine, 1000)  # waits for the first line
        process.send_signal(signal.SIGINT)
        try:
            while more := os.read(mine, 1000):
                said += more
        except OSError:  # it has ended
            pass
        answer = process.stdout.read()
    os.close(mine)
    return said.decode(), answer, process.returncode


def lifesign(program, home):
    said, answer, code = interrupted(program, home, LONG_SPLIT)
    assert "% of the effort" in said and "Ctrl-C" in said, said
    assert code == 130 and "this is the best so far" in said, (code, said)
    assert "Cut list" in answer and "(proven)" not in answer, answer
    said, answer, code = interrupted(program, home, [*LONG_SPLIT, "--json"])
    assert code == 130 and json.loads(answer)["outcome"] == "best found", answer
    with subprocess.Popen([program, *LONG_SPLIT], stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True,
                          env={"PATH": os.environ["PATH"], "HOME": home}) as process:
        time.sleep(1.5)  # nobody looks: nothing is said until it is stopped
        process.send_signal(signal.SIGINT)
        answer, said = process.communicate()
    assert process.returncode == 130 and "Cut list" in answer, answer
    assert said == "gristwright: stopped: this is the best so far\n", said
    for text in ["0", "-1", "a lot", "1e3", "2000"]:
        done = run(program, "split", HERON, "--sample", "knitted", "--effort", text, HOME=home)
        assert done.returncode == 65 and "--effort is a number from 0.1 to 1000" in done.stderr, done


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


def own(program, home):
    """One bad file of the person's own is noted, and every command goes on; text in it is text."""
    env = {"HOME": home, "XDG_DATA_HOME": home}
    folder = pathlib.Path(home, "gristwright/templates")
    folder.mkdir(parents=True)
    scarf = pathlib.Path("catalog/templates/garter-scarf.toml").read_text()
    (folder / "half.toml").write_text(scarf[:len(scarf) // 2])
    (folder / "My Hat.toml").write_text(scarf)
    (folder / "red.toml").write_text(scarf.replace('title   = "', 'title   = "\\u001b[31m'))
    (folder / "sub.toml").mkdir()
    os.symlink("nobody@host", folder / ".#lock.toml")
    (folder / "mine.toml").write_text(scarf.replace('title   = "', 'title   = "My '))
    assert run(program, "batch", "add", "heron", HERON, **env).returncode == 0
    for words in [["yarn", "heron"], ["makes", "heron"], ["plan", "mine", "heron"], ["split", "heron", "--main", "mine"],
                  ["compare", "scarf", "heron"], ["answer", "heron", "--idea", "hat"], ["templates"],
                  ["templates", "show", "mine"], ["spin-for", "mine"], ["start", "mine", "heron"]]:
        done = run(program, *words, **env)
        assert done.returncode == 0 and "\x1b" not in done.stdout + done.stderr, (words, done)
        for name in ["half", "My Hat", "red", "sub"] if words[0] != "start" else []:
            assert done.stderr.count(name + ".toml: ") + done.stderr.count(name + ".toml:") > 0, (words, name, done)
        assert "lock" not in done.stderr, done
    for words in [["batch", "list"], ["hands"], ["undo"], ["export"]]:
        done = run(program, *words, **env)
        assert done.returncode == 0 and not done.stderr, (words, done)
    for words in [["plan", "half", "heron"], ["templates", "check", str(folder / "red.toml")]]:
        done = run(program, *words, **env)
        assert done.returncode == 65 and ".toml:" in done.stderr and "\x1b" not in done.stderr, done
    deep = pathlib.Path(home, "deep.toml")
    deep.write_text(".".join(["a"] * 40000) + " = 1\n")
    for words in [["yarn", str(deep)], ["templates", "check", str(deep)]]:
        done = run(program, *words, **env)
        assert done.returncode == 65 and "deep.toml:1: a key has at most" in done.stderr, done


def at_once(program, home):
    """Parallel weighings: each is checked against those before it, in whatever order they come."""
    env = {**os.environ, "HOME": home, "XDG_DATA_HOME": home}
    for words in [["batch", "add", "heron", HERON], ["start", "garter-scarf", "heron"]]:
        assert subprocess.run([program, *words], capture_output=True, env=env).returncode == 0
    weigh = [subprocess.Popen([program, "weigh", "heron", "--row", str(10 * i), "--ball", f"{145 - i}g"],
                              stdout=subprocess.PIPE, stderr=subprocess.PIPE, env=env) for i in range(20, 0, -1)]
    codes = [child.wait() for child in weigh]
    assert 0 in codes and set(codes) <= {0, 65, 75}, codes
    for child in weigh:
        child.communicate()
    kept = json.loads(run(program, "export", **env).stdout)["batches"][0]["project"]["weighings"]
    rows = [int(one["row"]) for one in kept]
    assert rows == sorted(set(rows)) and len(rows) == codes.count(0), (rows, codes)
    assert run(program, "weigh", "heron", "--row", "210", "--ball", "100g", **env).returncode == 0


def stands(program, home):
    """A change that is kept while its answer cannot be written says so: it is not to be repeated."""
    env = {"HOME": home, "XDG_DATA_HOME": home}
    commands = [["batch", "add", "heron", HERON], ["swatch", "heron", "--stitches", "28/10cm"],
                ["start", "garter-scarf", "heron"], ["weigh", "heron", "--row", "0", "--ball", "140g"],
                ["batch", "change", "heron", "--wraps", "14wpi"], ["hands", "--forget"], ["undo"],
                ["batch", "remove", "heron"], ["undo"], ["page", HERON, "-o", home + "/x.html"]]
    for words in commands:
        done = subprocess.run(["bash", "-c", '"$@" >&-', "bash", program, *words], capture_output=True, text=True,
                              env={**os.environ, **env})
        assert done.returncode == 74 and "; but " in done.stderr, (words, done)
    assert os.path.getsize(home + "/x.html") > 1000
    assert "changed already" in subprocess.run(
        ["bash", "-c", '"$@" >&-', "bash", program, "batch", "change", "heron", "--wraps", "15wpi"],
        capture_output=True, text=True, env={**os.environ, **env}).stderr
    done = subprocess.run(["bash", "-c", '"$@" >&-', "bash", program, "yarn", HERON], capture_output=True, text=True)
    assert done.returncode == 74 and "; but " not in done.stderr, done


def rescue(program, home):
    """A damaged notebook gives back what can be read, into a new file that import takes."""
    env = {"HOME": home, "XDG_DATA_HOME": home}
    book, out = home + "/gristwright/notebook.sqlite", home + "/out.json"
    for i in range(40):
        assert run(program, "batch", "add", f"heron {i}", HERON, **env).returncode == 0
    whole = pathlib.Path(book).read_bytes()
    other = sqlite3.connect(book)
    page = other.execute("SELECT rootpage FROM sqlite_schema WHERE name = 'change'").fetchone()[0]
    other.close()
    damaged = bytearray(whole)  # from the middle on, and the undo log
    for at in [len(whole) // 2 // 4096, len(whole) // 2 // 4096 + 1, page - 1]:
        damaged[4096 * at:4096 * (at + 1)] = os.urandom(4096)
    pathlib.Path(book).write_bytes(damaged)
    assert run(program, "export", "--rescue", **env).returncode == 64
    assert run(program, "export", "--rescue", "--out", book, "--replace", **env).returncode == 73
    done = run(program, "export", "--rescue", "--out", out, **env)
    assert done.returncode == 0 and "are written to" in done.stdout, done
    assert pathlib.Path(book).read_bytes() == damaged
    assert run(program, "export", "--rescue", "--out", out, **env).returncode == 73
    done = run(program, "import", out, "--unchecked", "--notebook", home + "/new.sqlite", **env)
    assert done.returncode == 0, done
    assert "heron 0" in run(program, "batch", "list", "--all", "--notebook", home + "/new.sqlite", **env).stdout


def main():
    name, program, root = sys.argv[1:4]
    os.chdir(root)
    with tempfile.TemporaryDirectory() as home:
        globals()[name](program, home)
    print(f"{name}: kept")


main()
