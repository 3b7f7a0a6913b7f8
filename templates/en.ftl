# Every sentence that is printed in English.
#
# Words are those of the glossary: sheet, piece, strip, offcut, waste, face, base,
# front, layer, mat, label, greeting, stamped, raised, score, fold, mark, kit.
# Sizes are width × height. {"\u00A0"} keeps what it stands between on one line.


## Numbers and units

decimal-sign = .
length-inch = { $number }{ "\u00A0" }in
length-mm = { $number }{ "\u00A0" }mm
size-inch = { $width }{ "\u00A0" }×{ "\u00A0" }{ $height }{ "\u00A0" }in
size-mm = { $width }{ "\u00A0" }×{ "\u00A0" }{ $height }{ "\u00A0" }mm
# The reader's ruling unit, then the other.
both-units = { $first } ({ $second })


## Joining words

quoted = “{ $words }”
list-next = { $first }, { $next }
list-last = { $first } and { $last }
list-choice = { $first } or { $last }
list-comma = ,{ " " }
list-semicolon = ;{ " " }


## The foot of each page

foot-with-edition = { $title } · { $kind ->
    [number] edition { $edition }
   *[words] { $edition }
}
foot-with-name = { $left } · { $name }
foot-page = Page { $page } of { $pages }
foot-continued = continued
foot-scale = Scale { $scale }


## What things are called

# A letter tells the same part in the drawings, in the lists and in the steps.
name-with-letter = { $name }{ "\u00A0" }({ $letter })
name-offcut = offcut
label-named = label { $words }
label-any = label
label-blank = { $count ->
    [one] blank label
   *[other] blank labels
}
# Labels that are cut alike, with their greetings.
labels-named = labels { $words }
strip-for-label = strip for the { $label }
strip-for-mat = strip for the mat of the { $label }
strip-for-labels = strip for { $count } labels
strip-for-mats = strip for { $count } mats
mat-of-label = mat for the { $label }
base-named = { $name } base
# A thing that is needed several times.
several = { $count }{ "\u00A0" }×{ "\u00A0" }{ $item }
base-counted = { $count ->
    [one] the { $name } base
   *[other] the { $count } { $name } bases
}
tool-kind = { $kind ->
    [stamps] stamp set
    [ink] ink pad
   *[glue] glue
}
tool-with-kind = { $name } ({ $kind })
edge = { $side ->
    [left] left edge
    [top] top edge
    [right] right edge
   *[bottom] bottom edge
}
foam-squares = { $count ->
    [one] 1 foam square
   *[other] { $count } foam squares
}


## Cover

cover-name = For { $name }
cover-makes = { $count ->
    [one] Makes one card: { $names }.
   *[other] Makes { $count } cards: { $names }.
}
cover-scale = Drawn at { $scale }.
cover-maker = { $reader ->
    [class] For the host: what to prepare before the class.
   *[other] For the maker: what to prepare before the kits go out.
} { $kits ->
    [one] It is written for one kit.
   *[other] It is written for { $kits } kits{ $spares ->
        [0] .
        [one] , one of them spare.
       *[other] , { $spares } of them spare.
    }
}
cover-done = Done for you: { $works }.
cover-before = { $hands ->
    [maker] Yours to do: { $works }.
   *[reader] Before you go: { $works }.
}
cover-here = { $place ->
    [travel] On the way: { $works }.
   *[other] Yours to do: { $works }.
}
# Ends a sentence that begins "Done for you:".
work-done = { $work ->
    [cut] sheets cut
    [score] bases scored
    [fold] bases folded
    [stamp] greetings stamped
    [punch] labels punched
    [again] the cut pieces cut again
    [layer] labels set on their mats
    [attach] layers set on the fronts
   *[inside] insides stamped
}
# Ends a sentence that begins "Yours to do:".
work-do = { $work ->
    [cut] cut the sheets
    [score] score the bases
    [fold] fold the bases
    [stamp] stamp the greetings
    [punch] punch the labels
    [again] cut some pieces again
    [layer] put the labels on their mats
    [attach] put the layers on the fronts
   *[inside] add the words inside
}
cover-ask = Handed out by { $name }. Ask there if anything is missing or unclear.
cover-ask-reach = Handed out by { $name }. Anything missing or unclear? Ask: { $reach }.
tips-title = Good to know


## Cautions: the hazard, what it can do, how to avoid it

cautions-title = Take care
signal = { $weight ->
    [warning] WARNING
    [caution] CAUTION
   *[notice] NOTICE
}
caution-lever = Long blade on a lever. It can cut deeply. Keep the guard on and your fingers behind it. Press the lever down and latch it after every cut. For adults only.
caution-sliding = Sharp blade in the trimmer. It can cut skin. Keep your fingers off the slot in which the blade runs. Lay the trimmer flat and close the blade before you put it away.
caution-rotary = Sharp rolling blade. It can cut skin. Roll it away from you, with the other hand behind it. Close the guard after every cut.
caution-knife = Sharp knife. It can cut skin. Cut on a mat along a metal ruler, with the other hand behind the blade. Cover the blade when you put the knife down.
caution-scissors = Sharp points and edges. Scissors can cut and prick. Sit down to cut, and hand them over closed, handles first. Children need someone beside them.
caution-punch = Punch. It can pinch or bruise a finger. Keep fingers out of the opening, and press it down on a firm table.
caution-heat = Hot tool. It burns skin at a touch and scorches paper. Rest it on its stand, never leave it alone, and unplug it after use. For adults only.
caution-small-parts = Small parts, such as foam squares. A small child can choke on them. Keep them away from children under 3.
caution-moving = Blades and hot tools in a moving vehicle. A jolt can make them slip and hurt someone. Use none while it moves.
caution-luggage = Blades in your luggage. They can cut whoever opens it, and may be taken from you. Wrap them, and ask your carrier before you travel what is allowed.
caution-glue = Wet glue marks paper and tables and makes thin paper curl. Spread it thinly over scrap paper, and use it as its label says.
caution-ink = Ink stains hands, clothes and tables. Cover the table, close the pad after use, and keep damp stamps off the cards.
caution-hot-car = Ink and wet glue stain, and they dry out or leak in a hot car. Cover the tray, close them after use, and carry them with you, upright. Keep damp stamps off the cards.
caution-order = Cut in the order of the steps. A wrong first cut can’t be undone.
caution-last = Local rules and the instructions that come with each tool come first.


## What to have at hand

need-title = { $reader ->
    [class] On the table, shared
    [kit] What you need
    [travel] What you need at home
   *[maker] Tools
}
need-pen = a pen
need-instead = { $tool }. Without one: { $instead }


## What to buy

buy-title = What to buy
buy-for = { $kits ->
    [one] For one kit
   *[other] For { $kits } kits
}{ $spares ->
    [0] .
    [one] {" "}and one spare one.
   *[other] {" "}and { $spares } spare ones.
}
buy-summary = What to buy: how many for one kit, how many for all, in how many packs, and how many are left over.
buy-what = What
buy-one-kit = One kit
buy-all = All
buy-packs = Packs
buy-over = Left over
buy-packs-of = { $packs ->
    [one] 1 pack of { $holds }
   *[other] { $packs } packs of { $holds }
}
buy-rolls = { $packs ->
    [one] 1 roll
   *[other] { $packs } rolls
}
buy-packs-assorted = { $packs ->
    [one] 1 assorted pack with { $holds } of it
   *[other] { $packs } assorted packs with { $holds } of it
}
buy-on-hand = On hand
buy-price = Price
buy-none = none
buy-rolls-of = { $rolls ->
    [one] 1 roll of { $holds }
   *[other] { $rolls } rolls of { $holds }
}
buy-sheet-gives = { $cards ->
    [one] one card from a sheet of { $paper }
   *[other] { $cards } cards from a sheet of { $paper }
}
buy-sheets-give = That makes { $papers }.
buy-cost = What is used up costs { $all } to buy{ $some ->
    [yes] , as far as there are prices
   *[no] {""}
}: { $kits ->
    [one] { $card } a card.
   *[other] { $kit } a kit and { $card } a card, spares included.
}
buy-cost-tools = Tools cost { $tools } besides.
money = { $amount }{ "\u00A0" }{ $currency }
metres = { $number }{ "\u00A0" }m
good-sheets = { $paper }, sheets { $size }
good-scraps = scraps of { $paper }, at least { $size }
good-envelopes = envelopes for the { $base }
good-envelopes-size = envelopes { $size } for the { $base }
good-foam = foam squares
good-order = { $good }, order number { $number }


## The bag

bag-title = In your bag: tick off what you find
bag-summary = What the bag holds: how many, what, and how large.
bag-count = Count
bag-what = What
bag-size = Size
bag-base = { $base }, { $state ->
    [folded] folded
    [scored] scored, lying flat
   *[flat] not yet scored
}
bag-label = { $label }{ $stamped ->
    [yes] , stamped
   *[no] {""}
}{ $matted ->
    [yes] , on its mat
    [several] , on their mats
   *[no] {""}
}
bag-mats = mats for the labels
bag-foam = { $count ->
    [one] foam square
   *[other] foam squares
}
bag-envelopes = { $count ->
    [one] envelope
   *[other] envelopes
}
bag-sheets = { $count ->
    [one] sheet of { $paper }
   *[other] sheets of { $paper }
}
pack-title = { $hands ->
    [maker] What goes into each bag
   *[reader] What to pack
}
pack-bags = { $kits ->
    [one] One bag.
   *[other] Pack { $kits } bags{ $spares ->
        [0] .
        [one] ; one of them is spare.
       *[other] ; { $spares } of them are spare.
    }
}
pack-tools = And the tools for the way:
pack-cards = Take an envelope for each card and put its parts in:
pack-besides = Besides:
pack-card = { $card }: { $parts }
pack-card-apart = { $card }, in a wrap of its own: { $parts }
pack-base = base
pack-postage = postage: in their envelopes the cards are up to { $thick } thick and { $heavy } heavy; check with your postal operator
pack-packaging = For each kit: { $items }.
pack-flat = Lay flat paper between two pieces of stiff card so that nothing bends.


## Cut plan

cut-plan-title = Cut plan: { $paper }
sheets-needed = { $kits ->
    [one] { $sheets ->
        [one] One sheet of { $paper }, { $size }, is enough.
       *[other] It takes { $sheets } sheets of { $paper }, { $size }.
    }
   *[other] { $sheets ->
        [one] One sheet of { $paper }, { $size }, is enough for all { $kits } kits
       *[other] It takes { $sheets } sheets of { $paper }, { $size }, for all { $kits } kits
    }{ $spares ->
        [0] .
        [one] , one of them spare.
       *[other] , { $spares } of them spare.
    }
}
sheets-scraps = Cut these from scraps of { $paper }, each at least { $size }.
sheets-proven = No plan can do with fewer than { $sheets } sheets.
sheets-bound = { $least ->
    [one] No plan with fewer was found.
   *[other] No plan with fewer was found; at least { $least } are needed.
}
offcut-kept = { $proven ->
    [yes] The offcut worth keeping measures { $size }; no plan with so few sheets leaves a larger one.
   *[no] The offcut worth keeping measures { $size }.
}
own-way = Your own way takes { $sheets ->
    [one] one sheet
   *[other] { $sheets } sheets
} and { $cuts } cuts{ $same ->
    [all] ; no plan was found that does better.
    [sheets] ; the best plan found takes as many sheets, and { $bestcuts } cuts.
   *[none] ; the best plan found takes { $bestsheets }, and { $bestcuts } cuts.
}
own-offcut = Your way leaves an offcut of { $size }, the best plan one of { $best }.
alike-instead = Cut every sheet alike and it takes { $more ->
    [0] as many sheets
    [one] one sheet more
   *[other] { $more } sheets more
}, but only { $steps ->
    [one] 1 step
   *[other] { $steps } steps
} instead of { $othersteps }.
alike-how = To have it so, ask for “sheets alike” in the description, and make this handout again.
alike-chosen = Every sheet is cut alike, { $kits ->
    [one] for one kit
   *[other] for { $kits } kits
}{ $over ->
    [0] .
    [one] ; the parts of one kit are left over.
   *[other] ; the parts of { $over } kits are left over.
}
fewer-sheets-alike = { $fewer ->
    [0] As many sheets, cut in different ways, would take
    [one] One sheet less would do if they were cut in different ways, for
   *[other] { $fewer } sheets less would do if they were cut in different ways, for
} { $dearer ->
    [yes] { $marks ->
        [0] as many marks
        [one] one mark more
       *[other] { $marks } marks more
    }
   *[no] { $marks ->
        [one] one mark less
       *[other] { $marks } marks less
    }
} and { $othersteps ->
    [one] 1 step
   *[other] { $othersteps } steps
} instead of { $steps }.
fewer-sheets = { $fewer ->
    [one] One sheet less would do
   *[other] { $fewer } sheets less would do
} { $dearer ->
    [yes] { $marks ->
        [0] with another plan, with as many marks.
        [one] with another plan, at the cost of one more mark.
       *[other] with another plan, at the cost of { $marks } more marks.
    }
   *[no] { $marks ->
        [one] with another plan, which even has one mark less.
       *[other] with another plan, which even has { $marks } marks less.
    }
}
# Pieces whose pattern must run on, or that show one place of the pattern.
lies-next-to = The { $piece } lies { $side ->
    [left] to the left of
    [right] to the right of
    [top] just above
   *[bottom] just below
} the { $other } on the sheet, so that the pattern runs on: keep the two together.
lies-at-place = The { $piece } shows one place of the pattern: it lies { $left } from the left edge of the sheet and { $top } from the top edge.
plan-caption = { $plans ->
    [one] { $sheets ->
        [one] Cut the sheet like this.
       *[other] Cut all { $sheets } sheets like this.
    }
   *[other] Plan { $plan }: { $sheets ->
        [one] cut 1 sheet like this.
       *[other] cut { $sheets } sheets like this.
    }
}
plan-lies = { $directed ->
    [yes] The { $face } side lies up; the arrow shows which way the pattern stands.
   *[no] The { $face } side lies up.
}
plan-upright = The arrow shows which way the pattern stands.
plan-alt-part = { $count }{ "\u00A0" }×{ "\u00A0" }{ $name }, { $size }
plan-alt = A sheet of { $size } divided by { $cuts ->
    [one] 1 cut
   *[other] { $cuts } cuts
} into { $parts }.
parts-letter = Letter
parts-name = Piece
parts-size = Wide × high
parts-per-kit = One kit
parts-in-all = In all
parts-summary = What is cut from { $paper }: letter, name, size, and how many.


## Steps at the trimmer

cutting-title = Cutting: { $paper }
# Said once in a handout.
cutting-mark = The mark is the place on the trimmer’s ruler where an edge is lined up. What lies between that edge and the blade comes off; the other part stays.
cutting-marks = { $marks ->
    [one] Set the mark once.
   *[other] Set the mark { $marks } times{ $proven ->
        [yes] ; no order of these cuts needs fewer.
       *[no] .
    }
}
cutting-edges = Top, bottom, left and right are those of the pattern, however the paper lies in the trimmer.
# What takes up the difference if a sheet is not quite as large as it should be.
slack = { $plans ->
    [one] { $sheets ->
        [one] If your sheet
       *[other] If a sheet
    }
   *[other] If a sheet for plan { $plan }
} is a little { $way ->
    [width] narrow or wide
   *[height] short or tall
}, { $parts } { $count ->
    [one] gets the difference.
   *[other] get the difference.
}
slack-many = A piece that is to be measured at the end gets what its sheet is short or over.
slack-part = { $all ->
    [yes] { $count ->
        [one] the { $name }
       *[other] every { $name }
    }
   *[no] { $count ->
        [one] one { $name }
       *[other] { $count }{ "\u00A0" }×{ "\u00A0" }{ $name }
    }
}
cutting-scale = Drawings:{ "\u00A0" }{ $scale }.
cutting-stack = Where a step names several sheets or parts, stack up to { $count } with their edges flush and cut them in one stroke.
cutting-each = Where a step names several sheets or parts, cut one after the other without moving the mark.
cutting-slips = Put a slip with the number of its step on every part that you lay aside.
take-sheet = { $plans ->
    [one] { $count ->
        [one] Take the sheet of { $paper }.
       *[other] Take the { $count } sheets of { $paper }.
    }
   *[other] { $count ->
        [one] Take the sheet of { $paper } for plan { $plan }.
       *[other] Take the { $count } sheets of { $paper } for plan { $plan }.
    }
}
sheet-face-up = The { $face } side lies up.
take-aside = { $count ->
    [one] Take the part from step { $step }, { $size }{ $turn ->
        [yes] , and turn it by a quarter.
       *[no] .
    }
   *[other] Take the { $count } parts from step { $step }, { $size } each{ $turn ->
        [yes] , and turn them by a quarter.
       *[no] .
    }
}
go-on = { $count ->
    [one] { $turn ->
        [yes] Turn the part in your hand, { $size }, by a quarter.
       *[no] Go on with the part in your hand, { $size }.
    }
   *[other] { $turn ->
        [yes] Turn the { $count } parts in hand, { $size } each, by a quarter.
       *[no] Go on with the { $count } parts in hand, { $size } each.
    }
}
edge-of-length = the { $edge } ({ $length })
edge-by-length = { $which ->
    [long] a long edge ({ $length })
    [short] a short edge ({ $length })
   *[any] one edge ({ $length })
}
line-up = { $moves ->
    [yes] Line up { $edge } with the mark at { $mark } and
   *[no] Leave the mark at { $mark }, line up { $edge } and
} { $times ->
    [1] cut.
    [2] cut twice, lining up again.
   *[other] cut { $times } times, lining up each time.
}
# `mixed`: what comes off at this mark is of several sorts.
off-part = { $count ->
    [one] The { $name } comes off{ $total ->
        [one] .
       *[other] , { $total } in all.
    }
   *[other] Each time the { $name } comes off, { $total } in all.
}
off-aside = { $count ->
    [one] Lay what comes off, { $size }, aside for step { $step }.
   *[other] Lay the { $count } parts that come off, { $size } each, aside for step { $step }.
}
off-in-hand = { $count ->
    [one] Keep what comes off, { $size }, in hand.
   *[other] Keep the { $count } parts that come off, { $size } each, in hand.
}
off-keep = { $large ->
    [yes] { $count ->
        [one] Keep what comes off, { $size }, as an offcut.
       *[other] Keep the { $count } parts that come off, { $size } each, as offcuts.
    }
   *[no] { $count ->
        [one] What comes off, { $size }, goes to the scraps.
       *[other] The { $count } parts that come off, { $size } each, go to the scraps.
    }
}
off-waste = { $count ->
    [one] What comes off, { $size }, is waste.
   *[other] The { $count } parts that come off, { $size } each, are waste.
}
off-mixed = Sort the { $count } parts that come off, { $size } each: { $shares }.
share-part = { $count } × { $name }
share-aside = { $count } for step { $step }
share-in-hand = { $count } to keep in hand
share-keep = { $large ->
    [yes] { $count } to keep as { $count ->
        [one] an offcut
       *[other] offcuts
    }
   *[no] { $count } for the scraps
}
share-waste = { $count } as waste
stays-part = { $also ->
    [yes] { $total ->
        [one] What stays is one more { $name }.
       *[other] What stays makes { $total } more of the { $name }.
    }
   *[no] What stays is the { $name }{ $total ->
        [one] .
       *[other] , { $total } in all.
    }
}
stays-check = { $total ->
    [one] Measure it: it should be { $size }.
   *[other] Measure them: each should be { $size }.
}
stays-aside = { $total ->
    [one] Lay what stays, { $size }, aside for step { $step }.
   *[other] Lay the { $total } parts that stay, { $size } each, aside for step { $step }.
}
stays-in-hand = { $total ->
    [one] { $size } stays in hand.
   *[other] The { $total } parts that stay, { $size } each, are still in hand.
}
stays-keep = { $large ->
    [yes] { $total ->
        [one] Keep what stays, { $size }, as an offcut.
       *[other] Keep the { $total } parts that stay, { $size } each, as offcuts.
    }
   *[no] { $total ->
        [one] What stays, { $size }, goes to the scraps.
       *[other] The { $total } parts that stay, { $size } each, go to the scraps.
    }
}
stays-waste = { $total ->
    [one] What stays, { $size }, is waste.
   *[other] The { $total } parts that stay, { $size } each, are waste.
}
# What comes off and what stays are of one size and go the same way.
all-aside = { $count ->
    [2] Lay both parts, { $size } each, aside for step { $step }.
   *[other] Lay all { $count } parts, { $size } each, aside for step { $step }.
}
hard-to-hold = It is narrow: hold it down with a ruler or a piece of card, not with your fingertips.
step-alt = Cut { $number }: paper { $size }, { $edge } lined up, mark { $mark }; { $off } comes off.


## Preparing

prepare-title = { $whose ->
    [maker] Prepare for all kits
    [before] Before you go
    [travel] On the way: first
   *[here] First, for all cards
}
score-base = { $count ->
    [one] Score { $base } across the middle: lay it flat, { $size }, and press the line { $at } from { $edge ->
        [long] a long edge.
        [short] a short edge.
       *[any] an edge.
    }
   *[other] Score { $base } across the middle: lay each flat, { $size }, and press the line { $at } from { $edge ->
        [long] a long edge.
        [short] a short edge.
       *[any] an edge.
    }
}
score-alt = The { $base } lying flat, outside up, { $size }, with a dashed score line across the middle, { $at } from { $edge ->
    [long] a long edge.
    [short] a short edge.
   *[any] an edge.
}
score-caption = The outside lies up. Dashed: the score.
strip-alt = A strip { $size } with the outline of the label, { $punched }, dashed in its middle{ $stamped ->
    [yes] {" "}and the place of the stamped words in the middle of that
   *[no] {""}
}.
strip-caption = Dashed: the label.
fold-bases = { $scored ->
    [yes] Fold { $bases } along the score, with its ridge on the inside.
   *[no] Fold { $bases } in half, edge on edge.
}
press-with = Press the fold flat with the { $tool }.
press-plain = Press the fold flat.
strips-alt = A strip { $size } with the outlines of { $count } labels, each { $punched }, dashed one after another{ $stamped ->
    [yes] {" "}and the place of the stamped words in each
   *[no] {""}
}. From middle to middle it is { $apart }.
strips-caption = Dashed: the { $count } labels, numbered.
# Strips that hold several labels.
stamp-in-place = { $words } in { $count ->
    [one] place { $places }
   *[other] places { $places }
}
stamp-strips = Stamp each greeting{ $hasink ->
    [yes] {" "}in { $ink },
   *[no] {""}
}{ $hasset ->
    [yes] {" "}with { $set },
   *[no] {""}
} in its place on a strip ({ $letter }): { $items }. The middle of the first place is { $first } from the end of the strip, each next one { $apart } further.{ $changes ->
    [yes] {" "}Go through all strips with one greeting before you change the stamp.
   *[no] {""}
}
punch-go-on = Begin at the end of the strip. After each label cut the strip off { $end } before the next, so that the punch reaches it.
stamp-on = { $on ->
    [strip] strip
   *[label] label
}
stamp-greetings = Stamp each greeting{ $hasink ->
    [yes] {" "}in { $ink },
   *[no] {""}
}{ $hasset ->
    [yes] {" "}with { $set },
   *[no] {""}
} in the middle of a { $on }: { $items }.
stamp-item = { $words }{ $count ->
    [one] {""}
   *[other] {" "}({ $count } times)
}
stamp-item-on = { $words } on { $on }{ $count ->
    [one] {""}
   *[other] {" "}({ $count } times)
}
its-label = its label
ink-dries = Let the ink dry before you touch it.
card-waits = { $minutes ->
    [one] Let the card dry for 1 minute.
   *[other] Let the card dry for { $minutes } minutes.
}
waits = { $minutes ->
    [one] Let it dry for 1 minute.
   *[other] Let it dry for { $minutes } minutes.
}
scraps-of = scraps of { $paper }
a-punch = punch
punch-labels = { $stamped ->
    [yes] With the { $tool }, punch { $count ->
        [one] the label
       *[other] { $count } labels
    } out of { $strips }. Turn the punch over and look: the stamped words stand in the middle of the opening.
   *[no] With the { $tool }, punch { $count ->
        [one] the label
       *[other] { $count } labels
    } out of { $strips }.
}
its-mat = mat
# Labels that are punched twice, and mats that are punched.
narrow-labels = { $which ->
    [all] Then make each narrower
   *[some] Then make each with { $label } narrower
}: slide it back into the punch, { $by } further { $side ->
    [left] to the left
    [right] to the right
    [top] up
   *[bottom] down
}{ $held ->
    [yes] , hold it with { $with },
   *[no] {""}
} and punch again, so that { $by } comes off at the { $side ->
    [left] left
    [right] right
    [top] top
   *[bottom] bottom
}. What is left is { $size }{ $words ->
    [yes] ; for the words to be in its middle, they stand { $off } { $side ->
        [left] right of
        [right] left of
        [top] below
       *[bottom] above
    } the middle of the opening at the first pass.
   *[no] .
}
punch-mats = With the { $tool }, punch { $count ->
    [one] the mat
   *[other] { $count } mats
} out of { $strips }.
mat-halve = Cut the { $mat } in half { $halves ->
    [level] from left to right
   *[upright] from top to bottom
} and { $slid ->
    [together] slide the halves over each other by { $by }.
   *[apart] lay the halves { $by } apart: the label covers the gap.
}
mat-trim = Trim { $by } off { $halves ->
    [level] its left and its right end.
   *[upright] its top and its bottom end.
}
mat-shows = Lay it in the middle of the mat; { $which ->
    [all] { $across } shows all round.
    [across] { $across } shows at the left and at the right.
    [up] { $up } shows at the top and at the bottom.
   *[both] { $across } shows at the left and at the right, { $up } at the top and at the bottom.
}
# Labels whose mats are made and fixed as the one before.
mat-same = Do the same with the { $labels }.
mat-lay = Lay it in the middle of its { $mat }; { $border } shows all round.
so-long = { $length } of { $item }
add-extra = Add { $item }{ $placed ->
    [yes] : { $place }.
   *[no] .
}
late-part = { $name }, { $size }
late-halve = { $with ->
    [yes] With the { $tool }, halve
   *[no] Halve
} { $count ->
    [one] the { $piece } { $edge ->
        [long] along its length
        [short] across its length
       *[any] through the middle
    }. Each half makes: { $parts }.
   *[other] the { $count } pieces { $piece } { $edge ->
        [long] along their length
        [short] across their length
       *[any] through the middle
    }. Each half makes: { $parts }.
}
late-thirds = { $with ->
    [yes] With the { $tool }, cut
   *[no] Cut
} { $count ->
    [one] the { $piece } into thirds, { $edge ->
        [long] along its length
        [short] across its length
       *[any] from edge to edge
    }. Each third is the { $parts }.
   *[other] the { $count } pieces { $piece } into thirds, { $edge ->
        [long] along their length
        [short] across their length
       *[any] from edge to edge
    }. Each third is the { $parts }.
}
late-cut-off = { $with ->
    [yes] With the { $tool }, cut
   *[no] Cut
} { $at } off { $count ->
    [one] { $edge ->
        [long] a long edge
        [short] a short edge
       *[any] one edge
    } of the { $piece }. What comes off is the { $off }.
   *[other] { $edge ->
        [long] a long edge
        [short] a short edge
       *[any] one edge
    } of each of the { $count } pieces { $piece }. What comes off is the { $off }.
}
late-stays = What stays is the { $stays }.
late-keep = Keep the { $part } for the card { $card }.


how-tape = Tape goes along the edges.
how-glue = Spread glue thinly, up to the edges, and press the layer down.
# Where glue has to dry; 0 where not every card takes as long.
how-waits = { $minutes ->
    [0] While one card dries, go on with the next.
    [one] Let each card dry for 1 minute; go on with the next meanwhile.
   *[other] Let each card dry for { $minutes } minutes; go on with the next meanwhile.
}
how-foam = Foam squares go on the back, near the corners but clear of the edges; peel off their covers last.


## Cards

cards-in-batches = Work in batches: give every card its first layer, then every card its second, and so on.
card-count = Make { $count } of this card.
card-takes = Fold { $fold ->
    [left] on the left
    [top] at the top
    [right] on the right
   *[bottom] at the bottom
}. Lay ready: { $items }.
front-alt-short = The finished front of { $card }.
front-alt = { $what ->
    [inside] The inside of { $card }
   *[front] The front of { $card }
}, { $size }, with the fold { $fold ->
    [left] on the left
    [top] at the top
    [right] on the right
   *[bottom] at the bottom
}. From the base upwards: { $layers }.
apart-alt = The layers of { $card } pulled apart, in the order in which they go onto the base: { $layers }.
apart-alt-layer = { $name }{ $raised ->
    [0] {""}
    [one] {" "}on a foam square
   *[other] {" "}on { $raised } foam squares
}
layers-title = How the cards go together
layers-text = The layers are pulled apart and numbered in the order in which they go on. Long dashes lead to the place of each{ $foam ->
    [yes] ; small squares are foam squares.
   *[no] .
} Drawn at { $scale }.
front-alt-layer = { $name }: { $place }
# A small drawing beside a step.
state-alt = { $what ->
    [inside] The inside of { $card }
   *[front] The front of { $card }
} after this step, with the fold { $fold ->
    [left] on the left
    [top] at the top
    [right] on the right
   *[bottom] at the bottom
}. { $count ->
    [0] The base is bare
    [one] There already, drawn plain: { $before }
   *[other] There already, drawn plain: { $before }
}. New, drawn with a heavy outline{ $raised ->
    [0] {""}
    [one] {" "}and on a foam square
   *[other] {" "}and on { $raised } foam squares
}: { $name }, { $place }.
state-scale = Drawings beside steps:{ "\u00A0" }{ $scale }. What is new has a heavy outline.
tip = Tip: { $tip }

# The side of a layer that gets the glue.
back-named = the { $face } side of the { $what }
back-plain = the back of the { $what }
# A tool is named where there is a choice.
fix-tape = { $named ->
    [yes] With the { $tool }, tape
   *[no] Tape
} { $back }.
fix-glue = { $named ->
    [yes] With the { $tool }, glue
   *[no] Glue
} { $back }.
fix-with = Put the { $tool } on { $back }.
fix-plain = Put glue or tape on { $back }.
set-raised = Set the { $what } on { $count ->
    [one] a foam square
   *[other] { $count } foam squares
}: { $how }.
lay-it = Lay it { $how }.
face-up = with the { $face } showing
# A face that shows and has a direction.
face-stands = { $turn ->
    [none] with the { $face } upright
    [right] with the { $face } showing, their top to the right
    [left] with the { $face } showing, their top to the left
   *[over] with the { $face } upside down
}
pattern-stands = { $turn ->
    [none] pattern upright
    [right] top of the pattern to the right
    [left] top of the pattern to the left
   *[over] pattern upside down
}

# Where a layer sits; follows "Lay it".
place-middle = right in the middle
place-spans = edge to edge
place-center = { $axis ->
    [level] centred across
   *[upright] centred up and down
}
place-flush = { $fold ->
    [yes] along the fold
   *[no] { $side ->
        [left] flush with the left edge
        [top] flush with the top edge
        [right] flush with the right edge
       *[bottom] flush with the bottom edge
    }
}
place-from = { $fold ->
    [yes] { $side ->
        [left] { $off } from the fold
        [right] { $off } from the fold
       *[other] { $off } below the fold
    }
   *[no] { $side ->
        [left] { $off } from the left edge
        [top] { $off } below the top edge
        [right] { $off } from the right edge
       *[bottom] { $off } above the bottom edge
    }
}
place-center-of = { $axis ->
    [level] centred across the { $of }
   *[upright] centred up and down the { $of }
}
place-touching = { $side ->
    [left] touching the { $of } on its left
    [top] touching the { $of } above it
    [right] touching the { $of } on its right
   *[bottom] touching the { $of } below it
}
place-beyond = { $side ->
    [left] { $gap } to the left of the { $of }
    [top] { $gap } above the { $of }
    [right] { $gap } to the right of the { $of }
   *[bottom] { $gap } below the { $of }
}
place-straddling = { $side ->
    [left] its middle on the left edge of the { $of }
    [top] its middle on the top edge of the { $of }
    [right] its middle on the right edge of the { $of }
   *[bottom] its middle on the bottom edge of the { $of }
}
place-level-with = { $side ->
    [left] flush with the left edge of the { $of }
    [top] flush with the top edge of the { $of }
    [right] flush with the right edge of the { $of }
   *[bottom] flush with the bottom edge of the { $of }
}
place-within = { $side ->
    [left] { $inset } from the left edge of the { $of }
    [top] { $inset } from the top edge of the { $of }
    [right] { $inset } from the right edge of the { $of }
   *[bottom] { $inset } from the bottom edge of the { $of }
}

trim-flush = Open the card. From the inside, trim what hangs over of the { $what } flush with the base.
inside-open = Open the card. This goes on the { $half ->
    [lower] lower half
   *[right] right half
}.
inside-stamp = Inside, on the { $half ->
    [lower] lower half
   *[right] right half
}, stamp { $words } in { $ink }; let it dry.
inside-write = Inside, on the { $half ->
    [lower] lower half
   *[right] right half
}, write { $words }.
inside-choose = When you send the card, write inside: { $among }.
inside-later = When you send the card, write your own words inside.
envelope-take = Take the envelope, its front towards you.


## Envelopes and the post

envelope-title = { $gift ->
    [yes] Envelopes, and as a gift
   *[no] Envelopes
}
envelope-size = { $all ->
    [yes] Every card goes into an envelope { $size }.
   *[no] { $count ->
        [one] { $cards } goes into an envelope { $size }.
       *[other] { $cards } go into envelopes { $size }.
    }
}
envelope-with = { $all ->
    [yes] Every card goes into the envelope that comes with its base.
   *[no] { $count ->
        [one] { $cards } goes into the envelope that comes with its base.
       *[other] { $cards } go into the envelopes that come with their bases.
    }
}
envelope-post = { $raised ->
    [yes] Raised cards are thick and may cost more: check with your postal operator what it takes.
   *[no] Classes change: check with your postal operator what it takes.
}
envelope-estimate = Each is measured in its envelope, foam at its full thickness, glue and stamp left out; all of this is an estimate.
fit-in-short = In their envelopes they are up to { $thick } thick and { $heavy } heavy.
fit-summary = How thick and heavy each card is in its envelope, and how much room is left.
fit-card = Card
fit-thick = Thick
fit-heavy = Weight
fit-room = Envelope is larger by
fit-mm = { $number }{ "\u00A0" }mm
fit-grams = { $number }{ "\u00A0" }g
fit-ounces = { $number }{ "\u00A0" }oz ({ $grams })
fit-spare = { $size }{ $tight ->
    [yes] , a tight fit
   *[no] {""}
}

# Hints of what postal operators take the cards for.
post-hint = As a hint only, with the year of the source: { $classes }.
post-class-of = { $operator } { $class }
post-class = { $class } ({ $seen ->
    [read] read { $year }
   *[issued] { $year }
})
post-class-but = but { $cards }: { $class }
post-below = too small or light for a letter
post-beyond = more than a letter
post-where = Where
post-as = Probably goes as
post-source = Source
post-watch = Raised layers may cost more where letters have to be { $how ->
    [even] evenly thick
    [bends] easy to bend
   *[both] evenly thick and easy to bend
}: { $operators }.
post-summary = What postal operators probably take the cards for, and where that is laid down.
operator = { $operator ->
    [us] United States
    [ca] Canada
    [uk] United Kingdom
    [de] Germany
    [au] Australia
    [no] Norway
    [be] Belgium
    [fr] France
   *[abroad] Abroad
}


## The gift set

gift-title = As a gift
gift-stack = { $cards ->
    [one] The finished card is about { $high } high in its envelope.
   *[other] The { $cards } finished cards make a stack about { $high } high, in their envelopes.
}
gift-band = A band around the short way is { $long } long, overlap included, and { $wide } wide.
gift-from-offcut = Cut it from the offcut of { $paper }.
gift-from-other = No offcut is long enough: cut it from another sheet, or join two strips.
gift-box = A box for them measures { $size } inside and is { $high } high.


## For the host: what to do when, how long it takes, who is there

host-title = Before the class
host-when = { $when ->
    [week] A week before
    [day] The day before
   *[hour] An hour before
}
host-buy = Buy what is on the list, and look whether it has all come.
host-samples = Make one of each card as a sample, and keep one at every stage to show, so that nobody waits for drying.
host-stages = That makes { $cards } finished { $cards ->
    [one] card
   *[other] cards
} and { $stages } half-done { $stages ->
    [one] one
   *[other] ones
}: { $works }.
host-print = Print { $copies } class handouts: one for each person and one for yourself.
host-ahead = Do what is done ahead: { $works }.
host-bags = { $bags ->
    [one] Fill one bag.
   *[other] Fill { $bags } bags{ $spares ->
        [0] .
        [one] , one of them spare.
       *[other] , { $spares } of them spare.
    }
}
host-shared = { $count }{ "\u00A0" }×{ "\u00A0" }{ $tool }: one for { $people } people.
host-places = { $people ->
    [one] Lay out a bag and a handout.
   *[other] Lay a bag and a handout at each of { $people } places.
}
host-show = Set the samples up where everyone can see them.
time-title = How long it takes
time-summary = What is done when, and how many minutes it takes.
time-from = From
time-what = What
time-minutes = Minutes
time-doing = { $what ->
    [setup] Welcome, lay out
    [preparing] First, for all cards
    [waiting] Let it dry, nothing else to do
    [cleanup] Clear up
   *[buffer] In reserve
}
time-total = { $fits ->
    [yes] All of it takes about { $total } of the { $lasts } minutes.
   *[no] All of it takes about { $total } minutes; there are { $lasts }.
}{ $estimated ->
    [yes] {" "}Where you gave no minutes these are estimates: time your sample.
   *[no] {""}
} Beginners are given half as long again.
time-when-late = When it gets late, leave out { $card }: that saves about { $minutes } minutes.
time-leave-out = { $fits ->
    [yes] To keep to { $lasts } minutes, leave out { $cards }: that saves about { $saves } minutes.
   *[no] Even without { $cards } it takes longer than { $lasts } minutes.
} { $count ->
    [one] It can be finished at home.
   *[other] They can be finished at home.
}
attendance-title = Who is there
attendance-summary = A list of everyone, with a box to tick.
attendance-number = No.
attendance-name = Name
attendance-spares = { $spares ->
    [0] There are no spare kits.
    [one] There is one spare kit, for a guest or a spoiled piece.
   *[other] There are { $spares } spare kits, for guests and spoiled pieces.
}


## For the maker of kits: labels and tallies

labels-title = Labels for the bags
labels-text = Cut them apart along the lines. They are printed at true size.
label-number = { $spare ->
    [yes] { $number } of { $kits }, spare
   *[no] { $number } of { $kits }
}
label-alt = { $spare ->
    [yes] A label for bag { $number } of { $kits }, a spare one.
   *[no] A label for bag { $number } of { $kits }.
}
tally-title = Filling the bags
tally-text = { $tray ->
    [one] Cross a number out when so many are in the bag. Letters are those of the cut plan.
   *[other] Each line is a tray of { $tray } bags. Cross a number out when so many are in its bags. Letters are those of the cut plan.
}
tally-summary = How many of each thing go into each bag.
tally-bag = Bag


## Check bar

# Behind the nought of a ruler.
ruler-inch = in
ruler-mm = mm
check-title = Is this printed at true size?
check-text = These bars are { $inches } and { $millimetres } long. If not, print at 100{ "\u00A0" }%.
check-alt = Two rulers to check the printout with, one of { $inches } and one of { $millimetres }.


## Photos

photo-of-card = A photo of the finished card { $card }.
photo-of-set = A photo of the finished cards of this set.


## Sheets at true size

true-size-title = At true size
true-size-text = Print these pages at 100{ "\u00A0" }% and measure the check bars first. Lay paper on its drawing to see that it has the right size, or where a cut will run.
true-size-caption = { $paper }, { $size }{ $plans ->
    [one] .
   *[other] , plan { $plan }.
}
true-size-alt = { $paper }, { $size }{ $plans ->
    [one] { "" }
   *[other] , plan { $plan }
}, with the outline of every piece at true size.
true-size-piece = { $name }, { $size }.
true-size-piece-alt = The outline of { $name }, { $size }, at true size.
true-size-part = Part { $part } of { $parts }
true-size-joined = Cut one part along the dashed line, lay it on its neighbour so that the crosses meet, and tape it down.
