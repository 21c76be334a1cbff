"""What every test shares: the size of the run, its seeds, and the fixtures of the plugins."""

import pytest
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

LONGEST = "tests/site/test_on_postgres.py"


@pytest.hookimpl(trylast=True)
def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """Begin with the longest test, so that nobody waits for it alone at the end."""
    items.sort(key=lambda item: not item.nodeid.startswith(LONGEST))
