"""The families of ways: a page for each, and what a class calls them."""

from django.http import HttpRequest, HttpResponse
from django.shortcuts import redirect, render
from django.utils.translation import gettext as _
from django.utils.translation import gettext_lazy
from django.views.decorators.http import require_http_methods, require_safe

from waysaid.site.family_view import family_shown
from waysaid.site.models import SchoolClass
from waysaid.site.refusal import not_here
from waysaid.site.rights import Act
from waysaid.site.views.guards import asks, current_class
from waysaid.site.wording import LONGEST_NAME, cleaned, wording_of
from waysaid.ways import FAMILY_NOTES, SOURCES, Family, Vocabulary, family_name

VOCABULARIES = {
    Vocabulary.OURS: gettext_lazy("our own"),
    Vocabulary.COMMON_CORE: gettext_lazy("Common Core (US)"),
    Vocabulary.ENGLAND: gettext_lazy("England"),
    Vocabulary.AUSTRALIA: gettext_lazy("Australia"),
    Vocabulary.NEW_ZEALAND: gettext_lazy("New Zealand"),
}


@require_safe
@asks(Act.PLAN)
def family_page(request: HttpRequest, slug: str) -> HttpResponse:
    """Show one family: what a child does, examples with drawings, names, where it leads."""
    school_class = current_class(request)
    if school_class is None:
        return redirect("welcome")
    if slug not in {each.value for each in Family}:
        raise not_here()
    shown = family_shown(Family(slug), wording_of(school_class))
    names = [
        (VOCABULARIES[words], named.name, SOURCES.get(named.source, named.source))
        for words, named in shown.names
    ]
    return render(
        request, "waysaid/family.html", {"here": "class", "family": shown, "names": names}
    )


@require_http_methods(["GET", "HEAD", "POST"])
@asks(Act.CLASS)
def words_page(request: HttpRequest) -> HttpResponse:
    """Show whose names for the families the class uses, and its own; take changes."""
    school_class = current_class(request)
    if school_class is None:
        return redirect("welcome")
    if request.method != "POST":
        return _page(request, school_class)
    words = request.POST.get("words", "")
    if words not in {each.value for each in Vocabulary}:
        return _page(request, school_class, _("Choose one of the lists of names."))
    own = {each.value: cleaned(request.POST.get(f"own-{each.value}", "")) for each in Family}
    school_class.words = words
    school_class.own_names = {slug: name for slug, name in own.items() if name}
    school_class.save(update_fields=["words", "own_names"])
    return redirect("class-words")


def _page(request: HttpRequest, school_class: SchoolClass, error: str = "") -> HttpResponse:
    wording = wording_of(school_class)
    own = dict(wording.own)
    context = {
        "here": "class",
        "part": "words",
        "school_class": school_class,
        "vocabularies": [(each.value, label) for each, label in VOCABULARIES.items()],
        "words": wording.words.value,
        "longest": LONGEST_NAME,
        "families": [
            {
                "slug": each.value,
                "name": family_name(each, wording.language, wording.words),
                "own": own.get(each.value, ""),
                "does": FAMILY_NOTES[each].does(wording.language),
            }
            for each in Family
        ],
        "error": error,
    }
    return render(request, "waysaid/words.html", context, status=400 if error else 200)
