"""The fonts (ISO 19005-3, 6.2.11; ISO 14289-1, 7.21)."""

import io
import re

import pikepdf
from fontTools.ttLib import TTFont

import walk

# How far a width may be from the font program's, in thousandths of the size (ISO 19005-3, 6.2.11.5).
WIDTH_TOLERANCE = 1


def composite(pdf):
    return walk.named(pdf, "/Subtype", "/Type0")


def program(font):
    return TTFont(io.BytesIO(font.DescendantFonts[0].FontDescriptor.FontFile2.read_bytes()))


def widths(font):
    """The widths by glyph; those that are not listed are DW."""
    listed, rest = {}, list(font.DescendantFonts[0].get("/W", []))
    while rest:
        first = int(rest.pop(0))
        second = rest.pop(0)
        if isinstance(second, pikepdf.Array):
            listed |= {first + index: float(width) for index, width in enumerate(second)}
        else:
            width = float(rest.pop(0))
            listed |= {glyph: width for glyph in range(first, int(second) + 1)}
    return listed


def shown(pdf):
    """The glyphs that are shown in each font, by the object number of the font."""
    used = {}
    for instructions, resources, _ in walk.contents(pdf):
        font = None
        for one in instructions:
            if str(one.operator) == "Tf":
                font = resources.Font[str(one.operands[0])]
                used.setdefault(font.objgen, set())
            texts = one.operands[0] if str(one.operator) == "TJ" else one.operands[:1] if str(one.operator) in ("Tj", "'") else []
            for text in (bytes(text) for text in texts if isinstance(text, pikepdf.String)):
                used[font.objgen] |= {int.from_bytes(text[at:at + 2], "big") for at in range(0, len(text), 2)}
    return used


def unicodes(font):
    """What each glyph means, by the font's ToUnicode."""
    text = font.ToUnicode.read_bytes().decode("latin-1")
    meaning = {}
    for block in re.findall(r"beginbfchar(.*?)endbfchar", text, re.DOTALL):
        for code, value in re.findall(r"<([0-9A-Fa-f]+)>\s*<([0-9A-Fa-f]+)>", block):
            meaning[int(code, 16)] = bytes.fromhex(value).decode("utf-16-be")
    for block in re.findall(r"beginbfrange(.*?)endbfrange", text, re.DOTALL):
        for low, high, value in re.findall(r"<([0-9A-Fa-f]+)>\s*<([0-9A-Fa-f]+)>\s*<([0-9A-Fa-f]+)>", block):
            for index in range(int(high, 16) - int(low, 16) + 1):
                meaning[int(low, 16) + index] = chr(int(value, 16) + index)
        for low, high, listed in re.findall(r"<([0-9A-Fa-f]+)>\s*<([0-9A-Fa-f]+)>\s*\[(.*?)\]", block, re.DOTALL):
            for index, value in enumerate(re.findall(r"<([0-9A-Fa-f]+)>", listed)):
                meaning[int(low, 16) + index] = bytes.fromhex(value).decode("utf-16-be")
    return meaning


def composites(pdf, raw):
    """ISO 19005-3, 6.2.11.3: Identity-H over a CIDFontType2 whose CIDToGIDMap is Identity."""
    others = [one for one in walk.named(pdf, "/Type", "/Font") if one.get("/Subtype") not in {pikepdf.Name.Type0, pikepdf.Name.CIDFontType2}]
    yield from (f"a font of another kind: {one.get('/Subtype')}" for one in others)
    for font in composite(pdf):
        inner = font.DescendantFonts[0]
        if font.get("/Encoding") != pikepdf.Name("/Identity-H") or inner.get("/CIDToGIDMap") != pikepdf.Name.Identity:
            yield f"{font.BaseFont}"
        system = inner.CIDSystemInfo
        if (str(system.Registry), str(system.Ordering)) != ("Adobe", "Identity"):
            yield f"{font.BaseFont} is ordered by {system.Ordering}"


def embedded(pdf, raw):
    """ISO 19005-3, 6.2.11.4: embedded, and every glyph that is shown is in the program; no CIDSet that lies."""
    used = shown(pdf)
    for font in composite(pdf):
        descriptor = font.DescendantFonts[0].get("/FontDescriptor", {})
        if "/FontFile2" not in descriptor:
            yield f"{font.BaseFont} is not embedded"
            continue
        if not re.match(r"/[A-Z]{6}\+", str(font.BaseFont)) or font.BaseFont != descriptor.FontName:
            yield f"{font.BaseFont} names its program {descriptor.FontName}"
        if "/CIDSet" in descriptor:
            yield "a CIDSet, which need not be there"
        count = program(font)["maxp"].numGlyphs
        yield from (f"{font.BaseFont} shows glyph {glyph} of {count}" for glyph in sorted(used.get(font.objgen, ())) if glyph >= count)


def same_widths(pdf, raw):
    """ISO 19005-3, 6.2.11.5 (ISO 14289-1, 7.21.5): the widths of the dictionary are those of the program."""
    used = shown(pdf)
    for font in composite(pdf):
        face, listed = program(font), widths(font)
        advances, scale = face["hmtx"].metrics, 1000 / face["head"].unitsPerEm
        default = float(font.DescendantFonts[0].get("/DW", 1000))
        for glyph in used.get(font.objgen, ()):
            true, said = advances[face.getGlyphName(glyph)][0] * scale, listed.get(glyph, default)
            if abs(true - said) > WIDTH_TOLERANCE:
                yield f"{font.BaseFont}, glyph {glyph}: {said} instead of {true:.1f}"


def readable(pdf, raw):
    """ISO 19005-3, 6.2.11.7 (ISO 14289-1, 7.21.7): every glyph that is shown stands for characters."""
    used = shown(pdf)
    for font in composite(pdf):
        meaning = unicodes(font)
        for glyph in sorted(used.get(font.objgen, ())):
            text = meaning.get(glyph, "")
            if not text or any(ord(letter) in (0, 0xFEFF, 0xFFFE) or 0xE000 <= ord(letter) <= 0xF8FF for letter in text):
                yield f"{font.BaseFont}, glyph {glyph} means {text!r}"


def defined(pdf, raw):
    """ISO 19005-3, 6.2.11.8 (ISO 14289-1, 7.21.8): .notdef is never shown."""
    yield from (f"font {font}" for font, glyphs in shown(pdf).items() if 0 in glyphs)


CHECKS = [composites, embedded, same_widths, readable, defined]
