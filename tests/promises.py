#!/usr/bin/env python3
"""Every test that docs/promises.md names exists, and every "promise:" test stands there.

usage: promises.py ROOT BUILD
"""
import pathlib
import re
import subprocess
import sys


def main():
    root, build = sys.argv[1:3]
    listed = subprocess.run(["ctest", "--test-dir", build, "-N"], check=True, capture_output=True,
                            text=True).stdout
    tests = set(re.findall(r"^ *Test +#\d+: (.*)$", listed, re.M))
    rows = [line for line in pathlib.Path(root, "docs/promises.md").read_text().splitlines()
            if line.startswith("| ") and not line.startswith(("| ---", "| promise "))]
    named = [(row, re.findall(r"`([^`]+)`", row.rstrip(" |").rsplit(" | ", 1)[1])) for row in rows]
    bad = [f"no test is named: {row}" for row, names in named if not names]
    told = {name for _, names in named for name in names}
    bad += [f"there is no test '{name}'" for name in sorted(told - tests)]
    bad += [f"docs/promises.md lacks '{name}'" for name in sorted(tests - told)
            if name.startswith("promise: ")]
    print("\n".join(bad))
    print(f"{len(rows)} promises, {len(told)} tests named, {len(bad)} failures")
    sys.exit(bool(bad) or len(rows) < 15)


main()
