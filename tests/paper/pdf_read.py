"""Read a PDF back as a reader for the blind does: its tags, its words, its drawings' words."""

import io
import re
from collections.abc import Iterator

import pikepdf

HEX = re.compile(r"<([0-9A-Fa-f]+)>")


def opened(pdf):
    """Return the PDF, opened by another library than the one that made it."""
    return pikepdf.open(io.BytesIO(pdf))


def check_tagged(pdf, language):
    """Fail unless a PDF is tagged, says its language and title, and each figure has its words."""
    assert pdf.Root.MarkInfo.Marked
    assert str(pdf.Root.Lang) == language
    with pdf.open_metadata() as metadata:
        assert metadata["dc:title"]
        assert metadata["pdfuaid:part"] == "1"
    roles = [str(each.S) for each in elements(pdf.Root.StructTreeRoot)]
    assert "/H1" in roles
    for figure in figures(pdf):
        assert str(figure.Alt).strip()


def elements(node) -> Iterator[pikepdf.Dictionary]:
    """Yield each element of a structure tree."""
    kids = node.get("/K")
    for kid in kids if isinstance(kids, pikepdf.Array) else [kids]:
        if isinstance(kid, pikepdf.Dictionary) and "/S" in kid:
            yield kid
            yield from elements(kid)


def figures(pdf):
    """Return the drawings of a structure tree."""
    return [each for each in elements(pdf.Root.StructTreeRoot) if str(each.S) == "/Figure"]


def text_of(pdf):
    """Return the words of a PDF without spaces, as they would be selected."""
    return "".join(_shown(page) for page in pdf.pages)


def bare(words):
    """Return words without spaces, to be looked for in `text_of`."""
    return "".join(words.split())


def _shown(page):
    fonts = {name: _letters(font) for name, font in page.Resources.get("/Font", {}).items()}
    letters, found = {}, []
    for operands, operator in pikepdf.parse_content_stream(page):
        if str(operator) == "Tf":
            letters = fonts[str(operands[0])]
        elif str(operator) in ("Tj", "TJ"):
            strings = operands[0] if str(operator) == "TJ" else operands
            codes = b"".join(bytes(each) for each in strings if isinstance(each, pikepdf.String))
            found += [letters.get(codes[at : at + 2], "?") for at in range(0, len(codes), 2)]
    return bare("".join(found))


def _letters(font):
    """Return what each two-byte code of a font stands for, by its own table."""
    table, found = font.ToUnicode.read_bytes().decode("latin-1"), {}
    for block in re.findall(r"beginbfchar(.*?)endbfchar", table, re.DOTALL):
        for code, letters in zip(*[iter(HEX.findall(block))] * 2, strict=False):
            found[bytes.fromhex(code)] = bytes.fromhex(letters).decode("utf-16-be")
    for block in re.findall(r"beginbfrange(.*?)endbfrange", table, re.DOTALL):
        for first, last, letters in zip(*[iter(HEX.findall(block))] * 3, strict=False):
            for more in range(int(last, 16) - int(first, 16) + 1):
                code = (int(first, 16) + more).to_bytes(2, "big")
                found[code] = chr(int(letters, 16) + more)
    return found
