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

foot-with-edition = { $title } · { $edition }
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
    [left] linke Kante
    [top] obere Kante
    [right] rechte Kante
   *[bottom] untere Kante
}
foam-squares = { $count ->
    [one] 1 Schaumstoffpad
   *[other] { $count } Schaumstoffpads
}


## Cover

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
    [cut] die Bögen sind zugeschnitten
    [score] die Grundkarten sind gerillt
    [fold] die Grundkarten sind gefalzt
    [stamp] die Sprüche sind gestempelt
    [punch] die Etiketten sind gestanzt
    [again] die weiteren Schnitte an einzelnen Zuschnitten sind gemacht
    [layer] die Etiketten sitzen auf ihren Mattungen
    [attach] die Lagen sind aufgeklebt
   *[inside] die Innenseiten sind gestempelt
}
work-do = { $work ->
    [cut] die Bögen zuschneiden
    [score] die Grundkarten rillen
    [fold] die Grundkarten falzen
    [stamp] die Sprüche stempeln
    [punch] die Etiketten stanzen
    [again] einzelne Zuschnitte weiter teilen
    [layer] die Etiketten auf ihre Mattungen kleben
    [attach] die Lagen aufkleben
   *[inside] den Text innen ergänzen
}
cover-ask = Ausgegeben von: { $name }. Dort bitte nachfragen, wenn etwas fehlt oder ein Schritt unklar ist.
cover-ask-reach = Ausgegeben von: { $name }. Wenn etwas fehlt oder ein Schritt unklar ist, bitte hier nachfragen: { $reach }.
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
caution-small-parts = Kleine Teile, zum Beispiel Schaumstoffpads. Kleine Kinder können daran ersticken. Von Kindern unter 3 Jahren fernhalten.
caution-moving = Klingen und heiße Werkzeuge im fahrenden Fahrzeug. Bei einem Ruck können sie abrutschen und jemanden verletzen. Während der Fahrt nicht benutzen.
caution-luggage = Klingen im Gepäck. Sie können beim Öffnen verletzen und abgenommen werden. Gut einwickeln und vor der Reise beim Verkehrsunternehmen nachfragen, was erlaubt ist.
caution-glue = Nasser Kleber hinterlässt Flecken auf Papier und Tischen und wellt dünnes Papier. Über Schmierpapier dünn verstreichen und die Angaben auf der Packung beachten.
caution-ink = Stempelfarbe färbt Hände, Kleidung und Tische. Den Tisch abdecken, das Kissen nach Gebrauch schließen und feuchte Stempel von den Karten fernhalten.
caution-order = In der Reihenfolge der Schritte schneiden. Ein falscher erster Schnitt lässt sich nicht rückgängig machen.
caution-last = Örtliche Vorschriften und die Anleitungen der Werkzeuge gehen vor.


## What to have at hand

need-title = { $reader ->
    [class] Auf dem Tisch, für alle
    [kit] Was gebraucht wird
    [travel] Was zu Hause gebraucht wird
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
buy-what = Was
buy-one-kit = Ein Set
buy-all = Alle
buy-packs = Packungen
buy-over = Übrig
buy-packs-of = { $packs ->
    [one] 1 Packung zu { $holds }
   *[other] { $packs } Packungen zu { $holds }
}
buy-packs-assorted = { $packs ->
    [one] 1 gemischte Packung mit { $holds } davon
   *[other] { $packs } gemischte Packungen mit { $holds } davon
}
good-sheets = { $paper }, Bögen { $size }
good-scraps = Papierreste { $paper }, mindestens { $size }
good-envelopes = Umschläge für { $base }
good-envelopes-size = Umschläge { $size } für { $base }
good-foam = Schaumstoffpads
good-order = { $good }, Bestellnummer { $number }


## The bag

bag-title = In der Tüte: bitte abhaken
bag-summary = Was in der Tüte liegt: wie viel, was und wie groß.
bag-count = Anzahl
bag-what = Was
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
   *[no] {""}
}
bag-foam = { $count ->
    [one] Schaumstoffpad
   *[other] Schaumstoffpads
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
    [maker] Was in jede Tüte kommt
   *[reader] Was einzupacken ist
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
    [yes] Das Reststück zum Aufheben misst { $size }; kein Plan mit so wenigen Bögen lässt ein größeres übrig.
   *[no] Das Reststück zum Aufheben misst { $size }.
}
own-way = Der eigene Weg braucht { $sheets ->
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
own-offcut = Der eigene Weg lässt ein Reststück von { $size } übrig, der beste Plan eines von { $best }.
alike-instead = Werden alle Bögen gleich geschnitten, braucht es { $more ->
    [0] ebenso viele Bögen
    [one] einen Bogen mehr
   *[other] { $more } Bögen mehr
}, aber nur { $steps ->
    [one] 1 Schritt
   *[other] { $steps } Schritte
} statt { $othersteps }.
alike-chosen = Alle Bögen werden gleich geschnitten, { $kits ->
    [one] für ein Set
   *[other] für { $kits } Sets
}{ $over ->
    [0] .
    [one] ; die Zuschnitte für ein Set bleiben übrig.
   *[other] ; die Zuschnitte für { $over } Sets bleiben übrig.
} { $more ->
    [0] Verschieden geschnitten wären es ebenso viele Bögen
    [one] Verschieden geschnitten wäre es ein Bogen weniger
   *[other] Verschieden geschnitten wären es { $more } Bögen weniger
}, aber { $othersteps ->
    [one] 1 Schritt
   *[other] { $othersteps } Schritte
} statt { $steps }.
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
parts-per-kit = Ein Set
parts-in-all = Gesamt
parts-summary = Was aus { $paper } geschnitten wird: Zeichen, Name, Größe und Anzahl.


## Steps at the trimmer

cutting-title = Zuschneiden: { $paper }
cutting-mark = Die Marke ist die Stelle am Lineal des Papierschneiders, an der eine Kante angelegt wird.
cutting-marks = { $marks ->
    [one] Die Marke wird einmal eingestellt.
   *[other] Die Marke wird { $marks }-mal eingestellt{ $proven ->
        [yes] ; keine Reihenfolge dieser Schnitte kommt mit weniger aus.
       *[no] .
    }
}
cutting-scale = Zeichnungen: { $scale }.
cutting-stack = Wo ein Schritt mehrere Bögen oder Teile nennt: bis zu { $count } Kante auf Kante stapeln und in einem Zug schneiden.
cutting-each = Wo ein Schritt mehrere Bögen oder Teile nennt: eins nach dem anderen schneiden, ohne die Marke zu verstellen.
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
        [yes] {" "}und um eine Vierteldrehung drehen.
       *[no] .
    }
   *[other] Die { $count } Teile aus Schritt { $step }, je { $size }, nehmen{ $turn ->
        [yes] {" "}und um eine Vierteldrehung drehen.
       *[no] .
    }
}
go-on = { $count ->
    [one] { $turn ->
        [yes] Das Teil in der Hand, { $size }, um eine Vierteldrehung drehen.
       *[no] Mit dem Teil in der Hand, { $size }, weiterarbeiten.
    }
   *[other] { $turn ->
        [yes] Die { $count } Teile in der Hand, je { $size }, um eine Vierteldrehung drehen.
       *[no] Mit den { $count } Teilen in der Hand, je { $size }, weiterarbeiten.
    }
}
edge-of-length = die { $edge } ({ $length })
edge-by-length = { $which ->
    [long] eine lange Kante ({ $length })
    [short] eine kurze Kante ({ $length })
   *[any] eine Kante ({ $length })
}
line-up = { $moves ->
    [yes] An der Marke { $mark } anlegen: { $edge }.
   *[no] An derselben Marke anlegen: { $edge }.
} { $times ->
    [1] Schneiden.
    [2] Zweimal schneiden, dazwischen neu anlegen.
   *[other] { $times }-mal schneiden, jedes Mal neu anlegen.
}
off-part = { $count ->
    [one] Es fällt ab: { $name }{ $total ->
        [one] .
       *[other] , zusammen { $total }.
    }
   *[other] Jedes Mal fällt ab: { $name }, zusammen { $total }.
}
off-aside = { $count ->
    [one] Was abfällt, { $size }, für Schritt { $step } beiseitelegen.
   *[other] Die { $count } Teile, die abfallen, je { $size }, für Schritt { $step } beiseitelegen.
}
off-in-hand = { $count ->
    [one] Was abfällt, { $size }, in der Hand behalten.
   *[other] Die { $count } Teile, die abfallen, je { $size }, in der Hand behalten.
}
off-keep = { $large ->
    [yes] { $count ->
        [one] Was abfällt, { $size }, als Reststück aufheben.
       *[other] Die { $count } Teile, die abfallen, je { $size }, als Reststücke aufheben.
    }
   *[no] { $count ->
        [one] Was abfällt, { $size }, kommt zu den Papierresten.
       *[other] Die { $count } Teile, die abfallen, je { $size }, kommen zu den Papierresten.
    }
}
off-waste = { $count ->
    [one] Was abfällt, { $size }, ist Verschnitt.
   *[other] Die { $count } Teile, die abfallen, je { $size }, sind Verschnitt.
}
stays-part = { $also ->
    [yes] Übrig bleibt { $total ->
        [one] noch ein solches Teil.
       *[other] das gleiche Teil, { $total }-mal.
    }
   *[no] Übrig bleibt: { $name }{ $total ->
        [one] .
       *[other] , zusammen { $total }.
    }
}
stays-check = Nachmessen: es soll { $size } messen.
stays-aside = Was übrig bleibt, { $size }, für Schritt { $step } beiseitelegen.
stays-in-hand = { $size } bleiben in der Hand.
stays-keep = { $large ->
    [yes] Was übrig bleibt, { $size }, als Reststück aufheben.
   *[no] Was übrig bleibt, { $size }, kommt zu den Papierresten.
}
stays-waste = Was übrig bleibt, { $size }, ist Verschnitt.
hard-to-hold = Es ist schmal: mit einem Lineal oder einem Stück Pappe festhalten, nicht mit den Fingerspitzen.
step-alt = Schnitt { $number }: Papier { $size }, angelegt: { $edge }, Marke { $mark }; { $off } fällt ab.


## Preparing

prepare-title = { $whose ->
    [maker] Für alle Sets vorbereiten
    [before] Vor der Reise
    [travel] Unterwegs: zuerst
   *[here] Zuerst, für alle Karten
}
score-base = { $count ->
    [one] In der Mitte rillen: { $base }. Flach hinlegen, { $size }, und die Linie eindrücken, { $at } von { $edge ->
        [long] einer langen Kante
        [short] einer kurzen Kante
       *[any] einer Kante
    } entfernt.
   *[other] In der Mitte rillen: { $base }. Jede flach hinlegen, { $size }, und die Linie eindrücken, { $at } von { $edge ->
        [long] einer langen Kante
        [short] einer kurzen Kante
       *[any] einer Kante
    } entfernt.
}
fold-bases = { $scored ->
    [yes] An der Rille falzen, der Grat liegt innen: { $bases }.
   *[no] Kante auf Kante zur Hälfte falzen: { $bases }.
}
press-with = Den Falz flach streichen; Werkzeug: { $tool }.
press-plain = Den Falz flach streichen.
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
mat-lay = Mittig auf die zugehörige { $mat } legen; ringsum bleibt { $border } sichtbar.
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
}. Es fällt ab: { $off }.
late-stays = Übrig bleibt: { $stays }.
late-keep = Aufheben für die Karte { $card }: { $part }.


how-tape = Klebeband an den Rändern entlang anbringen.
how-glue = Kleber dünn bis an die Ränder verstreichen und die Lage andrücken.
how-waits = Während eine Karte trocknet, mit der nächsten weitermachen.
how-foam = Schaumstoffpads kommen auf die Rückseite, nahe an die Ecken, aber mit Abstand zum Rand; die Schutzfolie erst zuletzt abziehen.


## Cards

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
apart-alt = Die Lagen von { $card } auseinandergezogen; von der Grundkarte aufwärts: { $layers }.
front-alt-layer = { $name }: { $place }
tip = Tipp: { $tip }

back-named = die Seite „{ $face }“ von { $what }
back-plain = die Rückseite von { $what }
fix-tape = { $named ->
    [yes] Klebeband ({ $tool }) auf { $back } kleben.
   *[no] Klebeband auf { $back } kleben.
}
fix-glue = { $named ->
    [yes] Kleber ({ $tool }) auf { $back } streichen.
   *[no] Kleber auf { $back } streichen.
}
fix-with = Auf { $back } anbringen: { $tool }.
fix-plain = Kleber oder Klebeband auf { $back } anbringen.
set-raised = Auf { $count ->
    [one] ein Schaumstoffpad
   *[other] { $count } Schaumstoffpads
} setzen: { $what }, { $how }.
lay-it = Auflegen: { $how }.
face-up = Seite „{ $face }“ nach oben
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
        [left] bündig mit der linken Kante
        [top] bündig mit der oberen Kante
        [right] bündig mit der rechten Kante
       *[bottom] bündig mit der unteren Kante
    }
}
place-from = { $fold ->
    [yes] { $side ->
        [left] { $off } vom Falz entfernt
        [right] { $off } vom Falz entfernt
       *[other] { $off } unter dem Falz
    }
   *[no] { $side ->
        [left] { $off } von der linken Kante
        [top] { $off } unter der oberen Kante
        [right] { $off } von der rechten Kante
       *[bottom] { $off } über der unteren Kante
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
    [left] mit der Mitte auf der linken Kante von { $of }
    [top] mit der Mitte auf der oberen Kante von { $of }
    [right] mit der Mitte auf der rechten Kante von { $of }
   *[bottom] mit der Mitte auf der unteren Kante von { $of }
}
place-level-with = { $side ->
    [left] bündig mit der linken Kante von { $of }
    [top] bündig mit der oberen Kante von { $of }
    [right] bündig mit der rechten Kante von { $of }
   *[bottom] bündig mit der unteren Kante von { $of }
}
place-within = { $side ->
    [left] { $inset } von der linken Kante von { $of }
    [top] { $inset } von der oberen Kante von { $of }
    [right] { $inset } von der rechten Kante von { $of }
   *[bottom] { $inset } von der unteren Kante von { $of }
}

trim-flush = Die Karte öffnen. Von innen bündig mit der Grundkarte abschneiden, was übersteht: { $what }.
inside-open = Die Karte öffnen. Dies kommt auf die { $half ->
    [lower] untere Hälfte
   *[right] rechte Hälfte
}.
inside-stamp = Innen, auf die { $half ->
    [lower] untere Hälfte
   *[right] rechte Hälfte
}, stempeln: { $words } – Farbe: { $ink }; trocknen lassen.
inside-write = Innen, auf die { $half ->
    [lower] untere Hälfte
   *[right] rechte Hälfte
}, schreiben: { $words }.
inside-choose = Beim Versenden innen schreiben: { $among }.
inside-later = Beim Versenden innen eigene Worte schreiben.
envelope-take = Den Umschlag nehmen, die Vorderseite nach oben.


## Envelopes and the post

envelope-title = Umschläge
envelope-size = { $count ->
    [one] { $cards } passt in einen Umschlag { $size }.
   *[other] { $cards } passen in Umschläge { $size }.
}
envelope-with = { $count ->
    [one] { $cards } passt in den Umschlag, der mit der Grundkarte kommt.
   *[other] { $cards } passen in die Umschläge, die mit den Grundkarten kommen.
}
envelope-post = { $raised ->
    [yes] Erhabene Karten sind dick: beim Postunternehmen nachfragen, was es annimmt.
   *[no] Beim Postunternehmen nachfragen, was es annimmt.
}


## Check bar

# Behind the nought of a ruler.
ruler-inch = Zoll
ruler-mm = mm
check-title = Ist dies in wahrer Größe gedruckt?
check-text = Diese Balken sind { $inches } und { $millimetres } lang. Wenn nicht, bitte noch einmal mit 100{ "\u00A0" }% drucken.
check-alt = Zwei Maßstäbe zum Prüfen des Ausdrucks, einer von { $inches } und einer von { $millimetres }.
