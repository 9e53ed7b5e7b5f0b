import type { AwkwardSheet } from "./awkward-sheet.ts";

/** Sheets in Italian, Portuguese, Polish and the Scandinavian languages. */
export const LANGUAGES: AwkwardSheet[] = [
  {
    name: "Italian tests parted by strokes",
    text: `Matricola batteria|Data prova|Capacità residua (%)|Esito|Tecnico
BT00112|14/02/2026|87,5|positivo|LM
BT00113|14/02/2026|61,0|negativo|LM
BT00112|20/08/2025|90,2|positivo|GR
`,
    rows: {
      runtime_tests: [
        { serial: "BT00112", date: "2026-02-14", percent: 87.5, result: "pass" },
        { serial: "BT00113", date: "2026-02-14", percent: 61, result: "fail" },
        { serial: "BT00112", date: "2025-08-20", percent: 90.2, result: "pass" },
      ],
    },
    unread: ["Tecnico"],
  },
  {
    name: "Portuguese tests in mAh",
    text: `Nº de série da bateria;Data do ensaio;Capacidade medida (mAh);Temperatura (°C)
000457;05/03/2026;2610;22
000458;25/03/2026;2480;23
000459;26/03/2026;1.990;21
`,
    rows: {
      runtime_tests: [
        { serial: "000457", date: "2026-03-05", ah: 2.61, temperature_c: 22 },
        { serial: "000458", date: "2026-03-25", ah: 2.48, temperature_c: 23 },
        { serial: "000459", date: "2026-03-26", ah: 1.99, temperature_c: 21 },
      ],
    },
  },
  {
    name: "a Swedish list of defibrillators with spare pads",
    text: `Hjärtstartare;Placering;Batteri utgår;Elektroder utgår;Reservelektroder utgår
HS 01;Reception;2028-04;2027-03;2027-09
HS 02;Matsal;2027-11;2027-03;
HS 03;Gymnastiksal;2029-01;2026-12;2028-02
`,
    rows: {
      devices: [
        { device: "HS 01", site: "Reception" },
        { device: "HS 02", site: "Matsal" },
        { device: "HS 03", site: "Gymnastiksal" },
      ],
      dated_stock: [
        { item: "Batteri", expiry: "2028-04-30", place: "HS 01" },
        { item: "Elektroder", expiry: "2027-03-31", place: "HS 01" },
        { item: "Reservelektroder", expiry: "2027-09-30", place: "HS 01" },
        { item: "Batteri", expiry: "2027-11-30", place: "HS 02" },
        { item: "Elektroder", expiry: "2027-03-31", place: "HS 02" },
        { item: "Batteri", expiry: "2029-01-31", place: "HS 03" },
        { item: "Elektroder", expiry: "2026-12-31", place: "HS 03" },
        { item: "Reservelektroder", expiry: "2028-02-29", place: "HS 03" },
      ],
    },
  },
  {
    name: "Polish packs",
    text: `Nr seryjny akumulatora	Data produkcji	Data uruchomienia	Liczba cykli	Urządzenie
0012-A	2022-03-01	2022-05-10	214	Defibrylator 4
0013-A	2022-03-01	2022-05-12	198	Defibrylator 5
0014-B	2023-07-15			
`,
    rows: {
      packs: [
        { serial: "0012-A", made: "2022-03-01", in_service: "2022-05-10", cycles: 214, device: "Defibrylator 4" },
        { serial: "0013-A", made: "2022-03-01", in_service: "2022-05-12", cycles: 198, device: "Defibrylator 5" },
        { serial: "0014-B", made: "2023-07-15" },
      ],
    },
  },
  {
    name: "Danish stock",
    text: `Vare;Batch;Udløbsdato;Antal;Placering
Elektroder voksen;D1;31-03-2027;4;Ambulance 3
Elektroder barn;D2;30-06-2027;1;Ambulance 3
Gel;D3;31-12-2028;6;Depot
`,
    rows: {
      dated_stock: [
        { item: "Elektroder voksen", lot: "D1", expiry: "2027-03-31", quantity: 4, place: "Ambulance 3" },
        { item: "Elektroder barn", lot: "D2", expiry: "2027-06-30", quantity: 1, place: "Ambulance 3" },
        { item: "Gel", lot: "D3", expiry: "2028-12-31", quantity: 6, place: "Depot" },
      ],
    },
  },
  {
    name: "Polish stock with a total",
    text: `Nazwa towaru;Nr partii;Data ważności;Ilość szt.;Magazyn
Elektrody dla dorosłych;A12;31.05.2027;10;Magazyn główny
Elektrody dla dzieci;A13;30.09.2027;2;Karetka 3
Żel do EKG;Z55;31.12.2028;6;Magazyn główny
Razem;;;18;
`,
    rows: {
      dated_stock: [
        { item: "Elektrody dla dorosłych", lot: "A12", expiry: "2027-05-31", quantity: 10, place: "Magazyn główny" },
        { item: "Elektrody dla dzieci", lot: "A13", expiry: "2027-09-30", quantity: 2, place: "Karetka 3" },
        { item: "Żel do EKG", lot: "Z55", expiry: "2028-12-31", quantity: 6, place: "Magazyn główny" },
      ],
    },
    aside: [[5, "missing-required"]],
    findings: ["missing-required"],
  },
  {
    name: "Portuguese orders",
    text: `N.º encomenda;Artigo;Qtd. encomendada;Fornecedor;Entrega prevista
E-2026/118;Elétrodos adulto;20;Saúde Lusa;15/12/2026
E-2026/121;Bateria monitor;4;Energia Tejo;20/01/2027
`,
    rows: {
      on_order: [
        { order: "E-2026/118", item: "Elétrodos adulto", quantity: 20, supplier: "Saúde Lusa", arrives: "2026-12-15" },
        { order: "E-2026/121", item: "Bateria monitor", quantity: 4, supplier: "Energia Tejo", arrives: "2027-01-20" },
      ],
    },
  },
  {
    name: "an Italian price list",
    text: `Codice articolo;Descrizione;Fornitore;Prezzo unitario €;Pezzi per confezione;Quantità minima;Tempo di consegna (giorni)
EL-01;Elettrodi adulto;MedItalia Demo;34,50;1;5;15
BA-02;Batteria ricaricabile;Pile Sud;210,00;1;1;30
`,
    rows: {
      catalogue: [
        {
          item: "Elettrodi adulto",
          kind: "pads",
          supplier: "MedItalia Demo",
          price: "34.50",
          currency: "EUR",
          units_per_box: 1,
          minimum_order: 5,
          lead_days: 15,
        },
        {
          item: "Batteria ricaricabile",
          kind: "pack",
          supplier: "Pile Sud",
          price: "210",
          currency: "EUR",
          units_per_box: 1,
          minimum_order: 1,
          lead_days: 30,
        },
      ],
    },
    unread: ["Codice articolo"],
  },
  {
    name: "a Swedish register of devices, packs and tests",
    text: `Inventarienr;Utrustning;Avdelning;Batteri serienr;Batteri insatt;Senaste test;Kapacitet %
U-1;Defibrillator;Akuten;SE-1;2024-02-01;2026-04-10;88
U-2;Defibrillator;IVA;SE-2;2023-11-15;2026-04-11;79
`,
    rows: {
      devices: [
        { device: "U-1", type: "Defibrillator", site: "Akuten" },
        { device: "U-2", type: "Defibrillator", site: "IVA" },
      ],
      packs: [
        { serial: "SE-1", device: "U-1", in_service: "2024-02-01" },
        { serial: "SE-2", device: "U-2", in_service: "2023-11-15" },
      ],
      runtime_tests: [
        { serial: "SE-1", date: "2026-04-10", percent: 88 },
        { serial: "SE-2", date: "2026-04-11", percent: 79 },
      ],
    },
  },
  {
    name: "Portuguese routine",
    text: `Tarefa;Vezes por ano;Material;Quantidade
Teste mensal;12;Papel ECG;0,1
Verificação anual;1;Elétrodos adulto;1
`,
    rows: {
      routine: [
        { task: "Teste mensal", per_year: 12, item: "Papel ECG", quantity: 0.1 },
        { task: "Verificação anual", per_year: 1, item: "Elétrodos adulto", quantity: 1 },
      ],
    },
  },
  {
    name: "Italian counts and Polish lots, cut short",
    text: `Nazwa;Q.tà;Seria;Scad.
Elektrody;2;L1;03/27
Żel;1;L2;08/27
`,
    rows: {
      dated_stock: [
        { item: "Elektrody", quantity: 2, lot: "L1", expiry: "2027-03-31", serial: null },
        { item: "Żel", quantity: 1, lot: "L2", expiry: "2027-08-31" },
      ],
    },
  },
];
