//! Checks that span rooms.
