//! Every sentence, number and unit that is printed, by language.
//!
//! Sentences are Fluent messages in `templates/`; nothing else in the house holds
//! a sentence for a maker.

mod languages;
mod measure;

pub use measure::Units;

use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource, FluentValue};
use unic_langid::LanguageIdentifier;

use crate::geom::{Length, Size, Unit};
use crate::words::languages::{LANGUAGES, Language};

/// The words of one language, with the units that lengths are printed in.
pub struct Words {
    language: &'static str,
    bundle: FluentBundle<FluentResource>,
    /// The first language, for what has not been translated yet.
    first: Option<FluentBundle<FluentResource>>,
    units: Units,
}

/// What is put in place of a name in a message.
pub type Value<'a> = FluentValue<'a>;

impl Words {
    /// The words of a language as in BCP 47, such as `en` or `en-GB`; English if
    /// there are none.
    pub fn load(language: &str, units: Units) -> Self {
        let first = &LANGUAGES[0];
        let found = languages::find(language).unwrap_or(first);
        Self {
            language: found.tag,
            bundle: bundle(found),
            first: (found.tag != first.tag).then(|| bundle(first)),
            units,
        }
    }

    /// Whether there are words in a language, or in the one that it is a kind of.
    pub fn has(language: &str) -> bool {
        languages::find(language).is_some()
    }

    /// Every language that there are words in, as in BCP 47.
    pub fn languages() -> impl Iterator<Item = &'static str> {
        LANGUAGES.iter().map(|it| it.tag)
    }

    /// The language of these words, as in BCP 47.
    pub fn language(&self) -> &'static str {
        self.language
    }

    /// The units that lengths are printed in.
    pub fn units(&self) -> Units {
        self.units
    }

    /// A message with its names filled in.
    ///
    /// Every message and every name is held against `templates/` by the tests; a
    /// message that is missing all the same is said in English, or shows as its own
    /// name.
    pub fn say(&self, message: &str, values: &[(&str, Value<'_>)]) -> String {
        let bundles = std::iter::once(&self.bundle).chain(&self.first);
        let mut patterns = bundles.filter_map(|bundle| {
            Some((bundle, bundle.get_message(message).and_then(|it| it.value())?))
        });
        let Some((bundle, pattern)) = patterns.next() else {
            debug_assert!(false, "there is no message `{message}`");
            return message.to_owned();
        };
        let mut named = FluentArgs::with_capacity(values.len());
        for (name, value) in values {
            named.set(*name, value.clone());
        }
        let mut faults = Vec::new();
        let said = bundle.format_pattern(pattern, Some(&named), &mut faults);
        debug_assert!(faults.is_empty(), "`{message}`: {faults:?}");
        said.into_owned()
    }

    /// A length in the reader's units, such as `4 1/4 in`.
    pub fn length(&self, length: Length) -> String {
        let one = |unit, exact| {
            let number = self.number(length, unit, exact);
            match unit {
                Unit::Inch => self.say("length-inch", &[("number", number.into())]),
                Unit::Mm => self.say("length-mm", &[("number", number.into())]),
            }
        };
        self.in_units(one)
    }

    /// A size in the reader's units, width × height, such as `5 1/2 × 4 1/4 in`.
    pub fn size(&self, size: Size) -> String {
        let one = |unit, exact| {
            let width = self.number(size.width, unit, exact);
            let height = self.number(size.height, unit, exact);
            let values = [("width", width.into()), ("height", height.into())];
            match unit {
                Unit::Inch => self.say("size-inch", &values),
                Unit::Mm => self.say("size-mm", &values),
            }
        };
        self.in_units(one)
    }

    /// Words that are quoted.
    pub fn quoted(&self, words: &str) -> String {
        self.say("quoted", &[("words", words.into())])
    }

    /// Says something in one unit, or in the ruling unit and then in the other.
    fn in_units(&self, one: impl Fn(Unit, bool) -> String) -> String {
        let first = one(self.units.first(), true);
        match self.units.second() {
            None => first,
            Some(unit) => {
                let values =
                    [("first", first.into()), ("second", one(unit, false).into())];
                self.say("both-units", &values)
            }
        }
    }

    fn number(&self, length: Length, unit: Unit, exact: bool) -> String {
        let length = if exact { length } else { measure::to_marks(length, unit) };
        let number = match unit {
            Unit::Inch => measure::inches(length),
            Unit::Mm => measure::millimetres(length),
        };
        number.replace('.', &self.say("decimal-sign", &[]))
    }
}

/// The messages of a language, ready to be filled in.
fn bundle(language: &Language) -> FluentBundle<FluentResource> {
    let id = language.tag.parse().unwrap_or_else(|_| LanguageIdentifier::default());
    let mut bundle = FluentBundle::new_concurrent(vec![id]);
    // The marks that isolate text of another direction are set by the layout.
    bundle.set_use_isolating(false);
    // A message with a fault is left out; the tests read every message.
    let resource = FluentResource::try_new(language.messages.to_owned())
        .unwrap_or_else(|(resource, _)| resource);
    bundle.add_resource_overriding(resource);
    bundle
}
