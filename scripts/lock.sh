#!/usr/bin/env bash
# Write the lock files again from pyproject.toml: every version and hash, and no index address.
set -euo pipefail
cd "$(dirname "$0")/.."

compile() {
    local out=$1
    shift
    UV_CUSTOM_COMPILE_COMMAND="scripts/lock.sh" uv pip compile pyproject.toml "$@" --universal \
        --python-version 3.11 --generate-hashes --no-emit-index-url --no-header \
        --no-annotate -q -o "$out"
}

if ! command -v uv >/dev/null; then
    echo "Writing the lock files needs uv on the PATH (python3 -m pip install uv)." >&2
    exit 1
fi
mkdir -p requirements
compile requirements/runtime.txt
compile requirements/dev.txt --group dev --extra postgres --extra reports
uv pip compile --group build --universal --python-version 3.11 --generate-hashes \
    --no-emit-index-url --no-header --no-annotate -q -o requirements/build.txt
