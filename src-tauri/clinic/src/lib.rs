//! What a clinic can do, as use cases, and its command line.
