use super::*;
use crate::svg::{LIGHT, still};
use sendaluna_core::body::Pose;
use sendaluna_core::facts::{Joint, Motion, OperatedSide, Side};
use sendaluna_core::library::{Camera, Library};

const SIDES: [Side; 2] = Side::BOTH;

fn showing(working: Side) -> Showing {
    let operated = if working == Side::Left { OperatedSide::Left } else { OperatedSide::Right };
    Showing { working, both: false, operated, limit: None }
}

/// The two middles of a capsule, the larger ball's first, measured in a path's own numbers: those of
/// `M x y L x y A r r 0 0 1 x y L x y A r r 0 1 1 x y Z`.
fn middles(capsule: &str) -> [[f64; 2]; 2] {
    let numbers: Vec<f64> = capsule
        .split(|c: char| !(c.is_ascii_digit() || c == '.' || c == '-'))
        .filter_map(|number| number.parse().ok())
        .collect();
    let [big_a, small_a] = [[numbers[0], numbers[1]], [numbers[2], numbers[3]]];
    let (small_r, small_b) = (numbers[4], [numbers[9], numbers[10]]);
    let (big_b, big_r) = ([numbers[11], numbers[12]], numbers[13]);
    [middle_of(big_a, big_b, big_r, small_a), middle_of(small_a, small_b, small_r, big_a)]
}

/// The middle of the circle through two points; the nearer of the two to where the other end lies for
/// the larger ball, whose arc goes the long way round.
fn middle_of(a: [f64; 2], b: [f64; 2], radius: f64, other: [f64; 2]) -> [f64; 2] {
    let half = [f64::midpoint(a[0], b[0]), f64::midpoint(a[1], b[1])];
    let chord = [b[0] - a[0], b[1] - a[1]];
    let length = chord[0].hypot(chord[1]);
    let up = (radius * radius - length * length / 4.0).max(0.0).sqrt();
    let normal = [-chord[1] / length, chord[0] / length];
    let candidates =
        [1.0, -1.0].map(|sign| [half[0] + sign * normal[0] * up, half[1] + sign * normal[1] * up]);
    // The flanks touch both balls: the right middle is square to them.
    let square =
        |at: &[f64; 2]| ((a[0] - at[0]) * (other[0] - a[0]) + (a[1] - at[1]) * (other[1] - a[1])).abs();
    if square(&candidates[0]) <= square(&candidates[1]) { candidates[0] } else { candidates[1] }
}

fn paths_with<'a>(svg: &'a str, fill: &'a str) -> impl Iterator<Item = &'a str> {
    let paint = format!("fill=\"{fill}\"");
    svg.split("<path d=\"")
        .skip(1)
        .filter(move |path| path.contains(&paint))
        .filter_map(|path| path.split('"').next())
}

fn capsules(path: &str) -> Vec<&str> {
    path.split('Z').filter(|capsule| !capsule.is_empty()).collect()
}

/// The angle from one direction to another on paper, in degrees, counted towards the figure's front.
fn turned(from: ([f64; 2], [f64; 2]), to: ([f64; 2], [f64; 2]), faces_right: bool) -> f64 {
    let direction = |(a, b): ([f64; 2], [f64; 2])| [b[0] - a[0], a[1] - b[1]];
    let (u, v) = (direction(from), direction(to));
    let turn = (u[0] * v[1] - u[1] * v[0]).atan2(u[0] * v[0] + u[1] * v[1]).to_degrees();
    if faces_right { turn } else { -turn }
}

/// Turned out of the paper by so little that angles on it are still those of the pose.
fn is_flat(angles: &[f64]) -> bool {
    angles.iter().all(|deg| deg.abs() < 15.0)
}

/// What is measured in a still of the operated limb against the pose: how many angles.
fn measure(movement: &Movement, side: Side, share: f64) -> usize {
    let drawing = draw(movement, &showing(side));
    let svg = still(&drawing, share, &LIGHT);
    let course = movement.course(side, false);
    let pose: Pose = course.at(share).pose;
    let limb = paths_with(&svg, "url(#hatch)").next().expect("a hatched limb");
    let limb = capsules(limb);
    let right = side == Side::Right;
    let mut measured = 0;
    let mut check = |what: &str, seen: f64, said: f64| {
        let off = (seen - said + 540.0).rem_euclid(360.0) - 180.0;
        assert!(
            off.abs() < 1.0,
            "{}, {side:?}, {share}: {what} is drawn as {seen:.2}°, and is {said:.2}°",
            movement.id
        );
        measured += 1;
    };
    if body::is_of_arm(&course) {
        let arm = pose.arms.get(side);
        let trunk = pose.trunk;
        if is_flat(&[
            arm.shoulder_abduction_deg,
            arm.shoulder_internal_rotation_deg,
            trunk.side_bending_deg,
            trunk.twisting_deg,
        ]) {
            let [shoulder, elbow] = middles(limb[0]);
            let [_, wrist] = middles(limb[1]);
            let torso =
                paths_with(&svg, LIGHT.ink).map(capsules).find(|all| all.len() == 8).expect("a trunk");
            let [chest, up] = middles(torso[3]);
            let shoulder_turns = turned((up, chest), (shoulder, elbow), right);
            check("the shoulder", shoulder_turns, arm.shoulder_flexion_deg);
            check("the elbow", turned((shoulder, elbow), (elbow, wrist), right), arm.elbow_flexion_deg);
        }
        return measured;
    }
    let leg = pose.legs.get(side);
    if is_flat(&[
        leg.hip_abduction_deg,
        leg.hip_internal_rotation_deg,
        pose.pelvis.turn_deg,
        pose.pelvis.tilt_deg,
    ]) {
        let [hip, knee] = middles(limb[0]);
        let [_, ankle] = middles(limb[2]);
        check("the knee", -turned((hip, knee), (knee, ankle), right), leg.knee_flexion_deg);
        let torso = paths_with(&svg, LIGHT.ink).map(capsules).find(|all| all.len() == 8).expect("a trunk");
        let [pelvis, waist] = middles(torso[1]);
        check("the hip", turned((waist, pelvis), (hip, knee), right), leg.hip_flexion_deg);
    }
    measured
}

/// What is drawn is what was checked: limbs measured in the stills give the pose's angles within 1°.
#[test]
fn the_drawn_angle_is_the_angle_checked() {
    let (mut movements, mut angles) = (0, 0);
    for movement in Library::shipped().iter().filter(|m| m.place.camera == Camera::Side) {
        let measured: usize = SIDES
            .into_iter()
            .flat_map(|side| [0.0, 0.4, 1.0].map(|share| measure(movement, side, share)))
            .sum();
        movements += usize::from(measured > 0);
        angles += measured;
    }
    let seen_side_on = Library::shipped().iter().filter(|m| m.place.camera == Camera::Side).count();
    assert_eq!(movements, seen_side_on, "{angles} angles");
}

#[test]
fn every_frame_of_a_shape_has_the_numbers_of_its_form() {
    for movement in Library::shipped().iter() {
        for side in SIDES {
            let drawing = draw(movement, &showing(side));
            let frames = if movement.poses.len() == 1 { 1 } else { FRAMES as usize };
            for shape in &drawing.shapes {
                let places = shape.form.matches('~').count();
                assert!(shape.frames.len() == 1 || shape.frames.len() == frames, "{}", movement.id);
                for frame in &shape.frames {
                    assert_eq!(frame.len(), places, "{}: {:?}", movement.id, shape.part);
                    assert!(frame.iter().all(|number| number.is_finite() && number.abs() < 1000.0));
                }
            }
            let [_, _, width, height] = drawing.view;
            assert!(width > 10.0 && height > 10.0 && width < 250.0 && height < 250.0, "{}", movement.id);
        }
    }
}

#[test]
fn the_hatched_limb_is_the_one_that_was_operated_on() {
    let find = |id: &str| Library::shipped().iter().find(|m| m.id.as_str() == id).expect("ships");
    let hatched = |id: &str, operated, working| {
        let drawing = draw(find(id), &Showing { operated, ..showing(working) });
        let parts: Vec<_> = drawing.shapes.iter().map(|shape| shape.part).collect();
        (parts.contains(&Part::NearOperated), parts.contains(&Part::FarOperated))
    };
    assert_eq!(hatched("heel-slide", OperatedSide::Left, Side::Left), (true, false));
    assert_eq!(hatched("heel-slide", OperatedSide::Left, Side::Right), (false, true));
    assert_eq!(hatched("heel-slide", OperatedSide::Both, Side::Right), (true, true));
    assert_eq!(hatched("heel-slide", OperatedSide::Neither, Side::Right), (false, false));
    assert_eq!(hatched("elbow-bend", OperatedSide::Right, Side::Right), (true, false));
}

#[test]
fn the_arc_ends_in_a_tick_where_the_limit_is() {
    let slide = Library::shipped().iter().find(|m| m.id.as_str() == "heel-slide").expect("ships");
    let limit = Limit { joint: Joint::Knee, motion: Motion::Flexion, most_deg: 60.0 };
    let drawing = draw(slide, &Showing { limit: Some(limit), ..showing(Side::Right) });
    let tick = drawing.shapes.iter().find(|shape| shape.part == Part::Tick).expect("a tick");
    let at = |frame: &[f64]| ([frame[0], frame[1]], [frame[2], frame[3]]);
    let svg = still(&drawing, 1.0, &LIGHT);
    let limb = capsules(paths_with(&svg, "url(#hatch)").next().expect("a hatched limb"));
    let [hip, knee] = middles(limb[0]);
    let bend = -turned((hip, knee), at(&tick.frames[0]), true);
    assert!((bend - 60.0).abs() < 1.0, "{bend}");
}
