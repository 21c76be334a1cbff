"""The Django application of the site."""

from django.apps import AppConfig


class SiteConfig(AppConfig):
    """Names the tables `waysaid_site_...`; the label never changes."""

    name = "waysaid.site"
    label = "waysaid_site"
    verbose_name = "Waysaid"
    default_auto_field = "django.db.models.BigAutoField"
