#!/usr/bin/env bash
# Builds, tests, serves and measures Coldwright. `./build.sh help` lists the commands.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")"

readonly CACHE=${XDG_CACHE_HOME:-${HOME:?}/.cache}/coldwright
readonly CARGO_HOME=${CARGO_HOME:-$HOME/.cargo}
readonly WASM_TARGET=wasm32-unknown-unknown
readonly GENERATED=www/generated
readonly CATALOGUE_TYPES=www/src/catalogue.ts
readonly JOB_SCHEMA=www/job.schema.json
readonly BROWSER_TEST_SECONDS=4200 # A hanging browser must not use up the time of a whole run.

readonly LINKER_PACKAGES=(gcc libc6-dev)
# Debian's cargo trusts the system's certificates; rustup's brings its own.
readonly WASM_COMPILER_PACKAGES=(rustc-web cargo-web rust-web-src lld-22 ca-certificates)
readonly BROWSER_PACKAGES=(chromium chromium-driver fonts-noto-core fonts-noto-color-emoji fonts-liberation2)
readonly ENGINE_PACKAGES=(firefox-esr webkit2gtk-driver xvfb xauth) # The main tasks are tested in other engines too.
readonly PRINT_PACKAGES=(poppler-utils) # Reads what the page prints.
readonly CODE_PACKAGES=(zbar-tools)     # Reads the codes that the page shows.

say() { printf '==> %s\n' "$*"; }

stop() {
    printf 'build.sh: %s\n' "$*" >&2
    exit 1
}

# Runs a command and shows its output only when it fails.
quietly() {
    local log status=0
    log=$(mktemp)
    "$@" >"$log" 2>&1 </dev/null || status=$?
    if ((status)); then cat "$log" >&2; fi
    rm -f "$log"
    return "$status"
}

# True when every Debian package named is there; as root, installs those that are not.
have_packages() {
    local package missing=()
    command -v dpkg-query >/dev/null || return 1
    for package in "$@"; do
        [[ $(dpkg-query -W -f '${db:Status-Status}' "$package" 2>/dev/null) == installed ]] || missing+=("$package")
    done
    ((${#missing[@]})) || return 0
    ((EUID == 0)) || return 1
    say "install Debian packages: ${missing[*]}"
    export DEBIAN_FRONTEND=noninteractive
    quietly apt-get update && quietly apt-get install -y --no-install-recommends "${missing[@]}"
}

prepare_host_compiler() {
    command -v cargo >/dev/null || PATH=$CARGO_HOME/bin:$PATH
    command -v cargo >/dev/null || stop "cargo is missing: install Rust with rustup (https://rustup.rs)"
    command -v cc >/dev/null || have_packages "${LINKER_PACKAGES[@]}" ||
        stop "a C linker is missing: as root, apt-get install ${LINKER_PACKAGES[*]}"
}

prepare_lints() {
    { cargo fmt --version && cargo clippy --version; } >/dev/null 2>&1 ||
        stop "rustfmt or clippy is missing: rustup component add rustfmt clippy"
}

prepare_node() {
    { command -v npm && node -e 'process.exit(parseInt(process.versions.node) < 20 ? 1 : 0)'; } >/dev/null ||
        stop "Node 20 or later with npm is missing: https://nodejs.org"
}

prepare_browser() {
    have_packages "${BROWSER_PACKAGES[@]}" "${PRINT_PACKAGES[@]}" "${CODE_PACKAGES[@]}" || true # Elsewhere than on Debian they come another way.
    CHROMIUM=$(command -v chromium || command -v chromium-browser || command -v google-chrome) ||
        stop "Chromium is missing: as root, apt-get install ${BROWSER_PACKAGES[*]}"
    CHROMEDRIVER=$(command -v chromedriver) ||
        stop "Chromium's driver is missing: as root, apt-get install ${BROWSER_PACKAGES[*]}"
    command -v pdftotext >/dev/null || stop "pdftotext is missing: as root, apt-get install ${PRINT_PACKAGES[*]}"
    command -v zbarimg >/dev/null || stop "zbarimg is missing: as root, apt-get install ${CODE_PACKAGES[*]}"
    export CHROMIUM CHROMEDRIVER
}

# Where an engine cannot be had, its tests are left out, and that is said.
prepare_engines() {
    have_packages "${ENGINE_PACKAGES[@]}" && return
    if command -v dpkg-query >/dev/null && ((EUID == 0)); then stop "cannot install ${ENGINE_PACKAGES[*]}"; fi
    say "Firefox or WebKit may be missing, and their tests are then left out: on Debian as root," \
        "apt-get install ${ENGINE_PACKAGES[*]}; elsewhere name them in FIREFOX and WEBKIT_DRIVER"
}

write_webdriver_settings() {
    local arguments
    printf -v arguments ',"--%s"' headless no-sandbox disable-gpu disable-quic no-first-run \
        disable-background-networking disable-component-update disable-sync
    printf '{"goog:chromeOptions":{"binary":"%s","args":[%s]}}\n' "$CHROMIUM" "${arguments#,}" >"$1"
}

has_wasm_standard_library() {
    local libraries
    libraries=$("$1" --print target-libdir --target "$WASM_TARGET" 2>/dev/null) &&
        compgen -G "$libraries/libstd-*.rlib" >/dev/null
}

# Two standard libraries must never share a target directory: its name tells them apart.
prepare_wasm_compiler() {
    if has_wasm_standard_library rustc; then
        wasm_cargo=cargo
        wasm_rustc=rustc
        wasm_target_directory=target/page/$(rustc -vV | sha256sum | cut -c 1-12)
    elif have_packages "${WASM_COMPILER_PACKAGES[@]}"; then
        wasm_cargo=/usr/bin/cargo
        prepare_debian_sysroot
        wasm_rustc=$sysroot/bin/rustc
        wasm_target_directory=target/page/$(cat "$sysroot/build-id")
    else
        stop "no compiler for $WASM_TARGET: rustup target add $WASM_TARGET" \
            "(or, on Debian 12 as root, apt-get install ${WASM_COMPILER_PACKAGES[*]})"
    fi
}

# Debian ships the standard library's source alone: build it once for each compiler and way of building.
prepare_debian_sysroot() {
    local key build
    key=$({ /usr/bin/rustc -vV; declare -f compile_standard_library assemble_sysroot; } | sha256sum | cut -c 1-12)
    sysroot=$CACHE/sysroot-$key
    [[ -f $sysroot/build-id ]] && return
    say "build the standard library for $WASM_TARGET (about 40 s, once)"
    mkdir -p "$CACHE"
    build=$(mktemp -d "$CACHE/sysroot-build-XXXXXX")
    # shellcheck disable=SC2064
    trap "rm -rf '$build'" EXIT
    quietly compile_standard_library "$build"
    assemble_sysroot "$build"
    rm -rf "$sysroot"
    mv -T "$build/sysroot" "$sysroot"
}

# Bitcode must be embedded, or a module cannot be optimised as a whole (lto).
compile_standard_library() {
    mkdir -p "$1/crate/src"
    printf '[package]\nname = "empty"\nedition = "2024"\n[profile.release]\npanic = "abort"\n' >"$1/crate/Cargo.toml"
    printf '#![no_std]\n' >"$1/crate/src/lib.rs"
    RUSTC=/usr/bin/rustc RUSTC_BOOTSTRAP=1 \
        CARGO_ENCODED_RUSTFLAGS=-Cembed-bitcode=yes$'\x1f'$(path_remapping) \
        /usr/bin/cargo build --release --manifest-path "$1/crate/Cargo.toml" --target-dir "$1/target" \
        --target "$WASM_TARGET" -Z build-std=std,panic_abort,panic_unwind,test
}

# A link would lead rustc back to its own sysroot, hence the wrapper.
assemble_sysroot() {
    local host libraries=$1/sysroot/lib/rustlib
    host=$(/usr/bin/rustc -vV | sed -n 's/^host: //p')
    mkdir -p "$1/sysroot/bin" "$libraries/$WASM_TARGET/lib" "$libraries/$host/bin"
    cp "$1/target/$WASM_TARGET/release/deps"/*.rlib "$libraries/$WASM_TARGET/lib"
    rm "$libraries/$WASM_TARGET/lib"/libempty-*
    ln -s "$(/usr/bin/rustc --print target-libdir)" "$libraries/$host/lib"
    ln -s /usr/bin/lld-22 "$libraries/$host/bin/rust-lld"
    # shellcheck disable=SC2016
    printf '#!/bin/sh\nexec /usr/bin/rustc --sysroot "${0%%/bin/rustc}" "$@"\n' >"$1/sysroot/bin/rustc"
    chmod +x "$1/sysroot/bin/rustc"
    printf '%s-%s\n' "$(basename "$sysroot")" "${1##*-}" >"$1/sysroot/build-id"
}

# Keeps the machine's paths out of the module, so that two machines build the same bytes.
path_remapping() {
    printf '%s\x1f%s' "--remap-path-prefix=$CARGO_HOME/registry/src=cargo" "--remap-path-prefix=$PWD=coldwright"
}

cargo_for_wasm() {
    local command=$1
    shift
    RUSTC=$wasm_rustc CARGO_ENCODED_RUSTFLAGS=$(path_remapping) "$wasm_cargo" "$command" --locked \
        --target "$WASM_TARGET" --target-dir "$wasm_target_directory" --no-default-features "$@"
}

# The command-line tool must be of the very version of the crate.
prepare_wasm_bindgen() {
    local version
    version=$(awk '/^name = "wasm-bindgen"$/ { getline; gsub(/version = |"/, ""); print; exit }' Cargo.lock)
    [[ $version ]] || stop "Cargo.lock names no version of wasm-bindgen"
    wasm_bindgen=$CACHE/wasm-bindgen-$version/bin
    [[ -x $wasm_bindgen/wasm-bindgen-test-runner ]] && return
    say "install wasm-bindgen-cli $version (about 2 min, once)"
    quietly cargo install wasm-bindgen-cli --version "$version" --root "$(dirname "$wasm_bindgen")"
}

prepare_page_packages() {
    local lock
    [[ -f www/package-lock.json ]] || stop "www/package-lock.json is missing"
    lock=$(sha256sum <www/package-lock.json)
    [[ $(cat www/node_modules/.installed-lock 2>/dev/null) != "$lock" ]] || return 0
    say "install the page's packages (npm ci)"
    PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD=1 quietly npm ci --prefix www
    printf '%s\n' "$lock" >www/node_modules/.installed-lock
}

page() { npm run --silent --prefix www "$@"; }

prepare_wasm() {
    prepare_node
    prepare_wasm_compiler
    prepare_wasm_bindgen
}

prepare_page() {
    prepare_host_compiler
    prepare_wasm
    prepare_page_packages
}

# The whole core, and the part of it that answers the first screen and is there sooner.
build_modules() {
    build_module "$GENERATED" page,further
    build_module "$GENERATED/first" page
}

build_module() {
    local directory=$1 features=$2 built=$wasm_target_directory/$WASM_TARGET/page/coldwright.wasm module stamp
    cargo_for_wasm rustc --features "$features" --lib --crate-type cdylib --profile page
    stamp=$(sha256sum "$built" www/package-lock.json "$wasm_bindgen/wasm-bindgen" build.sh)
    [[ $(cat "$directory/.stamp" 2>/dev/null) != "$stamp" ]] || return 0
    mkdir -p "$directory"
    "$wasm_bindgen/wasm-bindgen" --target web --out-dir "$directory" "$built"
    module=$directory/coldwright_bg.wasm
    # rustc's own strip would also drop the list of target features that wasm-opt goes by.
    # A browser compiles a function when it is first called: were all that has one caller put into it, the first call
    # of all would wait for everything.
    www/node_modules/.bin/wasm-opt -Os --one-caller-inline-max-function-size=40 --strip-debug --strip-producers --strip-target-features "$module" -o "$module"
    printf '%s\n' "$stamp" >"$directory/.stamp"
}

print_catalogue_types() { cargo run --quiet --locked --bin coldwright -- catalogue | page types; }

build_dist() {
    say "build the core's modules for the page"
    build_modules
    say "build the page into dist/"
    page build
}

passed=0
failed=()

# Runs one check to its end and remembers how it went, so that one failure does not hide the next.
# The subshell stands outside any condition, where bash would ignore `set -e` in it.
check() {
    local name=$1 start=$SECONDS status
    shift
    say "check: $name"
    set +e
    (set -e && "$@")
    status=$?
    set -e
    if ((status)); then failed+=("$name"); else passed=$((passed + 1)); fi
    say "$name: $( ((status)) && echo FAILED || echo passed) ($((SECONDS - start)) s)"
}

lint_core() {
    cargo clippy --quiet --locked --all-targets --features page -- -D warnings
    cargo clippy --quiet --locked --lib --no-default-features --features page,further -- -D warnings
    cargo clippy --quiet --locked --lib --no-default-features --features page -- -D warnings
}

test_wasm() {
    cargo_for_wasm test --features page,further --no-fail-fast --test 'wasm*' --config "target.$WASM_TARGET.runner=['$wasm_bindgen/wasm-bindgen-test-runner']"
}

test_wasm_in_chromium() {
    export WASM_BINDGEN_USE_BROWSER=1 WASM_BINDGEN_TEST_TIMEOUT=120
    export WASM_BINDGEN_TEST_WEBDRIVER_JSON=$PWD/target/webdriver.json
    write_webdriver_settings "$WASM_BINDGEN_TEST_WEBDRIVER_JSON"
    test_wasm
}

# Builds what it tests, so that a build that failed is never taken for an older one that did not.
test_in_browser() {
    page build
    timeout --foreground "$BROWSER_TEST_SECONDS" npm test --silent --prefix www
}

# Each browser has the whole of the bench's and the job's tests before it, so that this takes as long as all others.
test_one_file() {
    page build
    page test:one-file
}

compare_catalogue_types() {
    print_catalogue_types | diff -u "$CATALOGUE_TYPES" - ||
        stop "$CATALOGUE_TYPES is out of date: run ./build.sh types"
}

check_core() {
    check "format" cargo fmt --check
    check "lint" lint_core
    check "core tests" cargo test --locked --no-fail-fast
}

check_wasm() {
    check "core tests as WebAssembly in Node" test_wasm
    check "core tests as WebAssembly in Chromium" test_wasm_in_chromium
}

check_page() {
    check "generated types" compare_catalogue_types
    check "modules" build_modules
    check "page types" page check
    check "page in a browser" test_in_browser
}

summarise() {
    local name
    for name in "${failed[@]}"; do say "FAILED: $name"; done
    say "$SECONDS s in all"
    printf 'checks: %d passed, %d failed\n' "$passed" "${#failed[@]}"
    ((${#failed[@]} == 0))
}

usage() {
    cat <<'END'
./build.sh run           build the page, serve it and print its address
./build.sh test [PART]   run every test, or those of one part: core, wasm, page; "one-file", which is no part of
                         the whole, runs the tests of bench and job on the page that is one file, in two browsers
./build.sh dist          leave the static site in dist/, and beside it one file with everything inside
./build.sh bench         measure speed and sizes
./build.sh types         write the page's types and the job's schema from the core's catalogue
END
}

run_tests() {
    local part=$1
    prepare_host_compiler
    prepare_lints
    if [[ $part != core ]]; then
        prepare_wasm
        prepare_browser
    fi
    if [[ $part == all || $part == page || $part == one-file ]]; then
        prepare_engines
        prepare_page_packages
    fi
    # Each on a line of its own: bash ignores `set -e` in whatever stands left of `&&`.
    if [[ $part == all || $part == core ]]; then check_core; fi
    if [[ $part == all || $part == wasm ]]; then check_wasm; fi
    if [[ $part == all || $part == page ]]; then check_page; fi
    if [[ $part == one-file ]]; then
        check "modules" build_modules
        check "bench and job in one file" test_one_file
    fi
    summarise
}

run_page() {
    prepare_page
    build_dist
    exec node www/serve.mjs dist
}

# The core beside the reference library, natively and in WebAssembly, in one run.
bench_beside_library() {
    local library environment loop=saturation_loop
    library=$(grep '^CoolProp==' tests/reference/fluids/requirements.txt)
    environment=$CACHE/python-$library
    if [[ ! -x $environment/bin/python ]]; then
        say "install $library (once)"
        { python3 -m venv "$environment.new" && quietly "$environment.new/bin/pip" install "$library" numpy; } ||
            stop "Python 3 with venv is missing: as root, apt-get install python3-venv"
        mv -T "$environment.new" "$environment"
    fi
    cargo build --quiet --locked --release --example "$loop"
    RUSTC=$wasm_rustc CARGO_ENCODED_RUSTFLAGS=$(path_remapping) "$wasm_cargo" build --quiet --locked \
        --target "$WASM_TARGET" --target-dir "$wasm_target_directory" --no-default-features --profile page --example "$loop"
    "$environment/bin/python" benches/library.py "${CARGO_TARGET_DIR:-target}/release/examples/lib$loop.so" \
        "$wasm_target_directory/$WASM_TARGET/page/examples/$loop.wasm" "$GENERATED/coldwright_bg.wasm"
}

run_benches() {
    prepare_page
    prepare_browser
    say "measure the core"
    cargo bench --locked
    build_dist
    say "measure the core beside the reference library"
    bench_beside_library
    say "measure the page"
    page bench
}

write_catalogue_types() {
    prepare_host_compiler
    prepare_node
    prepare_page_packages
    print_catalogue_types >"$CATALOGUE_TYPES.new"
    mv "$CATALOGUE_TYPES.new" "$CATALOGUE_TYPES"
    cargo run --quiet --locked --bin coldwright -- job-schema >"$JOB_SCHEMA.new"
    mv "$JOB_SCHEMA.new" "$JOB_SCHEMA"
}

case "${1:-help} ${2:-all}" in
"run all") run_page ;;
"test all" | "test core" | "test wasm" | "test page" | "test one-file") run_tests "${2:-all}" ;;
"dist all")
    prepare_page
    build_dist
    ;;
"bench all") run_benches ;;
"types all") write_catalogue_types ;;
"help all") usage ;;
*)
    usage >&2
    exit 2
    ;;
esac
