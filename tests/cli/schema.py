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
LONE = ["--skein", "60m/14g"]
ASKED = [
    ["yarn", HERON], ["yarn", *LONE], ["yarn", "--skein", "200yd/2oz", "--skein", "100yd/1oz"],
    ["makes", HERON], ["makes", *LONE], ["makes", HERON, "--craft", "woven", "--certainty", "99"],
    ["plan", "half-circle-shawl", HERON], ["plan", "woven-scarf", HERON], ["plan", "stranded-hat", HERON],
    ["plan", "twill-scarf", HERON], ["plan", "woven-shawl", *LONE],
    ["compare", "scarf", HERON], ["templates"],
    ["split", HERON, "--sample", "knitted", "--keep", "triangle-shawl"],
    ["split", HERON, "--sample", "knitted", "--keep", "yoke-pullover"],
    ["answer", HERON, "--idea", "cabled hat"], ["answer", HERON, "--idea", "bedspread"],
    ["answer", HERON, "--idea", "pullover", "--needs", "1200m"],
]


def once(pairs):
    keys = [key for key, _ in pairs]
    assert len(keys) == len(set(keys)), f"a key twice in {keys}"
    return dict(pairs)


def refuse(word):
    raise AssertionError(f"{word} is no JSON number")


def main():
    program, root = sys.argv[1:]
    schema = json.load(open(os.path.join(root, "docs/schema/answers.json"), encoding="utf-8"))
    validator = jsonschema.Draft202012Validator(schema)
    validator.check_schema(schema)
    wrong = 0
    with tempfile.TemporaryDirectory() as home:
        for words in ASKED:
            done = subprocess.run([program, *words, "--json"], cwd=root, capture_output=True, text=True,
                                  env={**os.environ, "HOME": home, "XDG_DATA_HOME": home})
            assert done.returncode == 0 and not done.stderr, (words, done.stderr)
            answer = json.loads(done.stdout, object_pairs_hook=once, parse_constant=refuse)
            for error in validator.iter_errors(answer):
                wrong += 1
                print(words, error.json_path, error.message[:300])
    print(f"{len(ASKED)} answers, {wrong} wrong")
    sys.exit(wrong > 0)


main()
