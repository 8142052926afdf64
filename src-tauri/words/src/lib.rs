//! What people read: Fluent messages, fallback, dates and numbers.
