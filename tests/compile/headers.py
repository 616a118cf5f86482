#!/usr/bin/env python3
"""Every header of ours compiles alone, and included twice.

usage: headers.py COMPILER ROOT
"""
import concurrent.futures
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
    compiler, root = sys.argv[1:3]
    headers = [path.relative_to(root) for floor in ("engine", "catalog", "cli")
               for path in sorted(pathlib.Path(root, floor).rglob("*.hpp"))]
    with concurrent.futures.ThreadPoolExecutor(os.cpu_count()) as pool:
        bad = [said for said in pool.map(lambda h: complaint(compiler, root, h), headers) if said]
    print("\n".join(bad))
    print(f"{len(headers)} headers, {len(bad)} do not compile alone")
    sys.exit(bool(bad) or len(headers) < 50)


main()
