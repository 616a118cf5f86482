#!/usr/bin/env python3
"""Runs the console sessions in a text file and compares every byte.

usage: sessions.py PROGRAM FILE [--write]

In FILE a block fenced by ```console holds commands ("$ gristwright ...", a trailing backslash
continues) and what they print on stdout; lines "! text" are stderr; "[exit N]" ends a failing one.
Commands run in the project's root; those of one block share an empty home folder, which a block
fenced by ```console continued takes over from the block before. --write brings the file up to date
instead of comparing: read the difference before you believe it.
"""
import difflib
import os
import re
import shlex
import subprocess
import sys
import tempfile

os.environ.pop("COLUMNS", None)  # lines as long as in a file, whatever the terminal
ROOT = os.path.dirname(os.path.dirname(os.path.dirname(os.path.abspath(__file__))))


def shown(done):
    out = done.stdout
    out += "".join(f"! {line}\n" for line in done.stderr.splitlines())
    return out + (f"[exit {done.returncode}]\n" if done.returncode else "")


def answer(program, command, home):
    words = shlex.split(command.replace("\\\n", ""))
    assert words[0] == "gristwright", command
    return shown(subprocess.run([program, *words[1:]], capture_output=True, text=True, cwd=ROOT,
                                env={**os.environ, "LC_ALL": "C", "NO_COLOR": "1", "HOME": home,
                                     "XDG_DATA_HOME": home}))


def main():
    program, path = sys.argv[1:3]
    text = open(path, encoding="utf-8").read()
    count = failures = 0

    home = None

    def block(match):
        nonlocal home
        continued, commands = match.groups()
        if not (continued and home):
            home = tempfile.TemporaryDirectory()  # the one before is removed
        return f"```console{continued}\n{run_block(commands, home.name)}```"

    def run_block(text, home):
        nonlocal count, failures
        out = ""
        for part in re.split(r"^\$ ", text, flags=re.M)[1:]:
            command, expected = re.match(r"((?:[^\n]*\\\n)*[^\n]*)\n(.*)", part, re.S).groups()
            printed = answer(program, command, home)
            count += 1
            if printed != expected:
                failures += 1
                print("$ " + command)
                sys.stdout.writelines(difflib.unified_diff(
                    expected.splitlines(True), printed.splitlines(True), "expected", "printed"))
            out += f"$ {command}\n{printed}"
        return out

    written = re.sub(r"^```console( continued|)\n(.*?)^```", block, text, flags=re.S | re.M)
    if sys.argv[3:] == ["--write"]:
        open(path, "w", encoding="utf-8").write(written)
        failures = 0
    print(f"{count} commands, {failures} differ")
    sys.exit(failures > 0 or count == 0)


main()
