import type { Sheet, SheetRow } from "./sheet.ts";
import { STATIONS, siteTemperatureC, two } from "./story.ts";

const PUBLIC_PLACES = ["Town Hall", "Swimming Pool", "Market Square", "Ferry Terminal", "Sports Hall"];

const at = (places: readonly string[], index: number) => places[index % places.length] ?? "";

function device(prefix: string, number: number, type: string, site: string, duty: string, inService: string): SheetRow {
  return {
    device: `${prefix}-${two(number)}`,
    type,
    site,
    duty,
    in_service: inService,
    temperature_c: siteTemperatureC(site),
  };
}

function monitorDefibrillators(): SheetRow[] {
  return Array.from({ length: 26 }, (_, index) => {
    const bought = index < 14 ? "2018-05-14" : index < 21 ? "2022-04-04" : index < 25 ? "2024-03-11" : "2027-03-01";
    const duty = index % 4 === 3 ? "rapid response" : "ambulance";
    return device("MD", index + 1, "monitor-defibrillator", at(STATIONS, index), duty, bought);
  });
}

function patientMonitors(): SheetRow[] {
  return Array.from({ length: 10 }, (_, index) => ({
    ...device(
      "PM",
      index + 1,
      "patient monitor",
      at(STATIONS, index * 2),
      "transfer",
      index < 5 ? "2017-09-18" : "2021-09-06",
    ),
    ...(index === 9 ? { retired: "2026-02-27" } : {}),
  }));
}

function aeds(): SheetRow[] {
  return Array.from({ length: 20 }, (_, index) =>
    index < 14
      ? device(
          "AED",
          index + 1,
          "aed",
          at(PUBLIC_PLACES, index),
          "public access",
          index < 8 ? "2022-12-05" : "2024-05-20",
        )
      : device("AED", index + 1, "aed", at(STATIONS, index), "event", index < 17 ? "2024-05-20" : "2025-09-15"),
  );
}

function trainers(): SheetRow[] {
  return Array.from({ length: 4 }, (_, index) =>
    device("TR", index + 1, "aed trainer", "Training Room", "training", index < 2 ? "2019-10-07" : "2022-10-10"),
  );
}

/** Every device of the fleet. */
export const DEVICES: readonly SheetRow[] = [
  ...monitorDefibrillators(),
  ...patientMonitors(),
  ...aeds(),
  ...trainers(),
];

/** devices.csv; one row was copied twice by hand. */
export function devicesSheet(): Sheet {
  const copied = DEVICES[11] as SheetRow;
  return {
    name: "devices.csv",
    columns: ["device", "type", "site", "duty", "in_service", "temperature_c", "retired"],
    rows: [...DEVICES.slice(0, 12), copied, ...DEVICES.slice(12)],
  };
}
