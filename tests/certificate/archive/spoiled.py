"""Spoils a sound file in one place after another: each check must name its clause.

    python tests/certificate/archive/spoiled.py FILE
"""

import sys
import tempfile
from pathlib import Path

import pikepdf
from pikepdf import Name

import walk
from clauses import broken


def first(pdf, kind):
    return next(one for one, _ in walk.elements(pdf) if walk.kind(one) == kind)


def font(pdf):
    return walk.named(pdf, "/Subtype", "/Type0")[0]


def image(pdf):
    return walk.named(pdf, "/Subtype", "/Image")[0]


def field(pdf):
    return pdf.Root.AcroForm.Fields[0]


def metadata(pdf, old, new):
    text = pdf.Root.Metadata.read_bytes().decode()
    assert old in text, old
    pdf.Root.Metadata = pdf.make_stream(text.replace(old, new).encode(), Type=Name.Metadata, Subtype=Name.XML)


def paint(pdf, more):
    page = pdf.pages[0]
    page.Contents = pdf.make_stream(page.Contents.read_bytes() + more)


def widen(pdf):
    listed = font(pdf).DescendantFonts[0].W[1]
    listed[5] = float(listed[5]) + 40


def forget(pdf):
    text = font(pdf).ToUnicode.read_bytes().replace(b"beginbfchar", b"beginbfnone").replace(b"beginbfrange", b"beginbfnone")
    font(pdf).ToUnicode = pdf.make_stream(text)


def drop_cell(pdf):
    del first(pdf, "TR").K[0]


SPOILED = [
    ("ISO 19005-3, 6.1.13", lambda pdf: first(pdf, "Figure").__setattr__("Alt", "long" * 9000)),
    ("ISO 19005-3, 6.5", lambda pdf: pdf.Root.__setattr__("OpenAction", pikepdf.Dictionary(S=Name.JavaScript, JS="1"))),
    ("ISO 19005-3, 6.9 to 6.11", lambda pdf: pdf.Root.__setattr__("OCProperties", pikepdf.Dictionary())),
    ("ISO 19005-3, 6.6.2.1", lambda pdf: metadata(pdf, "<?xpacket begin", "<?xpacket bytes='9' begin")),
    ("ISO 19005-3, 6.6.2.3", lambda pdf: metadata(pdf, "<pdfaSchema:namespaceURI>http://www.aiim", "<pdfaSchema:namespaceURI>http://www.other")),
    ("ISO 19005-3, 6.6.3", lambda pdf: pdf.trailer.Info.__setattr__("Title", "Another")),
    ("ISO 19005-3, 6.6.3", lambda pdf: pdf.trailer.Info.__setattr__("ModDate", "D:20200101000000+00'00'")),
    ("ISO 19005-3, 6.6.4", lambda pdf: metadata(pdf, "<pdfaid:conformance>A", "<pdfaid:conformance>B")),
    ("ISO 14289-1, 5", lambda pdf: metadata(pdf, "<pdfuaid:part>1", "<pdfuaid:part>7")),
    ("ISO 19005-3, 6.2.3", lambda pdf: pdf.Root.__delattr__("OutputIntents")),
    ("ISO 19005-3, 6.8 (ISO 19005-2, 6.8; ISO 14289-1, 7.11)", lambda pdf: pdf.Root.AF[0].__delattr__("UF")),
    ("ISO 19005-3, 6.8 (ISO 19005-2, 6.8; ISO 14289-1, 7.11)", lambda pdf: pdf.Root.__setattr__("AF", pikepdf.Array())),
    ("ISO 19005-3, 6.8 (ISO 19005-2, 6.8; ISO 14289-1, 7.11)", lambda pdf: metadata(pdf, "<pdfaid:part>3", "<pdfaid:part>2")),
    ("ISO 19005-3, 6.2.2", lambda pdf: paint(pdf, b"\nq\n")),
    ("ISO 19005-3, 6.2.4.3", lambda pdf: paint(pdf, b"\n0 0 0 1 k\n")),
    ("ISO 19005-3, 6.2.5, 6.2.6 and 6.2.10", lambda pdf: image(pdf).__setattr__("SMask", pdf.make_stream(b""))),
    ("ISO 19005-3, 6.2.8", lambda pdf: image(pdf).__setattr__("Interpolate", True)),
    ("ISO 19005-3, 6.3", lambda pdf: field(pdf).__setattr__("F", 2)),
    ("ISO 19005-3, 6.3", lambda pdf: field(pdf).__delattr__("AP")),
    ("ISO 19005-3, 6.4", lambda pdf: pdf.Root.AcroForm.__setattr__("NeedAppearances", True)),
    ("ISO 19005-3, 6.2.11.3", lambda pdf: font(pdf).DescendantFonts[0].__delattr__("CIDToGIDMap")),
    ("ISO 19005-3, 6.2.11.4", lambda pdf: font(pdf).__setattr__("BaseFont", Name("/Untagged"))),
    ("ISO 19005-3, 6.2.11.5 (ISO 14289-1, 7.21.5)", widen),
    ("ISO 19005-3, 6.2.11.7 (ISO 14289-1, 7.21.7)", forget),
    ("ISO 19005-3, 6.2.11.8 (ISO 14289-1, 7.21.8)", lambda pdf: paint(pdf, b"\n/Artifact BMC BT /Book 9 Tf <0000> Tj ET EMC\n")),
    ("ISO 19005-3, 6.7.2.2 (ISO 14289-1, 7.1)", lambda pdf: pdf.Root.MarkInfo.__setattr__("Marked", False)),
    ("ISO 19005-3, 6.7.4 (ISO 14289-1, 7.2)", lambda pdf: pdf.Root.__delattr__("Lang")),
    ("ISO 14289-1, 7.1", lambda pdf: paint(pdf, b"\n0 0 m 9 9 l S\n")),
    ("ISO 32000-1, 14.7.4.4", lambda pdf: field(pdf).__setattr__("StructParent", 0)),
    ("ISO 19005-3, 6.7.3.4 (ISO 14289-1, 7.1)", lambda pdf: first(pdf, "P").__setattr__("S", Name("/Sentence"))),
    ("ISO 14289-1, 7.4.2", lambda pdf: first(pdf, "H2").__setattr__("S", Name.H3)),
    ("ISO 14289-1, 7.3 (ISO 19005-3, 6.7.5)", lambda pdf: first(pdf, "Figure").__delattr__("Alt")),
    ("ISO 14289-1, 7.3 (ISO 19005-3, 6.7.5)", lambda pdf: first(pdf, "Figure").__delattr__("A")),
    ("ISO 14289-1, 7.5 (7.2)", drop_cell),
    ("ISO 14289-1, 7.5 (7.2)", lambda pdf: first(pdf, "TH").__delattr__("A")),
    ("ISO 14289-1, 7.18", lambda pdf: field(pdf).__delattr__("TU")),
    ("ISO 14289-1, 7.18", lambda pdf: pdf.pages[0].obj.__delattr__("Tabs")),
]


def main(path):
    unseen = 0
    with tempfile.TemporaryDirectory() as folder:
        spoiled = str(Path(folder) / "spoiled.pdf")
        for index, (clause, spoil) in enumerate(SPOILED):
            with pikepdf.open(path) as pdf:
                spoil(pdf)
                pdf.save(spoiled, fix_metadata_version=False)
            found = broken(spoiled, clause)
            if not any(line.startswith(f"{clause}:") for line in found):
                print(f"{clause} (no. {index + 1}) was spoiled and nobody saw it")
                unseen += 1
    print(f"{len(SPOILED)} files spoiled, {unseen} unseen")
    return 1 if unseen else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1]))
