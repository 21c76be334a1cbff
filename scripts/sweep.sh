#!/usr/bin/env bash
# Every property with all its cases, and the report of it in docs/reference/sweep.md. What held with
# the same files is not run again; `sweep.sh --all` runs everything, `sweep.sh PATH...` what is below.
set -euo pipefail
source "$(dirname "$0")/common.sh"

scripts/setup.sh python
scripts/setup.sh office
exec "$PY" scripts/sweep.py "$@"
