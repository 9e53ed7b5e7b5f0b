/**
 * What header words mean, in English, German, French, Spanish and Dutch, without accents and in lower case.
 * A concept is a thing (battery, pads) or what is said of it (serial, expiry); phrases are parted by `|`.
 */
const WORDS: Record<string, string> = {
  // Things.
  device:
    "inventaire|inventario|inventaris|serial of device|device|unit|devices|asset|assets|equipment|equip|defib|defibrillator|defibrillators|aed|monitor|gerat|geraet|gerate|appareil|equipo|dispositivo|toestel|apparaat|defibrillateur|desfibrilador|machine|monitor defibrillator|inventory|inventar|inv|dae|medizingerat",
  battery:
    "battery|batteries|batt|bat|batts|pack|packs|battery pack|akku|akkus|akkupack|accu|accus|batterie|batterien|bateria|baterias|batterij|batterijen|pile|piles",
  pads: "pad|pads|electrode|electrodes|elektrode|elektroden|elektrodes|patch|patches|patchs|parche|parches|electrodo|electrodos|defib pads|aed pads|plakker|plakkers|padset|elektrodenset",
  gel: "gel|gels|ecg gel|kontaktgel",
  paper: "paper|ecg paper|recorder paper|paper roll|papier|papel|thermal paper|ekg papier|paper rolls|papierrolle",
  sensor: "sensor|sensors|probe|probes|spo2|spo2 sensor|sensoren|capteur|capteurs|sensores|sonde|sonda",
  item: "item used|article used|product used|item|p n|pn|part no|part number|part num|teilenummer|teilenr|artikelnummer|artikelnr|artikel nr|bestell nr|items|article|artikel|articulo|product|products|produkt|produit|producto|part|parts|material|consumable|consumables|description|desc|bezeichnung|designation|descripcion|omschrijving|beschreibung|sku|stock item|verbrauchsmaterial|consommable|consumible|verbruiksartikel|item name|product name|artikelbezeichnung|libelle|what",
  supplier:
    "supplier|suppliers|vendor|vendors|lieferant|fournisseur|proveedor|leverancier|distributor|supplied by|ordered from",
  order:
    "order|orders|po|p o|purchase order|bestellung|commande|pedido|bestelling|bestellnr|bestellnummer|auftrag|bon de commande|order ref",
  test: "test|pruf|mess|tests|tested|testing|prufung|gepruft|messung|essai|essais|mesure|prueba|pruebas|ensayo|meting|getest|battery test|conditioning|akkutest|last test|last tested|letzte prufung|letzter test|dernier test|dernier essai|ultima prueba|laatste test|checked|discharge test|performance test|calibration",
  task: "task|tasks|routine|aufgabe|tache|tarea|taak|procedure|activity|check|tatigkeit|checks",
  label:
    "scanned code|scanned label|scan code|scanned|code scan|scan data|qr code|label|barcode|bar code|scan|udi|label scan|etikett|code barres|code a barres|codigo de barras|streepjescode|datamatrix|data matrix|etiquette|etiqueta|gs1",
  adult: "adult|adults|erwachsene|erwachsenen|erw|adulte|adultes|adulto|adultos|volwassen|volwassenen",
  child:
    "child|children|paed|paeds|paediatric|pediatric|peds|pedi|ped|infant|kinder|enfant|enfants|pediatrique|nino|ninos|pediatrico|infantil|kinderen|neonatal",
  spare: "spare|spares|reserve|backup|second|ersatz|secours|repuesto|secondary|res",
  primary: "primary|main|first|haupt|principal|hoofd",
  // What is said of them.
  serial:
    "serial|serials|sn|s n|ser|ser no|serial number|serial no|serial nr|serial num|seriennummer|seriennr|serien nr|snr|serie|numero de serie|no de serie|n de serie|num serie|n serie|nro de serie|serienummer|serienr|serial id|serialnumber|serie nr|fabriknummer|fabr nr",
  id: "id|ids|no|nr|num|number|numero|nummer|code|tag|ref|reference|referenz|kennung|identifier|n|nro|kenn nr|identification|label no",
  name: "name|nom|nombre|naam|title|called",
  lot: "lot|lots|lot number|lot no|lot nr|batch|batch number|batch no|charge nr|chargennummer|chargen nr|charge|ch b|charg|lote|numero de lote|partij|partijnummer|lotnummer|losnummer|lotnr|n de lot|no de lot|numero de lot|batch code|lot code",
  expiry:
    "expiry|exp|expires|expire|expired|expiration|exp date|expiry date|expiration date|use by|use by date|usebydate|use before|best before|bbd|bbe|mhd|verfall|verfallsdatum|verfalldatum|verfallt|ablauf|ablaufdatum|lauft ab|haltbar|haltbar bis|haltbarkeitsdatum|verwendbar bis|peremption|date de peremption|date peremption|perime|dlu|dluo|date limite|date limite d utilisation|expire le|caducidad|fecha de caducidad|cad|caduca|vencimiento|fecha de vencimiento|vence|venc|vervaldatum|vervalt|verval|houdbaar|houdbaar tot|houdbaarheidsdatum|tht|uiterste gebruiksdatum|valid until|valid to|valid till|gultig bis|good until|good till|shelf date|out of date|replace by|replace before|austauschen bis|ablauf am|verf|verf datum|ablaufd|uab|use until|expy|expdate",
  made: "made|made on|mfg|mfd|mfg date|mfr date|manufactured|manufacture|manufacturing|manufacture date|manufacturing date|date of manufacture|production|production date|prod date|prod|dom|built|build date|hergestellt|herstellung|herstelldatum|herstellungsdatum|produktionsdatum|fabrication|date de fabrication|fabrique|fabricacion|fecha de fabricacion|productiedatum|fabricage|fabricagedatum|baujahr|birth date|date code",
  install:
    "date into service|into service|replaced|replaced on|last replaced|replacement date|changed|last changed|changed on|gewechselt|letzter wechsel|remplace le|vervangen op|fitted date|date fitted|date installed|put into use|purchased|purchase date|date purchased|purchase|bought|kaufdatum|gekauft|achat|date d achat|compra|fecha de compra|aankoop|aankoopdatum|date placed in service|date put in service|delivered on|install|installed|installed on|installation|install date|installed date|inst|inst date|in service|in service date|in service since|in service from|in use since|in use from|service date|commissioned|commissioning|commission date|commissioning date|start date|first use|first used|fitted|fitted on|deployed|deployment date|inbetriebnahme|inbetriebnahmedatum|ibn|in betrieb|in betrieb seit|in betrieb ab|einbau|einbaudatum|eingebaut|mise en service|date de mise en service|en service|en service depuis|puesta en servicio|fecha de puesta en servicio|en servicio|en servicio desde|instalacion|fecha de instalacion|instalado|ingebruikname|datum ingebruikname|in gebruik|in gebruik sinds|in dienst|geplaatst|placed in service|put in service|put into service|in svc|insvc|since|acquired|date in service|service start|issued|issue date|in dienst sinds",
  opened:
    "opened|opened on|open date|date opened|geoffnet|geoeffnet|anbruch|angebrochen|ouvert|ouvert le|ouverture|abierto|apertura|geopend|geopend op",
  retired:
    "retired|retired on|retire|retirement|retire date|retirement date|withdrawn|withdrawn on|decommissioned|decommission date|scrapped|disposed|disposal|removed|removed on|ausgemustert|ausgesondert|ausgesondert am|aussonderung|ausser betrieb|ausserbetriebnahme|reforme|retrait|mis hors service|hors service|baja|fecha de baja|dado de baja|retirado|afgevoerd|buiten gebruik|out of service|end date|out of use|date out|stillgelegt",
  reason: "reason|why|cause|grund|ursache|raison|motif|motivo|causa|reden|oorzaak|because",
  date: "date|date used|used on|date of use|date issued|verbraucht am|utilise le|dt|datum|fecha|day|dated|when|jour",
  cycles:
    "cycle|cycles|cycle count|charge cycles|charge count|charges|cyc|zyklen|zyklus|ladezyklen|zyklenzahl|zyklus zahl|cycles de charge|nombre de cycles|nb cycles|ciclos|ciclos de carga|cycli|laadcycli|aantal cycli|discharge cycles|cycle no|num cycles|number of cycles|no of cycles|anzahl zyklen|anzahl ladezyklen",
  asof: "as of|read on|counted on|reading date|read date|stand|abgelesen am|count date|releve le|leido el|afgelezen op",
  quantity:
    "qty|qnty|quantity|quantities|quant|count|amount|pcs|pieces|units|unit count|menge|anzahl|stuck|stk|stuckzahl|quantite|qte|nombre d unites|cantidad|cant|cdad|aantal|hoeveelheid|stock|bestand|on hand|in stock|how many|quantity on hand|stock level|voorraad|unidades|unites|stueck|ordered|used|verbraucht|consumed|qty used|qty ordered",
  site: "einsatzort|ort name|service|unit location|precinct|site|sites|location|loc|locn|station|stations|base|depot|standort|wache|rettungswache|lieu|emplacement|localisation|ubicacion|sede|lugar|locatie|plaats|standplaats|ward|department|dept|abteilung|region|where|ort|lagerort|lagerplatz|centre|center|post|building|gebaude|batiment|edificio|gebouw|room|raum|facility|hospital|fire station|stationed|house|post office|stationsname|base station",
  place:
    "assigned to|assigned|kit|kits|bag|case|cart|trolley|crash cart|tasche|rucksack|sac|mochila|tas|holder name|place|store|storage|shelf|cabinet|vehicle|fahrzeug|vehicule|vehiculo|voertuig|ambulance|truck|rig|lager|magasin|almacen|magazijn|holder|kept at|storage location|stored at|stock location|bin|apparatus|rtw",
  type: "type|model|models|typ|modell|modele|modelo|category|cat|class|version|make model|soort|tipo|art|style|variant|device type|geratetyp|geratetype|kind|item kind|gerateart|type de l appareil",
  duty: "duty|duties|role|einsatz|einsatzart|purpose|funktion|fonction|funcion|functie|assignment|usage|verwendung|diensttyp|service type|dienst",
  temperature:
    "temp|temperature|temps|temperatur|temperatuur|temperatura|ambient|ambient temperature|ambient temp|umgebungstemperatur|raumtemperatur",
  minutes:
    "runtime|run time|runtimes|duration|minutes|laufzeit|dauer|autonomie|duree|autonomia|duracion|looptijd|duur|minuten|minutos|time to empty|discharge time|entladezeit|gebruiksduur|time run|run mins|test time|mins|betriebszeit",
  capacity:
    "capacity|cap|percent|pct|soh|state of health|health|kapazitat|capacite|capacidad|capaciteit|remaining capacity|restkapazitat|capacite restante|percentage|prozent|pourcentage|porcentaje|procent|condition percent|percent of rated|capacity percent|battery health|percent capacity|relative capacity|rel cap",
  wh: "wh|watt hours|watthours|energy|energie|energia|watt hour|wattstunden",
  ah: "ah|amp hours|ampere hours|amphours|mah|amperestunden|amp hour",
  load: "load|watts|watt|power|leistung|entladelast|puissance|charge w|carga|potencia|belasting|vermogen|test load|discharge load|prueflast|pruflast",
  result:
    "result|results|outcome|pass fail|p f|verdict|ergebnis|resultat|resultado|resultaat|bestanden|pass|passed|test result|testergebnis|status test|uitslag|befund",
  fullcharge:
    "full charge|fully charged|from full|from full charge|full|voll geladen|vollgeladen|pleine charge|charge complete|carga completa|volledig geladen|charged full",
  atleast:
    "at least|stopped early|ended early|aborted|vorzeitig beendet|abgebrochen|arrete tot|interrompu|interrumpido|voortijdig gestopt|lower bound|minimum only|test stopped",
  held: "hold|held|on hold|hold reason|quarantine|quarantined|gesperrt|sperre|sperrgrund|quarantaine|quarantane|bloque|blocked|geblokkeerd|cuarentena|bloqueado|do not use|embargo",
  price:
    "price unit|price each|price piece|price|prices|cost|costs|preis|einzelpreis|stuckpreis|prix|cout|precio|coste|prijs|kosten|unit price|unit cost|list price|net price|prix unitaire|precio unitario|stukprijs|each price|price each|stueckpreis",
  priceper: "price per|priced per|price basis|preis pro|prix par|precio por|prijs per|preiseinheit",
  currency: "currency|ccy|curr|wahrung|devise|monnaie|moneda|divisa|valuta|munt|currency code",
  box: "units per box|per box|box size|box qty|box quantity|units box|pack size|pieces per box|carton size|units per carton|case size|vpe|verpackungseinheit|stuck pro karton|stuck pro packung|inhalt|conditionnement|unites par boite|unidades por caja|stuks per doos|verpakkingseenheid|per carton|case qty|qty per box|quantity per box|pcs per box|order multiple|box of|pack qty",
  minorder:
    "minimum order|min order|moq|minimum order quantity|minimum quantity|min qty|min order qty|mindestmenge|mindestbestellmenge|quantite minimale|minimum de commande|commande minimale|pedido minimo|cantidad minima|minimale bestelling|minimale afname|mbm",
  breaks:
    "price breaks|price break|breaks|quantity breaks|volume prices|volume price|staffelpreise|staffelpreis|staffel|prix degressifs|paliers|descuentos por volumen|staffelprijzen|tier prices|price tiers",
  lead: "lead|lead time|leadtime|lead days|lead time days|delivery time|delivery days|lieferzeit|lieferfrist|delai|delai de livraison|plazo|plazo de entrega|levertijd|delivery lead time|wiederbeschaffungszeit",
  sd: "sd|std dev|stdev|standard deviation|spread|deviation|variability|streuung|standardabweichung|ecart type|desviacion|standaardafwijking",
  shelf:
    "shelf life|shelf months|shelf life months|haltbarkeit|haltbarkeitsdauer|duree de conservation|vida util|vida de almacen|houdbaarheid|storage life|lagerfahigkeit",
  arriveswith:
    "arrives with|arrives with months|remaining life|remaining life on arrival|life on arrival|remaining shelf life|restlaufzeit|restlaufzeit bei lieferung|duree restante|vida restante|resterende houdbaarheid",
  servicelife:
    "service life|service months|service life months|life in service|replace after|replacement interval|replace every|nutzungsdauer|austauschintervall|duree de vie|duree de service|vida en servicio|levensduur|gebruiksduur maanden|max age|max age months",
  maxcycles:
    "max cycles|maximum cycles|cycle limit|rated cycles|max zyklen|maximale zyklen|cycles max|ciclos max|ciclos maximos|max cycli|cycle life",
  rated: "rated|nominal|nominell|nenn|nennwert|nominale|nominaal|design|new|specified|spec",
  openlife:
    "opened days|open days|days once opened|life once opened|period after opening|pao|haltbar nach anbruch|nach anbruch|apres ouverture|tras apertura|na openen|use within days of opening|once opened",
  length: "length|unit length|roll length|lange|longueur|longitud|lengte|metres per roll|meters per roll|rollenlange",
  perdevice:
    "per device|units per device|needed per device|quantity per device|qty per device|pro gerat|par appareil|por equipo|per toestel|required per device|soll pro gerat",
  fits: "fits|fits types|compatible with|compatible|for devices|for device|device types|used in|passt zu|passend fur|kompatibel|compatible avec|pour|compatible con|para|past op|geschikt voor|for model|for models|fits models|fits devices",
  carriedby: "carried by|carried by duties|carried on|for duties|gefuhrt von|embarque par|llevado por|meegevoerd door",
  alternatives:
    "alternatives|alternative|alternative items|substitutes|substitute|equivalents|equivalent|ersatzartikel|alternativen|substituts|alternativas|alternatieven|also works",
  replacedby:
    "replaced by|successor|superseded by|replacement|replacement item|nachfolger|ersetzt durch|remplace par|sustituido por|vervangen door|opvolger",
  servicelevel:
    "service level|target service level|servicegrad|niveau de service|nivel de servicio|serviceniveau|fill rate target",
  gtin: "gtin|ean|gtin 14|upc|trade item number|gtin ean|ean code",
  chemistry: "chemistry|cell chemistry|battery chemistry|chemie|zellchemie|akkuchemie|chimie|quimica|celchemie",
  arrives:
    "arrives|arrival|arrival date|arriving|due|due date|eta|expected|expected date|expected on|delivery date|delivery|deliver by|lieferdatum|liefertermin|lieferung|erwartet|livraison|date de livraison|arrivee|entrega|fecha de entrega|llegada|leverdatum|verwacht|levering|due in|date due|anlieferung",
  fee: "order fee|fee|delivery fee|shipping|shipping fee|shipping cost|delivery cost|delivery charge|order cost|fee per order|versandkosten|bestellkosten|frais de port|frais de livraison|frais|gastos de envio|bestelkosten|verzendkosten|freight|carriage|fixed order cost|cost per order",
  freeover:
    "free over|free delivery over|free shipping over|no fee over|frei ab|frachtfrei ab|versandkostenfrei ab|franco a partir de|franco|gratis desde|envio gratis desde|gratis vanaf|free above|free from",
  cadence:
    "order every months|order cadence|order cadence months|months between orders|order interval|order every|bestellintervall|bestellrhythmus|intervalle de commande|intervalo de pedido|bestelinterval",
  peryear:
    "per year|times per year|times a year|a year|yearly|annual|p a|per annum|frequency|freq|pro jahr|jahrlich|haufigkeit|par an|annuel|frequence|al ano|por ano|anual|frecuencia|per jaar|jaarlijks|frequentie|how often|times year",
  uses: "uses|use|usage count|deployments|calls|einsatze|utilisations|usos|gebruik|activations|incidents",
  key: "key|setting|parameter|option|policy|einstellung|cle|parametre|clave|parametro|instelling",
  value: "value|wert|valeur|valor|waarde|setting value",
  position: "position|slot|bay",
  // Words that say nothing by themselves.
  filler:
    "soonest|earliest|next|nearest|oldest|erste|nachste|first expiring|prochaine|proxima|eerste|of|time|uhrzeit|zeit|heure|hora|tijd|timestamp|the|a|an|in|on|at|by|for|and|or|to|der|die|das|des|dem|den|am|im|von|de|du|la|le|les|d|l|et|el|los|del|y|en|het|van|op|und|dd|mm|yy|yyyy|yyyymmdd|ddmmyyyy|mmm|iso|current|latest|aktuell|actuel|actual|huidig|last|recorded|c|f|w|m|min|h|s|months|month|days|monate|tage|mois|jours|meses|dias|maanden|dagen|eur|usd|gbp|years|hours|hrs|std|number of|total|avg|approx|estimated|est|yes no|y n|ja nein|optional|required|if any|info",
};

/** Meaning of each known word or phrase; `filler` where it says nothing. */
export const VOCABULARY: ReadonlyMap<string, string> = new Map(
  Object.entries(WORDS)
    .reverse()
    .flatMap(([concept, list]) => list.split("|").map((word): [string, string] => [word, concept])),
);

/** Things that can stand at the head of a group of columns. */
export const THINGS = ["device", "battery", "pads", "gel", "paper", "sensor", "item", "test"] as const;

/** Things that a dated unit can be. */
export const DATED_THINGS: ReadonlySet<string> = new Set(["pads", "gel", "paper", "sensor", "battery"]);
