//! An invented clinic with a surgeon, a therapist and one patient, in memory.

use chrono::NaiveDate;
use sendaluna_authority::{ReportKey, SecretKey, sign};
use sendaluna_core::digest::Digest;
use sendaluna_core::library::Library;
use sendaluna_core::plan::doc::PlanDoc;
use sendaluna_core::precaution::StatementDoc;
use sendaluna_exchange::file::PlanFile;
use sendaluna_exchange::jws::{PartKind, compact, signing_input};
use sendaluna_exchange::letter::LetterCode;
use sendaluna_exchange::signers::{Right, Signer, SignersDoc};
use serde_json::{Value, json};

/// A date.
pub fn day(text: &str) -> NaiveDate {
    text.parse().expect("a date")
}

/// A clinic, its people, and one patient's plan.
pub struct World {
    /// The clinic key.
    pub clinic: SecretKey,
    /// The surgeon's key.
    pub surgeon: SecretKey,
    /// The therapist's key.
    pub therapist: SecretKey,
    /// The key that opens reports.
    pub reports: ReportKey,
    /// The signers list.
    pub signers: SignersDoc,
    /// The surgeon's statement.
    pub statement: StatementDoc,
    /// The plan.
    pub plan: PlanDoc,
}

impl Default for World {
    fn default() -> Self {
        Self::new()
    }
}

impl World {
    /// With keys of its own.
    pub fn new() -> Self {
        let key = || SecretKey::generate().expect("randomness");
        let (clinic, surgeon, therapist) = (key(), key(), key());
        let reports = ReportKey::generate();
        let signer = |id: &str, key: &SecretKey, rights: Vec<Right>| Signer {
            id: sendaluna_core::ids::SignerId::new(id).expect("an id"),
            name: format!("A {id}"),
            role: serde_json::from_value(json!({ "en": id })).expect("the form"),
            key: key.public(),
            from: day("2026-01-01"),
            until: None,
            revoked: None,
            rights,
        };
        let signers = SignersDoc {
            format: 1,
            number: 1,
            issued_at: "2026-03-01T09:00:00Z".parse().expect("a moment"),
            clinic: "Hillside".into(),
            clinic_key: clinic.public(),
            signers: vec![
                signer("surgeon", &surgeon, vec![Right::SetPrecautions, Right::LiftPrecautions]),
                signer("therapist", &therapist, vec![Right::WritePlans]),
            ],
            reports_to: reports.recipient(),
        };
        let statement = serde_json::from_value(statement()).expect("the form");
        let mut plan: PlanDoc = serde_json::from_value(plan()).expect("the form");
        let library = Library::shipped();
        for item in &mut plan.items {
            item.facts = library.get(&item.movement).map(sendaluna_core::library::Movement::digest);
        }
        Self { clinic, surgeon, therapist, reports, signers, statement, plan }
    }

    /// Another plan of the same clinic.
    pub fn same_keys_as(&mut self, other: &Self) {
        let again =
            |key: &SecretKey| SecretKey::open(&key.seal("a passphrase").expect("sealed"), "a passphrase");
        self.clinic = again(&other.clinic).expect("opened");
        self.surgeon = again(&other.surgeon).expect("opened");
        self.therapist = again(&other.therapist).expect("opened");
        self.signers = other.signers.clone();
    }

    /// A later revision.
    pub fn renew(&mut self, revision: u32) {
        self.plan.head.revision = revision;
        self.plan.head.issued_at = Some("2026-03-06T09:00:00Z".parse().expect("a moment"));
    }

    /// The letter code.
    pub fn code(&self) -> String {
        LetterCode::of(self.clinic.public().thumbprint()).to_string()
    }

    /// The surgeon's statement, signed.
    pub fn statement_part(&self) -> String {
        sign::statement(&self.statement, &self.surgeon)
    }

    /// A lift by the surgeon, who may.
    pub fn lift_by_the_surgeon(&self) -> String {
        sign::statement(&self.lift(), &self.surgeon)
    }

    /// A lift by the therapist, who has no right to lift.
    pub fn lift_by_the_therapist(&self) -> String {
        sign::statement(&self.lift(), &self.therapist)
    }

    fn lift(&self) -> StatementDoc {
        let mut doc = self.statement.clone();
        doc.precautions.clear();
        doc.lifts = vec![serde_json::from_value(json!({ "precaution": "raise" })).expect("the form")];
        doc
    }

    /// The file's parts.
    pub fn parts(&self) -> PlanFile {
        self.built(vec![self.statement_part()])
    }

    /// The file.
    pub fn file(&self) -> Vec<u8> {
        self.parts().to_bytes()
    }

    /// The file, resting on these statements.
    pub fn file_with(&self, statements: Vec<String>) -> Vec<u8> {
        self.built(statements).to_bytes()
    }

    /// A file whose plan is any JSON, rightly signed.
    pub fn file_with_plan(&self, plan: &Value) -> Vec<u8> {
        let payload = serde_json::to_vec(plan).expect("JSON");
        let input = signing_input(PartKind::Plan, self.therapist.public().thumbprint(), &payload);
        let plan = compact(&input, &self.therapist.sign(input.as_bytes()));
        let signers = sign::signers(&self.signers, &self.clinic);
        PlanFile::new(signers, vec![self.statement_part()], plan).to_bytes()
    }

    fn built(&self, statements: Vec<String>) -> PlanFile {
        let mut plan = self.plan.clone();
        plan.statements = statements.iter().map(|part| Digest::of(part.as_bytes())).collect();
        let signers = sign::signers(&self.signers, &self.clinic);
        PlanFile::new(signers, statements, sign::plan(&plan, &self.therapist))
    }
}

fn episode() -> Value {
    json!({ "id": "hip", "name": { "en": "New hip" }, "side": "left", "day_zero": { "kind": "known", "date": "2026-03-02" } })
}

fn statement() -> Value {
    json!({
        "format": 1,
        "person": "p-1",
        "issued_at": "2026-03-03T09:00:00Z",
        "episodes": [episode()],
        "precautions": [{
            "id": "raise",
            "episode": "hip",
            "side": "left",
            "rule": { "kind": "movement", "family": "straight-leg-raise" },
            "ends": { "kind": "through", "day": "2026-05-24", "week": 12 },
            "why": { "en": "The repair needs rest." },
        }],
    })
}

fn plan() -> Value {
    let tempo = json!({ "out_s": 2, "hold_s": 0, "back_s": 2, "pause_s": 1 });
    json!({
        "format": 1,
        "head": {
            "person": "p-1", "called": "Ada", "born": 1951, "languages": ["en"], "zone": "Europe/Berlin",
            "plan": "plan-1", "revision": 1, "issued_at": "2026-03-03T10:00:00Z", "least_signers": 1,
            "last_day": "2026-06-28", "review_by": "2026-06-14",
        },
        "clinic": {
            "name": "Hillside", "phone": "555-0100", "out_of_hours_phone": "555-0101",
            "emergency_phone": "112", "emergency_advice": { "en": "Ring 112." },
        },
        "episodes": [episode()],
        "stages": [{
            "id": "all", "episode": "hip", "name": { "en": "All" }, "from_week": 1, "through_week": 17,
            "items": [{ "item": "slide" }],
        }],
        "items": [
            {
                "id": "slide", "episode": "hip", "movement": "heel-slide", "side": "operated",
                "dose": { "sets": 2, "repetitions": 10, "tempo": tempo, "rest_s": 20 },
                "when": { "kind": "times-a-day", "times": 3, "least_hours_between": 3 }, "order": 1,
            },
            {
                "id": "raise", "episode": "hip", "movement": "straight-leg-raise", "side": "operated",
                "dose": { "sets": 1, "repetitions": 8, "tempo": tempo, "rest_s": 20 },
                "when": { "kind": "times-a-day", "times": 2, "least_hours_between": 3 }, "order": 2,
            },
        ],
        "pain": {
            "rest_stop_today_at": 7, "slow_at": 4, "easier_at": 5, "stop_exercise_at": 6, "stop_today_at": 8,
            "rise_stop_exercise": 3, "sharp": "stop-exercise", "settle_minutes": 60, "next_morning_rise": 2,
        },
        "warning_signs": [{ "id": "breath", "tier": "emergency", "text": { "en": "New or worse: short of breath." } }],
        "return_dose": { "after_days": 7, "ring_after_days": 14 },
        "reply_secret": Digest::of(b"a secret"),
    })
}
