#!/usr/bin/env bash
# The completion, in a real bash: what Tab offers after a line that is being typed.
# usage: completion.sh PROGRAM ROOT
set -u
program=$1 root=$2 failures=0
home=$(mktemp -d)
trap 'rm -rf "$home"' EXIT
export HOME=$home XDG_DATA_HOME=$home
cd "$root" || exit 1
"$program" batch add heron docs/examples/heron.toml >/dev/null || exit 1
source <("$program" help --print completion) || exit 1

offers() {  # line... ; the last word is being typed
    COMP_WORDS=("$program" "$@") COMP_CWORD=$#
    _gristwright
    printf '%s\n' "${COMPREPLY[@]}"
}
expect() {  # wanted, line...
    local wanted=$1
    shift
    if ! offers "$@" | grep -qxF -e "$wanted"; then
        echo "after '$*' there is no '$wanted': $(offers "$@" | tr '\n' ' ')"
        failures=$((failures + 1))
    fi
}
refuse() {  # unwanted, line...
    local unwanted=$1
    shift
    if offers "$@" | grep -qxF -e "$unwanted"; then
        echo "after '$*' there is '$unwanted'"
        failures=$((failures + 1))
    fi
}

expect makes ma
expect --version --v
refuse yarn ma
expect --wraps yarn --wr
expect --help yarn --h
refuse --craft yarn --c
expect woven makes --craft w
expect knitted makes --craft ''
expect 'open\ or\ fulled' swatch heron --finish o
expect 'hard\ fulled' swatch heron --finish ''
expect triangle-shawl plan tri
expect triangle-shawl split heron --main tri
expect heron plan triangle-shawl he
expect heron swatch ''
expect heron batch show he
expect remove batch r
expect check templates c
expect cloth picture c
expect certainty help cer
expect makes help m
expect reference help --print r
expect backup b
refuse heron nonsense ''
complete -p gristwright | grep -q _gristwright || failures=$((failures + 1))
# Every command and every option that --help lists is offered.
for command in $("$program" help --print commands); do
    expect "$command" "${command:0:1}"
    offered=$(offers "$command" --)
    for option in $("$program" "$command" --help | grep -oE '^  --[a-z-]+'); do
        grep -qxF -e "$option" <<<"$offered" || { echo "$command lacks $option"; failures=$((failures + 1)); }
    done
done
echo "$failures failures"
exit $((failures > 0))
