//! What travels between clinic and home: signed parts, the letter code, every refusal.
