"""Ends with 0 if pyHanko, by its default policy on later changes, finds nothing wrong with any signature of a PDF.

Each must be intact, valid, trusted, and followed by nothing but filled fields; the last must cover the whole file.

Usage: pyhanko_check.py FILE COUNT TRUSTED.pem ...
"""

import sys

from pyhanko.keys import load_cert_from_pemder
from pyhanko.pdf_utils.reader import PdfFileReader
from pyhanko.sign.diff_analysis import ModificationLevel
from pyhanko.sign.validation import validate_pdf_signature
from pyhanko.sign.validation.status import SignatureCoverageLevel
from pyhanko_certvalidator import ValidationContext

trusted = [load_cert_from_pemder(path) for path in sys.argv[3:]]
harmless = {ModificationLevel.NONE, ModificationLevel.LTA_UPDATES, ModificationLevel.FORM_FILLING}
with open(sys.argv[1], "rb") as file:
    signatures = PdfFileReader(file).embedded_signatures
    sound = len(signatures) == int(sys.argv[2])
    for signature in signatures:
        claimed = signature.self_reported_timestamp
        context = ValidationContext(
            trust_roots=trusted, allow_fetching=False, revocation_mode="soft-fail", moment=claimed,
            best_signature_time=claimed,
        )
        status = validate_pdf_signature(signature, context)
        print(signature.field_name, status.summary(), status.coverage, status.modification_level)
        sound &= status.bottom_line and status.intact and status.valid and status.trusted
        sound &= status.modification_level in harmless
    sound &= signatures[-1].evaluate_signature_coverage() == SignatureCoverageLevel.ENTIRE_FILE
sys.exit(0 if sound else 1)
