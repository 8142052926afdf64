//! What a patient can do, as use cases.
