#!/usr/bin/env python3
"""Page and cards before an independent judge, axe-core from npm, in light and in dark: nothing serious.

usage: judged.py PROGRAM ROOT BUILD

axe-core is fetched once into BUILD. Where it or chromium cannot be had the test is skipped (77), not passed.
"""
import os
import subprocess
import sys
import tempfile

import browser

PROGRAM, ROOT, BUILD = map(os.path.abspath, sys.argv[1:4])
HERON = os.path.join(ROOT, "docs/examples/heron.toml")
ASKED = ["--suggestions", os.path.join(ROOT, "docs/examples/suggestions.csv"), "--main", "triangle-shawl", "--sample", "knitted"]
DARK = "--blink-settings=preferredColorScheme=0"


def written(folder, name, *words):
    path = os.path.join(folder, name)
    subprocess.run([PROGRAM, *words, "-o", path, "--replace"], check=True, capture_output=True,
                   env={**os.environ, "HOME": folder, "XDG_DATA_HOME": folder})
    return path


def main():
    if not browser.installed():
        print("AXE-CORE NOT RUN: chromium is not installed")
        return 77
    script = browser.axe_script(BUILD)
    if not script:
        return 77
    serious = []
    with tempfile.TemporaryDirectory() as folder:
        for page in (written(folder, "page.html", "page", HERON, *ASKED), written(folder, "cards.html", "card", HERON)):
            for light in ([], [DARK]):
                for found in browser.findings(folder, page, script, "--window-size=1280,1600", *light):
                    print("axe-core:", os.path.basename(page), *found)
                    serious += [found] if found[0] in ("serious", "critical") else []
    print(f"{len(serious)} serious findings")
    return 1 if serious else 0


sys.exit(main())
