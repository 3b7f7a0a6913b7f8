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

foot-with-edition = { $title } · { $kind ->
    [number] édition { $edition }
   *[words] { $edition }
}
foot-with-name = { $left } · { $name }
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
strip-for-mat = bande pour le mat de { $label }
strip-for-labels = bande pour { $count } étiquettes
strip-for-mats = bande pour { $count } mats
mat-of-label = mat pour { $label }
base-named = base { $name }
several = { $count }{ "\u00A0" }×{ "\u00A0" }{ $item }
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

cover-name = Pour { $name }
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
    [cut] feuilles coupées
    [score] plis marqués
    [fold] bases pliées
    [stamp] messages tamponnés
    [punch] étiquettes découpées à la perforatrice
    [again] pièces recoupées
    [layer] étiquettes collées sur leur mat
    [attach] couches collées
   *[inside] intérieurs tamponnés
}
work-do = { $work ->
    [cut] couper les feuilles
    [score] marquer les plis
    [fold] plier les bases
    [stamp] tamponner les messages
    [punch] découper les étiquettes à la perforatrice
    [again] recouper des pièces
    [layer] coller les étiquettes sur leur mat
    [attach] coller les couches
   *[inside] ajouter le texte intérieur
}
cover-ask = Remis par { $name }. Un oubli, une question ? S’y adresser.
cover-ask-reach = Remis par { $name }. Un oubli, une question ? Demander : { $reach }.
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
caution-hot-car = L’encre et la colle humide tachent, et sèchent ou coulent dans une voiture chaude. Protéger le plateau, tout refermer après usage et le garder avec soi, debout. Tenir les tampons humides loin des cartes.
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
buy-what = Article
buy-one-kit = Un kit
buy-all = Tous
buy-packs = Paquets
buy-over = Reste
buy-packs-of = { $packs ->
    [one] 1 paquet de { $holds }
   *[other] { $packs } paquets de { $holds }
}
buy-rolls = { $packs ->
    [one] 1 rouleau
   *[other] { $packs } rouleaux
}
buy-packs-assorted = { $packs ->
    [one] 1 paquet assorti qui en contient { $holds }
   *[other] { $packs } paquets assortis qui en contiennent { $holds } chacun
}
buy-on-hand = Disponible
buy-price = Prix
buy-none = rien
buy-rolls-of = { $rolls ->
    [one] 1 rouleau de { $holds }
   *[other] { $rolls } rouleaux de { $holds }
}
buy-sheet-gives = { $cards ->
    [one] une carte par feuille de papier { $paper }
   *[other] { $cards } cartes par feuille de papier { $paper }
}
buy-sheets-give = Cela donne { $papers }.
buy-cost = Ce qui est consommé coûte { $all }{ $some ->
    [yes] , pour autant que les prix soient connus
   *[no] {""}
} : { $kits ->
    [one] { $card } par carte.
   *[other] { $kit } par kit et { $card } par carte, réserve comprise.
}
buy-cost-tools = Les outils coûtent { $tools } en plus.
money = { $amount }{ "\u00A0" }{ $currency }
metres = { $number }{ "\u00A0" }m
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
bag-what = Contenu
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
    [several] , sur leurs mats
   *[no] {""}
}
bag-mats = mats pour les étiquettes
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
pack-cards = Prendre une enveloppe par carte et y glisser ses pièces :
pack-besides = En plus :
pack-card = { $card } : { $parts }
pack-card-apart = { $card }, dans une pochette à part : { $parts }
pack-base = base
pack-postage = timbres : dans leur enveloppe, les cartes font jusqu’à { $thick } d’épaisseur et { $heavy } ; se renseigner auprès de l’opérateur postal
pack-packaging = Pour chaque kit : { $items }.
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
    [yes] Chute à garder : { $size } ; aucun plan avec si peu de feuilles n’en laisse de plus grande.
   *[no] Chute à garder : { $size }.
}
own-way = Le plan fourni demande { $sheets ->
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
own-offcut = Le plan fourni laisse une chute de { $size }, le meilleur plan une de { $best }.
alike-instead = Toutes les feuilles coupées de la même façon, il faut { $more ->
    [0] autant de feuilles
    [one] une feuille de plus
   *[other] { $more } feuilles de plus
}, mais { $steps ->
    [one] 1 étape
   *[other] { $steps } étapes
} au lieu de { $othersteps }.
alike-how = Pour l’avoir ainsi, demander « sheets alike » dans la description et refaire cette fiche.
alike-chosen = Toutes les feuilles sont coupées de la même façon, { $kits ->
    [one] pour un kit
   *[other] pour { $kits } kits
}{ $over ->
    [0] .
    [one]  ; les pièces d’un kit restent.
   *[other]  ; les pièces de { $over } kits restent.
}
fewer-sheets-alike = { $fewer ->
    [0] Coupées de façons différentes, il faudrait autant de feuilles
    [one] Coupées de façons différentes, il faudrait une feuille de moins
   *[other] Coupées de façons différentes, il faudrait { $fewer } feuilles de moins
}, avec { $dearer ->
    [yes] { $marks ->
        [0] autant de repères
        [one] un repère de plus
       *[other] { $marks } repères de plus
    }
   *[no] { $marks ->
        [one] un repère de moins
       *[other] { $marks } repères de moins
    }
} et { $othersteps ->
    [one] 1 étape
   *[other] { $othersteps } étapes
} au lieu de { $steps }.
fewer-sheets = { $fewer ->
    [one] Un autre plan se contenterait d’une feuille de moins
   *[other] Un autre plan se contenterait de { $fewer } feuilles de moins
}{ $dearer ->
    [yes] { $marks ->
        [0] , avec autant de repères.
        [one] , au prix d’un repère de plus.
       *[other] , au prix de { $marks } repères de plus.
    }
   *[no] { $marks ->
        [one] {" "}et même d’un repère de moins.
       *[other] {" "}et même de { $marks } repères de moins.
    }
}
lies-next-to = Pour que le motif se suive, deux pièces restent ensemble sur la feuille : { $piece } est { $side ->
    [left] juste à gauche
    [right] juste à droite
    [top] juste au-dessus
   *[bottom] juste au-dessous
} de { $other }.
lies-at-place = Un endroit précis du motif figure sur : { $piece }. Distance au bord gauche de la feuille : { $left } ; au bord supérieur : { $top }.
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
plan-alt-part = { $count }{ "\u00A0" }×{ "\u00A0" }{ $name }, { $size }
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
cutting-mark = Le repère est l’endroit de la règle du massicot où un bord est aligné. Ce qui est entre ce bord et la lame est coupé ; l’autre partie reste.
cutting-marks = { $marks ->
    [one] Régler le repère une fois.
   *[other] Régler le repère { $marks } fois{ $proven ->
        [yes]  ; aucun ordre de ces coupes n’en demande moins.
       *[no] .
    }
}
cutting-edges = Haut, bas, gauche et droite sont ceux du motif, quelle que soit la position du papier.
slack = { $plans ->
    [one] { $sheets ->
        [one] Si la feuille est
       *[other] Si une feuille est
    }
   *[other] Si une feuille du plan { $plan } est
} un peu { $way ->
    [width] étroite ou large
   *[height] basse ou haute
}, la différence { $count ->
    [one] va à cette pièce : { $parts }.
   *[other] va à ces pièces : { $parts }.
}
slack-many = La pièce à mesurer à la fin reçoit ce qui manque à sa feuille ou ce qu’elle a en trop.
slack-part = { $all ->
    [yes] { $count ->
        [one] { $name }
       *[other] les { $count } × { $name }
    }
   *[no] { $count ->
        [one] une fois { $name }
       *[other] { $count } × { $name }
    }
}
cutting-scale = Dessins :{ "\u00A0" }{ $scale }.
cutting-stack = Quand une étape nomme plusieurs feuilles ou parties, en empiler jusqu’à { $count } bord à bord et les couper d’un seul coup.
cutting-each = Quand une étape nomme plusieurs feuilles ou parties, les couper l’une après l’autre sans changer le repère.
cutting-slips = Poser sur chaque partie mise de côté un papier avec le numéro de son étape.
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
   *[no] Laisser le repère à { $mark }, aligner { $edge } et
} { $times ->
    [1] couper.
    [2] couper deux fois, en réalignant entre les deux.
   *[other] couper { $times } fois, en réalignant chaque fois.
}
off-part = { $count ->
    [one] Coupé : { $name }{ $total ->
        [one] .
       *[other] , { $total } en tout.
    }
   *[other] Coupé chaque fois : { $name }, { $total } en tout.
}
off-aside = { $count ->
    [one] Coupé : { $size }, à mettre de côté pour l’étape { $step }.
   *[other] Coupé : { $count } parties de { $size }, à mettre de côté pour l’étape { $step }.
}
off-in-hand = { $count ->
    [one] Coupé : { $size }, à garder en main.
   *[other] Coupé : { $count } parties de { $size }, à garder en main.
}
off-keep = { $large ->
    [yes] { $count ->
        [one] Coupé : { $size }, chute à garder.
       *[other] Coupé : { $count } parties de { $size }, chutes à garder.
    }
   *[no] { $count ->
        [one] Coupé : { $size }, pour les petites chutes.
       *[other] Coupé : { $count } parties de { $size }, pour les petites chutes.
    }
}
off-waste = { $count ->
    [one] Coupé : { $size }, à jeter.
   *[other] Coupé : { $count } parties de { $size }, à jeter.
}
off-mixed = Coupé : { $count } parties de { $size }, dont { $shares }.
share-part = { $count } × { $name }
share-aside = { $count } pour l’étape { $step }
share-in-hand = { $count } à garder en main
share-keep = { $large ->
    [yes] { $count } à garder comme { $count ->
        [one] chute
       *[other] chutes
    }
   *[no] { $count } pour les petites chutes
}
share-waste = { $count } à jeter
stays-part = { $also ->
    [yes] { $total ->
        [one] Reste encore une fois : { $name }.
       *[other] Reste, encore { $total } fois : { $name }.
    }
   *[no] Reste : { $name }{ $total ->
        [one] .
       *[other] , { $total } en tout.
    }
}
stays-check = { $total ->
    [one] Mesurer : il faut trouver { $size }.
   *[other] Mesurer chacune : il faut trouver { $size }.
}
stays-aside = { $total ->
    [one] Reste : { $size }, à mettre de côté pour l’étape { $step }.
   *[other] Restent { $total } parties de { $size }, à mettre de côté pour l’étape { $step }.
}
stays-in-hand = { $total ->
    [one] Reste : { $size }, à garder en main.
   *[other] Restent { $total } parties de { $size }, à garder en main.
}
stays-keep = { $large ->
    [yes] { $total ->
        [one] Reste : { $size }, chute à garder.
       *[other] Restent { $total } parties de { $size }, chutes à garder.
    }
   *[no] { $total ->
        [one] Reste : { $size }, pour les petites chutes.
       *[other] Restent { $total } parties de { $size }, pour les petites chutes.
    }
}
stays-waste = { $total ->
    [one] Reste : { $size }, à jeter.
   *[other] Restent { $total } parties de { $size }, à jeter.
}
# What comes off and what stays are of one size and go the same way.
all-aside = { $count ->
    [2] Mettre de côté les deux parties, { $size } chacune, pour l’étape { $step }.
   *[other] Mettre de côté les { $count } parties, { $size } chacune, pour l’étape { $step }.
}
hard-to-hold = C’est étroit : tenir avec une règle ou un morceau de carton, pas du bout des doigts.
step-alt = Coupe { $number } : papier { $size }, { $edge } en place, repère { $mark } ; coupé : { $off }.


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
score-alt = { $base } à plat, l’extérieur dessus, { $size }, avec un pli marqué en tirets au milieu, à { $at } { $edge ->
    [long] d’un bord long.
    [short] d’un bord court.
   *[any] d’un bord.
}
score-caption = Extérieur dessus. Tirets : le pli marqué.
strip-alt = Une bande { $size } avec le contour de l’étiquette, { $punched }, en tirets au milieu{ $stamped ->
    [yes] {" "}et, au centre, la place des mots tamponnés
   *[no] {""}
}.
strip-caption = Tirets : étiquette.
fold-bases = { $scored ->
    [yes] Plier { $bases } sur le pli marqué, le bourrelet à l’intérieur.
   *[no] Plier { $bases } en deux, bord sur bord.
}
press-with = Bien écraser le pli ; outil : { $tool }.
press-plain = Bien écraser le pli.
strips-alt = Une bande { $size } avec les contours de { $count } étiquettes, { $punched } chacune, en tirets l’une après l’autre{ $stamped ->
    [yes] {" "}et la place des mots tamponnés dans chacune
   *[no] {""}
}. D’un milieu à l’autre : { $apart }.
strips-caption = En tirets : les { $count } étiquettes, numérotées.
stamp-in-place = { $words } à { $count ->
    [one] la place { $places }
   *[other] chacune des places { $places }
}
stamp-strips = Tamponner chaque message à sa place sur une bande ({ $letter }){ $hasink ->
    [yes] {" "}– encre : { $ink }
   *[no] {""}
}{ $hasset ->
    [yes] {" "}– tampons : { $set }
   *[no] {""}
}. Places : { $items }. Le milieu de la première place est à { $first } du bout de la bande, chaque suivant { $apart } plus loin.{ $changes ->
    [yes] {" "}Tamponner toutes les bandes avec un message avant de changer de tampon.
   *[no] {""}
}
punch-go-on = Commencer au bout de la bande. Après chaque étiquette, couper la bande { $end } avant la suivante, pour que la perforatrice l’atteigne.
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
    [yes] Découper { $count ->
        [one] l’étiquette
       *[other] { $count } étiquettes
    } dans { $strips } ; outil : { $tool }. Retourner la perforatrice et vérifier : les mots tamponnés sont au milieu de l’ouverture.
   *[no] Découper { $count ->
        [one] l’étiquette
       *[other] { $count } étiquettes
    } dans { $strips } ; outil : { $tool }.
}
its-mat = mat
narrow-labels = { $which ->
    [all] Puis rétrécir chaque étiquette
   *[some] Puis rétrécir chaque étiquette avec { $label }
} : la glisser de nouveau dans la perforatrice, { $by } plus { $side ->
    [left] à gauche
    [right] à droite
    [top] haut
   *[bottom] bas
}{ $held ->
    [yes] , la tenir (à l’aide de : { $with })
   *[no] {""}
} et découper une seconde fois, pour enlever { $by } { $side ->
    [left] à gauche
    [right] à droite
    [top] en haut
   *[bottom] en bas
}. Il reste { $size }{ $words ->
    [yes] { "\u00A0" }; pour que les mots y soient au milieu, ils se trouvent à la première découpe { $off } { $side ->
        [left] à droite du
        [right] à gauche du
        [top] au-dessous du
       *[bottom] au-dessus du
    } milieu de l’ouverture.
   *[no] .
}
punch-mats = Découper { $count ->
    [one] le mat
   *[other] { $count } mats
} dans { $strips } ; outil : { $tool }.
mat-halve = Couper le { $mat } en deux { $halves ->
    [level] de gauche à droite
   *[upright] de haut en bas
} et { $slid ->
    [together] glisser les moitiés l’une sur l’autre de { $by }.
   *[apart] écarter les moitiés de { $by } : l’étiquette couvre le vide.
}
mat-trim = Couper { $by } { $halves ->
    [level] à son bout gauche et à son bout droit.
   *[upright] à son bout du haut et à son bout du bas.
}
mat-shows = Poser au milieu du mat ; { $which ->
    [all] { $across } dépassent tout autour.
    [across] { $across } dépassent à gauche et à droite.
    [up] { $up } dépassent en haut et en bas.
   *[both] { $across } dépassent à gauche et à droite, { $up } en haut et en bas.
}
mat-same = Faire de même pour : { $labels }.
mat-lay = Poser au milieu de son { $mat } ; { $border } dépassent tout autour.
so-long = { $length } de { $item }
add-extra = Ajouter { $item }{ $placed ->
    [yes]  : { $place }.
   *[no] .
}
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
}. Coupé : { $off }.
late-stays = Reste : { $stays }.
late-keep = Garder pour la carte { $card } : { $part }.


how-tape = Poser l’adhésif le long des bords.
how-glue = Étaler la colle finement, jusqu’aux bords, et appuyer sur la couche.
how-waits = { $minutes ->
    [0] Pendant qu’une carte sèche, passer à la suivante.
    [one] Laisser sécher chaque carte 1 minute et passer à la suivante.
   *[other] Laisser sécher chaque carte { $minutes } minutes et passer à la suivante.
}
how-foam = Coller les carrés de mousse au dos, près des coins mais en retrait des bords ; retirer leurs films en dernier.


## Cards

cards-in-batches = Travailler en série : d’abord la première couche de toutes les cartes, puis la deuxième de toutes, et ainsi de suite.
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
apart-alt = Les couches de { $card }, écartées, dans l’ordre où elles vont sur la base : { $layers }.
apart-alt-layer = { $name }{ $raised ->
    [0] {""}
    [one] {" "}sur un carré de mousse
   *[other] {" "}sur { $raised } carrés de mousse
}
layers-title = Comment les cartes se montent
layers-text = Les couches sont écartées et numérotées dans l’ordre où elles se posent. De longs tirets mènent à la place de chacune{ $foam ->
    [yes]  ; les petits carrés sont les carrés de mousse.
   *[no] .
} Dessin à l’échelle { $scale }.
front-alt-layer = { $name } : { $place }
state-alt = { $what ->
    [inside] L’intérieur de { $card }
   *[front] Le devant de { $card }
} après cette étape, avec le pli { $fold ->
    [left] à gauche
    [top] en haut
    [right] à droite
   *[bottom] en bas
}. { $count ->
    [0] La base est nue
    [one] Déjà en place, en trait simple : { $before }
   *[other] Déjà en place, en trait simple : { $before }
}. Nouveau, en trait fort{ $raised ->
    [0] {""}
    [one] {" "}et sur un carré de mousse
   *[other] {" "}et sur { $raised } carrés de mousse
} : { $name }, { $place }.
state-scale = Dessins à côté des étapes :{ "\u00A0" }{ $scale }. Ce qui est nouveau est en trait fort.
tip = Conseil : { $tip }

back-named = la face «{ "\u00A0" }{ $face }{ "\u00A0" }» de { $what }
back-plain = le dos de { $what }
fix-tape = { $named ->
    [yes] Mettre de l’adhésif ({ $tool }) sur { $back }.
   *[no] Mettre de l’adhésif sur { $back }.
}
fix-glue = { $named ->
    [yes] Encoller ({ $tool }) { $back }.
   *[no] Encoller { $back }.
}
fix-with = Poser sur { $back } : { $tool }.
fix-plain = Mettre de la colle ou de l’adhésif sur { $back }.
set-raised = Monter { $what } sur { $count ->
    [one] un carré de mousse
   *[other] { $count } carrés de mousse
} : { $how }.
lay-it = Poser : { $how }.
face-up = «{ "\u00A0" }{ $face }{ "\u00A0" }» visible
face-stands = { $turn ->
    [none] « { $face } » visible, à l’endroit
    [right] « { $face } » visible, le haut vers la droite
    [left] « { $face } » visible, le haut vers la gauche
   *[over] « { $face } » visible, tête en bas
}
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
        [top] à { $off } du bord supérieur
        [right] à { $off } du bord droit
       *[bottom] à { $off } du bord inférieur
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
inside-choose = À l’envoi de la carte, écrire à l’intérieur : { $among }.
inside-later = À l’envoi de la carte, écrire à l’intérieur un texte de son choix.
envelope-take = Prendre l’enveloppe, le recto devant soi.


## Envelopes and the post

envelope-title = { $gift ->
    [yes] Enveloppes, et à offrir
   *[no] Enveloppes
}
envelope-size = { $all ->
    [yes] Chaque carte va dans une enveloppe { $size }.
   *[no] { $count ->
        [one] { $cards } va dans une enveloppe { $size }.
       *[other] { $cards } vont dans des enveloppes { $size }.
    }
}
envelope-with = { $all ->
    [yes] Chaque carte va dans l’enveloppe livrée avec sa base.
   *[no] { $count ->
        [one] { $cards } va dans l’enveloppe livrée avec sa base.
       *[other] { $cards } vont dans les enveloppes livrées avec leurs bases.
    }
}
fit-in-short = Dans leur enveloppe, elles font jusqu’à { $thick } d’épaisseur et { $heavy }.
envelope-post = { $raised ->
    [yes] Les cartes en relief sont plus épaisses et peuvent coûter plus cher : se renseigner auprès de l’opérateur postal.
   *[no] Les tarifs changent : se renseigner auprès de l’opérateur postal.
}
envelope-estimate = Chaque carte est mesurée dans son enveloppe, mousse à pleine épaisseur, sans colle ni timbre ; tout cela est une estimation.
fit-summary = Épaisseur et poids de chaque carte dans son enveloppe, et la place qui reste.
fit-card = Carte
fit-thick = Épaisseur
fit-heavy = Poids
fit-room = Jeu dans l’enveloppe
fit-mm = { $number }{ "\u00A0" }mm
fit-grams = { $number }{ "\u00A0" }g
fit-ounces = { $number }{ "\u00A0" }oz ({ $grams })
fit-spare = { $size }{ $tight ->
    [yes] , juste
   *[no] {""}
}

post-hint = À titre indicatif, avec l’année de la source : { $classes }.
post-class-of = { $operator } { $class }
post-class = { $class } ({ $seen ->
    [read] lu en { $year }
   *[issued] { $year }
})
post-class-but = mais { $cards } : { $class }
post-below = trop petit ou trop léger pour une lettre
post-beyond = dépasse le format d’une lettre
post-where = Pays
post-as = Sans doute envoyé comme
post-source = Source
post-watch = Le relief peut coûter plus cher là où les lettres doivent { $how ->
    [even] être d’épaisseur égale
    [bends] plier facilement
   *[both] être d’épaisseur égale et plier facilement
} : { $operators }.
post-summary = La catégorie postale probable des cartes, par pays, avec la source.
operator = { $operator ->
    [us] États-Unis
    [ca] Canada
    [uk] Royaume-Uni
    [de] Allemagne
    [au] Australie
    [no] Norvège
    [be] Belgique
    [fr] France
   *[abroad] Étranger
}


## The gift set

gift-title = À offrir
gift-stack = { $cards ->
    [one] La carte terminée, dans son enveloppe, fait environ { $high } de haut.
   *[other] Les { $cards } cartes terminées, dans leurs enveloppes, font une pile d’environ { $high }.
}
gift-band = Une bande autour du petit côté mesure { $long } de long, recouvrement compris, et { $wide } de large.
gift-from-offcut = La couper dans la chute de papier { $paper }.
gift-from-other = Aucune chute n’est assez longue : la couper dans une autre feuille ou assembler deux bandes.
gift-box = Une boîte pour les contenir mesure { $size } à l’intérieur et { $high } de haut.


## For the host: what to do when, how long it takes, who is there

host-title = Avant l’atelier
host-when = { $when ->
    [week] Une semaine avant
    [day] La veille
   *[hour] Une heure avant
}
host-buy = Acheter ce qui est sur la liste et vérifier que tout est arrivé.
host-samples = Faire un modèle de chaque carte et en garder un à chaque stade pour le montrer, afin que personne n’attende le séchage.
host-print = Imprimer les fiches de l’atelier en { $copies } exemplaires : un par personne et un pour l’animation.
host-ahead = Faire ce qui se prépare d’avance : { $works }.
host-bags = { $bags ->
    [one] Remplir un sachet.
   *[other] Remplir { $bags } sachets{ $spares ->
        [0] .
        [one] , dont un de réserve.
       *[other] , dont { $spares } de réserve.
    }
}
host-shared = { $count } × { $tool } : un pour { $people } personnes.
host-places = { $people ->
    [one] Préparer un sachet et une fiche.
   *[other] Poser un sachet et une fiche à chacune des { $people } places.
}
host-show = Placer les modèles là où tout le monde les voit.
time-title = Le temps qu’il faut
time-summary = Ce qui se fait et quand, et combien de minutes il faut.
time-from = Début
time-what = Activité
time-minutes = Minutes
time-doing = { $what ->
    [setup] Accueil, installation
    [preparing] D’abord, pour toutes les cartes
    [waiting] Laisser sécher, rien d’autre à faire
    [cleanup] Rangement
   *[buffer] En réserve
}
time-total = { $fits ->
    [yes] Le tout prend environ { $total } des { $lasts } minutes.
   *[no] Le tout prend environ { $total } minutes ; il y en a { $lasts }.
}{ $estimated ->
    [yes] {" "}Là où aucune durée n’est donnée, c’est une estimation : chronométrer le modèle.
   *[no] {""}
} Pour les débutants, la moitié en plus est déjà comptée.
time-when-late = S’il se fait tard, laisser cette carte : { $card }. Gain : environ { $minutes } minutes.
time-leave-out = { $fits ->
    [yes] Pour tenir en { $lasts } minutes, laisser de côté { $cards } : gain, environ { $saves } minutes.
   *[no] Même sans { $cards }, il faut plus de { $lasts } minutes.
} { $count ->
    [one] Elle peut se finir à la maison.
   *[other] Elles peuvent se finir à la maison.
}
attendance-title = Qui est là
attendance-summary = La liste de tout le monde, avec une case à cocher.
attendance-number = Nº
attendance-name = Nom
attendance-spares = { $spares ->
    [0] Il n’y a pas de kit de réserve.
    [one] Il y a un kit de réserve, pour une visite ou une pièce gâchée.
   *[other] Il y a { $spares } kits de réserve, pour des visites ou des pièces gâchées.
}


## For the maker of kits: labels and tallies

labels-title = Étiquettes des sachets
labels-text = Les séparer le long des lignes. Elles sont imprimées à taille réelle.
label-number = { $spare ->
    [yes] { $number } sur { $kits }, réserve
   *[no] { $number } sur { $kits }
}
label-alt = { $spare ->
    [yes] Une étiquette pour le sachet { $number } sur { $kits }, de réserve.
   *[no] Une étiquette pour le sachet { $number } sur { $kits }.
}
tally-title = Remplir les sachets
tally-text = { $tray ->
    [one] Barrer un nombre quand il y en a autant dans le sachet. Les lettres sont celles du plan de coupe.
   *[other] Chaque ligne est un plateau de { $tray } sachets. Barrer un nombre quand il y en a autant dans ses sachets. Les lettres sont celles du plan de coupe.
}
tally-summary = Combien de chaque chose va dans chaque sachet.
tally-bag = Sachet


## Check bar

# Behind the nought of a ruler.
ruler-inch = po
ruler-mm = mm
check-title = Est-ce imprimé à taille réelle ?
check-text = Ces barres mesurent { $inches } et { $millimetres }. Sinon, imprimer à 100{ "\u00A0" }%.
check-alt = Deux règles pour vérifier l’impression, l’une de { $inches } et l’autre de { $millimetres }.


## Photos

photo-of-card = Une photo de la carte terminée { $card }.
photo-of-set = Une photo des cartes terminées de cet ensemble.


## Sheets at true size

true-size-title = À taille réelle
true-size-text = Imprimer ces pages à 100{ "\u00A0" }% et mesurer d’abord les barres de contrôle. Poser le papier sur son dessin pour vérifier sa taille ou voir où passera une coupe.
true-size-caption = { $paper }, { $size }{ $plans ->
    [one] .
   *[other] , plan { $plan }.
}
true-size-alt = { $paper }, { $size }{ $plans ->
    [one] { "" }
   *[other] , plan { $plan }
}, avec le contour de chaque pièce à taille réelle.
true-size-piece = { $name }, { $size }.
true-size-piece-alt = Le contour de { $name }, { $size }, à taille réelle.
true-size-part = Partie { $part } sur { $parts }
true-size-joined = Couper une partie le long des tirets, la poser sur sa voisine de sorte que les croix se recouvrent, et la coller.
host-stages = Cela fait { $cards } { $cards ->
    [one] carte finie
   *[other] cartes finies
} et { $stages } en cours : { $works }.
