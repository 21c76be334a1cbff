"""What every test shares: the size of the run, its seeds, and the fixtures of the plugins."""

from hypothesis import settings

from tests.counts import count

pytest_plugins = ["tests.sweep", "tests.postgres", "tests.browser"]

settings.register_profile(
    "waysaid",
    deadline=None,
    derandomize=True,
    database=None,
    max_examples=count(test=100, sweep=5000),
)
settings.load_profile("waysaid")
