//! What FHIR's strings and XML 1.0 cannot hold is taken out of the whole document, at one place.

use serde_json::Value;

/// Stands where nothing is left: FHIR knows no empty string.
const NOTHING: &str = "–";

/// Takes forbidden characters out of every string in a value.
pub(crate) fn clean(value: &mut Value) {
    match value {
        Value::String(text) => {
            text.retain(is_allowed);
            if text.trim().is_empty() {
                *text = NOTHING.to_string();
            }
        }
        Value::Array(all) => all.iter_mut().for_each(clean),
        Value::Object(fields) => fields.values_mut().for_each(clean),
        Value::Null | Value::Bool(_) | Value::Number(_) => {}
    }
}

/// XML 1.0, production `Char`; a `char` is never half of a surrogate pair.
fn is_allowed(letter: char) -> bool {
    match letter {
        '\t' | '\n' | '\r' => true,
        '\u{FFFE}' | '\u{FFFF}' => false,
        other => other >= ' ',
    }
}
