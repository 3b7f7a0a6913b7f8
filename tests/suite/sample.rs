//! The project of `demo-data/orchard-evenings.yaml`, made by hand.

use leafwright::geom::{Axis, Length, Shape, Side};
use leafwright::project::*;
use leafwright::source::Site;

use crate::hand_made::{
    base, card, from, greeting, late_cut, layer, paper, piece, project, size, text, tool,
};

const ORCHARD: PaperId = PaperId(0);
const OAT: PaperId = PaperId(1);

pub(crate) fn orchard() -> Project {
    let mut orchard = paper("orchard", size(192, 192), &[Runs::Up, Runs::Any]);
    orchard.faces[0].name = text("boughs");
    orchard.faces[1].name = text("pips");
    orchard.pack = Some(Pack { holds: 6, designs: 1 });
    let mut oat = paper("oat", size(136, 176), &[Runs::Any]);
    oat.kind = PaperKind::Cardstock;
    oat.faces[0].name = text("");
    oat.pack = Some(Pack { holds: 25, designs: 1 });
    let mut note = base("note", BaseFrom::Bought(Some(Pack { holds: 10, designs: 1 })));
    note.comes = Comes::Scored;
    let envelope = size(92, 70);
    let site = Site::default();
    note.envelope = Some(Envelope { size: Some(envelope), with_base: true, site });
    let mut small = base("small note", BaseFrom::Made(OAT));
    small.front = size(56, 80);
    small.comes = Comes::Flat;
    small.envelope = None;
    let sized = |name, width, height| {
        let mut piece = piece(name, size(width, height));
        piece.of = ORCHARD;
        piece
    };
    Project {
        title: text("Orchard Evenings"),
        about: Some(text("Five cards from the trees behind the village hall.")),
        edition: Some(text("First printing")),
        handed_out_by: Some(HandedOutBy {
            name: text("The harvest table"),
            reach: Some(text("the note on the tea urn")),
        }),
        kits: 12,
        papers: vec![orchard, oat],
        bases: vec![note, small],
        tools: tools(),
        pieces: vec![
            sized("sash", 88, 32),
            sized("ribbon", 88, 28),
            sized("banner", 36, 88),
            sized("window", 60, 80),
            sized("tile", 20, 20),
        ],
        late_cuts: vec![late()],
        greetings: greetings(),
        cards: cards(),
        done_ahead: vec![
            ahead(Reader::Class, &[Work::Cut, Work::Punch]),
            ahead(Reader::Kit, &ALL_BUT_THE_END),
            ahead(Reader::Travel, &ALL_BUT_THE_END),
        ],
        cut_by: vec![CutBy { reader: Reader::Class, reader_cuts: false, site }],
        ..project()
    }
}

const ALL_BUT_THE_END: [Work; 6] =
    [Work::Cut, Work::Score, Work::Stamp, Work::Punch, Work::LateCut, Work::Layer];

fn ahead(reader: Reader, work: &[Work]) -> DoneAhead {
    DoneAhead { reader, work: work.to_vec(), site: Site::default() }
}

fn tools() -> Vec<Tool> {
    let trimmer = Trimmer {
        longest_cut: Some(Length::inch(12, 1)),
        sheets_at_once: 3,
        marks: Length::inch(1, 16),
        narrowest: Length::inch(1, 4),
        kind: TrimmerKind::Sliding,
    };
    let outline = Outline { shape: Shape::Rounded, size: size(40, 20) };
    let punch = Punch {
        outline,
        reach: Some(Length::inch(11, 8)),
        takes_strips: Some(Length::inch(11, 4)),
    };
    let mut punch = tool("tag punch", ToolKind::Punch(punch));
    punch.instead = Some(text("cut 2 1/2 x 1 1/4 in rectangles"));
    let foam = ToolKind::Foam {
        thickness: Some(Length::mm(2)),
        side: None,
        pack: Some(Pack { holds: 100, designs: 1 }),
    };
    vec![
        tool("trimmer", ToolKind::Trimmer(trimmer)),
        punch,
        tool("kind words", ToolKind::StampSet),
        tool("plum ink", ToolKind::InkPad),
        tool("bone folder", ToolKind::Folder),
        tool("scoring board", ToolKind::ScoringTool),
        tool("tape runner", ToolKind::Tape),
        tool("foam squares", foam),
    ]
}

fn late() -> LateCut {
    let mut late = late_cut(PieceId(1), size(88, 28), 8, ["sill", "rail"]);
    late.makes[0].showing = Some(FaceId(1));
    late.makes[1].showing = Some(FaceId(0));
    late.with = Some(ToolId(0));
    late.at_the_card = true;
    late
}

fn greetings() -> Vec<Greeting> {
    let words = ["With thanks, all of us", "Hello", "Well done", "Get well soon"];
    let all = words.into_iter().map(|words| Greeting {
        words: text(words),
        stamped: Some(size(28, 8)),
        stamps: Some(ToolId(2)),
        ink: Some(ToolId(3)),
        label: Label {
            outline: Outline { shape: Shape::Rounded, size: size(40, 20) },
            punch: Some(ToolId(1)),
            site: Site::default(),
        },
        of: OAT,
        narrowed: None,
        mat: None,
        ..greeting(words)
    });
    all.collect()
}

fn cards() -> Vec<Card> {
    let ink = Some(ToolId(3));
    let stamped =
        |words: &str| Inside { words: Some(text(words)), ink, ..Inside::default() };
    let chosen = |words: &[&str]| Inside {
        among: words.iter().map(|it| text(it)).collect(),
        ..Inside::default()
    };
    let raised = |at: usize| Layer {
        raised: 4,
        with: Some(ToolId(7)),
        ..layer(Placed::Greeting(GreetingId(at)))
    };
    let across = |what| Layer { edge_to_edge: Some(Axis::Level), ..layer(what) };
    let site = Site::default();
    let mut thanks = card(
        "Thank you",
        Stands::Wide,
        vec![
            Layer { up: from(Side::Bottom, 12), ..across(Placed::Piece(PieceId(0))) },
            Layer { up: from(Side::Bottom, 18), ..raised(0) },
        ],
    );
    thanks.inside = stamped("You made our autumn");
    thanks.tips = vec![text("Rub the sash down from the middle outwards.")];
    let gap = Length::inch(1, 8);
    let mut hello = card(
        "Hello",
        Stands::Wide,
        vec![
            Layer { up: from(Side::Bottom, 20), ..across(Placed::Late(LateId(0), 1)) },
            Layer {
                up: Along::Beyond { of: 0, side: Side::Bottom, gap, site },
                showing: Some(FaceId(1)),
                ..across(Placed::Late(LateId(0), 0))
            },
            Layer { up: Along::Straddling { of: 0, side: Side::Top, site }, ..raised(1) },
        ],
    );
    hello.inside = chosen(&["Write soon", "See you under the trees"]);
    let mut done = card(
        "Well done",
        Stands::Tall,
        vec![
            Layer {
                edge_to_edge: Some(Axis::Upright),
                across: from(Side::Left, 0),
                ..layer(Placed::Piece(PieceId(2)))
            },
            Layer { across: from(Side::Right, 4), up: from(Side::Top, 16), ..raised(2) },
        ],
    );
    done.inside = stamped("We knew you could");
    let mut get_well = card(
        "Get well",
        Stands::Tall,
        vec![
            layer(Placed::Piece(PieceId(3))),
            Layer { up: from(Side::Bottom, 12), ..raised(3) },
        ],
    );
    get_well.inside = stamped("Rest and be spoiled");
    let tile = |showing, across| Layer {
        showing: Some(FaceId(showing)),
        across,
        ..layer(Placed::Piece(PieceId(4)))
    };
    let mut pips = card(
        "Three pips",
        Stands::Wide,
        vec![
            tile(1, from(Side::Left, 6)),
            tile(0, Along::Center),
            tile(1, from(Side::Right, 6)),
        ],
    );
    pips.base = BaseId(1);
    pips.inside = Inside::default();
    vec![thanks, hello, done, get_well, pips]
}
