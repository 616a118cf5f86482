#!/usr/bin/env python3
"""Every header of ours compiles alone, and included twice.

usage: headers.py COMPILER ROOT STAMP

STAMP remembers the headers that passed: what has not changed is not compiled again.
"""
import concurrent.futures
import hashlib
import os
import pathlib
import subprocess
import sys

FLAGS = ["-std=c++20", "-fsyntax-only", "-Wall", "-Wextra", "-Werror", "-x", "c++", "-"]


def complaint(compiler, root, header):
    include = f'#include "{header}"\n'
    done = subprocess.run([compiler, f"-I{root}", *FLAGS], input=include * 2, text=True,
                          capture_output=True)
    return f"{header} does not compile alone:\n{done.stderr}" if done.returncode else ""


def main():
    compiler, root, stamp = *sys.argv[1:3], pathlib.Path(sys.argv[3])
    headers = [path.relative_to(root) for floor in ("engine", "catalog", "cli")
               for path in sorted(pathlib.Path(root, floor).rglob("*.hpp"))]
    texts = b"".join(pathlib.Path(root, header).read_bytes() for header in headers)
    now = hashlib.sha256(compiler.encode() + str(headers).encode() + texts).hexdigest()
    if stamp.exists() and stamp.read_text() == now:
        print(f"{len(headers)} headers, as when they last compiled alone")
        return
    with concurrent.futures.ThreadPoolExecutor(os.cpu_count()) as pool:
        bad = [said for said in pool.map(lambda h: complaint(compiler, root, h), headers) if said]
    print("\n".join(bad))
    print(f"{len(headers)} headers, {len(bad)} do not compile alone")
    if bad or len(headers) < 50:
        sys.exit(1)
    stamp.write_text(now)


main()
