#!/usr/bin/env python3
"""Whole answers against a bare process that opens SQLite in memory and prints a line.

usage: whole_process.py GRISTWRIGHT BARE PEAK
Interleaved runs; medians and the ratio. PEAK runs a program and says its peak memory. Lines that begin
with a bar are rows of a table: what, ours, against, ratio.
"""
import os
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


def peak_mb(peak, words):
    done = subprocess.run([peak, *words], stdout=subprocess.DEVNULL, stderr=subprocess.PIPE, check=True, text=True)
    return int(done.stderr.split()[-1]) / 1024


def many(program, peak):
    """A hundred thousand suggestions of the shape of real ones."""
    with tempfile.TemporaryDirectory() as folder:
        path = os.path.join(folder, "ideas.csv")
        with open(path, "w", encoding="utf-8") as file:
            file.write("idea,needs,weight,gauge,from\n")
            for i in range(100_000):
                needs = ["", f"{50 + i % 1450}m", f"{60 + i % 1500} yd"][i % 3]
                file.write(f'"{IDEAS[i % 10]}, {i % 977}",{needs},{["", "fine"][i % 2]},'
                           f'{["", "7 st/in"][i // 7 % 2]},"visitor {i}"\n')
        words = [program, "answer", HERON, path, "--out", os.path.join(folder, "out.csv")]
        taken, memory = timed(words), peak_mb(peak, words)
    print(f"| 100,000 suggestions answered | {taken:.2f} s, {memory:.1f} MB | | {100_000 / taken:,.0f} a second |")


def main():
    program, bare, peak = sys.argv[1:]
    answers = {"makes": [program, "makes", HERON], "plan": [program, "plan", "woven-scarf", HERON],
               "yarn": [program, "yarn", HERON]}
    times = {name: [] for name in ["bare", *answers]}
    for _ in range(ROUNDS):
        times["bare"].append(timed([bare]))
        for name, words in answers.items():
            times[name].append(timed(words))
    yardstick = statistics.median(times["bare"])
    least = peak_mb(peak, [bare])
    for name, words in answers.items():
        middle, memory = statistics.median(times[name]), peak_mb(peak, words)
        print(f"| {name}, whole process | {1000 * middle:.2f} ms | bare process: {1000 * yardstick:.2f} ms"
              f" | {middle / yardstick:.2f} x the time |")
        print(f"| {name}, peak memory | {memory:.1f} MB | bare process: {least:.1f} MB"
              f" | {memory / least:.2f} x the memory |")
    many(program, peak)


main()
