# Asks the program that is being typed; a mistake in a notebook is not the place to say so here.
_gristwright_names() { "${COMP_WORDS[0]}" help --print "$1" 2>/dev/null; }

_gristwright() {
    local cur=${COMP_WORDS[COMP_CWORD]} prev=${COMP_WORDS[COMP_CWORD - 1]}
    local command=${COMP_WORDS[1]} words IFS=$'\n'
    COMPREPLY=()
    if ((COMP_CWORD == 1)); then
        words=$(_gristwright_names commands)$'\n--help\n--version'
    elif words=$(_gristwright_values "$command" "$prev"); then
        [[ $words ]] || { compopt -o default 2>/dev/null; return; }
    elif [[ $cur == -* ]]; then
        words=$(_gristwright_options "$command")$'\n--help'
    else
        words=$(_gristwright_words "$command")
        compopt -o default 2>/dev/null  # files, where nothing else fits
    fi
    local word
    for word in $words; do
        [[ $word == "$cur"* ]] && COMPREPLY+=("$(printf '%q' "$word")")
    done
}
complete -F _gristwright gristwright
