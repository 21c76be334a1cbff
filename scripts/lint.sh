#!/usr/bin/env bash
# Style, layers and types. `lint.sh pure` leaves out the types of the site, for speed.
set -euo pipefail
source "$(dirname "$0")/common.sh"

"$VENV/bin/ruff" check .
"$VENV/bin/ruff" format --check -q .
"$PY" scripts/check_files.py
"$VENV/bin/lint-imports" --no-logo
if [ "${1:-}" = pure ] || ! [ -f waysaid/site/settings.py ]; then
    "$VENV/bin/mypy" --exclude '^waysaid/(site|cli)'
else
    "$VENV/bin/mypy" --config-file mypy-site.ini
fi
