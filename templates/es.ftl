# Every sentence that is printed in Spanish.
#
# Steps are told in the infinitive, which is polite to everyone. Names are the
# maker's own, of any gender and number: no article and no adjective leans on them.
# Words of the trade: hoja, pieza, tira, sobrante, retal, base, capa, fondo, etiqueta,
# mensaje, marcar el pliegue, plegar, marca, kit.


## Numbers and units

decimal-sign = ,
length-inch = { $number }{ "\u00A0" }in
length-mm = { $number }{ "\u00A0" }mm
size-inch = { $width }{ "\u00A0" }×{ "\u00A0" }{ $height }{ "\u00A0" }in
size-mm = { $width }{ "\u00A0" }×{ "\u00A0" }{ $height }{ "\u00A0" }mm
both-units = { $first } ({ $second })


## Joining words

quoted = «{ $words }»
list-next = { $first }, { $next }
list-last = { $first } y { $last }
list-choice = { $first } o { $last }
list-comma = ,{ " " }
list-semicolon = ;{ " " }


## The foot of each page

foot-with-edition = { $title } · { $kind ->
    [number] edición { $edition }
   *[words] { $edition }
}
foot-with-name = { $left } · { $name }
foot-page = Página { $page } de { $pages }
foot-continued = continuación
foot-scale = Escala { $scale }


## What things are called

name-with-letter = { $name }{ "\u00A0" }({ $letter })
name-offcut = sobrante
label-named = etiqueta { $words }
label-any = etiqueta
label-blank = { $count ->
    [one] etiqueta en blanco
   *[other] etiquetas en blanco
}
labels-named = etiquetas { $words }
strip-for-label = tira para { $label }
strip-for-mat = tira para el fondo de { $label }
strip-for-labels = tira para { $count } etiquetas
strip-for-mats = tira para { $count } fondos
mat-of-label = fondo para { $label }
base-named = base { $name }
several = { $count }{ "\u00A0" }×{ "\u00A0" }{ $item }
base-counted = { $count ->
    [one] la base { $name }
   *[other] las { $count } bases { $name }
}
tool-kind = { $kind ->
    [stamps] juego de sellos
    [ink] tinta
   *[glue] pegamento
}
tool-with-kind = { $name } ({ $kind })
edge = { $side ->
    [left] borde izquierdo
    [top] borde superior
    [right] borde derecho
   *[bottom] borde inferior
}
foam-squares = { $count ->
    [one] 1 cuadradito de espuma
   *[other] { $count } cuadraditos de espuma
}


## Cover

cover-name = Para { $name }
cover-makes = { $count ->
    [one] Para hacer una tarjeta: { $names }.
   *[other] Para hacer { $count } tarjetas: { $names }.
}
cover-scale = Dibujado a escala { $scale }.
cover-maker = { $reader ->
    [class] Para quien dirige el taller: lo que hay que preparar antes de la clase.
   *[other] Para quien prepara los kits: lo que hay que hacer antes de que salgan.
} { $kits ->
    [one] Calculado para un kit.
   *[other] Calculado para { $kits } kits{ $spares ->
        [0] .
        [one] , uno de ellos de reserva.
       *[other] , { $spares } de ellos de reserva.
    }
}
cover-done = Ya hecho: { $works }.
cover-before = { $hands ->
    [maker] Por hacer aquí: { $works }.
   *[reader] Antes de salir: { $works }.
}
cover-here = { $place ->
    [travel] En el viaje: { $works }.
   *[other] Por hacer: { $works }.
}
work-done = { $work ->
    [cut] hojas cortadas
    [score] pliegues marcados
    [fold] bases plegadas
    [stamp] mensajes estampados
    [punch] etiquetas troqueladas
    [again] piezas vueltas a cortar
    [layer] etiquetas sobre su fondo
    [attach] capas pegadas
   *[inside] interiores estampados
}
work-do = { $work ->
    [cut] cortar las hojas
    [score] marcar los pliegues
    [fold] plegar las bases
    [stamp] estampar los mensajes
    [punch] troquelar las etiquetas
    [again] volver a cortar piezas
    [layer] pegar las etiquetas sobre su fondo
    [attach] pegar las capas
   *[inside] añadir el texto interior
}
cover-ask = Entregado por { $name }. ¿Falta algo o hay dudas? Preguntar allí.
cover-ask-reach = Entregado por { $name }. ¿Falta algo o hay dudas? Preguntar: { $reach }.
tips-title = Conviene saber


## Cautions: the hazard, what it can do, how to avoid it

cautions-title = Precauciones
signal = { $weight ->
    [warning] ADVERTENCIA
    [caution] ATENCIÓN
   *[notice] AVISO
}
caution-lever = Cuchilla larga de palanca. Puede cortar hondo. Mantener puesta la protección y los dedos detrás. Bajar y trabar la palanca después de cada corte. Solo para personas adultas.
caution-sliding = Cuchilla afilada en la cizalla. Puede cortar la piel. Mantener los dedos lejos de la ranura por la que corre la cuchilla. Apoyar la cizalla en plano y cerrar la cuchilla antes de guardarla.
caution-rotary = Cuchilla giratoria afilada. Puede cortar la piel. Hacerla rodar hacia delante, con la otra mano detrás. Cerrar la protección después de cada corte.
caution-knife = Cúter afilado. Puede cortar la piel. Cortar sobre una base de corte, a lo largo de una regla de metal, con la otra mano detrás de la cuchilla. Cubrir la cuchilla al dejar el cúter.
caution-scissors = Puntas y filos. Las tijeras pueden cortar y pinchar. Cortar en posición sentada y pasar las tijeras cerradas, con los ojos por delante. Los niños necesitan a alguien a su lado.
caution-punch = Troqueladora. Puede pellizcar o magullar un dedo. No meter los dedos en la abertura y apretar sobre una mesa firme.
caution-heat = Herramienta caliente. Quema la piel al tocarla y chamusca el papel. Apoyarla en su soporte, no dejarla nunca sin vigilancia y desenchufarla después de usarla. Solo para personas adultas.
caution-small-parts = Piezas pequeñas, como los cuadraditos de espuma. Un niño pequeño puede atragantarse. Mantenerlas lejos de niños menores de 3 años.
caution-moving = Cuchillas y herramientas calientes en un vehículo en marcha. Una sacudida puede hacerlas resbalar y herir a alguien. No usarlas durante la marcha.
caution-luggage = Cuchillas en el equipaje. Pueden cortar a quien lo abra y ser retiradas en el control. Envolverlas y preguntar a la empresa de transporte, antes del viaje, qué está permitido.
caution-glue = El pegamento húmedo mancha el papel y la mesa y ondula el papel fino. Extenderlo en capa fina sobre un papel de desecho y seguir las indicaciones del envase.
caution-ink = La tinta mancha las manos, la ropa y la mesa. Cubrir la mesa, cerrar el tampón después de usarlo y mantener los sellos húmedos lejos de las tarjetas.
caution-hot-car = La tinta y el pegamento húmedo manchan, y en un coche caliente se secan o gotean. Cubrir la bandeja, cerrarlos después de usarlos y llevarlos encima, de pie. Mantener los sellos húmedos lejos de las tarjetas.
caution-order = Cortar en el orden de los pasos. Un primer corte equivocado no tiene arreglo.
caution-last = Las normas locales y las instrucciones de cada herramienta van primero.


## What to have at hand

need-title = { $reader ->
    [class] En la mesa, para compartir
    [kit] Lo que hace falta
    [travel] Lo que hace falta en casa
   *[maker] Herramientas
}
need-pen = un bolígrafo
need-instead = { $tool }. En su lugar: { $instead }


## What to buy

buy-title = Lista de compra
buy-for = { $kits ->
    [one] Para un kit
   *[other] Para { $kits } kits
}{ $spares ->
    [0] .
    [one] {" "}y uno de reserva.
   *[other] {" "}y { $spares } de reserva.
}
buy-summary = Lo que hay que comprar: cuánto para un kit, cuánto para todos, en cuántos paquetes y cuánto sobra.
buy-what = Artículo
buy-one-kit = Un kit
buy-all = Todos
buy-packs = Paquetes
buy-over = Sobra
buy-packs-of = { $packs ->
    [one] 1 paquete de { $holds }
   *[other] { $packs } paquetes de { $holds }
}
buy-rolls = { $packs ->
    [one] 1 rollo
   *[other] { $packs } rollos
}
buy-packs-assorted = { $packs ->
    [one] 1 paquete surtido que trae { $holds }
   *[other] { $packs } paquetes surtidos que traen { $holds } cada uno
}
buy-on-hand = Disponible
buy-price = Precio
buy-none = nada
buy-rolls-of = { $rolls ->
    [one] 1 rollo de { $holds }
   *[other] { $rolls } rollos de { $holds }
}
buy-sheet-gives = { $cards ->
    [one] una tarjeta de una hoja de papel { $paper }
   *[other] { $cards } tarjetas de una hoja de papel { $paper }
}
buy-sheets-give = De ahí salen { $papers }.
buy-cost = Lo que se gasta cuesta { $all }{ $some ->
    [yes] , en lo que tiene precio
   *[no] {""}
}: { $kits ->
    [one] { $card } por tarjeta.
   *[other] { $kit } por kit y { $card } por tarjeta, con la reserva incluida.
}
buy-cost-tools = Las herramientas cuestan aparte { $tools }.
money = { $amount }{ "\u00A0" }{ $currency }
metres = { $number }{ "\u00A0" }m
good-sheets = { $paper }, hojas { $size }
good-scraps = retales de papel { $paper }, de al menos { $size }
good-envelopes = sobres para { $base }
good-envelopes-size = sobres { $size } para { $base }
good-foam = cuadraditos de espuma
good-order = { $good }, referencia { $number }


## The bag

bag-title = En la bolsa: marcar lo que está
bag-summary = Lo que hay en la bolsa: cuánto, qué y de qué tamaño.
bag-count = Cantidad
bag-what = Contenido
bag-size = Tamaño
bag-base = { $base }, { $state ->
    [folded] plegada
    [scored] con el pliegue marcado, en plano
   *[flat] con el pliegue por marcar
}
bag-label = { $label }{ $stamped ->
    [yes] , con su mensaje
   *[no] {""}
}{ $matted ->
    [yes] , sobre su fondo
    [several] , sobre sus fondos
   *[no] {""}
}
bag-mats = fondos para las etiquetas
bag-foam = { $count ->
    [one] cuadradito de espuma
   *[other] cuadraditos de espuma
}
bag-envelopes = { $count ->
    [one] sobre
   *[other] sobres
}
bag-sheets = { $count ->
    [one] hoja de papel { $paper }
   *[other] hojas de papel { $paper }
}
pack-title = { $hands ->
    [maker] Lo que va en cada bolsa
   *[reader] Lo que hay que llevar
}
pack-bags = { $kits ->
    [one] Una bolsa.
   *[other] Preparar { $kits } bolsas{ $spares ->
        [0] .
        [one] ; una de ellas es de reserva.
       *[other] ; { $spares } de ellas son de reserva.
    }
}
pack-tools = Y las herramientas para el viaje:
pack-cards = Tomar un sobre para cada tarjeta y meter en él sus piezas:
pack-besides = Además:
pack-card = { $card }: { $parts }
pack-card-apart = { $card }, en una bolsita aparte: { $parts }
pack-base = base
pack-postage = franqueo: en su sobre, las tarjetas llegan a { $thick } de grosor y { $heavy } de peso; consultar al operador postal
pack-packaging = Para cada kit: { $items }.
pack-flat = Poner el papel plano entre dos cartones rígidos para que nada se doble.


## Cut plan

cut-plan-title = Plan de corte: { $paper }
sheets-needed = { $kits ->
    [one] { $sheets ->
        [one] Basta una hoja de papel { $paper }, { $size }.
       *[other] Hacen falta { $sheets } hojas de papel { $paper }, { $size }.
    }
   *[other] { $sheets ->
        [one] Basta una hoja de papel { $paper }, { $size }, para los { $kits } kits
       *[other] Hacen falta { $sheets } hojas de papel { $paper }, { $size }, para los { $kits } kits
    }{ $spares ->
        [0] .
        [one] , uno de ellos de reserva.
       *[other] , { $spares } de ellos de reserva.
    }
}
sheets-scraps = Cortar de retales de papel { $paper }, cada uno de al menos { $size }.
sheets-proven = Ningún plan puede hacerse con menos de { $sheets } hojas.
sheets-bound = { $least ->
    [one] No se encontró un plan con menos.
   *[other] No se encontró un plan con menos; hacen falta al menos { $least }.
}
offcut-kept = { $proven ->
    [yes] Sobrante para guardar: { $size }; con tan pocas hojas ningún plan deja uno mayor.
   *[no] Sobrante para guardar: { $size }.
}
own-way = El plan propio necesita { $sheets ->
    [one] una hoja
   *[other] { $sheets } hojas
} y { $cuts ->
    [one] un corte
   *[other] { $cuts } cortes
}{ $same ->
    [all] ; no se encontró un plan mejor.
    [sheets] ; el mejor plan encontrado necesita las mismas hojas y { $bestcuts ->
        [one] un corte
       *[other] { $bestcuts } cortes
    }.
   *[none] ; el mejor plan encontrado necesita { $bestsheets } y { $bestcuts ->
        [one] un corte
       *[other] { $bestcuts } cortes
    }.
}
own-offcut = El plan propio deja un sobrante de { $size }, el mejor plan uno de { $best }.
alike-instead = Con todas las hojas cortadas igual { $more ->
    [0] hacen falta las mismas hojas
    [one] hace falta una hoja más
   *[other] hacen falta { $more } hojas más
}, pero { $steps ->
    [one] 1 paso
   *[other] { $steps } pasos
} en lugar de { $othersteps }.
alike-how = Para tenerlo así, se pide «sheets alike» en la descripción y se vuelve a hacer esta hoja.
alike-chosen = Todas las hojas se cortan igual, { $kits ->
    [one] para un kit
   *[other] para { $kits } kits
}{ $over ->
    [0] .
    [one] ; sobran las piezas de un kit.
   *[other] ; sobran las piezas de { $over } kits.
}
fewer-sheets-alike = { $fewer ->
    [0] Cortadas de modos distintos harían falta las mismas hojas
    [one] Cortadas de modos distintos haría falta una hoja menos
   *[other] Cortadas de modos distintos harían falta { $fewer } hojas menos
}, con { $dearer ->
    [yes] { $marks ->
        [0] las mismas marcas
        [one] una marca más
       *[other] { $marks } marcas más
    }
   *[no] { $marks ->
        [one] una marca menos
       *[other] { $marks } marcas menos
    }
} y { $othersteps ->
    [one] 1 paso
   *[other] { $othersteps } pasos
} en lugar de { $steps }.
fewer-sheets = { $fewer ->
    [one] Con otro plan bastaría una hoja menos
   *[other] Con otro plan bastarían { $fewer } hojas menos
}{ $dearer ->
    [yes] { $marks ->
        [0] , con las mismas marcas.
        [one] , a cambio de una marca más.
       *[other] , a cambio de { $marks } marcas más.
    }
   *[no] { $marks ->
        [one] {" "}y hasta una marca menos.
       *[other] {" "}y hasta { $marks } marcas menos.
    }
}
lies-next-to = Para que el estampado continúe, dos piezas van juntas en la hoja: { $piece } queda { $side ->
    [left] justo a la izquierda
    [right] justo a la derecha
    [top] justo encima
   *[bottom] justo debajo
} de { $other }.
lies-at-place = Un lugar concreto del estampado se ve en: { $piece }. Va a { $left } del borde izquierdo de la hoja y a { $top } del borde superior.
plan-caption = { $plans ->
    [one] { $sheets ->
        [one] Cortar la hoja así.
       *[other] Cortar las { $sheets } hojas así.
    }
   *[other] Plan { $plan }: { $sheets ->
        [one] cortar 1 hoja así.
       *[other] cortar { $sheets } hojas así.
    }
}
plan-lies = { $directed ->
    [yes] La cara «{ $face }» queda arriba; la flecha muestra el sentido del estampado.
   *[no] La cara «{ $face }» queda arriba.
}
plan-upright = La flecha muestra el sentido del estampado.
plan-alt-part = { $count }{ "\u00A0" }×{ "\u00A0" }{ $name }, { $size }
plan-alt = Una hoja de { $size } dividida con { $cuts ->
    [one] 1 corte
   *[other] { $cuts } cortes
} en { $parts }.
parts-letter = Letra
parts-name = Pieza
parts-size = Ancho × alto
parts-per-kit = Un kit
parts-in-all = En total
parts-summary = Lo que se corta de { $paper }: letra, nombre, tamaño y cantidad.


## Steps at the trimmer

cutting-title = Corte: { $paper }
cutting-mark = La marca es el lugar de la regla de la cizalla en el que se alinea un borde. Lo que está entre ese borde y la cuchilla es lo que sale; la otra parte queda.
cutting-marks = { $marks ->
    [one] La marca se ajusta una vez.
   *[other] La marca se ajusta { $marks } veces{ $proven ->
        [yes] ; ningún orden de estos cortes necesita menos.
       *[no] .
    }
}
cutting-edges = Arriba, abajo, izquierda y derecha son los del estampado, esté como esté el papel en la cizalla.
slack = { $plans ->
    [one] { $sheets ->
        [one] Si la hoja es
       *[other] Si una hoja es
    }
   *[other] Si una hoja del plan { $plan } es
} algo más { $way ->
    [width] estrecha o ancha
   *[height] baja o alta
}, la diferencia { $count ->
    [one] queda en: { $parts }.
   *[other] se reparte entre: { $parts }.
}
slack-many = La pieza que se mide al final se queda con lo que a su hoja le falta o le sobra.
slack-part = { $all ->
    [yes] { $count ->
        [one] { $name }
       *[other] las { $count } × { $name }
    }
   *[no] { $count ->
        [one] una vez { $name }
       *[other] { $count } × { $name }
    }
}
cutting-scale = Dibujos:{ "\u00A0" }{ $scale }.
cutting-stack = Donde un paso nombra varias hojas o partes, apilar hasta { $count } con los bordes a ras y cortarlas de una vez.
cutting-each = Donde un paso nombra varias hojas o partes, cortar una tras otra sin mover la marca.
cutting-slips = Poner sobre cada parte apartada un papel con el número de su paso.
take-sheet = { $plans ->
    [one] { $count ->
        [one] Tomar la hoja de papel { $paper }.
       *[other] Tomar las { $count } hojas de papel { $paper }.
    }
   *[other] { $count ->
        [one] Tomar la hoja de papel { $paper } para el plan { $plan }.
       *[other] Tomar las { $count } hojas de papel { $paper } para el plan { $plan }.
    }
}
sheet-face-up = La cara «{ $face }» queda arriba.
take-aside = { $count ->
    [one] Tomar la parte del paso { $step }, { $size }{ $turn ->
        [yes] , y girarla un cuarto de vuelta.
       *[no] .
    }
   *[other] Tomar las { $count } partes del paso { $step }, { $size } cada una{ $turn ->
        [yes] , y girarlas un cuarto de vuelta.
       *[no] .
    }
}
go-on = { $count ->
    [one] { $turn ->
        [yes] Girar un cuarto de vuelta la parte en mano, { $size }.
       *[no] Seguir con la parte en mano, { $size }.
    }
   *[other] { $turn ->
        [yes] Girar un cuarto de vuelta las { $count } partes en mano, { $size } cada una.
       *[no] Seguir con las { $count } partes en mano, { $size } cada una.
    }
}
edge-of-length = el { $edge } ({ $length })
edge-by-length = { $which ->
    [long] un borde largo ({ $length })
    [short] un borde corto ({ $length })
   *[any] un borde ({ $length })
}
line-up = { $moves ->
    [yes] Alinear { $edge } con la marca { $mark } y
   *[no] Dejar la marca en { $mark }, alinear { $edge } y
} { $times ->
    [1] cortar.
    [2] cortar dos veces, volviendo a alinear.
   *[other] cortar { $times } veces, alineando cada vez.
}
off-part = { $count ->
    [one] Sale: { $name }{ $total ->
        [one] .
       *[other] , { $total } en total.
    }
   *[other] Cada vez sale: { $name }, { $total } en total.
}
off-aside = { $count ->
    [one] Sale: { $size }; apartar para el paso { $step }.
   *[other] Salen { $count } partes de { $size }; apartarlas para el paso { $step }.
}
off-in-hand = { $count ->
    [one] Sale: { $size }; mantener en mano.
   *[other] Salen { $count } partes de { $size }; mantenerlas en mano.
}
off-keep = { $large ->
    [yes] { $count ->
        [one] Sale: { $size }; guardar como sobrante.
       *[other] Salen { $count } partes de { $size }; guardarlas como sobrantes.
    }
   *[no] { $count ->
        [one] Sale: { $size }, para los retales.
       *[other] Salen { $count } partes de { $size }, para los retales.
    }
}
off-waste = { $count ->
    [one] Sale: { $size }, para desechar.
   *[other] Salen { $count } partes de { $size }, para desechar.
}
off-mixed = Salen { $count } partes de { $size }: { $shares }.
share-part = { $count } × { $name }
share-aside = { $count } para el paso { $step }
share-in-hand = { $count } para mantener en mano
share-keep = { $large ->
    [yes] { $count } para guardar como { $count ->
        [one] sobrante
       *[other] sobrantes
    }
   *[no] { $count } para los retales
}
share-waste = { $count } para desechar
stays-part = { $also ->
    [yes] { $total ->
        [one] Queda una vez más: { $name }.
       *[other] Queda, { $total } veces más: { $name }.
    }
   *[no] Queda: { $name }{ $total ->
        [one] .
       *[other] , { $total } en total.
    }
}
stays-check = { $total ->
    [one] Medir: debe medir { $size }.
   *[other] Medir: cada una debe medir { $size }.
}
stays-aside = { $total ->
    [one] Queda: { $size }; apartar para el paso { $step }.
   *[other] Quedan { $total } partes de { $size }; apartarlas para el paso { $step }.
}
stays-in-hand = { $total ->
    [one] Queda en mano: { $size }.
   *[other] Quedan en mano { $total } partes de { $size }.
}
stays-keep = { $large ->
    [yes] { $total ->
        [one] Queda: { $size }; guardar como sobrante.
       *[other] Quedan { $total } partes de { $size }; guardarlas como sobrantes.
    }
   *[no] { $total ->
        [one] Queda: { $size }, para los retales.
       *[other] Quedan { $total } partes de { $size }, para los retales.
    }
}
stays-waste = { $total ->
    [one] Queda: { $size }, para desechar.
   *[other] Quedan { $total } partes de { $size }, para desechar.
}
# What comes off and what stays are of one size and go the same way.
all-aside = { $count ->
    [2] Apartar las dos partes, { $size } cada una, para el paso { $step }.
   *[other] Apartar las { $count } partes, { $size } cada una, para el paso { $step }.
}
hard-to-hold = Es estrecho: sujetarlo con una regla o un trozo de cartón, no con la punta de los dedos.
step-alt = Corte { $number }: papel { $size }, alineado { $edge }, marca { $mark }; sale: { $off }.


## Preparing

prepare-title = { $whose ->
    [maker] Preparar para todos los kits
    [before] Antes de salir
    [travel] En el viaje: primero
   *[here] Primero, para todas las tarjetas
}
score-base = { $count ->
    [one] Marcar el pliegue por el medio de { $base }: ponerla en plano, { $size }, y hundir la línea a { $at } { $edge ->
        [long] de un borde largo.
        [short] de un borde corto.
       *[any] de un borde.
    }
   *[other] Marcar el pliegue por el medio de { $base }: poner cada una en plano, { $size }, y hundir la línea a { $at } { $edge ->
        [long] de un borde largo.
        [short] de un borde corto.
       *[any] de un borde.
    }
}
score-alt = { $base } en plano, con el exterior arriba, { $size }, con el pliegue marcado a trazos por el medio, a { $at } { $edge ->
    [long] de un borde largo.
    [short] de un borde corto.
   *[any] de un borde.
}
score-caption = Exterior arriba. Trazos: el pliegue marcado.
strip-alt = Una tira { $size } con el contorno de la etiqueta, { $punched }, a trazos en el medio{ $stamped ->
    [yes] {" "}y, en su centro, el lugar de las palabras estampadas
   *[no] {""}
}.
strip-caption = A trazos: etiqueta.
fold-bases = { $scored ->
    [yes] Plegar { $bases } por el pliegue marcado, con el relieve hacia dentro.
   *[no] Plegar { $bases } por la mitad, borde con borde.
}
press-with = Alisar bien el pliegue; herramienta: { $tool }.
press-plain = Alisar bien el pliegue.
strips-alt = Una tira { $size } con los contornos de { $count } etiquetas, { $punched } cada una, en línea discontinua una tras otra{ $stamped ->
    [yes] {" "}y el lugar de las palabras estampadas en cada una
   *[no] {""}
}. De centro a centro: { $apart }.
strips-caption = En línea discontinua: las { $count } etiquetas, numeradas.
stamp-in-place = { $words } en { $count ->
    [one] el lugar { $places }
   *[other] los lugares { $places }
}
stamp-strips = Estampar cada mensaje en su lugar de una tira ({ $letter }){ $hasink ->
    [yes] {" "}– tinta: { $ink }
   *[no] {""}
}{ $hasset ->
    [yes] {" "}– sellos: { $set }
   *[no] {""}
}. Lugares: { $items }. El centro del primer lugar está a { $first } del extremo de la tira, cada uno de los siguientes { $apart } más allá.{ $changes ->
    [yes] {" "}Estampar todas las tiras con un mensaje antes de cambiar de sello.
   *[no] {""}
}
punch-go-on = Empezar por el extremo de la tira. Después de cada etiqueta, cortar la tira { $end } antes de la siguiente, para que la troqueladora la alcance.
stamp-on = { $on ->
    [strip] una tira
   *[label] una etiqueta
}
stamp-greetings = Estampar cada mensaje en el centro de { $on }{ $hasink ->
    [yes] {" "}– tinta: { $ink }
   *[no] {""}
}{ $hasset ->
    [yes] {" "}– sellos: { $set }
   *[no] {""}
}. Mensajes: { $items }.
stamp-item = { $words }{ $count ->
    [one] {""}
   *[other] {" "}({ $count } veces)
}
stamp-item-on = { $words } en { $on }{ $count ->
    [one] {""}
   *[other] {" "}({ $count } veces)
}
its-label = su etiqueta
ink-dries = Dejar secar la tinta antes de tocarla.
card-waits = { $minutes ->
    [one] Dejar secar la tarjeta 1 minuto.
   *[other] Dejar secar la tarjeta { $minutes } minutos.
}
waits = { $minutes ->
    [one] Dejar secar 1 minuto.
   *[other] Dejar secar { $minutes } minutos.
}
scraps-of = retales de papel { $paper }
a-punch = troqueladora
punch-labels = { $stamped ->
    [yes] Troquelar { $count ->
        [one] la etiqueta
       *[other] { $count } etiquetas
    } de { $strips }; herramienta: { $tool }. Dar la vuelta a la troqueladora y mirar: las palabras estampadas quedan en el centro de la abertura.
   *[no] Troquelar { $count ->
        [one] la etiqueta
       *[other] { $count } etiquetas
    } de { $strips }; herramienta: { $tool }.
}
its-mat = fondo
narrow-labels = { $which ->
    [all] Después, estrechar cada etiqueta
   *[some] Después, estrechar cada etiqueta con { $label }
}: meterla de nuevo en la troqueladora, { $by } más { $side ->
    [left] a la izquierda
    [right] a la derecha
    [top] arriba
   *[bottom] abajo
}{ $held ->
    [yes] , sujetarla (con ayuda de: { $with })
   *[no] {""}
} y troquelar otra vez, para que salgan { $by } { $side ->
    [left] por la izquierda
    [right] por la derecha
    [top] por arriba
   *[bottom] por abajo
}. Quedan { $size }{ $words ->
    [yes] ; para que las palabras queden en su centro, en la primera pasada están { $off } { $side ->
        [left] a la derecha del
        [right] a la izquierda del
        [top] por debajo del
       *[bottom] por encima del
    } centro de la abertura.
   *[no] .
}
punch-mats = Troquelar { $count ->
    [one] el fondo
   *[other] { $count } fondos
} de { $strips }; herramienta: { $tool }.
mat-halve = Cortar el { $mat } por la mitad { $halves ->
    [level] de izquierda a derecha
   *[upright] de arriba abajo
} y { $slid ->
    [together] deslizar una mitad sobre la otra { $by }.
   *[apart] separar las mitades { $by }: la etiqueta tapa el hueco.
}
mat-trim = Recortar { $by } { $halves ->
    [level] en su extremo izquierdo y en el derecho.
   *[upright] en su extremo superior y en el inferior.
}
mat-shows = Ponerla en el centro del fondo; { $which ->
    [all] alrededor asoman { $across }.
    [across] a izquierda y derecha asoman { $across }.
    [up] arriba y abajo asoman { $up }.
   *[both] a izquierda y derecha asoman { $across }, arriba y abajo { $up }.
}
mat-same = Hacer lo mismo con: { $labels }.
mat-lay = Ponerla en el centro de su { $mat }; alrededor asoman { $border }.
so-long = { $length } de { $item }
add-extra = Añadir { $item }{ $placed ->
    [yes] : { $place }.
   *[no] .
}
late-part = { $name }, { $size }
late-halve = { $count ->
    [one] Cortar por la mitad { $edge ->
        [long] a lo largo
        [short] a lo ancho
       *[any] por el medio
    }: { $piece }
   *[other] Cortar por la mitad { $edge ->
        [long] a lo largo
        [short] a lo ancho
       *[any] por el medio
    } las { $count } piezas { $piece }
}{ $with ->
    [yes] {" "}– herramienta: { $tool }
   *[no] {""}
}. De cada mitad sale: { $parts }.
late-thirds = { $count ->
    [one] Cortar en tres partes iguales { $edge ->
        [long] a lo largo
        [short] a lo ancho
       *[any] de borde a borde
    }: { $piece }
   *[other] Cortar en tres partes iguales { $edge ->
        [long] a lo largo
        [short] a lo ancho
       *[any] de borde a borde
    } las { $count } piezas { $piece }
}{ $with ->
    [yes] {" "}– herramienta: { $tool }
   *[no] {""}
}. De cada tercio sale: { $parts }.
late-cut-off = Cortar { $at } { $edge ->
    [long] de un borde largo
    [short] de un borde corto
   *[any] de un borde
}{ $count ->
    [one] : { $piece }
   *[other] {" "}de cada una de las { $count } piezas { $piece }
}{ $with ->
    [yes] {" "}– herramienta: { $tool }
   *[no] {""}
}. Sale: { $off }.
late-stays = Queda: { $stays }.
late-keep = Guardar para la tarjeta { $card }: { $part }.


how-tape = La cinta adhesiva va junto a los bordes.
how-glue = Extender el pegamento en capa fina hasta los bordes y apretar la capa.
how-waits = { $minutes ->
    [0] Mientras se seca una tarjeta, seguir con la siguiente.
    [one] Dejar secar cada tarjeta 1 minuto; mientras, seguir con la siguiente.
   *[other] Dejar secar cada tarjeta { $minutes } minutos; mientras, seguir con la siguiente.
}
how-foam = Los cuadraditos de espuma van en el dorso, cerca de las esquinas, no al borde; quitar el protector al final.


## Cards

cards-in-batches = Trabajar en serie: primero la primera capa de todas las tarjetas, luego la segunda de todas, y así sucesivamente.
card-count = Hacer { $count } veces esta tarjeta.
card-takes = Pliegue { $fold ->
    [left] a la izquierda
    [top] arriba
    [right] a la derecha
   *[bottom] abajo
}. Tener a mano: { $items }.
front-alt-short = El frente terminado de { $card }.
front-alt = { $what ->
    [inside] El interior de { $card }
   *[front] El frente de { $card }
}, { $size }, con el pliegue { $fold ->
    [left] a la izquierda
    [top] arriba
    [right] a la derecha
   *[bottom] abajo
}. De la base hacia arriba: { $layers }.
apart-alt = Las capas de { $card }, separadas, en el orden en que van sobre la base: { $layers }.
apart-alt-layer = { $name }{ $raised ->
    [0] {""}
    [one] {" "}sobre un cuadradito de espuma
   *[other] {" "}sobre { $raised } cuadraditos de espuma
}
layers-title = Cómo se montan las tarjetas
layers-text = Las capas están separadas y numeradas en el orden en que se colocan. Los trazos largos llevan al lugar de cada una{ $foam ->
    [yes] ; los cuadros pequeños son cuadraditos de espuma.
   *[no] .
} Dibujado a escala { $scale }.
front-alt-layer = { $name }: { $place }
state-alt = { $what ->
    [inside] El interior de { $card }
   *[front] El frente de { $card }
} después de este paso, con el pliegue { $fold ->
    [left] a la izquierda
    [top] arriba
    [right] a la derecha
   *[bottom] abajo
}. { $count ->
    [0] La base está vacía
    [one] Ya en su sitio, con trazo sencillo: { $before }
   *[other] Ya en su sitio, con trazo sencillo: { $before }
}. Nuevo, con trazo grueso{ $raised ->
    [0] {""}
    [one] {" "}y sobre un cuadradito de espuma
   *[other] {" "}y sobre { $raised } cuadraditos de espuma
}: { $name }, { $place }.
state-scale = Dibujos junto a los pasos:{ "\u00A0" }{ $scale }. Lo nuevo lleva trazo grueso.
tip = Consejo: { $tip }

back-named = la cara «{ $face }» de { $what }
back-plain = el dorso de { $what }
fix-tape = { $named ->
    [yes] Poner cinta ({ $tool }) en { $back }.
   *[no] Poner cinta en { $back }.
}
fix-glue = { $named ->
    [yes] Encolar ({ $tool }) { $back }.
   *[no] Encolar { $back }.
}
fix-with = Poner en { $back }: { $tool }.
fix-plain = Poner pegamento o cinta en { $back }.
set-raised = Montar { $what } sobre { $count ->
    [one] un cuadradito de espuma
   *[other] { $count } cuadraditos de espuma
}: { $how }.
lay-it = Colocar: { $how }.
face-up = «{ $face }» a la vista
face-stands = { $turn ->
    [none] «{ $face }» a la vista, del derecho
    [right] «{ $face }» a la vista, con la parte alta a la derecha
    [left] «{ $face }» a la vista, con la parte alta a la izquierda
   *[over] «{ $face }» a la vista, cabeza abajo
}
pattern-stands = { $turn ->
    [none] estampado del derecho
    [right] parte alta del estampado a la derecha
    [left] parte alta del estampado a la izquierda
   *[over] estampado cabeza abajo
}

place-middle = justo en el centro
place-spans = de borde a borde
place-center = { $axis ->
    [level] centrado a lo ancho
   *[upright] centrado a lo alto
}
place-flush = { $fold ->
    [yes] a lo largo del pliegue
   *[no] { $side ->
        [left] a ras del borde izquierdo
        [top] a ras del borde superior
        [right] a ras del borde derecho
       *[bottom] a ras del borde inferior
    }
}
place-from = { $fold ->
    [yes] { $side ->
        [left] a { $off } del pliegue
        [right] a { $off } del pliegue
       *[other] a { $off } por debajo del pliegue
    }
   *[no] { $side ->
        [left] a { $off } del borde izquierdo
        [top] a { $off } del borde superior
        [right] a { $off } del borde derecho
       *[bottom] a { $off } del borde inferior
    }
}
place-center-of = { $axis ->
    [level] centrado a lo ancho con { $of }
   *[upright] centrado a lo alto con { $of }
}
place-touching = { $side ->
    [left] junto a { $of }, a la izquierda
    [top] junto a { $of }, por encima
    [right] junto a { $of }, a la derecha
   *[bottom] junto a { $of }, por debajo
}
place-beyond = { $side ->
    [left] a { $gap } a la izquierda de { $of }
    [top] a { $gap } por encima de { $of }
    [right] a { $gap } a la derecha de { $of }
   *[bottom] a { $gap } por debajo de { $of }
}
place-straddling = { $side ->
    [left] con el centro sobre el borde izquierdo de { $of }
    [top] con el centro sobre el borde superior de { $of }
    [right] con el centro sobre el borde derecho de { $of }
   *[bottom] con el centro sobre el borde inferior de { $of }
}
place-level-with = { $side ->
    [left] a ras del borde izquierdo de { $of }
    [top] a ras del borde superior de { $of }
    [right] a ras del borde derecho de { $of }
   *[bottom] a ras del borde inferior de { $of }
}
place-within = { $side ->
    [left] a { $inset } del borde izquierdo de { $of }
    [top] a { $inset } del borde superior de { $of }
    [right] a { $inset } del borde derecho de { $of }
   *[bottom] a { $inset } del borde inferior de { $of }
}

trim-flush = Abrir la tarjeta. Desde dentro, recortar a ras de la base lo que sobresale: { $what }.
inside-open = Abrir la tarjeta. Esto va en la mitad { $half ->
    [lower] inferior
   *[right] derecha
}.
inside-stamp = Dentro, en la mitad { $half ->
    [lower] inferior
   *[right] derecha
}, estampar { $words } – tinta: { $ink }; dejar secar.
inside-write = Dentro, en la mitad { $half ->
    [lower] inferior
   *[right] derecha
}, escribir { $words }.
inside-choose = Al enviar la tarjeta, escribir dentro: { $among }.
inside-later = Al enviar la tarjeta, escribir dentro un texto propio.
envelope-take = Tomar el sobre, con el anverso hacia arriba.


## Envelopes and the post

envelope-title = { $gift ->
    [yes] Sobres, y para regalo
   *[no] Sobres
}
envelope-size = { $all ->
    [yes] Cada tarjeta cabe en un sobre de { $size }.
   *[no] { $count ->
        [one] { $cards } cabe en un sobre { $size }.
       *[other] { $cards } caben en sobres { $size }.
    }
}
envelope-with = { $all ->
    [yes] Cada tarjeta cabe en el sobre que viene con su base.
   *[no] { $count ->
        [one] { $cards } cabe en el sobre que viene con su base.
       *[other] { $cards } caben en los sobres que vienen con sus bases.
    }
}
fit-in-short = En su sobre miden hasta { $thick } de grosor y pesan hasta { $heavy }.
envelope-post = { $raised ->
    [yes] Las tarjetas con relieve son más gruesas y pueden costar más: consultar al operador postal.
   *[no] Las tarifas cambian: consultar al operador postal.
}
envelope-estimate = Cada tarjeta está medida en su sobre, con la espuma en todo su grosor y sin pegamento ni sello; todo es una estimación.
fit-summary = El grosor y el peso de cada tarjeta en su sobre, y el espacio que queda.
fit-card = Tarjeta
fit-thick = Grosor
fit-heavy = Peso
fit-room = Holgura en el sobre
fit-mm = { $number }{ "\u00A0" }mm
fit-grams = { $number }{ "\u00A0" }g
fit-ounces = { $number }{ "\u00A0" }oz ({ $grams })
fit-spare = { $size }{ $tight ->
    [yes] , justo
   *[no] {""}
}

post-hint = Solo como orientación, con el año de la fuente: { $classes }.
post-class-of = { $operator } { $class }
post-class = { $class } ({ $seen ->
    [read] leído en { $year }
   *[issued] { $year }
})
post-class-but = pero { $cards }: { $class }
post-below = demasiado pequeño o ligero para una carta
post-beyond = excede la carta
post-where = País
post-as = Probablemente como
post-source = Fuente
post-watch = El relieve puede costar más donde las cartas deben { $how ->
    [even] tener un grosor uniforme
    [bends] doblarse con facilidad
   *[both] tener un grosor uniforme y doblarse con facilidad
}: { $operators }.
post-summary = La categoría postal probable de las tarjetas, por país, con la fuente.
operator = { $operator ->
    [us] Estados Unidos
    [ca] Canadá
    [uk] Reino Unido
    [de] Alemania
    [au] Australia
    [no] Noruega
    [be] Bélgica
    [fr] Francia
   *[abroad] Extranjero
}


## The gift set

gift-title = Para regalo
gift-stack = { $cards ->
    [one] La tarjeta terminada, en su sobre, tiene unos { $high } de alto.
   *[other] Las { $cards } tarjetas terminadas, en sus sobres, forman una pila de unos { $high }.
}
gift-band = Una faja alrededor del lado corto mide { $long } de largo, con el solape, y { $wide } de ancho.
gift-from-offcut = Cortarla del sobrante de papel { $paper }.
gift-from-other = Ningún sobrante es bastante largo: cortarla de otra hoja o unir dos tiras.
gift-box = Una caja para guardarlas mide por dentro { $size } y tiene { $high } de alto.


## For the host: what to do when, how long it takes, who is there

host-title = Antes del taller
host-when = { $when ->
    [week] Una semana antes
    [day] El día anterior
   *[hour] Una hora antes
}
host-buy = Comprar lo que está en la lista y ver si ha llegado todo.
host-samples = Hacer una muestra de cada tarjeta y guardar una en cada fase para enseñarla, de modo que nadie espere a que se seque.
host-print = Imprimir { $copies } guías del taller: una por persona y otra para quien lo dirige.
host-ahead = Hacer lo que se prepara de antemano: { $works }.
host-bags = { $bags ->
    [one] Llenar una bolsa.
   *[other] Llenar { $bags } bolsas{ $spares ->
        [0] .
        [one] , una de ellas de reserva.
       *[other] , { $spares } de ellas de reserva.
    }
}
host-shared = { $count } × { $tool }: uno para cada { $people } personas.
host-places = { $people ->
    [one] Poner una bolsa y una guía.
   *[other] Poner una bolsa y una guía en cada uno de los { $people } sitios.
}
host-show = Colocar las muestras donde todos las vean.
time-title = Cuánto se tarda
time-summary = Qué se hace y cuándo, y cuántos minutos se tarda.
time-from = Desde
time-what = Actividad
time-minutes = Minutos
time-doing = { $what ->
    [setup] Bienvenida, preparar las mesas
    [preparing] Primero, para todas las tarjetas
    [waiting] Dejar secar, nada más que hacer
    [cleanup] Recoger
   *[buffer] De reserva
}
time-total = { $fits ->
    [yes] Todo lleva unos { $total } de los { $lasts } minutos.
   *[no] Todo lleva unos { $total } minutos; hay { $lasts }.
}{ $estimated ->
    [yes] {" "}Donde no se han dado minutos son estimaciones: cronometrar la muestra.
   *[no] {""}
} Para principiantes ya se cuenta la mitad más.
time-when-late = Si se hace tarde, dejar esta tarjeta: { $card }. Se ahorran unos { $minutes } minutos.
time-leave-out = { $fits ->
    [yes] Para no pasar de { $lasts } minutos, dejar { $cards }: se ahorran unos { $saves } minutos.
   *[no] Aun sin { $cards } se tarda más de { $lasts } minutos.
} { $count ->
    [one] Se puede terminar en casa.
   *[other] Se pueden terminar en casa.
}
attendance-title = Quién está
attendance-summary = Una lista de todos, con una casilla para marcar.
attendance-number = N.º
attendance-name = Nombre
attendance-spares = { $spares ->
    [0] No hay kits de reserva.
    [one] Hay un kit de reserva, para una visita o una pieza estropeada.
   *[other] Hay { $spares } kits de reserva, para visitas y piezas estropeadas.
}


## For the maker of kits: labels and tallies

labels-title = Etiquetas para las bolsas
labels-text = Separarlas por las líneas. Están impresas a tamaño real.
label-number = { $spare ->
    [yes] { $number } de { $kits }, reserva
   *[no] { $number } de { $kits }
}
label-alt = { $spare ->
    [yes] Una etiqueta para la bolsa { $number } de { $kits }, de reserva.
   *[no] Una etiqueta para la bolsa { $number } de { $kits }.
}
tally-title = Llenar las bolsas
tally-text = { $tray ->
    [one] Tachar un número cuando haya tantas en la bolsa. Las letras son las del plan de corte.
   *[other] Cada línea es una bandeja de { $tray } bolsas. Tachar un número cuando haya tantas en sus bolsas. Las letras son las del plan de corte.
}
tally-summary = Cuántas cosas de cada clase van en cada bolsa.
tally-bag = Bolsa


## Check bar

# Behind the nought of a ruler.
ruler-inch = in
ruler-mm = mm
check-title = ¿Está impreso a tamaño real?
check-text = Estas barras miden { $inches } y { $millimetres }. Si no, imprimir al 100{ "\u00A0" }%.
check-alt = Dos reglas para comprobar la impresión, una de { $inches } y otra de { $millimetres }.


## Photos

photo-of-card = Una foto de la tarjeta terminada { $card }.
photo-of-set = Una foto de las tarjetas terminadas de este juego.


## Sheets at true size

true-size-title = A tamaño real
true-size-text = Imprimir estas páginas al 100{ "\u00A0" }% y medir primero las barras de control. Poner el papel sobre su dibujo para ver si tiene el tamaño justo o por dónde irá un corte.
true-size-caption = { $paper }, { $size }{ $plans ->
    [one] .
   *[other] , plan { $plan }.
}
true-size-alt = { $paper }, { $size }{ $plans ->
    [one] { "" }
   *[other] , plan { $plan }
}, con el contorno de cada pieza a tamaño real.
true-size-piece = { $name }, { $size }.
true-size-piece-alt = El contorno de { $name }, { $size }, a tamaño real.
true-size-part = Parte { $part } de { $parts }
true-size-joined = Cortar una parte por la línea de trazos, ponerla sobre su vecina de modo que las cruces coincidan y pegarla.
host-stages = Son { $cards } { $cards ->
    [one] tarjeta terminada
   *[other] tarjetas terminadas
} y { $stages } a medio hacer: { $works }.
