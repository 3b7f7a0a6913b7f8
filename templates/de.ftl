# Every sentence that is printed in German.
#
# Steps are told in the infinitive, which is polite to everyone. Names are the
# maker's own, of any gender and number: no article and no adjective leans on them.
# Words of the trade: Bogen, Zuschnitt, Streifen, Reststück, Verschnitt, Grundkarte,
# Lage, Mattung, Etikett, Spruch, rillen, falzen, Marke, Set.


## Numbers and units

decimal-sign = ,
length-inch = { $number }{ "\u00A0" }Zoll
length-mm = { $number }{ "\u00A0" }mm
size-inch = { $width }{ "\u00A0" }×{ "\u00A0" }{ $height }{ "\u00A0" }Zoll
size-mm = { $width }{ "\u00A0" }×{ "\u00A0" }{ $height }{ "\u00A0" }mm
both-units = { $first } ({ $second })


## Joining words

quoted = „{ $words }“
list-next = { $first }, { $next }
list-last = { $first } und { $last }
list-choice = { $first } oder { $last }
list-comma = ,{ " " }
list-semicolon = ;{ " " }


## The foot of each page

foot-with-edition = { $title } · { $kind ->
    [number] Ausgabe { $edition }
   *[words] { $edition }
}
foot-with-name = { $left } · { $name }
foot-page = Seite { $page } von { $pages }
foot-continued = Fortsetzung
foot-scale = Maßstab { $scale }


## What things are called

name-with-letter = { $name }{ "\u00A0" }({ $letter })
name-offcut = Reststück
label-named = Etikett { $words }
label-any = Etikett
label-blank = { $count ->
    [one] leeres Etikett
   *[other] leere Etiketten
}
labels-named = Etiketten { $words }
strip-for-label = Streifen für { $label }
strip-for-mat = Streifen für die Mattung zu { $label }
strip-for-labels = Streifen für { $count } Etiketten
strip-for-mats = Streifen für { $count } Mattungen
mat-of-label = Mattung für { $label }
base-named = Grundkarte { $name }
several = { $count }{ "\u00A0" }×{ "\u00A0" }{ $item }
base-counted = { $count ->
    [one] die Grundkarte { $name }
   *[other] die { $count } Grundkarten { $name }
}
tool-kind = { $kind ->
    [stamps] Stempelset
    [ink] Stempelkissen
   *[glue] Kleber
}
tool-with-kind = { $name } ({ $kind })
edge = { $side ->
    [left] Linke Kante
    [top] Obere Kante
    [right] Rechte Kante
   *[bottom] Untere Kante
}
foam-squares = { $count ->
    [one] 1 Abstandspad
   *[other] { $count } Abstandspads
}


## Cover

cover-name = Für { $name }
cover-makes = { $count ->
    [one] Daraus entsteht eine Karte: { $names }.
   *[other] Daraus entstehen { $count } Karten: { $names }.
}
cover-scale = Gezeichnet im Maßstab { $scale }.
cover-maker = { $reader ->
    [class] Für die Kursleitung: was vor dem Kurs vorzubereiten ist.
   *[other] Für die Werkstatt: was vorzubereiten ist, bevor die Sets hinausgehen.
} { $kits ->
    [one] Gerechnet ist für ein Set.
   *[other] Gerechnet ist für { $kits } Sets{ $spares ->
        [0] .
        [one] , eines davon als Reserve.
       *[other] , { $spares } davon als Reserve.
    }
}
cover-done = Schon erledigt: { $works }.
cover-before = { $hands ->
    [maker] Hier zu tun: { $works }.
   *[reader] Vor der Reise: { $works }.
}
cover-here = { $place ->
    [travel] Unterwegs: { $works }.
   *[other] Noch zu tun: { $works }.
}
work-done = { $work ->
    [cut] Bögen zugeschnitten
    [score] Grundkarten gerillt
    [fold] Grundkarten gefalzt
    [stamp] Sprüche gestempelt
    [punch] Etiketten gestanzt
    [again] Zuschnitte weiter geteilt
    [layer] Etiketten auf ihre Mattungen gesetzt
    [attach] Lagen aufgeklebt
   *[inside] Innenseiten gestempelt
}
work-do = { $work ->
    [cut] Bögen zuschneiden
    [score] Grundkarten rillen
    [fold] Grundkarten falzen
    [stamp] Sprüche stempeln
    [punch] Etiketten stanzen
    [again] Zuschnitte weiter teilen
    [layer] Etiketten auf ihre Mattungen kleben
    [attach] Lagen aufkleben
   *[inside] Text innen ergänzen
}
cover-ask = Von: { $name }. Fehlt etwas, ist etwas unklar? Dort nachfragen.
cover-ask-reach = Von: { $name }. Fehlt etwas, ist etwas unklar? Nachfragen: { $reach }.
tips-title = Gut zu wissen


## Cautions: the hazard, what it can do, how to avoid it

cautions-title = Vorsicht
signal = { $weight ->
    [warning] WARNUNG
    [caution] VORSICHT
   *[notice] HINWEIS
}
caution-lever = Lange Klinge am Hebel. Sie kann tief schneiden. Den Schutz nicht abnehmen und die Finger dahinter lassen. Den Hebel nach jedem Schnitt herunterdrücken und verriegeln. Nur für Erwachsene.
caution-sliding = Scharfe Klinge im Papierschneider. Sie kann in die Haut schneiden. Die Finger vom Spalt fernhalten, in dem die Klinge läuft. Den Schneider flach hinlegen und die Klinge vor dem Wegräumen schließen.
caution-rotary = Scharfe Rollklinge. Sie kann in die Haut schneiden. Vom Körper weg rollen, die andere Hand bleibt dahinter. Nach jedem Schnitt den Schutz schließen.
caution-knife = Scharfes Messer. Es kann in die Haut schneiden. Auf einer Schneidematte an einem Metalllineal schneiden, die andere Hand bleibt hinter der Klinge. Beim Ablegen die Klinge abdecken.
caution-scissors = Scharfe Spitzen und Schneiden. Scheren können schneiden und stechen. Im Sitzen schneiden und die Schere geschlossen weitergeben, mit den Griffen voran. Kinder brauchen jemanden neben sich.
caution-punch = Stanzer. Er kann Finger quetschen. Die Finger nicht in die Öffnung halten und auf einem festen Tisch drücken.
caution-heat = Heißes Werkzeug. Es verbrennt die Haut bei Berührung und versengt Papier. Auf dem Ständer ablegen, nie unbeaufsichtigt lassen, nach Gebrauch den Stecker ziehen. Nur für Erwachsene.
caution-small-parts = Kleine Teile, zum Beispiel Abstandspads. Kleine Kinder können daran ersticken. Von Kindern unter 3 Jahren fernhalten.
caution-moving = Klingen und heiße Werkzeuge im fahrenden Fahrzeug. Bei einem Ruck können sie abrutschen und jemanden verletzen. Während der Fahrt nicht benutzen.
caution-luggage = Klingen im Gepäck. Sie können beim Öffnen verletzen und abgenommen werden. Einwickeln und vor der Reise nachfragen, was im Zug, Bus oder Flugzeug erlaubt ist.
caution-glue = Nasser Kleber hinterlässt Flecken auf Papier und Tischen und wellt dünnes Papier. Über Schmierpapier dünn verstreichen und die Angaben auf der Packung beachten.
caution-ink = Stempelfarbe färbt Hände, Kleidung und Tische. Den Tisch abdecken, das Kissen nach Gebrauch schließen, feuchte Stempel von Karten fernhalten.
caution-hot-car = Stempelfarbe und nasser Kleber färben ab und trocknen im heißen Auto ein oder laufen aus. Tablett abdecken, alles nach Gebrauch schließen und aufrecht bei sich tragen. Feuchte Stempel von den Karten fernhalten.
caution-order = In der Reihenfolge der Schritte schneiden. Ein falscher erster Schnitt lässt sich nicht rückgängig machen.
caution-last = Örtliche Vorschriften und die Anleitungen der Werkzeuge gehen vor.


## What to have at hand

need-title = { $reader ->
    [class] Auf dem Tisch, für alle
    [kit] Das wird gebraucht
    [travel] Das wird zu Hause gebraucht
   *[maker] Werkzeug
}
need-pen = ein Stift
need-instead = { $tool }. Ersatzweise: { $instead }


## What to buy

buy-title = Einkaufsliste
buy-for = { $kits ->
    [one] Für ein Set
   *[other] Für { $kits } Sets
}{ $spares ->
    [0] .
    [one] {" "}und eines als Reserve.
   *[other] {" "}und { $spares } als Reserve.
}
buy-summary = Was einzukaufen ist: wie viel für ein Set, wie viel für alle, in wie vielen Packungen, und wie viel übrig bleibt.
buy-what = Artikel
buy-one-kit = Je Set
buy-all = Alle
buy-packs = Packungen
buy-over = Übrig
buy-packs-of = { $packs ->
    [one] 1 Packung zu { $holds }
   *[other] { $packs } Packungen zu { $holds }
}
buy-rolls = { $packs ->
    [one] 1 Rolle
   *[other] { $packs } Rollen
}
buy-packs-assorted = { $packs ->
    [one] 1 gemischte Packung mit { $holds } davon
   *[other] { $packs } gemischte Packungen mit { $holds } davon
}
buy-on-hand = Vorhanden
buy-price = Preis
buy-none = nichts
buy-rolls-of = { $rolls ->
    [one] 1 Rolle zu { $holds }
   *[other] { $rolls } Rollen zu { $holds }
}
buy-sheet-gives = { $cards ->
    [one] eine Karte aus einem Bogen { $paper }
   *[other] { $cards } Karten aus einem Bogen { $paper }
}
buy-sheets-give = Das ergibt { $papers }.
buy-cost = Was verbraucht wird, kostet { $all }{ $some ->
    [yes] , soweit Preise bekannt sind
   *[no] {""}
}: { $kits ->
    [one] { $card } je Karte.
   *[other] { $kit } je Set und { $card } je Karte, Reserve eingerechnet.
}
buy-cost-tools = Das Werkzeug kostet zusätzlich { $tools }.
money = { $amount }{ "\u00A0" }{ $currency }
metres = { $number }{ "\u00A0" }m
good-sheets = { $paper }, Bögen { $size }
good-scraps = Papierreste { $paper }, mindestens { $size }
good-envelopes = Umschläge für { $base }
good-envelopes-size = Umschläge { $size } für { $base }
good-foam = Abstandspads
good-order = { $good }, Bestellnummer { $number }


## The bag

bag-title = In der Tüte: bitte abhaken
bag-summary = Was in der Tüte liegt: wie viel, was und wie groß.
bag-count = Anzahl
bag-what = Inhalt
bag-size = Größe
bag-base = { $base }, { $state ->
    [folded] gefalzt
    [scored] gerillt, flach liegend
   *[flat] noch nicht gerillt
}
bag-label = { $label }{ $stamped ->
    [yes] , gestempelt
   *[no] {""}
}{ $matted ->
    [yes] , auf Mattung
    [several] , auf ihren Mattungen
   *[no] {""}
}
bag-mats = Mattungen für die Etiketten
bag-foam = { $count ->
    [one] Abstandspad
   *[other] Abstandspads
}
bag-envelopes = { $count ->
    [one] Umschlag
   *[other] Umschläge
}
bag-sheets = { $count ->
    [one] Bogen { $paper }
   *[other] Bögen { $paper }
}
pack-title = { $hands ->
    [maker] Das kommt in jede Tüte
   *[reader] Das kommt ins Gepäck
}
pack-bags = { $kits ->
    [one] Eine Tüte.
   *[other] { $kits } Tüten packen{ $spares ->
        [0] .
        [one] ; eine davon ist Reserve.
       *[other] ; { $spares } davon sind Reserve.
    }
}
pack-tools = Dazu das Werkzeug für unterwegs:
pack-cards = Die Teile jeder Karte in einen Umschlag legen:
pack-besides = Außerdem:
pack-card = { $card }: { $parts }
pack-card-apart = { $card }, eigens eingeschlagen: { $parts }
pack-base = Grundkarte
pack-postage = Porto: im Umschlag sind die Karten bis zu { $thick } dick und { $heavy } schwer; bei der Post nachfragen
pack-packaging = Für jedes Set: { $items }.
pack-flat = Flaches Papier zwischen zwei Stücke fester Pappe legen, damit nichts knickt.


## Cut plan

cut-plan-title = Schnittplan: { $paper }
sheets-needed = { $kits ->
    [one] { $sheets ->
        [one] Ein Bogen { $paper }, { $size }, genügt.
       *[other] Gebraucht werden { $sheets } Bögen { $paper }, { $size }.
    }
   *[other] { $sheets ->
        [one] Ein Bogen { $paper }, { $size }, genügt für alle { $kits } Sets
       *[other] Gebraucht werden { $sheets } Bögen { $paper }, { $size }, für alle { $kits } Sets
    }{ $spares ->
        [0] .
        [one] , eines davon als Reserve.
       *[other] , { $spares } davon als Reserve.
    }
}
sheets-scraps = Aus Papierresten { $paper } schneiden, jeder Rest mindestens { $size }.
sheets-proven = Kein Plan kommt mit weniger als { $sheets } Bögen aus.
sheets-bound = { $least ->
    [one] Ein Plan mit weniger wurde nicht gefunden.
   *[other] Ein Plan mit weniger wurde nicht gefunden; mindestens { $least } sind nötig.
}
offcut-kept = { $proven ->
    [yes] Reststück zum Aufheben: { $size }; größer geht es mit so wenigen Bögen nicht.
   *[no] Reststück zum Aufheben: { $size }.
}
own-way = Der eigene Schnittplan braucht { $sheets ->
    [one] einen Bogen
   *[other] { $sheets } Bögen
} und { $cuts ->
    [one] einen Schnitt
   *[other] { $cuts } Schnitte
}{ $same ->
    [all] ; ein besserer Plan wurde nicht gefunden.
    [sheets] ; der beste gefundene Plan braucht ebenso viele Bögen und { $bestcuts ->
        [one] einen Schnitt
       *[other] { $bestcuts } Schnitte
    }.
   *[none] ; der beste gefundene Plan braucht { $bestsheets } und { $bestcuts ->
        [one] einen Schnitt
       *[other] { $bestcuts } Schnitte
    }.
}
own-offcut = Der eigene Schnittplan lässt ein Reststück von { $size } übrig, der beste Plan eines von { $best }.
alike-instead = Werden alle Bögen gleich geschnitten, braucht es { $more ->
    [0] ebenso viele Bögen
    [one] einen Bogen mehr
   *[other] { $more } Bögen mehr
}, aber nur { $steps ->
    [one] 1 Schritt
   *[other] { $steps } Schritte
} statt { $othersteps }.
alike-how = Wer es so möchte, verlangt „sheets alike“ in der Beschreibung und druckt diese Anleitung neu.
alike-chosen = Alle Bögen werden gleich geschnitten, { $kits ->
    [one] für ein Set
   *[other] für { $kits } Sets
}{ $over ->
    [0] .
    [one] ; die Zuschnitte für ein Set bleiben übrig.
   *[other] ; die Zuschnitte für { $over } Sets bleiben übrig.
}
fewer-sheets-alike = { $fewer ->
    [0] Verschieden geschnitten wären es ebenso viele Bögen
    [one] Verschieden geschnitten wäre es ein Bogen weniger
   *[other] Verschieden geschnitten wären es { $fewer } Bögen weniger
}, mit { $dearer ->
    [yes] { $marks ->
        [0] ebenso vielen Marken
        [one] einer Marke mehr
       *[other] { $marks } Marken mehr
    }
   *[no] { $marks ->
        [one] einer Marke weniger
       *[other] { $marks } Marken weniger
    }
} und { $othersteps ->
    [one] 1 Schritt
   *[other] { $othersteps } Schritten
} statt { $steps }.
fewer-sheets = { $fewer ->
    [one] Mit einem anderen Plan wäre es ein Bogen weniger
   *[other] Mit einem anderen Plan wären es { $fewer } Bögen weniger
}{ $dearer ->
    [yes] { $marks ->
        [0] , bei ebenso vielen Marken.
        [one] , aber eine Marke mehr.
       *[other] , aber { $marks } Marken mehr.
    }
   *[no] { $marks ->
        [one] {" "}und sogar eine Marke weniger.
       *[other] {" "}und sogar { $marks } Marken weniger.
    }
}
lies-next-to = Damit das Muster weiterläuft, bleiben auf dem Bogen zwei Teile beieinander: { $piece } liegt { $side ->
    [left] links neben
    [right] rechts neben
    [top] direkt über
   *[bottom] direkt unter
} { $other }.
lies-at-place = Eine bestimmte Stelle des Musters zeigt: { $piece }. Das Teil liegt { $left } von der linken Kante des Bogens und { $top } von der oberen Kante.
plan-caption = { $plans ->
    [one] { $sheets ->
        [one] So wird der Bogen geschnitten.
       *[other] So werden alle { $sheets } Bögen geschnitten.
    }
   *[other] Plan { $plan }: { $sheets ->
        [one] 1 Bogen so schneiden.
       *[other] { $sheets } Bögen so schneiden.
    }
}
plan-lies = { $directed ->
    [yes] Die Seite „{ $face }“ liegt oben; der Pfeil zeigt, wie das Muster steht.
   *[no] Die Seite „{ $face }“ liegt oben.
}
plan-upright = Der Pfeil zeigt, wie das Muster steht.
plan-alt-part = { $count }{ "\u00A0" }×{ "\u00A0" }{ $name }, { $size }
plan-alt = Ein Bogen von { $size }, durch { $cuts ->
    [one] 1 Schnitt
   *[other] { $cuts } Schnitte
} geteilt in { $parts }.
parts-letter = Zeichen
parts-name = Zuschnitt
parts-size = Breite × Höhe
parts-per-kit = Je Set
parts-in-all = Gesamt
parts-summary = Was aus { $paper } geschnitten wird: Zeichen, Name, Größe und Anzahl.


## Steps at the trimmer

cutting-title = Zuschneiden: { $paper }
cutting-mark = Die Marke ist die Stelle am Lineal des Papierschneiders, an der eine Kante angelegt wird. Was zwischen dieser Kante und der Klinge liegt, wird abgeschnitten; das andere bleibt übrig.
cutting-marks = { $marks ->
    [one] Die Marke einmal einstellen.
   *[other] Die Marke { $marks }-mal einstellen{ $proven ->
        [yes] ; weniger geht mit diesen Schnitten nicht.
       *[no] .
    }
}
cutting-edges = Oben, unten, links und rechts gelten für das Muster, egal wie das Papier im Schneider liegt.
slack = { $plans ->
    [one] { $sheets ->
        [one] Ist der Bogen
       *[other] Ist ein Bogen
    }
   *[other] Ist ein Bogen für Plan { $plan }
} etwas zu { $way ->
    [width] schmal oder zu breit
   *[height] niedrig oder zu hoch
}, { $count ->
    [one] weicht dieses Teil mit ab: { $parts }.
   *[other] weichen diese Teile mit ab: { $parts }.
}
slack-many = Ist ein Bogen etwas zu klein oder zu groß, weicht der Zuschnitt mit ab, der am Ende nachgemessen wird.
slack-part = { $all ->
    [yes] { $count ->
        [one] { $name }
       *[other] alle { $count } × { $name }
    }
   *[no] { $count ->
        [one] einmal { $name }
       *[other] { $count } × { $name }
    }
}
cutting-scale = Zeichnungen:{ "\u00A0" }{ $scale }.
cutting-stack = Wo ein Schritt mehrere Bögen oder Teile nennt: bis zu { $count } Kante auf Kante stapeln und in einem Zug schneiden.
cutting-each = Wo ein Schritt mehrere Bögen oder Teile nennt: eins nach dem anderen schneiden, ohne die Marke zu verstellen.
cutting-slips = Auf jedes Teil, das beiseitegelegt wird, einen Zettel mit der Nummer seines Schritts legen.
take-sheet = { $plans ->
    [one] { $count ->
        [one] Den Bogen { $paper } nehmen.
       *[other] Die { $count } Bögen { $paper } nehmen.
    }
   *[other] { $count ->
        [one] Den Bogen { $paper } für Plan { $plan } nehmen.
       *[other] Die { $count } Bögen { $paper } für Plan { $plan } nehmen.
    }
}
sheet-face-up = Die Seite „{ $face }“ liegt oben.
take-aside = { $count ->
    [one] Das Teil aus Schritt { $step }, { $size }, nehmen{ $turn ->
        [yes] {" "}und um 90° drehen.
       *[no] .
    }
   *[other] Die { $count } Teile aus Schritt { $step }, je { $size }, nehmen{ $turn ->
        [yes] {" "}und um 90° drehen.
       *[no] .
    }
}
go-on = { $count ->
    [one] { $turn ->
        [yes] Das Teil in der Hand, { $size }, um 90° drehen.
       *[no] Mit dem Teil in der Hand, { $size }, weiterarbeiten.
    }
   *[other] { $turn ->
        [yes] Die { $count } Teile in der Hand, je { $size }, um 90° drehen.
       *[no] Mit den { $count } Teilen in der Hand, je { $size }, weiterarbeiten.
    }
}
edge-of-length = { $edge } ({ $length })
edge-by-length = { $which ->
    [long] Eine lange Kante ({ $length })
    [short] Eine kurze Kante ({ $length })
   *[any] Eine Kante ({ $length })
}
line-up = { $moves ->
    [yes] { $edge } an die Marke { $mark } legen
   *[no] Marke auf { $mark } lassen. { $edge } dort anlegen
} { $times ->
    [1] und schneiden.
    [2] und zweimal schneiden, dazwischen neu anlegen.
   *[other] und { $times }-mal schneiden, jedes Mal neu anlegen.
}
off-part = { $count ->
    [one] Abgeschnitten: { $name }{ $total ->
        [one] .
       *[other] , zusammen { $total }.
    }
   *[other] Jedes Mal abgeschnitten: { $name }, zusammen { $total }.
}
off-aside = { $count ->
    [one] Abgeschnitten: { $size }, für Schritt { $step } beiseitelegen.
   *[other] Abgeschnitten: { $count } Teile, je { $size }, für Schritt { $step } beiseitelegen.
}
off-in-hand = { $count ->
    [one] Abgeschnitten: { $size }, in der Hand behalten.
   *[other] Abgeschnitten: { $count } Teile, je { $size }, in der Hand behalten.
}
off-keep = { $large ->
    [yes] { $count ->
        [one] Abgeschnitten: { $size }, als Reststück aufheben.
       *[other] Abgeschnitten: { $count } Teile, je { $size }, als Reststücke aufheben.
    }
   *[no] { $count ->
        [one] Abgeschnitten: { $size }, zu den Papierresten.
       *[other] Abgeschnitten: { $count } Teile, je { $size }, zu den Papierresten.
    }
}
off-waste = { $count ->
    [one] Abgeschnitten: { $size }, Verschnitt.
   *[other] Abgeschnitten: { $count } Teile, je { $size }, Verschnitt.
}
off-mixed = Abgeschnitten: { $count } Teile, je { $size }, davon { $shares }.
share-part = { $count } × { $name }
share-aside = { $count } für Schritt { $step }
share-in-hand = { $count } für die Hand
share-keep = { $large ->
    [yes] { $count } als { $count ->
        [one] Reststück
       *[other] Reststücke
    }
   *[no] { $count } zu den Papierresten
}
share-waste = { $count } als Verschnitt
stays-part = { $also ->
    [yes] { $total ->
        [one] Übrig, noch einmal: { $name }.
       *[other] Übrig, noch { $total }-mal: { $name }.
    }
   *[no] Übrig: { $name }{ $total ->
        [one] .
       *[other] , zusammen { $total }.
    }
}
stays-check = { $total ->
    [one] Nachmessen: { $size }.
   *[other] Nachmessen: jedes { $size }.
}
stays-aside = { $total ->
    [one] Übrig: { $size }, für Schritt { $step } beiseitelegen.
   *[other] Übrig: { $total } Teile, je { $size }, für Schritt { $step } beiseitelegen.
}
stays-in-hand = { $total ->
    [one] Übrig: { $size }, in der Hand behalten.
   *[other] Übrig: { $total } Teile, je { $size }, in der Hand behalten.
}
stays-keep = { $large ->
    [yes] { $total ->
        [one] Übrig: { $size }, als Reststück aufheben.
       *[other] Übrig: { $total } Teile, je { $size }, als Reststücke aufheben.
    }
   *[no] { $total ->
        [one] Übrig: { $size }, zu den Papierresten.
       *[other] Übrig: { $total } Teile, je { $size }, zu den Papierresten.
    }
}
stays-waste = { $total ->
    [one] Übrig: { $size }, Verschnitt.
   *[other] Übrig: { $total } Teile, je { $size }, Verschnitt.
}
# What comes off and what stays are of one size and go the same way.
all-aside = { $count ->
    [2] Beide Teile, je { $size }, für Schritt { $step } beiseitelegen.
   *[other] Alle { $count } Teile, je { $size }, für Schritt { $step } beiseitelegen.
}
hard-to-hold = Es ist schmal: mit einem Lineal oder einem Stück Pappe festhalten, nicht mit den Fingerspitzen.
step-alt = Schnitt { $number }: Papier { $size }, an der Marke { $mark }: { $edge }; abgeschnitten: { $off }.


## Preparing

prepare-title = { $whose ->
    [maker] Für alle Sets vorbereiten
    [before] Vor der Reise
    [travel] Unterwegs: zuerst
   *[here] Zuerst, für alle Karten
}
score-base = { $count ->
    [one] In der Mitte rillen: { $base }. Flach hinlegen, { $size }, und die Linie eindrücken, { $at } von { $edge ->
        [long] einer langen Kante.
        [short] einer kurzen Kante.
       *[any] einer Kante.
    }
   *[other] In der Mitte rillen: { $base }. Jede flach hinlegen, { $size }, und die Linie eindrücken, { $at } von { $edge ->
        [long] einer langen Kante.
        [short] einer kurzen Kante.
       *[any] einer Kante.
    }
}
score-alt = { $base }, flach liegend, Außenseite oben, { $size }, mit einer gestrichelten Rille quer durch die Mitte, { $at } von { $edge ->
    [long] einer langen Kante.
    [short] einer kurzen Kante.
   *[any] einer Kante.
}
score-caption = Außenseite oben. Gestrichelt: die Rille.
strip-alt = Ein Streifen { $size } mit dem Umriss des Etiketts, { $punched }, gestrichelt in der Mitte{ $stamped ->
    [yes] {" "}und darin die Stelle der gestempelten Worte
   *[no] {""}
}.
strip-caption = Gestrichelt: Etikett.
fold-bases = { $scored ->
    [yes] An der Rille falzen, der Grat liegt innen: { $bases }.
   *[no] Kante auf Kante zur Hälfte falzen: { $bases }.
}
press-with = Den Falz flach streichen; Werkzeug: { $tool }.
press-plain = Den Falz flach streichen.
strips-alt = Ein Streifen { $size } mit den Umrissen von { $count } Etiketten, je { $punched }, gestrichelt hintereinander{ $stamped ->
    [yes] {" "}und in jedem die Stelle der gestempelten Worte
   *[no] {""}
}. Von Mitte zu Mitte sind es { $apart }.
strips-caption = Gestrichelt: die { $count } Etiketten, nummeriert.
stamp-in-place = { $words } auf { $count ->
    [one] Platz { $places }
   *[other] den Plätzen { $places }
}
stamp-strips = Jeden Spruch auf seinen Platz auf einem Streifen ({ $letter }) stempeln{ $hasink ->
    [yes] {" "}– Farbe: { $ink }
   *[no] {""}
}{ $hasset ->
    [yes] {" "}– Stempel: { $set }
   *[no] {""}
}: { $items }. Die Mitte des ersten Platzes liegt { $first } vom Ende des Streifens, jede weitere { $apart } dahinter.{ $changes ->
    [yes] {" "}Erst alle Streifen mit einem Spruch stempeln, dann den Stempel wechseln.
   *[no] {""}
}
punch-go-on = Am Ende des Streifens beginnen. Nach jedem Etikett den Streifen { $end } vor dem nächsten abschneiden, damit der Stanzer es erreicht.
stamp-on = { $on ->
    [strip] einen Streifen
   *[label] ein Etikett
}
stamp-greetings = Jeden Spruch mittig auf { $on } stempeln{ $hasink ->
    [yes] {" "}– Farbe: { $ink }
   *[no] {""}
}{ $hasset ->
    [yes] {" "}– Stempel: { $set }
   *[no] {""}
}: { $items }.
stamp-item = { $words }{ $count ->
    [one] {""}
   *[other] {" "}({ $count }-mal)
}
stamp-item-on = { $words } auf { $on }{ $count ->
    [one] {""}
   *[other] {" "}({ $count }-mal)
}
its-label = das zugehörige Etikett
ink-dries = Die Farbe trocknen lassen, bevor sie berührt wird.
card-waits = { $minutes ->
    [one] Die Karte 1 Minute trocknen lassen.
   *[other] Die Karte { $minutes } Minuten trocknen lassen.
}
waits = { $minutes ->
    [one] 1 Minute trocknen lassen.
   *[other] { $minutes } Minuten trocknen lassen.
}
scraps-of = Papierresten { $paper }
a-punch = Stanzer
punch-labels = { $stamped ->
    [yes] Aus { $strips } { $count ->
        [one] das Etikett
       *[other] { $count } Etiketten
    } stanzen; Werkzeug: { $tool }. Den Stanzer umdrehen und nachsehen: die gestempelten Worte stehen mitten in der Öffnung.
   *[no] Aus { $strips } { $count ->
        [one] das Etikett
       *[other] { $count } Etiketten
    } stanzen; Werkzeug: { $tool }.
}
its-mat = Mattung
narrow-labels = { $which ->
    [all] Danach jedes Etikett schmaler machen
   *[some] Danach jedes Etikett mit { $label } schmaler machen
}: noch einmal in den Stanzer schieben, { $by } weiter { $side ->
    [left] nach links
    [right] nach rechts
    [top] nach oben
   *[bottom] nach unten
}{ $held ->
    [yes] , festhalten (Hilfsmittel: { $with })
   *[no] {""}
} und ein zweites Mal stanzen, sodass { $side ->
    [left] links
    [right] rechts
    [top] oben
   *[bottom] unten
} { $by } abfallen. Übrig bleiben { $size }{ $words ->
    [yes] ; damit die Worte darin mittig stehen, stehen sie beim ersten Stanzen { $off } { $side ->
        [left] rechts von
        [right] links von
        [top] unter
       *[bottom] über
    } der Mitte der Öffnung.
   *[no] .
}
punch-mats = Aus { $strips } { $count ->
    [one] die Mattung
   *[other] { $count } Mattungen
} stanzen; Werkzeug: { $tool }.
mat-halve = Die { $mat } { $halves ->
    [level] von links nach rechts
   *[upright] von oben nach unten
} halbieren und die Hälften { $slid ->
    [together] um { $by } übereinanderschieben.
   *[apart] mit { $by } Abstand legen: das Etikett deckt die Lücke.
}
mat-trim = { $halves ->
    [level] Am linken und am rechten Ende
   *[upright] Am oberen und am unteren Ende
} je { $by } abschneiden.
mat-shows = Mittig auf die Mattung legen; { $which ->
    [all] ringsum bleibt { $across } sichtbar.
    [across] links und rechts bleibt { $across } sichtbar.
    [up] oben und unten bleibt { $up } sichtbar.
   *[both] links und rechts bleibt { $across } sichtbar, oben und unten { $up }.
}
mat-same = Ebenso verfahren mit: { $labels }.
mat-lay = Mittig auf die zugehörige { $mat } legen; ringsum bleibt { $border } sichtbar.
so-long = { $length } { $item }
add-extra = Anbringen: { $item }{ $placed ->
    [yes] {" "}– { $place }.
   *[no] .
}
late-part = { $name }, { $size }
late-halve = { $count ->
    [one] Halbieren: { $piece },
   *[other] Halbieren: { $count } Zuschnitte { $piece },
} { $edge ->
    [long] der Länge nach
    [short] quer zur Länge
   *[any] durch die Mitte
}{ $with ->
    [yes] ; Werkzeug: { $tool }
   *[no] {""}
}. Jede Hälfte ergibt: { $parts }.
late-thirds = { $count ->
    [one] In drei gleiche Teile schneiden: { $piece },
   *[other] In je drei gleiche Teile schneiden: { $count } Zuschnitte { $piece },
} { $edge ->
    [long] der Länge nach
    [short] quer zur Länge
   *[any] von Kante zu Kante
}{ $with ->
    [yes] ; Werkzeug: { $tool }
   *[no] {""}
}. Jedes Drittel ergibt: { $parts }.
late-cut-off = { $at } abschneiden, an { $edge ->
    [long] einer langen Kante
    [short] einer kurzen Kante
   *[any] einer Kante
} von { $count ->
    [one] { $piece }
   *[other] jedem der { $count } Zuschnitte { $piece }
}{ $with ->
    [yes] ; Werkzeug: { $tool }
   *[no] {""}
}. Abgeschnitten: { $off }.
late-stays = Übrig: { $stays }.
late-keep = Aufheben für die Karte { $card }: { $part }.


how-tape = Klebeband kommt an die Ränder.
how-glue = Kleber dünn bis an die Ränder verstreichen und die Lage andrücken.
how-waits = { $minutes ->
    [0] Während eine Karte trocknet, mit der nächsten weitermachen.
    [one] Jede Karte 1 Minute trocknen lassen; solange mit der nächsten weitermachen.
   *[other] Jede Karte { $minutes } Minuten trocknen lassen; solange mit der nächsten weitermachen.
}
how-foam = Abstandspads kommen auf die Rückseite, nah an die Ecken, nicht an den Rand; die Folie zuletzt abziehen.


## Cards

cards-in-batches = In Serie arbeiten: zuerst bekommt jede Karte ihre erste Lage, dann jede ihre zweite, und so weiter.
card-count = Diese Karte { $count }-mal herstellen.
card-takes = Falz { $fold ->
    [left] links
    [top] oben
    [right] rechts
   *[bottom] unten
}. Bereitlegen: { $items }.
front-alt-short = Die fertige Vorderseite von { $card }.
front-alt = { $what ->
    [inside] Die Innenseite von { $card }
   *[front] Die Vorderseite von { $card }
}, { $size }, mit dem Falz { $fold ->
    [left] links
    [top] oben
    [right] rechts
   *[bottom] unten
}. Von der Grundkarte aufwärts: { $layers }.
apart-alt = Die Lagen von { $card } auseinandergezogen, in der Reihenfolge, in der sie auf die Grundkarte kommen: { $layers }.
apart-alt-layer = { $name }{ $raised ->
    [0] {""}
    [one] {" "}auf einem Abstandspad
   *[other] {" "}auf { $raised } Abstandspads
}
layers-title = So entstehen die Karten
layers-text = Die Lagen sind auseinandergezogen und so nummeriert, wie sie aufgesetzt werden. Lange Striche führen zum Platz jeder Lage{ $foam ->
    [yes] ; kleine Quadrate sind Abstandspads.
   *[no] .
} Gezeichnet im Maßstab { $scale }.
front-alt-layer = { $name }: { $place }
state-alt = { $what ->
    [inside] Die Innenseite von { $card }
   *[front] Die Vorderseite von { $card }
} nach diesem Schritt, mit dem Falz { $fold ->
    [left] links
    [top] oben
    [right] rechts
   *[bottom] unten
}. { $count ->
    [0] Die Grundkarte ist leer
    [one] Schon da, einfach gezeichnet: { $before }
   *[other] Schon da, einfach gezeichnet: { $before }
}. Neu, mit kräftigem Umriss{ $raised ->
    [0] {""}
    [one] {" "}und auf einem Abstandspad
   *[other] {" "}und auf { $raised } Abstandspads
}: { $name }, { $place }.
state-scale = Zeichnungen neben den Schritten:{ "\u00A0" }{ $scale }. Neues hat einen kräftigen Umriss.
tip = Tipp: { $tip }

back-named = die Seite „{ $face }“ von { $what }
back-plain = die Rückseite von { $what }
fix-tape = { $named ->
    [yes] Klebeband ({ $tool }) auf { $back }.
   *[no] Klebeband auf { $back }.
}
fix-glue = { $named ->
    [yes] Kleber ({ $tool }) auf { $back }.
   *[no] Kleber auf { $back }.
}
fix-with = Auf { $back } anbringen: { $tool }.
fix-plain = Kleber oder Klebeband auf { $back }.
set-raised = Auf { $count ->
    [one] ein Abstandspad
   *[other] { $count } Abstandspads
}: { $what }, { $how }.
lay-it = Auflegen: { $how }.
face-up = „{ $face }“ oben
face-stands = { $turn ->
    [none] „{ $face }“ oben, aufrecht
    [right] „{ $face }“ oben, Oberkante nach rechts
    [left] „{ $face }“ oben, Oberkante nach links
   *[over] „{ $face }“ oben, auf dem Kopf
}
pattern-stands = { $turn ->
    [none] Muster aufrecht
    [right] Oberkante des Musters nach rechts
    [left] Oberkante des Musters nach links
   *[over] Muster auf dem Kopf
}

place-middle = genau in der Mitte
place-spans = von Rand zu Rand
place-center = { $axis ->
    [level] waagerecht mittig
   *[upright] senkrecht mittig
}
place-flush = { $fold ->
    [yes] am Falz entlang
   *[no] { $side ->
        [left] bündig am linken Rand
        [top] bündig am oberen Rand
        [right] bündig am rechten Rand
       *[bottom] bündig am unteren Rand
    }
}
place-from = { $fold ->
    [yes] { $side ->
        [left] { $off } vom Falz
        [right] { $off } vom Falz
       *[other] { $off } unter dem Falz
    }
   *[no] { $side ->
        [left] { $off } vom linken Rand
        [top] { $off } vom oberen Rand
        [right] { $off } vom rechten Rand
       *[bottom] { $off } vom unteren Rand
    }
}
place-center-of = { $axis ->
    [level] waagerecht mittig zu { $of }
   *[upright] senkrecht mittig zu { $of }
}
place-touching = { $side ->
    [left] links direkt an { $of }
    [top] oben direkt an { $of }
    [right] rechts direkt an { $of }
   *[bottom] unten direkt an { $of }
}
place-beyond = { $side ->
    [left] { $gap } links von { $of }
    [top] { $gap } über { $of }
    [right] { $gap } rechts von { $of }
   *[bottom] { $gap } unter { $of }
}
place-straddling = { $side ->
    [left] mit der Mitte auf dem linken Rand von { $of }
    [top] mit der Mitte auf dem oberen Rand von { $of }
    [right] mit der Mitte auf dem rechten Rand von { $of }
   *[bottom] mit der Mitte auf dem unteren Rand von { $of }
}
place-level-with = { $side ->
    [left] bündig mit dem linken Rand von { $of }
    [top] bündig mit dem oberen Rand von { $of }
    [right] bündig mit dem rechten Rand von { $of }
   *[bottom] bündig mit dem unteren Rand von { $of }
}
place-within = { $side ->
    [left] { $inset } vom linken Rand von { $of }
    [top] { $inset } vom oberen Rand von { $of }
    [right] { $inset } vom rechten Rand von { $of }
   *[bottom] { $inset } vom unteren Rand von { $of }
}

trim-flush = Die Karte öffnen. Von innen bündig mit der Grundkarte abschneiden, was übersteht: { $what }.
inside-open = Die Karte öffnen. Dies kommt auf die { $half ->
    [lower] untere Hälfte
   *[right] rechte Hälfte
}.
inside-stamp = Innen auf die { $half ->
    [lower] untere Hälfte
   *[right] rechte Hälfte
} stempeln: { $words } – Farbe: { $ink }; trocknen lassen.
inside-write = Innen auf die { $half ->
    [lower] untere Hälfte
   *[right] rechte Hälfte
} schreiben: { $words }.
inside-choose = Beim Versenden innen schreiben: { $among }.
inside-later = Beim Versenden innen eigene Worte schreiben.
envelope-take = Den Umschlag nehmen, die Vorderseite nach oben.


## Envelopes and the post

envelope-title = { $gift ->
    [yes] Umschläge, und als Geschenk
   *[no] Umschläge
}
envelope-size = { $all ->
    [yes] Jede Karte passt in einen Umschlag { $size }.
   *[no] { $count ->
        [one] { $cards } passt in einen Umschlag { $size }.
       *[other] { $cards } passen in Umschläge { $size }.
    }
}
envelope-with = { $all ->
    [yes] Jede Karte passt in den Umschlag, der mit ihrer Grundkarte kommt.
   *[no] { $count ->
        [one] { $cards } passt in den Umschlag, der mit der Grundkarte kommt.
       *[other] { $cards } passen in die Umschläge, die mit den Grundkarten kommen.
    }
}
fit-in-short = Im Umschlag sind sie bis zu { $thick } dick und { $heavy } schwer.
envelope-post = { $raised ->
    [yes] Karten mit erhöhten Lagen sind dicker und können mehr kosten: bei der Post nachfragen.
   *[no] Formate und Preise ändern sich: bei der Post nachfragen.
}
envelope-estimate = Gerechnet ist jede Karte im Umschlag, Pads in voller Dicke, ohne Kleber und Briefmarke; alles ist geschätzt.
fit-summary = Wie dick und wie schwer jede Karte im Umschlag ist und wie viel Platz bleibt.
fit-card = Karte
fit-thick = Dicke
fit-heavy = Gewicht
fit-room = Luft im Umschlag
fit-mm = { $number }{ "\u00A0" }mm
fit-grams = { $number }{ "\u00A0" }g
fit-ounces = { $number }{ "\u00A0" }oz ({ $grams })
fit-spare = { $size }{ $tight ->
    [yes] , knapp
   *[no] {""}
}

post-hint = Nur als Anhaltspunkt, mit dem Jahr der Quelle: { $classes }.
post-class-of = { $operator } { $class }
post-class = { $class } ({ $seen ->
    [read] gelesen { $year }
   *[issued] { $year }
})
post-class-but = aber { $cards }: { $class }
post-below = zu klein oder zu leicht für einen Brief
post-beyond = kein Brief mehr
post-where = Land
post-as = Vermutlich als
post-source = Quelle
post-watch = Erhabene Lagen können mehr kosten, wo Briefe { $how ->
    [even] gleichmäßig dick
    [bends] leicht biegsam
   *[both] gleichmäßig dick und leicht biegsam
} sein müssen: { $operators }.
post-summary = Als was die Karten vermutlich verschickt werden, nach Land, mit der Quelle.
operator = { $operator ->
    [us] USA
    [ca] Kanada
    [uk] Vereinigtes Königreich
    [de] Deutschland
    [au] Australien
    [no] Norwegen
    [be] Belgien
    [fr] Frankreich
   *[abroad] Ausland
}


## The gift set

gift-title = Als Geschenk
gift-stack = { $cards ->
    [one] Die fertige Karte ist im Umschlag etwa { $high } hoch.
   *[other] Die { $cards } fertigen Karten ergeben, in ihren Umschlägen, einen etwa { $high } hohen Stapel.
}
gift-band = Eine Banderole um die kurze Seite ist { $long } lang, Überlappung eingerechnet, und { $wide } breit.
gift-from-offcut = Sie lässt sich aus dem Reststück von { $paper } schneiden.
gift-from-other = Kein Reststück ist lang genug: aus einem anderen Bogen schneiden oder zwei Streifen zusammensetzen.
gift-box = Eine Schachtel dafür misst innen { $size } und ist { $high } hoch.


## For the host: what to do when, how long it takes, who is there

host-title = Vor dem Kurs
host-when = { $when ->
    [week] Eine Woche vorher
    [day] Am Tag vorher
   *[hour] Eine Stunde vorher
}
host-buy = Einkaufen, was auf der Liste steht, und prüfen, ob alles gekommen ist.
host-samples = Von jeder Karte ein Muster herstellen und von jedem Arbeitsstand eines zum Zeigen aufheben, damit niemand aufs Trocknen warten muss.
host-print = { $copies } Kursblätter drucken: eines für jede Person und eines für die Kursleitung.
host-ahead = Vorbereiten: { $works }.
host-bags = { $bags ->
    [one] Eine Tüte füllen.
   *[other] { $bags } Tüten füllen{ $spares ->
        [0] .
        [one] , eine davon als Reserve.
       *[other] , { $spares } davon als Reserve.
    }
}
host-shared = { $count } × { $tool }: je eins für { $people } Personen.
host-places = { $people ->
    [one] Eine Tüte und ein Kursblatt hinlegen.
   *[other] An jeden der { $people } Plätze eine Tüte und ein Kursblatt legen.
}
host-show = Die Muster aufstellen, wo alle sie sehen.
time-title = Wie lange es dauert
time-summary = Was wann getan wird und wie viele Minuten es dauert.
time-from = Ab
time-what = Was
time-minutes = Minuten
time-doing = { $what ->
    [setup] Begrüßen, auslegen
    [preparing] Zuerst, für alle Karten
    [waiting] Trocknen lassen, sonst nichts zu tun
    [cleanup] Aufräumen
   *[buffer] Reserve
}
time-total = { $fits ->
    [yes] Alles zusammen dauert etwa { $total } der { $lasts } Minuten.
   *[no] Alles zusammen dauert etwa { $total } Minuten; es sind nur { $lasts }.
}{ $estimated ->
    [yes] {" "}Wo keine Minuten angegeben sind, ist geschätzt: beim Muster auf die Uhr sehen.
   *[no] {""}
} Für Anfänger ist die Hälfte mehr eingerechnet.
time-when-late = Wird es spät, diese Karte weglassen: { $card }. Das spart etwa { $minutes } Minuten.
time-leave-out = { $fits ->
    [yes] Damit { $lasts } Minuten reichen, weglassen: { $cards }. Das spart etwa { $saves } Minuten.
   *[no] Auch ohne { $cards } dauert es länger als { $lasts } Minuten.
} { $count ->
    [one] Diese Karte lässt sich zu Hause fertigstellen.
   *[other] Diese Karten lassen sich zu Hause fertigstellen.
}
attendance-title = Wer da ist
attendance-summary = Eine Liste aller, mit einem Kästchen zum Abhaken.
attendance-number = Nr.
attendance-name = Name
attendance-spares = { $spares ->
    [0] Es gibt kein Set als Reserve.
    [one] Es gibt ein Set als Reserve, für einen Gast oder ein verdorbenes Teil.
   *[other] Es gibt { $spares } Sets als Reserve, für Gäste und verdorbene Teile.
}


## For the maker of kits: labels and tallies

labels-title = Aufkleber für die Tüten
labels-text = An den Linien auseinanderschneiden. Sie sind in Originalgröße gedruckt.
label-number = { $spare ->
    [yes] { $number } von { $kits }, Reserve
   *[no] { $number } von { $kits }
}
label-alt = { $spare ->
    [yes] Ein Aufkleber für Tüte { $number } von { $kits }, als Reserve.
   *[no] Ein Aufkleber für Tüte { $number } von { $kits }.
}
tally-title = Tüten füllen
tally-text = { $tray ->
    [one] Eine Zahl durchstreichen, sobald so viele in der Tüte sind. Die Zeichen sind die des Schnittplans.
   *[other] Jede Zeile ist eine Ablage mit { $tray } Tüten. Eine Zahl durchstreichen, sobald so viele in ihren Tüten sind. Die Zeichen sind die des Schnittplans.
}
tally-summary = Wie viel von allem in jede Tüte kommt.
tally-bag = Tüte


## Check bar

# Behind the nought of a ruler.
ruler-inch = Zoll
ruler-mm = mm
check-title = Stimmt die Druckgröße?
check-text = Diese Balken sollen { $inches } und { $millimetres } lang sein; sonst mit 100{ "\u00A0" }% drucken.
check-alt = Zwei Maßstäbe zum Prüfen des Ausdrucks, einer von { $inches } und einer von { $millimetres }.


## Photos

photo-of-card = Ein Foto der fertigen Karte { $card }.
photo-of-set = Ein Foto der fertigen Karten dieses Sets.


## Sheets at true size

true-size-title = In Originalgröße
true-size-text = Diese Seiten mit 100{ "\u00A0" }% drucken und zuerst die Prüfbalken messen. Papier auf seine Zeichnung legen: so zeigt sich, ob die Größe stimmt oder wo ein Schnitt verläuft.
true-size-caption = { $paper }, { $size }{ $plans ->
    [one] .
   *[other] , Plan { $plan }.
}
true-size-alt = { $paper }, { $size }{ $plans ->
    [one] { "" }
   *[other] , Plan { $plan }
}, mit dem Umriss jedes Zuschnitts in Originalgröße.
true-size-piece = { $name }, { $size }.
true-size-piece-alt = Der Umriss von { $name }, { $size }, in Originalgröße.
true-size-part = Teil { $part } von { $parts }
true-size-joined = Einen Teil an der gestrichelten Linie abschneiden, so auf den Nachbarn legen, dass die Kreuze sich decken, und festkleben.
host-stages = Das sind { $cards } fertige { $cards ->
    [one] Karte
   *[other] Karten
} und { $stages } halb fertige: { $works }.
