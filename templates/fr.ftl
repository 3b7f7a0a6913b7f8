# Every sentence that is printed in French.
#
# Steps are told in the infinitive, which is polite to everyone. Names are the
# maker's own, of any gender and number: no article and no adjective leans on them.
# A space that does not break (U+00A0) stands before : ; ? and inside « ».
# Words of the trade: feuille, pièce, bande, chute, base, couche, mat, étiquette,
# message, marquer le pli, plier, repère, kit.


## Numbers and units

decimal-sign = ,
length-inch = { $number }{ "\u00A0" }po
length-mm = { $number }{ "\u00A0" }mm
size-inch = { $width }{ "\u00A0" }×{ "\u00A0" }{ $height }{ "\u00A0" }po
size-mm = { $width }{ "\u00A0" }×{ "\u00A0" }{ $height }{ "\u00A0" }mm
both-units = { $first } ({ $second })


## Joining words

quoted = «{ "\u00A0" }{ $words }{ "\u00A0" }»
list-next = { $first }, { $next }
list-last = { $first } et { $last }
list-choice = { $first } ou { $last }
list-comma = ,{ " " }
list-semicolon =  ;{ " " }


## The foot of each page

foot-with-edition = { $title } · { $edition }
foot-page = Page { $page } sur { $pages }
foot-continued = suite
foot-scale = Échelle { $scale }


## What things are called

name-with-letter = { $name }{ "\u00A0" }({ $letter })
name-offcut = chute à garder
label-named = étiquette { $words }
label-any = étiquette
label-blank = { $count ->
    [one] étiquette vierge
   *[other] étiquettes vierges
}
labels-named = étiquettes { $words }
strip-for-label = bande pour { $label }
mat-of-label = mat pour { $label }
base-named = base { $name }
several = { $count } × { $item }
base-counted = { $count ->
    [one] la base { $name }
   *[other] les { $count } bases { $name }
}
tool-kind = { $kind ->
    [stamps] jeu de tampons
    [ink] encreur
   *[glue] colle
}
tool-with-kind = { $name } ({ $kind })
edge = { $side ->
    [left] bord gauche
    [top] bord supérieur
    [right] bord droit
   *[bottom] bord inférieur
}
foam-squares = { $count ->
    [one] 1 carré de mousse
   *[other] { $count } carrés de mousse
}


## Cover

cover-makes = { $count ->
    [one] Pour faire une carte : { $names }.
   *[other] Pour faire { $count } cartes : { $names }.
}
cover-scale = Dessin à l’échelle { $scale }.
cover-maker = { $reader ->
    [class] Pour l’animation de l’atelier : ce qu’il faut préparer avant la séance.
   *[other] Pour la fabrication : ce qu’il faut préparer avant l’envoi des kits.
} { $kits ->
    [one] Calculé pour un kit.
   *[other] Calculé pour { $kits } kits{ $spares ->
        [0] .
        [one] , dont un de réserve.
       *[other] , dont { $spares } de réserve.
    }
}
cover-done = Déjà fait : { $works }.
cover-before = { $hands ->
    [maker] À faire ici : { $works }.
   *[reader] Avant le départ : { $works }.
}
cover-here = { $place ->
    [travel] En route : { $works }.
   *[other] Reste à faire : { $works }.
}
work-done = { $work ->
    [cut] les feuilles sont coupées
    [score] les plis des bases sont marqués
    [fold] les bases sont pliées
    [stamp] les messages sont tamponnés
    [punch] les étiquettes sont perforées
    [again] les pièces à recouper sont coupées
    [layer] les étiquettes sont sur leur mat
    [attach] les couches sont collées
   *[inside] les intérieurs sont tamponnés
}
work-do = { $work ->
    [cut] couper les feuilles
    [score] marquer les plis des bases
    [fold] plier les bases
    [stamp] tamponner les messages
    [punch] perforer les étiquettes
    [again] recouper certaines pièces
    [layer] coller les étiquettes sur leur mat
    [attach] coller les couches
   *[inside] ajouter le texte intérieur
}
cover-ask = Remis par { $name }. S’y adresser s’il manque une pièce ou si une étape n’est pas claire.
cover-ask-reach = Remis par { $name }. S’il manque une pièce ou si une étape n’est pas claire, s’adresser ici : { $reach }.
tips-title = Bon à savoir


## Cautions: the hazard, what it can do, how to avoid it

cautions-title = Précautions
signal = { $weight ->
    [warning] AVERTISSEMENT
    [caution] ATTENTION
   *[notice] AVIS
}
caution-lever = Longue lame à levier. Elle peut couper profondément. Laisser la protection en place et garder les doigts derrière. Abaisser et verrouiller le levier après chaque coupe. Réservé aux adultes.
caution-sliding = Lame tranchante dans le massicot. Elle peut couper la peau. Tenir les doigts loin de la rainure où court la lame. Poser le massicot à plat et fermer la lame avant de le ranger.
caution-rotary = Lame rotative tranchante. Elle peut couper la peau. La faire rouler vers l’avant, l’autre main derrière. Fermer la protection après chaque coupe.
caution-knife = Cutter tranchant. Il peut couper la peau. Couper sur un tapis, le long d’une règle en métal, l’autre main derrière la lame. Couvrir la lame dès que le cutter est posé.
caution-scissors = Pointes et lames tranchantes. Les ciseaux peuvent couper et piquer. Couper en restant assis et tendre les ciseaux fermés, poignées en avant. Les enfants ont besoin d’une personne à côté d’eux.
caution-punch = Perforatrice. Elle peut pincer ou meurtrir un doigt. Ne pas mettre les doigts dans l’ouverture et appuyer sur une table stable.
caution-heat = Outil chaud. Il brûle la peau au contact et roussit le papier. Le poser sur son support, ne jamais le laisser sans surveillance et le débrancher après usage. Réservé aux adultes.
caution-small-parts = Petites pièces, comme les carrés de mousse. Un jeune enfant peut s’étouffer. Les tenir hors de portée des enfants de moins de 3 ans.
caution-moving = Lames et outils chauds dans un véhicule en marche. Une secousse peut les faire glisser et blesser quelqu’un. Ne pas les utiliser pendant le trajet.
caution-luggage = Lames dans les bagages. Elles peuvent couper qui les ouvre et être retirées au contrôle. Les emballer et demander au transporteur, avant le voyage, ce qui est permis.
caution-glue = La colle humide tache le papier et la table et gondole le papier fin. L’étaler finement sur un papier de brouillon et suivre les indications de l’emballage.
caution-ink = L’encre tache les mains, les vêtements et la table. Couvrir la table, refermer l’encreur après usage et tenir les tampons humides loin des cartes.
caution-order = Couper dans l’ordre des étapes. Une première coupe fausse ne se rattrape pas.
caution-last = Les règles locales et les notices des outils passent avant tout.


## What to have at hand

need-title = { $reader ->
    [class] Sur la table, à partager
    [kit] Ce qu’il faut
    [travel] Ce qu’il faut à la maison
   *[maker] Outils
}
need-pen = un stylo
need-instead = { $tool }. À défaut : { $instead }


## What to buy

buy-title = À acheter
buy-for = { $kits ->
    [one] Pour un kit
   *[other] Pour { $kits } kits
}{ $spares ->
    [0] .
    [one] {" "}et un de réserve.
   *[other] {" "}et { $spares } de réserve.
}
buy-summary = À acheter : combien pour un kit, combien pour tous, en combien de paquets, et combien il reste.
buy-what = Quoi
buy-one-kit = Un kit
buy-all = Tous
buy-packs = Paquets
buy-over = Reste
buy-packs-of = { $packs ->
    [one] 1 paquet de { $holds }
   *[other] { $packs } paquets de { $holds }
}
buy-packs-assorted = { $packs ->
    [one] 1 paquet assorti qui en contient { $holds }
   *[other] { $packs } paquets assortis qui en contiennent { $holds } chacun
}
good-sheets = { $paper }, feuilles { $size }
good-scraps = chutes de papier { $paper }, au moins { $size }
good-envelopes = enveloppes pour { $base }
good-envelopes-size = enveloppes { $size } pour { $base }
good-foam = carrés de mousse
good-order = { $good }, référence { $number }


## The bag

bag-title = Dans le sachet : à cocher
bag-summary = Ce que contient le sachet : combien, quoi et de quelle taille.
bag-count = Nombre
bag-what = Quoi
bag-size = Taille
bag-base = { $base }, { $state ->
    [folded] pliée
    [scored] pli marqué, à plat
   *[flat] pli pas encore marqué
}
bag-label = { $label }{ $stamped ->
    [yes] , avec son message
   *[no] {""}
}{ $matted ->
    [yes] , sur son mat
   *[no] {""}
}
bag-foam = { $count ->
    [one] carré de mousse
   *[other] carrés de mousse
}
bag-envelopes = { $count ->
    [one] enveloppe
   *[other] enveloppes
}
bag-sheets = { $count ->
    [one] feuille, papier { $paper }
   *[other] feuilles, papier { $paper }
}
pack-title = { $hands ->
    [maker] Ce qui va dans chaque sachet
   *[reader] À emporter
}
pack-bags = { $kits ->
    [one] Un sachet.
   *[other] Préparer { $kits } sachets{ $spares ->
        [0] .
        [one] , dont un de réserve.
       *[other] , dont { $spares } de réserve.
    }
}
pack-tools = Et les outils pour la route :
pack-flat = Glisser le papier à plat entre deux cartons rigides pour que rien ne plie.


## Cut plan

cut-plan-title = Plan de coupe : { $paper }
sheets-needed = { $kits ->
    [one] { $sheets ->
        [one] Une feuille de papier { $paper }, { $size }, suffit.
       *[other] Il faut { $sheets } feuilles de papier { $paper }, { $size }.
    }
   *[other] { $sheets ->
        [one] Une feuille de papier { $paper }, { $size }, suffit pour les { $kits } kits
       *[other] Il faut { $sheets } feuilles de papier { $paper }, { $size }, pour les { $kits } kits
    }{ $spares ->
        [0] .
        [one] , dont un de réserve.
       *[other] , dont { $spares } de réserve.
    }
}
sheets-scraps = Couper dans des chutes de papier { $paper }, chacune d’au moins { $size }.
sheets-proven = Aucun plan ne se contente de moins de { $sheets } feuilles.
sheets-bound = { $least ->
    [one] Aucun plan plus économe n’a été trouvé.
   *[other] Aucun plan plus économe n’a été trouvé ; il en faut au moins { $least }.
}
offcut-kept = { $proven ->
    [yes] La chute à garder mesure { $size } ; aucun plan avec si peu de feuilles n’en laisse de plus grande.
   *[no] La chute à garder mesure { $size }.
}
own-way = La façon personnelle demande { $sheets ->
    [one] une feuille
   *[other] { $sheets } feuilles
} et { $cuts ->
    [one] une coupe
   *[other] { $cuts } coupes
}{ $same ->
    [all]  ; aucun meilleur plan n’a été trouvé.
    [sheets]  ; le meilleur plan trouvé demande autant de feuilles, et { $bestcuts ->
        [one] une coupe
       *[other] { $bestcuts } coupes
    }.
   *[none]  ; le meilleur plan trouvé en demande { $bestsheets }, et { $bestcuts ->
        [one] une coupe
       *[other] { $bestcuts } coupes
    }.
}
own-offcut = La façon personnelle laisse une chute de { $size }, le meilleur plan une de { $best }.
alike-instead = Toutes les feuilles coupées de la même façon, il faut { $more ->
    [0] autant de feuilles
    [one] une feuille de plus
   *[other] { $more } feuilles de plus
}, mais { $steps ->
    [one] 1 étape
   *[other] { $steps } étapes
} au lieu de { $othersteps }.
alike-chosen = Toutes les feuilles sont coupées de la même façon, { $kits ->
    [one] pour un kit
   *[other] pour { $kits } kits
}{ $over ->
    [0] .
    [one]  ; les pièces d’un kit restent.
   *[other]  ; les pièces de { $over } kits restent.
} { $more ->
    [0] Coupées de façons différentes, il faudrait autant de feuilles
    [one] Coupées de façons différentes, il faudrait une feuille de moins
   *[other] Coupées de façons différentes, il faudrait { $more } feuilles de moins
}, mais { $othersteps ->
    [one] 1 étape
   *[other] { $othersteps } étapes
} au lieu de { $steps }.
plan-caption = { $plans ->
    [one] { $sheets ->
        [one] Couper la feuille ainsi.
       *[other] Couper les { $sheets } feuilles ainsi.
    }
   *[other] Plan { $plan } : { $sheets ->
        [one] couper 1 feuille ainsi.
       *[other] couper { $sheets } feuilles ainsi.
    }
}
plan-lies = { $directed ->
    [yes] La face «{ "\u00A0" }{ $face }{ "\u00A0" }» est dessus ; la flèche montre le sens du motif.
   *[no] La face «{ "\u00A0" }{ $face }{ "\u00A0" }» est dessus.
}
plan-upright = La flèche montre le sens du motif.
plan-alt-part = { $count } × { $name }, { $size }
plan-alt = Une feuille de { $size } divisée par { $cuts ->
    [one] 1 coupe
   *[other] { $cuts } coupes
} en { $parts }.
parts-letter = Lettre
parts-name = Pièce
parts-size = Largeur × hauteur
parts-per-kit = Un kit
parts-in-all = En tout
parts-summary = Ce qui est coupé dans { $paper } : lettre, nom, taille et nombre.


## Steps at the trimmer

cutting-title = Coupe : { $paper }
cutting-mark = Le repère est l’endroit de la règle du massicot où un bord est aligné.
cutting-marks = { $marks ->
    [one] Régler le repère une fois.
   *[other] Régler le repère { $marks } fois{ $proven ->
        [yes]  ; aucun ordre de ces coupes n’en demande moins.
       *[no] .
    }
}
cutting-scale = Dessins : { $scale }.
cutting-stack = Quand une étape nomme plusieurs feuilles ou parties, en empiler jusqu’à { $count } bord à bord et les couper d’un seul coup.
cutting-each = Quand une étape nomme plusieurs feuilles ou parties, les couper l’une après l’autre sans changer le repère.
take-sheet = { $plans ->
    [one] { $count ->
        [one] Prendre la feuille de papier { $paper }.
       *[other] Prendre les { $count } feuilles de papier { $paper }.
    }
   *[other] { $count ->
        [one] Prendre la feuille de papier { $paper } pour le plan { $plan }.
       *[other] Prendre les { $count } feuilles de papier { $paper } pour le plan { $plan }.
    }
}
sheet-face-up = La face «{ "\u00A0" }{ $face }{ "\u00A0" }» est dessus.
take-aside = { $count ->
    [one] Prendre la partie de l’étape { $step }, { $size }{ $turn ->
        [yes] , et la tourner d’un quart de tour.
       *[no] .
    }
   *[other] Prendre les { $count } parties de l’étape { $step }, { $size } chacune{ $turn ->
        [yes] , et les tourner d’un quart de tour.
       *[no] .
    }
}
go-on = { $count ->
    [one] { $turn ->
        [yes] Tourner la partie en main, { $size }, d’un quart de tour.
       *[no] Continuer avec la partie en main, { $size }.
    }
   *[other] { $turn ->
        [yes] Tourner les { $count } parties en main, { $size } chacune, d’un quart de tour.
       *[no] Continuer avec les { $count } parties en main, { $size } chacune.
    }
}
edge-of-length = le { $edge } ({ $length })
edge-by-length = { $which ->
    [long] un bord long ({ $length })
    [short] un bord court ({ $length })
   *[any] un bord ({ $length })
}
line-up = { $moves ->
    [yes] Aligner { $edge } sur le repère { $mark } et
   *[no] Au même repère, aligner { $edge } et
} { $times ->
    [1] couper.
    [2] couper deux fois, en réalignant entre les deux.
   *[other] couper { $times } fois, en réalignant chaque fois.
}
off-part = { $count ->
    [one] Ce qui se détache : { $name }{ $total ->
        [one] .
       *[other] , { $total } en tout.
    }
   *[other] Ce qui se détache chaque fois : { $name }, { $total } en tout.
}
off-aside = { $count ->
    [one] Mettre de côté ce qui se détache, { $size }, pour l’étape { $step }.
   *[other] Mettre de côté les { $count } parties qui se détachent, { $size } chacune, pour l’étape { $step }.
}
off-in-hand = { $count ->
    [one] Garder en main ce qui se détache, { $size }.
   *[other] Garder en main les { $count } parties qui se détachent, { $size } chacune.
}
off-keep = { $large ->
    [yes] { $count ->
        [one] Ce qui se détache, { $size }, est la chute à garder.
       *[other] Les { $count } parties qui se détachent, { $size } chacune, sont des chutes à garder.
    }
   *[no] { $count ->
        [one] Ce qui se détache, { $size }, va aux petites chutes.
       *[other] Les { $count } parties qui se détachent, { $size } chacune, vont aux petites chutes.
    }
}
off-waste = { $count ->
    [one] Ce qui se détache, { $size }, est perdu.
   *[other] Les { $count } parties qui se détachent, { $size } chacune, sont perdues.
}
stays-part = { $also ->
    [yes] Il reste { $total ->
        [one] encore une pièce pareille.
       *[other] encore { $total } pièces pareilles.
    }
   *[no] Il reste : { $name }{ $total ->
        [one] .
       *[other] , { $total } en tout.
    }
}
stays-check = Mesurer : il faut trouver { $size }.
stays-aside = Mettre de côté ce qui reste, { $size }, pour l’étape { $step }.
stays-in-hand = { $size } restent en main.
stays-keep = { $large ->
    [yes] Ce qui reste, { $size }, est une chute à garder.
   *[no] Ce qui reste, { $size }, va aux petites chutes.
}
stays-waste = Ce qui reste, { $size }, est perdu.
hard-to-hold = C’est étroit : tenir avec une règle ou un morceau de carton, pas du bout des doigts.
step-alt = Coupe { $number } : papier { $size }, { $edge } en place, repère { $mark } ; { $off } se détache.


## Preparing

prepare-title = { $whose ->
    [maker] Préparer pour tous les kits
    [before] Avant le départ
    [travel] En route : d’abord
   *[here] D’abord, pour toutes les cartes
}
score-base = { $count ->
    [one] Marquer le pli au milieu de { $base } : poser à plat, { $size }, et tracer la ligne en creux à { $at } { $edge ->
        [long] d’un bord long.
        [short] d’un bord court.
       *[any] d’un bord.
    }
   *[other] Marquer le pli au milieu, pour { $base } : poser chacune à plat, { $size }, et tracer la ligne en creux à { $at } { $edge ->
        [long] d’un bord long.
        [short] d’un bord court.
       *[any] d’un bord.
    }
}
fold-bases = { $scored ->
    [yes] Plier { $bases } sur le pli marqué, le bourrelet à l’intérieur.
   *[no] Plier { $bases } en deux, bord sur bord.
}
press-with = Bien écraser le pli ; outil : { $tool }.
press-plain = Bien écraser le pli.
stamp-on = { $on ->
    [strip] une bande
   *[label] une étiquette
}
stamp-greetings = Tamponner chaque message au milieu d’{ $on }{ $hasink ->
    [yes] {" "}– encre : { $ink }
   *[no] {""}
}{ $hasset ->
    [yes] {" "}– tampons : { $set }
   *[no] {""}
}. Messages : { $items }.
stamp-item = { $words }{ $count ->
    [one] {""}
   *[other] {" "}({ $count } fois)
}
stamp-item-on = { $words } sur { $on }{ $count ->
    [one] {""}
   *[other] {" "}({ $count } fois)
}
its-label = son étiquette
ink-dries = Laisser sécher l’encre avant d’y toucher.
card-waits = { $minutes ->
    [one] Laisser sécher la carte 1 minute.
   *[other] Laisser sécher la carte { $minutes } minutes.
}
waits = { $minutes ->
    [one] Laisser sécher 1 minute.
   *[other] Laisser sécher { $minutes } minutes.
}
scraps-of = des chutes de papier { $paper }
a-punch = perforatrice
punch-labels = { $stamped ->
    [yes] Perforer { $count ->
        [one] l’étiquette
       *[other] { $count } étiquettes
    } dans { $strips } ; outil : { $tool }. Retourner la perforatrice et vérifier : les mots tamponnés sont au milieu de l’ouverture.
   *[no] Perforer { $count ->
        [one] l’étiquette
       *[other] { $count } étiquettes
    } dans { $strips } ; outil : { $tool }.
}
its-mat = mat
mat-lay = Poser au milieu de son { $mat } ; { $border } dépassent tout autour.
late-part = { $name }, { $size }
late-halve = { $count ->
    [one] Couper en deux { $edge ->
        [long] dans la longueur
        [short] dans la largeur
       *[any] par le milieu
    } : { $piece }
   *[other] Couper en deux { $edge ->
        [long] dans la longueur
        [short] dans la largeur
       *[any] par le milieu
    } les { $count } pièces { $piece }
}{ $with ->
    [yes] {" "}– outil : { $tool }
   *[no] {""}
}. Chaque moitié donne : { $parts }.
late-thirds = { $count ->
    [one] Couper en trois parts égales { $edge ->
        [long] dans la longueur
        [short] dans la largeur
       *[any] d’un bord à l’autre
    } : { $piece }
   *[other] Couper en trois parts égales { $edge ->
        [long] dans la longueur
        [short] dans la largeur
       *[any] d’un bord à l’autre
    } les { $count } pièces { $piece }
}{ $with ->
    [yes] {" "}– outil : { $tool }
   *[no] {""}
}. Chaque tiers donne : { $parts }.
late-cut-off = Enlever { $at } { $edge ->
    [long] sur un bord long
    [short] sur un bord court
   *[any] sur un bord
}{ $count ->
    [one]  : { $piece }
   *[other] {" "}de chacune des { $count } pièces { $piece }
}{ $with ->
    [yes] {" "}– outil : { $tool }
   *[no] {""}
}. Ce qui se détache : { $off }.
late-stays = Il reste : { $stays }.
late-keep = Garder pour la carte { $card } : { $part }.


how-tape = Poser l’adhésif le long des bords.
how-glue = Étaler la colle finement, jusqu’aux bords, et appuyer sur la couche.
how-waits = Pendant qu’une carte sèche, passer à la suivante.
how-foam = Coller les carrés de mousse au dos, près des coins mais en retrait des bords ; retirer leurs films en dernier.


## Cards

card-count = Faire { $count } fois cette carte.
card-takes = Pli { $fold ->
    [left] à gauche
    [top] en haut
    [right] à droite
   *[bottom] en bas
}. Préparer : { $items }.
front-alt-short = Le devant terminé de { $card }.
front-alt = { $what ->
    [inside] L’intérieur de { $card }
   *[front] Le devant de { $card }
}, { $size }, avec le pli { $fold ->
    [left] à gauche
    [top] en haut
    [right] à droite
   *[bottom] en bas
}. De la base vers le haut : { $layers }.
apart-alt = Les couches de { $card }, écartées ; de la base vers le haut : { $layers }.
front-alt-layer = { $name } : { $place }
tip = Conseil : { $tip }

back-named = la face «{ "\u00A0" }{ $face }{ "\u00A0" }» de { $what }
back-plain = le dos de { $what }
fix-tape = { $named ->
    [yes] Mettre de l’adhésif ({ $tool }) sur { $back }.
   *[no] Mettre de l’adhésif sur { $back }.
}
fix-glue = { $named ->
    [yes] Mettre de la colle ({ $tool }) sur { $back }.
   *[no] Mettre de la colle sur { $back }.
}
fix-with = Poser sur { $back } : { $tool }.
fix-plain = Mettre de la colle ou de l’adhésif sur { $back }.
set-raised = Monter { $what } sur { $count ->
    [one] un carré de mousse
   *[other] { $count } carrés de mousse
} : { $how }.
lay-it = Poser : { $how }.
face-up = face «{ "\u00A0" }{ $face }{ "\u00A0" }» visible
pattern-stands = { $turn ->
    [none] motif à l’endroit
    [right] haut du motif vers la droite
    [left] haut du motif vers la gauche
   *[over] motif à l’envers
}

place-middle = bien au milieu
place-spans = de bord à bord
place-center = { $axis ->
    [level] centré en largeur
   *[upright] centré en hauteur
}
place-flush = { $fold ->
    [yes] le long du pli
   *[no] { $side ->
        [left] au ras du bord gauche
        [top] au ras du bord supérieur
        [right] au ras du bord droit
       *[bottom] au ras du bord inférieur
    }
}
place-from = { $fold ->
    [yes] { $side ->
        [left] à { $off } du pli
        [right] à { $off } du pli
       *[other] à { $off } sous le pli
    }
   *[no] { $side ->
        [left] à { $off } du bord gauche
        [top] à { $off } sous le bord supérieur
        [right] à { $off } du bord droit
       *[bottom] à { $off } au-dessus du bord inférieur
    }
}
place-center-of = { $axis ->
    [level] centré en largeur sur { $of }
   *[upright] centré en hauteur sur { $of }
}
place-touching = { $side ->
    [left] contre { $of }, à gauche
    [top] contre { $of }, au-dessus
    [right] contre { $of }, à droite
   *[bottom] contre { $of }, en dessous
}
place-beyond = { $side ->
    [left] à { $gap } à gauche de { $of }
    [top] à { $gap } au-dessus de { $of }
    [right] à { $gap } à droite de { $of }
   *[bottom] à { $gap } au-dessous de { $of }
}
place-straddling = { $side ->
    [left] à cheval sur le bord gauche de { $of }
    [top] à cheval sur le bord supérieur de { $of }
    [right] à cheval sur le bord droit de { $of }
   *[bottom] à cheval sur le bord inférieur de { $of }
}
place-level-with = { $side ->
    [left] au ras du bord gauche de { $of }
    [top] au ras du bord supérieur de { $of }
    [right] au ras du bord droit de { $of }
   *[bottom] au ras du bord inférieur de { $of }
}
place-within = { $side ->
    [left] à { $inset } du bord gauche de { $of }
    [top] à { $inset } du bord supérieur de { $of }
    [right] à { $inset } du bord droit de { $of }
   *[bottom] à { $inset } du bord inférieur de { $of }
}

trim-flush = Ouvrir la carte. De l’intérieur, couper au ras de la base ce qui dépasse : { $what }.
inside-open = Ouvrir la carte. Ceci va sur la moitié { $half ->
    [lower] inférieure
   *[right] droite
}.
inside-stamp = À l’intérieur, sur la moitié { $half ->
    [lower] inférieure
   *[right] droite
}, tamponner { $words } – encre : { $ink } ; laisser sécher.
inside-write = À l’intérieur, sur la moitié { $half ->
    [lower] inférieure
   *[right] droite
}, écrire { $words }.
inside-choose = Au moment d’envoyer la carte, écrire à l’intérieur : { $among }.
inside-later = Au moment d’envoyer la carte, écrire à l’intérieur un texte de son choix.
envelope-take = Prendre l’enveloppe, le recto devant soi.


## Envelopes and the post

envelope-title = Enveloppes
envelope-size = { $count ->
    [one] { $cards } va dans une enveloppe { $size }.
   *[other] { $cards } vont dans des enveloppes { $size }.
}
envelope-with = { $count ->
    [one] { $cards } va dans l’enveloppe livrée avec sa base.
   *[other] { $cards } vont dans les enveloppes livrées avec leurs bases.
}
envelope-post = { $raised ->
    [yes] Les cartes en relief sont épaisses : demander à l’opérateur postal ce qu’il accepte.
   *[no] Demander à l’opérateur postal ce qu’il accepte.
}


## Check bar

# Behind the nought of a ruler.
ruler-inch = po
ruler-mm = mm
check-title = Est-ce imprimé en vraie grandeur ?
check-text = Ces barres mesurent { $inches } et { $millimetres }. Sinon, réimprimer à 100{ "\u00A0" }%.
check-alt = Deux règles pour vérifier l’impression, l’une de { $inches } et l’autre de { $millimetres }.
