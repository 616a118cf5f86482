#!/usr/bin/env python3
"""What is installed and packed works where it lands.

usage: delivery.py installed|package ROOT BUILD SCRATCH [FLAGS]

FLAGS are those the engine was compiled with and its users need (a sanitizer's).
"""
import json
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
    assert len(binaries) == 4, binaries
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
    """find_package finds it; of the headers only those that others need are given; makes, plan, split and answer
    are a few lines, and say what the program says."""
    given = {str(path.relative_to(prefix / "include/gristwright"))
             for path in (prefix / "include/gristwright").rglob("*.hpp")}
    rooms = {path.split("/")[0] + "/" + path.split("/")[1] for path in given}
    assert not rooms & {"catalog/notebook", "engine/lay"} and not [path for path in given if path.startswith("cli")], rooms
    inner = {"engine/allocation/search.hpp", "engine/allocation/network.hpp", "catalog/text/toml_text.hpp",
             "catalog/reference/image.hpp", "engine/suggestion/items.hpp"}
    assert not given & inner and "engine/allocation/split.hpp" in given, given & inner
    exported = "".join(path.read_text() for path in (prefix / "lib").rglob("*.cmake"))
    assert str(root) not in exported, "the exported package names the source folder"
    run("cmake", "-S", root / "tests/delivery/consumer", "-B", scratch / "consumer", "-G", "Ninja",
        f"-DCMAKE_PREFIX_PATH={prefix}", f"-DCMAKE_CXX_FLAGS={flags}", "-DCMAKE_BUILD_TYPE=Debug")
    run("cmake", "--build", scratch / "consumer")
    said = run(scratch / "consumer/engine_alone").splitlines()
    assert said[0] == "277 tex" and "needs the tables" in said[1], said
    check_same_answers(prefix, root, scratch)


def check_same_answers(prefix, root, scratch):
    """What others get from the libraries is what the program answers."""
    batch = root / "docs/examples/heron.toml"
    env = {**os.environ, "HOME": str(scratch), "XDG_DATA_HOME": str(scratch)}
    said = dict(line.split(": ") for line in run(scratch / "consumer/consumer", batch).splitlines())

    def asked(*words):
        return json.loads(run(prefix / "bin/gristwright", *words, "--json", env=env))
    first = asked("makes", batch)["plans"][0]
    assert said["makes"] == f"{first['template']}, {first['suitability']:.0f}", (said, first)
    hat = asked("plan", "watch-cap", batch)["plan"]
    assert said["plan"].startswith(f"{hat['metres_needed']['mid']:.0f} m of "), (said, hat)
    one = asked("answer", batch, "--idea", "a lace shawl")["answers"][0]
    assert said["answer"] == f"{one['template']}, {one['suitability']:.0f}", (said, one)
    assert int(said["split"].split()[0]) > 0, said


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
    assert "libsqlite3" in fields["Depends"], fields
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
