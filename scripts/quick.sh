#!/usr/bin/env bash
# Style, and the tests that need no browser and no database server, with few cases each.
set -euo pipefail
source "$(dirname "$0")/common.sh"

scripts/setup.sh python
scripts/lint.sh pure
exec env WAYSAID_COUNTS=quick "$PY" -m pytest -n 2 -m "not browser and not postgres and not slow" "$@"
