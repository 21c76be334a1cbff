"""The addresses of the files that go elsewhere and come from there."""

from django.urls import URLPattern, path

from waysaid.site.views import pages_files

urlpatterns: list[URLPattern] = [
    path("plans/<int:plan_id>/slides.pptx", pages_files.slides, name="plan-slides"),
]
