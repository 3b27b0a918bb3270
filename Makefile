# make run      the demo repair, its certificate, and the program on the demo's data
# make window   the window on this person's own data
# make serve    the same in a browser
# make test     everything that is checked before a change is taken
# make kills    kills the program 3000 times in the middle of its work (about twenty minutes)
# make fuzz     looks for inputs that break a promise, 20 minutes for each kind (MINUTES=5 for less, FUZZ=pdf for one)
# make screens  pictures of every screen in both engines, two sizes and three lights, in out/screens (index.html shows them)
# make bench-ui how fast the screens feel, printed
# make bench-certificate how long a certificate takes beside other programs, printed (docs/benchmarks.md; TIMES=20 for less)
# make pictures the few of them that the README and the guides show, anew in docs/pictures
# make deb      the Debian package of window and command line; prints its path
# make deb-test installs that package in a clean Debian, uses it there and removes it (as root)
# make apk      the Android package, where SDK and NDK are; elsewhere it says what is missing (docs/android.md)
# make android  type-checks the window for phones (about ten minutes the first time)
# make deps     what the targets above need, without running them
#
# A target installs what is missing and asks nothing of the network when nothing is. Assumed: Rust by rustup, Node 20.

SHELL := /bin/bash
.SHELLFLAGS := -euo pipefail -c
.ONESHELL:
.SILENT:
.DEFAULT_GOAL := run
.PHONY: run window serve test kills fuzz screens pictures android apk deb deb-test deps deps-core deps-window deps-test bench-ui bench-certificate

export PATH := $(HOME)/.cargo/bin:$(PATH)
BUILT := $(or $(CARGO_TARGET_DIR),target)/debug

# By Debian's names. lld links (.cargo/config.toml); the rest of the tests' list reads what was made.
CORE_PACKAGES := build-essential lld
WINDOW_PACKAGES := pkg-config libwebkit2gtk-4.1-dev
TEST_PACKAGES := webkit2gtk-driver xvfb xauth chromium poppler-utils qpdf mupdf-tools openssl python3-venv
DEB_TEST_PACKAGES := mmdebstrap lintian desktop-file-utils

run: deps-core
	cargo build --package mendline-core
	$(BUILT)/mendline demo --out out
	echo "The certificate: out/certificate.pdf"
	if [ -n "$${DISPLAY:-}$${WAYLAND_DISPLAY:-}" ]; then
	  $(MAKE) --no-print-directory window MENDLINE_DATA=out/data
	else
	  echo "No display here: open the address below in a browser. Ctrl-C ends it."
	  $(BUILT)/mendline serve --data out/data
	fi

window: deps-core deps-window
	cargo build --package mendline-app
	MENDLINE_DATA="$(MENDLINE_DATA)" $(BUILT)/mendline-app

serve: deps-core
	cargo build --package mendline-core
	$(BUILT)/mendline serve $(if $(MENDLINE_DATA),--data "$(MENDLINE_DATA)")

# The window is built apart from the rest, as it is shipped: with a core that has no command line.
test: deps-core deps-window deps-test
	cargo fmt --all --check
	cargo clippy --workspace --all-targets --locked -- -D warnings
	cargo test --locked --workspace --exclude mendline-app
	cargo build --locked --package mendline-core
	cargo build --locked --package mendline-app
	cd tests/ui
	MENDLINE_BUILT="$(abspath $(BUILT))" xvfb-run --auto-servernum --server-args="-screen 0 1280x1024x24" \
	  node --test --test-concurrency=2 --test-reporter=spec unit/*.test.mjs browser/*.test.mjs *.test.mjs

kills: deps-core
	MENDLINE_KILLS=$(or $(KILLS),3000) cargo test --locked --package mendline-tests kills -- --nocapture

# libFuzzer on the stable toolchain: the compiler's own pass puts the counters in. What is found and kept while it runs
# lies in out/fuzz; inputs that take a new path are merged, the smallest of each, into fixtures/corpus by hand (README there).
FUZZ_FLAGS := -Cpasses=sancov-module -Cllvm-args=-sanitizer-coverage-level=4 \
  -Cllvm-args=-sanitizer-coverage-inline-8bit-counters -Cllvm-args=-sanitizer-coverage-pc-table \
  -Cllvm-args=-sanitizer-coverage-trace-compares
HOST = $(shell rustc --print host-tuple)

fuzz: deps-core
	RUSTFLAGS="$(FUZZ_FLAGS)" cargo build --locked --profile fuzz --target $(HOST) --target-dir target/coverage \
	  --package mendline-fuzz --features coverage
	for target in $(or $(FUZZ),inspection bundle record door pdf); do
	  mkdir -p out/fuzz/$$target
	  echo "$$target: $(or $(MINUTES),20) minutes"
	  MENDLINE_FUZZ=$$target target/coverage/$(HOST)/fuzz/mendline-fuzz out/fuzz/$$target fixtures/corpus/$$target \
	    -max_total_time=$$(( $(or $(MINUTES),20) * 60 )) -timeout=10 -rss_limit_mb=1024 -max_len=262144 \
	    -artifact_prefix=out/fuzz/$$target- -print_final_stats=1
	done

# One engine alone, or some screens: make screens SHOTS="chromium hold reading"
screens: deps-core deps-window deps-test
	cargo build --package mendline-core
	cargo build --package mendline-app
	mkdir -p out/screens
	MENDLINE_BUILT="$(abspath $(BUILT))" xvfb-run --auto-servernum --server-args="-screen 0 1400x1024x24" \
	  node tests/ui/screens.mjs out/screens $(SHOTS)

bench-ui: deps-core deps-test
	cargo build --package mendline-core
	MENDLINE_BUILT="$(abspath $(BUILT))" node tests/ui/bench.mjs

# In release form. Chromium is one of those beside it.
bench-certificate: deps-core deps-test tests/.venv/.bench
	tests/.venv/bin/python tests/certificate/bench/compare.py $(or $(TIMES),50)

pictures: deps-core deps-test
	cargo build --package mendline-core
	$(BUILT)/mendline demo --out out
	node tests/ui/screens.mjs out/screens chromium today planned runs hold staging second-go time-over review sign check-valid
	mkdir -p docs/pictures
	cp out/screens/today_day_laptop.png docs/pictures/today.png
	cp out/screens/planned_day_laptop.png docs/pictures/plan.png
	cp out/screens/runs_day_phone.png docs/pictures/wet-out.png
	cp out/screens/hold_day_phone.png docs/pictures/hold.png
	cp out/screens/hold_night_phone.png docs/pictures/hold-night.png
	for screen in staging second-go time-over; do cp out/screens/$${screen}_day_phone.png docs/pictures/$$screen.png; done
	for screen in review sign check-valid; do cp out/screens/$${screen}_day_laptop.png docs/pictures/$$screen.png; done
	pdftoppm -r 75 -l 2 -gray -png out/certificate.pdf docs/pictures/certificate

deb: deps-core deps-window
	src-tauri/deb.sh

deb-test: deps-core deps-window deps-test
	$(call install,$(DEB_TEST_PACKAGES))
	package=$$(src-tauri/deb.sh)
	as_root=; [ "$$(id -u)" = 0 ] || as_root=sudo
	$$as_root env "PATH=$$PATH" tests/deb.sh "$$package" out/deb-window.png

apk: deps-core
	src-tauri/build-apk.sh

android: deps-core
	tests/android-check.sh

deps: deps-core deps-window deps-test

deps-core:
	$(call install,$(CORE_PACKAGES))

deps-window:
	$(call install,$(WINDOW_PACKAGES))

deps-test: tests/ui/node_modules/.package-lock.json tests/.venv/.installed
	$(call install,$(TEST_PACKAGES))

tests/ui/node_modules/.package-lock.json: tests/ui/package-lock.json
	cd tests/ui
	npm ci --no-audit --no-fund
	touch node_modules/.package-lock.json

# Debian's python3 has pip only by python3-venv, which the list of packages names.
tests/.venv/.installed: tests/requirements.txt
	$(call install,$(TEST_PACKAGES))
	python3 -m venv tests/.venv
	tests/.venv/bin/pip install --quiet --disable-pip-version-check --requirement tests/requirements.txt
	touch tests/.venv/.installed

tests/.venv/.bench: tests/certificate/bench/requirements.txt tests/.venv/.installed
	tests/.venv/bin/pip install --quiet --disable-pip-version-check --requirement tests/certificate/bench/requirements.txt
	touch tests/.venv/.bench

define install
missing=()
if ! command -v dpkg-query > /dev/null; then
  echo "Not a Debian: needed are what Debian calls $(1)"
  exit 0
fi
for package in $(1); do
  dpkg-query --show --showformat='$${db:Status-Status}' $$package 2> /dev/null | grep --quiet '^installed$$' || missing+=($$package)
done
if (( $${#missing[@]} )); then
  echo "Installing $${missing[*]}"
  as_root=; [ "$$(id -u)" = 0 ] || as_root=sudo
  $$as_root apt-get update --quiet
  DEBIAN_FRONTEND=noninteractive $$as_root apt-get install --yes --no-install-recommends "$${missing[@]}"
fi
endef
