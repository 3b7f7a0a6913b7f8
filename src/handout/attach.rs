//! Sentences that put a layer in its place.

use crate::document::Text;
use crate::geom::{Axis, Length, Side, Turn};
use crate::handout::writer::{Writer, sentences};
use crate::plan::{Front, Set};
use crate::project::{Along, FaceId, Layer, Runs, ToolId, ToolKind};

impl Writer<'_> {
    /// The first thing of the project that holds paper on paper.
    pub(super) fn adhesive(&self) -> Option<ToolId> {
        self.project.tools.iter().position(|it| holds(&it.kind)).map(ToolId)
    }

    /// What a layer is fixed with; `None` for foam squares that have no name.
    pub(super) fn fixed_with(&self, layer: &Layer) -> Option<ToolId> {
        match (layer.with, layer.raised) {
            (Some(tool), _) => Some(tool),
            (None, 0) => self.adhesive(),
            (None, _) => None,
        }
    }

    /// Which side gets what, and how the layer is laid on.
    pub(super) fn attach(
        &self,
        front: &Front,
        layers: &[Layer],
        sets: &[Set],
        at: usize,
    ) -> Text {
        let (Some(layer), Some(set)) = (layers.get(at), sets.get(at)) else {
            return Text::new();
        };
        let what = self.placed_among(layer.what, layers);
        let face = set.showing.unwrap_or(FaceId(0));
        let back = match self.back_of(set.paper, face) {
            Some(back) => {
                let values = [("face", back.into()), ("what", what.clone().into())];
                self.tell("back-named", &values)
            }
            None => self.tell("back-plain", &[("what", what.clone().into())]),
        };
        let mut how: Vec<Text> = Vec::new();
        how.extend(self.up_side(set));
        let place = self.place(front, layers, at);
        how.extend(place.into_iter().map(plain_text));
        let how = how.into_iter().reduce(|first, next| {
            self.tell("list-next", &[("first", first.into()), ("next", next.into())])
        });
        let how = how.unwrap_or_default();
        if layer.raised > 0 {
            let count = layer.raised.into();
            let values = [("what", what.into()), ("count", count), ("how", how.into())];
            return self.tell("set-raised", &values);
        }
        let fix = self.fix_flat(self.fixed_with(layer), back);
        sentences([fix, self.tell("lay-it", &[("how", how.into())])])
    }

    /// Puts glue or tape on a side.
    pub(super) fn fix_flat(&self, tool: Option<ToolId>, back: Text) -> Text {
        let Some(id) = tool else {
            return self.tell("fix-plain", &[("back", back.into())]);
        };
        let adhesives = self.project.tools.iter().filter(|it| holds(&it.kind)).count();
        let named = if adhesives > 1 { "yes" } else { "no" };
        let values = [
            ("tool", self.tool_name(id).into()),
            ("back", back.clone().into()),
            ("named", named.into()),
        ];
        match self.project.tools[id.0].kind {
            ToolKind::Tape => self.tell("fix-tape", &values),
            ToolKind::Glue { .. } => self.tell("fix-glue", &values),
            _ => {
                let tool = self.tool_name(id);
                self.tell("fix-with", &[("tool", tool.into()), ("back", back.into())])
            }
        }
    }

    /// Which face shows, if the paper has two that can be told apart, and how its
    /// pattern stands, if it has a direction.
    fn up_side(&self, set: &Set) -> Option<Text> {
        let face = set.showing.unwrap_or(FaceId(0));
        let name = self.back_of(set.paper, face).and_then(|_| self.face(set.paper, face));
        let runs = self.project.papers[set.paper.0].faces.get(face.0).map(|it| it.runs);
        let turn = match set.turned {
            Turn::None => "none",
            Turn::Right => "right",
            Turn::Over => "over",
            Turn::Left => "left",
        };
        match (name, runs) {
            (Some(face), None | Some(Runs::Any)) => {
                Some(self.tell("face-up", &[("face", face.into())]))
            }
            (Some(face), Some(_)) => {
                let values = [("face", face.into()), ("turn", turn.into())];
                Some(self.tell("face-stands", &values))
            }
            (None, None | Some(Runs::Any)) => None,
            (None, Some(_)) => {
                Some(self.tell("pattern-stands", &[("turn", turn.into())]))
            }
        }
    }

    /// Where a layer sits, in phrases such as `1/4 in from the right edge`.
    pub(super) fn place(
        &self,
        front: &Front,
        layers: &[Layer],
        at: usize,
    ) -> Vec<String> {
        let Some(layer) = layers.get(at) else { return Vec::new() };
        if layer.edge_to_edge.is_none()
            && layer.across == Along::Center
            && layer.up == Along::Center
        {
            return vec![self.say("place-middle", &[])];
        }
        let mut phrases = Vec::new();
        let spans = |axis| layer.edge_to_edge == Some(axis);
        if spans(Axis::Level) {
            phrases.push(self.say("place-spans", &[]));
        } else {
            phrases.push(self.along(layer.across, Axis::Level, front, layers));
        }
        if spans(Axis::Upright) {
            phrases.push(self.say("place-spans", &[]));
        } else {
            phrases.push(self.along(layer.up, Axis::Upright, front, layers));
        }
        if let Some(0) = phrases.iter().position(|_| spans(Axis::Upright)) {
            // First how it stretches, then where.
            phrases.reverse();
        }
        phrases
    }

    fn along(&self, along: Along, axis: Axis, front: &Front, layers: &[Layer]) -> String {
        let level = if axis == Axis::Level { "level" } else { "upright" };
        let fold = |side: Side| if side == front.fold { "yes" } else { "no" };
        let name = |of: usize| match layers.get(of) {
            Some(layer) => super::writer::plain(&self.placed_name(layer.what)),
            None => String::new(),
        };
        match along {
            Along::Center => self.say("place-center", &[("axis", level.into())]),
            Along::From(side, Length::ZERO, _) => self.say(
                "place-flush",
                &[("side", Self::side(side).into()), ("fold", fold(side).into())],
            ),
            Along::From(side, off, _) => self.say(
                "place-from",
                &[
                    ("side", Self::side(side).into()),
                    ("fold", fold(side).into()),
                    ("off", self.words.length(off).into()),
                ],
            ),
            Along::CenterOf(of, _) => self.say(
                "place-center-of",
                &[("axis", level.into()), ("of", name(of).into())],
            ),
            Along::Beyond { of, side, gap: Length::ZERO, .. } => self.say(
                "place-touching",
                &[("side", Self::side(side).into()), ("of", name(of).into())],
            ),
            Along::Beyond { of, side, gap, .. } => self.say(
                "place-beyond",
                &[
                    ("side", Self::side(side).into()),
                    ("of", name(of).into()),
                    ("gap", self.words.length(gap).into()),
                ],
            ),
            Along::Straddling { of, side, .. } => self.say(
                "place-straddling",
                &[("side", Self::side(side).into()), ("of", name(of).into())],
            ),
            Along::Within { of, side, inset: Length::ZERO, .. } => self.say(
                "place-level-with",
                &[("side", Self::side(side).into()), ("of", name(of).into())],
            ),
            Along::Within { of, side, inset, .. } => self.say(
                "place-within",
                &[
                    ("side", Self::side(side).into()),
                    ("of", name(of).into()),
                    ("inset", self.words.length(inset).into()),
                ],
            ),
        }
    }
}

/// Whether a tool holds paper on paper.
fn holds(kind: &ToolKind) -> bool {
    matches!(kind, ToolKind::Tape | ToolKind::Glue { .. })
}

fn plain_text(words: String) -> Text {
    vec![crate::document::Inline::plain(words)]
}
