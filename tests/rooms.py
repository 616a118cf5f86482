#!/usr/bin/env python3
"""The rooms of engine/ include each other in one direction only.

usage: rooms.py ROOT
"""
import pathlib
import re
import sys

# From what everything stands on to what stands on everything: a room includes none that comes later.
ORDER = ["estimate", "units", "yarn", "cloth", "lay", "project", "caution", "suitability", "evidence",
         "allocation", "suggestion"]


def wrong(engine):
    for path in sorted(engine.rglob("*.[ch]pp")):
        room = path.relative_to(engine).parts[0]
        for number, line in enumerate(path.read_text().splitlines(), 1):
            other = re.match(r'#include "engine/(\w+)/', line)
            if other and ORDER.index(other[1]) > ORDER.index(room):
                yield f"{path}:{number}: {room} comes before {other[1]} and may not include it"


def main():
    engine = pathlib.Path(sys.argv[1]) / "engine"
    rooms = sorted(path.name for path in engine.iterdir() if path.is_dir())
    assert rooms == sorted(ORDER), f"rooms are {rooms}: give each its place in the order"
    found = list(wrong(engine))
    print("\n".join(found) or "rooms: one direction")
    sys.exit(1 if found else 0)


main()
