//! Sets pages with Typst: a template, its data as JSON, its pictures; out comes a tagged PDF that keeps
//! PDF/UA-1 (ISO 14289-1).

use std::sync::LazyLock;

use chrono::{DateTime, Datelike, Timelike, Utc};
use serde::Serialize;
use typst::diag::{FileError, FileResult, SourceDiagnostic};
use typst::foundations::{Bytes, Datetime, Duration};
use typst::syntax::{FileId, RootedPath, Source, VirtualPath, VirtualRoot};
use typst::text::{Font, FontBook};
use typst::utils::LazyHash;
use typst::{Library, LibraryExt, World};
use typst_layout::PagedDocument;
use typst_pdf::{PdfOptions, PdfStandard, PdfStandards, Timestamp};

/// Fonts, all under the SIL Open Font License 1.1.
const FONTS: &[&[u8]] = &[
    include_bytes!("../fonts/AtkinsonHyperlegibleNext_400Regular.ttf"),
    include_bytes!("../fonts/AtkinsonHyperlegibleNext_700Bold.ttf"),
    include_bytes!("../fonts/NotoSansArabic_400Regular.ttf"),
    include_bytes!("../fonts/NotoSansArabic_700Bold.ttf"),
];
/// What every template may import.
const LOOK: &str = include_str!("../templates/look.typ");
/// Pages of one document, at the very most.
pub(crate) const MOST_PAGES: usize = 400;

static LIBRARY: LazyLock<LazyHash<Library>> = LazyLock::new(|| LazyHash::new(Library::default()));
static FACES: LazyLock<Vec<Font>> =
    LazyLock::new(|| FONTS.iter().flat_map(|face| Font::iter(Bytes::new(*face))).collect());
static BOOK: LazyLock<LazyHash<FontBook>> = LazyLock::new(|| LazyHash::new(FontBook::from_fonts(&*FACES)));

/// Pages could not be set: a fault of ours, never of the data.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct NotPrinted(
    /// What the typesetter said.
    pub String,
);

/// What is put on paper.
pub(crate) struct Sheet<'a, T> {
    /// The template, beside `look.typ`.
    pub template: &'static str,
    /// What it shows, as `data.json`.
    pub data: &'a T,
    /// Its pictures, as `0.svg`, `1.svg` …
    pub pictures: Vec<String>,
    /// When it is made.
    pub at: DateTime<Utc>,
    /// On how many pages at most.
    pub most_pages: usize,
}

/// Sets it, as PDF/UA-1.
pub(crate) fn pdf<T: Serialize>(sheet: &Sheet<'_, T>) -> Result<Vec<u8>, NotPrinted> {
    let desk = Desk::new(sheet)?;
    let document: PagedDocument = typst::compile(&desk).output.map_err(|errors| not_printed(&errors))?;
    if document.pages().len() > sheet.most_pages {
        return Err(NotPrinted("too many pages".to_string()));
    }
    let standards =
        PdfStandards::new(&[PdfStandard::Ua_1]).map_err(|e| NotPrinted(e.message().to_string()))?;
    let options = PdfOptions { standards, timestamp: timestamp(sheet.at), ..PdfOptions::default() };
    let bytes = typst_pdf::pdf(&document, &options).map_err(|errors| not_printed(&errors));
    // What was set for one patient is of no use for the next.
    typst::comemo::evict(0);
    bytes
}

fn not_printed(errors: &[SourceDiagnostic]) -> NotPrinted {
    let said = errors.iter().map(|error| {
        error.hints.iter().fold(error.message.to_string(), |said, hint| format!("{said} ({})", hint.v))
    });
    NotPrinted(said.collect::<Vec<_>>().join("; "))
}

fn timestamp(at: DateTime<Utc>) -> Option<Timestamp> {
    datetime(at).map(Timestamp::new_utc)
}

fn datetime(at: DateTime<Utc>) -> Option<Datetime> {
    let part = |n: u32| u8::try_from(n).ok();
    Datetime::from_ymd_hms(
        at.year(),
        part(at.month())?,
        part(at.day())?,
        part(at.hour())?,
        part(at.minute())?,
        part(at.second())?,
    )
}

/// The files that a template sees: itself, the look, the data, the pictures. There is no disk behind it.
struct Desk {
    main: Source,
    look: Source,
    data: Bytes,
    pictures: Vec<Bytes>,
    at: Option<Datetime>,
}

impl Desk {
    fn new<T: Serialize>(sheet: &Sheet<'_, T>) -> Result<Self, NotPrinted> {
        let data = serde_json::to_vec(sheet.data).map_err(|e| NotPrinted(e.to_string()))?;
        Ok(Self {
            main: Source::new(file("main.typ")?, sheet.template.to_string()),
            look: Source::new(file("look.typ")?, LOOK.to_string()),
            data: Bytes::new(data),
            pictures: sheet.pictures.iter().map(|svg| Bytes::from_string(svg.clone())).collect(),
            at: datetime(sheet.at),
        })
    }

    fn picture(&self, name: &str) -> Option<Bytes> {
        self.pictures.get(name.strip_suffix(".svg")?.parse::<usize>().ok()?).cloned()
    }
}

fn file(name: &str) -> Result<FileId, NotPrinted> {
    let path = VirtualPath::new(name).map_err(|e| NotPrinted(format!("{e:?}")))?;
    Ok(RootedPath::new(VirtualRoot::Project, path).intern())
}

impl World for Desk {
    fn library(&self) -> &LazyHash<Library> {
        &LIBRARY
    }

    fn book(&self) -> &LazyHash<FontBook> {
        &BOOK
    }

    fn main(&self) -> FileId {
        self.main.id()
    }

    fn source(&self, id: FileId) -> FileResult<Source> {
        [&self.main, &self.look]
            .into_iter()
            .find(|source| source.id() == id)
            .cloned()
            .ok_or_else(|| FileError::NotFound(id.get().vpath().get_without_slash().into()))
    }

    fn file(&self, id: FileId) -> FileResult<Bytes> {
        let name = id.get().vpath().get_without_slash();
        let found = if name == "data.json" { Some(self.data.clone()) } else { self.picture(name) };
        found.ok_or_else(|| FileError::NotFound(name.into()))
    }

    fn font(&self, index: usize) -> Option<Font> {
        FACES.get(index).cloned()
    }

    fn today(&self, _offset: Option<Duration>) -> Option<Datetime> {
        self.at
    }
}
