import { expect, it } from "vitest";
import { read } from "../sheet-file.ts";

const IN_QUARANTINE = [
  "Quarantine",
  "In quarantine",
  "Quarantine cupboard",
  "Quarantined stock",
  "Store (quarantine)",
  "Store 1, recalled",
  "Do not use box",
  "Faulty shelf",
  "Gesperrt",
];
const ELSEWHERE = ["Store", "Quarantine ward", "Quarantine unit 2", "Medic 7"];
const places = [...IN_QUARANTINE, ...ELSEWHERE];

it("holds dated units that lie in quarantine, whatever words stand around it, and none of a ward of that name", () => {
  const rows = places.map((place, at) => `pads,2027-05-31,L${at},1,"${place}"\n`).join("");
  const { fleet } = read(`item,expiry,lot,quantity,place\n${rows}`);
  expect(fleet.datedStock.filter(({ held }) => held !== null).map(({ place }) => place)).toEqual(IN_QUARANTINE);
});

it("takes a battery whose device is quarantine for one in no device, and holds it", () => {
  const { fleet } = read("serial,item,device\nB1,x,Quarantine\nB2,x,In quarantine\nB3,x,AED-1\n");
  expect(fleet.packs.map(({ serial, device, held }) => [serial, device, held])).toEqual([
    ["B1", null, "Quarantine"],
    ["B2", null, "In quarantine"],
    ["B3", "AED-1", null],
  ]);
});
