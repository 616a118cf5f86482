#!/usr/bin/env python3
"""docs/constants.md is what engine/*/constants.hpp says, and so are the figures that link to it.

usage: constants.py ROOT [--write]

A link in another document, `[30.5 micron](constants.md#prickling)`, holds figures of that constant:
its value or an end of its range, as a share or in per cent.
"""
import pathlib
import re
import sys

ROOMS = ["units", "yarn", "cloth", "project", "suitability", "allocation", "suggestion", "evidence", "lay"]
TEXT = r'"[^"]*"(?:\s*"[^"]*")*'
FIGURE = r"([-\d.'/ ]+?)"
CONSTANT = re.compile(r"\s*,\s*".join(
    [rf"(?:inline constexpr Constant (\w+))?\s*\{{\s*({TEXT})", FIGURE, FIGURE, FIGURE, f"({TEXT})",
     r"Mark::(\w+)", rf"({TEXT}|\w+)\s*\}}"]))
HEAD = """# The figures

Every figure of the trade that the program counts with, written from the engine's sources by
`python3 tests/constants.py . --write`; a test says when this page is out of date. The range bounds the
values met in practice. How the figures are used: [the models](models.md). Looks, fibres and fabrics have
tables of their own in `catalog/tables/`.

| mark | means |
| --- | --- |
"""


def joined(text, named):
    """What a C++ text in one or several pieces, or the name of one, says."""
    return "".join(re.findall(r'"([^"]*)"', text)) if text.startswith('"') else named[text]


def number(text):
    over, *under = (float(part) for part in text.replace("'", "").split("/"))
    for part in under:
        over /= part
    return over


def constants(path):
    """(anchor, name, value, low, high, unit, mark, source) of each constant in a room."""
    source = path.read_text()
    named = {name: joined(text, {}) for name, text in
             re.findall(rf"inline constexpr std::string_view (\w+) =\s*({TEXT})", source)}
    found = [(anchor or re.sub(r"\W+", "-", joined(name, named)), joined(name, named),
              *map(number, figures), joined(unit, named), mark, joined(where, named))
             for anchor, name, *figures, unit, mark, where in CONSTANT.findall(source)]
    assert len(found) == source.count("Mark::") > 0, f"{path}: a constant is written in another way"
    return found


def marks(root):
    """(mark, words shown, meaning) from the enumeration and its words."""
    source = (root / "engine/estimate/constant.hpp").read_text()
    meaning = re.findall(r"^ +(\w+), +// (.*)$", source, re.M)
    words = dict(re.findall(r'case Mark::(\w+):\s*return "(.*)";', source))
    return [(mark, words[mark], means) for mark, means in meaning]


def order(path):
    """As the yarn goes through the house; a room that is new comes last."""
    room = path.parent.name
    return ROOMS.index(room) if room in ROOMS else len(ROOMS), str(path)


def row(constant, shown):
    anchor, name, value, low, high, unit, mark, source = constant
    spread = "exact" if low == high else f"{low:g} to {high:g}"
    cells = [f'<a id="{anchor}"></a>{name}', f"{value:g}", spread, "" if unit == "1" else unit, shown[mark],
             source]
    return re.sub(" +", " ", f"| {' | '.join(cells)} |\n")


def page(root, rooms):
    known = marks(root)
    shown = {mark: words for mark, words, _ in known}
    out = HEAD + "".join(f"| {words} | {means} |\n" for _, words, means in known)
    for path, found in rooms.items():
        behind = re.match(r"// The figures behind ([^:]*):", path.read_text()).group(1)
        out += f"\n## {behind[0].upper()}{behind[1:]}\n`{path.relative_to(root)}`\n\n"
        out += "| what | value | range | unit | mark | source |\n| --- | ---: | --- | --- | --- | --- |\n"
        out += "".join(row(constant, shown) for constant in found)
    return out


def wrong_links(document, known):
    for text, anchor in re.findall(r"\[([^\]]*)\]\(constants\.md#([^)]*)\)", document.read_text()):
        told = [float(figure) for figure in re.findall(r"\d+(?:\.\d+)?", text)]
        kept = known.get(anchor, ())
        if not told or not all(any(abs(abs(k) - t) < 1e-9 or abs(100 * abs(k) - t) < 1e-9 for k in kept)
                               for t in told):
            yield f"{document.name}: '{text}' is not {anchor}, {' '.join(f'{k:g}' for k in kept) or 'unknown'}"


def main():
    root = pathlib.Path(sys.argv[1]).resolve()
    paths = sorted(root.glob("engine/**/constants.hpp"), key=order)
    rooms = {path: constants(path) for path in paths}
    every = [constant for found in rooms.values() for constant in found]
    known = {anchor: figures for anchor, _, *figures, _, _, _ in every}
    assert len(known) == len(every), "two constants share a name"
    written, target = page(root, rooms), root / "docs/constants.md"
    if "--write" in sys.argv:
        target.write_text(written)
    bad = [line for document in sorted(root.glob("docs/*.md")) for line in wrong_links(document, known)]
    if target.read_text() != written:
        bad.append("docs/constants.md is stale: python3 tests/constants.py . --write")
    print(*bad, f"{len(every)} constants, {len(bad)} failures", sep="\n")
    sys.exit(bool(bad))


main()
