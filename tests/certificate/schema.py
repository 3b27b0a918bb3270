"""Does a record fit its schema, and does the schema see what is spoiled?

    python tests/certificate/schema.py SCHEMA RECORD
"""

import copy
import json
import sys

from jsonschema import Draft202012Validator


def faults(schema, record):
    """Every fault of the file, then of the bodies, which are JSON inside a text."""
    found = [fault.message for fault in Draft202012Validator(schema).iter_errors(record)]
    body = Draft202012Validator({"$ref": "#/$defs/body", "$defs": schema["$defs"]})
    for number, entry in enumerate(record.get("entries", []), 1):
        for fault in body.iter_errors(json.loads(entry["body"])):
            found.append(f"entry {number}: {fault.message[:300]}")
    return found


def inside(record, index, change):
    """Changes the body of an entry."""
    body = json.loads(record["entries"][index]["body"])
    change(body)
    record["entries"][index]["body"] = json.dumps(body)


SPOILED = [
    ("another form", lambda record: record.update(form="mendline-record/9")),
    ("no heads", lambda record: record.pop("heads")),
    ("a short hash", lambda record: record["entries"][0].update(hash="00")),
    ("an unknown key", lambda record: record.update(colour="grey")),
    ("a text for a number", lambda record: record["entries"][0].update(seq="one")),
    ("no device in the facts", lambda record: inside(record, 1, lambda body: body["facts"].pop("device"))),
    ("an unknown event", lambda record: inside(record, 1, lambda body: body["events"].append({"event": "dreamt"}))),
    ("an event that lacks its plan", lambda record: inside(record, 1, lambda body: body["events"][0].pop("plan"))),
    ("a position without latitude", lambda record: inside(record, 1, lambda body: body["facts"]["position"].pop("lat_e7"))),
]


def main(schema, record):
    schema, record = json.load(open(schema)), json.load(open(record))
    Draft202012Validator.check_schema(schema)
    found = faults(schema, record)
    for what, spoil in SPOILED:
        spoiled = copy.deepcopy(record)
        spoil(spoiled)
        if not faults(schema, spoiled):
            found.append(f"{what}: the schema sees nothing wrong")
    print("\n".join(found) or f"{len(record['entries'])} entries fit")
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
