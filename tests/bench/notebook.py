#!/usr/bin/env python3
"""Every command on a notebook of 2,000 batches, 10,000 swatches and 50,000 suggestions against the
same command on a notebook with one batch, in one run.

usage: notebook.py GRISTWRIGHT
Medians, interleaved. What moves everything (export, backup, batch list --all) grows with what it
moves and is timed on the large one alone. Lines that begin with a bar are rows of a table: what, ours,
against, ratio.
"""
import json
import os
import statistics
import subprocess
import sys
import tempfile
import time

BATCHES, SWATCHES, SUGGESTIONS, ROUNDS = 2000, 5, 25, 21


def text(value):
    return {"text": value, "where": ""}


def batch(i):
    fields = {"preparation": "carded", "draw": "long", "plies": "2", "fibre": "Corriedale"}
    return {
        "name": f"batch {i:04}",
        "skeins": [{"name": text(""), "length": text(f"{150 + i % 90}m"), "mass": text(f"{36 + i % 9}g"),
                    "measured": text("")}],
        "fields": {key: [text(value)] for key, value in fields.items()},
        "swatches": [{"kind": "knitted", "date": "", "own_hands": True,
                      "measured": {"stitches": f"{27 + (i + s) % 5}/10cm", "washed": "yes", "look": "3/5"}}
                     for s in range(SWATCHES)],
        "suggestions": [{"idea": ["cabled hat", "lace shawl", "woven scarf"][s % 3], "needs": f"{100 + s}m"}
                        for s in range(SUGGESTIONS)],
    }


def book(program, folder, name, count):
    path = os.path.join(folder, name)
    with open(path + ".json", "w", encoding="utf-8") as file:
        json.dump({"notebook": 2, "batches": [batch(i) for i in range(count)]}, file)
    start = time.perf_counter()
    subprocess.run([program, "import", path + ".json", "--notebook", path], check=True, stdout=subprocess.DEVNULL)
    print(f"import of {count} batches: {time.perf_counter() - start:.2f} s")
    return path


def timed(words, may_fail=False):
    start = time.perf_counter()
    done = subprocess.run(words, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL, check=False)
    assert may_fail or done.returncode == 0, words
    return time.perf_counter() - start


COMMANDS = {
    "batch list": ["batch", "list"],
    "batch show": ["batch", "show", "batch 0000"],
    "batch change": ["batch", "change", "batch 0000", "--staple", "75mm"],
    "yarn": ["yarn", "batch 0000"],
    "makes": ["makes", "batch 0000"],
    "makes FILE": ["makes", "docs/examples/heron.toml"],
    "plan": ["plan", "triangle-shawl", "batch 0000"],
    "answer one": ["answer", "batch 0000", "--idea", "cabled hat"],
    "answer kept": ["answer", "batch 0000"],
    "swatch": ["swatch", "batch 0000", "--stitches", "28/10cm"],
    "undo": ["undo"],
    "start": ["start", "cabled-hat", "batch 0000"],
    "hands": ["hands"],
    "spin-for": ["spin-for", "woven-shawl"],
}


def main():
    program = sys.argv[1]
    ratios = {}
    with tempfile.TemporaryDirectory() as folder:
        small, large = book(program, folder, "small", 1), book(program, folder, "large", BATCHES)
        for name, words in COMMANDS.items():
            times = {small: [], large: []}
            for _ in range(ROUNDS):
                for path, taken in times.items():
                    taken.append(timed([program, *words, "--notebook", path]))
            one, all_ = (statistics.median(taken) for taken in times.values())
            ratios[name] = all_ / one
            print(f"{name:<13} {1000 * one:7.2f} ms  {1000 * all_:7.2f} ms  x {all_ / one:.2f}")
        for words in (["export"], ["batch", "list", "--all"], ["hands", "--forget"]):
            print(f"{' '.join(words):<21} {timed([program, *words, '--notebook', large]):.2f} s on the large one")
        each, whole = (os.path.getsize(path) / 1e6 for path in (small, large))
    worst = max(ratios, key=ratios.get)
    print(f"| notebook of {BATCHES:,} batches, its file | {whole:.1f} MB | of one batch: {each:.2f} MB"
          f" | {1000 * (whole - each) / (BATCHES - 1):.1f} kB a batch |")
    print(f"| the same, the command it slows most: {worst} | | on one batch | {ratios[worst]:.2f} x the time"
          " (under 3 wished) |")


main()
