//! The Fluent files that ship, by language.

/// Every language that ships.
pub const LANGUAGES: &[&str] = &["en", "es"];

/// Language, file and text.
pub const FILES: &[(&str, &str, &str)] = &[
    ("en", "cautions", include_str!("../../../locales/en/cautions.ftl")),
    ("en", "clinic", include_str!("../../../locales/en/clinic.ftl")),
    ("en", "common", include_str!("../../../locales/en/common.ftl")),
    ("en", "contacts", include_str!("../../../locales/en/contacts.ftl")),
    ("en", "day", include_str!("../../../locales/en/day.ftl")),
    ("en", "errors", include_str!("../../../locales/en/errors.ftl")),
    ("en", "first", include_str!("../../../locales/en/first.ftl")),
    ("en", "item", include_str!("../../../locales/en/item.ftl")),
    ("en", "movements", include_str!("../../../locales/en/movements.ftl")),
    ("en", "past", include_str!("../../../locales/en/past.ftl")),
    ("en", "problems", include_str!("../../../locales/en/problems.ftl")),
    ("en", "receive", include_str!("../../../locales/en/receive.ftl")),
    ("en", "session", include_str!("../../../locales/en/session.ftl")),
    ("en", "settings", include_str!("../../../locales/en/settings.ftl")),
    ("en", "weeks", include_str!("../../../locales/en/weeks.ftl")),
    ("en", "stage", include_str!("../../../locales/en/stage.ftl")),
    ("en", "window", include_str!("../../../locales/en/window.ftl")),
    ("es", "cautions", include_str!("../../../locales/es/cautions.ftl")),
    ("es", "clinic", include_str!("../../../locales/es/clinic.ftl")),
    ("es", "common", include_str!("../../../locales/es/common.ftl")),
    ("es", "contacts", include_str!("../../../locales/es/contacts.ftl")),
    ("es", "day", include_str!("../../../locales/es/day.ftl")),
    ("es", "errors", include_str!("../../../locales/es/errors.ftl")),
    ("es", "first", include_str!("../../../locales/es/first.ftl")),
    ("es", "item", include_str!("../../../locales/es/item.ftl")),
    ("es", "movements", include_str!("../../../locales/es/movements.ftl")),
    ("es", "past", include_str!("../../../locales/es/past.ftl")),
    ("es", "problems", include_str!("../../../locales/es/problems.ftl")),
    ("es", "receive", include_str!("../../../locales/es/receive.ftl")),
    ("es", "session", include_str!("../../../locales/es/session.ftl")),
    ("es", "settings", include_str!("../../../locales/es/settings.ftl")),
    ("es", "weeks", include_str!("../../../locales/es/weeks.ftl")),
    ("es", "stage", include_str!("../../../locales/es/stage.ftl")),
    ("es", "window", include_str!("../../../locales/es/window.ftl")),
];
