"""The bytes of the file (ISO 19005-3, 6.1)."""

import re

import pikepdf

import walk

FILTERS = {"/FlateDecode", "/DCTDecode", "/ASCIIHexDecode", "/ASCII85Decode", "/RunLengthDecode", "/CCITTFaxDecode"}


def header(pdf, raw):
    """ISO 19005-3, 6.1.2: the header, and a comment of four bytes above 127."""
    lines = raw[:64].split(b"\n")
    if not re.fullmatch(rb"%PDF-1\.[0-7]\r?", lines[0]):
        yield f"the file begins with {lines[0]!r}"
    if len(lines[1]) < 5 or lines[1][:1] != b"%" or any(byte < 128 for byte in lines[1][1:5]):
        yield f"the second line is {lines[1]!r}"


def trailer(pdf, raw):
    """ISO 19005-3, 6.1.3: an identifier, no encryption, nothing behind the end."""
    if len(pdf.trailer.get("/ID", [])) != 2:
        yield "the trailer has no ID"
    if "/Encrypt" in pdf.trailer:
        yield "the file is encrypted"
    if not re.search(rb"%%EOF\r?\n?$", raw):
        yield "bytes follow the last %%EOF"


def cross_references(pdf, raw):
    """ISO 19005-3, 6.1.4: one end of line between xref and the first subsection."""
    for match in re.finditer(rb"(?<!start)xref(.{0,16})", raw, re.DOTALL):
        if not re.match(rb"\r?\n\d+ \d+\r?\n", match[1]) and match.start() and raw[match.start() - 1] in b"\r\n":
            yield f"xref is followed by {match[1]!r}"


def objects(pdf, raw):
    """ISO 19005-3, 6.1.9: one space inside, an end of line before and behind `n g obj`, likewise endobj."""
    for match in re.finditer(rb"(.)\b\d+\s+\d+\s+obj(.)", raw, re.DOTALL):
        text = match[0]
        if not re.fullmatch(rb"[\r\n]\d+ \d+ obj[\r\n]", text) and (match[1] in b"\r\n"):
            yield f"{text!r}"
    for one in pdf.objects:
        if isinstance(one, pikepdf.Stream) and any(key in one for key in ("/F", "/FFilter", "/FDecodeParms")):
            yield f"stream {one.objgen} lies outside the file (6.1.7.1)"


def lengths(pdf, raw):
    """ISO 19005-3, 6.1.7.1: Length is the number of bytes between stream and endstream."""
    for match in re.finditer(rb"/Length (\d+)(?! \d+ R)[^\x00-\x08]{0,400}?>>\s*stream(\r\n|\n)", raw):
        end = match.end() + int(match[1])
        if not re.match(rb"(\r\n|\n|\r)?endstream", raw[end:end + 12]):
            yield f"the stream at byte {match.end()} is not {int(match[1])} bytes long"


def filters(pdf, raw):
    """ISO 19005-3, 6.1.7.2: no LZW, no filter of one's own."""
    for stream in walk.streams(pdf):
        used = stream.get("/Filter", [])
        for name in used if isinstance(used, (list, pikepdf.Array)) else [used]:
            if str(name) not in FILTERS:
                yield f"{name} in {stream.objgen}"


def limits(pdf, raw):
    """ISO 19005-3, 6.1.13: no text above 32767 bytes, no name above 127, no page beyond 14400 units."""
    if len(pdf.objects) > 8388607:
        yield "too many objects"
    for one in walk.dictionaries(pdf):
        for key, value in one.items():
            if len(key.encode()) > 128:
                yield f"the name {key}"
            if isinstance(value, pikepdf.String) and len(bytes(value)) > 32767:
                yield f"{key} in {one.objgen} has {len(bytes(value))} bytes"
            if isinstance(value, int) and not -(2**31) <= value < 2**31:
                yield f"{key} is {value}"
    for page in pdf.pages:
        left, bottom, right, top = (float(edge) for edge in page.mediabox)
        if not (3 <= right - left <= 14400 and 3 <= top - bottom <= 14400):
            yield f"a page of {right - left} by {top - bottom}"
    for instructions, _, _ in walk.contents(pdf):
        depth = 0
        for one in instructions:
            depth += {"q": 1, "Q": -1}.get(str(one.operator), 0)
            if depth > 28:
                yield "q nested deeper than 28"
                break


def nothing_active(pdf, raw):
    """ISO 19005-3, 6.5: no script, no action that starts by itself."""
    for one in walk.dictionaries(pdf):
        if one.get("/S") in {pikepdf.Name.JavaScript, pikepdf.Name.Launch, pikepdf.Name.Sound, pikepdf.Name.Movie}:
            yield f"action {one.S}"
        if "/AA" in one or "/JS" in one:
            yield f"AA or JS in {one.objgen}"
    if "/OpenAction" in pdf.Root:
        yield "an action on opening"


def nothing_optional(pdf, raw):
    """ISO 19005-3, 6.9 to 6.11: no layers, no alternate presentation, no requirements."""
    for key in ("/OCProperties", "/Requirements", "/Collection"):
        if key in pdf.Root:
            yield f"{key} in the catalog"
    if "/AlternatePresentations" in pdf.Root.get("/Names", {}):
        yield "AlternatePresentations"


CHECKS = [header, trailer, cross_references, objects, lengths, filters, limits, nothing_active, nothing_optional]
