//! The list of data files. A file that is not listed does not ship; the tests compare the two.

/// Every movement file: its id and its text.
pub const ALL: &[(&str, &str)] = &[
    ("ankle-pump", include_str!("../../library/ankle-pump.toml")),
    ("straight-leg-raise", include_str!("../../library/straight-leg-raise.toml")),
];
