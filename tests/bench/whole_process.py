#!/usr/bin/env python3
"""Whole answers against a bare process that opens SQLite in memory and prints a line.

usage: whole_process.py GRISTWRIGHT BARE
Interleaved runs; medians and the ratio. Peak memory of one answer.
"""
import os
import resource
import statistics
import subprocess
import sys
import tempfile
import time

ROUNDS = 200
HERON = "docs/examples/heron.toml"


def timed(words):
    start = time.perf_counter()
    subprocess.run(words, stdout=subprocess.DEVNULL, check=True)
    return time.perf_counter() - start


IDEAS = ["cabled hat", "lace shawl", "woven scarf", "socks", "mittens", "a warm cowl", "pullover",
         "weave a shawl", "unknown gizmo", "garter scarf for my aunt"]


def many(program):
    """A hundred thousand suggestions of the shape of real ones."""
    with tempfile.TemporaryDirectory() as folder:
        path = os.path.join(folder, "ideas.csv")
        with open(path, "w", encoding="utf-8") as file:
            file.write("idea,needs,weight,gauge,from\n")
            for i in range(100_000):
                needs = ["", f"{50 + i % 1450}m", f"{60 + i % 1500} yd"][i % 3]
                file.write(f'"{IDEAS[i % 10]}, {i % 977}",{needs},{["", "fine"][i % 2]},'
                           f'{["", "7 st/in"][i // 7 % 2]},"visitor {i}"\n')
        taken = timed([program, "answer", HERON, path, "--out", os.path.join(folder, "out.csv")])
    print(f"100,000 suggestions in {taken:.2f} s")


def main():
    program, bare = sys.argv[1:]
    answers = {"makes": [program, "makes", HERON], "plan": [program, "plan", "woven-scarf", HERON],
               "yarn": [program, "yarn", HERON]}
    times = {name: [] for name in ["bare", *answers]}
    for _ in range(ROUNDS):
        times["bare"].append(timed([bare]))
        for name, words in answers.items():
            times[name].append(timed(words))
    yardstick = statistics.median(times["bare"])
    for name, taken in times.items():
        middle = statistics.median(taken)
        print(f"{name:<8} {1000 * middle:7.2f} ms  {middle / yardstick:5.2f} x bare")
    many(program)
    print(f"peak memory of the largest: {resource.getrusage(resource.RUSAGE_CHILDREN).ru_maxrss / 1024:.1f} MB")


main()
