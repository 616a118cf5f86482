#!/usr/bin/env python3
"""Project sheets print on one side, on A4 and on Letter, nothing smaller than 8 point.

usage: sides.py PROGRAM ROOT
"""
import os
import re
import subprocess
import sys
import tempfile

sys.path.insert(0, os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "page"))
import browser  # noqa: E402

PROGRAM, ROOT = os.path.abspath(sys.argv[1]), os.path.abspath(sys.argv[2])
# Few words and many, one piece and many, knitted and woven, in inches; and more than the yarn makes.
SHEETS = [["watch-cap", "heron.toml"], ["stranded-yoke-pullover", "heron.toml"], ["sleeveless-vest", "hearth.toml"],
          ["woven-two-panel-wrap", "heron.toml", "--units", "both"], ["mesh-stole", "sedge.toml"],
          ["double-width-blanket", "sedge.toml"]]


def sides(folder, page):
    """Of a PDF's pages each is an object of that type."""
    pdf = os.path.join(folder, "sheet.pdf")
    browser.chromium(folder, page, f"--print-to-pdf={pdf}", "--no-pdf-header-footer")
    with open(pdf, "rb") as file:
        return len(re.findall(rb"/Type /Page\b", file.read()))


def check_sheet(folder, words):
    page = os.path.join(folder, "sheet.html")
    batch = os.path.join(ROOT, "docs/examples", words[1])
    env = {**os.environ, "HOME": folder, "XDG_DATA_HOME": folder}
    subprocess.run([PROGRAM, "sheet", words[0], batch, *words[2:], "-o", page, "--replace"], check=True, env=env,
                   stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    with open(page, encoding="utf-8") as file:
        text = file.read()
    for size in ("A4", "letter"):
        with open(page, "w", encoding="utf-8") as file:
            file.write(text.replace("@page {", f"@page {{ size: {size};"))
        assert sides(folder, page) == 1, (words, size)
    style = text[text.index("<style>"):text.index("</style>")]
    sheet_style = style[style.index("One side of A4"):]
    assert all(float(size) >= 8 for size in re.findall(r"([\d.]+)pt\b", sheet_style)), words


def main():
    if not browser.installed():
        return print("CHROMIUM IS NOT INSTALLED: nothing was printed")
    with tempfile.TemporaryDirectory() as folder:
        for words in SHEETS:
            check_sheet(folder, words)
    print(f"{len(SHEETS)} sheets, one side each")


main()
