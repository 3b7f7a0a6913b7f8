//! The classes themselves, each limit with its source.
//!
//! To add an operator: give it a name in `Operator`, add its classes from the
//! cheapest up, each limit in the unit of the document, and cite the document.

use crate::standards::post::Limit::{
    LargeAtLeast, LongAtLeast, LongUpTo, MassAtLeast, MassUpTo, RatioAtLeast, RatioUpTo,
    ShortAtLeast, ShortUpTo, SumUpTo, ThickAtLeast, ThickUpTo,
};
use crate::standards::post::Mass::{Grams, HalfOunces};
use crate::standards::post::Measure::{Hundredths, Mils};
use crate::standards::post::{
    LetterClass, Limit, Measure, Operator, Requirement, Watch, Year,
};
use crate::standards::{Citation, Seen};

static US_DMM: Citation = Citation {
    title: "United States Postal Service, Domestic Mail Manual 101 (updated 2023-07-09)",
    section: "1.1, 1.2, 2.0, 6.1.1, 6.2.2, 6.3.1; also Publication 25, 1-2.3",
    seen: Seen::Document,
};
static CA_GUIDE: Citation = Citation {
    title: "Canada Post, Postal Guide: Lettermail (effective 2021-01-11)",
    section: "Table 1; also the page on size requirements",
    seen: Seen::Document,
};
static UK_SIZE: Citation = Citation {
    title: "Ofcom, How do I know whether my letter is classified as a large letter?",
    section: "the page as read in 2026",
    seen: Seen::Document,
};
static UK_MASS: Citation = Citation {
    title: "Royal Mail, sizes and weights, as repeated by other pages read in 2026",
    section: "mass of Letter and Large Letter",
    seen: Seen::Repeated,
};
static DE_AUTO: Citation = Citation {
    title: "Deutsche Post, Automationsfähige Briefsendungen (about 2013)",
    section: "page 6; the same figures in news of 2025-02-12",
    seen: Seen::Document,
};
static DE_SHAPE: Citation = Citation {
    title: "Deutsche Post, Standardbrief and Kompaktbrief as repeated by news of 2025-02-12",
    section: "length at least 1.4 times the width",
    seen: Seen::Repeated,
};
static AU_LETTERS: Citation = Citation {
    title: "Australia Post, Domestic letters (2025)",
    section: "small and large letters; also Regular letters and cards, Posting tips",
    seen: Seen::Document,
};
static NO_LABEL: Citation = Citation {
    title: "Bring, Label specification for registered letter v1.1 (valid from 2026-02-01)",
    section: "sizes; also the page Preparing",
    seen: Seen::Document,
};
static BE_BIPT: Citation = Citation {
    title: "Belgian Institute for Postal Services and Telecommunications, FAQ 56",
    section: "What is a standardised item? The page as read in 2026",
    seen: Seen::Document,
};
static FR_MEDIATOR: Citation = Citation {
    title: "La Poste, letters, as repeated by its mediator (2006) and by news of 2023",
    section: "size and mass (2006), thickness (2023)",
    seen: Seen::Repeated,
};
// The texts allow 2 mm less in either direction, which nobody should count on.
static ABROAD: Citation = Citation {
    title: "India Post, Letter; the same from Croatian Post, Bring and Åland Post",
    section: "international letters not in roll form; the pages as read in 2026",
    seen: Seen::Document,
};

const fn by(from: &'static Citation, limit: Limit) -> Requirement {
    Requirement { limit, from }
}

const fn mm(millimetres: i64) -> Measure {
    Measure::mm(millimetres)
}

/// A letter of any shape, from which the plain letter differs in shape only. A
/// square one is at least 5 x 5 in, as its longer side is.
static US_LETTER_SIZE: [Requirement; 7] = [
    by(&US_DMM, LongAtLeast(Mils(5000))),
    by(&US_DMM, ShortAtLeast(Mils(3500))),
    by(&US_DMM, ThickAtLeast(Mils(7))),
    by(&US_DMM, LongUpTo(Mils(11_500))),
    by(&US_DMM, ShortUpTo(Mils(6125))),
    by(&US_DMM, ThickUpTo(Mils(250))),
    by(&US_DMM, MassUpTo(HalfOunces(7))),
];

/// Every class: by operator, and within it from the cheapest up.
pub static CLASSES: &[LetterClass] = &[
    LetterClass {
        key: "us-postcard",
        operator: Operator::UnitedStates,
        name: "postcard",
        postcard: true,
        size: &[
            by(&US_DMM, LongAtLeast(Mils(5000))),
            by(&US_DMM, ShortAtLeast(Mils(3500))),
            by(&US_DMM, ThickAtLeast(Mils(7))),
            by(&US_DMM, LongUpTo(Mils(6000))),
            by(&US_DMM, ShortUpTo(Mils(4250))),
            by(&US_DMM, ThickUpTo(Mils(16))),
            by(&US_DMM, MassUpTo(HalfOunces(7))),
        ],
        shape: &[],
        raised: &[Watch::Even],
        from: &US_DMM,
        year: Year::Issued(2023),
    },
    LetterClass {
        key: "us-letter",
        operator: Operator::UnitedStates,
        name: "letter",
        postcard: false,
        size: &US_LETTER_SIZE,
        shape: &[
            by(&US_DMM, RatioAtLeast(13)),
            by(&US_DMM, RatioUpTo(25)),
            by(
                &US_DMM,
                LargeAtLeast { thick: Mils(9), long: Mils(6000), short: Mils(4250) },
            ),
        ],
        raised: &[Watch::Even, Watch::Bends],
        from: &US_DMM,
        year: Year::Issued(2023),
    },
    LetterClass {
        key: "us-nonmachinable",
        operator: Operator::UnitedStates,
        name: "nonmachinable letter",
        postcard: false,
        size: &US_LETTER_SIZE,
        shape: &[],
        raised: &[],
        from: &US_DMM,
        year: Year::Issued(2023),
    },
    LetterClass {
        key: "us-flat",
        operator: Operator::UnitedStates,
        name: "large envelope (flat)",
        postcard: false,
        size: &[
            by(&US_DMM, LongAtLeast(Mils(5000))),
            by(&US_DMM, ShortAtLeast(Mils(3500))),
            by(&US_DMM, ThickAtLeast(Mils(7))),
            by(&US_DMM, LongUpTo(Mils(15_000))),
            by(&US_DMM, ShortUpTo(Mils(12_000))),
            by(&US_DMM, ThickUpTo(Mils(750))),
            by(&US_DMM, MassUpTo(HalfOunces(26))),
        ],
        shape: &[],
        raised: &[Watch::Even, Watch::Bends],
        from: &US_DMM,
        year: Year::Issued(2023),
    },
    LetterClass {
        key: "ca-standard",
        operator: Operator::Canada,
        name: "Lettermail, standard",
        postcard: false,
        size: &[
            by(&CA_GUIDE, LongAtLeast(mm(140))),
            by(&CA_GUIDE, ShortAtLeast(mm(90))),
            by(&CA_GUIDE, ThickAtLeast(Hundredths(18))),
            by(&CA_GUIDE, LongUpTo(mm(245))),
            by(&CA_GUIDE, ShortUpTo(mm(156))),
            by(&CA_GUIDE, ThickUpTo(mm(5))),
            by(&CA_GUIDE, MassAtLeast(Grams(2))),
            by(&CA_GUIDE, MassUpTo(Grams(50))),
        ],
        shape: &[],
        raised: &[],
        from: &CA_GUIDE,
        year: Year::Issued(2021),
    },
    LetterClass {
        key: "ca-other",
        operator: Operator::Canada,
        name: "Lettermail, other (non-standard and oversize)",
        postcard: false,
        size: &[
            by(&CA_GUIDE, LongAtLeast(mm(140))),
            by(&CA_GUIDE, ShortAtLeast(mm(90))),
            by(&CA_GUIDE, ThickAtLeast(Hundredths(18))),
            by(&CA_GUIDE, LongUpTo(mm(380))),
            by(&CA_GUIDE, ShortUpTo(mm(270))),
            by(&CA_GUIDE, ThickUpTo(mm(20))),
            by(&CA_GUIDE, MassAtLeast(Grams(3))),
            by(&CA_GUIDE, MassUpTo(Grams(500))),
        ],
        shape: &[],
        raised: &[],
        from: &CA_GUIDE,
        year: Year::Issued(2021),
    },
    LetterClass {
        key: "uk-letter",
        operator: Operator::UnitedKingdom,
        name: "Letter",
        postcard: false,
        size: &[
            by(&UK_SIZE, LongUpTo(mm(240))),
            by(&UK_SIZE, ShortUpTo(mm(165))),
            by(&UK_SIZE, ThickUpTo(mm(5))),
            by(&UK_MASS, MassUpTo(Grams(100))),
        ],
        shape: &[],
        raised: &[],
        from: &UK_SIZE,
        year: Year::Read(2026),
    },
    LetterClass {
        key: "uk-large-letter",
        operator: Operator::UnitedKingdom,
        name: "Large Letter",
        postcard: false,
        size: &[
            by(&UK_SIZE, LongUpTo(mm(353))),
            by(&UK_SIZE, ShortUpTo(mm(250))),
            by(&UK_SIZE, ThickUpTo(mm(25))),
            by(&UK_MASS, MassUpTo(Grams(750))),
        ],
        shape: &[],
        raised: &[],
        from: &UK_SIZE,
        year: Year::Read(2026),
    },
    LetterClass {
        key: "de-standard",
        operator: Operator::Germany,
        name: "Standardbrief",
        postcard: false,
        size: &[
            by(&DE_AUTO, LongAtLeast(mm(140))),
            by(&DE_AUTO, ShortAtLeast(mm(90))),
            by(&DE_AUTO, LongUpTo(mm(235))),
            by(&DE_AUTO, ShortUpTo(mm(125))),
            by(&DE_AUTO, ThickUpTo(mm(5))),
            by(&DE_AUTO, MassUpTo(Grams(20))),
        ],
        shape: &[by(&DE_SHAPE, RatioAtLeast(14))],
        raised: &[Watch::Bends],
        from: &DE_AUTO,
        year: Year::Issued(2013),
    },
    LetterClass {
        key: "de-kompakt",
        operator: Operator::Germany,
        name: "Kompaktbrief",
        postcard: false,
        size: &[
            by(&DE_AUTO, LongAtLeast(mm(100))),
            by(&DE_AUTO, ShortAtLeast(mm(70))),
            by(&DE_AUTO, LongUpTo(mm(235))),
            by(&DE_AUTO, ShortUpTo(mm(125))),
            by(&DE_AUTO, ThickUpTo(mm(10))),
            by(&DE_AUTO, MassUpTo(Grams(50))),
        ],
        shape: &[by(&DE_SHAPE, RatioAtLeast(14))],
        raised: &[],
        from: &DE_AUTO,
        year: Year::Issued(2013),
    },
    LetterClass {
        key: "de-gross",
        operator: Operator::Germany,
        name: "Großbrief",
        postcard: false,
        size: &[
            by(&DE_AUTO, LongAtLeast(mm(100))),
            by(&DE_AUTO, ShortAtLeast(mm(70))),
            by(&DE_AUTO, LongUpTo(mm(353))),
            by(&DE_AUTO, ShortUpTo(mm(250))),
            by(&DE_AUTO, ThickUpTo(mm(20))),
            by(&DE_AUTO, MassUpTo(Grams(500))),
        ],
        shape: &[],
        raised: &[],
        from: &DE_AUTO,
        year: Year::Issued(2013),
    },
    LetterClass {
        key: "de-maxi",
        operator: Operator::Germany,
        name: "Maxibrief",
        postcard: false,
        size: &[
            by(&DE_AUTO, LongAtLeast(mm(100))),
            by(&DE_AUTO, ShortAtLeast(mm(70))),
            by(&DE_AUTO, LongUpTo(mm(353))),
            by(&DE_AUTO, ShortUpTo(mm(250))),
            by(&DE_AUTO, ThickUpTo(mm(50))),
            by(&DE_AUTO, MassUpTo(Grams(1000))),
        ],
        shape: &[],
        raised: &[],
        from: &DE_AUTO,
        year: Year::Issued(2013),
    },
    LetterClass {
        key: "au-small",
        operator: Operator::Australia,
        name: "small letter",
        postcard: false,
        size: &[
            by(&AU_LETTERS, LongUpTo(mm(240))),
            by(&AU_LETTERS, ShortUpTo(mm(130))),
            by(&AU_LETTERS, ThickUpTo(mm(5))),
            by(&AU_LETTERS, MassUpTo(Grams(250))),
        ],
        shape: &[],
        raised: &[Watch::Bends],
        from: &AU_LETTERS,
        year: Year::Issued(2025),
    },
    LetterClass {
        key: "au-large",
        operator: Operator::Australia,
        name: "large letter",
        postcard: false,
        size: &[
            by(&AU_LETTERS, LongUpTo(mm(360))),
            by(&AU_LETTERS, ShortUpTo(mm(260))),
            by(&AU_LETTERS, ThickUpTo(mm(20))),
            by(&AU_LETTERS, MassUpTo(Grams(500))),
        ],
        shape: &[],
        raised: &[Watch::Bends],
        from: &AU_LETTERS,
        year: Year::Issued(2025),
    },
    LetterClass {
        key: "no-small",
        operator: Operator::Norway,
        name: "small letter",
        postcard: false,
        size: &[
            by(&NO_LABEL, LongAtLeast(mm(140))),
            by(&NO_LABEL, ShortAtLeast(mm(90))),
            by(&NO_LABEL, LongUpTo(mm(250))),
            by(&NO_LABEL, ShortUpTo(mm(176))),
            by(&NO_LABEL, ThickUpTo(mm(5))),
            by(&NO_LABEL, MassUpTo(Grams(2000))),
        ],
        shape: &[],
        raised: &[],
        from: &NO_LABEL,
        year: Year::Issued(2026),
    },
    LetterClass {
        key: "no-large",
        operator: Operator::Norway,
        name: "large letter",
        postcard: false,
        size: &[
            by(&NO_LABEL, LongAtLeast(mm(140))),
            by(&NO_LABEL, ShortAtLeast(mm(90))),
            by(&NO_LABEL, LongUpTo(mm(353))),
            by(&NO_LABEL, ShortUpTo(mm(250))),
            by(&NO_LABEL, ThickUpTo(mm(20))),
            by(&NO_LABEL, MassUpTo(Grams(2000))),
        ],
        shape: &[],
        raised: &[],
        from: &NO_LABEL,
        year: Year::Issued(2026),
    },
    LetterClass {
        key: "be-standardised",
        operator: Operator::Belgium,
        name: "standardised item",
        postcard: false,
        size: &[
            by(&BE_BIPT, LongAtLeast(mm(140))),
            by(&BE_BIPT, ShortAtLeast(mm(90))),
            by(&BE_BIPT, ThickAtLeast(Hundredths(15))),
            by(&BE_BIPT, LongUpTo(mm(235))),
            by(&BE_BIPT, ShortUpTo(mm(125))),
            by(&BE_BIPT, ThickUpTo(mm(5))),
            by(&BE_BIPT, MassUpTo(Grams(50))),
        ],
        shape: &[],
        raised: &[],
        from: &BE_BIPT,
        year: Year::Read(2026),
    },
    LetterClass {
        key: "fr-letter",
        operator: Operator::France,
        name: "lettre",
        postcard: false,
        size: &[
            by(&FR_MEDIATOR, LongAtLeast(mm(140))),
            by(&FR_MEDIATOR, ShortAtLeast(mm(90))),
            by(&FR_MEDIATOR, LongUpTo(mm(600))),
            by(&FR_MEDIATOR, SumUpTo(mm(1000))),
            by(&FR_MEDIATOR, ThickUpTo(mm(30))),
            by(&FR_MEDIATOR, MassUpTo(Grams(3000))),
        ],
        shape: &[],
        raised: &[],
        from: &FR_MEDIATOR,
        year: Year::Issued(2023),
    },
    LetterClass {
        key: "abroad-letter",
        operator: Operator::Abroad,
        name: "letter",
        postcard: false,
        size: &[
            by(&ABROAD, LongAtLeast(mm(140))),
            by(&ABROAD, ShortAtLeast(mm(90))),
            by(&ABROAD, LongUpTo(mm(600))),
            by(&ABROAD, SumUpTo(mm(900))),
            by(&ABROAD, MassUpTo(Grams(2000))),
        ],
        shape: &[],
        raised: &[],
        from: &ABROAD,
        year: Year::Read(2026),
    },
];
