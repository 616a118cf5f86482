"""A headless browser for the tests of pages and pictures: screenshots read as pixels, axe-core's findings."""
import json
import os
import re
import shutil
import struct
import subprocess
import tempfile
import zlib

HERE = os.path.dirname(os.path.abspath(__file__))


def installed():
    return shutil.which("chromium") is not None


def chromium(folder, page, *more):
    profile = tempfile.mkdtemp(dir=folder)
    return subprocess.run(["chromium", "--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run",
                           "--disable-background-networking", "--disable-component-update", "--disable-sync",
                           "--enable-logging=stderr", "--v=0", f"--user-data-dir={profile}", *more, "file://" + page],
                          capture_output=True, text=True, timeout=180)


def unfiltered(kind, line, above, step):
    """One line of a PNG (W3C PNG, section 9: filters)."""
    for i in range(len(line)):
        left, up = line[i - step] if i >= step else 0, above[i]
        corner = above[i - step] if i >= step else 0
        if kind == 4:
            guess = left + up - corner
            add = min((left, up, corner), key=lambda v: abs(guess - v))
        else:
            add = (0, left, up, (left + up) // 2)[kind]
        line[i] = (line[i] + add) & 255
    return line


def pixels(path):
    """Rows of a screenshot, one grey byte a pixel (its green)."""
    data = open(path, "rb").read()
    width, height, depth, colour = struct.unpack(">IIBB", data[16:26])
    assert depth == 8 and colour in (2, 6), (depth, colour)
    step, at, packed = {2: 3, 6: 4}[colour], 8, b""
    while at < len(data):
        size, kind = struct.unpack(">I4s", data[at:at + 8])
        packed += data[at + 8:at + 8 + size] if kind == b"IDAT" else b""
        at += 12 + size
    raw, above, rows = zlib.decompress(packed), bytearray(width * step), []
    for y in range(height):
        start = y * (width * step + 1)
        above = unfiltered(raw[start], bytearray(raw[start + 1:start + 1 + width * step]), above, step)
        rows.append(bytes(above[1::step]))
    return rows


def axe_script(build):
    """axe-core's script, fetched once into the build folder; nothing when npm cannot fetch it."""
    folder = os.path.join(build, "axe")
    script = os.path.join(folder, "node_modules/axe-core/axe.min.js")
    if os.path.exists(script):
        return script
    if not shutil.which("npm"):
        return print("AXE-CORE NOT RUN: npm is not installed, so nobody has judged the page's accessibility")
    os.makedirs(folder, exist_ok=True)
    shutil.copy(os.path.join(HERE, "package.json"), folder)
    try:
        done = subprocess.run(["npm", "install", "--no-audit", "--no-fund", "--ignore-scripts"], cwd=folder,
                              capture_output=True, text=True, timeout=120)
        why = done.stderr.strip()[-300:]
    except subprocess.TimeoutExpired:
        why = "npm did not answer"
    if os.path.exists(script):
        return script
    return print("AXE-CORE NOT RUN: npm could not fetch it, so nobody has judged the page's accessibility:", why)


def findings(folder, page, script, *more):
    """What axe-core says of a page: (impact, rule, first places). Our policy forbids scripts: it is left out of the copy."""
    text = re.sub(r'<meta http-equiv="Content-Security-Policy"[^>]*>', "", open(page, encoding="utf-8").read())
    run = """<script src="file://%s"></script><script>
    axe.run(document, {resultTypes: ["violations"]}).then(r => { const e = document.createElement("pre"); e.id = "axe";
      e.textContent = JSON.stringify(r.violations.map(v => [v.impact, v.id, v.nodes.slice(0, 3).map(n => n.html.slice(0, 120))]));
      document.body.replaceChildren(e); });</script>""" % script
    copy = os.path.join(folder, "axe.html")
    with open(copy, "w", encoding="utf-8") as file:
        file.write(text.replace("</body>", run + "</body>"))
    done = chromium(folder, copy, "--virtual-time-budget=60000", "--dump-dom", *more)
    found = re.search(r'<pre id="axe">(.*?)</pre>', done.stdout, re.S)
    assert found, done.stderr[-800:]
    unescaped = found[1].replace("&lt;", "<").replace("&gt;", ">").replace("&amp;", "&")
    return json.loads(unescaped)
