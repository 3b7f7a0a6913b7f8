//! What things are called, wherever they are spoken of.

use crate::document::Text;
use crate::geom::Side;
use crate::handout::links;
use crate::handout::writer::{Writer, plain};
use crate::plan::cut::{Part, PartOf};
use crate::project::{
    BaseId, Comes, FaceId, GreetingId, Layer, PaperId, Placed, ToolId, ToolKind,
};

impl Writer<'_> {
    /// What a layer is called, with its letter if it was cut from a sheet:
    /// `sash (A)`.
    pub(super) fn placed(&self, what: Placed) -> Text {
        let of = match what {
            Placed::Piece(piece) => Some(PartOf::Piece(piece)),
            Placed::Greeting(greeting) => Some(PartOf::Label(greeting)),
            Placed::Late(..) => None,
        };
        self.lettered(self.placed_name(what), of.and_then(|it| self.part(it)))
    }

    /// What a layer is called among the layers of a card: the words of a greeting
    /// are left out where it is the only one, since what to lay ready has said them.
    pub(super) fn placed_among(&self, what: Placed, layers: &[Layer]) -> Text {
        let greeting = |it: &&Layer| matches!(it.what, Placed::Greeting(_));
        match what {
            Placed::Greeting(id) if layers.iter().filter(greeting).count() == 1 => {
                let label = self.tell("label-any", &[]);
                self.lettered(label, self.part(PartOf::Label(id)))
            }
            _ => self.placed(what),
        }
    }

    /// What a layer is called, without its letter.
    pub(super) fn placed_name(&self, what: Placed) -> Text {
        match what {
            Placed::Piece(piece) => self.user(&self.project.pieces[piece.0].name),
            Placed::Late(late, at) => {
                self.user(&self.project.late_cuts[late.0].makes[at].name)
            }
            Placed::Greeting(greeting) => self.label(greeting),
        }
    }

    /// A name with a letter after it: `sash (A)`.
    pub(super) fn lettered(&self, name: Text, part: Option<&Part>) -> Text {
        match part {
            Some(part) => {
                let letter: Text = vec![links::letter(part)];
                let values = [("name", name.into()), ("letter", letter.into())];
                self.tell("name-with-letter", &values)
            }
            None => name,
        }
    }

    /// The label of a greeting: `label “Hello”`.
    pub(super) fn label(&self, greeting: GreetingId) -> Text {
        let words = self.quoted(&self.project.greetings[greeting.0].words);
        self.tell("label-named", &[("words", words.into())])
    }

    /// What a part is called as it comes off the sheet, with its letter.
    pub(super) fn part_named(&self, part: &Part) -> Text {
        self.lettered(self.part_name(part), Some(part))
    }

    /// What a part is called as it comes off the sheet, without its letter.
    pub(super) fn part_name(&self, part: &Part) -> Text {
        match part.of {
            PartOf::Piece(piece) => self.user(&self.project.pieces[piece.0].name),
            PartOf::Base(base) => self.base(base),
            PartOf::Label(greeting) => {
                let punched = self.project.greetings[greeting.0].label.punch.is_some();
                let label = self.label_of(part, greeting);
                match part.on_each() {
                    1 if punched => {
                        self.tell("strip-for-label", &[("label", label.into())])
                    }
                    1 => label,
                    many => self.tell("strip-for-labels", &[("count", many.into())]),
                }
            }
            PartOf::LabelMat(greeting) => {
                let label = self.label_of(part, greeting);
                let mat = self.project.greetings[greeting.0].mat;
                if part.on_each() > 1 {
                    let count = part.on_each().into();
                    return self.tell("strip-for-mats", &[("count", count)]);
                }
                if mat.is_some_and(|it| it.punched.is_some()) {
                    return self.tell("strip-for-mat", &[("label", label.into())]);
                }
                self.tell("mat-of-label", &[("label", label.into())])
            }
        }
    }

    /// The label that a part is for; without its words where it is for several.
    fn label_of(&self, part: &Part, greeting: GreetingId) -> Text {
        match part.greetings.len() {
            0 | 1 => self.label(greeting),
            _ => self.tell("label-any", &[]),
        }
    }

    /// The shortest name for a drawing, where the letter stands already.
    pub(super) fn part_short(&self, part: &Part) -> String {
        match part.of {
            PartOf::Piece(piece) => self.bare(&self.project.pieces[piece.0].name),
            PartOf::Base(base) => self.bare(&self.project.bases[base.0].name),
            PartOf::Label(_) | PartOf::LabelMat(_) => plain(&self.part_name(part)),
        }
    }

    /// A base: `note base`.
    pub(super) fn base(&self, base: BaseId) -> Text {
        let name = self.user(&self.project.bases[base.0].name);
        self.tell("base-named", &[("name", name.into())])
    }

    /// In what state a base is: `flat`, `scored`, `folded`.
    pub(super) fn comes(comes: Comes) -> &'static str {
        match comes {
            Comes::Flat => "flat",
            Comes::Scored => "scored",
            Comes::Folded => "folded",
        }
    }

    /// A tool or something that is used up, with what it is where its name does
    /// not say so: `plum ink (ink pad)`.
    pub(super) fn tool(&self, tool: ToolId) -> Text {
        let tool = &self.project.tools[tool.0];
        let name = self.user(&tool.name);
        let kind = match tool.kind {
            ToolKind::StampSet => "stamps",
            ToolKind::InkPad => "ink",
            ToolKind::Glue { .. } => "glue",
            _ => return name,
        };
        let kind = self.say("tool-kind", &[("kind", kind.into())]);
        let called = self.bare(&tool.name).to_lowercase();
        let known = |word: &str| called.split(' ').any(|it| it == word.to_lowercase());
        let known = kind.split(' ').any(known);
        if known && !matches!(tool.kind, ToolKind::StampSet | ToolKind::InkPad) {
            return name;
        }
        self.tell("tool-with-kind", &[("name", name.into()), ("kind", kind.into())])
    }

    /// A tool by its name alone.
    pub(super) fn tool_name(&self, tool: ToolId) -> Text {
        self.user(&self.project.tools[tool.0].name)
    }

    /// A face of a paper, if it has a name: `boughs`.
    pub(super) fn face(&self, paper: PaperId, face: FaceId) -> Option<Text> {
        let face = self.project.papers[paper.0].faces.get(face.0)?;
        (!face.name.words.is_empty()).then(|| self.user(&face.name))
    }

    /// The face on the other side of the paper, if the paper has two.
    pub(super) fn back_of(&self, paper: PaperId, face: FaceId) -> Option<Text> {
        let faces = &self.project.papers[paper.0].faces;
        let back = (0..faces.len()).map(FaceId).find(|it| *it != face)?;
        self.face(paper, back)
    }

    /// An edge of a thing: `the top edge`.
    pub(super) fn edge(&self, side: Side) -> String {
        self.say("edge", &[("side", Self::side(side).into())])
    }

    /// The word by which messages choose a side.
    pub(super) fn side(side: Side) -> &'static str {
        match side {
            Side::Left => "left",
            Side::Top => "top",
            Side::Right => "right",
            Side::Bottom => "bottom",
        }
    }
}
