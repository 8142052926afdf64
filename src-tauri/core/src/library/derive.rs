//! From poses to facts: what a movement asks of each joint, worked out, never declared.
//!
//! Ranges are those that the joints go through, hands that hold on included. A muscle action follows
//! from gravity where the limb is free (the muscles that carry it, on the way up and down), from the
//! direction of the movement where nothing pulls either way (out, and back again), and from the weight
//! borne where the limb pushes: hips and knees are then held by their extensors, ankles by the calf.
//! Who stands on one leg holds the pelvis with that leg's abductors. Moments are gravity's share of
//! free limbs; those of limbs that push are not estimated.

use crate::body::{Rests, gravity_moment_nm_per_kg, limb_potential};
use crate::facts::{
    ActionFact, Axis, Drive, Facts, Joint, Limb, MomentFact, Motion, Position, RangeFact, Resistance, Seat,
    Side, WeightFact, tenths,
};
use crate::library::course::{Course, Moment};
use crate::library::form::{Form, LIMB_AXES, LimbAngles, LimbAxis, Prop, Segment};

/// How finely a stretch is looked at.
const STEPS: u32 = 12;
/// A moment below this, in N·m per kg and m, is none.
const NO_MOMENT: f64 = 0.01;
/// A load that hangs nearer to the vertical through the joint than this part of stature asks nothing.
const NO_LEVER: f64 = 0.01;
/// A limb that rises by less than this part of stature times its share of mass stays level.
const LEVEL: f64 = 0.0005;
/// Who bears at least this much of the body's weight on one leg stands on it alone, in per cent. A
/// movement on one leg that puts less on it is refused.
pub(super) const STANDS_ALONE_PERCENT: f64 = 75.0;
/// A joint that is bent by less than this bears weight without its muscles, in degrees.
const STRAIGHT_DEG: f64 = 10.0;
/// From this bend on, the spine counts as bent, in degrees: common practice, no source.
const BENT_DEG: f64 = 10.0;
/// From this twist on, the spine counts as twisted, in degrees: common practice, no source.
const TWISTED_DEG: f64 = 5.0;
/// Who bows this far from the hips, standing, counts as bending the spine: the usual fault is to
/// round the back. Common practice, no source.
const BOWED_DEG: f64 = 35.0;
/// Hips this much over the knees, as a part of stature, make a high seat, and under them a low one.
const SEAT_HIGH: f64 = 0.012;
const SEAT_LOW: f64 = -0.005;

/// The facts of a movement.
pub fn facts(form: &Form) -> Facts {
    let course = Course::new(form, Side::Right, false);
    let stretches = stretches(&course);
    let place = &form.place;
    let mut facts = Facts {
        position: place.position,
        surface: place.surface,
        lies_on: place.lies_on.filter(|_| place.position == Position::SideLying),
        seat: seat(form, &stretches),
        ranges: Vec::new(),
        actions: Vec::new(),
        moments: Vec::new(),
        weight: WeightFact {
            working_percent: place.working_weight_percent,
            other_percent: place.other_weight_percent,
        },
        bends_spine: false,
        twists_spine: false,
        resistance: resistance(form),
    };
    for limb in [Limb::Working, Limb::Other] {
        for axis in &LIMB_AXES {
            Look { course: &course, stretches: &stretches, limb, axis }.add_to(&mut facts);
        }
        if weight_percent(form, limb) >= STANDS_ALONE_PERCENT {
            facts.act(limb, Joint::Hip, Motion::Abduction, Drive::Isometric);
        }
    }
    add_trunk(form, &stretches, &mut facts);
    for effort in &form.efforts {
        facts.act(effort.limb, effort.joint, effort.motion, Drive::Isometric);
    }
    facts
}

/// A stretch of the way out, looked at closely.
struct Stretch {
    drive: Drive,
    moments: Vec<Moment>,
}

/// A movement that is held still has one stretch of one moment.
fn stretches(course: &Course<'_>) -> Vec<Stretch> {
    let at = |from: f64, to: f64, n: u32| course.at(from + (to - from) * f64::from(n) / f64::from(STEPS));
    let look = |(from, to, drive): (f64, f64, Drive)| Stretch {
        drive,
        moments: (0..=STEPS).map(|n| at(from, to, n)).collect(),
    };
    let all: Vec<Stretch> = course.stretches().map(look).collect();
    let held = || Stretch { drive: course.form().drive.working, moments: vec![course.at(0.0)] };
    if all.is_empty() { vec![held()] } else { all }
}

/// How high one sits: of who sits all the way, by the lower knee at the beginning; of who sits down or
/// stands up, by the lowest moment with both knees bent.
fn seat(form: &Form, stretches: &[Stretch]) -> Option<Seat> {
    let all = || stretches.iter().flat_map(|stretch| &stretch.moments);
    let knees = |moment: &Moment| Side::BOTH.map(|side| moment.placed.leg(side).knee.y);
    let over = |moment: &Moment| {
        let [left, right] = knees(moment);
        moment.placed.hips.y - left.min(right)
    };
    let bent =
        |moment: &&Moment| Side::BOTH.iter().all(|side| moment.pose.legs.get(*side).knee_flexion_deg > 60.0);
    let over = match form.place.position {
        Position::Seated => all().next().map(over),
        _ if form.props.contains(&Prop::Chair) => all().filter(bent).map(over).min_by(f64::total_cmp),
        _ => None,
    };
    over.map(|over| match over {
        over if over > SEAT_HIGH => Seat::High,
        over if over < SEAT_LOW => Seat::Low,
        _ => Seat::Knee,
    })
}

fn resistance(form: &Form) -> Resistance {
    let has = |prop| form.props.contains(&prop);
    match () {
        () if has(Prop::Band) => Resistance::Both,
        () if has(Prop::TiedBand) || has(Prop::Cuff) => Resistance::Working,
        () => Resistance::None,
    }
}

fn has_band(form: &Form) -> bool {
    form.props.iter().any(|prop| matches!(prop, Prop::Band | Prop::TiedBand))
}

fn weight_percent(form: &Form, limb: Limb) -> f64 {
    match limb {
        Limb::Working => form.place.working_weight_percent,
        Limb::Other => form.place.other_weight_percent,
        Limb::Trunk => 0.0,
    }
}

fn is_of_leg(joint: Joint) -> bool {
    matches!(joint, Joint::Hip | Joint::Knee | Joint::Ankle)
}

/// One angle of one limb, all the way.
struct Look<'a> {
    course: &'a Course<'a>,
    stretches: &'a [Stretch],
    limb: Limb,
    axis: &'a LimbAxis,
}

impl Look<'_> {
    fn add_to(&self, facts: &mut Facts) {
        let angles = || self.stretches.iter().flat_map(|s| &s.moments).map(|moment| self.angle(moment));
        let least = angles().fold(f64::INFINITY, f64::min);
        let most = angles().fold(f64::NEG_INFINITY, f64::max);
        let drive = self.drive(least, most);
        if tenths(least) != 0 || tenths(most) != 0 || drive != Drive::Passive {
            let (from_deg, to_deg) = (rounded(least), rounded(most));
            let (limb, joint, axis) = (self.limb, self.axis.joint, self.axis.motion.axis());
            facts.ranges.push(RangeFact { limb, joint, axis, from_deg, to_deg, drive });
        }
        if self.pushes() {
            self.add_pushing(facts, least, most);
        }
        if !self.pushes() || self.swings() {
            for stretch in self.stretches {
                self.add_free(facts, stretch);
            }
        }
    }

    fn side(&self) -> Side {
        self.course.side(self.limb)
    }

    fn rests(&self) -> Rests {
        self.course.rests(self.side())
    }

    fn angle(&self, moment: &Moment) -> f64 {
        let (leg, arm) = (moment.pose.legs.get(self.side()), moment.pose.arms.get(self.side()));
        (self.axis.get)(&LimbAngles {
            hip_flexion_deg: leg.hip_flexion_deg,
            hip_abduction_deg: leg.hip_abduction_deg,
            hip_internal_rotation_deg: leg.hip_internal_rotation_deg,
            knee_flexion_deg: leg.knee_flexion_deg,
            ankle_dorsiflexion_deg: leg.ankle_dorsiflexion_deg,
            shoulder_flexion_deg: arm.shoulder_flexion_deg,
            shoulder_abduction_deg: arm.shoulder_abduction_deg,
            shoulder_internal_rotation_deg: arm.shoulder_internal_rotation_deg,
            elbow_flexion_deg: arm.elbow_flexion_deg,
        })
    }

    /// What moves this joint on a stretch, or holds it.
    fn drive_on(&self, stretch: &Stretch) -> Drive {
        let drives = &self.course.form().drive;
        let of_limb = if self.limb == Limb::Working { stretch.drive } else { drives.other };
        self.said().unwrap_or(of_limb)
    }

    /// What moves this joint most of its own accord; of a joint that is held, what holds it.
    fn drive(&self, least: f64, most: f64) -> Drive {
        let strongest = |a: Drive, b: Drive| if rank(a) >= rank(b) { a } else { b };
        let drive = self.stretches.iter().map(|s| self.drive_on(s)).fold(Drive::Passive, strongest);
        let moves = most - least > 0.05;
        match drive {
            _ if self.pushes() && moves => Drive::Active,
            _ if self.pushes() => Drive::Isometric,
            _ if !self.pushes() && self.is_idle(moves) => Drive::Passive,
            Drive::Active if !moves && self.is_carried() && !self.pushes() => Drive::Passive,
            Drive::Active if !moves => Drive::Isometric,
            drive => drive,
        }
    }

    /// Everything beyond the joint rests on something.
    fn is_carried(&self) -> bool {
        let rests = self.rests();
        match self.axis.joint {
            Joint::Hip => rests.thigh,
            Joint::Knee | Joint::Ankle => rests.shank,
            Joint::Shoulder => rests.upper_arm,
            Joint::Elbow => rests.forearm,
            Joint::Trunk => true,
        }
    }

    /// The limb pushes against what it rests on.
    fn pushes(&self) -> bool {
        let form = self.course.form();
        if is_of_leg(self.axis.joint) {
            form.place.pushing_legs.contains(&self.limb) || weight_percent(form, self.limb) > 0.0
        } else {
            form.place.pushing_arms.contains(&self.limb)
        }
    }

    /// The leg bears weight for a part of the way only: its foot leaves the ground, or arrives there.
    fn swings(&self) -> bool {
        let place = &self.course.form().place;
        let rests = if self.limb == Limb::Working { &place.working_rests } else { &place.other_rests };
        is_of_leg(self.axis.joint)
            && weight_percent(self.course.form(), self.limb) > 0.0
            && !rests.contains(&Segment::Foot)
            && !rests.contains(&Segment::Shank)
    }

    /// What the file says of this joint in particular.
    fn said(&self) -> Option<Drive> {
        let joints = &self.course.form().drive.joints;
        joints.iter().find(|d| d.limb == self.limb && d.joint == self.axis.joint).map(|own| own.drive)
    }

    /// An arm whose hand only holds on, and a foot that nothing moves, are left to themselves.
    fn is_idle(&self, moves: bool) -> bool {
        if self.said().is_some() {
            return false;
        }
        match self.axis.joint {
            Joint::Ankle => !moves,
            Joint::Shoulder | Joint::Elbow => self.course.form().place.still_hands.contains(&self.limb),
            Joint::Hip | Joint::Knee | Joint::Trunk => false,
        }
    }

    fn add_pushing(&self, facts: &mut Facts, least: f64, most: f64) {
        let moves = most - least > 0.05;
        let drive = if moves { Drive::Active } else { Drive::Isometric };
        let bent = moves || most.abs() > STRAIGHT_DEG || least.abs() > STRAIGHT_DEG;
        let motion = match (self.axis.joint, self.axis.motion) {
            (Joint::Hip | Joint::Knee | Joint::Elbow, Motion::Flexion) if bent => Motion::Extension,
            (Joint::Ankle, _) if bent => Motion::Plantarflexion,
            (Joint::Shoulder, Motion::Flexion) if bent => Motion::Flexion,
            _ => return,
        };
        if moves && self.axis.joint == Joint::Shoulder {
            facts.act(self.limb, self.axis.joint, Motion::Extension, drive);
        }
        facts.act(self.limb, self.axis.joint, motion, drive);
    }

    fn add_free(&self, facts: &mut Facts, stretch: &Stretch) {
        let drive = self.drive_on(stretch);
        let moments = &stretch.moments;
        let (first, last) = (&moments[0], &moments[moments.len() - 1]);
        let gone = self.angle(last) - self.angle(first);
        let moves = gone.abs() > 0.05;
        let drive = if drive == Drive::Active && !moves { Drive::Isometric } else { drive };
        if drive == Drive::Passive || self.is_idle(moves) {
            return;
        }
        let (positive, negative) = (self.axis.motion, self.axis.motion.opposite());
        let mut works = [false, false];
        for (motion, works) in [positive, negative].into_iter().zip(&mut works) {
            *works = self.add_moments(facts, stretch, motion, drive);
        }
        if moves && has_band(self.course.form()) {
            works = [true, true];
        }
        if moves && !works[0] && !works[1] {
            works = self.level(first, last, gone > 0.0);
        }
        for (motion, _) in [positive, negative].into_iter().zip(works).filter(|(_, works)| *works) {
            facts.act(self.limb, self.axis.joint, motion, drive);
        }
    }

    /// Where the joint itself carries nothing, the limb as a whole tells which muscles work: those that
    /// raise it, or, when it stays level, those of either direction in turn.
    fn level(&self, first: &Moment, last: &Moment, towards_positive: bool) -> [bool; 2] {
        let height = |moment: &Moment| limb_potential(&moment.placed, self.axis.joint, self.side());
        let risen = height(last) - height(first);
        let sagittal = self.axis.motion.axis() == Axis::Flexion;
        match risen {
            risen if sagittal && risen > LEVEL => [towards_positive, !towards_positive],
            risen if sagittal && risen < -LEVEL => [!towards_positive, towards_positive],
            _ => [true, true],
        }
    }

    /// The peak moments of a motion: bare, and with whatever an outside load adds. Whether there are any.
    fn add_moments(&self, facts: &mut Facts, stretch: &Stretch, motion: Motion, drive: Drive) -> bool {
        let (rests, joint, side) = (self.rests(), self.axis.joint, self.side());
        let peaks: Vec<(f64, f64)> = stretch
            .moments
            .iter()
            .map(|moment| {
                let of = |load| gravity_moment_nm_per_kg(&moment.placed, rests, joint, motion, side, load);
                (of(0.0), (of(1.0) - of(0.0)) / 9.81)
            })
            .filter(|(bare, lever)| *bare > NO_MOMENT || *lever > NO_LEVER)
            .collect();
        let Some(heaviest) = peaks.iter().copied().max_by(|a, b| a.0.total_cmp(&b.0)) else { return false };
        let farthest = peaks.iter().copied().max_by(|a, b| a.1.total_cmp(&b.1)).unwrap_or(heaviest);
        for (nm_per_kg_per_m, load_lever) in [heaviest, farthest] {
            let load_lever = load_lever.max(0.0);
            let fact = MomentFact { limb: self.limb, joint, motion, nm_per_kg_per_m, load_lever, drive };
            if !facts.moments.contains(&fact) {
                facts.moments.push(fact);
            }
        }
        heaviest.0 > NO_MOMENT
    }
}

fn add_trunk(form: &Form, stretches: &[Stretch], facts: &mut Facts) {
    let moments = || stretches.iter().flat_map(|stretch| &stretch.moments);
    let drive = form.drive.trunk;
    let mut furthest = |axis: Axis, get: fn(&Moment) -> f64| {
        let least = moments().map(get).fold(f64::INFINITY, f64::min);
        let most = moments().map(get).fold(f64::NEG_INFINITY, f64::max);
        if tenths(least) != 0 || tenths(most) != 0 {
            let (from_deg, to_deg) = (rounded(least), rounded(most));
            facts.ranges.push(RangeFact {
                limb: Limb::Trunk,
                joint: Joint::Trunk,
                axis,
                from_deg,
                to_deg,
                drive,
            });
        }
        if most - least > 0.05 && drive != Drive::Passive {
            let motions = if axis == Axis::Flexion {
                [Motion::Flexion, Motion::Extension]
            } else {
                [axis.positive(); 2]
            };
            for motion in motions {
                facts.act(Limb::Trunk, Joint::Trunk, motion, drive);
            }
        }
        least.abs().max(most.abs())
    };
    let bend = furthest(Axis::Flexion, |m| m.pose.trunk.flexion_deg);
    let aside = furthest(Axis::SideBending, |m| m.pose.trunk.side_bending_deg);
    let twist = furthest(Axis::Twisting, |m| m.pose.trunk.twisting_deg);
    let upright = [Position::Standing, Position::BentOver, Position::Seated, Position::Kneeling];
    let bows =
        upright.contains(&form.place.position) && moments().any(|m| m.pose.pelvis.lean_deg >= BOWED_DEG);
    facts.bends_spine = bend.max(aside) >= BENT_DEG || bows;
    facts.twists_spine = twist >= TWISTED_DEG;
}

impl Facts {
    fn act(&mut self, limb: Limb, joint: Joint, motion: Motion, drive: Drive) {
        let fact = ActionFact { limb, joint, motion, drive };
        if !self.actions.contains(&fact) {
            self.actions.push(fact);
        }
    }
}

/// Own muscles first.
fn rank(drive: Drive) -> u8 {
    match drive {
        Drive::Active => 3,
        Drive::Isometric => 2,
        Drive::Assisted => 1,
        Drive::Passive => 0,
    }
}

/// To 0.1°, as ranges are compared.
fn rounded(deg: f64) -> f64 {
    (deg * 10.0).round() / 10.0 + 0.0
}
