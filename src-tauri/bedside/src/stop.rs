//! The warning stop.

use sendaluna_core::plan::Plan;
use sendaluna_core::plan::doc::Tier;

use crate::view::day::StopView;
use sendaluna_say::Speaker;
use sendaluna_words::Words;

/// That nobody sees it, and whom to ring first.
fn nobody_sees(words: &Words, plan: &Plan, tier: Tier) -> String {
    match tier {
        Tier::Emergency => {
            let number = plan.doc().clinic.emergency_phone.as_str();
            words.say("caution-nobody-sees-emergency", &[("number", number.into())])
        }
        Tier::RingToday | Tier::Note => words.say("caution-nobody-sees", &[]),
    }
}

/// A stop that says to ring: whom, and what to say.
pub fn stop_view(plan: &Plan, speaker: &Speaker<'_>, tier: Tier) -> StopView {
    let clinic = &plan.doc().clinic;
    let phones = [
        ("clinic", clinic.name.as_str().into()),
        ("phone", clinic.phone.as_str().into()),
        ("night", clinic.out_of_hours_phone.as_str().into()),
        ("emergency", clinic.emergency_phone.as_str().into()),
    ];
    let emergency = tier == Tier::Emergency;
    StopView {
        tier,
        said: speaker.words.say(if emergency { "stop-emergency" } else { "stop-ring-today" }, &phones),
        advice: emergency.then(|| speaker.text(&clinic.emergency_advice)),
        nobody_sees: nobody_sees(speaker.words, plan, tier),
        clinic: clinic.name.clone(),
        phone: clinic.phone.clone(),
        out_of_hours_phone: clinic.out_of_hours_phone.clone(),
        emergency_phone: clinic.emergency_phone.clone(),
    }
}
