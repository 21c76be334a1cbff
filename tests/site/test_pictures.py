"""A teacher's own pictures: small enough, still, and nothing kept but the pixels."""

import io

import pytest
from django.core.files.uploadedfile import SimpleUploadedFile
from PIL import Image

from waysaid.site.models import Picture, PictureKind
from waysaid.site.pictures import (
    LARGEST_BYTES,
    BadPictureError,
    drawn_anew,
    keep_picture,
)


def encoded(picture, form="PNG", **options):
    written = io.BytesIO()
    picture.save(written, form, **options)
    return written.getvalue()


def plain(size=(40, 30), mode="RGB", colour="teal"):
    return Image.new(mode, size, colour)


@pytest.mark.parametrize("form", ["PNG", "JPEG", "WEBP"])
def test_a_picture_is_drawn_anew(form):
    drawn, width, height = drawn_anew(encoded(plain(), form), PictureKind.SIGNAL)
    kept = Image.open(io.BytesIO(drawn))
    assert (kept.format, kept.size) == ("WEBP", (40, 30)) == ("WEBP", (width, height))


def test_what_was_noted_in_the_file_is_gone():
    exif = Image.Exif()
    exif[0x010E] = "canary: where it was taken"
    noted = encoded(plain(), "JPEG", exif=exif, comment=b"canary")
    assert b"canary" in noted
    drawn, *_size = drawn_anew(noted, PictureKind.BACKGROUND)
    assert b"canary" not in drawn
    assert not Image.open(io.BytesIO(drawn)).getexif()


def test_a_picture_taken_sideways_is_set_upright():
    exif = Image.Exif()
    exif[0x0112] = 6
    _drawn, width, height = drawn_anew(encoded(plain(), "JPEG", exif=exif), PictureKind.SIGNAL)
    assert (width, height) == (30, 40)


def test_a_large_picture_is_made_smaller_for_what_it_is_for():
    large = encoded(plain((3000, 1500)))
    assert drawn_anew(large, PictureKind.BACKGROUND)[1:] == (1920, 960)
    assert drawn_anew(large, PictureKind.SIGNAL)[1:] == (512, 256)


def test_what_is_clear_stays_clear():
    drawn, *_size = drawn_anew(encoded(plain(mode="RGBA", colour=(0, 0, 0, 0))), PictureKind.SIGNAL)
    assert Image.open(io.BytesIO(drawn)).convert("RGBA").getpixel((0, 0))[3] == 0


def moving():
    frames = [plain(colour=colour) for colour in ("red", "blue")]
    return encoded(frames[0], "WEBP", save_all=True, append_images=frames[1:])


@pytest.mark.parametrize(
    "content",
    [
        b"",
        b"not a picture",
        b"<svg xmlns='http://www.w3.org/2000/svg'><script>1</script></svg>",
        encoded(plain(), "GIF"),
        encoded(plain(), "BMP"),
        encoded(plain())[:60],
        moving(),
        b"\0" * (LARGEST_BYTES + 1),
        encoded(Image.new("1", (5000, 5000))),
    ],
    ids=[
        "empty",
        "words",
        "svg",
        "gif",
        "bmp",
        "cut off",
        "moving",
        "too large",
        "too many points",
    ],
)
def test_what_we_do_not_take_is_refused_in_one_sentence(content):
    with pytest.raises(BadPictureError, match=r"^[^.;]+(MB|[;]).*\.$|^[^.]+\.$"):
        drawn_anew(content, PictureKind.BACKGROUND)


def test_an_upload_is_kept_and_shown_and_taken_away(cast):
    upload = SimpleUploadedFile("tree.png", encoded(plain()))
    cast.owner.post("/class/picture", {"kind": "background", "picture": upload})
    picture = Picture.objects.get()
    cast.school_class.refresh_from_db()
    assert cast.school_class.background_id == picture.pk
    shown = cast.owner.get(f"/class/picture/{picture.pk}")
    assert shown.headers["Content-Type"] == "image/webp"
    board = cast.outsider.get(f"/board/{cast.talk.board_token}/picture/{picture.pk}")
    assert board.content == shown.content
    cast.owner.post(f"/class/picture/{picture.pk}/remove")
    cast.school_class.refresh_from_db()
    assert cast.school_class.background is None
    assert (
        cast.outsider.get(f"/board/{cast.talk.board_token}/picture/{picture.pk}").status_code == 404
    )


def test_a_signals_picture_goes_with_its_signal(cast):
    upload = SimpleUploadedFile("hand.png", encoded(plain()))
    cast.owner.post("/class/picture", {"kind": "signal", "signal": "1", "picture": upload})
    cast.school_class.refresh_from_db()
    picture = Picture.objects.get()
    assert cast.school_class.signals[1]["picture"] == picture.pk
    cast.owner.post(f"/class/picture/{picture.pk}/remove")
    cast.school_class.refresh_from_db()
    assert cast.school_class.signals[1]["picture"] is None


def test_a_board_shows_no_picture_of_another_class(cast):
    from django.contrib.auth.models import User

    other = User.objects.get(username="colleague").classes.get()
    picture = keep_picture(other, PictureKind.SIGNAL, encoded(plain()))
    path = f"/board/{cast.talk.board_token}/picture/{picture.pk}"
    assert cast.outsider.get(path).status_code == 404


def test_what_is_no_picture_is_refused_on_the_page(cast):
    upload = SimpleUploadedFile("x.png", b"no")
    refused = cast.owner.post("/class/picture", {"kind": "background", "picture": upload})
    assert refused.status_code == 400
    assert not Picture.objects.exists()
