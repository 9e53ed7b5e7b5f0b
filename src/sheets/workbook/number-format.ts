/** What a cell's number format makes people see. */
export interface FormatMeaning {
  /** A date with a day, a month without a day, or a length of time. */
  time: "day" | "month" | "duration" | null;
  /** Leading zeros: the number of digits shown at least. */
  digits: number;
  percent: boolean;
  /** A word shown behind the number, such as min; empty where none. */
  unit: string;
}

const memo = new Map<string, FormatMeaning>();

/** Reads a spreadsheet's number format, such as `000000`, `0.0 "min"`, `mmm-yy` or `[h]:mm`. */
export function formatMeaning(format: string): FormatMeaning {
  let meaning = memo.get(format);
  if (!meaning) {
    meaning = read(format);
    if (memo.size > 5000) memo.clear();
    memo.set(format, meaning);
  }
  return meaning;
}

function read(format: string): FormatMeaning {
  const first = format.split(";")[0] as string;
  const unit = /[0#?]\s*"\s*([^"]{1,16}?)\s*"\s*$/.exec(first)?.[1] ?? "";
  const plain = first
    .replace(/"[^"]*"|\\.|_.|\*./g, "")
    .replace(/\[(?!h+\]|m+\]|s+\])[^\]]*\]/gi, "")
    .toLowerCase();
  const elapsed = /\[(h+|m+|s+)\]/.test(plain);
  const dayOrYear = /[dy]/.test(plain);
  const clock = /h|s/.test(plain);
  const time =
    elapsed || (clock && !dayOrYear)
      ? "duration"
      : /d/.test(plain)
        ? "day"
        : dayOrYear && /m/.test(plain)
          ? "month"
          : dayOrYear
            ? "day"
            : null;
  return {
    time: plain === "general" ? null : time,
    digits: /^0{2,}$/.test(plain) ? plain.length : 0,
    percent: plain.includes("%"),
    unit: /^(%|€|\$|£)$/.test(unit) ? "" : unit,
  };
}
