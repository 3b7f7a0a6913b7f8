//! Reads PDF files back: what is drawn, written and known, in points.

use std::collections::BTreeMap;

use lopdf::content::Content;
use lopdf::{Dictionary, Document, Object, ObjectId, Stream};

/// A file that was read.
pub(crate) struct Read {
    pub(crate) document: Document,
    pub(crate) pages: Vec<ObjectId>,
}

/// A straight line on a page; y grows upwards.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Segment {
    pub(crate) from: (f64, f64),
    pub(crate) to: (f64, f64),
    pub(crate) dashed: bool,
}

/// A part of a picture as it is seen on a page; y grows upwards.
#[derive(Clone, Debug)]
pub(crate) struct Window {
    pub(crate) name: String,
    /// The box of what is seen: left, bottom, right and top.
    pub(crate) clip: [f64; 4],
    /// From the picture's unit square, whose y grows upwards, to the page.
    pub(crate) matrix: [f64; 6],
}

impl Window {
    /// Which place of the picture is seen at a place of the page: parts of its width
    /// and height from its top left corner.
    pub(crate) fn seen_at(&self, x: f64, y: f64) -> (f64, f64) {
        let [a, b, c, d, e, f] = self.matrix;
        let (x, y, area) = (x - e, y - f, a * d - b * c);
        ((x * d - y * c) / area, 1.0 - (a * y - b * x) / area)
    }
}

impl Segment {
    pub(crate) fn length(&self) -> f64 {
        (self.to.0 - self.from.0).hypot(self.to.1 - self.from.1)
    }
}

/// A number of any kind.
pub(crate) fn number(object: &Object) -> f64 {
    object.as_float().map(f64::from).expect("a number")
}

impl Read {
    pub(crate) fn new(bytes: &[u8]) -> Self {
        let document = Document::load_mem(bytes).expect("a file that can be read");
        let pages = document.page_iter().collect();
        Self { document, pages }
    }

    /// The text of a page, spaces collapsed.
    pub(crate) fn text(&self, page: usize) -> String {
        let number = u32::try_from(page + 1).unwrap();
        let text = self.document.extract_text(&[number]).expect("text");
        // Every run is followed by a break, also where words go on.
        text.split_whitespace().collect::<Vec<_>>().join(" ").replace(" ,", ",")
    }

    /// Left, bottom, right and top of a page.
    pub(crate) fn media_box(&self, page: usize) -> [f64; 4] {
        let page = self.document.get_dictionary(self.pages[page]).unwrap();
        let edges = page.get(b"MediaBox").unwrap().as_array().unwrap();
        [0, 1, 2, 3].map(|it| number(&edges[it]))
    }

    /// The straight lines that are drawn on a page.
    pub(crate) fn segments(&self, page: usize) -> Vec<Segment> {
        let bytes = self.document.get_page_content(self.pages[page]);
        let content = Content::decode(&bytes).expect("operators");
        let mut found = Vec::new();
        let mut path = Vec::new();
        let mut at = (0.0, 0.0);
        let mut dashed = false;
        let mut windows = 0;
        for operation in &content.operations {
            let values = &operation.operands;
            match operation.operator.as_str() {
                "q" => windows += 1,
                "Q" => windows -= 1,
                "cm" | "Do" | "W" => assert!(windows > 0, "not for a picture"),
                _ => {}
            }
            match operation.operator.as_str() {
                "m" => at = (number(&values[0]), number(&values[1])),
                "l" => {
                    let to = (number(&values[0]), number(&values[1]));
                    path.push(Segment { from: at, to, dashed });
                    at = to;
                }
                "c" => at = (number(&values[4]), number(&values[5])),
                "d" => dashed = !values[0].as_array().unwrap().is_empty(),
                "S" | "b" | "B" => found.append(&mut path),
                "f" | "n" => path.clear(),
                _ => {}
            }
        }
        found
    }

    /// The parts of pictures that are seen on a page.
    pub(crate) fn windows(&self, page: usize) -> Vec<Window> {
        let bytes = self.document.get_page_content(self.pages[page]);
        let content = Content::decode(&bytes).expect("operators");
        let mut found = Vec::new();
        let mut path: Vec<(f64, f64)> = Vec::new();
        let mut stack = Vec::new();
        let (mut clip, mut matrix) = (Vec::new(), [1.0, 0.0, 0.0, 1.0, 0.0, 0.0]);
        for operation in &content.operations {
            let values: Vec<f64> = match operation.operator.as_str() {
                "m" | "l" | "c" | "cm" => operation.operands.iter().map(number).collect(),
                _ => Vec::new(),
            };
            match operation.operator.as_str() {
                "m" => path = vec![(values[0], values[1])],
                "l" => path.push((values[0], values[1])),
                "c" => path.push((values[4], values[5])),
                "q" => stack.push((clip.clone(), matrix)),
                "Q" => (clip, matrix) = stack.pop().expect("balanced"),
                "W" => clip.clone_from(&path),
                "cm" => {
                    let m = matrix;
                    let at = |x: f64, y: f64, move_on: f64| {
                        (
                            x * m[0] + y * m[2] + move_on * m[4],
                            x * m[1] + y * m[3] + move_on * m[5],
                        )
                    };
                    let (a, b) = at(values[0], values[1], 0.0);
                    let (c, d) = at(values[2], values[3], 0.0);
                    let (e, f) = at(values[4], values[5], 1.0);
                    matrix = [a, b, c, d, e, f];
                }
                "Do" => {
                    let name = operation.operands[0].as_name().expect("a name");
                    let name = String::from_utf8_lossy(name).into_owned();
                    let edge =
                        |pick: fn(f64, f64) -> f64, part: fn(&(f64, f64)) -> f64| {
                            clip.iter().map(part).reduce(pick).expect("a window")
                        };
                    let clip = [
                        edge(f64::min, |it| it.0),
                        edge(f64::min, |it| it.1),
                        edge(f64::max, |it| it.0),
                        edge(f64::max, |it| it.1),
                    ];
                    found.push(Window { name, clip, matrix });
                }
                _ => {}
            }
        }
        found
    }

    /// The pictures of the file by the names under which pages show them.
    pub(crate) fn pictures(&self) -> BTreeMap<String, &Stream> {
        let mut found = BTreeMap::new();
        for page in &self.pages {
            let page = self.document.get_dictionary(*page).unwrap();
            let Ok(resources) = page.get(b"Resources") else { continue };
            let Ok(objects) = self.dict(resources).get(b"XObject") else { continue };
            for (name, object) in self.dict(objects) {
                let (_, object) = self.document.dereference(object).unwrap();
                let name = String::from_utf8_lossy(name).into_owned();
                found.insert(name, object.as_stream().expect("a picture"));
            }
        }
        found
    }

    /// Marked content of a page: each operator that draws, with whether it stands
    /// in an artifact (`None`), or in a sequence of an id.
    pub(crate) fn marked(&self, page: usize) -> Vec<(String, Option<i64>)> {
        let bytes = self.document.get_page_content(self.pages[page]);
        let content = Content::decode(&bytes).expect("operators");
        let mut stack: Vec<Option<i64>> = Vec::new();
        let mut drawn = Vec::new();
        for operation in &content.operations {
            match operation.operator.as_str() {
                "BDC" | "BMC" => {
                    let outer = stack.last().copied().flatten();
                    let dict = operation.operands.get(1).and_then(|it| it.as_dict().ok());
                    let id = dict.and_then(|it| it.get(b"MCID").ok()?.as_i64().ok());
                    stack.push(id.or(outer));
                }
                "EMC" => drop(stack.pop().expect("balanced marks")),
                it @ ("TJ" | "Tj" | "S" | "f" | "B" | "b") => {
                    assert!(
                        !stack.is_empty(),
                        "`{it}` is neither tagged nor an artifact"
                    );
                    drawn.push((it.to_string(), *stack.last().unwrap()));
                }
                _ => {}
            }
        }
        assert!(stack.is_empty(), "marks are left open");
        drawn
    }

    /// Every font with its descriptor.
    pub(crate) fn fonts(&self) -> Vec<(String, &Dictionary)> {
        let dicts = self.document.objects.values().filter_map(|it| it.as_dict().ok());
        dicts
            .filter(|it| it.get(b"FontFile2").is_ok() || it.has_type(b"FontDescriptor"))
            .map(|it| {
                let name = it.get(b"FontName").unwrap().as_name().unwrap();
                (String::from_utf8_lossy(name).into_owned(), it)
            })
            .collect()
    }

    /// The tree of tags as indented types, with the count of each element's content.
    pub(crate) fn tags(&self) -> String {
        let catalog = self.document.catalog().unwrap();
        let root = self.dict(catalog.get(b"StructTreeRoot").unwrap());
        let mut text = String::new();
        for kid in root.get(b"K").unwrap().as_array().unwrap() {
            self.tag(kid, 0, &mut text);
        }
        text
    }

    /// A dictionary, followed to where it is.
    pub(crate) fn dict<'a>(&'a self, object: &'a Object) -> &'a Dictionary {
        let (_, object) = self.document.dereference(object).unwrap();
        object.as_dict().expect("a dictionary")
    }

    fn tag(&self, object: &Object, depth: usize, text: &mut String) {
        let (_, object) = self.document.dereference(object).unwrap();
        let Ok(dict) = object.as_dict() else { return };
        let Ok(kind) = dict.get(b"S").and_then(Object::as_name) else { return };
        let indent = "  ".repeat(depth);
        text.push_str(&format!("{indent}{}\n", String::from_utf8_lossy(kind)));
        match dict.get(b"K") {
            Ok(Object::Array(kids)) => {
                kids.iter().for_each(|it| self.tag(it, depth + 1, text));
            }
            Ok(kid) => self.tag(kid, depth + 1, text),
            Err(_) => {}
        }
    }
}
