//! The table of keys as a JSON schema, for editors that complete and check.

use serde_json::{Map, Value, json};

use crate::project::keys::{GROUPS, Group, Key, Takes};

/// The shape of the short name of a language (BCP 47, section 2.1).
const LANGUAGE: &str = "^[A-Za-z]{2,3}(-[A-Za-z0-9]{1,8})*$";

/// The schema of a description (JSON Schema, draft 2020-12).
pub fn schema() -> Value {
    let groups =
        GROUPS.iter().map(|group| (group.name.replace(' ', "-"), keys_of(group)));
    let groups: Map<String, Value> = groups.collect();
    json!({
        "$schema": "https://json-schema.org/draft/2020-12/schema",
        "title": "a set of cards for leafwright",
        "$ref": "#/$defs/project",
        "$defs": groups,
    })
}

fn keys_of(group: &Group) -> Value {
    let mut properties = Map::new();
    for key in group.keys {
        let schema = with_words(key);
        if let Some(also) = key.also {
            properties.insert(also.to_owned(), schema.clone());
        }
        properties.insert(key.name.to_owned(), schema);
    }
    let needed: Vec<_> =
        group.keys.iter().filter(|it| it.default == "needed").map(|it| it.name).collect();
    let mut schema = json!({
        "type": ["object", "null"],
        "additionalProperties": false,
        "properties": properties,
    });
    if !needed.is_empty() {
        schema["required"] = json!(needed);
    }
    schema
}

fn with_words(key: &Key) -> Value {
    let about = match key.default {
        "" => key.about.to_owned(),
        "needed" => format!("{} It is needed.", key.about),
        default if default.starts_with("needed") => {
            format!("{} It is {default}.", key.about)
        }
        default => format!("{} If it is left out: {default}.", key.about),
    };
    let mut schema = takes(&key.takes);
    schema["description"] = json!(about);
    schema
}

fn takes(takes: &Takes) -> Value {
    // Numbers may be typed bare, and yes and no may be words.
    let words = || json!({ "type": ["string", "number", "boolean"] });
    let several = || json!({ "type": "object", "additionalProperties": words(), "propertyNames": { "pattern": LANGUAGE } });
    let told = || json!({ "anyOf": [words(), several()] });
    let lead =
        |name: &str| json!({ "$ref": format!("#/$defs/{}", name.replace(' ', "-")) });
    match takes {
        Takes::Words | Takes::Length | Takes::Size | Takes::Name(_) => words(),
        Takes::WordsOrList => {
            json!({ "anyOf": [words(), { "type": "array", "items": words() }] })
        }
        Takes::Told => told(),
        Takes::ToldOrList => {
            let rows = json!({ "type": "array", "items": told() });
            json!({ "anyOf": [words(), several(), rows] })
        }
        Takes::Count(least, most) => {
            json!({ "type": "integer", "minimum": least, "maximum": most })
        }
        Takes::YesNo => json!({ "enum": [true, false, "yes", "no"] }),
        Takes::OneOf(words) => json!({ "enum": words }),
        Takes::SomeOf(words) => json!({
            "anyOf": [{ "enum": words }, { "type": "array", "items": { "enum": words } }]
        }),
        Takes::Group(name) => lead(name),
        Takes::Named(name) => {
            json!({ "type": "object", "additionalProperties": lead(name) })
        }
        Takes::NamedAs(each) => {
            json!({ "type": "object", "additionalProperties": self::takes(each) })
        }
        Takes::List(name) => json!({ "type": "array", "items": lead(name) }),
        Takes::Rows(each) => json!({ "type": "array", "items": self::takes(each) }),
        Takes::NamedLists(name) => json!({
            "type": "object",
            "additionalProperties": { "type": "array", "items": lead(name) },
        }),
        Takes::Any(all) => {
            json!({ "anyOf": all.iter().map(self::takes).collect::<Vec<_>>() })
        }
    }
}
