"""What is painted, and the annotations (ISO 19005-3, 6.2 to 6.4)."""

import pikepdf

import walk

OPERATORS = set("b B b* B* BDC BI BMC BT BX c cm CS cs d d0 d1 Do DP EI EMC ET EX f F f* G g gs h i ID j J K k l m M MP n"
                " q Q re RG rg ri s S SC sc SCN scn sh T* Tc Td TD Tf Tj TJ TL Tm Tr Ts Tw Tz v w W W* y ' \"".split())
INTENTS = {"/RelativeColorimetric", "/AbsoluteColorimetric", "/Perceptual", "/Saturation"}
# Invisible, Hidden, NoView, ToggleNoView (ISO 32000-1, table 165).
UNSEEN = 0b1_0010_0011
PRINT = 0b100


def operators(pdf, raw):
    """ISO 19005-3, 6.2.2: operators of ISO 32000-1 only, resources of the stream's own, states closed."""
    for instructions, resources, _ in walk.contents(pdf):
        if resources is None:
            yield "a content stream without resources"
        used = [str(one.operator) for one in instructions]
        yield from sorted(set(used) - OPERATORS)
        if used.count("q") != used.count("Q") or used.count("BT") != used.count("ET"):
            yield "q and Q or BT and ET don't match"


def colours(pdf, raw):
    """ISO 19005-3, 6.2.4.3: only colours that the RGB output intent covers."""
    for instructions, _, _ in walk.contents(pdf):
        yield from sorted({str(one.operator) for one in instructions} & {"K", "k", "CS", "cs", "sh"})
    for image in walk.named(pdf, "/Subtype", "/Image"):
        if image.get("/ColorSpace") not in {pikepdf.Name.DeviceGray, pikepdf.Name.DeviceRGB}:
            yield f"an image in {image.get('/ColorSpace')}"


def states(pdf, raw):
    """ISO 19005-3, 6.2.5, 6.2.6 and 6.2.10: no transfer curve, a known intent, no transparency without a group."""
    for one in walk.dictionaries(pdf):
        if any(key in one for key in ("/TR", "/TR2", "/HTP")):
            yield f"a transfer curve in {one.objgen}"
        if one.get("/BM", pikepdf.Name.Normal) != pikepdf.Name.Normal or "/SMask" in one:
            yield f"transparency in {one.objgen}"
        if any(one.get(key, 1) != 1 for key in ("/ca", "/CA") if "/Type" in one):
            yield f"transparency in {one.objgen}"
    for instructions, _, _ in walk.contents(pdf):
        yield from (str(one.operands[0]) for one in instructions
                    if str(one.operator) == "ri" and str(one.operands[0]) not in INTENTS)


def images(pdf, raw):
    """ISO 19005-3, 6.2.8: no alternates, no OPI, no interpolation."""
    for image in walk.named(pdf, "/Subtype", "/Image"):
        if "/Alternates" in image or "/OPI" in image or image.get("/Interpolate") is True:
            yield f"image {image.objgen}"
        if image.get("/BitsPerComponent") not in (1, 2, 4, 8):
            yield f"image {image.objgen} has {image.get('/BitsPerComponent')} bits"


def forms(pdf, raw):
    """ISO 19005-3, 6.2.9: no PostScript, no reference to another file."""
    for form in walk.named(pdf, "/Subtype", "/Form"):
        if any(key in form for key in ("/PS", "/Subtype2", "/OPI", "/Ref")):
            yield f"form {form.objgen}"


def annotations(pdf, raw):
    """ISO 19005-3, 6.3: shown, printed, with an appearance of its own."""
    for _, one in walk.annotations(pdf):
        if one.get("/Subtype") not in {pikepdf.Name.Link, pikepdf.Name.Widget}:
            yield f"annotation {one.get('/Subtype')}"
        flags = int(one.get("/F", 0))
        if flags & UNSEEN or not flags & PRINT:
            yield f"F is {flags} (6.3.2)"
        if one.Subtype == pikepdf.Name.Widget:
            appearance = one.get("/AP", {})
            if list(appearance.keys()) != ["/N"] or not isinstance(appearance.N, pikepdf.Stream):
                yield "a field whose appearance is not one stream N (6.3.3)"


def form_fields(pdf, raw):
    """ISO 19005-3, 6.4: readers need not draw fields, no XFA, no action."""
    form = pdf.Root.get("/AcroForm", {})
    if form.get("/NeedAppearances") is True or "/XFA" in form:
        yield "NeedAppearances or XFA"
    for field in form.get("/Fields", []):
        if "/A" in field or "/AA" in field:
            yield f"an action in field {field.get('/T')}"


CHECKS = [operators, colours, states, images, forms, annotations, form_fields]
