/** A fleet of two devices that plans in no time; its AED pads are past their day to order. */
export const SMALL_FLEET: Record<string, string> = {
  "devices.csv": "device,type,site,duty\nMD-1,monitor,North,ambulance\nMD-2,monitor,South,ambulance\n",
  "packs.csv":
    "serial,item,device,made,in_service\n" +
    "A1,pack,MD-1,2022-01-10,2022-02-01\nA2,pack,MD-2,2024-01-10,2024-02-01\nA3,pack,,,\n",
  "runtime_tests.csv":
    "serial,date,percent\nA1,2022-03-01,101\nA1,2023-03-01,95\nA1,2024-03-01,91\nA1,2025-03-01,87\nA1,2026-03-01,84\n" +
    "A2,2024-03-01,100\nA2,2025-03-01,96\nA2,2026-03-01,93\n",
  "dated_stock.csv":
    "item,lot,expiry,quantity,place\npads,P1,2026-12-10,2,MD-1\npads,P2,2027-09-30,2,MD-2\npads,P2,2027-09-30,1,Store\n",
  "catalogue.csv":
    "item,kind,supplier,price,currency,lead_days,units_per_box,arrives_with_months,fits,per_device\n" +
    "pack,pack,Fenwold Batteries,400.00,EUR,42,,,monitor,1\npads,pads,Quillmark Supplies,30.00,EUR,45,4,24,monitor,2\n",
  "policy.csv": "key,value\nas_of,2026-11-01\nhorizon_months,18\n",
};
