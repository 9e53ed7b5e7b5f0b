import type { OfferedOption, OfferedVerb, ValueWords } from "./words.ts";

/** The script that teaches zsh the program's verbs and options, each with what it does. */
export function zshScript(verbs: readonly OfferedVerb[]): string {
  return `#compdef wanecast
# For zsh: source <(wanecast completion zsh), or save it as _wanecast in a folder of $fpath
_wanecast() {
  local -a verbs
  if (( CURRENT == 2 )); then
    verbs=(
${verbs.map(({ name, explains }) => `      ${quoted(`${name}:${explains}`)}`).join("\n")}
    )
    _describe verb verbs
    return
  fi
  shift words
  (( CURRENT-- ))
  case $words[1] in
${verbs.map(verbCase).join("\n")}
  esac
}
if [[ $funcstack[1] == _wanecast ]]; then _wanecast "$@"; else compdef _wanecast wanecast; fi
`;
}

function verbCase({ name, options, words }: OfferedVerb): string {
  const rest = words === null ? "'*:input:_files'" : `'1:word:(${words.join(" ")})'`;
  const lines = [...options.map((option) => quoted(optionSpec(option))), rest];
  return `    ${name})\n      _arguments \\\n        ${lines.join(" \\\n        ")} ;;`;
}

function optionSpec({ long, explains, value }: OfferedOption): string {
  const says = explains.replace(/[[\]\\:]/g, "\\$&");
  return value === null ? `${long}[${says}]` : `*${long}[${says}]:value:${offer(value)}`;
}

function offer(value: ValueWords): string {
  switch (value.kind) {
    case "words":
      return `(${value.words.join(" ")})`;
    case "policy":
      return `compadd -S '' -- ${value.words.join(" ")}`;
    case "file":
      return "_files";
    case "folder":
      return "_files -/";
    default:
      return "";
  }
}

function quoted(text: string): string {
  return `'${text.replaceAll("'", "'\\''")}'`;
}
