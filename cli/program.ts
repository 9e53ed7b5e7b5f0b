import { dirname } from "node:path";
import { Argument, Command } from "commander";
import { version } from "../package.json";
import { CAUTION_HELP, EXIT_HELP, POLICY_HELP, START_HELP, VERB_HELP } from "./help-text.ts";
import { terminalText } from "./terminal-text.ts";
import {
  addJudgedOptions,
  addResultOptions,
  addSheetOptions,
  collect,
  collectMonths,
  type FailCondition,
  SHELLS,
  type Shell,
  type VerbOptions,
} from "./verb-options.ts";
import type { CheckOptions } from "./verbs/check.ts";
import type { CompareOptions } from "./verbs/compare.ts";
import type { ProveOptions } from "./verbs/prove.ts";
import type { TraceOptions } from "./verbs/trace.ts";

/** What `--fail-on` can judge of a plan, and of sheets alone. */
const PLAN_CONDITIONS: readonly FailCondition[] = ["late", "short", "set-aside", "warning"];
const CHECK_CONDITIONS: readonly FailCondition[] = ["set-aside", "warning"];

const VERBS = "Verbs:";
const INPUTS = "sheets (.csv, .tsv, .xlsx), folders of them, or - for standard input";

/** Folders that a verb will write into. */
function outputFolders({ out, writeClean, writeColumns }: CheckOptions): string[] {
  const file = writeColumns === undefined ? undefined : dirname(writeColumns);
  return [out, writeClean, file].filter((folder) => folder !== undefined);
}

/** The command line: verbs and options. Each verb's code, with the engine behind it, loads only when it runs. */
export function makeProgram(): Command {
  const program = new Command("wanecast")
    .description(
      "Foresight over a fleet of emergency devices: which batteries fade, which supplies expire, what to order by which day.",
    )
    .version(version, "-V, --version", "print the version")
    .usage("VERB INPUT... [options]")
    .helpOption("-h, --help", "print help")
    .commandsGroup(VERBS)
    .addHelpCommand(new Command("help").argument("[verb]").description("print a verb's help").helpGroup(VERBS))
    .addHelpText("after", below(START_HELP, CAUTION_HELP, EXIT_HELP))
    .configureOutput({
      // what was typed stands in what is said of it
      outputError: (text, write) => write(terminalText(text).replace("unknown command", "unknown verb")),
    })
    // a verb's own help tells what it takes
    .configureHelp({ minWidthToWrap: 20, subcommandTerm: (verb) => verb.name() })
    .hook("preAction", async (_, verb) => {
      const { requireWritable } = await import("./write-files.ts");
      for (const folder of outputFolders(verb.opts<CheckOptions>())) requireWritable(folder);
    })
    .exitOverride();
  addPlanningVerbs(program);
  addVerbsBeside(program);
  addOtherVerbs(program);
  return program;
}

/** Verbs that read sheets and tell what lies ahead. */
function addPlanningVerbs(program: Command): void {
  sheetVerb(
    program,
    "plan",
    "plan.json, orders.csv, orders.xlsx, orders.ics, packs.csv, set-aside.csv and page.html",
    PLAN_CONDITIONS,
    async () => (await import("./verbs/plan.ts")).runPlan,
  );
  const check = addSheetOptions(verb(program, "check").argument("<input...>", INPUTS))
    .option("--write-columns <file>", "write how columns were read, to edit and give back by --columns")
    .option("--write-clean <folder>", "write the fleet as clean CSV sheets and one workbook");
  addJudgedOptions(check, "check.json and set-aside.csv", CHECK_CONDITIONS)
    .addHelpText("after", below(POLICY_HELP, EXIT_HELP))
    .action(async (inputs: string[], options: CheckOptions) =>
      (await import("./verbs/check.ts")).runCheck(inputs, options),
    );
  sheetVerb(program, "packs", "packs.csv", PLAN_CONDITIONS, async () => (await import("./verbs/packs.ts")).runPacks);
  sheetVerb(program, "dates", "dates.csv", PLAN_CONDITIONS, async () => (await import("./verbs/dates.ts")).runDates);
  sheetVerb(
    program,
    "orders",
    "orders.csv, orders.xlsx, orders.ics and budget.txt",
    PLAN_CONDITIONS,
    async () => (await import("./verbs/orders.ts")).runOrders,
  );
}

/** Verbs beside the plan: two plans compared, recalls, label scans, and how forecasts did. */
function addVerbsBeside(program: Command): void {
  const compare = addSheetOptions(
    verb(program, "compare").argument("<input...>", `two saved plans (.json), or ${INPUTS}`),
  ).option("--against <key=value>", "a policy value of the second plan; may be repeated", collect);
  addResultOptions(compare, "compare.json")
    .addHelpText("after", below(POLICY_HELP, EXIT_HELP))
    .action(async (inputs: string[], options: CompareOptions) =>
      (await import("./verbs/compare.ts")).runCompare(inputs, options),
    );

  const trace = addSheetOptions(
    verb(program, "trace").argument(
      "<id-and-input...>",
      `a lot, serial, GTIN or order number, or the start of one and *; then ${INPUTS}`,
    ),
  ).option("--ids <file>", "a list instead of the one ID, one a line (a recall notice's lots); - for standard input");
  addResultOptions(trace, "trace.json and trace.csv")
    .addHelpText("after", below(POLICY_HELP, EXIT_HELP))
    .action(async (args: string[], options: TraceOptions) =>
      (await import("./verbs/trace.ts")).runTrace(args, options),
    );

  const scan = addSheetOptions(
    verb(program, "scan").argument("[input...]", "sheets whose catalogue names the scanned products"),
  );
  addJudgedOptions(scan, "dated_stock.csv and set-aside.csv", CHECK_CONDITIONS)
    .addHelpText("after", below(EXIT_HELP))
    .action(async (inputs: string[], options: VerbOptions) =>
      (await import("./verbs/scan.ts")).runScan(inputs, options),
    );

  const prove = addSheetOptions(verb(program, "prove").argument("<input...>", INPUTS)).option(
    "--months-back <months>",
    "how long before as-of to cut history off; may be repeated (default: 6, 12 and 24)",
    collectMonths,
  );
  addResultOptions(prove, "prove.json")
    .addHelpText("after", below(POLICY_HELP, EXIT_HELP))
    .action(async (inputs: string[], options: ProveOptions) =>
      (await import("./verbs/prove.ts")).runProve(inputs, options),
    );
}

/** The page, the sample and help for shells. */
function addOtherVerbs(program: Command): void {
  addSheetOptions(verb(program, "page").argument("<input...>", INPUTS))
    .option("--out <folder>", "write page.html into this folder (default: print it on stdout)")
    .addHelpText("after", below(POLICY_HELP, EXIT_HELP))
    .action(async (inputs: string[], options: VerbOptions) =>
      (await import("./verbs/page.ts")).runPage(inputs, options),
    );

  verb(program, "sample")
    .argument("<folder>", "folder to write into; made where it is missing")
    .action(async (folder: string) => (await import("./verbs/sample.ts")).runSample(folder));

  verb(program, "completion")
    .addArgument(new Argument("<shell>", "the shell to write for").choices(SHELLS))
    .action(async (shell: Shell) => (await import("./verbs/completion.ts")).runCompletion(program, shell));
}

/** Paragraphs below a help, as wide as the help itself. */
function below(...paragraphs: string[]): (context: { command: Command; error: boolean }) => string {
  return ({ command, error }) => {
    const output = command.configureOutput();
    const width = (error ? output.getErrHelpWidth?.() : output.getOutHelpWidth?.()) ?? 80;
    const help = command.createHelp();
    return paragraphs.map((text) => `\n${help.boxWrap(text, width)}`).join("\n");
  };
}

type RunVerb = (inputs: readonly string[], options: VerbOptions) => Promise<void>;

function sheetVerb(
  program: Command,
  name: string,
  written: string,
  conditions: readonly FailCondition[],
  load: () => Promise<RunVerb>,
): void {
  const command = addSheetOptions(verb(program, name).argument("<input...>", INPUTS));
  addJudgedOptions(command, written, conditions)
    .addHelpText("after", below(POLICY_HELP, EXIT_HELP))
    .action(async (inputs: string[], options: VerbOptions) => (await load())(inputs, options));
}

function verb(program: Command, name: string): Command {
  const help = VERB_HELP[name];
  return program
    .command(name)
    .description(help?.answers ?? "")
    .addHelpText("before", `Examples:\n${(help?.examples ?? []).map((line) => `  ${line}`).join("\n")}\n`);
}
