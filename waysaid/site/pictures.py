"""A teacher's own pictures, taken apart and drawn anew: only the pixels are kept."""

import io
import warnings

from django.utils.translation import gettext as _
from PIL import Image, ImageOps, UnidentifiedImageError

from waysaid.site.models import Picture, PictureKind, SchoolClass

LARGEST_BYTES = 5 * 1024 * 1024
LARGEST_PIXELS = 24_000_000
LONGEST_SIDE = {PictureKind.BACKGROUND: 1920, PictureKind.SIGNAL: 512}
"""Pixels along the longer side of what is kept: a board's width, and a signal's on it."""
READ_FORMATS = ("JPEG", "PNG", "WEBP")
MOST_PICTURES = 40


class BadPictureError(ValueError):
    """Raised with one sentence for a file that is no picture we take."""


def drawn_anew(content: bytes, kind: PictureKind) -> tuple[bytes, int, int]:
    """Return the picture as WebP with its width and height, nothing else of the file in it.

    Raises `BadPictureError` for a file over 5 MB, over 24 million pixels, moving, or unreadable.
    """
    if len(content) > LARGEST_BYTES:
        raise BadPictureError(_("The picture is larger than 5 MB; choose a smaller one."))
    with warnings.catch_warnings():
        warnings.simplefilter("error", Image.DecompressionBombWarning)
        try:
            with Image.open(io.BytesIO(content), formats=READ_FORMATS) as picture:
                _check(picture)
                return _encoded(picture, LONGEST_SIDE[kind])
        except (
            UnidentifiedImageError,
            OSError,
            SyntaxError,
            Image.DecompressionBombWarning,
            Image.DecompressionBombError,
        ):
            raise BadPictureError(
                _("This is not a JPEG, PNG or WebP picture that can be read.")
            ) from None


def _check(picture: Image.Image) -> None:
    if picture.width * picture.height > LARGEST_PIXELS:
        raise BadPictureError(
            _("The picture has more than 24 million points; choose a smaller one.")
        )
    if getattr(picture, "n_frames", 1) > 1:
        raise BadPictureError(
            _("A moving picture would draw eyes from the talk; choose a still one.")
        )


def _encoded(picture: Image.Image, longest: int) -> tuple[bytes, int, int]:
    upright = ImageOps.exif_transpose(picture)
    pixels = upright.convert("RGBA" if upright.has_transparency_data else "RGB")
    pixels.thumbnail((longest, longest))
    bare = Image.new(pixels.mode, pixels.size)
    bare.paste(pixels)
    written = io.BytesIO()
    bare.save(written, "WEBP", quality=85, method=4)
    return written.getvalue(), bare.width, bare.height


def keep_picture(school_class: SchoolClass, kind: PictureKind, content: bytes) -> Picture:
    """Return the picture, kept for this class. Raises `BadPictureError` with one sentence."""
    if school_class.pictures.count() >= MOST_PICTURES:
        raise BadPictureError(_("This class has 40 pictures already; take one away first."))
    drawn, width, height = drawn_anew(content, kind)
    return Picture.objects.create(
        school_class=school_class,
        kind=kind,
        content=drawn,
        content_type="image/webp",
        width=width,
        height=height,
    )
