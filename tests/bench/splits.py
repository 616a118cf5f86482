#!/usr/bin/env python3
"""Splits as spinners type them, as whole commands: processor time against a bare process, and the proof.

usage: splits.py GRISTWRIGHT BARE [GROUP...]     all groups, or those that begin with these words
The lines come from one fixed seed: from two skeins to forty, samples, a main project and further articles. A line
that the program refuses (a warp longer than the longest skein) is drawn again. Lines that begin with a bar are rows of
a table: what, ours, against, ratio.
"""
import json
import os
import random
import statistics
import subprocess
import sys
import time

TEMPLATES = [
    "triangle-shawl", "crescent-shawl", "half-circle-shawl", "mesh-stole", "garter-scarf", "ribbed-scarf", "watch-cap",
    "cabled-hat", "ear-headband", "fingerless-mitts", "wrist-cuffs", "mittens", "plain-socks", "mesh-cowl",
    "cabled-cowl", "small-pouch", "sleeveless-vest", "seed-mug-mats", "woven-scarf", "woven-shawl", "woven-cowl",
    "woven-headband", "woven-mug-mats", "hand-towel", "table-runner", "one-mug-mat", "woven-bag-panel", "twill-scarf"]
SAMPLES = ["knitted", "woven", "knitted:cables", "woven:plain"]
AGAIN = int(os.environ.get("AGAIN", 3))  # times that each line is run; its median counts


class Dice:
    """Only random(), whose numbers no release of Python has changed."""

    def __init__(self, seed):
        self.random = random.Random(seed).random

    def whole(self, low, high):
        return low + int(self.random() * (high - low + 1))

    def one_of(self, things):
        return things[self.whole(0, len(things) - 1)]

    def some_of(self, things, count):
        things = list(things)
        return [things.pop(self.whole(0, len(things) - 1)) for _ in range(count)]


def line(dice, skeins, articles):
    """The words of one command: so many skeins and articles, up to two samples, and perhaps a reserve."""
    grist = 2.2 + 4 * dice.random()  # m/g
    words = ["split"]
    for _ in range(skeins):
        grams = 20 + 40 * dice.random()
        words += ["--skein", f"{grams * grist * (0.94 + 0.12 * dice.random()):.0f}m/{grams:.1f}g"]
    for sample in dice.some_of(SAMPLES, dice.whole(0, 2)):
        words += ["--sample", sample]
    names = dice.some_of(TEMPLATES, articles)
    if dice.random() < 0.6:
        words += ["--main", names.pop()]
    for name in names:
        words += ["--piece", name]
    if dice.random() < 0.35:
        words += ["--reserve", f"{dice.whole(3, 12)}m"]
    if dice.random() < 0.4:
        words += ["--join-cost", dice.one_of(["low", "high"])]
    return words


def run(words, check=False):
    """Processor seconds, seconds, exit code and what it printed."""
    start = time.perf_counter()
    with subprocess.Popen(words, stdout=subprocess.PIPE, stderr=subprocess.DEVNULL) as process:
        said = process.stdout.read()
        _, status, used = os.wait4(process.pid, 0)
        process.returncode = os.waitstatus_to_exitcode(status)
    if check and process.returncode != 0:
        raise SystemExit(f"{words}: {process.returncode}")
    return used.ru_utime + used.ru_stime, time.perf_counter() - start, process.returncode, said


def answered(program, dice, count, draw):
    """So many lines that are answered, and how many were refused on the way."""
    lines, refused = [], 0
    while len(lines) < count:
        words = [program, *draw(dice), "--json"]
        code = run(words)[2]
        if code == 0:
            lines.append(words)
        elif code == 65:
            refused += 1
        else:
            raise SystemExit(f"exit {code}: {' '.join(words)}")
    return lines, refused


GROUPS = {
    "2 to 8 skeins, 1 to 7 wishes": (120, lambda d: line(d, d.whole(2, 8), d.whole(1, 5))),
    "9 to 14 skeins, 2 to 10 wishes": (25, lambda d: line(d, d.whole(9, 14), d.whole(2, 8))),
    "20 skeins, 10 wishes": (4, lambda d: line(d, 20, 10)),
    "40 skeins, 20 wishes": (3, lambda d: line(d, 40, 20)),
}


def measured(program, bare, name, count, draw):
    lines, refused = answered(program, Dice(name), count, draw)
    seconds, clock, gaps, outcomes, bares = [], [], [], {}, []
    for words in lines:
        runs = [run(words, check=True) for _ in range(AGAIN)]
        bares += [run([bare], check=True)[0] for _ in range(AGAIN)]
        seconds.append(statistics.median(r[0] for r in runs))
        clock.append(statistics.median(r[1] for r in runs))
        said = json.loads(runs[0][3])
        gaps.append(said["gap"])
        outcomes[said["outcome"]] = outcomes.get(said["outcome"], 0) + 1
        if os.environ.get("EACH"):
            print(f"{1000 * seconds[-1]:9.1f} ms  gap {100 * gaps[-1]:6.3f} %  {said['outcome']:12}",
                  " ".join(words[1:]).replace("--", "-"), flush=True)
    middle, least = statistics.median(seconds), statistics.median(bares)
    proof = ", ".join(f"{n} {what}" for what, n in sorted(outcomes.items()))
    print(f"{name}: {len(lines)} lines ({refused} refused), {proof}; processor time: median {1000 * middle:.1f} ms, "
          f"worst {1000 * max(seconds):.1f} ms, sum {sum(seconds):.2f} s; worst by the clock "
          f"{1000 * max(clock):.0f} ms")
    print(f"| split, {name}, median and worst of {len(lines)} | {1000 * middle:.1f} and {1000 * max(seconds):.0f} ms, "
          f"largest gap {100 * max(gaps):.2f} % | bare process: {1000 * least:.2f} ms "
          f"| {middle / least:.1f} x the time at the median |", flush=True)


def main():
    program, bare, *wanted = sys.argv[1:]
    for name, (count, draw) in GROUPS.items():
        if not wanted or any(name.startswith(word) for word in wanted):
            measured(program, bare, name, count, draw)


main()
