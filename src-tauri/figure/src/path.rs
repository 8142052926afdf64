//! SVG paths whose numbers can be put between those of another moment.

/// A path: its letters, and its numbers.
#[derive(Debug, Clone, Default)]
pub struct Path {
    /// Letters, with `~` for each number.
    pub form: String,
    /// The numbers.
    pub numbers: Vec<f64>,
    corners: Vec<[f64; 2]>,
}

/// A circle on paper.
#[derive(Debug, Clone, Copy)]
pub struct Ball {
    /// Its middle.
    pub at: [f64; 2],
    /// Its radius.
    pub radius: f64,
}

impl Path {
    /// A line through points.
    pub fn line(points: &[[f64; 2]]) -> Self {
        let mut path = Self::default();
        for (n, point) in points.iter().enumerate() {
            path.put(if n == 0 { "M" } else { "L" }, &[*point]);
        }
        path.corners = points.to_vec();
        path
    }

    /// A closed line.
    pub fn closed(points: &[[f64; 2]]) -> Self {
        let mut path = Self::line(points);
        path.form.push('Z');
        path
    }

    /// An upright ellipse.
    pub fn ellipse(at: [f64; 2], across: f64, down: f64) -> Self {
        let mut path = Self::default();
        let (left, right) = ([at[0] - across, at[1]], [at[0] + across, at[1]]);
        path.put("M", &[left]);
        for to in [right, left] {
            path.form.push_str("A~ ~ 0 1 1 ~ ~");
            path.numbers.extend([across, down, to[0], to[1]].map(rounded));
        }
        path.form.push('Z');
        path.corners = vec![[left[0], at[1] - down], [right[0], at[1] + down]];
        path
    }

    /// Adds two balls and what lies between them, the larger first. All that is added so runs the same
    /// way round, so that what overlaps stays filled.
    pub fn add_capsule(&mut self, a: Ball, b: Ball) {
        let (big, small) = if a.radius >= b.radius { (a, b) } else { (b, a) };
        let (dx, dy) = (small.at[0] - big.at[0], small.at[1] - big.at[1]);
        let distance = dx.hypot(dy).max(1e-6);
        let along = dy.atan2(dx);
        let open = ((big.radius - small.radius) / distance).clamp(-1.0, 1.0).acos();
        let on = |ball: Ball, angle: f64| {
            [ball.at[0] + ball.radius * angle.cos(), ball.at[1] + ball.radius * angle.sin()]
        };
        self.put("M", &[on(big, along - open)]);
        self.put("L", &[on(small, along - open)]);
        self.arc(small.radius, "0", on(small, along + open));
        self.put("L", &[on(big, along + open)]);
        self.arc(big.radius, "1", on(big, along - open));
        self.form.push('Z');
        for ball in [big, small] {
            self.corners.push([ball.at[0] - ball.radius, ball.at[1] - ball.radius]);
            self.corners.push([ball.at[0] + ball.radius, ball.at[1] + ball.radius]);
        }
    }

    /// What lies farthest out.
    pub fn corners(&self) -> impl Iterator<Item = [f64; 2]> {
        self.corners.iter().copied()
    }

    fn put(&mut self, letter: &str, points: &[[f64; 2]]) {
        for point in points {
            self.form.push_str(letter);
            self.form.push_str("~ ~");
            self.numbers.extend(point.map(rounded));
        }
    }

    fn arc(&mut self, radius: f64, large: &str, to: [f64; 2]) {
        self.form.push_str("A~ ~ 0 ");
        self.form.push_str(large);
        self.form.push_str(" 1 ~ ~");
        self.numbers.extend([radius, radius, to[0], to[1]].map(rounded));
    }
}

/// To a hundredth: 0.0001 of stature.
pub fn rounded(number: f64) -> f64 {
    let rounded = (number * 100.0).round() / 100.0;
    if rounded == 0.0 { 0.0 } else { rounded }
}
