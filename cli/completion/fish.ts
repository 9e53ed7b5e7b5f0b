import type { OfferedOption, OfferedVerb, ValueWords } from "./words.ts";

/** The script that teaches fish the program's verbs and options, each with what it does. */
export function fishScript(verbs: readonly OfferedVerb[]): string {
  const lines = verbs.flatMap((verb) => [
    `complete -c wanecast -n __fish_use_subcommand -f -a ${verb.name} -d ${quoted(verb.explains)}`,
    ...(verb.words === null ? [] : [`${whenUsing(verb)} -f -a ${quoted(verb.words.join(" "))}`]),
    ...verb.options.map((option) => `${whenUsing(verb)} ${optionFlags(option)}`),
  ]);
  return `# For fish: wanecast completion fish | source\n${lines.join("\n")}\n`;
}

function whenUsing({ name }: OfferedVerb): string {
  return `complete -c wanecast -n '__fish_seen_subcommand_from ${name}'`;
}

function optionFlags({ long, short, explains, value }: OfferedOption): string {
  const flags = [`-l ${long.slice(2)}`, ...(short === null ? [] : [`-s ${short.slice(1)}`])];
  return [...flags, ...(value === null ? [] : [offer(value)]), `-d ${quoted(explains)}`].join(" ");
}

function offer(value: ValueWords): string {
  switch (value.kind) {
    case "words":
    case "policy":
      return `-x -a ${quoted(value.words.join(" "))}`;
    case "file":
      return "-r -F";
    case "folder":
      return "-x -a '(__fish_complete_directories)'";
    default:
      return "-x";
  }
}

function quoted(text: string): string {
  return `'${text.replace(/[\\']/g, "\\$&")}'`;
}
