"""Django's settings; what may differ from place to place comes from `waysaid.site.place`."""

import os

from waysaid.site import assets, logs, place

DEBUG = place.switched_on("WAYSAID_DEBUG")
DATA = place.data_folder()
SCHOOL_SERVER = place.is_school_server()
KEEP_DAYS = place.most_days()
ORIGINS = place.school_origins() if SCHOOL_SERVER else ()

SECRET_KEY = place.secret_key(DATA)
# waysaid.site.gate checks the Host of every request, exactly, before Django sees it.
ALLOWED_HOSTS = ["*"]

INSTALLED_APPS = [
    "django.contrib.auth",
    "django.contrib.contenttypes",
    "django.contrib.sessions",
    "django.contrib.staticfiles",
    "waysaid.site.apps.SiteConfig",
]
MIDDLEWARE = [
    "waysaid.site.middleware.SafeHeaders",
    "whitenoise.middleware.WhiteNoiseMiddleware",
    "django.contrib.sessions.middleware.SessionMiddleware",
    "django.middleware.locale.LocaleMiddleware",
    "django.middleware.common.CommonMiddleware",
    "django.middleware.csrf.CsrfViewMiddleware",
    "django.contrib.auth.middleware.AuthenticationMiddleware",
]
ROOT_URLCONF = "waysaid.site.urls"
APPEND_SLASH = False
TEMPLATES = [
    {
        "BACKEND": "django.template.backends.django.DjangoTemplates",
        "APP_DIRS": True,
        "OPTIONS": {
            "context_processors": [
                "django.template.context_processors.request",
                "django.template.context_processors.i18n",
                "waysaid.site.views.context.shared",
            ],
        },
    }
]

DATABASES = {
    "default": place.database(os.environ.get("WAYSAID_DATABASE_URL", ""), DATA),
    "copy": place.copy_database(DATA),
}
DEFAULT_AUTO_FIELD = "django.db.models.BigAutoField"

PASSWORD_HASHERS = ["django.contrib.auth.hashers.Argon2PasswordHasher"]
AUTH_PASSWORD_VALIDATORS = [
    {
        "NAME": "django.contrib.auth.password_validation.MinimumLengthValidator",
        "OPTIONS": {"min_length": 10},
    },
    {"NAME": "django.contrib.auth.password_validation.CommonPasswordValidator"},
]
AUTHENTICATION_BACKENDS = [
    "django.contrib.auth.backends.ModelBackend",
    "waysaid.site.opening.OwnMachine",
]
LOGIN_URL = "login"
LOGIN_REDIRECT_URL = "home"
LOGOUT_REDIRECT_URL = "login"

# One process serves, so what it remembers of a session is what the database holds.
SESSION_ENGINE = "django.contrib.sessions.backends.cached_db"
_MARK = place.cookie_mark(SECRET_KEY)
_SECURE = bool(ORIGINS) and all(origin.startswith("https://") for origin in ORIGINS)
SESSION_COOKIE_NAME = f"waysaid_{_MARK}"
SESSION_COOKIE_HTTPONLY = True
SESSION_COOKIE_SAMESITE = "Strict"
SESSION_COOKIE_SECURE = _SECURE
SESSION_COOKIE_AGE = 30 * 24 * 3600
CSRF_COOKIE_NAME = f"waysaid_csrf_{_MARK}"
CSRF_COOKIE_HTTPONLY = True
CSRF_COOKIE_SAMESITE = "Strict"
CSRF_COOKIE_SECURE = _SECURE
CSRF_TRUSTED_ORIGINS = list(ORIGINS)
CSRF_FAILURE_VIEW = "waysaid.site.views.failures.csrf_refused"
DEVICE_COOKIE_NAME = f"waysaid_device_{_MARK}"

STATIC_URL = f"/static/{'now' if DEBUG else assets.version()}/"
STATICFILES_FINDERS = ["django.contrib.staticfiles.finders.AppDirectoriesFinder"]
WHITENOISE_USE_FINDERS = True
WHITENOISE_AUTOREFRESH = DEBUG
WHITENOISE_MAX_AGE = 0 if DEBUG else 60
WHITENOISE_ALLOW_ALL_ORIGINS = False
if not DEBUG:
    WHITENOISE_IMMUTABLE_FILE_TEST = assets.never_changes

LANGUAGE_CODE = "en"
LANGUAGES = [("en", "English"), ("es", "Español")]
LANGUAGE_COOKIE_NAME = f"waysaid_language_{_MARK}"
LANGUAGE_COOKIE_SAMESITE = "Strict"
USE_I18N = True
USE_TZ = True
TIME_ZONE = place.time_zone()

DATA_UPLOAD_MAX_MEMORY_SIZE = 1024 * 1024
FILE_UPLOAD_MAX_MEMORY_SIZE = 6 * 1024 * 1024
DATA_UPLOAD_MAX_NUMBER_FIELDS = 500

LOGGING = logs.logging_settings(DATA, debug=DEBUG)
