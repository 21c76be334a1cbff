.PHONY: help setup demo test quick sweep bench docs docs-pictures lint wheel
.DEFAULT_GOAL := help

help:  ## say what each target does
	@sed -n 's/^\([a-z-]*\):.*## /  make \1@/p' Makefile | column -t -s@ 2>/dev/null || sed -n 's/^\([a-z-]*\):.*## /  make \1: /p' Makefile

setup:  ## make .venv with everything, and what the tests need of the system
	@scripts/setup.sh all

demo:  ## run Waysaid with an invented class
	@scripts/setup.sh runtime && .venv/bin/waysaid demo

test:  ## set up from nothing, then style, layers, types and every test
	@scripts/test.sh

quick:  ## style and the fast tests, under two minutes
	@scripts/quick.sh

sweep:  ## every property with all its cases; writes docs/reference/sweep.md (ALL=1: those that held too)
	@scripts/sweep.sh $(if $(ALL),--all)

bench:  ## measure speed and memory
	@scripts/setup.sh python && .venv/bin/python scripts/bench.py

docs:  ## turn the documentation into a site, in build/docs
	@scripts/setup.sh python && .venv/bin/mkdocs build -q

docs-pictures:  ## take the pictures of the documentation again
	@scripts/setup.sh all && .venv/bin/python scripts/docs_pictures.py

lint:  ## style, layers and types
	@scripts/setup.sh python && scripts/lint.sh

wheel:  ## build the wheel into dist/
	@scripts/setup.sh python && .venv/bin/python -m hatchling build -t wheel
