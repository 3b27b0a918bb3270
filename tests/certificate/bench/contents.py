"""Two contents to measure with, made from the fixtures: about 2 pages and 4 photos, about 30 pages and 100 photos."""

import hashlib
import itertools
import json
import shutil
from pathlib import Path

# How often the large paper says what fills its tables, so that it has about 30 pages.
TIMES = 13
FIXTURES = Path(__file__).resolve().parents[3] / "fixtures"


def make(folder):
    """Writes `small.json`, `large.json` and the photos by their hash; returns the folder of the photos."""
    photos = folder / "photos"
    photos.mkdir(parents=True, exist_ok=True)
    for file in (FIXTURES / "photos").iterdir():
        shutil.copy(file, photos / f"{hashlib.sha256(file.read_bytes()).hexdigest()}.jpg")
    (folder / "small.json").write_text(json.dumps(small()))
    (folder / "large.json").write_text(json.dumps(large()))
    return photos


def read(name):
    return json.loads((FIXTURES / "certificates" / f"{name}.json").read_text())


def small():
    content = read("accepted")
    for part in ("stages", "working_time", "hold"):
        content[part] = {"absent": "left out to measure a short paper"}
    content["photos"] = content["photos"][:4]
    content["checks"], content["findings"] = [], []
    content["materials"], content["attempts"], content["corrections"] = [], [], []
    content["sheets"]["rows"], content["notes"] = [], content["notes"][:2]
    return content


def large():
    content = read("stress")
    content["photos"] = list(itertools.islice(itertools.cycle(content["photos"]), 100))
    for part in ("checks", "findings", "materials", "attempts", "corrections"):
        content[part] = content[part] * TIMES
    content["sheets"]["rows"] *= TIMES
    return content


def pieces(content):
    """What a paper says, for a tool that sets it: headings, tables and photos, without the drawings."""
    yield "title", content["result"]["headline"] + " " + content["number"]
    yield "table", [["", ""]] + [[one["label"], f"{one['first']} {one['second'] or ''}"] for one in content["answers"]]
    pairs = content["identity_left"] + content["identity_right"]
    yield "table", [["", ""]] + [[one["label"], one["value"]] for one in pairs]
    yield from listed("Departures", content["departures"], ["label", "rule", "reason"])
    yield from listed("Notes", content["notes"], ["label", "text"])
    hold = content["hold"].get("known")
    if hold:
        yield from listed("Readings", hold["readings"], ["at_ms", "pressure_pa", "pipe_millicelsius", "patch_millicelsius"])
    yield from listed("Materials", content["materials"], ["item", "kind", "lot", "expiry", "amount", "note"])
    yield from listed("Values", content["sheets"]["rows"], ["name", "as_entered", "source"])
    yield from listed("Checks", content["checks"], ["name", "formula", "inputs", "result", "limit", "margin"])
    yield from listed("Findings", content["findings"], ["what", "found", "evidence"])
    yield from listed("Cautions", content["cautions"], ["label", "value"])
    yield "heading", "Photos"
    for photo in content["photos"]:
        known = photo["copy"].get("known")
        if known:
            yield "photo", f"{known['sha256']}.jpg", f"{photo['title']}, {photo['stage']}, {photo['original_sha256']}"


def listed(heading, rows, keys):
    if rows:
        yield "heading", heading
        yield "table", [keys] + [[str(row.get(key) if row.get(key) is not None else "") for key in keys] for row in rows]
