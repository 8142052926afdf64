//! Time-zone rules behind core's Zone.
