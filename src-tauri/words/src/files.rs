//! The Fluent files that ship, by language.

/// Every language that ships.
pub const LANGUAGES: &[&str] = &["en", "es"];

/// Language, file and text.
pub const FILES: &[(&str, &str, &str)] = &[
    ("en", "cautions", include_str!("../../../locales/en/cautions.ftl")),
    ("en", "clinic", include_str!("../../../locales/en/clinic.ftl")),
    ("en", "common", include_str!("../../../locales/en/common.ftl")),
    ("en", "day", include_str!("../../../locales/en/day.ftl")),
    ("en", "errors", include_str!("../../../locales/en/errors.ftl")),
    ("en", "movements", include_str!("../../../locales/en/movements.ftl")),
    ("en", "problems", include_str!("../../../locales/en/problems.ftl")),
    ("en", "receive", include_str!("../../../locales/en/receive.ftl")),
    ("en", "session", include_str!("../../../locales/en/session.ftl")),
    ("es", "cautions", include_str!("../../../locales/es/cautions.ftl")),
    ("es", "clinic", include_str!("../../../locales/es/clinic.ftl")),
    ("es", "common", include_str!("../../../locales/es/common.ftl")),
    ("es", "day", include_str!("../../../locales/es/day.ftl")),
    ("es", "errors", include_str!("../../../locales/es/errors.ftl")),
    ("es", "movements", include_str!("../../../locales/es/movements.ftl")),
    ("es", "problems", include_str!("../../../locales/es/problems.ftl")),
    ("es", "receive", include_str!("../../../locales/es/receive.ftl")),
    ("es", "session", include_str!("../../../locales/es/session.ftl")),
];
