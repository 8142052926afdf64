//! Prints random poses and the moments that the body model gives for them, for an outside check to
//! compute again: one JSON list. The poses are the same every time.

use std::io::Write;

use sendaluna_core::body::{
    ArmAngles, LegAngles, Lying, PelvisAngles, Placed, Pose, Rests, TrunkAngles, gravity_moment_nm_per_kg,
};
use sendaluna_core::facts::{Joint, Motion, PerSide, Side};
use serde_json::{Value, json};

/// Poses.
const POSES: usize = 500;

const ANGLES: [(Joint, Motion); 9] = [
    (Joint::Hip, Motion::Flexion),
    (Joint::Hip, Motion::Abduction),
    (Joint::Hip, Motion::InternalRotation),
    (Joint::Knee, Motion::Flexion),
    (Joint::Ankle, Motion::Dorsiflexion),
    (Joint::Shoulder, Motion::Flexion),
    (Joint::Shoulder, Motion::Abduction),
    (Joint::Shoulder, Motion::InternalRotation),
    (Joint::Elbow, Motion::Flexion),
];

/// Numbers without a pattern that matters here: Knuth's 64-bit linear congruential generator.
struct Numbers(u64);

impl Numbers {
    fn between(&mut self, least: f64, most: f64) -> f64 {
        self.0 = self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        let part = f64::from(u32::try_from(self.0 >> 32).unwrap_or(0)) / f64::from(u32::MAX);
        least + (most - least) * part
    }

    fn coin(&mut self) -> bool {
        self.between(0.0, 1.0) < 0.25
    }

    fn leg(&mut self) -> LegAngles {
        LegAngles {
            hip_flexion_deg: self.between(-30.0, 130.0),
            hip_abduction_deg: self.between(-30.0, 50.0),
            hip_internal_rotation_deg: self.between(-50.0, 45.0),
            knee_flexion_deg: self.between(-5.0, 150.0),
            ankle_dorsiflexion_deg: self.between(-60.0, 35.0),
        }
    }

    fn arm(&mut self) -> ArmAngles {
        ArmAngles {
            shoulder_flexion_deg: self.between(-60.0, 180.0),
            shoulder_abduction_deg: self.between(-45.0, 150.0),
            shoulder_internal_rotation_deg: self.between(-100.0, 100.0),
            elbow_flexion_deg: self.between(-5.0, 150.0),
        }
    }

    fn pose(&mut self, n: usize) -> (Pose, &'static str) {
        let (lying, name) = [
            (Lying::Upright, "upright"),
            (Lying::OnTheBack, "on-the-back"),
            (Lying::FaceDown, "face-down"),
            (Lying::OnSide(Side::Left), "on-left"),
            (Lying::OnSide(Side::Right), "on-right"),
        ][n % 5];
        let pose = Pose {
            lying,
            pelvis: PelvisAngles {
                lean_deg: self.between(-60.0, 110.0),
                turn_deg: self.between(-60.0, 60.0),
                tilt_deg: self.between(-30.0, 30.0),
            },
            trunk: TrunkAngles {
                flexion_deg: self.between(-50.0, 85.0),
                side_bending_deg: self.between(-40.0, 40.0),
                twisting_deg: self.between(-50.0, 50.0),
                neck_flexion_deg: self.between(-60.0, 60.0),
            },
            legs: PerSide { left: self.leg(), right: self.leg() },
            arms: PerSide { left: self.arm(), right: self.arm() },
        };
        (pose, name)
    }
}

fn leg_json(leg: &LegAngles) -> Value {
    json!([
        leg.hip_flexion_deg,
        leg.hip_abduction_deg,
        leg.hip_internal_rotation_deg,
        leg.knee_flexion_deg,
        leg.ankle_dorsiflexion_deg
    ])
}

fn arm_json(arm: &ArmAngles) -> Value {
    json!([
        arm.shoulder_flexion_deg,
        arm.shoulder_abduction_deg,
        arm.shoulder_internal_rotation_deg,
        arm.elbow_flexion_deg
    ])
}

fn entry(numbers: &mut Numbers, n: usize) -> Value {
    let (pose, lying) = numbers.pose(n);
    let stature_m = numbers.between(1.0, 2.2);
    let load_share = numbers.between(0.0, 0.1);
    let side = if numbers.coin() { Side::Left } else { Side::Right };
    let rests = Rests {
        thigh: numbers.coin(),
        shank: numbers.coin(),
        upper_arm: numbers.coin(),
        forearm: numbers.coin(),
    };
    let placed = Placed::new(&pose, stature_m);
    let moments: Vec<f64> = ANGLES
        .iter()
        .map(|&(joint, motion)| gravity_moment_nm_per_kg(&placed, rests, joint, motion, side, load_share))
        .collect();
    json!({
        "lying": lying,
        "pelvis": [pose.pelvis.lean_deg, pose.pelvis.turn_deg, pose.pelvis.tilt_deg],
        "trunk": [pose.trunk.flexion_deg, pose.trunk.side_bending_deg, pose.trunk.twisting_deg],
        "leg": leg_json(pose.legs.get(side)),
        "arm": arm_json(pose.arms.get(side)),
        "side": side,
        "stature_m": stature_m,
        "load_share": load_share,
        "rests": [rests.thigh, rests.shank, rests.upper_arm, rests.forearm],
        "moments": moments,
    })
}

fn main() {
    let mut numbers = Numbers(20_260_302);
    let all: Vec<Value> = (0..POSES).map(|n| entry(&mut numbers, n)).collect();
    let _ = writeln!(std::io::stdout(), "{}", Value::from(all));
}
