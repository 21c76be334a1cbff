"""The addresses of the files that go elsewhere and come from there."""

from django.urls import URLPattern, path

from waysaid.site.views import pages_bring, pages_files

urlpatterns: list[URLPattern] = [
    path("plans/<int:plan_id>/slides.pptx", pages_files.slides, name="plan-slides"),
    path("plans/<int:plan_id>/plan.json", pages_files.plan_json, name="plan-json"),
    path("talks/<int:talk_id>/talk.json", pages_files.talk_json, name="talk-json"),
    path("class/evidence.csv", pages_files.evidence, {"ending": "csv"}, name="evidence-csv"),
    path(
        "class/evidence.parquet",
        pages_files.evidence,
        {"ending": "parquet"},
        name="evidence-parquet",
    ),
    path("talks/bring", pages_bring.bring_page, name="bring"),
]
