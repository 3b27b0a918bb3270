"""Ways through a file that several checks take."""

import pikepdf


def dictionaries(pdf):
    """Every indirect object that is a dictionary or a stream, with the direct dictionaries inside."""
    seen = []
    for one in pdf.objects:
        if isinstance(one, (pikepdf.Dictionary, pikepdf.Stream, pikepdf.Array)):
            seen += nested(one)
    return seen


def nested(one):
    found = [] if isinstance(one, pikepdf.Array) else [one]
    values = list(one) if isinstance(one, pikepdf.Array) else [value for _, value in one.items()]
    for value in values:
        if isinstance(value, (pikepdf.Dictionary, pikepdf.Array)) and not value.is_indirect:
            found += nested(value)
    return found


def streams(pdf):
    return [one for one in pdf.objects if isinstance(one, pikepdf.Stream)]


def named(pdf, key, name):
    """Dictionaries whose `key` is the name `name`."""
    return [one for one in dictionaries(pdf) if one.get(key) == pikepdf.Name(name)]


def annotations(pdf):
    return [(page, one) for page in pdf.pages for one in page.obj.get("/Annots", [])]


def contents(pdf):
    """Every content stream: the instructions, its resources, and whether it is a page."""
    for page in pdf.pages:
        yield pikepdf.parse_content_stream(page), page.obj.get("/Resources"), page
    for form in streams(pdf):
        if form.get("/Subtype") == pikepdf.Name.Form and form.read_bytes():
            yield pikepdf.parse_content_stream(form), form.get("/Resources"), None


def elements(pdf):
    """Every structure element, parents before children, as (element, parent)."""
    root = pdf.Root.get("/StructTreeRoot")
    todo = [(kid, root) for kid in reversed(kids(root))] if root is not None else []
    while todo:
        element, parent = todo.pop()
        yield element, parent
        todo += [(kid, element) for kid in reversed(kids(element))]


def held(element):
    """What an element holds: elements, references and numbers."""
    kids = element.get("/K", [])
    return list(kids) if isinstance(kids, pikepdf.Array) else [kids]


def kids(element):
    """The elements that an element holds."""
    return [kid for kid in held(element) if isinstance(kid, pikepdf.Dictionary) and "/S" in kid]


def kind(element):
    return str(element.S)[1:]
