//! The patient program.
fn main() {}
