"""Every address of the site. The live streams are beside Django: see waysaid.site.live."""

from django.conf import settings
from django.contrib.auth import views as accounts
from django.urls import URLPattern, URLResolver, path

from waysaid.site import urls_files, urls_pages
from waysaid.site.views import (
    api_events,
    api_network,
    api_talk,
    api_typed,
    pages_class,
    pages_home,
    pages_start,
    pictures,
    talk_pages,
)
from waysaid.site.views.running import running
from waysaid.site.views.signing_in import SignIn

urlpatterns: list[URLPattern | URLResolver] = [
    path("", pages_home.home, name="home"),
    path("welcome", pages_home.welcome, name="welcome"),
    path("open/<str:token>", pages_home.open_session, name="open"),
    path("running", running, name="running"),
    path("class", pages_class.class_page, name="class"),
    path("class/picture", pictures.upload, name="picture-upload"),
    path("class/picture/<int:picture_id>", pictures.shown, name="picture"),
    path("class/picture/<int:picture_id>/remove", pictures.remove, name="picture-remove"),
    path("talks/start", pages_start.start_page, name="start"),
    path("talks/<int:talk_id>/desk", talk_pages.desk, name="desk"),
    path("talks/<int:talk_id>/desk.json", api_talk.desk_json, name="desk-json"),
    path("talks/<int:talk_id>/events", api_events.desk_events, name="desk-events"),
    path("talks/<int:talk_id>/read", api_talk.read_line, name="read"),
    path("typed", api_typed.typed, name="typed"),
    path("talks/<int:talk_id>/typed", api_typed.typed_at_desk, name="typed-at-desk"),
    path("talks/<int:talk_id>/links", api_talk.string_links, name="links"),
    path("talks/<int:talk_id>/network", api_network.network_switch, name="network"),
    path("talks/<int:talk_id>/pairing", api_network.pairing_code, name="pairing"),
    path("talks/<int:talk_id>/picture/<int:picture_id>", talk_pages.desk_picture),
    path("board/<str:token>", talk_pages.board, name="board"),
    path("board/<str:token>/events", api_events.board_events, name="board-events"),
    path("board/<str:token>/picture/<int:picture_id>", talk_pages.board_picture),
    path("one/<str:token>", talk_pages.one, name="one"),
    path("one/<str:token>/events", api_events.one_events, name="one-events"),
    path("one/<str:token>/picture/<int:picture_id>", talk_pages.one_picture),
    path("join", api_network.join, name="join"),
    *urls_pages.urlpatterns,
    *urls_files.urlpatterns,
]
if settings.SCHOOL_SERVER:
    urlpatterns += [
        path("login", SignIn.as_view(), name="login"),
        path("logout", accounts.LogoutView.as_view(), name="logout"),
    ]

handler404 = "waysaid.site.views.failures.page_not_found"
handler500 = "waysaid.site.views.failures.server_error"
