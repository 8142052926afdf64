//! What the body is on: ground, bed, chair, and its shadow there.

use glam::DVec3;
use sendaluna_core::facts::{Position, Side, Surface};
use sendaluna_core::library::{Course, Moment, PELVIS_DEPTH, Prop};

use crate::camera::{View, on_paper};
use crate::path::Path;
use crate::{Part, Piece};

/// Far behind everything.
const BEHIND: f64 = 9.0;

/// Ground, furniture to lie or sit on, shadow.
pub fn pieces(course: &Course<'_>, moments: &[Moment], view: &View) -> Vec<Piece> {
    let place = &course.form().place;
    let mut pieces = Vec::new();
    let (low, high) = extent(moments);
    match place.surface {
        Surface::Bed => bed(&mut pieces, view, low, high),
        _ if !view.level => {}
        _ => ground(&mut pieces, view, low, high),
    }
    if matches!(place.surface, Surface::Bed | Surface::Floor) {
        head_pillow(&mut pieces, course, moments, view);
    }
    if course.form().props.contains(&Prop::Chair) && place.position != Position::Kneeling {
        chair(&mut pieces, view, &moments[0]);
    }
    pieces
}

/// The corners of a box around the body at every moment.
fn extent(moments: &[Moment]) -> (DVec3, DVec3) {
    let points = moments.iter().flat_map(|moment| {
        let placed = &moment.placed;
        let limbs = Side::BOTH.into_iter().flat_map(move |side| {
            let (leg, arm) = (placed.leg(side), placed.arm(side));
            [leg.knee, leg.ankle, leg.sole(1.0)[2], arm.elbow, arm.wrist]
        });
        [placed.hips, placed.neck, placed.head].into_iter().chain(limbs).collect::<Vec<_>>()
    });
    points.fold((DVec3::INFINITY, DVec3::NEG_INFINITY), |(low, high), at| (low.min(at), high.max(at)))
}

fn bed(pieces: &mut Vec<Piece>, view: &View, low: DVec3, high: DVec3) {
    let (low, high) = (low - DVec3::new(0.09, 0.0, 0.09), high + DVec3::new(0.07, 0.0, 0.09));
    let along_x = high.x - low.x > high.z - low.z;
    let half = 0.22;
    // As wide as a bed, along the body.
    let middle = (low + high) / 2.0;
    let (low, high) = if along_x {
        (low.with_z((middle.z - half).min(low.z)), high.with_z((middle.z + half).max(high.z)))
    } else {
        (low.with_x((middle.x - half).min(low.x)), high.with_x((middle.x + half).max(high.x)))
    };
    add_box(pieces, view, low.with_y(-0.10), high.with_y(0.0), BEHIND);
}

fn ground(pieces: &mut Vec<Piece>, view: &View, low: DVec3, high: DVec3) {
    let (low, high) = ((low - DVec3::splat(0.08)).with_y(0.0), (high + DVec3::splat(0.08)).with_y(0.0));
    let corners = [low, low.with_x(high.x), high, low.with_z(high.z)].map(|at| view.point(at));
    let (left, right) = corners
        .iter()
        .fold((f64::INFINITY, f64::NEG_INFINITY), |(left, right), at| (left.min(at[0]), right.max(at[0])));
    let level = view.point(DVec3::ZERO)[1];
    pieces.push(Piece::still(Part::Ground, BEHIND, Path::line(&[[left, level], [right, level]])));
    let inset = (right - left) * 0.12;
    let shadow = Path::ellipse([f64::midpoint(left, right), level], (right - left) / 2.0 - inset, 1.6);
    pieces.push(Piece::still(Part::Shadow, BEHIND - 0.1, shadow));
}

fn head_pillow(pieces: &mut Vec<Piece>, course: &Course<'_>, moments: &[Moment], view: &View) {
    let placed = &moments[0].placed;
    let head = placed.head;
    match course.form().place.position {
        Position::Supine | Position::HookLying => {
            let low = DVec3::new(head.x - 0.07, 0.0, head.z - 0.13);
            let high = DVec3::new(head.x + 0.085, (head.y - 0.030).max(0.015), head.z + 0.13);
            add_cushion(pieces, view, low, high);
        }
        Position::SideLying => {
            let low = DVec3::new(head.x - 0.10, 0.0, head.z - 0.08);
            let high = DVec3::new(head.x + 0.10, (head.y - 0.045).max(0.02), head.z + 0.08);
            add_cushion(pieces, view, low, high);
        }
        _ => {}
    }
}

fn chair(pieces: &mut Vec<Piece>, view: &View, start: &Moment) {
    let hips = start.placed.hips;
    let seat = hips.y - PELVIS_DEPTH - 0.004;
    let (back, front) = (hips.x - 0.09, hips.x + 0.17);
    let (near, far) = (hips.z - 0.125, hips.z + 0.125);
    for (x, z) in [(back, near), (back, far), (front, near), (front, far)] {
        let leg = [view.point(DVec3::new(x, 0.0, z)), view.point(DVec3::new(x, seat - 0.02, z))];
        pieces.push(Piece::still(Part::Line, BEHIND - 0.2, Path::line(&leg)));
    }
    let top = seat + 0.27;
    for z in [near, far] {
        let post = [view.point(DVec3::new(back, seat, z)), view.point(DVec3::new(back - 0.03, top, z))];
        pieces.push(Piece::still(Part::Line, BEHIND - 0.2, Path::line(&post)));
    }
    let rail = |up: f64| DVec3::new(back - 0.03 * (up / 0.27), seat + up, 0.0);
    let corners =
        [rail(0.14).with_z(near), rail(0.14).with_z(far), rail(0.27).with_z(far), rail(0.27).with_z(near)];
    let panel = Path::closed(&corners.map(|at| view.point(at)));
    pieces.push(Piece::still(Part::Face, BEHIND - 0.25, panel));
    add_box(pieces, view, DVec3::new(back, seat - 0.022, near), DVec3::new(front, seat, far), BEHIND - 0.3);
}

/// A box: the faces that are seen.
pub fn add_box(pieces: &mut Vec<Piece>, view: &View, low: DVec3, high: DVec3, depth: f64) {
    let at = |x: bool, y: bool, z: bool| {
        let pick = |high_end: bool, low: f64, high: f64| if high_end { high } else { low };
        DVec3::new(pick(x, low.x, high.x), pick(y, low.y, high.y), pick(z, low.z, high.z))
    };
    let faces: [(DVec3, [DVec3; 4]); 5] = [
        (
            DVec3::X,
            [(true, false, false), (true, true, false), (true, true, true), (true, false, true)]
                .map(|c| at(c.0, c.1, c.2)),
        ),
        (
            DVec3::NEG_X,
            [(false, false, false), (false, true, false), (false, true, true), (false, false, true)]
                .map(|c| at(c.0, c.1, c.2)),
        ),
        (
            DVec3::Z,
            [(false, false, true), (true, false, true), (true, true, true), (false, true, true)]
                .map(|c| at(c.0, c.1, c.2)),
        ),
        (
            DVec3::NEG_Z,
            [(false, false, false), (true, false, false), (true, true, false), (false, true, false)]
                .map(|c| at(c.0, c.1, c.2)),
        ),
        (
            DVec3::Y,
            [(false, true, false), (true, true, false), (true, true, true), (false, true, true)]
                .map(|c| at(c.0, c.1, c.2)),
        ),
    ];
    for (normal, corners) in faces {
        if view.sees(normal) {
            let part = if normal == DVec3::Y { Part::Top } else { Part::Face };
            let path = Path::closed(&corners.map(|corner| view.point(corner)));
            pieces.push(Piece::still(part, depth, path));
        }
    }
}

/// A cushion: a rounded bar across.
fn add_cushion(pieces: &mut Vec<Piece>, view: &View, low: DVec3, high: DVec3) {
    use crate::path::Ball;
    let thick = (high.y - low.y) / 2.0;
    let across = view.point(DVec3::new(high.x, 0.0, 0.0))[0] - view.point(DVec3::new(low.x, 0.0, 0.0))[0];
    let y = low.y + thick;
    let (a, b) = if across.abs() > 1.0 && view.level {
        let z = f64::midpoint(low.z, high.z);
        (DVec3::new(low.x + thick, y, z), DVec3::new(high.x - thick, y, z))
    } else if view.level {
        let x = f64::midpoint(low.x, high.x);
        (DVec3::new(x, y, low.z + thick), DVec3::new(x, y, high.z - thick))
    } else {
        add_box(pieces, view, low, high, BEHIND - 0.4);
        return;
    };
    let radius = on_paper(thick);
    let mut path = Path::default();
    path.add_capsule(Ball { at: view.point(a), radius }, Ball { at: view.point(b), radius });
    pieces.push(Piece::still(Part::Soft, BEHIND - 0.4, path));
}
