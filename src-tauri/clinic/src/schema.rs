//! JSON Schemas of the sources, for editors, and their field tables, for the documentation. Both come
//! from the Rust types; the bounds come from the one table.

use std::fmt::Write as _;

use schemars::{Schema, schema_for};
use sendaluna_core::bounds;
use sendaluna_core::plan::doc::PlanDoc;
use serde_json::{Map, Value};

use crate::source::{SignersSource, StatementSource};

/// Which source.
#[derive(Debug, Clone, Copy, PartialEq, Eq, clap::ValueEnum)]
pub enum Source {
    /// A plan.
    Plan,
    /// A signers list.
    Signers,
    /// A precaution statement.
    Precautions,
}

/// The JSON Schema (2020-12) of a source.
pub fn schema(source: Source) -> Value {
    let schema: Schema = match source {
        Source::Plan => schema_for!(PlanDoc),
        Source::Signers => schema_for!(SignersSource),
        Source::Precautions => schema_for!(StatementSource),
    };
    let mut value = schema.to_value();
    add_bounds(&mut value);
    // A number of repetitions is one of two forms, so its bound hangs on neither name.
    if let Some(count) = value.pointer_mut("/$defs/Count/anyOf/0") {
        bound_property("repetitions", count);
    }
    value
}

/// Puts the bounds of the one table on every number that bears a bound's name.
fn add_bounds(value: &mut Value) {
    match value {
        Value::Object(object) => {
            if let Some(Value::Object(properties)) = object.get_mut("properties") {
                for (name, property) in properties.iter_mut() {
                    bound_property(name, property);
                }
            }
            object.values_mut().for_each(add_bounds);
        }
        Value::Array(list) => list.iter_mut().for_each(add_bounds),
        _ => {}
    }
}

fn bound_property(name: &str, property: &mut Value) {
    let bound = match name {
        "from_week" | "through_week" | "every_weeks" | "not_before_end_of_week" => Some(&bounds::WEEK),
        "most_deg" | "over_deg" => Some(&bounds::DEG),
        "most_nm_per_kg" => Some(&bounds::MOMENT),
        "ring_after_days" => Some(&bounds::AFTER_DAYS),
        "least" | "most" => Some(&bounds::REPETITIONS),
        "up_after_sessions" => Some(&bounds::SESSIONS),
        "up_effort_at_most" => Some(&bounds::EFFORT),
        "working_weight_percent" | "other_weight_percent" => Some(&bounds::WEIGHT_PERCENT),
        "rest_stop_today_at" | "slow_at" | "easier_at" | "stop_exercise_at" | "stop_today_at"
        | "rise_stop_exercise" | "next_morning_rise" | "up_pain_at_most" | "down_pain_over" => {
            Some(&bounds::PAIN)
        }
        _ => bounds::ALL.iter().find(|bound| bound.name == name),
    };
    let numeric = |value: &Value| {
        let of = |kind: &Value| matches!(kind.as_str(), Some("integer" | "number"));
        value
            .get("type")
            .is_some_and(|kind| of(kind) || kind.as_array().is_some_and(|kinds| kinds.iter().any(of)))
    };
    if let (Some(bound), Value::Object(object)) = (bound.filter(|_| numeric(property)), property) {
        object.insert("minimum".into(), number(bound.least));
        object.insert("maximum".into(), number(bound.most));
    }
}

#[expect(clippy::cast_possible_truncation, reason = "whole bounds are far below 2^53")]
fn number(value: f64) -> Value {
    if value.fract() == 0.0 { Value::from(value as i64) } else { Value::from(value) }
}

/// The field table of a source, in Markdown: one table for each type, the source's own first.
pub fn table(source: Source) -> String {
    let schema = schema(source);
    let mut text = String::new();
    let root = schema.get("title").and_then(Value::as_str).unwrap_or_default();
    type_table(&mut text, root, &schema);
    for (name, definition) in schema.get("$defs").and_then(Value::as_object).into_iter().flatten() {
        type_table(&mut text, name, definition);
    }
    text.trim_end().to_string() + "\n"
}

fn type_table(text: &mut String, name: &str, definition: &Value) {
    let about = definition.get("description").and_then(Value::as_str).unwrap_or_default().replace('\n', " ");
    let _ = writeln!(text, "**{name}** {about}\n");
    let variants = definition.get("oneOf").or_else(|| definition.get("anyOf")).and_then(Value::as_array);
    if definition.get("properties").is_some() {
        let _ = writeln!(text, "| field | type | bounds | meaning |\n|---|---|---|---|");
        fields(text, "", definition);
    } else if let Some(variants) = variants {
        let _ = writeln!(text, "| value or field | type | bounds | meaning |\n|---|---|---|---|");
        for one in variants {
            variant(text, one);
        }
    } else if let Some(values) = definition.get("enum").and_then(Value::as_array) {
        let listed: Vec<_> =
            values.iter().filter_map(Value::as_str).map(|value| format!("`{value}`")).collect();
        let _ = writeln!(text, "{}", listed.join(", "));
    }
    text.push('\n');
}

fn variant(text: &mut String, variant: &Value) {
    let about = about(variant);
    if let Some(value) = variant.get("const").and_then(Value::as_str) {
        let _ = writeln!(text, "| `{value}` | | | {about} |");
    } else if let Some(kind) = variant.pointer("/properties/kind/const").and_then(Value::as_str) {
        let _ = writeln!(text, "| `kind = \"{kind}\"` | | | {about} |");
        fields(text, "· ", variant);
    } else if let Some(values) = variant.get("enum").and_then(Value::as_array) {
        for value in values.iter().filter_map(Value::as_str) {
            let _ = writeln!(text, "| `{value}` | | | |");
        }
    } else {
        let _ = writeln!(text, "| either | {} | | {about} |", kind_of(variant));
    }
}

fn fields(text: &mut String, indent: &str, object: &Value) {
    let empty = Map::new();
    let properties = object.get("properties").and_then(Value::as_object).unwrap_or(&empty);
    let required: Vec<_> = object
        .get("required")
        .and_then(Value::as_array)
        .into_iter()
        .flatten()
        .filter_map(Value::as_str)
        .collect();
    for (name, field) in
        properties.iter().filter(|(name, field)| *name != "kind" || field.get("const").is_none())
    {
        let optional = if required.contains(&name.as_str()) { "" } else { "?" };
        let _ = writeln!(
            text,
            "| {indent}`{name}`{optional} | {} | {} | {} |",
            kind_of(field),
            bounds_of(field),
            about(field)
        );
    }
}

fn about(value: &Value) -> String {
    value.get("description").and_then(Value::as_str).unwrap_or_default().replace('\n', " ")
}

fn bounds_of(field: &Value) -> String {
    match (field.get("minimum"), field.get("maximum")) {
        (Some(least), Some(most)) => format!("{least} … {most}"),
        _ => String::new(),
    }
}

fn kind_of(field: &Value) -> String {
    if let Some(reference) = field.get("$ref").and_then(Value::as_str) {
        return reference.rsplit('/').next().unwrap_or_default().to_string();
    }
    if let Some(any) = field.get("anyOf").and_then(Value::as_array) {
        let kinds: Vec<_> = any.iter().map(kind_of).filter(|kind| kind != "null").collect();
        return kinds.join(" or ");
    }
    if let Some(format @ ("date" | "date-time")) = field.get("format").and_then(Value::as_str) {
        return format.to_string();
    }
    match field.get("type") {
        Some(Value::String(kind)) if kind == "array" => {
            format!("list of {}", field.get("items").map_or_else(String::new, kind_of))
        }
        Some(Value::String(kind)) => kind.clone(),
        Some(Value::Array(kinds)) => {
            let kinds = kinds.iter().filter_map(Value::as_str).filter(|kind| *kind != "null");
            kinds.collect::<Vec<_>>().join(" or ")
        }
        _ => String::new(),
    }
}

/// The table of bounds, in Markdown.
pub fn bounds_table() -> String {
    let mut text = String::from("| name | unit | least | most | what it is |\n|---|---|---|---|---|\n");
    for bound in bounds::ALL {
        let _ = writeln!(
            text,
            "| `{}` | {} | {} | {} | {} |",
            bound.name, bound.unit, bound.least, bound.most, bound.phrase
        );
    }
    text
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn bounds_reach_the_schema() {
        let plan = schema(Source::Plan);
        assert_eq!(plan.pointer("/$defs/Head/properties/height_cm/minimum"), Some(&Value::from(100)));
        assert_eq!(plan.pointer("/$defs/Dose/properties/sets/maximum"), Some(&Value::from(20)));
        assert_eq!(plan.pointer("/$defs/Stage/properties/from_week/maximum"), Some(&Value::from(260)));
        assert_eq!(plan.pointer("/additionalProperties"), Some(&Value::from(false)));
    }

    #[test]
    fn a_table_names_every_field_of_the_head() {
        let table = table(Source::Plan);
        for field in ["`person`", "`review_by`", "`languages`", "`kind = \"times-a-day\"`"] {
            assert!(table.contains(field), "{field}");
        }
    }
}
