#!/usr/bin/env bash
# All that CI runs: set up from nothing, style, layers, types, every test.
set -euo pipefail
source "$(dirname "$0")/common.sh"

scripts/setup.sh all
scripts/lint.sh
# Four at a time on two cores: much of the time a test waits for a browser or a server.
exec env WAYSAID_COUNTS=test "$PY" -m pytest -n 4 --dist loadfile --no-loadscope-reorder \
    --durations=25 --durations-min=5 "$@"
