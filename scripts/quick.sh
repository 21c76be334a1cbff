#!/usr/bin/env bash
# Style, and the tests that need no browser and no database server, with few cases each.
set -euo pipefail
source "$(dirname "$0")/common.sh"

scripts/setup.sh python
scripts/lint.sh pure
# The layers themselves are checked by lint above; that planted faults are seen is for the whole run.
exec env WAYSAID_COUNTS=quick "$PY" -m pytest -n 2 -m "not browser and not postgres and not slow" \
    --ignore=tests/whole/test_layers.py "$@"
