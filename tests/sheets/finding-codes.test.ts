import { describe, expect, it } from "vitest";
import { FINDING_CODES, type FindingCodeName } from "../../src/sheets/finding-codes.ts";
import { parseColumnsFile } from "../../src/sheets/mapping/columns-file.ts";
import { readSheets } from "../../src/sheets/read-sheets.ts";
import type { Reading } from "../../src/sheets/reading.ts";
import { AS_OF, read, textFile } from "./sheet-file.ts";

const CATALOGUE = "item,kind,rated_wh\nP1,pack,60\n";
const SORTS = "Type,Serial,Expiry,Site\nAED,A1,,North\nPads,,2027-01-01,North\n";
const PACK = "serial,item,device,retired\nB-017,P1,D1,2025-05-01\n";

/** For each code that a text sheet can bring about, sheets that do. */
const SHEETS: Partial<Record<FindingCodeName, Record<string, string>>> = {
  "empty-file": { "a.csv": "" },
  "no-table": { "notes.csv": "some words\nand more\n" },
  "quote-open": { "a.csv": 'serial,site\nA,"North\nB,South\n' },
  "error-cell": { "a.csv": "serial,cycles\nA,#REF!\n" },
  "serial-mangled": { "a.csv": "serial,cycles\n1.23457E+11,4\n" },
  "listed-undated": { "a.csv": "Vehicle,Kit\nA 1,2 x pads exp 03/2027; 1 roll paper\n" },
  "listed-unreadable": { "a.csv": "Vehicle,Kit\nA 1,2 x pads exp 03/2027; pads 04/2027 05/2027\n" },
  "told-as-list": { "a.csv": "Device,AED 1\nPads expiry,2027-03-31\nSite,North\nBattery serial,B1\n" },
  "column-unread": { "a.csv": "serial,comment\nA,x\n" },
  "fault-unread": { "a.csv": "serial,in_service,remarks\nA,2024-05-01,swollen\n" },
  "gone-unread": { "a.csv": "serial,in_service,remarks\nA,2019-05-01,scrapped 2025\n" },
  "date-presumed": { "a.csv": "serial,date\nA,2024-05-01\nB,2023-05-01\n" },
  "expiry-unread": { "a.csv": "serial,exp\nA,2027-03\n" },
  "thing-unread": { "a.csv": "AED,pads exp,child pads/key exp\nA,2027-03-31,2027-05-31\n" },
  "capacity-undated": { "a.csv": "serial,in_service,health\nA,2022-01-01,72 %\n" },
  "device-again": { "a.csv": "AED,pads exp\nA,2027-03-31\n", "b.csv": "AED,pads exp\nA,2027-05-31\n" },
  "age-undated": { "a.csv": "serial,device,age (months)\nA,M1,14\nB,M2,30\n" },
  "count-unread": { "a.csv": "item,Lager Anz,expiry,lot\npads,12,2027-05,K1\ngel,6,2028-08,G1\n" },
  "lots-counted-together": { "a.csv": "item,quantity,exp 1,exp 2\npads,5,2027-03,2027-11\n" },
  "no-battery": { "a.csv": "date,type,s/n,location\n2026-01-05,Battery,B9,M1\n2026-02-05,Pads,L5,M1\n" },
  "packs-presumed": { "a.csv": "serial,model,ward\n300112,X1,ICU\n300113,X1,ED\n" },
  "uses-presumed": { "a.csv": "date,adult pads,gel\n2026-01-05,1,0\n2026-02-05,0,2\n" },
  "carried-down": { "a.csv": "place,item,expiry\nM1,pads,2027-01\n,gel,2027-01\nM2,pads,2027-01\n,gel,2027-01\n" },
  moves: { "a.csv": "Date,Item,Qty,From,To\n2026-09-03,Adult pads,4,Store,Car\n" },
  "year-alone": { "a.csv": "serial,2024 %,2025 %\nA,95,90\n" },
  "devices-counted": { "a.csv": "Site,No. of AEDs,Pads exp\nNorth,3,2027-01-01\n" },
  "copies-disagree": { "a.csv": "serial,cycles,cycles\nA,1,2\n" },
  "date-order-unsettled": { "a.csv": "item,expiry\nA,03/04/2027\n" },
  "date-order-contradicts": { "a.csv": "item,expiry\nA,25/03/2027\nB,03/25/2027\n" },
  "date-unreadable": { "a.csv": "item,expiry\nA,soon\n" },
  "date-impossible": { "a.csv": "item,expiry\nA,31.02.2027\n" },
  "date-out-of-range": { "a.csv": "item,expiry\nA,1900-01-01\n" },
  "date-after-as-of": { "a.csv": "serial,date,percent\nA,2027-01-01,90\n" },
  "date-from-serial": { "a.csv": "item,expiry\nA,46351\n" },
  "number-unreadable": { "a.csv": "serial,cycles\nA,many\n" },
  "number-not-whole": { "a.csv": "item,expiry,quantity\nA,2027-01-01,2.5\n" },
  "number-out-of-range": { "a.csv": "serial,date,percent\nA,2026-01-01,870 %\n" },
  "packs-of-tests": { "a.csv": "serial,date,percent\nA,2026-01-01,90\n" },
  "unit-blank": {
    "a.csv": "Site,AED serial,Pads expire\nPool,A,2027-09\nHall,B,\nGym,C,2027-09\nPark,D,2027-08\n",
  },
  "nothing-left": { "a.csv": "serial,date,percent\nA,2026-01-01,0\nA,2025-01-01,90\nB,2026-01-01,95\n" },
  "unit-unknown": { "a.csv": "serial,date,minutes\nA,2026-01-01,12 kg\n" },
  "word-unknown": { "a.csv": "item,kind\nA,perhaps\n" },
  "status-unknown": { "a.csv": "serial,site,status\nA,North,amber\n" },
  "earlier-check": { "a.csv": "date,AED,pads expiry\n2025-01-04,A1,2027-01-31\n2025-02-04,A1,2027-01-31\n" },
  "order-part": { "a.csv": "po,item,quantity,status\nP1,Pads,50,partial\n" },
  "order-overdue": { "a.csv": "item,quantity,arrives\nA,10,2026-03-13\n" },
  "breaks-unreadable": { "a.csv": "item,kind,price_breaks\nA,pads,10 for 38.50\n" },
  "from-heading": { "a.csv": "Date tested: 2026-03-12\nBattery no,capacity percent\nA,88\nB,91\n" },
  "item-facts-differ": {
    "s.csv": "item,expiry,lot,supplier,price\nPads,2027-01-01,L1,S,38.50\nPads,2027-02-01,L2,S,41\n",
  },
  "kind-from-name": { "a.csv": "item,supplier,price,lead time\nAdult pads,Acme,38,14\n" },
  "boxes-unknown": { "a.csv": "item,expiry,quantity\nA,2027-01-01,2 boxes\n" },
  "label-unreadable": { "a.csv": "item,expiry,label\nA,2027-01-01,0109506000134353\n" },
  "label-disagrees": { "a.csv": "item,expiry,label\nA,2027-01-01,(01)09506000134352(17)280131\n" },
  "missing-required": { "a.csv": "serial,cycles\n,4\n" },
  "no-measurement": { "a.csv": "serial,date,minutes,load_w\nA,2026-01-01,,25\n" },
  "unknown-table": { "a.csv": "expiry,lot,quantity\n2027-01-01,L1,4\n" },
  "things-by-row": { "a.csv": SORTS },
  "thing-unknown": { "a.csv": `${SORTS}Ladder,L1,,North\n` },
  "holder-presumed": { "a.csv": SORTS },
  "own-output": {
    "orders.csv": "order_by,supplier,item,quantity,line_cost,covers_from\n2026-12-01,S,P-1,4,80,2027-01\n",
  },
  "kind-tied": { "a.csv": "Serial No,Model,Location,Install date\n17,M1,North,2024-02-13\n" },
  repeat: { "a.csv": "serial,cycles\nA,4\nA,4\n" },
  clash: { "a.csv": "serial,cycles\nA,4\nA,5\n" },
  merged: { "a.csv": "serial,cycles,site\nA,4,\nA,,North\n" },
  "capacity-over-rated": { "c.csv": CATALOGUE, "p.csv": PACK, "t.csv": "serial,date,wh\nB-017,2024-01-01,90\n" },
  "serial-unknown": { "p.csv": PACK, "t.csv": "serial,date,wh\nB-0I7,2024-01-01,50\n" },
  "device-unknown": { "p.csv": PACK, "d.csv": "device,type\nD2,AED\n" },
  "item-unknown": { "c.csv": CATALOGUE, "s.csv": "item,expiry\nP-1,2027-01-01\n" },
  "dates-out-of-order": { "p.csv": "serial,made,in_service\nA,2024-01-01,2023-01-01\n" },
  "test-before-made": { "p.csv": "serial,made\nA,2024-06-01\n", "t.csv": "serial,date,wh\nA,2024-05-01,50\n" },
  "test-after-retired": { "p.csv": PACK, "t.csv": "serial,date,wh\nB-017,2026-01-01,50\n" },
  "cycles-fall": { "t.csv": "serial,date,wh,cycles\nA,2026-01-01,50,214\nA,2026-05-01,50,96\n" },
  "counted-again": {
    "count.csv": "item,lot,expiry,place,quantity\nA,L,2027-01-01,Store,9\n",
    "recount.csv": "item,lot,expiry,place,quantity\nA,L,2027-01-01,Store,7\n",
  },
  "little-read": { "a.csv": "device,type,site,colour,mac,ip,hue\nD1,AED,N,red,aa,10,x\nD2,AED,S,red,bb,11,y\n" },
  "battery-unnamed": { "a.csv": "AED,Battery installed\nE-1,2019-02-23\n" },
  "likely-copy": { "u.csv": "date,item,quantity\n2026-01-01,A,1\n2026-01-01,A,1\n" },
};

/** Codes of set-aside rows that need no finding, with sheets that bring them about. */
const ROWS: Partial<Record<FindingCodeName, string>> = {
  "repeated-header": "serial,cycles\nA,4\nserial,cycles\nB,5\n",
  "gone-undated": "serial,site,status\nA,North,Retired\n",
  "order-settled": "po,item,qty ordered,qty received\nP1,Pads,50,50\n",
  gone: "item,expiry,quantity,status\nA,2027-01-01,4,Disposed of\n",
  "total-row": "item,expiry,quantity\nA,2027-01-01,4\nTotal,,4\n",
  "section-line": "item,expiry,quantity,lot\nA,2027-01-01,4,L\nStation,,,\nB,2027-01-01,4,L\n",
  "note-row": "item,expiry,quantity,lot\nA,2027-01-01,4,L\n* counted by hand,,,\n",
};

function expectWellSaid({ findings }: Reading): void {
  for (const { code, severity, message, fix } of findings) {
    const told = FINDING_CODES[code as FindingCodeName];
    expect(["info", "warning", "error"]).toContain(severity);
    expect(told).toBeDefined();
    for (const sentence of [message, fix]) {
      expect(sentence).toMatch(/^[^\s].*[.]$/s);
      expect(sentence.length).toBeLessThan(400);
      expect(sentence).not.toMatch(/undefined|null|NaN|\[object|inService|loadW|ratedWh/);
    }
  }
}

describe("finding codes", () => {
  it.each(Object.entries(SHEETS))("%s is found where its example stands", (code, texts) => {
    const reading = read(texts);
    expect(reading.findings.map((finding) => finding.code)).toContain(code);
    expectWellSaid(reading);
  });

  it.each(Object.entries(ROWS))("%s is the reason of a row set aside", (code, text) => {
    const reading = read(text);
    expect(reading.setAside.map(({ reason }) => reason)).toContain(code);
    expectWellSaid(reading);
  });

  it("mapping-changed is found where a columns file no longer fits", () => {
    const rows = [{ kind: "packs", columns: { serial: "a", cycles: "b" } }];
    const parsed = parseColumnsFile(
      JSON.stringify({
        format: "wanecast.columns/1",
        tables: [{ file: "a.csv", sheet: null, table: 1, rows, unread: ["c"] }],
      }),
    );
    if ("problem" in parsed) throw new Error(parsed.problem);
    const two = {
      ...parsed.columns,
      tables: parsed.columns.tables.map((table) => ({
        ...table,
        rows: [{ kind: "packs" as const, columns: { serial: "a", site: "d", cycles: "b" } }],
      })),
    };
    const reading = readSheets([textFile("a.csv", "a,b,e\nA,1,2\n")], { asOf: AS_OF, dateOrder: null, columns: two });
    expect(reading.findings.map(({ code }) => code)).toContain("mapping-changed");
    expectWellSaid(reading);
  });

  it("all have a test", () => {
    // Hidden parts of workbooks and unusable policy values are tested beside what finds them.
    const tested = [...Object.keys(SHEETS), ...Object.keys(ROWS), "mapping-changed", "hidden-read", "policy-unusable"];
    expect(Object.keys(FINDING_CODES).filter((code) => !tested.includes(code))).toEqual([]);
  });

  it("are documented in whole sentences", () => {
    for (const { means, example, fix } of Object.values(FINDING_CODES)) {
      expect(means).toMatch(/^[A-Z].*\.$/);
      expect(fix).toMatch(/^[A-Z].*\.$/);
      expect(example).not.toBe("");
    }
  });
});
