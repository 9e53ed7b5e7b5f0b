import { type ColumnView, MOSTLY_DIFFERENT, namesSupply } from "./score-column.ts";

const MOSTLY_DATES = 0.5;
/** Words, folded, for putting one in another's place. */
export const REPLACED = /repla|swap|chang|tausch|wechsel|ersetz|rempla|cambi|sustit|vervang/;

/**
 * The columns, those headed by a battery alone ("Battery in") taken for the day that it was fitted where
 * their dates say so: all lie before every expiry in the line, or none lies after its tests and installations.
 */
export function withBatteryDates(all: readonly ColumnView[]): ColumnView[] {
  const views = withReplaced(all);
  const others = views.filter((view) => !isBare(view) && view.profile.dates > MOSTLY_DATES);
  const expiries = others.filter(isExpiry).map(({ profile }) => profile.earliest);
  const pasts = others.filter(isPast).map(({ profile }) => profile.latest);
  const wasFitted = ({ profile }: ColumnView) =>
    expiries.length > 0 ? profile.latest < Math.min(...expiries) : profile.latest <= Math.max(...pasts);
  return views.map((view) =>
    isBare(view) && view.profile.dates > MOSTLY_DATES && wasFitted(view)
      ? { ...view, meaning: { ...view.meaning, says: "install" } }
      : view,
  );
}

/** True for a header that names a battery and says nothing of it but that it has a date. */
function isBare({ things, meaning: { says } }: ColumnView): boolean {
  return things === "battery" && /^(date)?$/.test(says);
}

function isExpiry(view: ColumnView): boolean {
  const { says } = view.meaning;
  return says.includes("expiry") || (/^(date)?$/.test(says) && namesSupply(view));
}

function isPast({ things, meaning: { says } }: ColumnView): boolean {
  return things.includes("test") || /install|made/.test(says);
}

/**
 * The columns, the day of a replacement behind the one of a listed battery's fitting taken for its last, where some have none:
 * "Battery, Fitted, Replaced on".
 */
function withReplaced(views: readonly ColumnView[]): readonly ColumnView[] {
  const named = views.findIndex(
    ({ things, meaning: { says }, profile }) =>
      /^(battery( id)?|(battery)? serial)$/.test(`${things} ${says}`.trimEnd()) &&
      profile.dates === 0 &&
      profile.distinct > MOSTLY_DIFFERENT,
  );
  const [fitted, replaced, other] = views
    .slice(named + 1)
    .filter(({ things, meaning }) => /^(battery)?$/.test(things) && meaning.says === "install");
  const isReplaced = (view: ColumnView) => REPLACED.test(view.meaning.words);
  if (named === -1 || !fitted || !replaced || other || isReplaced(fitted) || !isReplaced(replaced)) return views;
  if (views.some(namesSupply) || replaced.profile.filled >= fitted.profile.filled) return views;
  return views.map((view) => (view === replaced ? { ...view, meaning: { ...view.meaning, says: "retired" } } : view));
}
