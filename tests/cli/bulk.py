#!/usr/bin/env python3
"""Answers in bulk: spreadsheets of every make, hostile cells, bad rows, files that cannot be written.

usage: bulk.py PROGRAM ROOT
"""
import csv
import os
import subprocess
import sys
import tempfile

PROGRAM, ROOT = sys.argv[1:]
HERON = os.path.join(ROOT, "docs/examples/heron.toml")
HOSTILE = ["=1+1 hat", "+SUM(A1) hat", "@cmd hat", "-2 hat", "\thidden hat", 'quote " and , comma hat',
           "<script>alert(1)</script> hat", "\x1b[31mred hat", "\u202etah neve hat", "x" * 1_000_000 + " hat"]


def run(folder, text, *more):
    source = os.path.join(folder, "ideas.csv")
    with open(source, "wb") as file:
        file.write(text)
    return subprocess.run([PROGRAM, "answer", HERON, source, *more], capture_output=True, cwd=folder,
                          env={**os.environ, "HOME": folder, "XDG_DATA_HOME": folder})


def answers(folder, text, code=0):
    out = os.path.join(folder, "out.csv")
    done = run(folder, text, "--out", out)
    assert done.returncode == code, done.stderr
    with open(out, encoding="utf-8", newline="") as file:
        raw = file.read()
    os.unlink(out)
    assert sorted(os.listdir(folder)) == ["ideas.csv"], os.listdir(folder)
    return raw, list(csv.DictReader(raw.splitlines()))


def main():
    with tempfile.TemporaryDirectory() as folder:
        plain = "idea,needs\ncabled hat,180m\nscarf,500m\n"
        _, expected = answers(folder, plain.encode())
        for make in [plain.replace("\n", "\r\n"), "\ufeff" + plain, plain.replace(",", ";"),
                     plain.replace(",", "\t"), plain + "\n,\n"]:
            _, read = answers(folder, make.encode())
            assert read == expected, make

        # Each needs its own length: near-alike ideas would be answered as one row.
        rows = "idea,needs\n" + "".join('"{}",{:.0f}m\n'.format(h.replace('"', '""'), 50 * 1.3 ** n)
                                        for n, h in enumerate(HOSTILE))
        raw, read = answers(folder, rows.encode())
        assert len(read) == len(HOSTILE), len(read)
        marked = {HOSTILE[int(row["row"]) - 2] for row in read if row["idea"].startswith("'")}
        assert marked == {"=1+1 hat", "+SUM(A1) hat", "@cmd hat", "-2 hat"}, marked
        assert not [c for c in raw if c != "\n" and (ord(c) < 32 or c in "\u202e\u202d\x7f")]
        for row in read:
            for key, value in row.items():
                assert not value or value[0] not in "=+-@\t\r", (key, value[:40])
                assert len(row["reply"]) <= 500
        for key in ["suitability", "metres_needed", "metres_left", "metres_short", "chance"]:
            float(expected[0][key])

        done = run(folder, b"idea,needs\nhat,nan\nhat,100m\nhat,100m,extra\n")
        assert done.returncode == 65 and b"row 2: needs" in done.stderr and b"row 4:" in done.stderr, done.stderr
        assert b"3 suggestions, 2 of them different, 1 row refused" in done.stdout, done.stdout

        # Every row stands in what is written, with its sender, whatever could not be read of it.
        kept = b"idea,from,needs\nhat,Mags,nan\nhat,Odo,100m\nhat,Tilda,100m,extra\n,Tom,\n"
        raw, read = answers(folder, kept, 65)
        assert {row["from"] for row in read} == {"Mags", "Odo", "Tilda", "Tom"}, raw
        told = {row["from"]: row for row in read}
        assert told["Mags"]["article"] == "hat" and "'nan'" in told["Mags"]["left_out"], raw
        assert "I could not read 'nan' (needs)" in told["Mags"]["reply"], raw
        assert told["Odo"]["left_out"] == "", raw
        assert told["Tilda"]["metres"] == "could not be read" and told["Tilda"]["reply"], raw
        assert told["Tom"]["metres"] == "asked back" and told["Tom"]["reply"], raw

        # One idea is written as a sheet of one row.
        one = os.path.join(folder, "one.csv")
        done = subprocess.run([PROGRAM, "answer", HERON, "--idea", "hat", "--out", one],
                              capture_output=True, cwd=folder,
                              env={**os.environ, "HOME": folder, "XDG_DATA_HOME": folder})
        assert done.returncode == 0 and b"1 suggestion in" in done.stdout, done
        with open(one, encoding="utf-8", newline="") as file:
            assert [row["idea"] for row in csv.DictReader(file)] == ["hat"]
        os.unlink(one)
        assert run(folder, b"idea\nhat\n", "--out", "/nowhere/x.csv").returncode == 73
        assert run(folder, b"mood\nhat\n").returncode == 65
        assert run(folder, b"").returncode == 65
    print("bulk answers hold")


main()
