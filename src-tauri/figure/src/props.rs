//! What is held, worn, leaned on or put under: rail, table, wall, step, roll, band, strap, stick.

use glam::DVec3;
use sendaluna_core::facts::{Limb, Motion, Position, Side};
use sendaluna_core::library::{Camera, Course, Moment, Prop};

use crate::camera::{View, on_paper};
use crate::path::{Ball, Path};
use crate::place::add_box;
use crate::{Part, Piece, middle};

const BEHIND: f64 = 8.0;
const BEFORE: f64 = -8.0;

/// Everything but what the body lies or sits on.
pub fn pieces(course: &Course<'_>, moments: &[Moment], view: &View) -> Vec<Piece> {
    let all = Props { course, moments, view };
    course.form().props.iter().flat_map(|prop| all.of(*prop)).collect()
}

struct Props<'a> {
    course: &'a Course<'a>,
    moments: &'a [Moment],
    view: &'a View,
}

impl Props<'_> {
    fn of(&self, prop: Prop) -> Vec<Piece> {
        match prop {
            Prop::Rail => self.rail(),
            Prop::Chair if self.position() == Position::Kneeling => self.rail(),
            Prop::Table => self.table(),
            Prop::Wall => self.wall(),
            Prop::Step => self.step(),
            Prop::Roll => self.roll(),
            Prop::Band => self.band(),
            Prop::TiedBand => self.tied_band(),
            Prop::Strap => self.strap(),
            Prop::Cuff => self.cuff(),
            Prop::Stick => self.stick(),
            Prop::Helper => self.helper(),
            Prop::Pillow if self.position() == Position::SideLying => self.pillow_between(),
            Prop::WalkingAid => self.walking_aid(),
            Prop::Chair | Prop::Towel | Prop::Pillow => Vec::new(),
        }
    }

    fn position(&self) -> Position {
        self.course.form().place.position
    }

    fn camera(&self) -> Camera {
        self.course.form().place.camera
    }

    fn start(&self) -> &Moment {
        &self.moments[0]
    }

    fn wrists(&self) -> [DVec3; 2] {
        Side::BOTH.map(|side| self.start().placed.arm(side).wrist)
    }

    /// A rail on posts at the hands; a rail that would stand before the body is left out.
    fn rail(&self) -> Vec<Piece> {
        let [left, right] = self.wrists();
        let at = middle(left, right);
        if self.camera() == Camera::Front {
            return self.rail_beside();
        }
        let (x, y) = (at.x + 0.035, at.y - 0.022);
        let ends = if self.camera() == Camera::Back { 0.30 } else { 0.17 };
        let bar = [DVec3::new(x, y, -ends), DVec3::new(x, y, ends)];
        let mut pieces = Vec::new();
        for z in [-ends, ends] {
            pieces.push(self.line(Part::Line, BEHIND, &[DVec3::new(x, 0.0, z), DVec3::new(x, y, z)]));
        }
        pieces.push(self.line(Part::Line, BEHIND, &bar));
        pieces
    }

    /// Seen from before, one hand is on a rail at that side.
    fn rail_beside(&self) -> Vec<Piece> {
        let wrist = self.start().placed.arm(self.course.side(Limb::Other)).wrist;
        let top = wrist - DVec3::Y * 0.025;
        let foot = top.with_y(0.0);
        let back = DVec3::X * -0.2;
        vec![
            self.line(Part::Line, BEHIND, &[foot, top]),
            self.line(Part::Line, BEHIND, &[top - back * 0.4, top + back]),
            self.line(Part::Line, BEHIND, &[top + back, foot + back]),
        ]
    }

    fn table(&self) -> Vec<Piece> {
        let rest = if self.position() == Position::Seated { Limb::Working } else { Limb::Other };
        let side = self.course.side(rest);
        let wrists = || self.moments.iter().map(|moment| moment.placed.arm(side).wrist);
        let lowest = wrists().map(|at| at.y).fold(f64::INFINITY, f64::min) - 0.022;
        let nearest = wrists().map(|at| at.x).fold(f64::INFINITY, f64::min) - 0.04;
        let farthest = wrists().map(|at| at.x).fold(f64::NEG_INFINITY, f64::max) + 0.14;
        let far = if side == Side::Right { (0.02, 0.24) } else { (-0.24, -0.02) };
        let mut pieces = Vec::new();
        for (x, z) in [
            (nearest + 0.03, far.0),
            (farthest - 0.02, far.0),
            (nearest + 0.03, far.1),
            (farthest - 0.02, far.1),
        ] {
            let leg = [DVec3::new(x, 0.0, z), DVec3::new(x, lowest - 0.02, z)];
            pieces.push(self.line(Part::Line, BEHIND, &leg));
        }
        let (low, high) = (DVec3::new(nearest, lowest - 0.022, far.0), DVec3::new(farthest, lowest, far.1));
        add_box(&mut pieces, self.view, low, high, BEHIND - 0.1);
        let (start, end) = (
            self.moments[0].placed.arm(side).wrist,
            self.moments[self.moments.len() - 1].placed.arm(side).wrist,
        );
        if end.y - start.y > 0.05 {
            pieces.push(self.board(start, end, far));
        }
        pieces
    }

    /// A sloping board on the table, under the way of the hand.
    fn board(&self, start: DVec3, end: DVec3, across: (f64, f64)) -> Piece {
        let under = DVec3::Y * 0.022;
        let on = (end - start).normalize_or(DVec3::X) * 0.12;
        let (low, high) = (start - under - on * 0.3, end - under + on);
        let corners =
            [low.with_z(across.0), high.with_z(across.0), high.with_z(across.1), low.with_z(across.1)];
        Piece::still(Part::Top, BEHIND - 0.2, Path::closed(&corners.map(|at| self.view.point(at))))
    }

    /// A wall at the working forearm's outer side, or the frame of a door at its inner side.
    fn wall(&self) -> Vec<Piece> {
        let side = self.course.working();
        let inward =
            self.course.form().efforts.iter().any(|effort| effort.motion == Motion::InternalRotation);
        let towards = if (side == Side::Right) == inward { -1.0 } else { 1.0 };
        let wrist = self.start().placed.arm(side).wrist;
        let near = wrist + DVec3::new(-0.05, 0.0, towards * 0.032);
        let far = near + DVec3::new(if inward { 0.08 } else { 0.16 }, 0.30, towards * 0.045);
        let mut pieces = Vec::new();
        let depth = if inward { BEFORE } else { BEHIND };
        add_box(&mut pieces, self.view, near.min(far).with_y(0.0), near.max(far), depth);
        pieces
    }

    fn step(&self) -> Vec<Piece> {
        let height = self.course.form().place.step_height;
        let toe = self.start().placed.leg(self.course.working()).sole(1.0);
        let (low, high) =
            (DVec3::new(toe[0].x - 0.03, 0.0, -0.16), DVec3::new(toe[2].x + 0.08, height, 0.16));
        let mut pieces = Vec::new();
        add_box(&mut pieces, self.view, low, high, BEHIND);
        pieces
    }

    /// Under the knee, or under the heel of a leg that is nearly straight.
    fn roll(&self) -> Vec<Piece> {
        let leg = self.start().placed.leg(self.course.working());
        let heel = self.start().pose.legs.get(self.course.working()).hip_flexion_deg >= 9.9
            && leg.ankle.y > leg.knee.y - 0.03;
        let under = if heel { leg.knee.lerp(leg.ankle, 0.95) } else { leg.knee };
        let radius = ((under.y - 0.03) / 2.0).max(0.018);
        let at = self.view.point(under.with_y(radius));
        let path = Path::ellipse(at, on_paper(radius), on_paper(radius));
        vec![Piece::still(Part::Soft, BEHIND - 0.3, path)]
    }

    /// Round both thighs, both ankles, the foot and the hands, or between the hands.
    fn band(&self) -> Vec<Piece> {
        let working = self.course.working();
        let ends = |moment: &Moment| {
            let placed = &moment.placed;
            let (leg, other) = (placed.leg(working), placed.leg(working.opposite()));
            let [left, right] = Side::BOTH.map(|side| placed.arm(side).wrist);
            match self.position() {
                Position::Supine => vec![right, leg.sole(1.0)[2], left],
                Position::SideLying => {
                    round_both(leg.hip.lerp(leg.knee, 0.85), other.hip.lerp(other.knee, 0.85))
                }
                Position::Seated if self.camera() == Camera::Front => vec![left, right],
                _ => round_both(leg.ankle.lerp(leg.knee, 0.08), other.ankle.lerp(other.knee, 0.08)),
            }
        };
        vec![self.moving(Part::Carried, BEFORE, ends)]
    }

    /// From the ankle to the back leg of the chair.
    fn tied_band(&self) -> Vec<Piece> {
        let ends = |moment: &Moment| {
            let ankle = moment.placed.leg(self.course.working()).ankle;
            vec![ankle, DVec3::new(moment.placed.hips.x - 0.09, 0.03, ankle.z)]
        };
        vec![self.moving(Part::Carried, BEFORE, ends)]
    }

    /// From the hands round the foot, or round both thighs.
    fn strap(&self) -> Vec<Piece> {
        let working = self.course.working();
        let ends = |moment: &Moment| {
            let placed = &moment.placed;
            let (leg, other) = (placed.leg(working), placed.leg(working.opposite()));
            if self.position() == Position::HookLying {
                round_both(leg.hip.lerp(leg.knee, 0.85), other.hip.lerp(other.knee, 0.85))
            } else {
                let [left, right] = Side::BOTH.map(|side| placed.arm(side).wrist);
                vec![left, leg.sole(1.0)[2], right]
            }
        };
        vec![self.moving(Part::Carried, BEFORE, ends)]
    }

    /// Somebody's forearms, from before the leg: one hand under the knee, one under the heel.
    fn helper(&self) -> Vec<Piece> {
        let near = if self.course.working() == Side::Right { 0.16 } else { -0.16 };
        let frames = self.moments.iter().map(|moment| {
            let leg = moment.placed.leg(self.course.working());
            let mut path = Path::default();
            for (share, under) in [(0.02, 0.036), (0.94, 0.030)] {
                let hand = leg.knee.lerp(leg.ankle, share) - leg.shank * DVec3::X * under;
                let elbow = hand + DVec3::new(0.05, -0.07, near);
                let ball = |at, radius: f64| Ball { at: self.view.point(at), radius: on_paper(radius) };
                path.add_capsule(ball(elbow, 0.024), ball(hand, 0.017));
            }
            path
        });
        vec![Piece { part: Part::Soft, depth: BEFORE, frames: frames.collect() }]
    }

    /// A weight above the ankle.
    fn cuff(&self) -> Vec<Piece> {
        let frames = self.moments.iter().map(|moment| {
            let leg = moment.placed.leg(self.course.working());
            let ball = |share: f64| Ball {
                at: self.view.point(leg.knee.lerp(leg.ankle, share)),
                radius: on_paper(0.031),
            };
            let mut path = Path::default();
            path.add_capsule(ball(0.80), ball(0.90));
            path
        });
        vec![Piece { part: Part::Soft, depth: BEFORE, frames: frames.collect() }]
    }

    fn stick(&self) -> Vec<Piece> {
        let ends = |moment: &Moment| {
            let [left, right] = Side::BOTH.map(|side| {
                let arm = moment.placed.arm(side);
                arm.wrist.lerp(arm.fingertips, 0.4)
            });
            let beyond = (right - left).normalize_or(DVec3::Z) * 0.07;
            if self.position() == Position::Standing {
                // Along the back, from the head to the tail bone.
                let placed = &moment.placed;
                let behind = placed.pelvis * DVec3::NEG_X * 0.075;
                let up = placed.chest * DVec3::Y;
                return vec![placed.hips + behind - up * 0.08, placed.head + behind * 0.9 + up * 0.08];
            }
            vec![left - beyond, right + beyond]
        };
        vec![self.moving(Part::Carried, BEFORE, ends)]
    }

    fn pillow_between(&self) -> Vec<Piece> {
        let working = self.course.working();
        let placed = &self.start().placed;
        let (leg, other) = (placed.leg(working), placed.leg(working.opposite()));
        let a = middle(leg.knee, other.knee);
        let b = middle(leg.ankle, other.ankle);
        let radius = on_paper(0.032);
        let mut path = Path::default();
        path.add_capsule(
            Ball { at: self.view.point(a), radius },
            Ball { at: self.view.point(a.lerp(b, 0.6)), radius },
        );
        vec![Piece::still(Part::Soft, 0.0, path)]
    }

    /// Two sticks, one in each hand.
    fn walking_aid(&self) -> Vec<Piece> {
        let stick = |side: Side| {
            let ends = move |moment: &Moment| {
                let arm = moment.placed.arm(side);
                let top = arm.wrist.lerp(arm.fingertips, 0.4);
                vec![top, top.with_y(0.0) + DVec3::X * 0.03]
            };
            self.moving(Part::Carried, if side == self.course.working() { BEFORE } else { BEHIND }, ends)
        };
        Side::BOTH.map(stick).into()
    }

    fn line(&self, part: Part, depth: f64, points: &[DVec3]) -> Piece {
        let points: Vec<_> = points.iter().map(|at| self.view.point(*at)).collect();
        Piece::still(part, depth, Path::line(&points))
    }

    fn moving(&self, part: Part, depth: f64, of: impl Fn(&Moment) -> Vec<DVec3>) -> Piece {
        let path = |moment| {
            let points: Vec<_> = of(moment).into_iter().map(|at| self.view.point(at)).collect();
            Path::line(&points)
        };
        Piece { part, depth, frames: self.moments.iter().map(path).collect() }
    }
}

/// From the outside of one limb to the outside of the other.
fn round_both(a: DVec3, b: DVec3) -> Vec<DVec3> {
    let beyond = (b - a).normalize_or(DVec3::Z) * 0.030;
    vec![a - beyond, b + beyond]
}
