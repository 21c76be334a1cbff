#!/usr/bin/env bash
# Every property with all its cases, and the report of it in docs/reference/sweep.md.
set -euo pipefail
source "$(dirname "$0")/common.sh"

scripts/setup.sh python
mkdir -p build
status=0
WAYSAID_COUNTS=sweep "$PY" -m pytest -n 2 -m "not browser and not postgres and not slow" \
    --junitxml=build/sweep.xml -o junit_family=xunit1 "$@" || status=$?
scripts/setup.sh office
WAYSAID_COUNTS=sweep "$PY" -m pytest tests/paper/test_slides_in_office.py || status=$?
"$PY" scripts/sweep_report.py build/sweep.xml docs/reference/sweep.md
exit $status
