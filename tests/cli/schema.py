#!/usr/bin/env python3
"""Every command's --json is valid by docs/schema/answers.json, finite, with no key twice.

usage: schema.py PROGRAM ROOT
"""
import json
import os
import subprocess
import sys
import tempfile

import jsonschema

HERON = "docs/examples/heron.toml"
UNLIKE = ["--skein", "210m/50g", "--skein", "120m/48g", "--skein", "300m/52g"]
LONE = ["--skein", "60m/14g"]
ASKED = [
    ["yarn", HERON], ["yarn", *LONE], ["yarn", "--skein", "200yd/2oz", "--skein", "100yd/1oz"],
    ["yarn", *UNLIKE], ["makes", *UNLIKE, "--yarn", "all", "--craft", "woven"],
    ["plan", "woven-scarf", *UNLIKE, "--yarn", "all"],
    ["makes", HERON], ["makes", *LONE], ["makes", HERON, "--craft", "woven", "--certainty", "99"],
    ["plan", "half-circle-shawl", HERON], ["plan", "woven-scarf", HERON], ["plan", "stranded-hat", HERON],
    ["plan", "twill-scarf", HERON], ["plan", "woven-shawl", *LONE],
    ["compare", "scarf", HERON], ["compare", HERON, "--would-be", "combed"], ["templates"],
    ["split", HERON, "--sample", "knitted", "--main", "triangle-shawl"],
    ["split", HERON, "--sample", "knitted", "--main", "yoke-pullover"],
    ["answer", HERON, "--idea", "cabled hat"], ["answer", HERON, "--idea", "bedspread"],
    ["answer", HERON, "--idea", "pullover", "--needs", "1200m"],
    ["batch", "list"], ["hands"], ["spin-for", "woven-shawl"],
]
# In this order, in one notebook; True: answers in JSON.
KEPT = [
    (["batch", "add", "heron", HERON], False), (["batch", "add", "lone", *LONE], False),
    (["batch", "list"], True), (["batch", "show", "lone"], True),
    (["swatch", "heron", "--stitches", "28/10.3cm", "--rows", "39/10.1cm", "--sides", "15.2x14.8cm",
      "--mass", "4.9g", "--look", "4/5"], True),
    (["swatch", "heron", "--reed", "20cm", "--woven", "24cm", "--finished", "17.1x21.4cm"], True),
    (["swatch", "lone", "--stitches", "25/10cm", "--other-hands"], True),
    (["hands"], True), (["makes", "lone"], True), (["plan", "triangle-shawl", "lone"], True),
    (["spin-for", "woven-shawl", "--size", "160cm"], True), (["spin-more", "triangle-shawl", "lone"], True),
    (["start", "triangle-shawl", "heron", "--size", "120cm"], True),
    (["weigh", "heron", "--row", "0", "--ball", "140g"], True),
    (["weigh", "heron", "--row", "60", "--ball", "133g"], True),
    (["start", "woven-scarf", "heron", "--instead"], True), (["weigh", "heron", "--woven", "0cm", "--ball", "70g"], True),
    (["weigh", "heron", "--woven", "41cm", "--ball", "50g"], True),
    (["answer", "heron", "--idea", "cabled hat", "--remember"], True), (["answer", "heron"], True),
    (["batch", "show", "heron"], True), (["hands", "--forget"], False), (["hands"], True),
]


def once(pairs):
    keys = [key for key, _ in pairs]
    assert len(keys) == len(set(keys)), f"a key twice in {keys}"
    return dict(pairs)


def refuse(word):
    raise AssertionError(f"{word} is no JSON number")


def check(program, root, home, words, in_json, validator):
    done = subprocess.run([program, *words, *["--json"][:in_json]], cwd=root, capture_output=True, text=True,
                          env={**os.environ, "HOME": home, "XDG_DATA_HOME": home})
    assert done.returncode == 0 and not done.stderr, (words, done.stderr)
    if not in_json:
        return 0
    errors = list(validator.iter_errors(json.loads(done.stdout, object_pairs_hook=once, parse_constant=refuse)))
    for error in errors:
        print(words, error.json_path, error.message[:300])
    return len(errors)


def main():
    program, root = sys.argv[1:]
    schema = json.load(open(os.path.join(root, "docs/schema/answers.json"), encoding="utf-8"))
    validator = jsonschema.Draft202012Validator(schema)
    validator.check_schema(schema)
    wrong = 0
    for asked in [[(words, True)] for words in ASKED] + [KEPT]:
        with tempfile.TemporaryDirectory() as home:
            for words, in_json in asked:
                wrong += check(program, root, home, words, in_json, validator)
    print(f"{len(ASKED) + len(KEPT)} answers, {wrong} wrong")
    sys.exit(wrong > 0)


main()
