"""Every check of every part, in order."""

from pathlib import Path

import pikepdf

import fonts
import graphics
import meaning
import metadata
import syntax


def broken(path, only=None):
    """Returns the broken clauses of a file, each with what was found; `only` looks at one clause alone."""
    raw = Path(path).read_bytes()
    found = []
    with pikepdf.open(path) as pdf:
        for part in (syntax, metadata, graphics, fonts, meaning):
            for check in part.CHECKS:
                clause = check.__doc__.split(":")[0]
                if only not in (None, clause):
                    continue
                found += [f"{clause}: {what}" for what in check(pdf, raw)]
    return found
