#!/usr/bin/env python3
"""How the program behaves on the command line: help, manual, examples, suggestions, reference.

usage: manners.py help|manual|examples|suggestions|reference|folders PROGRAM ROOT
"""
import os
import pathlib
import re
import shlex
import shutil
import subprocess
import sys
import tempfile

HERON = "docs/examples/heron.toml"


class Shell:
    """Runs the program in one folder with one home."""

    def __init__(self, program, folder, home):
        self.program, self.folder = program, folder
        self.env = {**os.environ, "HOME": home, "XDG_DATA_HOME": home, "NO_COLOR": "1"}
        self.env.pop("COLUMNS", None)

    def run(self, *words):
        return subprocess.run([self.program, *words], capture_output=True, text=True,
                              cwd=self.folder, env=self.env)

    def said(self, *words):
        done = self.run(*words)
        assert done.returncode == 0 and not done.stderr, (words, done)
        return done.stdout

    def names(self, what):
        return self.said("help", "--print", what).split()


def check_help(shell, _):
    """79 columns; --help, -h and `help NAME` agree; help alone lists commands and topics."""
    overview = shell.said("help")
    assert overview == shell.said("--help") == shell.said("-h")
    topics = re.findall(r"^  ([a-z-]+) ", overview.split("Topics")[1], re.M)
    assert topics == ["units", "marks", "certainty", "wraps", "fibres", "fabrics",
                      "exit-codes"], topics
    texts = [overview]
    for command in shell.names("commands"):
        assert f"\n  {command} " in overview, command
        texts.append(shell.said(command, "--help"))
        assert texts[-1] == shell.said(command, "-h") == shell.said("help", command), command
    texts += [shell.said("help", topic) for topic in topics]
    wide = [line for text in texts for line in text.splitlines() if len(line) > 79]
    assert not wide, wide
    assert re.fullmatch(r"gristwright \d+\.\d+\.\d+\n", shell.said("--version"))
    broken = pathlib.Path(shell.env["HOME"], "gristwright", "templates", "broken.toml")
    broken.parent.mkdir(parents=True)
    broken.write_text("broken = ")
    done = shell.run("makes", HERON)  # it is noted where it matters,
    assert done.returncode == 0 and "broken.toml" in done.stderr, done
    assert shell.said("help") == overview  # and no help says anything of it


def check_manual(shell, _):
    """Each page passes mandoc's own examination and holds every option of its command."""
    pages = {name: shell.said("help", *name, "--print", "manual")
             for name in [(), *((command,) for command in shell.names("commands"))]}
    with tempfile.TemporaryDirectory() as folder:
        for name, text in pages.items():
            page = pathlib.Path(folder, "-".join(["gristwright", *name]) + ".1")
            page.write_text(text)
        files = sorted(str(path) for path in pathlib.Path(folder).iterdir())
        lint = subprocess.run(["mandoc", "-T", "lint", "-W", "style", *files], text=True,
                              capture_output=True)
        # Pages refer to each other, and are not yet where a manual is looked for.
        bad = [line for line in lint.stdout.splitlines() if "referenced manual not found" not in line]
        assert not bad, "\n".join(bad)
        for name, text in pages.items():
            shown = subprocess.run(["mandoc", "-T", "utf8"], input=text, capture_output=True,
                                   text=True, check=True).stdout
            shown = re.sub(".\b", "", shown)
            assert "EXIT STATUS" in shown and "SEE ALSO" in shown, name
            if name:
                options = re.findall(r"^  (--[a-z-]+)", shell.said(*name, "--help"), re.M)
                missing = [option for option in options if option not in shown]
                assert not missing, (name, missing)
    assert shell.run("help", "yran", "--print", "manual").returncode == 64


def check_examples(shell, root):
    """The example in each command's help works, in the order of a batch's life."""
    life = ["batch", "start", "weigh", "swatch", "export"]
    commands = life + [name for name in shell.names("commands") if name not in life]
    tried = 0
    with tempfile.TemporaryDirectory() as folder, tempfile.TemporaryDirectory() as empty:
        for file in pathlib.Path(root, "docs/examples").iterdir():
            shutil.copy(file, folder)
        here = Shell(shell.program, folder, folder)
        for command in commands:
            example = re.search(r"^For example:\n  gristwright (.*)$", shell.said(command, "--help"), re.M)
            if not example:
                continue
            tried += 1
            place = Shell(shell.program, folder, empty) if command == "import" else here
            done = place.run(*shlex.split(example.group(1)))
            assert done.returncode == 0, (example.group(1), done)
    assert tried >= 18, tried


# What was mistyped -> what is offered.
TYPOS = [
    (["mkaes"], "makes"), (["help", "certianty"], "certainty"), (["help", "yran"], "yarn"),
    (["help", "--print", "manaul"], "manual"), (["batch", "lits"], "list"),
    (["templates", "shwo", "x"], "show"), (["templates", "show", "triangel-shawl"], "triangle-shawl"),
    (["picture", "clot", "garter-scarf", HERON, "-o", "x.svg"], "cloth"),
    (["plan", "triangel-shawl", HERON], "triangle-shawl"), (["compare", "shwal", HERON], "shawl"),
    (["spin-for", "wovn-shawl"], "woven-shawl"), (["spin-more", "wovn-shawl", HERON], "woven-shawl"),
    (["split", HERON, "--keep", "triangel-shawl"], "triangle-shawl"),
    (["split", HERON, "--piece", "mitens"], "mittens"),
    (["split", HERON, "--sample", "knited"], "knitted"),
    (["split", HERON, "--sample", "knitted:cabels"], "cables"),
    (["split", HERON, "--sample", "woven:plian"], "plain"),
    (["split", HERON, "--sample", "knitted", "--join-cost", "hihg"], "high"),
    (["yarn", HERON, "--units", "metirc"], "metric"), (["yarn", HERON, "--prep", "cardde"], "carded"),
    (["yarn", HERON, "--draw", "lnog"], "long"), (["yarn", HERON, "--measured", "wahsed"], "washed"),
    (["yarn", HERON, "--wraps-how", "pakced"], "packed"),
    (["yarn", HERON, "--fibre", "Coriedale"], "Corriedale"), (["yarn", HERON, "--wrpas", "3"], "--wraps"),
    (["makes", HERON, "--craft", "wovne"], "woven"),
    (["answer", HERON, "--idea", "hat", "--craft", "knited"], "knitted"),
    (["answer", HERON, "--idea", "hat", "--weight", "super fien"], "super fine"),
    (["start", "triangel-shawl", "heron"], "triangle-shawl"), (["makes", "hreon"], "heron"),
    (["batch", "show", "hreon"], "heron"), (["weigh", "hreon", "--row", "3", "--ball", "9g"], "heron"),
    (["swatch", "heron", "--stitches", "28/10cm", "--fabric", "gartre"], "garter"),
    (["swatch", "heron", "--stitches", "28/10cm", "--firmness", "drapy"], "drapey"),
    (["swatch", "heron", "--finished", "17x21cm", "--reed", "20cm", "--finish", "hard fuled"],
     "hard fulled"),
]


def check_suggestions(shell, _):
    """A slip at any level gets the word that was meant; every option's own slip does too."""
    shell.said("batch", "add", "heron", HERON)
    bad = []
    typos = TYPOS + [([command, option + "x"], option)
                     for command in shell.names("commands")
                     for option in re.findall(r"^  (--[a-z-]+)", shell.said(command, "--help"), re.M)]
    for words, meant in typos:
        done = shell.run(*words)
        if done.returncode not in (64, 65) or f"did you mean '{meant}'?" not in done.stderr:
            bad.append(f"{words}: exit {done.returncode}: {done.stderr}")
    assert not bad, "\n".join(bad)
    assert len(typos) > 150, len(typos)


def check_reference(shell, root):
    """docs/reference.md is what the program prints now."""
    written = pathlib.Path(root, "docs/reference.md").read_text()
    assert written == shell.said("help", "--print", "reference"), \
        "docs/reference.md is stale: gristwright help --print reference > docs/reference.md"


def check_folders(shell, root):
    """Every command has its session under tests/cli and its place in the reference."""
    for command in shell.names("commands"):
        session = pathlib.Path(root, "tests/cli", command, "session.md")
        assert session.exists(), f"{command} has no {session}"
        assert f"$ gristwright {command}" in session.read_text(), session


def main():
    check, program, root = sys.argv[1:4]
    with tempfile.TemporaryDirectory() as home:
        globals()["check_" + check](Shell(program, root, home), root)
    print(f"{check}: as it should be")


main()
