"""The addresses of the pages around a talk; the first ones are in waysaid.site.urls."""

from django.urls import URLPattern, path

from waysaid.site.views import (
    pages_back,
    pages_board,
    pages_families,
    pages_home,
    pages_picture,
    pages_plan,
    pages_record,
    pages_settings,
    pages_start,
    pages_starters,
)

urlpatterns: list[URLPattern] = [
    path("start", pages_start.start_page, name="start-page"),
    path("class/choose", pages_home.choose_class, name="class-choose"),
    path("class/board", pages_board.board_page, name="class-board"),
    path("class/record", pages_record.record_page, name="class-record"),
    path("class/record.json", pages_record.record_json, name="class-json"),
    path("class/forget", pages_record.forget_class_page, name="class-forget"),
    path("class/child/<int:child_id>/forget", pages_record.forget_child_page, name="child-forget"),
    path("plans/", pages_plan.plans_page, name="plans"),
    path("plans/<int:plan_id>", pages_plan.plan_page, name="plan"),
    path("plans/<int:plan_id>/picture", pages_picture.picture_page, name="plan-picture"),
    path("plans/<int:plan_id>/print", pages_plan.print_plan, name="plan-print"),
    path("plans/<int:plan_id>/remove", pages_plan.remove_plan, name="plan-remove"),
    path("starters", pages_starters.starters_page, name="starters"),
    path("starters/<slug:slug>", pages_starters.starter_page, name="starter"),
    path("talks/", pages_back.talks_page, name="talks"),
    path("talks/<int:talk_id>/back", pages_back.back_page, name="back"),
    path("talks/<int:talk_id>/back/board", pages_back.replay, name="replay"),
    path("talks/<int:talk_id>/back/state.json", pages_back.state_then, name="back-state"),
    path("talks/<int:talk_id>/chart.pdf", pages_back.chart, name="chart"),
    path("talks/<int:talk_id>/resume", pages_back.resume, name="resume"),
    path("talks/<int:talk_id>/forget", pages_back.forget_talk, name="talk-forget"),
    path("class/words", pages_families.words_page, name="class-words"),
    path("ways/<slug:slug>", pages_families.family_page, name="family"),
    path("settings", pages_settings.settings_page, name="settings"),
    path("settings/leanings", pages_settings.forget_leanings, name="forget-leanings"),
    path("settings/copy", pages_settings.backup, name="backup"),
    path("settings/old-talks", pages_settings.forget_old_talks, name="forget-old"),
]
