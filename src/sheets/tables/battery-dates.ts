import { type ColumnView, namesSupply } from "./score-column.ts";

const MOSTLY_DATES = 0.5;

/**
 * The columns, those headed by a battery alone ("Battery in") taken for the day that it was fitted where
 * their dates say so: all lie before every expiry in the line, or none lies after its tests and installations.
 */
export function withBatteryDates(views: readonly ColumnView[]): ColumnView[] {
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
