#!/usr/bin/env bash
# Set up from nothing. `setup.sh runtime` is enough to use Waysaid, `setup.sh python` adds the
# tools of development, `setup.sh` (all) adds the browser and the database server of the tests, and
# `setup.sh office` the office program in which the sweep opens slides.
set -euo pipefail
source "$(dirname "$0")/common.sh"
WHAT=${1:-all}
STAMP=$VENV/waysaid-lock

# The system's own Python comes first: every user can run it, which the tests rely on.
find_python() {
    local one
    for one in "${PYTHON:-}" /usr/bin/python3.11 /usr/bin/python3 python3.13 python3.12 python3.11 python3; do
        if [ -n "$one" ] && command -v "$one" >/dev/null &&
            "$one" -c 'import sys; sys.exit(sys.version_info < (3, 11))' 2>/dev/null; then
            echo "$one"
            return
        fi
    done
    say "Waysaid needs Python 3.11 or later, and none was found: install python3, or name one with PYTHON=/path/to/python3."
    return 1
}

make_venv() {
    local python=$1
    rm -rf "$VENV"
    if "$python" -m venv "$VENV" >/dev/null 2>&1; then return; fi
    rm -rf "$VENV"
    if command -v uv >/dev/null && uv venv -q --seed --python "$python" "$VENV"; then return; fi
    rm -rf "$VENV"
    apt_install python3-venv "Python needs it to make a folder of packages" || return 1
    if ! "$python" -m venv "$VENV" >/dev/null; then
        say "$python cannot make a folder of packages (python -m venv fails): use Debian's own python3, or install uv."
        return 1
    fi
}

# install LOCK...: exactly the versions and hashes of the lock files.
install() {
    local arguments=() lock
    for lock in "$@"; do arguments+=(-r "$lock"); done
    if command -v uv >/dev/null && uv pip install -q --python "$PY" --require-hashes --no-deps \
        --compile-bytecode "${arguments[@]}" 2>/dev/null; then
        return
    fi
    "$PY" -m pip install -qq --disable-pip-version-check --no-input --require-hashes --no-deps \
        "${arguments[@]}"
}

fingerprint() { cat pyproject.toml "$@" | sha256sum | cut -d' ' -f1; }

install_packages() {
    local locks kind
    case $WHAT in
    runtime) kind=runtime locks=(requirements/runtime.txt requirements/build.txt) ;;
    *) kind=dev locks=(requirements/dev.txt) ;;
    esac
    local wanted now
    wanted="$kind $(fingerprint "${locks[@]}")"
    now=$(cat "$STAMP" 2>/dev/null || true)
    if [ "$now" = "$wanted" ] || [ "$now" = "dev $(fingerprint requirements/dev.txt)" ]; then return; fi
    say "Installing the packages of ${locks[*]} into $VENV."
    install "${locks[@]}"
    "$PY" -m pip install -qq --disable-pip-version-check --no-input --no-deps \
        --no-build-isolation -e .
    echo "$wanted" >"$STAMP"
}

# The tests start a server of their own, so Debian is told not to make one that starts by itself.
install_postgresql() {
    local words folder=/etc/postgresql-common/createcluster.d status=0
    words=$(root_words) || words=false
    $words mkdir -p "$folder" 2>/dev/null &&
        echo "create_main_cluster = false" | $words tee "$folder/waysaid.conf" >/dev/null
    apt_install postgresql "only the tests use it" || status=$?
    $words rm -f "$folder/waysaid.conf" 2>/dev/null
    return $status
}

has_browser() { command -v chromium || command -v chromium-browser || command -v google-chrome; }
has_driver() { "$VENV"/lib/python3.*/site-packages/playwright/driver/node --version; }
has_postgresql() { compgen -G "/usr/lib/postgresql/*/bin/initdb" || command -v initdb; }

if ! [ -x "$PY" ] || ! "$PY" -m pip --version >/dev/null 2>&1; then
    python=$(find_python)
    make_venv "$python"
fi
install_packages
if [ "$WHAT" = all ]; then
    skipped="Until then the tests that need it are left out."
    has_browser >/dev/null || apt_install chromium "only the tests use it" || say "$skipped"
    has_driver >/dev/null 2>&1 || apt_install libatomic1 "the browser tests need it" || say "$skipped"
    has_postgresql >/dev/null || install_postgresql || say "$skipped"
fi
if [ "$WHAT" = office ]; then
    command -v soffice >/dev/null || apt_install libreoffice-impress "only the sweep uses it" || true
    command -v pdftotext >/dev/null || apt_install poppler-utils "only the sweep uses it" || true
fi
