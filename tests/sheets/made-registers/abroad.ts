import type { Topic } from "./headings.ts";

/** How registers head their columns elsewhere, and their words for a test's result and a device in use. */
export interface Language {
  headings: Record<Exclude<Topic, "unit">, string>;
  pass: string;
  fail: string;
  inUse: string;
}

// Common practice, no source.
export const ABROAD: Record<string, Language> = {
  German: {
    pass: "bestanden",
    fail: "nicht bestanden",
    inUse: "in Betrieb",
    headings: {
      device:
        "Inventarnummer | Inventar-Nr. | Gerät | Geräte-Nr. | Gerätenummer | Geräte-ID | Inv.-Nr. | Defi | AED | Anlagennummer | Equipment-Nr. | ID | Gerätename | Defibrillator",
      type: "Bezeichnung | Gerätetyp | Typ | Geräteart | Art | Beschreibung | Modell",
      site: "Standort | Abteilung | Station | Gebäude | Bereich | Wache | Ort | Raum | Aktueller Standort",
      deviceSerial: "Seriennummer | Serien-Nr. | S/N | Geräte-Seriennummer | SN",
      deviceSince: "Anschaffung | Kaufdatum | Inbetriebnahme | In Betrieb seit | Anschaffungsdatum | Beschafft am",
      batterySerial:
        "Akku-Nr. | Akku Seriennummer | Akku S/N | Akku-SN | Akkunummer | Batterie-Nr. | Batterie Seriennummer | Akku-ID | Akku",
      batteryType: "Akkutyp | Akku-Typ | Batterietyp | Akku Artikelnr.",
      fitted:
        "Akku eingebaut | Akku Einbau | Akku eingesetzt am | Einbaudatum Akku | Akku seit | Akku Inbetriebnahme | Akku gewechselt | Letzter Akkuwechsel | Akkuwechsel | Batterie eingebaut | Akku getauscht am",
      batteryExpiry: "Akku Ablauf | Batterie Ablauf | Akku Ablaufdatum | Batterie haltbar bis | Akku tauschen bis",
      tested:
        "Letzter Akkutest | Akkutest | Testdatum | Letzter Test | Prüfdatum Akku | Getestet am | Akku geprüft | Letzte Kapazitätsmessung | Messdatum | Kapazitätstest am | Letzte Akkuprüfung",
      percent:
        "Kapazität % | Akkukapazität % | Restkapazität % | Kapazität (%) | Ergebnis % | Kapazität | Akku % | Restkapazität | Gemessene Kapazität (%) | SOH %",
      minutes: "Laufzeit (min) | Laufzeit | Minuten | Laufzeit Minuten | Akkulaufzeit (min) | Entladezeit (min)",
      milliampHours: "Kapazität mAh | Kapazität (mAh) | mAh | Gemessen mAh",
      result: "Ergebnis | Testergebnis | Bestanden | Prüfergebnis | Akkutest Ergebnis",
      cycles: "Zyklen | Ladezyklen | Akku Zyklen | Zyklenzahl | Anzahl Zyklen | Akkuzyklen",
      pads: "Elektroden Ablauf | Elektroden haltbar bis | Pads Ablauf | Elektroden | Ablauf Elektroden | Elektroden MHD | Elektroden Verfall | Pads MHD",
      adultPads:
        "Elektroden Erwachsene Ablauf | Pads Erwachsene | Erwachsenen-Elektroden Ablauf | Elektroden Erw. MHD | Elektroden Erwachsene | Pads Erw. Ablauf",
      childPads:
        "Elektroden Kinder Ablauf | Pads Kinder | Kinderelektroden Ablauf | Elektroden Kind MHD | Elektroden Kinder | Kinderpads Ablauf",
      lot: "Elektroden Charge | Elektroden Lot | Pads Charge | Chargennummer Elektroden",
      gel: "Gel Ablauf | Gel MHD | Gel haltbar bis",
      comment: "Bemerkung | Bemerkungen | Kommentar | Anmerkung | Notiz | Hinweis",
      due: "Nächste Wartung | Wartung fällig | Nächste STK | STK fällig | Nächste Prüfung | MTK fällig",
      serviced: "Letzte Wartung | Letzte STK | Wartung am | STK am",
      keeper: "Verantwortlich | Ansprechpartner | Kontakt | Geprüft von | Zuständig",
      status: "Status | Zustand",
    },
  },
  French: {
    pass: "conforme",
    fail: "non conforme",
    inUse: "en service",
    headings: {
      device:
        "N° inventaire | Inventaire | Appareil | N° appareil | Équipement | N° équipement | DAE | Défibrillateur | Code équipement | Dispositif | ID",
      type: "Désignation | Type | Type d'appareil | Catégorie | Modèle | Description",
      site: "Service | Localisation | Emplacement | Site | Lieu | Bâtiment | Centre",
      deviceSerial: "N° de série | N° série | Numéro de série | S/N | N° série appareil",
      deviceSince: "Date d'achat | Mise en service | Date de mise en service | Acheté le | Date d'acquisition",
      batterySerial:
        "N° série batterie | Batterie S/N | N° batterie | Numéro de batterie | N° de série de la batterie | Batterie n° | ID batterie | Batterie",
      batteryType: "Type de batterie | Modèle batterie | Réf. batterie",
      fitted:
        "Batterie installée | Date installation batterie | Batterie mise en service | Batterie changée le | Date changement batterie | Changement batterie | Batterie remplacée le | Pose batterie | Batterie installée le | Date de pose batterie",
      batteryExpiry: "Péremption batterie | Batterie péremption | Date péremption batterie | Expiration batterie",
      tested:
        "Dernier test batterie | Date du test | Dernier test | Test batterie | Testé le | Date dernier test | Date test capacité | Date de test | Batterie testée le",
      percent:
        "Capacité % | Capacité (%) | Résultat (%) | Capacité batterie (%) | Capacité restante (%) | Capacité mesurée (%) | Capacité | % capacité",
      minutes: "Autonomie (min) | Autonomie | Durée (min) | Minutes | Durée test (min)",
      milliampHours: "Capacité mAh | Capacité (mAh) | mAh",
      result: "Résultat | Résultat du test | Conforme | Résultat test",
      cycles: "Cycles | Nombre de cycles | Nb cycles | Cycles de charge | Cycles batterie",
      pads: "Péremption électrodes | Électrodes péremption | Date péremption électrodes | Électrodes | Expiration électrodes | Électrodes exp. | Patchs péremption",
      adultPads:
        "Électrodes adultes péremption | Électrodes adulte exp. | Électrodes adultes | Péremption électrodes adultes | Patchs adultes péremption",
      childPads:
        "Électrodes enfants péremption | Électrodes enfant exp. | Électrodes enfants | Péremption électrodes enfants | Électrodes pédiatriques | Patchs enfants péremption",
      lot: "Lot électrodes | N° lot électrodes | Électrodes lot",
      gel: "Gel péremption | Péremption gel | Gel exp.",
      comment: "Commentaire | Remarques | Observations | Commentaires | Remarque",
      due: "Prochaine maintenance | Prochain contrôle | Maintenance prévue | Prochaine vérification",
      serviced: "Dernière maintenance | Dernier entretien",
      keeper: "Responsable | Contact | Référent | Contrôlé par",
      status: "Statut | État",
    },
  },
  Spanish: {
    pass: "apto",
    fail: "no apto",
    inUse: "en uso",
    headings: {
      device:
        "Nº inventario | Inventario | Equipo | Nº equipo | Código equipo | DEA | Desfibrilador | Dispositivo | ID | Aparato | ID equipo",
      type: "Descripción | Tipo | Tipo de equipo | Categoría | Modelo",
      site: "Ubicación | Servicio | Sede | Centro | Lugar | Edificio | Base | Departamento",
      deviceSerial: "Nº de serie | Número de serie | S/N | Nº serie | Nº serie equipo",
      deviceSince: "Fecha de compra | Puesta en servicio | Fecha puesta en servicio | Fecha de adquisición",
      batterySerial:
        "Nº serie batería | Batería S/N | Nº batería | Número de serie de la batería | Batería nº | ID batería | Batería",
      batteryType: "Tipo de batería | Modelo batería | Ref. batería",
      fitted:
        "Batería instalada | Fecha instalación batería | Batería en servicio desde | Cambio batería | Fecha cambio batería | Último cambio de batería | Batería cambiada | Instalación batería",
      batteryExpiry: "Caducidad batería | Batería caducidad | Fecha caducidad batería | Vencimiento batería",
      tested:
        "Última prueba batería | Fecha de prueba | Última prueba | Prueba batería | Probado el | Fecha prueba | Fecha última prueba | Fecha test | Fecha test capacidad",
      percent:
        "Capacidad % | Capacidad (%) | Resultado (%) | Capacidad batería (%) | Capacidad restante (%) | Capacidad medida (%) | Capacidad | % capacidad",
      minutes: "Autonomía (min) | Autonomía | Duración (min) | Minutos | Tiempo (min)",
      milliampHours: "Capacidad mAh | Capacidad (mAh) | mAh",
      result: "Resultado | Resultado prueba | Apto | Resultado test",
      cycles: "Ciclos | Nº de ciclos | Número de ciclos | Ciclos de carga | Ciclos batería",
      pads: "Caducidad parches | Parches caducidad | Caducidad electrodos | Electrodos | Fecha caducidad parches | Vencimiento parches | Parches",
      adultPads:
        "Parches adulto caducidad | Caducidad parches adulto | Parches adulto | Electrodos adulto caducidad | Vencimiento parches adulto",
      childPads:
        "Parches pediátricos caducidad | Caducidad parches pediátricos | Parches niño | Electrodos pediátricos caducidad | Parches infantiles | Vencimiento parches niño",
      lot: "Lote parches | Nº lote parches | Parches lote",
      gel: "Gel caducidad | Caducidad gel | Gel vencimiento",
      comment: "Comentarios | Observaciones | Notas | Comentario",
      due: "Próximo mantenimiento | Próxima revisión | Mantenimiento previsto",
      serviced: "Último mantenimiento | Última revisión",
      keeper: "Responsable | Contacto | Revisado por",
      status: "Estado | Situación",
    },
  },
};
