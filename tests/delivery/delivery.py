#!/usr/bin/env python3
"""What is installed and packed works where it lands.

usage: delivery.py installed|package ROOT BUILD SCRATCH [FLAGS]

FLAGS are those the engine was compiled with and its users need (a sanitizer's).
"""
import os
import pathlib
import re
import shutil
import subprocess
import sys


def run(*words, **more):
    done = subprocess.run([str(word) for word in words], capture_output=True, text=True, **more)
    assert done.returncode == 0, f"{words}: {done.stdout[-2000:]}{done.stderr[-2000:]}"
    return done.stdout


def check_stripped(prefix):
    """Debug information is large and nobody's who only uses what was built."""
    binaries = [prefix / "bin/gristwright", *prefix.rglob("*.a")]
    assert len(binaries) == 2, binaries
    assert not [path for path in binaries if b".debug_info" in path.read_bytes()], "debug information is installed"


def check_program(prefix, home):
    """Answers from outside the sources; its manual and completion lie where tools look."""
    program = prefix / "bin/gristwright"
    env = {**os.environ, "HOME": str(home), "XDG_DATA_HOME": str(home)}
    docs = prefix / "share/doc/gristwright"
    said = run(program, "makes", docs / "examples/heron.toml", cwd=home, env=env)
    assert said.startswith("Heron: 535 m") and "knitted" in said, said
    version = run(program, "--version")
    for command in run(program, "help", "--print", "commands").split():
        page = prefix / f"share/man/man1/gristwright-{command}.1"
        assert version.strip() in page.read_text(), page
    assert (prefix / "share/man/man1/gristwright.1").exists()
    assert "complete -F" in (prefix / "share/bash-completion/completions/gristwright").read_text()
    for wanted in ("README.md", "LICENSE", "templates.md", "schema/answers.json"):
        assert (docs / wanted).exists(), wanted


def check_engine(root, prefix, scratch, flags):
    """find_package finds it, and only the engine is given to others."""
    given = {path.relative_to(prefix / "include/gristwright").parts[0]
             for path in (prefix / "include/gristwright").rglob("*.hpp")}
    assert given == {"engine"}, given
    exported = "".join(path.read_text() for path in (prefix / "lib").rglob("*.cmake"))
    assert str(root) not in exported, "the exported package names the source folder"
    run("cmake", "-S", root / "tests/delivery/consumer", "-B", scratch / "consumer", "-G", "Ninja",
        f"-DCMAKE_PREFIX_PATH={prefix}", f"-DCMAKE_CXX_FLAGS={flags}", "-DCMAKE_BUILD_TYPE=Debug")
    run("cmake", "--build", scratch / "consumer")
    assert run(scratch / "consumer/consumer") == "225 tex\n"


def installed(root, build, scratch, flags):
    prefix = scratch / "prefix"
    run("cmake", "--install", build, "--prefix", prefix)
    check_stripped(prefix)
    check_program(prefix, scratch)
    check_engine(root, prefix, scratch, flags)


def package(root, build, scratch, flags):
    env = {**os.environ, "SOURCE_DATE_EPOCH": "1700000000"}
    packages = []
    for folder in (scratch / "first", scratch / "second"):
        run("cpack", "--config", build / "CPackConfig.cmake", "-B", folder, env=env)
        packages += folder.glob("*.deb")
    assert len(packages) == 2, packages
    fields = dict(re.findall(r"^ ?([A-Z][\w-]+): (.*)$", run("dpkg-deb", "--info", packages[0]), re.M))
    assert fields["Package"] == "gristwright" and "libc6" in fields["Depends"], fields
    assert "libfmt" in fields["Depends"], fields
    owners = {tuple(line.split()[1:2]) for line in run("dpkg-deb", "-c", packages[0]).splitlines()}
    assert owners == {("root/root",)}, owners
    run("dpkg-deb", "-x", packages[0], scratch / "unpacked")
    check_stripped(scratch / "unpacked/usr")
    check_program(scratch / "unpacked/usr", scratch)
    assert packages[0].read_bytes() == packages[1].read_bytes(), "two packings differ"


def main():
    root, build, scratch = (pathlib.Path(word) for word in sys.argv[2:5])
    flags = sys.argv[5] if len(sys.argv) > 5 else ""
    shutil.rmtree(scratch, ignore_errors=True)
    scratch.mkdir(parents=True)
    {"installed": installed, "package": package}[sys.argv[1]](root, build, scratch, flags)
    print("delivered")


main()
