#!/usr/bin/env python3
"""The same input gives the same bytes: the catalogue's image, pages, cards, pictures, answers.

usage: reproducible.py PROGRAM PACKER ROOT
"""
import os
import pathlib
import subprocess
import sys
import tempfile
import time

HERON = "docs/examples/heron.toml"
WRITTEN = {
    "heron.html": ["page", HERON, "--suggestions", "docs/examples/suggestions.csv"],
    "cards.html": ["card", HERON],
    "plan.svg": ["picture", "plan", "triangle-shawl", HERON],
    "cloth.svg": ["picture", "cloth", "twill-scarf", HERON, "--shafts", "4"],
    "yarn.svg": ["picture", "yarn", HERON],
    "answers.csv": ["answer", HERON, "docs/examples/suggestions.csv"],
}


def write(program, packer, root, folder, zone):
    env = {**os.environ, "SOURCE_DATE_EPOCH": "1700000000", "TZ": zone, "HOME": str(folder),
           "XDG_DATA_HOME": str(folder)}
    subprocess.run([packer, root + "/catalog", folder / "catalogue.image"], check=True, env=env)
    for name, words in WRITTEN.items():
        done = subprocess.run([program, *words, "--out", folder / name], cwd=root, env=env,
                              stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
        assert done.returncode in (0, 65), words  # 65: the spreadsheet has a bad row, and is answered
    return {path.name: path.read_bytes() for path in sorted(folder.iterdir()) if path.is_file()}


def main():
    program, packer, root = sys.argv[1:4]
    with tempfile.TemporaryDirectory() as one, tempfile.TemporaryDirectory() as other:
        first = write(program, packer, root, pathlib.Path(one), "UTC")
        time.sleep(1.1)  # a clock that was read would show
        second = write(program, packer, root, pathlib.Path(other), "Pacific/Auckland")
    assert set(first) == {"catalogue.image", *WRITTEN}, set(first)
    differ = [name for name in first if first[name] != second.get(name)]
    print(f"{len(first)} files written twice, {len(differ)} differ {differ}")
    sys.exit(bool(differ))


main()
