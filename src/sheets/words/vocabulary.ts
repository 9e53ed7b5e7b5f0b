/**
 * What header words mean, in English, German, French, Spanish, Dutch, Italian, Portuguese, Polish and the
 * Scandinavian languages, without accents and in lower case.
 * A concept is a thing (battery, pads) or what is said of it (serial, expiry); phrases are parted by `|`.
 */
const WORDS: Record<string, string> = {
  // Things.
  device:
    "aed|aeds|anlage|anlagen nr|anlagennr|anlagennummer|aparato|aparelho|apparaat|apparecchiatura|apparecchio|appareil|asset|asset tag|assets|attrezzatura|automate|dae|daes|dea|deas|defi|defib|defibrilador|defibrilator|defibrillateur|defibrillator|defibrillators|defibrylatory|desfibrilador|dev|device|devices|dispositif|dispositivo|dut|equip|equipamento|equipement|equipment|equipo|geraet|geraetenummer|gerat|gerate|hartmassage|hartstarter|hjartstartare|hjertestarter|host|inv|inventaire|inventar|inventarie|inventario|inventaris|inventory|laite|machine|maquina|materiel|medizingerat|medizinprodukt|moniteur|monitor|monitor def|serial of device|sprzet|toestel|udstyr|urzadzenia|urzadzenie|utrustning|utstyr",
  unit: "call sign|callsign|eenheid|einheit|enhed|enhet|funkrufname|indicatif|movil|roepnaam|roepnummer|rufname|unidad|unit|unita|unite|units id",
  battery:
    "accu|accumulateur|accumulatore|accupakket|akku|akkublock|akkumulatoren|akumulator|akumulatora|akumulatory|bat|bateria|baterias|baterii|bats|batt|batteri|batterie|batterieblock|batterien|batterier|batteries|batteriet|batterij|battery|battery unit|btry|bty|cell pack|denchi|pack|packs|pila|pile|power pack|powerpack",
  pads: "aed pad|aed pads|cartridge|defib pad|defib pads|defibpads|defielektroden|elec|electrode|electrodes|electrodo|electrodos|elek|elektr|elektrode|elektroden|elektroder|elektrodes|elektrody|eletrodos|elettrodi|klebeelektroden|pad|pads|parche|parches|pas adesivas|patches|patchs|piastre|placche|plakker|plakkers|plattor|stodpuder",
  gel: "contactgel|ecg gel|elektrodengel|gel|gels|kontaktgel|ultraschallgel|zel",
  paper:
    "carta|carta ecg|chart paper|druckerpapier|ecg paper|ecg papier|ecgpapier|ekg paper|ekg papier|papel|papel ecg|paper|paper pack|paper roll|papier|papier ecg|papierrolle|printerpapier|printpapier|registratiepapier|rolls|thermal paper|thermopapier|z fold paper",
  sensor:
    "capteur|capteurs|czujnik|czujniki|fingersensor|probe|probes|sensor|sensoren|sensores|sensors|sonda|sonde|spo 2|spo2",
  item: "art no|art nr|art num|art number|article|article ordered|article used|articulo|artigo|artikel|artno|artnr|artykul|benamning|beschreibung|beskrivelse|bestell no|bestell nr|bezeichnung|cat no|cat nr|cat num|cat number|catalog no|catalogue no|codart|consommables|consumabili|consumables|consumible|consumiveis|consumivel|denominacion|denomination|denominazione|desc|descricao|descripcion|description|descrizione|designacao|designation|forbrukningsvara|intitule|item|item ordered|item used|libelle|material|matnr|nomenclature|omschrijving|onderdeelnummer|opis|order code|p n|part|part used|parts used|pieza|pn|prodotto|product ordered|product used|producto|products|produit|produkt|sku|stock code|stock item|stock line|stock no|stock number|supplies|supply|teil|towar|uses item|vara|vare|verbrauchsartikel|verbrauchsgut|verbrauchsmaterial|verbruik|verbruiksmateriaal|what",
  supplier:
    "anbieter|bezugsquelle|dealer|distribuidor|distributeur|distributor|dostawca|fornecedor|fornitore|fournisseur|handler|leverancier|leverandor|leverantor|lieferant|lieferer|ordered from|proveedor|reseller|sold by|source|supplied by|supplier|vendor",
  order:
    "auftrag|auftragsnr|bc|bestallning|bestelling|bestellnr|bestellnummer|bestellung|bon commande|commande|encomenda|indent no|inkoopnummer|inkooporder|nota de encomenda|oc|ord|order|ordine|ordre|p o|pedido|po|purchase order|req no|requisition|zamowienia|zamowienie",
  test: "akkutest|analysis|analyzed|annual test|badania|badanie|batt check|battery check|calibrated|calibration|checked|collaudo|comprobado|conditioned|conditioning|controle|controllo|ensaios|ensayo|essais|essaye|gemessen|gemeten|gepruft|getest|getestet|kontrola|kontrolle|kontrolliert|last check|last cond|maling|matning|measured|measurement|medicao|medida|medido|mess|messdatum|messung|mesures|meting|performance test|pm test|pomiar|pomiaru|proba|probado|prova|prove|provning|pruebas|pruefdatum|prueftermin|pruf|prufung|przeglad|qc|reconditioned|revision|test|test end|test start|tested|testing|tst|verifica|verificacao",
  task: "actividad|activite|activiteit|activity|atividade|attivita|aufgaben|check|czynnosc|operation|opgave|pm task|procedimiento|procedure|routine|taak|tache|tarea|tarefa|task|tatigkeit|uppgift|wartung|what is done|zadanie",
  label:
    "bar code|barcode|code a barres|code barre|code barres|codigo de barras|data matrix|datamatrix|escaneado|escaneo|etikett|etiqueta|etiquette|full udi|gescannt|gs1|label|lectura|qr code|raw scan|scan|scan data|scan result|scan text|scanned|scannen|scanwert|streepjescode|udi",
  adult:
    "ad|adlt|adul|adult|adultes|adultos|adults|dorosli|doroslych|erw|erwachsenen|erwachsener|grown up|otona|seijin|voksen|voksne|volw|volwassen|vuxen|vuxna",
  child:
    "baby|bambini|bambino|barn|child|children|crianca|dzieci|enf|enfants|infantil|infants|jr|junior|kid|kids|kinder|kinderpads|kleinkind|kodomo|neo|neonatal|neonate|nin|nino|nins|nourrisson|padiatrisch|paed|paediatrics|paeds|ped|pedi|pediatric|pediatriche|pediatrico|pediatrique|pediatrisch|pediatryczne|peds|peuter|shoni",
  spare:
    "back up|backup|ersatz|ersatzsatz|extra|recambio|rechange|repuesto|res|reserva|reserve|reservepads|reservesatz|scorta|second|secondary|secours|spare|spares|zapas|zapasowe",
  primary:
    "1st|eerste set|erster|first|haupt|hoofd|main|premiere|primaer|primaire|primaria|primary|primera|primero|principal|set in use",
  charging: "au chargeur|charger|chargeur|charging|en cargador|ladegerat|lader|on charge",
  // What is said of them.
  serial:
    "fab nr|fabr nr|fabrikationsnummer|fabriknr|fabriknummer|matricula|mfg serial|mfr serial|s n|s no|s nr|sarjanumero|seizo bango|seizo no|ser|serial|serie|seriell|seriennr|seryjna|seryjny|sn|snr|werknummer",
  id: "bango|barcode no|bezeichner|biomed|bme|cod|code|codice|codigo|control no|id|identifiant|identificador|identificatie|identification|identifier|identifikation|identnr|ids|inwentarzowy|kanri|kenn nr|kennung|key no|kode|label id|label no|matricule no|n|nbr|no|nr|nro|num|number|numero|nummer|oznaczenie|ref|reference|referencia|referentie|referenz|refs|reg no|registration|tag",
  name: "alias|called|denominacao|naam|name|namn|navn|nazwa|nickname|nom|nombres|nome|noms|title",
  lot: "batch|ch b|charg|charge|chargenbez|los nr|losnr|losnummer|lot|lote|lots|lotti|lotto|mfg lot|nr serii|parti|partij|seria",
  expiry:
    "a changer|a changer avant|a remplacer|a remplacer avant|abgelaufen am|abl|ablauf|ablaufd|ablaufmonat|austauschen bis|bast fore|bb|bbd|bbe|bbf|best before|best by|bis|byts senast|cad|caduca|caducidad|cambiar antes|change before|change by|change due|changement prevu|da sostituire entro|date de fin|date limite|date limite d utilisation|ddm|dlc|dlu|dluo|due for change|echeance|end of life|end of shelf life|ends|eol|eosl|ersetzen bis|est replace|exp|exp date pads|exp mo|expected end|expiration|expireert|expirent|expires|expirey|expiring|expiry|expy|faellig|fech cad|fecha limite|fit before|fit by|gebruiken voor|good thru|good till|good until|gueltig bis|gultig bis|gultigkeit|hallbarhet|haltbar|haltbarkeit bis|haltbarkeits datum|haltbarkeitsdatum|hasta|holdbarhed|holdbarhet|houdb|houdbaar|houdbaar tot|houdbaarheid t m|houdbaarheid tot|houdbaarheidsdatum|install before|install by|jusqu au|kigen|lauft ab|life end|limite de validite|mhd|mindesthaltbarkeit|mindesthaltbarkeitsdatum|nachster tausch|nachster wechsel|naechster wechsel|next change|next due|next replacement|out date|out of date|outdates|peremption|perimes|prazo de validade|prochain changement|proximo cambio|przydatnosci|remplacement prevu|renew by|replace before|replace by|replace date|replace due|replace on|replacement due|retire by|run out|runs out|scad|scadenza|shelf date|shelf life end|shelf life until|shiyo kigen|substituir ate|sustituir antes de|tausch bis|tauschen bis|te gebruiken tot|termin waznosci|tht|to be replaced|uab|udlob|uiterlijk|uiterste gebruiksdatum|until|use before|use by|use until|usebydate|utgang|utgar|utlop|valid|valid thru|valid till|validade|validite|venc|vencimiento|verf|verfall|verfallend|verfallmonat|verfallt|verloopdatum|verloopt|verv datum|verval|vervaldag|vervallen|vervalt|vervang voor|vervangdatum|vervangen voor|verw bis|verwendbar|vto|wazna do|wazne do|waznosc|waznosci|wechsel bis|wechsel faellig|wechsel fallig|yuko kigen|zu verwenden bis",
  made: "baujahr|birth date|bouwjaar|built|dat fab|date code|date fab|date of mfr|dom|fab date|fabbricato|fabbricazione|fabricacao|fabricacion|fabricado|fabricage|fabrication|fabrico|fabrique|fecha fab|fertigung|fertigungswoche|fremstillet|gefertigt|gemaakt|geproduceerd|hergestellt|herst|herstelldat|herstelldatum|herstellung|herstellwoche|made|manuf|manufacture|manufactured|manufacturing|manufacturing code|mfd|mfg|mfg code|mfr date|mfr dt|prod|producao|produceret|productie|productiemaand|production|produkcja|produkcji|produktionsdatum|produktionsjahr|produktionsmonat|produsert|produziert|produzione|tillverkad|tillverkning|wyprodukowano",
  install:
    "abnahme|acceptance|accepted|activated|activation date|active since|alta|ausgetauscht|bytt|byttet|cambiado|cambio|changed|changement|colocacao|colocacao em servico|colocacion|colocado|commissioned|commissioning|date of fitting|date remplacement|deployed|deployment date|driftsatt|einbau|eingebaut|eingesetzt|einsatz seit|einsatzbeginn|em servico desde|en service|en service depuis|en servicio|en servicio desde|entered service|entrada em servico|erneuert|ersetzt|ersteinsatz|erster einsatz|erstgebrauch|erstnutzung|first use|first used|fit date|fitted|fitting date|geinstalleerd|geplaatst|getauscht|gewechselt|gewisseld|go live|i brug|i bruk fra|i drift|ibn|ibrugtaget|ibrugtagning|idrifttagning|im einsatz ab|in betrieb|in dienst|in dienst sinds|in gebruik|in gebruik genomen|in gebruik sinds|in gebruik vanaf|in service|in servizio|in svc|in use|in uso dal|inbetrieb|inbetriebnahme|indienststelling|ingebruik|ingebruikgenomen|ingebruikname|ingebruiknamedatum|insatt|insdate|inserted|inst|instalacao|instalacion|instalacji|instalada|instalado|install|installata|installatie|installation|installato|installazione|installed|installee|installerad|installert|insvc|into service|into svc|isatt|issued|laatste vervanging|last replacement|last swap|loaded|mes|messa in servizio|mis en place le|mise en place|mise en service|montazu|monte le|montert|mounted|new since|plaatsing|placed in service|pose|puesta en marcha|puesta en servicio|puesta servicio|put in|put in service|put into service|put into use|put on|remplace le|remplacee le|renewed|replaced|replacement date|seit|service date|service entry|service start|since|skiftet|sostituita|sostituzione|start date|start of service|start of use|started|sustitucion|sustituido|svc date|svc start|svcdate|swap date|swapped|taget i brug|tatt i bruk|tausch|uruchomienia|uruchomienie|usage start|use start|vervangen|vervangingsdatum|wechsel|wymiany|zainstalowano",
  // Bought is nearly put in service; see parse-header.ts.
  bought:
    "aangeschaft|aankoop|aankoopdatum|aanschaf|achat|achete le|acq|acquired|acquisition|acquisto|adquirido|adquisicion|afgeleverd|angeschafft|anschaffung|aquisicao|arrived|beschafft|beschaffung|bought|compra|consegnata|consegnato|delivered|entregada|entregado|gekauft|gekocht|geliefert|inkopt|kaufdatum|livrees|ontvangen|purch date|purchase|purchased|rcvd|rec d|recd|receipt date|received|reception|recibido|recu|ricevuta|ricevuto|wareneingang|zakupu|zugangsdatum",
  opened: "abierto|anbruch|angebrochen|apertura|geoffnet|geopend|open date|opened|opening|ouvert|ouverture",
  retired:
    "abate|abatido|abgangsdatum|afgekeurd op|afgeschreven|afgevoerd|afvoerdatum|ausbau|ausgebaut|ausgemustert|ausgeschieden|ausgesondert|ausscheiden|ausser betrieb|ausserbetriebnahme|aussonderung|baja|buiten gebruik|condemned|dado de baja|date out|date out of service|datum uit|decommissioned|demontee|deposee|desechado|discarded|dismesso|dismissione|disposal|disposed|end date|end of use|entsorgt|fuori servizio|hors service|kasserad|kasseret|kassert|oos|out of service|out of use|pulled|rebut|reforme|removal date|removed|removed from service|retirado|retire|retired|retirement|retrait|scrap date|scrapped|sortie|stillgelegt|taken out|taken out of service|uit dienst|uit gebruik|verschrottet|verwijderd|withdrawal date|withdrawn|write off|written off|wycofania|wycofano",
  reason:
    "aanleiding|anlass|anledning|arsag|arsak|because|bewegung|bewegungsart|buchungsart|but|causa|cause|circumstances|direction|ereignis|event|doel|grund|grund fur|in out|motif|motivo|mouvement|movement|movement type|movimiento|objet|oorzaak|orsak|powod|przyczyna|raison|rationale|razon|reason|reden|richtung|transaction|ursache|usage reason|used for|utilise pour|verwendungszweck|why|why retired|zweck",
  date: "buchungsdatum|dat|data|date|date issued|date of use|date used|dated|dato|datum|day|dt|dzien|einsatzdatum|einsatztag|entry date|event date|fecha|fecha de uso|fecha uso|gebruikt op|giorno|jour|log date|posting date|trans date|used on|utilise le|verbraucht am|when",
  cycles:
    "cargas|charge count|charge cycle|charge cycles|charges|chg|chgs|chrg cycles|cicli di carica|ciclos|ciclos carga|ciclos de carga|cyc|cyc ct|cycle ct|cycles|cycles de charge|cycles done|cycles to date|cycli|cyclussen|cyclusteller|cykler|cyklusser|discharge count|discharges|full cycles|laad cycli|laadbeurten|laadcycli|laadcyclus|laddcykler|lade zyklen|ladecykler|ladezyklen|ladezyklus|ladungen|liczba cykli|ontlaadcycli|opladninger|recharges|vollzyklen|zykl|zyklen|zyklenstand|zyklenzahl|zyklus|zyklus zahl",
  asof: "abgelesen|ablesedatum|ablesung|afgelezen|afleesdatum|as of|count date|counted|date read|lectura el|leido|peildatum|read date|read on|reading date|reading on|releve|stand",
  quantity:
    "aant|aantal|aanwezig|am lager|amount|an lager|antal|antall|anz|anzahl|auf lager|available|balance|beholdning|bestand|besteld|bestellmenge|bestellt|cant|cantidad|cdad|closing|cnt|commande qte|consommation|consommees|consommes|consumati|consumed|consumida|consumido|consumo|count|counted qty|ctd|disponibili|encomendada|encomendado|encontrados|entnahme|entnommen|existencias|existente|forbrug|forbrukning|found|gastado|gebruikt|gefunden|giacenza|have|hoeveelheid|how many|ilosc|issued qty|ist|lagerbestand|lagermenge|lagernd|lagersaldo|liczba|menge|mg|mng|nb|nbre|nombre d unites|nos|oh|on hand|onhand|order qty|ordered|ordinata|ordinato|pcs|pedida|pezzi|pieces|presente|presenti|q ta|qnt|qnty|qoh|qta|qtd|qtde|qte|qty|qty issued|quant|quantidade|quantite|quantities|quantity|restant|saldo|soh qty|stck|stk|stock|stock level|stock reel|stuck|stuckzahl|stuks|suryo|szt|sztuk|taken|trouves|ud|uds|unidades|unit count|unites|units|usadas|usados|usage qty|used|utilise|utilizada|utilizado|verbrauch|verbraucht|verbruikt|voorraad|vorhanden|vorrat|zuzycie",
  outstanding:
    "a recevoir|back order|back ordered|backorder|backordered|balance due|nog te leveren|offen|open|open qty|outstanding|por recibir|qty due|qty open|qty to come|reliquat|reste a livrer|restmenge|still to come|undelivered",
  site: "abteilung|adresse site|afd|afdeling|area|avdelning|base|basho|batiment|battalion|bereich|branch|building|cabane|cabinet dentaire|cabinet medical|campus|casern|center|centre|centro|city|clinic|clinica|clinique|club|commune|company|consultorio|dental practice|departamento|department|depot|dept|district|division|edificio|einsatzort|emplacement|emplazamiento|escuela|estacion|etablissement|ets|facility|feuerwache|fire station|garage|gebaude|gebouw|gemeente|halle|hospital|house|hut|hutte|implantation|kazerne|kept|klinik|krankenhaus|lagerort|lagerplatz|lehrrettungswache|lieu|lieux|loc|local|localidad|localisation|localizacao|localizacion|located|locatie|location|locn|lok|lokalizacja|lugar|luogo|miejsce|municipio|oe|organisationseinheit|ort|parque|plaats|placering|planta|plassering|plats|pole|post|post office|postazione|posto|practice|praktijk|praxen|praxis|precinct|premises|raum|refuge|region|reparto|rettungswache|room|rw|school|schule|scuola|secteur|sector|sede|service|servicio|setchi basho|site|skola|skole|spital|stacja|standort|standplaats|station|stationed|stations|stationsname|stazione|stn|surgery|szkola|town|ubicacion|ubicazione|uf|unit location|vestiging|village|ville|wache|ward|ward unit|where|ziekenhuis|zona|zone",
  place:
    "aed kast|affectation|affecte|almacen|almacenamiento|amb|ambulance|ambulances|ambulancia|ambulans|ambulanza|apparatus|appliance|appliances|armario|armazem|armoire|asignacion|asignado|assigned|auto|bag|bin|boat|bodega|buque|cabinet|carrello|carros|cart|case|chariot|crashcar|cupboard|deposito|dest|destination|drawer|embarcacion|engin|engine|engins|entrepot|estante|fach|fahrzeug|fartyg|fordon|forrad|fzg|gate|gebruiker|given to|hlf|holder|holder unit|hylla|issued to|itw|karetka|kast|kennzeichen|kfz|kit|kits|koffer|ktw|lade|lager|lagerstelle|legplank|lifeboat|magasin|magazijn|magazyn|magazzino|medic|medic unit|mezzo|mochila|navire|nef|notfallkoffer|notfallrucksack|notfalltasche|notfallwagen|opslag|placard|place|pojazd|rangement|reanimationswagen|reawagen|regal|rescue|responder|rig|rigs|rtw|rucksack|rugzak|sac|schap|schiff|schip|schlitten|schrank|sent to|shelf|sled|smur|sted|stelling|stellplatz|stock location|stockage|stockroom|storage|storage location|store|storeroom|tas|tasche|to unit|toegewezen|trolley|truck|used at|used by unit|user unit|veh|vehicle|vehicule|vehicules|vehiculo|vessel|viatura|voertuig|voertuignr|voertuignummer|vsav|vsl|wagen|wandkasten|warehouse|zugeordnet|zugeteilt|zugewiesen|zuordnung",
  type: "apparaattype|art|ausfuhrung|bauart|device class|device model|device type|gerateart|geratemodell|geratetyp|kishu|make model|mod|model|model no|model nr|model number|modele no|modell|modellbezeichnung|modelnummer|modelo|product type|rodzaj|serie modell|soort|sorte|style|tipo|tipo de equipo|tipo equipo|toesteltype|typ|typ nr|typbezeichnung|type|type apparaat|type de l appareil|type no|type toestel|typenbezeichnung|uitvoering|variant|version",
  category:
    "artikelgroep|cat|categoria|category|clase|class|class name|familia|famille|family|group|gruppe|item group|item kind|kategorie|kind|klasse|materialgruppe|produktgruppe|warengruppe",
  maker:
    "brand|constructeur|fabricante|fabrikant|hersteller|herstellername|make|maker|manufacturer|marca|marke|marque|merk|mfr|oem|producent",
  holder:
    "built into|colocada en|currently in|eingebaut in|en equipo|fitted in|fitted to|geplaatst in|im geraet|im gerat|in apparaat|in device|in toestel|ingebouwd in|inserted in|instalada en|instalado en|installed in|loaded in|monte dans|mounted in",
  duty: "als bls|aplica a|applies to|assignment|betrifft|concerne|crew type|dienst|diensttyp|duties|duty|einsatz|einsatzart|fonction|for whom|funcion|functie|funktion|gilt fur|mission|nutzung|purpose|role|service type|usage|verwendung",
  temperature:
    "ambient|raumtemp|raumtemperatur|room temp|tamb|temp|temp deg|temperatura|temperature|temperatuur|umgebungstemperatur",
  minutes:
    "akkulaufzeit|autonomia|autonomie|autonomy|betriebsdauer|betriebszeit|czas|czas pracy|dauer|disch min|disch time|discharge min|discharge time|driftstid|drifttid|duracao|duracion|durata|duration|duree|duree test|duur|endurance|entladedauer|entladezeit|gebruiksduur|gebruikstijd|hold time|lauf zeit|laufzeit|looptijd|mins|minuten|minutes|minutes run|minutos|ontlaadduur|ontlaadtijd|op time|prufdauer|rt|run min|run mins|run time|runtime|runtimes|standzeit|temps de decharge|temps decharge|test time|testdauer|tiempo|time run|time to cut off|time to cutoff|time to empty|time to shutdown|werktijd",
  capacity:
    "cap|capa|capacidad|capacite|capaciteit|capacity|condition percent|fcc|full charge capacity|health|istkapazitat|kap|kapa|kapacitet|kapasitet|kapazitat|pct|percent|percent of new|percent of nominal|percent of original|percent of rated|percentage|pojemnosc|pojemnosci|post percent|porcentaje|pourcentage|procent|prozent|rel cap|relative capacity|rest cap|restcapaciteit|restkapazitat|rsoc|salud|sante|so h|soh|state of health",
  wh: "energia|energie|energy|watt hour|watt hours|watthours|wattstunden|wh",
  ah: "ah|amp hour|amp hours|amperestunden|amphours|decharge mah|descarga mah|entladen mah|entladung mah|mah",
  load: "belasting|carga|carico|charge w|draw|entladelast|last w|leistung|load|obciazenie|potencia|power|pruefllast|pruflast|puissance|vermogen|watt",
  result:
    "akkoord|aprovado|apto|avis|befund|beoordeling|bestanden|beurteilung|bewertung|conclusion|conforme|conformite|ergebnis|esito|geslaagd|godkand|godkendt|godkjent|goed fout|goedgekeurd|io nio|ok|ok nok|oordeel|outcome|p f|p or f|pass|pass fail|pass or fail|passed|prufergebnis|result|resultaat|resultado|resultat|risultato|status ok|status test|superato|test status|testergebnis|testresultaat|uitslag|valoracion|verdict|wynik",
  fullcharge:
    "carga completa|carga plena|charge a 100|charge complete|charged full|from 100|full|full charge|fully charged|pleine|pleine charge|start full|started full|vol|vol geladen|voll|voll geladen|volledig geladen|vollgeladen|vollladung|vooraf vol",
  atleast:
    "abgebrochen|aborted|afgebroken|arrete tot|at least|cut short|ended early|interrompu|interrumpido|lower bound|minimum only|not run down|stopped early|test arrete|test stopped|voortijdig gestopt|vorzeitig|vorzeitig beendet",
  held: "bloccato|blocked|bloque|bloqueado|cuarentena|do not use|embargo|geblokkeerd|gesperrt|held|hold|hold flag|quarantaine|quarantane|quarantine|quarantined|reserved|retenido|sparrad|sperre|training only|zablokowany",
  price:
    "amount each|buy price|cena|contract price|cost|cost ea|cost each|cout|each price|eenheidsprijs|einkaufspreis|einzelpreis|ek|importe|inkoopprijs|kosten|list price|listenpreis|net price|nettopreis|nettoprijs|precio|precio unitario|preco unitario|preis|prezzo|prezzo unitario|price|price ea|price each|prices|prijs|prijs ex btw|prijs stuk|pris|prix|prix achat|prix d achat|prix net|prix unitaire|pu|purchase price|rate each|stuckpreis|stukprijs|stuksprijs|tarif ht|tarifa",
  priceper:
    "basiseinheit|besteleenheid|bestelleinheit|bezugsgrosse|maateenheid|me|mengeneinheit|order unit|per what|precio por|preis pro|preiseinheit|price basis|price is per|price per|priced per|prijs per|prix par|sales unit|selling unit|u m|u medida|u o m|udm|um|unit of measure|unit of sale|unite de mesure|uom|verkaufseinheit|verkoopeenheid",
  currency: "ccy|cur|curr|currency|devises|deviza|divisas|moneda|monnaie|munt|muntsoort|valuta|wahrung|whg",
  box: "boite|box|boxes|caixa|caja|carton|case|case pack|case qty|case size|colisage|cond|conditionnement|confezione|doos|embalagem|envase|forpackning|gebinde|karton|kasse|opakowanie|opakowaniu|order multiple|pack contents|pack of|pack qty|pack size|package size|packaging|packung|pakning|par boite|par carton|pe|per case|per pack|per package|pkg qty|pkg size|por caja|qty case|qty pack|qty pk|scatola|unidades por caixa|units pkg|ve|verpackungseinheit|verpakkingseenheid|vpe",
  contents: "contenido|contents|contenu|contenuto|inhalt|inhoud",
  minorder:
    "cant min|cde mini|mbm|min buy|min menge|min order|min qte|min qty|mindestabnahme|mindestbestellmenge|mindestmenge|minimale afname|minimalne zamowienie|minimumsordre|minsta bestallning|moq|qte min",
  least: "mindest|mini|minimaal|minimal|minimo|minimum|smallest",
  breaks:
    "breaks|degressif|descuentos por volumen|escalado|paliers|price break|price breaks|price tiers|prix degressifs|rappels|remises|staffel|staffelpreise|staffelprijzen|staffelung|tier prices|tiers|tramos|volume price|volume prices",
  lead: "czas dostawy|delai|delai de livraison|delai liv|delivery days|delivery time|delivery weeks|delivery wks|lead|lead wks|leveranstid|leverdagen|leveringstid|levertermijn|levertijd|lieferdauer|lieferfrist|lieferzeit|lt|plazo|plazo de entrega|tempi di consegna|tempo di consegna|turnaround|wbz|wiederbeschaffungszeit",
  sd: "desv|desviacion|deviation|ecart|lead sd|lt sd|s d|sd|spread|spreiding|st dev|standaardafwijking|standardabweichung|std dev|stdev|streuung|variability",
  shelf:
    "bewaarduur|bewaartijd|duree de conservation|haltbarkeit|haltbarkeitsdauer|houdbaarheid|lagerbar|lagerdauer|lagerfahigkeit|lagerzeit|shelf life|shelf months|shelflife|storage life|validez|vida de almacen|vida util",
  arriveswith:
    "arrives with|duree restante|life left|life on arrival|remaining life|remaining life on arrival|remaining shelf life|resterende houdbaarheid|restlaufzeit|restlaufzeit bei lieferung|shelf life at delivery|shelf life on arrival|shelf life on delivery|vida restante",
  servicelife:
    "austauschintervall|duree de service|duree de vie|gebruiksduur maanden|lebensdauer|levensduur|life in service|life yrs|max age|nutzungsdauer|replace after|replace every|replacement interval|service life|service months|tauschintervall|vervangen na|vida en servicio",
  maxcycles:
    "ciclos max|ciclos maximos|cycle life|cycle limit|cycles max|cycli max|max cyc|max cycles|max cycli|max zyklen|maximale zyklen|maximum cycles|rated cycles|zyklenlimit",
  rated:
    "as new|assignee|design|nameplate|nenn|nennkap|nennwert|neu|neuwert|new|nominaal|nominal|nominell|original|rated|rating|soll|sollkapazitat|sollwert|spec|specified|typical|typisch",
  openlife:
    "apres ouverture|haltbar nach anbruch|life once opened|na openen|nach anbruch|once opened|open days|opened days|pao|period after opening|tras apertura|use within days of opening",
  length:
    "lange|lengte|length|longitud|longueur|m roll|meter|meters per roll|metre|metres per roll|metros|roll length|rollengte|rollenlange|unit length",
  perdevice:
    "je gerat|needed per device|par appareil|par dae|per aed|per apparaat|per defib|per device|per monitor|per toestel|por dea|por equipo|pro gerat|soll pro gerat",
  fits: "apto para|compatible|compatible avec|device types|fit|fits|for device|for devices|for model|for models|for type|for types|fur gerat|fur typ|geeignet fur|geratetypen|geschikt|geschikt voor|kompatibel|para|passend|passend fur|passt|passt zu|past bij|pour|suitable for|toestellen|use with|used in|used with|voor type|works with",
  carriedby:
    "carried by|carried by duties|carried on|embarque par|for duties|for duty|for roles|gefuhrt von|llevado por|meegevoerd door|porte par",
  alternatives:
    "also works|alt item|alt items|alternate|alternatief|alternatieven|alternativas|alternativen|alternatives|equivalent|ersatzartikel|subst|substitutes|substituts|sustituto",
  replacedby:
    "ersetzt durch|nachfolger|new item|new part|opvolger|remplace par|replaced by|replacement|successor|superseded|sustituido por|vervangen door|vervangend",
  servicelevel:
    "fill rate target|niveau de service|nivel de servicio|service level|servicegrad|serviceniveau|svc level|target service level",
  gtin: "ean|ean13|gtin|trade item number|udi di|upc",
  chemistry:
    "akkuchemie|celchemie|cell chemistry|cell tech|cell type|celtype|chemie|chemistry|chimie|quimica|technology|tecnologia|zellchemie|zelltyp",
  arrives:
    "aankomst|ankunft|anlieferung|arr date|arriv|arrival|arrivee|arriving|attendu|chegada|consegna|date liv|del date|deliv|delivery|delv date|dlv|dostawa|dostawy|due|eintreffen|entrega|erwartet|eta|expected|leverans|leverdatum|leveren|levering|lieferdat|lieferdatum|liefert|liefertag|liefertermin|lieferung|livraison|llegada|need by|prevision|prevista|prevu|promise|promised|receipt due|recepcion|ship date|termin dostawy|toegezegd|verwacht|voraussichtlich|zugesagt",
  fee: "bestelkosten|bestellgebuhr|bestellkosten|bestellpauschale|carriage|delivery charge|delivery cost|delivery costs|delivery fee|fee|fixed fee|fixed order cost|forfait|fracht|frachtkosten|frais|frais de livraison|frais de port|frais fixes|freight|gastos de envio|gebuhr|handling fee|leverkosten|lieferkosten|order charge|orderkosten|p p|portes|porti|porto|postage|ship cost|ship fee|shipping|transportkosten|versand|versandkosten|versandpauschale|verzendkosten",
  freeover:
    "carriage paid over|envio gratis|envio gratis desde|frachtfrei|frachtfrei ab|franco|franco a partir de|franco grens|franco vanaf|free above|free delivery|free freight|free freight over|free from|free over|free shipping|frei ab|frei haus|freight free|gratis boven|gratis desde|gratis vanaf|gratuit des|kostenlos ab|no fee over|portofrei ab|seuil franco|versandfrei|versandkostenfrei",
  cadence:
    "bestelfrequentie|bestelinterval|bestellintervall|bestellrhythmus|bestellzyklus|bestelritme|intervalle de commande|intervalo de pedido|months between orders|order cadence|order cycle|order every|order frequency|order interval|periodicite",
  peryear:
    "a year|al ano|al ano veces|all anno|annual|annually|annuel|anual|anzahl jahr|each year|fois an|fois par an|frecuencia|freq|frequence|frequency|frequentie|haufigkeit|how often|im jahr|jaarlijks|jahrlich|je jahr|mal im jahr|mal pro jahr|p a|p j|par an|par annee|per annum|per ar|per jaar|per year|per yr|por ano|pro jahr|rocznie|times year|veces al ano|veces ano|yearly",
  uses: "activations|anwendungen|calls|deployments|einsatze|einsatzzahl|gebruik|incidents|inzetten|oproepen|responses|ritten|run count|shocks|usage count|use|uses|usos|utilisations",
  key: "ajuste|clave|cle|einstellung|instelling|key|optie|option|parameter|parametre|parametro|policy|property|regel|reglage|setting|variable",
  value: "set to|setting value|val|valeur|valor|value|waarde|wert",
  position:
    "bay|compartiment|einschub|fila|index|lfd|lfdnr|ligne|line|linea|orden|ordre|platz|pos|positie|position|rang|regelnr|regelnummer|rij|row|s l no|schacht|seq|sequence|sl no|slot|sr|volgnr|volgnummer",
  status:
    "availability|beschikbaarheid|condition|disponibilidad|disponibilita|disponibilite|disposition|estado|estatus|etat|life cycle status|lifecycle|operating status|operational state|operational status|service status|situacao|situacion|situation|stan techniczny|stand van zaken|stat|state|stato|status|statut|tillstand|tilstand|toestand|verfugbarkeit|zustand",
  // What a fleet's sheets also hold and nothing is read from.
  aside:
    "address|age|ah in|akkustand|alter|alterung|anmerkung|batteriestand|battery level|bemerkung|besteldatum|charge level|check due|checked by|comentarios|commentaire|contact|contact name|contact person|custodian|date de commande|date ordered|days left|days remaining|days to expiry|days until expiry|degradation|derniere maintenance|desgaste|dias restantes|durch|edad|engineer|estado de carga|etat de charge|garantie|garantie bis|garantie tot|inspection|issued by|jours restants|kontakt|laatste onderhoud|labor|labour|ladestand|ladezustand|last inspected|last maintenance|last service|leeftijd|letzte wartung|loss|mah in|maintenance due|max stock|maximum stock|meldebestand|min stock|mindestbestand|minimum stock|months left|months remaining|mtk bis|mtk fallig|needs order|niveau batterie|niveau de batterie|niveau de charge|nivel bateria|nivel de bateria|nivel de carga|note|observacion|opmerking|order date|order needed|order now|ordered on|owner|par|par level|perdida|perte|phone|pm|po date|referent|remarks|remarques|reorder|reorder level|reorder point|reorder qty|req|reserved for|responsible|responsible person|resttage|serviced|should be|should have|so c|soc|sollbestand|spannung|state of charge|stk bis|stk fallig|stock mini|stock minimum|tage bis ablauf|technician|tension|tested by|to be ordered|to have|to order|ultima revision|used by|usure|verlust|verschleiss|voltage|voltaje|volts|warranty|warranty end|warranty until|wear|wo|work order",
  // What is still to be done.
  next: "nachste|next|prochain|proxima|proximo|upcoming|volgend",
  // Words that say nothing by themselves.
  filler:
    "a|aaaa|cd|checking|lst|actual|actuel|adh|af|after|aktuell|am|amt|an|and|approx|are|as at|at|av|avg|by|c|clinical|completed|cpr|cpr feedback|current|d|da|dagar|dage|dal|das|days|dd|ddmmyyyy|de|del|della|dem|den|der|derniere|des|desechable|di|dias|die|disch|discharge|discharged|disposable|do|does|dla|dni|do|dos|dry|du|e|earliest|eerste|einweg|el|em|en|entered|erste|est|estimated|et|eur|excl|exkl|f|far|final|first expiring|for|from|ganger|gauche|gbp|geplant|giorni|h|het|heure|hora|hours|hrs|ht|huidig|i|if any|if known|il|im|in|info|is|iso|it|iva|izquierda|j n|ja nein|jahr|jetable|jjjj|jours|known|l|la|laatste|large|last|latest|le|left|les|letzte|letzter|li ion|liion|links|lithium|lithium ion|los|m|maanden|malt|medical|mes ano|meses|min|misurata|mm|mmm|mois|monate|months|multi|multifunktion|mwst|my|na|nearest|nicd|nimh|nonrechargeable|number of|o n|of|oldest|on|op|oplaadbaar|optional|or|ostatni|oui non|our|out|own|per|performed|plan|planned|plus proche|preconnected|preferred|quel|recargable|rechargeable|recorded|remaining|required|residua|residual|residuo|restant|restante|restantes|s|second exp|senaste|set|sets|si no|sidste|siste|size|small|so|soonest|std|tage|tax|the|tick|tijd|til|time|timestamp|ts|to|to alarm|to be|to cutoff|to empty|to low battery|to shutdown|total|tt mm jj|tva|uhr|ultima|ultimo|und|uppmatt|usd|van|vat|vezes|volte|von|w|was|wegwerp|wet|what is|when|which|wiederaufladbar|with|y|y n|year|yes no|you|your|yr|yrs|yy|yyyy|yyyymmdd|z|zeit|zmierzona",
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
