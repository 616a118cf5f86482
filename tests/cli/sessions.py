#!/usr/bin/env python3
"""Runs the console sessions in a text file and compares every byte.

usage: sessions.py PROGRAM FILE

In FILE a block fenced by ```console holds commands ("$ gristwright ...", a trailing backslash
continues) and what they print on stdout; lines "! text" are stderr; "[exit N]" ends a failing one.
"""
import difflib
import os
import re
import shlex
import subprocess
import sys


def commands(text):
    for block in re.findall(r"^```console\n(.*?)^```", text, re.S | re.M):
        for part in re.split(r"^\$ ", block.replace("\\\n", ""), flags=re.M)[1:]:
            command, _, expected = part.partition("\n")
            yield command, expected


def shown(done):
    out = done.stdout
    out += "".join(f"! {line}\n" for line in done.stderr.splitlines())
    return out + (f"[exit {done.returncode}]\n" if done.returncode else "")


def main():
    program, path = sys.argv[1:]
    count = failures = 0
    for command, expected in commands(open(path, encoding="utf-8").read()):
        words = shlex.split(command)
        assert words[0] == "gristwright", command
        done = subprocess.run([program, *words[1:]], capture_output=True, text=True,
                              env={**os.environ, "LC_ALL": "C", "NO_COLOR": "1"})
        count += 1
        if shown(done) != expected:
            failures += 1
            print("$ " + command)
            sys.stdout.writelines(difflib.unified_diff(
                expected.splitlines(True), shown(done).splitlines(True), "expected", "printed"))
    print(f"{count} commands, {failures} differ")
    sys.exit(failures > 0 or count == 0)


main()
