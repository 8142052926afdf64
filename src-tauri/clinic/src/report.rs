//! A patient's report, read at the clinic: is it whole, whose is it, and does every figure follow?

use sendaluna_authority::ReportKey;
use sendaluna_core::library::Library;
use sendaluna_core::measure::{Measured, Measures, Period, measure};
use sendaluna_exchange::report::{Report, ReportFault};
use sendaluna_exchange::signers::SignersDoc;
use serde::Serialize;

use crate::error::ClinicError;

/// What a report is held against.
#[derive(Debug, Clone, Default)]
pub struct Ground {
    /// The clinic's own signers list.
    pub signers: Option<SignersDoc>,
    /// Earlier reports of the same person, sealed.
    pub earlier: Vec<Vec<u8>>,
}

/// A reason why a report is not vouched for, or something to know of it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Remark {
    /// The figures in it do not follow from its record.
    FiguresDiffer,
    /// Whoever made it has not the plan's secret.
    NotAuthentic,
    /// It does not go on from an earlier report.
    DoesNotExtend,
    /// It is another person's than the earlier reports.
    PersonOther,
    /// It was made before an earlier report, and sent again.
    Older,
    /// No signers list was given, so it is not known whether its plans are this clinic's.
    ClinicNotCompared,
    /// No earlier report was given: the device is seen for the first time.
    DeviceNew,
    /// The patient kept words back.
    WordsWithheld,
}

impl Remark {
    /// Every code, as people read `report-<code>`.
    pub const CODES: &'static [&'static str] = &[
        "figures-differ",
        "not-authentic",
        "does-not-extend",
        "person-other",
        "older",
        "clinic-not-compared",
        "device-new",
        "words-withheld",
    ];

    /// Whether nobody can vouch for a report of which this is true.
    pub fn forbids_trust(self) -> bool {
        !matches!(self, Self::ClinicNotCompared | Self::DeviceNew | Self::WordsWithheld)
    }
}

/// A report, read.
#[derive(Debug)]
pub struct Opened {
    /// The report.
    pub report: Report,
    /// Its plans.
    pub periods: Vec<Period>,
    /// Every figure, worked out again.
    pub measures: Measures,
    /// What is to be known of it.
    pub remarks: Vec<Remark>,
}

impl Opened {
    /// Whether the clinic's program vouches for it.
    pub fn is_vouched_for(&self) -> bool {
        !self.remarks.iter().any(|remark| remark.forbids_trust())
    }
}

/// Opens a sealed report, verifies it, and works out every figure again.
pub fn open_report(sealed: &[u8], key: &ReportKey, ground: &Ground) -> Result<Opened, ClinicError> {
    let report = unsealed(sealed, key)?;
    let clinic_key = match &ground.signers {
        Some(signers) => signers.clinic_key.thumbprint(),
        None => report.doc.clinic_key,
    };
    let periods = report.periods(clinic_key)?;
    let last = periods.last().ok_or(ReportFault::PlanMissing)?;
    let authentic =
        last.plan.head().person == report.doc.person && report.is_authentic(last.plan.reply_secret());
    let all = Measured {
        periods: &periods,
        events: &report.events,
        library: &Library::shipped(),
        waking: report.doc.waking(),
        broken_from: None,
    };
    let measures = measure(&all, report.doc.from, report.doc.through);
    let again = serde_json::to_string(&measures).unwrap_or_default();
    let mut remarks = Vec::new();
    let mut remark = |holds: bool, what: Remark| remarks.extend(holds.then_some(what));
    remark(again != report.doc.measures, Remark::FiguresDiffer);
    remark(!authentic, Remark::NotAuthentic);
    for earlier in &ground.earlier {
        let earlier = unsealed(earlier, key)?;
        let other = earlier.doc.person != report.doc.person;
        let older = !other && earlier.extends(&report) && !report.extends(&earlier);
        remark(other, Remark::PersonOther);
        remark(older, Remark::Older);
        remark(!other && !older && !report.extends(&earlier), Remark::DoesNotExtend);
    }
    remark(ground.signers.is_none(), Remark::ClinicNotCompared);
    remark(ground.earlier.is_empty(), Remark::DeviceNew);
    remark(report.withheld > 0, Remark::WordsWithheld);
    Ok(Opened { report, periods, measures, remarks })
}

fn unsealed(sealed: &[u8], key: &ReportKey) -> Result<Report, ClinicError> {
    let bytes = key.unseal(sealed).ok_or(ClinicError::NotUnsealed)?;
    Ok(Report::read(&bytes)?)
}
