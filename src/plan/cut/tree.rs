//! A sheet and the straight edge-to-edge cuts that divide it.
//!
//! A plan may nest cuts thousands deep (a sheet that is sliced into strips is a
//! chain), so nothing here walks a tree by recursion, and copying, comparing and
//! dropping are written out for the same reason.

use std::fmt;

use crate::geom::{Axis, Length, Rect, Size};

/// How a rectangle of paper is divided, cut by cut.
#[derive(PartialEq, Eq)]
pub enum Tree {
    /// Not used further.
    Leaf(Leaf),
    /// Cut once from edge to edge.
    Cut(Box<Cut>),
}

/// What a rectangle of paper is in the end.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Leaf {
    /// Too little to keep.
    Waste,
    /// An offcut worth keeping.
    Keep,
    /// A part, by its index, perhaps turned by a quarter on the sheet.
    Part {
        /// Index in the list of parts.
        part: usize,
        /// It lies with width and height exchanged.
        turned: bool,
    },
}

impl Leaf {
    /// Whether it is what is left over: kept or waste.
    const fn is_left(self) -> bool {
        matches!(self, Self::Waste | Self::Keep)
    }
}

/// One cut, and what becomes of both sides.
#[derive(Clone, Debug)]
pub struct Cut {
    /// Which way the cut runs: an upright cut divides the width.
    pub axis: Axis,
    /// The extent of the first part: the left one or the top one.
    pub at: Length,
    /// The left or top part.
    pub first: Tree,
    /// The right or bottom part.
    pub second: Tree,
    /// Both parts lie where the pattern on the paper needs them: they never change
    /// places, neither with each other nor with others.
    pub held: bool,
}

/// A leaf with its place on the sheet.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Placement {
    /// Where it lies.
    pub rect: Rect,
    /// What it is.
    pub leaf: Leaf,
}

/// A tree written flat: every cut stands before its first and its second part.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Token {
    /// A cut with the extent of its first part; two trees follow.
    Cut(Axis, Length),
    /// A cut whose parts never change places.
    Held(Axis, Length),
    /// A leaf.
    Leaf(Leaf),
}

impl Tree {
    /// A cut of two trees.
    pub fn cut(axis: Axis, at: Length, first: Self, second: Self) -> Self {
        Self::Cut(Box::new(Cut { axis, at, first, second, held: false }))
    }

    /// A cut whose parts never change places.
    pub fn held(axis: Axis, at: Length, first: Self, second: Self) -> Self {
        Self::Cut(Box::new(Cut { axis, at, first, second, held: true }))
    }

    /// A part that lies as its size says.
    pub const fn part(part: usize) -> Self {
        Self::Leaf(Leaf::Part { part, turned: false })
    }

    /// How many cuts it takes; cuts beyond 4 billion are not counted.
    pub fn cuts(&self) -> u32 {
        let cuts = self.tokens().filter(|it| !matches!(it, Token::Leaf(_))).count();
        u32::try_from(cuts).unwrap_or(u32::MAX)
    }

    /// The tree written flat.
    pub fn tokens(&self) -> impl Iterator<Item = Token> + '_ {
        let mut open = vec![self];
        std::iter::from_fn(move || {
            Some(match open.pop()? {
                Self::Leaf(leaf) => Token::Leaf(*leaf),
                Self::Cut(cut) => {
                    open.push(&cut.second);
                    open.push(&cut.first);
                    match cut.held {
                        false => Token::Cut(cut.axis, cut.at),
                        true => Token::Held(cut.axis, cut.at),
                    }
                }
            })
        })
    }

    /// The tree that was written flat; `None` if that is not exactly one tree.
    pub fn from_tokens(tokens: &[Token]) -> Option<Self> {
        // From the back, the parts of a cut are complete when it is reached.
        let mut done: Vec<Self> = Vec::new();
        for token in tokens.iter().rev() {
            let tree = match *token {
                Token::Leaf(leaf) => Self::Leaf(leaf),
                Token::Cut(axis, at) => {
                    let first = done.pop()?;
                    Self::cut(axis, at, first, done.pop()?)
                }
                Token::Held(axis, at) => {
                    let first = done.pop()?;
                    Self::held(axis, at, first, done.pop()?)
                }
            };
            done.push(tree);
        }
        let tree = done.pop()?;
        done.is_empty().then_some(tree)
    }

    /// The tree without cuts that free no part: what is left on both sides stays
    /// in one, and is kept if some of it was.
    pub fn without_useless_cuts(&self) -> Self {
        let tokens: Vec<Token> = self.tokens().collect();
        let mut done: Vec<Self> = Vec::new();
        for token in tokens.iter().rev() {
            let tree = match *token {
                Token::Leaf(leaf) => Self::Leaf(leaf),
                Token::Cut(axis, at) => match (done.pop(), done.pop()) {
                    (Some(Self::Leaf(one)), Some(Self::Leaf(other)))
                        if one.is_left() && other.is_left() =>
                    {
                        Self::Leaf(one.max(other))
                    }
                    (Some(first), Some(second)) => Self::cut(axis, at, first, second),
                    _ => return self.clone(),
                },
                // What lies beside it keeps its size, too.
                Token::Held(axis, at) => match (done.pop(), done.pop()) {
                    (Some(first), Some(second)) => Self::held(axis, at, first, second),
                    _ => return self.clone(),
                },
            };
            done.push(tree);
        }
        done.pop().unwrap_or_else(|| self.clone())
    }

    /// Every leaf with its place, in reading order of the tree.
    pub fn placements(&self, sheet: Size) -> Vec<Placement> {
        let mut placements = Vec::new();
        let mut open = vec![(self, Rect::whole(sheet))];
        while let Some((tree, rect)) = open.pop() {
            match tree {
                Self::Leaf(leaf) => placements.push(Placement { rect, leaf: *leaf }),
                Self::Cut(cut) => {
                    let (first, second) = rect.split(cut.axis, cut.at);
                    open.push((&cut.second, second));
                    open.push((&cut.first, first));
                }
            }
        }
        placements
    }
}

impl Clone for Tree {
    fn clone(&self) -> Self {
        let tokens: Vec<Token> = self.tokens().collect();
        Self::from_tokens(&tokens).expect("what a tree writes flat is one tree")
    }
}

impl PartialEq for Cut {
    fn eq(&self, other: &Self) -> bool {
        let parts = |cut: &'_ Self| (cut.axis, cut.at, cut.held);
        parts(self) == parts(other)
            && self.first.tokens().eq(other.first.tokens())
            && self.second.tokens().eq(other.second.tokens())
    }
}

impl Eq for Cut {}

impl Drop for Cut {
    fn drop(&mut self) {
        let bare = || Tree::Leaf(Leaf::Waste);
        let mut open = vec![
            std::mem::replace(&mut self.first, bare()),
            std::mem::replace(&mut self.second, bare()),
        ];
        while let Some(mut tree) = open.pop() {
            if let Tree::Cut(cut) = &mut tree {
                open.push(std::mem::replace(&mut cut.first, bare()));
                open.push(std::mem::replace(&mut cut.second, bare()));
            }
        }
    }
}

/// One line: `|` an upright and `-` a level cut with its extent in millimetres,
/// doubled if both parts keep their places, then both parts; parts by index, `'` if turned, `+` an offcut, `.` waste.
impl fmt::Debug for Tree {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        for (idx, token) in self.tokens().enumerate() {
            let space = if idx == 0 { "" } else { " " };
            match token {
                Token::Cut(Axis::Upright, at) => write!(f, "{space}|{}", at.as_mm())?,
                Token::Cut(Axis::Level, at) => write!(f, "{space}-{}", at.as_mm())?,
                Token::Held(Axis::Upright, at) => write!(f, "{space}||{}", at.as_mm())?,
                Token::Held(Axis::Level, at) => write!(f, "{space}--{}", at.as_mm())?,
                Token::Leaf(Leaf::Waste) => write!(f, "{space}.")?,
                Token::Leaf(Leaf::Keep) => write!(f, "{space}+")?,
                Token::Leaf(Leaf::Part { part, turned }) => {
                    write!(f, "{space}{part}{}", if turned { "'" } else { "" })?;
                }
            }
        }
        Ok(())
    }
}
