//! The course of a movement: the body at every moment of the way out, as one side performs it.

use glam::DVec3;

use crate::body::{
    ArmAngles, LegAngles, Lying, PelvisAngles, Placed, Pose, Rests, TrunkAngles, arm_to, segment,
};
use crate::facts::{Drive, Limb, PerSide, Position, Side};
use crate::library::form::{Anchor, Form, LimbAngles, PoseForm, Segment, TrunkForm};

/// From the middle of the pelvis to what one lies on, sits on, or leans against; a part of stature.
pub const PELVIS_DEPTH: f64 = 0.055;
/// From the knee to the floor, kneeling.
pub const KNEE_DEPTH: f64 = 0.035;

/// A movement as one side performs it, for a stature of 1 m.
#[derive(Debug, Clone)]
pub struct Course<'a> {
    form: &'a Form,
    working: Side,
    both: bool,
    /// Wrists that stay where they are.
    still: PerSide<Option<DVec3>>,
    /// Where the anchor is.
    anchor: DVec3,
}

/// A moment of a course: the angles, and the body in the room. Ground, bed or floor is at height 0.
#[derive(Debug, Clone, Copy)]
pub struct Moment {
    /// The angles.
    pub pose: Pose,
    /// The body.
    pub placed: Placed,
}

impl<'a> Course<'a> {
    /// A movement done by one side. `both` lets the other side do the same, for an item that is done
    /// with both together.
    pub fn new(form: &'a Form, working: Side, both: bool) -> Self {
        let mut course = Self { form, working, both, still: PerSide::default(), anchor: DVec3::ZERO };
        let start = Placed::new(&course.angles(0.0), 1.0);
        let lift = course.anchor_height(&start) - course.anchor_of(&start).y;
        let start = start.moved(DVec3::Y * lift);
        course.anchor = course.anchor_of(&start);
        for limb in &form.place.still_hands {
            let side = course.side(*limb);
            *course.still.get_mut(side) = Some(start.arm(side).wrist);
        }
        course
    }

    /// The movement.
    pub fn form(&self) -> &'a Form {
        self.form
    }

    /// The side that works.
    pub fn working(&self) -> Side {
        self.working
    }

    /// The absolute side of a limb; the trunk's is the working one.
    pub fn side(&self, limb: Limb) -> Side {
        if limb == Limb::Other { self.working.opposite() } else { self.working }
    }

    /// A moment of the way out, from 0 to 1.
    pub fn at(&self, share: f64) -> Moment {
        let mut pose = self.angles(share);
        let mut placed = self.settle(&pose);
        for side in Side::BOTH {
            if let Some(wrist) = self.still.get(side) {
                *pose.arms.get_mut(side) = arm_to(&placed, side, *wrist);
                placed = self.settle(&pose);
            }
        }
        Moment { pose, placed }
    }

    /// The ends of the stretches, each with what moves the working limb on the way to it.
    pub fn stretches(&self) -> impl Iterator<Item = (f64, f64, Drive)> {
        let drive = self.form.drive.working;
        self.form.poses.windows(2).map(move |two| (two[0].at, two[1].at, two[1].drive.unwrap_or(drive)))
    }

    /// What of a side rests on something.
    pub fn rests(&self, side: Side) -> Rests {
        let place = &self.form.place;
        let resting =
            if side == self.working || self.both { &place.working_rests } else { &place.other_rests };
        let has = |segment| resting.contains(&segment);
        Rests {
            thigh: has(Segment::Thigh),
            shank: has(Segment::Shank) || has(Segment::Foot),
            upper_arm: has(Segment::UpperArm),
            forearm: has(Segment::Forearm) || has(Segment::Hand),
        }
    }

    fn settle(&self, pose: &Pose) -> Placed {
        let placed = Placed::new(pose, 1.0);
        let at = self.anchor_of(&placed);
        placed.moved(self.anchor - at)
    }

    /// The angles of a moment, before hands that stay still are brought to their places.
    fn angles(&self, share: f64) -> Pose {
        let poses = &self.form.poses;
        let after = poses.iter().position(|pose| pose.at >= share).unwrap_or(poses.len() - 1);
        let (from, to) = (&poses[after.saturating_sub(1)], &poses[after]);
        let length = to.at - from.at;
        let part = if length > 0.0 { ((share - from.at) / length).clamp(0.0, 1.0) } else { 1.0 };
        let mut pose = self.pose(&between(from, to, part));
        for limb in &self.form.place.level_feet {
            level_foot(&mut pose, self.side(*limb));
            if self.both {
                level_foot(&mut pose, self.side(*limb).opposite());
            }
        }
        pose
    }

    fn pose(&self, said: &PoseForm) -> Pose {
        let other = if self.both { said.working } else { said.other };
        let sided = if self.working == Side::Right { 1.0 } else { -1.0 };
        let (mut legs, mut arms) = (PerSide::default(), PerSide::default());
        for (side, angles) in [(self.working, &said.working), (self.working.opposite(), &other)] {
            (*legs.get_mut(side), *arms.get_mut(side)) = limb(angles);
        }
        let trunk = &said.trunk;
        Pose {
            lying: self.lying(),
            pelvis: PelvisAngles {
                lean_deg: trunk.pelvis_lean_deg,
                turn_deg: sided * trunk.pelvis_turn_deg,
                tilt_deg: sided * trunk.pelvis_tilt_deg,
            },
            trunk: TrunkAngles {
                flexion_deg: trunk.flexion_deg,
                side_bending_deg: sided * trunk.side_bending_deg,
                twisting_deg: sided * trunk.twisting_deg,
                neck_flexion_deg: trunk.neck_flexion_deg,
            },
            legs,
            arms,
        }
    }

    fn lying(&self) -> Lying {
        match self.form.place.position {
            Position::Supine | Position::HookLying => Lying::OnTheBack,
            Position::Prone => Lying::FaceDown,
            Position::SideLying => Lying::OnSide(self.side(self.form.place.lies_on.unwrap_or(Limb::Other))),
            Position::Seated
            | Position::Standing
            | Position::BentOver
            | Position::Kneeling
            | Position::HandsAndKnees => Lying::Upright,
        }
    }

    fn anchor_of(&self, placed: &Placed) -> DVec3 {
        let leg = |limb| placed.leg(self.side(limb));
        match self.form.place.anchor {
            Anchor::Pelvis => placed.hips,
            Anchor::Shoulders => placed.neck,
            Anchor::WorkingFoot => leg(Limb::Working).sole(placed.stature_m)[1],
            Anchor::OtherFoot => leg(Limb::Other).sole(placed.stature_m)[1],
            Anchor::WorkingToes => leg(Limb::Working).sole(placed.stature_m)[2],
            Anchor::OtherKnee => leg(Limb::Other).knee,
        }
    }

    /// How high the anchor lies.
    fn anchor_height(&self, start: &Placed) -> f64 {
        let place = &self.form.place;
        match (place.anchor, place.position) {
            (Anchor::Pelvis, Position::Seated) => seat_height(start),
            (Anchor::Pelvis, Position::SideLying) => segment::HALF_HIPS + PELVIS_DEPTH,
            (Anchor::Pelvis | Anchor::Shoulders, _) => PELVIS_DEPTH,
            (Anchor::WorkingFoot | Anchor::WorkingToes, _) => place.step_height,
            (Anchor::OtherFoot, _) => 0.0,
            (Anchor::OtherKnee, _) => KNEE_DEPTH,
        }
    }
}

/// The ankle angle that brings the sole level, toes away from the pelvis.
fn level_foot(pose: &mut Pose, side: Side) {
    pose.legs.get_mut(side).ankle_dorsiflexion_deg = 0.0;
    let leg = *Placed::new(pose, 1.0).leg(side);
    let toes = leg.foot * DVec3::X;
    let forward = toes.with_y(0.0).normalize_or(DVec3::X);
    // The foot turns about the ankle's axis only: level as far as that goes.
    let axis = leg.shank * DVec3::Z;
    let level = (forward - axis * forward.dot(axis)).normalize_or(toes);
    let angle = toes.cross(level).dot(axis).atan2(toes.dot(level));
    pose.legs.get_mut(side).ankle_dorsiflexion_deg = angle.to_degrees();
}

/// Sitting, the lower foot is on the ground at the beginning.
fn seat_height(start: &Placed) -> f64 {
    let soles = Side::BOTH.into_iter().flat_map(|side| start.leg(side).sole(start.stature_m));
    -soles.map(|at| at.y - start.hips.y).fold(f64::INFINITY, f64::min)
}

fn limb(angles: &LimbAngles) -> (LegAngles, ArmAngles) {
    let leg = LegAngles {
        hip_flexion_deg: angles.hip_flexion_deg,
        hip_abduction_deg: angles.hip_abduction_deg,
        hip_internal_rotation_deg: angles.hip_internal_rotation_deg,
        knee_flexion_deg: angles.knee_flexion_deg,
        ankle_dorsiflexion_deg: angles.ankle_dorsiflexion_deg,
    };
    let arm = ArmAngles {
        shoulder_flexion_deg: angles.shoulder_flexion_deg,
        shoulder_abduction_deg: angles.shoulder_abduction_deg,
        shoulder_internal_rotation_deg: angles.shoulder_internal_rotation_deg,
        elbow_flexion_deg: angles.elbow_flexion_deg,
    };
    (leg, arm)
}

fn between(from: &PoseForm, to: &PoseForm, part: f64) -> PoseForm {
    let mix = |a: f64, b: f64| a + (b - a) * part;
    let limb = |a: &LimbAngles, b: &LimbAngles| LimbAngles {
        hip_flexion_deg: mix(a.hip_flexion_deg, b.hip_flexion_deg),
        hip_abduction_deg: mix(a.hip_abduction_deg, b.hip_abduction_deg),
        hip_internal_rotation_deg: mix(a.hip_internal_rotation_deg, b.hip_internal_rotation_deg),
        knee_flexion_deg: mix(a.knee_flexion_deg, b.knee_flexion_deg),
        ankle_dorsiflexion_deg: mix(a.ankle_dorsiflexion_deg, b.ankle_dorsiflexion_deg),
        shoulder_flexion_deg: mix(a.shoulder_flexion_deg, b.shoulder_flexion_deg),
        shoulder_abduction_deg: mix(a.shoulder_abduction_deg, b.shoulder_abduction_deg),
        shoulder_internal_rotation_deg: mix(
            a.shoulder_internal_rotation_deg,
            b.shoulder_internal_rotation_deg,
        ),
        elbow_flexion_deg: mix(a.elbow_flexion_deg, b.elbow_flexion_deg),
    };
    let (a, b) = (&from.trunk, &to.trunk);
    PoseForm {
        at: mix(from.at, to.at),
        working: limb(&from.working, &to.working),
        other: limb(&from.other, &to.other),
        trunk: TrunkForm {
            pelvis_lean_deg: mix(a.pelvis_lean_deg, b.pelvis_lean_deg),
            pelvis_turn_deg: mix(a.pelvis_turn_deg, b.pelvis_turn_deg),
            pelvis_tilt_deg: mix(a.pelvis_tilt_deg, b.pelvis_tilt_deg),
            flexion_deg: mix(a.flexion_deg, b.flexion_deg),
            side_bending_deg: mix(a.side_bending_deg, b.side_bending_deg),
            twisting_deg: mix(a.twisting_deg, b.twisting_deg),
            neck_flexion_deg: mix(a.neck_flexion_deg, b.neck_flexion_deg),
        },
        drive: None,
    }
}
