//! The letter: the letter code in large groups, and the plan as QR codes that do not hold it.

use chrono::{DateTime, NaiveDate, Utc};
use qrcode::render::svg;
use qrcode::{EcLevel, QrCode};
use sendaluna_words::{Value, Words};
use serde::Serialize;

use crate::leaf::{Leaf, Paper};
use crate::picture::{Picture, Pictures};
use crate::press::{MOST_PAGES, NotPrinted, Sheet, pdf};

const TEMPLATE: &str = include_str!("../templates/letter.typ");

/// What is printed.
#[derive(Debug, Clone, Copy)]
pub struct Letter<'a> {
    /// What the person likes to be called.
    pub called: &'a str,
    /// The clinic's name.
    pub clinic: &'a str,
    /// Its telephone in working hours.
    pub phone: &'a str,
    /// The plan's revision.
    pub revision: u32,
    /// The letter code, in groups with hyphens between them.
    pub code: &'a str,
    /// The plan as texts for QR codes; none if it is too large for paper.
    pub pieces: Option<&'a [String]>,
    /// The date on it.
    pub day: NaiveDate,
    /// When it is printed.
    pub at: DateTime<Utc>,
}

/// The letter, as a PDF.
pub fn letter(printed: &Letter<'_>, words: &Words, paper: Paper) -> Result<Vec<u8>, NotPrinted> {
    let mut pictures = Pictures::default();
    let data = data(printed, words, paper, &mut pictures)?;
    let (pictures, at) = (pictures.svg, printed.at);
    pdf(&Sheet { template: TEMPLATE, data: &data, pictures, at, most_pages: MOST_PAGES })
}

#[derive(Debug, Serialize)]
struct Data {
    leaf: Leaf,
    called: String,
    from: String,
    date: String,
    what: String,
    steps_title: String,
    steps: Vec<String>,
    /// After which step the code stands.
    code_after: usize,
    code_title: String,
    code: Vec<String>,
    code_words: Vec<String>,
    pictures_title: String,
    pictures_words: Vec<String>,
    pictures: Vec<Picture>,
}

fn data(
    printed: &Letter<'_>,
    words: &Words,
    paper: Paper,
    pictures: &mut Pictures,
) -> Result<Data, NotPrinted> {
    let args: [(&str, Value<'_>); 5] = [
        ("called", printed.called.into()),
        ("clinic", printed.clinic.into()),
        ("phone", printed.phone.into()),
        ("revision", printed.revision.into()),
        ("day", words.day_and_year(printed.day).into()),
    ];
    let say = |id: &str| words.say(id, &args);
    let steps = ["letter-step-open", "letter-step-code", "letter-step-side", "letter-step-check"];
    let of = printed.pieces.map_or(0, <[String]>::len);
    let pictures_words = match printed.pieces {
        Some(_) => {
            vec![words.say("letter-pictures-how", &[("n", of.into())]), say("letter-pictures-no-code")]
        }
        None => vec![say("letter-too-large")],
    };
    Ok(Data {
        leaf: Leaf::new(words, paper, say("letter-title"), say("letter-foot")),
        called: say("letter-for"),
        from: say("letter-from"),
        date: say("letter-date"),
        what: say("letter-what"),
        steps_title: say("letter-steps"),
        steps: steps.into_iter().map(say).collect(),
        code_after: 2,
        code_title: say("letter-code"),
        code: printed.code.split('-').map(str::to_string).collect(),
        code_words: vec![say("letter-code-why"), say("letter-code-forgives")],
        pictures_title: say("letter-pictures"),
        pictures_words,
        pictures: codes(printed, words, pictures)?,
    })
}

fn codes(printed: &Letter<'_>, words: &Words, pictures: &mut Pictures) -> Result<Vec<Picture>, NotPrinted> {
    let pieces = printed.pieces.unwrap_or_default();
    let mut code = |(n, piece): (usize, &String)| {
        let args: [(&str, Value<'_>); 3] =
            [("n", (n + 1).into()), ("of", pieces.len().into()), ("revision", printed.revision.into())];
        let svg = qr(piece)?;
        let alt = words.say("letter-picture-alt", &args);
        Ok(pictures.plain(svg, alt, words.say("letter-picture", &args)))
    };
    pieces.iter().enumerate().map(&mut code).collect()
}

/// A QR code (ISO/IEC 18004), error correction M, with its quiet zone of four modules.
fn qr(text: &str) -> Result<String, NotPrinted> {
    let code = QrCode::with_error_correction_level(text, EcLevel::M)
        .map_err(|error| NotPrinted(error.to_string()))?;
    Ok(code.render::<svg::Color<'_>>().quiet_zone(true).module_dimensions(1, 1).build())
}

#[cfg(test)]
mod tests {
    use qrcode::{EcLevel, QrCode, Version};

    /// The longest text of a piece takes version 20 at most: larger ones are hard to read by hand.
    #[test]
    fn a_full_piece_is_a_small_code() {
        let text = "SENDALUNA1:".to_string() + &"A".repeat(959);
        let code = QrCode::with_error_correction_level(text, EcLevel::M).expect("it fits");
        assert_eq!(code.version(), Version::Normal(20));
    }
}
