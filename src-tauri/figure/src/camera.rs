//! From the room to the paper: straight on, with depth drawn aslant, so that whatever lies in a plane
//! that faces the reader keeps its angles.

use glam::{DVec2, DVec3};
use sendaluna_core::facts::Side;
use sendaluna_core::library::Camera;

/// Hundredths of stature.
const SCALE: f64 = 100.0;

/// A direction to look in.
#[derive(Debug, Clone, Copy)]
pub struct View {
    right: DVec3,
    up: DVec3,
    away: DVec3,
    /// Where a point moves on paper for each unit that it is farther away.
    slant: DVec2,
    /// Looks along the floor, not down on it.
    pub level: bool,
    /// Both sides of the body are as near.
    pub faces: bool,
}

impl View {
    /// A camera; the working side is the near one.
    pub fn new(camera: Camera, working: Side) -> Self {
        let near = if working == Side::Right { 1.0 } else { -1.0 };
        let of = |right, up, away, slant, level, faces| Self { right, up, away, slant, level, faces };
        match camera {
            Camera::Side => {
                of(DVec3::X * near, DVec3::Y, DVec3::NEG_Z * near, DVec2::new(0.30, 0.14), true, false)
            }
            Camera::Front => {
                of(DVec3::NEG_Z, DVec3::Y, DVec3::NEG_X, DVec2::new(0.06 * near, 0.30), true, true)
            }
            Camera::Back => of(DVec3::Z, DVec3::Y, DVec3::X, DVec2::new(-0.06 * near, 0.22), true, true),
            Camera::Above => {
                of(DVec3::X * near, DVec3::NEG_Z * near, DVec3::NEG_Y, DVec2::new(0.0, -0.12), false, true)
            }
        }
    }

    /// A point on paper.
    pub fn point(&self, at: DVec3) -> [f64; 2] {
        self.point_as_far(at, self.depth(at))
    }

    /// A point on paper, drawn as far away as something else: what is drawn as far away all along keeps
    /// its angles, however it stands out sideways.
    pub fn point_as_far(&self, at: DVec3, depth: f64) -> [f64; 2] {
        let x = at.dot(self.right) + depth * self.slant.x;
        let y = at.dot(self.up) + depth * self.slant.y;
        [x * SCALE, -y * SCALE]
    }

    /// How far away a point is.
    pub fn depth(&self, at: DVec3) -> f64 {
        at.dot(self.away)
    }

    /// Whether a face that looks this way is seen.
    pub fn sees(&self, normal: DVec3) -> bool {
        // Towards the eye, which stands against the slant.
        let eye = -self.away + self.right * self.slant.x + self.up * self.slant.y;
        normal.dot(eye) > 1e-9
    }
}

/// A length on paper.
pub fn on_paper(length: f64) -> f64 {
    length * SCALE
}
