"""Checks a PDF file against the clauses of PDF/A-3a (or 2a) and PDF/UA-1 that a program can check.

    python tests/certificate/archive FILE...

Prints one line for each clause that a file breaks and ends with 1, or says that none is broken and ends with 0.
Sources: ISO 19005-3:2012 (A-3; its clauses have the same numbers in ISO 19005-2), ISO 14289-1:2014 (UA-1),
ISO 32000-1:2008. Read by pikepdf (qpdf) and fontTools, neither of which wrote the file. This is no certification:
a validator that covers every clause is run beside it before a release.
"""

import sys

from clauses import broken


def main(paths):
    failed = False
    for path in paths:
        found = broken(path)
        failed |= bool(found)
        for line in found or ["no clause is broken"]:
            print(f"{path}: {line}")
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
