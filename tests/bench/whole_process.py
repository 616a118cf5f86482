#!/usr/bin/env python3
"""Whole answers against a bare process that opens SQLite in memory and prints a line.

usage: whole_process.py GRISTWRIGHT BARE
Interleaved runs; medians and the ratio. Peak memory of one answer.
"""
import resource
import statistics
import subprocess
import sys
import time

ROUNDS = 200
HERON = "docs/examples/heron.toml"


def timed(words):
    start = time.perf_counter()
    subprocess.run(words, stdout=subprocess.DEVNULL, check=True)
    return time.perf_counter() - start


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
    print(f"peak memory of the largest: {resource.getrusage(resource.RUSAGE_CHILDREN).ru_maxrss / 1024:.1f} MB")


main()
