//! The QR codes of a plan, read out of photos or scans of a letter.

use std::io::Cursor;

use image::{ImageReader, Limits};
use rxing::common::HybridBinarizer;
use rxing::multi::MultipleBarcodeReader;
use rxing::qrcode::cpp_port::QrReader;
use rxing::{BinaryBitmap, DecodeHints, Luma8LuminanceSource};

/// How large a picture may be, in bytes.
pub const PICTURE_LIMIT: usize = 32 << 20;
/// Its longest side, in pixels; a telephone's camera takes less.
const LONGEST: u32 = 12_000;

const PNG: &[u8] = b"\x89PNG\r\n\x1a\n";
const JPEG: &[u8] = b"\xff\xd8\xff";

/// Whether these bytes begin as a picture does: PNG or JPEG.
pub fn is_picture(bytes: &[u8]) -> bool {
    bytes.starts_with(PNG) || bytes.starts_with(JPEG)
}

/// The texts of every QR code in a picture; none if it cannot be read as one.
pub fn texts_in(picture: &[u8]) -> Vec<String> {
    // Finding patterns in a picture of any kind is others' code: whatever it does, nothing falls here.
    std::panic::catch_unwind(|| read(picture)).ok().flatten().unwrap_or_default()
}

fn read(picture: &[u8]) -> Option<Vec<String>> {
    let mut limits = Limits::default();
    limits.max_image_width = Some(LONGEST);
    limits.max_image_height = Some(LONGEST);
    let mut reader = ImageReader::new(Cursor::new(picture)).with_guessed_format().ok()?;
    reader.limits(limits);
    let grey = reader.decode().ok()?.into_luma8();
    let (width, height) = grey.dimensions();
    let source = Luma8LuminanceSource::new(grey.into_raw(), width, height);
    let mut bitmap = BinaryBitmap::new(HybridBinarizer::new(source));
    let hints = DecodeHints { TryHarder: Some(true), ..DecodeHints::default() };
    let found = QrReader.decode_multiple_with_hints(&mut bitmap, &hints).ok()?;
    Some(found.iter().map(|code| code.getText().to_string()).collect())
}

#[cfg(test)]
mod tests {
    use image::{GrayImage, ImageFormat, Luma};
    use qrcode::{EcLevel, QrCode};

    use super::*;

    /// Codes side by side, so many pixels a module, on a page with a border.
    fn page(texts: &[String], pixels: u32) -> Vec<u8> {
        let codes: Vec<GrayImage> = texts
            .iter()
            .map(|text| {
                let code = QrCode::with_error_correction_level(text, EcLevel::M).expect("it fits");
                code.render::<Luma<u8>>().module_dimensions(pixels, pixels).build()
            })
            .collect();
        let each = codes.iter().map(GrayImage::width).max().expect("a code") + 40;
        let count = u32::try_from(codes.len()).expect("few");
        let mut page = GrayImage::from_pixel(each * count, each + 40, Luma([236]));
        for (code, at) in codes.iter().zip(0..) {
            image::imageops::overlay(&mut page, code, i64::from(at * each + 20), 30);
        }
        let mut bytes = Cursor::new(Vec::new());
        page.write_to(&mut bytes, ImageFormat::Png).expect("written");
        bytes.into_inner()
    }

    #[test]
    fn several_full_codes_are_read_out_of_one_picture() {
        let text = |n: u32| format!("SENDALUNA1:00:{n}:3:{}", "QUITE FULL ".repeat(80));
        let texts: Vec<String> = (1..=3).map(text).collect();
        let mut found = texts_in(&page(&texts, 4));
        found.sort();
        assert_eq!(found, texts);
    }

    #[test]
    fn what_is_no_picture_has_no_codes() {
        for bytes in [&b""[..], b"%PDF-1.7", PNG, JPEG, &[PNG, &[0; 200]].concat()] {
            assert!(texts_in(bytes).is_empty());
        }
        assert!(is_picture(PNG) && is_picture(JPEG) && !is_picture(b"{\"sendaluna\":1"));
    }
}
