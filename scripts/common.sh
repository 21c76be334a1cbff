# Shared by the scripts here: where things are, and how a package of the system is installed.
cd "$(dirname "${BASH_SOURCE[0]}")/.."
VENV=.venv
PY=$VENV/bin/python

say() { printf '%s\n' "$*" >&2; }

# The words that run a command as root ("" when we are root); fails when there are none.
root_words() {
    if [ "$(id -u)" = 0 ]; then
        return 0
    elif command -v sudo >/dev/null && sudo -n true 2>/dev/null; then
        echo "sudo -n"
    else
        return 1
    fi
}

# apt_install PACKAGE WHY: install one package, or say in one sentence what is missing and why.
apt_install() {
    local package=$1 why=$2 words log
    if ! command -v apt-get >/dev/null; then
        say "$package is not on this machine ($why) and there is no apt-get: install it by hand, then run make setup again."
        return 1
    fi
    if ! words=$(root_words); then
        say "$package is not on this machine ($why): ask someone with root to run 'apt-get install $package', then run make setup again."
        return 1
    fi
    say "Installing $package by apt ($why)."
    log=$(mktemp)
    if { $words apt-get update -qq && $words env DEBIAN_FRONTEND=noninteractive \
        apt-get install -y -qq --no-install-recommends "$package"; } >"$log" 2>&1 </dev/null; then
        rm -f "$log"
    else
        say "apt could not install $package: $(grep -E '^E:' "$log" | head -1)"
        rm -f "$log"
        return 1
    fi
}
