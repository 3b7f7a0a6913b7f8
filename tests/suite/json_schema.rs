//! Looks whether a JSON value is as a schema says (JSON Schema 2020-12, the words
//! that our schemas use).

use serde_json::Value;

/// The first place where `value` is not as `schema` says, with the reason.
///
/// An unknown word in the schema is a fault too, so that none is passed over.
pub(crate) fn fault(
    root: &Value,
    schema: &Value,
    value: &Value,
    at: &str,
) -> Option<String> {
    let words = schema.as_object().expect("a schema is an object");
    words.iter().find_map(|(word, says)| {
        let wrong = |why: String| Some(format!("{at}: {why}"));
        match word.as_str() {
            "$schema" | "title" | "description" | "$defs" => None,
            "$ref" => {
                let path = says.as_str()?.strip_prefix('#').expect("within the schema");
                let target = root.pointer(path).expect("what is referred to is there");
                fault(root, target, value, at)
            }
            "type" if !is_type(says, value) => wrong(format!("{value} is not a {says}")),
            "const" if says != value => wrong(format!("{value} is not {says}")),
            "enum" if !says.as_array()?.contains(value) => {
                wrong(format!("{value} is none of {says}"))
            }
            "type" | "const" | "enum" => None,
            "minimum" => {
                let least = says.as_f64()?;
                let below = value.as_f64().is_some_and(|value| value < least);
                if below { wrong(format!("{value} is below {says}")) } else { None }
            }
            "required" => {
                let object = value.as_object()?;
                let mut names = says.as_array()?.iter().filter_map(Value::as_str);
                let missing = names.find(|name| !object.contains_key(*name))?;
                wrong(format!("`{missing}` is missing"))
            }
            "properties" => value.as_object()?.iter().find_map(|(name, value)| {
                fault(root, says.get(name)?, value, &format!("{at}/{name}"))
            }),
            "additionalProperties" => {
                assert_eq!(says, &Value::Bool(false), "not looked at otherwise");
                let known = words["properties"].as_object()?;
                let mut names = value.as_object()?.keys();
                let unknown = names.find(|name| !known.contains_key(*name))?;
                wrong(format!("`{unknown}` is not in the schema"))
            }
            "items" => value.as_array()?.iter().enumerate().find_map(|(index, value)| {
                fault(root, says, value, &format!("{at}/{index}"))
            }),
            "anyOf" => {
                let faults: Option<Vec<_>> = says
                    .as_array()?
                    .iter()
                    .map(|it| fault(root, it, value, at))
                    .collect();
                wrong(format!("none of: {:?}", faults?))
            }
            _ => wrong(format!("the schema says `{word}`, which is not looked at")),
        }
    })
}

fn is_type(says: &Value, value: &Value) -> bool {
    let is = |name: &Value| match name.as_str() {
        Some("object") => value.is_object(),
        Some("array") => value.is_array(),
        Some("string") => value.is_string(),
        Some("boolean") => value.is_boolean(),
        Some("integer") => value.is_i64() || value.is_u64(),
        Some("null") => value.is_null(),
        other => panic!("the schema has the type {other:?}"),
    };
    says.as_array().map_or_else(|| is(says), |names| names.iter().any(is))
}
