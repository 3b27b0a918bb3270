"""The structure (ISO 19005-3, 6.7; ISO 14289-1, 7; ISO 32000-1, 14.7 and 14.8)."""

import re

import pikepdf

import walk

STANDARD = set("Document Part Art Sect Div BlockQuote Caption TOC TOCI Index NonStruct Private P H H1 H2 H3 H4 H5 H6 L LI Lbl"
               " LBody Table TR TH TD THead TBody TFoot Span Quote Note Reference BibEntry Code Link Annot Figure Formula Form".split())
PAINTS = set("Tj TJ ' \" S s f F f* B B* b b* Do sh EI".split())
INSIDE = {"Table": {"TR", "THead", "TBody", "TFoot", "Caption"}, "TR": {"TH", "TD"}, "L": {"L", "LI", "Caption"},
          "LI": {"Lbl", "LBody"}}


def marked(pdf, raw):
    """ISO 19005-3, 6.7.2.2 (ISO 14289-1, 7.1): marked as tagged, without suspects, with a tree."""
    marks = pdf.Root.get("/MarkInfo", {})
    if marks.get("/Marked") is not True or marks.get("/Suspects") is True:
        yield f"MarkInfo is {marks}"
    if "/StructTreeRoot" not in pdf.Root:
        yield "no structure tree"


def language(pdf, raw):
    """ISO 19005-3, 6.7.4 (ISO 14289-1, 7.2): the language of the whole."""
    if not re.fullmatch(r"[A-Za-z]{2,3}(-[A-Za-z0-9]{2,8})*", str(pdf.Root.get("/Lang", ""))):
        yield f"Lang is {pdf.Root.get('/Lang')}"


def everything(pdf, raw):
    """ISO 14289-1, 7.1: all that is painted is tagged or an artifact, never both."""
    for instructions, _, page in walk.contents(pdf):
        if page is None:
            continue
        open_ = []
        for one in instructions:
            operator = str(one.operator)
            if operator in ("BMC", "BDC"):
                if open_:
                    yield "marked content inside marked content"
                open_.append(str(one.operands[0]))
            elif operator == "EMC":
                open_.pop()
            elif operator in PAINTS and not open_:
                yield f"{operator} outside of marked content"
        if open_:
            yield "marked content stays open"


def parents(pdf, raw):
    """ISO 32000-1, 14.7.4.4: every marked sequence and annotation leads to the element that holds it."""
    root = pdf.Root.StructTreeRoot
    numbers = list(root.ParentTree.Nums)
    keys = [int(key) for key in numbers[::2]]
    if keys != sorted(set(keys)) or root.ParentTreeNextKey <= max(keys):
        yield f"the keys of the parent tree are {keys}"
    tree = dict(zip(keys, numbers[1::2]))
    for page in pdf.pages:
        owners = tree.get(int(page.obj.get("/StructParents", -1)), [])
        for one in pikepdf.parse_content_stream(page):
            if str(one.operator) == "BDC" and "/MCID" in one.operands[1]:
                number = int(one.operands[1].MCID)
                if number >= len(owners) or not holds(owners[number], number, page):
                    yield f"sequence {number} of page {page.index + 1}"
    for _, one in walk.annotations(pdf):
        owner = tree.get(int(one.get("/StructParent", -1)))
        if owner is None or one.objgen not in [kid.Obj.objgen for kid in walk.held(owner) if isinstance(kid, pikepdf.Dictionary) and "/Obj" in kid]:
            yield f"annotation {one.objgen}"


def holds(element, number, page):
    for kid in walk.held(element):
        if isinstance(kid, pikepdf.Dictionary) and "/MCID" in kid and kid.MCID == number:
            return kid.get("/Pg", element.get("/Pg")).objgen == page.obj.objgen
        if isinstance(kid, int) and kid == number:
            return element.Pg.objgen == page.obj.objgen
    return False


def kinds(pdf, raw):
    """ISO 19005-3, 6.7.3.4 (ISO 14289-1, 7.1): standard types, each where it may stand (7.2)."""
    for element, parent in walk.elements(pdf):
        kind = walk.kind(element)
        if kind not in STANDARD:
            yield f"{kind} is no standard type"
        if element.get("/P") is None or element.P.objgen != parent.objgen:
            yield f"a {kind} that names another parent"
        allowed = INSIDE.get(kind)
        if allowed and any(walk.kind(kid) not in allowed for kid in walk.kids(element)):
            yield f"{kind} holds {[walk.kind(kid) for kid in walk.kids(element)]}"
        outer = {"TR": {"Table", "THead", "TBody", "TFoot"}, "TH": {"TR"}, "TD": {"TR"}, "LI": {"L"}, "LBody": {"LI"}}.get(kind)
        if outer and walk.kind(parent) not in outer:
            yield f"{kind} in {walk.kind(parent)}"
    tops = [walk.kind(element) for element in walk.kids(pdf.Root.StructTreeRoot)]
    if tops != ["Document"]:
        yield f"the root holds {tops}"


def headings(pdf, raw):
    """ISO 14289-1, 7.4.2: headings begin with H1 and skip no level."""
    levels = [int(walk.kind(one)[1]) for one, _ in walk.elements(pdf) if re.fullmatch(r"H[1-6]", walk.kind(one))]
    if levels[:1] != [1]:
        yield f"the first heading is H{levels[:1]}"
    yield from (f"H{b} after H{a}" for a, b in zip(levels, levels[1:]) if b > a + 1)


def figures(pdf, raw):
    """ISO 14289-1, 7.3 (ISO 19005-3, 6.7.5): every figure has words instead, and a box on its page."""
    for one, _ in walk.elements(pdf):
        if walk.kind(one) != "Figure":
            continue
        if not str(one.get("/Alt", "")).strip():
            yield "a figure without Alt"
        box = [float(edge) for edge in one.get("/A", {}).get("/BBox", [])]
        if len(box) != 4 or box[0] >= box[2] or box[1] >= box[3]:
            yield f"the box of {one.get('/Alt')} is {box}"


def tables(pdf, raw):
    """ISO 14289-1, 7.5 (7.2): rows of as many cells, heads that say what they head."""
    for table, _ in walk.elements(pdf):
        if walk.kind(table) != "Table":
            continue
        rows = [kid for kid in walk.kids(table) if walk.kind(kid) == "TR"]
        counts = {len(walk.kids(row)) for row in rows}
        if len(counts) != 1 or len(rows) < 2:
            yield f"{len(rows)} rows of {sorted(counts)} cells"
        for cell in (cell for row in rows for cell in walk.kids(row)):
            scope = cell.get("/A", {}).get("/Scope")
            if walk.kind(cell) == "TH" and scope not in {pikepdf.Name.Column, pikepdf.Name.Row, pikepdf.Name.Both}:
                yield f"a head of scope {scope}"


def fields(pdf, raw):
    """ISO 14289-1, 7.18: every field in a Form, with a name that is read out; tab order by structure."""
    tree = {kid.Obj.objgen: walk.kind(one) for one, _ in walk.elements(pdf)
            for kid in walk.held(one) if isinstance(kid, pikepdf.Dictionary) and "/Obj" in kid}
    for page, one in walk.annotations(pdf):
        if one.Subtype == pikepdf.Name.Widget and tree.get(one.objgen) != "Form":
            yield f"a field in {tree.get(one.objgen)} (7.18.4)"
        if not str(one.get("/TU", one.get("/Contents", ""))).strip():
            yield "an annotation without words (7.18.1)"
        if page.obj.get("/Tabs") != pikepdf.Name.S:
            yield f"Tabs is {page.obj.get('/Tabs')} (7.18.3)"


CHECKS = [marked, language, everything, parents, kinds, headings, figures, tables, fields]
