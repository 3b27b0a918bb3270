"""How long a certificate takes, beside the same paper by reportlab, typst and headless Chromium, in one run.

    python3 -m venv .venv && .venv/bin/pip install -r tests/certificate/bench/requirements.txt
    .venv/bin/python tests/certificate/bench/compare.py [TIMES]

Builds the program's part in release form first. Chromium is Debian's package. The others set text, tables and photos
alone: no drawings, no tags, no record inside, no signature. Milliseconds are per paper after one to warm up (Chromium
is started for each, as one would): by the clock on the wall, and of processor time with that of children, which a
busy machine does not bend. Memory is the most that the process and its children held.
"""

import json
import os
import resource
import subprocess
import sys
import tempfile
from pathlib import Path

import contents

HERE = Path(__file__).resolve().parent
ROOT = HERE.parents[2]


def built():
    """Returns the path of the program that builds certificates."""
    command = ["cargo", "bench", "--no-run", "--message-format=json", "--package", "mendline-tests", "--bench", "certificate"]
    lines = subprocess.run(command, cwd=ROOT, check=True, stdout=subprocess.PIPE, text=True).stdout.splitlines()
    made = (json.loads(line) for line in lines if line.startswith("{"))
    return next(one["executable"] for one in made if one.get("executable") and one["target"]["name"] == "certificate")


def measured(command):
    """Runs a command; returns what it printed as JSON, with the most memory that it held in MB, or why it did not run."""
    before, end = os.pipe()
    child = os.fork()
    if child == 0:
        os.dup2(end, 1)
        os.close(before)
        done = subprocess.run(command, stderr=subprocess.PIPE, stdout=subprocess.PIPE, text=True)
        most = resource.getrusage(resource.RUSAGE_CHILDREN).ru_maxrss / 1024
        line = done.stdout.strip().splitlines()[-1] if done.returncode == 0 else json.dumps({"why": done.stderr.strip()[-200:]})
        os.write(1, json.dumps({**json.loads(line), "mb": most}).encode())
        os._exit(0)
    os.close(end)
    os.waitpid(child, 0)
    with os.fdopen(before) as pipe:
        return json.loads(pipe.read())


def main(times):
    program = built()
    with tempfile.TemporaryDirectory() as folder:
        folder = Path(folder)
        photos = contents.make(folder)
        for name in ("small", "large"):
            compare(program, folder, photos, name, times)
        checks(program, folder, times)


def compare(program, folder, photos, name, times):
    """Prints what a paper takes by every tool, and what it takes to sign and to check ours."""
    content, paper, sealed = folder / f"{name}.json", folder / "paper.pdf", folder / "sealed.pdf"
    rest = [str(content), str(photos), str(paper)]
    own = needed([program, "build", *rest, str(times)])
    count = len(json.loads(content.read_text())["photos"])
    print(f"\n{name}: {own['pages']} pages, {count} photos, {times} times")
    print(f"{'':20}{'ms':>10}{'CPU ms':>10}{'MB held':>10}{'KB file':>10}{'times as long':>16}")
    row("mendline", own, own)
    row("  signed by two", needed([program, "sign", str(paper), str(sealed), str(times)]), own)
    row("  checked", needed([program, "verify", str(sealed), str(times)]), own)
    for tool in ("reportlab", "typst", "chromium"):
        fewer = max(1, times // 10)
        row(tool, measured([sys.executable, str(HERE / "others.py"), tool, *rest, str(fewer)]), own)


def checks(program, folder, times):
    """Prints how many certificates of a whole job are checked in a second of one core."""
    print("\nwhole jobs, signed in earnest, checked as `mendline verify` does")
    print(f"{'':20}{'pages':>7}{'entries':>9}{'CPU ms':>10}{'a second':>10}{'MB held':>10}{'KB file':>10}{'file alone, ms':>16}")
    # What the rehearsal writes is made by the program in release form, built here if need be.
    for file in needed([program, "jobs", str(folder)])["files"]:
        one = needed([program, "check", file, str(times * 10)])
        print(f"{Path(file).stem:20}{one['pages']:7}{one['entries']:9}{one['cpu_ms']:10.2f}{1000 / one['cpu_ms']:10.0f}"
              f"{one['mb']:10.0f}{one['bytes'] / 1024:10.0f}{one['file_ms']:16.2f}")


def needed(command):
    """As `measured`, but ends where the program does not run."""
    found = measured(command)
    if "why" in found:
        sys.exit(f"the program did not run: {found['why']}")
    return found


def row(tool, found, own):
    if "why" in found:
        print(f"{tool:20}did not run: {found['why'].splitlines()[-1:]}")
        return
    print(f"{tool:20}{found['ms']:10.1f}{found['cpu_ms']:10.1f}{found['mb']:10.0f}{found['bytes'] / 1024:10.0f}"
          f"{found['cpu_ms'] / own['cpu_ms']:16.1f}")


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 20)
