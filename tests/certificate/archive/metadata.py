"""Metadata, output intent and the record inside (ISO 19005-3, 6.2.3, 6.6 and 6.8; ISO 14289-1, 5 and 7.11)."""

import hashlib
import re
import struct
from xml.etree import ElementTree

import pikepdf

import walk

RDF = "{http://www.w3.org/1999/02/22-rdf-syntax-ns#}"
DC = "{http://purl.org/dc/elements/1.1/}"
XMP = "{http://ns.adobe.com/xap/1.0/}"
PDF = "{http://ns.adobe.com/pdf/1.3/}"
PDFAID = "{http://www.aiim.org/pdfa/ns/id/}"
PDFUAID = "{http://www.aiim.org/pdfua/ns/id/}"
# Schemas that need no description (ISO 19005-3, 6.6.2.3.1).
KNOWN = {RDF, DC, XMP, PDF, PDFAID, "{http://ns.adobe.com/xap/1.0/mm/}", "{adobe:ns:meta/}",
         "{http://www.aiim.org/pdfa/ns/extension/}", "{http://www.aiim.org/pdfa/ns/schema#}",
         "{http://www.aiim.org/pdfa/ns/property#}"}


def packet(pdf):
    return pdf.Root.Metadata.read_bytes().decode("utf-8") if "/Metadata" in pdf.Root else ""


def tree(pdf):
    return ElementTree.fromstring(re.sub(r"<\?xpacket.*?\?>", "", packet(pdf)).strip())


def text(pdf, name):
    found = tree(pdf).find(f".//{name}")
    return "" if found is None else "".join(found.itertext()).strip()


def part(pdf):
    return text(pdf, f"{PDFAID}part")


def stream(pdf, raw):
    """ISO 19005-3, 6.6.2.1: metadata of the catalog, a packet without bytes or encoding."""
    metadata = pdf.Root.get("/Metadata")
    if metadata is None or metadata.get("/Type") != pikepdf.Name.Metadata or metadata.get("/Subtype") != pikepdf.Name.XML:
        yield "the catalog has no metadata stream"
        return
    head = packet(pdf).splitlines()[0]
    if "bytes=" in head or "encoding=" in head or not head.startswith("<?xpacket begin="):
        yield head


def described(pdf, raw):
    """ISO 19005-3, 6.6.2.3: every other schema is described in the packet."""
    declared = {one.text for one in tree(pdf).iter("{http://www.aiim.org/pdfa/ns/schema#}namespaceURI")}
    for one in tree(pdf).iter():
        space = one.tag.split("}")[0] + "}"
        if space not in KNOWN and space.strip("{}") not in declared:
            yield one.tag


def same_as_info(pdf, raw):
    """ISO 19005-3, 6.6.3: what the information dictionary says, the metadata says too."""
    info = pdf.trailer.get("/Info", {})
    pairs = {"/Title": f"{DC}title", "/Author": f"{DC}creator", "/Subject": f"{DC}description",
             "/Keywords": f"{PDF}Keywords", "/Creator": f"{XMP}CreatorTool", "/Producer": f"{PDF}Producer"}
    for key, name in pairs.items():
        if key in info and str(info[key]) != text(pdf, name):
            yield f"{key} is {str(info[key])!r}, {name} is {text(pdf, name)!r}"
    for key, name in {"/CreationDate": f"{XMP}CreateDate", "/ModDate": f"{XMP}ModifyDate"}.items():
        digits = re.sub(r"\D", "", str(info.get(key, "")))
        if digits != re.sub(r"\D", "", text(pdf, name)):
            yield f"{key} is {info.get(key)}, {name} is {text(pdf, name)}"
        if not re.fullmatch(r"D:\d{14}([+-]\d\d'\d\d'?|Z)", str(info.get(key, ""))):
            yield f"{key} is {info.get(key)}"


def identified(pdf, raw):
    """ISO 19005-3, 6.6.4: part and conformance."""
    found = part(pdf), text(pdf, f"{PDFAID}conformance")
    if found not in {("3", "A"), ("2", "A")}:
        yield f"part and conformance are {found}"


def universal(pdf, raw):
    """ISO 14289-1, 5: part 1; 7.1: a title, and readers show it."""
    if text(pdf, f"{PDFUAID}part") != "1":
        yield "pdfuaid:part is not 1"
    if not text(pdf, f"{DC}title"):
        yield "no title"
    if pdf.Root.get("/ViewerPreferences", {}).get("/DisplayDocTitle") is not True:
        yield "DisplayDocTitle is not true"


def intent(pdf, raw):
    """ISO 19005-3, 6.2.3: one output intent with a profile of version 2 or 4 for a monitor or a printer."""
    intents = [one for one in pdf.Root.get("/OutputIntents", []) if one.get("/S") == pikepdf.Name.GTS_PDFA1]
    if len(intents) != 1:
        yield f"{len(intents)} intents"
        return
    profile = intents[0].DestOutputProfile.read_bytes()
    size, version, device, space = struct.unpack(">I4xB3x4s4s", profile[:20])
    if size != len(profile) or version not in (2, 4) or device not in (b"mntr", b"prtr") or profile[36:40] != b"acsp":
        yield f"profile of {size} bytes, version {version}, for {device!r}"
    if (space, intents[0].DestOutputProfile.N) != (b"RGB ", 3):
        yield f"space {space!r} with N {intents[0].DestOutputProfile.N}"


def attached(pdf, raw):
    """ISO 19005-3, 6.8 (ISO 19005-2, 6.8; ISO 14289-1, 7.11): associated, named twice, described, typed, dated."""
    files = [one for one in walk.dictionaries(pdf) if "/EF" in one]
    if part(pdf) == "2" and files:
        yield "PDF/A-2 holds a file that is no PDF/A"
    for one in files:
        if "/F" not in one or "/UF" not in one or not str(one.get("/Desc", "")):
            yield "a file without F, UF or Desc"
        if one.get("/AFRelationship") not in {pikepdf.Name(f"/{name}") for name in
                                              ("Source", "Data", "Alternative", "Supplement", "Unspecified")}:
            yield f"AFRelationship is {one.get('/AFRelationship')}"
        if one.objgen not in [file.objgen for file in pdf.Root.get("/AF", [])]:
            yield "a file that is associated with nothing"
        if one.objgen not in [file.objgen for file in pdf.Root.Names.EmbeddedFiles.Names if hasattr(file, "objgen")]:
            yield "a file that no name leads to"
        inside = one.EF.F
        if not re.fullmatch(r"/[\w.+-]+/[\w.+-]+", str(inside.get("/Subtype", ""))):
            yield f"its type is {inside.get('/Subtype')}"
        params = inside.get("/Params", {})
        if "/ModDate" not in params or params.get("/Size") != len(inside.read_bytes()):
            yield "Params without date or with another size"
        if bytes(params.get("/CheckSum", b"")) != hashlib.md5(inside.read_bytes()).digest():
            yield "CheckSum is not that of the file"


CHECKS = [stream, described, same_as_info, identified, universal, intent, attached]
