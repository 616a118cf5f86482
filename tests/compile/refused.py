#!/usr/bin/env python3
"""Code that must not compile: each line below is refused, and its right form is not.

usage: refused.py COMPILER ROOT
"""
import concurrent.futures
import os
import subprocess
import sys

HEAD = '#include "engine/units/quantity.hpp"\nusing namespace gristwright;\nvoid take(Length);\n'
# (what, right, wrong)
PAIRS = [
    ("metres plus grams", "auto x = metres(1) + metres(2);", "auto x = metres(1) + grams(2);"),
    ("metres less than grams", "bool x = metres(1) < metres(2);", "bool x = metres(1) < grams(2);"),
    ("a bare number for a length", "Length x = metres(3);", "Length x = 3.0;"),
    ("a bare number handed over", "void f() { take(metres(3)); }", "void f() { take(3.0); }"),
    ("a length for a bare number", "double x = in_metres(metres(3));", "double x = metres(3);"),
    ("a length plus a number", "auto x = metres(1) + metres(2);", "auto x = metres(1) + 2.0;"),
    ("a gauge for a sett", "Sett x = ends_per_10cm(40);", "Sett x = stitches_per_10cm(40);"),
    ("grist upside down", "LinearDensity x = grams(1) / metres(1);",
     "LinearDensity x = metres(1) / grams(1);"),
    ("a mass read in metres", "double x = in_grams(grams(1));", "double x = in_metres(grams(1));"),
]


def compiles(compiler, root, line):
    done = subprocess.run([compiler, f"-I{root}", "-std=c++20", "-fsyntax-only", "-x", "c++", "-"],
                          input=HEAD + line + "\n", text=True, capture_output=True)
    return done.returncode == 0


def main():
    compiler, root = sys.argv[1:3]
    lines = [line for _, right, wrong in PAIRS for line in (right, wrong)]
    with concurrent.futures.ThreadPoolExecutor(os.cpu_count()) as pool:
        accepted = list(pool.map(lambda line: compiles(compiler, root, line), lines))
    failures = 0
    for (what, right, wrong), right_fits, wrong_fits in zip(PAIRS, accepted[::2], accepted[1::2]):
        if not right_fits or wrong_fits:
            failures += 1
            print(f"{what}: '{wrong}' compiles" if wrong_fits else f"'{right}' does not compile")
    print(f"{len(PAIRS)} mixtures, {failures} failures")
    sys.exit(failures > 0)


main()
