#!/usr/bin/env python3
"""The page and the pictures: well formed, self-contained, the same each time, inert to hostile names.

usage: page.py PROGRAM ROOT [SHOTS]

With chromium installed, each page is also loaded headless: no console message; with SHOTS, images of
it at phone and desktop width and in print are left in that folder, to be looked at.
"""
import html.parser
import itertools
import os
import re
import shutil
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as xml

PROGRAM, ROOT = os.path.abspath(sys.argv[1]), sys.argv[2]
SHOTS = sys.argv[3] if len(sys.argv) > 3 else None
SVG = "http://www.w3.org/2000/svg"
VOID = {"meta", "link", "br", "img", "hr", "input"}
HOSTILE = ["<script>alert(1)</script>", "</title><img src=x onerror=alert(1)>", '"><b onmouseover="x">', "' & &amp; {{name}}",
           "\u202egnol \u2066x\u2069", "{{{page_style}}}", "</style><style>*{display:none}", "javascript:alert(1)", "x" * 10_000]


def run(*words, code=0):
    with tempfile.TemporaryDirectory() as home:
        done = subprocess.run([PROGRAM, *words], capture_output=True, text=True, cwd=ROOT,
                              env={**os.environ, "HOME": home, "XDG_DATA_HOME": home})
    assert done.returncode == code, (words, done.returncode, done.stderr)
    return done


def written(path, *words):
    run(*words, "-o", path)
    with open(path, encoding="utf-8", newline="") as file:
        return file.read()


class Page(html.parser.HTMLParser):
    """Every element closed where it was opened; what it holds is kept for the checks."""

    def __init__(self, text):
        super().__init__(convert_charrefs=True)
        self.open, self.elements, self.texts, self.ids = [], [], [], []
        self.feed(text)
        self.close()
        assert not self.open, self.open

    def handle_starttag(self, tag, attributes):
        self.elements.append((tag, dict(attributes), list(self.open)))
        assert len(attributes) == len(dict(attributes)), (tag, attributes)
        self.ids += [value for key, value in attributes if key == "id"]
        if tag not in VOID:
            self.open.append(tag)

    def handle_startendtag(self, tag, attributes):
        self.elements.append((tag, dict(attributes), list(self.open)))

    def handle_endtag(self, tag):
        assert self.open and self.open[-1] == tag, (tag, self.open)
        self.open.pop()

    def handle_data(self, text):
        self.texts.append((self.open[-1] if self.open else "", text))

    def said(self):
        return " ".join(text for tag, text in self.texts if tag != "style")


def check_self_contained(text):
    assert set(re.findall(r"https?://[^\s\"'<>]*", text)) <= {SVG}, re.findall(r"https?://\S*", text)
    assert "url(" not in text and "@import" not in text
    assert not [c for c in text if (ord(c) < 32 and c != "\n") or c in "\u202a\u202b\u202d\u202e\u2066\u2067\u2069\u200f\x7f"]
    assert not re.search(r"\b(nan|inf)\b", re.sub(r"<text.*?</text>", "", text).lower())


def check_page(text):
    check_self_contained(text)
    page = Page(text)
    tags = [tag for tag, _, _ in page.elements]
    assert not {"script", "iframe", "object", "embed", "form", "base", "img"} & set(tags)
    for tag, attributes, _ in page.elements:
        assert not [key for key in attributes if key.startswith("on") or key == "style"], (tag, attributes)
        for key in ("href", "src"):
            if key in attributes:
                assert attributes[key][0] == "#" or attributes[key] == "data:,", attributes
    policy = [a["content"] for t, a, _ in page.elements if a.get("http-equiv") == "Content-Security-Policy"]
    assert policy and policy[0].startswith("default-src 'none'") and "script-src" not in policy[0]
    check_readable_aloud(page, tags)
    return page


def check_readable_aloud(page, tags):
    assert [a.get("lang") for t, a, _ in page.elements if t == "html"] == ["en"]
    assert tags.count("h1") == 1 and tags.count("main") == 1
    levels = [int(t[1]) for t in tags if re.fullmatch("h[1-6]", t)]
    assert all(b - a <= 1 for a, b in itertools.pairwise(levels)), levels
    assert len(page.ids) == len(set(page.ids))
    assert tags.count("table") == tags.count("caption") > 3
    assert all("scope" in a for t, a, _ in page.elements if t == "th")
    pictures = [a for t, a, inside in page.elements if t == "svg" and "svg" not in inside]
    assert pictures and tags.count("title") == len(pictures) + 1
    for picture in pictures:
        assert picture["role"] == "img" and all(i in page.ids for i in picture["aria-labelledby"].split())


def luminance(colour):
    parts = [int(colour[i:i + 2], 16) / 255 for i in (1, 3, 5)]
    r, g, b = [p / 12.92 if p <= 0.04045 else ((p + 0.055) / 1.055) ** 2.4 for p in parts]
    return 0.2126 * r + 0.7152 * g + 0.0722 * b


def contrast(a, b):
    """WCAG 2.2, definition of contrast ratio."""
    high, low = sorted([luminance(a), luminance(b)], reverse=True)
    return (high + 0.05) / (low + 0.05)


def check_contrast():
    css = open(os.path.join(ROOT, "cli/output/page.css"), encoding="utf-8").read()
    themes = [dict(re.findall(r"--(\w+): (#\w{6})", block)) for block in re.findall(r":root \{(.*?)\}", css, re.S)]
    assert len(themes) >= 2 and len(themes[0]) == len(themes[1]) == 9, themes
    for theme in themes[:2]:
        for ground in ("paper", "sheet", "tint"):
            for text in ("ink", "ash"):
                assert contrast(theme[text], theme[ground]) >= 4.5, (text, ground)
            for dye in ("madder", "weld", "indigo"):
                assert contrast(theme[dye], theme[ground]) >= 3, (dye, ground, contrast(theme[dye], theme[ground]))
        check_seen_without_red_or_green([theme[d] for d in ("madder", "weld", "indigo")])
    pictures = open(os.path.join(ROOT, "cli/output/picture.css"), encoding="utf-8").read()
    paper = re.search(r"\.paper \{ fill: (#\w{6})", pictures)[1]
    for name in ("label", "faint", "head", "asked-text"):
        ink = re.search(r"\." + name + r" \{[^}]*fill: (#\w{6})", pictures)[1]
        assert contrast(ink, paper) >= 4.5, name


def seen(colour, weights):
    """How a dichromat sees it: Machado, Oliveira and Fernandes 2009, severity 1 (from memory)."""
    linear = [int(colour[i:i + 2], 16) / 255 for i in (1, 3, 5)]
    return [sum(w * c for w, c in zip(row, linear)) for row in weights]


def check_seen_without_red_or_green(dyes):
    protan = [[0.152, 1.053, -0.205], [0.115, 0.786, 0.099], [-0.004, -0.048, 1.052]]
    deutan = [[0.367, 0.861, -0.228], [0.280, 0.673, 0.047], [-0.012, 0.043, 0.969]]
    for weights in (protan, deutan):
        for a, b in itertools.combinations(dyes, 2):
            apart = sum((x - y) ** 2 for x, y in zip(seen(a, weights), seen(b, weights))) ** 0.5
            assert apart > 0.15, (a, b, apart)


def check_svg(text):
    check_self_contained(text)
    root = xml.fromstring(text)
    assert root.tag == f"{{{SVG}}}svg" and root.get("role") == "img"
    allowed = {f"{{{SVG}}}{name}" for name in ("svg", "title", "desc", "style", "rect", "path", "circle", "text")}
    for element in root.iter():
        assert element.tag in allowed, element.tag
        assert not [key for key in element.attrib if key.startswith("on") or key == "style"]
    assert len(text) < 2_000_000
    return root


def hostile_batch(folder, name):
    path = os.path.join(folder, "hostile.toml")
    quoted = "".join(f"\\u{ord(c):04x}" for c in name)
    with open(path, "w", encoding="utf-8") as file:
        file.write(f'name = "{quoted}"\nwraps = "16wpi"\nscale = "0.1g"\nfibre = "Corriedale"\n')
        for length, mass in ((171, 38.5), (204, 45.0)):
            file.write(f'[[skein]]\nname = "{quoted}{length}"\nlength = "{length}m"\nmass = "{mass}g"\n')
    return path


def check_hostile(folder):
    plain = check_page(written(os.path.join(folder, "p.html"), "page", hostile_batch(folder, "Plain")))
    for name in HOSTILE:
        batch = hostile_batch(folder, name)
        text = written(os.path.join(folder, "h.html"), "page", batch)
        page = check_page(text)
        shape = [(t, sorted(a)) for t, a, _ in page.elements]
        assert shape == [(t, sorted(a)) for t, a, _ in plain.elements], name
        seen_name = re.sub("[\u202e\u2066\u2069]", "?", name)
        heading = "".join(t for tag, t in page.texts if tag == "h1")
        assert heading == (seen_name if len(seen_name) <= 120 else seen_name[:119] + "…"), heading
        assert len(text) < 400_000
        for words in (["plan", "triangle-shawl"], ["yarn"]):
            root = check_svg(written(os.path.join(folder, "h.svg"), "picture", *words, batch))
            assert all(len(t.text) < 120 for t in root.iter(f"{{{SVG}}}text"))


def check_pictures(folder, heron):
    for template in sorted(f[:-5] for f in os.listdir(os.path.join(ROOT, "catalog/templates"))):
        root = check_svg(written(os.path.join(folder, "t.svg"), "picture", "plan", template, heron))
        check_inside(root)
        check_inside(check_svg(written(os.path.join(folder, "t.svg"), "picture", "plan", template, heron, "--units", "both")))
    for template in ("garter-scarf", "fulled-scarf"):
        words = ["picture", "cloth", template, heron]
        text = written(os.path.join(folder, "c.svg"), *words)
        check_svg(text)
        if template == "garter-scarf":
            check_loops(text)
        assert "not a photograph" in text and text == written(os.path.join(folder, "d.svg"), *words)
    # The shawl's triangle is drawn twice as wide as deep, and its sizes are written on it.
    shawl = written(os.path.join(folder, "s.svg"), "picture", "plan", "triangle-shawl", heron)
    points = re.search(r'class="edge" d="M([\d.]+) ([\d.]+)L([\d.]+) [\d.]+L[\d.]+ ([\d.]+)Z', shawl)
    left, top, right, bottom = map(float, points.groups())
    assert abs((right - left) / (bottom - top) - 2) < 0.01
    size = re.search(r"span ([\d.]+ cm)", shawl)[1]
    assert shawl.count(f">{size}<") == 1


def check_inside(root):
    _, _, width, height = map(float, root.get("viewBox").split())
    for element in root.iter(f"{{{SVG}}}rect"):
        x, y = float(element.get("x", 0)), float(element.get("y", 0))
        assert -0.1 <= x and x + float(element.get("width")) <= width + 0.1, element.attrib
        assert -0.1 <= y and y + float(element.get("height")) <= height + 0.1, element.attrib
    for element in root.iter(f"{{{SVG}}}text"):
        wide = 5.7 * len(element.text) * {"end": 0, "middle": 0.5}.get(element.get("class").split()[-1], 1)
        assert 0 <= float(element.get("x")) <= width - wide + 6, element.text
        assert 0 <= float(element.get("y")) <= height, element.text


def drawn_length(path):
    points = [tuple(map(float, p.split())) for p in re.split("[ML]", path)[1:]]
    return sum(((a - c) ** 2 + (b - d) ** 2) ** 0.5 for (a, b), (c, d) in itertools.pairwise(points))


def check_loops(text):
    """A drawn half loop (foot, leg, head) holds half the loop's yarn; stitches stand as the gauge says."""
    gauge, loop = map(float, re.search(r"(\d+) st/10 cm, loop ([\d.]+) mm", text).groups())
    scale = 328 / 30
    strands = re.findall(r'class="yarn-edge" [^>]*d="([^"]*)"', text)
    legs = len(strands) // 3
    half = drawn_length(strands[0]) + drawn_length(strands[1]) + drawn_length(strands[2 * legs])
    assert abs(half / scale - loop / 2) < 0.01 * loop, (half / scale, loop)
    feet = [float(s[1:].split()[0]) for s in strands[:2 * legs:4]]
    assert abs((feet[1] - feet[0]) / scale - 100 / gauge) < 0.03 * 100 / gauge, feet[:2]


def chromium(folder, page, *more):
    profile = tempfile.mkdtemp(dir=folder)
    return subprocess.run(["chromium", "--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run",
                           "--disable-background-networking", "--disable-component-update", "--disable-sync",
                           "--enable-logging=stderr", "--v=0", f"--user-data-dir={profile}", *more, "file://" + page],
                          capture_output=True, text=True, timeout=120)


def check_browser(folder, page):
    if not shutil.which("chromium"):
        return print("chromium is not installed: the browser run is left out")
    done = chromium(folder, page, "--dump-dom")
    assert "CONSOLE" not in done.stderr, [l for l in done.stderr.splitlines() if "CONSOLE" in l]
    assert "What it can make" in done.stdout
    if not SHOTS:
        return None
    os.makedirs(SHOTS, exist_ok=True)
    for name, size, more in (("phone", "500,7000", []), ("desktop", "1280,5000", []),
                             ("dark", "1280,2600", ["--blink-settings=preferredColorScheme=0"])):
        shot = os.path.join(SHOTS, name + ".png")
        done = chromium(folder, page, f"--window-size={size}", "--hide-scrollbars", f"--screenshot={shot}", *more)
        assert os.path.exists(shot), done.stderr
    chromium(folder, page, "--no-pdf-header-footer", "--print-to-pdf=" + os.path.join(SHOTS, "print.pdf"))
    return None


def main():
    heron = os.path.join(ROOT, "docs/examples/heron.toml")
    check_contrast()
    with tempfile.TemporaryDirectory() as folder:
        path = os.path.join(folder, "heron.html")
        text = written(path, "page", heron)
        said = check_page(text).said()
        for word in ("Heron", "4.45 m/g", "Triangle shawl", "Assumed", "JCGM 100", "Knit or weave", "90 % asked"):
            assert word in said, word
        assert text == written(os.path.join(folder, "again.html"), "page", heron)
        assert sorted(os.listdir(folder)) == ["again.html", "heron.html"]
        for batch in ("sedge.toml", "hearth.toml", "skeins.csv"):
            check_page(written(os.path.join(folder, "b.html"), "page", os.path.join(ROOT, "docs/examples", batch)))
        check_page(written(os.path.join(folder, "o.html"), "page", "--skein", "90m/30g", "--units", "imperial"))
        check_svg(written(os.path.join(folder, "y.svg"), "picture", "yarn", heron))
        check_pictures(folder, heron)
        check_hostile(folder)
        run("page", heron, "-o", "/nowhere/x.html", code=73)
        check_browser(folder, path)
    print("the page and the pictures hold")


main()
