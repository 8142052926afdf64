//! Printed things: the plan sheet, the letter with the letter code, the report. Set with Typst from data
//! that says everything already; the templates only lay it out. Each is a tagged PDF that keeps PDF/UA-1
//! (ISO 14289-1), in any language that ships, left to right or right to left, and legible in grey.
//!
//! | module | question it answers |
//! |---|---|
//! | [`sheet`] | what does the plan ask, for somebody who has paper alone? |
//! | [`letter`] | how does a patient take the plan in, and with which code? |
//! | [`report`] | how did it go, in thirty seconds? |
//! | [`today`] | what does somebody beside the patient count and tick today? |
//!
//! Print of at least 12 pt, large print of 17 pt, no italics: UKAAF G003, 2019. The report and a full day of
//! exercises are smaller, so that they keep to their pages; nothing is under 9 pt.

mod item;
mod leaf;
pub mod letter;
mod picture;
mod press;
pub mod report;
mod ring;
pub mod sheet;
pub mod today;

pub use leaf::Paper;
pub use press::NotPrinted;
