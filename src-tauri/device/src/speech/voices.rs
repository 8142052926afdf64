//! Which voices speak a language.

/// The tag of the voice that fits a language best: the same tag, else the same language without a region,
/// else the same language of any region. `None` if nobody speaks it.
pub(super) fn best_tag<'a>(voices: impl Iterator<Item = &'a str> + Clone, lang: &str) -> Option<String> {
    let wanted = primary(lang);
    let speaks = voices.filter(move |tag| primary(tag).eq_ignore_ascii_case(wanted));
    let exact = speaks.clone().find(|tag| same(tag, lang));
    let plain = || speaks.clone().find(|tag| same(tag, wanted));
    exact.or_else(plain).or_else(|| speaks.clone().next()).map(str::to_string)
}

fn primary(tag: &str) -> &str {
    tag.split(['-', '_']).next().unwrap_or_default()
}

fn same(one: &str, other: &str) -> bool {
    one.replace('_', "-").eq_ignore_ascii_case(&other.replace('_', "-"))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_nearest_voice_is_taken() {
        let voices = ["af", "en-029", "en-GB", "en_US", "es", "es-419", "pt-BR"];
        let cases = [
            ("en-gb", Some("en-GB")),
            ("en-US", Some("en_US")),
            ("en", Some("en-029")),
            ("es-MX", Some("es")),
            ("pt", Some("pt-BR")),
            ("ar", None),
            ("e", None),
            ("", None),
        ];
        for (lang, tag) in cases {
            assert_eq!(best_tag(voices.iter().copied(), lang).as_deref(), tag, "{lang}");
        }
    }
}
