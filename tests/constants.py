#!/usr/bin/env python3
"""docs/constants.md is what engine/*/*constants.hpp say, and so are the figures that link to it; no figure of the
trade stands bare in the code.

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
# Where a decimal may stand in code, and why. A figure of the trade stands in a constants.hpp or a table.
BARE = re.compile(r"(?<![\w.])\d[\d']*\.\d+(?:e-?\d+)?(?![\w.])")
BLANKED = re.compile(r"""//[^\n]*|/\*.*?\*/|R"(\w*)\(.*?\)\1"|"(?:\\.|[^"\\\n])*"|'(?:\\.|[^'\\\n])'""", re.S)
ARITHMETIC = {0, 0.5, 1, 2, 3, 4, 10, 12, 100}  # halves, shares of 1, months of a year, a rectangle's sqrt 12
SEARCHED = ["engine", "catalog/reference", "cli/*.cpp", "cli/commands"]
ALLOWED = {  # a file or a folder: the numbers, or all (empty), and the reason
    "engine/units": ([], "definitions of units, and bounds of what can be read"),
    "engine/estimate": ([], "quantiles of the normal distribution"),
    "engine/yarn/agreement.cpp": ([0.95, 0.975], "levels of a test of significance"),
    "engine/yarn/colour.hpp": ([0.86, 0.82, 0.74], "the look of undyed wool in a picture"),
    "engine/yarn/loft.hpp": ([0.90689968], "geometry: the densest packing of circles"),
    "engine/yarn/batch.hpp": ([1.31, 0.01], "wool_density and loop_margin, held to them by a test"),
    "engine/lay": ([], "how a picture is drawn: shapes, light and colour"),
    "engine/allocation": ([0.005, 0.01, 0.02, 0.1, 0.25, 0.95, 0.97, 0.98, 0.985, 0.995, 1.5, 0.9],
                          "how the search is led, never what is found; 0.9 is the certainty unless asked"),
    "engine/project/shape.cpp": ([0.25, 1.5], "geometry: areas of shapes"),
    "engine/project/plan.hpp": ([0.9], "the certainty unless another is asked"),
    "engine/project/plan.cpp": ([0.999], "the most certainty that can be asked"),
    "engine/project/realise.cpp": ([0.01], "sizes are whole centimetres"),
    "engine/cloth/needle.cpp": ([], "the sizes that needles are sold in"),
    "engine/cloth/heddle.cpp": ([], "the heddles and reeds that are sold"),
    "engine/cloth/weaving.cpp": ([0.1, 0.25, 1.5, 200, 300, 400, 500, 600], "the metric heddles that are sold"),
    "engine/evidence/progress.cpp": ([6], "two rectangular readings: sqrt 6"),
    "engine/evidence/spin.cpp": ([0.01], "a yarn without end"),
    "catalog/reference/own_fabric.cpp": ([0.2], "bounds of what is no slip of a key"),
    "cli/question.cpp": ([0.999], "the most certainty that can be asked"),
    "cli/article_asked.cpp": ([0.2], "bounds of what is no slip of a key"),
    "cli/split_asked.cpp": ([0.1], "bounds of an effort"),
}
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


def allowed(path, figure):
    for place, (figures, _) in ALLOWED.items():
        if (path == place or path.startswith(place + "/")) and (not figures or figure in figures):
            return True
    return figure in ARITHMETIC


def sources(root):
    for place in SEARCHED:
        found = root.glob(place) if "*" in place else root.glob(place + "/**/*.[ch]pp")
        yield from (path for path in sorted(found) if not path.name.endswith("constants.hpp"))


def bare(root):
    """The decimals that stand in code and should be constants with a mark."""
    for path in sources(root):
        name, text = str(path.relative_to(root)), path.read_text()
        blanked = BLANKED.sub(lambda m: re.sub(r"[^\n]", " ", m.group(0)), text)
        for number_of_line, line in enumerate(blanked.splitlines(), 1):
            for figure in BARE.findall(line):
                if not allowed(name, float(figure.replace("'", ""))):
                    yield f"{name}:{number_of_line}: {figure} stands bare: a Constant with range, unit, mark and source"


def main():
    root = pathlib.Path(sys.argv[1]).resolve()
    paths = sorted(root.glob("engine/**/*constants.hpp"), key=order)
    rooms = {path: constants(path) for path in paths}
    every = [constant for found in rooms.values() for constant in found]
    known = {anchor: figures for anchor, _, *figures, _, _, _ in every}
    assert len(known) == len(every), "two constants share a name"
    written, target = page(root, rooms), root / "docs/constants.md"
    if "--write" in sys.argv:
        target.write_text(written)
    bad = [line for document in sorted(root.glob("docs/*.md")) for line in wrong_links(document, known)]
    bad += bare(root)
    if target.read_text() != written:
        bad.append("docs/constants.md is stale: python3 tests/constants.py . --write")
    print(*bad, f"{len(every)} constants, {len(bad)} failures", sep="\n")
    sys.exit(bool(bad))


main()
