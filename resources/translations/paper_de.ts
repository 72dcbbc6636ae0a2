<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de_DE" sourcelanguage="en">
<context>
    <name>paper</name>
    <message>
        <source>HOLD POINT: </source>
        <translation>HALTEPUNKT: </translation>
    </message>
    <message>
        <source>Checked and may go on</source>
        <translation>Geprüft, weiter</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Signature</source>
        <translation>Unterschrift</translation>
    </message>
    <message>
        <source>Date, time</source>
        <translation>Datum, Uhrzeit</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>Annual heat</source>
        <translation>Wärme im Jahr</translation>
    </message>
    <message>
        <source>Electricity a year</source>
        <translation>Strom im Jahr</translation>
    </message>
    <message>
        <source>Seasonal factor</source>
        <translation>Jahresarbeitszahl</translation>
    </message>
    <message>
        <source>Cost a year</source>
        <translation>Kosten im Jahr</translation>
    </message>
    <message>
        <source>stop</source>
        <translation>Stopp</translation>
    </message>
    <message>
        <source>caution</source>
        <translation>Achtung</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Hinweis</translation>
    </message>
    <message>
        <source>ready</source>
        <translation>fertig</translation>
    </message>
    <message>
        <source>begun</source>
        <translation>begonnen</translation>
    </message>
    <message>
        <source>empty</source>
        <translation>leer</translation>
    </message>
    <message>
        <source>Fitting, tests, start and instruction</source>
        <translation>Montage, Prüfungen, Inbetriebnahme und Einweisung</translation>
    </message>
    <message>
        <source>Left for you to pay when all is granted</source>
        <translation>Bleibt Ihnen zu zahlen, wenn alles bewilligt ist</translation>
    </message>
    <message>
        <source>about %1</source>
        <translation>etwa %1</translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation>%1 (%2 bis %3)</translation>
    </message>
    <message>
        <source>Quote</source>
        <translation>Angebot</translation>
    </message>
    <message>
        <source>Install sheet</source>
        <translation>Montageblatt</translation>
    </message>
    <message>
        <source>Survey sheet</source>
        <translation>Aufnahmeblatt</translation>
    </message>
    <message>
        <source>Workings</source>
        <translation>Berechnungen</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Protokoll</translation>
    </message>
    <message>
        <source>Service sheet</source>
        <translation>Serviceblatt</translation>
    </message>
    <message>
        <source>Hand-over booklet</source>
        <translation>Übergabemappe</translation>
    </message>
    <message>
        <source>Cover letter</source>
        <translation>Anschreiben</translation>
    </message>
    <message>
        <source>Order confirmation</source>
        <translation>Auftragsbestätigung</translation>
    </message>
    <message>
        <source>Change order</source>
        <translation>Nachtrag</translation>
    </message>
    <message>
        <source>Parts list</source>
        <translation>Stückliste</translation>
    </message>
    <message>
        <source>Purchase list</source>
        <translation>Bestellliste</translation>
    </message>
    <message>
        <source>Purchase order</source>
        <translation>Bestellung</translation>
    </message>
    <message>
        <source>%1, top %2</source>
        <translation>%1, Oberkante %2</translation>
    </message>
    <message>
        <source>%1: no pipe</source>
        <translation>%1: keine Leitung</translation>
    </message>
    <message>
        <source>through roof</source>
        <translation>durchs Dach</translation>
    </message>
    <message>
        <source>through wall</source>
        <translation>durch die Wand</translation>
    </message>
    <message>
        <source>through floor</source>
        <translation>durch die Decke</translation>
    </message>
    <message>
        <source>collector</source>
        <translation>Kollektor</translation>
    </message>
    <message>
        <source>block on the cylinder</source>
        <translation>Wärmepumpenblock am Speicher</translation>
    </message>
    <message>
        <source>lift %1</source>
        <translation>Steighöhe %1</translation>
    </message>
    <message>
        <source>drop %1</source>
        <translation>Fallhöhe %1</translation>
    </message>
    <message>
        <source>No run yet: place a collector and choose a spot for the cylinder</source>
        <translation>Noch keine Leitung: Kollektor setzen und Platz für den Speicher wählen</translation>
    </message>
    <message>
        <source>Run %1 one way, %2, %3, %4 %5</source>
        <translation>Leitung %1 einfach, %2, %3, %4 %5</translation>
    </message>
    <message>
        <source>1 bend</source>
        <translation>1 Bogen</translation>
    </message>
    <message>
        <source>%1 bends</source>
        <translation>%1 Bögen</translation>
    </message>
    <message>
        <source>1 passage</source>
        <translation>1 Durchführung</translation>
    </message>
    <message>
        <source>%1 passages</source>
        <translation>%1 Durchführungen</translation>
    </message>
    <message>
        <source>lift</source>
        <translation>Steighöhe</translation>
    </message>
    <message>
        <source>drop</source>
        <translation>Fallhöhe</translation>
    </message>
    <message>
        <source>Not to scale in depth; figures are true lengths</source>
        <translation>Tiefe nicht maßstäblich; Zahlen sind wahre Längen</translation>
    </message>
    <message>
        <source>suction</source>
        <translation>Saug</translation>
    </message>
    <message>
        <source>connections</source>
        <translation>Anschlüsse</translation>
    </message>
    <message>
        <source>liquid</source>
        <translation>Flüssig</translation>
    </message>
    <message>
        <source>connections left</source>
        <translation>Anschlüsse links</translation>
    </message>
    <message>
        <source>connections right</source>
        <translation>Anschlüsse rechts</translation>
    </message>
    <message>
        <source>worst point %1: %2 %</source>
        <translation>höchstbelasteter Punkt %1: %2 %</translation>
    </message>
    <message>
        <source>start of the run</source>
        <translation>Anfang der Leitung</translation>
    </message>
    <message>
        <source>block</source>
        <translation>Wärmepumpenblock</translation>
    </message>
    <message>
        <source>to %1, %2</source>
        <translation>bis %1, %2</translation>
    </message>
    <message>
        <source>Dimensions in mm</source>
        <translation>Maße in mm</translation>
    </message>
    <message>
        <source>; fixing points: number · distance from the dot</source>
        <translation>; Befestigungspunkte: Nummer · Abstand vom Punkt</translation>
    </message>
    <message>
        <source>rafters</source>
        <translation>Sparren</translation>
    </message>
    <message>
        <source>rafters every %1 mm</source>
        <translation>Sparren alle %1 mm</translation>
    </message>
    <message>
        <source>keep out</source>
        <translation>frei halten</translation>
    </message>
    <message>
        <source>eaves</source>
        <translation>Traufe</translation>
    </message>
    <message>
        <source>ridge</source>
        <translation>First</translation>
    </message>
    <message>
        <source>top edge</source>
        <translation>Oberkante</translation>
    </message>
    <message>
        <source>foot of the wall</source>
        <translation>Wandfuß</translation>
    </message>
    <message>
        <source>not worked out</source>
        <translation>nicht berechnet</translation>
    </message>
    <message>
        <source>Collectors</source>
        <translation>Kollektoren</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>Heat pump</source>
        <translation>Wärmepumpe</translation>
    </message>
    <message>
        <source>Cylinder</source>
        <translation>Speicher</translation>
    </message>
    <message>
        <source>Heat used in a year</source>
        <translation>Genutzte Wärme im Jahr</translation>
    </message>
    <message>
        <source>Electricity in a year</source>
        <translation>Strom im Jahr</translation>
    </message>
    <message>
        <source>Electricity cost in a year</source>
        <translation>Stromkosten im Jahr</translation>
    </message>
    <message>
        <source>Over %1 years</source>
        <translation>Über %1 Jahre</translation>
    </message>
    <message>
        <source>Price with tax</source>
        <translation>Preis mit Steuer</translation>
    </message>
    <message>
        <source>no price</source>
        <translation>kein Preis</translation>
    </message>
    <message>
        <source>Your choices beside each other</source>
        <translation>Ihre Möglichkeiten nebeneinander</translation>
    </message>
    <message>
        <source>They do not differ in any of this.</source>
        <translation>Sie unterscheiden sich in nichts davon.</translation>
    </message>
    <message>
        <source>They differ in: %1.</source>
        <translation>Sie unterscheiden sich in: %1.</translation>
    </message>
    <message>
        <source>This quote is for “%1”. For another one, tell us: you get the same in writing.</source>
        <translation>Dieses Angebot gilt für „%1“. Wollen Sie eine andere Möglichkeit, sagen Sie es uns: Sie bekommen das Gleiche schriftlich.</translation>
    </message>
    <message>
        <source>Not to be issued: %1 has a stop</source>
        <translation>Nicht herausgeben: %1 hat ein Hindernis</translation>
    </message>
    <message>
        <source>Something in this choice must be changed before it is offered.</source>
        <translation>An dieser Möglichkeit muss etwas geändert werden, bevor sie angeboten wird.</translation>
    </message>
    <message>
        <source>Fill in on Visit</source>
        <translation>Bei der Aufnahme nachtragen</translation>
    </message>
    <message>
        <source>Enter the value for the place from the national annex or map</source>
        <translation>Den Wert für den Ort aus nationalem Anhang oder Karte eintragen</translation>
    </message>
    <message>
        <source>The snow load on the ground is not entered; %1 kN/m2 is assumed</source>
        <translation>Die Schneelast am Boden ist nicht eingetragen; %1 kN/m² angenommen</translation>
    </message>
    <message>
        <source>The snow load on the ground is not entered; %1 kN/m2 is taken from the rule set's region for %2 m</source>
        <translation>Die Schneelast am Boden ist nicht eingetragen; %1 kN/m² aus der Zone des Regelsatzes für %2 m</translation>
    </message>
    <message>
        <source>The basic wind velocity is not entered; %1 m/s is assumed</source>
        <translation>Die Basiswindgeschwindigkeit ist nicht eingetragen; %1 m/s angenommen</translation>
    </message>
    <message>
        <source>The plates have %1 m2 a face; the block is made for %2 to %3 m2</source>
        <translation>Die Kollektoren haben %1 m² je Seite; der Block ist für %2 bis %3 m² gemacht</translation>
    </message>
    <message>
        <source>Add a collector, or take a smaller block</source>
        <translation>Einen Kollektor dazunehmen oder einen kleineren Block wählen</translation>
    </message>
    <message>
        <source>The points lie almost in one line, which alone cannot keep the plate from tipping; feet %1 apart are assumed</source>
        <translation>Die Punkte liegen fast in einer Linie und verhindern allein kein Kippen; angenommen sind Füße im Abstand von %1</translation>
    </message>
    <message>
        <source>Take a frame with feet at least %1 apart front to back</source>
        <translation>Ein Gestell nehmen, dessen Füße vorn und hinten mindestens %1 auseinander stehen</translation>
    </message>
    <message>
        <source>%1 has a GWP of %2. EU: split heat pumps up to 12 kW with any fluorinated gas may not be placed on the market from 2035-01-01 (self-contained ones from 2032-01-01); systems in place may go on running: verify with the maker how long spares will be had</source>
        <translation>%1 hat ein GWP von %2. EU: Split-Wärmepumpen bis 12 kW mit fluoriertem Gas dürfen ab 01.01.2035 nicht mehr in Verkehr gebracht werden (Monoblöcke ab 01.01.2032); bestehende Anlagen dürfen weiterlaufen: beim Hersteller klären, wie lange es Ersatzteile gibt</translation>
    </message>
    <message>
        <source>%1 has a GWP of %2. EU: split systems with less than 3 kg of a listed fluorinated gas of GWP 750 or more may no longer be placed on the market from 2025-01-01; whether a plate and block joined on site count as one split system is for the maker to say: verify with the maker</source>
        <translation>%1 hat ein GWP von %2. EU: Split-Anlagen mit weniger als 3 kg eines gelisteten fluorierten Gases mit GWP 750 oder mehr dürfen seit 01.01.2025 nicht mehr in Verkehr gebracht werden; ob Kollektor und Block, vor Ort verbunden, als eine Split-Anlage gelten, sagt der Hersteller: dort klären</translation>
    </message>
    <message>
        <source>Verify with the maker how the set is classed before offering it</source>
        <translation>Vor dem Angebot beim Hersteller klären, wie der Satz eingestuft ist</translation>
    </message>
    <message>
        <source>Point %1 is used to %2 % (%3): pull %4 of %5 N, shear %6 of %7 N, under %8</source>
        <translation>Punkt %1 ist zu %2 % ausgelastet (%3): Zug %4 von %5 N, Schub %6 von %7 N, bei %8</translation>
    </message>
    <message>
        <source>The frame is used to %1 % (%2) with %3 kg a point</source>
        <translation>Das Gestell ist zu %1 % ausgelastet (%2) mit %3 kg je Punkt</translation>
    </message>
    <message>
        <source>bracket</source>
        <translation>Konsole</translation>
    </message>
    <message>
        <source>ballast, sliding</source>
        <translation>Ballast, Gleiten</translation>
    </message>
    <message>
        <source>ballast, tipping</source>
        <translation>Ballast, Kippen</translation>
    </message>
    <message>
        <source>%1 wind suction</source>
        <translation>%1 Windsog</translation>
    </message>
    <message>
        <source>%1 snow</source>
        <translation>%1 Schnee</translation>
    </message>
    <message>
        <source>Take a collector with %1 points instead of %2, evenly spread (%3 %)</source>
        <translation>Einen Kollektor mit %1 statt %2 gleichmäßig verteilten Punkten nehmen (%3 %)</translation>
    </message>
    <message>
        <source>Choose "%1" (used to %2 %)</source>
        <translation>„%1“ wählen (zu %2 % ausgelastet)</translation>
    </message>
    <message>
        <source>No other method at hand, no place within 3 m and no number of points up to 10 a profile holds; choose another surface. Least used: move it %1 m up (%2 %)</source>
        <translation>Keine andere Befestigung, kein Ort im Umkreis von 3 m und keine Zahl von Punkten bis 10 je Profil hält; andere Fläche wählen. Am geringsten: %1 m nach oben (%2 %)</translation>
    </message>
    <message>
        <source>Leave as it is only if wind, snow and rafters are confirmed</source>
        <translation>Nur so lassen, wenn Wind, Schnee und Sparren bestätigt sind</translation>
    </message>
    <message>
        <source>Leave as it is only if wind and snow are confirmed</source>
        <translation>Nur so lassen, wenn Wind und Schnee bestätigt sind</translation>
    </message>
    <message>
        <source>The profiles bend out by %1 mm in a span of %2: %3 of what is allowed</source>
        <translation>Die Profile biegen sich um %1 mm auf %2 Stützweite: %3 des Zulässigen</translation>
    </message>
    <message>
        <source>Take a collector with more points a profile, or a place with less wind and snow</source>
        <translation>Einen Kollektor mit mehr Punkten je Profil nehmen oder einen Ort mit weniger Wind und Schnee</translation>
    </message>
    <message>
        <source>Frame, plate and ballast put %1 kN/m2 on %2, which may carry %3 kN/m2 besides</source>
        <translation>Gestell, Kollektor und Ballast bringen %1 kN/m² auf %2, das daneben %3 kN/m² tragen darf</translation>
    </message>
    <message>
        <source>Take an anchored frame, a deeper frame, or a place with less wind</source>
        <translation>Ein verankertes oder tieferes Gestell nehmen oder einen Ort mit weniger Wind</translation>
    </message>
    <message>
        <source>The survey does not tell of the electrical supply: %1; nothing is assumed in its place</source>
        <translation>Die Aufnahme sagt zur Stromversorgung nichts über: %1; nichts wird dafür angenommen</translation>
    </message>
    <message>
        <source>The survey does not tell of the water supply: %1; what depends on it is not worked out</source>
        <translation>Die Aufnahme sagt zur Wasserversorgung nichts über: %1; was davon abhängt, ist nicht berechnet</translation>
    </message>
    <message>
        <source>way from the distribution board</source>
        <translation>Weg ab Verteilung</translation>
    </message>
    <message>
        <source>voltage</source>
        <translation>Spannung</translation>
    </message>
    <message>
        <source>frequency</source>
        <translation>Frequenz</translation>
    </message>
    <message>
        <source>main fuse</source>
        <translation>Hauptsicherung</translation>
    </message>
    <message>
        <source>current of what runs at the same time</source>
        <translation>Strom der gleichzeitigen Verbraucher</translation>
    </message>
    <message>
        <source>earthing system</source>
        <translation>Netzform</translation>
    </message>
    <message>
        <source>static pressure</source>
        <translation>Ruhedruck</translation>
    </message>
    <message>
        <source>hardness</source>
        <translation>Härte</translation>
    </message>
    <message>
        <source>draw-off points</source>
        <translation>Zapfstellen</translation>
    </message>
    <message>
        <source>hot pipes to the taps</source>
        <translation>Warmwasserleitungen zu den Zapfstellen</translation>
    </message>
    <message>
        <source>The hot pipe to %1 holds %2 l, more than 3 l</source>
        <translation>Die Warmwasserleitung zu %1 fasst %2 l, mehr als 3 l</translation>
    </message>
    <message>
        <source>Take a recirculation loop or trace heating, a smaller bore, or a spot nearer to the tap</source>
        <translation>Zirkulation oder Begleitheizung, ein kleineres Rohr oder einen Platz näher an der Zapfstelle nehmen</translation>
    </message>
    <message>
        <source>On %1 m with a lift of %2 m the liquid loses %3 kPa, worth %4 K; it leaves the condenser only %5 K below boiling</source>
        <translation>Auf %1 m mit %2 m Steighöhe verliert die Flüssigkeit %3 kPa, das sind %4 K; sie verlässt den Verflüssiger nur %5 K unterkühlt</translation>
    </message>
    <message>
        <source>Ask the maker whether the expansion device takes flash gas at this height, or bring collector and block nearer in height</source>
        <translation>Hersteller fragen, ob das Expansionsventil bei dieser Höhe Blasen verträgt, oder Kollektor und Block in der Höhe annähern</translation>
    </message>
    <message>
        <source>The system holds %1 kg of flammable %2; a room of %3 m2 takes %4 kg when it leaves at %5 m</source>
        <translation>Die Anlage enthält %1 kg brennbares %2; ein Raum von %3 m² erlaubt %4 kg bei Austritt in %5 m Höhe</translation>
    </message>
    <message>
        <source>The system holds %1 kg of flammable %2, and there is a source of ignition in the room</source>
        <translation>Die Anlage enthält %1 kg brennbares %2, und im Raum ist eine Zündquelle</translation>
    </message>
    <message>
        <source>Remove the source (open flame, sparking switchgear), or choose another spot or refrigerant</source>
        <translation>Zündquelle entfernen (offene Flamme, funkende Schalter) oder anderen Platz oder anderes Kältemittel wählen</translation>
    </message>
    <message>
        <source>Choose a room of %1 m2 or more, a shorter run, or a block with less charge; or openings that cannot be shut to a neighbouring room with which it makes up %2 m2, %3 cm2 at the floor and half as much again above 1.5 m (class A3: where the edition in force lets them count)</source>
        <translation>Einen Raum von %1 m² oder mehr, eine kürzere Leitung oder einen Block mit weniger Füllung wählen; oder unverschließbare Öffnungen zu einem Nachbarraum, mit dem er %2 m² ergibt, %3 cm² am Boden und halb so viel dazu über 1,5 m (Klasse A3: wo die geltende Ausgabe sie anrechnet)</translation>
    </message>
    <message>
        <source>Filled, cylinder and block weigh %1 kg; the %2 kg of the floor are only assumed</source>
        <translation>Gefüllt wiegen Speicher und Block %1 kg; die %2 kg des Bodens sind nur angenommen</translation>
    </message>
    <message>
        <source>Find out what the floor carries</source>
        <translation>Klären, was der Boden trägt</translation>
    </message>
    <message>
        <source>Collector or lines come within %1 m of the lightning protection; %2 m are asked for in the usual class, %3 m in the severest</source>
        <translation>Kollektor oder Leitungen kommen dem Blitzschutz auf %1 m nahe; üblich sind %2 m verlangt, in der strengsten Klasse %3 m</translation>
    </message>
    <message>
        <source>Move the collector, or have a lightning protection specialist join it in or move the conductor</source>
        <translation>Kollektor versetzen oder vom Blitzschutzfachmann einbinden oder die Ableitung verlegen lassen</translation>
    </message>
    <message>
        <source>The safety valve's discharge is %1 m long, more than the tables hold</source>
        <translation>Der Ablauf des Sicherheitsventils ist %1 m lang, mehr als die Tabellen hergeben</translation>
    </message>
    <message>
        <source>Bring a drain nearer to the cylinder, or choose another spot</source>
        <translation>Abfluss näher an den Speicher bringen oder anderen Platz wählen</translation>
    </message>
    <message>
        <source>The method screws into rafters and none are surveyed on %1; points are drawn where the collector has them</source>
        <translation>Die Befestigung schraubt in Sparren, auf %1 sind keine aufgenommen; Punkte sind gezeichnet, wo der Kollektor sie hat</translation>
    </message>
    <message>
        <source>Measure the first rafter and the spacing</source>
        <translation>Ersten Sparren und Abstand messen</translation>
    </message>
    <message>
        <source>The collector reaches beyond the outline of %1</source>
        <translation>Der Kollektor ragt über den Umriss von %1 hinaus</translation>
    </message>
    <message>
        <source>lower</source>
        <translation>unten</translation>
    </message>
    <message>
        <source>upper</source>
        <translation>oben</translation>
    </message>
    <message>
        <source>left</source>
        <translation>links</translation>
    </message>
    <message>
        <source>right</source>
        <translation>rechts</translation>
    </message>
    <message>
        <source>lower (from corner %1)</source>
        <translation>unten (ab Ecke %1)</translation>
    </message>
    <message>
        <source>upper (from corner %1)</source>
        <translation>oben (ab Ecke %1)</translation>
    </message>
    <message>
        <source>left (from corner %1)</source>
        <translation>links (ab Ecke %1)</translation>
    </message>
    <message>
        <source>right (from corner %1)</source>
        <translation>rechts (ab Ecke %1)</translation>
    </message>
    <message>
        <source>pipe run</source>
        <translation>Leitung</translation>
    </message>
    <message>
        <source>Invented firm, for demonstration</source>
        <translation>Erfundene Firma, zur Vorführung</translation>
    </message>
    <message>
        <source>Frame</source>
        <translation>Gestell</translation>
    </message>
    <message>
        <source>bend</source>
        <translation>Bogen</translation>
    </message>
    <message>
        <source>roof passage</source>
        <translation>Dachdurchführung</translation>
    </message>
    <message>
        <source>wall passage</source>
        <translation>Wanddurchführung</translation>
    </message>
    <message>
        <source>floor passage</source>
        <translation>Deckendurchführung</translation>
    </message>
    <message>
        <source>pressure hold, start</source>
        <translation>Druckprobe, Beginn</translation>
    </message>
    <message>
        <source>pressure hold, end</source>
        <translation>Druckprobe, Ende</translation>
    </message>
    <message>
        <source>evacuation, level reached</source>
        <translation>Evakuieren, erreichter Druck</translation>
    </message>
    <message>
        <source>evacuation, level after closing the valve</source>
        <translation>Evakuieren, Druck nach Schließen des Ventils</translation>
    </message>
    <message>
        <source>charge added</source>
        <translation>nachgefüllte Menge</translation>
    </message>
    <message>
        <source>suction temperature</source>
        <translation>Sauggastemperatur</translation>
    </message>
    <message>
        <source>discharge temperature</source>
        <translation>Heißgastemperatur</translation>
    </message>
    <message>
        <source>suction gas</source>
        <translation>Sauggas</translation>
    </message>
    <message>
        <source>suction pressure</source>
        <translation>Saugdruck</translation>
    </message>
    <message>
        <source>discharge gas</source>
        <translation>Heißgas</translation>
    </message>
    <message>
        <source>discharge pressure</source>
        <translation>Hochdruck</translation>
    </message>
    <message>
        <source>supply current</source>
        <translation>Stromaufnahme</translation>
    </message>
    <message>
        <source>water temperature</source>
        <translation>Wassertemperatur</translation>
    </message>
    <message>
        <source>outdoor temperature</source>
        <translation>Außentemperatur</translation>
    </message>
    <message>
        <source>insulation resistance</source>
        <translation>Isolationswiderstand</translation>
    </message>
    <message>
        <source>earth resistance</source>
        <translation>Erdungswiderstand</translation>
    </message>
    <message>
        <source>residual-current device, trip time</source>
        <translation>Fehlerstrom-Schutzschalter, Auslösezeit</translation>
    </message>
    <message>
        <source>first heating, start</source>
        <translation>erste Aufheizung, Beginn</translation>
    </message>
    <message>
        <source>first heating, end</source>
        <translation>erste Aufheizung, Ende</translation>
    </message>
    <message>
        <source>condenser to cylinder wall, resistance</source>
        <translation>Verflüssiger gegen Speicherwand, Widerstand</translation>
    </message>
    <message>
        <source>protective conductor, continuity</source>
        <translation>Schutzleiter, Durchgang</translation>
    </message>
    <message>
        <source>loop impedance</source>
        <translation>Schleifenimpedanz</translation>
    </message>
    <message>
        <source>supply voltage</source>
        <translation>Netzspannung</translation>
    </message>
    <message>
        <source>cold water pressure</source>
        <translation>Kaltwasserdruck</translation>
    </message>
    <message>
        <source>cylinder full, vented and tight</source>
        <translation>Speicher voll, entlüftet und dicht</translation>
    </message>
    <message>
        <source>safety valve lifted by hand</source>
        <translation>Sicherheitsventil von Hand angelüftet</translation>
    </message>
    <message>
        <source>hot water at the tap</source>
        <translation>Warmwasser an der Zapfstelle</translation>
    </message>
    <message>
        <source>set-point as set</source>
        <translation>eingestellte Solltemperatur</translation>
    </message>
    <message>
        <source>hygiene run as set</source>
        <translation>eingestellter Hygienelauf</translation>
    </message>
    <message>
        <source>serial number</source>
        <translation>Seriennummer</translation>
    </message>
    <message>
        <source>pc</source>
        <translation>Stk</translation>
    </message>
    <message>
        <source>collectors placed in the layout</source>
        <translation>in der Anordnung gesetzte Kollektoren</translation>
    </message>
    <message>
        <source>one a system</source>
        <translation>einer je Anlage</translation>
    </message>
    <message>
        <source>1 fixing point on the set-out drawing</source>
        <translation>1 Befestigungspunkt im Aufmaßplan</translation>
    </message>
    <message>
        <source>%1 fixing points on the set-out drawing</source>
        <translation>%1 Befestigungspunkte im Aufmaßplan</translation>
    </message>
    <message>
        <source>one for each collector on a frame</source>
        <translation>eines je Kollektor auf Gestell</translation>
    </message>
    <message>
        <source>liquid line: run of %1 m one way, cutting allowance included</source>
        <translation>Flüssigkeitsleitung: Leitung %1 m einfach, mit Verschnitt</translation>
    </message>
    <message>
        <source>suction line: run of %1 m one way, cutting allowance included</source>
        <translation>Saugleitung: Leitung %1 m einfach, mit Verschnitt</translation>
    </message>
    <message>
        <source>small and suction line of %1 m each, 5 % for cutting; wall against condensation</source>
        <translation>dünne Leitung und Saugleitung je %1 m, 5 % Verschnitt; Dämmdicke gegen Tauwasser</translation>
    </message>
    <message>
        <source>suction line of %1 m, 5 % for cutting; wall against condensation</source>
        <translation>Saugleitung %1 m, 5 % Verschnitt; Dämmdicke gegen Tauwasser</translation>
    </message>
    <message>
        <source>small line of %1 m, 5 % for cutting; wall against condensation</source>
        <translation>dünne Leitung %1 m, 5 % Verschnitt; Dämmdicke gegen Tauwasser</translation>
    </message>
    <message>
        <source>%1; sold by %2 m</source>
        <translation>%1; Gebinde %2 m</translation>
    </message>
    <message>
        <source>%1; sold by %2 pc</source>
        <translation>%1; Gebinde %2 Stk</translation>
    </message>
    <message>
        <source>%1; sold by %2 kg</source>
        <translation>%1; Gebinde %2 kg</translation>
    </message>
    <message>
        <source>one at the block and one at each collector</source>
        <translation>einer am Block und einer an jedem Kollektor</translation>
    </message>
    <message>
        <source>each collector after the first</source>
        <translation>jeder Kollektor nach dem ersten</translation>
    </message>
    <message>
        <source>one every %1 m</source>
        <translation>eine alle %1 m</translation>
    </message>
    <message>
        <source>%1; tube of this size is not bent by hand</source>
        <translation>%1; Rohr dieser Größe wird nicht von Hand gebogen</translation>
    </message>
    <message>
        <source>brazing under nitrogen, flushing and pressure hold</source>
        <translation>Hartlöten unter Stickstoff, Spülen und Druckprobe</translation>
    </message>
    <message>
        <source>1 such passage on the route</source>
        <translation>1 solche Durchführung im Verlauf</translation>
    </message>
    <message>
        <source>%1 such passages on the route</source>
        <translation>%1 solche Durchführungen im Verlauf</translation>
    </message>
    <message>
        <source>run of %1 m is beyond the %2 m of the factory charge: %3 g for each further metre</source>
        <translation>Leitung von %1 m über den %2 m der Werksfüllung: %3 g je weiterem Meter</translation>
    </message>
    <message>
        <source>%1 m one way to the supply; voltage drop %2 %</source>
        <translation>%1 m einfach bis zur Einspeisung; Spannungsfall %2 %</translation>
    </message>
    <message>
        <source>%1 m one way to the supply; voltage drop %2 %, carries %3 A as laid</source>
        <translation>%1 m einfach bis zur Einspeisung; Spannungsfall %2 %, trägt so verlegt %3 A</translation>
    </message>
    <message>
        <source>own circuit for the block, as its maker asks</source>
        <translation>eigener Stromkreis für den Block, wie vom Hersteller verlangt</translation>
    </message>
    <message>
        <source>own circuit for the block</source>
        <translation>eigener Stromkreis für den Block</translation>
    </message>
    <message>
        <source>own circuit for the block, type %1</source>
        <translation>eigener Stromkreis für den Block, Typ %1</translation>
    </message>
    <message>
        <source>within reach of the block, for service</source>
        <translation>in Reichweite des Blocks, für den Service</translation>
    </message>
    <message>
        <source>cold, hot and shut-off at the cylinder</source>
        <translation>Kalt, Warm und Absperrung am Speicher</translation>
    </message>
    <message>
        <source>valve opens at %1 bar</source>
        <translation>Ventil öffnet bei %1 bar</translation>
    </message>
    <message>
        <source>one a cylinder</source>
        <translation>eine je Speicher</translation>
    </message>
    <message>
        <source>keeps the cold water to %1 bar at the cylinder</source>
        <translation>hält das Kaltwasser am Speicher auf %1 bar</translation>
    </message>
    <message>
        <source>takes up %1 l of expansion at a pre-charge of %2 bar</source>
        <translation>nimmt %1 l Ausdehnung auf bei %2 bar Vordruck</translation>
    </message>
    <message>
        <source>stored water is hotter than the tap may be</source>
        <translation>das Speicherwasser ist heißer, als es die Zapfstelle sein darf</translation>
    </message>
    <message>
        <source>discharge of the safety valve to the drain</source>
        <translation>Ablauf des Sicherheitsventils zum Abfluss</translation>
    </message>
    <message>
        <source>discharge of the safety valve to the drain: %1 mm to the tundish, %2 mm from there</source>
        <translation>Ablauf des Sicherheitsventils zum Abfluss: %1 mm bis zum Trichter, %2 mm von dort</translation>
    </message>
    <message>
        <source>to be made: %1</source>
        <translation>herzustellen: %1</translation>
    </message>
    <message>
        <source>electrical supply, %1</source>
        <translation>Stromzuleitung, %1</translation>
    </message>
    <message>
        <source>earth, %1</source>
        <translation>Erdung, %1</translation>
    </message>
    <message>
        <source>cold water, %1</source>
        <translation>Kaltwasser, %1</translation>
    </message>
    <message>
        <source>hot water, %1</source>
        <translation>Warmwasser, %1</translation>
    </message>
    <message>
        <source>drain, %1</source>
        <translation>Abfluss, %1</translation>
    </message>
    <message>
        <source>extra of this choice</source>
        <translation>Zusatz dieser Wahl</translation>
    </message>
    <message>
        <source>not reached within 72 hours</source>
        <translation>innerhalb von 72 Stunden nicht erreicht</translation>
    </message>
    <message>
        <source>%1 with water at %2 deg C</source>
        <translation>%1 bei Wasser von %2 °C</translation>
    </message>
    <message>
        <source>evaporating temperature below the envelope</source>
        <translation>Verdampfungstemperatur unter dem Einsatzbereich</translation>
    </message>
    <message>
        <source>condensing temperature above the envelope</source>
        <translation>Verflüssigungstemperatur über dem Einsatzbereich</translation>
    </message>
    <message>
        <source>pressure ratio above the envelope</source>
        <translation>Druckverhältnis über dem Einsatzbereich</translation>
    </message>
    <message>
        <source>discharge temperature above the envelope</source>
        <translation>Heißgastemperatur über dem Einsatzbereich</translation>
    </message>
    <message>
        <source>the compressor's data end before this operating point</source>
        <translation>die Daten des Verdichters enden vor diesem Betriebspunkt</translation>
    </message>
    <message>
        <source>protective earth, %1</source>
        <translation>Schutzleiter, %1</translation>
    </message>
    <message>
        <source>recirculation, %1</source>
        <translation>Zirkulation, %1</translation>
    </message>
    <message>
        <source>Collector %1, %2 m2</source>
        <translation>Kollektor %1, %2 m²</translation>
    </message>
    <message>
        <source>Collector %1, %2 m2, tested</source>
        <translation>Kollektor %1, %2 m², geprüft</translation>
    </message>
    <message>
        <source>Block %1, %2, with control</source>
        <translation>Wärmepumpenblock %1, %2, mit Regelung</translation>
    </message>
    <message>
        <source>Cylinder %1, %2 l, stainless</source>
        <translation>Speicher %1, %2 l, Edelstahl</translation>
    </message>
    <message>
        <source>Cylinder %1, %2 l, enamelled</source>
        <translation>Speicher %1, %2 l, emailliert</translation>
    </message>
    <message>
        <source>Tile hook with two timber screws and clamp</source>
        <translation>Dachhaken mit zwei Holzschrauben und Klemme</translation>
    </message>
    <message>
        <source>Double-ended screw with sleeve, seals and clamp</source>
        <translation>Stockschraube mit Hülse, Dichtungen und Klemme</translation>
    </message>
    <message>
        <source>Wall bracket with sleeve anchor and mortar</source>
        <translation>Wandkonsole mit Siebhülse und Mörtel</translation>
    </message>
    <message>
        <source>Frame foot with anchor</source>
        <translation>Gestellfuß mit Anker</translation>
    </message>
    <message>
        <source>Ballast tray with mat and slabs for one foot</source>
        <translation>Ballastwanne mit Matte und Platten für einen Fuß</translation>
    </message>
    <message>
        <source>Seam clamp with bolt</source>
        <translation>Falzklemme mit Schraube</translation>
    </message>
    <message>
        <source>Frame for one collector on a level surface, tilt adjustable</source>
        <translation>Gestell für einen Kollektor auf ebener Fläche, Neigung einstellbar</translation>
    </message>
    <message>
        <source>Copper tube %1 mm, EN 12735-1, coil</source>
        <translation>Kupferrohr %1 mm, EN 12735-1, Ring</translation>
    </message>
    <message>
        <source>Copper tube %1 mm</source>
        <translation>Kupferrohr %1 mm</translation>
    </message>
    <message>
        <source>Joint set for one pair of tube ends</source>
        <translation>Verbindungssatz für ein Rohrpaar</translation>
    </message>
    <message>
        <source>Branch set to a further collector, liquid and suction</source>
        <translation>Abzweigsatz zu einem weiteren Kollektor, Flüssig und Saug</translation>
    </message>
    <message>
        <source>Insulated pipe clip</source>
        <translation>Kälteschelle</translation>
    </message>
    <message>
        <source>Brazing elbow %1 mm</source>
        <translation>Lötbogen %1 mm</translation>
    </message>
    <message>
        <source>Closed-cell insulation %1 mm wall, weatherproof outdoors</source>
        <translation>Geschlossenzellige Dämmung %1 mm, außen wetterfest</translation>
    </message>
    <message>
        <source>Roof passage with flexible flashing</source>
        <translation>Dachdurchführung mit flexibler Einfassung</translation>
    </message>
    <message>
        <source>Wall sleeve with seals and cover</source>
        <translation>Mauerhülse mit Dichtungen und Abdeckung</translation>
    </message>
    <message>
        <source>Floor sleeve with fire and sound seal</source>
        <translation>Deckenhülse mit Brand- und Schallschutz</translation>
    </message>
    <message>
        <source>Refrigerant %1, weighed in</source>
        <translation>Kältemittel %1, eingewogen</translation>
    </message>
    <message>
        <source>Dry nitrogen for brazing, flushing and pressure hold, use of one bottle</source>
        <translation>Trockener Stickstoff zum Löten, Spülen und für die Druckprobe, eine Flasche leihweise</translation>
    </message>
    <message>
        <source>Cable %1 mm2, copper</source>
        <translation>Kabel %1 mm², Kupfer</translation>
    </message>
    <message>
        <source>Circuit breaker %1</source>
        <translation>Leitungsschutzschalter %1</translation>
    </message>
    <message>
        <source>Residual-current device %1 mA</source>
        <translation>Fehlerstrom-Schutzschalter %1 mA</translation>
    </message>
    <message>
        <source>Isolating switch beside the block</source>
        <translation>Trennschalter neben dem Block</translation>
    </message>
    <message>
        <source>Thermostatic mixing valve 3/4</source>
        <translation>Thermomischer 3/4</translation>
    </message>
    <message>
        <source>Safety group with valve, check valve and shut-off</source>
        <translation>Sicherheitsgruppe mit Ventil, Rückflussverhinderer und Absperrung</translation>
    </message>
    <message>
        <source>Pressure reducing valve with gauge and strainer 3/4</source>
        <translation>Druckminderer mit Manometer und Sieb 3/4</translation>
    </message>
    <message>
        <source>Tundish, trap and discharge pipe to the drain</source>
        <translation>Trichter, Geruchsverschluss und Ablaufrohr zum Abfluss</translation>
    </message>
    <message>
        <source>Expansion vessel for drinking water, %1 l</source>
        <translation>Ausdehnungsgefäß für Trinkwasser, %1 l</translation>
    </message>
    <message>
        <source>Connection set cold, hot and shut-off</source>
        <translation>Anschlusssatz Kalt, Warm und Absperrung</translation>
    </message>
    <message>
        <source>Bringing a missing service to the spot</source>
        <translation>Fehlenden Anschluss an den Platz heranführen</translation>
    </message>
    <message>
        <source>Drain pan under the cylinder</source>
        <translation>Auffangwanne unter dem Speicher</translation>
    </message>
    <message>
        <source>Recirculation pump with timer</source>
        <translation>Zirkulationspumpe mit Zeitschaltung</translation>
    </message>
    <message>
        <source>Roof ladder and edge protection, hire and setting up</source>
        <translation>Dachleiter und Seitenschutz, Miete und Aufbau</translation>
    </message>
    <message>
        <source>Taking away and recycling the old cylinder</source>
        <translation>Alten Speicher abholen und verwerten</translation>
    </message>
    <message>
        <source>Electrician's certificate for the new circuit</source>
        <translation>Prüfprotokoll der Elektrofachkraft für den neuen Stromkreis</translation>
    </message>
    <message>
        <source>electric immersion heater</source>
        <translation>elektrischer Heizstab</translation>
    </message>
    <message>
        <source>natural gas</source>
        <translation>Erdgas</translation>
    </message>
    <message>
        <source>liquefied petroleum gas</source>
        <translation>Flüssiggas</translation>
    </message>
    <message>
        <source>heating oil</source>
        <translation>Heizöl</translation>
    </message>
    <message>
        <source>wood</source>
        <translation>Holz</translation>
    </message>
    <message>
        <source>Survey on site and set-out drawing</source>
        <translation>Aufmaß vor Ort und Aufmaßplan</translation>
    </message>
    <message>
        <source>Set out and fix points</source>
        <translation>Punkte anreißen und befestigen</translation>
    </message>
    <message>
        <source>Lift, hang and secure collectors</source>
        <translation>Kollektoren heben, einhängen und sichern</translation>
    </message>
    <message>
        <source>Lay, bend, clip and insulate the run</source>
        <translation>Leitung verlegen, biegen, schellen und dämmen</translation>
    </message>
    <message>
        <source>Set cylinder and block, connect water side</source>
        <translation>Speicher und Block setzen, wasserseitig anschließen</translation>
    </message>
    <message>
        <source>Pressure hold, evacuation, charge</source>
        <translation>Druckprobe, Evakuieren, Füllen</translation>
    </message>
    <message>
        <source>Supply, protection, connection and tests</source>
        <translation>Zuleitung, Schutz, Anschluss und Prüfungen</translation>
    </message>
    <message>
        <source>First heating, settings, instruction, papers</source>
        <translation>Erste Aufheizung, Einstellungen, Einweisung, Papiere</translation>
    </message>
    <message>
        <source>Travel, distance</source>
        <translation>Anfahrt, Strecke</translation>
    </message>
    <message>
        <source>Travel, time</source>
        <translation>Anfahrt, Zeit</translation>
    </message>
    <message>
        <source>Tax</source>
        <translation>Steuer</translation>
    </message>
    <message>
        <source>Standard rate (assumed)</source>
        <translation>Regelsatz (angenommen)</translation>
    </message>
    <message>
        <source>Reduced rate (assumed)</source>
        <translation>Ermäßigter Satz (angenommen)</translation>
    </message>
    <message>
        <source>Standard rate %1 % (assumed)</source>
        <translation>Regelsatz %1 % (angenommen)</translation>
    </message>
    <message>
        <source>Reduced rate %1 % (assumed)</source>
        <translation>Ermäßigter Satz %1 % (angenommen)</translation>
    </message>
    <message>
        <source>eight in ten of %1 made years of the climate, and two runs of the year with plate to refrigerant %2, compressor %3, condenser %4, draw-off %5 together (sizes assumed)</source>
        <translation>acht von zehn aus %1 erzeugten Jahren des Klimas und zwei Rechnungen des Jahres mit Kollektor zu Kältemittel %2, Verdichter %3, Verflüssiger %4 und Zapfung %5 zugleich (Größen angenommen)</translation>
    </message>
    <message>
        <source>two further runs of the year: light %1, plate to refrigerant %2, compressor %3, condenser %4, draw-off %5 together (sizes assumed)</source>
        <translation>zwei weitere Rechnungen des Jahres: Licht %1, Kollektor zu Kältemittel %2, Verdichter %3, Verflüssiger %4 und Zapfung %5 zugleich (Größen angenommen)</translation>
    </message>
    <message>
        <source>not worked out yet</source>
        <translation>noch nicht berechnet</translation>
    </message>
    <message>
        <source>At the highest tap %1 bar are left while hot water flows, %2 bar are wanted</source>
        <translation>An der höchsten Zapfstelle bleiben %1 bar, während Warmwasser fließt; gewünscht sind %2 bar</translation>
    </message>
    <message>
        <source>Set the reducing valve higher, take a larger hot pipe, or plan a booster</source>
        <translation>Druckminderer höher stellen, Warmwasserrohr größer nehmen oder eine Druckerhöhung vorsehen</translation>
    </message>
    <message>
        <source>The reducing valve lets %1 stand at the cylinder; the safety valve of %2 asks for %3 at most</source>
        <translation>Der Druckminderer lässt %1 am Speicher anstehen; das Sicherheitsventil von %2 verlangt höchstens %3</translation>
    </message>
    <message>
        <source>Set it to %1 or less</source>
        <translation>Auf %1 oder weniger einstellen</translation>
    </message>
    <message>
        <source>The house has recirculation and the cylinder no port for it</source>
        <translation>Das Haus hat eine Zirkulation, der Speicher keinen Anschluss dafür</translation>
    </message>
    <message>
        <source>Choose a cylinder with a recirculation port, or join it to the cold inlet as its maker allows</source>
        <translation>Einen Speicher mit Zirkulationsanschluss wählen oder, wenn der Hersteller es erlaubt, am Kaltwassereingang anschließen</translation>
    </message>
    <message>
        <source>The house has a recirculation loop and the cylinder no connection for it</source>
        <translation>Das Haus hat eine Zirkulationsleitung, der Speicher keinen Anschluss dafür</translation>
    </message>
    <message>
        <source>Choose a cylinder with a recirculation connection, or return through the cold inlet as its maker allows</source>
        <translation>Einen Speicher mit Zirkulationsanschluss wählen oder, wenn der Hersteller es erlaubt, über den Kaltwassereingang zurückführen</translation>
    </message>
    <message>
        <source>The store is kept at %1 deg C; legionella grow between 20 and 45 deg C and die slowly below 55</source>
        <translation>Der Speicher wird auf %1 deg C gehalten; Legionellen wachsen zwischen 20 und 45 deg C und sterben unter 55 nur langsam</translation>
    </message>
    <message>
        <source>Raise the set-point to 60 deg C, or have the immersion heater lift the whole store to 60 deg C at times that local rules ask for</source>
        <translation>Solltemperatur auf 60 deg C stellen oder den ganzen Speicher vom Heizstab auf 60 deg C bringen lassen, so oft es die örtlichen Regeln verlangen</translation>
    </message>
    <message>
        <source>The store stands lukewarm in holidays and no hygiene run comes before the return</source>
        <translation>In den Ferien steht der Speicher lauwarm, und vor der Rückkehr läuft keine Desinfektion</translation>
    </message>
    <message>
        <source>Switch on the hygiene run before return</source>
        <translation>Die Desinfektion vor der Rückkehr einschalten</translation>
    </message>
    <message>
        <source>The cylinder may hold water of %1 deg C; %2 deg C burns in about %3 s. A thermostatic mixing valve is in the list</source>
        <translation>Im Speicher kann das Wasser %1 °C heiß sein; %2 °C verbrühen in etwa %3 s. Ein thermostatisches Mischventil ist dabei</translation>
    </message>
    <message>
        <source>%1 of %2 hygiene runs end after %3 hours without %4 deg C for %5 minutes: the sources are too weak for it, or draws come in between</source>
        <translation>%1 von %2 Hygieneläufen enden nach %3 Stunden ohne %4 °C über %5 Minuten: Die Wärmequellen sind zu schwach, oder es wird dazwischen gezapft</translation>
    </message>
    <message>
        <source>Fit a stronger immersion heater, begin earlier in the night, or take another cylinder or block</source>
        <translation>Einen stärkeren Heizstab einbauen, nachts früher beginnen oder einen anderen Speicher oder Block nehmen</translation>
    </message>
    <message>
        <source>%1 of %2 hygiene runs hold %3 deg C for %4 minutes only above the immersion heater; the %5 l below it are no hotter than the heat pump makes them</source>
        <translation>%1 von %2 Hygieneläufen halten %3 °C über %4 Minuten nur oberhalb des Heizstabs; die %5 l darunter werden nur so heiß, wie die Wärmepumpe sie macht</translation>
    </message>
    <message>
        <source>Choose a target within the heat pump's envelope, a lower immersion heater, or a circulating pump for the run</source>
        <translation>Ein Ziel im Bereich der Wärmepumpe, einen tieferen Heizstab oder eine Umwälzpumpe für den Lauf wählen</translation>
    </message>
    <message>
        <source>The condenser lies in drinking water with a single wall between it and refrigerant with oil</source>
        <translation>Der Verflüssiger liegt im Trinkwasser, mit nur einer Wand zum Kältemittel mit Öl</translation>
    </message>
    <message>
        <source>Choose a block with a double-walled or wrapped condenser, or have the maker confirm that it is allowed where it is fitted</source>
        <translation>Einen Block mit doppelwandigem oder umwickeltem Verflüssiger wählen oder vom Hersteller bestätigen lassen, dass er am Einbauort erlaubt ist</translation>
    </message>
    <message>
        <source>The water has %1 mmol/l of hardness and is heated to %2 deg C: lime settles on heater and condenser</source>
        <translation>Das Wasser hat %1 mmol/l Härte und wird auf %2 deg C erwärmt: Kalk setzt sich an Heizstab und Verflüssiger ab</translation>
    </message>
    <message>
        <source>Keep to 60 deg C, or plan softening or lime protection and yearly descaling</source>
        <translation>Bei 60 deg C bleiben oder Enthärtung oder Kalkschutz und jährliches Entkalken vorsehen</translation>
    </message>
    <message>
        <source>Only %1 are left over the cylinder</source>
        <translation>Über dem Speicher bleiben nur %1</translation>
    </message>
    <message>
        <source>Check that anode and connections can be reached, or take a lower cylinder</source>
        <translation>Prüfen, ob Anode und Anschlüsse erreichbar sind, oder einen niedrigeren Speicher nehmen</translation>
    </message>
    <message>
        <source>Only %1 are left beside the cylinder</source>
        <translation>Neben dem Speicher bleiben nur %1</translation>
    </message>
    <message>
        <source>Check that it can be brought in and its connections reached</source>
        <translation>Prüfen, ob er hineingebracht werden kann und die Anschlüsse erreichbar sind</translation>
    </message>
    <message>
        <source>While the block starts the voltage falls by %1 % over %2 m; lamps flicker and the start may fail</source>
        <translation>Beim Anlauf des Blocks fällt die Spannung auf %2 m um %1 %; Lampen flackern, und der Anlauf kann misslingen</translation>
    </message>
    <message>
        <source>Bring the supply nearer, or ask the maker for a soft starter</source>
        <translation>Die Zuleitung verkürzen oder beim Hersteller nach einem Sanftanlauf fragen</translation>
    </message>
    <message>
        <source>Starting takes %1 A; a breaker %2 may trip from %3 A</source>
        <translation>Der Anlauf nimmt %1 A; ein Schutzschalter %2 kann ab %3 A auslösen</translation>
    </message>
    <message>
        <source>Take the next slower curve or the next larger rating that the cable carries</source>
        <translation>Die nächst trägere Kennlinie oder die nächste Größe nehmen, die das Kabel trägt</translation>
    </message>
    <message>
        <source>The block's data ask for a residual-current device of %1 mA</source>
        <translation>Die Daten des Blocks verlangen einen Fehlerstrom-Schutzschalter von %1 mA</translation>
    </message>
    <message>
        <source>Check the national rule: 30 mA is usual where people touch water and metal</source>
        <translation>Die örtliche Regel prüfen: 30 mA sind üblich, wo Menschen Wasser und Metall berühren</translation>
    </message>
    <message>
        <source>The house has an IT supply: how a fault is found and cut is not worked out here</source>
        <translation>Das Haus hat ein IT-Netz: wie ein Fehler erkannt und abgeschaltet wird, ist hier nicht berechnet</translation>
    </message>
    <message>
        <source>Have an electrician plan insulation monitoring and the second fault</source>
        <translation>Isolationsüberwachung und zweiten Fehler von einer Elektrofachkraft planen lassen</translation>
    </message>
    <message>
        <source>The cable alone takes %1 ohm of the fault loop; a breaker %2 switches off at once up to %3 ohm</source>
        <translation>Das Kabel allein hat %1 Ohm der Fehlerschleife; ein Schutzschalter %2 schaltet bis %3 Ohm sofort ab</translation>
    </message>
    <message>
        <source>Let the residual-current device serve, or take a larger section or a quicker curve</source>
        <translation>Den Fehlerstrom-Schutzschalter wirken lassen oder größeren Querschnitt oder flinkere Kennlinie nehmen</translation>
    </message>
    <message>
        <source>The house has lightning protection; the distance from collector and lines to its nearest conductor is not told</source>
        <translation>Das Haus hat Blitzschutz; der Abstand von Kollektor und Leitungen zur nächsten Ableitung ist nicht genannt</translation>
    </message>
    <message>
        <source>Measure it and fill it in on Visit; %1 m is enough in every class</source>
        <translation>Messen und bei der Aufnahme eintragen; %1 m genügen in jeder Klasse</translation>
    </message>
    <message>
        <source>Have a lightning protection specialist confirm the class and the distance</source>
        <translation>Klasse und Abstand vom Blitzschutzfachmann bestätigen lassen</translation>
    </message>
    <message>
        <source>No surge protection is in the distribution board, and the house has lightning protection</source>
        <translation>In der Verteilung ist kein Überspannungsschutz, und das Haus hat Blitzschutz</translation>
    </message>
    <message>
        <source>Have devices of type 1 and 2 fitted with the circuit</source>
        <translation>Geräte vom Typ 1 und 2 mit dem Stromkreis einbauen lassen</translation>
    </message>
    <message>
        <source>The circuit's breaker of %1 A is not below the main fuse of %2 A: a fault there may put the house in the dark</source>
        <translation>Der Schutzschalter des Stromkreises mit %1 A liegt nicht unter der Hauptsicherung mit %2 A: ein Fehler dort kann das ganze Haus dunkel machen</translation>
    </message>
    <message>
        <source>Have an electrician check selectivity</source>
        <translation>Selektivität von einer Elektrofachkraft prüfen lassen</translation>
    </message>
    <message>
        <source>%1 collectors share one circuit; even flow through them is not worked out here</source>
        <translation>%1 Kollektoren teilen sich einen Kreis; die gleichmäßige Durchströmung ist hier nicht berechnet</translation>
    </message>
    <message>
        <source>Ask the block's maker how they are to be joined</source>
        <translation>Hersteller des Blocks fragen, wie sie zu verbinden sind</translation>
    </message>
    <message>
        <source>Take away a collector, or take a larger block</source>
        <translation>Einen Kollektor weglassen oder einen größeren Block wählen</translation>
    </message>
    <message>
        <source>Shade takes %1 % of the year's light</source>
        <translation>Schatten nimmt %1 % des Lichts im Jahr</translation>
    </message>
    <message>
        <source>Shade takes %1 % of the year's light, most of it by %2</source>
        <translation>Schatten nimmt %1 % des Lichts im Jahr, das meiste durch %2</translation>
    </message>
    <message>
        <source>Move the collector; the shade map shows where it is lighter</source>
        <translation>Kollektor versetzen; die Schattenkarte zeigt, wo es heller ist</translation>
    </message>
    <message>
        <source>%1 % of the heat asked for is not there at %2 deg C (%3 kWh in a year, 1 draw)</source>
        <translation>%1 % der gewünschten Wärme sind bei %2 deg C nicht da (%3 kWh im Jahr, 1 Zapfung)</translation>
    </message>
    <message>
        <source>%1 % of the heat asked for is not there at %2 deg C (%3 kWh in a year, %4 draws)</source>
        <translation>%1 % der gewünschten Wärme sind bei %2 deg C nicht da (%3 kWh im Jahr, %4 Zapfungen)</translation>
    </message>
    <message>
        <source>Take a larger cylinder, more collector area or a higher set-point</source>
        <translation>Größeren Speicher, mehr Kollektorfläche oder höhere Solltemperatur nehmen</translation>
    </message>
    <message>
        <source>In %1 hours of the year heat is wanted where the compressor's data say nothing; the pump is taken to be off then and the immersion heater serves</source>
        <translation>In %1 Stunden des Jahres wird Wärme verlangt, wo die Daten des Verdichters nichts sagen; die Wärmepumpe gilt dann als aus, und der Heizstab springt ein</translation>
    </message>
    <message>
        <source>Ask the maker for coefficients over a wider range, or choose a block whose data reach further</source>
        <translation>Beim Hersteller Koeffizienten für einen größeren Bereich erfragen oder einen Block wählen, dessen Daten weiter reichen</translation>
    </message>
    <message>
        <source>The immersion heater uses %1 % of the electricity</source>
        <translation>Der Heizstab braucht %1 % des Stroms</translation>
    </message>
    <message>
        <source>Take a larger block or more collector area</source>
        <translation>Größeren Block oder mehr Kollektorfläche nehmen</translation>
    </message>
    <message>
        <source>The weather year is from a place %1 km away</source>
        <translation>Das Wetterjahr ist von einem %1 km entfernten Ort</translation>
    </message>
    <message>
        <source>Plan with a nearer file if there is one</source>
        <translation>Mit einer näheren Datei planen, wenn es eine gibt</translation>
    </message>
    <message>
        <source>The weather year is from %1 m, the site lies at %2 m; air temperature is not corrected for it</source>
        <translation>Das Wetterjahr ist von %1 m Höhe, der Ort liegt auf %2 m; die Lufttemperatur ist dafür nicht berichtigt</translation>
    </message>
    <message>
        <source>Plan with a file from a similar height</source>
        <translation>Mit einer Datei aus ähnlicher Höhe planen</translation>
    </message>
    <message>
        <source>Scale 1:%1 on %2 printed at full size. Check the bar with a rule before measuring.</source>
        <translation>Maßstab 1:%1 auf %2 in voller Größe. Vor dem Messen die Leiste mit dem Meterstab prüfen.</translation>
    </message>
    <message>
        <source>%1 has no outline that can be drawn yet: measure it and enter its corners.</source>
        <translation>%1 hat noch keinen Umriss, der sich zeichnen lässt: aufmessen und Ecken eingeben.</translation>
    </message>
    <message>
        <source>%1 is too large to be drawn to scale on one sheet.</source>
        <translation>%1 ist zu groß, um auf einem Blatt maßstäblich gezeichnet zu werden.</translation>
    </message>
    <message>
        <source>, seen face-on</source>
        <translation>, von vorn gesehen</translation>
    </message>
    <message>
        <source>The points close up</source>
        <translation>Die Punkte aus der Nähe</translation>
    </message>
    <message>
        <source>, points close up</source>
        <translation>, Punkte aus der Nähe</translation>
    </message>
    <message>
        <source>Site in plan</source>
        <translation>Lageplan</translation>
    </message>
    <message>
        <source>Nothing is sketched yet: draw the house, its surfaces and the cylinder's place.</source>
        <translation>Noch nichts skizziert: Haus, Flächen und Platz des Speichers zeichnen.</translation>
    </message>
    <message>
        <source>The site is too large to be drawn to scale on one sheet.</source>
        <translation>Die Lage ist zu groß, um auf einem Blatt maßstäblich gezeichnet zu werden.</translation>
    </message>
    <message>
        <source>Pipe run, not to scale</source>
        <translation>Leitungsführung, nicht maßstäblich</translation>
    </message>
    <message>
        <source>"%1" (in English)</source>
        <translation>„%1“ (auf Englisch)</translation>
    </message>
    <message>
        <source> on </source>
        <translation> auf </translation>
    </message>
    <message>
        <source>, tilt %1°, looks to %2</source>
        <translation>, Neigung %1°, Blick nach %2</translation>
    </message>
    <message>
        <source>Job %1, revision %2, mark %3</source>
        <translation>Vorhaben %1, Stand %2, Kennung %3</translation>
    </message>
    <message>
        <source>Before work: scan this, or type the mark, under Fitting, 'Code of a print'. It tells whether this print is still the plan. Do not build from an outdated one.</source>
        <translation>Vor der Arbeit: dies scannen oder die Kennung eingeben, unter „Fitting“, „Code of a print“. Es sagt, ob dieser Druck noch der Plan ist. Nicht nach einem veralteten bauen.</translation>
    </message>
    <message>
        <source>The job</source>
        <translation>Das Vorhaben</translation>
    </message>
    <message>
        <source>%1 × %2, %3 × %4, %5 each</source>
        <translation>%1 × %2, %3 × %4, je %5</translation>
    </message>
    <message>
        <source>Client</source>
        <translation>Kunde</translation>
    </message>
    <message>
        <source>Access</source>
        <translation>Zugang</translation>
    </message>
    <message>
        <source>Scaffold</source>
        <translation>Gerüst</translation>
    </message>
    <message>
        <source>needed</source>
        <translation>nötig</translation>
    </message>
    <message>
        <source>not foreseen: decide on the place</source>
        <translation>nicht vorgesehen: vor Ort entscheiden</translation>
    </message>
    <message>
        <source>Roof condition</source>
        <translation>Zustand des Dachs</translation>
    </message>
    <message>
        <source>Collector</source>
        <translation>Kollektor</translation>
    </message>
    <message>
        <source>Fixing</source>
        <translation>Befestigung</translation>
    </message>
    <message>
        <source>%1, %2 (%3), factory charge %4</source>
        <translation>%1, %2 (%3), Werksfüllung %4</translation>
    </message>
    <message>
        <source>%1, %2, %3 filled</source>
        <translation>%1, %2, gefüllt %3</translation>
    </message>
    <message>
        <source>Before you start: hazards and checks</source>
        <translation>Vor dem Beginn: Gefahren und Prüfungen</translation>
    </message>
    <message>
        <source>Mind besides</source>
        <translation>Außerdem beachten</translation>
    </message>
    <message>
        <source>Set-out: </source>
        <translation>Aufmaß: </translation>
    </message>
    <message>
        <source>No collector is placed in this choice.</source>
        <translation>In dieser Wahl ist kein Kollektor gesetzt.</translation>
    </message>
    <message>
        <source>Pipe run</source>
        <translation>Leitungsführung</translation>
    </message>
    <message>
        <source>Lengths run along the centre line from collector to block. Both tubes have the same legs. Cut when the place is measured, not from this list alone.</source>
        <translation>Längen in der Rohrachse vom Kollektor zum Block. Beide Rohre haben dieselben Strecken. Erst schneiden, wenn am Ort gemessen ist, nicht allein nach dieser Liste.</translation>
    </message>
    <message>
        <source>The work in order</source>
        <translation>Die Arbeit der Reihe nach</translation>
    </message>
    <message>
        <source>Tick each step when it is done. At a hold point the work stops until it is signed.</source>
        <translation>Jeden Schritt abhaken, wenn er getan ist. Am Haltepunkt ruht die Arbeit, bis unterschrieben ist.</translation>
    </message>
    <message>
        <source>Not to be issued: has a stop</source>
        <translation>Nicht ausgeben: hat einen Stopp</translation>
    </message>
    <message>
        <source>Do not build from this sheet. What must be changed is named below.</source>
        <translation>Nach diesem Blatt nicht bauen. Was zu ändern ist, steht unten.</translation>
    </message>
    <message>
        <source>Hand over</source>
        <translation>Übergabe</translation>
    </message>
    <message>
        <source>The system was fitted and tested as on this sheet; deviations are written on it.</source>
        <translation>Die Anlage wurde nach diesem Blatt montiert und geprüft; Abweichungen sind darauf vermerkt.</translation>
    </message>
    <message>
        <source>Fitter</source>
        <translation>Monteur</translation>
    </message>
    <message>
        <source>Electrician</source>
        <translation>Elektrofachkraft</translation>
    </message>
    <message>
        <source>not reached: </source>
        <translation>nicht erreicht: </translation>
    </message>
    <message>
        <source> to </source>
        <translation> bis </translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>Expected</source>
        <translation>Erwartet</translation>
    </message>
    <message>
        <source>Read</source>
        <translation>Gelesen</translation>
    </message>
    <message>
        <source>Instrument, time</source>
        <translation>Messgerät, Uhrzeit</translation>
    </message>
    <message>
        <source>Usual day in %1: air %2, light on the plate %3, wind %4</source>
        <translation>Üblicher Tag im %1: Luft %2, Licht auf der Platte %3, Wind %4</translation>
    </message>
    <message>
        <source>First heating, %1 to %2</source>
        <translation>Erstes Aufheizen, %1 bis %2</translation>
    </message>
    <message>
        <source>Readings on the day</source>
        <translation>Messwerte am Tag</translation>
    </message>
    <message>
        <source>as in step %1</source>
        <translation>wie in Schritt %1</translation>
    </message>
    <message>
        <source>Pressure hold, start: bar and °C</source>
        <translation>Druckprobe, Beginn: bar und °C</translation>
    </message>
    <message>
        <source>Pressure hold, end: bar and °C</source>
        <translation>Druckprobe, Ende: bar und °C</translation>
    </message>
    <message>
        <source>as start, corrected for temperature</source>
        <translation>wie zu Beginn, temperaturkorrigiert</translation>
    </message>
    <message>
        <source>Vacuum at the end: Pa and °C</source>
        <translation>Vakuum am Ende: Pa und °C</translation>
    </message>
    <message>
        <source>Vacuum after shut-off: Pa and °C</source>
        <translation>Vakuum nach Absperren: Pa und °C</translation>
    </message>
    <message>
        <source>Extra charge weighed in</source>
        <translation>Nachgefüllt nach Waage</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>Insulation resistance</source>
        <translation>Isolationswiderstand</translation>
    </message>
    <message>
        <source>1 MΩ or more at 500 V</source>
        <translation>1 MΩ oder mehr bei 500 V</translation>
    </message>
    <message>
        <source>Earth resistance</source>
        <translation>Erdungswiderstand</translation>
    </message>
    <message>
        <source>as the local rule asks</source>
        <translation>wie örtlich verlangt</translation>
    </message>
    <message>
        <source>Residual current device, trip time</source>
        <translation>Fehlerstrom-Schutzschalter, Auslösezeit</translation>
    </message>
    <message>
        <source>300 ms or less at rated residual current</source>
        <translation>300 ms oder weniger bei Nennfehlerstrom</translation>
    </message>
    <message>
        <source>up to %1</source>
        <translation>bis %1</translation>
    </message>
    <message>
        <source>Supply current, running</source>
        <translation>Stromaufnahme im Betrieb</translation>
    </message>
    <message>
        <source>Suction temperature</source>
        <translation>Sauggastemperatur</translation>
    </message>
    <message>
        <source>below the plate's surroundings</source>
        <translation>unter der Umgebung des Kollektors</translation>
    </message>
    <message>
        <source>Discharge temperature</source>
        <translation>Heißgastemperatur</translation>
    </message>
    <message>
        <source>Outdoor temperature</source>
        <translation>Außentemperatur</translation>
    </message>
    <message>
        <source>note it</source>
        <translation>notieren</translation>
    </message>
    <message>
        <source>Water temperature, set-point</source>
        <translation>Wassertemperatur, Solltemperatur</translation>
    </message>
    <message>
        <source>From cold to set-point without draw-off</source>
        <translation>Von kalt auf Solltemperatur ohne Zapfung</translation>
    </message>
    <message>
        <source>Good light: 800 W/m², 20 °C</source>
        <translation>Gutes Licht: 800 W/m², 20 °C</translation>
    </message>
    <message>
        <source>Fair light: 400 W/m², 15 °C</source>
        <translation>Mäßiges Licht: 400 W/m², 15 °C</translation>
    </message>
    <message>
        <source>Poor: night, 2 °C</source>
        <translation>Schlecht: Nacht, 2 °C</translation>
    </message>
    <message>
        <source>Shown or given to the client</source>
        <translation>Dem Kunden gezeigt oder übergeben</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Hinweis</translation>
    </message>
    <message>
        <source>Where to switch off: breaker, isolator, control</source>
        <translation>Wo abgeschaltet wird: Leitungsschutz, Trennschalter, Regler</translation>
    </message>
    <message>
        <source>Mixing valve: what it is for, set to, °C</source>
        <translation>Mischventil: wozu, eingestellt auf, °C</translation>
    </message>
    <message>
        <source>Safety valve: lifted, drips while heating, never shut or plugged</source>
        <translation>Sicherheitsventil: gelüftet, tropft beim Heizen, nie absperren oder verschließen</translation>
    </message>
    <message>
        <source>Papers handed over: booklet, record, makers' sheets</source>
        <translation>Papiere übergeben: Heft, Protokoll, Blätter der Hersteller</translation>
    </message>
    <message>
        <source>Whom to call: name, telephone</source>
        <translation>Wen anrufen: Name, Telefon</translation>
    </message>
    <message>
        <source>Next service: month and year</source>
        <translation>Nächste Wartung: Monat und Jahr</translation>
    </message>
    <message>
        <source>Hand-over to the client</source>
        <translation>Übergabe an den Kunden</translation>
    </message>
    <message>
        <source>%1 wall</source>
        <translation>%1 Dämmdicke</translation>
    </message>
    <message>
        <source>%1 wall on the suction tube</source>
        <translation>%1 Dämmdicke auf der Saugleitung</translation>
    </message>
    <message>
        <source>%1 wall on the suction tube, %2 on the small one</source>
        <translation>%1 Dämmdicke auf der Saugleitung, %2 auf der dünnen</translation>
    </message>
    <message>
        <source>, %1 wide</source>
        <translation>, Durchmesser %1</translation>
    </message>
    <message>
        <source>, %1 wide and %2 deep</source>
        <translation>, Durchmesser %1, %2 tief</translation>
    </message>
    <message>
        <source>, to the torque its maker names</source>
        <translation>, mit dem Drehmoment des Herstellers</translation>
    </message>
    <message>
        <source>, to %1</source>
        <translation>, mit %1</translation>
    </message>
    <message>
        <source>to the fitting maker's torque</source>
        <translation>nach Hersteller der Verschraubung</translation>
    </message>
    <message>
        <source>long side</source>
        <translation>langen Seite</translation>
    </message>
    <message>
        <source>short side</source>
        <translation>kurzen Seite</translation>
    </message>
    <message>
        <source>lower side</source>
        <translation>unteren Seite</translation>
    </message>
    <message>
        <source>Two persons</source>
        <translation>Zu zweit</translation>
    </message>
    <message>
        <source>Certified for refrigerants</source>
        <translation>Mit Kältemittel-Sachkunde</translation>
    </message>
    <message>
        <source>Licensed electrician</source>
        <translation>Elektrofachkraft</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>Work at height</source>
        <translation>Absturz</translation>
    </message>
    <message>
        <source>Edge protection, scaffold or tower first; two persons for the plate; not in wind, wet or frost.</source>
        <translation>Erst Seitenschutz, Gerüst oder Fahrgerüst; den Kollektor zu zweit; nicht bei Wind, Nässe oder Frost.</translation>
    </message>
    <message>
        <source>Pressure</source>
        <translation>Druck</translation>
    </message>
    <message>
        <source>Dry nitrogen only, regulator set, never above {max_pressure}. Goggles. Stand aside when a valve opens.</source>
        <translation>Nur trockener Stickstoff, Druckminderer eingestellt, nie über {max_pressure}. Schutzbrille. Beim Öffnen eines Ventils zur Seite treten.</translation>
    </message>
    <message>
        <source>Highly flammable refrigerant: {refrigerant} ({safety_class})</source>
        <translation>Hochentzündliches Kältemittel: {refrigerant} ({safety_class})</translation>
    </message>
    <message>
        <source>{total_charge} in the circuit. No flame, no spark, no smoking; air the room; detector on; tools fit for it. Only persons trained for flammable refrigerants.</source>
        <translation>{total_charge} im Kreis. Keine Flamme, kein Funke, nicht rauchen; Raum lüften; Gasmelder an; geeignetes Werkzeug. Nur Personen, die für brennbare Kältemittel geschult sind.</translation>
    </message>
    <message>
        <source>Mildly flammable refrigerant: {refrigerant} ({safety_class})</source>
        <translation>Schwer entflammbares Kältemittel: {refrigerant} ({safety_class})</translation>
    </message>
    <message>
        <source>{total_charge} in the circuit. No flame where it is opened; air the room; detector on.</source>
        <translation>{total_charge} im Kreis. Keine Flamme, wo es geöffnet wird; Raum lüften; Gasmelder an.</translation>
    </message>
    <message>
        <source>Refrigerant {refrigerant} ({safety_class})</source>
        <translation>Kältemittel {refrigerant} ({safety_class})</translation>
    </message>
    <message>
        <source>{total_charge} in the circuit. Liquid burns the skin by cold, the gas displaces air: gloves, goggles, air the room. Only persons certified for refrigerants.</source>
        <translation>{total_charge} im Kreis. Flüssigkeit verbrennt die Haut durch Kälte, das Gas verdrängt die Luft: Handschuhe, Schutzbrille, lüften. Nur Personen mit Kältemittel-Sachkunde.</translation>
    </message>
    <message>
        <source>Electricity</source>
        <translation>Strom</translation>
    </message>
    <message>
        <source>Connection by a licensed person, after the circuit is charged. Lock off and test dead before any cover comes off.</source>
        <translation>Anschluss durch eine Elektrofachkraft, nach dem Füllen des Kreises. Freischalten und Spannungsfreiheit feststellen, bevor eine Abdeckung abgenommen wird.</translation>
    </message>
    <message>
        <source>Hot water and hot metal</source>
        <translation>Heißes Wasser und heißes Metall</translation>
    </message>
    <message>
        <source>Water over 60 °C scalds in seconds: mixing valve before use. The discharge tube burns; a plate in the sun too.</source>
        <translation>Wasser über 60 °C verbrüht in Sekunden: vor dem Gebrauch Thermomischer. Die Heißgasleitung verbrennt, ein Kollektor in der Sonne auch.</translation>
    </message>
    <message>
        <source>Drinking water</source>
        <translation>Trinkwasser</translation>
    </message>
    <message>
        <source>Clean tools and parts. Legionella: hold the store hot as the local rule asks, flush what stood for days.</source>
        <translation>Sauberes Werkzeug, saubere Teile. Legionellen: Speicher so heiß halten, wie es örtlich verlangt ist; spülen, was tagelang stand.</translation>
    </message>
    <message>
        <source>, %1 of ballast a point</source>
        <translation>, %1 Ballast je Punkt</translation>
    </message>
    <message>
        <source>, %1 screws %2 × %3 mm in the timber a point</source>
        <translation>, %1 Schrauben %2 × %3 mm im Holz je Punkt</translation>
    </message>
    <message>
        <source>; hole %1</source>
        <translation>; Loch %1</translation>
    </message>
    <message>
        <source>; torque %1</source>
        <translation>; Drehmoment %1</translation>
    </message>
    <message>
        <source>Fixing points, in millimetres along the surface from the edges named</source>
        <translation>Befestigungspunkte, in Millimetern auf der Fläche ab den genannten Kanten</translation>
    </message>
    <message>
        <source>Point</source>
        <translation>Nr.</translation>
    </message>
    <message>
        <source>Across, from edge</source>
        <translation>Quer, ab Kante</translation>
    </message>
    <message>
        <source>Up or down, from edge</source>
        <translation>Auf/ab, ab Kante</translation>
    </message>
    <message>
        <source>On rafter</source>
        <translation>Im Holz</translation>
    </message>
    <message>
        <source>Pull, shear kN</source>
        <translation>Zug, Schub kN</translation>
    </message>
    <message>
        <source>Hold used</source>
        <translation>Auslastung</translation>
    </message>
    <message>
        <source>; all on rafters</source>
        <translation>; alle auf Sparren</translation>
    </message>
    <message>
        <source>◆ worst </source>
        <translation>◆ max. </translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>No fixing points are worked out for this surface.</source>
        <translation>Für diese Fläche sind keine Befestigungspunkte berechnet.</translation>
    </message>
    <message>
        <source>Fixing: </source>
        <translation>Befestigung: </translation>
    </message>
    <message>
        <source>Hole: drill x depth, as the method's data ask; verify with its maker. </source>
        <translation>Loch: Bohrer × Tiefe nach den Daten der Befestigung; beim Hersteller prüfen. </translation>
    </message>
    <message>
        <source>Hole: the method's data ask for none. </source>
        <translation>Loch: nach den Daten der Befestigung keines. </translation>
    </message>
    <message>
        <source>Torque: not told in the method's data, ask its maker. </source>
        <translation>Drehmoment: in den Daten der Befestigung nicht genannt, Hersteller fragen. </translation>
    </message>
    <message>
        <source>Pull and shear are design values for one point, worst of wind, snow and weight; 'hold used' is their share of what the point holds. ◆ and bold: the worst point of each collector; ■: over what it holds. Dimensions were moved to the rafters as surveyed: check them on the place.</source>
        <translation>Zug und Schub sind Bemessungswerte für einen Punkt, ungünstigstes aus Wind, Schnee und Gewicht; „Auslastung“ ist ihr Anteil an dem, was der Punkt hält. ◆ und fett: der höchstbelastete Punkt jedes Kollektors; ■: mehr, als er hält. Die Maße wurden auf die aufgemessenen Sparren verschoben: vor Ort prüfen.</translation>
    </message>
    <message>
        <source>foot of leg %1</source>
        <translation>Fuß von Strecke %1</translation>
    </message>
    <message>
        <source>leg %1 at %2</source>
        <translation>Strecke %1 bei %2</translation>
    </message>
    <message>
        <source>Cut list of the run</source>
        <translation>Zuschnitt der Leitung</translation>
    </message>
    <message>
        <source>Leg</source>
        <translation>Nr.</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Rise</source>
        <translation>Anstieg</translation>
    </message>
    <message>
        <source>Ends at</source>
        <translation>Endet an</translation>
    </message>
    <message>
        <source>Cut</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>Liquid tube</source>
        <translation>Flüssigkeitsrohr</translation>
    </message>
    <message>
        <source>%1, coil of %2</source>
        <translation>%1, Ring %2</translation>
    </message>
    <message>
        <source>Suction tube</source>
        <translation>Saugrohr</translation>
    </message>
    <message>
        <source>Insulation</source>
        <translation>Dämmung</translation>
    </message>
    <message>
        <source>%1 on the suction tube, %2 on the small tube</source>
        <translation>%1 auf dem Saugrohr, %2 auf dem dünnen Rohr</translation>
    </message>
    <message>
        <source>Allow besides</source>
        <translation>Dazu rechnen</translation>
    </message>
    <message>
        <source>%1 at the collector, %2 at the block, %3 for each oil trap</source>
        <translation>%1 am Kollektor, %2 am Block, %3 je Ölbogen</translation>
    </message>
    <message>
        <source>Oil traps</source>
        <translation>Ölbögen</translation>
    </message>
    <message>
        <source>Total charge</source>
        <translation>Gesamtfüllung</translation>
    </message>
    <message>
        <source>%1, as carbon dioxide %2</source>
        <translation>%1, CO₂-Äquivalent %2</translation>
    </message>
    <message>
        <source>Cylinder's place</source>
        <translation>Platz des Speichers</translation>
    </message>
    <message>
        <source>No place is chosen.</source>
        <translation>Kein Platz gewählt.</translation>
    </message>
    <message>
        <source>Service</source>
        <translation>Anschluss</translation>
    </message>
    <message>
        <source>As surveyed</source>
        <translation>Wie aufgenommen</translation>
    </message>
    <message>
        <source>Needed</source>
        <translation>Nötig</translation>
    </message>
    <message>
        <source>Checked</source>
        <translation>Geprüft</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Platz</translation>
    </message>
    <message>
        <source>%1 wide, %2 high</source>
        <translation>%1 breit, %2 hoch</translation>
    </message>
    <message>
        <source>Headroom</source>
        <translation>Raumhöhe</translation>
    </message>
    <message>
        <source>cylinder and room to draw the anode</source>
        <translation>Speicher und Platz zum Ziehen der Anode</translation>
    </message>
    <message>
        <source>Free width × depth</source>
        <translation>Frei Breite × Tiefe</translation>
    </message>
    <message>
        <source>Floor carries</source>
        <translation>Boden trägt</translation>
    </message>
    <message>
        <source>, checked</source>
        <translation>, geprüft</translation>
    </message>
    <message>
        <source>, assumed: check</source>
        <translation>, angenommen: prüfen</translation>
    </message>
    <message>
        <source>kg filled</source>
        <translation>kg gefüllt</translation>
    </message>
    <message>
        <source>Own supply circuit</source>
        <translation>Eigener Stromkreis</translation>
    </message>
    <message>
        <source>breaker %1, RCD %2; cable %3, %4, drop %5 %</source>
        <translation>LS %1, FI %2; Kabel %3, %4, Spannungsfall %5 %</translation>
    </message>
    <message>
        <source>Earth</source>
        <translation>Erdung</translation>
    </message>
    <message>
        <source>as the wiring rules ask</source>
        <translation>nach den Errichtungsregeln</translation>
    </message>
    <message>
        <source>Cold water</source>
        <translation>Kaltwasser</translation>
    </message>
    <message>
        <source>Hot water</source>
        <translation>Warmwasser</translation>
    </message>
    <message>
        <source>through the mixing valve</source>
        <translation>über den Thermomischer</translation>
    </message>
    <message>
        <source>Drain</source>
        <translation>Abfluss</translation>
    </message>
    <message>
        <source>open tundish for valve and condensate</source>
        <translation>offener Trichter für Ventil und Kondensat</translation>
    </message>
    <message>
        <source>Recirculation</source>
        <translation>Zirkulation</translation>
    </message>
    <message>
        <source>port there</source>
        <translation>Anschluss da</translation>
    </message>
    <message>
        <source>no port</source>
        <translation>kein Anschluss</translation>
    </message>
    <message>
        <source>Ventilated</source>
        <translation>Belüftet</translation>
    </message>
    <message>
        <source>Ignition source</source>
        <translation>Zündquelle</translation>
    </message>
    <message>
        <source>none seen</source>
        <translation>keine gesehen</translation>
    </message>
    <message>
        <source>Hazards and access</source>
        <translation>Gefahren und Zugang</translation>
    </message>
    <message>
        <source>Read page 1 and walk the site with it. Agree with the client who stays clear of where, and for how long.</source>
        <translation>Seite 1 lesen und damit die Baustelle abgehen. Mit dem Kunden ausmachen, wer wo und wie lange wegbleibt.</translation>
    </message>
    <message>
        <source>What the survey did not show is cheapest to find before tools are out.</source>
        <translation>Was die Aufnahme nicht gezeigt hat, findet man am billigsten, bevor Werkzeug ausgepackt ist.</translation>
    </message>
    <message>
        <source>Put up the scaffold or edge protection named on page 1 before anybody works on the surface.</source>
        <translation>Gerüst oder Seitenschutz von Seite 1 aufbauen, bevor jemand auf der Fläche arbeitet.</translation>
    </message>
    <message>
        <source>A fall is the worst thing that can happen on this job. A harness does not replace an edge that holds.</source>
        <translation>Ein Absturz ist das Schlimmste, was hier geschehen kann. Ein Gurt ersetzt keine Kante, die hält.</translation>
    </message>
    <message>
        <source>Secure the roof: edge protection or scaffold, roof ladder, nobody below. Not in wind, rain, frost or on moss.</source>
        <translation>Dach sichern: Seitenschutz oder Gerüst, Dachleiter, niemand darunter. Nicht bei Wind, Regen, Frost oder auf Moos.</translation>
    </message>
    <message>
        <source>A plate catches wind like a sail: two persons carry it, none throws or lowers it free.</source>
        <translation>Ein Kollektor fängt den Wind wie ein Segel: zu zweit tragen, nicht werfen, nicht frei ablassen.</translation>
    </message>
    <message>
        <source>Set ladder or tower on firm ground, tied; keep the foot of the wall clear while the plate goes up.</source>
        <translation>Leiter oder Fahrgerüst auf festen Grund stellen und anbinden; den Wandfuß frei halten, solange der Kollektor hochgeht.</translation>
    </message>
    <message>
        <source>A ladder that slips takes the plate along.</source>
        <translation>Eine Leiter, die rutscht, nimmt den Kollektor mit.</translation>
    </message>
    <message>
        <source>Look for overhead lines within reach of ladder, plate and tube. Less than the local safe distance: stop and ask the network operator.</source>
        <translation>Nach Freileitungen in Reichweite von Leiter, Kollektor und Rohr sehen. Weniger als der örtliche Schutzabstand: halt, Netzbetreiber fragen.</translation>
    </message>
    <message>
        <source>A plate or a length of copper makes a good conductor in the wrong place.</source>
        <translation>Ein Blech oder eine Länge Kupfer ist am falschen Ort ein guter Leiter.</translation>
    </message>
    <message>
        <source>Keep flames, sparks and switches that are not sealed away from every place where refrigerant is opened; air the room; have a gas detector for {refrigerant} on, low down.</source>
        <translation>Flammen, Funken und offene Schalter von jeder Stelle fernhalten, an der Kältemittel geöffnet wird; Raum lüften; Gasmelder für {refrigerant} an, unten am Boden.</translation>
    </message>
    <message>
        <source>{refrigerant} ({safety_class}) burns and is heavier than air: it gathers in pits and drains.</source>
        <translation>{refrigerant} ({safety_class}) brennt und ist schwerer als Luft: es sammelt sich in Gruben und Abläufen.</translation>
    </message>
    <message>
        <source>Check that the room's permanent opening of at least {opening} to the next room is there and free.</source>
        <translation>Prüfen, dass die ständige Öffnung des Raums von mindestens {opening} zum Nachbarraum da und frei ist.</translation>
    </message>
    <message>
        <source>The charge is allowed in this room only with it.</source>
        <translation>Nur mit ihr ist die Füllmenge in diesem Raum zulässig.</translation>
    </message>
    <message>
        <source>Check the place</source>
        <translation>Den Ort prüfen</translation>
    </message>
    <message>
        <source>Compare the drawing with the surface: edges, openings, obstacles and covering. Measure two dimensions of the set-out table back.</source>
        <translation>Zeichnung mit der Fläche vergleichen: Kanten, Öffnungen, Hindernisse und Deckung. Zwei Maße der Aufmaßtabelle nachmessen.</translation>
    </message>
    <message>
        <source>If one is out by more than 30 mm, stop and replan: points would miss what holds them.</source>
        <translation>Weicht eines um mehr als 30 mm ab: halt und neu planen, die Punkte träfen nicht, was sie hält.</translation>
    </message>
    <message>
        <source>Check with compass and inclinometer where the plate looks to and how it is tilted, as on page 1. Never lay it flat.</source>
        <translation>Mit Kompass und Neigungsmesser prüfen, wohin der Kollektor blickt und wie er geneigt ist, wie auf Seite 1. Nie flach hinlegen.</translation>
    </message>
    <message>
        <source>Flat, rain, frost and leaves stay on it and oil does not come back. Look also for shade that grew since the survey.</source>
        <translation>Flach bleiben Regen, Reif und Laub liegen und das Öl kommt nicht zurück. Auch nach Schatten sehen, der seit der Aufnahme gewachsen ist.</translation>
    </message>
    <message>
        <source>Find the rafters or studs and check width and soundness at two points (test hole or from inside).</source>
        <translation>Sparren oder Ständer suchen und an zwei Stellen Breite und Zustand prüfen (Probebohrung oder von innen).</translation>
    </message>
    <message>
        <source>The loads in the table assume sound timber of the class in the plan. Rot, splits or trussed members with nail plates: stop.</source>
        <translation>Die Lasten der Tabelle setzen gesundes Holz der geplanten Klasse voraus. Fäulnis, Risse oder Nagelplattenbinder: halt.</translation>
    </message>
    <message>
        <source>Tap the wall and drill a test hole beside the first point: solid, hollow or aerated, how thick render and insulation are.</source>
        <translation>Wand abklopfen und neben dem ersten Punkt probebohren: voll, Lochstein oder Porenbeton, wie dick Putz und Dämmung sind.</translation>
    </message>
    <message>
        <source>The loads in the table hold for the masonry in the plan. In another wall this anchor holds less: stop and ask its maker.</source>
        <translation>Die Lasten der Tabelle gelten für das geplante Mauerwerk. In anderer Wand hält dieser Anker weniger: halt, Hersteller fragen.</translation>
    </message>
    <message>
        <source>Look whether the seams are sound, closed and of the shape the clamp is made for, and where the sheets are held fast.</source>
        <translation>Prüfen, ob die Falze gesund, geschlossen und von der Form sind, für die die Klemme gemacht ist, und wo die Scharen fest gehalten sind.</translation>
    </message>
    <message>
        <source>The clamp holds the seam, and only the clips below hold the seam on the roof.</source>
        <translation>Die Klemme hält den Falz, und nur die Hafte darunter halten den Falz am Dach.</translation>
    </message>
    <message>
        <source>Check the roof's covering and what carries it: no blisters, no ponds, drains free; the load of plate, frame, ballast and snow agreed with whoever answers for the structure.</source>
        <translation>Abdichtung und Tragwerk prüfen: keine Blasen, kein stehendes Wasser, Abläufe frei; die Last aus Kollektor, Gestell, Ballast und Schnee mit dem abgestimmt, der für die Statik steht.</translation>
    </message>
    <message>
        <source>Ballast on a weak deck or soft insulation sinks, ponds and leaks.</source>
        <translation>Ballast auf schwacher Decke oder weicher Dämmung sinkt ein, staut Wasser und macht undicht.</translation>
    </message>
    <message>
        <source>Check paving, slab or soil under the frame: firm, drained, no cable or pipe below the footings.</source>
        <translation>Belag, Platte oder Boden unter dem Gestell prüfen: fest, entwässert, keine Kabel und Rohre unter den Fundamenten.</translation>
    </message>
    <message>
        <source>A foot that sinks tilts the plate away from its level side.</source>
        <translation>Ein Fuß, der sinkt, kippt den Kollektor aus der Waage.</translation>
    </message>
    <message>
        <source>Walk the run: the shortest way that the drawing allows, free of flues, hot pipes and places where nails will come.</source>
        <translation>Leitungsweg abgehen: der kürzeste, den die Zeichnung erlaubt, frei von Abgasrohren, heißen Leitungen und Stellen, in die einmal genagelt wird.</translation>
    </message>
    <message>
        <source>Every metre more costs heat and charge.</source>
        <translation>Jeder Meter mehr kostet Wärme und Füllung.</translation>
    </message>
    <message>
        <source>At the cylinder spot check headroom, free space, floor, supply, cold, hot, drain and earth against the list on this sheet.</source>
        <translation>Am Speicherplatz Raumhöhe, freie Fläche, Boden, Strom, Kaltwasser, Warmwasser, Abfluss und Erdung mit der Liste dieses Blatts vergleichen.</translation>
    </message>
    <message>
        <source>A filled cylinder weighs {filled_mass}: what the floor carries is measured or asked for, not guessed.</source>
        <translation>Ein gefüllter Speicher wiegt {filled_mass}: was der Boden trägt, wird gemessen oder erfragt, nicht geschätzt.</translation>
    </message>
    <message>
        <source>Check where the recirculation comes back and that it can be shut.</source>
        <translation>Prüfen, wo die Zirkulation zurückkommt und dass sie absperrbar ist.</translation>
    </message>
    <message>
        <source>It goes to its own port, not into the cold inlet.</source>
        <translation>Sie gehört an den eigenen Anschluss, nicht in den Kaltwassereingang.</translation>
    </message>
    <message>
        <source>Unpack and look over plate, block and cylinder; enter their numbers as '{serial_number}'. Leave all caps on. A plate that has lost its holding charge or has a dent in a channel goes back.</source>
        <translation>Kollektor, Block und Speicher auspacken und ansehen; ihre Nummern als „{serial_number}“ eintragen. Alle Kappen bleiben drauf. Ein Kollektor ohne Schutzgas oder mit Delle im Kanal geht zurück.</translation>
    </message>
    <message>
        <source>A leak found on the ground costs an hour, on the roof a day.</source>
        <translation>Ein Leck am Boden gefunden kostet eine Stunde, auf dem Dach einen Tag.</translation>
    </message>
    <message>
        <source>Mark, drill, sleeve and seal</source>
        <translation>Anreißen, bohren, Hülsen setzen und abdichten</translation>
    </message>
    <message>
        <source>Mark and set the fixing points</source>
        <translation>Anreißen und Befestigungspunkte setzen</translation>
    </message>
    <message>
        <source>Mark all {points} fixing points from the set-out table, from the two edges named. Check both diagonals of each plate's set of points: equal within 5 mm.</source>
        <translation>Alle {points} Befestigungspunkte nach der Aufmaßtabelle anreißen, von den zwei genannten Kanten. Beide Diagonalen der Punkte jedes Kollektors prüfen: auf 5 mm gleich.</translation>
    </message>
    <message>
        <source>A plate forced onto a crooked frame is under strain for life.</source>
        <translation>Ein Kollektor auf schiefem Rahmen steht sein Leben lang unter Spannung.</translation>
    </message>
    <message>
        <source>Have the maker's sheet of '{method}' at hand; where it says otherwise than the steps here, it goes first.</source>
        <translation>Das Blatt des Herstellers zu „{method}“ zur Hand haben; sagt es anderes als diese Schritte, geht es vor.</translation>
    </message>
    <message>
        <source>Push up or lift the tiles at each point and lay them where they cannot slide.</source>
        <translation>An jedem Punkt die Ziegel hochschieben oder abnehmen und so ablegen, dass sie nicht rutschen.</translation>
    </message>
    <message>
        <source>A tile that slides off kills whoever stands below.</source>
        <translation>Ein Ziegel, der abrutscht, erschlägt, wer darunter steht.</translation>
    </message>
    <message>
        <source>Set each hook on the middle of its rafter; pack it until its arm passes over the tile below with air between, 5 mm or more.</source>
        <translation>Jeden Haken mitten auf seinen Sparren setzen und unterfüttern, bis sein Arm mit Luft über den unteren Ziegel führt, 5 mm oder mehr.</translation>
    </message>
    <message>
        <source>A hook that presses on the tile below breaks it under the first snow.</source>
        <translation>Ein Haken, der auf den unteren Ziegel drückt, bricht ihn beim ersten Schnee.</translation>
    </message>
    <message>
        <source>Set each hook flat on the middle of its rafter, its arm free of the covering below.</source>
        <translation>Jeden Haken flach mitten auf seinen Sparren setzen, der Arm frei von der Deckung darunter.</translation>
    </message>
    <message>
        <source>A hook that presses on the covering breaks it under the first snow.</source>
        <translation>Ein Haken, der auf die Deckung drückt, bricht sie beim ersten Schnee.</translation>
    </message>
    <message>
        <source>Screw each point down: {screws} screws of {screw}, {grip} of thread in the timber, pre-drilled near ends. Where the timber splits set none: move along the rafter and note it on the drawing.</source>
        <translation>Jeden Punkt anschrauben: {screws} Schrauben {screw}, {grip} Gewinde im Holz, an Enden vorgebohrt. Wo das Holz reißt, keine setzen: auf dem Sparren versetzen und in der Zeichnung vermerken.</translation>
    </message>
    <message>
        <source>Pull-out goes with the threaded length in sound wood, and is nothing in a split.</source>
        <translation>Der Auszug hängt an der Gewindelänge in gesundem Holz, im Riss ist er nichts.</translation>
    </message>
    <message>
        <source>Grind a notch into the underside of the tile above, never its weather face, so that it lies flat again; on the ground or with goggles and mask.</source>
        <translation>Den oberen Ziegel an der Unterseite ausschleifen, nie an der Wetterseite, bis er wieder flach liegt; am Boden oder mit Schutzbrille und Maske.</translation>
    </message>
    <message>
        <source>A tile that stands up lets driven rain and snow in and lifts in wind.</source>
        <translation>Ein Ziegel, der absteht, lässt Schlagregen und Flugschnee ein und hebt bei Wind ab.</translation>
    </message>
    <message>
        <source>Drill at the crown or another high part of the covering, never in the trough where water runs, at a right angle{drill_words}. Masonry and slate without hammer.</source>
        <translation>Am Hochpunkt der Deckung bohren, nie in der wasserführenden Mulde, rechtwinklig{drill_words}. Ziegel und Schiefer ohne Schlag.</translation>
    </message>
    <message>
        <source>Every hole in the water's way leaks some day.</source>
        <translation>Jedes Loch im Wasserlauf wird eines Tages undicht.</translation>
    </message>
    <message>
        <source>Clear the dust from hole and covering, set the sleeve through covering and underlay, its lower seal tight on the underlay.</source>
        <translation>Bohrmehl aus Loch und Deckung entfernen, die Hülse durch Deckung und Unterspannbahn setzen, die untere Dichtung fest auf der Bahn.</translation>
    </message>
    <message>
        <source>Without a sleeve the screw crushes tile and underlay, and water that passes the tile goes on inwards.</source>
        <translation>Ohne Hülse zerdrückt die Schraube Ziegel und Bahn, und Wasser unter dem Ziegel läuft nach innen weiter.</translation>
    </message>
    <message>
        <source>Drive the double-ended screw into the middle of the timber to its mark: {grip} of thread in the wood. Set the sealing washer and tighten until the seal swells evenly, no further{torque_words}.</source>
        <translation>Die Stockschraube mitten ins Holz bis zur Marke eindrehen: {grip} Gewinde im Holz. Dichtscheibe setzen und anziehen, bis die Dichtung gleichmäßig quillt, nicht weiter{torque_words}.</translation>
    </message>
    <message>
        <source>Too loose leaks, too tight squeezes the seal out and it leaks next winter.</source>
        <translation>Zu lose leckt, zu fest quetscht die Dichtung heraus und sie leckt im nächsten Winter.</translation>
    </message>
    <message>
        <source>Clamp to the seam without drilling or bending it; clamp and sheet of metals that suit each other{torque_words}.</source>
        <translation>Am Falz klemmen, ohne zu bohren oder ihn zu verbiegen; Klemme und Blech aus verträglichen Metallen{torque_words}.</translation>
    </message>
    <message>
        <source>A hole in the seam leaks and ends the roof's warranty; copper above zinc or aluminium eats it.</source>
        <translation>Ein Loch im Falz leckt und beendet die Gewährleistung des Dachs; Kupfer über Zink oder Aluminium frisst es auf.</translation>
    </message>
    <message>
        <source>One row of clamps fixed, the others free to slide with the sheet, as the roof's maker asks.</source>
        <translation>Eine Reihe Klemmen fest, die anderen gleiten mit dem Blech, wie der Dachhersteller es verlangt.</translation>
    </message>
    <message>
        <source>A metal roof grows by a millimetre a metre between night and noon and shears what holds it fast.</source>
        <translation>Ein Blechdach wächst zwischen Nacht und Mittag einen Millimeter je Meter und schert ab, was es festhält.</translation>
    </message>
    <message>
        <source>Drill at a right angle{drill_words}, away from joints and edges; hollow blocks without hammer.</source>
        <translation>Rechtwinklig bohren{drill_words}, weg von Fugen und Kanten; Lochstein ohne Schlag.</translation>
    </message>
    <message>
        <source>A blow breaks the webs that the anchor is to hold in. A hole too deep leaves mortar without backing.</source>
        <translation>Ein Schlag bricht die Stege, in denen der Anker halten soll. Ein zu tiefes Loch lässt den Mörtel ohne Rückhalt.</translation>
    </message>
    <message>
        <source>Clean each hole: blow out, brush, blow out again, until no dust comes.</source>
        <translation>Jedes Loch reinigen: ausblasen, bürsten, noch einmal ausblasen, bis kein Staub mehr kommt.</translation>
    </message>
    <message>
        <source>On dust no anchor and no mortar holds half of its load.</source>
        <translation>Auf Staub hält kein Anker und kein Mörtel auch nur die halbe Last.</translation>
    </message>
    <message>
        <source>Set sleeve or anchor to its mark, with mortar fill from the bottom; wait its setting time by the wall's temperature, then tighten with a torque wrench{torque_words}.</source>
        <translation>Hülse oder Anker bis zur Marke setzen, Mörtel vom Grund her einfüllen; Aushärtezeit nach Wandtemperatur abwarten, dann mit Drehmomentschlüssel anziehen{torque_words}.</translation>
    </message>
    <message>
        <source>Turned too early the bond is broken and nobody sees it.</source>
        <translation>Zu früh gedreht ist der Verbund gebrochen und niemand sieht es.</translation>
    </message>
    <message>
        <source>The load goes through the render into the masonry: bracket on a firm ground, render cut round it, joint sealed. Through insulation only with a spacer made for it.</source>
        <translation>Die Last geht durch den Putz ins Mauerwerk: Konsole auf festem Grund, Putz ringsum ausgeschnitten, Fuge abgedichtet. Durch Dämmung nur mit dafür gemachtem Abstandhalter.</translation>
    </message>
    <message>
        <source>Tightened onto insulation the bracket works loose; open render draws water behind it.</source>
        <translation>Auf Dämmung angezogen wird die Konsole lose; offener Putz zieht Wasser hinter sich.</translation>
    </message>
    <message>
        <source>Seal round each bracket's bolt with lasting elastic sealant, open below.</source>
        <translation>Rings um den Bolzen jeder Konsole dauerelastisch abdichten, unten offen.</translation>
    </message>
    <message>
        <source>Water in the hole freezes and bursts the brick; open below it can leave.</source>
        <translation>Wasser im Loch gefriert und sprengt den Stein; unten offen kann es ablaufen.</translation>
    </message>
    <message>
        <source>Set the frame out square, cast a footing under each foot below frost depth, and let the concrete harden before anything is tightened.</source>
        <translation>Gestell rechtwinklig ausrichten, unter jedem Fuß ein frostfreies Fundament betonieren und aushärten lassen, bevor etwas angezogen wird.</translation>
    </message>
    <message>
        <source>Soil that freezes lifts what stands in it.</source>
        <translation>Boden, der gefriert, hebt, was in ihm steht.</translation>
    </message>
    <message>
        <source>Anchor each foot into footing or slab{drill_words}, hole blown out; tighten with a torque wrench{torque_words}.</source>
        <translation>Jeden Fuß in Fundament oder Platte verankern{drill_words}, Loch ausgeblasen; mit Drehmomentschlüssel anziehen{torque_words}.</translation>
    </message>
    <message>
        <source>Paving alone holds no wind.</source>
        <translation>Ein Belag allein hält keinen Wind.</translation>
    </message>
    <message>
        <source>Where an anchor goes through a membrane, have its maker's roofer flash and seal the foot before the frame comes on.</source>
        <translation>Wo ein Anker durch eine Dachbahn geht, den Fuß vom Dachdecker einfassen und abdichten lassen, bevor das Gestell daraufkommt.</translation>
    </message>
    <message>
        <source>Below a frame nobody finds the leak again.</source>
        <translation>Unter einem Gestell findet niemand das Leck wieder.</translation>
    </message>
    <message>
        <source>Sweep the covering, lay the protective mats under every foot and tray. Pierce nothing.</source>
        <translation>Abdichtung abkehren, Schutzmatten unter jeden Fuß und jede Wanne legen. Nichts durchdringen.</translation>
    </message>
    <message>
        <source>A stone under a foot is a hole after one winter.</source>
        <translation>Ein Stein unter einem Fuß ist nach einem Winter ein Loch.</translation>
    </message>
    <message>
        <source>Set the frame out square on the mats and lay the ballast: {ballast} at each of the {points} points, weighed or counted, locked against sliding.</source>
        <translation>Gestell auf den Matten rechtwinklig ausrichten und den Ballast auflegen: {ballast} an jedem der {points} Punkte, gewogen oder gezählt, gegen Verrutschen gesichert.</translation>
    </message>
    <message>
        <source>Wind takes the plate at the point with too little. Never borrow from one point for another.</source>
        <translation>Der Wind holt den Kollektor am Punkt mit zu wenig. Nie von einem Punkt für einen anderen borgen.</translation>
    </message>
    <message>
        <source>Keep the ways of the water free: no mat, tray or slab in front of a drain or across the fall.</source>
        <translation>Wasserwege frei halten: keine Matte, Wanne oder Platte vor einem Ablauf oder quer zum Gefälle.</translation>
    </message>
    <message>
        <source>A pond weighs more than the plate and finds every seam.</source>
        <translation>Eine Pfütze wiegt mehr als der Kollektor und findet jede Naht.</translation>
    </message>
    <message>
        <source>Drill passages for the run with a slight fall to the outside, deburr, set a sleeve, and keep tube and insulation free in it.</source>
        <translation>Durchführungen für die Leitung mit leichtem Gefälle nach außen bohren, entgraten, Hülse setzen; Rohr und Dämmung liegen frei darin.</translation>
    </message>
    <message>
        <source>Copper rubbing on masonry wears through; water follows a hole that falls inwards.</source>
        <translation>Kupfer, das am Mauerwerk reibt, scheuert durch; Wasser folgt einem Loch, das nach innen fällt.</translation>
    </message>
    <message>
        <source>Seal each point and passage to the covering's own rules: underlay first, then flashing or sealing collar. Sealant alone is not a seal.</source>
        <translation>Jeden Punkt und jede Durchführung nach den Regeln der Deckung abdichten: erst die Unterspannbahn, dann Einfassung oder Manschette. Dichtstoff allein ist keine Abdichtung.</translation>
    </message>
    <message>
        <source>The client's roof must be as tight as before. Take a photograph of each before it is covered.</source>
        <translation>Das Dach des Kunden muss so dicht sein wie vorher. Jede Stelle fotografieren, bevor sie verdeckt wird.</translation>
    </message>
    <message>
        <source>Seal each passage: sleeve to wall or roof outside, tube to sleeve with a soft collar.</source>
        <translation>Jede Durchführung abdichten: Hülse außen zu Wand oder Dach, Rohr zur Hülse mit weicher Manschette.</translation>
    </message>
    <message>
        <source>What is not sealed outside runs down inside.</source>
        <translation>Was außen nicht dicht ist, läuft innen herunter.</translation>
    </message>
    <message>
        <source>Set the profiles, seal their feet where they stand on the covering, tighten crosswise, check with straight edge and spirit level.</source>
        <translation>Profile setzen, ihre Füße abdichten, wo sie auf der Deckung stehen, über Kreuz anziehen, mit Richtlatte und Wasserwaage prüfen.</translation>
    </message>
    <message>
        <source>What is crooked now pulls on the plate's channels later.</source>
        <translation>Was jetzt schief ist, zieht später an den Kanälen des Kollektors.</translation>
    </message>
    <message>
        <source>Set the profiles on the frame, tighten crosswise, check with straight edge and spirit level.</source>
        <translation>Profile auf das Gestell setzen, über Kreuz anziehen, mit Richtlatte und Wasserwaage prüfen.</translation>
    </message>
    <message>
        <source>Fixing points and seals</source>
        <translation>Befestigungspunkte und Abdichtungen</translation>
    </message>
    <message>
        <source>Every point numbered in the table is set as shown, sealed and photographed.</source>
        <translation>Jeder nummerierte Punkt der Tabelle ist gesetzt wie gezeigt, abgedichtet und fotografiert.</translation>
    </message>
    <message>
        <source>Hang the collector</source>
        <translation>Kollektor aufhängen</translation>
    </message>
    <message>
        <source>Hang the plate with its {level_side} level (spirit level on the lower edge), connections down and on the LEFT seen face-on.</source>
        <translation>Kollektor mit der {level_side} waagerecht aufhängen (Wasserwaage an der Unterkante), Anschlüsse unten und von vorn gesehen LINKS.</translation>
    </message>
    <message>
        <source>Oil comes back only from the low side. Upside down or tilted the plate floods and the compressor wears.</source>
        <translation>Öl kommt nur von der tiefen Seite zurück. Kopfüber oder verkantet läuft der Kollektor voll und der Verdichter verschleißt.</translation>
    </message>
    <message>
        <source>Hang the plate with its {level_side} level (spirit level on the lower edge), connections down and on the RIGHT seen face-on.</source>
        <translation>Kollektor mit der {level_side} waagerecht aufhängen (Wasserwaage an der Unterkante), Anschlüsse unten und von vorn gesehen RECHTS.</translation>
    </message>
    <message>
        <source>Keep the order of the plates as drawn and the clearances between them.</source>
        <translation>Reihenfolge der Kollektoren wie gezeichnet und die Abstände dazwischen einhalten.</translation>
    </message>
    <message>
        <source>Air has to pass all round.</source>
        <translation>Luft muss rundum durch.</translation>
    </message>
    <message>
        <source>Hold each connection with a second spanner when anything is turned on it. Do not step on the plate or lean a ladder on it.</source>
        <translation>Jeden Anschluss gegenhalten, wenn daran gedreht wird. Nicht auf den Kollektor treten, keine Leiter anlehnen.</translation>
    </message>
    <message>
        <source>The channels are thin sheet: a twist of the stub tears them where nobody can reach.</source>
        <translation>Die Kanäle sind dünnes Blech: ein verdrehter Stutzen reißt sie dort, wo keiner hinkommt.</translation>
    </message>
    <message>
        <source>Refrigerant lines</source>
        <translation>Kältemittelleitungen</translation>
    </message>
    <message>
        <source>Uncoil both tubes, dehydrated and capped as delivered, by rolling along the floor, never by pulling the coil open. Slide the insulation on before anything is joined: {insulation}, joints glued, no gaps.</source>
        <translation>Beide Rohre, getrocknet und verschlossen wie geliefert, auf dem Boden abrollen, nie den Ring auseinanderziehen. Dämmung aufschieben, bevor etwas verbunden wird: {insulation}, Stöße geklebt, keine Lücken.</translation>
    </message>
    <message>
        <source>A flattened tube starves the plate; a gap in the insulation drips on the ceiling below.</source>
        <translation>Ein plattes Rohr hungert den Kollektor aus; eine Lücke in der Dämmung tropft auf die Decke darunter.</translation>
    </message>
    <message>
        <source>Lay the run as drawn, bends with a bender, clips every 1.0 m level and 1.5 m upright. Caps stay on and come off only when the joint is made.</source>
        <translation>Leitung wie gezeichnet verlegen, Bögen mit dem Biegegerät, Schellen waagerecht alle 1,0 m, senkrecht alle 1,5 m. Kappen bleiben drauf und kommen erst ab, wenn verbunden wird.</translation>
    </message>
    <message>
        <source>Damp and dirt that get in now come back as a blocked valve or a burnt motor.</source>
        <translation>Feuchte und Schmutz von heute kommen als verstopftes Ventil oder verbrannter Motor wieder.</translation>
    </message>
    <message>
        <source>Let the suction line fall evenly to the block, without sags that hold oil.</source>
        <translation>Saugleitung gleichmäßig zum Block fallen lassen, ohne Säcke, in denen Öl steht.</translation>
    </message>
    <message>
        <source>Oil that lies in a sag is missing in the compressor.</source>
        <translation>Öl, das in einem Sack steht, fehlt im Verdichter.</translation>
    </message>
    <message>
        <source>Bend the oil traps into the suction line where the cut list names them; elsewhere no sags.</source>
        <translation>Ölbögen in die Saugleitung biegen, wo die Zuschnittliste sie nennt; sonst keine Säcke.</translation>
    </message>
    <message>
        <source>The gas lifts oil in short slugs from a trap; a sag elsewhere only catches it.</source>
        <translation>Aus einem Ölbogen hebt das Gas das Öl in kurzen Schüben; ein Sack anderswo fängt es nur.</translation>
    </message>
    <message>
        <source>The plate hangs below the block: lay the suction line with an oil trap at its foot and no other sags.</source>
        <translation>Der Kollektor hängt unter dem Block: Saugleitung mit einem Ölbogen am Fuß und sonst ohne Säcke verlegen.</translation>
    </message>
    <message>
        <source>Oil has to be lifted by the gas in short slugs; a sag higher up catches it.</source>
        <translation>Das Gas muss das Öl in kurzen Schüben heben; ein Sack weiter oben fängt es.</translation>
    </message>
    <message>
        <source>The plates stand side by side in the circuit: branch both lines so that each plate has the same length of tube, branches level, none above the other.</source>
        <translation>Die Kollektoren liegen im Kreis parallel: beide Leitungen so verzweigen, dass jeder Kollektor gleich lange Rohre hat, Abzweige waagerecht, keiner über dem anderen.</translation>
    </message>
    <message>
        <source>The plate with the shorter way takes the refrigerant, the other stays dry and warm.</source>
        <translation>Der Kollektor mit dem kürzeren Weg nimmt das Kältemittel, der andere bleibt trocken und warm.</translation>
    </message>
    <message>
        <source>The plates stand one after the other in the circuit: liquid into the first, its suction into the liquid connection of the next, suction line from the last.</source>
        <translation>Die Kollektoren liegen im Kreis in Reihe: Flüssigkeit in den ersten, sein Sauganschluss an den Flüssigkeitsanschluss des nächsten, Saugleitung vom letzten.</translation>
    </message>
    <message>
        <source>Crossed, one plate is passed by, and the test of tightness does not show it.</source>
        <translation>Vertauscht wird ein Kollektor umgangen, und die Dichtheitsprüfung zeigt es nicht.</translation>
    </message>
    <message>
        <source>The expansion device sits at the collector: set it upright as its arrow says, bulb clamped on the suction tube and insulated, wet cloth round it where heat is used.</source>
        <translation>Das Expansionsventil sitzt am Kollektor: senkrecht in Pfeilrichtung einbauen, Fühler auf die Saugleitung klemmen und dämmen, nasser Lappen darum, wo gelötet wird.</translation>
    </message>
    <message>
        <source>A bulb in the sun or the wind reads the weather instead of the tube.</source>
        <translation>Ein Fühler in Sonne oder Wind liest das Wetter statt das Rohr.</translation>
    </message>
    <message>
        <source>Cut to length with a tube cutter, deburr with the tube's end held down, wipe clean.</source>
        <translation>Mit dem Rohrabschneider ablängen, mit der Öffnung nach unten entgraten, sauber auswischen.</translation>
    </message>
    <message>
        <source>Swarf ends in the expansion valve.</source>
        <translation>Späne enden im Expansionsventil.</translation>
    </message>
    <message>
        <source>Slide the nut on, then flare. Look at the flare: even all round, shiny, no crack, no burr.</source>
        <translation>Bördelmutter aufschieben, dann bördeln. Bördel ansehen: rundum gleichmäßig, glänzend, kein Riss, kein Grat.</translation>
    </message>
    <message>
        <source>A nut forgotten means cutting again; a cracked flare holds for the test and leaks in winter.</source>
        <translation>Mutter vergessen heißt neu schneiden; ein gerissener Bördel hält die Probe und leckt im Winter.</translation>
    </message>
    <message>
        <source>Oil the flare's back with refrigeration oil, turn the nut on by hand over all its thread, then tighten with torque wrench and second spanner: liquid {liquid_od} {torque_liquid}, suction {suction_od} {torque_suction}. Verify with the fitting's maker.</source>
        <translation>Bördelrücken mit Kältemaschinenöl benetzen, Mutter von Hand über das ganze Gewinde drehen, dann mit Drehmomentschlüssel und Gegenhalter anziehen: Flüssig {liquid_od} {torque_liquid}, Saug {suction_od} {torque_suction}. Beim Hersteller der Verschraubung prüfen.</translation>
    </message>
    <message>
        <source>Too loose leaks at once, too tight cracks and leaks later. By feel is neither.</source>
        <translation>Zu lose leckt sofort, zu fest reißt und leckt später. Nach Gefühl ist keines von beiden.</translation>
    </message>
    <message>
        <source>Braze what is not flared with dry nitrogen flowing through the tube, fire watch and extinguisher at hand, flame kept off seals and insulation.</source>
        <translation>Was nicht gebördelt ist, unter strömendem trockenem Stickstoff hartlöten, Brandwache und Löscher bereit, Flamme weg von Dichtungen und Dämmung.</translation>
    </message>
    <message>
        <source>Without nitrogen the tube scales inside and the scale travels to the valve.</source>
        <translation>Ohne Stickstoff verzundert das Rohr innen, und der Zunder wandert zum Ventil.</translation>
    </message>
    <message>
        <source>Heat pump and cylinder</source>
        <translation>Wärmepumpe und Speicher</translation>
    </message>
    <message>
        <source>Stand the cylinder at its spot, plumb, on its feet, with room to draw anode and heater.</source>
        <translation>Speicher lotrecht auf seinen Füßen aufstellen, mit Platz zum Ziehen von Anode und Heizstab.</translation>
    </message>
    <message>
        <source>Once it is full nobody moves it.</source>
        <translation>Ist er voll, bewegt ihn keiner mehr.</translation>
    </message>
    <message>
        <source>Check the anode: fitted, wired where it has a wire, tight.</source>
        <translation>Anode prüfen: eingebaut, angeschlossen, wo sie ein Kabel hat, fest.</translation>
    </message>
    <message>
        <source>Transport loosens it.</source>
        <translation>Der Transport löst sie.</translation>
    </message>
    <message>
        <source>Look at condenser, flange and seal seat: clean, dry, no scratch; the seal new, in its groove, without a twist.</source>
        <translation>Verflüssiger, Flansch und Dichtfläche ansehen: sauber, trocken, ohne Kratzer; die Dichtung neu, in ihrer Nut, nicht verdreht.</translation>
    </message>
    <message>
        <source>A reused or twisted seal weeps behind the insulation for years.</source>
        <translation>Eine alte oder verdrehte Dichtung nässt jahrelang hinter der Dämmung.</translation>
    </message>
    <message>
        <source>Lower the condenser in straight, without letting it strike or lean on the wall; it must touch no other metal inside.</source>
        <translation>Verflüssiger gerade einlassen, ohne anzustoßen oder anzulehnen; er darf innen kein anderes Metall berühren.</translation>
    </message>
    <message>
        <source>Metal on metal in drinking water is a battery: the softer one is eaten through.</source>
        <translation>Metall an Metall im Trinkwasser ist eine Batterie: das unedlere wird zerfressen.</translation>
    </message>
    <message>
        <source>Before water comes in, measure with a continuity meter between condenser and cylinder wall: no contact. Enter it as '{wall_contact}'. With contact take it out and set it again.</source>
        <translation>Bevor Wasser hineinkommt, mit dem Durchgangsprüfer zwischen Verflüssiger und Speicherwand messen: kein Kontakt. Als „{wall_contact}“ eintragen. Bei Kontakt ausbauen und neu setzen.</translation>
    </message>
    <message>
        <source>Once the cylinder is full the meter reads the water, and the fault stays until it leaks.</source>
        <translation>Ist der Speicher voll, misst das Gerät das Wasser, und der Fehler bleibt, bis es leckt.</translation>
    </message>
    <message>
        <source>Tighten the flange's screws crosswise: opposite screws in turn, three rounds (hand-tight, half, full), to the cylinder maker's torque; go round once more after the first heating.</source>
        <translation>Flanschschrauben über Kreuz anziehen: gegenüberliegende im Wechsel, drei Runden (handfest, halb, voll), mit dem Drehmoment des Speicherherstellers; nach der ersten Aufheizung noch einmal rundum.</translation>
    </message>
    <message>
        <source>One side first tips the flange and pinches the seal.</source>
        <translation>Eine Seite zuerst verkantet den Flansch und quetscht die Dichtung.</translation>
    </message>
    <message>
        <source>Check that the wrapped condenser sits tight on the shell with its paste or band unbroken; do not pull on its tubes.</source>
        <translation>Prüfen, dass der Mantelverflüssiger fest am Behälter sitzt, Paste oder Band unversehrt; nicht an seinen Rohren ziehen.</translation>
    </message>
    <message>
        <source>Air between coil and shell costs heat all its life.</source>
        <translation>Luft zwischen Wendel und Behälter kostet auf Lebenszeit Wärme.</translation>
    </message>
    <message>
        <source>Condenser and cylinder</source>
        <translation>Verflüssiger und Speicher</translation>
    </message>
    <message>
        <source>No contact between condenser and cylinder wall, flange tightened in three rounds, anode in place.</source>
        <translation>Kein Kontakt zwischen Verflüssiger und Speicherwand, Flansch in drei Runden angezogen, Anode eingebaut.</translation>
    </message>
    <message>
        <source>Water side</source>
        <translation>Wasserseite</translation>
    </message>
    <message>
        <source>Fit in the direction of flow: stop valve, reducing valve, safety group with check valve and safety valve {safety_valve}, expansion vessel pre-charged to {precharge}, open tundish to the drain. Reducing valve and safety group always. No stop valve between safety valve and cylinder.</source>
        <translation>In Fließrichtung einbauen: Absperrventil, Druckminderer, Sicherheitsgruppe mit Rückflussverhinderer und Sicherheitsventil {safety_valve}, Ausdehnungsgefäß mit Vordruck {precharge}, offener Trichter zum Abfluss. Druckminderer und Sicherheitsgruppe immer. Keine Absperrung zwischen Sicherheitsventil und Speicher.</translation>
    </message>
    <message>
        <source>Water grows when heated. With its way out blocked the cylinder is a pressure vessel without a valve.</source>
        <translation>Wasser dehnt sich beim Erwärmen. Ist ihm der Weg verbaut, ist der Speicher ein Druckbehälter ohne Ventil.</translation>
    </message>
    <message>
        <source>Fit the thermostatic mixing valve at the hot outlet and set it to the wanted temperature at the nearest tap.</source>
        <translation>Thermomischer am Warmwasserausgang einbauen und an der nächsten Zapfstelle auf die gewünschte Temperatur einstellen.</translation>
    </message>
    <message>
        <source>Scalds happen in seconds above 60 °C.</source>
        <translation>Über 60 °C verbrüht man sich in Sekunden.</translation>
    </message>
    <message>
        <source>Connect the recirculation to its own port with its own check valve, pump and timer; balance it so that the return stays hot.</source>
        <translation>Zirkulation am eigenen Anschluss mit eigenem Rückflussverhinderer, Pumpe und Zeitschaltung anschließen; so abgleichen, dass der Rücklauf heiß bleibt.</translation>
    </message>
    <message>
        <source>Without a check valve cold water runs backwards to the tap.</source>
        <translation>Ohne Rückflussverhinderer läuft Kaltwasser rückwärts zur Zapfstelle.</translation>
    </message>
    <message>
        <source>Flush, then fill through the cold inlet with the farthest hot tap open. Close the tap when water comes without air. Look at every joint under pressure; vent again next day. Enter '{cold_pressure}'.</source>
        <translation>Spülen, dann über den Kaltwassereingang füllen, die entfernteste Warmwasserzapfstelle offen. Schließen, wenn Wasser ohne Luft kommt. Jede Verbindung unter Druck ansehen; am nächsten Tag noch einmal entlüften. „{cold_pressure}“ eintragen.</translation>
    </message>
    <message>
        <source>A heater or condenser in air overheats: never power up before water runs from the tap.</source>
        <translation>Heizstab oder Verflüssiger in Luft überhitzt: nie einschalten, bevor Wasser aus der Zapfstelle läuft.</translation>
    </message>
    <message>
        <source>Lift the safety valve by hand: it runs to the tundish and closes again.</source>
        <translation>Sicherheitsventil von Hand anlüften: es läuft in den Trichter und schließt wieder.</translation>
    </message>
    <message>
        <source>A valve that sticks now will stick when it matters.</source>
        <translation>Ein Ventil, das heute klemmt, klemmt auch, wenn es darauf ankommt.</translation>
    </message>
    <message>
        <source>Water side full and tight</source>
        <translation>Wasserseite voll und dicht</translation>
    </message>
    <message>
        <source>Water runs from the farthest hot tap without air and nothing drips: '{water_vented}' and '{safety_valve_lift}' are entered.</source>
        <translation>Aus der entferntesten Warmwasserzapfstelle kommt Wasser ohne Luft, nichts tropft: „{water_vented}“ und „{safety_valve_lift}“ sind eingetragen.</translation>
    </message>
    <message>
        <source>Pressure hold</source>
        <translation>Druckprobe</translation>
    </message>
    <message>
        <source>The block's valves stay SHUT: its charge is behind them. Through the service port only, fill collector and lines with dry nitrogen from a regulator, in steps: 3 bar, 10 bar, then {test_pressure} gauge. Never above {max_pressure}.</source>
        <translation>Die Absperrventile des Blocks bleiben ZU: dahinter steht seine Füllung. Nur über den Serviceanschluss Kollektor und Leitungen mit trockenem Stickstoff vom Druckminderer füllen, in Stufen: 3 bar, 10 bar, dann {test_pressure} Überdruck. Nie über {max_pressure}.</translation>
    </message>
    <message>
        <source>Never oxygen: with oil it explodes. Never air: it brings water. Nitrogen that gets into the block spoils its charge.</source>
        <translation>Nie Sauerstoff: mit Öl explodiert er. Nie Luft: sie bringt Wasser. Stickstoff im Block verdirbt seine Füllung.</translation>
    </message>
    <message>
        <source>Soap every joint, flares and brazed ones, and both stubs of each plate. Mark those that are good.</source>
        <translation>Jede Verbindung abseifen, gebördelt und gelötet, und beide Stutzen jedes Kollektors. Die guten kennzeichnen.</translation>
    </message>
    <message>
        <source>The joint without soap is the one that leaks.</source>
        <translation>Die Verbindung ohne Seife ist die, die leckt.</translation>
    </message>
    <message>
        <source>Shut the bottle, wait until the gas has taken the tubes' temperature, enter '{pressure_hold_start}' with pressure and temperature. Hold at least 30 minutes, longer when the sun moves; enter '{pressure_hold_end}'.</source>
        <translation>Flasche schließen, warten, bis das Gas die Temperatur der Rohre hat, „{pressure_hold_start}“ mit Druck und Temperatur eintragen. Haltedruck mindestens 30 Minuten stehen lassen, länger, wenn die Sonne wandert; „{pressure_hold_end}“ eintragen.</translation>
    </message>
    <message>
        <source>Pressure follows temperature: about 0.1 bar for each 1 K at 25 bar. The program corrects for it.</source>
        <translation>Der Druck folgt der Temperatur: etwa 0,1 bar je 1 K bei 25 bar. Das Programm rechnet das heraus.</translation>
    </message>
    <message>
        <source>Pressure hold passed</source>
        <translation>Druckprobe bestanden</translation>
    </message>
    <message>
        <source>The two readings agree after correction for temperature; no joint bubbles.</source>
        <translation>Beide Werte stimmen nach Korrektur der Temperatur überein; keine Verbindung wirft Blasen.</translation>
    </message>
    <message>
        <source>Let the nitrogen out slowly through the port, outdoors, away from faces.</source>
        <translation>Stickstoff langsam über den Anschluss ablassen, im Freien, weg von Gesichtern.</translation>
    </message>
    <message>
        <source>It smothers in a closed room and blows swarf into eyes.</source>
        <translation>Er erstickt im geschlossenen Raum und bläst Späne in die Augen.</translation>
    </message>
    <message>
        <source>Evacuate</source>
        <translation>Evakuieren</translation>
    </message>
    <message>
        <source>Evacuate collector and lines through the service port, the block's valves still SHUT. Never through the block's own pipe. Gauge at the far end from the pump if it can be.</source>
        <translation>Kollektor und Leitungen über den Serviceanschluss evakuieren, die Absperrventile des Blocks noch ZU. Nie über das eigene Rohr des Blocks. Vakuummeter wenn möglich am Ende fern der Pumpe.</translation>
    </message>
    <message>
        <source>Pulling through the block takes its charge and oil; a gauge at the pump reads the pump.</source>
        <translation>Durch den Block gezogen gehen Füllung und Öl mit; ein Vakuummeter an der Pumpe misst die Pumpe.</translation>
    </message>
    <message>
        <source>Pull down until the gauge stands below {vacuum} absolute and stays: '{vacuum_level}'. Then close the valve to the pump and watch the rise for {vacuum_wait} minutes: '{vacuum_after_rise}' not above {vacuum_limit}. Enter both with the temperature of the coldest part.</source>
        <translation>Evakuieren, bis das Vakuummeter unter {vacuum} absolut steht und bleibt: „{vacuum_level}“. Dann das Ventil zur Vakuumpumpe schließen und die Standprobe {vacuum_wait} Minuten beobachten: „{vacuum_after_rise}“ nicht über {vacuum_limit}. Beide mit der Temperatur der kältesten Stelle eintragen.</translation>
    </message>
    <message>
        <source>A rise that levels off is water still boiling: go on pumping. A rise that does not is a leak: back to soap. Below about 5 °C water does not leave by itself: warm the lines.</source>
        <translation>Ein Anstieg, der sich fängt, ist kochendes Wasser: weiterpumpen. Einer, der sich nicht fängt, ist ein Leck: zurück zur Seife. Unter etwa 5 °C geht Wasser nicht von selbst: Leitungen wärmen.</translation>
    </message>
    <message>
        <source>Never purge with refrigerant.</source>
        <translation>Nie mit Kältemittel spülen.</translation>
    </message>
    <message>
        <source>It leaves air and water in, and is forbidden.</source>
        <translation>Luft und Wasser bleiben drin, und es ist verboten.</translation>
    </message>
    <message>
        <source>Vacuum holds</source>
        <translation>Vakuum hält</translation>
    </message>
    <message>
        <source>With the pump shut off the rise is within the limit of the table.</source>
        <translation>Bei abgesperrter Pumpe bleibt der Anstieg in der Grenze der Tabelle.</translation>
    </message>
    <message>
        <source>Charge and open</source>
        <translation>Füllen und öffnen</translation>
    </message>
    <message>
        <source>Use bottle, hose and scale kept for {refrigerant} only, outdoors or with the room aired, detector on; bond the bottle to earth. No brazing from here on.</source>
        <translation>Flasche, Schlauch und Waage nur für {refrigerant}, im Freien oder bei gelüftetem Raum, Gasmelder an; Flasche erden. Ab hier wird nicht mehr gelötet.</translation>
    </message>
    <message>
        <source>R290 is propane: a charge left in a hose burns.</source>
        <translation>R290 ist Propan: ein Rest im Schlauch brennt.</translation>
    </message>
    <message>
        <source>Air the room while charging and keep ignition sources switched off outside it. No brazing from here on.</source>
        <translation>Beim Füllen lüften und Zündquellen von außen abgeschaltet halten. Ab hier wird nicht mehr gelötet.</translation>
    </message>
    <message>
        <source>{refrigerant} burns slowly but it burns.</source>
        <translation>{refrigerant} brennt langsam, aber es brennt.</translation>
    </message>
    <message>
        <source>Weigh in the extra charge of {extra_charge} {refrigerant} on a scale, as liquid, slowly, through the service port into the evacuated lines, valves still shut. Enter it as '{charge_added}' and write the total of {total_charge} on the block's label.</source>
        <translation>Nachfüllmenge {extra_charge} {refrigerant} auf der Waage flüssig und langsam über den Serviceanschluss in die evakuierten Leitungen füllen, Absperrventile noch zu. Als „{charge_added}“ eintragen und die Gesamtfüllung {total_charge} auf das Schild des Blocks schreiben.</translation>
    </message>
    <message>
        <source>Charge by weight, not by pressure or by feel.</source>
        <translation>Nach Gewicht füllen, nicht nach Druck oder Gefühl.</translation>
    </message>
    <message>
        <source>No extra charge: the run is within what the factory charge serves. Write the total of {total_charge} {refrigerant} on the block's label.</source>
        <translation>Keine Nachfüllung: die Werksfüllung reicht für diese Leitung. Die Gesamtfüllung {total_charge} {refrigerant} auf das Schild des Blocks schreiben.</translation>
    </message>
    <message>
        <source>More than the plate can boil off goes to the compressor as liquid.</source>
        <translation>Was der Kollektor nicht verdampft, kommt flüssig zum Verdichter.</translation>
    </message>
    <message>
        <source>Check once more that the cylinder is full of water. Then open the liquid valve slowly by a quarter turn, listen, wait until the pressure stands, open fully; then the suction valve. Put the caps back on: they are part of the seal.</source>
        <translation>Noch einmal prüfen, dass der Speicher voll Wasser ist. Dann das Flüssigkeitsventil langsam eine Vierteldrehung öffnen, horchen, warten, bis der Druck steht, ganz öffnen; danach das Saugventil. Kappen wieder aufsetzen: sie gehören zur Dichtung.</translation>
    </message>
    <message>
        <source>Opened in one go, liquid strikes the compressor's oil; with an empty cylinder the condenser has nothing to give its heat to.</source>
        <translation>In einem Zug geöffnet schlägt Flüssigkeit ins Öl des Verdichters; bei leerem Speicher wird der Verflüssiger seine Wärme nicht los.</translation>
    </message>
    <message>
        <source>Go over all joints with a leak detector made for {refrigerant}.</source>
        <translation>Alle Verbindungen mit einem Lecksucher für {refrigerant} abgehen.</translation>
    </message>
    <message>
        <source>Nitrogen does not find every leak that refrigerant finds.</source>
        <translation>Stickstoff findet nicht jedes Leck, das Kältemittel findet.</translation>
    </message>
    <message>
        <source>Electrical connection</source>
        <translation>Elektrischer Anschluss</translation>
    </message>
    <message>
        <source>Own protected circuit from the board: breaker, residual current device and copper cable as listed under 'Cylinder's place'. Supply locked off and tested dead before the cover comes off.</source>
        <translation>Eigener abgesicherter Stromkreis ab Verteilung: LS-Schalter, Fehlerstrom-Schutzschalter und Kupferkabel wie unter „Platz des Speichers“ aufgeführt. Freigeschaltet und spannungsfrei, bevor die Abdeckung abkommt.</translation>
    </message>
    <message>
        <source>A shared circuit trips at the first cold start.</source>
        <translation>Ein geteilter Stromkreis löst beim ersten Kaltstart aus.</translation>
    </message>
    <message>
        <source>Connect earth first, and bond plate, profiles and tubes as the local wiring rules ask.</source>
        <translation>Schutzleiter zuerst; Kollektor, Profile und Rohre nach den örtlichen Errichtungsregeln in den Potentialausgleich.</translation>
    </message>
    <message>
        <source>Metal on a roof is in reach of lightning and faults; the local rules decide how it is bonded.</source>
        <translation>Metall auf dem Dach liegt in Reichweite von Blitz und Fehlerstrom; die örtlichen Regeln bestimmen den Potentialausgleich.</translation>
    </message>
    <message>
        <source>Measure before first power and enter with the instrument: '{protective_conductor}', '{insulation_resistance}', '{earth_resistance}', '{loop_impedance}', '{residual_current_trip}', '{supply_voltage}'.</source>
        <translation>Vor dem ersten Einschalten messen und mit dem Messgerät eintragen: „{protective_conductor}“, „{insulation_resistance}“, „{earth_resistance}“, „{loop_impedance}“, „{residual_current_trip}“, „{supply_voltage}“.</translation>
    </message>
    <message>
        <source>What is not measured is not safe.</source>
        <translation>Was nicht gemessen ist, ist nicht sicher.</translation>
    </message>
    <message>
        <source>Electrical tests</source>
        <translation>Elektrische Prüfungen</translation>
    </message>
    <message>
        <source>Measured by a licensed person before first power; figures entered.</source>
        <translation>Von einer Elektrofachkraft vor dem ersten Einschalten gemessen; Werte eingetragen.</translation>
    </message>
    <message>
        <source>Start, record, hand over</source>
        <translation>Starten, aufzeichnen, übergeben</translation>
    </message>
    <message>
        <source>Enter '{heating_start}'. Switch on, set {set_point}. Listen through the first ten minutes: even hum, plate cool all over, no knocking.</source>
        <translation>„{heating_start}“ eintragen. Einschalten, {set_point} einstellen. Die ersten zehn Minuten hinhören: gleichmäßiges Brummen, Kollektor überall kühl, kein Klopfen.</translation>
    </message>
    <message>
        <source>A plate cold in one strip only is short of refrigerant; a liquid knock means switch off at once.</source>
        <translation>Ist nur ein Streifen kalt, fehlt Kältemittel; ein Flüssigkeitsschlag heißt sofort ausschalten.</translation>
    </message>
    <message>
        <source>After 30 minutes enter '{suction_temperature}', '{discharge_temperature}', '{supply_current}', '{water_temperature}' and '{outdoor_temperature}', and say whether the plate lies in sun or shade; compare with the expected values.</source>
        <translation>Nach 30 Minuten „{suction_temperature}“, „{discharge_temperature}“, „{supply_current}“, „{water_temperature}“ und „{outdoor_temperature}“ eintragen, dazu, ob der Kollektor in Sonne oder Schatten liegt; mit den erwarteten Werten vergleichen.</translation>
    </message>
    <message>
        <source>The first figures are what every later service is held against.</source>
        <translation>An den ersten Werten wird jeder spätere Service gemessen.</translation>
    </message>
    <message>
        <source>Check drain and tundish. Enter '{set_point_reading}' and '{hygiene_setting}' to the local rule and tell the client what the hygiene run does.</source>
        <translation>Abfluss und Trichter prüfen. „{set_point_reading}“ und „{hygiene_setting}“ nach örtlicher Regel eintragen und dem Kunden den Hygienelauf erklären.</translation>
    </message>
    <message>
        <source>Water kept lukewarm for weeks breeds bacteria.</source>
        <translation>Wochenlang lauwarmes Wasser lässt Bakterien wachsen.</translation>
    </message>
    <message>
        <source>At the set-point enter '{heating_end}' and, at the nearest tap, '{tap_temperature}'.</source>
        <translation>Bei Solltemperatur „{heating_end}“ und an der nächsten Zapfstelle „{tap_temperature}“ eintragen.</translation>
    </message>
    <message>
        <source>A tap hotter than agreed scalds; a heating that took too long shows a fault.</source>
        <translation>Heißer als vereinbart verbrüht; eine zu lange Aufheizung zeigt einen Fehler.</translation>
    </message>
    <message>
        <source>Show the client: switch-off, mixing valve, safety valve by hand, whom to call. Hand over papers, record and this sheet.</source>
        <translation>Dem Kunden zeigen: Ausschalten, Thermomischer, Sicherheitsventil von Hand, wen er anruft. Papiere, Protokoll und dieses Blatt übergeben.</translation>
    </message>
    <message>
        <source>What the client was not shown the client will ring about on a Sunday.</source>
        <translation>Was der Kunde nicht gesehen hat, fragt er am Sonntag.</translation>
    </message>
    <message>
        <source>Record entered, site clean, client shown. Signatures on the last page.</source>
        <translation>Protokoll eingetragen, Baustelle sauber, Kunde eingewiesen. Unterschriften auf der letzten Seite.</translation>
    </message>
    <message>
        <source>To hand at the side door</source>
        <translation>Griffbereit an der Seitentür</translation>
    </message>
    <message>
        <source>Roof rack and long tray</source>
        <translation>Dachträger und Langgutfach</translation>
    </message>
    <message>
        <source>Workshop drawers</source>
        <translation>Werkstattschubladen</translation>
    </message>
    <message>
        <source>Refrigeration case</source>
        <translation>Kältekoffer</translation>
    </message>
    <message>
        <source>Bottles upright, ventilated, strapped</source>
        <translation>Flaschen stehend, belüftet, gesichert</translation>
    </message>
    <message>
        <source>Electrical case</source>
        <translation>Elektrokoffer</translation>
    </message>
    <message>
        <source>Spirit level, tape, chalk line, square, pencil; compass, inclinometer; camera</source>
        <translation>Wasserwaage, Maßband, Schlagschnur, Winkel, Bleistift; Kompass, Neigungsmesser; Kamera</translation>
    </message>
    <message>
        <source>Personal: helmet, goggles, gloves for sheet edges and for refrigerant, shoes with grip</source>
        <translation>Persönlich: Helm, Schutzbrille, Handschuhe gegen Blechkanten und gegen Kältemittel, trittsichere Schuhe</translation>
    </message>
    <message>
        <source>Harness, lanyard and anchor; roof ladder; edge protection</source>
        <translation>Gurt, Seil und Anschlagpunkt; Dachleiter; Seitenschutz</translation>
    </message>
    <message>
        <source>Ladder or tower with ties</source>
        <translation>Leiter oder Fahrgerüst mit Anbindung</translation>
    </message>
    <message>
        <source>Broom, scale for the ballast, hoist or barrow for the slabs</source>
        <translation>Besen, Waage für den Ballast, Aufzug oder Karre für die Platten</translation>
    </message>
    <message>
        <source>Drill, wood bits, impact driver, torque bits for the fixing screws</source>
        <translation>Bohrmaschine, Holzbohrer, Schlagschrauber, Bits für die Befestigungsschrauben</translation>
    </message>
    <message>
        <source>Angle grinder with stone disc for the tiles, goggles, dust mask</source>
        <translation>Winkelschleifer mit Steinscheibe für die Ziegel, Schutzbrille, Staubmaske</translation>
    </message>
    <message>
        <source>Torque wrench for the clamps</source>
        <translation>Drehmomentschlüssel für die Klemmen</translation>
    </message>
    <message>
        <source>Hammer drill, masonry bits, blow-out pump, brush, torque wrench for the anchors</source>
        <translation>Bohrhammer, Steinbohrer, Ausblaspumpe, Bürste, Drehmomentschlüssel für die Anker</translation>
    </message>
    <message>
        <source>Core bit or hole saw and sleeves for the passages</source>
        <translation>Bohrkrone oder Lochsäge und Hülsen für die Durchführungen</translation>
    </message>
    <message>
        <source>Tube cutter, deburrer, bender, flaring tool, refrigeration oil</source>
        <translation>Rohrabschneider, Entgrater, Biegegerät, Bördelgerät, Kältemaschinenöl</translation>
    </message>
    <message>
        <source>Tube cutter, deburrer, bender, refrigeration oil</source>
        <translation>Rohrabschneider, Entgrater, Biegegerät, Kältemaschinenöl</translation>
    </message>
    <message>
        <source>Torque wrench with open jaws for the flare nuts, second spanner</source>
        <translation>Drehmomentschlüssel mit offenem Maul für die Bördelmuttern, Gegenschlüssel</translation>
    </message>
    <message>
        <source>Vacuum pump with check valve, vacuum gauge in Pa, valve-core tool, short wide hoses</source>
        <translation>Vakuumpumpe mit Rückschlagventil, Vakuummeter in Pa, Ventileinsatzdreher, kurze weite Schläuche</translation>
    </message>
    <message>
        <source>Pump and detector fit for flammable gas, bonding lead, vent hose, warning signs</source>
        <translation>Pumpe und Gasmelder für brennbares Gas, Erdungskabel, Abblaseschlauch, Warnschilder</translation>
    </message>
    <message>
        <source>Leak detector made for {refrigerant}</source>
        <translation>Lecksucher für {refrigerant}</translation>
    </message>
    <message>
        <source>Scale reading to 5 g, bottle and hoses kept for {refrigerant}</source>
        <translation>Waage mit 5 g Auflösung, Flasche und Schläuche nur für {refrigerant}</translation>
    </message>
    <message>
        <source>Brazing set, filler rods, nitrogen flow meter, extinguisher</source>
        <translation>Lötgerät, Hartlot, Durchflussmesser für Stickstoff, Löscher</translation>
    </message>
    <message>
        <source>Dry nitrogen with regulator and safety valve, hose, soap spray</source>
        <translation>Trockener Stickstoff mit Druckminderer und Sicherheitsventil, Schlauch, Seifenspray</translation>
    </message>
    <message>
        <source>Continuity meter, torque wrench for the flange</source>
        <translation>Durchgangsprüfer, Drehmomentschlüssel für den Flansch</translation>
    </message>
    <message>
        <source>Contact thermometer, clamp ammeter, insulation, loop and residual-current tester</source>
        <translation>Anlegethermometer, Stromzange, Prüfgerät für Isolation, Schleife und Fehlerstrom</translation>
    </message>
    <message>
        <source>On edge along the side wall, padded</source>
        <translation>Hochkant an der Seitenwand, gepolstert</translation>
    </message>
    <message>
        <source>Upright at the bulkhead, strapped</source>
        <translation>Stehend an der Trennwand, gesichert</translation>
    </message>
    <message>
        <source>Water crate</source>
        <translation>Sanitärkiste</translation>
    </message>
    <message>
        <source>Parts and tools to load</source>
        <translation>Teile und Werkzeug für den Wagen</translation>
    </message>
    <message>
        <source>Dear {client},
thank you for the time you gave us at your house. Our quote {number} of {date} is enclosed: hot water with heat from outdoors, for {price} with tax.
The quote says what we would build, where it goes, what it needs in a year and what it costs. It holds until {valid_until}. To order, sign at its end and send it back to us; we then set the days with you.
Ask us whatever is not clear: it costs you nothing.
Kind regards
{firm}</source>
        <translation>Guten Tag {client},
danke für die Zeit, die Sie sich bei Ihnen zu Hause für uns genommen haben. Anbei unser Angebot {number} vom {date}: warmes Wasser mit Wärme von draußen, für {price} mit Steuer.
Das Angebot sagt, was wir bauen würden, wo es hinkommt, was es im Jahr braucht und was es kostet. Es gilt bis {valid_until}. Zum Bestellen unterschreiben Sie am Ende und senden es uns zurück; dann legen wir die Tage mit Ihnen fest.
Fragen Sie uns, was nicht klar ist: Es kostet Sie nichts.
Freundliche Grüße
{firm}</translation>
    </message>
    <message>
        <source>(not issued yet)</source>
        <translation>(noch nicht ausgestellt)</translation>
    </message>
    <message>
        <source>(no price yet)</source>
        <translation>(noch ohne Preis)</translation>
    </message>
    <message>
        <source>Our quote: %1</source>
        <translation>Unser Angebot: %1</translation>
    </message>
    <message>
        <source>Our quote %1: %2</source>
        <translation>Unser Angebot %1: %2</translation>
    </message>
    <message>
        <source>It takes the place of our quote %1.</source>
        <translation>Es ersetzt unser Angebot %1.</translation>
    </message>
    <message>
        <source>Words in braces that stand for nothing</source>
        <translation>Wörter in Klammern, die für nichts stehen</translation>
    </message>
    <message>
        <source>%1. There are: %2.</source>
        <translation>%1. Es gibt: %2.</translation>
    </message>
    <message>
        <source>%1, dated %2</source>
        <translation>%1 vom %2</translation>
    </message>
    <message>
        <source>Quote accepted</source>
        <translation>Angenommenes Angebot</translation>
    </message>
    <message>
        <source>Accepted on</source>
        <translation>Angenommen am</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>Choice</source>
        <translation>Wahl</translation>
    </message>
    <message>
        <source>Noted with it</source>
        <translation>Dazu vermerkt</translation>
    </message>
    <message>
        <source>Signature under the acceptance, as it reached us.</source>
        <translation>Unterschrift unter der Annahme, wie sie uns erreicht hat.</translation>
    </message>
    <message>
        <source>%1 %2 of %3</source>
        <translation>%1 %2 vom %3</translation>
    </message>
    <message>
        <source>This confirmation takes the place of: %1. What it replaces no longer counts.</source>
        <translation>Diese Bestätigung ersetzt: %1. Was sie ersetzt, gilt nicht mehr.</translation>
    </message>
    <message>
        <source>Discount</source>
        <translation>Nachlass</translation>
    </message>
    <message>
        <source>Net</source>
        <translation>Netto</translation>
    </message>
    <message>
        <source>%1, %2 on %3</source>
        <translation>%1, %2 auf %3</translation>
    </message>
    <message>
        <source>Total with tax</source>
        <translation>Summe mit Steuer</translation>
    </message>
    <message>
        <source>Subsidies</source>
        <translation>Förderung</translation>
    </message>
    <message>
        <source>What you ordered</source>
        <translation>Was Ihr Auftrag umfasst</translation>
    </message>
    <message>
        <source>Quantity</source>
        <translation>Menge</translation>
    </message>
    <message>
        <source>Equipment and material</source>
        <translation>Geräte und Material</translation>
    </message>
    <message>
        <source>When to pay</source>
        <translation>Wann zu zahlen ist</translation>
    </message>
    <message>
        <source>As the terms of the quote have it.</source>
        <translation>Wie es die Bedingungen des Angebots sagen.</translation>
    </message>
    <message>
        <source>As the terms of the quote have it:</source>
        <translation>Wie es die Bedingungen des Angebots sagen:</translation>
    </message>
    <message>
        <source>To be paid</source>
        <translation>Zu zahlen</translation>
    </message>
    <message>
        <source>Share</source>
        <translation>Anteil</translation>
    </message>
    <message>
        <source>With tax</source>
        <translation>Mit Steuer</translation>
    </message>
    <message>
        <source>What comes next</source>
        <translation>Wie es weitergeht</translation>
    </message>
    <message>
        <source>We order the parts and tell you when they are here.</source>
        <translation>Wir bestellen die Teile und sagen Ihnen, wenn sie da sind.</translation>
    </message>
    <message>
        <source>We set the days of fitting with you, and look at the weather: nobody works on a wet roof.</source>
        <translation>Wir legen die Montagetage mit Ihnen fest und achten auf das Wetter: Niemand arbeitet auf einem nassen Dach.</translation>
    </message>
    <message>
        <source>Before that day, please make room where the cylinder goes and on the way to it.</source>
        <translation>Bitte machen Sie bis dahin Platz, wo der Speicher hinkommt, und auf dem Weg dorthin.</translation>
    </message>
    <message>
        <source>What your quote names as still to be made at the cylinder's place has to be there by then.</source>
        <translation>Was Ihr Angebot am Platz des Speichers als noch herzustellen nennt, muss bis dahin da sein.</translation>
    </message>
    <message>
        <source>After the start we show you how it works, and hand over the booklet and the record.</source>
        <translation>Nach der Inbetriebnahme zeigen wir Ihnen, wie es geht, und übergeben Heft und Protokoll.</translation>
    </message>
    <message>
        <source>Anything you want to change, tell us before the parts are ordered: you get a change order with its price, and nothing changes before you have signed it.</source>
        <translation>Was Sie ändern möchten, sagen Sie uns, bevor die Teile bestellt sind: Sie bekommen einen Nachtrag mit Preis, und nichts ändert sich, bevor Sie ihn unterschrieben haben.</translation>
    </message>
    <message>
        <source>New</source>
        <translation>Neu</translation>
    </message>
    <message>
        <source>Changed</source>
        <translation>Geändert</translation>
    </message>
    <message>
        <source>No longer</source>
        <translation>Entfällt</translation>
    </message>
    <message>
        <source>Agreed</source>
        <translation>Vereinbart</translation>
    </message>
    <message>
        <source>From now on</source>
        <translation>Von jetzt an</translation>
    </message>
    <message>
        <source>Difference, net</source>
        <translation>Unterschied, netto</translation>
    </message>
    <message>
        <source>instead of: %1</source>
        <translation>statt: %1</translation>
    </message>
    <message>
        <source>Difference with tax</source>
        <translation>Unterschied mit Steuer</translation>
    </message>
    <message>
        <source>Price agreed, with tax</source>
        <translation>Vereinbarter Preis, mit Steuer</translation>
    </message>
    <message>
        <source>Price from now on, with tax</source>
        <translation>Preis von jetzt an, mit Steuer</translation>
    </message>
    <message>
        <source>More or less for you to pay when all is granted</source>
        <translation>Für Sie mehr oder weniger zu zahlen, wenn alles bewilligt ist</translation>
    </message>
    <message>
        <source>Everything else in the quote stays as agreed.</source>
        <translation>Alles andere im Angebot bleibt wie vereinbart.</translation>
    </message>
    <message>
        <source>Your order</source>
        <translation>Ihr Auftrag</translation>
    </message>
    <message>
        <source>No quote of this job is accepted yet: there is no order to confirm.</source>
        <translation>Noch ist kein Angebot zu diesem Vorhaben angenommen: Es gibt keinen Auftrag zu bestätigen.</translation>
    </message>
    <message>
        <source>Thank you for your order. We confirm what was agreed between us.</source>
        <translation>Danke für Ihren Auftrag. Wir bestätigen, was zwischen uns vereinbart ist.</translation>
    </message>
    <message>
        <source>Confirmed</source>
        <translation>Bestätigt</translation>
    </message>
    <message>
        <source>We take the order as it stands here.</source>
        <translation>Wir nehmen den Auftrag an, wie er hier steht.</translation>
    </message>
    <message>
        <source>For the firm</source>
        <translation>Für die Firma</translation>
    </message>
    <message>
        <source>Change of your order</source>
        <translation>Änderung Ihres Auftrags</translation>
    </message>
    <message>
        <source>There are no two quotes of this job to be compared: there is no change.</source>
        <translation>Es gibt keine zwei Angebote zu diesem Vorhaben zu vergleichen: Es ändert sich nichts.</translation>
    </message>
    <message>
        <source>This changes what was agreed: quote %1, accepted on %2 by %3. Quote %4 of %5 takes its place.</source>
        <translation>Dies ändert, was vereinbart ist: Angebot %1, angenommen am %2 von %3. An seine Stelle tritt Angebot %4 vom %5.</translation>
    </message>
    <message>
        <source>What changes</source>
        <translation>Was sich ändert</translation>
    </message>
    <message>
        <source>Nothing: both quotes have the same lines and the same price.</source>
        <translation>Nichts: Beide Angebote haben die gleichen Posten und den gleichen Preis.</translation>
    </message>
    <message>
        <source>The order is changed as it stands here, and in nothing else.</source>
        <translation>Der Auftrag ändert sich, wie es hier steht, und in nichts sonst.</translation>
    </message>
    <message>
        <source>left-hand (connections on the left)</source>
        <translation>linke Ausführung (Anschlüsse links)</translation>
    </message>
    <message>
        <source>right-hand (connections on the right)</source>
        <translation>rechte Ausführung (Anschlüsse rechts)</translation>
    </message>
    <message>
        <source>there</source>
        <translation>vorhanden</translation>
    </message>
    <message>
        <source>bring over %1</source>
        <translation>heranführen, %1</translation>
    </message>
    <message>
        <source>missing</source>
        <translation>fehlt</translation>
    </message>
    <message>
        <source>Please pay to %1: %2.</source>
        <translation>Bitte zahlen Sie an %1: %2.</translation>
    </message>
    <message>
        <source>When to pay is not set here: what you and we have agreed in writing holds, and where nothing is agreed, the law.</source>
        <translation>Wann zu zahlen ist, ist hier nicht festgelegt: Es gilt, was Sie und wir schriftlich vereinbart haben, und wo nichts vereinbart ist, das Gesetz.</translation>
    </message>
    <message>
        <source>VAT number %1</source>
        <translation>USt-IdNr. %1</translation>
    </message>
    <message>
        <source>Firm's name and address not entered yet</source>
        <translation>Name und Anschrift der Firma noch nicht eingegeben</translation>
    </message>
    <message>
        <source>Job %1, revision %2</source>
        <translation>Vorhaben %1, Stand %2</translation>
    </message>
    <message>
        <source>without number</source>
        <translation>ohne Nummer</translation>
    </message>
    <message>
        <source>Job %1</source>
        <translation>Vorhaben %1</translation>
    </message>
    <message>
        <source> with changes</source>
        <translation> mit Änderungen</translation>
    </message>
    <message>
        <source>mark %1</source>
        <translation>Kennung %1</translation>
    </message>
    <message>
        <source>No choice yet</source>
        <translation>Noch keine Wahl</translation>
    </message>
    <message>
        <source>Choice: </source>
        <translation>Wahl: </translation>
    </message>
    <message>
        <source>Printed %1</source>
        <translation>Gedruckt am %1</translation>
    </message>
    <message>
        <source>content %1</source>
        <translation>Inhalt %1</translation>
    </message>
    <message>
        <source>local codes and licensed practice decide</source>
        <translation>örtliche Vorschriften und Fachbetriebe entscheiden</translation>
    </message>
    <message>
        <source>Invented data: for demonstration</source>
        <translation>Erfundene Daten: zur Vorführung</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Stopp</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Achtung</translation>
    </message>
    <message>
        <source>entered by the office</source>
        <translation>vom Büro eingetragen</translation>
    </message>
    <message>
        <source>the office's: %1</source>
        <translation>vom Büro: %1</translation>
    </message>
    <message>
        <source>no reason given</source>
        <translation>ohne Begründung</translation>
    </message>
    <message>
        <source>planned: %1</source>
        <translation>geplant: %1</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>To take</source>
        <translation>Mitnehmen</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Arbeit</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Teile</translation>
    </message>
    <message>
        <source>The plan asks for no parts yet.</source>
        <translation>Der Plan verlangt noch keine Teile.</translation>
    </message>
    <message>
        <source>Together</source>
        <translation>Zusammen</translation>
    </message>
    <message>
        <source>1 pack of %1</source>
        <translation>1 Gebinde zu %1</translation>
    </message>
    <message>
        <source>%1 packs of %2</source>
        <translation>%1 Gebinde zu %2</translation>
    </message>
    <message>
        <source>Supplier's number</source>
        <translation>Nummer des Lieferanten</translation>
    </message>
    <message>
        <source>Taken for this job</source>
        <translation>Für diesen Auftrag entnommen</translation>
    </message>
    <message>
        <source>In stock</source>
        <translation>Im Lager</translation>
    </message>
    <message>
        <source>On order</source>
        <translation>Bestellt</translation>
    </message>
    <message>
        <source>Reserved</source>
        <translation>Reserviert</translation>
    </message>
    <message>
        <source>To order</source>
        <translation>Bestellen</translation>
    </message>
    <message>
        <source>Ordered before: %1</source>
        <translation>Schon bestellt: %1</translation>
    </message>
    <message>
        <source>%1 for job %2: %3</source>
        <translation>%1 für Vorhaben %2: %3</translation>
    </message>
    <message>
        <source>%1, on order by %2.</source>
        <translation>%1, bestellt mit %2.</translation>
    </message>
    <message>
        <source>%1, reserved by %2.</source>
        <translation>%1, reserviert mit %2.</translation>
    </message>
    <message>
        <source>On order and reserved</source>
        <translation>Bestellt und reserviert</translation>
    </message>
    <message>
        <source>Your number</source>
        <translation>Ihre Nummer</translation>
    </message>
    <message>
        <source>Price each</source>
        <translation>Stückpreis</translation>
    </message>
    <message>
        <source>Trade discount</source>
        <translation>Rabatt</translation>
    </message>
    <message>
        <source>Together, without tax</source>
        <translation>Zusammen, ohne Steuer</translation>
    </message>
    <message>
        <source>There is nothing to order.</source>
        <translation>Es gibt nichts zu bestellen.</translation>
    </message>
    <message>
        <source>No supplier told</source>
        <translation>Kein Lieferant genannt</translation>
    </message>
    <message>
        <source>Reserved is what other jobs that are not fitted yet still need of stock and orders by their purchase lists.</source>
        <translation>Reserviert ist, was andere Vorhaben, die noch nicht eingebaut sind, nach ihren Bestelllisten von Lager und Bestellungen noch brauchen.</translation>
    </message>
    <message>
        <source>To be delivered to: %1.</source>
        <translation>Zu liefern an: %1.</translation>
    </message>
    <message>
        <source>Please deliver what is listed here, and confirm price and day.</source>
        <translation>Bitte liefern Sie, was hier steht, und bestätigen Sie Preis und Tag.</translation>
    </message>
    <message>
        <source>Our order</source>
        <translation>Unsere Bestellung</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>Deliver to</source>
        <translation>Liefern an</translation>
    </message>
    <message>
        <source>Or to</source>
        <translation>Oder an</translation>
    </message>
    <message>
        <source>Wished on</source>
        <translation>Gewünscht am</translation>
    </message>
    <message>
        <source>Prices are net, as our price list has them. Tell us before you deliver where yours differ.</source>
        <translation>Preise netto nach unserer Preisliste. Sagen Sie uns vor der Lieferung, wo Ihre davon abweichen.</translation>
    </message>
    <message>
        <source>Of lines without a price we know none: please tell us yours.</source>
        <translation>Zu Zeilen ohne Preis kennen wir keinen: bitte nennen Sie uns Ihren.</translation>
    </message>
    <message>
        <source>Ordered on</source>
        <translation>Bestellt am</translation>
    </message>
    <message>
        <source>the surface shown</source>
        <translation>der gezeigten Fläche</translation>
    </message>
    <message>
        <source>and</source>
        <translation>und</translation>
    </message>
    <message>
        <source>What we offer</source>
        <translation>Was wir anbieten</translation>
    </message>
    <message>
        <source>Hot water from the outdoor air, rain, wind and daylight. A bare metal plate outdoors takes up the heat, by day and by night; a small heat pump raises it to the temperature of the hot water. The plate has no glass and no fan and makes no noise. An electric heater in the cylinder steps in when more is asked for than the heat pump can give.</source>
        <translation>Warmes Wasser aus Außenluft, Regen, Wind und Tageslicht. Eine blanke Metallplatte im Freien nimmt die Wärme auf, bei Tag und bei Nacht; eine kleine Wärmepumpe hebt sie auf die Temperatur des Warmwassers. Die Platte hat weder Glas noch Ventilator und macht kein Geräusch. Ein elektrischer Heizstab im Speicher springt ein, wenn mehr verlangt wird, als die Wärmepumpe geben kann.</translation>
    </message>
    <message>
        <source>%1 %2 of %3 by %4 on %5.</source>
        <translation>%1 %2 mit %3 mal %4 auf: %5.</translation>
    </message>
    <message>
        <source>One collector</source>
        <translation>Ein Kollektor</translation>
    </message>
    <message>
        <source>%1 collectors</source>
        <translation>%1 Kollektoren</translation>
    </message>
    <message>
        <source>Heat pump %1, %2, joined to the collector by a refrigerant run of about %3.</source>
        <translation>Wärmepumpe %1, %2, mit dem Kollektor durch eine Kältemittelleitung von etwa %3 verbunden.</translation>
    </message>
    <message>
        <source>Cylinder %1 of %2%3, with electric heater of %4 and thermostatic mixing valve.</source>
        <translation>Speicher %1 mit %2%3, mit elektrischem Heizstab von %4 und Thermomischer.</translation>
    </message>
    <message>
        <source>in: %1</source>
        <translation>in: %1</translation>
    </message>
    <message>
        <source>Fitting, filling, tests, start and instruction as listed under price.</source>
        <translation>Montage, Füllung, Prüfungen, Inbetriebnahme und Einweisung wie unter Preis aufgeführt.</translation>
    </message>
    <message>
        <source>What to expect in a year</source>
        <translation>Was in einem Jahr zu erwarten ist</translation>
    </message>
    <message>
        <source>The yearly figures are not worked out for this plan.</source>
        <translation>Die Jahreswerte sind für diesen Plan nicht berechnet.</translation>
    </message>
    <message>
        <source>Hot water heat used</source>
        <translation>Genutzte Wärme im Warmwasser</translation>
    </message>
    <message>
        <source>Electricity for it</source>
        <translation>Strom dafür</translation>
    </message>
    <message>
        <source>Heat at the tap for each kWh of electricity</source>
        <translation>Wärme am Hahn je kWh Strom</translation>
    </message>
    <message>
        <source>Heat into the cylinder for each kWh of electricity</source>
        <translation>Wärme in den Speicher je kWh Strom</translation>
    </message>
    <message>
        <source>more than at the tap: the cylinder loses some heat while the water waits</source>
        <translation>mehr als am Hahn: Der Speicher verliert etwas Wärme, während das Wasser wartet</translation>
    </message>
    <message>
        <source>Electricity cost</source>
        <translation>Stromkosten</translation>
    </message>
    <message>
        <source>The same water with the present heater</source>
        <translation>Das gleiche Wasser mit der jetzigen Heizung</translation>
    </message>
    <message>
        <source>Carbon dioxide, new and present</source>
        <translation>Kohlendioxid, neu und jetzt</translation>
    </message>
    <message>
        <source>about %1 and %2</source>
        <translation>etwa %1 und %2</translation>
    </message>
    <message>
        <source>Saving has paid the price back after</source>
        <translation>Die Ersparnis hat den Preis aufgewogen nach</translation>
    </message>
    <message>
        <source>years</source>
        <translation>Jahren</translation>
    </message>
    <message>
        <source>times %1</source>
        <translation>mal %1</translation>
    </message>
    <message>
        <source>draw-off as cycle %1 of EU 812/2013%2</source>
        <translation>Zapfung nach Profil %1 der EU 812/2013%2</translation>
    </message>
    <message>
        <source>a household of %1 with %2 of 40 °C a head and day%3</source>
        <translation>ein Haushalt mit %1 Personen und %2 zu 40 °C je Kopf und Tag%3</translation>
    </message>
    <message>
        <source>water stored at %1</source>
        <translation>Wasser gespeichert bei %1</translation>
    </message>
    <message>
        <source>cold water at %1 on average</source>
        <translation>Kaltwasser im Mittel %1</translation>
    </message>
    <message>
        <source>present heater: %1, %2</source>
        <translation>jetzige Heizung: %1, %2</translation>
    </message>
    <message>
        <source>weather: %1%2</source>
        <translation>Wetter: %1%2</translation>
    </message>
    <message>
        <source>(invented)</source>
        <translation>(erfunden)</translation>
    </message>
    <message>
        <source>Assumed: %1. Figures in brackets are the likely range%2. Your use and the weather decide; none of these figures is a promise.</source>
        <translation>Angenommen: %1. Zahlen in Klammern sind der wahrscheinliche Bereich%2. Ihr Verbrauch und das Wetter entscheiden; keine dieser Zahlen ist ein Versprechen.</translation>
    </message>
    <message>
        <source>Where it goes</source>
        <translation>Wohin es kommt</translation>
    </message>
    <message>
        <source>You may add: tick what you want</source>
        <translation>Dazu möglich: Gewünschtes ankreuzen</translation>
    </message>
    <message>
        <source>Price</source>
        <translation>Preis</translation>
    </message>
    <message>
        <source>There is no price yet: see what stands against it below.</source>
        <translation>Noch gibt es keinen Preis: Was dagegen spricht, steht unten.</translation>
    </message>
    <message>
        <source>Equipment</source>
        <translation>Geräte</translation>
    </message>
    <message>
        <source>Fixings, tube with insulation, water-side and electrical material, each in the parts list</source>
        <translation>Befestigungen, Rohr mit Dämmung, Wasser- und Elektromaterial, einzeln in der Stückliste</translation>
    </message>
    <message>
        <source>%1 items</source>
        <translation>%1 Posten</translation>
    </message>
    <message>
        <source>Material</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>Labour</source>
        <translation>Arbeit</translation>
    </message>
    <message>
        <source>Discount of %1%2</source>
        <translation>Nachlass von %1%2</translation>
    </message>
    <message>
        <source>Total to pay</source>
        <translation>Zu zahlen insgesamt</translation>
    </message>
    <message>
        <source>Not all items have a price</source>
        <translation>Nicht alle Posten haben einen Preis</translation>
    </message>
    <message>
        <source>Some items are not in the price list. They are not in the total.</source>
        <translation>Einige Posten stehen nicht in der Preisliste. Sie sind in der Summe nicht enthalten.</translation>
    </message>
    <message>
        <source>This quote holds for %1 days, until %2.</source>
        <translation>Dieses Angebot gilt %1 Tage, bis zum %2.</translation>
    </message>
    <message>
        <source>This quote holds for %1 days.</source>
        <translation>Dieses Angebot gilt %1 Tage.</translation>
    </message>
    <message>
        <source>Prices: %1.</source>
        <translation>Preise: %1.</translation>
    </message>
    <message>
        <source>Still to be made at the cylinder's place</source>
        <translation>Am Platz des Speichers noch herzustellen</translation>
    </message>
    <message>
        <source>Hot water by heat pump and bare plate: %1</source>
        <translation>Warmwasser mit Wärmepumpe und blanker Platte: %1</translation>
    </message>
    <message>
        <source>Something in this plan must be changed first; it is named at the end.</source>
        <translation>An diesem Plan muss vorher etwas geändert werden; es steht am Ende.</translation>
    </message>
    <message>
        <source>This quote takes the place of our quote %1.</source>
        <translation>Dieses Angebot ersetzt unser Angebot %1.</translation>
    </message>
    <message>
        <source>What you should know before you decide</source>
        <translation>Was Sie vor der Entscheidung wissen sollten</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Auftrag</translation>
    </message>
    <message>
        <source>I order the system as described in this quote, job %1, revision %2.</source>
        <translation>Ich erteile den Auftrag für die Anlage, wie sie in diesem Angebot beschrieben ist, Vorhaben %1, Stand %2.</translation>
    </message>
</context>
</TS>
