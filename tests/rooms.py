#!/usr/bin/env python3
"""The rooms of engine/ and of catalog/ include each other in one direction only.

usage: rooms.py ROOT
"""
import pathlib
import re
import sys

# From what everything stands on to what stands on everything: a room includes none that comes later.
ORDER = {
    "engine": ["estimate", "units", "yarn", "cloth", "lay", "project", "caution", "suitability", "evidence",
               "allocation", "suggestion"],
    "catalog": ["text", "reference", "typed", "notebook"],
}
NO_ROOMS = {"catalog": {"tables", "templates", "pack"}}  # data, and a program


def wrong(floor, order):
    for path in sorted(floor.rglob("*.[ch]pp")):
        room = path.relative_to(floor).parts[0]
        for number, line in enumerate(path.read_text().splitlines(), 1):
            other = re.match(rf'#include "{floor.name}/(\w+)/', line)
            if room in order and other and order.index(other[1]) > order.index(room):
                yield f"{path}:{number}: {room} comes before {other[1]} and may not include it"


def main():
    found = []
    for name, order in ORDER.items():
        floor = pathlib.Path(sys.argv[1]) / name
        rooms = {path.name for path in floor.iterdir() if path.is_dir()} - NO_ROOMS.get(name, set())
        assert rooms == set(order), f"{name}: rooms are {sorted(rooms)}: give each its place in the order"
        found += wrong(floor, order)
    print("\n".join(found) or "rooms: one direction")
    sys.exit(1 if found else 0)


main()
