import type { ColumnView } from "./score-column.ts";
import type { FieldSource, Output } from "./table.ts";

/** What goes about and has a home: vehicles, and kits in them. Shelves and cupboards stay where their site is. */
const GOES_ABOUT =
  /veh|ambul|\bamb\b|fahrz|fzg|kfz|auto|truck|rtw|ktw|hlf|wagen|medic|engine|\brigs?\b|vsav|vsl|smur|voertuig|fordon|pojazd|karetka|viatura|\bkits?\b|\bbags?\b|\bcase\b|koffer|rucksack|tasche|rugzak|mochila|\bsac\b|\btas\b|trolley|\bcart|carro|chariot/;
/** Words over vehicles as over persons, and the share of vehicles and the like from which they head those. */
const ASSIGNED = /assign|zugeordnet|zugewiesen|affect|asign|toegewezen|issued|given/;
const MOSTLY = 0.5;

/** Outputs whose place is read from a column of sites and one of vehicles together, where a list has both and would read one alone. */
export function withVehiclesAtSites(outputs: Output[], views: readonly ColumnView[]): Output[] {
  const sites = views.filter((view) => says(view, /\bsite\b/) && !says(view, /\b(place|unit)\b/));
  const vehicles = views.filter((view) => isVehicle(view) && view.profile.filled > 0);
  const [site] = sites;
  const [vehicle] = vehicles;
  if (sites.length !== 1 || vehicles.length !== 1 || !site || !vehicle) return outputs;
  const both = [site.column, vehicle.column];
  const reads = ({ fields }: Output) => fields.filter(({ columns }) => columns.some((column) => both.includes(column)));
  // where either names a device, or both are read, each is what it is read as
  if (outputs.flatMap(reads).some((field) => !isWhere(field))) return outputs;
  return outputs.map((output) => {
    const [where, ...others] = reads(output);
    if (!where || others.length > 0 || where.columns.length > 1) return output;
    const joined: FieldSource = { ...where, columns: both, joins: true };
    return { ...output, fields: output.fields.map((field) => (field === where ? joined : field)) };
  });
}

function says({ meaning, things }: ColumnView, words: RegExp): boolean {
  return things === "" && words.test(meaning.says) && /^(site|place|unit|id|name| )*$/.test(meaning.says);
}

function isVehicle(view: ColumnView): boolean {
  const { words } = view.meaning;
  const goesAbout = GOES_ABOUT.test(words) || (ASSIGNED.test(words) && view.profile.places > MOSTLY);
  return says(view, /\bunit\b/) || (says(view, /\bplace\b/) && goesAbout);
}

function isWhere({ spec: { field } }: FieldSource): boolean {
  return field === "place" || field === "site";
}
