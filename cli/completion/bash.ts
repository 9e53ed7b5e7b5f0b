import type { OfferedVerb, ValueWords } from "./words.ts";

/** The script that teaches bash the program's verbs, options and their values. Where none fits, it offers files. */
export function bashScript(verbs: readonly OfferedVerb[]): string {
  return `# For bash: source <(wanecast completion bash)
_wanecast() {
  local typed=\${COMP_WORDS[COMP_CWORD]} before=\${COMP_WORDS[COMP_CWORD-1]} words=
  local keys="${policyKeys(verbs)}"
  COMPREPLY=()
  if (( COMP_CWORD == 1 )); then
    words="${verbs.map(({ name }) => name).join(" ")} help --help --version"
  else
    case "\${COMP_WORDS[1]} $before" in
${verbs.flatMap(valueCases).join("\n")}
    esac
    if [[ -z $words ]]; then
      case "\${COMP_WORDS[1]} $typed" in
${verbs.map(verbCase).join("\n")}
      esac
    fi
  fi
  if [[ -n $words ]]; then
    COMPREPLY=($(compgen -W "$words" -- "$typed"))
  fi
}
complete -o default -F _wanecast wanecast
`;
}

function valueCases({ name, options }: OfferedVerb): string[] {
  return options.flatMap(({ long, value }) => (value === null ? [] : [`      "${name} ${long}") ${offer(value)} ;;`]));
}

function offer(value: ValueWords): string {
  switch (value.kind) {
    case "words":
      return `words="${value.words.join(" ")}"`;
    case "policy":
      return "compopt -o nospace; words=$keys";
    case "folder":
      return `COMPREPLY=($(compgen -d -- "$typed")); return`;
    default:
      return "return";
  }
}

function policyKeys(verbs: readonly OfferedVerb[]): string {
  const values = verbs.flatMap(({ options }) => options.map(({ value }) => value));
  return values.flatMap((value) => (value?.kind === "policy" ? [value.words.join(" ")] : []))[0] ?? "";
}

function verbCase({ name, options, words }: OfferedVerb): string {
  const named = options.map(({ long }) => long).join(" ");
  const pattern = words === null ? `"${name} -"*` : `"${name} "*`;
  return `        ${pattern}) words="${[...(words ?? []), named].join(" ")}" ;;`;
}
